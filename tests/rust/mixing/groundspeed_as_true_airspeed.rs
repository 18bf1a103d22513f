//! A groundspeed is no true airspeed.

use lubberline::turn::radius;
use lubberline::value::{Bank, Groundspeed, units::*};

fn main() -> Result<(), lubberline::Error> {
    let groundspeed = Groundspeed::new(knots(250.0))?;
    radius(groundspeed, Bank::new(degrees(25.0))?);
    Ok(())
}
