//! Every call of the cases beside this one, with what it takes.

use lubberline::air::{Air, impact_from_calibrated, pressure_altitude_at};
use lubberline::earth::{direct, ground_distance, slant_range};
use lubberline::turn::radius;
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::{Wind, hold_course};

fn main() -> Result<(), lubberline::Error> {
    let course = TrueBearing::new(degrees(40.0))?;
    let onward = TrueBearing::new(degrees(110.0))?;
    let change = DirectionChange::new(degrees(70.0))?;
    assert_eq!(course.change_to(onward), change);
    assert_eq!(course.turned_by(change), onward);

    let airspeed = TrueAirspeed::new(knots(250.0))?;
    let wind = Wind { from: TrueBearing::new(degrees(270.0))?, speed: WindSpeed::new(knots(20.0))? };
    hold_course(course, airspeed, wind)?;
    radius(airspeed, Bank::new(degrees(25.0))?);
    impact_from_calibrated(CalibratedAirspeed::new(knots(250.0))?);

    let altitude = TrueAltitude::new(feet(9_000.0))?;
    let elevation = Elevation::new(feet(1_200.0))?;
    pressure_altitude_at(altitude, AltimeterSetting::standard(), elevation, IsaDeviation::none())?;
    Air::standard(PressureAltitude::new(feet(9_000.0))?);
    assert!(altitude > TrueAltitude::new(feet(7_800.0))?);

    let station = Position::new(Latitude::new(degrees(61.0))?, Longitude::new(degrees(-12.0))?);
    let (distance, height) =
        (GroundDistance::new(nautical_miles(12.0))?, HeightAboveStation::new(feet(9_000.0))?);
    direct(station, course, distance);
    ground_distance(slant_range(distance, height), height)?;
    Ok(())
}
