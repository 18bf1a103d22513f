//! Plain functions of turns of fixed radius between courses, and between lines beside courses, on the ellipsoid.

use super::course::{FIRST_COURSE, SECOND_COURSE, course};
use super::earth::{latitude, longitude};
use super::offset::offset;
use super::{any_nan, outputs};
use crate::Error;
use crate::earth::OffsetLine;
use crate::value::ArcRadius;
use crate::value::units::{degree, nautical_mile};

outputs! {
    /// A turn of fixed radius between two courses: what [`tangent_turn`] gives.
    TangentTurn {
        /// Latitude of the centre.
        center_latitude_deg,
        /// Longitude of the centre.
        center_longitude_deg,
        /// Latitude where the turn leaves the first course.
        begin_latitude_deg,
        /// Its longitude.
        begin_longitude_deg,
        /// Latitude where it joins the second course.
        end_latitude_deg,
        /// Its longitude.
        end_longitude_deg,
        /// Bearing of its beginning from the centre, 0 to 360.
        begin_bearing_deg,
        /// Bearing of its end from the centre, 0 to 360.
        end_bearing_deg,
        /// Length of the arc.
        length_nm,
        /// 1 for a turn to the right, -1 to the left.
        side,
    }
}

impl TangentTurn {
    /// The plain numbers of a typed turn.
    fn of(turn: crate::earth::TangentTurn) -> Self {
        Self {
            center_latitude_deg: latitude(turn.circle.center),
            center_longitude_deg: longitude(turn.circle.center),
            begin_latitude_deg: latitude(turn.begin),
            begin_longitude_deg: longitude(turn.begin),
            end_latitude_deg: latitude(turn.end),
            end_longitude_deg: longitude(turn.end),
            begin_bearing_deg: turn.begin_bearing.angle().get::<degree>(),
            end_bearing_deg: turn.end_bearing.angle().get::<degree>(),
            length_nm: turn.length.get::<nautical_mile>(),
            side: if turn.to_right { 1.0 } else { -1.0 },
        }
    }
}

/// The turn of fixed radius that leads from one course onto another on the WGS-84 ellipsoid.
///
/// The short way by the directions of the courses where they meet; its centre is at the radius from both.
///
/// # Arguments
/// - `lat1_deg`: latitude of a point of the first course, -90 to 90
/// - `lon1_deg`: longitude of that point, any finite number
/// - `course1_deg`: true course there, any finite number
/// - `lat2_deg`: latitude of a point of the second course, -90 to 90
/// - `lon2_deg`: longitude of that point, any finite number
/// - `course2_deg`: true course there, any finite number
/// - `radius_nm`: radius of the turn, above 0 to 5000
///
/// # Accuracy
/// A micrometre across the courses; the contacts are soft along them.
///
/// # Degenerate cases
/// The nearer of the two meetings of the courses says which way is short; it matters where the radius is large and the courses
/// are all but reciprocal.
///
/// # Errors
/// A value outside its range, courses along one line, or courses that no such turn touches.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// # Example
/// ```
/// # use lubberline::plain::tangent_turn;
/// assert_eq!(format!("{:.4}", tangent_turn(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0)?.center_latitude_deg), "41.4240");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn tangent_turn(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    radius_nm: f64,
) -> Result<TangentTurn, Error> {
    if any_nan(&[lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm]) {
        return Ok(TangentTurn::NAN);
    }
    let first = course(FIRST_COURSE, lat1_deg, lon1_deg, course1_deg)?;
    let second = course(SECOND_COURSE, lat2_deg, lon2_deg, course2_deg)?;
    let found = first.turn_onto(&second, ArcRadius::named("radius_nm", radius_nm)?);
    let turn = found.ok_or(Error::NoMeeting { what: "no turn of that radius touches both courses" })?;
    Ok(TangentTurn::of(turn))
}

/// The turn of fixed radius between two legs on the WGS-84 ellipsoid: from a course that begins at a point onto one that ends at another.
///
/// The turn of `tangent_turn`, if it begins on the first course after its point and ends on the second before its own.
///
/// # Arguments
/// - `lat1_deg`: latitude of the first leg's beginning, -90 to 90
/// - `lon1_deg`: longitude of it, any finite number
/// - `course1_deg`: true course there, any finite number
/// - `lat2_deg`: latitude of the second leg's end, -90 to 90
/// - `lon2_deg`: longitude of it, any finite number
/// - `course2_deg`: true course there, any finite number
/// - `radius_nm`: radius of the turn, above 0 to 5000
///
/// # Accuracy
/// As `tangent_turn`. A millimetre past an end is let pass.
///
/// # Degenerate cases
/// A turn that ends at the second leg's end fits.
///
/// # Errors
/// A value outside its range, courses along one line, or a turn that does not fit between the points.
///
/// # Source
/// FAA Order 8260.54A (2007), Appendix 2 Attachment C, table of turns tangent to two courses: each of the 39 it answers fits so; for the
/// three that would end past the second point (tests 6, 36 and 51) it prints N/A. That this is its reason is inferred.
///
/// # Example
/// ```
/// # use lubberline::plain::tangent_turn_between_legs;
/// assert_eq!(format!("{:.4}", tangent_turn_between_legs(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0)?.end_latitude_deg), "41.2853");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn tangent_turn_between_legs(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    radius_nm: f64,
) -> Result<TangentTurn, Error> {
    if any_nan(&[lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm]) {
        return Ok(TangentTurn::NAN);
    }
    let first = course(FIRST_COURSE, lat1_deg, lon1_deg, course1_deg)?;
    let second = course(SECOND_COURSE, lat2_deg, lon2_deg, course2_deg)?;
    let found = first.turn_between(&second, ArcRadius::named("radius_nm", radius_nm)?);
    let turn =
        found.ok_or(Error::NoMeeting { what: "no turn of that radius fits between the two points" })?;
    Ok(TangentTurn::of(turn))
}

/// The turn of fixed radius that leads from a line beside one course onto a line beside another, on the WGS-84 ellipsoid.
///
/// The short way by the directions of the courses where they meet; its centre is at the radius from both lines.
///
/// # Arguments
/// - `lat1_deg`: latitude of a point of the first course, -90 to 90
/// - `lon1_deg`: longitude of that point, any finite number
/// - `course1_deg`: true course there, any finite number
/// - `offset1_nm`: distance of the line beside the first course, right positive, -5000 to 5000
/// - `lat2_deg`: latitude of a point of the second course, -90 to 90
/// - `lon2_deg`: longitude of that point, any finite number
/// - `course2_deg`: true course there, any finite number
/// - `offset2_nm`: distance of the line beside the second course, right positive, -5000 to 5000
/// - `radius_nm`: radius of the turn, above 0 to 5000
///
/// # Accuracy
/// A micrometre across the lines; the contacts are soft along them.
///
/// # Degenerate cases
/// With offsets of zero it is `tangent_turn`.
///
/// # Errors
/// A value outside its range, courses along one line, or lines that no such turn touches.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// # Example
/// ```
/// # use lubberline::plain::offset_tangent_turn;
/// assert_eq!(format!("{:.3}", offset_tangent_turn(60.0, -10.0, 0.0, 2.0, 60.5, -10.0, 90.0, 2.0, 3.0)?.begin_latitude_deg), "60.417");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[allow(clippy::too_many_arguments, reason = "two lines of four numbers, and a radius")]
pub fn offset_tangent_turn(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    offset1_nm: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    offset2_nm: f64,
    radius_nm: f64,
) -> Result<TangentTurn, Error> {
    let numbers =
        [lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm, radius_nm];
    if any_nan(&numbers) {
        return Ok(TangentTurn::NAN);
    }
    let first = OffsetLine {
        course: course(FIRST_COURSE, lat1_deg, lon1_deg, course1_deg)?,
        offset: offset("offset1_nm", offset1_nm)?,
    };
    let second = OffsetLine {
        course: course(SECOND_COURSE, lat2_deg, lon2_deg, course2_deg)?,
        offset: offset("offset2_nm", offset2_nm)?,
    };
    let found = first.turn_onto(&second, ArcRadius::named("radius_nm", radius_nm)?);
    let turn = found.ok_or(Error::NoMeeting { what: "no turn of that radius touches both lines" })?;
    Ok(TangentTurn::of(turn))
}
