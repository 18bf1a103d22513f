//! The main number: where before a fix to begin the turn that rolls out on the outbound course.

use super::LONGEST_LEAD_NM;
use crate::Error;
use crate::earth::slant_range;
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::turn::{RolledTurn, TurnLimits};
use crate::value::units::{Length, Time, degrees, meter_per_second, metres, nautical_mile};
use crate::value::{
    Bearing, DirectionChange, GroundDistance, HeightAboveStation, North, SlantRange, TrueAirspeed, choice,
};
use crate::wind::{Crabbed, Wind, hold_course};

/// A change this near to 180 degrees is a reversal: the rounding of two courses, and nothing that is flown.
const REVERSAL_DEG: f64 = 1e-9;

/// In how many parts the turn is looked at for the point closest to the fix.
const CLOSEST_SEARCH_PARTS: u32 = 12;

/// Newton's steps to that point, and what a step may be of the distance to be the last.
const NEWTON_STEPS: u32 = 8;
const NEWTON_SHARE: f64 = 1e-6;

choice! {
    /// Which way to turn.
    TurnSide {
        /// The short way from course to course.
        Shortest = 0: "shortest",
        /// To the left, the long way round if need be.
        Left = -1: "left",
        /// To the right, the long way round if need be.
        Right = 1: "right",
    }
}

impl TurnSide {
    /// The signed change that turns to this side, in degrees, the long way round if need be, from the shortest one.
    pub(crate) fn way_round_deg(self, shortest: DirectionChange) -> f64 {
        let shortest_deg = shortest.degrees();
        match self {
            Self::Left if shortest_deg > 0.0 => shortest_deg - 360.0,
            Self::Right if shortest_deg < 0.0 => shortest_deg + 360.0,
            _ => shortest_deg,
        }
    }
}

/// A point of the turn over the ground, relative to the fix, with what the aircraft does there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurnPoint<N: North> {
    /// Time since roll-in began.
    pub time: Time,
    /// Direction from the fix, none over the fix itself.
    pub bearing_from_fix: Option<Bearing<N>>,
    /// Distance from the fix.
    pub distance: GroundDistance,
    /// The heading.
    pub heading: Bearing<N>,
    /// The bank, right positive.
    pub bank: crate::value::units::Angle,
}

impl<N: North> TurnPoint<N> {
    pub(crate) fn of(time: Time, place_m: Plane, heading_rad: f64, bank_rad: f64) -> Self {
        Self {
            time,
            bearing_from_fix: (place_m.length() > 0.0)
                .then(|| Bearing::from_radians(place_m.east.atan2(place_m.north))),
            distance: GroundDistance::derived(metres(place_m.length())),
            heading: Bearing::from_radians(heading_rad),
            bank: degrees(bank_rad.to_degrees()),
        }
    }
}

/// A course change at a fix, flown as a turn that begins before it and rolls out on the outbound course.
///
/// The model: constant true airspeed, steady uniform wind, a coordinated level turn whose bank grows linearly at the roll
/// rate, holds and returns to zero ([`RolledTurn`]). The headings before and after are the wind-corrected ones, so the change
/// of heading is not the change of course. The displacement over the ground is that through the air plus wind times duration;
/// the lead puts its end on the outbound course: with `D` the displacement and `u`, `v` the unit vectors of the inbound and
/// outbound course, `lead = D × v / u × v` and `past = u × D / u × v`. With no wind and an instant roll that is
/// `radius · tan(change / 2)`, the distance of turn anticipation of ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3
/// Chapter 8, 8.1.5.1.1.
///
/// # Accuracy
/// Within 1.5e-5 NM of a fine integration over the ellipsoid for leads to 10 NM, 1.2e-4 NM to 20 NM, if wind and directions
/// are uniform in the fix's own frame, carried parallel along the path (100 000 turns to 80 degrees of latitude). A wind of half
/// the airspeed that keeps its direction against each point's own north instead moves the answer by up to 0.4 percent below
/// 60 degrees of latitude and 0.8 percent to 80.
///
/// # Degenerate cases
/// No change of course is no turn: lead and duration are zero and the radius is infinite. The long way round
/// ([`TurnSide::Left`] for a change to the right) has a negative lead where the turn begins past the fix.
///
/// # Source
/// Derived from the equilibrium of a coordinated turn; the limits are named at [`TurnLimits`].
///
/// # Example
/// ```
/// use lubberline::lead::{CourseChange, TurnSide};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{HeightAboveStation, TrueAirspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::Wind;
/// let course = |value| TrueBearing::new(degrees(value));
/// let change = CourseChange::new(
///     course(40.0)?,
///     course(110.0)?,
///     TrueAirspeed::new(knots(430.0))?,
///     Wind { from: course(270.0)?, speed: WindSpeed::new(knots(60.0))? },
///     &TurnLimits::default(),
///     TurnSide::Shortest,
/// )?;
/// let dme = change.reading_at_roll_in(HeightAboveStation::new(feet(33_000.0))?);
/// assert_eq!(format!("{:.1}", change.lead().get::<nautical_mile>()), "5.4");
/// assert_eq!(format!("{:.1}", dme.value().get::<nautical_mile>()), "7.7");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CourseChange<N: North> {
    pub(super) inbound: Bearing<N>,
    pub(super) outbound: Bearing<N>,
    /// Signed change of course in the direction of the turn, right positive, in degrees.
    pub(super) change_deg: f64,
    pub(super) true_airspeed: TrueAirspeed,
    pub(super) wind: Wind<N>,
    pub(super) limits: TurnLimits,
    pub(super) before: Crabbed<N>,
    pub(super) after: Crabbed<N>,
    pub(super) turn: RolledTurn,
    pub(super) lead_m: f64,
    pub(super) past_fix_m: f64,
    /// The unit vectors of both courses and of the first heading, and the wind's velocity.
    pub(super) along: Plane,
    pub(super) onward: Plane,
    pub(super) heading: Plane,
    pub(super) wind_m_s: Plane,
}

impl<N: North> CourseChange<N> {
    /// The turn from one course to another at a fix.
    ///
    /// # Errors
    /// [`Error::CourseReversal`] for a change of 180 degrees, [`Error::LeadTooLong`] for one so near it that the lead passes
    /// 5 000 NM, [`Error::WindTooStrong`] if either course cannot be held.
    pub fn new(
        inbound: Bearing<N>,
        outbound: Bearing<N>,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
        limits: &TurnLimits,
        side: TurnSide,
    ) -> Result<Self, Error> {
        let shortest = inbound.change_to(outbound);
        let change_deg = side.way_round_deg(shortest);
        let before = hold_course(inbound, true_airspeed, wind)?;
        let after = hold_course(outbound, true_airspeed, wind)?;
        if 180.0 - shortest.degrees().abs() < REVERSAL_DEG {
            return Err(Error::CourseReversal {
                inbound_course_deg: inbound.degrees(),
                outbound_course_deg: outbound.degrees(),
            });
        }
        // No change of course leaves no change of heading either, to the last bit.
        let heading_change = degrees(change_deg) + after.wind_correction - before.wind_correction;
        let turn = RolledTurn::new(true_airspeed, limits, heading_change);
        let (along, onward) = (Plane::along_deg(inbound.degrees()), Plane::along_deg(outbound.degrees()));
        let (heading, wind_m_s) = (Plane::along_deg(before.heading.degrees()), wind.velocity_m_s());
        let (lead_m, past_fix_m) = if change_deg == 0.0 {
            (0.0, 0.0)
        } else {
            let displacement_m = turn.displaced_m(heading) + wind_m_s * turn.duration_s();
            let sine = Plane::along_deg(change_deg).east;
            (displacement_m.cross(onward) / sine, along.cross(displacement_m) / sine)
        };
        let needed_nm = metres(lead_m.abs().max(past_fix_m.abs())).get::<nautical_mile>();
        if needed_nm <= LONGEST_LEAD_NM {
            let limits = *limits;
            Ok(Self {
                inbound,
                outbound,
                change_deg,
                true_airspeed,
                wind,
                limits,
                before,
                after,
                turn,
                lead_m,
                past_fix_m,
                along,
                onward,
                heading,
                wind_m_s,
            })
        } else {
            Err(Error::LeadTooLong { needed_nm, allowed_nm: LONGEST_LEAD_NM })
        }
    }

    /// Distance before the fix at which roll-in begins; negative past it.
    pub fn lead(&self) -> Length {
        metres(self.lead_m)
    }

    /// The lead that would put the turn through the air on the outbound course, if the wind did not carry it along.
    pub(crate) fn lead_without_drift(&self) -> Length {
        let displacement_m = self.turn.displaced_m(self.heading);
        let sine = Plane::along_deg(self.change_deg).east;
        metres(if self.change_deg == 0.0 { 0.0 } else { displacement_m.cross(self.onward) / sine })
    }

    /// Distance past the fix, along the outbound course, at which the wings are level again; negative before it.
    pub fn past_fix_at_roll_out(&self) -> Length {
        metres(self.past_fix_m)
    }

    /// The course flown to the fix.
    pub fn inbound(&self) -> Bearing<N> {
        self.inbound
    }

    /// The course flown from it.
    pub fn outbound(&self) -> Bearing<N> {
        self.outbound
    }

    /// The airspeed it is flown at.
    pub fn true_airspeed(&self) -> TrueAirspeed {
        self.true_airspeed
    }

    /// The wind it is flown in.
    pub fn wind(&self) -> Wind<N> {
        self.wind
    }

    /// What bank, rate of turn and roll it keeps.
    pub fn limits(&self) -> TurnLimits {
        self.limits
    }

    /// Heading, groundspeed and wind correction on the inbound course.
    pub fn before(&self) -> Crabbed<N> {
        self.before
    }

    /// Heading, groundspeed and wind correction on the outbound course.
    pub fn after(&self) -> Crabbed<N> {
        self.after
    }

    /// The turn through the air: bank, what governs it, radius, change of heading, duration.
    pub fn turn(&self) -> &RolledTurn {
        &self.turn
    }

    /// The bearing from the fix on which roll-in begins: the radial, if the fix is a station and its north is `N`.
    pub fn bearing_at_roll_in(&self) -> Bearing<N> {
        if self.lead_m < 0.0 { self.inbound } else { self.inbound.reciprocal() }
    }

    /// The bearing from the fix on which the roll-out ends.
    pub fn bearing_at_roll_out(&self) -> Bearing<N> {
        if self.past_fix_m < 0.0 { self.outbound.reciprocal() } else { self.outbound }
    }

    /// What DME at the fix shows where the turn begins.
    pub fn reading_at_roll_in(&self, height: HeightAboveStation) -> SlantRange {
        slant_range(GroundDistance::derived(metres(self.lead_m.abs())), height)
    }

    /// What DME at the fix shows where the turn ends.
    pub fn reading_at_roll_out(&self, height: HeightAboveStation) -> SlantRange {
        slant_range(GroundDistance::derived(metres(self.past_fix_m.abs())), height)
    }

    /// What DME at the fix shows where the turn begins with so much more lead, which may lie past the fix; none for a margin that is no
    /// number, or beyond any distance on the earth.
    pub fn reading_with_margin(&self, margin: Length, height: HeightAboveStation) -> Option<SlantRange> {
        let ground = GroundDistance::new((self.lead() + margin).abs()).ok()?;
        Some(slant_range(ground, height))
    }

    /// How close to the fix the aircraft comes over the ground, from inbound course to outbound course.
    ///
    /// Zero if it passes over the fix, as it does when the turn begins past it or ends before it.
    pub fn closest_approach(&self) -> GroundDistance {
        if self.lead_m <= 0.0 || self.past_fix_m <= 0.0 {
            return GroundDistance::derived(metres(0.0));
        }
        if let Some(nearest_m) = self.nearest_m() {
            return GroundDistance::derived(metres(nearest_m));
        }
        let step_s = self.turn.duration_s() / f64::from(CLOSEST_SEARCH_PARTS);
        let distance_m = |time_s| self.place_m(time_s).length();
        let (mut best_s, mut best_m) = (0.0, self.lead_m);
        for part in 1..=CLOSEST_SEARCH_PARTS {
            let time_s = step_s * f64::from(part);
            let here_m = distance_m(time_s);
            if here_m < best_m {
                (best_s, best_m) = (time_s, here_m);
            }
        }
        // Closest where the line to the fix stands across the motion over the ground.
        let opening = |time_s: f64| self.place_m(time_s).dot(self.velocity_m_s(time_s));
        let (low_s, high_s) = ((best_s - step_s).max(0.0), (best_s + step_s).min(self.turn.duration_s()));
        let refined_m = distance_m(root_between(low_s, high_s, opening));
        GroundDistance::derived(metres(refined_m.min(best_m)))
    }

    /// The least distance to the fix where the path bends one way only, between two courses that cross at the fix: there is one
    /// place where the line to the fix stands across the motion, and Newton's steps from the middle find it. None if they do not.
    fn nearest_m(&self) -> Option<f64> {
        let slower = self.wind.speed.value() < self.true_airspeed.value();
        if !slower || self.change_deg.abs() >= 180.0 {
            return None;
        }
        let (wind_m_s, heading) = (self.wind_m_s, self.heading);
        let begin_m = self.along * -self.lead_m;
        let mut time_s = 0.5 * self.turn.duration_s();
        for _ in 0..NEWTON_STEPS {
            if !(0.0..=self.turn.duration_s()).contains(&time_s) {
                break;
            }
            let (flown_m, air_m_s, bend_m_s2) = self.turn.motion_after(time_s);
            let place_m = begin_m + flown_m.turned(heading) + wind_m_s * time_s;
            let velocity_m_s = air_m_s.turned(heading) + wind_m_s;
            let slope = velocity_m_s.dot(velocity_m_s) + place_m.dot(bend_m_s2.turned(heading));
            let step_s = -place_m.dot(velocity_m_s) / slope;
            // What is left out after the last step is its square over twice the radius.
            let moved_m = velocity_m_s * step_s;
            if moved_m.dot(moved_m) <= NEWTON_SHARE * NEWTON_SHARE * place_m.dot(place_m) {
                return Some((place_m + moved_m).length());
            }
            time_s += step_s;
        }
        None
    }

    /// Where the aircraft is a time after roll-in began; before the turn on the inbound, after it on the outbound course.
    pub fn at(&self, time: Time) -> TurnPoint<N> {
        let time_s = time.value;
        let place_m = self.place_m(time_s);
        let heading_rad = self.before.heading.radians() + self.turn.turned_after_rad(time_s);
        TurnPoint::of(time, place_m, heading_rad, self.turn.bank_after_rad(time_s))
    }

    /// Place relative to the fix.
    fn place_m(&self, time_s: f64) -> Plane {
        let (within_s, _) = self.turn.within_s(time_s);
        let before_m = self.along * (self.groundspeed_before_m_s() * time_s.min(0.0) - self.lead_m);
        let turning_m = self.turn.displaced_after_m(within_s, self.heading) + self.wind_m_s * within_s;
        let after_s = (time_s - self.turn.duration_s()).max(0.0);
        before_m + turning_m + self.onward * (self.groundspeed_after_m_s() * after_s)
    }

    fn velocity_m_s(&self, time_s: f64) -> Plane {
        let heading_rad = self.before.heading.radians() + self.turn.turned_after_rad(time_s);
        Plane::along(heading_rad) * self.true_airspeed.value().get::<meter_per_second>() + self.wind_m_s
    }

    pub(super) fn groundspeed_before_m_s(&self) -> f64 {
        self.before.groundspeed.value().get::<meter_per_second>()
    }

    pub(super) fn groundspeed_after_m_s(&self) -> f64 {
        self.after.groundspeed.value().get::<meter_per_second>()
    }

    /// Length over the ground of the turn itself.
    pub fn turn_length(&self) -> Length {
        metres(self.turn.ground_length_m(self.heading, self.wind_m_s))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::turn::radius;
    use crate::value::units::{degrees_per_second, knots, meter};
    use crate::value::{Bank, RollRate, TrueBearing, TurnRate, WindSpeed};

    fn bearing(value: f64) -> TrueBearing {
        TrueBearing::from_degrees(value)
    }

    fn wind(from_deg: f64, speed_kt: f64) -> Wind<crate::value::TrueNorth> {
        Wind { from: bearing(from_deg), speed: WindSpeed::new(knots(speed_kt)).unwrap() }
    }

    fn instant() -> TurnLimits {
        TurnLimits {
            bank: Bank::new(degrees(25.0)).unwrap(),
            rate: TurnRate::new(degrees_per_second(3.0)).unwrap(),
            roll: RollRate::instant(),
        }
    }

    #[test]
    fn in_still_air_with_an_instant_roll_the_lead_is_radius_times_tangent_of_half_the_change() {
        let airspeed = TrueAirspeed::new(knots(430.0)).unwrap();
        let radius_m = radius(airspeed, instant().bank).get::<meter>();
        for change in [0.001, 1.0, 30.0, 90.0, 150.0, -45.0, -120.0] {
            let flown = CourseChange::new(
                bearing(77.0),
                bearing(77.0 + change),
                airspeed,
                Wind::calm(),
                &instant(),
                TurnSide::Shortest,
            )
            .unwrap();
            let half = (change.abs() / 2.0_f64).to_radians();
            assert!((flown.lead_m - radius_m * half.tan()).abs() < 1e-6, "{change}: {}", flown.lead_m);
            assert!((flown.past_fix_m - flown.lead_m).abs() < 1e-6);
            let closest_m = radius_m * (1.0 / half.cos() - 1.0);
            assert!((flown.closest_approach().value().get::<meter>() - closest_m).abs() < 1e-3, "{change}");
        }
    }

    #[test]
    fn the_turn_ends_on_the_outbound_course_in_wind() {
        let airspeed = TrueAirspeed::new(knots(250.0)).unwrap();
        for (change, side) in [(60.0, TurnSide::Shortest), (60.0, TurnSide::Left), (-140.0, TurnSide::Right)]
        {
            let flown = CourseChange::new(
                bearing(10.0),
                bearing(10.0 + change),
                airspeed,
                wind(200.0, 90.0),
                &TurnLimits::default(),
                side,
            )
            .unwrap();
            let end_m = flown.place_m(flown.turn.duration_s());
            let expected_m = Plane::along_deg(10.0 + change) * flown.past_fix_m;
            assert!((end_m - expected_m).length() < 1e-6, "{change} {side:?}");
        }
    }

    #[test]
    fn no_change_is_no_turn_and_a_reversal_has_no_lead() {
        let airspeed = TrueAirspeed::new(knots(250.0)).unwrap();
        let change = |outbound| {
            CourseChange::new(
                bearing(10.0),
                bearing(outbound),
                airspeed,
                wind(80.0, 30.0),
                &TurnLimits::default(),
                TurnSide::Shortest,
            )
        };
        let same = change(10.0).unwrap();
        assert_eq!((same.lead_m, same.turn.duration_s()), (0.0, 0.0));
        assert!(matches!(change(190.0), Err(Error::CourseReversal { .. })));
        assert!(matches!(change(190.0001), Err(Error::LeadTooLong { .. })));
    }
}
