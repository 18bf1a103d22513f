//! A turn of fixed radius between two courses on WGS-84.

use super::{Circle, Course, MEAN_RADIUS_M, direct, inverse};
use crate::value::units::{Length, degrees, meter, metres};
use crate::value::{ArcRadius, GroundDistance, Position, TrueBearing};

/// A circle that touches two courses, and the arc of it that leads from one to the other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TangentTurn {
    /// The circle.
    pub circle: Circle,
    /// Where the turn leaves the first course.
    pub begin: Position,
    /// Where it joins the second.
    pub end: Position,
    /// Whether it goes to the right.
    pub to_right: bool,
    /// Bearing of its beginning from the centre.
    pub begin_bearing: TrueBearing,
    /// Bearing of its end from the centre.
    pub end_bearing: TrueBearing,
    /// Length of the arc.
    pub length: Length,
}

impl Course {
    /// The turn of a radius that leads from this course onto another, the short way by their directions where they meet.
    ///
    /// The centre is at the radius from both courses, on the inner side: the secant method along the first course brings
    /// its distance from the second to rounding.
    ///
    /// # Accuracy
    /// A micrometre across the courses. The points of contact are soft along them, as every contact is.
    ///
    /// # Degenerate cases
    /// Courses along one line have no such turn, nor have courses that part too little before they close again on the far side
    /// of the earth: none is given. The nearer of the two meetings of the courses says which way is short.
    ///
    /// # Example
    /// ```
    /// use lubberline::earth::Course;
    /// use lubberline::value::{ArcRadius, Latitude, Longitude, Position, TrueBearing, units::*};
    /// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
    ///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
    /// };
    /// let northward = Course { through: at(60.0, -10.0)?, bearing: TrueBearing::new(degrees(0.0))? };
    /// let eastward = Course { through: at(60.5, -10.0)?, bearing: TrueBearing::new(degrees(90.0))? };
    /// let turn = northward.turn_onto(&eastward, ArcRadius::new(nautical_miles(3.0))?);
    /// // A quarter of a circle of 3 NM.
    /// assert!(turn.is_some_and(|turn| turn.to_right && (turn.length - nautical_miles(4.71)).abs() < nautical_miles(0.01)));
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn turn_onto(&self, other: &Self, radius: ArcRadius) -> Option<TangentTurn> {
        let meeting = self.meets(other)?;
        let change_rad = meeting.first_bearing.change_to(meeting.second_bearing).angle().value;
        let side = change_rad.signum();
        let radius_m = radius.value().get::<meter>();
        let square_deg = 90.0 * side;

        // The centre at the radius from the first course, and how far it is too far from the second.
        let center = |along_m: f64| {
            let (point, bearing) = self.at(metres(along_m));
            direct(
                point,
                TrueBearing::from_degrees(bearing.degrees() + square_deg),
                GroundDistance::derived(radius.value()),
            )
            .0
        };
        let excess_m =
            |along_m: f64| side * other.abeam(center(along_m)).cross_track.get::<meter>() - radius_m;
        // As on a sphere, where the distance from the meeting to the turn obeys sin(t / R) = tan(r / R) tan(change / 2).
        let sine = (radius_m / MEAN_RADIUS_M).tan() * (change_rad.abs() / 2.0).tan();
        let mut last_m = meeting.along_first.get::<meter>() - MEAN_RADIUS_M * sine.clamp(0.0, 1.0).asin();
        let mut at_last = excess_m(last_m);
        let mut here_m = last_m + at_last.abs().clamp(10.0, 10_000.0);
        let mut at_here = excess_m(here_m);
        for _ in 0..40 {
            if at_here.abs() < 1e-8 || at_here == at_last {
                break;
            }
            let next_m = here_m - at_here * (here_m - last_m) / (at_here - at_last);
            (last_m, at_last) = (here_m, at_here);
            (here_m, at_here) = (next_m, excess_m(next_m));
        }
        if at_here.is_nan() || at_here.abs() > super::circle::TOUCHING_M {
            return None;
        }
        let circle = Circle { center: center(here_m), radius };
        let (begin, end) = (self.at(metres(here_m)).0, other.abeam(circle.center).point);
        let begin_bearing = inverse(circle.center, begin).initial_bearing?;
        let end_bearing = inverse(circle.center, end).initial_bearing?;
        let sweep_deg = begin_bearing.way_round_deg(end_bearing, side);
        Some(TangentTurn {
            circle,
            begin,
            end,
            to_right: side > 0.0,
            begin_bearing,
            end_bearing,
            length: circle.arc_length(begin_bearing, degrees(side * sweep_deg)),
        })
    }
}
