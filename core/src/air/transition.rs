//! The transition level: the lowest flight level far enough above the transition altitude.

use super::altimeter::setting_altitude_m;
use crate::Error;
use crate::value::units::{feet, foot, metres};
use crate::value::{AltimeterSetting, IndicatedAltitude, LevelStep, PressureAltitude, TransitionLayer};

/// A level that falls short by less than this is taken: a foot's last digits are not a reason to lose a level.
const SLACK_FT: f64 = 0.01;

/// The lowest flight level at or above the transition altitude plus the least transition layer, as a pressure
/// altitude.
///
/// The flight levels are the multiples of the step; the transition altitude is measured with the altimeter
/// setting.
///
/// # Accuracy
/// Exact. A setting of 29.92 inches is 1.3 ft short of standard, which loses a level where the two should
/// coincide: give the standard setting for it.
///
/// # Errors
/// [`Error::OutOfRange`] of a level beyond the range of pressure altitudes.
///
/// # Source
/// ICAO Doc 8168 (PANS-OPS) volume I, Part III, and Doc 4444, from memory. States set the layer and the step.
/// The lowest usable flight levels of the United States are this with an altitude of 18 000 ft: 14 CFR 91.121
/// (2014) in steps of 500 ft, the AIM of 2023, TBL 7-2-1, in steps of 1000 ft.
///
/// # Example
/// ```
/// use lubberline::air::transition_level;
/// use lubberline::value::{AltimeterSetting, IndicatedAltitude, LevelStep, TransitionLayer, units::*};
/// let level = transition_level(
///     IndicatedAltitude::new(feet(5_000.0))?,
///     AltimeterSetting::new(hectopascals(1_003.0))?,
///     TransitionLayer::new(feet(0.0))?,
///     LevelStep::new(feet(500.0))?,
/// )?;
/// assert_eq!(format!("{:.0}", level.value().get::<foot>()), "5500");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn transition_level(
    altitude: IndicatedAltitude,
    setting: AltimeterSetting,
    layer: TransitionLayer,
    step: LevelStep,
) -> Result<PressureAltitude, Error> {
    let least = altitude.value() + layer.value() + metres(setting_altitude_m(setting));
    let step_ft = step.value().get::<foot>();
    PressureAltitude::new(feet(step_ft * ((least.get::<foot>() - SLACK_FT) / step_ft).ceil()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{Pressure, inch_of_mercury};

    fn lowest_ft(setting: AltimeterSetting, step_ft: f64) -> f64 {
        let level = transition_level(
            IndicatedAltitude::new(feet(18_000.0)).unwrap(),
            setting,
            TransitionLayer::new(feet(0.0)).unwrap(),
            LevelStep::new(feet(step_ft)).unwrap(),
        );
        level.unwrap().value().get::<foot>().round()
    }

    fn inches(setting: f64) -> AltimeterSetting {
        AltimeterSetting::new(Pressure::new::<inch_of_mercury>(setting)).unwrap()
    }

    /// 14 CFR 91.121(b), edition of 2014: the lower end of each row gives the row's level; so does its upper
    /// end, but that the table gives half a thousand feet for anything below standard.
    #[test]
    fn the_lowest_usable_levels_of_the_regulation() {
        assert_eq!(lowest_ft(AltimeterSetting::standard(), 500.0), 18_000.0);
        for (high, low, level_ft) in [
            (29.91, 29.42, 18_500.0),
            (29.41, 28.92, 19_000.0),
            (28.91, 28.42, 19_500.0),
            (28.41, 27.92, 20_000.0),
            (27.91, 27.42, 20_500.0),
            (27.41, 26.92, 21_000.0),
        ] {
            assert_eq!(lowest_ft(inches(low), 500.0), level_ft, "{low}");
            assert!(lowest_ft(inches(high), 500.0) <= level_ft, "{high}");
        }
    }

    /// FAA AIM of 20 April 2023, TBL 7-2-1, which is coarser.
    #[test]
    fn the_lowest_usable_levels_of_the_manual() {
        for (high, low, level_ft) in [(29.91, 28.92, 19_000.0), (28.91, 27.92, 20_000.0)] {
            assert_eq!(lowest_ft(inches(low), 1_000.0), level_ft, "{low}");
            assert!(lowest_ft(inches(high), 1_000.0) <= level_ft, "{high}");
        }
    }
}
