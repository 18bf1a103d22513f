//! The altimeter setting and the pressure at a station, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air;
use crate::value::units::hectopascal;
use crate::value::{AltimeterSetting, Elevation, StaticPressure};

/// The altimeter setting of a station, QNH: with it an altimeter at the station shows the elevation.
///
/// The standard pressure at the station's pressure altitude less its elevation.
///
/// # Arguments
/// - `station_pressure_hpa`: pressure at the station, its QFE, above 0 to 2000
/// - `elevation_ft`: elevation of the station, -16 500 to 60 000
///
/// # Accuracy
/// Rounding. A station reports it rounded down to a whole hectopascal, which is 27 ft.
///
/// # Degenerate cases
/// At no elevation it is the pressure.
///
/// # Errors
/// A value outside its range, or a setting outside 400 to 1200 hPa.
///
/// # Source
/// The definition of QNH, ICAO Annex 3 and Doc 8896 (from memory). [`altimeter_setting_smithsonian_hpa`] is the
/// American one.
///
/// # Example
/// ```
/// # use lubberline::plain::altimeter_setting_hpa;
/// assert_eq!(format!("{:.2}", altimeter_setting_hpa(832.0, 5_430.0)?), "1016.08");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn altimeter_setting_hpa(station_pressure_hpa: f64, elevation_ft: f64) -> Result<f64, Error> {
    if any_nan(&[station_pressure_hpa, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let station = StaticPressure::named("station_pressure_hpa", station_pressure_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::altimeter_setting(station, elevation)?.value().get::<hectopascal>())
}

/// The altimeter setting of a station by the American formula, for a cockpit about 10 ft above it.
///
/// `(p - 0.3) (1 + 1013.25^n 0.0065/288 h/(p - 0.3)^n)^(1/n)` with n = 0.190284, p in hectopascals, h in
/// metres.
///
/// # Arguments
/// - `station_pressure_hpa`: pressure at the station, its QFE, above 0 to 2000
/// - `elevation_ft`: elevation of the station, -16 500 to 60 000
///
/// # Accuracy
/// As published; 0.3 to 0.4 hPa less than [`altimeter_setting_hpa`], which is the height of the cockpit.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a setting outside 400 to 1200 hPa.
///
/// # Source
/// Smithsonian Meteorological Tables, 6th edition 1951, p. 269, read in a quotation.
///
/// # Example
/// ```
/// # use lubberline::plain::altimeter_setting_smithsonian_hpa;
/// assert_eq!(format!("{:.2}", altimeter_setting_smithsonian_hpa(832.0, 5_430.0)?), "1015.81");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn altimeter_setting_smithsonian_hpa(station_pressure_hpa: f64, elevation_ft: f64) -> Result<f64, Error> {
    if any_nan(&[station_pressure_hpa, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let station = StaticPressure::named("station_pressure_hpa", station_pressure_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::altimeter_setting_smithsonian(station, elevation)?.value().get::<hectopascal>())
}

/// The pressure at a station, its QFE, from its altimeter setting: the inverse of [`altimeter_setting_hpa`].
///
/// The standard pressure at the elevation plus the pressure altitude of the setting.
///
/// # Arguments
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
/// - `elevation_ft`: elevation of the station, -16 500 to 60 000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// At no elevation it is the setting.
///
/// # Errors
/// A value outside its range, or a pressure outside 0 to 2000 hPa.
///
/// # Source
/// As [`altimeter_setting_hpa`].
///
/// # Example
/// ```
/// # use lubberline::plain::station_pressure_hpa;
/// assert_eq!(format!("{:.2}", station_pressure_hpa(1_013.25, 5_430.0)?), "829.59");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn station_pressure_hpa(altimeter_setting_hpa: f64, elevation_ft: f64) -> Result<f64, Error> {
    if any_nan(&[altimeter_setting_hpa, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::station_pressure(setting, elevation)?.value().get::<hectopascal>())
}
