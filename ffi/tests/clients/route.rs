//! The brief of a route: C gives what Rust's example gives of the same plan.

use std::path::PathBuf;
use std::process::Command;

use serde_json::Value;

use super::{client, root, run};

fn by_the_example(form: &str) -> Value {
    let mut example = Command::new(env!("CARGO"));
    example.args(["run", "--quiet", "-p", "lubberline", "--example", "brief", "--"]);
    let plan: PathBuf = root().join("core/examples/brief/plans/islands.toml");
    serde_json::from_str(&run(example.arg(plan).arg(form).current_dir(root()))).unwrap()
}

/// Every number of `expected` stands in `given`, to the nine decimals of the example. Gives how many.
pub(super) fn agree(expected: &Value, given: &Value, place: &str) -> usize {
    match (expected, given) {
        (Value::Object(members), Value::Object(others)) => members
            .iter()
            .map(|(key, value)| {
                // What is words is not told in C.
                if value.is_string() && !others.contains_key(key) {
                    return 0;
                }
                let other = others.get(key).unwrap_or_else(|| panic!("{place}.{key} is missing in C"));
                agree(value, other, &format!("{place}.{key}"))
            })
            .sum(),
        (Value::Array(items), Value::Array(others)) => {
            assert_eq!(items.len(), others.len(), "{place}");
            let pairs = items.iter().zip(others).enumerate();
            pairs.map(|(index, (one, other))| agree(one, other, &format!("{place}[{index}]"))).sum()
        }
        (Value::Number(one), Value::Number(other)) => {
            let (one, other) = (one.as_f64().unwrap(), other.as_f64().unwrap());
            assert!((one - other).abs() <= 2e-9 + 1e-11 * one.abs(), "{place}: {one} in Rust, {other} in C");
            1
        }
        _ => {
            assert_eq!(expected, given, "{place}");
            1
        }
    }
}

#[test]
fn c_briefs_a_route_as_rust_does() {
    let (data, collection) = (by_the_example("--json"), by_the_example("--geojson"));
    let lines: Vec<&Value> = collection["features"]
        .as_array()
        .unwrap()
        .iter()
        .filter(|feature| ["leg", "turn"].contains(&feature["properties"]["kind"].as_str().unwrap()))
        .map(|feature| &feature["geometry"]["coordinates"])
        .collect();
    for linked_statically in [true, false] {
        let told = client("tests/c/route.c", linked_statically, &[]);
        let (json, _) = told.rsplit_once("}\n").unwrap();
        let given: Value = serde_json::from_str(&format!("{json}}}")).unwrap();
        let numbers = agree(&data["legs"], &given["legs"], "legs")
            + agree(&data["course_changes"], &given["course_changes"], "course_changes");
        assert!(numbers > 200, "{numbers}");
        for key in ["true_airspeed_kt", "total_distance_nm", "total_time_s"] {
            agree(&data[key], &given[key], key);
        }
        assert_eq!(lines.len(), given["lines"].as_array().unwrap().len());
        for (index, (line, other)) in lines.iter().zip(given["lines"].as_array().unwrap()).enumerate() {
            assert!(agree(line, other, &format!("line {index}")) >= 2 * 3);
        }
    }
}

/// The page shows a piece of the example, moved to the margin.
#[test]
fn the_page_shows_a_piece_of_the_example() {
    let read = |path: &str| std::fs::read_to_string(root().join(path)).unwrap();
    let page = read("docs/brief.md");
    let (_, section) = page.split_once("## A route in C\n").unwrap();
    let (_, shown) = section.split_once("```c\n").unwrap();
    let (shown, _) = shown.split_once("```").unwrap();
    let indented: String = shown
        .lines()
        .map(|line| if line.is_empty() { "\n".into() } else { format!("    {line}\n") })
        .collect();
    assert!(read("ffi/examples/route.c").contains(&indented), "{indented}");
}
