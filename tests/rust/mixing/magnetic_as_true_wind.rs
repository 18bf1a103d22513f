//! A wind by magnetic north, as a tower gives it, does not meet a true course.

use lubberline::value::{MagneticBearing, TrueAirspeed, TrueBearing, WindSpeed, units::*};
use lubberline::wind::{Wind, hold_course};

fn main() -> Result<(), lubberline::Error> {
    let course = TrueBearing::new(degrees(40.0))?;
    let tower = MagneticBearing::new(degrees(270.0))?;
    let wind = Wind { from: tower, speed: WindSpeed::new(knots(20.0))? };
    hold_course(course, TrueAirspeed::new(knots(120.0))?, wind)?;
    Ok(())
}
