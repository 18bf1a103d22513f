//! The racetrack that closes in a steady wind.

use super::super::extent::Extent;
use super::{HoldingSide, TimedLeg};
use crate::Error;
use crate::lead::TurnPoint;
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::turn::{RolledTurn, TurnLimits};
use crate::value::units::{
    Angle, Length, Ratio, Time, degrees, knot, meter_per_second, metres, metres_per_second, radian, ratio,
    second, seconds,
};
use crate::value::{Bearing, DirectionChange, Groundspeed, HoldTime, North, TrueAirspeed};
use crate::wind::{Crabbed, Wind, hold_course};

/// How far from half a circle the turn outbound is looked for, and in what steps, in degrees.
const SEARCH_DEG: f64 = 150.0;
const SEARCH_STEP_DEG: f64 = 2.0;

/// What rounding leaves open of a pattern that closes, in metres.
const ROUNDING_M: f64 = 1e-9;

/// A holding pattern in a steady wind: a turn onto an outbound heading over the fix, straight outbound, a turn onto the
/// inbound heading that ends on the inbound course, and that course to the fix.
///
/// Through the air the two turns are [`RolledTurn`]s through `a` and `360° - a`; over the ground wind times duration is added.
/// The pattern closes when the sum of the two turns, of the outbound leg and of the inbound leg is nothing. With the outbound
/// leg's time given, `a` is the angle for which the sum has no part across the inbound course; with the inbound leg's, the one
/// for which the rest of the way lies along the outbound leg. Either is one equation, solved in a bracket; where several
/// angles solve it, the one nearest to half a circle is meant.
///
/// # Accuracy
/// 1e-9 of its size in the plane of the fix.
///
/// # Degenerate cases
/// In calm air the outbound heading is the reciprocal, and both legs take the same time. A time of zero makes the pattern two turns.
///
/// # Source
/// Derived from the equilibrium of a coordinated turn and the triangle of velocities. Rules of the trade stand in
/// [`crate::rules`]; they contradict each other and this.
///
/// # Example
/// ```
/// use lubberline::procedure::{HoldingPattern, HoldingSide, TimedLeg};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{HoldTime, TrueAirspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::Wind;
/// let north_wind = Wind { from: TrueBearing::new(degrees(0.0))?, speed: WindSpeed::new(knots(20.0))? };
/// let pattern = HoldingPattern::new(
///     TrueBearing::new(degrees(270.0))?,
///     HoldingSide::Right,
///     TimedLeg::Inbound,
///     HoldTime::new(seconds(60.0))?,
///     TrueAirspeed::new(knots(150.0))?,
///     north_wind,
///     &TurnLimits::default(),
/// )?;
/// assert_eq!(format!("{:.1}", pattern.outbound_heading().angle().get::<degree>()), "68.5");
/// assert_eq!(format!("{:.2}", pattern.drift_factor().map_or(f64::NAN, |factor| factor.value)), "2.80");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HoldingPattern<N: North> {
    inbound: Bearing<N>,
    inbound_crab: Crabbed<N>,
    /// Signed as the turns: 1 right, -1 left.
    sign: f64,
    outbound_turn: RolledTurn,
    inbound_turn: RolledTurn,
    airspeed_m_s: f64,
    /// Velocity of the air over the ground, along the inbound course and to its right.
    wind_m_s: Plane,
    /// The heading's angle from the inbound course, inbound.
    inbound_off_rad: f64,
    outbound_s: f64,
    inbound_s: f64,
}

/// The two turns for a heading turned outbound, before the legs are known.
struct Turns {
    outbound: RolledTurn,
    inbound: RolledTurn,
    /// Displacement over the ground of the first, and of the second.
    outbound_m: Plane,
    inbound_m: Plane,
    /// Velocity over the ground between them.
    between_m_s: Plane,
}

impl<N: North> HoldingPattern<N> {
    /// The pattern for a time of one of its legs.
    ///
    /// # Errors
    /// [`Error::WindTooStrong`] if the inbound course cannot be held, [`Error::PatternOpen`] if no outbound heading closes the
    /// pattern before the fix.
    pub fn new(
        inbound: Bearing<N>,
        side: HoldingSide,
        timed: TimedLeg,
        time: HoldTime,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
        limits: &TurnLimits,
    ) -> Result<Self, Error> {
        let inbound_crab = hold_course(inbound, true_airspeed, wind)?;
        let airspeed_m_s = true_airspeed.value().get::<meter_per_second>();
        // In the frame of the inbound course, so that calm air leaves whole numbers whole.
        let wind_m_s = Plane::along_deg(inbound.change_to(wind.from).degrees())
            * -wind.speed.value().get::<meter_per_second>();
        let sign = f64::from(side.code());
        let inbound_off_rad = inbound_crab.wind_correction.get::<radian>();
        let inbound_m_s =
            Plane { north: inbound_crab.groundspeed.value().get::<meter_per_second>(), east: 0.0 };
        let given_s = time.value().get::<second>();

        let turns = |turned_deg: f64| -> Turns {
            let outbound = RolledTurn::new(true_airspeed, limits, degrees(sign * turned_deg));
            let inbound = RolledTurn::new(true_airspeed, limits, degrees(sign * (360.0 - turned_deg)));
            let between_rad = inbound_off_rad + sign * turned_deg.to_radians();
            Turns {
                outbound_m: outbound.over_ground_m(inbound_off_rad, wind_m_s),
                inbound_m: inbound.over_ground_m(between_rad, wind_m_s),
                outbound,
                inbound,
                between_m_s: Plane::along(between_rad) * airspeed_m_s + wind_m_s,
            }
        };
        // What is left open across the leg that is free, and the times of both legs; the time of the free one may be negative.
        let closed = |turns: &Turns| -> (f64, f64, f64) {
            let turned_m = turns.outbound_m + turns.inbound_m;
            if timed == TimedLeg::Inbound {
                let rest_m = turned_m + inbound_m_s * given_s;
                let between_m_s = turns.between_m_s.length();
                let unit = turns.between_m_s * (1.0 / between_m_s);
                (unit.cross(rest_m), -unit.dot(rest_m) / between_m_s, given_s)
            } else {
                let straight_s = given_s + before_clock_s(turns, timed);
                let rest_m = turned_m + turns.between_m_s * straight_s;
                (rest_m.east, straight_s, -rest_m.north / inbound_m_s.north)
            }
        };
        let open_m = |turned_deg: f64| closed(&turns(turned_deg)).0;
        let sound = |turned_deg: f64| {
            let turns = turns(turned_deg);
            let (open_m, outbound_s, inbound_s) = closed(&turns);
            let size_m = turns.outbound_m.length() + turns.between_m_s.length() * outbound_s.abs() + 1.0;
            (open_m.abs() <= 1e-6 * size_m && outbound_s >= -1e-9 && inbound_s >= -1e-9).then_some((
                turns,
                outbound_s.max(0.0),
                inbound_s.max(0.0),
            ))
        };
        let found = nearest_to_half_circle(open_m, sound);
        let (turns, outbound_s, inbound_s) = found.ok_or_else(|| Error::PatternOpen {
            inbound_course_deg: inbound.degrees(),
            true_airspeed_kt: true_airspeed.value().get::<knot>(),
            wind_from_deg: wind.from.degrees(),
            wind_speed_kt: wind.speed.value().get::<knot>(),
        })?;
        Ok(Self {
            inbound,
            inbound_crab,
            sign,
            outbound_turn: turns.outbound,
            inbound_turn: turns.inbound,
            airspeed_m_s,
            wind_m_s,
            inbound_off_rad,
            outbound_s,
            inbound_s,
        })
    }

    /// The inbound course.
    pub fn inbound_course(&self) -> Bearing<N> {
        self.inbound
    }

    /// Which way its turns go.
    pub fn side(&self) -> HoldingSide {
        if self.sign > 0.0 { HoldingSide::Right } else { HoldingSide::Left }
    }

    /// The course flown to the fix.
    pub fn course(&self) -> Bearing<N> {
        self.inbound
    }

    /// The part of the wind that blows along the inbound course: from behind on it, from ahead on the reciprocal.
    pub(crate) fn tailwind_inbound_m_s(&self) -> f64 {
        self.wind_m_s.north
    }

    /// Heading, groundspeed and wind correction inbound.
    pub fn inbound(&self) -> Crabbed<N> {
        self.inbound_crab
    }

    /// The heading to fly outbound.
    pub fn outbound_heading(&self) -> Bearing<N> {
        self.inbound_crab
            .heading
            .turned_by(DirectionChange::from_degrees(self.outbound_turn.heading_change().value.to_degrees()))
    }

    /// Outbound heading less the reciprocal of the inbound course, right positive: what the rules call the outbound correction.
    pub fn outbound_correction(&self) -> DirectionChange {
        self.inbound.reciprocal().change_to(self.outbound_heading())
    }

    /// The direction and speed over the ground of the outbound leg.
    pub fn outbound_over_ground(&self) -> (Bearing<N>, Groundspeed) {
        let velocity_m_s = self.between_m_s();
        let off_deg = velocity_m_s.east.atan2(velocity_m_s.north).to_degrees();
        (
            self.inbound.turned_by(DirectionChange::from_degrees(off_deg)),
            Groundspeed::derived(metres_per_second(velocity_m_s.length())),
        )
    }

    /// By what the inbound correction has to be multiplied, and its side changed, to give the outbound one; none without an
    /// inbound correction.
    pub fn drift_factor(&self) -> Option<Ratio> {
        let inbound_deg = self.inbound_crab.wind_correction.value.to_degrees();
        (inbound_deg != 0.0).then(|| Ratio::new::<ratio>(-self.outbound_correction().degrees() / inbound_deg))
    }

    /// The turn outbound, from the fix.
    pub fn outbound_turn(&self) -> &RolledTurn {
        &self.outbound_turn
    }

    /// The turn inbound.
    pub fn inbound_turn(&self) -> &RolledTurn {
        &self.inbound_turn
    }

    /// Time straight outbound, from wings level to the turn inbound.
    pub fn outbound_time(&self) -> Time {
        seconds(self.outbound_s)
    }

    /// Time on the outbound clock: from abeam the fix, or from wings level where the fix is passed abeam in the turn.
    pub fn outbound_clock(&self) -> Time {
        let before_s = abeam_s(self.turned_outbound_m(), self.between_m_s());
        seconds((self.outbound_s - before_s).max(0.0))
    }

    /// Time straight inbound, from wings level to the fix.
    pub fn inbound_time(&self) -> Time {
        seconds(self.inbound_s)
    }

    /// From the fix to the fix.
    pub fn duration(&self) -> Time {
        seconds(
            self.outbound_turn.duration_s()
                + self.outbound_s
                + self.inbound_turn.duration_s()
                + self.inbound_s,
        )
    }

    /// Where the aircraft is a time after it passed the fix, round after round.
    pub fn at(&self, time: Time) -> TurnPoint<N> {
        let duration_s = self.duration().get::<second>();
        let time_s = if duration_s > 0.0 { time.get::<second>().rem_euclid(duration_s) } else { 0.0 };
        let outbound_s = time_s - self.outbound_turn.duration_s();
        let turn_s = outbound_s - self.outbound_s;
        let inbound_s = turn_s - self.inbound_turn.duration_s();
        let out_rad = self.inbound_off_rad + self.outbound_turn.heading_change().get::<radian>();
        let turning_s =
            time_s.min(self.outbound_turn.duration_s()) + turn_s.clamp(0.0, self.inbound_turn.duration_s());
        let inbound_m_s = self.inbound_crab.groundspeed.value().get::<meter_per_second>();
        // Along the inbound course and to its right.
        let place_m = self.outbound_turn.displacement_after_m(time_s, self.inbound_off_rad)
            + self.inbound_turn.displacement_after_m(turn_s, out_rad)
            + self.wind_m_s * turning_s
            + self.between_m_s() * outbound_s.clamp(0.0, self.outbound_s)
            + Plane { north: inbound_m_s, east: 0.0 } * inbound_s.max(0.0);
        let turned_rad =
            self.outbound_turn.turned_after_rad(time_s) + self.inbound_turn.turned_after_rad(turn_s);
        let bank_rad = self.outbound_turn.bank_after_rad(time_s) + self.inbound_turn.bank_after_rad(turn_s);
        TurnPoint::of(
            time,
            place_m.turned(Plane::along_deg(self.inbound.degrees())),
            self.inbound_crab.heading.radians() + turned_rad,
            bank_rad,
        )
    }

    /// Where the outbound leg ends: before the fix along the inbound course, and to the side of the turns.
    pub fn outbound_end(&self) -> (Length, Length) {
        let end_m = self.outbound_end_m();
        (metres(-end_m.north), metres(end_m.east * self.sign))
    }

    /// Distance from the fix at which the wings are level on the inbound course.
    pub fn inbound_leg(&self) -> Length {
        self.inbound_crab.groundspeed.value() * seconds(self.inbound_s)
    }

    /// How long and how wide the path over the ground is, along the inbound course and across it.
    pub fn size(&self) -> (Length, Length) {
        let mut extent = Extent::new();
        let between_off_rad = self.inbound_off_rad + self.outbound_turn.heading_change().get::<radian>();
        extent.turn(Plane::ZERO, &self.outbound_turn, self.inbound_off_rad, self.airspeed_m_s, self.wind_m_s);
        extent.turn(
            self.outbound_end_m(),
            &self.inbound_turn,
            between_off_rad,
            self.airspeed_m_s,
            self.wind_m_s,
        );
        let (low, high) = (extent.low, extent.high);
        (metres(high.north - low.north), metres(high.east - low.east))
    }

    fn between_m_s(&self) -> Plane {
        let heading_rad = self.inbound_off_rad + self.outbound_turn.heading_change().get::<radian>();
        Plane::along(heading_rad) * self.airspeed_m_s + self.wind_m_s
    }

    fn turned_outbound_m(&self) -> Plane {
        self.outbound_turn.over_ground_m(self.inbound_off_rad, self.wind_m_s)
    }

    fn outbound_end_m(&self) -> Plane {
        self.turned_outbound_m() + self.between_m_s() * self.outbound_s
    }

    /// The greatest bank.
    pub fn bank(&self) -> Angle {
        let (one, other) = (self.outbound_turn.bank(), self.inbound_turn.bank());
        if one > other { one } else { other }
    }
}

fn before_clock_s(turns: &Turns, timed: TimedLeg) -> f64 {
    if timed == TimedLeg::Outbound { abeam_s(turns.outbound_m, turns.between_m_s) } else { 0.0 }
}

/// Time from a place ahead of the fix until abeam of it; zero for a place that is past it, or that does not go there.
fn abeam_s(place_m: Plane, velocity_m_s: Plane) -> f64 {
    if place_m.north > 0.0 && velocity_m_s.north < 0.0 { place_m.north / -velocity_m_s.north } else { 0.0 }
}

/// The root nearest to half a circle, looked for in steps away from it, that `sound` accepts.
fn nearest_to_half_circle<T>(open: impl Fn(f64) -> f64, sound: impl Fn(f64) -> Option<T>) -> Option<T> {
    let half = open(180.0);
    if half.abs() < ROUNDING_M
        && let Some(found) = sound(180.0)
    {
        return Some(found);
    }
    let (mut up, mut down): ((f64, f64), _) = ((180.0, half), (180.0, half));
    let mut off_deg = SEARCH_STEP_DEG;
    while off_deg <= SEARCH_DEG {
        for (last, next_deg) in [(&mut up, 180.0 + off_deg), (&mut down, 180.0 - off_deg)] {
            let next = (next_deg, open(next_deg));
            if last.1 * next.1 <= 0.0 {
                let root_deg = root_between(last.0.min(next.0), last.0.max(next.0), &open);
                if let Some(found) = sound(root_deg) {
                    return Some(found);
                }
            }
            *last = next;
        }
        off_deg += SEARCH_STEP_DEG;
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{knots, nautical_mile};
    use crate::value::{RollRate, TrueBearing, TrueNorth, WindSpeed};

    fn pattern(
        side: HoldingSide,
        timed: TimedLeg,
        time_s: f64,
        airspeed_kt: f64,
        from_deg: f64,
        wind_kt: f64,
        limits: &TurnLimits,
    ) -> Result<HoldingPattern<TrueNorth>, Error> {
        let wind = Wind {
            from: TrueBearing::from_degrees(from_deg),
            speed: WindSpeed::new(knots(wind_kt)).unwrap(),
        };
        HoldingPattern::new(
            TrueBearing::from_degrees(40.0),
            side,
            timed,
            HoldTime::new(seconds(time_s)).unwrap(),
            TrueAirspeed::new(knots(airspeed_kt)).unwrap(),
            wind,
            limits,
        )
    }

    /// Flies the pattern in small steps of the equations of motion, over the ground from the fix, along the inbound course
    /// and to its right, and gives the last place and the extremes.
    fn flown_m(pattern: &HoldingPattern<TrueNorth>, airspeed_kt: f64) -> (Plane, Plane, Plane) {
        let airspeed_m_s = knots(airspeed_kt).get::<meter_per_second>();
        let mut place_m = Plane::ZERO;
        let (mut low, mut high) = (Plane::ZERO, Plane::ZERO);
        let mut heading_rad = pattern.inbound_off_rad;
        const STEPS: u32 = 40_000;
        let mut part = |duration_s: f64, turn: Option<&RolledTurn>| {
            let step_s = duration_s / f64::from(STEPS);
            for step in 0..STEPS {
                let bank_rad = turn.map_or(0.0, |turn| turn.bank_after_rad(step_s * (f64::from(step) + 0.5)));
                let rate_rad_s = crate::turn::STANDARD_GRAVITY_M_S2 * bank_rad.tan() / airspeed_m_s;
                let middle_rad = heading_rad + rate_rad_s * step_s / 2.0;
                heading_rad += rate_rad_s * step_s;
                place_m = place_m + (Plane::along(middle_rad) * airspeed_m_s + pattern.wind_m_s) * step_s;
                low = Plane { north: low.north.min(place_m.north), east: low.east.min(place_m.east) };
                high = Plane { north: high.north.max(place_m.north), east: high.east.max(place_m.east) };
            }
        };
        part(pattern.outbound_turn.duration_s(), Some(&pattern.outbound_turn));
        part(pattern.outbound_s, None);
        part(pattern.inbound_turn.duration_s(), Some(&pattern.inbound_turn));
        part(pattern.inbound_s, None);
        (place_m, low, high)
    }

    #[test]
    fn flown_step_by_step_it_comes_back_to_the_fix() {
        for side in [HoldingSide::Right, HoldingSide::Left] {
            for timed in [TimedLeg::Inbound, TimedLeg::Outbound, TimedLeg::OutboundFromLevel] {
                for from_deg in [40.0, 75.0, 130.0, 200.0, 300.0] {
                    let given = pattern(side, timed, 75.0, 210.0, from_deg, 35.0, &TurnLimits::default());
                    let pattern = given.unwrap();
                    let (end_m, low, high) = flown_m(&pattern, 210.0);
                    assert!(end_m.length() < 0.05, "{side:?} {timed:?} {from_deg}: {end_m:?}");
                    let (length, width) = pattern.size();
                    let flown = (high.north - low.north, high.east - low.east);
                    assert!((length.value - flown.0).abs() < 0.1, "{length:?} {flown:?}");
                    assert!((width.value - flown.1).abs() < 0.1, "{width:?} {flown:?}");
                    let clock_s = match timed {
                        TimedLeg::Inbound => pattern.inbound_time(),
                        TimedLeg::Outbound => pattern.outbound_clock(),
                        TimedLeg::OutboundFromLevel => pattern.outbound_time(),
                    };
                    assert!((clock_s.value - 75.0).abs() < 1e-9, "{clock_s:?}");
                }
            }
        }
    }

    #[test]
    fn along_its_path_it_is_where_its_numbers_say() {
        for (side, from_deg) in [(HoldingSide::Right, 75.0), (HoldingSide::Left, 300.0)] {
            let pattern =
                pattern(side, TimedLeg::Outbound, 75.0, 210.0, from_deg, 35.0, &TurnLimits::default())
                    .unwrap();
            let place_m = |time: Time| {
                let point = pattern.at(time);
                let bearing_rad = point.bearing_from_fix.map_or(0.0, |bearing| bearing.radians());
                Plane::along(bearing_rad - pattern.inbound.radians()) * point.distance.value().value
            };
            let out = pattern.outbound_turn().duration() + pattern.outbound_time();
            let end_m = place_m(out);
            let (before, across) = pattern.outbound_end();
            assert!((end_m.north + before.value).abs() < 1e-6, "{end_m:?} {before:?}");
            assert!((end_m.east * pattern.sign - across.value).abs() < 1e-6);
            let heading = pattern.at(out).heading;
            assert!(heading.change_to(pattern.outbound_heading()).degrees().abs() < 1e-9);
            let level_m = place_m(pattern.duration() - pattern.inbound_time());
            assert!((level_m.north + pattern.inbound_leg().value).abs() < 1e-6 && level_m.east.abs() < 1e-6);
            for round in [-1.0, 0.0, 3.0] {
                assert!(place_m(pattern.duration() * round).length() < 1e-5);
            }
            let (mut length_m, mut last_m) = (0.0, Plane::ZERO);
            for step in 1..=10_000 {
                let here_m = place_m(pattern.duration() * (f64::from(step) / 10_000.0));
                // Nowhere faster than airspeed and wind together.
                assert!(
                    (here_m - last_m).length() < 1.001 * knots(245.0).value * pattern.duration().value / 1e4
                );
                length_m += (here_m - last_m).length();
                last_m = here_m;
            }
            assert!(length_m > 2.0 * pattern.size().0.value);
        }
    }

    /// The textbook identity: two half circles at standard rate and two legs of a minute.
    #[test]
    fn in_calm_air_a_standard_pattern_takes_four_minutes() {
        let limits = TurnLimits { roll: RollRate::instant(), ..TurnLimits::default() };
        for timed in [TimedLeg::Inbound, TimedLeg::Outbound] {
            let pattern = pattern(HoldingSide::Left, timed, 60.0, 120.0, 0.0, 0.0, &limits).unwrap();
            assert!((pattern.duration().value - 240.0).abs() < 1e-9, "{:?}", pattern.duration());
            assert_eq!(pattern.outbound_heading(), TrueBearing::from_degrees(220.0));
            assert_eq!(pattern.drift_factor(), None);
            let (length, width) = pattern.size();
            let radius_nm = 120.0 / (60.0 * std::f64::consts::PI);
            assert!((width.get::<nautical_mile>() - 2.0 * radius_nm).abs() < 1e-9);
            assert!((length.get::<nautical_mile>() - 2.0 - 2.0 * radius_nm).abs() < 1e-9);
        }
    }

    #[test]
    fn a_headwind_that_leaves_no_leg_is_refused() {
        let against = |time_s, timed| {
            pattern(HoldingSide::Right, timed, time_s, 100.0, 220.0, 60.0, &TurnLimits::default())
        };
        // A tailwind inbound: with a short time outbound the fix is passed before the turn is done.
        assert!(matches!(against(10.0, TimedLeg::OutboundFromLevel), Err(Error::PatternOpen { .. })));
        assert!(against(240.0, TimedLeg::OutboundFromLevel).is_ok());
        assert!(against(60.0, TimedLeg::Inbound).is_ok());
        let strong =
            pattern(HoldingSide::Right, TimedLeg::Inbound, 60.0, 100.0, 40.0, 100.0, &TurnLimits::default());
        assert!(matches!(strong, Err(Error::WindTooStrong { .. })));
    }
}
