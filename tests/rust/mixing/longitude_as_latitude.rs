//! A longitude does not stand where the latitude does.

use lubberline::value::{Latitude, Longitude, Position, units::degrees};

fn main() -> Result<(), lubberline::Error> {
    let (latitude, longitude) = (Latitude::new(degrees(61.0))?, Longitude::new(degrees(-12.0))?);
    Position::new(longitude, latitude);
    Ok(())
}
