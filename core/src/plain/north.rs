//! Plain functions of [`crate::north`].

use super::earth::position;
use super::{any_nan, outputs};
use crate::Error;
use crate::north::{DecimalYear, MagneticField, polar_grid_convergence};
use crate::value::units::{degree, nanotesla};
use crate::value::{Bearing, Declination, MagneticBearing, TrueAltitude, TrueBearing};

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
        /// One standard deviation of the declination.
        declination_uncertainty_deg,
        /// How far a compass can be trusted: 0 clear, 1 caution, 2 blackout, as in [`crate::north::MagneticZone`].
        zone,
        /// 1 if the date lies in the years the model is made for, 2025 to 2030, else 0.
        in_date,
    }
}

/// The earth's magnetic field at a place and date, by the World Magnetic Model 2025.
///
/// Schmidt semi-normalised spherical harmonics of degree and order 12, in double precision.
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
/// At a pole the components are those of the meridian of the longitude given. About the magnetic poles, where `zone` is not 0, and out of
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
    let field = MagneticField::at(place, altitude, DecimalYear::named("decimal_year", decimal_year)?);
    Ok(MagneticFieldOutput {
        declination_deg: field.declination().angle().get::<degree>(),
        inclination_deg: field.inclination().get::<degree>(),
        horizontal_nt: field.horizontal().get::<nanotesla>(),
        north_nt: field.north.get::<nanotesla>(),
        east_nt: field.east.get::<nanotesla>(),
        down_nt: field.down.get::<nanotesla>(),
        total_nt: field.total().get::<nanotesla>(),
        declination_change_deg: field.declination_change().get::<degree>(),
        inclination_change_deg: field.inclination_change().get::<degree>(),
        declination_uncertainty_deg: field.declination_uncertainty().get::<degree>(),
        zone: f64::from(field.zone().code()),
        in_date: f64::from(field.in_date),
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
/// As `magnetic_field`.
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
    let field = MagneticField::at(place, altitude, DecimalYear::named("decimal_year", decimal_year)?);
    Ok(field.declination().angle().get::<degree>())
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

/// A true direction counted from the north of the polar grid, along the meridian of Greenwich.
///
/// `true + longitude` in the north, `true - longitude` in the south, 0 to 360.
///
/// # Arguments
/// - `true_deg`: true direction, any finite number
/// - `lat_deg`: latitude, -90 to 90; its sign tells the pole
/// - `lon_deg`: longitude, any finite number
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Off the polar regions the grid is not used.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The grid of the Universal Polar Stereographic projection.
///
/// # Example
/// ```
/// # use lubberline::plain::grid_from_true_deg;
/// assert_eq!(format!("{:.0}", grid_from_true_deg(90.0, 80.0, 30.0)?), "120");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn grid_from_true_deg(true_deg: f64, lat_deg: f64, lon_deg: f64) -> Result<f64, Error> {
    if any_nan(&[true_deg, lat_deg, lon_deg]) {
        return Ok(f64::NAN);
    }
    let direction: TrueBearing = Bearing::named("true_deg", true_deg)?;
    let convergence = polar_grid_convergence(position("lat_deg", lat_deg, "lon_deg", lon_deg)?);
    Ok(direction.to_grid(convergence).angle().get::<degree>())
}
