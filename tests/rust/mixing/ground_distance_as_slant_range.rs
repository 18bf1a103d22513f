//! A distance over the ground is no slant range.

use lubberline::earth::ground_distance;
use lubberline::value::{GroundDistance, HeightAboveStation, units::*};

fn main() -> Result<(), lubberline::Error> {
    let distance = GroundDistance::new(nautical_miles(12.0))?;
    ground_distance(distance, HeightAboveStation::new(feet(9_000.0))?)?;
    Ok(())
}
