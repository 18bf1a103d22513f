//! Equivalent airspeed, from and to the others, in plain numbers.

use super::airspeed::{air, standard_air};
use super::any_nan;
use crate::Error;
use crate::value::units::{knot, ratio};
use crate::value::{CalibratedAirspeed, EquivalentAirspeed, Mach, TrueAirspeed};

/// Equivalent airspeed from true airspeed.
///
/// `Ve = V sqrt(density/density at standard sea level)`.
///
/// # Arguments
/// - `tas_kt`: true airspeed, 0 to 5000
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range, or a result beyond 5000 kt or Mach 10.
///
/// # Source
/// The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// # Example
/// ```
/// # use lubberline::plain::eas_from_tas_kt;
/// assert_eq!(format!("{:.2}", eas_from_tas_kt(450.0, 35_000.0, 0.0)?), "250.50");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn eas_from_tas_kt(tas_kt: f64, pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<f64, Error> {
    if any_nan(&[tas_kt, pressure_altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let given = TrueAirspeed::or_rest("tas_kt", tas_kt)?;
    Ok(air(pressure_altitude_ft, isa_deviation_k)?.equivalent_from_true(given)?.value().get::<knot>())
}

/// True airspeed from equivalent airspeed: the inverse of [`eas_from_tas_kt`].
///
/// `V = Ve sqrt(density at standard sea level/density)`.
///
/// # Arguments
/// - `eas_kt`: equivalent airspeed, 0 to 5000
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range, or a result beyond 5000 kt or Mach 10.
///
/// # Source
/// The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// # Example
/// ```
/// # use lubberline::plain::tas_from_eas_kt;
/// assert_eq!(format!("{:.2}", tas_from_eas_kt(250.0, 35_000.0, 0.0)?), "449.10");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn tas_from_eas_kt(eas_kt: f64, pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<f64, Error> {
    if any_nan(&[eas_kt, pressure_altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let given = EquivalentAirspeed::named("eas_kt", eas_kt)?;
    Ok(air(pressure_altitude_ft, isa_deviation_k)?.true_from_equivalent(given)?.value().get::<knot>())
}

/// Equivalent airspeed from calibrated airspeed: less by the effect of compressibility.
///
/// `Ve = M a0 sqrt(p/p0)` with the Mach number of [`super::mach_from_cas`]; the temperature plays no part.
///
/// # Arguments
/// - `cas_kt`: calibrated airspeed, 0 to 5000
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
///
/// # Accuracy
/// Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range, or a result beyond 5000 kt or Mach 10.
///
/// # Source
/// The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// # Example
/// ```
/// # use lubberline::plain::eas_from_cas_kt;
/// assert_eq!(format!("{:.2}", eas_from_cas_kt(280.0, 35_000.0)?), "263.55");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn eas_from_cas_kt(cas_kt: f64, pressure_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[cas_kt, pressure_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let given = CalibratedAirspeed::named("cas_kt", cas_kt)?;
    Ok(standard_air(pressure_altitude_ft)?.equivalent_from_calibrated(given)?.value().get::<knot>())
}

/// Calibrated airspeed from equivalent airspeed: the inverse of [`eas_from_cas_kt`].
///
/// `M = Ve/(a0 sqrt(p/p0))`, and the calibrated airspeed of that Mach number.
///
/// # Arguments
/// - `eas_kt`: equivalent airspeed, 0 to 5000
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
///
/// # Accuracy
/// Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range, or a result beyond 5000 kt or Mach 10.
///
/// # Source
/// The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// # Example
/// ```
/// # use lubberline::plain::cas_from_eas_kt;
/// assert_eq!(format!("{:.2}", cas_from_eas_kt(250.0, 35_000.0)?), "264.09");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cas_from_eas_kt(eas_kt: f64, pressure_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[eas_kt, pressure_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let given = EquivalentAirspeed::named("eas_kt", eas_kt)?;
    Ok(standard_air(pressure_altitude_ft)?.calibrated_from_equivalent(given)?.value().get::<knot>())
}

/// Equivalent airspeed from Mach number.
///
/// `Ve = M a0 sqrt(p/p0)`.
///
/// # Arguments
/// - `mach`: Mach number, 0 to 10
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
///
/// # Accuracy
/// Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range, or a result beyond 5000 kt or Mach 10.
///
/// # Source
/// The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// # Example
/// ```
/// # use lubberline::plain::eas_from_mach_kt;
/// assert_eq!(format!("{:.2}", eas_from_mach_kt(0.78, 35_000.0)?), "250.28");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn eas_from_mach_kt(mach: f64, pressure_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[mach, pressure_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let given = Mach::named("mach", mach)?;
    Ok(standard_air(pressure_altitude_ft)?.equivalent_from_mach(given)?.value().get::<knot>())
}

/// Mach number from equivalent airspeed.
///
/// `M = Ve/(a0 sqrt(p/p0))`.
///
/// # Arguments
/// - `eas_kt`: equivalent airspeed, 0 to 5000
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
///
/// # Accuracy
/// Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.
///
/// # Degenerate cases
/// Zero gives zero.
///
/// # Errors
/// A value outside its range, or a result beyond Mach 10.
///
/// # Source
/// The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// # Example
/// ```
/// # use lubberline::plain::mach_from_eas;
/// assert_eq!(format!("{:.4}", mach_from_eas(250.0, 35_000.0)?), "0.7791");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn mach_from_eas(eas_kt: f64, pressure_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[eas_kt, pressure_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let given = EquivalentAirspeed::named("eas_kt", eas_kt)?;
    Ok(standard_air(pressure_altitude_ft)?.mach_from_equivalent(given)?.value().get::<ratio>())
}
