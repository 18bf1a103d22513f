//! Cold-temperature corrections: how much higher to fly by the altimeter so as to be as high as charted.

use super::column::altitude_above_m;
use super::standard::standard_temperature_k;
use crate::value::units::{Length, degree_celsius, feet, foot, kelvin, meter, metres};
use crate::value::{Elevation, HeightAboveSource, Temperature};

/// Fall of temperature with height that the published formula takes, °C per foot.
const LAPSE_C_FT: f64 = 0.001_98;

/// The correction by ICAO's formula, to be added to an altitude on the procedure.
///
/// `H (15 - t0) / (273 + t0 - 0.5 L (H + E))` with the height `H` above the altimeter setting source, its
/// elevation `E`, both in feet, L = 0.00198 °C/ft, and `t0 = t + L E`, the aerodrome's temperature reduced to
/// sea level.
///
/// # Accuracy
/// The document gives 5 percent of [`cold_temperature_correction_exact`] for sources to 10 000 ft and heights
/// to 5000 ft.
///
/// # Degenerate cases
/// Warmer than standard it is negative, which nobody subtracts in practice. No height, no correction.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, from memory; with `E = 0` it gives ICAO's
/// own table.
///
/// # Example
/// ```
/// use lubberline::air::cold_temperature_correction;
/// use lubberline::value::{Elevation, HeightAboveSource, Temperature, units::*};
/// assert_eq!(format!("{:.0}", cold_temperature_correction(HeightAboveSource::new(feet(3_000.0))?, Temperature::new(degrees_celsius(-30.0))?, Elevation::new(feet(0.0))?).get::<foot>()), "562");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction(
    height: HeightAboveSource,
    temperature: Temperature,
    elevation: Elevation,
) -> Length {
    let elevation_ft = elevation.value().get::<foot>();
    feet(formula_ft(height.value().get::<foot>(), temperature.value().get::<degree_celsius>(), elevation_ft))
}

fn formula_ft(height_ft: f64, temperature_degc: f64, elevation_ft: f64) -> f64 {
    let at_sea_level_degc = temperature_degc + LAPSE_C_FT * elevation_ft;
    let mean_k = 273.0 + at_sea_level_degc - 0.5 * LAPSE_C_FT * (height_ft + elevation_ft);
    height_ft * (15.0 - at_sea_level_degc) / mean_k
}

/// The correction as the published table has it: the formula for a source at sea level, rounded up to the next
/// 10 ft.
///
/// Between the table's own heights (200 to 5000 ft) and temperatures (10 to -50 °C) it is the formula rounded
/// likewise.
///
/// # Accuracy
/// All 98 cells of the table.
///
/// # Degenerate cases
/// Warmer than 15 °C there is no correction, and none without height.
///
/// # Source
/// FAA Aeronautical Information Manual, TBL 7-3-1, ICAO Cold Temperature Error Table, from ICAO Doc 8168 volume
/// I, Table III-1-4-1 b).
///
/// # Example
/// ```
/// use lubberline::air::cold_temperature_correction_tabulated;
/// use lubberline::value::{HeightAboveSource, Temperature, units::*};
/// assert_eq!(format!("{:.0}", cold_temperature_correction_tabulated(HeightAboveSource::new(feet(3_000.0))?, Temperature::new(degrees_celsius(-30.0))?).get::<foot>()), "570");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_tabulated(height: HeightAboveSource, temperature: Temperature) -> Length {
    let height_ft = height.value().get::<foot>();
    let exact_ft = formula_ft(height_ft, temperature.value().get::<degree_celsius>(), 0.0);
    // The unit's rounding must not lift a whole ten to the next.
    feet(10.0 * (exact_ft.max(0.0) / 10.0 - 1e-9).ceil().max(0.0))
}

/// The correction by the rule of 4 percent of the height for each 10 °C below standard at the source.
///
/// # Accuracy
/// As published: on the safe side above -15 °C at the source.
///
/// # Degenerate cases
/// Warmer than standard it is negative.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, 4.3.1, read in a quotation.
///
/// # Example
/// ```
/// use lubberline::air::cold_temperature_correction_by_rule;
/// use lubberline::value::{Elevation, HeightAboveSource, Temperature, units::*};
/// assert_eq!(format!("{:.0}", cold_temperature_correction_by_rule(HeightAboveSource::new(feet(3_000.0))?, Temperature::new(degrees_celsius(-30.0))?, Elevation::new(feet(0.0))?).get::<foot>()), "540");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_by_rule(
    height: HeightAboveSource,
    temperature: Temperature,
    elevation: Elevation,
) -> Length {
    height.value() * (-0.004 * deviation_k(temperature, elevation))
}

/// The exact correction: the height on the altimeter at which the aircraft is truly as high as charted, less
/// that height.
///
/// In a column of air that is as much colder than standard all the way up as it is at the source, at standard
/// pressure: the inverse of [`super::true_altitude`].
///
/// # Accuracy
/// Rounding for such a column.
///
/// # Degenerate cases
/// Warmer than standard it is negative. No height, no correction.
///
/// # Source
/// Hydrostatic balance with the layers of ICAO Doc 7488/3.
///
/// # Example
/// ```
/// use lubberline::air::cold_temperature_correction_exact;
/// use lubberline::value::{Elevation, HeightAboveSource, Temperature, units::*};
/// assert_eq!(format!("{:.0}", cold_temperature_correction_exact(HeightAboveSource::new(feet(3_000.0))?, Temperature::new(degrees_celsius(-30.0))?, Elevation::new(feet(0.0))?).get::<foot>()), "563");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_exact(
    height: HeightAboveSource,
    temperature: Temperature,
    elevation: Elevation,
) -> Length {
    let foot_m = elevation.value().get::<meter>();
    let height_m = height.value().get::<meter>();
    metres(altitude_above_m(foot_m, height_m, deviation_k(temperature, elevation)) - foot_m - height_m)
}

fn deviation_k(temperature: Temperature, elevation: Elevation) -> f64 {
    temperature.value().get::<kelvin>() - standard_temperature_k(elevation.value().get::<meter>())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::degrees_celsius;

    fn inputs(
        height_ft: f64,
        temperature_degc: f64,
        elevation_ft: f64,
    ) -> (HeightAboveSource, Temperature, Elevation) {
        (
            HeightAboveSource::new(feet(height_ft)).unwrap(),
            Temperature::new(degrees_celsius(temperature_degc)).unwrap(),
            Elevation::new(feet(elevation_ft)).unwrap(),
        )
    }

    /// The document's own statement of the formula's accuracy, from a quotation of it. It names no temperature:
    /// 65 K below standard the formula is 5.1 percent short for a source at 10 000 ft.
    #[test]
    fn the_formula_is_within_five_percent_of_exact() {
        for elevation_ft in [0.0, 2_000.0, 5_000.0, 10_000.0] {
            for height_ft in [200.0, 1_000.0, 3_000.0, 5_000.0] {
                for deviation_k in [-15.0, -30.0, -50.0] {
                    let standard_degc = standard_temperature_k(elevation_ft * 0.3048) - 273.15;
                    let (height, temperature, elevation) =
                        inputs(height_ft, standard_degc + deviation_k, elevation_ft);
                    let ratio = cold_temperature_correction(height, temperature, elevation).get::<foot>()
                        / cold_temperature_correction_exact(height, temperature, elevation).get::<foot>();
                    assert!((ratio - 1.0).abs() < 0.05, "{elevation_ft} {height_ft} {deviation_k}: {ratio}");
                }
            }
        }
    }

    /// ICAO Doc 8168: 4 percent per 10 °C; at 1000 ft and 0 °C, 60 ft, as its table.
    #[test]
    fn the_rule_of_four_percent() {
        let (height, temperature, elevation) = inputs(1_000.0, 0.0, 0.0);
        let correction = cold_temperature_correction_by_rule(height, temperature, elevation);
        assert!((correction.get::<foot>() - 60.0).abs() < 1e-9);
    }

    #[test]
    fn warm_air_and_no_height_need_none() {
        let (height, temperature, _) = inputs(3_000.0, 20.0, 0.0);
        assert_eq!(cold_temperature_correction_tabulated(height, temperature).get::<foot>(), 0.0);
        let (height, temperature, elevation) = inputs(0.0, -30.0, 500.0);
        assert_eq!(cold_temperature_correction_tabulated(height, temperature).get::<foot>(), 0.0);
        assert!(cold_temperature_correction_exact(height, temperature, elevation).get::<foot>().abs() < 1e-9);
    }
}
