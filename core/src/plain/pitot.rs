//! What a pitot tube feels, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air;
use crate::value::units::{hectopascal, knot, ratio};
use crate::value::{CalibratedAirspeed, ImpactPressure, Mach};

/// Static over total pressure of a flow brought to rest without loss.
///
/// `(1 + 0.2 M^2)^-3.5`. Above Mach 1 a pitot tube feels less than this total pressure: see
/// [`pitot_pressure_ratio`].
///
/// # Arguments
/// - `mach`: Mach number, 0 to 10
///
/// # Accuracy
/// Rounding, for air of constant heat ratio: good to about Mach 5.
///
/// # Degenerate cases
/// At rest the ratio is 1.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// NACA Report 1135 (1953), equation 44 (number from memory), for a ratio of specific heats of 1.4.
///
/// # Example
/// ```
/// # use lubberline::plain::isentropic_pressure_ratio;
/// assert_eq!(format!("{:.4}", isentropic_pressure_ratio(0.84)?), "0.6300");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn isentropic_pressure_ratio(mach: f64) -> Result<f64, Error> {
    if any_nan(&[mach]) {
        return Ok(f64::NAN);
    }
    Ok(air::isentropic_pressure_ratio(Mach::named("mach", mach)?).get::<ratio>())
}

/// Pitot over static pressure, behind a normal shock above Mach 1.
///
/// `(1 + 0.2 M^2)^3.5`, above Mach 1 Rayleigh's `(1.2 M^2)^3.5 (6/(7 M^2 - 1))^2.5`.
///
/// # Arguments
/// - `mach`: Mach number, 0 to 10
///
/// # Accuracy
/// Rounding, for air of constant heat ratio: good to about Mach 5.
///
/// # Degenerate cases
/// At rest the ratio is 1. The two forms meet at Mach 1 in value and slope.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// NACA Report 1135 (1953), equations 44 and 100 (numbers from memory), for a ratio of specific heats of 1.4.
///
/// # Example
/// ```
/// # use lubberline::plain::pitot_pressure_ratio;
/// assert_eq!(format!("{:.3}", pitot_pressure_ratio(1.0)?), "1.893");
/// assert_eq!(format!("{:.3}", pitot_pressure_ratio(2.0)?), "5.640");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pitot_pressure_ratio(mach: f64) -> Result<f64, Error> {
    if any_nan(&[mach]) {
        return Ok(f64::NAN);
    }
    Ok(air::pitot_pressure_ratio(Mach::named("mach", mach)?).get::<ratio>())
}

/// Impact pressure that a calibrated airspeed stands for, the same at every altitude.
///
/// `p0 ((1 + 0.2 (Vc/a0)^2)^3.5 - 1)`, above the speed of sound at sea level by Rayleigh's pitot formula.
///
/// # Arguments
/// - `cas_kt`: calibrated airspeed, 0 to 5000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The definition of calibrated airspeed, with the sea level of ICAO Doc 7488/3 (3rd edition 1993).
///
/// # Example
/// ```
/// # use lubberline::plain::impact_pressure_hpa;
/// assert_eq!(format!("{:.2}", impact_pressure_hpa(280.0)?), "132.88");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn impact_pressure_hpa(cas_kt: f64) -> Result<f64, Error> {
    if any_nan(&[cas_kt]) {
        return Ok(f64::NAN);
    }
    let airspeed = CalibratedAirspeed::named("cas_kt", cas_kt)?;
    Ok(air::impact_from_calibrated(airspeed).value().get::<hectopascal>())
}

/// Calibrated airspeed of an impact pressure: the inverse of [`impact_pressure_hpa`].
///
/// `a0 sqrt(5 ((q/p0 + 1)^(2/7) - 1))`, above the speed of sound at sea level by Rayleigh's pitot formula.
///
/// # Arguments
/// - `impact_pressure_hpa`: pitot less static pressure, 0 to 80 000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range, or a result beyond 5000 kt.
///
/// # Source
/// The definition of calibrated airspeed, with the sea level of ICAO Doc 7488/3 (3rd edition 1993).
///
/// # Example
/// ```
/// # use lubberline::plain::cas_from_impact_pressure_kt;
/// assert_eq!(format!("{:.2}", cas_from_impact_pressure_kt(100.0)?), "244.19");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cas_from_impact_pressure_kt(impact_pressure_hpa: f64) -> Result<f64, Error> {
    if any_nan(&[impact_pressure_hpa]) {
        return Ok(f64::NAN);
    }
    let impact = ImpactPressure::named("impact_pressure_hpa", impact_pressure_hpa)?;
    Ok(air::calibrated_from_impact(impact)?.value().get::<knot>())
}
