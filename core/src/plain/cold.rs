//! What an altimeter over-reads in the cold, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air;
use crate::value::units::foot;
use crate::value::{Elevation, HeightAboveSource, Temperature};

/// Cold-temperature correction by ICAO's formula, to add to an altitude on the procedure.
///
/// `H (15 - t0)/(273 + t0 - 0.5 L (H + E))` with height `H`, elevation `E` of the source, L = 0.00198 degC/ft
/// and `t0 = t + L E`. Offered beside it: [`cold_temperature_correction_tabulated_ft`],
/// [`cold_temperature_correction_rule_ft`] and, exact, [`cold_temperature_correction_exact_ft`].
///
/// # Arguments
/// - `height_ft`: charted height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the altimeter setting source, -200 to 200
/// - `elevation_ft`: elevation of the altimeter setting source, -16 500 to 60 000 (default 0.0)
///
/// # Accuracy
/// The document gives 5 percent, for sources to 10 000 ft and heights to 5000 ft.
///
/// # Degenerate cases
/// Warmer than standard it is negative, which nobody subtracts in practice. No height, no correction.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, from memory; it reproduces ICAO's table.
///
/// # Example
/// ```
/// # use lubberline::plain::cold_temperature_correction_ft;
/// assert_eq!(format!("{:.1}", cold_temperature_correction_ft(1_500.0, -20.0, 0.0)?), "208.7");
/// assert_eq!(format!("{:.1}", cold_temperature_correction_ft(1_500.0, -20.0, 3_000.0)?), "171.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[height_ft, temperature_degc, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveSource::named("height_ft", height_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::cold_temperature_correction(height, temperature, elevation).get::<foot>())
}

/// Cold-temperature correction as the published table has it: rounded up to the next 10 ft.
///
/// The formula of [`cold_temperature_correction_ft`] for a source at sea level, rounded up; between the table's
/// own heights (200 to 5000 ft) and temperatures (10 to -50 degC) likewise. To read off between cells instead, take
/// `cold_temperature_correction_by_method_ft`.
///
/// # Arguments
/// - `height_ft`: charted height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the altimeter setting source, -200 to 200
///
/// # Accuracy
/// All 98 cells of the table.
///
/// # Degenerate cases
/// Warmer than 15 degC there is no correction, and none without height.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// FAA Aeronautical Information Manual (20 April 2023), TBL 7-3-1, ICAO Cold Temperature Error Table, from ICAO Doc 8168 Vol I (5th ed. 2006),
/// Table III-1-4-1 b).
///
/// # Example
/// ```
/// # use lubberline::plain::cold_temperature_correction_tabulated_ft;
/// assert_eq!(format!("{:.0}", cold_temperature_correction_tabulated_ft(1_500.0, -20.0)?), "210");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_tabulated_ft(height_ft: f64, temperature_degc: f64) -> Result<f64, Error> {
    if any_nan(&[height_ft, temperature_degc]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveSource::named("height_ft", height_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    Ok(air::cold_temperature_correction_tabulated(height, temperature).get::<foot>())
}

/// Cold-temperature correction by the rule of 4 percent for each 10 degC below standard at the source.
///
/// `0.04 H (t_standard - t)/10`.
///
/// # Arguments
/// - `height_ft`: charted height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the altimeter setting source, -200 to 200
/// - `elevation_ft`: elevation of the altimeter setting source, -16 500 to 60 000 (default 0.0)
///
/// # Accuracy
/// As published: on the safe side above -15 degC at the source.
///
/// # Degenerate cases
/// Warmer than standard it is negative.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, 4.3.1, read in a quotation.
///
/// # Example
/// ```
/// # use lubberline::plain::cold_temperature_correction_rule_ft;
/// assert_eq!(format!("{:.1}", cold_temperature_correction_rule_ft(1_500.0, -10.0, 0.0)?), "150.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_rule_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[height_ft, temperature_degc, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveSource::named("height_ft", height_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::cold_temperature_correction_by_rule(height, temperature, elevation).get::<foot>())
}

/// Cold-temperature correction, exact for air that is as cold against standard all the way up as at the source.
///
/// The indicated height at which the true height is the charted one, less that: the inverse of
/// [`super::true_altitude_ft`] for a source at standard pressure.
///
/// # Arguments
/// - `height_ft`: charted height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the altimeter setting source, -200 to 200
/// - `elevation_ft`: elevation of the altimeter setting source, -16 500 to 60 000 (default 0.0)
///
/// # Accuracy
/// Rounding for such a column.
///
/// # Degenerate cases
/// Warmer than standard it is negative. No height, no correction.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).
///
/// # Example
/// ```
/// # use lubberline::plain::cold_temperature_correction_exact_ft;
/// assert_eq!(format!("{:.1}", cold_temperature_correction_exact_ft(1_500.0, -20.0, 0.0)?), "208.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn cold_temperature_correction_exact_ft(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[height_ft, temperature_degc, elevation_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveSource::named("height_ft", height_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let elevation = Elevation::named("elevation_ft", elevation_ft)?;
    Ok(air::cold_temperature_correction_exact(height, temperature, elevation).get::<foot>())
}
