//! Plain functions of the rules of thumb of the roll-out, beside the exact answers, term by term.

use super::{any_nan, outputs};
use crate::Error;
use crate::rules::{self, RollOutRule};
use crate::value::units::degree;
use crate::value::{Bank, RollRate, TrueAirspeed};

/// The degrees of heading by which to begin the roll-out before the new heading, by a rule.
///
/// A third of the bank, or half of it.
///
/// # Arguments
/// - `bank_deg`: bank, above 0 below 90
/// - `rule`: which rule
///
/// # Accuracy
/// A rule. See `rule_roll_out_lead_error`.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// A third: CNATRA P-1215, timed turns. Half: common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_roll_out_lead_deg;
/// # use lubberline::rules::RollOutRule;
/// assert_eq!(format!("{:.0}", rule_roll_out_lead_deg(24.0, RollOutRule::Third)?), "8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_roll_out_lead_deg(bank_deg: f64, rule: RollOutRule) -> Result<f64, Error> {
    if any_nan(&[bank_deg]) {
        return Ok(f64::NAN);
    }
    Ok(rules::roll_out_lead(Bank::named("bank_deg", bank_deg)?, rule).get::<degree>())
}

outputs! {
    /// A rule of the roll-out beside the exact lead: what [`rule_roll_out_lead_error`] gives. The error is the rule less the exact answer.
    RuleRollOutLeadError {
        /// The rule's answer.
        rule_deg,
        /// The exact answer.
        exact_deg,
        /// The error: the sum of the terms.
        error_deg,
        /// The share of the bank for the mean rate of turn over the time of the roll.
        share_deg,
        /// A rate in proportion to the bank for one that goes with its tangent.
        tangent_deg,
    }
}

/// A rule of the roll-out beside the heading that is turned while the bank returns to zero, term by term.
///
/// The rule less `g / (V p) ln sec b`.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `bank_deg`: bank, above 0 below 90
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
/// - `rule`: which rule (default "third")
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// A roll that takes no time turns no heading: the rule is all error.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Named at `rule_roll_out_lead_deg`; the exact lead is derived.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_roll_out_lead_error;
/// # use lubberline::rules::RollOutRule;
/// assert_eq!(format!("{:.1}", rule_roll_out_lead_error(120.0, 18.0, 5.0, RollOutRule::Third)?.error_deg), "0.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_roll_out_lead_error(
    true_airspeed_kt: f64,
    bank_deg: f64,
    roll_rate_deg_per_s: f64,
    rule: RollOutRule,
) -> Result<RuleRollOutLeadError, Error> {
    if any_nan(&[true_airspeed_kt, bank_deg, roll_rate_deg_per_s]) {
        return Ok(RuleRollOutLeadError::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let bank = Bank::named("bank_deg", bank_deg)?;
    let roll = RollRate::named("roll_rate_deg_per_s", roll_rate_deg_per_s)?;
    let error = rules::roll_out_lead_error(airspeed, bank, roll, rule);
    let [share, tangent] = error.terms;
    Ok(RuleRollOutLeadError {
        rule_deg: error.rule.get::<degree>(),
        exact_deg: error.exact.get::<degree>(),
        error_deg: error.error().get::<degree>(),
        share_deg: share.get::<degree>(),
        tangent_deg: tangent.get::<degree>(),
    })
}
