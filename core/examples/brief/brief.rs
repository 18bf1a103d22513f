//! What a plan comes to: its legs and its course changes, with the times between them.

use lubberline::air::Air;
use lubberline::lead::CourseChange;
use lubberline::value::TrueNorth;
use lubberline::value::units::{
    degree, degree_celsius, degree_per_second, foot, hectopascal, kelvin_interval, knot, nautical_mile, ratio,
};
use serde::Serialize;

use crate::change::Change;
use crate::leg::{Leg, Line};
use crate::plan::{Fix, Plan};

/// What must be said with every brief.
pub const CAUTION: &str = "This is arithmetic, not certified avionics. Follow charts, clearances, the flight manual and the local \
authority; leave decisions to licensed crews; do not use it for real navigation unless your own approval process covers it.";

/// The brief as data: plain numbers whose names end in their units.
#[derive(Serialize)]
pub struct Brief {
    pub title: String,
    pub caution: &'static str,
    pub pressure_altitude_ft: f64,
    pub altimeter_setting_hpa: f64,
    pub temperature_degc: f64,
    pub isa_deviation_k: f64,
    pub calibrated_airspeed_kt: f64,
    pub mach: f64,
    pub true_airspeed_kt: f64,
    pub bank_limit_deg: f64,
    /// None if there is no such limit; likewise for an instant roll.
    pub turn_rate_limit_deg_per_s: Option<f64>,
    pub roll_rate_deg_per_s: Option<f64>,
    /// Flown, with the turns.
    pub total_distance_nm: f64,
    pub total_time_s: f64,
    pub legs: Vec<Leg>,
    pub course_changes: Vec<Change>,
}

impl Brief {
    /// Briefs a plan; the error names the fix and what stands in the way.
    pub fn of(plan: &Plan) -> Result<Self, String> {
        let pairs: Vec<(&Fix, &Fix)> = plan.route.iter().zip(plan.route.iter().skip(1)).collect();
        let lines = pairs.iter().map(|(from, to)| Line::between(from, to)).collect::<Result<Vec<_>, _>>()?;
        let turns = turns(plan, &lines)?;
        let legs = legs(plan, &pairs, &lines, &turns)?;

        let mut course_changes: Vec<Change> = Vec::new();
        for ((turn, fix), leg) in turns.iter().zip(plan.route.iter().skip(1)).zip(&legs) {
            let last_roll_out_s = course_changes.last().map_or(0.0, |last| last.roll_out_after_start_s);
            course_changes.push(Change::of(plan, fix, turn, leg.straight_time_s, last_roll_out_s)?);
        }

        let air = Air::new(plan.pressure_altitude, plan.deviation);
        let calibrated = air.calibrated_from_true(plan.true_airspeed).map_err(|error| error.to_string())?;
        let mach = air.mach_from_true(plan.true_airspeed).map_err(|error| error.to_string())?;
        let finite = |value: f64| value.is_finite().then_some(value);
        Ok(Self {
            title: plan.title.clone(),
            caution: CAUTION,
            pressure_altitude_ft: plan.pressure_altitude.value().get::<foot>(),
            altimeter_setting_hpa: plan.setting.value().get::<hectopascal>(),
            temperature_degc: air.temperature().value().get::<degree_celsius>(),
            isa_deviation_k: plan.deviation.value().get::<kelvin_interval>(),
            calibrated_airspeed_kt: calibrated.value().get::<knot>(),
            mach: mach.value().get::<ratio>(),
            true_airspeed_kt: plan.true_airspeed.value().get::<knot>(),
            bank_limit_deg: plan.limits.bank.value().get::<degree>(),
            turn_rate_limit_deg_per_s: finite(plan.limits.rate.value().get::<degree_per_second>()),
            roll_rate_deg_per_s: finite(plan.limits.roll.value().get::<degree_per_second>()),
            total_distance_nm: legs.iter().map(|leg| leg.straight_nm).sum::<f64>()
                + course_changes.iter().map(|change| change.turn_length_nm).sum::<f64>(),
            total_time_s: legs.iter().map(|leg| leg.straight_time_s).sum::<f64>()
                + course_changes.iter().map(|change| change.turn_time_s).sum::<f64>(),
            legs,
            course_changes,
        })
    }
}

/// The turns at the fixes between two legs: from the final course of one to the initial course of the next.
fn turns(plan: &Plan, lines: &[Line]) -> Result<Vec<CourseChange<TrueNorth>>, String> {
    let fixes = plan.route.iter().enumerate().skip(1);
    let turn = |((index, fix), (inbound, outbound)): ((usize, &Fix), (&Line, &Line))| {
        let (from, onto) = (inbound.last, outbound.initial);
        CourseChange::new(from, onto, plan.true_airspeed, fix.wind, &plan.limits, fix.turn)
            .map_err(|error| format!("route fix {} ({}): {error}", index + 1, fix.ident))
    };
    fixes.zip(lines.iter().zip(lines.iter().skip(1))).map(turn).collect()
}

fn legs(
    plan: &Plan,
    pairs: &[(&Fix, &Fix)],
    lines: &[Line],
    turns: &[CourseChange<TrueNorth>],
) -> Result<Vec<Leg>, String> {
    let leg = |(index, ((from, to), line)): (usize, (&(&Fix, &Fix), &Line))| {
        let behind = index.checked_sub(1).and_then(|before| turns.get(before));
        let behind_nm = behind.map_or(0.0, |turn| turn.past_fix_at_roll_out().get::<nautical_mile>());
        let ahead_nm = turns.get(index).map_or(0.0, |turn| turn.lead().get::<nautical_mile>());
        Leg::of(from, to, line, plan.true_airspeed, behind_nm, ahead_nm)
    };
    pairs.iter().zip(lines).enumerate().map(leg).collect()
}
