//! The standard atmosphere by the edition that defines it. Two differ in their gas constant.

use super::standard::{GAS_CONSTANT, HEAT_RATIO, SEA_LEVEL_PA};
use super::state::Air;
use crate::value::units::{
    MassDensity, Pressure, Velocity, kelvin, kilograms_per_cubic_metre, metres_per_second, pascal,
};
use crate::value::{IsaDeviation, PressureAltitude, StaticPressure, Temperature, choice};

choice! {
    /// Whose standard atmosphere. To 80 km the two have the same layers, and differ by up to 8e-6 of the pressure.
    AtmosphereEdition {
        /// ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993: R = 287.05287 J/(kg K). What the rest of the library takes.
        Icao1993 = 0: "icao_1993",
        /// U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562, Table 2 (from memory): R = 8314.32 / 28.9644 = 287.05307 J/(kg K).
        UnitedStates1976 = 1: "united_states_1976",
    }
}

impl AtmosphereEdition {
    const fn gas_constant(self) -> f64 {
        match self {
            Self::Icao1993 => GAS_CONSTANT,
            Self::UnitedStates1976 => 8_314.32 / 28.964_4,
        }
    }
}

/// The air at a pressure altitude, by an edition: what [`standard_air_by_edition`] gives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EditionAir {
    /// Static temperature.
    pub temperature: Temperature,
    /// Static pressure.
    pub pressure: StaticPressure,
    /// Density, `p / (R T)`.
    pub density: MassDensity,
    /// Speed of sound, `sqrt(1.4 R T)`.
    pub speed_of_sound: Velocity,
}

/// The standard atmosphere at an altitude, by a named edition.
///
/// In every layer the logarithm of the pressure over that at sea level goes with 1/R: another constant is another power of the ratio.
///
/// # Accuracy
/// Rounding, with the constants of the edition.
///
/// # Degenerate cases
/// With [`AtmosphereEdition::Icao1993`] it is [`Air`].
///
/// # Source
/// Named at [`AtmosphereEdition`].
///
/// # Example
/// ```
/// use lubberline::air::{AtmosphereEdition, standard_air_by_edition};
/// use lubberline::value::{IsaDeviation, PressureAltitude, units::*};
/// let at = PressureAltitude::new(metres(32_000.0))?;
/// let air = standard_air_by_edition(at, IsaDeviation::none(), AtmosphereEdition::UnitedStates1976);
/// assert_eq!(format!("{:.3}", air.pressure.value().get::<pascal>()), "868.019");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn standard_air_by_edition(
    altitude: PressureAltitude,
    deviation: IsaDeviation,
    edition: AtmosphereEdition,
) -> EditionAir {
    let air = Air::new(altitude, deviation);
    let gas_constant = edition.gas_constant();
    let pressure_pa = match edition {
        AtmosphereEdition::Icao1993 => air.pressure().value().get::<pascal>(),
        AtmosphereEdition::UnitedStates1976 => {
            let log_ratio = (air.pressure().value().get::<pascal>() / SEA_LEVEL_PA).ln();
            SEA_LEVEL_PA * (log_ratio * (GAS_CONSTANT / gas_constant)).exp()
        }
    };
    let temperature_k = air.temperature().value().get::<kelvin>();
    EditionAir {
        temperature: air.temperature(),
        pressure: StaticPressure::derived(Pressure::new::<pascal>(pressure_pa)),
        density: kilograms_per_cubic_metre(pressure_pa / (gas_constant * temperature_k)),
        speed_of_sound: metres_per_second((HEAT_RATIO * gas_constant * temperature_k).sqrt()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{kilogram_per_cubic_meter, knot, metres};

    fn at(altitude_m: f64, edition: AtmosphereEdition) -> EditionAir {
        let altitude = PressureAltitude::new(metres(altitude_m)).unwrap();
        standard_air_by_edition(altitude, IsaDeviation::none(), edition)
    }

    /// The layer table of the U.S. Standard Atmosphere 1976 in pascals, read in a transcription: six printed digits.
    #[test]
    fn the_bases_of_1976_are_those_printed() {
        for (altitude_m, pressure_pa, half_digit_pa) in [
            (11_000.0, 22_632.1, 0.05),
            (20_000.0, 5_474.89, 0.005),
            (32_000.0, 868.019, 0.000_5),
            (47_000.0, 110.906, 0.000_5),
            (51_000.0, 66.938_9, 0.000_05),
            (71_000.0, 3.956_42, 0.000_005),
        ] {
            let found_pa =
                at(altitude_m, AtmosphereEdition::UnitedStates1976).pressure.value().get::<pascal>();
            assert!((found_pa - pressure_pa).abs() <= half_digit_pa, "{altitude_m}: {found_pa}");
        }
    }

    /// What the page on the air says of the difference.
    #[test]
    fn the_editions_differ_by_eight_millionths_at_most() {
        let mut most = 0.0_f64;
        for altitude_km in -5..=80 {
            let [icao, us] = AtmosphereEdition::ALL
                .iter()
                .map(|edition| at(f64::from(altitude_km) * 1_000.0, *edition))
                .collect::<Vec<_>>()[..]
            else {
                panic!("two editions")
            };
            let ratio = us.pressure.value() / icao.pressure.value();
            most = most.max((ratio.value - 1.0).abs());
            let density =
                us.density.get::<kilogram_per_cubic_meter>() / icao.density.get::<kilogram_per_cubic_meter>();
            assert!((density - 1.0).abs() < 9e-6, "{altitude_km}: {density}");
            let sound_kt = us.speed_of_sound.get::<knot>() - icao.speed_of_sound.get::<knot>();
            assert!((1.7e-4..2.6e-4).contains(&sound_kt), "{altitude_km}: {sound_kt}");
        }
        assert!((6.9e-6..8.5e-6).contains(&most), "{most}");
    }
}
