//! What a plan comes to: its legs, its course changes, and what each costs. Plain numbers with their units, for showing.

use lubberline::air::{Air, height_above_station};
use lubberline::earth::inverse;
use lubberline::lead::{CourseChange, TurnPoint};
use lubberline::rules;
use lubberline::station::cone_radius;
use lubberline::value::units::{
    Length, degree, degree_celsius, degrees, foot, kelvin_interval, knot, nautical_mile, ratio, second,
    seconds,
};
use lubberline::value::{DirectionChange, InterceptAngle, TrueBearing, TrueNorth};
use serde::Serialize;

use crate::plan::{Fix, Plan};

/// What must be said with every brief.
pub const CAUTION: &str = "This is arithmetic, not certified avionics. Follow charts, clearances, the flight manual and the local \
authority; leave decisions to licensed crews; do not use it for real navigation unless your own approval process covers it.";

/// The angle at which the outbound course would be intercepted after flying over a fix; common practice.
const INTERCEPT_DEG: f64 = 30.0;

/// In how many parts a turn is drawn.
const TURN_PARTS: u32 = 40;

#[derive(Serialize)]
pub struct Brief {
    pub title: String,
    pub pressure_altitude_ft: f64,
    pub isa_deviation_k: f64,
    pub temperature_degc: f64,
    pub true_airspeed_kt: f64,
    pub calibrated_airspeed_kt: f64,
    pub mach: f64,
    pub total_distance_nm: f64,
    pub total_time_s: f64,
    pub legs: Vec<Leg>,
    pub course_changes: Vec<Change>,
    pub caution: &'static str,
}

#[derive(Serialize)]
pub struct Leg {
    pub from: String,
    pub to: String,
    pub length_nm: f64,
    /// True courses where it begins and where it ends.
    pub initial_course_deg: f64,
    pub final_course_deg: f64,
    /// The radials it is flown on: away from the first station, toward the second.
    pub radial_from_deg: f64,
    pub radial_to_deg: f64,
    /// What is left between the turns at its ends.
    pub straight_nm: f64,
    pub long_enough: bool,
    pub heading_deg: f64,
    pub groundspeed_kt: f64,
    pub straight_time_s: f64,
}

#[derive(Serialize)]
pub struct Change {
    pub fix: String,
    pub name: String,
    pub height_above_station_ft: f64,
    pub wind_from_deg: f64,
    pub wind_speed_kt: f64,
    pub inbound_course_deg: f64,
    pub outbound_course_deg: f64,
    pub course_change_deg: f64,
    pub inbound_radial_deg: f64,
    pub outbound_radial_deg: f64,
    pub heading_before_deg: f64,
    pub heading_after_deg: f64,
    pub heading_change_deg: f64,
    pub groundspeed_before_kt: f64,
    pub groundspeed_after_kt: f64,
    pub bank_deg: f64,
    pub governed_by: &'static str,
    pub radius_nm: Option<f64>,
    pub begin_at_dme_nm: f64,
    pub begin_before_fix_nm: f64,
    pub time_from_last_roll_out_s: f64,
    pub turn_time_s: f64,
    pub roll_out_past_fix_nm: f64,
    pub roll_out_dme_nm: f64,
    pub roll_out_radial_deg: f64,
    pub closest_approach_nm: f64,
    pub cone_radius_nm: f64,
    pub enters_cone: bool,
    pub fly_over: FlyOver,
    pub by_rule: ByRule,
    #[serde(skip)]
    pub path: Vec<TurnPoint<TrueNorth>>,
}

#[derive(Serialize)]
pub struct FlyOver {
    pub greatest_overshoot_nm: f64,
    pub extra_distance_nm: f64,
    pub extra_time_s: f64,
    pub intercept_angle_deg: f64,
    pub established_past_fix_nm: f64,
}

#[derive(Serialize)]
pub struct ByRule {
    /// A third of a mile for each 60 kt, for 90 degrees.
    pub lead_nm: f64,
    /// The same with half a mile for each 10 000 ft above 5 000 ft.
    pub lead_with_height_nm: f64,
    /// The lead added to the height in miles.
    pub reading_nm: f64,
    /// Rule less exact.
    pub lead_error_nm: f64,
    pub reading_error_nm: f64,
}

fn miles(length: Length) -> f64 {
    length.get::<nautical_mile>()
}

fn course_deg(bearing: TrueBearing) -> f64 {
    bearing.angle().get::<degree>()
}

/// The direction of a true bearing in a station's north, 0 to 360.
fn radial_deg(fix: &Fix, bearing: TrueBearing) -> f64 {
    let declination = fix.station.declination.angle().get::<degree>();
    (course_deg(bearing) - declination).rem_euclid(360.0)
}

/// A geodesic leg between two fixes: its length and its true courses at both ends.
struct Line {
    length_nm: f64,
    initial: TrueBearing,
    last: TrueBearing,
}

fn line(from: &Fix, to: &Fix) -> Result<Line, String> {
    let line = inverse(from.station.position, to.station.position);
    match (line.initial_bearing, line.final_bearing) {
        (Some(initial), Some(last)) => Ok(Line { length_nm: miles(line.distance.value()), initial, last }),
        _ => Err(format!(
            "route: {} and {} are at the same place; allowed: different positions",
            from.ident, to.ident
        )),
    }
}

impl Brief {
    /// Briefs a plan; the error names the fix and what stands in the way.
    pub fn of(plan: &Plan) -> Result<Self, String> {
        let pairs: Vec<(&Fix, &Fix)> = plan.route.iter().zip(plan.route.iter().skip(1)).collect();
        let lines = pairs.iter().map(|(from, to)| line(from, to)).collect::<Result<Vec<_>, _>>()?;
        let mut turns = Vec::new();
        for ((inbound, outbound), fix) in
            lines.iter().zip(lines.iter().skip(1)).zip(plan.route.iter().skip(1))
        {
            let turn = CourseChange::new(
                inbound.last,
                outbound.initial,
                plan.true_airspeed,
                fix.wind,
                &plan.limits,
                fix.turn,
            );
            turns.push(turn.map_err(|error| format!("at {}: {error}", fix.ident))?);
        }

        let mut legs = Vec::new();
        for (index, ((from, to), line)) in pairs.iter().zip(&lines).enumerate() {
            let behind_nm = index
                .checked_sub(1)
                .and_then(|before| turns.get(before))
                .map(|turn| miles(turn.past_fix_at_roll_out()));
            let ahead_nm = turns.get(index).map(|turn| miles(turn.lead()));
            legs.push(leg(plan, from, to, line, behind_nm.unwrap_or(0.0), ahead_nm.unwrap_or(0.0))?);
        }
        let course_changes: Vec<Change> = turns
            .iter()
            .zip(plan.route.iter().skip(1))
            .zip(&legs)
            .map(|((turn, fix), leg)| change(plan, fix, turn, leg.straight_time_s))
            .collect::<Result<_, _>>()?;

        let air = Air::new(plan.pressure_altitude, plan.deviation);
        let calibrated = air.calibrated_from_true(plan.true_airspeed).map_err(|error| error.to_string())?;
        let mach = air.mach_from_true(plan.true_airspeed).map_err(|error| error.to_string())?;
        let turning_nm: f64 = turns.iter().map(|turn| miles(turn.turn_length())).sum();
        let turning_s: f64 = course_changes.iter().map(|change| change.turn_time_s).sum();
        Ok(Self {
            title: plan.title.clone(),
            pressure_altitude_ft: plan.pressure_altitude.value().get::<foot>(),
            isa_deviation_k: plan.deviation.value().get::<kelvin_interval>(),
            temperature_degc: air.temperature().value().get::<degree_celsius>(),
            true_airspeed_kt: plan.true_airspeed.value().get::<knot>(),
            calibrated_airspeed_kt: calibrated.value().get::<knot>(),
            mach: mach.value().get::<ratio>(),
            total_distance_nm: turning_nm + legs.iter().map(|leg| leg.straight_nm).sum::<f64>(),
            total_time_s: turning_s + legs.iter().map(|leg| leg.straight_time_s).sum::<f64>(),
            legs,
            course_changes,
            caution: CAUTION,
        })
    }
}

fn leg(plan: &Plan, from: &Fix, to: &Fix, line: &Line, behind_nm: f64, ahead_nm: f64) -> Result<Leg, String> {
    // The leg is flown in the wind of the fix it leads to.
    let crabbed = lubberline::wind::hold_course(line.last, plan.true_airspeed, to.wind)
        .map_err(|error| format!("leg {} to {}: {error}", from.ident, to.ident))?;
    let groundspeed_kt = crabbed.groundspeed.value().get::<knot>();
    let straight_nm = line.length_nm - behind_nm - ahead_nm;
    Ok(Leg {
        from: from.ident.clone(),
        to: to.ident.clone(),
        length_nm: line.length_nm,
        initial_course_deg: course_deg(line.initial),
        final_course_deg: course_deg(line.last),
        radial_from_deg: radial_deg(from, line.initial),
        radial_to_deg: radial_deg(to, line.last.reciprocal()),
        straight_nm,
        long_enough: straight_nm >= 0.0,
        heading_deg: course_deg(crabbed.heading),
        groundspeed_kt,
        straight_time_s: straight_nm / groundspeed_kt * 3600.0,
    })
}

fn change(
    plan: &Plan,
    fix: &Fix,
    turn: &CourseChange<TrueNorth>,
    time_before_s: f64,
) -> Result<Change, String> {
    let wrong = |error: lubberline::Error| format!("at {}: {error}", fix.ident);
    let height =
        height_above_station(plan.pressure_altitude, plan.setting, fix.station.elevation, plan.deviation);
    let intercept = InterceptAngle::new(degrees(INTERCEPT_DEG)).map_err(wrong)?;
    let over = turn.fly_over(intercept);
    let (before, after, flown) = (turn.before(), turn.after(), turn.turn());

    let course_change = turn.inbound().change_to(turn.outbound());
    let groundspeed = before.groundspeed;
    let amount = DirectionChange::new(course_change.angle()).map_err(wrong)?;
    let exact_lead_nm = miles(turn.lead());
    let exact_reading_nm = miles(turn.reading_at_roll_in(height).value());
    let rule_lead_nm = miles(rules::third_of_a_mile(groundspeed, amount));
    let rule_reading_nm = miles(rules::reading(groundspeed, amount, height));

    let closest_approach_nm = miles(turn.closest_approach().value());
    let cone_radius_nm = miles(cone_radius(height, fix.cone_half_angle).value());
    let step_s = flown.duration().get::<second>() / f64::from(TURN_PARTS);
    let radius_nm = miles(flown.radius());
    Ok(Change {
        fix: fix.ident.clone(),
        name: fix.name.clone(),
        height_above_station_ft: height.value().get::<foot>(),
        wind_from_deg: course_deg(fix.wind.from),
        wind_speed_kt: fix.wind.speed.value().get::<knot>(),
        inbound_course_deg: course_deg(turn.inbound()),
        outbound_course_deg: course_deg(turn.outbound()),
        course_change_deg: course_change.angle().get::<degree>(),
        inbound_radial_deg: radial_deg(fix, turn.inbound().reciprocal()),
        outbound_radial_deg: radial_deg(fix, turn.outbound()),
        heading_before_deg: course_deg(before.heading),
        heading_after_deg: course_deg(after.heading),
        heading_change_deg: flown.heading_change().get::<degree>(),
        groundspeed_before_kt: before.groundspeed.value().get::<knot>(),
        groundspeed_after_kt: after.groundspeed.value().get::<knot>(),
        bank_deg: flown.bank().get::<degree>(),
        governed_by: flown.governor().word(),
        radius_nm: radius_nm.is_finite().then_some(radius_nm),
        begin_at_dme_nm: exact_reading_nm,
        begin_before_fix_nm: exact_lead_nm,
        time_from_last_roll_out_s: time_before_s,
        turn_time_s: flown.duration().get::<second>(),
        roll_out_past_fix_nm: miles(turn.past_fix_at_roll_out()),
        roll_out_dme_nm: miles(turn.reading_at_roll_out(height).value()),
        roll_out_radial_deg: radial_deg(fix, turn.bearing_at_roll_out()),
        closest_approach_nm,
        cone_radius_nm,
        enters_cone: closest_approach_nm < cone_radius_nm,
        fly_over: FlyOver {
            greatest_overshoot_nm: miles(over.greatest_overshoot),
            extra_distance_nm: miles(over.extra_distance),
            extra_time_s: over.extra_time.get::<second>(),
            intercept_angle_deg: over.intercept_angle.get::<degree>(),
            established_past_fix_nm: miles(over.established_past_fix),
        },
        by_rule: ByRule {
            lead_nm: rule_lead_nm,
            lead_with_height_nm: miles(rules::rule_lead(groundspeed, amount, height)),
            reading_nm: rule_reading_nm,
            lead_error_nm: rule_lead_nm - exact_lead_nm,
            reading_error_nm: rule_reading_nm - exact_reading_nm,
        },
        path: (0..=TURN_PARTS).map(|part| turn.at(seconds(step_s * f64::from(part)))).collect(),
    })
}
