//! Plain functions of [`crate::earth`].

use super::{any_nan, outputs};
use crate::Error;
use crate::earth::{self, Sphere};
use crate::many::geodesic::{Direct, Long};
use crate::many::run;
use crate::many::slant_range::Slant;
use crate::value::units::{degree, nautical_mile, nautical_miles};
use crate::value::{
    Bearing, Elevation, GroundDistance, HeightAboveStation, Latitude, Longitude, Position, Quantity,
    SlantRange, TrueAltitude,
};

/// A position from plain numbers under the names its caller gave them.
pub(super) fn position(
    latitude: &'static str,
    latitude_deg: f64,
    longitude: &'static str,
    longitude_deg: f64,
) -> Result<Position, Error> {
    Ok(Position::new(Latitude::named(latitude, latitude_deg)?, Longitude::named(longitude, longitude_deg)?))
}

/// The latitude of a point as a plain number.
pub(super) fn latitude(point: Position) -> f64 {
    point.latitude().angle().get::<degree>()
}

/// The longitude of a point as a plain number.
pub(super) fn longitude(point: Position) -> f64 {
    point.longitude().angle().get::<degree>()
}

outputs! {
    /// The shortest line between two points: what [`geodesic_inverse`] gives.
    GeodesicInverse {
        /// Length along the surface.
        distance_nm,
        /// True bearing at the first point, 0 to 360; NaN between coincident points.
        initial_bearing_deg,
        /// True bearing at the second point, onward, 0 to 360; NaN between coincident points.
        final_bearing_deg,
    }
}

/// The shortest line between two points on the WGS-84 ellipsoid: its length and its bearings.
///
/// Karney's solution of the inverse geodesic problem.
///
/// # Arguments
/// - `lat1_deg`: latitude of the first point, -90 to 90
/// - `lon1_deg`: longitude of the first point, any finite number
/// - `lat2_deg`: latitude of the second point, -90 to 90
/// - `lon2_deg`: longitude of the second point, any finite number
///
/// # Accuracy
/// 15 nanometres for any two points. In arrays 1 micrometre of distance, and 4 of what a bearing moves the other end by; to
/// 18 000 km a tenth of that. Points within ten metres of each other, and near each other's antipode, are computed one by one there.
///
/// # Degenerate cases
/// Coincident points have no bearing (NaN). Between antipodal points one of the shortest lines is given.
///
/// # Errors
/// A latitude beyond a pole, or an infinite number.
///
/// # Source
/// C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi 10.1007/s00190-012-0578-z.
///
/// # Example
/// ```
/// # use lubberline::plain::geodesic_inverse;
/// assert_eq!(format!("{:.3}", geodesic_inverse(51.0, 0.0, 52.0, 1.0)?.distance_nm), "70.814");
/// assert_eq!(format!("{:.2}", geodesic_inverse(51.0, 0.0, 52.0, 1.0)?.initial_bearing_deg), "31.58");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn geodesic_inverse(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
) -> Result<GeodesicInverse, Error> {
    if any_nan(&[lat1_deg, lon1_deg, lat2_deg, lon2_deg]) {
        return Ok(GeodesicInverse::NAN);
    }
    let line = earth::inverse(
        position("lat1_deg", lat1_deg, "lon1_deg", lon1_deg)?,
        position("lat2_deg", lat2_deg, "lon2_deg", lon2_deg)?,
    );
    let degrees =
        |bearing: Option<Bearing<_>>| bearing.map_or(f64::NAN, |known| known.angle().get::<degree>());
    Ok(GeodesicInverse {
        distance_nm: line.distance.value().get::<nautical_mile>(),
        initial_bearing_deg: degrees(line.initial_bearing),
        final_bearing_deg: degrees(line.final_bearing),
    })
}

/// [`geodesic_inverse`] over columns.
pub(super) fn geodesic_inverse_block(inputs: [&[f64]; 4], outputs: [&mut [f64]; 3]) {
    let [lat1_deg, lon1_deg, lat2_deg, lon2_deg] = inputs;
    let [distance_nm, initial_bearing_deg, final_bearing_deg] = outputs;
    run(Long { lat1_deg, lon1_deg, lat2_deg, lon2_deg, distance_nm, initial_bearing_deg, final_bearing_deg });
}

/// Slant range, which DME shows, from ground distance and height above the station.
///
/// `sqrt(h^2 + 4 R (R + h) sin^2(d / 2R))`: the straight line over a sphere of the mean radius of WGS-84,
/// never the sum of distance and height.
///
/// # Arguments
/// - `ground_distance_nm`: along the surface from the station, 0 to 10 900
/// - `height_ft`: above the station's antenna, -60 000 to 400 000
///
/// # Accuracy
/// Within 1.1 m of the ellipsoid to 100 NM and 45 000 ft. Arrays and single calls agree to 1e-15 of the range.
///
/// # Degenerate cases
/// Overhead the answer is the height.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The law of cosines between the radii R and R + h.
///
/// # Example
/// ```
/// # use lubberline::plain::slant_range_nm;
/// assert_eq!(format!("{:.3}", slant_range_nm(10.0, 30_000.0)?), "11.159");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn slant_range_nm(ground_distance_nm: f64, height_ft: f64) -> Result<f64, Error> {
    if any_nan(&[ground_distance_nm, height_ft]) {
        return Ok(f64::NAN);
    }
    let ground = GroundDistance::named("ground_distance_nm", ground_distance_nm)?;
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    Ok(earth::slant_range(ground, height).value().get::<nautical_mile>())
}

/// [`slant_range_nm`] over columns.
pub(super) fn slant_range_nm_block(inputs: [&[f64]; 2], outputs: [&mut [f64]; 1]) {
    let [ground_distance_nm, height_ft] = inputs;
    let [slant_range_nm] = outputs;
    run(Slant { ground_distance_nm, height_ft, slant_range_nm });
}

outputs! {
    /// Where a geodesic leads: what [`geodesic_direct`] gives.
    GeodesicDirect {
        /// Latitude of the point reached, -90 to 90.
        latitude_deg,
        /// Longitude of the point reached, -180 to 180.
        longitude_deg,
        /// True bearing of the line there, onward, 0 to 360.
        final_bearing_deg,
    }
}

/// The point reached along a geodesic of the WGS-84 ellipsoid.
///
/// Karney's solution of the direct geodesic problem.
///
/// # Arguments
/// - `lat_deg`: latitude of the start, -90 to 90
/// - `lon_deg`: longitude of the start, any finite number
/// - `bearing_deg`: true bearing at the start, any finite number
/// - `distance_nm`: length of the line, 0 to 10 900
///
/// # Accuracy
/// 15 nanometres; in arrays 0.1 micrometre, but single calls within a metre and at the poles.
///
/// # Degenerate cases
/// From a pole the bearing is taken against the meridian of the longitude given there.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi 10.1007/s00190-012-0578-z.
///
/// # Example
/// ```
/// # use lubberline::plain::geodesic_direct;
/// assert_eq!(format!("{:.4}", geodesic_direct(0.0, 0.0, 90.0, 60.0)?.longitude_deg), "0.9982");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn geodesic_direct(
    lat_deg: f64,
    lon_deg: f64,
    bearing_deg: f64,
    distance_nm: f64,
) -> Result<GeodesicDirect, Error> {
    if any_nan(&[lat_deg, lon_deg, bearing_deg, distance_nm]) {
        return Ok(GeodesicDirect::NAN);
    }
    let (point, bearing) = earth::direct(
        position("lat_deg", lat_deg, "lon_deg", lon_deg)?,
        Bearing::named("bearing_deg", bearing_deg)?,
        GroundDistance::named("distance_nm", distance_nm)?,
    );
    Ok(GeodesicDirect {
        latitude_deg: latitude(point),
        longitude_deg: longitude(point),
        final_bearing_deg: bearing.angle().get::<degree>(),
    })
}

/// [`geodesic_direct`] over columns.
pub(super) fn geodesic_direct_block(inputs: [&[f64]; 4], outputs: [&mut [f64]; 3]) {
    let [lat_deg, lon_deg, bearing_deg, distance_nm] = inputs;
    let [latitude_deg, longitude_deg, final_bearing_deg] = outputs;
    run(Direct {
        lat_deg,
        lon_deg,
        bearing_deg,
        distance_nm,
        latitude_deg,
        longitude_deg,
        final_bearing_deg,
    });
}

/// Ground distance from slant range and height above the station: the inverse of [`slant_range_nm`].
///
/// `2 R asin(sqrt((s^2 - h^2) / (4 R (R + h))))` over a sphere of the mean radius of WGS-84.
///
/// # Arguments
/// - `slant_range_nm`: the DME reading, 0 to 10 900
/// - `height_ft`: above the station's antenna, -60 000 to 400 000
///
/// # Accuracy
/// Within 1.1 m of the ellipsoid to 100 NM and 45 000 ft, beyond twice the height. Close to overhead a small change of
/// range is a large one of distance: seven times at 1.01 times the height.
///
/// # Degenerate cases
/// A slant range of the height is overhead: zero.
///
/// # Errors
/// A value outside its range, or a slant range shorter than the height or longer than to the far side of the earth.
///
/// # Source
/// The law of cosines between the radii R and R + h; in the plane `sqrt(s^2 - h^2)`, ICAO Doc 8168 Vol II (5th ed. 2006),
/// Part I Section 4 Chapter 3 Appendix C, 3.3.4.
///
/// # Example
/// ```
/// # use lubberline::plain::ground_distance_nm;
/// assert_eq!(format!("{:.3}", ground_distance_nm(11.159, 30_000.0)?), "10.000");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn ground_distance_nm(slant_range_nm: f64, height_ft: f64) -> Result<f64, Error> {
    if any_nan(&[slant_range_nm, height_ft]) {
        return Ok(f64::NAN);
    }
    let slant = SlantRange::named("slant_range_nm", slant_range_nm)?;
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    Ok(earth::ground_distance(slant, height)?.value().get::<nautical_mile>())
}

/// The least DME reading, overhead at a height above the station.
///
/// The height in nautical miles, 6 076.1 ft each.
///
/// # Arguments
/// - `height_ft`: above the station's antenna, -60 000 to 400 000
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// Below the station it is the depth.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The definition of slant range.
///
/// # Example
/// ```
/// # use lubberline::plain::least_dme_nm;
/// assert_eq!(format!("{:.3}", least_dme_nm(12_000.0)?), "1.975");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn least_dme_nm(height_ft: f64) -> Result<f64, Error> {
    if any_nan(&[height_ft]) {
        return Ok(f64::NAN);
    }
    let overhead = GroundDistance::named("ground_distance_nm", 0.0)?;
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    Ok(earth::slant_range(overhead, height).value().get::<nautical_mile>())
}

outputs! {
    /// The great circle between two points of a sphere: what [`great_circle_inverse`] gives.
    GreatCircleInverse {
        /// Length along the surface.
        distance_nm,
        /// Bearing at the first point, 0 to 360; NaN between coincident points.
        initial_bearing_deg,
        /// Bearing at the second point, onward, 0 to 360; NaN between coincident points.
        final_bearing_deg,
    }
}

/// The great circle between two points of a sphere: its length and its bearings.
///
/// The central angle from its chords; bearings by spherical trigonometry.
///
/// # Arguments
/// - `lat1_deg`: latitude of the first point, -90 to 90
/// - `lon1_deg`: longitude of the first point, any finite number
/// - `lat2_deg`: latitude of the second point, -90 to 90
/// - `lon2_deg`: longitude of the second point, any finite number
/// - `sphere_radius_nm`: radius of the sphere, 1 to 100 000 (default 3440.069531)
///
/// # Accuracy
/// Rounding on the sphere; against the ellipsoid up to 0.56 percent. For the earth itself use `geodesic_inverse`.
///
/// # Degenerate cases
/// Coincident points have no bearing (NaN).
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Spherical trigonometry; the default radius is the mean one of WGS-84.
///
/// # Example
/// ```
/// # use lubberline::plain::great_circle_inverse;
/// assert_eq!(format!("{:.3}", great_circle_inverse(51.0, 0.0, 52.0, 1.0, 3440.069531)?.distance_nm), "70.722");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn great_circle_inverse(
    lat1_deg: f64,
    lon1_deg: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    sphere_radius_nm: f64,
) -> Result<GreatCircleInverse, Error> {
    if any_nan(&[lat1_deg, lon1_deg, lat2_deg, lon2_deg, sphere_radius_nm]) {
        return Ok(GreatCircleInverse::NAN);
    }
    let line = sphere(sphere_radius_nm)?.inverse(
        position("lat1_deg", lat1_deg, "lon1_deg", lon1_deg)?,
        position("lat2_deg", lat2_deg, "lon2_deg", lon2_deg)?,
    );
    let degrees =
        |bearing: Option<Bearing<_>>| bearing.map_or(f64::NAN, |known| known.angle().get::<degree>());
    Ok(GreatCircleInverse {
        distance_nm: line.distance.value().get::<nautical_mile>(),
        initial_bearing_deg: degrees(line.initial_bearing),
        final_bearing_deg: degrees(line.final_bearing),
    })
}

outputs! {
    /// Where a great circle leads: what [`great_circle_direct`] gives.
    GreatCircleDirect {
        /// Latitude of the point reached, -90 to 90.
        latitude_deg,
        /// Longitude of the point reached, -180 to 180.
        longitude_deg,
        /// Bearing of the circle there, onward, 0 to 360.
        final_bearing_deg,
    }
}

/// The point reached along a great circle of a sphere.
///
/// Spherical trigonometry.
///
/// # Arguments
/// - `lat_deg`: latitude of the start, -90 to 90
/// - `lon_deg`: longitude of the start, any finite number
/// - `bearing_deg`: bearing at the start, any finite number
/// - `distance_nm`: length of the line, 0 to 10 900
/// - `sphere_radius_nm`: radius of the sphere, 1 to 100 000 (default 3440.069531)
///
/// # Accuracy
/// Rounding on the sphere. For the earth itself use `geodesic_direct`.
///
/// # Degenerate cases
/// From a pole the bearing is taken against the meridian of the longitude given there.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Spherical trigonometry; the default radius is the mean one of WGS-84.
///
/// # Example
/// ```
/// # use lubberline::plain::great_circle_direct;
/// assert_eq!(format!("{:.4}", great_circle_direct(0.0, 0.0, 90.0, 60.0, 3437.746771)?.longitude_deg), "1.0000");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn great_circle_direct(
    lat_deg: f64,
    lon_deg: f64,
    bearing_deg: f64,
    distance_nm: f64,
    sphere_radius_nm: f64,
) -> Result<GreatCircleDirect, Error> {
    if any_nan(&[lat_deg, lon_deg, bearing_deg, distance_nm, sphere_radius_nm]) {
        return Ok(GreatCircleDirect::NAN);
    }
    let (point, bearing) = sphere(sphere_radius_nm)?.direct(
        position("lat_deg", lat_deg, "lon_deg", lon_deg)?,
        Bearing::named("bearing_deg", bearing_deg)?,
        GroundDistance::named("distance_nm", distance_nm)?,
    );
    Ok(GreatCircleDirect {
        latitude_deg: latitude(point),
        longitude_deg: longitude(point),
        final_bearing_deg: bearing.angle().get::<degree>(),
    })
}

fn sphere(sphere_radius_nm: f64) -> Result<Sphere, Error> {
    let radius_nm = Quantity::SphereRadius.check("sphere_radius_nm", sphere_radius_nm)?;
    Sphere::of_radius(nautical_miles(radius_nm))
}

outputs! {
    /// The straight line between two points at their heights: what [`straight_line`] gives.
    StraightLine {
        /// Its length: the slant range.
        slant_range_nm,
        /// Angle of the second point above the horizontal of the first, negative below.
        elevation_angle_deg,
    }
}

/// The straight line between two points at their heights over the WGS-84 ellipsoid: slant range and elevation angle.
///
/// The difference of the earth-centred coordinates, in the horizon of the first point.
///
/// # Arguments
/// - `lat1_deg`: latitude of the first point, the antenna, -90 to 90
/// - `lon1_deg`: longitude of the first point, any finite number
/// - `elevation_ft`: elevation of the first point above mean sea level, -16 500 to 60 000
/// - `lat2_deg`: latitude of the second point, the aircraft, -90 to 90
/// - `lon2_deg`: longitude of the second point, any finite number
/// - `altitude_ft`: altitude of the second point above mean sea level, -16 500 to 400 000
///
/// # Accuracy
/// A micrometre. Mean sea level is taken for the ellipsoid.
///
/// # Degenerate cases
/// Coincident points are at range zero and elevation angle zero. The line is straight through the earth too: whether the second point is in
/// sight is not asked.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Earth-centred coordinates of WGS-84 (NGA.STND.0036_1.0.0_WGS84, from memory).
///
/// # Example
/// ```
/// # use lubberline::plain::straight_line;
/// assert_eq!(format!("{:.3}", straight_line(61.25, -11.5, 420.0, 61.5, -11.0, 31_000.0)?.slant_range_nm), "21.462");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn straight_line(
    lat1_deg: f64,
    lon1_deg: f64,
    elevation_ft: f64,
    lat2_deg: f64,
    lon2_deg: f64,
    altitude_ft: f64,
) -> Result<StraightLine, Error> {
    if any_nan(&[lat1_deg, lon1_deg, elevation_ft, lat2_deg, lon2_deg, altitude_ft]) {
        return Ok(StraightLine::NAN);
    }
    let antenna = position("lat1_deg", lat1_deg, "lon1_deg", lon1_deg)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    let aircraft = position("lat2_deg", lat2_deg, "lon2_deg", lon2_deg)?;
    let altitude = TrueAltitude::named("altitude_ft", altitude_ft)?;
    let (range, angle) = earth::straight_line(antenna, elevation, aircraft, altitude);
    Ok(StraightLine {
        slant_range_nm: range.value().get::<nautical_mile>(),
        elevation_angle_deg: angle.get::<degree>(),
    })
}
