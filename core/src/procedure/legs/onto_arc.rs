//! From a straight course onto an arc: where the turn begins that rolls out on it and along it.

use super::flight::Flight;
use super::leg::Leg;
use crate::earth::{Course, direct, inverse};
use crate::lead::ArcSense;
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::turn::RolledTurn;
use crate::value::units::{Length, degrees, meter, metres, nautical_mile, nautical_miles};
use crate::value::{GroundDistance, Position, TrueBearing};
use crate::{Error, LegReason};

/// A leg that ends no farther than this from the arc after it ends onto it, in nautical miles: a DME reading of an arc is a slant
/// range, which at 20 000 ft and 10 NM lies half a mile inside the arc of that distance along the ground.
const ONTO_THE_ARC_NM: f64 = 1.0;

/// Between which angles at the station, counted from where the course meets the arc in the arc's sense, the roll-out is looked
/// for, and in what steps, in degrees. A right-angled turn takes a few; one that all but reverses the course goes back a long way.
const FIRST_DEG: f64 = -60.0;
const LAST_DEG: f64 = 180.0;
const STEP_DEG: f64 = 2.0;

/// What a sound root leaves of the way across the course, in metres: at a jump of the function, far more is left.
const SOUND_M: f64 = 1e-3;

/// A fix that is passed by no more than this before the roll-out is not passed, in degrees at the station.
const PASSED_DEG: f64 = 1.0;

/// The arc of an AF leg.
#[derive(Debug, Clone, Copy)]
pub(super) struct DmeArc {
    pub center: Position,
    pub radius: GroundDistance,
    pub sense: ArcSense,
}

/// A turn from a course onto an arc.
#[derive(Debug, Clone, Copy)]
pub(super) struct OntoArc {
    /// How far before the place where the course was said to meet the arc it begins; negative past it.
    pub lead: Length,
    pub turn: RolledTurn,
    /// The course before it in the frame of the roll-out, in which it was worked out.
    pub course: TrueBearing,
}

impl DmeArc {
    /// How far outside the arc a place is, in metres.
    pub fn outside_m(&self, place: Position) -> f64 {
        (inverse(self.center, place).distance.value() - self.radius.value()).get::<meter>()
    }

    /// Whether a leg that ends at a place ends onto this arc.
    pub fn is_near(&self, place: Position) -> bool {
        metres(self.outside_m(place).abs()) <= nautical_miles(ONTO_THE_ARC_NM)
    }
}

impl Flight<'_> {
    /// Distance along the course flown now to where it first meets an arc.
    pub fn distance_to_arc(&self, arc: &DmeArc) -> Option<Length> {
        self.first_crossing(|along_m| arc.outside_m(self.place_ahead(along_m)), |_| true)
    }

    /// The turn from a course onto the arc of the leg after, which it meets, or nearly, at a place.
    ///
    /// The end of the turn lies on the arc with the track along it, and its beginning on the course: one equation for the bearing of
    /// the end from the station, solved in a bracket on the ellipsoid, with the turn in the plane about its end. From outside
    /// the turn bends away from the station, from inside around it; the short way of the two is flown.
    pub fn onto_arc(&self, arc: &DmeArc, meets: Position, course: TrueBearing) -> Result<OntoArc, Error> {
        let radial = inverse(arc.center, meets);
        let (Some(from), Some(outward)) = (radial.initial_bearing, radial.final_bearing) else {
            return Err(self.refuse("it ends at the centre of the arc after it"));
        };
        let sign = f64::from(arc.sense.code());
        let side = if outward.change_to(course).degrees().abs() > 90.0 { -sign } else { sign };
        let line = Course { through: meets, bearing: course };
        let at = |angle_deg: f64| self.rolled_out(arc, line, side, from, sign * angle_deg);
        let off_m = |angle_deg: f64| at(angle_deg).map_or(f64::NAN, |(off_m, _)| off_m);
        let mut low_deg = FIRST_DEG;
        let mut at_low_m = off_m(low_deg);
        let mut found: Option<(f64, OntoArc)> = None;
        while low_deg < LAST_DEG {
            let high_deg = low_deg + STEP_DEG;
            let at_high_m = off_m(high_deg);
            if at_low_m * at_high_m <= 0.0 {
                let angle_deg = root_between(low_deg, high_deg, off_m);
                // In a strong wind there may be several; the one that begins nearest to where the arc is met is meant.
                if let Some((left_m, onto)) = at(angle_deg)
                    && left_m.abs() < SOUND_M
                    && found.is_none_or(|(_, other)| onto.lead.abs() < other.lead.abs())
                {
                    found = Some((angle_deg, onto));
                }
            }
            (low_deg, at_low_m) = (high_deg, at_high_m);
        }
        let (angle_deg, onto) = found.ok_or_else(|| {
            let radius_nm = arc.radius.value().get::<nautical_mile>();
            self.refuse(LegReason::NoTurnOntoArc { radius_nm })
        })?;
        self.fix_is_ahead(arc, from, sign * angle_deg)?;
        Ok(onto)
    }

    /// The turn that rolls out on an arc at an angle from a bearing, and how far right of the line it would have to begin.
    fn rolled_out(
        &self,
        arc: &DmeArc,
        line: Course,
        side: f64,
        from: TrueBearing,
        angle_deg: f64,
    ) -> Option<(f64, OntoArc)> {
        let bearing = TrueBearing::from_degrees(from.degrees() + angle_deg);
        let (end, outward) = direct(arc.center, bearing, arc.radius);
        let along_arc = TrueBearing::from_degrees(outward.degrees() + 90.0 * f64::from(arc.sense.code()));
        let abeam = line.abeam(end);
        // The course, carried from the line to the frame of the end.
        let carried = inverse(abeam.point, end);
        let turned_deg = match (carried.initial_bearing, carried.final_bearing) {
            (Some(begin), Some(end)) => begin.change_to(end).degrees(),
            _ => 0.0,
        };
        let course = TrueBearing::from_degrees(abeam.bearing.degrees() + turned_deg);
        let change_deg = course.change_to(along_arc).degrees();
        if change_deg * side < 0.0 {
            return None;
        }
        let (before, after) = (self.crab(course).ok()?, self.crab(along_arc).ok()?);
        let conditions = &self.conditions;
        let change = degrees(change_deg) + after.wind_correction - before.wind_correction;
        let turn = RolledTurn::new(conditions.true_airspeed, &conditions.limits, change);
        let turned_m = turn.over_ground_m(before.heading.radians(), conditions.wind.velocity_m_s());
        let along = Plane::along_deg(course.degrees());
        let off_m = abeam.cross_track.get::<meter>() - along.cross(turned_m);
        let lead_m = along.dot(turned_m) - abeam.along_track.get::<meter>();
        Some((off_m, OntoArc { lead: metres(lead_m), turn, course }))
    }

    /// That the fix which ends the arc is not passed in the turn onto it.
    fn fix_is_ahead(&self, arc: &DmeArc, from: TrueBearing, angle_deg: f64) -> Result<(), Error> {
        let after = self.legs.iter().skip(self.leg).find_map(|leg| match leg {
            Leg::ArcToFix { fix, .. } => Some(fix.position),
            _ => None,
        });
        let Some(fix) = after.and_then(|fix| inverse(arc.center, fix).initial_bearing) else {
            return Ok(());
        };
        let sign = f64::from(arc.sense.code());
        let rolled_out = TrueBearing::from_degrees(from.degrees() + angle_deg);
        let (met_to_fix_deg, fix_to_end_deg) =
            (sign * from.change_to(fix).degrees(), sign * fix.change_to(rolled_out).degrees());
        if met_to_fix_deg >= 0.0 && fix_to_end_deg > PASSED_DEG {
            return Err(
                self.refuse(LegReason::FixPassedInTurn { past_deg: fix_to_end_deg, allowed_deg: PASSED_DEG })
            );
        }
        Ok(())
    }
}
