//! Plain functions of the rules of thumb of the holding pattern, beside the pattern that closes, term by term.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::procedure::{HoldingPattern, HoldingSide, TimedLeg};
use crate::rules::{self, DriftRule};
use crate::value::units::{degree, second};
use crate::value::{Bearing, HoldTime, TrueAirspeed, TrueNorth};

outputs! {
    /// The outbound correction by rule beside the exact one: what [`rule_outbound_correction_error`] gives. The error is the rule less the exact answer.
    RuleOutboundCorrectionError {
        /// The rule's answer.
        rule_deg,
        /// The exact answer.
        exact_deg,
        /// The error, of a single term: a fixed multiple for what the wind does in the two turns.
        error_deg,
    }
}

/// The outbound correction of a holding pattern by rule beside that of the pattern which closes.
///
/// A multiple of the inbound correction, the other way, less the outbound correction of `holding_pattern`; both right positive.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `side`: which way the turns go
/// - `inbound_time_s`: time of the inbound leg, 0 to 3600
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
/// - `rule`: by what the correction is multiplied (default "triple")
///
/// # Accuracy
/// Rounding error of the difference.
///
/// # Degenerate cases
/// In calm air both are zero.
///
/// # Errors
/// A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the pattern before the fix.
///
/// # Source
/// The rules: `rule_outbound_heading_deg`. The exact correction: `holding_pattern`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_outbound_correction_error;
/// # use lubberline::{procedure::HoldingSide, rules::DriftRule};
/// assert_eq!(format!("{:.1}", rule_outbound_correction_error(270.0, HoldingSide::Right, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, DriftRule::Triple)?.error_deg), "-1.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn rule_outbound_correction_error(
    inbound_course_deg: f64,
    side: HoldingSide,
    inbound_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule: DriftRule,
) -> Result<RuleOutboundCorrectionError, Error> {
    if any_nan(&[
        inbound_course_deg,
        inbound_time_s,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(RuleOutboundCorrectionError::NAN);
    }
    let pattern = HoldingPattern::<TrueNorth>::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        side,
        TimedLeg::Inbound,
        HoldTime::named("inbound_time_s", inbound_time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    let error = rules::outbound_correction_error(&pattern, rule);
    Ok(RuleOutboundCorrectionError {
        rule_deg: error.rule.get::<degree>(),
        exact_deg: error.exact.get::<degree>(),
        error_deg: error.error().get::<degree>(),
    })
}

outputs! {
    /// The outbound time by the headwind beside the exact one: what [`rule_outbound_time_by_headwind_error`] gives. The error is the rule less the exact answer.
    RuleOutboundTimeByHeadwindError {
        /// The rule's answer.
        rule_s,
        /// The exact answer.
        exact_s,
        /// The error: the sum of the terms.
        error_s,
        /// A second for each knot, where the legs go as their groundspeeds.
        knot_s,
        /// What the wind does in the turns.
        turns_s,
    }
}

/// The outbound time of a holding pattern by a second for each knot of headwind, beside that of the pattern which closes, term by term.
///
/// `t + headwind` less the outbound clock of `holding_pattern` for the same time inbound.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `side`: which way the turns go
/// - `inbound_time_s`: time of the inbound leg, 0 to 3600
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// In calm air there is no error.
///
/// # Errors
/// A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the pattern before the fix.
///
/// # Source
/// The rule: common practice (`rule_outbound_time_by_headwind_s`). The exact time: `holding_pattern`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_outbound_time_by_headwind_error;
/// # use lubberline::procedure::HoldingSide;
/// assert_eq!(format!("{:.0}", rule_outbound_time_by_headwind_error(270.0, HoldingSide::Right, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0)?.error_s), "-8");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn rule_outbound_time_by_headwind_error(
    inbound_course_deg: f64,
    side: HoldingSide,
    inbound_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<RuleOutboundTimeByHeadwindError, Error> {
    if any_nan(&[
        inbound_course_deg,
        inbound_time_s,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(RuleOutboundTimeByHeadwindError::NAN);
    }
    let pattern = HoldingPattern::<TrueNorth>::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        side,
        TimedLeg::Inbound,
        HoldTime::named("inbound_time_s", inbound_time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    let error = rules::outbound_time_by_headwind_error(&pattern);
    let [knot, turns] = error.terms;
    Ok(RuleOutboundTimeByHeadwindError {
        rule_s: error.rule.get::<second>(),
        exact_s: error.exact.get::<second>(),
        error_s: error.error().get::<second>(),
        knot_s: knot.get::<second>(),
        turns_s: turns.get::<second>(),
    })
}

outputs! {
    /// The next outbound time by rule beside the exact one: what [`rule_outbound_time_error`] gives. The error is the rule less the exact answer.
    RuleOutboundTimeError {
        /// The rule's answer.
        rule_s,
        /// The exact answer.
        exact_s,
        /// The error: the sum of the terms.
        error_s,
        /// Both legs at one groundspeed.
        groundspeed_s,
        /// The outbound heading, which has to change with the time.
        heading_s,
    }
}

/// The next outbound time of a holding pattern by rule, after a round that is flown, beside that of the pattern that is wanted, term by term.
///
/// The last outbound time and what the inbound leg came out short (`rule_outbound_time_s`), less the outbound clock of `holding_pattern` for the inbound time that is wanted. The round is flown with the outbound heading that closes it.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `side`: which way the turns go
/// - `outbound_time_s`: time of the round that is flown, on its outbound clock, 0 to 3600
/// - `wanted_inbound_time_s`: the inbound time that is wanted, 0 to 3600
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// In calm air there is no error.
///
/// # Errors
/// A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the pattern before the fix.
///
/// # Source
/// The rule: CNATRA P-871 chapter 4, figure 4-16. The exact time: `holding_pattern`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_outbound_time_error;
/// # use lubberline::procedure::HoldingSide;
/// assert_eq!(format!("{:.0}", rule_outbound_time_error(270.0, HoldingSide::Right, 60.0, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0)?.error_s), "-7");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn rule_outbound_time_error(
    inbound_course_deg: f64,
    side: HoldingSide,
    outbound_time_s: f64,
    wanted_inbound_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<RuleOutboundTimeError, Error> {
    if any_nan(&[
        inbound_course_deg,
        outbound_time_s,
        wanted_inbound_time_s,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(RuleOutboundTimeError::NAN);
    }
    let flown = HoldingPattern::<TrueNorth>::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        side,
        TimedLeg::Outbound,
        HoldTime::named("outbound_time_s", outbound_time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    let wanted = HoldingPattern::<TrueNorth>::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        side,
        TimedLeg::Inbound,
        HoldTime::named("wanted_inbound_time_s", wanted_inbound_time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    let error = rules::next_outbound_time_error(&flown, &wanted);
    let [groundspeed, heading] = error.terms;
    Ok(RuleOutboundTimeError {
        rule_s: error.rule.get::<second>(),
        exact_s: error.exact.get::<second>(),
        error_s: error.error().get::<second>(),
        groundspeed_s: groundspeed.get::<second>(),
        heading_s: heading.get::<second>(),
    })
}
