//! Rhumb lines: lines of constant bearing (feature `geo`).
//!
//! They are the `geo` crate's, on a sphere of the mean radius; nothing else of this library is built on them.

use geo::{Bearing as _, Destination as _, Distance as _, Point, Rhumb};

use crate::Error;
use crate::value::units::{meter, metres};
use crate::value::{GroundDistance, Position, TrueBearing};

/// The length and the constant bearing of the rhumb line between two points, the short way round.
///
/// # Accuracy
/// That of a sphere: up to 0.5 percent in distance and 0.2 degrees in bearing against WGS-84.
///
/// # Degenerate cases
/// Coincident points have no bearing. A line that ends at a pole runs along a meridian.
///
/// # Source
/// The `geo` crate's `Rhumb`.
///
/// # Example
/// ```
/// use lubberline::earth::{inverse, rhumb_inverse};
/// use lubberline::value::{Latitude, Longitude, Position, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// // Along a parallel the rhumb line is longer than the geodesic.
/// let (from, to) = (at(60.0, -30.0)?, at(60.0, 30.0)?);
/// let (length, bearing) = rhumb_inverse(from, to);
/// assert!(length.value() > inverse(from, to).distance.value());
/// assert!((bearing.unwrap().angle() - degrees(90.0)).abs() < degrees(1e-9));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rhumb_inverse(from: Position, to: Position) -> (GroundDistance, Option<TrueBearing>) {
    let (from, to) = (Point::from(from), Point::from(to));
    let distance_m = Rhumb.distance(from, to);
    let bearing = (distance_m > 0.0).then(|| TrueBearing::from_degrees(Rhumb.bearing(from, to)));
    (GroundDistance::derived(metres(distance_m)), bearing)
}

/// The point reached along a rhumb line.
///
/// # Accuracy
/// As [`rhumb_inverse`].
///
/// # Degenerate cases
/// A line that would pass a pole is reflected there.
///
/// # Errors
/// [`Error::OutOfRange`] if the line spirals into a pole and its longitude has no meaning any more.
///
/// # Source
/// The `geo` crate's `Rhumb`.
///
/// # Example
/// ```
/// use lubberline::earth::rhumb_direct;
/// use lubberline::value::{GroundDistance, Latitude, Longitude, Position, TrueBearing, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// let there = rhumb_direct(at(60.0, -10.0)?, TrueBearing::new(degrees(90.0))?, GroundDistance::new(nautical_miles(60.0))?)?;
/// // Eastward along a parallel, which a rhumb line keeps to.
/// assert_eq!(format!("{:.4}", there.latitude().angle().get::<degree>()), "60.0000");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rhumb_direct(
    from: Position,
    bearing: TrueBearing,
    distance: GroundDistance,
) -> Result<Position, Error> {
    let reached = Rhumb.destination(Point::from(from), bearing.degrees(), distance.value().get::<meter>());
    Position::try_from(reached)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Along a meridian a rhumb line is a great circle: 60 minutes of 1853.2 m each on the sphere.
    #[test]
    fn along_a_meridian() {
        let (from, to) = (Position::derived(10.0, 20.0), Position::derived(11.0, 20.0));
        let (length, bearing) = rhumb_inverse(from, to);
        let degree_m = crate::earth::MEAN_RADIUS_M.to_radians();
        assert!((length.value().get::<meter>() - degree_m).abs() < 0.01, "{length:?}");
        assert!(bearing.unwrap().degrees() < 1e-9);
        let reached = rhumb_direct(from, bearing.unwrap(), length).unwrap();
        assert!((reached.latitude_deg() - 11.0).abs() < 1e-9);
    }
}
