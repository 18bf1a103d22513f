//! A true airspeed is no calibrated airspeed.

use lubberline::air::impact_from_calibrated;
use lubberline::value::{TrueAirspeed, units::knots};

fn main() -> Result<(), lubberline::Error> {
    let airspeed = TrueAirspeed::new(knots(430.0))?;
    impact_from_calibrated(airspeed);
    Ok(())
}
