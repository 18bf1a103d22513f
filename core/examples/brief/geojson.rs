//! The brief as GeoJSON (RFC 7946): stations, the legs between the turns, the turns as flown, where they begin and end.

use lubberline::value::Position;
use lubberline::value::units::degree;
use serde_json::{Value, json};

use crate::brief::Brief;
use crate::change::Change;
use crate::leg::Leg;
use crate::plan::{Fix, Plan};

/// Longitude and latitude in degrees, in this order.
type Place = [f64; 2];

fn place(position: Position) -> Place {
    [position.longitude().angle().get::<degree>(), position.latitude().angle().get::<degree>()]
}

/// The whole brief as a feature collection, with its title and caution as foreign members (section 6.1).
pub fn write(plan: &Plan, brief: &Brief) -> Value {
    let mut features: Vec<Value> = Vec::new();
    let mut drawn: Vec<&str> = Vec::new();
    for fix in &plan.route {
        // A route may come by a station twice.
        if !drawn.contains(&fix.ident.as_str()) {
            drawn.push(&fix.ident);
            features.push(station(fix));
        }
    }
    for (index, (leg, points)) in brief.legs.iter().zip(&brief.leg_points).enumerate() {
        features.push(leg_feature(leg, points));
        if let (Some(change), Some(path)) = (brief.course_changes.get(index), brief.turn_points.get(index)) {
            features.extend(turn_features(change, path));
        }
    }
    json!({ "type": "FeatureCollection", "title": brief.title, "caution": brief.caution, "features": features })
}

pub fn feature(geometry: Value, properties: Value) -> Value {
    json!({ "type": "Feature", "geometry": geometry, "properties": properties })
}

pub fn point(position: Position) -> Value {
    json!({ "type": "Point", "coordinates": place(position) })
}

fn station(fix: &Fix) -> Value {
    let properties = json!({
        "kind": "station", "ident": fix.ident, "name": fix.name,
        "elevation_ft": fix.on_route.station.elevation.value().get::<lubberline::value::units::foot>(),
        "declination_deg": fix.on_route.station.declination.angle().get::<degree>(),
    });
    feature(point(fix.on_route.station.position), properties)
}

/// The part of a leg that is flown straight; none (an unlocated feature, section 3.2) where its turns overlap.
fn leg_feature(leg: &Leg, points: &[Position]) -> Value {
    let properties = json!({
        "kind": "leg", "from": leg.from, "to": leg.to,
        "initial_course_deg": leg.initial_course_deg, "final_course_deg": leg.final_course_deg,
        "length_nm": leg.length_nm, "straight_nm": leg.straight_nm, "straight_time_s": leg.straight_time_s,
        "groundspeed_kt": leg.groundspeed_kt, "long_enough": leg.long_enough,
    });
    feature(lines(points), properties)
}

fn turn_features(change: &Change, path: &[Position]) -> Vec<Value> {
    let turn = json!({
        "kind": "turn", "fix": change.fix, "turn_time_s": change.turn_time_s, "bank_deg": change.bank_deg,
        "governed_by": change.governed_by, "heading_change_deg": change.heading_change_deg,
    });
    let begin = json!({
        "kind": "begin", "fix": change.fix, "dme_nm": change.begin_at_dme_nm,
        "radial_deg": change.begin_on_radial_deg, "before_fix_nm": change.begin_before_fix_nm,
        "after_start_s": change.begin_after_start_s,
    });
    let roll_out = json!({
        "kind": "roll_out", "fix": change.fix, "dme_nm": change.roll_out_dme_nm,
        "radial_deg": change.roll_out_radial_deg, "past_fix_nm": change.roll_out_past_fix_nm,
        "after_start_s": change.roll_out_after_start_s,
    });
    let located = |position: Option<&Position>| position.copied().map_or(Value::Null, point);
    vec![
        feature(located(path.first()), begin),
        feature(lines(path), turn),
        feature(located(path.last()), roll_out),
    ]
}

/// A line, cut where it crosses the antimeridian as section 3.1.9 asks; none if it has no length.
pub fn lines(path: &[Position]) -> Value {
    let mut parts: Vec<Vec<Place>> = vec![Vec::new()];
    let mut last: Option<Place> = None;
    for position in path {
        let here = place(*position);
        if let Some(before) = last
            && (here[0] - before[0]).abs() > 180.0
        {
            let edge = 180.0_f64.copysign(before[0]);
            let unwrapped = here[0] + 360.0_f64.copysign(before[0]);
            let share = (edge - before[0]) / (unwrapped - before[0]);
            let latitude = before[1] + share * (here[1] - before[1]);
            extend(&mut parts, [edge, latitude]);
            parts.push(vec![[-edge, latitude]]);
        }
        extend(&mut parts, here);
        last = Some(here);
    }
    // A line has two places at least (section 3.1.4); one that only touches the antimeridian leaves a single place beyond it.
    parts.retain(|part| part.len() > 1);
    match parts.as_slice() {
        [] => Value::Null,
        [single] => json!({ "type": "LineString", "coordinates": single }),
        several => json!({ "type": "MultiLineString", "coordinates": several }),
    }
}

/// Adds a place to the last part, unless the part stands there already.
fn extend(parts: &mut [Vec<Place>], here: Place) {
    if let Some(part) = parts.last_mut()
        && part.last() != Some(&here)
    {
        part.push(here);
    }
}
