//! Where a point lies relative to a geodesic of WGS-84: across it, along it, and the point abeam.

use super::{direct, inverse};
use crate::value::units::{Length, meter, metres};
use crate::value::{GroundDistance, Position, TrueBearing, choice};

/// A geodesic through a point in a direction, without an end either way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Course {
    /// A point of it.
    pub through: Position,
    /// Its true bearing there.
    pub bearing: TrueBearing,
}

choice! {
    /// How far a course reaches.
    CourseReach {
        /// From its point onward.
        Onward = 0: "onward",
        /// Both ways.
        BothWays = 1: "both_ways",
    }
}

/// Where a point lies relative to a [`Course`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Abeam {
    /// Distance across the course, positive when the point is right of it.
    pub cross_track: Length,
    /// Distance along the course from its point to the point abeam, positive onward.
    pub along_track: Length,
    /// The point of the course that is nearest.
    pub point: Position,
    /// The true bearing of the course there.
    pub bearing: TrueBearing,
}

impl Course {
    /// The point of the course at a signed distance from [`Course::through`], and the bearing of the course there.
    pub fn at(&self, along: Length) -> (Position, TrueBearing) {
        let distance = GroundDistance::derived(metres(along.get::<meter>().abs()));
        if along.get::<meter>() < 0.0 {
            let (point, back) = direct(self.through, self.bearing.reciprocal(), distance);
            (point, back.reciprocal())
        } else {
            direct(self.through, self.bearing, distance)
        }
    }

    /// Where a point lies relative to the course.
    ///
    /// Abeam, the geodesic to the point stands square to the course. Each step moves along the course by what a sphere would
    /// leave of the way, which shrinks the rest by the square of the flattening and of the distance.
    ///
    /// # Accuracy
    /// A tenth of a micrometre for points within 5 000 NM; checked against a search for the least distance.
    ///
    /// # Degenerate cases
    /// A point on the course has a cross-track of zero. A point about a quarter of the earth away on both sides has no
    /// abeam point that means anything; the nearest found is given.
    ///
    /// # Source
    /// Newton's method on the direction of the geodesic; geodesics by C. F. F. Karney (2013).
    ///
    /// # Example
    /// ```
    /// use lubberline::earth::Course;
    /// use lubberline::value::{Latitude, Longitude, Position, TrueBearing, units::*};
    /// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
    ///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
    /// };
    /// let eastward = Course { through: at(0.0, 0.0)?, bearing: TrueBearing::new(degrees(90.0))? };
    /// // North of an eastward course is left of it.
    /// assert!(eastward.abeam(at(0.5, 1.0)?).cross_track < nautical_miles(-29.0));
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn abeam(&self, point: Position) -> Abeam {
        let radius_m = super::MEAN_RADIUS_M;
        let mut along_m = 0.0;
        let mut best: Option<(f64, Abeam)> = None;
        for _ in 0..12 {
            let (foot, bearing) = self.at(metres(along_m));
            let line = inverse(foot, point);
            let distance_m = line.distance.value().get::<meter>();
            let Some(toward) = line.initial_bearing else {
                return Abeam {
                    cross_track: metres(0.0),
                    along_track: metres(along_m),
                    point: foot,
                    bearing,
                };
            };
            let (sine, cosine) = bearing.change_to(toward).angle().value.sin_cos();
            let (sine_d, cosine_d) = (distance_m / radius_m).sin_cos();
            let rest_m = radius_m * (sine_d * cosine).atan2(cosine_d);
            let abeam = Abeam {
                cross_track: metres(distance_m.copysign(sine)),
                along_track: metres(along_m),
                point: foot,
                bearing,
            };
            if best.is_none_or(|(least_m, _)| rest_m.abs() < least_m) {
                best = Some((rest_m.abs(), abeam));
            }
            if rest_m.abs() < 1e-9 {
                break;
            }
            along_m += rest_m;
        }
        best.map_or(
            Abeam {
                cross_track: metres(f64::NAN),
                along_track: metres(f64::NAN),
                point: self.through,
                bearing: self.bearing,
            },
            |(_, abeam)| abeam,
        )
    }
}

impl Course {
    /// Whether a point lies on the course within a tolerance, which counts across it and before its beginning.
    pub fn contains(&self, reach: CourseReach, point: Position, tolerance: Length) -> bool {
        let found = self.abeam(point);
        let reached = reach == CourseReach::BothWays || found.along_track >= -tolerance;
        reached && found.cross_track.abs() <= tolerance
    }
}

/// Whether a point lies on the geodesic from one point to another within a tolerance, which counts across it and beyond its ends.
///
/// # Degenerate cases
/// Between coincident points the geodesic is that point.
///
/// # Example
/// ```
/// use lubberline::earth::leg_contains;
/// use lubberline::value::{Latitude, Longitude, Position, units::*};
/// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
/// };
/// // The parallel between the two is half a mile off the geodesic.
/// assert!(!leg_contains(at(60.0, -10.0)?, at(60.0, -8.0)?, at(60.0, -9.0)?, nautical_miles(0.1)));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn leg_contains(from: Position, to: Position, point: Position, tolerance: Length) -> bool {
    let line = inverse(from, to);
    let Some(bearing) = line.initial_bearing else {
        return inverse(from, point).distance.value() <= tolerance;
    };
    let found = Course { through: from, bearing }.abeam(point);
    let along = found.along_track >= -tolerance && found.along_track <= line.distance.value() + tolerance;
    along && found.cross_track.abs() <= tolerance
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::nautical_miles;

    fn course(latitude: f64, longitude: f64, bearing: f64) -> Course {
        Course {
            through: Position::derived(latitude, longitude),
            bearing: TrueBearing::from_degrees(bearing),
        }
    }

    #[test]
    fn a_point_set_off_square_to_the_course_is_found_again() {
        for (line, along_nm, across_nm) in [
            (course(61.0, -12.0, 33.0), 120.0, 15.0),
            (course(-40.0, 179.5, 265.0), -300.0, -80.0),
            (course(0.0, 0.0, 90.0), 2000.0, 400.0),
            (course(89.0, 10.0, 5.0), 100.0, 3.0),
            (course(10.0, 10.0, 0.0), 0.0, -0.001),
            (course(52.0, 5.0, 140.0), 3000.0, 1500.0),
        ] {
            let (foot, bearing) = line.at(nautical_miles(along_nm));
            let side =
                bearing.turned_by(crate::value::DirectionChange::from_degrees(90.0_f64.copysign(across_nm)));
            let distance = GroundDistance::new(nautical_miles(across_nm.abs())).unwrap();
            let found = line.abeam(direct(foot, side, distance).0);
            let across_m = (found.cross_track - nautical_miles(across_nm)).get::<meter>();
            let along_m = (found.along_track - nautical_miles(along_nm)).get::<meter>();
            assert!(across_m.abs() < 1e-6 && along_m.abs() < 1e-6, "{line:?}: {across_m} {along_m}");
        }
    }
}
