//! Density altitude: where the standard atmosphere has the density of the air.

use super::Air;
use super::standard::standard_altitude_of_density_m;
use crate::Error;
use crate::value::units::{degree_celsius, feet, foot, metres};
use crate::value::{DensityAltitude, PressureAltitude, Temperature};

impl Air {
    /// The altitude in the standard atmosphere at which the density is found, in closed form.
    ///
    /// # Accuracy
    /// Rounding for dry air. Moisture makes air lighter: at 35 °C and saturated, 700 ft more at sea level.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] of the density altitude outside -5 to 80 km.
    ///
    /// # Source
    /// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
    ///
    /// # Example
    /// ```
    /// use lubberline::air::Air;
    /// use lubberline::value::{IsaDeviation, PressureAltitude, units::*};
    /// let hot = Air::new(PressureAltitude::new(feet(6_000.0))?, IsaDeviation::new(kelvins(10.0))?);
    /// assert_eq!(format!("{:.0}", hot.density_altitude()?.value().get::<foot>()), "7160");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn density_altitude(self) -> Result<DensityAltitude, Error> {
        DensityAltitude::new(metres(standard_altitude_of_density_m(self.pressure_per_kelvin())))
    }
}

/// Density altitude by the trade's rule: 120 ft for each degree above `15 - 2` degrees per 1000 ft.
///
/// # Accuracy
/// Too much by up to 65 ft within 10 K of standard, 160 ft within 20 K and 300 ft within 30 K, to 10 000 ft.
///
/// # Errors
/// [`Error::OutOfRange`] of the density altitude outside -5 to 80 km.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// use lubberline::air::density_altitude_by_rule;
/// use lubberline::value::{PressureAltitude, Temperature, units::*};
/// assert_eq!(format!("{:.0}", density_altitude_by_rule(PressureAltitude::new(feet(5_000.0))?, Temperature::new(degrees_celsius(25.0))?)?.value().get::<foot>()), "7400");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn density_altitude_by_rule(
    altitude: PressureAltitude,
    temperature: Temperature,
) -> Result<DensityAltitude, Error> {
    let altitude_ft = altitude.value().get::<foot>();
    let standard_degc = 15.0 - 2.0 * altitude_ft / 1_000.0;
    let excess_k = temperature.value().get::<degree_celsius>() - standard_degc;
    DensityAltitude::new(feet(altitude_ft + 120.0 * excess_k))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::air::isa_deviation;
    use crate::value::IsaDeviation;
    use crate::value::units::{degrees_celsius, kelvins};

    #[test]
    fn in_standard_air_it_is_the_pressure_altitude() {
        for altitude_ft in (-16..=262).map(|thousands| f64::from(thousands) * 1_000.0) {
            let air = Air::standard(PressureAltitude::new(feet(altitude_ft)).unwrap());
            let density_ft = air.density_altitude().unwrap().value().get::<foot>();
            assert!((density_ft - altitude_ft).abs() < 1e-8, "{altitude_ft}: {density_ft}");
        }
    }

    #[test]
    fn the_standard_air_there_has_the_density() {
        for (altitude_ft, deviation_k) in [(0.0, 30.0), (10_000.0, -25.0), (35_500.0, 10.0), (60_000.0, 12.0)]
        {
            let altitude = PressureAltitude::new(feet(altitude_ft)).unwrap();
            let air = Air::new(altitude, IsaDeviation::new(kelvins(deviation_k)).unwrap());
            let there = PressureAltitude::new(air.density_altitude().unwrap().value()).unwrap();
            let ratio = Air::standard(there).density() / air.density();
            assert!((ratio.get::<crate::value::units::ratio>() - 1.0).abs() < 1e-13, "{altitude_ft}");
        }
    }

    /// An aviation magazine's example of the rule: 6000 ft and 13 °C are 7200 ft. Exact: 7147 ft.
    #[test]
    fn the_rule_and_the_exact_value() {
        let altitude = PressureAltitude::new(feet(6_000.0)).unwrap();
        let temperature = Temperature::new(degrees_celsius(13.0)).unwrap();
        let rule_ft = density_altitude_by_rule(altitude, temperature).unwrap().value().get::<foot>();
        assert!((rule_ft - 7_200.0).abs() < 1e-6, "{rule_ft}");
        let exact = Air::new(altitude, isa_deviation(temperature, altitude).unwrap()).density_altitude();
        assert!((exact.unwrap().value().get::<foot>() - 7_147.0).abs() < 0.5);
    }
}
