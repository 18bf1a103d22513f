//! The wind triangle: the heading that holds a course, and the groundspeed it leaves.

use crate::Error;
use crate::plane::Plane;
use crate::value::units::{Angle, degree, degrees, knot, meter_per_second, metres_per_second};
use crate::value::{Bearing, Groundspeed, North, TrueAirspeed, WindSpeed};

/// A steady uniform wind, named by the direction it blows from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wind<N: North> {
    /// Where it blows from.
    pub from: Bearing<N>,
    /// How fast.
    pub speed: WindSpeed,
}

impl<N: North> Wind<N> {
    /// No wind.
    pub fn calm() -> Self {
        Self { from: Bearing::from_degrees(0.0), speed: WindSpeed::derived(metres_per_second(0.0)) }
    }

    /// The wind of air that moves over the ground with a velocity.
    pub(crate) fn of_velocity_m_s(velocity: Plane) -> Self {
        if velocity.length() == 0.0 {
            return Self::calm();
        }
        Self {
            from: Bearing::from_radians((-velocity.east).atan2(-velocity.north)),
            speed: WindSpeed::derived(metres_per_second(velocity.length())),
        }
    }

    /// The velocity of the air over the ground in metres per second.
    pub(crate) fn velocity_m_s(self) -> Plane {
        Plane::along_deg(self.from.degrees()) * -self.speed.value().get::<meter_per_second>()
    }
}

/// How an aircraft flies to hold a course: crabbed into the wind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Crabbed<N: North> {
    /// The heading to fly.
    pub heading: Bearing<N>,
    /// The speed made good along the course.
    pub groundspeed: Groundspeed,
    /// Heading less course, right positive: -90 to 90 degrees.
    pub wind_correction: Angle,
}

/// The heading and groundspeed that hold a course in a wind.
///
/// With `w` the angle from the course to where the wind comes from: correction `asin(Vw sin w / V)`,
/// groundspeed `V cos(correction) - Vw cos w`.
///
/// # Degenerate cases
/// In calm air the heading is the course to the last bit. A wind faster than the aircraft still leaves courses that
/// can be held, downwind; of the two headings that hold such a course the one with the higher groundspeed is given.
///
/// # Errors
/// [`Error::WindTooStrong`] if the crosswind exceeds the airspeed or no groundspeed is left.
///
/// # Source
/// The triangle of velocities; FAA-H-8083-25 (Pilot's Handbook of Aeronautical Knowledge) chapter 16, from memory.
///
/// # Example
/// ```
/// use lubberline::value::{TrueAirspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::{Wind, hold_course};
/// let wind = Wind { from: TrueBearing::new(degrees(45.0))?, speed: WindSpeed::new(knots(40.0))? };
/// let crabbed = hold_course(TrueBearing::new(degrees(90.0))?, TrueAirspeed::new(knots(120.0))?, wind)?;
/// assert_eq!(format!("{:.0}", crabbed.heading.angle().get::<degree>()), "76");
/// assert_eq!(format!("{:.0}", crabbed.groundspeed.value().get::<knot>()), "88");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn hold_course<N: North>(
    course: Bearing<N>,
    true_airspeed: TrueAirspeed,
    wind: Wind<N>,
) -> Result<Crabbed<N>, Error> {
    let airspeed_m_s = true_airspeed.value().get::<meter_per_second>();
    let wind_m_s = wind.speed.value().get::<meter_per_second>();
    let off = Plane::along_deg(wind.from.degrees() - course.degrees());
    // Adding zero leaves no negative zero in calm air.
    let across = wind_m_s * off.east / airspeed_m_s + 0.0;
    let correction_rad = across.asin();
    let groundspeed_m_s = airspeed_m_s * ((1.0 - across) * (1.0 + across)).sqrt() - wind_m_s * off.north;
    // The root of less than nothing is NaN, which fails this comparison too.
    if groundspeed_m_s > 0.0 {
        let correction_deg = correction_rad.to_degrees();
        Ok(Crabbed {
            heading: Bearing::from_degrees(course.degrees() + correction_deg),
            groundspeed: Groundspeed::derived(metres_per_second(groundspeed_m_s)),
            wind_correction: degrees(correction_deg),
        })
    } else {
        Err(Error::WindTooStrong {
            course_deg: course.angle().get::<degree>(),
            true_airspeed_kt: true_airspeed.value().get::<knot>(),
            wind_from_deg: wind.from.angle().get::<degree>(),
            wind_speed_kt: wind.speed.value().get::<knot>(),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::TrueBearing;
    use crate::value::units::knots;

    fn hold(
        course_deg: f64,
        airspeed_kt: f64,
        from_deg: f64,
        wind_kt: f64,
    ) -> Result<Crabbed<crate::value::TrueNorth>, Error> {
        let wind = Wind {
            from: TrueBearing::from_degrees(from_deg),
            speed: WindSpeed::new(knots(wind_kt)).unwrap(),
        };
        hold_course(
            TrueBearing::from_degrees(course_deg),
            TrueAirspeed::new(knots(airspeed_kt)).unwrap(),
            wind,
        )
    }

    #[test]
    fn a_wind_that_cannot_be_held_is_refused() {
        assert!(hold(0.0, 100.0, 90.0, 101.0).is_err(), "crosswind beyond the airspeed");
        assert!(hold(0.0, 100.0, 0.0, 100.0).is_err(), "headwind of the airspeed");
        assert!(hold(0.0, 100.0, 180.0, 150.0).is_ok(), "a tailwind may exceed it");
    }

    #[test]
    fn in_calm_air_the_heading_is_the_course() {
        assert_eq!(hold(123.0, 100.0, 37.0, 0.0).unwrap().heading, TrueBearing::from_degrees(123.0));
    }
}
