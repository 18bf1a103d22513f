//! Plain functions that set the mental arithmetic of a lead beside the exact answer: term by term, and flown.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::rules::{LeadComparison, LeadRule, RollOutAllowed, TurnCue};
use crate::value::units::{foot, nautical_mile};
use crate::value::{Bearing, ConeHalfAngle, GroundDistance, HeightAboveStation, TrueAirspeed, TrueBearing};

outputs! {
    /// The mental arithmetic of a lead beside the exact answer: what [`rule_lead_error`] gives. Errors are the rule less the exact answer.
    RuleLeadError {
        /// The lead by the rule.
        rule_lead_nm,
        /// The exact lead.
        exact_lead_nm,
        /// The error of the lead: the sum of the eight terms from `allowance_nm` to `roll_nm`.
        lead_error_nm,
        /// The DME reading by the rule: its lead and the height in miles, added.
        rule_reading_nm,
        /// The exact DME reading.
        exact_reading_nm,
        /// The error of the reading: the sum of all ten terms.
        reading_error_nm,
        /// The allowance for height or the margin, if the rule makes one.
        allowance_nm,
        /// The standard-rate radius as speed over 180, where it is speed over 60 pi.
        round_radius_nm,
        /// The lead in proportion to the change, where it goes with the tangent of half of it.
        proportion_nm,
        /// The radius of standard rate, where the bank limit makes it longer.
        standard_rate_nm,
        /// The groundspeed as the speed of the turn, where the airspeed is.
        groundspeed_nm,
        /// The turn through the change of course, where that of heading has to be turned.
        heading_change_nm,
        /// No drift during the turn.
        drift_nm,
        /// A roll that takes no time.
        roll_nm,
        /// A nautical mile of 6 000 ft in the height.
        mile_nm,
        /// Distance and height added, where the slant is the root of their squares.
        sum_nm,
    }
}

/// The mental arithmetic of a lead beside the exact answer, term by term.
///
/// Each term is what one simplification adds, positive where it makes the rule begin the turn too early. With `c` the change and `gs` the groundspeed inbound the lead
/// goes in steps from `gs / 180 c / 90` by `gs / (60 pi) c / 90`, `gs / (60 pi) tan(c / 2)`, `r(gs) tan(c / 2)` and `r(V) tan(c / 2)`, with `r` the radius that the limits
/// leave, to the turn through the wind-corrected headings without its drift, with it, and with the roll; the reading adds the height as `h / 6000`, as `h`, and
/// in the slant range.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the station, any finite number
/// - `outbound_course_deg`: course flown from it, against the same north
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `height_above_station_ft`: height above the station's antenna, -60 000 to 400 000 (default 0.0)
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
/// - `rule`: which mental arithmetic (default "third")
///
/// # Accuracy
/// The terms sum to the whole to rounding error. Taken back in another order they would share it out a little differently.
///
/// # Degenerate cases
/// In calm air the terms of the wind are zero to rounding error. Toward a reversal the rule stays finite where the exact lead does not.
///
/// # Errors
/// A value outside its range, a reversal, a wind that the airspeed cannot hold.
///
/// # Source
/// The rules: common practice (`rule_lead_nm`, `rule_reading_nm`). The exact answers: `lead_nm`, `dme_at_roll_in_nm`. The terms: derived.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_lead_error;
/// # use lubberline::rules::LeadRule;
/// assert_eq!(format!("{:.2}", rule_lead_error(40.0, 130.0, 450.0, 36_000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LeadRule::Third)?.standard_rate_nm), "-3.94");
/// assert_eq!(format!("{:.2}", rule_lead_error(40.0, 130.0, 450.0, 36_000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LeadRule::Third)?.mile_nm), "0.08");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn rule_lead_error(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    height_above_station_ft: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule: LeadRule,
) -> Result<RuleLeadError, Error> {
    if any_nan(&[
        inbound_course_deg,
        outbound_course_deg,
        true_airspeed_kt,
        height_above_station_ft,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(RuleLeadError::NAN);
    }
    let inbound = TrueBearing::named("inbound_course_deg", inbound_course_deg)?;
    let outbound = Bearing::named("outbound_course_deg", outbound_course_deg)?;
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let height = HeightAboveStation::named("height_above_station_ft", height_above_station_ft)?;
    let comparison = LeadComparison {
        inbound,
        wind: wind(wind_from_deg, wind_speed_kt)?,
        limits: turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
        rule,
    };
    let error = comparison.error(airspeed, height, inbound.change_to(outbound))?;
    Ok(RuleLeadError {
        rule_lead_nm: error.rule_lead.get::<nautical_mile>(),
        exact_lead_nm: error.exact_lead.get::<nautical_mile>(),
        lead_error_nm: error.lead_error().get::<nautical_mile>(),
        rule_reading_nm: error.rule_reading.get::<nautical_mile>(),
        exact_reading_nm: error.exact_reading.get::<nautical_mile>(),
        reading_error_nm: error.reading_error().get::<nautical_mile>(),
        allowance_nm: error.allowance.get::<nautical_mile>(),
        round_radius_nm: error.round_radius.get::<nautical_mile>(),
        proportion_nm: error.proportion.get::<nautical_mile>(),
        standard_rate_nm: error.standard_rate.get::<nautical_mile>(),
        groundspeed_nm: error.groundspeed.get::<nautical_mile>(),
        heading_change_nm: error.heading_change.get::<nautical_mile>(),
        drift_nm: error.drift.get::<nautical_mile>(),
        roll_nm: error.roll.get::<nautical_mile>(),
        mile_nm: error.mile.get::<nautical_mile>(),
        sum_nm: error.sum.get::<nautical_mile>(),
    })
}

outputs! {
    /// Where a turn that mental arithmetic begins really ends: what [`rule_lead_flown`] gives.
    RuleLeadFlown {
        /// The DME reading at which the turn begins.
        reading_nm,
        /// How far before the station that is, along the ground; negative past it.
        before_station_nm,
        /// How far beyond the outbound course the wings are level again, on the outer side of the turn; negative short of it.
        overshoot_nm,
        /// How far past the station that is, along the outbound course; negative before it.
        past_station_nm,
        /// 1 if the turn begins in the cone of confusion, else 0.
        began_in_cone,
        /// 1 if it ends there, else 0.
        ended_in_cone,
        /// What it comes to: the code of [`crate::rules::TurnVerdict`], -1 early, 0 safe, 1 late.
        verdict,
    }
}

/// The turn that mental arithmetic begins, flown: where its wings are level again.
///
/// Inbound on the heading that holds the course; from the cue on, the bank and the heading of the exact turn, over the ellipsoid. What the crew has wrong is where the turn
/// begins, and nothing else. The turn is safe if it ends at most `allowed_beyond_nm` beyond the outbound course and `allowed_short_nm` short of it.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the station, any finite number
/// - `outbound_course_deg`: course flown from it, against the same north
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `height_above_station_ft`: height above the station's antenna, -60 000 to 400 000 (default 0.0)
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
/// - `rule`: which mental arithmetic (default "third")
/// - `cue`: what the turn begins by: the rule's DME reading, its distance along the ground, or the exact reading (default "reading")
/// - `cone_half_angle_deg`: half-angle of the cone of confusion from the vertical, above 0 below 90 (default 50.0)
/// - `allowed_beyond_nm`: how far beyond the outbound course is safe, 0 to 10 900 (default 0.5)
/// - `allowed_short_nm`: how far short of it is safe, 0 to 10 900 (default 1.0)
///
/// # Accuracy
/// A centimetre across the outbound course and half a metre along it for the flight itself. The station stands at 45 degrees of latitude; elsewhere it ends less than 0.001 NM away to leads of 10 NM. The exact
/// reading ends within 1e-4 NM of the course at the surface, and 0.2 percent of the lead short of it at 45 000 ft.
///
/// # Degenerate cases
/// No change of course is no turn: it ends where it begins, without an overshoot. An exact turn that begins past the station begins at its place, not by a reading.
///
/// # Errors
/// A value outside its range, a reversal, a wind that the airspeed cannot hold.
///
/// # Source
/// The rules: common practice (`rule_lead_nm`, `rule_reading_nm`). What is allowed by default: half a mile is what DME may be off (FAA AIM 1-1-7), the other half mile is the
/// trade's margin. The flight: docs/flight.md.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_lead_flown;
/// # use lubberline::rules::{LeadRule, TurnCue};
/// assert_eq!(format!("{:.2}", rule_lead_flown(40.0, 130.0, 450.0, 36_000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LeadRule::Third, TurnCue::Reading, 50.0, 0.5, 1.0)?.overshoot_nm), "0.55");
/// assert_eq!(format!("{:.2}", rule_lead_flown(40.0, 130.0, 450.0, 36_000.0, 0.0, 0.0, 25.0, 3.0, 5.0, LeadRule::Third, TurnCue::Distance, 50.0, 0.5, 1.0)?.overshoot_nm), "4.14");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn rule_lead_flown(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    height_above_station_ft: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule: LeadRule,
    cue: TurnCue,
    cone_half_angle_deg: f64,
    allowed_beyond_nm: f64,
    allowed_short_nm: f64,
) -> Result<RuleLeadFlown, Error> {
    if any_nan(&[
        inbound_course_deg,
        outbound_course_deg,
        true_airspeed_kt,
        height_above_station_ft,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
        cone_half_angle_deg,
        allowed_beyond_nm,
        allowed_short_nm,
    ]) {
        return Ok(RuleLeadFlown::NAN);
    }
    let inbound = TrueBearing::named("inbound_course_deg", inbound_course_deg)?;
    let outbound = Bearing::named("outbound_course_deg", outbound_course_deg)?;
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let height = HeightAboveStation::named("height_above_station_ft", height_above_station_ft)?;
    let comparison = LeadComparison {
        inbound,
        wind: wind(wind_from_deg, wind_speed_kt)?,
        limits: turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
        rule,
    };
    let cone_half_angle = ConeHalfAngle::named("cone_half_angle_deg", cone_half_angle_deg)?;
    let allowed = RollOutAllowed {
        beyond: GroundDistance::named("allowed_beyond_nm", allowed_beyond_nm)?,
        short: GroundDistance::named("allowed_short_nm", allowed_short_nm)?,
    };
    let flown = comparison.flown(airspeed, height, inbound.change_to(outbound), cue, cone_half_angle)?;
    Ok(RuleLeadFlown {
        reading_nm: flown.reading.value().get::<nautical_mile>(),
        before_station_nm: flown.before_station.get::<nautical_mile>(),
        overshoot_nm: flown.overshoot.get::<nautical_mile>(),
        past_station_nm: flown.past_station.get::<nautical_mile>(),
        began_in_cone: f64::from(u8::from(flown.began_in_cone)),
        ended_in_cone: f64::from(u8::from(flown.ended_in_cone)),
        verdict: f64::from(flown.verdict(allowed).code()),
    })
}

/// The height above the station at which the rule's DME reading is the exact one: below it the turn begins too late, above it too early.
///
/// Where `l + h / 6000 ft` is `sqrt(L^2 + h^2)`, with `l` the rule's lead and `L` the exact one; near `(L^2 - l^2) / (2 l)`.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the station, any finite number
/// - `outbound_course_deg`: course flown from it, against the same north
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
/// - `rule`: which mental arithmetic (default "third")
///
/// # Accuracy
/// Rounding: a root in a bracket, of the readings over a curved earth.
///
/// # Degenerate cases
/// NaN where the rule is early at every height, as for a slow aircraft with a quick roll, and where it is late up to 400 000 ft.
///
/// # Errors
/// A value outside its range, a reversal, a wind that the airspeed cannot hold.
///
/// # Source
/// Derived; the rule: `rule_reading_nm`, the exact reading: `dme_at_roll_in_nm`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_holds_at_height_ft;
/// # use lubberline::rules::LeadRule;
/// assert_eq!(format!("{:.0}", rule_holds_at_height_ft(40.0, 130.0, 350.0, 0.0, 0.0, 25.0, 3.0, 5.0, LeadRule::Third)?), "19490");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn rule_holds_at_height_ft(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    rule: LeadRule,
) -> Result<f64, Error> {
    if any_nan(&[
        inbound_course_deg,
        outbound_course_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(f64::NAN);
    }
    let inbound = TrueBearing::named("inbound_course_deg", inbound_course_deg)?;
    let outbound = Bearing::named("outbound_course_deg", outbound_course_deg)?;
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let comparison = LeadComparison {
        inbound,
        wind: wind(wind_from_deg, wind_speed_kt)?,
        limits: turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
        rule,
    };
    let height = comparison.holds_at(airspeed, inbound.change_to(outbound))?;
    Ok(height.map_or(f64::NAN, |height| height.value().get::<foot>()))
}
