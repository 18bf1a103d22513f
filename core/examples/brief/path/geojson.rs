//! The brief of legs as GeoJSON (RFC 7946): stations, fixes, the path as flown, where its turns begin and end.

use lubberline::value::units::{degree, foot, nautical_mile, nautical_miles, second};
use serde_json::{Value, json};

use super::brief::{Brief, TurnPoint};
use super::plan::Plan;
use crate::geojson::{feature, lines, point};

/// How far apart the points of straights, and of turns and arcs, are drawn, in nautical miles.
const STRAIGHT_SPACING_NM: f64 = 20.0;
const BENT_SPACING_NM: f64 = 0.1;

/// The whole brief as a feature collection, with what is said of the whole as foreign members (section 6.1).
pub fn write(plan: &Plan, brief: &Brief) -> Value {
    let mut features: Vec<Value> = Vec::new();
    for site in &plan.stations {
        let properties = json!({
            "kind": "station", "ident": site.ident,
            "elevation_ft": site.station.elevation.value().get::<foot>(),
            "declination_deg": site.station.declination.angle().get::<degree>(),
        });
        features.push(feature(point(site.station.position), properties));
    }
    for fix in &plan.fixes {
        features.push(feature(point(fix.position), json!({ "kind": "fix", "ident": fix.ident })));
    }
    let (straight, bent) = (nautical_miles(STRAIGHT_SPACING_NM), nautical_miles(BENT_SPACING_NM));
    for (index, segment) in brief.flown.path.segments.iter().enumerate() {
        let Some(leg) = brief.legs.get(segment.leg) else { continue };
        let properties = json!({
            "kind": segment.kind.word(), "leg": leg.number, "code": leg.code,
            "length_nm": segment.length.get::<nautical_mile>(), "time_s": segment.duration().get::<second>(),
            "end_after_start_s": segment.end.time.get::<second>(),
            "end_altitude_ft": segment.end.altitude.value().get::<foot>(),
        });
        features.push(feature(lines(&brief.flown.segment_points(index, straight, bent)), properties));
    }
    for leg in &brief.legs {
        for turn in &leg.turns {
            let about = (leg.number, leg.code);
            features.push(turn_point("begin", about, &turn.begin));
            features.push(turn_point("roll_out", about, &turn.roll_out));
        }
    }
    json!({
        "type": "FeatureCollection", "title": brief.title, "caution": brief.caution,
        "courses_given": brief.courses_given, "magnetic_variation_deg": brief.magnetic_variation_deg,
        "features": features,
    })
}

fn turn_point(kind: &str, (leg, code): (usize, &str), place: &TurnPoint) -> Value {
    let properties = json!({
        "kind": kind, "leg": leg, "code": code, "altitude_ft": place.altitude_ft,
        "after_start_s": place.after_start_s, "stations": place.stations,
    });
    let geometry = json!({ "type": "Point", "coordinates": [place.longitude_deg, place.latitude_deg] });
    feature(geometry, properties)
}
