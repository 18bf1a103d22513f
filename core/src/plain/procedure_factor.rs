//! The speed factor of procedure design, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air;
use crate::value::units::ratio;
use crate::value::{IsaDeviation, ProcedureAltitude};

/// The factor from indicated to true airspeed of procedure design, which leaves compressibility out.
///
/// `171233 sqrt(288 + D - 0.00198 H) / (288 - 0.00198 H)^2.628` with altitude `H` in feet and ISA deviation
/// `D`. With a deviation of 15 it is also the form of the FAA's procedure design. [`super::tas_from_cas_kt`] is exact.
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
