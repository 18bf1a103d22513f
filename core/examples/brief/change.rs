//! A course change as it is briefed: where to begin, the turn, the roll-out, the cone, and what other ways would do.

use lubberline::Error;
use lubberline::route::RouteTurn;
use lubberline::value::TrueBearing;
use lubberline::value::units::{Length, degree, foot, knot, nautical_mile, ratio, second};
use serde::Serialize;

use crate::plan::Fix;
use crate::sure::{Errors, Sure};

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
    /// Times since the last turn and since the start. None from a leg on that is too short, on which time would run backwards.
    pub begin_after_last_roll_out_s: Option<f64>,
    pub begin_after_start_s: Option<f64>,
    pub turn_time_s: f64,
    pub turn_length_nm: f64,
    pub roll_out_after_start_s: Option<f64>,
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
    pub sureness: Sure,
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
    pub fn of(fix: &Fix, turn: &RouteTurn, errors: &Errors, timed: bool) -> Result<Self, Error> {
        let (change, flown) = (&turn.change, turn.change.turn());
        let (before, after) = (change.before(), change.after());
        let turn_time_s = flown.duration().get::<second>();
        let radius_nm = miles(flown.radius());
        let ground_per_dme = turn.ground_per_reading().get::<ratio>();
        Ok(Self {
            fix: fix.ident.clone(),
            name: fix.name.clone(),
            height_above_station_ft: turn.height.value().get::<foot>(),
            wind_from_deg: course_deg(fix.on_route.wind.from),
            wind_speed_kt: fix.on_route.wind.speed.value().get::<knot>(),
            inbound_course_deg: course_deg(change.inbound()),
            outbound_course_deg: course_deg(change.outbound()),
            course_change_deg: change.inbound().change_to(change.outbound()).angle().get::<degree>(),
            inbound_radial_deg: turn.inbound_radial.angle().get::<degree>(),
            outbound_radial_deg: turn.outbound_radial.angle().get::<degree>(),
            heading_before_deg: course_deg(before.heading),
            heading_after_deg: course_deg(after.heading),
            heading_change_deg: flown.heading_change().get::<degree>(),
            groundspeed_before_kt: before.groundspeed.value().get::<knot>(),
            groundspeed_after_kt: after.groundspeed.value().get::<knot>(),
            bank_deg: flown.bank().get::<degree>(),
            governed_by: flown.governor().word(),
            radius_nm: radius_nm.is_finite().then_some(radius_nm),
            begin_at_dme_nm: miles(turn.begin_reading().value()),
            begin_on_radial_deg: turn.begin_radial.angle().get::<degree>(),
            begin_before_fix_nm: miles(change.lead()),
            ground_per_dme_tenth_nm: ground_per_dme.is_finite().then_some(0.1 * ground_per_dme),
            begin_after_last_roll_out_s: timed.then(|| turn.straight_time.get::<second>()),
            begin_after_start_s: timed.then(|| turn.begin_time.get::<second>()),
            turn_time_s,
            turn_length_nm: miles(change.turn_length()),
            roll_out_after_start_s: timed.then(|| turn.roll_out_time().get::<second>()),
            roll_out_dme_nm: miles(turn.roll_out_reading().value()),
            roll_out_radial_deg: turn.roll_out_radial.angle().get::<degree>(),
            roll_out_past_fix_nm: miles(change.past_fix_at_roll_out()),
            closest_approach_nm: miles(turn.closest_approach.value()),
            cone_radius_nm: miles(turn.cone_radius.value()),
            cone_edge_dme_nm: miles(turn.cone_edge_reading().value()),
            begins_in_cone: turn.begins_in_cone(),
            enters_cone: turn.enters_cone(),
            fly_over: FlyOver {
                greatest_overshoot_nm: miles(turn.fly_over.greatest_overshoot),
                extra_distance_nm: miles(turn.fly_over.extra_distance),
                extra_time_s: turn.fly_over.extra_time.get::<second>(),
                intercept_angle_deg: turn.fly_over.intercept_angle.get::<degree>(),
                established_past_fix_nm: miles(turn.fly_over.established_past_fix),
            },
            by_rule: ByRule::of(turn),
            sureness: Sure::of(turn, errors)?,
        })
    }
}

impl ByRule {
    fn of(turn: &RouteTurn) -> Self {
        let (rule, lead_nm) = (turn.by_rule(), miles(turn.change.lead()));
        Self {
            lead_nm: miles(rule.lead),
            lead_error_nm: miles(rule.lead) - lead_nm,
            lead_with_height_nm: miles(rule.lead_with_height),
            lead_with_height_error_nm: miles(rule.lead_with_height) - lead_nm,
            dme_nm: miles(rule.reading),
            dme_error_nm: miles(rule.reading) - miles(turn.begin_reading().value()),
        }
    }
}
