//! Density altitude, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air::{self, Air};
use crate::value::units::foot;
use crate::value::{PressureAltitude, Temperature};

/// Density altitude: where the standard atmosphere has the density of the air.
///
/// In closed form within each layer, density going with `(T/T_b)^(-g/(L R) - 1)`.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `temperature_degc`: static air temperature, -200 to 200
///
/// # Accuracy
/// Rounding, for dry air. Moisture makes air lighter: at 35 degC and saturated, 700 ft more at sea level.
///
/// # Degenerate cases
/// In standard air it is the pressure altitude.
///
/// # Errors
/// A value outside its range, a deviation beyond 150 K, or a density altitude outside -5 to 80 km.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// # use lubberline::plain::density_altitude_ft;
/// assert_eq!(format!("{:.0}", density_altitude_ft(6_000.0, 13.0)?), "7147");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn density_altitude_ft(pressure_altitude_ft: f64, temperature_degc: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, temperature_degc]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let air = Air::new(altitude, air::isa_deviation(temperature, altitude)?);
    Ok(air.density_altitude()?.value().get::<foot>())
}

/// Density altitude by the rule of 120 ft for each degree above standard.
///
/// `Hp + 120 (t - (15 - 2 Hp/1000))` with the pressure altitude `Hp`. [`density_altitude_ft`] is exact.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `temperature_degc`: static air temperature, -200 to 200
///
/// # Accuracy
/// Too much by up to 65 ft within 10 K of standard, 160 ft within 20 K and 300 ft within 30 K, to 10 000 ft.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a density altitude outside -5 to 80 km.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::density_altitude_rule_ft;
/// assert_eq!(format!("{:.0}", density_altitude_rule_ft(6_000.0, 13.0)?), "7200");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn density_altitude_rule_ft(pressure_altitude_ft: f64, temperature_degc: f64) -> Result<f64, Error> {
    if any_nan(&[pressure_altitude_ft, temperature_degc]) {
        return Ok(f64::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    Ok(air::density_altitude_by_rule(altitude, temperature)?.value().get::<foot>())
}
