//! Where a circle meets a course, and another circle, on WGS-84.

use super::circle::{ROUNDING_M, TOUCHING_M};
use super::{Circle, Course, inverse};
use crate::numeric::root_between;
use crate::value::units::{Length, meter, metres};
use crate::value::{Position, TrueBearing};

impl Course {
    /// Where a course, extended both ways, meets a circle: the point farther back along it, then the point farther on; one
    /// point twice if it touches the circle, none if it misses it.
    ///
    /// # Accuracy
    /// A micrometre across; along, soft where the course only just cuts the circle.
    ///
    /// # Degenerate cases
    /// A miss below a millimetre counts as touching.
    pub fn meets_circle(&self, circle: &Circle) -> Option<[(Position, Length); 2]> {
        let abeam = self.abeam(circle.center);
        let nearest_m = abeam.along_track.get::<meter>();
        let outside_m = |along_m: f64| circle.outside_m(self.at(metres(along_m)).0);
        let at_nearest = outside_m(nearest_m);
        if at_nearest > TOUCHING_M {
            return None;
        }
        if at_nearest > -ROUNDING_M {
            let touching = (abeam.point, abeam.along_track);
            return Some([touching, touching]);
        }
        // No chord is longer than the diameter; a little more is outside on either side.
        let beyond_m = 1.01 * circle.radius.value().get::<meter>() + 1000.0;
        let at = |along_m: f64| (self.at(metres(along_m)).0, metres(along_m));
        Some([
            at(root_between(nearest_m - beyond_m, nearest_m, outside_m)),
            at(root_between(nearest_m, nearest_m + beyond_m, outside_m)),
        ])
    }
}

impl Circle {
    /// Where two circles meet: the point left of the line from this centre to the other, then the point right of it; one point
    /// twice if they touch, none if they do not meet. Circles about one centre do not meet.
    ///
    /// # Accuracy
    /// As [`Course::meets_circle`].
    pub fn meets(&self, other: &Self) -> Option<[Position; 2]> {
        let line = inverse(self.center, other.center);
        let toward = line.initial_bearing?;
        let outside_m = |turned_deg: f64| {
            other.outside_m(self.at(TrueBearing::from_degrees(toward.degrees() + turned_deg)).0)
        };
        let (nearest_m, farthest_m) = (outside_m(0.0), outside_m(180.0));
        if nearest_m > TOUCHING_M || farthest_m < -TOUCHING_M {
            return None;
        }
        let at = |turned_deg: f64| self.at(TrueBearing::from_degrees(toward.degrees() + turned_deg)).0;
        if nearest_m > -ROUNDING_M {
            return Some([at(0.0), at(0.0)]);
        }
        if farthest_m < ROUNDING_M {
            return Some([at(180.0), at(180.0)]);
        }
        Some([at(root_between(-180.0, 0.0, outside_m)), at(root_between(0.0, 180.0, outside_m))])
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::earth::direct;
    use crate::value::{ArcRadius, GroundDistance};

    /// A course and a circle pushed into each other by so little meet a long way apart: 2 sqrt(2 r depth).
    #[test]
    fn a_grazing_course_meets_the_circle_twice_and_a_touching_one_once() {
        let contact = Position::derived(70.0, 179.999);
        let course = Course { through: contact, bearing: TrueBearing::from_degrees(130.0) };
        let square = TrueBearing::from_degrees(220.0);
        let radius_m = 20_000.0;
        for (depth_m, apart_m) in [(1e-4_f64, 4.0_f64), (1e-2, 40.0), (1.0, 400.0)] {
            let center = direct(contact, square, GroundDistance::derived(metres(radius_m - depth_m))).0;
            let circle = Circle { center, radius: ArcRadius::new(metres(radius_m)).unwrap() };
            let [(one, along_one), (other, along_other)] = course.meets_circle(&circle).unwrap();
            let between_m = (along_other - along_one).get::<meter>();
            assert!((between_m / apart_m - 1.0).abs() < 0.01, "{depth_m}: {between_m}");
            assert!(circle.outside_m(one).abs() < 1e-6 && circle.outside_m(other).abs() < 1e-6);
        }
        let at = |depth_m: f64| {
            let center = direct(contact, square, GroundDistance::derived(metres(radius_m - depth_m))).0;
            course.meets_circle(&Circle { center, radius: ArcRadius::new(metres(radius_m)).unwrap() })
        };
        assert!(at(-5e-4).is_some_and(|[one, other]| one == other) && at(-2e-3).is_none());
    }
}
