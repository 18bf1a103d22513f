//! The published table of cold-temperature corrections, and the ways in which sources read it.

use super::cold::{
    cold_temperature_correction, cold_temperature_correction_by_rule, cold_temperature_correction_exact,
    cold_temperature_correction_tabulated,
};
use crate::value::units::{Length, degree_celsius, feet, foot};
use crate::value::{Elevation, HeightAboveSource, Temperature, choice};

choice! {
    /// How a cold-temperature correction is found. Sources do not agree: 8 794 ft above an airport at -12 °C are worth 940 ft by the formula at
    /// sea level, but its 5 000 ft column is all that is asked for: 527 ft by the formula, 530 by the table, 534 read off between its cells,
    /// 500 as printed.
    ColdTemperatureMethod {
        /// The formula with the elevation of the source, ICAO Doc 8168 Vol I (5th ed. 2006), Part III Section 1 Chapter 4, from memory.
        Formula = 0: "formula",
        /// The formula at sea level, rounded up to 10 ft as the cells of the table are: Doc 8168 Vol I, Table III-1-4-1 b), reproduced as FAA
        /// Aeronautical Information Manual (AIM) of 2023, TBL 7-3-1.
        Table = 1: "table",
        /// Read off evenly between the cells; the 5 000 ft column above it. AIM of 20 April 2023, 7-3-6 ("interpolation"), and the paragraph on
        /// acceptable use of the table.
        Interpolated = 2: "interpolated",
        /// That, rounded to the nearest 100 ft, which the same paragraph allows except for a minimum. It can come out too small.
        InterpolatedNearestHundred = 3: "interpolated_nearest_hundred",
        /// That, rounded up to 100 ft, which the same paragraph allows for a minimum too.
        InterpolatedUpToHundred = 4: "interpolated_up_to_hundred",
        /// 4 percent of the height for each 10 °C below standard, Doc 8168 Vol I, Part III Section 1 Chapter 4, 4.3.1, read in a quotation.
        FourPercent = 5: "four_percent",
        /// Hydrostatic balance in a column as much colder than standard as the air at the source. Derived.
        Exact = 6: "exact",
    }
}

/// Heights above the airport of the table's columns, in feet; before the first stands the ground.
const HEIGHTS_FT: [f64; 15] = [
    0.0, 200.0, 300.0, 400.0, 500.0, 600.0, 700.0, 800.0, 900.0, 1_000.0, 1_500.0, 2_000.0, 3_000.0, 4_000.0,
    5_000.0,
];

/// Rows of the table: reported temperature in °C, corrections in feet. Before the first stands the standard temperature.
const ROWS: [(f64, [f64; 15]); 8] = [
    (15.0, [0.0; 15]),
    (10.0, [0.0, 10.0, 10.0, 10.0, 10.0, 20.0, 20.0, 20.0, 20.0, 20.0, 30.0, 40.0, 60.0, 80.0, 90.0]),
    (0.0, [0.0, 20.0, 20.0, 30.0, 30.0, 40.0, 40.0, 50.0, 50.0, 60.0, 90.0, 120.0, 170.0, 230.0, 280.0]),
    (-10.0, [0.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 150.0, 200.0, 290.0, 390.0, 490.0]),
    (
        -20.0,
        [0.0, 30.0, 50.0, 60.0, 70.0, 90.0, 100.0, 120.0, 130.0, 140.0, 210.0, 280.0, 420.0, 570.0, 710.0],
    ),
    (
        -30.0,
        [0.0, 40.0, 60.0, 80.0, 100.0, 120.0, 140.0, 150.0, 170.0, 190.0, 280.0, 380.0, 570.0, 760.0, 950.0],
    ),
    (
        -40.0,
        [
            0.0, 50.0, 80.0, 100.0, 120.0, 150.0, 170.0, 190.0, 220.0, 240.0, 360.0, 480.0, 720.0, 970.0,
            1_210.0,
        ],
    ),
    (
        -50.0,
        [
            0.0, 60.0, 90.0, 120.0, 150.0, 180.0, 210.0, 240.0, 270.0, 300.0, 450.0, 590.0, 890.0, 1_190.0,
            1_500.0,
        ],
    ),
];

/// Evenly between two of the points, of which the `x` rise; none outside of them.
fn between(mut points: impl Iterator<Item = (f64, f64)>, x: f64) -> Option<f64> {
    let (mut x0, mut y0) = points.next()?;
    if x < x0 {
        return None;
    }
    for (x1, y1) in points {
        if x <= x1 {
            return Some(y0 + (y1 - y0) * (x - x0) / (x1 - x0));
        }
        (x0, y0) = (x1, y1);
    }
    None
}

fn interpolated_ft(height_ft: f64, temperature_degc: f64) -> Option<f64> {
    let column_ft = height_ft.clamp(0.0, 5_000.0);
    if temperature_degc >= 15.0 {
        return Some(0.0);
    }
    let at_height = |cells: &[f64; 15]| {
        between(HEIGHTS_FT.iter().copied().zip(cells.iter().copied()), column_ft).unwrap_or(f64::NAN)
    };
    between(ROWS.iter().rev().map(|(row_degc, cells)| (*row_degc, at_height(cells))), temperature_degc)
}

/// The cold-temperature correction by a named method, to be added to an altitude of a procedure.
///
/// # Accuracy
/// As published; by how much the methods differ stands at [`ColdTemperatureMethod`] and in `docs/air.md`.
///
/// # Degenerate cases
/// The methods that read the table have an answer from -50 °C on, and nothing warmer than 15 °C; between 10 °C and that they go evenly to
/// nothing, as below 200 ft. They take the 5 000 ft column for greater heights, and no account of the elevation. The others are as their
/// own functions say.
///
/// # Source
/// Named at [`ColdTemperatureMethod`].
///
/// # Example
/// ```
/// use lubberline::air::{ColdTemperatureMethod, cold_temperature_correction_by_method};
/// use lubberline::value::{Elevation, HeightAboveSource, Temperature, units::*};
/// let height = HeightAboveSource::new(feet(8_794.0))?;
/// let (temperature, elevation) = (Temperature::new(degrees_celsius(-12.0))?, Elevation::new(feet(3_206.0))?);
/// let by = |method| cold_temperature_correction_by_method(height, temperature, elevation, method);
/// assert!(by(ColdTemperatureMethod::Interpolated).is_some_and(|correction| correction.get::<foot>().round() == 534.0));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_by_method(
    height: HeightAboveSource,
    temperature: Temperature,
    elevation: Elevation,
    method: ColdTemperatureMethod,
) -> Option<Length> {
    let read_off_ft =
        || interpolated_ft(height.value().get::<foot>(), temperature.value().get::<degree_celsius>());
    // What unit conversion leaves must not lift a whole hundred to the next.
    Some(match method {
        ColdTemperatureMethod::Formula => cold_temperature_correction(height, temperature, elevation),
        ColdTemperatureMethod::Table => cold_temperature_correction_tabulated(height, temperature),
        ColdTemperatureMethod::Interpolated => feet(read_off_ft()?),
        ColdTemperatureMethod::InterpolatedNearestHundred => feet(100.0 * (read_off_ft()? / 100.0).round()),
        ColdTemperatureMethod::InterpolatedUpToHundred => {
            feet(100.0 * (read_off_ft()? / 100.0 - 1e-9).ceil().max(0.0))
        }
        ColdTemperatureMethod::FourPercent => {
            cold_temperature_correction_by_rule(height, temperature, elevation)
        }
        ColdTemperatureMethod::Exact => cold_temperature_correction_exact(height, temperature, elevation),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::degrees_celsius;

    fn by(method: ColdTemperatureMethod, height_ft: f64, temperature_degc: f64) -> Option<f64> {
        let height = HeightAboveSource::new(feet(height_ft)).unwrap();
        let temperature = Temperature::new(degrees_celsius(temperature_degc)).unwrap();
        let elevation = Elevation::new(feet(0.0)).unwrap();
        cold_temperature_correction_by_method(height, temperature, elevation, method)
            .map(|correction| correction.get::<foot>())
    }

    /// FAA AIM TBL 7-3-1, whole, read in transcriptions that agree; its cells by the formula are rows of the published values too.
    #[test]
    fn every_cell_is_read_off_as_printed_and_is_the_formula_rounded_up() {
        for (temperature_degc, cells) in &ROWS[1..] {
            for (height_ft, cell_ft) in HEIGHTS_FT.iter().zip(cells).skip(1) {
                for method in [ColdTemperatureMethod::Table, ColdTemperatureMethod::Interpolated] {
                    let found_ft = by(method, *height_ft, *temperature_degc).unwrap();
                    assert!((found_ft - cell_ft).abs() < 1e-6, "{method:?} {temperature_degc} {height_ft}");
                }
            }
        }
    }

    /// FAA AIM of 20 April 2023, 7-3-6: 2 994 ft and -12 °C are worth 300 ft, 8 794 ft are worth 500, 1 314 ft 150 or 200.
    #[test]
    fn the_published_example_in_its_own_rounding() {
        use ColdTemperatureMethod::{Interpolated, InterpolatedNearestHundred, InterpolatedUpToHundred};
        for (height_ft, read_ft, nearest_ft, up_ft) in
            [(2_994.0, 315.4, 300.0, 400.0), (8_794.0, 534.0, 500.0, 600.0), (1_314.0, 141.9, 100.0, 200.0)]
        {
            assert!((by(Interpolated, height_ft, -12.0).unwrap() - read_ft).abs() < 0.05, "{height_ft}");
            assert!((by(InterpolatedNearestHundred, height_ft, -12.0).unwrap() - nearest_ft).abs() < 1e-6);
            assert!((by(InterpolatedUpToHundred, height_ft, -12.0).unwrap() - up_ft).abs() < 1e-6);
        }
    }

    #[test]
    fn beyond_the_table_there_is_none_and_warm_air_needs_none() {
        use ColdTemperatureMethod::{Interpolated, InterpolatedUpToHundred};
        assert_eq!(by(Interpolated, 1_000.0, -50.1), None);
        assert_eq!(by(Interpolated, 1_000.0, 20.0), Some(0.0));
        assert_eq!(by(InterpolatedUpToHundred, 0.0, -30.0), Some(0.0));
        assert!(
            (by(InterpolatedUpToHundred, 1_000.0, -50.0).unwrap() - 300.0).abs() < 1e-6,
            "a whole hundred"
        );
    }
}
