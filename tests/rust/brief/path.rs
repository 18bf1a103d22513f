//! Plans of path-and-terminator legs.

use lubberline::plain::{cross_track, geodesic_inverse, wind_triangle};
use serde_json::Value;

use super::{briefed, plans, run, run_plan, top};

/// The invented approach with some of its words replaced, each of which must be there.
fn approach(changes: &[(&str, &str)]) -> String {
    let plan = std::fs::read_to_string(plans().join("approach.toml")).unwrap();
    changes.iter().fold(plan, |text, (from, to)| {
        assert!(text.contains(from), "{from:?} is not in the plan");
        text.replacen(from, to, 1)
    })
}

fn data(name: &str, plan: &str) -> Value {
    serde_json::from_str(&briefed(name, plan, &["--json"])).unwrap()
}

fn number(value: &Value, key: &str) -> f64 {
    value[key].as_f64().unwrap_or_else(|| panic!("{key} is no number in {value}"))
}

#[test]
fn the_legs_add_up_and_each_is_flown_on_its_heading() {
    let brief = data("legs-sum", &approach(&[]));
    let legs = brief["legs"].as_array().unwrap();
    let sum = |key| legs.iter().map(|leg| number(leg, key)).sum::<f64>();
    assert!((sum("distance_nm") - number(&brief, "total_distance_nm")).abs() < 1e-6);
    assert!((sum("time_s") - number(&brief, "total_time_s")).abs() < 1e-5);
    let codes: Vec<&str> = legs.iter().map(|leg| leg["code"].as_str().unwrap()).collect();
    assert_eq!(codes, ["IF", "TF", "AF", "CF", "CD", "DF", "HM"]);
    let speed_kt = number(&brief, "true_airspeed_kt");
    for leg in legs {
        let held = wind_triangle(number(leg, "course_deg"), speed_kt, 250.0, 25.0).unwrap();
        assert!((held.heading_deg - number(leg, "heading_deg")).abs() < 1e-6, "{leg}");
        assert!((held.groundspeed_kt - number(leg, "groundspeed_kt")).abs() < 1e-6, "{leg}");
    }
}

/// The arc of 12 NM is left for the course of 085 to the station, and the leg after that ends at 6 DME.
#[test]
fn it_ends_where_the_plan_says() {
    let brief = data("legs-end", &approach(&[]));
    let legs = &brief["legs"];
    let first = |leg: &Value, end: &str| leg["turns"][0][end].clone();
    let reading = |place: &Value| number(&place["stations"][0], "dme_nm");
    // The turn back to the station begins where the course has been flown to its reading.
    assert!((reading(&first(&legs[5], "begin")) - 6.0).abs() < 1e-6);
    let end = geodesic_inverse(58.1, -7.3, 58.0821, -7.6753).unwrap();
    let rolled_out = first(&legs[2], "roll_out");
    let from_station = geodesic_inverse(
        58.1,
        -7.3,
        number(&rolled_out, "latitude_deg"),
        number(&rolled_out, "longitude_deg"),
    );
    assert!((from_station.unwrap().distance_nm - end.distance_nm).abs() < 1e-6, "on the arc through its fix");
    let place = |point: Value| (number(&point, "latitude_deg"), number(&point, "longitude_deg"));
    let begun = place(first(&legs[3], "begin"));
    let begun = geodesic_inverse(58.1, -7.3, begun.0, begun.1).unwrap();
    assert!((begun.distance_nm - end.distance_nm).abs() < 1e-6, "still on the arc");
    assert!(
        (266.0..280.0).contains(&begun.initial_bearing_deg),
        "before the arc meets the course: {begun:?}"
    );
    let out = place(first(&legs[3], "roll_out"));
    let off = cross_track(58.1, -7.3, 85.0, out.0, out.1).unwrap();
    assert!(off.cross_track_nm.abs() < 1e-6, "on the course: {off:?}");
    assert!(legs[2]["arc_bank_deg"].as_f64().is_some_and(|bank| (1.0..5.0).contains(&bank)));
}

/// The racetrack at the station begins over it: there is no radial, in no form, and there are only two such places.
#[test]
fn over_a_station_no_radial_is_told() {
    let brief = data("legs-overhead", &approach(&[]));
    let turns = brief["legs"][6]["turns"].as_array().unwrap();
    let over = |place: &Value| {
        let (latitude_deg, longitude_deg) = (number(place, "latitude_deg"), number(place, "longitude_deg"));
        geodesic_inverse(58.1, -7.3, latitude_deg, longitude_deg).unwrap().distance_nm < 1e-6
    };
    assert!(over(&turns[0]["begin"]) && over(&turns[2]["begin"]));
    let mut overhead = 0;
    for turn in brief["legs"].as_array().unwrap().iter().flat_map(|leg| leg["turns"].as_array().unwrap()) {
        for place in [&turn["begin"], &turn["roll_out"]] {
            let seen = &place["stations"][0];
            assert_eq!(seen["radial_deg"].is_null(), over(place), "{place}");
            assert!(!over(place) || seen["flag"] == "cone");
            overhead += usize::from(over(place));
        }
    }
    assert_eq!(overhead, 2);
    let text = briefed("legs-overhead-text", &approach(&[]), &[]);
    assert_eq!(text.matches("HOL overhead, 0.5 DME, in its cone").count(), 2, "{text}");
    let drawn: Value =
        serde_json::from_str(&briefed("legs-overhead-map", &approach(&[]), &["--geojson"])).unwrap();
    let seen =
        drawn["features"].as_array().unwrap().iter().map(|feature| &feature["properties"]["stations"][0]);
    let (none, told): (Vec<_>, Vec<_>) =
        seen.filter(|seen| seen.is_object()).partition(|seen| seen["radial_deg"].is_null());
    assert_eq!((none.len(), told.len()), (2, 2 * brief_turns(&brief) - 2));
}

fn brief_turns(brief: &Value) -> usize {
    brief["legs"].as_array().unwrap().iter().map(|leg| leg["turns"].as_array().unwrap().len()).sum()
}

#[test]
fn checks_are_told() {
    let checks = |name: &str, plan: &str, leg: usize| data(name, plan)["legs"][leg]["checks"].to_string();
    assert!(!checks("legs-slow", &approach(&[]), 6).contains("calibrated"));
    let fast = approach(&[("calibrated_airspeed_kt = 150", "calibrated_airspeed_kt = 250")]);
    assert!(
        checks("legs-fast", &fast, 6).contains("at 250 kt calibrated; the limit at 3000 ft is 230 kt (icao)")
    );
    assert!(checks("legs-cone", &approach(&[]), 6).contains("in the cone of HOL"));
    let received = " NM from HOL, which is received to ";
    assert!(!data("legs-near", &approach(&[]))["legs"].to_string().contains(received));
    let low = approach(&[("pressure_altitude_ft = 3000", "pressure_altitude_ft = 300")]);
    assert!(data("legs-low", &low)["legs"].to_string().contains(received));
    let passed =
        [("[path]", "[path]\nclimb_fpm = 250"), ("code = \"HM\"", "code = \"HA\"\naltitude_ft = 3500")];
    let told = "its altitude of 3500 ft is passed already where it begins, at ";
    assert!(checks("legs-passed", &approach(&passed), 6).contains(told));
    assert!(
        briefed("legs-passed-text", &approach(&passed), &[])
            .contains("its altitude of 3500 ft is passed already")
    );
}

#[test]
fn the_text_fits_a_terminal_and_names_every_leg() {
    let text = briefed("legs-text", &approach(&[]), &[]);
    for line in text.lines() {
        assert!(line.chars().count() <= 80, "{line}");
    }
    for part in ["3 AF (FINAL): DME arc to a fix", "7 HM  HOL", "radial 270", "CAUTION"] {
        assert!(text.contains(part), "{part}:\n{text}");
    }
}

#[test]
fn the_path_is_drawn_in_one_piece() {
    let drawn: Value = serde_json::from_str(&briefed("legs-drawn", &approach(&[]), &["--geojson"])).unwrap();
    let features = drawn["features"].as_array().unwrap();
    let kind = |feature: &Value| feature["properties"]["kind"].as_str().unwrap().to_string();
    let mut last: Option<Value> = None;
    for feature in
        features.iter().filter(|feature| ["straight", "turn", "arc"].contains(&kind(feature).as_str()))
    {
        let line = feature["geometry"]["coordinates"].as_array().unwrap();
        if let Some(last) = last.replace(line[line.len() - 1].clone()) {
            let apart =
                |index: usize| (last[index].as_f64().unwrap() - line[0][index].as_f64().unwrap()).abs();
            assert!(apart(0) < 1e-7 && apart(1) < 1e-7, "{last} {}", line[0]);
        }
    }
    for wanted in ["station", "fix", "arc", "begin", "roll_out"] {
        assert!(features.iter().any(|feature| kind(feature) == wanted), "{wanted}");
    }
}

#[test]
fn a_plan_of_legs_that_is_wrong_says_what_is() {
    for (name, from, to, parts) in [
        ("code", "code = \"AF\"", "code = \"XF\"", vec!["leg 3: code is \"XF\"", "allowed: IF, TF"]),
        (
            "fix",
            "fix = \"GATE\"",
            "fix = \"GAT\"",
            vec!["leg 2 (TF): fix is \"GAT\"", "OUTER, GATE, FINAL, HOL"],
        ),
        ("dme", "dme_nm = 6", "distance_nm = 6", vec!["leg 5 (CD): dme_nm is missing"]),
        ("more", "code = \"TF\"", "code = \"TF\"\naltitude_ft = 9", vec!["leg 2 (TF): altitude_ft is given"]),
        (
            "turn",
            "turn = \"left\"",
            "turn = \"lift\"",
            vec!["leg 3 (AF): turn is \"lift\"; allowed: left, right"],
        ),
        ("rule", "\"icao\"", "\"mine\"", vec!["path.holding_rule is \"mine\"", "icao_turbulence"]),
        (
            "variation",
            "[path]",
            "[path]\nmagnetic_variation_deg = 200",
            vec!["path.magnetic_variation_deg is 200 deg; allowed: from -180 to 180 deg"],
        ),
        (
            "variation-nan",
            "[path]",
            "[path]\nmagnetic_variation_deg = nan",
            vec!["path.magnetic_variation_deg is NaN deg; allowed: from -180 to 180 deg"],
        ),
        (
            "variation-word",
            "[path]",
            "[path]\nmagnetic_variation_deg = \"5 W\"",
            vec!["magnetic_variation_deg = \"5 W\"", "allowed: a number"],
        ),
        ("course", "course_deg = 265", "course_deg = 2650", vec!["leg 7 (HM): course_deg is 2650 deg"]),
        ("dme-far", "dme_nm = 6", "dme_nm = 6000", vec!["leg 5 (CD) cannot be flown: its DME reading"]),
        ("climb", "[path]", "[path]\nclimb_fpm = 1e9", vec!["path.climb_fpm is 1000000000 ft/min"]),
        ("twice", "ident = \"GATE\"", "ident = \"OUTER\"", vec!["fix OUTER: the ident is given twice"]),
    ] {
        let (code, out, error) = run_plan(&format!("legs-wrong-{name}"), &approach(&[(from, to)]), &[]);
        assert_eq!((code, out.as_str()), (2, ""), "{name}: {error}");
        for part in parts {
            assert!(error.contains(part), "{name}: {part:?} is not in {error}");
        }
    }
}

/// What is wrong with a course, a wind or an altitude is told of the leg on which it is met.
#[test]
fn every_error_of_a_sequence_names_its_leg() {
    let levels = "[[air.wind_level]]\npressure_altitude_ft = 3000\nwind_from_deg = 250\nwind_speed_kt = 5\n";
    let one = "wind_from_deg = 250\nwind_speed_kt = 25\n";
    let arc = "code = \"AF\"\nfix = \"FINAL\"\nstation = \"HOL\"\nturn = \"left\"\n";
    for (name, changes, parts) in [
        (
            "reversal",
            vec![("code = \"AF\"", "code = \"TF\"\nfix = \"OUTER\"\n\n[[leg]]\ncode = \"AF\"")],
            ["leg 3 (TF): the course change from 14", "is a reversal"],
        ),
        (
            "wind",
            vec![
                (one, "wind_from_deg = 145\nwind_speed_kt = 250\n"),
                (arc, "code = \"TF\"\nfix = \"FINAL\"\n"),
            ],
            ["leg 2 (TF): wind of 250 kt from 145 deg", "make no way along course 144.8"],
        ),
        (
            "climb",
            vec![(one, levels), ("[path]", "[path]\nclimb_fpm = 30000")],
            ["leg 4: pressure altitude is ", "262467.2 ft"],
        ),
    ] {
        let (code, out, error) = run_plan(&format!("legs-named-{name}"), &approach(&changes), &[]);
        assert_eq!((code, out.as_str()), (2, ""), "{name}: {error}");
        for part in parts {
            assert!(error.contains(part), "{name}: {part:?} is not in {error}");
        }
    }
}

/// A racetrack by DME begins its turn inbound at the reading; one with a longer leg takes longer; a procedure turn is what its word says.
#[test]
fn racetracks_and_procedure_turns_are_as_they_are_given() {
    let hold = |name: &str, more: &str| {
        data(name, &approach(&[("code = \"HM\"", &format!("code = \"HM\"\n{more}"))]))["legs"][6].clone()
    };
    let by_dme = hold("legs-hold-dme", "station = \"HOL\"\ndme_nm = 6");
    let begins = |reading_nm: f64| {
        let turns = by_dme["turns"].as_array().unwrap();
        let at = |turn: &Value| number(&turn["begin"]["stations"][0], "dme_nm");
        turns.iter().any(|turn| (at(turn) - reading_nm).abs() < 0.01)
    };
    assert!(begins(6.0), "{by_dme}");
    let short_s = number(&hold("legs-hold-short", "timed = \"inbound\"\ndistance_nm = 4"), "time_s");
    let long_s = number(&hold("legs-hold-long", "timed = \"inbound\"\ndistance_nm = 6"), "time_s");
    assert!(long_s > short_s + 60.0, "{long_s} {short_s}");
    let turn = "code = \"PI\"\nfix = \"HOL\"\ncourse_deg = 85\ndistance_nm = 5\nturn = \"left\"\n";
    let back = "[[leg]]\ncode = \"CF\"\ncourse_deg = 265\nfix = \"HOL\"\nfly_over = true\n\n";
    let leg = |name: &str, more: &str| {
        let text = format!("{turn}{more}\n\n{back}[[leg]]\ncode = \"HM\"");
        number(&data(name, &approach(&[("code = \"HM\"", &text)]))["legs"][6], "time_s")
    };
    let (slow_s, fast_s) = (leg("legs-pi-slow", ""), leg("legs-pi-fast", "off_time_s = 75"));
    assert!(fast_s > slow_s + 15.0, "{fast_s} {slow_s}");
    assert!(leg("legs-pi-80", "reversal = \"80_260\"") < slow_s);
    for (name, word, part) in [
        ("timed", "timed = \"both\"", "leg 7 (HM): timed is \"both\"; allowed: inbound, outbound"),
        ("reversal", "reversal = \"45_180\"", "leg 7 (HM): reversal is given; allowed:"),
    ] {
        let plan = approach(&[("code = \"HM\"", &format!("code = \"HM\"\n{word}"))]);
        let (code, _, error) = run_plan(&format!("legs-wrong-{name}"), &plan, &[]);
        assert!(code == 2 && error.contains(part), "{error}");
    }
}

/// A key of which nothing would come is refused as any other that the leg has no use for.
#[test]
fn a_key_that_another_key_makes_useless_is_refused() {
    let turn =
        "code = \"PI\"\nfix = \"HOL\"\ncourse_deg = 85\ndistance_nm = 5\nturn = \"left\"\noff_time_s = 75";
    let back =
        "[[leg]]\ncode = \"CF\"\ncourse_deg = 265\nfix = \"HOL\"\nfly_over = true\n\n[[leg]]\ncode = \"HM\"";
    let by_dme = "code = \"HM\"\nstation = \"HOL\"\ndme_nm = 6";
    for (name, from, to, useless, part) in [
        (
            "off-time",
            "code = \"HM\"",
            format!("{turn}\n"),
            "reversal = \"80_260\"\n",
            "leg 7 (PI): off_time_s is given; allowed: reversal, fix, ",
        ),
        (
            "timed",
            "code = \"HM\"",
            format!("{by_dme}\n"),
            "timed = \"inbound\"\n",
            "leg 7 (HM): timed is given; allowed: ",
        ),
        (
            "if",
            "code = \"IF\"",
            "code = \"IF\"\n".into(),
            "fly_over = true\n",
            "leg 1 (IF): fly_over is given; allowed: fix",
        ),
    ] {
        let after = if name == "off-time" { back } else { "" };
        briefed(&format!("legs-useful-{name}"), &approach(&[(from, &format!("{to}\n{after}"))]), &[]);
        let plan = approach(&[(from, &format!("{to}{useless}\n{after}"))]);
        let (code, out, error) = run_plan(&format!("legs-useless-{name}"), &plan, &[]);
        assert_eq!((code, out.as_str()), (2, ""), "{name}: {error}");
        assert!(error.contains(part), "{name}: {error}");
    }
}

/// Given by level, the wind is that of the altitude where each leg begins: in a climb from the lower level it grows.
#[test]
fn winds_by_level_change_along_a_climb() {
    let levels = "[[air.wind_level]]\npressure_altitude_ft = 3000\nwind_from_deg = 250\nwind_speed_kt = 5\n\n\
                  [[air.wind_level]]\npressure_altitude_ft = 12000\nwind_from_deg = 250\nwind_speed_kt = 45\n";
    let plan = approach(&[
        ("wind_from_deg = 250\nwind_speed_kt = 25\n", levels),
        ("[path]", "[path]\nclimb_fpm = 500"),
    ]);
    let brief = data("legs-levels", &plan);
    let wind_kt = |leg: usize| {
        let leg = &brief["legs"][leg];
        number(leg, "headwind_kt").hypot(number(leg, "crosswind_kt"))
    };
    assert!((wind_kt(1) - 5.0).abs() < 1.0, "{}", wind_kt(1));
    assert!((1..6).all(|leg| wind_kt(leg) < wind_kt(leg + 1)), "{brief}");
}

/// The approach with the courses of a chart where the variation is 10 degrees east is the approach; its text tells those courses.
#[test]
fn magnetic_courses_are_flown_as_the_true_ones_they_stand_for() {
    let charted = [
        ("[path]", "[path]\nmagnetic_variation_deg = 10"),
        ("course_deg = 85\nfix", "course_deg = 75\nfix"),
        ("course_deg = 85\nstation", "course_deg = 75\nstation"),
        ("course_deg = 265", "course_deg = 255"),
    ];
    let (magnetic, plain) = (data("legs-magnetic", &approach(&charted)), data("legs-true", &approach(&[])));
    assert_eq!((&magnetic["courses_given"], &plain["courses_given"]), (&"magnetic".into(), &"true".into()));
    assert_eq!(number(&magnetic, "magnetic_variation_deg"), 10.0);
    assert!(plain["magnetic_variation_deg"].is_null());

    // Beside each true direction stands the magnetic one; without those the two are one.
    fn apart(value: &mut Value, count: &mut usize, variation_deg: Option<f64>) {
        if let Value::Object(members) = value {
            for key in ["course_deg", "heading_deg"] {
                let Some(magnetic) = members.remove(&format!("magnetic_{key}")) else { continue };
                let true_deg = members[key].as_f64().unwrap();
                let less = variation_deg.map(|variation_deg| (true_deg - variation_deg).rem_euclid(360.0));
                assert_eq!(magnetic.is_null(), less.is_none());
                if let Some(less) = less {
                    assert!((magnetic.as_f64().unwrap() - less).abs() < 2e-9, "{magnetic} {less}");
                }
                *count += 1;
            }
            members.values_mut().for_each(|member| apart(member, count, variation_deg));
        } else if let Value::Array(items) = value {
            items.iter_mut().for_each(|item| apart(item, count, variation_deg));
        }
    }
    let (mut legs, mut same, mut counts) = (magnetic["legs"].clone(), plain["legs"].clone(), [0, 0]);
    apart(&mut legs, &mut counts[0], Some(10.0));
    apart(&mut same, &mut counts[1], None);
    assert_eq!(legs, same);
    assert!(counts[0] > 20 && counts[0] == counts[1], "{counts:?}");

    let drawn = |name: &str, plan: &str| -> Value {
        serde_json::from_str(&briefed(name, plan, &["--geojson"])).unwrap()
    };
    let (map, same) = (drawn("legs-map", &approach(&charted)), drawn("legs-map-true", &approach(&[])));
    assert_eq!(map["features"], same["features"]);
    assert_eq!((&map["courses_given"], &same["courses_given"]), (&"magnetic".into(), &"true".into()));
    assert_eq!(
        (number(&map, "magnetic_variation_deg"), &same["magnetic_variation_deg"]),
        (10.0, &Value::Null)
    );

    let text = briefed("legs-text-magnetic", &approach(&charted), &[]);
    for part in [
        "Courses and headings are magnetic (variation 10 degrees east); winds are true;",
        "mag      mag     speed",
        "5 CD          075      077 ",
        "on course 075 magnetic, at 2925 ft",
    ] {
        assert!(text.contains(part), "{part}:\n{text}");
    }
    assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
    assert!(!briefed("legs-text-true", &approach(&[]), &[]).contains("mag"));
    let west = approach(&[("[path]", "[path]\nmagnetic_variation_deg = -0.5")]);
    assert!(briefed("legs-text-west", &west, &[]).contains("(variation 0.5 degrees west)"));
}

/// The keys a plan of legs may have are those that the reader names when it meets another.
#[test]
fn help_and_documentation_name_every_key_of_a_plan_of_legs() {
    let help = run(&["--help"]).1;
    let page = std::fs::read_to_string(top().join("docs/brief.md")).unwrap();
    let mut keys = Vec::new();
    for (name, place) in [("path", "[path]"), ("fix", "[[fix]]"), ("leg", "[[leg]]")] {
        let plan = approach(&[(place, &format!("{place}\nno_such_key = 1"))]);
        let (code, _, error) = run_plan(&format!("legs-keys-{name}"), &plan, &[]);
        assert_eq!(code, 2);
        let expected = error.split("expected one of ").nth(1).unwrap();
        keys.extend(expected.split('`').skip(1).step_by(2).map(str::to_string));
    }
    assert!(keys.len() > 20, "{keys:?}");
    for key in keys {
        assert!(help.contains(&key), "--help does not name {key}");
        assert!(page.contains(&format!("`{key}`")), "docs/brief.md does not name {key}");
    }
}
