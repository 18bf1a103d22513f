//! The north of grids, in plain numbers.

use super::any_nan;
use super::earth::position;
use crate::Error;
use crate::north::{LambertGrid, TransverseGrid, polar_grid_convergence, utm_meridian};
use crate::value::units::degree;
use crate::value::{Bearing, Declination, GridNorth, Latitude, Longitude, TrueBearing};

/// A true direction counted from the north of a grid.
///
/// `true - convergence`, 0 to 360.
///
/// # Arguments
/// - `true_deg`: true direction, any finite number
/// - `convergence_deg`: angle from true to grid north at the place, positive east, -180 to 180
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The definition of convergence.
///
/// # Example
/// ```
/// # use lubberline::plain::grid_from_true_deg;
/// assert_eq!(format!("{:.0}", grid_from_true_deg(90.0, 30.0)?), "60");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn grid_from_true_deg(true_deg: f64, convergence_deg: f64) -> Result<f64, Error> {
    if any_nan(&[true_deg, convergence_deg]) {
        return Ok(f64::NAN);
    }
    let direction: TrueBearing = Bearing::named("true_deg", true_deg)?;
    let convergence = Declination::named("convergence_deg", convergence_deg)?;
    Ok(direction.to_grid(convergence).angle().get::<degree>())
}

/// A direction of a grid counted from true north.
///
/// `grid + convergence`, 0 to 360.
///
/// # Arguments
/// - `grid_deg`: direction from the grid's north, any finite number
/// - `convergence_deg`: angle from true to grid north at the place, positive east, -180 to 180
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The definition of convergence.
///
/// # Example
/// ```
/// # use lubberline::plain::true_from_grid_deg;
/// assert_eq!(format!("{:.0}", true_from_grid_deg(60.0, 30.0)?), "90");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn true_from_grid_deg(grid_deg: f64, convergence_deg: f64) -> Result<f64, Error> {
    if any_nan(&[grid_deg, convergence_deg]) {
        return Ok(f64::NAN);
    }
    let direction: Bearing<GridNorth> = Bearing::named("grid_deg", grid_deg)?;
    let convergence = Declination::named("convergence_deg", convergence_deg)?;
    Ok(direction.to_true(convergence).angle().get::<degree>())
}

/// The angle from true north to the north of the polar grid, positive east.
///
/// The longitude in the north, its negative in the south: the grid's north is the direction in which the meridian of Greenwich runs north.
///
/// # Arguments
/// - `lat_deg`: latitude, -90 to 90; its sign tells the pole
/// - `lon_deg`: longitude, any finite number
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Off the polar regions the grid is not used. At a pole the convergence goes with the longitude given.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The grid of the Universal Polar Stereographic projection; grid variation of the World Magnetic Model.
///
/// # Example
/// ```
/// # use lubberline::plain::polar_grid_convergence_deg;
/// assert_eq!(format!("{:.0}", polar_grid_convergence_deg(80.0, 30.0)?), "30");
/// assert_eq!(format!("{:.0}", polar_grid_convergence_deg(-80.0, 30.0)?), "-30");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn polar_grid_convergence_deg(lat_deg: f64, lon_deg: f64) -> Result<f64, Error> {
    if any_nan(&[lat_deg, lon_deg]) {
        return Ok(f64::NAN);
    }
    let place = position("lat_deg", lat_deg, "lon_deg", lon_deg)?;
    Ok(polar_grid_convergence(place).angle().get::<degree>())
}

/// The angle from true north to the north of a chart on Lambert's conformal cone, positive east.
///
/// `n (longitude - meridian)`, the difference reduced to half a circle either way, with the constant of the cone n from the parallels on WGS-84.
///
/// # Arguments
/// - `lon_deg`: longitude, any finite number
/// - `meridian_lon_deg`: longitude of the meridian whose north is the chart's, any finite number
/// - `parallel1_lat_deg`: one standard parallel, -90 to 90
/// - `parallel2_lat_deg`: the other, or the same again, -90 to 90
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Parallels as far north as south make a cylinder: 0. With a pole for a parallel it is the polar grid.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// J. P. Snyder, Map Projections: A Working Manual, US Geological Survey Professional Paper 1395 (1987), equations 14-4, 15-8.
///
/// # Example
/// ```
/// # use lubberline::plain::lambert_grid_convergence_deg;
/// assert_eq!(format!("{:.2}", lambert_grid_convergence_deg(-86.0, -96.0, 33.0, 45.0)?), "6.30");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn lambert_grid_convergence_deg(
    lon_deg: f64,
    meridian_lon_deg: f64,
    parallel1_lat_deg: f64,
    parallel2_lat_deg: f64,
) -> Result<f64, Error> {
    if any_nan(&[lon_deg, meridian_lon_deg, parallel1_lat_deg, parallel2_lat_deg]) {
        return Ok(f64::NAN);
    }
    let longitude = Longitude::named("lon_deg", lon_deg)?;
    let grid = LambertGrid::new(
        Latitude::named("parallel1_lat_deg", parallel1_lat_deg)?,
        Latitude::named("parallel2_lat_deg", parallel2_lat_deg)?,
        Longitude::named("meridian_lon_deg", meridian_lon_deg)?,
    );
    Ok(grid.convergence(longitude).angle().get::<degree>())
}

/// The angle from true north to the north of a map on the transverse Mercator projection, positive east.
///
/// On a sphere `atan(tan(l) sin(lat))`, `l` the longitude from the meridian; on WGS-84 with the conformal latitude and Krueger's series.
///
/// # Arguments
/// - `lat_deg`: latitude, -90 to 90
/// - `lon_deg`: longitude, any finite number
/// - `meridian_lon_deg`: longitude of the meridian whose north is the map's, within 60 degrees of `lon_deg`
///
/// # Accuracy
/// 1e-13 degrees to 35 degrees from the meridian, 1e-11 to 45, 1e-9 to 60.
///
/// # Degenerate cases
/// Zero on the meridian and on the equator. At a pole it goes with the longitude given.
///
/// # Errors
/// A value outside its range, a place beyond 60 degrees from the meridian.
///
/// # Source
/// C. F. F. Karney, Transverse Mercator with an accuracy of a few nanometers, Journal of Geodesy 85 (2011) 475-485, equations 7 to 11, 23 to 25.
///
/// # Example
/// ```
/// # use lubberline::plain::transverse_grid_convergence_deg;
/// assert_eq!(format!("{:.4}", transverse_grid_convergence_deg(60.0, -6.0, -9.0)?), "2.5987");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn transverse_grid_convergence_deg(
    lat_deg: f64,
    lon_deg: f64,
    meridian_lon_deg: f64,
) -> Result<f64, Error> {
    if any_nan(&[lat_deg, lon_deg, meridian_lon_deg]) {
        return Ok(f64::NAN);
    }
    let place = position("lat_deg", lat_deg, "lon_deg", lon_deg)?;
    let grid = TransverseGrid { meridian: Longitude::named("meridian_lon_deg", meridian_lon_deg)? };
    Ok(grid.convergence(place)?.angle().get::<degree>())
}

/// The meridian of the zone of the Universal Transverse Mercator grid in which a place lies.
///
/// Zones are 6 degrees wide, but for those that are widened about Norway and Svalbard; a place between two belongs to the eastern one.
///
/// # Arguments
/// - `lat_deg`: latitude, -90 to 90
/// - `lon_deg`: longitude, any finite number
///
/// # Accuracy
/// Exact.
///
/// # Degenerate cases
/// The grid is laid out from 80 degrees south to 84 north; toward the poles the zones go on, and the polar grid is used.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// NGA.STND.0037_2.0.0_GRIDS, Universal Grids and Grid Reference Systems (2014), section 3 (from memory).
///
/// # Example
/// ```
/// # use lubberline::plain::utm_meridian_deg;
/// assert_eq!(format!("{:.0}", utm_meridian_deg(60.0, -10.0)?), "-9");
/// assert_eq!(format!("{:.0}", utm_meridian_deg(60.0, 4.0)?), "9");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn utm_meridian_deg(lat_deg: f64, lon_deg: f64) -> Result<f64, Error> {
    if any_nan(&[lat_deg, lon_deg]) {
        return Ok(f64::NAN);
    }
    Ok(utm_meridian(position("lat_deg", lat_deg, "lon_deg", lon_deg)?).angle().get::<degree>())
}
