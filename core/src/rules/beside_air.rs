//! The rules of altimetry set beside the exact answers, term by term.

use super::RuleError;
use crate::Error;
use crate::air::{
    Air, cold_temperature_correction_by_rule, cold_temperature_correction_exact, density_altitude_by_rule,
    isa_deviation, pressure_altitude_by_rule, pressure_altitude_from_indicated,
};
use crate::value::units::{Length, Pressure, feet, inch_of_mercury, kelvin, kelvin_interval, metres, pascal};
use crate::value::{
    AltimeterSetting, Elevation, HeightAboveSource, IndicatedAltitude, PressureAltitude, Temperature,
};

/// Density altitude for a kelvin above standard in the troposphere, in metres: `1 / (g / R - 0.0065)`, 118.6 ft.
const DENSITY_ALTITUDE_M_K: f64 = 1.0 / (9.806_65 / 287.052_87 - 0.006_5);

/// Altitude for a pascal at standard pressure, in metres: `R T0 / (g p0)`, 924.8 ft for an inch of mercury.
const ALTITUDE_M_PA: f64 = 287.052_87 * 288.15 / (9.806_65 * 101_325.0);

/// Standard pressure at sea level in pascals.
const STANDARD_PA: f64 = 101_325.0;

/// [`density_altitude_by_rule`] beside the density altitude of dry air. The terms: the standard temperature counted as 15 less 2 degrees per 1000 ft; 120 ft to
/// the degree for 118.6; and a straight line for a curve (in the stratosphere a degree is 96 ft).
///
/// # Errors
/// As [`density_altitude_by_rule`], [`isa_deviation`] and [`Air::density_altitude`].
///
/// # Example
/// ```
/// use lubberline::rules::density_altitude_error;
/// use lubberline::value::{PressureAltitude, Temperature, units::*};
/// assert_eq!(format!("{:.0}", density_altitude_error(PressureAltitude::new(feet(5_000.0))?, Temperature::new(degrees_celsius(25.0))?)?.error().get::<foot>()), "138");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn density_altitude_error(
    altitude: PressureAltitude,
    temperature: Temperature,
) -> Result<RuleError<Length, 3>, Error> {
    let deviation = isa_deviation(temperature, altitude)?;
    let deviation_k = deviation.value().get::<kelvin_interval>();
    let rule = density_altitude_by_rule(altitude, temperature)?.value();
    let by_120_ft = altitude.value() + feet(120.0 * deviation_k);
    let by_slope = altitude.value() + metres(DENSITY_ALTITUDE_M_K * deviation_k);
    let exact = Air::new(altitude, deviation).density_altitude()?.value();
    Ok(RuleError { rule, exact, terms: [rule - by_120_ft, by_120_ft - by_slope, by_slope - exact] })
}

/// [`pressure_altitude_by_rule`] beside the pressure altitude. The terms: 29.92 for 29.9213 inches; 1000 ft to the inch for 924.8; and a straight line for a
/// curve.
///
/// # Errors
/// As [`pressure_altitude_by_rule`] and [`pressure_altitude_from_indicated`].
///
/// # Example
/// ```
/// use lubberline::rules::pressure_altitude_error;
/// use lubberline::value::{AltimeterSetting, IndicatedAltitude, units::*};
/// assert_eq!(format!("{:.0}", pressure_altitude_error(IndicatedAltitude::new(feet(5_000.0))?, AltimeterSetting::new(hectopascals(1004.0))?)?.error().get::<foot>()), "18");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude_error(
    altitude: IndicatedAltitude,
    setting: AltimeterSetting,
) -> Result<RuleError<Length, 3>, Error> {
    let rule = pressure_altitude_by_rule(altitude, setting)?.value();
    let below_pa = STANDARD_PA - setting.value().get::<pascal>();
    let below_inches = Pressure::new::<pascal>(below_pa).get::<inch_of_mercury>();
    let by_1000_ft = altitude.value() + feet(1_000.0 * below_inches);
    let by_slope = altitude.value() + metres(ALTITUDE_M_PA * below_pa);
    let exact = pressure_altitude_from_indicated(altitude, setting)?.value();
    Ok(RuleError { rule, exact, terms: [rule - by_1000_ft, by_1000_ft - by_slope, by_slope - exact] })
}

/// [`cold_temperature_correction_by_rule`] beside the exact correction. The terms: 4 percent for 10 degrees where it is 10 degrees over the absolute temperature of
/// the source; and the temperature of the source for that of the column above it, which is colder.
///
/// # Example
/// ```
/// use lubberline::rules::cold_temperature_correction_error;
/// use lubberline::value::{Elevation, HeightAboveSource, Temperature, units::*};
/// let height = HeightAboveSource::new(feet(5_000.0))?;
/// assert_eq!(format!("{:.0}", cold_temperature_correction_error(height, Temperature::new(degrees_celsius(-50.0))?, Elevation::new(feet(0.0))?).error().get::<foot>()), "-200");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_error(
    height: HeightAboveSource,
    temperature: Temperature,
    elevation: Elevation,
) -> RuleError<Length, 2> {
    let rule = cold_temperature_correction_by_rule(height, temperature, elevation);
    let exact = cold_temperature_correction_exact(height, temperature, elevation);
    // 0.004 for a kelvin is the rule's share, and one over the source's temperature the exact one there.
    let by_source = rule / (0.004 * temperature.value().get::<kelvin>());
    RuleError { rule, exact, terms: [rule - by_source, by_source - exact] }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degrees_celsius, foot, hectopascals};

    fn sums<const TERMS: usize>(error: &RuleError<Length, TERMS>) {
        let sum = error.terms.iter().fold(metres(0.0), |sum, term| sum + *term);
        assert!((sum - error.error()).abs() < metres(1e-9), "{error:?}");
    }

    #[test]
    fn density_altitude() {
        let at = |altitude_ft, temperature_degc| {
            let altitude = PressureAltitude::new(feet(altitude_ft)).unwrap();
            let temperature = Temperature::new(degrees_celsius(temperature_degc)).unwrap();
            density_altitude_error(altitude, temperature).unwrap()
        };
        for (altitude_ft, temperature_degc) in
            [(0.0, -30.0), (6_000.0, 13.0), (9_500.0, 35.0), (41_000.0, -50.0)]
        {
            sums(&at(altitude_ft, temperature_degc));
        }
        // Near standard the slope is all that is left.
        let near = at(0.0, 15.1);
        assert!(near.terms[0].abs() < feet(1e-6));
        assert!((near.terms[1].get::<foot>() - 0.1 * (120.0 - 118.598)).abs() < 1e-3, "{near:?}");
        assert!(near.terms[2].abs() < feet(0.02));
        // A printed example: 6000 ft and 13 degrees are 7200 ft by the rule, 7147 ft exactly.
        assert!((at(6_000.0, 13.0).error().get::<foot>() - 53.0).abs() < 1.0);
    }

    #[test]
    fn pressure_altitude() {
        let at = |setting_hpa| {
            let altitude = IndicatedAltitude::new(feet(5_000.0)).unwrap();
            pressure_altitude_error(altitude, AltimeterSetting::new(hectopascals(setting_hpa)).unwrap())
                .unwrap()
        };
        for setting_hpa in [950.0, 1_000.0, 1_013.25, 1_040.0] {
            sums(&at(setting_hpa));
        }
        let standard = at(1_013.25);
        assert!(
            (standard.terms[0].get::<foot>() + 1.26).abs() < 0.01 && standard.terms[1].abs() < feet(1e-9)
        );
        // 13.25 hPa are 0.391 inches, each 75 ft too many.
        assert!((at(1_000.0).terms[1].get::<foot>() - 0.3913 * 75.16).abs() < 0.05, "{:?}", at(1_000.0));
    }

    #[test]
    fn cold_temperature() {
        let at = |height_ft, temperature_degc| {
            cold_temperature_correction_error(
                HeightAboveSource::new(feet(height_ft)).unwrap(),
                Temperature::new(degrees_celsius(temperature_degc)).unwrap(),
                Elevation::new(feet(0.0)).unwrap(),
            )
        };
        for (height_ft, temperature_degc) in
            [(0.0, -20.0), (1_500.0, -10.0), (5_000.0, -40.0), (3_000.0, 30.0)]
        {
            sums(&at(height_ft, temperature_degc));
        }
        // At -23.15 degrees the source has 250 K, and a share of 1/250 is the rule's.
        assert!(at(2_000.0, -23.15).terms[0].abs() < feet(1e-9));
        assert!(at(2_000.0, 0.0).terms[0] > feet(0.0) && at(2_000.0, -40.0).terms[0] < feet(0.0));
        assert!(at(5_000.0, -20.0).terms[1] < feet(0.0), "the column is colder than its foot");
    }
}
