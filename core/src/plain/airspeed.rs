//! Calibrated and true airspeed, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air::Air;
use crate::many::airspeed::{Airspeed, Conversion};
use crate::many::run;
use crate::value::units::knot;
use crate::value::{CalibratedAirspeed, IsaDeviation, PressureAltitude, TrueAirspeed};

/// The air at a pressure altitude under the names that every function here gives its arguments.
pub(super) fn air(pressure_altitude_ft: f64, isa_deviation_k: f64) -> Result<Air, Error> {
    Ok(Air::new(
        PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?,
        IsaDeviation::named("isa_deviation_k", isa_deviation_k)?,
    ))
}

/// The air where the temperature plays no part.
pub(super) fn standard_air(pressure_altitude_ft: f64) -> Result<Air, Error> {
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

#[cfg(test)]
mod tests {
    use crate::Error;
    use crate::plain::*;

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
