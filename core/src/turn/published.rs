//! The steady turn with the constants that sources print. They round gravity and the units, each in its own way.

use crate::value::units::{AngularVelocity, Length, degrees_per_second, knot, nautical_miles, radian};
use crate::value::{Bank, TrueAirspeed, choice};

use super::{radius, rate};

choice! {
    /// With whose constants. The exact ones are 1 092.206 for the rate and 68 625.37 for the radius.
    TurnConstants {
        /// From g = 9.80665 m/s² (ICAO Doc 7488/3, 3rd edition 1993) and the exact units.
        Exact = 0: "exact",
        /// R = 3 431 tan b / (π V) degrees per second, V in knots, and r = V / (20 π R) miles. ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2
        /// Chapter 3, 3.1.2.2 b) and c).
        PansOps = 1: "pans_ops",
        /// R = 6 355 tan b / (π V), V in km/h, and r = V / (20 π R) kilometres. The same.
        PansOpsMetric = 2: "pans_ops_metric",
        /// r = V² / (68 625 tan b) miles, from the gravity that the same document prints, 3.1.2.2 e).
        PansOpsGravity = 3: "pans_ops_gravity",
        /// r = V² / (68 625.4 tan b) miles. FAA Order 8260.58, Chapters 1 and 2, from memory.
        FaaOrder = 4: "faa_order",
        /// R = 1 091 tan b / V degrees per second, r = V² / (11.26 tan b) feet, V in knots. FAA-H-8083-25, chapter 5, from memory: 0.3 percent wide.
        Handbook = 5: "handbook",
    }
}

impl TurnConstants {
    /// Rate in degrees per second of a knot at 45 degrees, and the square of the knots over the miles of the radius there.
    fn numbers(self) -> Option<(f64, f64)> {
        use std::f64::consts::PI;
        const KILOMETRES: f64 = 1.852;
        const FEET: f64 = 1_852.0 / 0.304_8;
        let by_gravity = |nm_h2: f64| ((nm_h2 / 3_600.0).to_degrees(), nm_h2);
        match self {
            Self::Exact => None,
            Self::PansOps => Some((3_431.0 / PI, 20.0 * 3_431.0)),
            Self::PansOpsMetric => Some((6_355.0 / PI / KILOMETRES, 20.0 * 6_355.0 / KILOMETRES)),
            Self::PansOpsGravity => Some(by_gravity(68_625.0)),
            Self::FaaOrder => Some(by_gravity(68_625.4)),
            Self::Handbook => Some((1_091.0, 11.26 * FEET)),
        }
    }
}

/// Rate and radius of a level turn in still air with the constants of a named source.
///
/// # Accuracy
/// As published: within 0.31 percent of [`rate`] and [`radius`], which are exact.
///
/// # Degenerate cases
/// As those. No limit of the rate is applied: ICAO's rate is flown up to 3 degrees per second, [`super::TurnLimits`].
///
/// # Source
/// Named at [`TurnConstants`].
///
/// # Example
/// ```
/// use lubberline::turn::{TurnConstants, published_turn};
/// use lubberline::value::{Bank, TrueAirspeed, units::*};
/// let (rate, _) = published_turn(TrueAirspeed::new(knots(100.0))?, Bank::new(degrees(25.0))?, TurnConstants::PansOps);
/// assert_eq!(format!("{:.4}", rate.get::<degree_per_second>()), "5.0926");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn published_turn(
    true_airspeed: TrueAirspeed,
    bank: Bank,
    constants: TurnConstants,
) -> (AngularVelocity, Length) {
    let Some((rate_constant, radius_constant)) = constants.numbers() else {
        return (rate(true_airspeed, bank), radius(true_airspeed, bank));
    };
    let airspeed_kt = true_airspeed.value().get::<knot>();
    let tangent = bank.value().get::<radian>().tan();
    (
        degrees_per_second(rate_constant * tangent / airspeed_kt),
        nautical_miles(airspeed_kt * (airspeed_kt / (radius_constant * tangent))),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degree_per_second, degrees, knots, nautical_mile};

    #[test]
    fn every_set_of_constants_is_near_the_exact_one() {
        let (airspeed, bank) = (TrueAirspeed::new(knots(280.0)).unwrap(), Bank::new(degrees(22.0)).unwrap());
        let (exact_rate, exact_radius) = published_turn(airspeed, bank, TurnConstants::Exact);
        for (constants, rate_off, radius_off) in [
            (TurnConstants::Exact, 1.0, 1.0),
            (TurnConstants::PansOps, 0.999_92, 1.000_08),
            (TurnConstants::PansOpsMetric, 1.000_05, 0.999_95),
            (TurnConstants::PansOpsGravity, 0.999_995, 1.000_005),
            (TurnConstants::FaaOrder, 1.0, 1.0),
            (TurnConstants::Handbook, 0.998_9, 1.003_0),
        ] {
            let (rate, radius) = published_turn(airspeed, bank, constants);
            let rate_ratio = rate.get::<degree_per_second>() / exact_rate.get::<degree_per_second>();
            let radius_ratio = radius.get::<nautical_mile>() / exact_radius.get::<nautical_mile>();
            let digits = if constants == TurnConstants::Handbook { 6e-5 } else { 6e-6 };
            assert!((rate_ratio - rate_off).abs() < digits, "{constants:?} {rate_ratio}");
            assert!((radius_ratio - radius_off).abs() < digits, "{constants:?} {radius_ratio}");
        }
    }
}
