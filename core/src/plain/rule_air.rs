//! Plain functions of the rules of thumb of altimetry, beside the exact answers, term by term.

use super::{any_nan, outputs};
use crate::Error;
use crate::rules;
use crate::value::units::foot;
use crate::value::{
    AltimeterSetting, Elevation, HeightAboveSource, IndicatedAltitude, PressureAltitude, Temperature,
};

outputs! {
    /// The rule of density altitude beside the exact altitude: what [`rule_density_altitude_error`] gives. The error is the rule less the exact answer.
    RuleDensityAltitudeError {
        /// The rule's answer.
        rule_ft,
        /// The exact answer.
        exact_ft,
        /// The error: the sum of the terms.
        error_ft,
        /// The standard temperature as 15 less 2 degrees for 1000 ft.
        standard_ft,
        /// 120 ft to the degree for 118.6.
        slope_ft,
        /// A straight line for a curve.
        curve_ft,
    }
}

/// The rule of density altitude beside the density altitude of dry air, term by term.
///
/// The rule of `density_altitude_rule_ft` less `density_altitude_ft`.
///
/// # Arguments
/// - `pressure_altitude_ft`: pressure altitude, -16 420 to 262 467.2
/// - `temperature_degc`: temperature of the air, -200 to 200
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// In the stratosphere a degree is 96 ft, which stands in the last term.
///
/// # Errors
/// A value outside its range, a temperature more than 150 K from standard, or a density altitude outside -5 to 80 km.
///
/// # Source
/// The rule: common practice. The exact altitude: ICAO Doc 7488/3.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_density_altitude_error;
/// assert_eq!(format!("{:.0}", rule_density_altitude_error(6_000.0, 13.0)?.error_ft), "53");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_density_altitude_error(
    pressure_altitude_ft: f64,
    temperature_degc: f64,
) -> Result<RuleDensityAltitudeError, Error> {
    if any_nan(&[pressure_altitude_ft, temperature_degc]) {
        return Ok(RuleDensityAltitudeError::NAN);
    }
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let temperature = Temperature::named("temperature_degc", temperature_degc)?;
    let error = rules::density_altitude_error(altitude, temperature)?;
    let [standard, slope, curve] = error.terms;
    Ok(RuleDensityAltitudeError {
        rule_ft: error.rule.get::<foot>(),
        exact_ft: error.exact.get::<foot>(),
        error_ft: error.error().get::<foot>(),
        standard_ft: standard.get::<foot>(),
        slope_ft: slope.get::<foot>(),
        curve_ft: curve.get::<foot>(),
    })
}

outputs! {
    /// The rule of pressure altitude beside the exact altitude: what [`rule_pressure_altitude_error`] gives. The error is the rule less the exact answer.
    RulePressureAltitudeError {
        /// The rule's answer.
        rule_ft,
        /// The exact answer.
        exact_ft,
        /// The error: the sum of the terms.
        error_ft,
        /// 29.92 for 29.9213 inches.
        datum_ft,
        /// 1000 ft to the inch for 924.8.
        slope_ft,
        /// A straight line for a curve.
        curve_ft,
    }
}

/// The rule of pressure altitude beside the pressure altitude, term by term.
///
/// The rule of `pressure_altitude_rule_ft` less `pressure_altitude_ft`.
///
/// # Arguments
/// - `indicated_altitude_ft`: altitude that the altimeter shows, -50 000 to 300 000
/// - `altimeter_setting_hpa`: its setting, 400 to 1200
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// At the standard setting the first term is all: a foot.
///
/// # Errors
/// A value outside its range, or a pressure altitude outside -5 to 80 km.
///
/// # Source
/// The rule: CNATRA P-203. The exact altitude: ICAO Doc 7488/3.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_pressure_altitude_error;
/// assert_eq!(format!("{:.0}", rule_pressure_altitude_error(5_000.0, 1_000.0)?.error_ft), "26");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_pressure_altitude_error(
    indicated_altitude_ft: f64,
    altimeter_setting_hpa: f64,
) -> Result<RulePressureAltitudeError, Error> {
    if any_nan(&[indicated_altitude_ft, altimeter_setting_hpa]) {
        return Ok(RulePressureAltitudeError::NAN);
    }
    let altitude = IndicatedAltitude::named("indicated_altitude_ft", indicated_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let error = rules::pressure_altitude_error(altitude, setting)?;
    let [datum, slope, curve] = error.terms;
    Ok(RulePressureAltitudeError {
        rule_ft: error.rule.get::<foot>(),
        exact_ft: error.exact.get::<foot>(),
        error_ft: error.error().get::<foot>(),
        datum_ft: datum.get::<foot>(),
        slope_ft: slope.get::<foot>(),
        curve_ft: curve.get::<foot>(),
    })
}

outputs! {
    /// The rule of the cold-temperature correction beside the exact correction: what [`rule_cold_temperature_error`] gives. The error is the rule less the exact answer.
    RuleColdTemperatureError {
        /// The rule's answer.
        rule_ft,
        /// The exact answer.
        exact_ft,
        /// The error: the sum of the terms.
        error_ft,
        /// 4 percent for 10 degrees, where it is 10 degrees over the absolute temperature of the source.
        share_ft,
        /// The temperature of the source for that of the column above it.
        column_ft,
    }
}

/// The rule of the cold-temperature correction beside the exact correction, term by term.
///
/// The rule of `cold_temperature_correction_rule_ft` less `cold_temperature_correction_exact_ft`.
///
/// # Arguments
/// - `height_ft`: height above the altimeter setting source, 0 to 20 000
/// - `temperature_degc`: temperature at the source, -200 to 200
/// - `elevation_ft`: elevation of the source (default 0.0)
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// No height, no correction and no error.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The rule: ICAO Doc 8168 volume I, Part III Section 1 Chapter 4, 4.3.1. The exact correction: ICAO Doc 7488/3.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_cold_temperature_error;
/// assert_eq!(format!("{:.1}", rule_cold_temperature_error(1_500.0, -10.0, 0.0)?.error_ft), "6.6");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_cold_temperature_error(
    height_ft: f64,
    temperature_degc: f64,
    elevation_ft: f64,
) -> Result<RuleColdTemperatureError, Error> {
    if any_nan(&[height_ft, temperature_degc, elevation_ft]) {
        return Ok(RuleColdTemperatureError::NAN);
    }
    let error = rules::cold_temperature_correction_error(
        HeightAboveSource::named("height_ft", height_ft)?,
        Temperature::named("temperature_degc", temperature_degc)?,
        Elevation::named("elevation_ft", elevation_ft)?,
    );
    let [share, column] = error.terms;
    Ok(RuleColdTemperatureError {
        rule_ft: error.rule.get::<foot>(),
        exact_ft: error.exact.get::<foot>(),
        error_ft: error.error().get::<foot>(),
        share_ft: share.get::<foot>(),
        column_ft: column.get::<foot>(),
    })
}
