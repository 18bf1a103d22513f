//! What must not be mixed does not compile: the compiler is asked, and where it refuses `mixed.rs` is compared line by line.
//!
//! A line is held by the code of its error, which does not change from one compiler to the next as the words do. No line without a code may
//! be refused: beside each mixture stands the same call with what it takes.
#![allow(clippy::unwrap_used, clippy::panic, missing_docs, reason = "a test fails by panicking")]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

/// A line and the code of what is wrong with it.
type Refused = BTreeSet<(u64, String)>;

/// The library that this test is linked with, in the folder of all that it is built on: the last one built.
fn library() -> PathBuf {
    let this = std::env::current_exe().unwrap();
    let built = std::fs::read_dir(this.parent().unwrap()).unwrap().map(|file| file.unwrap().path());
    let named = |path: &PathBuf| {
        let name = path.file_name().unwrap().to_string_lossy().to_string();
        name.starts_with("liblubberline-") && name.ends_with(".rlib")
    };
    built.filter(named).max_by_key(|path| path.metadata().unwrap().modified().unwrap()).unwrap()
}

/// Where the compiler refuses a file that uses the library.
fn refused(source: &Path) -> Refused {
    let (library, metadata) = (library(), std::env::temp_dir().join(format!("mixed-{}", std::process::id())));
    let output = Command::new(std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into()))
        .args(["--edition=2024", "--crate-type=lib", "--emit=metadata", "--error-format=json", "-o"])
        .arg(&metadata)
        .arg("--extern")
        .arg(format!("lubberline={}", library.display()))
        .arg("-L")
        .arg(format!("dependency={}", library.parent().unwrap().display()))
        .arg(source)
        .output()
        .unwrap();
    let _ = std::fs::remove_file(metadata);
    assert!(!output.status.success(), "all of {} compiles", source.display());
    let mut refused = Refused::new();
    for message in String::from_utf8(output.stderr).unwrap().lines() {
        let message: Value =
            serde_json::from_str(message).unwrap_or_else(|error| panic!("{error}: {message}"));
        let spans = message.pointer("/spans").and_then(Value::as_array).unwrap();
        let place = spans.iter().find(|span| span.pointer("/is_primary") == Some(&Value::Bool(true)));
        if message.pointer("/level").and_then(Value::as_str) == Some("error")
            && let Some(code) = message.pointer("/code/code").and_then(Value::as_str)
        {
            let line = place.and_then(|place| place.pointer("/line_start")).and_then(Value::as_u64);
            refused.insert((line.unwrap_or(0), code.to_string()));
        }
    }
    refused
}

#[test]
fn what_must_not_be_mixed_does_not_compile() {
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("rust/mixing/mixed.rs");
    let text = std::fs::read_to_string(&source).unwrap();
    let expected: Refused = (1..)
        .zip(text.lines())
        .filter_map(|(number, line)| line.split_once("// E").map(|(_, code)| (number, format!("E{code}"))))
        .collect();
    assert!(expected.len() >= 45, "{}", expected.len());
    let found = refused(&source);
    let compiles: Vec<_> = expected.difference(&found).collect();
    assert!(compiles.is_empty(), "lines of mixed.rs that compile, or fail otherwise: {compiles:?}");
    let unexpected: Vec<_> = found.difference(&expected).collect();
    assert!(unexpected.is_empty(), "lines of mixed.rs that should compile: {unexpected:?}");
}
