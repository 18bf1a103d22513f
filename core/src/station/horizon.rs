//! How far a station is received over the curve of the earth, and how high an aircraft must be to receive it.

use crate::Error;
use crate::earth::MEAN_RADIUS_M;
use crate::value::units::{feet, foot, meter, metres, nautical_mile};
use crate::value::{GroundDistance, Quantity, SurfaceHeight, choice};

/// Radius of the earth on which radio waves run straight, over the true radius: the air bends them down.
///
/// Source: ITU-R P.310, effective earth-radius factor of the standard atmosphere (from memory).
pub const EFFECTIVE_RADIUS_FACTOR: f64 = 4.0 / 3.0;

/// The greatest height the library accepts, in feet: the end of the range of [`SurfaceHeight`].
const GREATEST_HEIGHT_FT: f64 = 400_000.0;

choice! {
    /// A rule for the radio horizon. They disagree by up to 2 percent.
    HorizonRule {
        /// The tangent to a sphere of 4/3 of the earth's mean radius.
        FourThirds = 0: "four_thirds",
        /// 1.23 times the square root of the feet, in nautical miles. ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendix.
        FeetMiles = 1: "feet_miles",
        /// 4.11 times the square root of the metres, in kilometres: 0.4 percent less than the rule in feet. The same appendix.
        MetresKilometres = 2: "metres_kilometres",
        /// 1.25 times the square root of the feet, in nautical miles. Common practice.
        FiveQuarters = 3: "five_quarters",
    }
}

impl HorizonRule {
    /// Metres of distance for the square root of a metre of height; none for the geometry, which is no square root.
    fn root_factor(self) -> Option<f64> {
        let by_feet = |miles: f64| miles * 1852.0 / 0.3048_f64.sqrt();
        match self {
            Self::FourThirds => None,
            Self::FeetMiles => Some(by_feet(1.23)),
            Self::MetresKilometres => Some(4.11 * 1000.0),
            Self::FiveQuarters => Some(by_feet(1.25)),
        }
    }

    /// Distance from the foot of a height to the tangent point.
    fn distance_m(self, height: SurfaceHeight) -> f64 {
        let height_m = height.value().get::<meter>();
        self.root_factor().map_or_else(
            || {
                let radius_m = EFFECTIVE_RADIUS_FACTOR * MEAN_RADIUS_M;
                radius_m * ((height_m * (2.0 * radius_m + height_m)).sqrt() / radius_m).atan()
            },
            |factor| factor * height_m.sqrt(),
        )
    }

    /// Height whose tangent point is that far from its foot; infinite where there is none.
    fn height_m(self, distance_m: f64) -> f64 {
        self.root_factor().map_or_else(
            || {
                let radius_m = EFFECTIVE_RADIUS_FACTOR * MEAN_RADIUS_M;
                let angle_rad = distance_m / radius_m;
                // The secant less one, with its digits for a small angle.
                let half = (angle_rad / 2.0).sin();
                let cosine = 1.0 - 2.0 * half * half;
                if angle_rad < std::f64::consts::FRAC_PI_2 {
                    radius_m * 2.0 * half * half / cosine
                } else {
                    f64::INFINITY
                }
            },
            |factor| (distance_m / factor).powi(2),
        )
    }
}

/// The greatest ground distance at which an aircraft receives a station over a smooth earth.
///
/// Each height sees to its own tangent point, and the distances add: `Re (acos(Re / (Re + h1)) + acos(Re / (Re + h2)))` with
/// `Re` 4/3 of the earth's radius, or the factor of a rule times `sqrt(h1) + sqrt(h2)`.
///
/// # Accuracy
/// Exact for its model. The square roots are the geometry of small heights; at 60 000 ft they are 0.1 percent longer than the tangent on the
/// same sphere. What the air does on the day moves the horizon by more than the rules differ, and terrain by more than that.
///
/// # Degenerate cases
/// Two heights of zero see no distance.
///
/// # Source
/// Derived for 4/3 of the radius; the rules at [`HorizonRule`].
///
/// # Example
/// ```
/// use lubberline::station::{HorizonRule, radio_horizon};
/// use lubberline::value::{SurfaceHeight, units::*};
/// let (aircraft, antenna) = (SurfaceHeight::new(feet(31_000.0))?, SurfaceHeight::new(feet(40.0))?);
/// let horizon = radio_horizon(aircraft, antenna, HorizonRule::FeetMiles);
/// assert_eq!(format!("{:.1}", horizon.value().get::<nautical_mile>()), "224.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn radio_horizon(aircraft: SurfaceHeight, antenna: SurfaceHeight, rule: HorizonRule) -> GroundDistance {
    GroundDistance::derived(metres(rule.distance_m(aircraft) + rule.distance_m(antenna)))
}

/// The least height at which an aircraft receives a station at a ground distance: the inverse of [`radio_horizon`].
///
/// # Degenerate cases
/// Within the antenna's own horizon it is zero.
///
/// # Errors
/// [`Error::BeyondHorizon`] if it takes more than 400 000 ft.
///
/// # Source
/// As [`radio_horizon`].
///
/// # Example
/// ```
/// use lubberline::station::{HorizonRule, least_height};
/// use lubberline::value::{GroundDistance, SurfaceHeight, units::*};
/// let ground = SurfaceHeight::new(feet(0.0))?;
/// assert_eq!(format!("{:.0}", least_height(GroundDistance::new(nautical_miles(100.0))?, ground, HorizonRule::FourThirds)?.value().get::<foot>()), "6625");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn least_height(
    distance: GroundDistance,
    antenna: SurfaceHeight,
    rule: HorizonRule,
) -> Result<SurfaceHeight, Error> {
    let beyond_m = distance.value().get::<meter>() - rule.distance_m(antenna);
    let height = metres(rule.height_m(beyond_m.max(0.0)));
    if Quantity::SurfaceHeight.check("height", height.get::<foot>()).is_ok() {
        return Ok(SurfaceHeight::derived(height));
    }
    let greatest = SurfaceHeight::derived(feet(GREATEST_HEIGHT_FT));
    Err(Error::BeyondHorizon {
        ground_distance_nm: distance.value().get::<nautical_mile>(),
        horizon_nm: radio_horizon(greatest, antenna, rule).value().get::<nautical_mile>(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::nautical_miles;

    fn height(value_ft: f64) -> SurfaceHeight {
        SurfaceHeight::new(feet(value_ft)).unwrap()
    }

    #[test]
    fn the_least_height_is_where_the_horizon_is() {
        for &rule in HorizonRule::ALL {
            for (aircraft_ft, antenna_ft) in
                [(0.0, 0.0), (1.0, 0.0), (900.0, 55.0), (45_000.0, 7000.0), (4e5, 4e5)]
            {
                let horizon = radio_horizon(height(aircraft_ft), height(antenna_ft), rule);
                let back = least_height(horizon, height(antenna_ft), rule).unwrap();
                assert!(
                    (back.value().get::<foot>() - aircraft_ft).abs() <= 1e-8 * aircraft_ft,
                    "{rule:?} {aircraft_ft}"
                );
            }
        }
    }

    #[test]
    fn for_small_heights_the_geometry_is_the_square_root_of_the_texts() {
        // sqrt(2 · 4/3 · R · 0.3048 m) is 1.2287 NM for the square root of a foot.
        let ratio = HorizonRule::FourThirds.distance_m(height(100.0))
            / HorizonRule::FeetMiles.distance_m(height(100.0));
        assert!((ratio * 1.23 - 1.2287).abs() < 1e-4, "{ratio}");
    }

    #[test]
    fn the_antennas_own_horizon_needs_no_height_and_the_far_side_has_none() {
        let far = |miles| GroundDistance::new(nautical_miles(miles)).unwrap();
        for &rule in HorizonRule::ALL {
            assert_eq!(least_height(far(10.0), height(100.0), rule).unwrap(), height(0.0));
            for miles in [1_000.0, 7_300.0, 10_900.0] {
                assert!(matches!(
                    least_height(far(miles), height(0.0), rule),
                    Err(Error::BeyondHorizon { .. })
                ));
            }
        }
    }
}
