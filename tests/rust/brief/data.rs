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

/// The same question to the plain function, with the errors as the brief says they are.
#[test]
fn sureness_agrees_with_the_plain_function_and_is_the_same_each_time() {
    use lubberline::plain::{CourseChangeInput, ErrorModelInput, course_change_sureness};
    let text = briefed("sure", &default_plan(), &["--json"]);
    assert_eq!(text, briefed("sure-again", &default_plan(), &["--json"]));
    let brief: Value = serde_json::from_str(&text).unwrap();
    let of = |key: &str| number(&brief["errors"][key]);
    let model = ErrorModelInput {
        station_bearing_deg: of("station_bearing_deg"),
        dme_nm: of("dme_nm"),
        wind_speed_kt: of("wind_speed_kt"),
        wind_direction_deg: of("wind_direction_deg"),
        airspeed_kt: of("airspeed_kt"),
        bank_deg: of("bank_deg"),
        roll_in_delay_s: of("roll_in_delay_s"),
        height_ft: of("height_ft"),
        mean_delay_s: of("mean_delay_s"),
    };
    // ICAO Doc 8168 Vol II, Part II Section 3 Chapter 1, Appendix B: 5.7 degrees, printed rounded, is two deviations; Annex 10 Vol I, 3.5.3.1.3.3: 0.2 NM.
    assert!((2.0 * model.station_bearing_deg - 5.7).abs() < 0.05, "{}", model.station_bearing_deg);
    assert!((2.0 * model.dme_nm - 0.2).abs() < 1e-9);
    for change in brief["course_changes"].as_array().unwrap() {
        let input = CourseChangeInput {
            wind_from_deg: number(&change["wind_from_deg"]),
            wind_speed_kt: number(&change["wind_speed_kt"]),
            height_above_station_ft: number(&change["height_above_station_ft"]),
            bank_limit_deg: 25.0,
            turn_rate_limit_deg_per_s: 3.0,
            roll_rate_deg_per_s: 4.0,
            ..CourseChangeInput::new(
                number(&change["inbound_course_deg"]),
                number(&change["outbound_course_deg"]),
                number(&brief["true_airspeed_kt"]),
            )
        };
        let trials = brief["errors"]["trials"].as_u64().unwrap();
        let sure =
            course_change_sureness(&input, &model, of("limit_nm"), of("confidence"), trials, 1).unwrap();
        let given = &change["sureness"];
        for (key, expected) in [
            ("mean_overshoot_nm", sure.mean_nm),
            ("deviation_nm", sure.deviation_nm),
            ("margin_nm", sure.margin_nm),
            ("linear_deviation_nm", sure.linear_deviation_nm),
            ("linear_margin_nm", sure.linear_margin_nm),
        ] {
            assert!((number(&given[key]) - expected).abs() < 1e-6, "{key}: {} {expected}", given[key]);
        }
        assert!((number(&given["chance_beyond_limit"]) - sure.chance_beyond).abs() < 1e-3);
        assert!((number(&given["by_source_nm"]["bank"]) - sure.by_bank_nm).abs() < 1e-6);
        let with_margin_nm = number(&change["begin_before_fix_nm"]) + number(&given["margin_nm"]);
        assert!((with_margin_nm - number(&given["begin_with_margin_before_fix_nm"])).abs() < 1e-8);
        let height_ft = number(&change["height_above_station_ft"]);
        let dme_nm = lubberline::plain::slant_range_nm(with_margin_nm.abs(), height_ft).unwrap();
        assert!((dme_nm - number(&given["begin_with_margin_at_dme_nm"])).abs() < 1e-8);
    }
}

/// Winds of levels are interpolated to the altitude flown, at 35 000 ft half-way between these two.
#[test]
fn winds_by_level_are_those_at_the_altitude_flown() {
    let levels = "[[air.wind_level]]\npressure_altitude_ft = 30000\nwind_from_deg = 255\nwind_speed_kt = 70\n\
        [[air.wind_level]]\npressure_altitude_ft = 40000\nwind_from_deg = 255\nwind_speed_kt = 100\n";
    let plan = changed(&[
        ("wind_from_deg = 255\n", ""),
        ("wind_speed_kt = 85\n", ""),
        ("[errors]", &format!("{levels}[errors]")),
    ]);
    let by_level: Value = serde_json::from_str(&briefed("levels", &plan, &["--json"])).unwrap();
    let by_one: Value = serde_json::from_str(&briefed("one-level", &default_plan(), &["--json"])).unwrap();
    let pairs = by_level["course_changes"]
        .as_array()
        .unwrap()
        .iter()
        .zip(by_one["course_changes"].as_array().unwrap());
    for (change, expected) in pairs {
        for key in ["wind_from_deg", "wind_speed_kt", "begin_at_dme_nm"] {
            assert!((number(&change[key]) - number(&expected[key])).abs() < 1e-8, "{key}");
        }
    }
    // At one fix only.
    let at_fix = default_plan().replacen(
        "wind_from_deg = 240             # the wind at this fix, where it is another one\nwind_speed_kt = 105\n",
        "[[route.wind_level]]\npressure_altitude_ft = 33000\nwind_from_deg = 240\nwind_speed_kt = 105\n",
        1,
    );
    assert!(at_fix.contains("route.wind_level"));
    let at_fix: Value = serde_json::from_str(&briefed("fix-level", &at_fix, &["--json"])).unwrap();
    assert_eq!(at_fix["course_changes"], by_one["course_changes"]);
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
fn turns_that_overlap_leave_a_leg_without_a_line_and_what_follows_without_a_time() {
    let plan = changed(&[("latitude_deg = 59.9300", "latitude_deg = 61.1500"), ("-10.9000", "-11.5500")]);
    let collection: Value = serde_json::from_str(&briefed("overlap-map", &plan, &["--geojson"])).unwrap();
    let leg = of_kind(&collection, "leg")[1];
    assert_eq!((leg["geometry"].is_null(), &leg["properties"]["long_enough"]), (true, &Value::Bool(false)));
    let brief: Value = serde_json::from_str(&briefed("overlap-data", &plan, &["--json"])).unwrap();
    assert!(brief["total_time_s"].is_null() && brief["total_distance_nm"].is_null());
    assert!(
        number(&brief["legs"][0]["straight_time_s"]) > 0.0 && brief["legs"][1]["straight_time_s"].is_null()
    );
    let changes = brief["course_changes"].as_array().unwrap();
    assert!(
        number(&changes[0]["begin_after_start_s"]) > 0.0 && changes[0]["roll_out_after_start_s"].is_number()
    );
    for change in &changes[1..] {
        for key in ["begin_after_start_s", "begin_after_last_roll_out_s", "roll_out_after_start_s"] {
            assert!(change[key].is_null(), "{key}: {change}");
        }
    }
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
