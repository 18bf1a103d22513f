//! Where two courses meet on WGS-84.

use super::circle::TOUCHING_M;
use super::{Course, MEAN_RADIUS_M, inverse};
use crate::value::units::{Length, meter, metres};
use crate::value::{Position, TrueBearing};

/// Two courses that meet at less than this angle, in radians, are one line as far as a millimetre tells.
const LEAST_ANGLE_RAD: f64 = 1e-9;

/// Half the least sum of distances from one meeting of two courses to their next: half the way round through the
/// poles' ends of the short axis, in metres.
const HALF_WAY_TO_NEXT_M: f64 = std::f64::consts::PI * 6_356_752.0;

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
    /// The bearing of the second course there, against the same meridian.
    pub second_bearing: TrueBearing,
}

type Vector = [f64; 3];

fn dot(one: Vector, other: Vector) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}

/// The horizontal unit vectors to the north and to the east at a point. A pole has those of its longitude.
fn north_east(point: Position) -> (Vector, Vector) {
    let (sine_p, cosine_p) = point.latitude_deg().to_radians().sin_cos();
    let (sine_l, cosine_l) = point.longitude_deg().to_radians().sin_cos();
    ([-sine_p * cosine_l, -sine_p * sine_l, cosine_p], [-sine_l, cosine_l, 0.0])
}

/// A direction at one point as a bearing at another that all but coincides, whose meridian near a pole may be quite another.
fn carried((from, bearing): (Position, TrueBearing), to: Position) -> TrueBearing {
    let ((north, east), (sine, cosine)) = (north_east(from), bearing.radians().sin_cos());
    let [a, b, c] = north.map(|part| part * cosine);
    let [d, e, f] = east.map(|part| part * sine);
    let direction = [a + d, b + e, c + f];
    let (north, east) = north_east(to);
    TrueBearing::from_radians(dot(direction, east).atan2(dot(direction, north)))
}

/// From a point on either of two courses toward their meeting, as it would be on a sphere.
struct Step {
    /// How far the points are apart, in metres.
    apart_m: f64,
    /// By how much each goes on along its course, in metres.
    first_m: f64,
    second_m: f64,
    /// How far across the other course that is, in metres.
    across_m: f64,
}

fn step(first: (Position, TrueBearing), second: (Position, TrueBearing)) -> Step {
    let between = inverse(first.0, second.0);
    let (Some(leaving), Some(arriving)) = (between.initial_bearing, between.final_bearing) else {
        return Step { apart_m: 0.0, first_m: 0.0, second_m: 0.0, across_m: 0.0 };
    };
    let apart_m = between.distance.value().get::<meter>();
    let (at_first, at_second) = (first.1.change_to(leaving), second.1.change_to(arriving));
    // The triangle between the points and the meeting, mirrored if it lies on the other side.
    let opens = (at_second.angle() - at_first.angle()).value.sin();
    let (sine_x, cosine_x) = (at_first.angle().value.copysign(at_first.degrees() * opens)).sin_cos();
    let (sine_y, cosine_y) = (at_second.angle().value.copysign(at_second.degrees() * opens)).sin_cos();
    let (sine_z, cosine_z) = (apart_m / MEAN_RADIUS_M).sin_cos();
    let first_m = MEAN_RADIUS_M * (sine_y * sine_z).atan2(sine_y * cosine_x * cosine_z - cosine_y * sine_x);
    let second_m = MEAN_RADIUS_M * (sine_x * sine_z).atan2(cosine_x * sine_y - sine_x * cosine_y * cosine_z);
    Step { apart_m, first_m, second_m, across_m: (first_m.abs() + second_m.abs()) * opens.abs() }
}

impl Course {
    /// Where two courses meet, extended both ways: of the meetings, which are half a turn of the earth apart, the one with the
    /// least sum of distances from the two points; none for courses along one line.
    ///
    /// The triangle between a point on each course and the meeting is solved on a sphere and both points moved to it, again
    /// and again, which gains digits as the square; begun where the courses are given and, should that not lead to the
    /// nearest meeting, a quarter of the earth further either way along each.
    ///
    /// # Accuracy
    /// A micrometre across the courses; along them that divided by the sine of their angle.
    ///
    /// # Degenerate cases
    /// Courses along one line meet everywhere: none is given. At a pole both bearings are against the meridian of the point's
    /// longitude.
    ///
    /// # Source
    /// C. F. F. Karney, Geodesic intersections, Journal of Surveying Engineering 150 (2024), doi 10.1061/JSUED2.SUENG-1483
    /// (the method, from memory).
    pub fn meets(&self, other: &Self) -> Option<Crossing> {
        let quarter_m = std::f64::consts::FRAC_PI_2 * MEAN_RADIUS_M;
        let starts = [(0.0, 0.0), (quarter_m, 0.0), (-quarter_m, 0.0), (0.0, quarter_m), (0.0, -quarter_m)];
        let mut nearest: Option<(f64, Crossing)> = None;
        for start in starts {
            let Some((sum_m, crossing)) = self.meeting_from(other, start) else { continue };
            if nearest.is_none_or(|(least_m, _)| sum_m < least_m) {
                nearest = Some((sum_m, crossing));
            }
            if sum_m < HALF_WAY_TO_NEXT_M {
                break;
            }
        }
        nearest.map(|(_, crossing)| crossing)
    }

    /// The meeting that steps from a place on either course lead to, with the sum of the distances along both, in metres.
    fn meeting_from(&self, other: &Self, (mut first_m, mut second_m): (f64, f64)) -> Option<(f64, Crossing)> {
        for _ in 0..30 {
            let (first, second) = (self.at(metres(first_m)), other.at(metres(second_m)));
            let step = step(first, second);
            if step.across_m < 1e-7 && step.apart_m < TOUCHING_M {
                let second_bearing = carried(second, first.0);
                let angle_rad = first.1.change_to(second_bearing).angle().value;
                let crossing = Crossing {
                    point: first.0,
                    along_first: metres(first_m),
                    along_second: metres(second_m),
                    first_bearing: first.1,
                    second_bearing,
                };
                let sum_m = first_m.abs() + second_m.abs();
                return (angle_rad.sin().abs() > LEAST_ANGLE_RAD).then_some((sum_m, crossing));
            }
            first_m += step.first_m;
            second_m += step.second_m;
        }
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn course(latitude: f64, longitude: f64, bearing: f64) -> Course {
        Course {
            through: Position::derived(latitude, longitude),
            bearing: TrueBearing::from_degrees(bearing),
        }
    }

    #[test]
    fn meridians_meet_at_the_pole() {
        let (one, other) = (course(80.0, 10.0, 0.0), course(75.0, 100.0, 0.0));
        let met = one.meets(&other).unwrap();
        assert!((met.point.latitude_deg() - 90.0).abs() < 1e-12, "{met:?}");
        let change_deg = met.first_bearing.change_to(met.second_bearing).degrees();
        assert!((change_deg.abs() - 90.0).abs() < 1e-6, "{met:?}");
    }

    /// Great circles would say about where, and be wrong by hundreds of miles where courses meet at so small an angle.
    #[test]
    fn courses_at_a_small_angle_meet_where_they_do() {
        for (here, change_deg, back_m, other_back_m) in [
            (course(15.3, -14.4, 236.5), 0.056, 7_152_000.0, -140_000.0),
            (course(-21.1, 179.999, 226.2), 0.012, -4.3, -3_925_000.0),
            (course(65.1, -69.9, 41.7), 1e-4, 80_000.0, 1_300_000.0),
        ] {
            let there =
                Course { bearing: TrueBearing::from_degrees(here.bearing.degrees() + change_deg), ..here };
            let from = |course: &Course, along_m: f64| {
                let (through, bearing) = course.at(metres(along_m));
                Course { through, bearing }
            };
            let (one, other) = (from(&here, -back_m), from(&there, -other_back_m));
            let met = one.meets(&other).unwrap();
            let miss_m = inverse(met.point, here.through).distance.value().get::<meter>();
            assert!(miss_m * change_deg.to_radians() < 1e-6, "{met:?}: {miss_m}");
        }
    }

    #[test]
    fn one_line_does_not_meet_itself() {
        let line = course(40.0, -30.0, 77.0);
        let (through, bearing) = line.at(metres(300_000.0));
        assert_eq!(line.meets(&Course { through, bearing }), None);
        assert_eq!(line.meets(&Course { through, bearing: bearing.reciprocal() }), None);
        assert_eq!(line.meets(&line), None);
    }
}
