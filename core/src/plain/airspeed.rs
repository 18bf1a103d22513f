//! Plain functions of the airspeeds of [`crate::air`].

use super::any_nan;
use crate::Error;
use crate::air::{self, Air};
use crate::many::airspeed::{Airspeed, Conversion};
use crate::many::run;
use crate::value::units::{degree_celsius, foot, hectopascal, knot, ratio};
use crate::value::{
    CalibratedAirspeed, EquivalentAirspeed, ImpactPressure, IsaDeviation, Mach, PressureAltitude,
    ProcedureAltitude, RecoveryFactor, Temperature, TotalTemperature, TrueAirspeed,
};

/// The air at a pressure altitude under the names that every function here gives its arguments.
fn air(pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<Air, Error> {
    Ok(Air::new(
        PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?,
        IsaDeviation::named("isa_deviation_k", isa_deviation_k)?,
    ))
}

/// The air where the temperature plays no part.
fn standard_air(pressure_altitude_ft: f64) -> Result<Air, Error> {
    Ok(Air::standard(PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?))
}

/// True airspeed from calibrated airspeed, compressible.
///
/// The impact pressure `q` of the calibrated airspeed at standard sea level, over the static pressure `p`,
/// gives the Mach number by `q/p = (1 + 0.2 M^2)^3.5 - 1`, above Mach 1 by Rayleigh's pitot formula; times the
/// speed of sound.
///
/// # Arguments
/// - `cas_kt`: calibrated airspeed, 0 to 5000
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// Rounding (1e-14 of the result, as much again between arrays and single calls), for air of constant heat ratio: good to about Mach 5.
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
/// # use lubberline::plain::tas_from_cas_kt;
/// assert_eq!(format!("{:.2}", tas_from_cas_kt(280.0, 35_000.0, 0.0)?), "473.44");
/// assert_eq!(format!("{:.2}", tas_from_cas_kt(250.0, 10_000.0, 15.0)?), "296.66");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn tas_from_cas_kt(cas_kt: f64, pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<f64, Error> {
    if any_nan(&[cas_kt, pressure_altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let given = CalibratedAirspeed::named("cas_kt", cas_kt)?;
    Ok(air(pressure_altitude_ft, isa_deviation_k)?.true_from_calibrated(given)?.value().get::<knot>())
}

/// [`tas_from_cas_kt`] over columns.
pub(super) fn tas_from_cas_kt_block(inputs: [&[f64]; 3], outputs: [&mut [f64]; 1]) {
    let [airspeed_kt, pressure_altitude_ft, isa_deviation_k] = inputs;
    let [converted] = outputs;
    run(Airspeed {
        conversion: Conversion::TrueFromCalibrated,
        airspeed_kt,
        pressure_altitude_ft,
        isa_deviation_k: Some(isa_deviation_k),
        converted,
    });
}

/// Calibrated airspeed from true airspeed, compressible: the inverse of [`tas_from_cas_kt`].
///
/// The impact pressure at Mach `V/a` is what the calibrated airspeed is read from, as if at standard sea level.
///
/// # Arguments
/// - `tas_kt`: true airspeed, 0 to 5000
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150 (default 0.0)
///
/// # Accuracy
/// Rounding (1e-14 of the result, as much again between arrays and single calls), for air of constant heat ratio: good to about Mach 5.
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
/// # use lubberline::plain::cas_from_tas_kt;
/// assert_eq!(format!("{:.2}", cas_from_tas_kt(450.0, 35_000.0, 0.0)?), "264.68");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cas_from_tas_kt(tas_kt: f64, pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<f64, Error> {
    if any_nan(&[tas_kt, pressure_altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let given = TrueAirspeed::or_rest("tas_kt", tas_kt)?;
    Ok(air(pressure_altitude_ft, isa_deviation_k)?.calibrated_from_true(given)?.value().get::<knot>())
}

/// [`cas_from_tas_kt`] over columns.
pub(super) fn cas_from_tas_kt_block(inputs: [&[f64]; 3], outputs: [&mut [f64]; 1]) {
    let [airspeed_kt, pressure_altitude_ft, isa_deviation_k] = inputs;
    let [converted] = outputs;
    run(Airspeed {
        conversion: Conversion::CalibratedFromTrue,
        airspeed_kt,
        pressure_altitude_ft,
        isa_deviation_k: Some(isa_deviation_k),
        converted,
    });
}

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
/// `Ve = M a0 sqrt(p/p0)` with the Mach number of [`mach_from_cas`]; the temperature plays no part.
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

/// The factor from indicated to true airspeed of procedure design, which leaves compressibility out.
///
/// `171233 sqrt(288 + D - 0.00198 H) / (288 - 0.00198 H)^2.628` with altitude `H` in feet and ISA deviation
/// `D`. With a deviation of 15 it is also the form of the FAA's procedure design. [`tas_from_cas_kt`] is exact.
///
/// # Arguments
/// - `altitude_ft`: altitude of the procedure, -2000 to 50 000
/// - `isa_deviation_k`: warmer than standard by this, -150 to 150 (default 15.0)
///
/// # Accuracy
/// As published. Against the exact conversion it overstates the true airspeed: by 0.8 percent for 250 kt at 10
/// 000 ft and ISA + 15, more with speed and altitude; above the tropopause it does not hold.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume II, 5th edition 2006, Part I Section 4 Chapter 3 Appendix C; constants
/// read in a quotation.
///
/// # Example
/// ```
/// # use lubberline::plain::procedure_tas_factor;
/// assert_eq!(format!("{:.4}", procedure_tas_factor(6_000.0, 15.0)?), "1.1231");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn procedure_tas_factor(altitude_ft: f64, isa_deviation_k: f64) -> Result<f64, Error> {
    if any_nan(&[altitude_ft, isa_deviation_k]) {
        return Ok(f64::NAN);
    }
    let altitude = ProcedureAltitude::named("altitude_ft", altitude_ft)?;
    let deviation = IsaDeviation::named("isa_deviation_k", isa_deviation_k)?;
    Ok(air::procedure_tas_factor(altitude, deviation).get::<ratio>())
}

/// The pressure altitude at which a calibrated airspeed and a Mach number are one speed.
///
/// Where the static pressure is the impact pressure of the calibrated airspeed over the impact ratio of the
/// Mach number; the temperature plays no part.
///
/// # Arguments
/// - `cas_kt`: calibrated airspeed, 0 to 5000
/// - `mach`: Mach number, 0 to 10
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Speeds of zero cross nowhere.
///
/// # Errors
/// A value outside its range, or no crossover from -5 to 80 km.
///
/// # Source
/// The definitions of calibrated airspeed and Mach number, with ICAO Doc 7488/3 (3rd edition 1993).
///
/// # Example
/// ```
/// # use lubberline::plain::crossover_altitude_ft;
/// assert_eq!(format!("{:.0}", crossover_altitude_ft(300.0, 0.78)?), "29314");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn crossover_altitude_ft(cas_kt: f64, mach: f64) -> Result<f64, Error> {
    if any_nan(&[cas_kt, mach]) {
        return Ok(f64::NAN);
    }
    let airspeed = CalibratedAirspeed::named("cas_kt", cas_kt)?;
    let altitude = air::crossover_altitude(airspeed, Mach::named("mach", mach)?)?;
    Ok(altitude.value().get::<foot>())
}

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

#[cfg(test)]
mod tests {
    use super::*;

    type Conversion = fn(f64, f64, f64) -> Result<f64, Error>;

    /// Every conversion of a speed, as a function of speed, altitude and deviation.
    const CONVERSIONS: [Conversion; 12] = [
        tas_from_cas_kt,
        cas_from_tas_kt,
        tas_from_mach_kt,
        mach_from_tas,
        eas_from_tas_kt,
        tas_from_eas_kt,
        |speed, altitude, _| mach_from_cas(speed, altitude),
        |speed, altitude, _| cas_from_mach_kt(speed, altitude),
        |speed, altitude, _| eas_from_cas_kt(speed, altitude),
        |speed, altitude, _| cas_from_eas_kt(speed, altitude),
        |speed, altitude, _| eas_from_mach_kt(speed, altitude),
        |speed, altitude, _| mach_from_eas(speed, altitude),
    ];

    #[test]
    fn no_speed_is_no_speed() {
        for convert in CONVERSIONS {
            assert_eq!(convert(0.0, 35_000.0, 10.0), Ok(0.0));
            assert_eq!(convert(0.0, -5_000.0, -10.0), Ok(0.0));
        }
    }

    #[test]
    fn nonsense_is_refused_and_nan_passes() {
        for convert in CONVERSIONS {
            assert!(convert(f64::NAN, 35_000.0, 0.0).is_ok_and(f64::is_nan));
            assert!(convert(1.0, f64::NAN, 0.0).is_ok_and(f64::is_nan));
            for (speed, altitude_ft) in
                [(-1.0, 0.0), (f64::INFINITY, 0.0), (1.0, -20_000.0), (1.0, 300_000.0)]
            {
                assert!(convert(speed, altitude_ft, 0.0).is_err_and(|error| error.is_out_of_range()));
            }
        }
    }

    #[test]
    fn the_refusal_names_the_argument_and_what_is_allowed() {
        let refused = cas_from_tas_kt(-1.0, 0.0, 0.0).unwrap_err().to_string();
        assert_eq!(refused, "tas_kt is -1 kt; allowed: from 0.0 to 5000.0 kt");
    }
}
