//! A height above the station is no true altitude.

use lubberline::value::{HeightAboveStation, TrueAltitude, units::feet};

fn main() -> Result<(), lubberline::Error> {
    let altitude = TrueAltitude::new(feet(9_000.0))?;
    let height = HeightAboveStation::new(feet(7_800.0))?;
    let _ = altitude > height;
    Ok(())
}
