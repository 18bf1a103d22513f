//! True altitude by pressure and temperature, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air;
use crate::value::units::foot;
use crate::value::{AltimeterSetting, Elevation, IsaDeviation, PressureAltitude, TrueAltitude};

/// True altitude from pressure altitude, a station's altimeter setting and the ISA deviation.
///
/// From the station up the air is `Hp - Hs + D (R/g) ln(ps/p)` thick, with the ISA deviation `D` the same all
/// the way: hydrostatic balance, exact through the layers. Geopotential is turned into geometric height.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `altimeter_setting_hpa`: the station's altimeter setting, 400 to 1200 (default 1013.25)
/// - `elevation_ft`: elevation of the station that gives the setting, -16 500 to 60 000 (default 0.0)
/// - `isa_deviation_k`: the air from the station up is warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// Rounding for such a column; 5 K of error in its mean temperature are 2 percent of the height.
///
/// # Degenerate cases
/// At the station's own pressure the answer is its elevation, whatever the temperature.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).
///
/// # Example
/// ```
/// # use lubberline::plain::true_altitude_ft;
/// assert_eq!(format!("{:.0}", true_altitude_ft(10_000.0, 1_013.25, 0.0, -20.0)?), "9285");
/// assert_eq!(format!("{:.0}", true_altitude_ft(10_000.0, 995.0, 2_000.0, 15.0)?), "9910");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn true_altitude_ft(
    pressure_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    isa_deviation_k: f64,
) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(air::true_altitude(altitude, setting, elevation, deviation).value().get::<foot>())
}

/// Height above a station from pressure altitude, the station's altimeter setting and the ISA deviation.
///
/// [`true_altitude_ft`] less the elevation: the height that slant range asks for.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `altimeter_setting_hpa`: the station's altimeter setting, 400 to 1200 (default 1013.25)
/// - `elevation_ft`: elevation of the station that gives the setting, -16 500 to 60 000 (default 0.0)
/// - `isa_deviation_k`: the air from the station up is warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// As [`true_altitude_ft`].
///
/// # Degenerate cases
/// Zero at the station's own pressure.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// As [`true_altitude_ft`].
///
/// # Example
/// ```
/// # use lubberline::plain::height_above_station_ft;
/// assert_eq!(format!("{:.0}", height_above_station_ft(10_000.0, 995.0, 2_000.0, 15.0)?), "7910");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn height_above_station_ft(
    pressure_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    isa_deviation_k: f64,
) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(air::height_above_station(altitude, setting, elevation, deviation).value().get::<foot>())
}

/// Pressure altitude at a true altitude: the inverse of [`true_altitude_ft`].
///
/// By Newton's method on the thickness of the column.
///
/// # Arguments
/// - `true_altitude_ft`: altitude above mean sea level, -16 500 to 400 000
/// - `altimeter_setting_hpa`: the station's altimeter setting, 400 to 1200 (default 1013.25)
/// - `elevation_ft`: elevation of the station that gives the setting, -16 500 to 60 000 (default 0.0)
/// - `isa_deviation_k`: the air from the station up is warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// 1e-8 ft.
///
/// # Degenerate cases
/// At the elevation it is the station's own pressure altitude, whatever the temperature.
///
/// # Errors
/// A value outside its range, or a pressure altitude outside -5 to 80 km.
///
/// # Source
/// As [`true_altitude_ft`].
///
/// # Example
/// ```
/// # use lubberline::plain::pressure_altitude_at_true_altitude_ft;
/// assert_eq!(format!("{:.0}", pressure_altitude_at_true_altitude_ft(10_000.0, 1_013.25, 0.0, -20.0)?), "10772");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_at_true_altitude_ft(
    true_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    elevation_ft: f64,
    isa_deviation_k: f64,
) -> Result<f64, Error> {
    if any_nan(&[true_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = TrueAltitude::named("true_altitude_ft", true_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(air::pressure_altitude_at(altitude, setting, elevation, deviation)?.value().get::<foot>())
}
