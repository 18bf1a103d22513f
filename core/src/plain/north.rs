//! Plain functions of [`crate::north`].

use super::earth::position;
use super::{any_nan, outputs};
use crate::Error;
use crate::many::declination::Variation;
use crate::many::run;
use crate::north::{
    DecimalYear, LambertGrid, MagneticField, TransverseGrid, polar_grid_convergence, utm_meridian,
};
use crate::value::units::{degree, nanotesla};
use crate::value::{
    Bearing, Declination, GridNorth, Latitude, Longitude, MagneticBearing, Radial, TrueAltitude, TrueBearing,
};

outputs! {
    /// The magnetic field at a place and date: what [`magnetic_field`] gives.
    MagneticFieldOutput {
        /// Angle from true to magnetic north, positive east: variation.
        declination_deg,
        /// Dip below the horizontal.
        inclination_deg,
        /// Horizontal field.
        horizontal_nt,
        /// Field toward true north.
        north_nt,
        /// Field toward east.
        east_nt,
        /// Field downward.
        down_nt,
        /// The whole field.
        total_nt,
        /// Change of the declination in a year.
        declination_change_deg,
        /// Change of the inclination in a year.
        inclination_change_deg,
        /// Change of the horizontal field in a year.
        horizontal_change_nt,
        /// Change of the field toward true north in a year.
        north_change_nt,
        /// Change of the field toward east in a year.
        east_change_nt,
        /// Change of the field downward in a year.
        down_change_nt,
        /// Change of the whole field in a year.
        total_change_nt,
        /// One standard deviation of the declination.
        declination_uncertainty_deg,
        /// Declination from the north of the polar grid; NaN between 55 degrees of latitude, where that is not used.
        grid_variation_deg,
        /// How far a compass can be trusted: 0 clear, 1 caution, 2 blackout, as in [`crate::north::MagneticZone`].
        zone,
        /// 1 if the date lies in the years the models are made for, 2020 to 2030, else 0.
        in_date,
    }
}

/// The earth's magnetic field at a place and date, by the World Magnetic Model.
///
/// Schmidt semi-normalised spherical harmonics of degree and order 12, in double precision: the model of 2020 before 2025, that of 2025 from
/// then on.
///
/// # Arguments
/// - `lat_deg`: latitude, -90 to 90
/// - `lon_deg`: longitude, any finite number
/// - `altitude_ft`: altitude above mean sea level, -16 500 to 400 000
/// - `decimal_year`: date as a year and its fraction, 2020 to 2035
///
/// # Accuracy
/// The arithmetic to 1e-8 nT. The model: one standard deviation of 137 nT north, 89 east, 141 down.
///
/// # Degenerate cases
/// Between 55 degrees of latitude there is no grid variation (NaN). At a pole the components are those of the meridian of the longitude given. About the magnetic poles, where `zone` is not 0, and out of
/// date the declination must not be relied on.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The US/UK World Magnetic Model for 2025-2030: Technical Report, NOAA NCEI and BGS (2024).
///
/// # Example
/// ```
/// # use lubberline::plain::magnetic_field;
/// assert_eq!(format!("{:.2}", magnetic_field(-80.0, 240.0, 0.0, 2027.5)?.declination_deg), "68.49");
/// assert_eq!(format!("{:.1}", magnetic_field(-80.0, 240.0, 0.0, 2027.5)?.down_nt), "-51783.7");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn magnetic_field(
    lat_deg: f64,
    lon_deg: f64,
    altitude_ft: f64,
    decimal_year: f64,
) -> Result<MagneticFieldOutput, Error> {
    if any_nan(&[lat_deg, lon_deg, altitude_ft, decimal_year]) {
        return Ok(MagneticFieldOutput::NAN);
    }
    let place = position("lat_deg", lat_deg, "lon_deg", lon_deg)?;
    let altitude = TrueAltitude::named("altitude_ft", altitude_ft)?;
    let magnetic = MagneticField::at(place, altitude, DecimalYear::named("decimal_year", decimal_year)?);
    Ok(MagneticFieldOutput {
        declination_deg: magnetic.declination().angle().get::<degree>(),
        inclination_deg: magnetic.inclination().get::<degree>(),
        horizontal_nt: magnetic.field.horizontal().get::<nanotesla>(),
        north_nt: magnetic.field.north.get::<nanotesla>(),
        east_nt: magnetic.field.east.get::<nanotesla>(),
        down_nt: magnetic.field.down.get::<nanotesla>(),
        total_nt: magnetic.field.total().get::<nanotesla>(),
        declination_change_deg: magnetic.declination_change().get::<degree>(),
        inclination_change_deg: magnetic.inclination_change().get::<degree>(),
        horizontal_change_nt: magnetic.horizontal_change().get::<nanotesla>(),
        north_change_nt: magnetic.change.north.get::<nanotesla>(),
        east_change_nt: magnetic.change.east.get::<nanotesla>(),
        down_change_nt: magnetic.change.down.get::<nanotesla>(),
        total_change_nt: magnetic.total_change().get::<nanotesla>(),
        declination_uncertainty_deg: magnetic.declination_uncertainty().get::<degree>(),
        grid_variation_deg: magnetic.grid_variation().map_or(f64::NAN, |angle| angle.angle().get::<degree>()),
        zone: f64::from(magnetic.zone().code()),
        in_date: f64::from(magnetic.in_date),
    })
}

/// Magnetic variation (declination) at a place and date, positive east.
///
/// The declination of `magnetic_field`.
///
/// # Arguments
/// - `lat_deg`: latitude, -90 to 90
/// - `lon_deg`: longitude, any finite number
/// - `altitude_ft`: altitude above mean sea level, -16 500 to 400 000
/// - `decimal_year`: date as a year and its fraction, 2020 to 2035
///
/// # Accuracy
/// As `magnetic_field`. Arrays and single calls agree to 1e-8 nT across the horizontal field, as far as that turns the declination.
///
/// # Degenerate cases
/// As `magnetic_field`.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// As `magnetic_field`.
///
/// # Example
/// ```
/// # use lubberline::plain::variation_deg;
/// assert_eq!(format!("{:.2}", variation_deg(-80.0, 240.0, 0.0, 2027.5)?), "68.49");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn variation_deg(lat_deg: f64, lon_deg: f64, altitude_ft: f64, decimal_year: f64) -> Result<f64, Error> {
    if any_nan(&[lat_deg, lon_deg, altitude_ft, decimal_year]) {
        return Ok(f64::NAN);
    }
    let place = position("lat_deg", lat_deg, "lon_deg", lon_deg)?;
    let altitude = TrueAltitude::named("altitude_ft", altitude_ft)?;
    let magnetic = MagneticField::at(place, altitude, DecimalYear::named("decimal_year", decimal_year)?);
    Ok(magnetic.declination().angle().get::<degree>())
}

/// [`variation_deg`] over columns.
pub(super) fn variation_deg_block(inputs: [&[f64]; 4], outputs: [&mut [f64]; 1]) {
    let [latitude_deg, longitude_deg, altitude_ft, decimal_year] = inputs;
    let [variation_deg] = outputs;
    run(Variation { latitude_deg, longitude_deg, altitude_ft, decimal_year, variation_deg });
}

/// A true direction counted from magnetic north.
///
/// `true - variation`, 0 to 360; variation is positive east.
///
/// # Arguments
/// - `true_deg`: true direction, any finite number
/// - `variation_deg`: magnetic variation, positive east, -180 to 180
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
/// The definition of variation.
///
/// # Example
/// ```
/// # use lubberline::plain::magnetic_from_true_deg;
/// assert_eq!(format!("{:.0}", magnetic_from_true_deg(5.0, 12.0)?), "353");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn magnetic_from_true_deg(true_deg: f64, variation_deg: f64) -> Result<f64, Error> {
    if any_nan(&[true_deg, variation_deg]) {
        return Ok(f64::NAN);
    }
    let direction: TrueBearing = Bearing::named("true_deg", true_deg)?;
    Ok(direction.to_magnetic(Declination::named("variation_deg", variation_deg)?).angle().get::<degree>())
}

/// A magnetic direction counted from true north.
///
/// `magnetic + variation`, 0 to 360; variation is positive east.
///
/// # Arguments
/// - `magnetic_deg`: magnetic direction, any finite number
/// - `variation_deg`: magnetic variation, positive east, -180 to 180
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
/// The definition of variation.
///
/// # Example
/// ```
/// # use lubberline::plain::true_from_magnetic_deg;
/// assert_eq!(format!("{:.0}", true_from_magnetic_deg(353.0, 12.0)?), "5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn true_from_magnetic_deg(magnetic_deg: f64, variation_deg: f64) -> Result<f64, Error> {
    if any_nan(&[magnetic_deg, variation_deg]) {
        return Ok(f64::NAN);
    }
    let direction: MagneticBearing = Bearing::named("magnetic_deg", magnetic_deg)?;
    Ok(direction.to_true(Declination::named("variation_deg", variation_deg)?).angle().get::<degree>())
}

/// How far a station's radials read more than the magnetic bearing of the same direction, today.
///
/// `variation - declination`, reduced to half a circle either way: the station's north was set up with its declination, and the field has moved
/// on.
///
/// # Arguments
/// - `station_declination_deg`: the station's declination, positive east, -180 to 180
/// - `variation_deg`: today's magnetic variation there, positive east, -180 to 180
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
/// The definitions of declination and variation.
///
/// # Example
/// ```
/// # use lubberline::plain::station_misalignment_deg;
/// assert_eq!(format!("{:.1}", station_misalignment_deg(-6.0, -3.5)?), "2.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn station_misalignment_deg(station_declination_deg: f64, variation_deg: f64) -> Result<f64, Error> {
    if any_nan(&[station_declination_deg, variation_deg]) {
        return Ok(f64::NAN);
    }
    let declination = Declination::named("station_declination_deg", station_declination_deg)?;
    let variation = Declination::named("variation_deg", variation_deg)?;
    Ok(declination.change_to(variation).angle().get::<degree>())
}

/// A true direction from a station as a radial, which is counted from the station's north.
///
/// `true - declination`, 0 to 360.
///
/// # Arguments
/// - `true_deg`: true direction from the station, any finite number
/// - `station_declination_deg`: the station's declination, positive east, -180 to 180
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
/// The definition of a station's declination.
///
/// # Example
/// ```
/// # use lubberline::plain::radial_from_true_deg;
/// assert_eq!(format!("{:.0}", radial_from_true_deg(49.5, -6.0)?), "56");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radial_from_true_deg(true_deg: f64, station_declination_deg: f64) -> Result<f64, Error> {
    if any_nan(&[true_deg, station_declination_deg]) {
        return Ok(f64::NAN);
    }
    let direction: TrueBearing = Bearing::named("true_deg", true_deg)?;
    let declination = Declination::named("station_declination_deg", station_declination_deg)?;
    let radial: Radial = direction.counted_from(declination);
    Ok(radial.angle().get::<degree>())
}

/// A radial counted from true north: the true direction from the station.
///
/// `radial + declination`, 0 to 360.
///
/// # Arguments
/// - `radial_deg`: radial, any finite number
/// - `station_declination_deg`: the station's declination, positive east, -180 to 180
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
/// The definition of a station's declination.
///
/// # Example
/// ```
/// # use lubberline::plain::true_from_radial_deg;
/// assert_eq!(format!("{:.0}", true_from_radial_deg(56.0, -6.0)?), "50");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn true_from_radial_deg(radial_deg: f64, station_declination_deg: f64) -> Result<f64, Error> {
    if any_nan(&[radial_deg, station_declination_deg]) {
        return Ok(f64::NAN);
    }
    let radial: Radial = Bearing::named("radial_deg", radial_deg)?;
    let declination = Declination::named("station_declination_deg", station_declination_deg)?;
    let direction: TrueBearing = radial.counted_from(declination.reversed());
    Ok(direction.angle().get::<degree>())
}

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

/// A calendar date as a year and its elapsed fraction, as `magnetic_field` takes it.
///
/// The days elapsed since the year began, of 365, or 366 in a leap year of the Gregorian calendar.
///
/// # Arguments
/// - `year`: year, whole, 2020 to 2034
/// - `month`: month, whole, 1 to 12
/// - `day`: day of the month from 1, with its elapsed fraction: 2.5 is noon of the second
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A value outside its range, a date that the calendar has not.
///
/// # Source
/// The Gregorian calendar.
///
/// # Example
/// ```
/// # use lubberline::plain::decimal_year;
/// assert_eq!(format!("{:.4}", decimal_year(2026.0, 7.0, 2.5)?), "2026.5000");
/// assert_eq!(format!("{:.4}", decimal_year(2028.0, 3.0, 1.0)?), "2028.1639");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn decimal_year(year: f64, month: f64, day: f64) -> Result<f64, Error> {
    if any_nan(&[year, month, day]) {
        return Ok(f64::NAN);
    }
    Ok(DecimalYear::of_numbers(year, month, day)?.years())
}
