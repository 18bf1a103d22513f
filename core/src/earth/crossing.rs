//! Where courses and circles meet on WGS-84.

use super::circle::TOUCHING_M;
use super::{Circle, Course, inverse};
use crate::numeric::root_between;
use crate::value::units::{Length, meter, metres};
use crate::value::{Position, TrueBearing};

/// Two courses that meet at less than this angle, in radians, are one line as far as a millimetre tells.
const LEAST_ANGLE_RAD: f64 = 1e-9;

/// A point where two courses meet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Crossing {
    /// Where.
    pub point: Position,
    /// Distance along the first course, negative behind its point.
    pub along_first: Length,
    /// Distance along the second course, negative behind its point.
    pub along_second: Length,
    /// The bearing of the first course there.
    pub first_bearing: TrueBearing,
    /// The bearing of the second course there.
    pub second_bearing: TrueBearing,
}

/// A point on the unit sphere, and the direction of a course there, as vectors.
type Vector = [f64; 3];

fn cross(one: Vector, other: Vector) -> Vector {
    let ([a, b, c], [d, e, f]) = (one, other);
    [b * f - c * e, c * d - a * f, a * e - b * d]
}

fn dot(one: Vector, other: Vector) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}

/// The point of a course and the direction in which it leaves it, on the unit sphere.
fn on_sphere(course: &Course) -> (Vector, Vector) {
    let (sine_p, cosine_p) = course.through.latitude_deg().to_radians().sin_cos();
    let (sine_l, cosine_l) = course.through.longitude_deg().to_radians().sin_cos();
    let (sine_a, cosine_a) = course.bearing.radians().sin_cos();
    let point = [cosine_p * cosine_l, cosine_p * sine_l, sine_p];
    let north = [-sine_p * cosine_l, -sine_p * sine_l, cosine_p];
    let east = [-sine_l, cosine_l, 0.0];
    let [a, b, c] = north.map(|part| part * cosine_a);
    let [d, e, f] = east.map(|part| part * sine_a);
    (point, [a + d, b + e, c + f])
}

impl Course {
    /// Where two courses meet, extended both ways: the nearer of the two meeting points, which are all but antipodal; none for
    /// courses along one line.
    ///
    /// The great circles say about where; the secant method along the first course brings its distance from the second to
    /// rounding.
    ///
    /// # Accuracy
    /// A micrometre across the courses; along them that divided by the sine of their angle.
    ///
    /// # Degenerate cases
    /// "Nearer" is by the sum of the distances from the two points. Courses along one line meet everywhere: none is given.
    pub fn meets(&self, other: &Self) -> Option<Crossing> {
        let ((point_1, toward_1), (point_2, toward_2)) = (on_sphere(self), on_sphere(other));
        let meeting = cross(cross(point_1, toward_1), cross(point_2, toward_2));
        let angle = |point: Vector, toward: Vector, sign: f64| {
            (sign * dot(meeting, toward)).atan2(sign * dot(meeting, point))
        };
        let radius_m = super::MEAN_RADIUS;
        // Either meeting point of the circles, whichever is nearer to both points.
        let far = |sign: f64| angle(point_1, toward_1, sign).abs() + angle(point_2, toward_2, sign).abs();
        let sign = if far(1.0) <= far(-1.0) { 1.0 } else { -1.0 };
        let guess_m = radius_m * angle(point_1, toward_1, sign);
        let across_m = |along_m: f64| other.abeam(self.at(metres(along_m)).0).cross_track.get::<meter>();

        let (mut last_m, mut at_last) = (guess_m, across_m(guess_m));
        let mut here_m = guess_m + at_last.abs().max(100.0);
        let mut at_here = across_m(here_m);
        for _ in 0..30 {
            if at_here.abs() < 1e-8 || at_here == at_last {
                break;
            }
            let next_m = here_m - at_here * (here_m - last_m) / (at_here - at_last);
            (last_m, at_last) = (here_m, at_here);
            (here_m, at_here) = (next_m, across_m(next_m));
        }
        let (point, first_bearing) = self.at(metres(here_m));
        let abeam = other.abeam(point);
        let angle_rad = first_bearing.change_to(abeam.bearing).angle().value.sin().abs();
        (at_here.abs() < TOUCHING_M && angle_rad > LEAST_ANGLE_RAD).then_some(Crossing {
            point,
            along_first: metres(here_m),
            along_second: abeam.along_track,
            first_bearing,
            second_bearing: abeam.bearing,
        })
    }

    /// Where a course, extended both ways, meets a circle: the point farther back along it, then the point farther on; one
    /// point twice if it touches the circle, none if it misses it.
    ///
    /// # Accuracy
    /// A micrometre across; along, soft where the course only just cuts the circle. A miss below a millimetre counts as touching.
    pub fn meets_circle(&self, circle: &Circle) -> Option<[(Position, Length); 2]> {
        let abeam = self.abeam(circle.center);
        let nearest_m = abeam.along_track.get::<meter>();
        let outside_m = |along_m: f64| circle.outside_m(self.at(metres(along_m)).0);
        let at_nearest = outside_m(nearest_m);
        if at_nearest.abs() <= TOUCHING_M {
            let touching = (abeam.point, abeam.along_track);
            return Some([touching, touching]);
        }
        if at_nearest > 0.0 {
            return None;
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
        for (touching_m, turned_deg) in [(nearest_m, 0.0), (farthest_m, 180.0)] {
            if touching_m.abs() <= TOUCHING_M {
                let (point, _) = self.at(TrueBearing::from_degrees(toward.degrees() + turned_deg));
                return Some([point, point]);
            }
        }
        if nearest_m > 0.0 || farthest_m < 0.0 {
            return None;
        }
        let at = |turned_deg: f64| self.at(TrueBearing::from_degrees(toward.degrees() + turned_deg)).0;
        Some([at(root_between(-180.0, 0.0, outside_m)), at(root_between(0.0, 180.0, outside_m))])
    }
}
