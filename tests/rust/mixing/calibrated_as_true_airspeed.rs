//! A calibrated airspeed is no true airspeed.

use lubberline::turn::radius;
use lubberline::value::{Bank, CalibratedAirspeed, units::*};

fn main() -> Result<(), lubberline::Error> {
    let airspeed = CalibratedAirspeed::new(knots(250.0))?;
    radius(airspeed, Bank::new(degrees(25.0))?);
    Ok(())
}
