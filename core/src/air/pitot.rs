//! What a pitot tube feels: pressure ratios by Mach number, below and above the speed of sound.

use super::standard::SEA_LEVEL_K;
use super::standard::SEA_LEVEL_PA;
use super::state::sound_m_s;
use crate::Error;
use crate::value::units::{Pressure, Ratio, meter_per_second, metres_per_second, pascal, ratio};
use crate::value::{CalibratedAirspeed, ImpactPressure, Mach};

/// Impact over static pressure at Mach 1, where the two branches meet: 1.2^3.5 - 1.
const SONIC: f64 = 0.892_929_158_737_854;
/// (36/35)^3.5 / 6, which makes the pitot formula of the supersonic branch read `w (1 - w)^2.5 = RAYLEIGH /
/// (pitot over static pressure)` with `w = 1/(7 M²)`.
const RAYLEIGH: f64 = 0.183_937_105_113_066_68;

/// Impact over static pressure. Written so that nothing cancels at low speed.
pub(super) fn impact_ratio(mach: f64) -> f64 {
    if mach <= 1.0 {
        // (1 + x)^3.5 - 1 with s = sqrt(1 + x): s^7 - 1 = (s - 1)(1 + s + ... + s^6), and s - 1 = x/(s + 1).
        let x = 0.2 * mach * mach;
        let s = (1.0 + x).sqrt();
        x / (s + 1.0) * (1.0 + s * (1.0 + s * (1.0 + s * (1.0 + s * (1.0 + s * (1.0 + s))))))
    } else {
        let w = 1.0 / (7.0 * mach * mach);
        RAYLEIGH / rayleigh(w).0 - 1.0
    }
}

/// `w (1 - w)^2.5` and its derivative.
fn rayleigh(w: f64) -> (f64, f64) {
    let rest = 1.0 - w;
    let power = rest * rest.sqrt();
    (w * rest * power, power * (1.0 - 3.5 * w))
}

/// The inverse of [`impact_ratio`].
pub(super) fn mach_from_impact_ratio(impact: f64) -> f64 {
    if impact <= SONIC {
        // M² = 5 ((1 + q)^(2/7) - 1).
        return (5.0 * (impact.ln_1p() * (2.0 / 7.0)).exp_m1()).sqrt();
    }
    // The branch is concave and its series starts below the root, so Newton's steps climb to it without
    // overshooting. Four reach rounding from the 3 percent of error that the series has at Mach 1, where it is
    // worst.
    let target = RAYLEIGH / (1.0 + impact);
    let mut w = target * (1.0 + target * (2.5 + target * (10.625 + target * 55.0)));
    for _ in 0..4 {
        let (value, slope) = rayleigh(w);
        w += (target - value) / slope;
    }
    (7.0 * w).sqrt().recip()
}

/// Speed of sound at standard sea level, to which calibrated airspeed refers.
pub(super) fn sea_level_sound_m_s() -> f64 {
    sound_m_s(SEA_LEVEL_K)
}

/// Static over total pressure of a flow brought to rest without loss: `(1 + 0.2 M²)^-3.5`.
///
/// Above Mach 1 this is not what a pitot tube feels, since a shock stands before it: see
/// [`pitot_pressure_ratio`].
///
/// # Accuracy
/// Rounding.
///
/// # Source
/// NACA Report 1135 (1953), equation 44, for a ratio of specific heats of 1.4; the equation's number from
/// memory.
///
/// # Example
/// ```
/// use lubberline::air::isentropic_pressure_ratio;
/// use lubberline::value::{Mach, units::*};
/// assert_eq!(format!("{:.4}", isentropic_pressure_ratio(Mach::new(Ratio::new::<ratio>(1.0))?).get::<ratio>()), "0.5283");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn isentropic_pressure_ratio(mach: Mach) -> Ratio {
    let mach = mach.value().get::<ratio>();
    Ratio::new::<ratio>((1.0 + 0.2 * mach * mach).powf(-3.5))
}

/// Pitot over static pressure: without loss up to Mach 1, above it behind a normal shock (Rayleigh's pitot
/// formula).
///
/// `(1 + 0.2 M²)^3.5`, or `(1.2 M²)^3.5 (6/(7 M² - 1))^2.5`.
///
/// # Accuracy
/// Rounding. Air is taken as a gas of constant heat ratio 1.4, good to about Mach 5.
///
/// # Source
/// NACA Report 1135 (1953), equations 44 and 100; the numbers from memory.
///
/// # Example
/// ```
/// use lubberline::air::pitot_pressure_ratio;
/// use lubberline::value::{Mach, units::*};
/// let pitot = pitot_pressure_ratio(Mach::new(Ratio::new::<ratio>(2.0))?);
/// assert_eq!(format!("{:.3}", pitot.get::<ratio>()), "5.640");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pitot_pressure_ratio(mach: Mach) -> Ratio {
    Ratio::new::<ratio>(1.0 + impact_ratio(mach.value().get::<ratio>()))
}

/// The impact pressure that a calibrated airspeed stands for, at whatever altitude.
///
/// Calibrated airspeed is by definition the speed that gives this pressure at standard sea level, by the two
/// branches of [`pitot_pressure_ratio`].
///
/// # Accuracy
/// Rounding.
///
/// # Source
/// The definition of calibrated airspeed, with the constants of ICAO Doc 7488/3.
///
/// # Example
/// ```
/// use lubberline::air::impact_from_calibrated;
/// use lubberline::value::{CalibratedAirspeed, units::*};
/// assert_eq!(format!("{:.1}", impact_from_calibrated(CalibratedAirspeed::new(knots(250.0))?).value().get::<hectopascal>()), "105.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn impact_from_calibrated(airspeed: CalibratedAirspeed) -> ImpactPressure {
    ImpactPressure::derived(Pressure::new::<pascal>(SEA_LEVEL_PA * impact_over_sea_level(airspeed)))
}

/// The calibrated airspeed of an impact pressure: the inverse of [`impact_from_calibrated`].
///
/// # Errors
/// [`Error::OutOfRange`] of the calibrated airspeed if it comes out above its range.
///
/// # Example
/// ```
/// use lubberline::air::calibrated_from_impact;
/// use lubberline::value::{ImpactPressure, units::*};
/// assert_eq!(format!("{:.0}", calibrated_from_impact(ImpactPressure::new(hectopascals(105.2))?)?.value().get::<knot>()), "250");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn calibrated_from_impact(impact: ImpactPressure) -> Result<CalibratedAirspeed, Error> {
    calibrated_from_ratio(impact.value().get::<pascal>() / SEA_LEVEL_PA)
}

/// Impact over standard sea-level pressure.
pub(super) fn impact_over_sea_level(airspeed: CalibratedAirspeed) -> f64 {
    impact_ratio(airspeed.value().get::<meter_per_second>() / sea_level_sound_m_s())
}

/// The inverse of [`impact_over_sea_level`].
pub(super) fn calibrated_from_ratio(impact_over_sea_level: f64) -> Result<CalibratedAirspeed, Error> {
    CalibratedAirspeed::new(metres_per_second(
        mach_from_impact_ratio(impact_over_sea_level) * sea_level_sound_m_s(),
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_inverse_returns_to_rounding() {
        for step in 0..=100_000 {
            let mach = f64::from(step) * 1e-4;
            let back = mach_from_impact_ratio(impact_ratio(mach));
            assert!((back - mach).abs() <= 1e-15 * mach.max(1e-3), "{mach}: {back}");
        }
        assert!((mach_from_impact_ratio(impact_ratio(1e-9)) / 1e-9 - 1.0).abs() < 1e-15);
    }

    #[test]
    fn the_branches_meet_at_the_speed_of_sound_in_value_and_slope() {
        let (below, at, above) = (impact_ratio(1.0 - 1e-6), impact_ratio(1.0), impact_ratio(1.0 + 1e-6));
        assert!((at - SONIC).abs() < 1e-15);
        assert!(((above - at) - (at - below)).abs() < 1e-11);
    }

    /// Compressible-flow tables for air (static over total pressure), four digits: the function of NACA Report
    /// 1135.
    #[test]
    fn printed_pressure_ratios_are_reproduced() {
        for (mach, printed) in [(0.05, 0.9983), (0.5, 0.8430), (0.84, 0.6300), (1.0, 0.5283), (1.1, 0.4684)] {
            let mach = Mach::new(Ratio::new::<ratio>(mach)).unwrap();
            assert!((isentropic_pressure_ratio(mach).get::<ratio>() - printed).abs() <= 5e-5, "{mach:?}");
        }
    }

    /// NACA Report 1135 Table II, total pressure behind a normal shock over static pressure ahead; from memory.
    #[test]
    fn printed_pitot_ratios_are_reproduced() {
        for (mach, printed, half_digit) in
            [(1.0, 1.893, 5e-4), (1.5, 3.413, 5e-4), (2.0, 5.640, 5e-4), (3.0, 12.06, 5e-3)]
        {
            let mach = Mach::new(Ratio::new::<ratio>(mach)).unwrap();
            assert!((pitot_pressure_ratio(mach).get::<ratio>() - printed).abs() <= half_digit, "{mach:?}");
        }
    }
}
