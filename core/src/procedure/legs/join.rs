//! How a leg is joined from wherever the one before has left the aircraft.

use super::end::FARTHEST_NM;
use super::flight::{Flight, ON_THE_LINE_M, Path};
use super::onto_arc::DmeArc;
use crate::earth::{Course, direct, inverse};
use crate::lead::recapture::{Recapture, Recaptured};
use crate::lead::{ArcSense, TurnSide};
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::turn::RolledTurn;
use crate::value::units::{degree, degrees, meter, metres, nautical_mile};
use crate::value::{GroundDistance, Position, TrueBearing, TrueNorth};
use crate::{Error, LegReason};

/// A course nearer than this to that of a line is the line's, in degrees: what a turn in the plane leaves of it.
const ALONG_THE_LINE_DEG: f64 = 0.2;

/// An arc is followed from along it, to this many degrees: the turn onto it is led.
pub(super) const ALONG_THE_ARC_DEG: f64 = 5.0;

/// A straight part longer than this leaves more of a line than the plane of a turn does, in metres.
const LONG_WAY_M: f64 = 1000.0;

impl Flight<'_> {
    pub fn join(&mut self, path: Path) -> Result<(), Error> {
        match path {
            Path::Line(line) => self.join_line(line, TurnSide::Shortest),
            Path::Track(course) => self.join_track(course, TurnSide::Shortest),
            Path::Direct(fix) => self.join_direct(fix),
            Path::Arc { center, radius, sense } => self.join_arc(center, radius, sense),
            Path::Whole => Ok(()),
        }
    }

    /// Onto a line: along it already, or by a turn toward it, a straight and a turn onto it. `side` is that of the first turn.
    pub fn join_line(&mut self, line: Course, side: TurnSide) -> Result<(), Error> {
        let abeam = line.abeam(self.now.position);
        let across_m = abeam.cross_track.get::<meter>();
        let shortest = self.now.course.change_to(abeam.bearing);
        if across_m.abs() <= ON_THE_LINE_M && shortest.degrees().abs() <= ALONG_THE_LINE_DEG {
            self.settle(line);
            return Ok(());
        }
        let change_deg = side.way_round_deg(shortest);
        // The course flown now, in the frame of the point abeam.
        let carried = inverse(self.now.position, abeam.point);
        let turned_deg = match (carried.initial_bearing, carried.final_bearing) {
            (Some(begin), Some(end)) => begin.change_to(end).degrees(),
            _ => 0.0,
        };
        let from = TrueBearing::from_degrees(self.now.course.degrees() + turned_deg);
        let (from_crab, onto_crab) = (self.crab(from)?, self.crab(abeam.bearing)?);
        let right = Plane::along_deg(abeam.bearing.degrees() + 90.0);
        let place_m = right * across_m;

        // Where a turn straight to the line's direction would end tells from which side it is to be met.
        let conditions = self.conditions;
        let direct_change = degrees(change_deg) + onto_crab.wind_correction - from_crab.wind_correction;
        let parallel = RolledTurn::new(conditions.true_airspeed, &conditions.limits, direct_change);
        let (from_heading, wind_m_s) =
            (Plane::along_deg(from_crab.heading.degrees()), conditions.wind.velocity_m_s());
        let end_m = place_m + (parallel.displaced_m(from_heading) + wind_m_s * parallel.duration_s());
        if end_m.dot(right).abs() <= ON_THE_LINE_M {
            let leg = self.leg;
            self.turn(parallel, from, leg)?;
            self.settle(line);
            return Ok(());
        }
        let recapture = Recapture {
            from_crab,
            from_heading,
            onto: abeam.bearing,
            onto_crab,
            onto_along: Plane::along_deg(abeam.bearing.degrees()),
            change_deg,
            side: -end_m.dot(right).signum(),
            place_m,
            true_airspeed: conditions.true_airspeed,
            wind: conditions.wind,
            wind_m_s,
            like: &parallel,
            rolls: &parallel.roll_headings(),
        };
        let flown = recapture.solve(conditions.intercept.value().get::<degree>());
        let flown = flown.ok_or_else(|| self.refuse_way("no course toward it can be held"))?;
        let leg = self.leg;
        self.turn(flown.first, from, leg)?;
        self.meet_line(line, &flown)?;
        self.settle(line);
        Ok(())
    }

    /// Straight to where the turn onto a line begins, and that turn. The plane has said where the line is met; over a longer way
    /// it is met on the ellipsoid.
    fn meet_line(&mut self, line: Course, flown: &Recaptured<TrueNorth>) -> Result<(), Error> {
        let leg = self.leg;
        let planned_m = flown.straight_m.max(0.0);
        if planned_m > LONG_WAY_M
            && let Some(crossing) = self.crossing(line)
        {
            let (at_crossing, course) =
                direct(self.now.position, self.now.course, GroundDistance::derived(crossing));
            let change = self.change(course, line.abeam(at_crossing).bearing)?;
            let straight = crossing - change.lead();
            if straight > metres(0.0) {
                self.straight(straight)?;
                return self.turn(*change.turn(), change.inbound(), leg);
            }
        }
        self.straight(metres(planned_m))?;
        self.turn(flown.second, flown.between, leg)
    }

    /// Onto a course from wherever the aircraft is, by one turn, to a side.
    pub fn join_track(&mut self, course: TrueBearing, side: TurnSide) -> Result<(), Error> {
        self.turn_to(course, side)?;
        // A course is held against the north of the place where it is taken up.
        self.now.course = course;
        if let Some(last) = self.segments.last_mut().filter(|last| last.end.time == self.now.time) {
            last.end.course = course;
        }
        Ok(())
    }

    /// A turn to a course against the north of where it begins, to a side.
    pub fn turn_to(&mut self, course: TrueBearing, side: TurnSide) -> Result<(), Error> {
        let change_deg = side.way_round_deg(self.now.course.change_to(course));
        let (before, after) = (self.crab(self.now.course)?, self.crab(course)?);
        let change = degrees(change_deg) + after.wind_correction - before.wind_correction;
        let turn = RolledTurn::new(self.conditions.true_airspeed, &self.conditions.limits, change);
        let leg = self.leg;
        let from = self.now.course;
        self.turn(turn, from, leg)
    }

    /// Straight to a fix: the turn after which the fix lies dead ahead.
    fn join_direct(&mut self, fix: Position) -> Result<(), Error> {
        let line = inverse(self.now.position, fix);
        let bearing = line.initial_bearing.ok_or_else(|| self.refuse("the fix is where the aircraft is"))?;
        // A wind that leaves no way toward it says so itself.
        self.crab(bearing)?;
        let short_deg = self.now.course.change_to(bearing).degrees();
        if short_deg.abs() > 1e-6 {
            let sign = short_deg.signum();
            let fix_m = Plane::along_deg(bearing.degrees()) * line.distance.value().get::<meter>();
            let before = self.crab(self.now.course)?;
            // How far the fix lies to the side of the turn once so much of the course has been changed, and the turn itself.
            let after = |changed_deg: f64| -> Option<(f64, f64, RolledTurn)> {
                let course = TrueBearing::from_degrees(self.now.course.degrees() + sign * changed_deg);
                let crab = self.crab(course).ok()?;
                let change = degrees(sign * changed_deg) + crab.wind_correction - before.wind_correction;
                let turn = RolledTurn::new(self.conditions.true_airspeed, &self.conditions.limits, change);
                let end_m = turn.over_ground_m(before.heading.radians(), self.conditions.wind.velocity_m_s());
                let (along, to_fix_m) = (Plane::along_deg(course.degrees()), fix_m - end_m);
                Some((sign * along.cross(to_fix_m), along.dot(to_fix_m), turn))
            };
            let beside_m = |changed_deg: f64| after(changed_deg).map_or(f64::NAN, |(beside_m, ..)| beside_m);
            let mut found = None;
            for step in 0..72 {
                let (low_deg, high_deg) = (5.0 * f64::from(step), 5.0 * f64::from(step + 1));
                if beside_m(low_deg) >= 0.0 && beside_m(high_deg) < 0.0 {
                    found = after(root_between(low_deg, high_deg, beside_m))
                        .filter(|(_, ahead_m, _)| *ahead_m > 0.0);
                    if found.is_some() {
                        break;
                    }
                }
            }
            let (_, _, turn) = found.ok_or_else(|| {
                let distance_nm = line.distance.value().get::<nautical_mile>();
                self.refuse(LegReason::FixTooClose {
                    distance_nm,
                    radius_nm: self.radius().get::<nautical_mile>(),
                })
            })?;
            let (leg, from) = (self.leg, self.now.course);
            self.turn(turn, from, leg)?;
        }
        // What the plane of the turn has left of the direction is taken up here.
        if let Some(bearing) = inverse(self.now.position, fix).initial_bearing {
            self.now.course = bearing;
            if let Some(last) = self.segments.last_mut() {
                last.end.course = bearing;
            }
        }
        Ok(())
    }

    /// Onto an arc: along it already, or, after a leg that does not end at a fix, straight on until the turn that rolls out on it.
    fn join_arc(&mut self, center: Position, radius: GroundDistance, sense: ArcSense) -> Result<(), Error> {
        let arc = DmeArc { center, radius, sense };
        let before = self.leg.checked_sub(1).and_then(|before| self.legs.get(before));
        let straight_on =
            self.dme_arc(self.leg).is_some() && before.is_some_and(|leg| leg.ends_at().is_none());
        if straight_on && !self.is_along(&arc, self.now.position, self.now.course)? {
            let meets = self.distance_to_arc(&arc);
            let meets = meets.ok_or_else(|| {
                let radius_nm = radius.value().get::<nautical_mile>();
                self.refuse(LegReason::ArcNotMet { radius_nm, allowed_nm: FARTHEST_NM })
            })?;
            let (place, course) = direct(self.now.position, self.now.course, GroundDistance::derived(meets));
            let onto = self.onto_arc(&arc, place, course)?;
            let straight = meets - onto.lead;
            if straight < metres(-ON_THE_LINE_M) {
                return Err(self.refuse(LegReason::ArcTooClose {
                    left_nm: meets.get::<nautical_mile>(),
                    lead_nm: onto.lead.get::<nautical_mile>(),
                }));
            }
            self.straight(straight.max(metres(0.0)))?;
            let leg = self.leg;
            self.turn(onto.turn, onto.course, leg)?;
        }
        let course = self.tangent(center, sense)?;
        let outward = inverse(center, self.now.position);
        let off_m = (outward.distance.value() - radius.value()).get::<meter>();
        if off_m.abs() > ON_THE_LINE_M {
            return Err(self.refuse(LegReason::OffArc {
                radius_nm: radius.value().get::<nautical_mile>(),
                off_nm: metres(off_m.abs()).get::<nautical_mile>(),
                allowed_nm: metres(ON_THE_LINE_M).get::<nautical_mile>(),
            }));
        }
        let angle_deg = self.now.course.change_to(course).degrees().abs();
        if angle_deg > ALONG_THE_ARC_DEG {
            return Err(self.refuse(LegReason::AcrossArc { angle_deg, allowed_deg: ALONG_THE_ARC_DEG }));
        }
        if let Some(bearing) = outward.initial_bearing {
            self.now.position = direct(center, bearing, radius).0;
        }
        self.now.course = course;
        if let Some(last) = self.segments.last_mut() {
            (last.end.position, last.end.course) = (self.now.position, course);
        }
        Ok(())
    }

    /// Whether a place lies on an arc, and a course there along it.
    pub fn is_along(&self, arc: &DmeArc, place: Position, course: TrueBearing) -> Result<bool, Error> {
        let outward = inverse(arc.center, place).final_bearing;
        let outward = outward.ok_or_else(|| self.refuse("the aircraft is at the centre of the arc"))?;
        let along = TrueBearing::from_degrees(outward.degrees() + 90.0 * f64::from(arc.sense.code()));
        Ok(arc.outside_m(place).abs() <= ON_THE_LINE_M
            && course.change_to(along).degrees().abs() <= ALONG_THE_ARC_DEG)
    }
}
