//! The temperature that a probe in the stream feels, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air;
use crate::value::units::degree_celsius;
use crate::value::{Mach, RecoveryFactor, Temperature, TotalTemperature};

/// Total air temperature, which a probe in the stream feels, from static air temperature.
///
/// `T (1 + 0.2 k M^2)` in kelvins, with the recovery factor `k` of the probe.
///
/// # Arguments
/// - `temperature_degc`: static air temperature, -200 to 200
/// - `mach`: Mach number, 0 to 10
/// - `recovery_factor`: share of the heat of compression that the probe feels, 0 to 1 (default 1.0)
///
/// # Accuracy
/// Rounding, for air of constant heat ratio: good to about Mach 3.
///
/// # Degenerate cases
/// At rest, or with a recovery factor of zero, the two are one.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// NACA Report 1135 (1953), equation 43 (number from memory), for a ratio of specific heats of 1.4.
///
/// # Example
/// ```
/// # use lubberline::plain::total_temperature_degc;
/// assert_eq!(format!("{:.1}", total_temperature_degc(-54.0, 0.82, 1.0)?), "-24.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn total_temperature_degc(temperature_degc: f64, mach: f64, recovery_factor: f64) -> Result<f64, Error> {
    if any_nan(&[temperature_degc, mach, recovery_factor]) {
        return Ok(f64::NAN);
    }
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let recovery = RecoveryFactor::named("recovery_factor", recovery_factor)?;
    Ok(air::total_temperature(temperature, Mach::named("mach", mach)?, recovery)
        .value()
        .get::<degree_celsius>())
}

/// Static air temperature from total air temperature: the inverse of [`total_temperature_degc`].
///
/// `Tt/(1 + 0.2 k M^2)` in kelvins, with the recovery factor `k` of the probe.
///
/// # Arguments
/// - `total_temperature_degc`: total air temperature, -270 to 10 000
/// - `mach`: Mach number, 0 to 10
/// - `recovery_factor`: share of the heat of compression that the probe feels, 0 to 1 (default 1.0)
///
/// # Accuracy
/// Rounding, for air of constant heat ratio: good to about Mach 3.
///
/// # Degenerate cases
/// At rest, or with a recovery factor of zero, the two are one.
///
/// # Errors
/// A value outside its range, or a static temperature outside -200 to 200 degC.
///
/// # Source
/// As [`total_temperature_degc`].
///
/// # Example
/// ```
/// # use lubberline::plain::static_temperature_degc;
/// assert_eq!(format!("{:.1}", static_temperature_degc(-24.5, 0.82, 1.0)?), "-54.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn static_temperature_degc(
    total_temperature_degc: f64,
    mach: f64,
    recovery_factor: f64,
) -> Result<f64, Error> {
    if any_nan(&[total_temperature_degc, mach, recovery_factor]) {
        return Ok(f64::NAN);
    }
    let total = TotalTemperature::named("total_temperature_degc", total_temperature_degc)?;
    let recovery = RecoveryFactor::named("recovery_factor", recovery_factor)?;
    let temperature = air::static_temperature(total, Mach::named("mach", mach)?, recovery)?;
    Ok(temperature.value().get::<degree_celsius>())
}
