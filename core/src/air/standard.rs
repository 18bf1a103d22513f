//! The ICAO standard atmosphere: temperature and pressure by altitude, and altitude by pressure.

use crate::Error;
pub(crate) use crate::value::units::STANDARD_GRAVITY_M_S2 as GRAVITY_M_S2;
use crate::value::units::{Pressure, ThermodynamicTemperature, kelvin, meter, metres, pascal};
use crate::value::{PressureAltitude, StaticPressure, Temperature};

/// Specific gas constant of dry air, J/(kg K).
pub(crate) const GAS_CONSTANT: f64 = 287.052_87;
/// Ratio of the specific heats of air.
pub(crate) const HEAT_RATIO: f64 = 1.4;
/// Standard temperature at sea level.
pub(crate) const SEA_LEVEL_K: f64 = 288.15;
/// Standard pressure at sea level.
pub(crate) const SEA_LEVEL_PA: f64 = 101_325.0;
/// Change of standard temperature with altitude below the tropopause, K/m.
pub(crate) const TROPOSPHERE_K_M: f64 = -0.006_5;

/// A range of altitude in which the temperature changes evenly with geopotential altitude.
pub(crate) struct Layer {
    pub(crate) base_m: f64,
    pub(crate) base_k: f64,
    pub(crate) base_pa: f64,
    pub(crate) gradient_k_m: f64,
}

const fn layer(base_m: f64, base_k: f64, base_pa: f64, gradient_k_m: f64) -> Layer {
    Layer { base_m, base_k, base_pa, gradient_k_m }
}

/// Sea level to the tropopause; it holds below sea level too.
pub(crate) const TROPOSPHERE: Layer = layer(0.0, SEA_LEVEL_K, SEA_LEVEL_PA, TROPOSPHERE_K_M);

/// The layers above. The base pressures follow from the layers below and the constants above, to the last bit.
pub(crate) const ABOVE: [Layer; 6] = [
    layer(11_000.0, 216.65, 22_632.040_095_007_8, 0.0),
    layer(20_000.0, 216.65, 5_474.877_424_281_046, 0.001),
    layer(32_000.0, 228.65, 868.015_776_620_213_3, 0.002_8),
    layer(47_000.0, 270.65, 110.905_773_367_309_86, 0.0),
    layer(51_000.0, 270.65, 66.938_528_121_179_63, -0.002_8),
    layer(71_000.0, 214.65, 3.956_392_160_396_599, -0.002),
];

impl Layer {
    fn at_altitude(altitude_m: f64) -> &'static Self {
        ABOVE.iter().rev().find(|layer| altitude_m >= layer.base_m).unwrap_or(&TROPOSPHERE)
    }

    fn at_pressure(pressure_pa: f64) -> &'static Self {
        ABOVE.iter().rev().find(|layer| pressure_pa <= layer.base_pa).unwrap_or(&TROPOSPHERE)
    }

    fn at_density(pressure_per_kelvin: f64) -> &'static Self {
        let below = |layer: &&Self| pressure_per_kelvin <= layer.base_pa / layer.base_k;
        ABOVE.iter().rev().find(below).unwrap_or(&TROPOSPHERE)
    }

    fn temperature_k(&self, altitude_m: f64) -> f64 {
        self.base_k + self.gradient_k_m * (altitude_m - self.base_m)
    }

    fn pressure_pa(&self, altitude_m: f64) -> f64 {
        let above_base_m = altitude_m - self.base_m;
        // The logarithm of the ratio, so that the large exponent does not magnify the rounding of a base near
        // one.
        let log_ratio = if self.gradient_k_m == 0.0 {
            -GRAVITY_M_S2 * above_base_m / (GAS_CONSTANT * self.base_k)
        } else {
            (self.gradient_k_m * above_base_m / self.base_k).ln_1p()
                * (-GRAVITY_M_S2 / (self.gradient_k_m * GAS_CONSTANT))
        };
        self.base_pa * log_ratio.exp()
    }

    fn altitude_m(&self, pressure_pa: f64) -> f64 {
        let log_ratio = (pressure_pa / self.base_pa).ln();
        let above_base_m = if self.gradient_k_m == 0.0 {
            -log_ratio * GAS_CONSTANT * self.base_k / GRAVITY_M_S2
        } else {
            (-log_ratio * self.gradient_k_m * GAS_CONSTANT / GRAVITY_M_S2).exp_m1() * self.base_k
                / self.gradient_k_m
        };
        self.base_m + above_base_m
    }

    /// Density goes with the power of the temperature ratio that is one below that of the pressure.
    fn altitude_of_density_m(&self, pressure_per_kelvin: f64) -> f64 {
        let log_ratio = (pressure_per_kelvin * self.base_k / self.base_pa).ln();
        let above_base_m = if self.gradient_k_m == 0.0 {
            -log_ratio * GAS_CONSTANT * self.base_k / GRAVITY_M_S2
        } else {
            let power = -GRAVITY_M_S2 / (self.gradient_k_m * GAS_CONSTANT) - 1.0;
            (log_ratio / power).exp_m1() * self.base_k / self.gradient_k_m
        };
        self.base_m + above_base_m
    }
}

/// The altitude at which the standard atmosphere has a density, which goes with pressure over temperature.
pub(crate) fn standard_altitude_of_density_m(pressure_per_kelvin: f64) -> f64 {
    Layer::at_density(pressure_per_kelvin).altitude_of_density_m(pressure_per_kelvin)
}

pub(crate) fn standard_temperature_k(altitude_m: f64) -> f64 {
    Layer::at_altitude(altitude_m).temperature_k(altitude_m)
}

pub(crate) fn standard_pressure_pa(altitude_m: f64) -> f64 {
    Layer::at_altitude(altitude_m).pressure_pa(altitude_m)
}

pub(crate) fn standard_altitude_m(pressure_pa: f64) -> f64 {
    Layer::at_pressure(pressure_pa).altitude_m(pressure_pa)
}

/// Temperature of the standard atmosphere.
///
/// Even changes from layer to layer: -6.5 K/km to 11 km, none to 20 km, +1 to 32 km, +2.8 to 47 km, none to 51
/// km, -2.8 to 71 km, -2 to 80 km, of geopotential altitude, from 288.15 K at sea level.
///
/// # Accuracy
/// Rounding.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.
///
/// # Example
/// ```
/// use lubberline::air::standard_temperature;
/// use lubberline::value::{PressureAltitude, units::*};
/// assert_eq!(format!("{:.1}", standard_temperature(PressureAltitude::new(feet(35_000.0))?).value().get::<degree_celsius>()), "-54.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn standard_temperature(altitude: PressureAltitude) -> Temperature {
    let altitude_m = altitude.value().get::<meter>();
    Temperature::derived(ThermodynamicTemperature::new::<kelvin>(standard_temperature_k(altitude_m)))
}

/// Pressure of the standard atmosphere, which is what a pressure altitude means.
///
/// With the base `b` of a layer and its gradient `L`: `p_b (1 + L (H - H_b)/T_b)^(-g/(L R))`, or
/// `p_b exp(-g (H - H_b)/(R T_b))` where the temperature does not change.
///
/// # Accuracy
/// Rounding, with the constants of the source (R = 287.05287 J/(kg K)). Its printed pressures above 20 km
/// differ by up to 4e-6 of themselves, having been worked out from rounded ones. The U.S. Standard Atmosphere
/// 1976, the same below 32 km in its layers, takes R = 287.05307: up to 7e-6 more pressure at 71 km.
///
/// # Source
/// As [`standard_temperature`]; p0 = 101 325 Pa, g = 9.80665 m/s².
///
/// # Example
/// ```
/// use lubberline::air::standard_pressure;
/// use lubberline::value::{PressureAltitude, units::*};
/// let pressure = standard_pressure(PressureAltitude::new(feet(18_000.0))?);
/// assert_eq!(format!("{:.1}", pressure.value().get::<hectopascal>()), "506.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn standard_pressure(altitude: PressureAltitude) -> StaticPressure {
    let altitude_m = altitude.value().get::<meter>();
    StaticPressure::derived(Pressure::new::<pascal>(standard_pressure_pa(altitude_m)))
}

/// The altitude at which the standard atmosphere has a pressure: the inverse of [`standard_pressure`].
///
/// # Accuracy
/// Rounding: 1e-10 m.
///
/// # Errors
/// [`Error::OutOfRange`] of the pressure altitude for a pressure above that of -5 km or below that of 80 km.
///
/// # Source
/// As [`standard_pressure`].
///
/// # Example
/// ```
/// use lubberline::air::pressure_altitude;
/// use lubberline::value::{StaticPressure, units::*};
/// // The tropopause.
/// assert_eq!(format!("{:.0}", pressure_altitude(StaticPressure::new(hectopascals(226.32))?)?.value().get::<foot>()), "36089");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn pressure_altitude(pressure: StaticPressure) -> Result<PressureAltitude, Error> {
    PressureAltitude::new(metres(standard_altitude_m(pressure.value().get::<pascal>())))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_base_follows_from_the_layer_below() {
        let mut below = &TROPOSPHERE;
        for layer in &ABOVE {
            let pressure_pa = below.pressure_pa(layer.base_m);
            assert!((pressure_pa / layer.base_pa - 1.0).abs() < 1e-15, "{pressure_pa} at {}", layer.base_m);
            assert!((below.temperature_k(layer.base_m) - layer.base_k).abs() < 1e-12);
            below = layer;
        }
    }

    /// ICAO Doc 7488/3 Tables 1 to 3, read in a transcription. Tolerance: half the last printed digit for the
    /// temperature; for the pressure 4e-6 of it, since the document worked from rounded base pressures.
    #[test]
    fn the_printed_table_is_reproduced() {
        for (altitude_m, temperature_k, pressure_pa) in [
            (0.0, 288.15, 101_325.0),
            (20_000.0, 216.65, 5.474_87e3),
            (47_000.0, 270.65, 1.109_06e2),
            (50_000.0, 270.65, 7.594_43e1),
            (61_000.0, 242.65, 1.766_05e1),
            (71_000.0, 214.65, 3.956_39),
            (80_000.0, 196.65, 8.862_72e-1),
        ] {
            assert!((standard_temperature_k(altitude_m) - temperature_k).abs() < 5e-4, "{altitude_m}");
            assert!((standard_pressure_pa(altitude_m) / pressure_pa - 1.0).abs() < 4e-6, "{altitude_m}");
        }
    }

    #[test]
    fn altitude_from_pressure_is_the_inverse() {
        for step in 0..=8_500 {
            let altitude_m = f64::from(step).mul_add(10.0, -5_000.0);
            let back_m = standard_altitude_m(standard_pressure_pa(altitude_m));
            assert!((back_m - altitude_m).abs() < 1e-10, "{altitude_m}: {back_m}");
        }
    }

    #[test]
    fn a_pressure_outside_the_atmosphere_is_refused() {
        for pressure_pa in [180_000.0, 0.5] {
            let pressure = StaticPressure::new(Pressure::new::<pascal>(pressure_pa)).unwrap();
            assert!(pressure_altitude(pressure).is_err(), "{pressure_pa}");
        }
    }
}
