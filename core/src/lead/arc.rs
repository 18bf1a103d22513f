//! Turns between a radial and a DME arc about the same station.

use crate::Error;
use crate::numeric::root_to;
use crate::plane::Plane;
use crate::turn::{RolledTurn, TurnLimits};
use crate::value::units::{Angle, Time, degrees, meter, metres, nautical_mile};
use crate::value::{ArcRadius, Bearing, GroundDistance, North, TrueAirspeed, choice};
use crate::wind::{Crabbed, Wind, hold_course};

choice! {
    /// Which way round the station an arc is flown, seen from above.
    ArcSense {
        /// With the station on the right.
        Clockwise = 1: "clockwise",
        /// With the station on the left.
        Counterclockwise = -1: "counterclockwise",
    }
}

choice! {
    /// Which way a radial is flown.
    RadialFlown {
        /// Toward the station.
        Inbound = 0: "inbound",
        /// Away from it.
        Outbound = 1: "outbound",
    }
}

/// A turn between a radial and an arc.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArcTurn<N: North> {
    /// The bearing from the station at which roll-in begins: the radial itself, or the lead radial on the arc.
    pub bearing_at_roll_in: Bearing<N>,
    /// The distance from the station at which roll-in begins.
    pub distance_at_roll_in: GroundDistance,
    /// The bearing from the station at which the wings are level again.
    pub bearing_at_roll_out: Bearing<N>,
    /// The distance from the station at which the wings are level again.
    pub distance_at_roll_out: GroundDistance,
    /// The angle at the station between roll-in and roll-out, positive in the sense of the arc.
    pub angle_at_station: Angle,
    /// The change of heading, right positive.
    pub heading_change: Angle,
    /// From roll-in to wings level.
    pub duration: Time,
}

/// Where on a radial to begin the turn onto an arc, so as to roll out on it and along it.
///
/// The end of the turn lies on the arc, with the track along it; the displacement of that turn is known, and so is its
/// beginning. The bearing of the end is the one for which the beginning lies on the radial: one equation, solved in a
/// bracket. In still air with an instant roll the distance is `sqrt(D² + 2 D r)` inbound and `sqrt(D² - 2 D r)` outbound.
///
/// # Accuracy
/// In the plane to rounding error; 2e-4 NM on the ellipsoid for turns within 20 NM of the station.
///
/// # Errors
/// [`Error::ArcTooTight`] if the turn does not fit (outbound in still air: an arc below twice the turn radius),
/// [`Error::WindTooStrong`] if the radial cannot be held.
///
/// # Source
/// Derived from the geometry of tangent circles.
///
/// # Example
/// ```
/// use lubberline::lead::{ArcSense, RadialFlown, onto_arc};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{ArcRadius, RollRate, TrueAirspeed, TrueBearing, units::*};
/// use lubberline::wind::Wind;
/// let limits = TurnLimits { roll: RollRate::instant(), ..TurnLimits::default() };
/// let arc = ArcRadius::new(nautical_miles(12.0))?;
/// let turn = onto_arc(
///     TrueBearing::new(degrees(325.0))?,
///     RadialFlown::Inbound,
///     arc,
///     ArcSense::Counterclockwise,
///     TrueAirspeed::new(knots(180.0))?,
///     Wind::calm(),
///     &limits,
/// )?;
/// // Inbound to an arc of 12 NM the turn begins one lead before it.
/// assert_eq!(format!("{:.2}", turn.distance_at_roll_in.value().get::<nautical_mile>()), "12.97");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn onto_arc<N: North>(
    radial: Bearing<N>,
    flown: RadialFlown,
    arc: ArcRadius,
    sense: ArcSense,
    true_airspeed: TrueAirspeed,
    wind: Wind<N>,
    limits: &TurnLimits,
) -> Result<ArcTurn<N>, Error> {
    let join = Join::new(radial, flown, arc, sense, true_airspeed, wind, limits)?;
    let (angle_deg, turn, displacement_m) = join.solve(|angle_deg| {
        let (turn, displacement_m) = join.turn(join.along, join.arc_crab(angle_deg)?);
        let begin_m = join.on_arc_m(angle_deg) - displacement_m;
        Some((begin_m, turn, displacement_m))
    })?;
    let begin_m = join.on_arc_m(angle_deg) - displacement_m;
    Ok(ArcTurn {
        bearing_at_roll_in: radial,
        distance_at_roll_in: GroundDistance::derived(metres(begin_m.length())),
        bearing_at_roll_out: join.bearing(angle_deg),
        distance_at_roll_out: GroundDistance::derived(arc.value()),
        angle_at_station: degrees(angle_deg),
        heading_change: turn.heading_change(),
        duration: turn.duration(),
    })
}

/// Where on an arc to begin the turn onto a radial: the lead radial.
///
/// The turn begins on the arc along it, and its end must lie on the radial: one equation for the bearing of its
/// beginning. In still air with an instant roll the lead is `asin(r / (D - r))` toward the station and
/// `asin(r / (D + r))` away from it.
///
/// # Accuracy
/// As [`onto_arc`].
///
/// # Errors
/// [`Error::ArcTooTight`] if the turn does not fit (toward the station in still air: an arc below twice the turn radius),
/// [`Error::WindTooStrong`] if the radial cannot be held.
///
/// # Source
/// As [`onto_arc`].
///
/// # Example
/// ```
/// use lubberline::lead::{ArcSense, RadialFlown, off_arc};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{ArcRadius, RollRate, TrueAirspeed, TrueBearing, units::*};
/// use lubberline::wind::Wind;
/// let limits = TurnLimits { roll: RollRate::instant(), ..TurnLimits::default() };
/// let arc = ArcRadius::new(nautical_miles(12.0))?;
/// let turn = off_arc(
///     TrueBearing::new(degrees(325.0))?,
///     RadialFlown::Inbound,
///     arc,
///     ArcSense::Counterclockwise,
///     TrueAirspeed::new(knots(180.0))?,
///     Wind::calm(),
///     &limits,
/// )?;
/// // The lead radial: so many degrees before the radial is met.
/// assert_eq!(format!("{:.2}", turn.angle_at_station.get::<degree>()), "5.29");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn off_arc<N: North>(
    radial: Bearing<N>,
    flown: RadialFlown,
    arc: ArcRadius,
    sense: ArcSense,
    true_airspeed: TrueAirspeed,
    wind: Wind<N>,
    limits: &TurnLimits,
) -> Result<ArcTurn<N>, Error> {
    let join = Join::new(radial, flown, arc, sense, true_airspeed, wind, limits)?;
    let (lead_deg, turn, displacement_m) = join.solve(|lead_deg| {
        let (turn, displacement_m) = join.turn(join.arc_crab(-lead_deg)?, join.along);
        Some((join.on_arc_m(-lead_deg) + displacement_m, turn, displacement_m))
    })?;
    let end_m = join.on_arc_m(-lead_deg) + displacement_m;
    Ok(ArcTurn {
        bearing_at_roll_in: join.bearing(-lead_deg),
        distance_at_roll_in: GroundDistance::derived(arc.value()),
        bearing_at_roll_out: radial,
        distance_at_roll_out: GroundDistance::derived(metres(end_m.length())),
        angle_at_station: degrees(lead_deg),
        heading_change: turn.heading_change(),
        duration: turn.duration(),
    })
}

/// A radial and an arc to be joined by a turn. Angles at the station are counted from the radial in the arc's sense.
struct Join<'a, N: North> {
    radial: Bearing<N>,
    arc: ArcRadius,
    sense: ArcSense,
    true_airspeed: TrueAirspeed,
    wind: Wind<N>,
    limits: &'a TurnLimits,
    /// A turn of the same aircraft, at that airspeed within those limits.
    like: RolledTurn,
    /// The course along the radial, how it is held, and the unit vector of the radial.
    along: (Bearing<N>, Crabbed<N>),
    toward: Plane,
    wind_m_s: Plane,
}

impl<'a, N: North> Join<'a, N> {
    fn new(
        radial: Bearing<N>,
        flown: RadialFlown,
        arc: ArcRadius,
        sense: ArcSense,
        true_airspeed: TrueAirspeed,
        wind: Wind<N>,
        limits: &'a TurnLimits,
    ) -> Result<Self, Error> {
        let course = match flown {
            RadialFlown::Inbound => radial.reciprocal(),
            RadialFlown::Outbound => radial,
        };
        Ok(Self {
            radial,
            arc,
            sense,
            true_airspeed,
            wind,
            limits,
            like: RolledTurn::new(true_airspeed, limits, degrees(90.0)),
            along: (course, hold_course(course, true_airspeed, wind)?),
            toward: Plane::along_deg(radial.degrees()),
            wind_m_s: wind.velocity_m_s(),
        })
    }

    fn sign(&self) -> f64 {
        f64::from(self.sense.code())
    }

    fn bearing(&self, angle_deg: f64) -> Bearing<N> {
        Bearing::from_degrees(self.radial.degrees() + self.sign() * angle_deg)
    }

    fn on_arc_m(&self, angle_deg: f64) -> Plane {
        Plane::along_deg(self.bearing(angle_deg).degrees()) * self.arc.value().get::<meter>()
    }

    fn arc_course(&self, angle_deg: f64) -> Bearing<N> {
        Bearing::from_degrees(self.radial.degrees() + self.sign() * (angle_deg + 90.0))
    }

    fn arc_crab(&self, angle_deg: f64) -> Option<(Bearing<N>, Crabbed<N>)> {
        let course = self.arc_course(angle_deg);
        Some((course, hold_course(course, self.true_airspeed, self.wind).ok()?))
    }

    /// The turn between two courses and its displacement over the ground.
    fn turn(&self, from: (Bearing<N>, Crabbed<N>), to: (Bearing<N>, Crabbed<N>)) -> (RolledTurn, Plane) {
        let ((from, before), (to, after)) = (from, to);
        let change = from.change_to(to).angle() + after.wind_correction - before.wind_correction;
        let turn = self.like.another(change);
        let displacement_m = turn.over_ground_m(before.heading.radians(), self.wind_m_s);
        (turn, displacement_m)
    }

    /// The smallest angle at the station, from zero up, for which the free end of the turn lies on the radial.
    fn solve(
        &self,
        end: impl Fn(f64) -> Option<(Plane, RolledTurn, Plane)>,
    ) -> Result<(f64, RolledTurn, Plane), Error> {
        let toward = self.toward;
        let off_m = |angle_deg: f64| end(angle_deg).map_or(f64::NAN, |(end_m, _, _)| toward.cross(end_m));
        // In still air the angle lies between 0 and 90; a wind along the arc moves it by less than that.
        const STEP_DEG: f64 = 2.0;
        // The last step of the search: what rounding leaves of the angle is less, and it is four nanometres on an arc of 12 NM.
        const ANGLE_DEG: f64 = 1e-11;
        let smallest = 1e-6 * self.arc.value().get::<meter>();
        let mut high_deg = -60.0;
        let mut off_high_m = off_m(high_deg);
        for _ in 0..90 {
            let (low_deg, off_low_m) = (high_deg, off_high_m);
            high_deg += STEP_DEG;
            off_high_m = off_m(high_deg);
            if off_low_m * off_high_m <= 0.0 {
                let angle_deg = root_to(ANGLE_DEG, low_deg, high_deg, off_m);
                if let Some((end_m, turn, displacement_m)) = end(angle_deg)
                    && toward.cross(end_m).abs() < smallest
                    && toward.dot(end_m) >= -smallest
                {
                    return Ok((angle_deg, turn, displacement_m));
                }
            }
        }
        let (bank, _) = self.limits.governing_bank(self.true_airspeed);
        Err(Error::ArcTooTight {
            arc_radius_nm: self.arc.value().get::<nautical_mile>(),
            turn_radius_nm: crate::turn::radius(self.true_airspeed, bank).get::<nautical_mile>(),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degree, knots};
    use crate::value::{RollRate, TrueBearing, WindSpeed};

    type Solve = fn(
        TrueBearing,
        RadialFlown,
        ArcRadius,
        ArcSense,
        TrueAirspeed,
        Wind<crate::value::TrueNorth>,
        &TurnLimits,
    ) -> Result<ArcTurn<crate::value::TrueNorth>, Error>;

    fn solved(
        solve: Solve,
        flown: RadialFlown,
        arc_nm: f64,
        sense: ArcSense,
    ) -> Result<(ArcTurn<crate::value::TrueNorth>, f64), Error> {
        let limits = TurnLimits { roll: RollRate::instant(), ..TurnLimits::default() };
        let airspeed = TrueAirspeed::new(knots(250.0)).unwrap();
        let radius_nm =
            crate::turn::radius(airspeed, limits.governing_bank(airspeed).0).get::<nautical_mile>();
        let arc = ArcRadius::new(crate::value::units::nautical_miles(arc_nm)).unwrap();
        solve(TrueBearing::from_degrees(300.0), flown, arc, sense, airspeed, Wind::calm(), &limits)
            .map(|turn| (turn, radius_nm))
    }

    #[test]
    fn in_still_air_the_planar_forms_come_out() {
        for sense in [ArcSense::Clockwise, ArcSense::Counterclockwise] {
            for arc_nm in [6.0, 10.0, 25.0] {
                let (turn, r) = solved(onto_arc, RadialFlown::Inbound, arc_nm, sense).unwrap();
                let begin_nm = turn.distance_at_roll_in.value().get::<nautical_mile>();
                assert!((begin_nm - (arc_nm * arc_nm + 2.0 * arc_nm * r).sqrt()).abs() < 1e-9);
                let (turn, r) = solved(onto_arc, RadialFlown::Outbound, arc_nm, sense).unwrap();
                let begin_nm = turn.distance_at_roll_in.value().get::<nautical_mile>();
                assert!((begin_nm - (arc_nm * arc_nm - 2.0 * arc_nm * r).sqrt()).abs() < 1e-9);
                let (turn, r) = solved(off_arc, RadialFlown::Inbound, arc_nm, sense).unwrap();
                let lead_deg = turn.angle_at_station.get::<degree>();
                assert!((lead_deg - (r / (arc_nm - r)).asin().to_degrees()).abs() < 1e-8, "{lead_deg}");
                let (turn, r) = solved(off_arc, RadialFlown::Outbound, arc_nm, sense).unwrap();
                let lead_deg = turn.angle_at_station.get::<degree>();
                assert!((lead_deg - (r / (arc_nm + r)).asin().to_degrees()).abs() < 1e-8, "{lead_deg}");
            }
        }
    }

    #[test]
    fn an_arc_below_twice_the_turn_radius_cannot_be_joined_on_its_inside() {
        assert!(matches!(
            solved(onto_arc, RadialFlown::Outbound, 2.0, ArcSense::Clockwise),
            Err(Error::ArcTooTight { .. })
        ));
        assert!(matches!(
            solved(off_arc, RadialFlown::Inbound, 2.0, ArcSense::Clockwise),
            Err(Error::ArcTooTight { .. })
        ));
    }

    #[test]
    fn in_wind_a_join_is_found_either_way_round() {
        let wind =
            Wind { from: TrueBearing::from_degrees(250.0), speed: WindSpeed::new(knots(60.0)).unwrap() };
        let arc = ArcRadius::new(crate::value::units::nautical_miles(12.0)).unwrap();
        let airspeed = TrueAirspeed::new(knots(200.0)).unwrap();
        for sense in [ArcSense::Clockwise, ArcSense::Counterclockwise] {
            for flown in [RadialFlown::Inbound, RadialFlown::Outbound] {
                let onto = onto_arc(
                    TrueBearing::from_degrees(20.0),
                    flown,
                    arc,
                    sense,
                    airspeed,
                    wind,
                    &TurnLimits::default(),
                )
                .unwrap();
                let off = off_arc(
                    TrueBearing::from_degrees(20.0),
                    flown,
                    arc,
                    sense,
                    airspeed,
                    wind,
                    &TurnLimits::default(),
                )
                .unwrap();
                assert!(onto.angle_at_station > degrees(0.0) && off.angle_at_station > degrees(0.0));
            }
        }
    }
}
