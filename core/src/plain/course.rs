//! Plain functions of courses on the ellipsoid: where a point lies, and where two meet.

use super::earth::{latitude, longitude, position};
use super::{any_nan, outputs};
use crate::Error;
use crate::earth::{Course, CourseReach, leg_contains};
use crate::value::units::{degree, nautical_mile, nautical_miles};
use crate::value::{Bearing, Quantity};

/// A course from plain numbers under the names its caller gave them.
pub(super) fn course(
    names: [&'static str; 3],
    latitude_deg: f64,
    longitude_deg: f64,
    course_deg: f64,
) -> Result<Course, Error> {
    let [latitude, longitude, bearing] = names;
    Ok(Course {
        through: position(latitude, latitude_deg, longitude, longitude_deg)?,
        bearing: Bearing::named(bearing, course_deg)?,
    })
}

pub(super) const ONE_COURSE: [&str; 3] = ["lat_deg", "lon_deg", "course_deg"];
pub(super) const FIRST_COURSE: [&str; 3] = ["lat1_deg", "lon1_deg", "course1_deg"];
pub(super) const SECOND_COURSE: [&str; 3] = ["lat2_deg", "lon2_deg", "course2_deg"];

outputs! {
    /// Where a point lies relative to a course: what [`cross_track`] gives.
    CrossTrack {
        /// Distance across the course, positive right of it.
        cross_track_nm,
        /// Distance along the course to the point abeam, positive onward.
        along_track_nm,
        /// Latitude of the point of the course abeam.
        abeam_latitude_deg,
        /// Longitude of the point of the course abeam.
        abeam_longitude_deg,
        /// True course there, 0 to 360.
        abeam_course_deg,
    }
}

/// Signed cross-track and along-track distance of a point from a course, and the point abeam, on the WGS-84 ellipsoid.
///
/// Abeam, the geodesic to the point stands square to the course; found by Newton's method on its direction.
///
/// # Arguments
/// - `lat_deg`: latitude of a point of the course, -90 to 90
/// - `lon_deg`: longitude of that point, any finite number
/// - `course_deg`: true course there, any finite number
/// - `point_lat_deg`: latitude of the point, -90 to 90
/// - `point_lon_deg`: longitude of the point, any finite number
///
/// # Accuracy
/// A tenth of a micrometre within 5 000 NM.
///
/// # Degenerate cases
/// A point on the course is at a cross-track of zero. A point a quarter of the earth away on both sides has no abeam point that means anything.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// # Example
/// ```
/// # use lubberline::plain::cross_track;
/// assert_eq!(format!("{:.2}", cross_track(0.0, 0.0, 90.0, 0.5, 1.0)?.cross_track_nm), "-29.85");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cross_track(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    point_lat_deg: f64,
    point_lon_deg: f64,
) -> Result<CrossTrack, Error> {
    if any_nan(&[lat_deg, lon_deg, course_deg, point_lat_deg, point_lon_deg]) {
        return Ok(CrossTrack::NAN);
    }
    let line = course(ONE_COURSE, lat_deg, lon_deg, course_deg)?;
    let found = line.abeam(position("point_lat_deg", point_lat_deg, "point_lon_deg", point_lon_deg)?);
    Ok(CrossTrack {
        cross_track_nm: found.cross_track.get::<nautical_mile>(),
        along_track_nm: found.along_track.get::<nautical_mile>(),
        abeam_latitude_deg: latitude(found.point),
        abeam_longitude_deg: longitude(found.point),
        abeam_course_deg: found.bearing.angle().get::<degree>(),
    })
}

outputs! {
    /// Where two courses meet: what [`course_crossing`] gives.
    CourseCrossing {
        /// Latitude of the point.
        latitude_deg,
        /// Longitude of the point.
        longitude_deg,
        /// Distance along the first course, negative behind its point.
        along_first_nm,
        /// Distance along the second course, negative behind its point.
        along_second_nm,
        /// True bearing of the first course there, 0 to 360.
        first_course_deg,
        /// True bearing of the second course there, 0 to 360.
        second_course_deg,
    }
}

/// Where two courses (two radials) meet on the WGS-84 ellipsoid.
///
/// Extended both ways; of the two meeting points, which are all but antipodal, the one nearer to both points. Its distances along the courses
/// say whether it lies ahead (positive) or behind.
///
/// # Arguments
/// - `lat1_deg`: latitude of a point of the first course, -90 to 90
/// - `lon1_deg`: longitude of that point, any finite number
/// - `course1_deg`: true course there, any finite number
/// - `lat2_deg`: latitude of a point of the second course, -90 to 90
/// - `lon2_deg`: longitude of that point, any finite number
/// - `course2_deg`: true course there, any finite number
///
/// # Accuracy
/// A micrometre across the courses; along them that divided by the sine of their angle.
///
/// # Degenerate cases
/// Courses along one line meet everywhere. At a pole the courses there are against the meridian of the longitude given.
///
/// # Errors
/// A value outside its range, or courses along one line.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// # Example
/// ```
/// # use lubberline::plain::course_crossing;
/// assert_eq!(format!("{:.3}", course_crossing(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2113055556, 187.0)?.along_first_nm), "77.961");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn course_crossing(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
) -> Result<CourseCrossing, Error> {
    if any_nan(&[lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg]) {
        return Ok(CourseCrossing::NAN);
    }
    let first = course(FIRST_COURSE, lat1_deg, lon1_deg, course1_deg)?;
    let second = course(SECOND_COURSE, lat2_deg, lon2_deg, course2_deg)?;
    let found =
        first.meets(&second).ok_or(Error::NoMeeting { what: "the two courses run along one line" })?;
    Ok(CourseCrossing {
        latitude_deg: latitude(found.point),
        longitude_deg: longitude(found.point),
        along_first_nm: found.along_first.get::<nautical_mile>(),
        along_second_nm: found.along_second.get::<nautical_mile>(),
        first_course_deg: found.first_bearing.angle().get::<degree>(),
        second_course_deg: found.second_bearing.angle().get::<degree>(),
    })
}

/// Whether a point lies on a course: 1 if it does, 0 if not.
///
/// Within the tolerance across it, and for a course that reaches onward also behind its point.
///
/// # Arguments
/// - `lat_deg`: latitude of a point of the course, -90 to 90
/// - `lon_deg`: longitude of that point, any finite number
/// - `course_deg`: true course there, any finite number
/// - `reach`: how far the course reaches
/// - `point_lat_deg`: latitude of the point, -90 to 90
/// - `point_lon_deg`: longitude of the point, any finite number
/// - `tolerance_nm`: how far across the course still counts, 0 to 10 900
///
/// # Accuracy
/// As `cross_track`.
///
/// # Degenerate cases
/// The course's own point lies on it.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// # Example
/// ```
/// # use lubberline::plain::on_course;
/// # use lubberline::earth::CourseReach;
/// assert_eq!(format!("{:.0}", on_course(0.0, 0.0, 90.0, CourseReach::Onward, 0.0, 5.0, 0.0001)?), "1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn on_course(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    reach: CourseReach,
    point_lat_deg: f64,
    point_lon_deg: f64,
    tolerance_nm: f64,
) -> Result<f64, Error> {
    if any_nan(&[lat_deg, lon_deg, course_deg, point_lat_deg, point_lon_deg, tolerance_nm]) {
        return Ok(f64::NAN);
    }
    let line = course(ONE_COURSE, lat_deg, lon_deg, course_deg)?;
    let point = position("point_lat_deg", point_lat_deg, "point_lon_deg", point_lon_deg)?;
    let tolerance = nautical_miles(Quantity::GroundDistance.check("tolerance_nm", tolerance_nm)?);
    Ok(f64::from(line.contains(reach, point, tolerance)))
}

/// Whether a point lies on the geodesic between two points: 1 if it does, 0 if not.
///
/// Within the tolerance across it and beyond its ends.
///
/// # Arguments
/// - `lat1_deg`: latitude of the beginning, -90 to 90
/// - `lon1_deg`: longitude of the beginning, any finite number
/// - `lat2_deg`: latitude of the end, -90 to 90
/// - `lon2_deg`: longitude of the end, any finite number
/// - `point_lat_deg`: latitude of the point, -90 to 90
/// - `point_lon_deg`: longitude of the point, any finite number
/// - `tolerance_nm`: how far from it still counts, 0 to 10 900
///
/// # Accuracy
/// As `cross_track`.
///
/// # Degenerate cases
/// Between coincident points only the point itself lies.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// # Example
/// ```
/// # use lubberline::plain::on_leg;
/// assert_eq!(format!("{:.0}", on_leg(0.0, 0.0, 0.0, 6.0, 0.0, 7.0, 0.0001)?), "0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn on_leg(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    point_lat_deg: f64,
    point_lon_deg: f64,
    tolerance_nm: f64,
) -> Result<f64, Error> {
    if any_nan(&[lat1_deg, lon1_deg, lat2_deg, lon2_deg, point_lat_deg, point_lon_deg, tolerance_nm]) {
        return Ok(f64::NAN);
    }
    let from = position("lat1_deg", lat1_deg, "lon1_deg", lon1_deg)?;
    let to = position("lat2_deg", lat2_deg, "lon2_deg", lon2_deg)?;
    let point = position("point_lat_deg", point_lat_deg, "point_lon_deg", point_lon_deg)?;
    let tolerance = nautical_miles(Quantity::GroundDistance.check("tolerance_nm", tolerance_nm)?);
    Ok(f64::from(leg_contains(from, to, point, tolerance)))
}
