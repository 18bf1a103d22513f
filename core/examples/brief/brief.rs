//! What a plan comes to: its legs and its course changes, with the times between them.

use lubberline::air::Air;
use lubberline::route::RouteBrief;
use lubberline::value::Position;
use lubberline::value::units::{
    degree, degree_celsius, degree_per_second, foot, hectopascal, kelvin_interval, knot, nautical_mile,
    nautical_miles, ratio, second,
};
use serde::Serialize;

use crate::change::Change;
use crate::leg::Leg;
use crate::plan::Plan;
use crate::sure::ErrorsGiven;

/// What must be said with every brief.
pub const CAUTION: &str = "This is arithmetic, not certified avionics. Follow charts, clearances, the flight manual and the local \
authority; leave decisions to licensed crews; do not use it for real navigation unless your own approval process covers it.";

/// In how many parts a turn is drawn, and how far apart the points of a leg are, in nautical miles.
const TURN_PARTS: u32 = 40;
const SPACING_NM: f64 = 20.0;

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
    pub errors: ErrorsGiven,
    /// Flown, with the turns. None if a leg is too short for the turns at its ends.
    pub total_distance_nm: Option<f64>,
    pub total_time_s: Option<f64>,
    pub legs: Vec<Leg>,
    pub course_changes: Vec<Change>,
    /// Points along the straight part of each leg, none if it is too short, and along each turn.
    #[serde(skip)]
    pub leg_points: Vec<Vec<Position>>,
    #[serde(skip)]
    pub turn_points: Vec<Vec<Position>>,
}

impl Brief {
    /// Briefs a plan; the error names the fix and what stands in the way.
    pub fn of(plan: &Plan) -> Result<Self, String> {
        let route = plan.route_plan()?;
        let brief = RouteBrief::of(&route).map_err(|error| plan.placed(&error))?;
        let pairs = plan.route.iter().zip(plan.route.iter().skip(1));
        let legs = pairs.zip(&brief.legs).map(|((from, to), leg)| Leg::of(from, to, leg)).collect();
        let inner = plan.route.iter().skip(1);
        let timed = brief.timed_legs();
        let whole = timed == brief.legs.len();
        let course_changes = inner
            .zip(&brief.turns)
            .enumerate()
            .map(|(index, (fix, turn))| {
                Change::of(fix, turn, &plan.errors, index < timed)
                    .map_err(|error| format!("errors at {}: {error}", fix.ident))
            })
            .collect::<Result<_, String>>()?;

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
            errors: ErrorsGiven::of(&plan.errors),
            total_distance_nm: whole.then(|| brief.distance().get::<nautical_mile>()),
            total_time_s: whole.then(|| brief.time().get::<second>()),
            legs,
            course_changes,
            leg_points: (0..brief.legs.len())
                .map(|leg| brief.leg_points(&route, leg, nautical_miles(SPACING_NM)))
                .collect(),
            turn_points: (0..brief.turns.len())
                .map(|turn| brief.turn_points(&route, turn, TURN_PARTS))
                .collect(),
        })
    }
}
