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
    let scratch_generated = scratch.join("generated.rs");
    std::fs::write(&scratch_generated, generated)?;
    builder = builder.with_src(scratch_generated);
    let mut by_hand =
        std::fs::read_dir(folder.join("src"))?.map(|entry| Ok(entry?.path())).collect::<Result<Vec<_>>>()?;
    by_hand.retain(|path| !path.ends_with("generated.rs") && !path.ends_with("lib.rs"));
    by_hand.sort();
    for path in by_hand {
        builder = builder.with_src(path);
    }
    let bindings = builder.generate()?;
    let mut bytes = Vec::new();
    bindings.write(&mut bytes);
    std::fs::remove_dir_all(&scratch)?;
    Ok(for_c(&String::from_utf8(bytes)?))
}

/// Leaves out Rust's section for its callers, which says nothing to a C programmer, and puts a negative constant in
/// parentheses, as a macro's value should stand.
fn for_c(text: &str) -> String {
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
    let constant = |line: &&str| match line.split_once(" -") {
        Some((name, size)) if name.starts_with("#define ") => format!("{name} (-{size})"),
        _ => line.to_string(),
    };
    kept.iter().map(constant).collect::<Vec<_>>().join("\n") + "\n"
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_for_rust_is_left_out() {
        let text = "/**\n * One.\n *\n * # Safety\n * Care.\n */\nint one(void);\n#define TWO -2\n";
        assert_eq!(for_c(text), "/**\n * One.\n */\nint one(void);\n#define TWO (-2)\n");
    }
}
