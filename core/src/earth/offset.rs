//! A line at a constant distance beside a geodesic of WGS-84. It is no geodesic itself.

use super::{Circle, Course, direct};
use crate::numeric::root_between;
use crate::value::units::{Length, meter, metres};
use crate::value::{GroundDistance, Position, TrueBearing};

/// In how long steps a meeting is looked for, in metres. Two meetings within one step are missed.
const STEP_M: f64 = 10_000.0;

/// The line whose points lie at a constant distance abeam of a course.
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

    /// Where it meets a course, looked for along it from one place abeam to another: the meetings in their order.
    ///
    /// # Accuracy
    /// A micrometre across the course met.
    pub fn meets_course(&self, other: &Course, from: Length, to: Length) -> Vec<(Position, Length)> {
        self.meetings(from, to, |point| other.abeam(point).cross_track.get::<meter>())
    }

    /// Where it meets a circle, looked for as by [`OffsetLine::meets_course`].
    pub fn meets_circle(&self, circle: &Circle, from: Length, to: Length) -> Vec<(Position, Length)> {
        self.meetings(from, to, |point| circle.outside_m(point))
    }

    /// Where it meets another line of its kind, looked for as by [`OffsetLine::meets_course`].
    pub fn meets_offset(&self, other: &Self, from: Length, to: Length) -> Vec<(Position, Length)> {
        self.meetings(from, to, |point| (other.course.abeam(point).cross_track - other.offset).get::<meter>())
    }

    /// Where it meets a course nearest to a place along its own, within a reach of that place either way; none if nowhere.
    pub fn meets_course_near(
        &self,
        other: &Course,
        near: Length,
        reach: Length,
    ) -> Option<(Position, Length)> {
        let beside_m = |point| other.abeam(point).cross_track.get::<meter>();
        let mut nearest: Option<(Position, Length)> = None;
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
        let steps = ((to_m - from_m) / STEP_M).ceil().clamp(0.0, 10_000.0);
        let (mut low_m, mut at_low, mut step) = (from_m, at_m(from_m), 1.0);
        while step <= steps {
            let high_m = from_m + (to_m - from_m) * step / steps;
            let at_high = at_m(high_m);
            // A meeting at the very end of a step belongs to it, and not to the next one too.
            if at_low * at_high < 0.0 || at_high == 0.0 || (at_low == 0.0 && step == 1.0) {
                let along_m = root_between(low_m, high_m, at_m);
                met(self.at(metres(along_m)).0, metres(along_m));
            }
            (low_m, at_low) = (high_m, at_high);
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
}
