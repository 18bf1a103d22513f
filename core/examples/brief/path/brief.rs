//! What a plan of legs comes to, in plain numbers whose names end in their units.

use lubberline::air::{Air, indicated_altitude, pressure_altitude_at};
use lubberline::procedure::holding_speed;
use lubberline::procedure::legs::{GroundPath, LegPath, Place};
use lubberline::route::{PathBrief, PathLeg, PathTurn};
use lubberline::station::{Flag, Receiver};
use lubberline::value::units::{
    degree, degree_per_second, feet, foot, foot_per_minute, hectopascal, kelvin_interval, knot,
    nautical_mile, ratio, second,
};
use lubberline::value::{Elevation, Radial};
use serde::Serialize;

use super::plan::{Plan, Planned, meaning};
use crate::brief::CAUTION;
use crate::plan::Site;

#[derive(Serialize)]
pub struct Brief {
    pub title: String,
    pub caution: &'static str,
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
    pub meaning: String,
    pub fix: Option<String>,
    pub course_deg: f64,
    pub heading_deg: f64,
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
    pub stations: Vec<Reading>,
}

/// What a station is seen as.
#[derive(Serialize)]
pub struct Reading {
    pub ident: String,
    pub dme_nm: f64,
    /// None exactly overhead.
    pub radial_deg: Option<f64>,
    /// "clear", or why it is not to be used.
    pub flag: &'static str,
}

impl Brief {
    /// Briefs a plan of legs; the error names the leg and what stands in the way.
    pub fn of(plan: &Plan) -> Result<Self, String> {
        let legs: Vec<_> = plan.legs.iter().map(|planned| planned.leg).collect();
        let conditions = &plan.conditions;
        let path = match &plan.winds {
            Some(winds) => GroundPath::fly_aloft(&legs, conditions, winds),
            None => GroundPath::fly(&legs, conditions),
        };
        let flown =
            path.and_then(|path| PathBrief::of_path(&legs, path)).map_err(|error| error.to_string())?;
        let finite = |value: f64| value.is_finite().then_some(value);
        let briefed = plan.legs.iter().zip(&flown.legs).enumerate();
        let briefed = briefed.map(|(index, (planned, leg))| Leg::of(plan, index + 1, planned, leg));
        Ok(Self {
            title: plan.title.clone(),
            caution: CAUTION,
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
            legs: briefed.collect(),
            flown,
        })
    }
}

impl Leg {
    fn of(plan: &Plan, number: usize, planned: &Planned, leg: &PathLeg) -> Self {
        Self {
            number,
            code: leg.code.word(),
            meaning: meaning(leg.code),
            fix: planned.fix.clone(),
            course_deg: leg.course.angle().get::<degree>(),
            heading_deg: leg.crab.heading.angle().get::<degree>(),
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
            checks: checks(plan, leg),
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
            stations: plan.stations.iter().map(|site| reading(site, place)).collect(),
        }
    }
}

fn reading(site: &Site, place: &Place) -> Reading {
    let seen = site.station.observe(place.position, place.altitude);
    let receiver = Receiver { cone: site.cone, ..Receiver::default() };
    // With its own radial selected the needle is in the middle, and the flag is that of the place alone.
    let radial: Option<Radial> = seen.radial;
    let flag = radial.map_or(Flag::Cone, |radial| {
        receiver.receive(&site.station, place.position, place.altitude, radial).flag
    });
    Reading {
        ident: site.ident.clone(),
        dme_nm: seen.dme.value().get::<nautical_mile>(),
        radial_deg: radial.map(|radial| radial.angle().get::<degree>()),
        flag: flag.word(),
    }
}

/// What a crew should know of a leg before flying it.
fn checks(plan: &Plan, leg: &PathLeg) -> Vec<String> {
    let mut found = Vec::new();
    if !leg.keeps_its_arc(&plan.conditions)
        && let Some(bank) = leg.arc_bank
    {
        found.push(format!(
            "keeping to the arc takes {:.0} degrees of bank; the limit is {:.0}",
            bank.get::<degree>(),
            plan.conditions.limits.bank.value().get::<degree>()
        ));
    }
    for (turn, word) in leg.turns.iter().zip(1..) {
        for site in &plan.stations {
            let seen = reading(site, &turn.begin);
            if seen.flag == Flag::Cone.word() {
                found.push(format!(
                    "turn {word} begins in the cone of {}, where radials are of no use",
                    seen.ident
                ));
            }
        }
    }
    if leg.code.path() == LegPath::Hold {
        found.extend(held_too_fast(plan, leg));
    }
    found
}

/// Whether a racetrack is flown faster than the rule allows at the altitude where it ends.
fn held_too_fast(plan: &Plan, leg: &PathLeg) -> Option<String> {
    let sea = Elevation::new(feet(0.0)).ok()?;
    let altitude = pressure_altitude_at(leg.end.altitude, plan.setting, sea, plan.deviation).ok()?;
    let air = Air::new(altitude, plan.deviation);
    let rule = plan.holding_rule;
    let limit = holding_speed(rule, indicated_altitude(altitude, plan.setting));
    let calibrated = air.calibrated_from_true(plan.conditions.true_airspeed).ok()?;
    let mach = air.mach_from_true(plan.conditions.true_airspeed).ok()?;
    let limit = match (limit.indicated, limit.mach) {
        (Some(limit), _) if calibrated > limit => format!("{:.0} kt", limit.value().get::<knot>()),
        (None, Some(limit)) if mach > limit => format!("Mach {:.2}", limit.value().get::<ratio>()),
        _ => return None,
    };
    let at_ft = altitude.value().get::<foot>();
    Some(format!(
        "it is flown at {:.0} kt calibrated; the limit at {at_ft:.0} ft is {limit} ({})",
        calibrated.value().get::<knot>(),
        rule.word()
    ))
}
