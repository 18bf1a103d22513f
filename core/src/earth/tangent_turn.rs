//! A turn of fixed radius between two courses, or two lines beside courses, on WGS-84.

use super::{Circle, Course, MEAN_RADIUS_M, OffsetLine, inverse};
use crate::value::units::{Length, degrees, meter, metres};
use crate::value::{ArcRadius, Position, TrueBearing};

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
        let without_offset = |course: &Self| OffsetLine { course: *course, offset: metres(0.0) };
        without_offset(self).turn_onto(&without_offset(other), radius)
    }

    /// The same turn where it fits between the ends of two legs: this course begins at its point, the other one ends at its own.
    ///
    /// # Accuracy
    /// As [`Course::turn_onto`]; a millimetre past an end is let pass.
    ///
    /// # Degenerate cases
    /// A turn that would begin before the one point or end after the other is none.
    ///
    /// # Source
    /// FAA Order 8260.54A (2007), Appendix 2 Attachment C, table of turns tangent to two courses: each of the 39 turns it answers fits so, and
    /// the three it prints N/A for (tests 6, 36 and 51) end 31 to 33 NM past the second point. That this is why is inferred.
    pub fn turn_between(&self, other: &Self, radius: ArcRadius) -> Option<TangentTurn> {
        let turn = self.turn_onto(other, radius)?;
        let after_start = self.abeam(turn.begin).along_track.get::<meter>();
        let past_end = other.abeam(turn.end).along_track.get::<meter>();
        (after_start > -1e-3 && past_end < 1e-3).then_some(turn)
    }
}

impl OffsetLine {
    /// The turn of a radius that leads from this line onto another, as [`Course::turn_onto`]: its centre lies at the radius from
    /// both lines, thus on a line beside each course, farther in.
    ///
    /// # Example
    /// ```
    /// use lubberline::earth::{Course, OffsetLine};
    /// use lubberline::value::{ArcRadius, Latitude, Longitude, Position, TrueBearing, units::*};
    /// let at = |latitude, longitude| -> Result<Position, lubberline::Error> {
    ///     Ok(Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?))
    /// };
    /// let northward = Course { through: at(60.0, -10.0)?, bearing: TrueBearing::new(degrees(0.0))? };
    /// let eastward = Course { through: at(60.5, -10.0)?, bearing: TrueBearing::new(degrees(90.0))? };
    /// // Two miles right of both courses the turn begins two miles sooner.
    /// let [one, other] = [northward, eastward].map(|course| OffsetLine { course, offset: nautical_miles(2.0) });
    /// let turn = one.turn_onto(&other, ArcRadius::new(nautical_miles(3.0))?);
    /// assert!(turn.is_some_and(|turn| (one.abeam(turn.begin).along_track - nautical_miles(25.1)).abs() < nautical_miles(0.1)));
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn turn_onto(&self, other: &Self, radius: ArcRadius) -> Option<TangentTurn> {
        let meeting = self.course.meets(&other.course)?;
        let change_rad = meeting.first_bearing.change_to(meeting.second_bearing).angle().value;
        let side = change_rad.signum();
        let farther_in =
            |line: &Self| OffsetLine { course: line.course, offset: line.offset + side * radius.value() };
        let (centers, other_centers) = (farther_in(self), farther_in(other));

        let excess_m = |along_m: f64| other_centers.beside_m(centers.at(metres(along_m)).0);
        // Where lines beside two great circles of a sphere meet.
        let across_rad = |line: &Self| (line.offset / metres(MEAN_RADIUS_M)).value;
        let (first_rad, second_rad) = (across_rad(&centers), across_rad(&other_centers));
        let sine =
            (first_rad.sin() * change_rad.cos() - second_rad.sin()) / (first_rad.cos() * change_rad.sin());
        let mut last_m = meeting.along_first.get::<meter>() + MEAN_RADIUS_M * sine.clamp(-1.0, 1.0).asin();
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
        let circle = Circle { center: centers.at(metres(here_m)).0, radius };
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::nautical_miles;
    use crate::value::{Latitude, Longitude};

    fn course(latitude_deg: f64, longitude_deg: f64, bearing_deg: f64) -> Course {
        let latitude = Latitude::new(degrees(latitude_deg)).unwrap();
        let longitude = Longitude::new(degrees(longitude_deg)).unwrap();
        Course {
            through: Position::new(latitude, longitude),
            bearing: TrueBearing::from_degrees(bearing_deg),
        }
    }

    #[test]
    fn a_turn_between_legs_keeps_to_both() {
        let radius = ArcRadius::new(nautical_miles(3.0)).unwrap();
        let northward = course(60.0, -10.0, 0.0);
        // Eastward 30 NM on, ending so many degrees of longitude from where the courses meet: 3 NM are a tenth of one.
        for (ends_deg, fits) in [(0.2, true), (0.05, false), (-0.2, false)] {
            let eastward = course(60.5, -10.0 + ends_deg, 90.0);
            assert!(northward.turn_onto(&eastward, radius).is_some());
            assert_eq!(northward.turn_between(&eastward, radius).is_some(), fits, "{ends_deg}");
        }
        let beyond = course(60.48, -10.0, 0.0);
        assert_eq!(
            beyond.turn_between(&course(60.5, -9.0, 90.0), radius),
            None,
            "begins before the first point"
        );
    }
}
