//! A course change as it is briefed: where to begin, the turn, the roll-out, the cone, and what other ways would do.

use lubberline::air::height_above_station;
use lubberline::earth::slant_range;
use lubberline::lead::{CourseChange, TurnPoint};
use lubberline::rules;
use lubberline::station::cone_radius;
use lubberline::value::units::{
    Length, degree, degrees, foot, knot, nautical_mile, nautical_miles, second, seconds,
};
use lubberline::value::{
    DirectionChange, GroundDistance, HeightAboveStation, InterceptAngle, TrueBearing, TrueNorth,
};
use serde::Serialize;

use crate::plan::{Fix, Plan};

/// The angle at which the outbound course would be intercepted after flying over a fix; common practice.
const INTERCEPT_DEG: f64 = 30.0;

/// In how many parts a turn is drawn.
const TURN_PARTS: u32 = 40;

/// Plain numbers with their units, for showing. Radials are in the station's own north, all else is true.
#[derive(Serialize)]
pub struct Change {
    pub fix: String,
    pub name: String,
    pub height_above_station_ft: f64,
    pub wind_from_deg: f64,
    pub wind_speed_kt: f64,
    pub inbound_course_deg: f64,
    pub outbound_course_deg: f64,
    /// Right positive, the short way.
    pub course_change_deg: f64,
    pub inbound_radial_deg: f64,
    pub outbound_radial_deg: f64,
    pub heading_before_deg: f64,
    pub heading_after_deg: f64,
    /// Right positive, the way that is turned.
    pub heading_change_deg: f64,
    pub groundspeed_before_kt: f64,
    pub groundspeed_after_kt: f64,
    pub bank_deg: f64,
    pub governed_by: &'static str,
    /// None if there is no turn.
    pub radius_nm: Option<f64>,
    pub begin_at_dme_nm: f64,
    pub begin_on_radial_deg: f64,
    /// Negative past the fix.
    pub begin_before_fix_nm: f64,
    /// What a tenth on the DME is along the ground there: much, close to overhead. None overhead.
    pub ground_per_dme_tenth_nm: Option<f64>,
    pub begin_after_last_roll_out_s: f64,
    pub begin_after_start_s: f64,
    pub turn_time_s: f64,
    pub turn_length_nm: f64,
    pub roll_out_after_start_s: f64,
    pub roll_out_dme_nm: f64,
    pub roll_out_radial_deg: f64,
    /// Negative before the fix.
    pub roll_out_past_fix_nm: f64,
    pub closest_approach_nm: f64,
    pub cone_radius_nm: f64,
    pub cone_edge_dme_nm: f64,
    pub begins_in_cone: bool,
    pub enters_cone: bool,
    pub fly_over: FlyOver,
    pub by_rule: ByRule,
    #[serde(skip)]
    pub path: Vec<TurnPoint<TrueNorth>>,
}

/// What turning only over the fix would cost; not numbers (null) where the wind leaves no way back.
#[derive(Serialize)]
pub struct FlyOver {
    pub greatest_overshoot_nm: f64,
    pub extra_distance_nm: f64,
    pub extra_time_s: f64,
    pub intercept_angle_deg: f64,
    pub established_past_fix_nm: f64,
}

/// The common mental arithmetic, and its errors: rule less exact, positive if it begins the turn early.
#[derive(Serialize)]
pub struct ByRule {
    /// A third of a mile for each 60 kt, for 90 degrees.
    pub lead_nm: f64,
    pub lead_error_nm: f64,
    /// The same with half a mile for each 10 000 ft above 5 000 ft.
    pub lead_with_height_nm: f64,
    pub lead_with_height_error_nm: f64,
    /// The lead added to the height in miles.
    pub dme_nm: f64,
    pub dme_error_nm: f64,
}

fn miles(length: Length) -> f64 {
    length.get::<nautical_mile>()
}

fn course_deg(bearing: TrueBearing) -> f64 {
    bearing.angle().get::<degree>()
}

impl Change {
    /// The briefing of a turn at a fix, reached some time after the last roll-out, which was some time after the start.
    pub fn of(
        plan: &Plan,
        fix: &Fix,
        turn: &CourseChange<TrueNorth>,
        straight_s: f64,
        last_roll_out_s: f64,
    ) -> Result<Self, String> {
        let wrong = |error: lubberline::Error| format!("at {}: {error}", fix.ident);
        let height =
            height_above_station(plan.pressure_altitude, plan.setting, fix.station.elevation, plan.deviation);
        let (before, after, flown) = (turn.before(), turn.after(), turn.turn());
        let turn_time_s = flown.duration().get::<second>();
        let radius_nm = miles(flown.radius());
        let closest_nm = miles(turn.closest_approach().value());
        let cone = cone_radius(height, fix.cone_half_angle);
        let cone_radius_nm = miles(cone.value());
        let step_s = turn_time_s / f64::from(TURN_PARTS);
        Ok(Self {
            fix: fix.ident.clone(),
            name: fix.name.clone(),
            height_above_station_ft: height.value().get::<foot>(),
            wind_from_deg: course_deg(fix.wind.from),
            wind_speed_kt: fix.wind.speed.value().get::<knot>(),
            inbound_course_deg: course_deg(turn.inbound()),
            outbound_course_deg: course_deg(turn.outbound()),
            course_change_deg: turn.inbound().change_to(turn.outbound()).angle().get::<degree>(),
            inbound_radial_deg: fix.radial_deg(turn.inbound().reciprocal()),
            outbound_radial_deg: fix.radial_deg(turn.outbound()),
            heading_before_deg: course_deg(before.heading),
            heading_after_deg: course_deg(after.heading),
            heading_change_deg: flown.heading_change().get::<degree>(),
            groundspeed_before_kt: before.groundspeed.value().get::<knot>(),
            groundspeed_after_kt: after.groundspeed.value().get::<knot>(),
            bank_deg: flown.bank().get::<degree>(),
            governed_by: flown.governor().word(),
            radius_nm: radius_nm.is_finite().then_some(radius_nm),
            begin_at_dme_nm: miles(turn.reading_at_roll_in(height).value()),
            begin_on_radial_deg: fix.radial_deg(turn.bearing_at_roll_in()),
            begin_before_fix_nm: miles(turn.lead()),
            ground_per_dme_tenth_nm: ground_per_dme_tenth_nm(turn, height),
            begin_after_last_roll_out_s: straight_s,
            begin_after_start_s: last_roll_out_s + straight_s,
            turn_time_s,
            turn_length_nm: miles(turn.turn_length()),
            roll_out_after_start_s: last_roll_out_s + straight_s + turn_time_s,
            roll_out_dme_nm: miles(turn.reading_at_roll_out(height).value()),
            roll_out_radial_deg: fix.radial_deg(turn.bearing_at_roll_out()),
            roll_out_past_fix_nm: miles(turn.past_fix_at_roll_out()),
            closest_approach_nm: closest_nm,
            cone_radius_nm,
            cone_edge_dme_nm: miles(slant_range(cone, height).value()),
            begins_in_cone: miles(turn.lead()).abs() < cone_radius_nm,
            enters_cone: closest_nm < cone_radius_nm,
            fly_over: FlyOver::of(turn).map_err(wrong)?,
            by_rule: ByRule::of(turn, height).map_err(wrong)?,
            path: (0..=TURN_PARTS).map(|part| turn.at(seconds(step_s * f64::from(part)))).collect(),
        })
    }
}

/// How far the aircraft moves along the ground while the reading changes by a tenth: the slope of the slant range where
/// the turn begins, taken over a hundredth of a mile.
fn ground_per_dme_tenth_nm(turn: &CourseChange<TrueNorth>, height: HeightAboveStation) -> Option<f64> {
    let step = nautical_miles(0.005);
    let here = nautical_miles(miles(turn.lead()).abs());
    let reading =
        |length: Length| Some(miles(slant_range(GroundDistance::new(length).ok()?, height).value()));
    let slope = (reading(here + step)? - reading(here - step)?) / miles(step * 2.0);
    Some(0.1 / slope)
}

impl FlyOver {
    fn of(turn: &CourseChange<TrueNorth>) -> Result<Self, lubberline::Error> {
        let over = turn.fly_over(InterceptAngle::new(degrees(INTERCEPT_DEG))?);
        Ok(Self {
            greatest_overshoot_nm: miles(over.greatest_overshoot),
            extra_distance_nm: miles(over.extra_distance),
            extra_time_s: over.extra_time.get::<second>(),
            intercept_angle_deg: over.intercept_angle.get::<degree>(),
            established_past_fix_nm: miles(over.established_past_fix),
        })
    }
}

impl ByRule {
    fn of(turn: &CourseChange<TrueNorth>, height: HeightAboveStation) -> Result<Self, lubberline::Error> {
        let groundspeed = turn.before().groundspeed;
        let amount = DirectionChange::new(turn.inbound().change_to(turn.outbound()).angle())?;
        let lead_nm = miles(rules::third_of_a_mile(groundspeed, amount));
        let lead_with_height_nm = miles(rules::rule_lead(groundspeed, amount, height));
        let dme_nm = miles(rules::reading(groundspeed, amount, height));
        Ok(Self {
            lead_nm,
            lead_error_nm: lead_nm - miles(turn.lead()),
            lead_with_height_nm,
            lead_with_height_error_nm: lead_with_height_nm - miles(turn.lead()),
            dme_nm,
            dme_error_nm: dme_nm - miles(turn.reading_at_roll_in(height).value()),
        })
    }
}
