//! Bank and radius by mental arithmetic.

use crate::value::units::{Angle, Length, degrees, knot, nautical_miles};
use crate::value::{TrueAirspeed, choice};

choice! {
    /// A rule for the bank of a standard-rate turn. They contradict each other; the exact bank is `atan(V / 364.07)`.
    BankRule {
        /// 15 percent of the true airspeed in knots. Common practice.
        FifteenPercent = 0: "fifteen_percent",
        /// A tenth of the true airspeed and 7. Common practice.
        TenthAndSeven = 1: "tenth_and_seven",
        /// A tenth of the true airspeed and 5. Common practice, rarely.
        TenthAndFive = 2: "tenth_and_five",
        /// 20 percent of the airspeed, said of the indicated airspeed of a jet. CNATRA P-1215, timed turns.
        TwentyPercent = 3: "twenty_percent",
    }
}

choice! {
    /// A rule for the radius of a turn.
    RadiusRule {
        /// 0.5 percent of the speed, for standard rate. CNATRA P-340, arc and radial intercepts, p. 6-98.
        HalfPercent = 0: "half_percent",
        /// 1 percent of the speed, for half standard rate. CNATRA P-1282 and P-1265.
        OnePercent = 1: "one_percent",
        /// Miles a minute less two, for 30 degrees of bank. AFMAN 11-217 (rescinded), as quoted.
        MilesAMinuteLessTwo = 2: "miles_a_minute_less_two",
        /// A tenth of the square of the miles a minute, for 30 degrees of bank. AFMAN 11-217 Vol 3 p. 65 (rescinded), as quoted.
        TenthOfSquare = 3: "tenth_of_square",
    }
}

/// The bank of a standard-rate turn by a rule.
///
/// # Degenerate cases
/// At jet speeds the rules give more bank than anyone flies; two of them pass 90 degrees from 600 kt on.
///
/// # Example
/// ```
/// use lubberline::rules::{BankRule, standard_rate_bank};
/// use lubberline::value::{TrueAirspeed, units::*};
/// assert_eq!(format!("{:.0}", standard_rate_bank(TrueAirspeed::new(knots(120.0))?, BankRule::FifteenPercent).get::<degree>()), "18");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn standard_rate_bank(true_airspeed: TrueAirspeed, rule: BankRule) -> Angle {
    let speed_kt = true_airspeed.value().get::<knot>();
    degrees(match rule {
        BankRule::FifteenPercent => 0.15 * speed_kt,
        BankRule::TenthAndSeven => speed_kt / 10.0 + 7.0,
        BankRule::TenthAndFive => speed_kt / 10.0 + 5.0,
        BankRule::TwentyPercent => 0.2 * speed_kt,
    })
}

/// The radius of a turn by a rule.
///
/// # Degenerate cases
/// Miles a minute less two is no radius below 120 kt: it is zero there.
///
/// # Example
/// ```
/// use lubberline::rules::{RadiusRule, turn_radius};
/// use lubberline::value::{TrueAirspeed, units::*};
/// assert_eq!(format!("{:.2}", turn_radius(TrueAirspeed::new(knots(180.0))?, RadiusRule::HalfPercent).get::<nautical_mile>()), "0.90");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn turn_radius(speed: TrueAirspeed, rule: RadiusRule) -> Length {
    let speed_kt = speed.value().get::<knot>();
    let miles_a_minute = speed_kt / 60.0;
    nautical_miles(match rule {
        RadiusRule::HalfPercent => 0.005 * speed_kt,
        RadiusRule::OnePercent => 0.01 * speed_kt,
        RadiusRule::MilesAMinuteLessTwo => (miles_a_minute - 2.0).max(0.0),
        RadiusRule::TenthOfSquare => miles_a_minute * miles_a_minute / 10.0,
    })
}
