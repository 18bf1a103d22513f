//! The wind triangle from a groundspeed that is wanted: the heading and airspeed that give it.

use super::Wind;
use crate::Error;
use crate::plane::Plane;
use crate::value::units::{Angle, degrees, meter_per_second, metres_per_second};
use crate::value::{Bearing, Groundspeed, North, TrueAirspeed};

/// How to make good a course at a wanted groundspeed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scheduled<N: North> {
    /// The heading to fly.
    pub heading: Bearing<N>,
    /// The airspeed to fly.
    pub airspeed: TrueAirspeed,
    /// Heading less course, right positive: beyond 90 degrees where a tailwind exceeds the groundspeed.
    pub wind_correction: Angle,
}

/// The heading and true airspeed that make good a course at a groundspeed, to be somewhere on time.
///
/// The difference of the velocities over the ground and of the air; there is always one answer.
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// A groundspeed of zero holds against the wind. A tailwind faster than the groundspeed wants the aircraft to
/// face it.
///
/// # Errors
/// [`Error::OutOfRange`] of the true airspeed if the wind alone does it, or if it comes out above its range.
///
/// # Source
/// The triangle of velocities.
///
/// # Example
/// ```
/// use lubberline::value::{Groundspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::{Wind, make_groundspeed};
/// let wind = Wind { from: TrueBearing::new(degrees(33.0))?, speed: WindSpeed::new(knots(47.0))? };
/// let fly = make_groundspeed(TrueBearing::new(degrees(351.0))?, Groundspeed::new(knots(232.0))?, wind)?;
/// assert_eq!(format!("{:.0}", fly.airspeed.value().get::<knot>()), "269");
/// assert_eq!(format!("{:.0}", fly.heading.angle().get::<degree>()), "358");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn make_groundspeed<N: North>(
    course: Bearing<N>,
    groundspeed: Groundspeed,
    wind: Wind<N>,
) -> Result<Scheduled<N>, Error> {
    let upwind = Plane::along_deg(course.change_to(wind.from).degrees())
        * wind.speed.value().get::<meter_per_second>();
    let over_ground = Plane { north: groundspeed.value().get::<meter_per_second>(), east: 0.0 };
    let through_air = over_ground + upwind;
    let correction_deg = through_air.east.atan2(through_air.north).to_degrees();
    Ok(Scheduled {
        heading: Bearing::from_degrees(course.degrees() + correction_deg),
        airspeed: TrueAirspeed::new(metres_per_second(through_air.length()))?,
        wind_correction: degrees(correction_deg),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{knot, knots};
    use crate::value::{TrueBearing, WindSpeed};
    use crate::wind::hold_course;

    /// US War Department aviation mathematics manual, 1940s, wind-triangle exercises: answers drawn to 1 mph
    /// and 1 degree. The triangle has one shape in any unit of speed.
    #[test]
    fn printed_exercises() {
        for (course_deg, groundspeed_kt, from_deg, wind_kt, airspeed_kt, heading_deg) in [
            (351.0, 232.0, 33.0, 47.0, 269.0, 358.0),
            (27.0, 189.0, 165.0, 42.0, 160.0, 37.0),
            (271.0, 215.0, 316.0, 48.0, 252.0, 279.0),
        ] {
            let wind = Wind {
                from: TrueBearing::from_degrees(from_deg),
                speed: WindSpeed::new(knots(wind_kt)).unwrap(),
            };
            let course = TrueBearing::from_degrees(course_deg);
            let fly =
                make_groundspeed(course, Groundspeed::new(knots(groundspeed_kt)).unwrap(), wind).unwrap();
            assert!((fly.airspeed.value().get::<knot>() - airspeed_kt).abs() <= 1.0, "{fly:?}");
            assert!((fly.heading.degrees() - heading_deg).abs() <= 1.0, "{fly:?}");
            let back = hold_course(course, fly.airspeed, wind).unwrap();
            assert!((back.groundspeed.value().get::<knot>() - groundspeed_kt).abs() < 1e-11, "{back:?}");
        }
    }
}
