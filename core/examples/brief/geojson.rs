//! The brief as GeoJSON (RFC 7946): stations, legs between the turns, the turns as flown, where they begin and end.

use lubberline::earth::{direct, inverse};
use lubberline::value::units::{degree, nautical_miles};
use lubberline::value::{GroundDistance, Position};
use serde_json::{Value, json};

use crate::brief::Brief;
use crate::plan::Plan;

/// How far apart the points of a leg are drawn, in nautical miles.
const SPACING_NM: f64 = 20.0;

type Place = [f64; 2];

fn place(position: Position) -> Place {
    [position.longitude().angle().get::<degree>(), position.latitude().angle().get::<degree>()]
}

/// The whole brief as a feature collection.
pub fn write(plan: &Plan, brief: &Brief) -> Value {
    let mut features = Vec::new();
    for fix in &plan.route {
        let properties = json!({ "kind": "station", "ident": fix.ident, "name": fix.name });
        features.push(feature(
            json!({ "type": "Point", "coordinates": place(fix.station.position) }),
            properties,
        ));
    }
    let mut turns = Vec::new();
    for (change, fix) in brief.course_changes.iter().zip(plan.route.iter().skip(1)) {
        let path: Vec<Position> = change
            .path
            .iter()
            .map(|point| match point.bearing_from_fix {
                Some(bearing) => direct(fix.station.position, bearing, point.distance).0,
                None => fix.station.position,
            })
            .collect();
        for (kind, position, dme_nm) in [
            ("begin the turn", path.first(), change.begin_at_dme_nm),
            ("wings level", path.last(), change.roll_out_dme_nm),
        ] {
            if let Some(position) = position {
                let properties = json!({ "kind": kind, "fix": change.fix, "dme_nm": dme_nm });
                features
                    .push(feature(json!({ "type": "Point", "coordinates": place(*position) }), properties));
            }
        }
        let properties = json!({
            "kind": "turn", "fix": change.fix, "time_s": change.turn_time_s, "bank_deg": change.bank_deg,
        });
        features.push(feature(lines(&path), properties));
        turns.push(path);
    }
    for (index, (leg, (from, to))) in
        brief.legs.iter().zip(plan.route.iter().zip(plan.route.iter().skip(1))).enumerate()
    {
        let begin = index.checked_sub(1).and_then(|before| turns.get(before)?.last().copied());
        let end = turns.get(index).and_then(|turn| turn.first().copied());
        let path = straight(begin.unwrap_or(from.station.position), end.unwrap_or(to.station.position));
        let properties = json!({
            "kind": "leg", "from": leg.from, "to": leg.to, "course_deg": leg.initial_course_deg,
            "length_nm": leg.length_nm, "straight_nm": leg.straight_nm,
        });
        features.push(feature(lines(&path), properties));
    }
    json!({ "type": "FeatureCollection", "features": features })
}

fn feature(geometry: Value, properties: Value) -> Value {
    json!({ "type": "Feature", "geometry": geometry, "properties": properties })
}

/// The points of a geodesic, close enough to be drawn with straight strokes.
fn straight(from: Position, to: Position) -> Vec<Position> {
    let line = inverse(from, to);
    let length_nm = line.distance.value().get::<lubberline::value::units::nautical_mile>();
    let parts = (length_nm / SPACING_NM).ceil().clamp(1.0, 1000.0);
    let mut points = vec![from];
    if let Some(bearing) = line.initial_bearing {
        let mut part = 1.0;
        while part < parts {
            if let Ok(distance) = GroundDistance::new(nautical_miles(length_nm * part / parts)) {
                points.push(direct(from, bearing, distance).0);
            }
            part += 1.0;
        }
    }
    points.push(to);
    points
}

/// A line, cut where it crosses the antimeridian as RFC 7946 section 3.1.9 asks.
fn lines(path: &[Position]) -> Value {
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
            if let Some(part) = parts.last_mut() {
                part.push([edge, latitude]);
            }
            parts.push(vec![[-edge, latitude]]);
        }
        if let Some(part) = parts.last_mut() {
            part.push(here);
        }
        last = Some(here);
    }
    match parts.as_slice() {
        [single] => json!({ "type": "LineString", "coordinates": single }),
        several => json!({ "type": "MultiLineString", "coordinates": several }),
    }
}
