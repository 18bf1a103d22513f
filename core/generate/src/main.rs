//! Writes every generated file of the project, or with `--check` says which is not what it would write.

mod c;
mod docs;
mod model;
mod parse;
mod python;
mod statuses;
mod table;
mod text;

use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::{env, fs};

use anyhow::{Context, Result, bail};

/// The line every generated file begins with.
const BANNER: &str = "Generated from core/src/plain; do not edit. To renew: cargo run -p lubberline-generate";

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("generate: {error:#}");
            ExitCode::FAILURE
        }
    }
}

fn run() -> Result<()> {
    let check = match env::args().skip(1).collect::<Vec<_>>().as_slice() {
        [] => false,
        [flag] if flag == "--check" => true,
        _ => bail!("usage: lubberline-generate [--check]"),
    };
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").canonicalize()?;
    let model = parse::model(&root)?;
    let statuses = statuses::read(&root)?;
    let c_source = c::rust(&model, &statuses, BANNER);
    let files: Vec<(PathBuf, String)> = vec![
        ("ffi/include/lubberline.h".into(), c::header(&root, &c_source)?),
        ("ffi/src/generated.rs".into(), c_source),
        ("tests/c/generated_examples.c".into(), c::examples(&model, BANNER)),
        ("tests/c/generated_dispatch.h".into(), c::dispatch(&model, BANNER)),
        ("core/src/plain/table.rs".into(), table::emit(&model, BANNER)),
        ("python/package/lubberline/_functions.py".into(), python::functions(&model, BANNER)),
        ("python/package/lubberline/_functions.pyi".into(), python::stubs(&model, BANNER)),
        ("python/package/lubberline/ufunc.pyi".into(), python::ufunc_stubs(&model, BANNER)),
        ("docs/functions.md".into(), docs::emit(&model, BANNER)),
    ];
    for (name, text) in files {
        let path = root.join(&name);
        let present = fs::read_to_string(&path).unwrap_or_default();
        if present == text {
            continue;
        }
        if check {
            bail!("{} is stale; run: cargo run -p lubberline-generate", name.display());
        }
        fs::write(&path, text).with_context(|| path.display().to_string())?;
        println!("wrote {}", name.display());
    }
    Ok(())
}
