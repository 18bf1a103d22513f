//! Plain functions of lines at a constant distance beside a course, on the ellipsoid.

use super::circle::circle;
use super::course::{FIRST_COURSE, ONE_COURSE, SECOND_COURSE, course};
use super::earth::{latitude, longitude, position};
use super::{any_nan, outputs};
use crate::Error;
use crate::earth::{Course, CourseReach, OffsetLine};
use crate::value::Quantity;
use crate::value::units::{Length, degree, nautical_mile, nautical_miles};

pub(super) fn offset(parameter: &'static str, offset_nm: f64) -> Result<Length, Error> {
    Ok(nautical_miles(Quantity::CrossTrack.check(parameter, offset_nm)?))
}

/// How far either way from the meeting of the courses a meeting of lines beside them is looked for.
const REACH_NM: f64 = 1000.0;

/// Where along the first course two courses meet.
fn middle(first: &Course, second: &Course) -> Result<Length, Error> {
    let meeting = first.meets(second);
    Ok(meeting.ok_or(Error::NoMeeting { what: "the two courses run along one line" })?.along_first)
}

outputs! {
    /// A point beside a course: what [`offset_point`] gives.
    OffsetPoint {
        /// Its latitude.
        latitude_deg,
        /// Its longitude.
        longitude_deg,
        /// Direction of the offset line there, 0 to 360.
        direction_deg,
    }
}

/// The point of the line at a constant distance beside a course, abeam of a place along the course.
///
/// Square to the course at that place, by the distance, on the WGS-84 ellipsoid. The line is no geodesic itself.
///
/// # Arguments
/// - `lat_deg`: latitude of a point of the course, -90 to 90
/// - `lon_deg`: longitude of that point, any finite number
/// - `course_deg`: true course there, any finite number
/// - `offset_nm`: distance of the line from the course, right positive, -5000 to 5000
/// - `along_nm`: distance along the course from its point, negative behind, -10 000 to 10 000
///
/// # Accuracy
/// 15 nanometres.
///
/// # Degenerate cases
/// An offset of zero is the course itself.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55.
///
/// # Example
/// ```
/// # use lubberline::plain::offset_point;
/// assert_eq!(format!("{:.4}", offset_point(0.0, 0.0, 90.0, -60.0, 0.0)?.latitude_deg), "1.0049");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn offset_point(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    offset_nm: f64,
    along_nm: f64,
) -> Result<OffsetPoint, Error> {
    if any_nan(&[lat_deg, lon_deg, course_deg, offset_nm, along_nm]) {
        return Ok(OffsetPoint::NAN);
    }
    let line = OffsetLine {
        course: course(ONE_COURSE, lat_deg, lon_deg, course_deg)?,
        offset: offset("offset_nm", offset_nm)?,
    };
    let (point, direction) = line.at(nautical_miles(Quantity::AlongTrack.check("along_nm", along_nm)?));
    Ok(OffsetPoint {
        latitude_deg: latitude(point),
        longitude_deg: longitude(point),
        direction_deg: direction.angle().get::<degree>(),
    })
}

outputs! {
    /// Where a point lies relative to an offset line: what [`offset_cross_track`] gives.
    OffsetCrossTrack {
        /// Distance across the line, positive right of it.
        cross_track_nm,
        /// Distance along the course to the place abeam, positive onward.
        along_track_nm,
        /// Latitude of the point of the line abeam.
        abeam_latitude_deg,
        /// Longitude of the point of the line abeam.
        abeam_longitude_deg,
        /// Direction of the line there, 0 to 360.
        abeam_direction_deg,
    }
}

/// Where a point lies relative to the line at a constant distance beside a course, on the WGS-84 ellipsoid.
///
/// What stands square to the course stands square to the line too (Gauss's lemma): the cross-track is that of the course less the offset,
/// and the place abeam is one.
///
/// # Arguments
/// - `lat_deg`: latitude of a point of the course, -90 to 90
/// - `lon_deg`: longitude of that point, any finite number
/// - `course_deg`: true course there, any finite number
/// - `offset_nm`: distance of the line from the course, right positive, -5000 to 5000
/// - `point_lat_deg`: latitude of the point, -90 to 90
/// - `point_lon_deg`: longitude of the point, any finite number
///
/// # Accuracy
/// As `cross_track`.
///
/// # Degenerate cases
/// With an offset of zero it is `cross_track`. A point a quarter of the earth away on both sides has no place abeam that means anything.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// # Example
/// ```
/// # use lubberline::plain::offset_cross_track;
/// assert_eq!(format!("{:.2}", offset_cross_track(0.0, 0.0, 90.0, -60.0, 0.5, 1.0)?.cross_track_nm), "30.15");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn offset_cross_track(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    offset_nm: f64,
    point_lat_deg: f64,
    point_lon_deg: f64,
) -> Result<OffsetCrossTrack, Error> {
    if any_nan(&[lat_deg, lon_deg, course_deg, offset_nm, point_lat_deg, point_lon_deg]) {
        return Ok(OffsetCrossTrack::NAN);
    }
    let line = OffsetLine {
        course: course(ONE_COURSE, lat_deg, lon_deg, course_deg)?,
        offset: offset("offset_nm", offset_nm)?,
    };
    let found = line.abeam(position("point_lat_deg", point_lat_deg, "point_lon_deg", point_lon_deg)?);
    Ok(OffsetCrossTrack {
        cross_track_nm: found.cross_track.get::<nautical_mile>(),
        along_track_nm: found.along_track.get::<nautical_mile>(),
        abeam_latitude_deg: latitude(found.point),
        abeam_longitude_deg: longitude(found.point),
        abeam_direction_deg: found.bearing.angle().get::<degree>(),
    })
}

/// Whether a point lies on the line at a constant distance beside a course: 1 if it does, 0 if not.
///
/// Within the tolerance across it, and for a course that reaches onward also before the place abeam of its point.
///
/// # Arguments
/// - `lat_deg`: latitude of a point of the course, -90 to 90
/// - `lon_deg`: longitude of that point, any finite number
/// - `course_deg`: true course there, any finite number
/// - `reach`: how far the course reaches
/// - `offset_nm`: distance of the line from the course, right positive, -5000 to 5000
/// - `point_lat_deg`: latitude of the point, -90 to 90
/// - `point_lon_deg`: longitude of the point, any finite number
/// - `tolerance_nm`: how far across the line still counts, 0 to 10 900
///
/// # Accuracy
/// As `cross_track`.
///
/// # Degenerate cases
/// With an offset of zero it is `on_course`.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// # Example
/// ```
/// # use lubberline::plain::on_offset;
/// # use lubberline::earth::CourseReach;
/// assert_eq!(format!("{:.0}", on_offset(0.0, 0.0, 0.0, CourseReach::Onward, 60.0, 2.0, 1.0, 0.5)?), "1");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[allow(clippy::too_many_arguments, reason = "a line, a point and a tolerance")]
pub fn on_offset(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    reach: CourseReach,
    offset_nm: f64,
    point_lat_deg: f64,
    point_lon_deg: f64,
    tolerance_nm: f64,
) -> Result<f64, Error> {
    if any_nan(&[lat_deg, lon_deg, course_deg, offset_nm, point_lat_deg, point_lon_deg, tolerance_nm]) {
        return Ok(f64::NAN);
    }
    let line = OffsetLine {
        course: course(ONE_COURSE, lat_deg, lon_deg, course_deg)?,
        offset: offset("offset_nm", offset_nm)?,
    };
    let point = position("point_lat_deg", point_lat_deg, "point_lon_deg", point_lon_deg)?;
    let tolerance = nautical_miles(Quantity::GroundDistance.check("tolerance_nm", tolerance_nm)?);
    Ok(f64::from(line.contains(reach, point, tolerance)))
}

outputs! {
    /// Where an offset line meets a course: what [`offset_course_crossing`] gives.
    OffsetCourseCrossing {
        /// Latitude of the point.
        latitude_deg,
        /// Longitude of the point.
        longitude_deg,
        /// Distance along the course that the line runs beside, negative behind its point.
        along_first_nm,
    }
}

/// Where the line at a constant distance beside a course meets another course, on the WGS-84 ellipsoid.
///
/// Looked for within 1 000 NM of the meeting of the two courses along the first; the meeting nearest to it.
///
/// # Arguments
/// - `lat1_deg`: latitude of a point of the first course, -90 to 90
/// - `lon1_deg`: longitude of that point, any finite number
/// - `course1_deg`: true course there, any finite number
/// - `offset_nm`: distance of the line from the first course, right positive, -5000 to 5000
/// - `lat2_deg`: latitude of a point of the second course, -90 to 90
/// - `lon2_deg`: longitude of that point, any finite number
/// - `course2_deg`: true course there, any finite number
///
/// # Accuracy
/// A micrometre across the second course.
///
/// # Degenerate cases
/// An offset of zero is the meeting of the courses themselves.
///
/// # Errors
/// A value outside its range, courses along one line, or no meeting within 1 000 NM.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// # Example
/// ```
/// # use lubberline::plain::offset_course_crossing;
/// assert_eq!(format!("{:.4}", offset_course_crossing(0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0)?.latitude_deg), "1.0049");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn offset_course_crossing(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    offset_nm: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
) -> Result<OffsetCourseCrossing, Error> {
    if any_nan(&[lat1_deg, lon1_deg, course1_deg, offset_nm, lat2_deg, lon2_deg, course2_deg]) {
        return Ok(OffsetCourseCrossing::NAN);
    }
    let first = course(FIRST_COURSE, lat1_deg, lon1_deg, course1_deg)?;
    let second = course(SECOND_COURSE, lat2_deg, lon2_deg, course2_deg)?;
    let line = OffsetLine { course: first, offset: offset("offset_nm", offset_nm)? };
    let nearest = line.meets_course_near(&second, middle(&first, &second)?, nautical_miles(REACH_NM));
    let (point, along) = nearest
        .ok_or(Error::NoMeeting { what: "the offset line and the course do not meet within 1 000 NM" })?;
    Ok(OffsetCourseCrossing {
        latitude_deg: latitude(point),
        longitude_deg: longitude(point),
        along_first_nm: along.get::<nautical_mile>(),
    })
}

outputs! {
    /// Where two offset lines meet: what [`offset_offset_crossing`] gives.
    OffsetOffsetCrossing {
        /// Latitude of the point.
        latitude_deg,
        /// Longitude of the point.
        longitude_deg,
        /// Distance along the first course to the place abeam, negative behind its point.
        along_first_nm,
        /// Distance along the second course to the place abeam, negative behind its point.
        along_second_nm,
    }
}

/// Where the lines at constant distances beside two courses meet, on the WGS-84 ellipsoid.
///
/// Looked for within 1 000 NM of the meeting of the two courses along the first; the meeting nearest to it.
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
///
/// # Accuracy
/// A micrometre across the second line.
///
/// # Degenerate cases
/// With an offset of zero the line is the course itself.
///
/// # Errors
/// A value outside its range, courses along one line, or no meeting within 1 000 NM.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// # Example
/// ```
/// # use lubberline::plain::offset_offset_crossing;
/// assert_eq!(format!("{:.3}", offset_offset_crossing(0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0, 6.0)?.along_first_nm), "186.324");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[allow(clippy::too_many_arguments, reason = "two lines of four numbers")]
pub fn offset_offset_crossing(
    lat1_deg: f64,
    lon1_deg: f64,
    course1_deg: f64,
    offset1_nm: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    course2_deg: f64,
    offset2_nm: f64,
) -> Result<OffsetOffsetCrossing, Error> {
    if any_nan(&[lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm]) {
        return Ok(OffsetOffsetCrossing::NAN);
    }
    let first = OffsetLine {
        course: course(FIRST_COURSE, lat1_deg, lon1_deg, course1_deg)?,
        offset: offset("offset1_nm", offset1_nm)?,
    };
    let second = OffsetLine {
        course: course(SECOND_COURSE, lat2_deg, lon2_deg, course2_deg)?,
        offset: offset("offset2_nm", offset2_nm)?,
    };
    let middle = middle(&first.course, &second.course)?;
    let (point, along) = first
        .meets_offset_near(&second, middle, nautical_miles(REACH_NM))
        .ok_or(Error::NoMeeting { what: "the two offset lines do not meet within 1 000 NM" })?;
    Ok(OffsetOffsetCrossing {
        latitude_deg: latitude(point),
        longitude_deg: longitude(point),
        along_first_nm: along.get::<nautical_mile>(),
        along_second_nm: second.course.abeam(point).along_track.get::<nautical_mile>(),
    })
}

outputs! {
    /// Where an offset line meets an arc: what [`offset_arc_crossing`] gives.
    OffsetArcCrossing {
        /// Latitude of the point farther back along the line.
        latitude1_deg,
        /// Its longitude.
        longitude1_deg,
        /// Distance along the course to the place abeam of it, negative behind its point.
        along1_nm,
        /// Latitude of the point farther on along the line.
        latitude2_deg,
        /// Its longitude.
        longitude2_deg,
        /// Distance along the course to the place abeam of it, negative behind its point.
        along2_nm,
    }
}

/// Where the line at a constant distance beside a course meets a circle (a DME arc), on the WGS-84 ellipsoid: both points.
///
/// Looked for along the line as far as the circle can reach; the arc is the geodesic circle about its centre.
///
/// # Arguments
/// - `lat_deg`: latitude of a point of the course, -90 to 90
/// - `lon_deg`: longitude of that point, any finite number
/// - `course_deg`: true course there, any finite number
/// - `offset_nm`: distance of the line beside the course, right positive, -5000 to 5000
/// - `center_lat_deg`: latitude of the centre, -90 to 90
/// - `center_lon_deg`: longitude of the centre, any finite number
/// - `radius_nm`: radius of the circle, above 0 to 5000
///
/// # Accuracy
/// A micrometre across the circle; along, soft where the line only just cuts it.
///
/// # Degenerate cases
/// A line that touches the circle gives its point twice; a miss below a millimetre counts as touching.
///
/// # Errors
/// A value outside its range, or a line that misses the circle.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid.
///
/// # Example
/// ```
/// # use lubberline::plain::offset_arc_crossing;
/// assert_eq!(format!("{:.3}", offset_arc_crossing(60.0, -10.0, 90.0, 4.0, 60.0, -9.0, 12.0)?.along1_nm), "18.898");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn offset_arc_crossing(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    offset_nm: f64,
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
) -> Result<OffsetArcCrossing, Error> {
    if any_nan(&[lat_deg, lon_deg, course_deg, offset_nm, center_lat_deg, center_lon_deg, radius_nm]) {
        return Ok(OffsetArcCrossing::NAN);
    }
    let line = OffsetLine {
        course: course(ONE_COURSE, lat_deg, lon_deg, course_deg)?,
        offset: offset("offset_nm", offset_nm)?,
    };
    let found = line.crosses_circle(&circle(center_lat_deg, center_lon_deg, radius_nm)?);
    let [(point_1, along_1), (point_2, along_2)] =
        found.ok_or(Error::NoMeeting { what: "the offset line misses the arc" })?;
    Ok(OffsetArcCrossing {
        latitude1_deg: latitude(point_1),
        longitude1_deg: longitude(point_1),
        along1_nm: along_1.get::<nautical_mile>(),
        latitude2_deg: latitude(point_2),
        longitude2_deg: longitude(point_2),
        along2_nm: along_2.get::<nautical_mile>(),
    })
}
