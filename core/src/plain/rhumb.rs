//! Plain functions of rhumb lines on the ellipsoid.

use super::earth::{latitude, longitude, position};
use super::{any_nan, outputs};
use crate::Error;
use crate::earth;
use crate::value::units::{degree, nautical_mile};
use crate::value::{Bearing, GroundDistance};

outputs! {
    /// The rhumb line between two points: what [`rhumb_inverse`] gives.
    RhumbInverse {
        /// Length along the surface.
        distance_nm,
        /// True course all along, 0 to 360; NaN between coincident points.
        course_deg,
    }
}

/// The rhumb line between two points of the WGS-84 ellipsoid, the short way round: its length and its constant course.
///
/// `tan C = l / q`, `d = hypot(m, l m / q)` with the differences of longitude `l`, of isometric latitude `q` and of the arc of the
/// meridian `m`; on a parallel `m / q` is its radius. Published tables of Mercator sailing count a minute of latitude as a mile.
///
/// # Arguments
/// - `lat1_deg`: latitude of the first point, -90 to 90
/// - `lon1_deg`: longitude of the first point, any finite number
/// - `lat2_deg`: latitude of the second point, -90 to 90
/// - `lon2_deg`: longitude of the second point, any finite number
///
/// # Accuracy
/// 20 nanometres along the line and, for the course, 40 across its far end, which is what rounding leaves of a number of degrees.
///
/// # Degenerate cases
/// Coincident points have no course (NaN). A line to or from a pole runs along the meridian of the other point. Points half the world apart
/// in longitude have two such lines; the eastward one is given.
///
/// # Errors
/// A latitude beyond a pole, or an infinite number.
///
/// # Source
/// C. F. F. Karney, The area of rhumb polygons, Studia Geophysica et Geodaetica 68 (2024) 99-120, doi 10.1007/s11200-024-0709-z; the
/// differences are derived beside the code.
///
/// # Example
/// ```
/// # use lubberline::plain::rhumb_inverse;
/// assert_eq!(format!("{:.3}", rhumb_inverse(60.0, -30.0, 60.0, 30.0)?.distance_nm), "1807.775");
/// assert_eq!(format!("{:.2}", rhumb_inverse(60.0, -30.0, 52.0, 10.0)?.course_deg), "109.72");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rhumb_inverse(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
) -> Result<RhumbInverse, Error> {
    if any_nan(&[lat1_deg, lon1_deg, lat2_deg, lon2_deg]) {
        return Ok(RhumbInverse::NAN);
    }
    let line = earth::rhumb_inverse(
        position("lat1_deg", lat1_deg, "lon1_deg", lon1_deg)?,
        position("lat2_deg", lat2_deg, "lon2_deg", lon2_deg)?,
    );
    Ok(RhumbInverse {
        distance_nm: line.distance.value().get::<nautical_mile>(),
        course_deg: line.course.map_or(f64::NAN, |course| course.angle().get::<degree>()),
    })
}

outputs! {
    /// Where a rhumb line leads: what [`rhumb_direct`] gives.
    RhumbDirect {
        /// Latitude of the point reached, -90 to 90.
        latitude_deg,
        /// Longitude of the point reached, -180 to 180.
        longitude_deg,
    }
}

/// The point reached along a rhumb line of the WGS-84 ellipsoid.
///
/// The latitude is where the arc of the meridian is `d cos C`, by four steps of Newton's method; the longitude follows as `d sin C` over
/// the mean radius of the parallels passed.
///
/// # Arguments
/// - `lat_deg`: latitude of the start, -90 to 90
/// - `lon_deg`: longitude of the start, any finite number
/// - `course_deg`: true course, any finite number
/// - `distance_nm`: length of the line, 0 to 10 900
///
/// # Accuracy
/// 30 nanometres, but around a pole: within a metre of it a nanometre of the way is more of longitude.
///
/// # Degenerate cases
/// A line that ends within a micrometre of a pole ends at it, with the longitude of the start. From a pole a line runs along the meridian of
/// the longitude given there.
///
/// # Errors
/// A value outside its range; a line that would pass a pole, or leave one in any direction but along a meridian, which winds about the
/// pole without end.
///
/// # Source
/// As [`rhumb_inverse`].
///
/// # Example
/// ```
/// # use lubberline::plain::rhumb_direct;
/// assert_eq!(format!("{:.4}", rhumb_direct(60.0, -10.0, 45.0, 600.0)?.latitude_deg), "67.0489");
/// assert_eq!(format!("{:.4}", rhumb_direct(60.0, -10.0, 45.0, 600.0)?.longitude_deg), "5.8815");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rhumb_direct(
    lat_deg: f64,
    lon_deg: f64,
    course_deg: f64,
    distance_nm: f64,
) -> Result<RhumbDirect, Error> {
    if any_nan(&[lat_deg, lon_deg, course_deg, distance_nm]) {
        return Ok(RhumbDirect::NAN);
    }
    let reached = earth::rhumb_direct(
        position("lat_deg", lat_deg, "lon_deg", lon_deg)?,
        Bearing::named("course_deg", course_deg)?,
        GroundDistance::named("distance_nm", distance_nm)?,
    )?;
    Ok(RhumbDirect { latitude_deg: latitude(reached), longitude_deg: longitude(reached) })
}

outputs! {
    /// How a rhumb line departs from the geodesic: what [`rhumb_excess`] gives.
    RhumbExcess {
        /// How much longer the rhumb line is.
        excess_nm,
        /// Conversion angle: what is added to the course of the rhumb line for the bearing of the geodesic at the first point, -180 to
        /// 180; NaN between coincident points.
        conversion_angle_deg,
    }
}

/// How much longer the rhumb line between two points is than the geodesic, and by what angle the two set out apart.
///
/// The results of `rhumb_inverse` less those of `geodesic_inverse`.
///
/// # Arguments
/// - `lat1_deg`: latitude of the first point, -90 to 90
/// - `lon1_deg`: longitude of the first point, any finite number
/// - `lat2_deg`: latitude of the second point, -90 to 90
/// - `lon2_deg`: longitude of the second point, any finite number
///
/// # Accuracy
/// 40 nanometres along the line and, for the angle, 60 across its far end.
///
/// # Degenerate cases
/// Coincident points have an excess of zero and no angle (NaN). Along a meridian the two are one.
///
/// # Errors
/// A latitude beyond a pole, or an infinite number.
///
/// # Source
/// As [`rhumb_inverse`] and [`super::geodesic_inverse`].
///
/// # Example
/// ```
/// # use lubberline::plain::rhumb_excess;
/// assert_eq!(format!("{:.2}", rhumb_excess(60.0, -30.0, 60.0, 30.0)?.excess_nm), "62.97");
/// assert_eq!(format!("{:.2}", rhumb_excess(60.0, -30.0, 60.0, 30.0)?.conversion_angle_deg), "-26.57");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rhumb_excess(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
) -> Result<RhumbExcess, Error> {
    if any_nan(&[lat1_deg, lon1_deg, lat2_deg, lon2_deg]) {
        return Ok(RhumbExcess::NAN);
    }
    let excess = earth::rhumb_excess(
        position("lat1_deg", lat1_deg, "lon1_deg", lon1_deg)?,
        position("lat2_deg", lat2_deg, "lon2_deg", lon2_deg)?,
    );
    Ok(RhumbExcess {
        excess_nm: excess.length.get::<nautical_mile>(),
        conversion_angle_deg: excess.conversion_angle.map_or(f64::NAN, |angle| angle.angle().get::<degree>()),
    })
}
