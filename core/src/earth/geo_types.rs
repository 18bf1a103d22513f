//! To and from the types of the `geo` crate (feature `geo`).
//!
//! `geo` keeps longitude in `x` and latitude in `y`; here neither can be taken for the other.

use geo::{Coord, Point};

use crate::Error;
use crate::value::{Latitude, Longitude, Position};

impl From<Position> for Point {
    /// Longitude to `x`, latitude to `y`, in degrees.
    fn from(position: Position) -> Self {
        Self::new(position.longitude_deg(), position.latitude_deg())
    }
}

impl From<Position> for Coord {
    /// Longitude to `x`, latitude to `y`, in degrees.
    fn from(position: Position) -> Self {
        Self { x: position.longitude_deg(), y: position.latitude_deg() }
    }
}

impl TryFrom<Point> for Position {
    type Error = Error;

    /// Longitude from `x`, latitude from `y`, in degrees.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a latitude beyond a pole and for numbers that are not finite, which is what an exchanged pair
    /// often turns out to be.
    fn try_from(point: Point) -> Result<Self, Error> {
        Ok(Self::new(Latitude::named("y", point.y())?, Longitude::named("x", point.x())?))
    }
}

impl TryFrom<Coord> for Position {
    type Error = Error;

    /// As from a [`Point`].
    fn try_from(coord: Coord) -> Result<Self, Error> {
        Self::try_from(Point::from(coord))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_and_back() {
        let position = Position::derived(61.5, -12.25);
        let point = Point::from(position);
        assert_eq!((point.x(), point.y()), (-12.25, 61.5));
        assert_eq!(Position::try_from(point).unwrap(), position);
        assert_eq!(Position::try_from(Coord::from(position)).unwrap(), position);
        assert_eq!(Position::try_from(Point::new(0.0, 91.0)).unwrap_err().parameter(), Some("y"));
    }
}
