//! Winds aloft: a wind at each of several levels, and between them by components.

use super::Wind;
use crate::Error;
use crate::value::units::{foot, ratio};
use crate::value::{North, PressureAltitude};

/// The wind at one level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindLevel<N: North> {
    /// The level.
    pub altitude: PressureAltitude,
    /// Its wind.
    pub wind: Wind<N>,
}

/// The winds at ascending levels, at least one.
#[derive(Debug, Clone, PartialEq)]
pub struct WindsAloft<N: North> {
    lowest: WindLevel<N>,
    higher: Vec<WindLevel<N>>,
}

impl<N: North> WindsAloft<N> {
    /// The winds of the lowest level and of the others above it, in ascending order.
    ///
    /// # Errors
    /// [`Error::LevelsNotAscending`] if a level does not lie above the one before it.
    pub fn new(lowest: WindLevel<N>, higher: Vec<WindLevel<N>>) -> Result<Self, Error> {
        let mut below = lowest;
        for &level in &higher {
            ascending(below, level)?;
            below = level;
        }
        Ok(Self { lowest, higher })
    }

    /// One wind at every level.
    pub fn uniform(wind: Wind<N>) -> Self {
        let lowest = WindLevel { altitude: PressureAltitude::derived(Default::default()), wind };
        Self { lowest, higher: Vec::new() }
    }

    /// The wind at an altitude: its components change evenly with altitude between two levels.
    ///
    /// A wind that turns far between two levels is weaker in between, as where two streams of air mix;
    /// direction and speed interpolated each by itself would keep a strong wind through a reversal.
    ///
    /// # Accuracy
    /// Rounding, for winds that do change evenly.
    ///
    /// # Degenerate cases
    /// Below the lowest level its wind holds, and above the highest that one's. At a level it is the level's
    /// own wind to the last bit.
    ///
    /// # Source
    /// Common practice in forecasting.
    ///
    /// # Example
    /// ```
    /// use lubberline::value::{PressureAltitude, TrueBearing, WindSpeed, units::*};
    /// use lubberline::wind::{Wind, WindLevel, WindsAloft};
    /// let level = |altitude_ft, from_deg, speed_kt| -> Result<_, lubberline::Error> {
    ///     let wind = Wind { from: TrueBearing::new(degrees(from_deg))?, speed: WindSpeed::new(knots(speed_kt))? };
    ///     Ok(WindLevel { altitude: PressureAltitude::new(feet(altitude_ft))?, wind })
    /// };
    /// let aloft = WindsAloft::new(level(18_000.0, 270.0, 40.0)?, vec![level(24_000.0, 300.0, 60.0)?])?;
    /// let wind = aloft.at(PressureAltitude::new(feet(21_000.0))?);
    /// assert_eq!(format!("{:.1}", wind.from.angle().get::<degree>()), "288.1");
    /// assert_eq!(format!("{:.1}", wind.speed.value().get::<knot>()), "48.4");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn at(&self, altitude: PressureAltitude) -> Wind<N> {
        let mut below = self.lowest;
        for &level in &self.higher {
            if altitude < level.altitude {
                return between(below, level, altitude);
            }
            below = level;
        }
        below.wind
    }
}

fn ascending<N: North>(lower: WindLevel<N>, upper: WindLevel<N>) -> Result<(), Error> {
    if upper.altitude > lower.altitude {
        return Ok(());
    }
    Err(Error::LevelsNotAscending {
        lower_ft: lower.altitude.value().get::<foot>(),
        upper_ft: upper.altitude.value().get::<foot>(),
    })
}

/// The wind at an altitude from those of two levels: [`WindsAloft::at`] of the two, without a list.
///
/// # Errors
/// [`Error::LevelsNotAscending`] if the upper level does not lie above the lower one.
///
/// # Example
/// ```
/// use lubberline::value::{PressureAltitude, TrueBearing, TrueNorth, WindSpeed, units::*};
/// use lubberline::wind::{Wind, WindLevel, wind_between};
/// let level = |altitude_ft, from_deg, speed_kt| -> Result<WindLevel<TrueNorth>, lubberline::Error> {
///     let wind = Wind { from: TrueBearing::new(degrees(from_deg))?, speed: WindSpeed::new(knots(speed_kt))? };
///     Ok(WindLevel { altitude: PressureAltitude::new(feet(altitude_ft))?, wind })
/// };
/// let between = wind_between(level(18_000.0, 240.0, 40.0)?, level(24_000.0, 270.0, 60.0)?, PressureAltitude::new(feet(21_000.0))?)?;
/// // By components: less than the 50 kt of the mean.
/// assert_eq!(format!("{:.1}", between.speed.value().get::<knot>()), "48.4");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_between<N: North>(
    lower: WindLevel<N>,
    upper: WindLevel<N>,
    altitude: PressureAltitude,
) -> Result<Wind<N>, Error> {
    ascending(lower, upper)?;
    Ok(if altitude < upper.altitude { between(lower, upper, altitude) } else { upper.wind })
}

/// Between two levels that ascend, below the upper one.
fn between<N: North>(lower: WindLevel<N>, upper: WindLevel<N>, altitude: PressureAltitude) -> Wind<N> {
    let step = upper.altitude.value() - lower.altitude.value();
    let share = ((altitude.value() - lower.altitude.value()) / step).get::<ratio>();
    if share <= 0.0 || lower.wind == upper.wind {
        return lower.wind;
    }
    let (below, above) = (lower.wind.velocity_m_s(), upper.wind.velocity_m_s());
    Wind::of_velocity_m_s(below + (above - below) * share)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, knot, knots};
    use crate::value::{TrueBearing, TrueNorth, WindSpeed};

    fn level(altitude_ft: f64, from_deg: f64, speed_kt: f64) -> WindLevel<TrueNorth> {
        WindLevel { altitude: altitude(altitude_ft), wind: wind(from_deg, speed_kt) }
    }

    fn altitude(altitude_ft: f64) -> PressureAltitude {
        PressureAltitude::new(feet(altitude_ft)).unwrap()
    }

    fn wind(from_deg: f64, speed_kt: f64) -> Wind<TrueNorth> {
        Wind { from: TrueBearing::from_degrees(from_deg), speed: WindSpeed::new(knots(speed_kt)).unwrap() }
    }

    #[test]
    fn levels_have_their_own_winds_and_the_ends_hold() {
        let lowest = level(3_000.0, 200.0, 12.0);
        let aloft =
            WindsAloft::new(lowest, vec![level(6_000.0, 230.0, 20.0), level(9_000.0, 260.0, 33.0)]).unwrap();
        for (altitude_ft, expected) in [
            (-1_000.0, wind(200.0, 12.0)),
            (3_000.0, wind(200.0, 12.0)),
            (6_000.0, wind(230.0, 20.0)),
            (9_000.0, wind(260.0, 33.0)),
            (50_000.0, wind(260.0, 33.0)),
        ] {
            assert_eq!(aloft.at(altitude(altitude_ft)), expected, "{altitude_ft}");
        }
    }

    #[test]
    fn between_levels_the_components_change_evenly() {
        let (lower, upper) = (level(10_000.0, 350.0, 30.0), level(20_000.0, 20.0, 50.0));
        let found = wind_between(lower, upper, altitude(12_500.0)).unwrap().velocity_m_s();
        let (below, above) = (lower.wind.velocity_m_s(), upper.wind.velocity_m_s());
        assert!((found.north - (0.75 * below.north + 0.25 * above.north)).abs() < 1e-12);
        assert!((found.east - (0.75 * below.east + 0.25 * above.east)).abs() < 1e-12);
    }

    #[test]
    fn a_wind_that_reverses_passes_through_a_calm() {
        let aloft = WindsAloft::new(level(0.0, 90.0, 20.0), vec![level(8_000.0, 270.0, 20.0)]).unwrap();
        assert!(aloft.at(altitude(4_000.0)).speed.value().get::<knot>() < 1e-12);
        assert!((aloft.at(altitude(2_000.0)).speed.value().get::<knot>() - 10.0).abs() < 1e-12);
    }

    #[test]
    fn levels_out_of_order_are_refused() {
        for upper_ft in [5_000.0, 4_000.0] {
            let refused = WindsAloft::new(level(5_000.0, 0.0, 10.0), vec![level(upper_ft, 0.0, 10.0)]);
            assert!(matches!(refused, Err(Error::LevelsNotAscending { .. })), "{upper_ft}");
        }
    }

    #[test]
    fn a_uniform_wind_is_everywhere() {
        let aloft = WindsAloft::uniform(wind(123.0, 17.0));
        assert_eq!(aloft.at(altitude(40_000.0)), wind(123.0, 17.0));
    }
}
