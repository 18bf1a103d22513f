//! Coming onto a course from beside it, at an angle, in a wind.

use crate::Error;
use crate::lead::{CourseChange, TurnSide};
use crate::turn::TurnLimits;
use crate::value::units::{Length, Time, degree, meter, metres, radian};
use crate::value::{Bearing, DirectionChange, GroundDistance, InterceptAngle, North, TrueAirspeed};
use crate::wind::{Crabbed, Wind, hold_course};

/// How a course is intercepted from beside it.
///
/// At the cross-track `x` and the angle `i` the way to the course is `|x| / sin i` long and gains `|x| / tan i` along it. The turn
/// onto the course is a [`CourseChange`] where the two lines meet; it begins its lead before that.
///
/// # Accuracy
/// Rounding on a plane. For a course on the ellipsoid take the cross-track of [`crate::earth::Course::abeam`]; within 60 NM of it the plane is
/// good to 1e-4 of the distance.
///
/// # Degenerate cases
/// On the course there is nothing to intercept: the track is the course, distance, time and lead are zero. Closer than the
/// turn needs, the distance to roll-in is negative: the turn is late, and a smaller angle is wanted.
///
/// # Source
/// The right triangle of cross-track and track.
///
/// # Example
/// ```
/// use lubberline::procedure::Intercept;
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{InterceptAngle, TrueAirspeed, TrueBearing, units::*};
/// use lubberline::wind::Wind;
/// // Four miles left of the course, so the way leads to the right.
/// let onto = Intercept::new(
///     TrueBearing::new(degrees(90.0))?,
///     nautical_miles(-4.0),
///     InterceptAngle::new(degrees(30.0))?,
///     TrueAirspeed::new(knots(180.0))?,
///     Wind::calm(),
///     &TurnLimits::default(),
/// )?;
/// assert_eq!(format!("{:.0}", onto.track().angle().get::<degree>()), "120");
/// assert_eq!(format!("{:.1}", onto.distance().value().get::<nautical_mile>()), "8.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Intercept<N: North> {
    change: CourseChange<N>,
    distance: GroundDistance,
    along: Length,
    /// Across the course per distance along the track: positive when it leads to the right.
    sine: f64,
}

impl<N: North> Intercept<N> {
    /// From a cross-track, positive right of the course, at an angle to the course.
    ///
    /// # Errors
    /// [`Error::WindTooStrong`] if the course or the way to it cannot be held, [`Error::OutOfRange`] of a distance beyond half
    /// around the earth.
    pub fn new(
        onto: Bearing<N>,
        cross_track: Length,
        angle: InterceptAngle,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
        limits: &TurnLimits,
    ) -> Result<Self, Error> {
        let across_m = cross_track.get::<meter>();
        let side = if across_m > 0.0 {
            -1.0
        } else if across_m < 0.0 {
            1.0
        } else {
            0.0
        };
        let angle_deg = angle.value().get::<degree>();
        let track = onto.turned_by(DirectionChange::from_degrees(side * angle_deg));
        let change = CourseChange::new(track, onto, true_airspeed, wind, limits, TurnSide::Shortest)?;
        let (sine, cosine) = angle.value().get::<radian>().sin_cos();
        let distance_m = across_m.abs() / sine;
        Ok(Self {
            change,
            distance: GroundDistance::new(metres(distance_m))?,
            along: metres(distance_m * cosine),
            sine: side * sine,
        })
    }

    /// The direction over the ground to the course.
    pub fn track(&self) -> Bearing<N> {
        self.change.inbound()
    }

    /// Heading, groundspeed and wind correction on the way.
    pub fn crab(&self) -> Crabbed<N> {
        self.change.before()
    }

    /// Distance over the ground to the course.
    pub fn distance(&self) -> GroundDistance {
        self.distance
    }

    /// Time to the course.
    pub fn time(&self) -> Time {
        self.distance.value() / self.crab().groundspeed.value()
    }

    /// Distance gained along the course on the way.
    pub fn along(&self) -> Length {
        self.along
    }

    /// The turn onto the course; its fix is where the way meets it.
    pub fn turn(&self) -> &CourseChange<N> {
        &self.change
    }

    /// Distance over the ground to where the turn begins; negative where that is behind.
    pub fn distance_to_roll_in(&self) -> Length {
        self.distance.value() - self.change.lead()
    }

    /// Time to where the turn begins; negative where that is behind.
    pub fn time_to_roll_in(&self) -> Time {
        self.distance_to_roll_in() / self.crab().groundspeed.value()
    }

    /// The cross-track at which the turn begins, positive right of the course.
    pub fn cross_track_at_roll_in(&self) -> Length {
        // Adding zero leaves no negative zero on the course itself.
        self.change.lead() * -self.sine + metres(0.0)
    }
}

/// An intercept at double the angle: of a radial toward the station, at twice the degrees between the two radials.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DoubleAngle<N: North> {
    /// The direction over the ground to the radial.
    pub track: Bearing<N>,
    /// Heading, groundspeed and wind correction on the way.
    pub crab: Crabbed<N>,
    /// Distance to the radial, and from there to the station: they are equal.
    pub distance: GroundDistance,
    /// Time to the radial.
    pub time: Time,
    /// Time from there to the station.
    pub time_to_station: Time,
}

/// The intercept at double the angle, exactly.
///
/// From the distance `d` and `a` degrees off the radial, at the angle `2 a`, the triangle of aircraft, crossing and station has two
/// equal angles: the way to the radial is as long as what is left to the station, `d / (2 cos a)`. In calm air the times are equal too, so
/// that the time flown tells the time to go; in a wind they are as the groundspeeds. On the bearing indicator the head of the
/// needle stands halfway between heading and course (in calm air).
///
/// # Accuracy
/// Rounding on a plane. Turns are left out.
///
/// # Degenerate cases
/// On the radial the triangle is flat: the way is the radial, and half the distance is left.
///
/// # Errors
/// [`Error::OutOfRange`] of the intercept angle for more than 45 degrees off the radial, [`Error::WindTooStrong`] if either
/// course cannot be held.
///
/// # Source
/// The isosceles triangle. The technique: CNATRA P-340 chapter 6, 609, double-the-angle intercepts.
///
/// # Example
/// ```
/// use lubberline::procedure::double_angle;
/// use lubberline::value::{GroundDistance, Radial, TrueAirspeed, units::*};
/// use lubberline::wind::Wind;
/// let found = double_angle(
///     Radial::new(degrees(150.0))?,
///     GroundDistance::new(nautical_miles(24.0))?,
///     Radial::new(degrees(135.0))?,
///     TrueAirspeed::new(knots(200.0))?,
///     Wind::calm(),
/// )?;
/// assert_eq!(format!("{:.0}", found.track.angle().get::<degree>()), "345");
/// assert_eq!(format!("{:.1}", found.distance.value().get::<nautical_mile>()), "12.4");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn double_angle<N: North>(
    from: Bearing<N>,
    distance: GroundDistance,
    radial: Bearing<N>,
    true_airspeed: TrueAirspeed,
    wind: Wind<N>,
) -> Result<DoubleAngle<N>, Error> {
    let off = radial.change_to(from);
    let angle = off.angle() * 2.0;
    if off.degrees() != 0.0 {
        InterceptAngle::new(angle.abs())?;
    }
    let inbound = radial.reciprocal();
    // On a radial clockwise of the wanted one the inbound course lies to the right.
    let track = inbound.turned_by(DirectionChange::from_degrees(angle.get::<degree>()));
    let crab = hold_course(track, true_airspeed, wind)?;
    let inbound_crab = hold_course(inbound, true_airspeed, wind)?;
    let side = distance.value() / (2.0 * off.angle().get::<radian>().cos());
    Ok(DoubleAngle {
        track,
        crab,
        distance: GroundDistance::derived(side),
        time: side / crab.groundspeed.value(),
        time_to_station: side / inbound_crab.groundspeed.value(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plane::Plane;
    use crate::value::units::{degrees, knots, nautical_mile, nautical_miles};
    use crate::value::{TrueBearing, TrueNorth, WindSpeed};

    fn gale() -> Wind<TrueNorth> {
        Wind { from: TrueBearing::from_degrees(20.0), speed: WindSpeed::new(knots(50.0)).unwrap() }
    }

    fn intercept(cross_nm: f64, angle_deg: f64) -> Intercept<TrueNorth> {
        Intercept::new(
            TrueBearing::from_degrees(300.0),
            nautical_miles(cross_nm),
            InterceptAngle::new(degrees(angle_deg)).unwrap(),
            TrueAirspeed::new(knots(200.0)).unwrap(),
            gale(),
            &TurnLimits::default(),
        )
        .unwrap()
    }

    #[test]
    fn the_way_ends_on_the_course() {
        for cross_nm in [-7.0, 3.0] {
            for angle_deg in [5.0, 30.0, 90.0] {
                let onto = intercept(cross_nm, angle_deg);
                let course = Plane::along_deg(300.0);
                let way_m = Plane::along_deg(onto.track().degrees()) * onto.distance().value().get::<meter>();
                let start_m = nautical_miles(cross_nm).get::<meter>();
                assert!((start_m + course.cross(way_m)).abs() < 1e-6, "{cross_nm} {angle_deg}");
                assert!((course.dot(way_m) - onto.along().get::<meter>()).abs() < 1e-6);
                let begin_m = start_m
                    + course.cross(Plane::along_deg(onto.track().degrees()))
                        * onto.distance_to_roll_in().get::<meter>();
                assert!((begin_m - onto.cross_track_at_roll_in().get::<meter>()).abs() < 1e-6);
            }
        }
    }

    #[test]
    fn on_the_course_there_is_nothing_to_intercept() {
        let onto = intercept(0.0, 30.0);
        assert_eq!(onto.track(), TrueBearing::from_degrees(300.0));
        assert_eq!((onto.distance().value().value, onto.turn().lead().value), (0.0, 0.0));
        assert!(intercept(0.1, 60.0).distance_to_roll_in().value < 0.0, "too close for the turn");
    }

    #[test]
    fn at_double_the_angle_the_way_is_as_long_as_what_is_left() {
        for off_deg in [-40.0, -10.0, 5.0, 25.0, 45.0] {
            let from = TrueBearing::from_degrees(135.0 + off_deg);
            let found = double_angle(
                from,
                GroundDistance::new(nautical_miles(24.0)).unwrap(),
                TrueBearing::from_degrees(135.0),
                TrueAirspeed::new(knots(200.0)).unwrap(),
                gale(),
            )
            .unwrap();
            let side_nm = found.distance.value().get::<nautical_mile>();
            let crossing =
                Plane::along_deg(from.degrees()) * 24.0 + Plane::along_deg(found.track.degrees()) * side_nm;
            let expected = Plane::along_deg(135.0) * side_nm;
            assert!((crossing - expected).length() < 1e-9, "{off_deg}");
        }
        let refused = double_angle(
            TrueBearing::from_degrees(181.0),
            GroundDistance::new(nautical_miles(24.0)).unwrap(),
            TrueBearing::from_degrees(135.0),
            TrueAirspeed::new(knots(200.0)).unwrap(),
            gale(),
        );
        assert!(matches!(refused, Err(Error::OutOfRange { .. })));
    }
}
