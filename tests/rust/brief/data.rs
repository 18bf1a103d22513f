//! The brief as JSON and as GeoJSON.

use serde_json::Value;

use super::{briefed, changed, default_plan};

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value} is no number"))
}

fn of_kind<'a>(collection: &'a Value, kind: &str) -> Vec<&'a Value> {
    let features = collection["features"].as_array().unwrap();
    features.iter().filter(|feature| feature["properties"]["kind"] == kind).collect()
}

/// Every place of a geometry, whatever its type.
fn places(coordinates: &Value) -> Vec<(f64, f64)> {
    let list = coordinates.as_array().unwrap();
    if list[0].is_number() {
        vec![(number(&list[0]), number(&list[1]))]
    } else {
        list.iter().flat_map(places).collect()
    }
}

#[test]
fn data_agrees_with_the_plain_functions() {
    let brief: Value = serde_json::from_str(&briefed("json", &default_plan(), &["--json"])).unwrap();
    assert!(brief["caution"].as_str().unwrap().contains("not certified"));
    assert_eq!(brief["legs"].as_array().unwrap().len(), 4);
    let changes = brief["course_changes"].as_array().unwrap();
    assert_eq!(changes.len(), 3);
    for change in changes {
        let lead_nm = lubberline::plain::lead_nm(
            number(&change["inbound_course_deg"]),
            number(&change["outbound_course_deg"]),
            number(&brief["true_airspeed_kt"]),
            number(&change["wind_from_deg"]),
            number(&change["wind_speed_kt"]),
            25.0,
            3.0,
            4.0,
        );
        assert!((lead_nm.unwrap() - number(&change["begin_before_fix_nm"])).abs() < 1e-8);
        let slant_nm = lubberline::plain::slant_range_nm(
            number(&change["begin_before_fix_nm"]),
            number(&change["height_above_station_ft"]),
        );
        assert!((slant_nm.unwrap() - number(&change["begin_at_dme_nm"])).abs() < 1e-8);
    }
}

#[test]
fn distances_and_times_add_up() {
    let brief: Value = serde_json::from_str(&briefed("sums", &default_plan(), &["--json"])).unwrap();
    let (legs, changes) = (brief["legs"].as_array().unwrap(), brief["course_changes"].as_array().unwrap());
    let mut time_s = 0.0;
    for (index, leg) in legs.iter().enumerate() {
        let behind_nm = if index == 0 { 0.0 } else { number(&changes[index - 1]["roll_out_past_fix_nm"]) };
        let ahead_nm = changes.get(index).map_or(0.0, |change| number(&change["begin_before_fix_nm"]));
        let parts_nm = behind_nm + number(&leg["straight_nm"]) + ahead_nm;
        assert!((parts_nm - number(&leg["length_nm"])).abs() < 1e-8);
        time_s += number(&leg["straight_time_s"]);
        if let Some(change) = changes.get(index) {
            assert!((time_s - number(&change["begin_after_start_s"])).abs() < 1e-6);
            time_s += number(&change["turn_time_s"]);
            assert!((time_s - number(&change["roll_out_after_start_s"])).abs() < 1e-6);
        }
    }
    assert!((time_s - number(&brief["total_time_s"])).abs() < 1e-6);
}

#[test]
fn geojson_joins_legs_and_turns() {
    let collection: Value = serde_json::from_str(&briefed("map", &default_plan(), &["--geojson"])).unwrap();
    assert_eq!(collection["type"], "FeatureCollection");
    assert!(collection["caution"].as_str().unwrap().contains("not certified"));
    let counts = ["station", "leg", "turn", "begin", "roll_out"].map(|kind| of_kind(&collection, kind).len());
    assert_eq!(counts, [5, 4, 3, 3, 3]);
    for feature in collection["features"].as_array().unwrap() {
        assert_eq!(feature["type"], "Feature");
        for (longitude, latitude) in places(&feature["geometry"]["coordinates"]) {
            assert!((-15.0..-7.0).contains(&longitude) && (58.0..62.0).contains(&latitude), "{feature}");
        }
    }
    let ends = |feature: &Value| {
        let places = places(&feature["geometry"]["coordinates"]);
        (places[0], places[places.len() - 1])
    };
    let (legs, turns) = (of_kind(&collection, "leg"), of_kind(&collection, "turn"));
    for (index, turn) in turns.iter().enumerate() {
        assert_eq!(turn["geometry"]["type"], "LineString");
        assert!(places(&turn["geometry"]["coordinates"]).len() > 20);
        let (begin, end) = ends(turn);
        assert_eq!((ends(legs[index]).1, begin), (begin, ends(of_kind(&collection, "begin")[index]).0));
        assert_eq!((ends(legs[index + 1]).0, end), (end, ends(of_kind(&collection, "roll_out")[index]).0));
    }
}

#[test]
fn turns_that_overlap_leave_a_leg_without_a_line() {
    let plan = changed(&[("latitude_deg = 59.9300", "latitude_deg = 61.1500"), ("-10.9000", "-11.5500")]);
    let collection: Value = serde_json::from_str(&briefed("overlap-map", &plan, &["--geojson"])).unwrap();
    let leg = of_kind(&collection, "leg")[1];
    assert_eq!((leg["geometry"].is_null(), &leg["properties"]["long_enough"]), (true, &Value::Bool(false)));
}

#[test]
fn lines_over_the_antimeridian_are_cut() {
    let plan = changed(&[
        ("-14.4000", "177.5"),
        ("-11.5000", "-179.95"),
        ("-10.9000", "-179.0"),
        ("-9.3500", "-177.5"),
        ("-7.0200", "-175.0"),
    ]);
    let collection: Value = serde_json::from_str(&briefed("antimeridian", &plan, &["--geojson"])).unwrap();
    let mut cuts = 0;
    for feature in collection["features"].as_array().unwrap() {
        if feature["geometry"]["type"] != "MultiLineString" {
            continue;
        }
        let parts = feature["geometry"]["coordinates"].as_array().unwrap();
        cuts += parts.len() - 1;
        for part in parts {
            let places = places(part);
            assert!(places.len() >= 2, "a line has two places at least");
            assert!(places.windows(2).all(|pair| (pair[1].0 - pair[0].0).abs() < 180.0));
        }
        for pair in parts.windows(2) {
            let (last, first) = (*places(&pair[0]).last().unwrap(), places(&pair[1])[0]);
            assert_eq!(
                (last.0.abs(), last.0, last.1),
                (180.0, -first.0, first.1),
                "it goes on where it was cut"
            );
        }
    }
    assert_eq!(cuts, 1, "the turn or the leg at the antimeridian crosses it once");
}
