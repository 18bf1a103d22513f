//! The speed factor of procedure design, kept as published because areas are drawn with it.

use crate::value::units::{Ratio, foot, kelvin_interval, ratio};
use crate::value::{IsaDeviation, ProcedureAltitude};

/// The factor from indicated to true airspeed of procedure design, which leaves compressibility out.
///
/// `171233 sqrt(288 + D - 0.00198 H) / (288 - 0.00198 H)^2.628`, with the altitude `H` in feet and the ISA
/// deviation `D` in kelvins. With a deviation of 15 it is also the form of the FAA's procedure design.
///
/// # Accuracy
/// As published. It overstates the true airspeed, more with speed and altitude, and does not hold above the
/// tropopause; [`super::Air::true_from_calibrated`] is exact. The tables printed beside the formula are
/// interpolated from coarse steps, which moves the fourth decimal.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume II, 5th edition 2006, Part I Section 4 Chapter 3 Appendix C; constants read
/// in a quotation.
///
/// # Example
/// ```
/// use lubberline::air::procedure_tas_factor;
/// use lubberline::value::{IsaDeviation, ProcedureAltitude, units::*};
/// assert_eq!(format!("{:.4}", procedure_tas_factor(ProcedureAltitude::new(feet(6_000.0))?, IsaDeviation::new(kelvins(15.0))?).get::<ratio>()), "1.1231");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn procedure_tas_factor(altitude: ProcedureAltitude, deviation: IsaDeviation) -> Ratio {
    let standard_k = 288.0 - 0.001_98 * altitude.value().get::<foot>();
    let actual_k = standard_k + deviation.value().get::<kelvin_interval>();
    Ratio::new::<ratio>(171_233.0 * actual_k.sqrt() / standard_k.powf(2.628))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, kelvins, metres};

    /// ICAO Doc 8168 volume II, Table I-4-3-App C-1: 1.1231 at 6000 ft and ISA + 15. For 1850 m it prints
    /// 1.1244, read off between the entries for 1500 and 2000 m; the formula gives 1.1243.
    #[test]
    fn the_printed_factors_are_reproduced() {
        let deviation = IsaDeviation::new(kelvins(15.0)).unwrap();
        for (altitude, factor) in [(feet(6_000.0), 1.1231), (metres(1_850.0), 1.1243)] {
            let altitude = ProcedureAltitude::new(altitude).unwrap();
            assert!((procedure_tas_factor(altitude, deviation).get::<ratio>() - factor).abs() <= 5e-5);
        }
    }
}
