//! A radial is counted from the north of its station.

use lubberline::earth::direct;
use lubberline::value::{GroundDistance, Latitude, Longitude, Position, Radial, units::*};

fn main() -> Result<(), lubberline::Error> {
    let station = Position::new(Latitude::new(degrees(61.0))?, Longitude::new(degrees(-12.0))?);
    let radial = Radial::new(degrees(220.0))?;
    direct(station, radial, GroundDistance::new(nautical_miles(12.0))?);
    Ok(())
}
