//! Winds at any number of levels in plain numbers, for what is flown through them.

use crate::Error;
use crate::value::units::foot;
use crate::value::{Bearing, PressureAltitude, Quantity, TrueNorth, WindSpeed};
use crate::wind::{Wind, WindLevel, WindsAloft};

/// The wind at one level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindLevelInput {
    /// Pressure altitude of the level, -16 420 to 262 467.2.
    pub pressure_altitude_ft: f64,
    /// Where its wind blows from, true.
    pub wind_from_deg: f64,
    /// Speed of its wind, 0 to 1000.
    pub wind_speed_kt: f64,
}

/// The typed winds of the levels.
///
/// # Errors
/// No level, or more than a thousand; else the first level that is wrong, counted from one, and what is wrong with it: a value outside
/// its range or not a number, an altitude not above that of the level before.
pub(super) fn winds_aloft(levels: &[WindLevelInput]) -> Result<WindsAloft<TrueNorth>, Error> {
    Quantity::WindLevels.check("wind_level_count", levels.len() as f64)?;
    let mut typed: Vec<WindLevel<TrueNorth>> = Vec::with_capacity(levels.len());
    for (number, level) in (1..).zip(levels) {
        let level = typed_level(level).map_err(|error| error.at("wind level", number))?;
        if let Some(before) = typed.last()
            && level.altitude <= before.altitude
        {
            return Err(Error::WindLevelNotAbove {
                level: number,
                altitude_ft: level.altitude.value().get::<foot>(),
                before_ft: before.altitude.value().get::<foot>(),
            });
        }
        typed.push(level);
    }
    let lowest = typed.remove(0);
    WindsAloft::new(lowest, typed)
}

/// Checks winds by level as what flies through them does.
///
/// # Errors
/// As flying does: no level or more than a thousand, a value outside its range, a level that is not above the one before. The error
/// names the level, counted from one.
///
/// # Example
/// ```
/// use lubberline::plain::{WindLevelInput, check_wind_levels};
/// let level = |pressure_altitude_ft, wind_speed_kt| WindLevelInput { pressure_altitude_ft, wind_from_deg: 270.0, wind_speed_kt };
/// assert!(check_wind_levels(&[level(3_000.0, 15.0), level(6_000.0, 25.0), level(9_000.0, 40.0)]).is_ok());
/// let error = check_wind_levels(&[level(3_000.0, 15.0), level(6_000.0, -25.0)]).unwrap_err();
/// assert_eq!(error.to_string(), "wind level 2: wind_speed_kt is -25 kt; allowed: from 0.0 to 1000.0 kt");
/// let error = check_wind_levels(&[level(3_000.0, 15.0), level(3_000.0, 25.0)]).unwrap_err();
/// assert_eq!(error.to_string(), "wind level 2 is at 3000 ft; allowed: above the level before it, at 3000 ft");
/// ```
pub fn check_wind_levels(levels: &[WindLevelInput]) -> Result<(), Error> {
    winds_aloft(levels).map(|_| ())
}

fn typed_level(level: &WindLevelInput) -> Result<WindLevel<TrueNorth>, Error> {
    Ok(WindLevel {
        altitude: PressureAltitude::named("pressure_altitude_ft", level.pressure_altitude_ft)?,
        wind: Wind {
            from: Bearing::named("wind_from_deg", level.wind_from_deg)?,
            speed: WindSpeed::named("wind_speed_kt", level.wind_speed_kt)?,
        },
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn levels(altitudes_ft: &[f64]) -> Vec<WindLevelInput> {
        let level = |&pressure_altitude_ft| WindLevelInput {
            pressure_altitude_ft,
            wind_from_deg: 270.0,
            wind_speed_kt: 20.0,
        };
        altitudes_ft.iter().map(level).collect()
    }

    #[test]
    fn the_level_that_is_wrong_is_named() {
        let mut three = levels(&[3_000.0, 6_000.0, 9_000.0]);
        three[2].wind_from_deg = f64::NAN;
        let refused = check_wind_levels(&three).unwrap_err();
        assert!(
            matches!(
                refused,
                Error::OutOfRangeAt { item: "wind level", number: 3, quantity: Quantity::Bearing, .. }
            ),
            "{refused}"
        );
        assert_eq!(refused.code(), Quantity::Bearing.code());
        assert_eq!(refused.parameter(), Some("wind_from_deg"));
        for second_ft in [3_000.0, 2_999.0] {
            let refused = check_wind_levels(&levels(&[3_000.0, second_ft, 9_000.0])).unwrap_err();
            assert!(matches!(refused, Error::WindLevelNotAbove { level: 2, .. }), "{refused}");
            assert_eq!(refused.code(), -107);
        }
    }

    #[test]
    fn there_is_one_level_at_least_and_a_thousand_at_most() {
        let many: Vec<f64> = (0..=1000).map(f64::from).collect();
        assert!(check_wind_levels(&levels(&many[..1000])).is_ok());
        assert!(check_wind_levels(&levels(&many[..1])).is_ok());
        for refused in [levels(&many), Vec::new()] {
            let error = check_wind_levels(&refused).unwrap_err();
            assert_eq!(error.parameter(), Some("wind_level_count"));
        }
    }
}
