//! A true altitude is no height above the station.

use lubberline::earth::slant_range;
use lubberline::value::{GroundDistance, TrueAltitude, units::*};

fn main() -> Result<(), lubberline::Error> {
    let distance = GroundDistance::new(nautical_miles(12.0))?;
    let altitude = TrueAltitude::new(feet(9_000.0))?;
    slant_range(distance, altitude);
    Ok(())
}
