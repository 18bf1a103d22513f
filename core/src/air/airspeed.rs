//! Calibrated, equivalent and true airspeed and Mach number, each from each, compressible.

use super::Air;
use super::pitot::{
    calibrated_from_ratio, impact_over_sea_level, impact_ratio, mach_from_impact_ratio, sea_level_sound_m_s,
};
use crate::Error;
use crate::value::units::{Ratio, meter_per_second, metres_per_second, ratio};
use crate::value::{CalibratedAirspeed, EquivalentAirspeed, Mach, TrueAirspeed};

/// Conversions of airspeed. The Mach number stands between all others:
///
/// - calibrated: the impact pressure `q` that the airspeed stands for at sea level, over the static pressure
///   here, gives the Mach number by `q/p = (1 + 0.2 M²)^3.5 - 1`, above Mach 1 by Rayleigh's pitot formula;
///   each side of the relation takes its own branch, the calibrated airspeed by the speed of sound at sea
///   level;
/// - true: the Mach number times the speed of sound here;
/// - equivalent: the true airspeed times the root of the density ratio, which is `M a0 sqrt(p/p0)`.
///
/// # Accuracy
/// Rounding, on every path and back: 1e-14 of the speed. The supersonic branch inverts by a fixed count of
/// Newton steps. A gas of constant heat ratio is assumed, good to about Mach 5.
///
/// # Degenerate cases
/// Zero gives zero. A calibrated airspeed and a Mach number are related by the pressure alone, whatever the
/// temperature.
///
/// # Errors
/// [`Error::OutOfRange`] of the result, or of the Mach number on the way, where a speed has no meaning: at 80
/// km a calibrated airspeed of 100 kt would be Mach 38.
///
/// # Source
/// The definitions of the airspeeds, with ICAO Doc 7488/3 for the air and NACA Report 1135 for the pitot tube.
///
/// # Example
/// ```
/// use lubberline::air::Air;
/// use lubberline::value::{CalibratedAirspeed, IsaDeviation, PressureAltitude, units::*};
/// let air = Air::new(PressureAltitude::new(feet(35_000.0))?, IsaDeviation::none());
/// let calibrated = CalibratedAirspeed::new(knots(280.0))?;
/// assert_eq!(format!("{:.4}", air.mach_from_calibrated(calibrated)?.value().get::<ratio>()), "0.8213");
/// assert_eq!(format!("{:.2}", air.true_from_calibrated(calibrated)?.value().get::<knot>()), "473.44");
/// # Ok::<(), lubberline::Error>(())
/// ```
impl Air {
    /// Mach number from calibrated airspeed.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above Mach 10.
    pub fn mach_from_calibrated(self, airspeed: CalibratedAirspeed) -> Result<Mach, Error> {
        mach(mach_from_impact_ratio(impact_over_sea_level(airspeed) / self.delta()))
    }

    /// Calibrated airspeed from Mach number.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above the range of a calibrated airspeed.
    pub fn calibrated_from_mach(self, mach: Mach) -> Result<CalibratedAirspeed, Error> {
        calibrated_from_ratio(impact_ratio(mach.value().get::<ratio>()) * self.delta())
    }

    /// Mach number from true airspeed.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above Mach 10.
    pub fn mach_from_true(self, airspeed: TrueAirspeed) -> Result<Mach, Error> {
        mach(airspeed.value().get::<meter_per_second>() / self.sound_m_s())
    }

    /// True airspeed from Mach number.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above the range of a true airspeed.
    pub fn true_from_mach(self, mach: Mach) -> Result<TrueAirspeed, Error> {
        true_airspeed(mach.value().get::<ratio>() * self.sound_m_s())
    }

    /// Mach number from equivalent airspeed.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above Mach 10.
    pub fn mach_from_equivalent(self, airspeed: EquivalentAirspeed) -> Result<Mach, Error> {
        mach(airspeed.value().get::<meter_per_second>() / self.equivalent_sound_m_s())
    }

    /// Equivalent airspeed from Mach number.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above the range of an equivalent airspeed.
    pub fn equivalent_from_mach(self, mach: Mach) -> Result<EquivalentAirspeed, Error> {
        EquivalentAirspeed::new(metres_per_second(mach.value().get::<ratio>() * self.equivalent_sound_m_s()))
    }

    /// True from calibrated airspeed.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above Mach 10 or the range of a true airspeed.
    pub fn true_from_calibrated(self, airspeed: CalibratedAirspeed) -> Result<TrueAirspeed, Error> {
        self.true_from_mach(self.mach_from_calibrated(airspeed)?)
    }

    /// Calibrated from true airspeed.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above Mach 10 or the range of a calibrated airspeed.
    pub fn calibrated_from_true(self, airspeed: TrueAirspeed) -> Result<CalibratedAirspeed, Error> {
        self.calibrated_from_mach(self.mach_from_true(airspeed)?)
    }

    /// Equivalent from calibrated airspeed.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above Mach 10 or the range of an equivalent airspeed.
    pub fn equivalent_from_calibrated(
        self,
        airspeed: CalibratedAirspeed,
    ) -> Result<EquivalentAirspeed, Error> {
        self.equivalent_from_mach(self.mach_from_calibrated(airspeed)?)
    }

    /// Calibrated from equivalent airspeed.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above Mach 10 or the range of a calibrated airspeed.
    pub fn calibrated_from_equivalent(
        self,
        airspeed: EquivalentAirspeed,
    ) -> Result<CalibratedAirspeed, Error> {
        self.calibrated_from_mach(self.mach_from_equivalent(airspeed)?)
    }

    /// Equivalent from true airspeed.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above Mach 10.
    pub fn equivalent_from_true(self, airspeed: TrueAirspeed) -> Result<EquivalentAirspeed, Error> {
        self.equivalent_from_mach(self.mach_from_true(airspeed)?)
    }

    /// True from equivalent airspeed.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above Mach 10 or the range of a true airspeed.
    pub fn true_from_equivalent(self, airspeed: EquivalentAirspeed) -> Result<TrueAirspeed, Error> {
        self.true_from_mach(self.mach_from_equivalent(airspeed)?)
    }

    /// Equivalent airspeed at Mach 1.
    fn equivalent_sound_m_s(self) -> f64 {
        sea_level_sound_m_s() * self.delta().sqrt()
    }
}

fn mach(mach: f64) -> Result<Mach, Error> {
    Mach::new(Ratio::new::<ratio>(mach))
}

fn true_airspeed(airspeed_m_s: f64) -> Result<TrueAirspeed, Error> {
    if airspeed_m_s == 0.0 {
        Ok(TrueAirspeed::at_rest())
    } else {
        TrueAirspeed::new(metres_per_second(airspeed_m_s))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, kelvins, knot, knots};
    use crate::value::{IsaDeviation, PressureAltitude};

    fn air(altitude_ft: f64, deviation_k: f64) -> Air {
        Air::new(
            PressureAltitude::new(feet(altitude_ft)).unwrap(),
            IsaDeviation::new(kelvins(deviation_k)).unwrap(),
        )
    }

    fn calibrated(knots_given: f64) -> CalibratedAirspeed {
        CalibratedAirspeed::new(knots(knots_given)).unwrap()
    }

    #[test]
    fn every_path_returns_to_rounding() {
        for altitude_ft in [-10_000.0, 0.0, 12_345.0, 36_089.0, 41_000.0, 70_000.0] {
            for deviation_k in [-40.0, 0.0, 25.0] {
                let air = air(altitude_ft, deviation_k);
                for knots_given in [1e-6, 1.0, 60.0, 250.0, 480.0, 661.0, 662.0, 900.0] {
                    let given = calibrated(knots_given);
                    let true_airspeed = air.true_from_calibrated(given).unwrap();
                    let equivalent = air.equivalent_from_true(true_airspeed).unwrap();
                    let again = air.calibrated_from_equivalent(equivalent).unwrap();
                    let through =
                        air.calibrated_from_true(air.true_from_equivalent(equivalent).unwrap()).unwrap();
                    for back in [again, through] {
                        let error = back.value().get::<knot>() / knots_given - 1.0;
                        assert!(error.abs() < 1e-14, "{knots_given} kt at {altitude_ft} ft: {error}");
                    }
                }
            }
        }
    }

    #[test]
    fn at_standard_sea_level_all_airspeeds_are_one() {
        let air = air(0.0, 0.0);
        for knots_given in [0.0, 100.0, 500.0, 1_200.0] {
            let given = calibrated(knots_given);
            let true_kt = air.true_from_calibrated(given).unwrap().value().get::<knot>();
            let equivalent_kt = air.equivalent_from_calibrated(given).unwrap().value().get::<knot>();
            assert!((true_kt - knots_given).abs() <= 1e-12 * knots_given, "{true_kt}");
            assert!((equivalent_kt - knots_given).abs() <= 1e-12 * knots_given, "{equivalent_kt}");
        }
    }

    #[test]
    fn a_reading_the_air_cannot_carry_is_refused() {
        assert!(air(262_467.0, 0.0).true_from_calibrated(calibrated(100.0)).is_err());
    }

    /// Values of an independent evaluation by bisection of the two branches of the pitot formula.
    #[test]
    fn both_branches_agree_with_bisection() {
        for (calibrated_kt, altitude_ft, mach) in [
            (280.0, 35_000.0, 0.821_349_532_675_801_6),
            (660.0, 45_000.0, 2.267_132_693_097_948),
            (700.0, 0.0, 1.058_235_301_775_307_2),
            (900.0, 30_000.0, 2.325_267_216_553_142),
            (600.0, 60_000.0, 2.852_547_780_838_234_5),
        ] {
            let found = air(altitude_ft, 0.0).mach_from_calibrated(calibrated(calibrated_kt)).unwrap();
            assert!((found.value().get::<ratio>() / mach - 1.0).abs() < 1e-14, "{calibrated_kt}");
        }
    }
}
