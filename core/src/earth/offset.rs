//! A line at a constant distance beside a geodesic of WGS-84. It is no geodesic itself.

use super::circle::{ROUNDING_M, TOUCHING_M};
use super::{Abeam, Circle, Course, CourseReach, MEAN_RADIUS_M, direct};
use crate::numeric::{least_between, root_between};
use crate::value::units::{Length, meter, metres, ratio};
use crate::value::{GroundDistance, Position, TrueBearing};

/// In how long steps a meeting is looked for, in metres. Of more than two meetings within one step, some are missed.
const STEP_M: f64 = 10_000.0;

/// The line whose points lie at a constant distance abeam of a course.
///
/// # Example
/// ```
/// use lubberline::earth::{Course, OffsetLine};
/// use lubberline::value::{Latitude, Longitude, Position, TrueBearing, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// let course = Course { through: at(60.0, -10.0)?, bearing: TrueBearing::new(degrees(90.0))? };
/// // Two miles to the right of an eastward course is two miles south of it.
/// let beside = OffsetLine { course, offset: nautical_miles(2.0) };
/// let (point, _) = beside.at(nautical_miles(0.0));
/// assert!((point.latitude().angle() - degrees(60.0 - 2.0 / 60.0)).abs() < degrees(0.001));
/// // A meridian ten miles on meets it there.
/// let meridian = Course { through: at(58.0, -9.7)?, bearing: TrueBearing::new(degrees(0.0))? };
/// let meetings = beside.meets_course(&meridian, nautical_miles(0.0), nautical_miles(20.0));
/// assert_eq!(meetings.len(), 1);
/// assert!((meetings[0].1 - nautical_miles(9.0)).abs() < nautical_miles(0.1), "9 miles along the course");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OffsetLine {
    /// The course it runs beside.
    pub course: Course,
    /// Its distance, positive to the right of the course.
    pub offset: Length,
}

impl OffsetLine {
    /// Its point abeam of a place along the course, and its direction there, which is that of the course carried across.
    pub fn at(&self, along: Length) -> (Position, TrueBearing) {
        let (foot, bearing) = self.course.at(along);
        let square_deg = 90.0_f64.copysign(self.offset.get::<meter>());
        let toward = TrueBearing::from_degrees(bearing.degrees() + square_deg);
        let (point, onward) = direct(foot, toward, GroundDistance::derived(self.offset.abs()));
        (point, TrueBearing::from_degrees(onward.degrees() - square_deg))
    }

    /// Where a point lies relative to the line: how far right of it, how far along the course, and the point of the line abeam with
    /// the direction of the line there.
    ///
    /// What stands square to the course stands square to every line beside it (Gauss's lemma), so that all are abeam together.
    ///
    /// # Accuracy
    /// As [`Course::abeam`].
    pub fn abeam(&self, point: Position) -> Abeam {
        let found = self.course.abeam(point);
        let (abeam, bearing) = self.at(found.along_track);
        let cross_track = found.cross_track - self.offset;
        Abeam { cross_track, along_track: found.along_track, point: abeam, bearing }
    }

    /// Whether a point lies on the line within a tolerance, which counts across it and before its beginning.
    pub fn contains(&self, reach: CourseReach, point: Position, tolerance: Length) -> bool {
        let found = self.course.abeam(point);
        let reached = reach == CourseReach::BothWays || found.along_track >= -tolerance;
        reached && (found.cross_track - self.offset).abs() <= tolerance
    }

    /// Where it meets a course, looked for along it from one place abeam to another: the meetings in their order.
    ///
    /// # Accuracy
    /// A micrometre across the course met; along it, soft where the lines only just cut each other.
    ///
    /// # Degenerate cases
    /// Lines that touch, or miss each other by less than a millimetre, meet once.
    pub fn meets_course(&self, other: &Course, from: Length, to: Length) -> Vec<(Position, Length)> {
        self.meetings(from, to, |point| other.abeam(point).cross_track.get::<meter>())
    }

    /// Where it meets a circle, looked for as by [`OffsetLine::meets_course`].
    pub fn meets_circle(&self, circle: &Circle, from: Length, to: Length) -> Vec<(Position, Length)> {
        self.meetings(from, to, |point| circle.outside_m(point))
    }

    /// Where it meets another line of its kind, looked for as by [`OffsetLine::meets_course`].
    pub fn meets_offset(&self, other: &Self, from: Length, to: Length) -> Vec<(Position, Length)> {
        self.meetings(from, to, |point| other.beside_m(point))
    }

    /// Where it meets a course nearest to a place along its own, within a reach of that place either way; none if nowhere.
    pub fn meets_course_near(
        &self,
        other: &Course,
        near: Length,
        reach: Length,
    ) -> Option<(Position, Length)> {
        self.nearest(near, reach, |point| other.abeam(point).cross_track.get::<meter>())
    }

    /// Where it meets another line of its kind, looked for as by [`OffsetLine::meets_course_near`].
    pub fn meets_offset_near(&self, other: &Self, near: Length, reach: Length) -> Option<(Position, Length)> {
        self.nearest(near, reach, |point| other.beside_m(point))
    }

    /// Where it meets a circle: the point farthest back along it, then the point farthest on; one point twice if it touches
    /// the circle, none if it misses it.
    ///
    /// # Accuracy
    /// As [`OffsetLine::meets_course`].
    pub fn crosses_circle(&self, circle: &Circle) -> Option<[(Position, Length); 2]> {
        let center = self.course.abeam(circle.center).along_track;
        // The course runs a longer or a shorter way than the line beside it, as the parallels do.
        let shrinking = (self.offset / metres(MEAN_RADIUS_M)).get::<ratio>().cos().abs().max(0.01);
        let reach =
            (1.5 * circle.radius.value() / shrinking).min(metres(std::f64::consts::PI * MEAN_RADIUS_M));
        let mut ends: Option<[(Position, Length); 2]> = None;
        self.each_meeting(
            center - reach,
            center + reach,
            |point| circle.outside_m(point),
            |point, along| {
                let [first, _] = ends.unwrap_or([(point, along); 2]);
                ends = Some([first, (point, along)]);
            },
        );
        ends
    }

    /// How far right of the line a point lies.
    pub(super) fn beside_m(&self, point: Position) -> f64 {
        (self.course.abeam(point).cross_track - self.offset).get::<meter>()
    }

    fn nearest(
        &self,
        near: Length,
        reach: Length,
        beside_m: impl Fn(Position) -> f64 + Copy,
    ) -> Option<(Position, Length)> {
        let mut nearest: Option<(Position, Length)> = None;
        // Half around the earth is everywhere.
        let everywhere = metres(std::f64::consts::PI * MEAN_RADIUS_M);
        let reach = if reach > everywhere { everywhere } else { reach };
        let mut looked = metres(0.0);
        // Outward from the place, so that the usual meeting close by is found at once.
        while nearest.is_none() && looked < reach {
            let farther = (looked + metres(10.0 * STEP_M)).min(reach);
            for (from, to) in [(near + looked, near + farther), (near - farther, near - looked)] {
                self.each_meeting(from, to, beside_m, |point, along| {
                    if nearest.is_none_or(|(_, before)| (along - near).abs() < (before - near).abs()) {
                        nearest = Some((point, along));
                    }
                });
            }
            looked = farther;
        }
        nearest
    }

    fn meetings(
        &self,
        from: Length,
        to: Length,
        beside_m: impl Fn(Position) -> f64,
    ) -> Vec<(Position, Length)> {
        let mut found = Vec::new();
        self.each_meeting(from, to, beside_m, |point, along| found.push((point, along)));
        found
    }

    fn each_meeting(
        &self,
        from: Length,
        to: Length,
        beside_m: impl Fn(Position) -> f64,
        mut met: impl FnMut(Position, Length),
    ) {
        let at_m = |along_m: f64| beside_m(self.at(metres(along_m)).0);
        let (from_m, to_m) = (from.get::<meter>(), to.get::<meter>());
        let steps = ((to_m - from_m) / STEP_M).ceil().clamp(1.0, 10_000.0);
        let place_m = |step: f64| from_m + (to_m - from_m) * step / steps;
        let mut meet = |along_m: f64| {
            if (from_m..=to_m).contains(&along_m) {
                met(self.at(metres(along_m)).0, metres(along_m));
            }
        };
        // A step further on either side, so that a meeting at an end lies between others.
        let (mut before, mut here) = ((place_m(-1.0), at_m(place_m(-1.0))), (from_m, at_m(from_m)));
        if here.1 == 0.0 {
            meet(here.0);
        }
        let mut step = 1.0;
        while step <= steps + 1.0 {
            let next = (place_m(step), at_m(place_m(step)));
            let nearing = here.1.abs() <= before.1.abs().min(next.1.abs()) && here.1.abs() < 2.0 * STEP_M;
            if here.1 * next.1 < 0.0 || next.1 == 0.0 {
                meet(root_between(here.0, next.0, at_m));
            } else if nearing && here.1 * before.1 > 0.0 {
                // It comes near and goes away again: it may touch, or cross and cross back within a step.
                let nearest_m = least_between(before.0, next.0, |along_m| at_m(along_m) * here.1.signum());
                let at_nearest = at_m(nearest_m) * here.1.signum();
                if at_nearest < -ROUNDING_M {
                    meet(root_between(before.0, nearest_m, at_m));
                    meet(root_between(nearest_m, next.0, at_m));
                } else if at_nearest <= TOUCHING_M {
                    meet(nearest_m);
                }
            }
            (before, here) = (here, next);
            step += 1.0;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::ArcRadius;
    use crate::value::units::nautical_miles;

    fn course(latitude: f64, longitude: f64, bearing: f64) -> Course {
        Course {
            through: Position::derived(latitude, longitude),
            bearing: TrueBearing::from_degrees(bearing),
        }
    }

    #[test]
    fn its_points_keep_their_distance_and_its_meetings_lie_on_both_lines() {
        let offset = OffsetLine { course: course(60.0, -10.0, 70.0), offset: nautical_miles(-8.0) };
        for along_nm in [-200.0, 0.0, 350.0] {
            let abeam = offset.course.abeam(offset.at(nautical_miles(along_nm)).0);
            assert!((abeam.cross_track - offset.offset).get::<meter>().abs() < 1e-6);
        }
        let other = course(60.5, -9.0, 170.0);
        let far = nautical_miles(400.0);
        let [(point, along)] = offset.meets_course(&other, -far, far)[..] else { panic!("one meeting") };
        assert!(other.abeam(point).cross_track.get::<meter>().abs() < 1e-6);
        assert!((offset.course.abeam(point).along_track - along).get::<meter>().abs() < 1e-6);

        let circle = Circle {
            center: Position::derived(60.3, -9.2),
            radius: ArcRadius::new(nautical_miles(20.0)).unwrap(),
        };
        let meetings = offset.meets_circle(&circle, -far, far);
        assert_eq!(meetings.len(), 2);
        assert!(meetings.iter().all(|(point, _)| circle.outside_m(*point).abs() < 1e-6));

        let beside = OffsetLine { course: other, offset: nautical_miles(3.0) };
        let [(point, _)] = offset.meets_offset(&beside, -far, far)[..] else { panic!("one meeting") };
        assert!((other.abeam(point).cross_track - beside.offset).get::<meter>().abs() < 1e-6);
    }

    #[test]
    fn what_it_only_just_cuts_or_touches_is_found() {
        let offset = OffsetLine { course: course(-35.0, 179.9, 80.0), offset: nautical_miles(6.0) };
        let far = nautical_miles(60.0);
        let (contact, direction) = offset.at(nautical_miles(13.7));
        let square = |side_deg: f64| TrueBearing::from_degrees(direction.degrees() + side_deg);
        for (depth_m, meetings) in [(-0.01, 0), (0.0, 1), (0.01, 2), (30.0, 2)] {
            let radius = nautical_miles(1.2);
            let (center, _) =
                direct(contact, square(90.0), GroundDistance::derived(radius - metres(depth_m)));
            let circle = Circle { center, radius: ArcRadius::new(radius).unwrap() };
            let found = offset.meets_circle(&circle, -far, far);
            assert_eq!(found.len(), meetings, "{depth_m}: {found:?}");
            assert!(found.iter().all(|(point, _)| circle.outside_m(*point).abs() < 1e-6));
            let ends = offset.crosses_circle(&circle).map(|[one, other]| vec![one, other]);
            assert_eq!(ends.is_some(), meetings > 0);
            if meetings == 2 {
                for (end, meeting) in ends.unwrap().iter().zip(&found) {
                    assert!((end.1 - meeting.1).abs() < metres(1e-3), "{end:?} {meeting:?}");
                }
            }
        }
    }
}
