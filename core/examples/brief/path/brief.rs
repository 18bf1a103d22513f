//! What a plan of legs comes to, in plain numbers whose names end in their units.

use lubberline::Error;
use lubberline::procedure::legs::{GroundPath, Place};
use lubberline::route::{PathBrief, PathCheck, PathLeg, PathStation, PathSurroundings, PathTurn};
use lubberline::value::TrueBearing;
use lubberline::value::units::{
    degree, degree_per_second, foot, foot_per_minute, hectopascal, kelvin_interval, knot, nautical_mile,
    second,
};
use serde::Serialize;

use super::plan::{Plan, Planned};
use crate::brief::CAUTION;
use crate::plan::Site;

#[derive(Serialize)]
pub struct Brief {
    pub title: String,
    pub caution: &'static str,
    /// From which north the plan gives its courses and headings: "true" or "magnetic".
    pub courses_given: &'static str,
    /// None if that is true north.
    pub magnetic_variation_deg: Option<f64>,
    pub pressure_altitude_ft: f64,
    pub altimeter_setting_hpa: f64,
    pub isa_deviation_k: f64,
    pub true_airspeed_kt: f64,
    pub wind_from_deg: f64,
    pub wind_speed_kt: f64,
    pub climb_fpm: f64,
    pub bank_limit_deg: f64,
    /// None if there is no such limit; likewise for an instant roll.
    pub turn_rate_limit_deg_per_s: Option<f64>,
    pub roll_rate_deg_per_s: Option<f64>,
    pub total_distance_nm: f64,
    pub total_time_s: f64,
    pub legs: Vec<Leg>,
    #[serde(skip)]
    pub flown: PathBrief,
}

/// A leg as it is briefed.
#[derive(Serialize)]
pub struct Leg {
    pub number: usize,
    pub code: &'static str,
    pub meaning: &'static str,
    pub fix: Option<String>,
    /// True, likewise the heading; beside them the same from magnetic north, if the plan gives a variation.
    pub course_deg: f64,
    pub heading_deg: f64,
    pub magnetic_course_deg: Option<f64>,
    pub magnetic_heading_deg: Option<f64>,
    pub groundspeed_kt: f64,
    pub headwind_kt: f64,
    pub crosswind_kt: f64,
    /// With its turns.
    pub distance_nm: f64,
    pub time_s: f64,
    pub end_after_start_s: f64,
    /// Above mean sea level.
    pub end_altitude_ft: f64,
    pub shortest_straight_nm: Option<f64>,
    /// What keeps to its arc.
    pub arc_bank_deg: Option<f64>,
    pub turns: Vec<Turn>,
    /// What a crew should know before flying it.
    pub checks: Vec<String>,
}

#[derive(Serialize)]
pub struct Turn {
    pub begin: TurnPoint,
    pub roll_out: TurnPoint,
    pub heading_change_deg: f64,
    pub bank_deg: f64,
    pub governed_by: &'static str,
    pub time_s: f64,
}

/// Where a turn begins or ends.
#[derive(Serialize)]
pub struct TurnPoint {
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub altitude_ft: f64,
    pub after_start_s: f64,
    pub course_deg: f64,
    pub magnetic_course_deg: Option<f64>,
    pub stations: Vec<Reading>,
}

/// What a station is seen as.
#[derive(Serialize)]
pub struct Reading {
    pub ident: String,
    pub dme_nm: f64,
    /// None overhead.
    pub radial_deg: Option<f64>,
    /// "clear", or why it is not to be used.
    pub flag: &'static str,
}

impl Brief {
    /// Briefs a plan of legs; the error names the leg and what stands in the way.
    pub fn of(plan: &Plan) -> Result<Self, String> {
        let conditions = &plan.conditions;
        let flown = flown(plan, plan.legs.len()).map_err(|error| with_its_leg(plan, &error))?;
        let finite = |value: f64| value.is_finite().then_some(value);
        let briefed = plan.legs.iter().zip(&flown.legs).enumerate();
        let briefed = briefed.map(|(index, (planned, leg))| Leg {
            checks: checks(plan, &flown, index),
            ..Leg::of(plan, index + 1, planned, leg)
        });
        let briefed = briefed.collect();
        Ok(Self {
            title: plan.title.clone(),
            caution: CAUTION,
            courses_given: if plan.variation.is_some() { "magnetic" } else { "true" },
            magnetic_variation_deg: plan.variation.map(|variation| variation.angle().get::<degree>()),
            pressure_altitude_ft: plan.pressure_altitude.value().get::<foot>(),
            altimeter_setting_hpa: plan.setting.value().get::<hectopascal>(),
            isa_deviation_k: plan.deviation.value().get::<kelvin_interval>(),
            true_airspeed_kt: conditions.true_airspeed.value().get::<knot>(),
            wind_from_deg: conditions.wind.from.angle().get::<degree>(),
            wind_speed_kt: conditions.wind.speed.value().get::<knot>(),
            climb_fpm: conditions.climb.get::<foot_per_minute>(),
            bank_limit_deg: conditions.limits.bank.value().get::<degree>(),
            turn_rate_limit_deg_per_s: finite(conditions.limits.rate.value().get::<degree_per_second>()),
            roll_rate_deg_per_s: finite(conditions.limits.roll.value().get::<degree_per_second>()),
            total_distance_nm: flown.distance().get::<nautical_mile>(),
            total_time_s: flown.time().get::<second>(),
            legs: briefed,
            flown,
        })
    }
}

/// The first legs of a plan, flown and briefed.
fn flown(plan: &Plan, count: usize) -> Result<PathBrief, Error> {
    let legs: Vec<_> = plan.legs.iter().take(count).map(|planned| planned.leg).collect();
    let path = match &plan.winds {
        Some(winds) => GroundPath::fly_aloft(&legs, &plan.conditions, winds),
        None => GroundPath::fly(&legs, &plan.conditions),
    };
    PathBrief::of_path(&legs, path?)
}

/// An error with the leg it is of: where it names none itself, the last of the fewest first legs that bring one of its kind.
fn with_its_leg(plan: &Plan, error: &Error) -> String {
    let brings = |&count: &usize| flown(plan, count).is_err_and(|other| other.code() == error.code());
    let leg = (1..=plan.legs.len()).find(brings).filter(|_| error.leg().is_none());
    match leg.and_then(|leg| plan.legs.get(leg - 1).map(|planned| (leg, planned.leg.code().word()))) {
        Some((leg, code)) => format!("leg {leg} ({code}): {error}"),
        None => error.to_string(),
    }
}

impl Leg {
    fn of(plan: &Plan, number: usize, planned: &Planned, leg: &PathLeg) -> Self {
        Self {
            number,
            code: leg.code.word(),
            meaning: leg.code.meaning(),
            fix: planned.fix.clone(),
            course_deg: leg.course.angle().get::<degree>(),
            heading_deg: leg.crab.heading.angle().get::<degree>(),
            magnetic_course_deg: magnetic_deg(plan, leg.course),
            magnetic_heading_deg: magnetic_deg(plan, leg.crab.heading),
            groundspeed_kt: leg.crab.groundspeed.value().get::<knot>(),
            headwind_kt: leg.wind.headwind.value().get::<knot>(),
            crosswind_kt: leg.wind.crosswind.value().get::<knot>(),
            distance_nm: leg.distance.get::<nautical_mile>(),
            time_s: leg.time.get::<second>(),
            end_after_start_s: leg.end.time.get::<second>(),
            end_altitude_ft: leg.end.altitude.value().get::<foot>(),
            shortest_straight_nm: leg.shortest_straight.map(|length| length.get::<nautical_mile>()),
            arc_bank_deg: leg.arc_bank.map(|bank| bank.get::<degree>()),
            turns: leg.turns.iter().map(|turn| Turn::of(plan, turn)).collect(),
            checks: Vec::new(),
        }
    }
}

impl Turn {
    fn of(plan: &Plan, turn: &PathTurn) -> Self {
        Self {
            begin: TurnPoint::of(plan, &turn.begin),
            roll_out: TurnPoint::of(plan, &turn.roll_out),
            heading_change_deg: turn.turn.heading_change().get::<degree>(),
            bank_deg: turn.turn.bank().get::<degree>(),
            governed_by: turn.turn.governor().word(),
            time_s: turn.turn.duration().get::<second>(),
        }
    }
}

impl TurnPoint {
    fn of(plan: &Plan, place: &Place) -> Self {
        Self {
            latitude_deg: place.position.latitude().angle().get::<degree>(),
            longitude_deg: place.position.longitude().angle().get::<degree>(),
            altitude_ft: place.altitude.value().get::<foot>(),
            after_start_s: place.time.get::<second>(),
            course_deg: place.course.angle().get::<degree>(),
            magnetic_course_deg: magnetic_deg(plan, place.course),
            stations: plan.stations.iter().map(|site| reading(site, place)).collect(),
        }
    }
}

fn magnetic_deg(plan: &Plan, direction: TrueBearing) -> Option<f64> {
    plan.variation.map(|variation| direction.to_magnetic(variation).angle().get::<degree>())
}

fn reading(site: &Site, place: &Place) -> Reading {
    let seen = on_path(site).seen_from(place);
    Reading {
        ident: site.ident.clone(),
        dme_nm: seen.dme.value().get::<nautical_mile>(),
        radial_deg: seen.radial.map(|radial| radial.angle().get::<degree>()),
        flag: seen.flag.word(),
    }
}

fn on_path(site: &Site) -> PathStation {
    PathStation { station: site.station, cone_half_angle: site.cone }
}

/// What a crew should know of a leg before flying it.
fn checks(plan: &Plan, flown: &PathBrief, leg: usize) -> Vec<String> {
    let surroundings = PathSurroundings {
        stations: plan.stations.iter().map(on_path).collect(),
        setting: plan.setting,
        deviation: plan.deviation,
        holding_rule: plan.holding_rule,
    };
    let site = |check: &PathCheck| check.station().and_then(|station| plan.stations.get(station));
    let ident = |check: &PathCheck| site(check).map_or("", |site| site.ident.as_str());
    // A racetrack that ends outside the atmosphere has no speed to be checked.
    let found = flown.checks(leg, &surroundings).unwrap_or_default();
    found.iter().map(|check| check.sentence(ident(check))).collect()
}
