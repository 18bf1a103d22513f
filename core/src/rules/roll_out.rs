//! When to roll out of a turn.

use super::RuleError;
use crate::turn::STANDARD_GRAVITY_M_S2;
use crate::value::units::{Angle, degrees, meter_per_second, radian, radian_per_second};
use crate::value::{Bank, RollRate, TrueAirspeed, choice};

choice! {
    /// A rule for the degrees of heading by which to begin the roll-out before the new heading.
    RollOutRule {
        /// A third of the bank. CNATRA P-1215, timed turns.
        Third = 0: "third",
        /// Half of the bank. Common practice.
        Half = 1: "half",
    }
}

/// The degrees of heading by which to begin the roll-out, by a rule.
///
/// # Source
/// Named at [`RollOutRule`].
///
/// # Example
/// ```
/// use lubberline::rules::{RollOutRule, roll_out_lead};
/// use lubberline::value::{Bank, units::*};
/// assert_eq!(format!("{:.0}", roll_out_lead(Bank::new(degrees(30.0))?, RollOutRule::Third).get::<degree>()), "10");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn roll_out_lead(bank: Bank, rule: RollOutRule) -> Angle {
    match rule {
        RollOutRule::Third => bank.value() / 3.0,
        RollOutRule::Half => bank.value() / 2.0,
    }
}

/// [`roll_out_lead`] beside the heading that is turned while the bank returns to zero, `g / (V p) ln sec b`. The terms: the share of the bank for the mean rate over
/// the time of the roll, `g tan b / (2 V) · b / p`; and a rate in proportion to the bank for one that goes with its tangent.
///
/// # Degenerate cases
/// A roll that takes no time turns no heading.
///
/// # Source
/// Derived, as [`crate::turn::RolledTurn`].
///
/// # Example
/// ```
/// use lubberline::rules::{RollOutRule, roll_out_lead_error};
/// use lubberline::value::{Bank, RollRate, TrueAirspeed, units::*};
/// assert!(roll_out_lead_error(TrueAirspeed::new(knots(180.0))?, Bank::new(degrees(30.0))?, RollRate::new(degrees_per_second(5.0))?, RollOutRule::Third).error().abs() < degrees(0.1));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn roll_out_lead_error(
    true_airspeed: TrueAirspeed,
    bank: Bank,
    roll: RollRate,
    rule: RollOutRule,
) -> RuleError<Angle, 2> {
    let bank_rad = bank.value().get::<radian>();
    let tangent = bank_rad.tan();
    let per_roll = STANDARD_GRAVITY_M_S2
        / (true_airspeed.value().get::<meter_per_second>() * roll.value().get::<radian_per_second>());
    let by_rule = roll_out_lead(bank, rule);
    let by_mean_rate = degrees((per_roll * bank_rad * tangent / 2.0).to_degrees());
    let exact = degrees((per_roll * (tangent * tangent).ln_1p() / 2.0).to_degrees());
    RuleError { rule: by_rule, exact, terms: [by_rule - by_mean_rate, by_mean_rate - exact] }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::turn::{RolledTurn, TurnLimits};
    use crate::value::TurnRate;
    use crate::value::units::{degree, degrees_per_second, knots, seconds};

    /// What a turn still turns when its roll-out begins.
    #[test]
    fn the_exact_lead_is_that_of_the_rolled_turn() {
        let airspeed = TrueAirspeed::new(knots(140.0)).unwrap();
        let bank = Bank::new(degrees(22.0)).unwrap();
        let roll = RollRate::new(degrees_per_second(4.0)).unwrap();
        let limits = TurnLimits { bank, rate: TurnRate::new(degrees_per_second(30.0)).unwrap(), roll };
        let turn = RolledTurn::new(airspeed, &limits, degrees(90.0));
        let at_roll_out = turn.duration() - seconds(22.0 / 4.0);
        let left_deg = 90.0 - turn.turned_after_rad(at_roll_out.value).to_degrees();
        let error = roll_out_lead_error(airspeed, bank, roll, RollOutRule::Third);
        assert!((error.exact.get::<degree>() - left_deg).abs() < 1e-9, "{left_deg}");
        assert!((error.rule.get::<degree>() - 22.0 / 3.0).abs() < 1e-12);
    }

    #[test]
    fn the_terms_sum_to_the_whole_and_the_tangent_works_toward_a_longer_lead() {
        for &rule in RollOutRule::ALL {
            for (airspeed_kt, bank_deg, roll) in [(90.0, 15.0, 5.0), (250.0, 45.0, 3.0), (480.0, 60.0, 1e6)] {
                let error = roll_out_lead_error(
                    TrueAirspeed::new(knots(airspeed_kt)).unwrap(),
                    Bank::new(degrees(bank_deg)).unwrap(),
                    RollRate::new(degrees_per_second(roll)).unwrap(),
                    rule,
                );
                let sum = error.terms.iter().fold(degrees(0.0), |sum, term| sum + *term);
                assert!((sum - error.error()).get::<degree>().abs() < 1e-12);
                assert!(error.terms[1] > degrees(0.0), "half of b tan b is more than ln sec b");
            }
        }
        let at_once = roll_out_lead_error(
            TrueAirspeed::new(knots(120.0)).unwrap(),
            Bank::new(degrees(18.0)).unwrap(),
            RollRate::instant(),
            RollOutRule::Half,
        );
        assert_eq!(at_once.exact, degrees(0.0));
    }
}
