//! The brief of a plan: what it says, what it gives as data, and what it says of a plan that is wrong.

#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    missing_docs,
    reason = "a test fails by panicking"
)]

mod data;
mod output;
mod path;
mod text;
mod wrong;

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

fn top() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap()
}

fn plans() -> PathBuf {
    top().join("core/examples/brief/plans")
}

/// The plan that is briefed when none is given.
fn default_plan() -> String {
    std::fs::read_to_string(plans().join("islands.toml")).unwrap()
}

/// The default plan with some of its words replaced, each of which must be there.
fn changed(changes: &[(&str, &str)]) -> String {
    changes.iter().fold(default_plan(), |text, (from, to)| {
        assert!(text.contains(from), "{from:?} is not in the plan");
        text.replacen(from, to, 1)
    })
}

/// The example's program, built if need be.
fn program() -> &'static Path {
    static BUILT: OnceLock<PathBuf> = OnceLock::new();
    BUILT.get_or_init(|| {
        let test = std::env::current_exe().unwrap();
        let profile = test.parent().unwrap().parent().unwrap();
        let mut build = Command::new(env!("CARGO"));
        build.args(["build", "--quiet", "-p", "lubberline", "--example", "brief"]);
        if profile.ends_with("release") {
            build.arg("--release");
        }
        assert!(build.status().unwrap().success());
        profile.join("examples/brief")
    })
}

/// Exit code, output and errors.
fn run(arguments: &[&str]) -> (i32, String, String) {
    let output = Command::new(program()).args(arguments).output().unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code().unwrap(), text(output.stdout), text(output.stderr))
}

/// Runs the program on a plan in a file of its own, named by the test that asks.
fn run_plan(name: &str, plan: &str, options: &[&str]) -> (i32, String, String) {
    let path = std::env::temp_dir().join(format!("lubberline-{}-{name}.toml", std::process::id()));
    std::fs::write(&path, plan).unwrap();
    let mut arguments = vec![path.to_str().unwrap()];
    arguments.extend(options);
    let answer = run(&arguments);
    std::fs::remove_file(&path).unwrap();
    answer
}

/// A briefing that must succeed.
fn briefed(name: &str, plan: &str, options: &[&str]) -> String {
    let (code, out, error) = run_plan(name, plan, options);
    assert_eq!((code, error.as_str()), (0, ""), "{name}");
    out
}
