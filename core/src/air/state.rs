//! The air at one pressure altitude: its temperature, pressure, density and speed of sound.

use super::standard::{
    GAS_CONSTANT, HEAT_RATIO, SEA_LEVEL_K, SEA_LEVEL_PA, standard_pressure_pa, standard_temperature_k,
};
use crate::Error;
use crate::value::units::{
    MassDensity, Pressure, Ratio, ThermodynamicTemperature, Velocity, kelvin, kelvin_interval, kelvins,
    kilograms_per_cubic_metre, meter, metres_per_second, pascal, ratio,
};
use crate::value::{IsaDeviation, PressureAltitude, StaticPressure, Temperature};

/// The air where an aircraft is: its pressure by the pressure altitude, its temperature by the ISA deviation.
///
/// The deviation moves the temperature and with it density and speed of sound; the pressure stays, because the
/// altitude is a pressure altitude.
///
/// # Accuracy
/// Rounding. The ratios are to the standard atmosphere's own sea level, so that they are 1 there exactly; its
/// density is 1.225 kg/m³ to 1.5e-8.
///
/// # Source
/// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993: `density = p/(R T)`, speed of
/// sound `sqrt(1.4 R T)`, R = 287.05287 J/(kg K).
///
/// # Example
/// ```
/// use lubberline::air::Air;
/// use lubberline::value::{IsaDeviation, PressureAltitude, units::*};
/// let hot = Air::new(PressureAltitude::new(feet(6_000.0))?, IsaDeviation::new(kelvins(15.0))?);
/// assert_eq!(format!("{:.1}", hot.temperature().value().get::<degree_celsius>()), "18.1");
/// assert_eq!(format!("{:.1}", hot.pressure().value().get::<hectopascal>()), "812.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    temperature_k: f64,
    pressure_pa: f64,
}

impl Air {
    /// The air at a pressure altitude, warmer than standard by the deviation.
    pub fn new(altitude: PressureAltitude, deviation: IsaDeviation) -> Self {
        let altitude_m = altitude.value().get::<meter>();
        Self {
            temperature_k: standard_temperature_k(altitude_m) + deviation.value().get::<kelvin_interval>(),
            pressure_pa: standard_pressure_pa(altitude_m),
        }
    }

    /// The air of the standard atmosphere.
    pub fn standard(altitude: PressureAltitude) -> Self {
        Self::new(altitude, IsaDeviation::none())
    }

    /// Static temperature.
    pub fn temperature(self) -> Temperature {
        Temperature::derived(ThermodynamicTemperature::new::<kelvin>(self.temperature_k))
    }

    /// Static pressure.
    pub fn pressure(self) -> StaticPressure {
        StaticPressure::derived(Pressure::new::<pascal>(self.pressure_pa))
    }

    /// Density.
    pub fn density(self) -> MassDensity {
        kilograms_per_cubic_metre(self.pressure_pa / (GAS_CONSTANT * self.temperature_k))
    }

    /// Speed of sound.
    pub fn speed_of_sound(self) -> Velocity {
        metres_per_second(self.sound_m_s())
    }

    /// Temperature over standard sea-level temperature.
    pub fn temperature_ratio(self) -> Ratio {
        Ratio::new::<ratio>(self.temperature_k / SEA_LEVEL_K)
    }

    /// Pressure over standard sea-level pressure.
    pub fn pressure_ratio(self) -> Ratio {
        Ratio::new::<ratio>(self.delta())
    }

    /// Density over standard sea-level density.
    pub fn density_ratio(self) -> Ratio {
        Ratio::new::<ratio>(self.delta() * SEA_LEVEL_K / self.temperature_k)
    }

    pub(super) fn pressure_per_kelvin(self) -> f64 {
        self.pressure_pa / self.temperature_k
    }

    pub(super) fn sound_m_s(self) -> f64 {
        sound_m_s(self.temperature_k)
    }

    /// The pressure ratio, by its usual letter.
    pub(super) fn delta(self) -> f64 {
        self.pressure_pa / SEA_LEVEL_PA
    }
}

pub(super) fn sound_m_s(temperature_k: f64) -> f64 {
    (HEAT_RATIO * GAS_CONSTANT * temperature_k).sqrt()
}

/// The speed of sound in air of a temperature: `sqrt(1.4 R T)`.
///
/// # Accuracy
/// Rounding, for a gas of constant heat ratio: real air at 50 °C differs by less than 0.1 percent.
///
/// # Degenerate cases
/// At absolute zero it is zero; the range of a temperature ends above that.
///
/// # Source
/// As [`Air`].
///
/// # Example
/// ```
/// use lubberline::air::speed_of_sound;
/// use lubberline::value::{Temperature, units::*};
/// assert_eq!(format!("{:.1}", speed_of_sound(Temperature::new(degrees_celsius(15.0))?).get::<knot>()), "661.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn speed_of_sound(temperature: Temperature) -> Velocity {
    metres_per_second(sound_m_s(temperature.value().get::<kelvin>()))
}

/// How much warmer than the standard atmosphere the air is at a pressure altitude.
///
/// # Errors
/// [`Error::OutOfRange`] beyond 150 K of deviation.
///
/// # Source
/// As [`Air`].
///
/// # Example
/// ```
/// use lubberline::air::isa_deviation;
/// use lubberline::value::{PressureAltitude, Temperature, units::*};
/// assert_eq!(format!("{:.1}", isa_deviation(Temperature::new(degrees_celsius(-47.0))?, PressureAltitude::new(feet(35_000.0))?)?.value().get::<kelvin_interval>()), "7.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn isa_deviation(temperature: Temperature, altitude: PressureAltitude) -> Result<IsaDeviation, Error> {
    let standard_k = standard_temperature_k(altitude.value().get::<meter>());
    IsaDeviation::new(kelvins(temperature.value().get::<kelvin>() - standard_k))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, kilogram_per_cubic_meter, knot, meter_per_second, metres};

    fn standard(altitude_m: f64) -> Air {
        Air::standard(PressureAltitude::new(metres(altitude_m)).unwrap())
    }

    /// ICAO Doc 7488/3 Tables 1 to 3, read in a transcription; density to 4e-6 as the pressures it was printed
    /// from.
    #[test]
    fn printed_densities_and_speeds_of_sound_are_reproduced() {
        for (altitude_m, density, sound_m_s) in [
            (0.0, 1.225, 340.294),
            (20_000.0, 8.803_45e-2, 295.069),
            (51_000.0, 8.616_00e-4, 329.799),
            (75_000.0, 3.486_04e-5, 288.179),
        ] {
            let air = standard(altitude_m);
            let density_ratio = air.density().get::<kilogram_per_cubic_meter>() / density;
            assert!((density_ratio - 1.0).abs() < 4e-6, "{altitude_m}");
            assert!(
                (air.speed_of_sound().get::<meter_per_second>() - sound_m_s).abs() < 6e-4,
                "{altitude_m}"
            );
        }
    }

    /// A college text's table (Flight Theory and Aerodynamics, Table 2.1), ratios printed to four digits.
    #[test]
    fn printed_ratios_are_reproduced() {
        for (altitude_ft, delta, sigma, theta) in
            [(10_000.0, 0.6877, 0.7385, 0.9312), (35_000.0, 0.2353, 0.3099, 0.7594), (0.0, 1.0, 1.0, 1.0)]
        {
            let air = Air::standard(PressureAltitude::new(feet(altitude_ft)).unwrap());
            assert!((air.pressure_ratio().get::<ratio>() - delta).abs() <= 5e-5, "{altitude_ft}");
            assert!((air.density_ratio().get::<ratio>() - sigma).abs() <= 5e-5, "{altitude_ft}");
            assert!((air.temperature_ratio().get::<ratio>() - theta).abs() <= 5e-5, "{altitude_ft}");
        }
    }

    #[test]
    fn a_deviation_moves_the_temperature_and_leaves_the_pressure() {
        let altitude = PressureAltitude::new(feet(30_000.0)).unwrap();
        let deviation = IsaDeviation::new(kelvins(-12.5)).unwrap();
        let (cold, standard) = (Air::new(altitude, deviation), Air::standard(altitude));
        assert_eq!(cold.pressure(), standard.pressure());
        assert!(cold.density() > standard.density());
        let back_k = isa_deviation(cold.temperature(), altitude).unwrap().value().get::<kelvin_interval>();
        assert!((back_k + 12.5).abs() < 1e-12);
    }

    /// 661.48 kt at sea level and 573.57 kt at the tropopause: usual printed values.
    #[test]
    fn the_speed_of_sound_in_knots() {
        for (altitude_m, sound_kt) in [(0.0, 661.48), (11_000.0, 573.57)] {
            assert!((standard(altitude_m).speed_of_sound().get::<knot>() - sound_kt).abs() < 0.005);
        }
    }
}
