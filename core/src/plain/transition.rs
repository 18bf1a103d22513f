//! The transition level, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::air;
use crate::value::units::foot;
use crate::value::{AltimeterSetting, IndicatedAltitude, LevelStep, TransitionLayer};

/// The transition level as a pressure altitude: the lowest flight level far enough above the transition altitude.
///
/// The lowest multiple of the step at or above the transition altitude plus the least layer, both measured with
/// the setting. The lowest usable flight levels of the United States are this from 18 000 ft: 14 CFR 91.121
/// (2014) in steps of 500 ft, the AIM of 2023, TBL 7-2-1, in steps of 1000 ft.
///
/// # Arguments
/// - `transition_altitude_ft`: transition altitude, -50 000 to 300 000
/// - `altimeter_setting_hpa`: what the altimeter is set to, 400 to 1200
/// - `least_layer_ft`: least height of the transition layer, 0 to 10 000 (default 0.0)
/// - `step_ft`: flight levels are multiples of this, 100 to 10 000 (default 500.0)
///
/// # Accuracy
/// Exact. A setting of 29.92 inches is 1.3 ft short of standard, which costs a level where the two should
/// coincide: give 1013.25.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a level beyond the range of pressure altitudes.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume I, Part III, and Doc 4444, from memory; states set the layer and the step.
///
/// # Example
/// ```
/// # use lubberline::plain::transition_level_ft;
/// assert_eq!(format!("{:.0}", transition_level_ft(5_000.0, 1_003.0, 0.0, 500.0)?), "5500");
/// assert_eq!(format!("{:.0}", transition_level_ft(18_000.0, 998.0, 0.0, 500.0)?), "18500");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn transition_level_ft(
    transition_altitude_ft: f64,
    altimeter_setting_hpa: f64,
    least_layer_ft: f64,
    step_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[transition_altitude_ft, altimeter_setting_hpa, least_layer_ft, step_ft]) {
        return Ok(f64::NAN);
    }
    let altitude = IndicatedAltitude::named("transition_altitude_ft", transition_altitude_ft)?;
    let setting = AltimeterSetting::named("altimeter_setting_hpa", altimeter_setting_hpa)?;
    let layer = TransitionLayer::named("least_layer_ft", least_layer_ft)?;
    let step = LevelStep::named("step_ft", step_ft)?;
    Ok(air::transition_level(altitude, setting, layer, step)?.value().get::<foot>())
}
