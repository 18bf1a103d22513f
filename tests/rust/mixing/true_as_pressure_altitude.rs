//! A true altitude is no pressure altitude.

use lubberline::air::Air;
use lubberline::value::{TrueAltitude, units::feet};

fn main() -> Result<(), lubberline::Error> {
    let altitude = TrueAltitude::new(feet(9_000.0))?;
    Air::standard(altitude);
    Ok(())
}
