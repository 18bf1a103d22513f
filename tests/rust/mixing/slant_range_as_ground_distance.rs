//! A slant range is no distance over the ground.

use lubberline::earth::slant_range;
use lubberline::value::{HeightAboveStation, SlantRange, units::*};

fn main() -> Result<(), lubberline::Error> {
    let reading = SlantRange::new(nautical_miles(12.0))?;
    slant_range(reading, HeightAboveStation::new(feet(9_000.0))?);
    Ok(())
}
