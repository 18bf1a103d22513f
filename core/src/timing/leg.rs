//! Time, distance and groundspeed, two of which give the third.

use crate::Error;
use crate::earth;
use crate::value::units::Time;
use crate::value::{ElapsedTime, GroundDistance, Groundspeed, GroundspeedMadeGood, Position};

/// The time that a distance takes at a groundspeed.
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// No distance takes no time.
///
/// # Source
/// The definition of speed.
///
/// # Example
/// ```
/// use lubberline::timing::time_to_fly;
/// use lubberline::value::{GroundDistance, GroundspeedMadeGood, units::*};
/// assert_eq!(format!("{:.0}", time_to_fly(GroundDistance::new(nautical_miles(30.0))?, GroundspeedMadeGood::new(knots(450.0))?).get::<second>()), "240");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn time_to_fly(distance: GroundDistance, groundspeed: GroundspeedMadeGood) -> Time {
    distance.value() / groundspeed.value()
}

/// The time between two fixes at a groundspeed, along the geodesic of WGS-84.
///
/// # Accuracy
/// As [`earth::inverse`], 15 nanometres of distance.
///
/// # Degenerate cases
/// Coincident fixes take no time.
///
/// # Example
/// ```
/// use lubberline::timing::time_between_fixes;
/// use lubberline::value::{GroundspeedMadeGood, Latitude, Longitude, Position, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// let time = time_between_fixes(at(51.0, 0.0)?, at(52.0, 1.0)?, GroundspeedMadeGood::new(knots(420.0))?);
/// assert_eq!(format!("{:.0}", time.get::<second>()), "607");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn time_between_fixes(from: Position, to: Position, groundspeed: GroundspeedMadeGood) -> Time {
    time_to_fly(earth::inverse(from, to).distance, groundspeed)
}

/// The distance flown in a time at a groundspeed.
///
/// # Errors
/// [`Error::OutOfRange`] of a distance longer than half around the earth.
///
/// # Source
/// The definition of speed.
///
/// # Example
/// ```
/// use lubberline::timing::distance_flown;
/// use lubberline::value::{ElapsedTime, Groundspeed, units::*};
/// assert_eq!(format!("{:.0}", distance_flown(Groundspeed::new(knots(450.0))?, ElapsedTime::new(seconds(240.0))?)?.value().get::<nautical_mile>()), "30");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn distance_flown(groundspeed: Groundspeed, time: ElapsedTime) -> Result<GroundDistance, Error> {
    GroundDistance::new(groundspeed.value() * time.value())
}

/// The groundspeed that a distance in a time tells.
///
/// # Errors
/// [`Error::OutOfRange`] of the groundspeed if it comes out above its range.
///
/// # Source
/// The definition of speed.
///
/// # Example
/// ```
/// use lubberline::timing::groundspeed_over;
/// use lubberline::value::{ElapsedTime, GroundDistance, units::*};
/// assert_eq!(format!("{:.0}", groundspeed_over(GroundDistance::new(nautical_miles(30.0))?, ElapsedTime::new(seconds(240.0))?)?.value().get::<knot>()), "450");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn groundspeed_over(distance: GroundDistance, time: ElapsedTime) -> Result<Groundspeed, Error> {
    Groundspeed::new(distance.value() / time.value())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{knot, nautical_mile, nautical_miles, second, seconds};

    /// CNATRA P-203, Student Guide for Preflight Navigation: 55 NM in 15 minutes are 220 kt.
    #[test]
    fn a_printed_groundspeed() {
        let distance = GroundDistance::new(nautical_miles(55.0)).unwrap();
        let time = ElapsedTime::new(seconds(900.0)).unwrap();
        let groundspeed = groundspeed_over(distance, time).unwrap();
        assert!((groundspeed.value().get::<knot>() - 220.0).abs() < 1e-12);
        let flown = distance_flown(groundspeed, time).unwrap();
        assert!((flown.value().get::<nautical_mile>() - 55.0).abs() < 1e-12);
        let made_good = GroundspeedMadeGood::new(groundspeed.value()).unwrap();
        assert!((time_to_fly(distance, made_good).get::<second>() - 900.0).abs() < 1e-9);
    }
}
