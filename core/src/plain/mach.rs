//! Mach number by calibrated and true airspeed and back, in plain numbers.

use super::airspeed::{air, standard_air};
use super::any_nan;
use crate::Error;
use crate::many::airspeed::{Airspeed, Conversion};
use crate::many::run;
use crate::value::units::{knot, ratio};
use crate::value::{CalibratedAirspeed, Mach, TrueAirspeed};

/// Mach number from calibrated airspeed; the temperature plays no part.
///
/// `M = sqrt(5 ((q/p + 1)^(2/7) - 1))` with `q = p0 ((1 + 0.2 (Vc/a0)^2)^3.5 - 1)`; each side above its Mach 1
/// by Rayleigh's pitot formula.
///
/// # Arguments
/// - `cas_kt`: calibrated airspeed, 0 to 5000
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
///
/// # Accuracy
/// Rounding (1e-14 of the result, as much again between arrays and single calls), for air of constant heat ratio: good to about Mach 5.
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
/// # use lubberline::plain::mach_from_cas;
/// assert_eq!(format!("{:.4}", mach_from_cas(280.0, 35_000.0)?), "0.8213");
/// assert_eq!(format!("{:.4}", mach_from_cas(600.0, 60_000.0)?), "2.8525");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn mach_from_cas(cas_kt: f64, pressure_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[cas_kt, pressure_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let given = CalibratedAirspeed::named("cas_kt", cas_kt)?;
    Ok(standard_air(pressure_altitude_ft)?.mach_from_calibrated(given)?.value().get::<ratio>())
}

/// [`mach_from_cas`] over columns.
pub(super) fn mach_from_cas_block(inputs: [&[f64]; 2], outputs: [&mut [f64]; 1]) {
    let [airspeed_kt, pressure_altitude_ft] = inputs;
    let [converted] = outputs;
    run(Airspeed {
        conversion: Conversion::MachFromCalibrated,
        airspeed_kt,
        pressure_altitude_ft,
        isa_deviation_k: None,
        converted,
    });
}

/// Calibrated airspeed from Mach number: the inverse of [`mach_from_cas`].
///
/// The impact pressure at that Mach number, read as if at standard sea level.
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
/// # use lubberline::plain::cas_from_mach_kt;
/// assert_eq!(format!("{:.2}", cas_from_mach_kt(0.78, 35_000.0)?), "264.42");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cas_from_mach_kt(mach: f64, pressure_altitude_ft: f64) -> Result<f64, Error> {
    if any_nan(&[mach, pressure_altitude_ft]) {
        return Ok(f64::NAN);
    }
    let given = Mach::named("mach", mach)?;
    Ok(standard_air(pressure_altitude_ft)?.calibrated_from_mach(given)?.value().get::<knot>())
}

/// True airspeed from Mach number.
///
/// `V = M a`, with the speed of sound `a = sqrt(1.4 R T)`.
///
/// # Arguments
/// - `mach`: Mach number, 0 to 10
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
/// # use lubberline::plain::tas_from_mach_kt;
/// assert_eq!(format!("{:.2}", tas_from_mach_kt(0.78, 35_000.0, 0.0)?), "449.61");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn tas_from_mach_kt(mach: f64, pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<f64, Error> {
    if any_nan(&[mach, pressure_altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let given = Mach::named("mach", mach)?;
    Ok(air(pressure_altitude_ft, isa_deviation_k)?.true_from_mach(given)?.value().get::<knot>())
}

/// Mach number from true airspeed.
///
/// `M = V/a`, with the speed of sound `a = sqrt(1.4 R T)`.
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
/// A value outside its range, or a result beyond Mach 10.
///
/// # Source
/// The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA Report 1135 (1953)
/// for the pitot pressure above Mach 1.
///
/// # Example
/// ```
/// # use lubberline::plain::mach_from_tas;
/// assert_eq!(format!("{:.4}", mach_from_tas(450.0, 35_000.0, 0.0)?), "0.7807");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn mach_from_tas(tas_kt: f64, pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<f64, Error> {
    if any_nan(&[tas_kt, pressure_altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let given = TrueAirspeed::or_rest("tas_kt", tas_kt)?;
    Ok(air(pressure_altitude_ft, isa_deviation_k)?.mach_from_true(given)?.value().get::<ratio>())
}
