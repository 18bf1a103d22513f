//! True, magnetic and station north, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::value::units::degree;
use crate::value::{Bearing, Declination, MagneticBearing, Radial, TrueBearing};

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
