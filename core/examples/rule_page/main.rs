//! The tables of `docs/rules.md`, computed: the mental arithmetic of the trade against the exact answers and against the turn flown.
//!
//! `cargo run -p lubberline --example rule_page` prints the page with its tables renewed; `-- --write` puts it in its place.

mod air;
mod arcs;
mod flown;
mod holds;
mod page;
mod small;
mod terms;

use std::error::Error;
use std::path::Path;

fn main() -> Result<(), Box<dyn Error>> {
    let place = Path::new(env!("CARGO_MANIFEST_DIR")).join("../docs/rules.md");
    let renewed = page::renew(&std::fs::read_to_string(&place)?)?;
    match std::env::args().nth(1).as_deref() {
        None => print!("{renewed}"),
        Some("--write") => std::fs::write(&place, renewed)?,
        Some(other) => return Err(format!("{other} is no option; allowed: --write, or nothing").into()),
    }
    Ok(())
}
