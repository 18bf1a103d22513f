//! Writes `ffi/include/lubberline.h` by cbindgen.

use std::path::Path;

use anyhow::{Result, anyhow};

/// The header, by cbindgen from the committed sources.
pub fn header(root: &Path, generated: &str) -> Result<String> {
    let folder = root.join("ffi");
    let config = cbindgen::Config::from_file(folder.join("cbindgen.toml")).map_err(|error| anyhow!(error))?;
    // The header is made from what is about to be written, which may not be on the disk yet.
    let scratch = std::env::temp_dir().join(format!("lubberline-header-{}", std::process::id()));
    std::fs::create_dir_all(&scratch)?;
    let mut builder = cbindgen::Builder::new().with_config(config);
    for (name, text) in [
        ("generated.rs", generated.to_string()),
        ("course_change.rs", std::fs::read_to_string(folder.join("src/course_change.rs"))?),
        ("legs.rs", std::fs::read_to_string(folder.join("src/legs.rs"))?),
        ("version.rs", std::fs::read_to_string(folder.join("src/version.rs"))?),
    ] {
        let path = scratch.join(name);
        std::fs::write(&path, text)?;
        builder = builder.with_src(path);
    }
    let bindings = builder.generate()?;
    let mut bytes = Vec::new();
    bindings.write(&mut bytes);
    std::fs::remove_dir_all(&scratch)?;
    // Rust's own section for its callers says nothing to a C programmer.
    let text = String::from_utf8(bytes)?;
    let mut kept = Vec::new();
    let mut skipping = false;
    for line in text.lines() {
        let body = line.trim_start_matches([' ', '*']);
        if body == "# Safety" {
            skipping = true;
            if kept.last().is_some_and(|last: &&str| last.trim() == "*") {
                kept.pop();
            }
        }
        skipping &= !line.trim_start().starts_with("*/");
        if !skipping {
            kept.push(line);
        }
    }
    Ok(kept.join("\n") + "\n")
}
