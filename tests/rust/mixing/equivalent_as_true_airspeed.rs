//! An equivalent airspeed is no true airspeed.

use lubberline::turn::radius;
use lubberline::value::{Bank, EquivalentAirspeed, units::*};

fn main() -> Result<(), lubberline::Error> {
    let airspeed = EquivalentAirspeed::new(knots(250.0))?;
    radius(airspeed, Bank::new(degrees(25.0))?);
    Ok(())
}
