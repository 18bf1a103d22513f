//! Winds aloft: a wind at each of several levels, and between them by components.

use super::Wind;
use crate::Error;
use crate::value::units::{degree, degrees, foot, ratio};
use crate::value::{Bearing, North, PressureAltitude, WindSpeed, choice};

choice! {
    /// What changes evenly between the winds of two levels. Neither is published as a rule: both are practice.
    WindInterpolation {
        /// The components to north and east, as where two streams of air mix. Common practice in forecasting; what the rest of the library takes.
        Components = 0: "components",
        /// Direction and speed, each by itself, the direction by the shorter way. Taught for flight planning, as in the worked answer of a Transport
        /// Canada practice examination for private pilots.
        DirectionAndSpeed = 1: "direction_and_speed",
    }
}

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

    /// The lowest level, and those above it in ascending order.
    pub fn levels(&self) -> (&WindLevel<N>, &[WindLevel<N>]) {
        (&self.lowest, &self.higher)
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

/// The wind at an altitude from those of two levels, by a named way of interpolating.
///
/// # Degenerate cases
/// Outside the levels the nearer one's wind holds. The direction of a calm is 0: by direction and speed it counts as one. Winds straight
/// against each other are turned through to the right.
///
/// # Errors
/// As [`wind_between`].
///
/// # Source
/// Named at [`WindInterpolation`].
///
/// # Example
/// ```
/// use lubberline::value::{PressureAltitude, TrueBearing, TrueNorth, WindSpeed, units::*};
/// use lubberline::wind::{Wind, WindInterpolation, WindLevel, wind_between_by_method};
/// let level = |altitude_ft, from_deg, speed_kt| -> Result<WindLevel<TrueNorth>, lubberline::Error> {
///     let wind = Wind { from: TrueBearing::new(degrees(from_deg))?, speed: WindSpeed::new(knots(speed_kt))? };
///     Ok(WindLevel { altitude: PressureAltitude::new(feet(altitude_ft))?, wind })
/// };
/// let (lower, upper) = (level(18_000.0, 240.0, 40.0)?, level(24_000.0, 270.0, 60.0)?);
/// let middle = PressureAltitude::new(feet(21_000.0))?;
/// let between = wind_between_by_method(lower, upper, middle, WindInterpolation::DirectionAndSpeed)?;
/// assert_eq!(format!("{:.1}", between.speed.value().get::<knot>()), "50.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_between_by_method<N: North>(
    lower: WindLevel<N>,
    upper: WindLevel<N>,
    altitude: PressureAltitude,
    method: WindInterpolation,
) -> Result<Wind<N>, Error> {
    match method {
        WindInterpolation::Components => wind_between(lower, upper, altitude),
        WindInterpolation::DirectionAndSpeed => {
            ascending(lower, upper)?;
            let step = upper.altitude.value() - lower.altitude.value();
            let share = ((altitude.value() - lower.altitude.value()) / step).get::<ratio>().clamp(0.0, 1.0);
            let turn_deg = lower.wind.from.change_to(upper.wind.from).angle().get::<degree>();
            let from_deg = lower.wind.from.angle().get::<degree>() + turn_deg * share;
            let change = upper.wind.speed.value() - lower.wind.speed.value();
            Ok(Wind {
                from: Bearing::new(degrees(from_deg))?,
                speed: WindSpeed::derived(lower.wind.speed.value() + change * share),
            })
        }
    }
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

    /// A Transport Canada practice examination's winds at Winnipeg and Brandon at 5 500 ft, from 3 000 and 6 000 ft, and a turn of 90 degrees.
    #[test]
    fn direction_and_speed_each_by_itself() {
        let by = |lower, upper, altitude_ft, method| {
            let wind = wind_between_by_method(lower, upper, altitude(altitude_ft), method).unwrap();
            (wind.from.angle().get::<degree>(), wind.speed.value().get::<knot>())
        };
        for (lower, upper, from_deg, speed_kt) in [
            (level(3_000.0, 280.0, 25.0), level(6_000.0, 270.0, 28.0), 271.67, 27.5),
            (level(3_000.0, 300.0, 30.0), level(6_000.0, 310.0, 32.0), 308.33, 31.67),
        ] {
            let found = by(lower, upper, 5_500.0, WindInterpolation::DirectionAndSpeed);
            assert!((found.0 - from_deg).abs() < 0.01 && (found.1 - speed_kt).abs() < 0.01, "{found:?}");
        }
        let (lower, upper) = (level(3_000.0, 350.0, 40.0), level(6_000.0, 80.0, 40.0));
        let found = by(lower, upper, 4_500.0, WindInterpolation::DirectionAndSpeed);
        assert!((found.0 - 35.0).abs() < 1e-9 && (found.1 - 40.0).abs() < 1e-9, "across north: {found:?}");
        let mixed = by(lower, upper, 4_500.0, WindInterpolation::Components);
        assert!((mixed.1 / 40.0 - 0.5_f64.sqrt()).abs() < 1e-9, "{mixed:?}");
        for altitude_ft in [1_000.0, 9_000.0] {
            let ends = WindInterpolation::ALL.iter().map(|method| by(lower, upper, altitude_ft, *method));
            assert!(ends.clone().all(|found| (found.1 - 40.0).abs() < 1e-9), "{altitude_ft}");
        }
    }

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
