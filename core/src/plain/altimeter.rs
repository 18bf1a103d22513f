//! What an altimeter shows with its setting, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air;
use crate::value::units::foot;
use crate::value::{AltimeterSetting, IndicatedAltitude, PressureAltitude};

/// The altitude that a perfect altimeter shows with its setting.
///
/// Pressure altitude less the pressure altitude of the setting: the setting turns the scale of the standard
/// atmosphere as a whole.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// With 1013.25 hPa it is the pressure altitude; with the pressure itself, zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.
///
/// # Example
/// ```
/// # use lubberline::plain::indicated_altitude_ft;
/// assert_eq!(format!("{:.1}", indicated_altitude_ft(5_000.0, 1_000.0)?), "4636.2");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn indicated_altitude_ft(pressure_altitude_ft: f64, altimeter_setting_hpa: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, altimeter_setting_hpa]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    Ok(air::indicated_altitude(altitude, setting).value().get::<foot>())
}

/// Pressure altitude from what an altimeter shows with its setting: the inverse of [`indicated_altitude_ft`].
///
/// Indicated altitude plus the pressure altitude of the setting.
///
/// # Arguments
/// - `indicated_altitude_ft`: altitude shown, -50 000 to 300 000
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// With 1013.25 hPa it is the indicated altitude.
///
/// # Errors
/// A value outside its range, or a pressure altitude outside -5 to 80 km.
///
/// # Source
/// The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.
///
/// # Example
/// ```
/// # use lubberline::plain::pressure_altitude_ft;
/// assert_eq!(format!("{:.1}", pressure_altitude_ft(5_000.0, 1_000.0)?), "5363.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_ft(indicated_altitude_ft: f64, altimeter_setting_hpa: f64) -> Result<f64, Error> {
    if any_nan(&[indicated_altitude_ft, altimeter_setting_hpa]) {
        return Ok(f64::NAN);
    }
    let altitude = IndicatedAltitude::named("indicated_altitude_ft", indicated_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    Ok(air::pressure_altitude_from_indicated(altitude, setting)?.value().get::<foot>())
}

/// Pressure altitude by the rule of 1000 ft for each inch of mercury below 29.92.
///
/// `indicated altitude + 1000 (29.92 - setting in inches)`, an inch of mercury being 33.86389 hPa.
/// [`pressure_altitude_ft`] is exact.
///
/// # Arguments
/// - `indicated_altitude_ft`: altitude shown, -50 000 to 300 000
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
///
/// # Accuracy
/// An inch is 924 ft at sea level, so the rule is 8 percent of the correction too much.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a pressure altitude outside -5 to 80 km.
///
/// # Source
/// CNATRA P-203, Student Guide for Preflight Navigation.
///
/// # Example
/// ```
/// # use lubberline::plain::pressure_altitude_rule_ft;
/// assert_eq!(format!("{:.1}", pressure_altitude_rule_ft(5_000.0, 1_000.0)?), "5390.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_rule_ft(
    indicated_altitude_ft: f64,
    altimeter_setting_hpa: f64,
) -> Result<f64, Error> {
    if any_nan(&[indicated_altitude_ft, altimeter_setting_hpa]) {
        return Ok(f64::NAN);
    }
    let altitude = IndicatedAltitude::named("indicated_altitude_ft", indicated_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    Ok(air::pressure_altitude_by_rule(altitude, setting)?.value().get::<foot>())
}
