//! The brief of path-and-terminator legs: C gives what Rust's example gives of the same plan.

use std::process::Command;

use serde_json::Value;

use super::route::agree;
use super::{client, root, run};

#[test]
fn c_briefs_a_path_as_rust_does() {
    let mut example = Command::new(env!("CARGO"));
    example.args(["run", "--quiet", "-p", "lubberline", "--example", "brief", "--"]);
    example.arg(root().join("core/examples/brief/plans/approach.toml")).arg("--json").current_dir(root());
    let mut data: Value = serde_json::from_str(&run(&mut example)).unwrap();
    for leg in data["legs"].as_array_mut().unwrap() {
        // C counts the sentences, and knows no names.
        leg["checks"] = leg["checks"].as_array().unwrap().len().into();
        leg["fix"] = "".into();
    }
    for linked_statically in [true, false] {
        let told = client("tests/c/path.c", linked_statically, &[]);
        let (json, _) = told.rsplit_once("}\n").unwrap();
        let given: Value = serde_json::from_str(&format!("{json}}}")).unwrap();
        let numbers = agree(&data["legs"], &given["legs"], "legs");
        assert!(numbers > 200, "{numbers}");
        for key in ["true_airspeed_kt", "total_distance_nm", "total_time_s"] {
            agree(&data[key], &given[key], key);
        }
    }
}

/// The page shows a piece of the example, moved to the margin.
#[test]
fn the_page_of_legs_shows_a_piece_of_the_example() {
    let read = |path: &str| std::fs::read_to_string(root().join(path)).unwrap();
    let page = read("docs/legs.md");
    let (_, shown) = page.split_once("```c\n").unwrap();
    let (shown, _) = shown.split_once("```").unwrap();
    let indented: String = shown
        .lines()
        .map(|line| if line.is_empty() { "\n".into() } else { format!("    {line}\n") })
        .collect();
    assert!(read("ffi/examples/path.c").contains(&indented), "{indented}");
}
