//! Procedure turns: off the outbound course and back onto it the other way.

use super::HoldingSide;
use super::extent::Extent;
use crate::Error;
use crate::lead::{CourseChange, TurnSide};
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::turn::{RolledTurn, TurnLimits};
use crate::value::units::{
    Angle, Length, Time, degree, degrees, meter, meter_per_second, metres, radian, second, seconds,
};
use crate::value::{Bearing, DirectionChange, HoldTime, North, TrueAirspeed};
use crate::wind::{Crabbed, Wind, hold_course};

/// Time on the leg of a 45/180 procedure turn from the start of its first turn, in seconds: categories A and B, and C to E.
///
/// Source: ICAO Doc 8168, 45/180 procedure turn, as quoted.
pub const OFF_LEG_SLOW_S: f64 = 60.0;
/// The same for categories C to E.
pub const OFF_LEG_FAST_S: f64 = 75.0;

/// The angle by which the leg of a 45/180 procedure turn leaves the outbound course, in degrees.
const OFF_DEG: f64 = 45.0;

/// A 45/180 procedure turn in a steady wind: off the outbound course by 45 degrees, straight on that track, back through half a
/// circle the other way onto the opposite track, straight until the turn onto the inbound course.
///
/// Tracks are held with the wind correction, the turns are [`RolledTurn`]s between the headings, the last one a [`CourseChange`] with its
/// lead. Places are counted from where the first turn begins.
///
/// # Accuracy
/// 1e-9 of its size in the plane.
///
/// # Degenerate cases
/// If the leg is too short for the turns, or the wind carries the aircraft across the inbound course, the straight part before the last
/// turn is negative: the course is crossed, and [`Self::least_off_time`] says what would have sufficed. A time shorter than the
/// first turn leaves nothing straight off the course.
///
/// # Source
/// The manoeuvre and its times: ICAO Doc 8168 (as quoted): a minute from the start of the turn for categories A and B, a minute and
/// a quarter for C to E. Its geometry is derived.
///
/// # Example
/// ```
/// use lubberline::procedure::{HoldingSide, OFF_LEG_SLOW_S, ProcedureTurn};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{HoldTime, TrueAirspeed, TrueBearing, units::*};
/// use lubberline::wind::Wind;
/// let turn = ProcedureTurn::new(
///     TrueBearing::new(degrees(250.0))?,
///     HoldingSide::Right,
///     HoldTime::new(seconds(OFF_LEG_SLOW_S))?,
///     TrueAirspeed::new(knots(140.0))?,
///     Wind::calm(),
///     &TurnLimits::default(),
/// )?;
/// assert_eq!(format!("{:.1}", turn.farthest.get::<nautical_mile>()), "3.1");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProcedureTurn<N: North> {
    /// Heading, groundspeed and wind correction on the leg off the course.
    pub off: Crabbed<N>,
    /// The track of that leg.
    pub off_track: Bearing<N>,
    /// Heading, groundspeed and wind correction on the way back to it.
    pub back: Crabbed<N>,
    /// Distance straight between the half circle and the turn onto the inbound course; negative where it is crossed.
    pub straight: Length,
    /// Time from the start of the first turn to the turn back that would leave just no straight part; less is too short.
    pub least_off_time: Time,
    /// Distance outbound from where the first turn began at which the wings are level on the inbound course; negative before it.
    pub established: Length,
    /// How far outbound the path reaches.
    pub farthest: Length,
    /// How far from the course it reaches, to the side of the first turn.
    pub widest: Length,
    /// From the first turn to wings level inbound.
    pub duration: Time,
}

impl<N: North> ProcedureTurn<N> {
    /// Off an outbound course to a side, with the time from the start of the first turn to the start of the second.
    ///
    /// # Errors
    /// [`Error::WindTooStrong`] if a track cannot be held.
    pub fn new(
        outbound: Bearing<N>,
        side: HoldingSide,
        off_time: HoldTime,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
        limits: &TurnLimits,
    ) -> Result<Self, Error> {
        let sign = f64::from(side.code());
        let inbound = outbound.reciprocal();
        let off_track = outbound.turned_by(DirectionChange::from_degrees(sign * OFF_DEG));
        let frame = Frame::new(outbound, true_airspeed, wind)?;
        let (off, back) = (
            hold_course(off_track, true_airspeed, wind)?,
            hold_course(off_track.reciprocal(), true_airspeed, wind)?,
        );
        let onto = CourseChange::new(
            off_track.reciprocal(),
            inbound,
            true_airspeed,
            wind,
            limits,
            TurnSide::Shortest,
        )?;

        let first = frame.turn(frame.crab.heading, off.heading, sign, limits);
        let around = frame.turn(off.heading, back.heading, -sign, limits);
        let off_s = off_time.value().get::<second>().max(first.duration_s());
        let off_m_s = frame.along(off_track) * off.groundspeed.value().get::<meter_per_second>();
        let back_along = frame.along(off_track.reciprocal());
        let mut extent = Extent::new();
        let begun_m = frame.fly(&mut extent, Plane::ZERO, &first, frame.crab.heading);
        let turned_m =
            frame.fly(&mut extent, begun_m + off_m_s * (off_s - first.duration_s()), &around, off.heading);
        let to_course_m = -turned_m.east / back_along.east;
        let straight_m = to_course_m - onto.lead().get::<meter>();
        // Each second on the leg moves the crossing by so much along the way back.
        let gained_m_s = -off_m_s.east / back_along.east;
        let last_m = turned_m + back_along * straight_m;
        frame.fly(&mut extent, last_m, onto.turn(), back.heading);
        let crossing_m = turned_m + back_along * to_course_m;
        let reach = if sign > 0.0 { extent.high.east } else { -extent.low.east };
        let back_m_s = back.groundspeed.value().get::<meter_per_second>();
        let duration_s = off_s + around.duration_s() + straight_m / back_m_s + onto.turn().duration_s();
        Ok(Self {
            off,
            off_track,
            back,
            straight: metres(straight_m),
            least_off_time: seconds(off_s - straight_m / gained_m_s),
            established: metres(crossing_m.north - onto.past_fix_at_roll_out().get::<meter>()),
            farthest: metres(extent.high.north),
            widest: metres(reach),
            duration: seconds(duration_s),
        })
    }
}

/// An 80/260 procedure turn in a steady wind: off the outbound heading through an angle, and at once back the other way onto the
/// inbound heading.
///
/// The two turns are [`RolledTurn`]s; the second ends on the heading that holds the inbound course. Nothing in it aims at the course:
/// in calm air with an instant roll it ends `2 r cos(angle)` off, on the side away from the first turn, which is 0.35 of a radius for
/// 80 degrees, and on the course for 90. [`Self::exact_angle`] is the angle for which it ends on the course.
///
/// # Accuracy
/// 1e-9 of its size in the plane.
///
/// # Source
/// The manoeuvre: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, 3.5.4.1 and 3.5.4.2, as quoted. Its geometry is derived.
///
/// # Example
/// ```
/// use lubberline::procedure::{HoldingSide, ReverseTurn};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{AngleOffBow, TrueAirspeed, TrueBearing, units::*};
/// use lubberline::wind::Wind;
/// let turn = ReverseTurn::new(
///     TrueBearing::new(degrees(250.0))?,
///     HoldingSide::Right,
///     AngleOffBow::new(degrees(80.0))?,
///     TrueAirspeed::new(knots(140.0))?,
///     Wind::calm(),
///     &TurnLimits::default(),
/// )?;
/// assert_eq!(format!("{:.2}", turn.across.get::<nautical_mile>()), "-0.09");
/// assert_eq!(format!("{:.1}", turn.exact_angle.map_or(f64::NAN, |angle| angle.get::<degree>())), "83.6");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ReverseTurn<N: North> {
    /// Heading at the end of the first turn.
    pub off_heading: Bearing<N>,
    /// Distance from the course at its end, positive on the side of the first turn.
    pub across: Length,
    /// Distance outbound from where the first turn began at its end; negative before it.
    pub established: Length,
    /// How far outbound the path reaches.
    pub farthest: Length,
    /// How far from the course it reaches, to the side of the first turn.
    pub widest: Length,
    /// From the first turn to wings level inbound.
    pub duration: Time,
    /// The angle of the first turn for which it ends on the course; none where no angle up to 170 degrees does.
    pub exact_angle: Option<Angle>,
}

/// The angles of the first turn among which the exact one is looked for, in degrees.
const LEAST_ANGLE_DEG: f64 = 10.0;
const GREATEST_ANGLE_DEG: f64 = 170.0;

impl<N: North> ReverseTurn<N> {
    /// Off an outbound course to a side by an angle of the first turn, 80 degrees as published.
    ///
    /// # Errors
    /// [`Error::WindTooStrong`] if the course cannot be held either way.
    pub fn new(
        outbound: Bearing<N>,
        side: HoldingSide,
        angle: crate::value::AngleOffBow,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
        limits: &TurnLimits,
    ) -> Result<Self, Error> {
        let sign = f64::from(side.code());
        let frame = Frame::new(outbound, true_airspeed, wind)?;
        let inbound = hold_course(outbound.reciprocal(), true_airspeed, wind)?;
        let fly = |angle_deg: f64| {
            let first = RolledTurn::new(true_airspeed, limits, degrees(sign * angle_deg));
            let off_heading = frame.crab.heading.turned_by(DirectionChange::from_degrees(sign * angle_deg));
            let around = frame.turn(off_heading, inbound.heading, -sign, limits);
            let mut extent = Extent::new();
            let turned_m = frame.fly(&mut extent, Plane::ZERO, &first, frame.crab.heading);
            let end_m = frame.fly(&mut extent, turned_m, &around, off_heading);
            (off_heading, end_m, extent, first.duration_s() + around.duration_s())
        };
        let across_m = |angle_deg: f64| sign * fly(angle_deg).1.east;
        let crosses = across_m(LEAST_ANGLE_DEG) * across_m(GREATEST_ANGLE_DEG) <= 0.0;
        let (off_heading, end_m, extent, duration_s) = fly(angle.value().get::<degree>());
        let reach = if sign > 0.0 { extent.high.east } else { -extent.low.east };
        Ok(Self {
            off_heading,
            across: metres(sign * end_m.east),
            established: metres(end_m.north),
            farthest: metres(extent.high.north),
            widest: metres(reach),
            duration: seconds(duration_s),
            exact_angle: crosses
                .then(|| degrees(root_between(LEAST_ANGLE_DEG, GREATEST_ANGLE_DEG, across_m))),
        })
    }
}

/// The outbound course as the first axis, and what is flown in its frame.
struct Frame<N: North> {
    course: Bearing<N>,
    crab: Crabbed<N>,
    true_airspeed: TrueAirspeed,
    wind_m_s: Plane,
}

impl<N: North> Frame<N> {
    fn new(course: Bearing<N>, true_airspeed: TrueAirspeed, wind: Wind<N>) -> Result<Self, Error> {
        Ok(Self {
            course,
            crab: hold_course(course, true_airspeed, wind)?,
            true_airspeed,
            wind_m_s: Plane::along_deg(course.change_to(wind.from).degrees())
                * -wind.speed.value().get::<meter_per_second>(),
        })
    }

    fn along(&self, direction: Bearing<N>) -> Plane {
        Plane::along_deg(self.course.change_to(direction).degrees())
    }

    /// From heading to heading, to the right for a positive sign, the long way if need be.
    fn turn(&self, from: Bearing<N>, to: Bearing<N>, sign: f64, limits: &TurnLimits) -> RolledTurn {
        let amount_deg = from.way_round_deg(to, sign);
        RolledTurn::new(self.true_airspeed, limits, degrees(sign * amount_deg))
    }

    fn fly(&self, extent: &mut Extent, from_m: Plane, turn: &RolledTurn, heading: Bearing<N>) -> Plane {
        let heading_rad = self.course.change_to(heading).angle().get::<radian>();
        let airspeed_m_s = self.true_airspeed.value().get::<meter_per_second>();
        extent.turn(from_m, turn, heading_rad, airspeed_m_s, self.wind_m_s)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::turn::radius;
    use crate::value::units::knots;
    use crate::value::{AngleOffBow, RollRate, TrueBearing, TrueNorth, WindSpeed};

    fn airspeed() -> TrueAirspeed {
        TrueAirspeed::new(knots(140.0)).unwrap()
    }

    fn wind(from_deg: f64, speed_kt: f64) -> Wind<TrueNorth> {
        Wind { from: TrueBearing::from_degrees(from_deg), speed: WindSpeed::new(knots(speed_kt)).unwrap() }
    }

    fn turn(
        side: HoldingSide,
        time_s: f64,
        wind: Wind<TrueNorth>,
        limits: &TurnLimits,
    ) -> ProcedureTurn<TrueNorth> {
        let time = HoldTime::new(seconds(time_s)).unwrap();
        ProcedureTurn::new(TrueBearing::from_degrees(250.0), side, time, airspeed(), wind, limits).unwrap()
    }

    fn reverse(
        side: HoldingSide,
        angle_deg: f64,
        wind: Wind<TrueNorth>,
        limits: &TurnLimits,
    ) -> ReverseTurn<TrueNorth> {
        let angle = AngleOffBow::new(degrees(angle_deg)).unwrap();
        ReverseTurn::new(TrueBearing::from_degrees(250.0), side, angle, airspeed(), wind, limits).unwrap()
    }

    fn instant() -> TurnLimits {
        TurnLimits { roll: RollRate::instant(), ..TurnLimits::default() }
    }

    fn radius_m() -> f64 {
        radius(airspeed(), instant().governing_bank(airspeed()).0).get::<meter>()
    }

    /// Drawn with circles and lines, in units of the radius, from where the first turn begins.
    #[test]
    fn in_calm_air_the_45_180_is_three_circles_and_two_lines() {
        let half = std::f64::consts::FRAC_1_SQRT_2;
        for side in [HoldingSide::Right, HoldingSide::Left] {
            let found = turn(side, 60.0, wind(0.0, 0.0), &instant());
            let r = radius_m();
            // At standard rate the first turn takes a quarter of a minute; the leg is what is left of it.
            let leg = airspeed().value().get::<meter_per_second>() * 45.0 / r;
            let across = (1.0 - half) + leg * half - 2.0 * half;
            let along = half + leg * half + 2.0 * half;
            let lead = (std::f64::consts::PI / 8.0).tan();
            let straight = across / half - lead;
            assert!((found.straight.value / r - straight).abs() < 1e-9, "{side:?} {found:?}");
            let established = along - across - lead;
            assert!((found.established.value / r - established).abs() < 1e-9, "{side:?}");
            // Farthest out where the half circle points across the course.
            let farthest = half + leg * half + half + 1.0;
            assert!((found.farthest.value / r - farthest).abs() < 1e-9, "{side:?}");
            let least = turn(side, found.least_off_time.value, wind(0.0, 0.0), &instant());
            assert!(least.straight.value.abs() < 1e-6);
        }
    }

    #[test]
    fn in_calm_air_the_80_260_ends_beside_the_course_and_the_90_270_on_it() {
        for side in [HoldingSide::Right, HoldingSide::Left] {
            let found = reverse(side, 80.0, wind(0.0, 0.0), &instant());
            let off = -2.0 * 80.0_f64.to_radians().cos();
            assert!((found.across.value / radius_m() - off).abs() < 1e-9, "{side:?} {found:?}");
            assert!((found.exact_angle.unwrap() - degrees(90.0)).abs() < degrees(1e-9));
            // 340 degrees at standard rate.
            assert!((found.duration.value - 340.0 / 3.0).abs() < 1e-9);
        }
    }

    #[test]
    fn in_wind_the_exact_angle_ends_on_the_course() {
        for side in [HoldingSide::Right, HoldingSide::Left] {
            for from_deg in [0.0, 110.0, 200.0] {
                let angle =
                    reverse(side, 80.0, wind(from_deg, 25.0), &TurnLimits::default()).exact_angle.unwrap();
                let found =
                    reverse(side, angle.get::<degree>(), wind(from_deg, 25.0), &TurnLimits::default());
                assert!(found.across.value.abs() < 1e-6, "{side:?} {from_deg}");
                let least = turn(side, 60.0, wind(from_deg, 25.0), &TurnLimits::default());
                let least =
                    turn(side, least.least_off_time.value, wind(from_deg, 25.0), &TurnLimits::default());
                assert!(least.straight.value.abs() < 1e-6, "{side:?} {from_deg}");
            }
        }
    }

    #[test]
    fn a_time_shorter_than_the_turn_leaves_nothing_straight() {
        let short = turn(HoldingSide::Left, 10.0, wind(0.0, 0.0), &instant());
        // An eighth of a circle at standard rate takes a quarter of a minute.
        let least = turn(HoldingSide::Left, 15.0, wind(0.0, 0.0), &instant());
        assert!((short.duration - least.duration).value.abs() < 1e-9);
        assert!(short.straight.value < 0.0);
    }
}
