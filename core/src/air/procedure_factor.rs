//! The speed factor of procedure design, kept as published because areas are drawn with it.

use crate::value::units::{Ratio, foot, kelvin_interval, ratio};
use crate::value::{IsaDeviation, ProcedureAltitude, choice};

choice! {
    /// How the speed factor is had: the document's own examples do not use its formula. ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3
    /// Appendix C, Table I-4-3-App C-1.
    TasFactorMethod {
        /// The formula.
        Formula = 0: "formula",
        /// Read off evenly between the entries of the table in metres, every 500 m, and rounded to four decimals: its example in SI units does so.
        TableMetres = 1: "table_metres",
        /// Read off evenly between the entries of the table in feet, every 1 000 ft (the step from memory), and rounded to four decimals.
        TableFeet = 2: "table_feet",
    }
}

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
    Ratio::new::<ratio>(formula(altitude.value().get::<foot>(), deviation.value().get::<kelvin_interval>()))
}

fn formula(altitude_ft: f64, deviation_k: f64) -> f64 {
    let standard_k = 288.0 - 0.001_98 * altitude_ft;
    171_233.0 * (standard_k + deviation_k).sqrt() / standard_k.powf(2.628)
}

/// The speed factor by a named method: the formula, or read off the table printed with it.
///
/// The entries of the table are the formula to four decimals; between two of them it is taken evenly, and the answer is rounded as printed.
///
/// # Accuracy
/// As published: reading off adds up to 3e-4 to the factor of 1 and more to 50 000 ft, where the steps are coarse for the curve.
///
/// # Degenerate cases
/// On an entry of the table the methods agree to four decimals. For a deviation that has no column of its own (from -30 to 30 in steps of 10,
/// and 15, from memory) the entries are those that the formula gives.
///
/// # Source
/// Named at [`TasFactorMethod`]. The entries for 1500 and 2000 m at ISA + 15 were read (1.1046, 1.1329); the others follow from the formula.
///
/// # Example
/// ```
/// use lubberline::air::{TasFactorMethod, procedure_tas_factor_by_method};
/// use lubberline::value::{IsaDeviation, ProcedureAltitude, units::*};
/// let altitude = ProcedureAltitude::new(metres(1_850.0))?;
/// let factor = procedure_tas_factor_by_method(altitude, IsaDeviation::new(kelvins(15.0))?, TasFactorMethod::TableMetres);
/// assert_eq!(format!("{:.4}", factor.get::<ratio>()), "1.1244");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn procedure_tas_factor_by_method(
    altitude: ProcedureAltitude,
    deviation: IsaDeviation,
    method: TasFactorMethod,
) -> Ratio {
    let step_ft = match method {
        TasFactorMethod::Formula => return procedure_tas_factor(altitude, deviation),
        TasFactorMethod::TableMetres => 500.0 / 0.304_8,
        TasFactorMethod::TableFeet => 1_000.0,
    };
    let four_decimals = |factor: f64| (factor * 1e4).round() / 1e4;
    let entry =
        |step: f64| four_decimals(formula(step * step_ft, deviation.value().get::<kelvin_interval>()));
    let steps = altitude.value().get::<foot>() / step_ft;
    let below = steps.floor();
    let between = entry(below) + (entry(below + 1.0) - entry(below)) * (steps - below);
    Ratio::new::<ratio>(four_decimals(between))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, kelvins, metres};

    /// ICAO Doc 8168 volume II, Table I-4-3-App C-1: 1.1231 at 6000 ft and ISA + 15. For 1850 m it prints
    /// 1.1244, read off between the entries for 1500 (1.1046) and 2000 m (1.1329); the formula gives 1.1243.
    #[test]
    fn the_printed_factors_are_reproduced() {
        use TasFactorMethod::{Formula, TableFeet, TableMetres};
        let deviation = IsaDeviation::new(kelvins(15.0)).unwrap();
        for (altitude, factor, method) in [
            (feet(6_000.0), 1.1231, Formula),
            (feet(6_000.0), 1.1231, TableFeet),
            (metres(1_850.0), 1.1243, Formula),
            (metres(1_500.0), 1.1046, TableMetres),
            (metres(2_000.0), 1.1329, TableMetres),
            (metres(1_850.0), 1.1244, TableMetres),
        ] {
            let altitude = ProcedureAltitude::new(altitude).unwrap();
            let found = procedure_tas_factor_by_method(altitude, deviation, method).get::<ratio>();
            assert!((found - factor).abs() <= 5e-5, "{method:?} {found}");
        }
    }

    #[test]
    fn reading_off_adds_what_the_page_says() {
        let deviation = IsaDeviation::new(kelvins(30.0)).unwrap();
        for step in -20..500 {
            let altitude = ProcedureAltitude::new(feet(f64::from(step) * 100.0 + 37.0)).unwrap();
            let by = |method| procedure_tas_factor_by_method(altitude, deviation, method).get::<ratio>();
            for method in [TasFactorMethod::TableMetres, TasFactorMethod::TableFeet] {
                let more = by(method) - by(TasFactorMethod::Formula);
                assert!((-1.2e-4..3e-3).contains(&more), "{step} {method:?} {more}");
            }
        }
    }
}
