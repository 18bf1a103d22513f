//! The base turn: outbound on a track that leaves the inbound course by an angle, and one turn back onto it.

use super::HoldingSide;
use crate::Error;
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::turn::{RolledTurn, TurnLimits};
use crate::value::units::{
    Angle, Length, Time, degrees, knot, meter, meter_per_second, metres, radian, second, seconds,
};
use crate::value::{
    ArcRadius, Bearing, DirectionChange, ElapsedTime, GroundDistance, North, TrueAirspeed, choice,
};
use crate::wind::{Crabbed, Wind, hold_course};

choice! {
    /// The units in which a formula of procedure design was printed. Its two forms differ by the rounding of their constants.
    DesignUnits {
        /// Knots, nautical miles, feet.
        NonSi = 0: "non_si",
        /// Kilometres per hour, kilometres, metres.
        Si = 1: "si",
    }
}

/// The speed up to which the offset of a base turn depends on the time alone.
///
/// Source: as [`base_turn_offset`]: 170 kt, 315 km/h.
const SLOW_KT: f64 = 170.0;
const SLOW_KM_H: f64 = 315.0;

/// Kilometres per hour in a knot.
const KM_H: f64 = 1.852;

/// The angle between outbound track and inbound course of a base turn as it is published: `36 / T` degrees up to 170 kt, `0.215 V / T`
/// above, with the time outbound `T` in minutes (SI: up to 315 km/h, `0.116 V / T` above).
///
/// # Accuracy
/// It takes the tangent for the angle of [`base_turn_offset_exact`]: at 25 degrees of bank or standard rate, 36/T gives 1.9 percent
/// more than that for a minute and 0.5 percent less for two, `0.215 V / T` at 250 kt 7.0 percent more for a minute and 1.9 for
/// two. At 170 kt the first gives 1.5 percent less than the second.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, base turns.
///
/// # Example
/// ```
/// use lubberline::procedure::{DesignUnits, base_turn_offset};
/// use lubberline::value::{ElapsedTime, TrueAirspeed, units::*};
/// assert_eq!(format!("{:.1}", base_turn_offset(TrueAirspeed::new(knots(150.0))?, ElapsedTime::new(seconds(60.0))?, DesignUnits::NonSi).get::<degree>()), "36.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn base_turn_offset(true_airspeed: TrueAirspeed, outbound: ElapsedTime, units: DesignUnits) -> Angle {
    let minutes = outbound.value().get::<second>() / 60.0;
    let speed_kt = true_airspeed.value().get::<knot>();
    degrees(match units {
        DesignUnits::NonSi if speed_kt <= SLOW_KT => 36.0 / minutes,
        DesignUnits::NonSi => 0.215 * speed_kt / minutes,
        DesignUnits::Si if speed_kt * KM_H <= SLOW_KM_H => 36.0 / minutes,
        DesignUnits::Si => 0.116 * speed_kt * KM_H / minutes,
    })
}

/// The angle for which, in still air with an instant roll, the turn ends on the inbound course: `2 atan(r / L)`, with the radius `r`
/// and the length `L` of the outbound leg.
///
/// # Source
/// Derived: a circle tangent to two lines that cross at the fix.
///
/// # Example
/// ```
/// use lubberline::procedure::base_turn_offset_exact;
/// use lubberline::value::{ArcRadius, GroundDistance, units::*};
/// assert_eq!(format!("{:.1}", base_turn_offset_exact(ArcRadius::new(nautical_miles(0.8))?, GroundDistance::new(nautical_miles(2.5))?).get::<degree>()), "35.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn base_turn_offset_exact(turn_radius: ArcRadius, outbound: GroundDistance) -> Angle {
    let half_rad = turn_radius.value().get::<meter>().atan2(outbound.value().get::<meter>());
    degrees(2.0 * half_rad.to_degrees())
}

/// A base turn in a steady wind: over the fix outbound on a track, and a turn that ends on the inbound course.
///
/// The turn is a [`RolledTurn`] between the wind-corrected headings; over the ground wind times duration is added. Its
/// end has no part across the inbound course: for a given track that is linear in the time outbound, for a given time one
/// equation for the heading, solved in a bracket.
///
/// # Accuracy
/// 1e-9 of its size in the plane of the fix. The aircraft is taken to be on the outbound track over the fix; the entry is not in it.
///
/// # Degenerate cases
/// In calm air with an instant roll the angle is [`base_turn_offset_exact`].
///
/// # Source
/// Derived from the equilibrium of a coordinated turn and the triangle of velocities.
///
/// # Example
/// ```
/// use lubberline::procedure::{BaseTurn, HoldingSide};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{ElapsedTime, TrueAirspeed, TrueBearing, units::*};
/// use lubberline::wind::Wind;
/// let turn = BaseTurn::for_time(
///     TrueBearing::new(degrees(100.0))?,
///     HoldingSide::Right,
///     ElapsedTime::new(seconds(120.0))?,
///     TrueAirspeed::new(knots(150.0))?,
///     Wind::calm(),
///     &TurnLimits::default(),
/// )?;
/// assert_eq!(format!("{:.1}", turn.offset.angle().get::<degree>()), "-17.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BaseTurn<N: North> {
    /// Direction over the ground outbound.
    pub track: Bearing<N>,
    /// Heading, groundspeed and wind correction outbound.
    pub outbound: Crabbed<N>,
    /// From the reciprocal of the inbound course to the outbound track, right positive.
    pub offset: DirectionChange,
    /// Time from the fix to the beginning of the turn.
    pub outbound_time: Time,
    /// The turn inbound.
    pub turn: RolledTurn,
    /// Distance from the fix at which the wings are level on the inbound course.
    pub established: Length,
    /// Time from the fix until then.
    pub duration: Time,
}

/// Turns inbound of less are not looked for, nor of more, in degrees.
const LEAST_TURN_DEG: f64 = 120.0;
const GREATEST_TURN_DEG: f64 = 340.0;
const TURN_STEP_DEG: f64 = 2.0;

/// What a turn may miss of the inbound course for rounding, as a share of its size.
const ROUNDING: f64 = 1e-9;

const NO_TURN: Error =
    Error::NoMeeting { what: "the base turn does not end on the inbound course before the fix" };

impl<N: North> BaseTurn<N> {
    /// For a published outbound track: the time outbound after which the turn ends on the inbound course.
    ///
    /// The turn goes to the side of the inbound course.
    ///
    /// # Errors
    /// [`Error::NoMeeting`] for a track along the inbound course, and a wind in which the turn ends short of the course whatever the
    /// time, or past the fix; [`Error::WindTooStrong`] if either course cannot be held.
    pub fn for_track(
        inbound: Bearing<N>,
        track: Bearing<N>,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
        limits: &TurnLimits,
    ) -> Result<Self, Error> {
        let frame = Frame::new(inbound, true_airspeed, wind)?;
        let outbound = hold_course(track, true_airspeed, wind)?;
        let offset_deg = inbound.reciprocal().change_to(track).angle().value.to_degrees();
        let side = if offset_deg < 0.0 { 1.0 } else { -1.0 };
        let turned_deg = outbound.heading.way_round_deg(frame.inbound.heading, side);
        let turn = RolledTurn::new(true_airspeed, limits, degrees(side * turned_deg));
        let off_rad = inbound.change_to(outbound.heading).angle().get::<radian>();
        let turned_m = frame.over_ground_m(&turn, off_rad);
        let velocity_m_s = Plane::along_deg(inbound.change_to(track).degrees())
            * outbound.groundspeed.value().get::<meter_per_second>();
        let outbound_s = -turned_m.east / velocity_m_s.east;
        frame.turn(turn, outbound_s, velocity_m_s, turned_m, outbound, track)
    }

    /// For a time outbound: the track on which the turn ends on the inbound course.
    ///
    /// # Errors
    /// [`Error::NoMeeting`] if no heading does it before the fix, [`Error::WindTooStrong`] if the inbound course cannot be held.
    pub fn for_time(
        inbound: Bearing<N>,
        turn_side: HoldingSide,
        outbound_time: ElapsedTime,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
        limits: &TurnLimits,
    ) -> Result<Self, Error> {
        let frame = Frame::new(inbound, true_airspeed, wind)?;
        let side = f64::from(turn_side.code());
        let outbound_s = outbound_time.value().get::<second>();
        let at = |turned_deg: f64| {
            let turn = RolledTurn::new(true_airspeed, limits, degrees(side * turned_deg));
            let off_rad = frame.inbound_off_rad - side * turned_deg.to_radians();
            let velocity_m_s = Plane::along(off_rad) * frame.airspeed_m_s + frame.wind_m_s;
            (turn, velocity_m_s, frame.over_ground_m(&turn, off_rad))
        };
        let across_m = |turned_deg: f64| {
            let (_, velocity_m_s, turned_m) = at(turned_deg);
            (velocity_m_s * outbound_s + turned_m).east
        };
        let mut low = (LEAST_TURN_DEG, across_m(LEAST_TURN_DEG));
        while low.0 < GREATEST_TURN_DEG {
            let high_deg = low.0 + TURN_STEP_DEG;
            let high = (high_deg, across_m(high_deg));
            if low.1 * high.1 <= 0.0 {
                let (turn, velocity_m_s, turned_m) = at(root_between(low.0, high.0, across_m));
                let track_deg = velocity_m_s.east.atan2(velocity_m_s.north).to_degrees();
                let track = inbound.turned_by(DirectionChange::from_degrees(track_deg));
                let outbound = hold_course(track, true_airspeed, wind)?;
                let found = frame.turn(turn, outbound_s, velocity_m_s, turned_m, outbound, track);
                if found.is_ok() {
                    return found;
                }
            }
            low = high;
        }
        Err(NO_TURN)
    }
}

/// The inbound course as the first axis, and what is flown in its frame.
struct Frame<N: North> {
    course: Bearing<N>,
    inbound: Crabbed<N>,
    inbound_off_rad: f64,
    airspeed_m_s: f64,
    wind_m_s: Plane,
}

impl<N: North> Frame<N> {
    fn new(course: Bearing<N>, true_airspeed: TrueAirspeed, wind: Wind<N>) -> Result<Self, Error> {
        let inbound = hold_course(course, true_airspeed, wind)?;
        Ok(Self {
            course,
            inbound,
            inbound_off_rad: inbound.wind_correction.get::<radian>(),
            airspeed_m_s: true_airspeed.value().get::<meter_per_second>(),
            wind_m_s: Plane::along_deg(course.change_to(wind.from).degrees())
                * -wind.speed.value().get::<meter_per_second>(),
        })
    }

    fn over_ground_m(&self, turn: &RolledTurn, heading_off_rad: f64) -> Plane {
        turn.over_ground_m(heading_off_rad, self.wind_m_s)
    }

    fn turn(
        &self,
        turn: RolledTurn,
        outbound_s: f64,
        velocity_m_s: Plane,
        turned_m: Plane,
        outbound: Crabbed<N>,
        track: Bearing<N>,
    ) -> Result<BaseTurn<N>, Error> {
        let end_m = velocity_m_s * outbound_s + turned_m;
        let size_m = turned_m.length() + velocity_m_s.length() * outbound_s.abs();
        // A track along the course gives an infinite time, and that a NaN, which fails here too.
        let ends_there = end_m.east.abs() <= ROUNDING * size_m && end_m.north <= 0.0 && outbound_s >= 0.0;
        if !ends_there {
            return Err(NO_TURN);
        }
        Ok(BaseTurn {
            track,
            outbound,
            offset: self.course.reciprocal().change_to(track),
            outbound_time: seconds(outbound_s),
            turn,
            established: metres(-end_m.north),
            duration: seconds(outbound_s + turn.duration_s()),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::turn::radius;
    use crate::value::units::{degree, knots};
    use crate::value::{RollRate, TrueBearing, TrueNorth, WindSpeed};

    fn inbound() -> TrueBearing {
        TrueBearing::from_degrees(100.0)
    }

    fn airspeed() -> TrueAirspeed {
        TrueAirspeed::new(knots(180.0)).unwrap()
    }

    fn wind(speed_kt: f64) -> Wind<TrueNorth> {
        Wind { from: TrueBearing::from_degrees(40.0), speed: WindSpeed::new(knots(speed_kt)).unwrap() }
    }

    fn time(time_s: f64) -> ElapsedTime {
        ElapsedTime::new(seconds(time_s)).unwrap()
    }

    #[test]
    fn in_calm_air_with_an_instant_roll_it_is_the_circle_between_two_lines() {
        let limits = TurnLimits { roll: RollRate::instant(), ..TurnLimits::default() };
        for side in [HoldingSide::Right, HoldingSide::Left] {
            let found =
                BaseTurn::for_time(inbound(), side, time(120.0), airspeed(), wind(0.0), &limits).unwrap();
            let turn_radius = ArcRadius::new(radius(airspeed(), limits.bank)).unwrap();
            let leg = GroundDistance::new(airspeed().value() * seconds(120.0)).unwrap();
            let exact_deg = base_turn_offset_exact(turn_radius, leg).get::<degree>();
            let sign = f64::from(side.code());
            assert!((found.offset.angle().get::<degree>() + sign * exact_deg).abs() < 1e-9, "{side:?}");
            // Both tangents of a circle from one point are as long.
            assert!((found.established - leg.value()).get::<meter>().abs() < 1e-6);
        }
    }

    #[test]
    fn the_two_ways_to_ask_agree_in_wind() {
        let limits = TurnLimits::default();
        for side in [HoldingSide::Right, HoldingSide::Left] {
            for speed_kt in [0.0, 20.0, 60.0] {
                let by_time =
                    BaseTurn::for_time(inbound(), side, time(150.0), airspeed(), wind(speed_kt), &limits)
                        .unwrap();
                let by_track =
                    BaseTurn::for_track(inbound(), by_time.track, airspeed(), wind(speed_kt), &limits)
                        .unwrap();
                assert!((by_track.outbound_time.value - 150.0).abs() < 1e-6, "{side:?} {speed_kt}");
                assert!((by_track.established - by_time.established).get::<meter>().abs() < 1e-3);
            }
        }
    }

    #[test]
    fn the_published_offsets_come_near() {
        for (speed_kt, minutes, percent) in
            [(100.0, 1.0, 1.9), (100.0, 2.0, -0.5), (250.0, 1.0, 7.0), (250.0, 2.0, 1.9)]
        {
            let airspeed = TrueAirspeed::new(knots(speed_kt)).unwrap();
            let bank = TurnLimits::default().governing_bank(airspeed).0;
            let leg = GroundDistance::new(airspeed.value() * seconds(60.0 * minutes)).unwrap();
            let exact = base_turn_offset_exact(ArcRadius::new(radius(airspeed, bank)).unwrap(), leg);
            let published = base_turn_offset(airspeed, time(60.0 * minutes), DesignUnits::NonSi);
            let off_percent = 100.0 * (published.value / exact.value - 1.0);
            assert!((off_percent - percent).abs() < 0.06, "{speed_kt} {minutes}: {off_percent}");
        }
    }

    #[test]
    fn a_track_along_the_course_has_no_base_turn() {
        let along = inbound().reciprocal();
        let found = BaseTurn::for_track(inbound(), along, airspeed(), wind(10.0), &TurnLimits::default());
        assert!(matches!(found, Err(Error::NoMeeting { .. })));
    }
}
