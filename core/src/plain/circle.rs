//! Plain functions of circles on the ellipsoid, DME arcs and turns of fixed radius: where they meet, tangents, lengths.

use super::course::{ONE_COURSE, course};
use super::earth::{latitude, longitude, position};
use super::{any_nan, outputs};
use crate::Error;
use crate::earth::Circle;
use crate::lead::ArcSense;
use crate::value::units::{degree, degrees, nautical_mile, nautical_miles};
use crate::value::{ArcRadius, Bearing, Quantity};

/// A circle from plain numbers.
pub(super) fn circle(center_lat_deg: f64, center_lon_deg: f64, radius_nm: f64) -> Result<Circle, Error> {
    Ok(Circle {
        center: position("center_lat_deg", center_lat_deg, "center_lon_deg", center_lon_deg)?,
        radius: ArcRadius::named("radius_nm", radius_nm)?,
    })
}

outputs! {
    /// Where a course meets an arc: what [`course_arc_crossing`] gives.
    CourseArcCrossing {
        /// Latitude of the point farther back along the course.
        latitude1_deg,
        /// Its longitude.
        longitude1_deg,
        /// Its distance along the course, negative behind its point.
        along1_nm,
        /// Latitude of the point farther on along the course.
        latitude2_deg,
        /// Its longitude.
        longitude2_deg,
        /// Its distance along the course, negative behind its point.
        along2_nm,
    }
}

/// Where a course (a radial) meets a circle (a DME arc) on the WGS-84 ellipsoid: both points.
///
/// The course is extended both ways; the arc is the geodesic circle about its centre.
///
/// # Arguments
/// - `lat_deg`: latitude of a point of the course, -90 to 90
/// - `lon_deg`: longitude of that point, any finite number
/// - `course_deg`: true course there, any finite number
/// - `center_lat_deg`: latitude of the centre, -90 to 90
/// - `center_lon_deg`: longitude of the centre, any finite number
/// - `radius_nm`: radius of the circle, above 0 to 5000
///
/// # Accuracy
/// A micrometre across; along, soft where the course only just cuts the circle.
///
/// # Degenerate cases
/// A course that touches the circle gives its point twice; a miss below a millimetre counts as touching.
///
/// # Errors
/// A value outside its range, or a course that misses the circle.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// # Example
/// ```
/// # use lubberline::plain::course_arc_crossing;
/// assert_eq!(format!("{:.3}", course_arc_crossing(60.0, -10.0, 90.0, 60.0, -9.0, 12.0)?.along1_nm), "18.131");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn course_arc_crossing(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
) -> Result<CourseArcCrossing, Error> {
    if any_nan(&[lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm]) {
        return Ok(CourseArcCrossing::NAN);
    }
    let line = course(ONE_COURSE, lat_deg, lon_deg, course_deg)?;
    let found = line.meets_circle(&circle(center_lat_deg, center_lon_deg, radius_nm)?);
    let [(point_1, along_1), (point_2, along_2)] =
        found.ok_or(Error::NoMeeting { what: "the course misses the arc" })?;
    Ok(CourseArcCrossing {
        latitude1_deg: latitude(point_1),
        longitude1_deg: longitude(point_1),
        along1_nm: along_1.get::<nautical_mile>(),
        latitude2_deg: latitude(point_2),
        longitude2_deg: longitude(point_2),
        along2_nm: along_2.get::<nautical_mile>(),
    })
}

outputs! {
    /// Where two arcs meet: what [`arc_arc_crossing`] gives.
    ArcArcCrossing {
        /// Latitude of the point left of the line from the first centre to the second.
        latitude1_deg,
        /// Its longitude.
        longitude1_deg,
        /// Latitude of the point right of that line.
        latitude2_deg,
        /// Its longitude.
        longitude2_deg,
    }
}

/// Where two circles (two DME arcs) meet on the WGS-84 ellipsoid: both points.
///
/// Geodesic circles about their centres; the points lie left and right of the line from the first centre to the second.
///
/// # Arguments
/// - `center1_lat_deg`: latitude of the first centre, -90 to 90
/// - `center1_lon_deg`: longitude of the first centre, any finite number
/// - `radius1_nm`: radius of the first circle, above 0 to 5000
/// - `center2_lat_deg`: latitude of the second centre, -90 to 90
/// - `center2_lon_deg`: longitude of the second centre, any finite number
/// - `radius2_nm`: radius of the second circle, above 0 to 5000
///
/// # Accuracy
/// A micrometre across the circles; along, soft where they only just meet.
///
/// # Degenerate cases
/// Circles that touch give their point twice; a miss below a millimetre counts as touching.
///
/// # Errors
/// A value outside its range, circles that do not meet, or circles about one centre.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_arc_crossing;
/// assert_eq!(format!("{:.4}", arc_arc_crossing(0.0, 0.0, 150.0, 0.0, -4.991, 150.0)?.longitude1_deg), "-2.4955");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_arc_crossing(
    center1_lat_deg: f64,
    center1_lon_deg: f64,
    radius1_nm: f64,
    center2_lat_deg: f64,
    center2_lon_deg: f64,
    radius2_nm: f64,
) -> Result<ArcArcCrossing, Error> {
    if any_nan(&[center1_lat_deg, center1_lon_deg, radius1_nm, center2_lat_deg, center2_lon_deg, radius2_nm])
    {
        return Ok(ArcArcCrossing::NAN);
    }
    let first = Circle {
        center: position("center1_lat_deg", center1_lat_deg, "center1_lon_deg", center1_lon_deg)?,
        radius: ArcRadius::named("radius1_nm", radius1_nm)?,
    };
    let second = Circle {
        center: position("center2_lat_deg", center2_lat_deg, "center2_lon_deg", center2_lon_deg)?,
        radius: ArcRadius::named("radius2_nm", radius2_nm)?,
    };
    let [left, right] = first.meets(&second).ok_or(Error::NoMeeting { what: "the two arcs do not meet" })?;
    Ok(ArcArcCrossing {
        latitude1_deg: latitude(left),
        longitude1_deg: longitude(left),
        latitude2_deg: latitude(right),
        longitude2_deg: longitude(right),
    })
}

outputs! {
    /// The tangents from a point to an arc: what [`arc_tangents`] gives.
    ArcTangents {
        /// Latitude of the contact left of the line to the centre.
        latitude1_deg,
        /// Its longitude.
        longitude1_deg,
        /// True course of the tangent there, onward, 0 to 360.
        course1_deg,
        /// Latitude of the contact right of the line to the centre.
        latitude2_deg,
        /// Its longitude.
        longitude2_deg,
        /// True course of the tangent there, onward, 0 to 360.
        course2_deg,
    }
}

/// The tangents from a point to a circle (a DME arc) on the WGS-84 ellipsoid: both contacts.
///
/// At the contact the geodesic from the point stands square to the radius.
///
/// # Arguments
/// - `point_lat_deg`: latitude of the point, -90 to 90
/// - `point_lon_deg`: longitude of the point, any finite number
/// - `center_lat_deg`: latitude of the centre, -90 to 90
/// - `center_lon_deg`: longitude of the centre, any finite number
/// - `radius_nm`: radius of the circle, above 0 to 5000
///
/// # Accuracy
/// A micrometre off the circle; the contact is soft along it.
///
/// # Degenerate cases
/// A point on the circle is its own contact, twice.
///
/// # Errors
/// A value outside its range, a point inside the circle, or one whose antipode is inside.
///
/// # Source
/// Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on the ellipsoid. Checked against FAA Order 8260.54A (2007),
/// Appendix 2 Attachment C.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_tangents;
/// assert_eq!(format!("{:.4}", arc_tangents(40.0766111111, -67.2096388889, 40.1734722222, -70.2126666667, 100.0)?.latitude1_deg), "38.9808");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_tangents(
    point_lat_deg: f64,
    point_lon_deg: f64,
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
) -> Result<ArcTangents, Error> {
    if any_nan(&[point_lat_deg, point_lon_deg, center_lat_deg, center_lon_deg, radius_nm]) {
        return Ok(ArcTangents::NAN);
    }
    let point = position("point_lat_deg", point_lat_deg, "point_lon_deg", point_lon_deg)?;
    let found = circle(center_lat_deg, center_lon_deg, radius_nm)?.tangents_from(point);
    let [left, right] = found.ok_or(Error::NoMeeting {
        what: "the point or its antipode lies inside the arc, which has no tangent from there",
    })?;
    Ok(ArcTangents {
        latitude1_deg: latitude(left.point),
        longitude1_deg: longitude(left.point),
        course1_deg: left.bearing.angle().get::<degree>(),
        latitude2_deg: latitude(right.point),
        longitude2_deg: longitude(right.point),
        course2_deg: right.bearing.angle().get::<degree>(),
    })
}

/// Length of an arc of a circle on the WGS-84 ellipsoid.
///
/// The integral of the reduced length of the geodesics from the centre over their azimuth; in the plane `r sweep`.
///
/// # Arguments
/// - `center_lat_deg`: latitude of the centre, -90 to 90
/// - `center_lon_deg`: longitude of the centre, any finite number
/// - `radius_nm`: radius of the circle, above 0 to 5000
/// - `start_bearing_deg`: bearing of the arc's beginning from the centre, any finite number
/// - `sweep_deg`: angle of the arc at the centre, clockwise positive, -360 to 360
///
/// # Accuracy
/// A micrometre.
///
/// # Degenerate cases
/// A sweep of zero has no length.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), section 3; derived. Checked against FAA Order 8260.54A (2007).
///
/// # Example
/// ```
/// # use lubberline::plain::arc_length_nm;
/// assert_eq!(format!("{:.6}", arc_length_nm(38.2236388889, -77.9065, 5.0, 91.0, 135.0)?), "11.780968");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_length_nm(
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
    start_bearing_deg: f64,
    sweep_deg: f64,
) -> Result<f64, Error> {
    if any_nan(&[center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, sweep_deg]) {
        return Ok(f64::NAN);
    }
    let circle = circle(center_lat_deg, center_lon_deg, radius_nm)?;
    let start = Bearing::named("start_bearing_deg", start_bearing_deg)?;
    let sweep_deg = Quantity::HeadingChange.check("sweep_deg", sweep_deg)?;
    Ok(circle.arc_length(start, degrees(sweep_deg)).get::<nautical_mile>())
}

/// Whether a point lies on an arc of a circle: 1 if it does, 0 if not.
///
/// Within the tolerance off the circle, and between the bearings of the arc's ends, which belong to it.
///
/// # Arguments
/// - `center_lat_deg`: latitude of the centre, -90 to 90
/// - `center_lon_deg`: longitude of the centre, any finite number
/// - `radius_nm`: radius of the circle, above 0 to 5000
/// - `start_bearing_deg`: bearing of the arc's beginning from the centre, any finite number
/// - `end_bearing_deg`: bearing of the arc's end from the centre, any finite number
/// - `sense`: which way round the arc goes
/// - `point_lat_deg`: latitude of the point, -90 to 90
/// - `point_lon_deg`: longitude of the point, any finite number
/// - `tolerance_nm`: how far off the circle still counts, 0 to 10 900
///
/// # Accuracy
/// 15 nanometres off the circle.
///
/// # Degenerate cases
/// Equal bearings are the whole circle.
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
/// # use lubberline::plain::on_arc;
/// # use lubberline::lead::ArcSense;
/// assert_eq!(format!("{:.0}", on_arc(0.0, 0.0, 60.0, 0.0, 180.0, ArcSense::Clockwise, 0.0, 0.998204, 0.001)?), "1");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(clippy::too_many_arguments, reason = "a plain function takes plain numbers")]
pub fn on_arc(
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
    start_bearing_deg: f64,
    end_bearing_deg: f64,
    sense: ArcSense,
    point_lat_deg: f64,
    point_lon_deg: f64,
    tolerance_nm: f64,
) -> Result<f64, Error> {
    if any_nan(&[
        center_lat_deg,
        center_lon_deg,
        radius_nm,
        start_bearing_deg,
        end_bearing_deg,
        point_lat_deg,
        point_lon_deg,
        tolerance_nm,
    ]) {
        return Ok(f64::NAN);
    }
    let circle = circle(center_lat_deg, center_lon_deg, radius_nm)?;
    let start = Bearing::named("start_bearing_deg", start_bearing_deg)?;
    let end = Bearing::named("end_bearing_deg", end_bearing_deg)?;
    let point = position("point_lat_deg", point_lat_deg, "point_lon_deg", point_lon_deg)?;
    let tolerance = nautical_miles(Quantity::GroundDistance.check("tolerance_nm", tolerance_nm)?);
    Ok(f64::from(circle.arc_contains(start, end, sense == ArcSense::Clockwise, point, tolerance)))
}

outputs! {
    /// How far a circle reaches along a course: what [`arc_extent`] gives.
    ArcExtent {
        /// Latitude of the point of the circle farthest on along the course.
        latitude1_deg,
        /// Its longitude.
        longitude1_deg,
        /// Latitude of the point of the course abeam of it.
        abeam1_latitude_deg,
        /// Its longitude.
        abeam1_longitude_deg,
        /// Latitude of the point of the circle farthest back along the course.
        latitude2_deg,
        /// Its longitude.
        longitude2_deg,
        /// Latitude of the point of the course abeam of it.
        abeam2_latitude_deg,
        /// Its longitude.
        abeam2_longitude_deg,
    }
}

/// How far a circle reaches along a course on the WGS-84 ellipsoid: its points whose tangents stand square to the course, and the points abeam.
///
/// Farthest on along the course, then farthest back.
///
/// # Arguments
/// - `lat_deg`: latitude of a point of the course, -90 to 90
/// - `lon_deg`: longitude of that point, any finite number
/// - `course_deg`: true course there, any finite number
/// - `center_lat_deg`: latitude of the centre, -90 to 90
/// - `center_lon_deg`: longitude of the centre, any finite number
/// - `radius_nm`: radius of the circle, above 0 to 5000
///
/// # Accuracy
/// A micrometre off the circle; soft along it.
///
/// # Degenerate cases
/// The course may miss, touch or cut the circle.
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
/// # use lubberline::plain::arc_extent;
/// assert_eq!(format!("{:.4}", arc_extent(40.0766111111, -65.2113055556, 350.0, 40.1734722222, -70.2126666667, 50.0)?.latitude1_deg), "40.9847");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_extent(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    center_lat_deg: f64,
    center_lon_deg: f64,
    radius_nm: f64,
) -> Result<ArcExtent, Error> {
    if any_nan(&[lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm]) {
        return Ok(ArcExtent::NAN);
    }
    let line = course(ONE_COURSE, lat_deg, lon_deg, course_deg)?;
    let [on, back] = circle(center_lat_deg, center_lon_deg, radius_nm)?.extent_along(line);
    Ok(ArcExtent {
        latitude1_deg: latitude(on.point),
        longitude1_deg: longitude(on.point),
        abeam1_latitude_deg: latitude(on.abeam),
        abeam1_longitude_deg: longitude(on.abeam),
        latitude2_deg: latitude(back.point),
        longitude2_deg: longitude(back.point),
        abeam2_latitude_deg: latitude(back.abeam),
        abeam2_longitude_deg: longitude(back.abeam),
    })
}
