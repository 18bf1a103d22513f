//! What is said of distance by DME and of the radio horizon, set beside the exact answers, term by term.

use super::RuleError;
use crate::Error;
use crate::earth::{MEAN_RADIUS_M, ground_distance};
use crate::station::{EFFECTIVE_RADIUS_FACTOR, HorizonRule, radio_horizon};
use crate::value::units::{Length, meter, metres};
use crate::value::{HeightAboveStation, SlantRange, SurfaceHeight};

/// The DME reading taken for the distance along the ground, which the trade does from [`super::slant_negligible_from`] on, beside that distance. The terms: the triangle
/// of distance and height; and the curve of the earth, which brings the far end down.
///
/// # Errors
/// As [`ground_distance`].
///
/// # Source
/// The rule: FAA-H-8083-15 (Instrument Flying Handbook), as study notes quote it.
///
/// # Example
/// ```
/// use lubberline::rules::ground_distance_error;
/// use lubberline::value::{HeightAboveStation, SlantRange, units::*};
/// assert_eq!(format!("{:.2}", ground_distance_error(SlantRange::new(nautical_miles(7.7))?, HeightAboveStation::new(feet(33_000.0))?)?.error().get::<nautical_mile>()), "2.25");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn ground_distance_error(
    reading: SlantRange,
    height: HeightAboveStation,
) -> Result<RuleError<Length, 2>, Error> {
    let exact = ground_distance(reading, height)?.value();
    let (slant_m, height_m) = (reading.value().get::<meter>(), height.value().get::<meter>());
    // A range a hair shorter than the height is that of an aircraft overhead.
    let flat = metres((slant_m * slant_m - height_m * height_m).max(0.0).sqrt());
    let rule = reading.value();
    Ok(RuleError { rule, exact, terms: [rule - flat, flat - exact] })
}

/// A rule for the radio horizon beside the tangent to a sphere of 4/3 of the earth's radius. The terms: the rule's factor for 1.2289 NM (4.1226 km); and the square roots of
/// the heights for the tangents.
///
/// # Source
/// Named at [`HorizonRule`].
///
/// # Example
/// ```
/// use lubberline::rules::radio_horizon_error;
/// use lubberline::station::HorizonRule;
/// use lubberline::value::{SurfaceHeight, units::*};
/// let ground = SurfaceHeight::new(feet(0.0))?;
/// assert_eq!(format!("{:.1}", radio_horizon_error(SurfaceHeight::new(feet(10_000.0))?, ground, HorizonRule::FiveQuarters).error().get::<nautical_mile>()), "2.1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radio_horizon_error(
    aircraft: SurfaceHeight,
    antenna: SurfaceHeight,
    rule: HorizonRule,
) -> RuleError<Length, 2> {
    let by_rule = radio_horizon(aircraft, antenna, rule).value();
    let exact = radio_horizon(aircraft, antenna, HorizonRule::FourThirds).value();
    let diameter_m = 2.0 * EFFECTIVE_RADIUS_FACTOR * MEAN_RADIUS_M;
    let root_m = |height: SurfaceHeight| (diameter_m * height.value().get::<meter>()).sqrt();
    let by_root = metres(root_m(aircraft) + root_m(antenna));
    RuleError { rule: by_rule, exact, terms: [by_rule - by_root, by_root - exact] }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, nautical_mile, nautical_miles, ratio};

    #[test]
    fn the_reading_is_long_by_the_triangle() {
        let at = |reading_nm, height_ft| {
            let reading = SlantRange::new(nautical_miles(reading_nm)).unwrap();
            ground_distance_error(reading, HeightAboveStation::new(feet(height_ft)).unwrap())
        };
        // A mile for each 1000 ft leaves 1.35 percent.
        let far = at(30.0, 30_000.0).unwrap();
        assert!(((far.error() / far.exact).get::<ratio>() - 0.0135).abs() < 0.002, "{far:?}");
        let sum = far.terms[0] + far.terms[1] - far.error();
        assert!(sum.abs() < metres(1e-9));
        let overhead = at(5.0, 5.0 * 1852.0 / 0.3048).unwrap();
        assert!((overhead.error() - nautical_miles(5.0)).abs() < metres(5.0));
        assert!(at(4.0, 36_000.0).is_err());
    }

    #[test]
    fn the_horizon_is_long_by_its_factor_and_by_the_root() {
        let at = |rule| {
            let height = |value| SurfaceHeight::new(feet(value)).unwrap();
            radio_horizon_error(height(35_000.0), height(100.0), rule)
        };
        for &rule in HorizonRule::ALL {
            let error = at(rule);
            assert!((error.terms[0] + error.terms[1] - error.error()).abs() < metres(1e-6), "{rule:?}");
        }
        // 1.25 for 1.2289 is 1.7 percent of 230 NM.
        assert!((at(HorizonRule::FiveQuarters).terms[0].get::<nautical_mile>() - 4.15).abs() < 0.05);
        assert!(at(HorizonRule::FourThirds).error() == metres(0.0));
    }
}
