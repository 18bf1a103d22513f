//! The brief for a person.

use super::{briefed, changed, plans, run, top};

#[test]
fn the_default_plan_is_briefed() {
    let (code, text, error) = run(&[]);
    assert_eq!((code, error.as_str()), (0, ""));
    assert_eq!(text.matches("\nBEGIN  ").count(), 3);
    for words in [
        "DME inbound on radial",
        "cone of confusion",
        "if flown over",
        "by rule",
        "how sure",
        "what matters most: the bank",
        "CAUTION: This is arithmetic",
    ] {
        assert!(text.contains(words), "{words}");
    }
}

#[test]
fn every_plan_beside_it_is_briefed_in_the_width_of_a_terminal() {
    for entry in std::fs::read_dir(plans()).unwrap() {
        let path = entry.unwrap().path();
        let (code, text, error) = run(&[path.to_str().unwrap()]);
        assert_eq!(code, 0, "{}: {error}", path.display());
        assert!(text.contains("\nBEGIN  "));
        for line in text.lines() {
            assert!(line.chars().count() <= 80, "{}: {line}", path.display());
        }
    }
}

#[test]
fn the_readme_shows_what_the_default_plan_gives() {
    let readme = std::fs::read_to_string(top().join("README.md")).unwrap();
    let shown = readme.split("```text\n").nth(1).unwrap().split("```").next().unwrap();
    assert!(shown.lines().count() > 10);
    assert!(run(&[]).1.contains(shown), "renew the README's excerpt:\n{shown}");
}

#[test]
fn turns_that_overlap_are_said_to() {
    // Marram moved to six miles from Ostvik.
    let text = briefed(
        "overlap",
        &changed(&[("latitude_deg = 59.9300", "latitude_deg = 61.1500"), ("-10.9000", "-11.5500")]),
        &[],
    );
    let (_, told) = text.split_once("TOO SHORT by ").unwrap();
    let (lacking, rest) = told.split_once(" NM: the turns at its ends take ").unwrap();
    let lengths = [lacking, rest.split_once(" NM\n").unwrap().0];
    let [lacking_nm, taken_nm]: [f64; 2] = lengths.map(|length| length.parse().unwrap());
    let length_nm = lubberline::plain::geodesic_inverse(61.25, -11.5, 61.15, -11.55).unwrap().distance_nm;
    assert!((taken_nm - lacking_nm - length_nm).abs() < 0.11, "{text}");
    assert!(text.contains("THE LEG IS TOO SHORT"), "{text}");
    assert!(
        text.contains("in all          not to be said: a leg is too short for the turns at its ends\n"),
        "{text}"
    );
    assert!(text.contains("no time can be said: a leg before it is too short\n"), "{text}");
}

#[test]
fn a_leg_beyond_the_horizon_of_both_stations_is_said_to_be() {
    // Low, and Tulloch Head far to the south of Marram.
    let text = briefed(
        "horizon",
        &changed(&[
            ("pressure_altitude_ft = 35000", "pressure_altitude_ft = 4000"),
            ("mach = 0.78", "mach = 0.3"),
            ("latitude_deg = 58.7200", "latitude_deg = 54.5000"),
        ]),
        &[],
    );
    // Twice 1.23 times the root of 4000 ft, roughly, of 329 and 315 NM.
    assert_eq!(text.matches("BEYOND THE RADIO HORIZON of both stations").count(), 2, "{text}");
    assert!(!briefed("no-horizon", &changed(&[]), &[]).contains("HORIZON"));
}

#[test]
fn the_long_way_round_begins_past_the_station() {
    let text = briefed(
        "long-way",
        &changed(&[
            ("fix = \"OST\"", "fix = \"OST\"\nturn = \"left\""),
            ("wind_speed_kt = 85", "wind_speed_kt = 0"),
        ]),
        &[],
    );
    assert!(
        text.contains("\nOST (Ostvik): 53 degrees right, turned left the long way, course 114 to 167\n"),
        "{text}"
    );
    assert!(text.contains("0.71 NM and 0:06 less than turning before it"), "{text}");
    let line = text.lines().find(|line| line.starts_with("BEGIN")).unwrap();
    assert!(line.contains("DME outbound on radial 120") && line.ends_with("past the station"), "{line}");
    let line = text.lines().find(|line| line.starts_with("ROLL OUT")).unwrap();
    assert!(line.contains("on radial 353") && line.ends_with("before the station"), "{line}");
    let line = text.lines().find(|line| line.contains("to keep that: ")).unwrap();
    assert!(line.contains(" lead, begun at ") && line.ends_with(" DME past the station"), "{line}");
}

#[test]
fn a_straight_route_has_no_turn() {
    // Along the equator the course is 090 from station to station, exactly.
    let mut plan = String::from("[aircraft]\nmach = 0.5\npressure_altitude_ft = 20000\n[air]\n");
    for (ident, longitude) in [("A", 1), ("B", 2), ("C", 4)] {
        plan += &format!("[[station]]\nident = \"{ident}\"\nlatitude_deg = 0\nlongitude_deg = {longitude}\n");
    }
    for ident in ["A", "B", "C"] {
        plan += &format!("[[route]]\nfix = \"{ident}\"\n");
    }
    let text = briefed("straight", &plan, &[]);
    assert!(text.contains("NO TURN"), "{text}");
    assert!(text.starts_with("Untitled plan\n"));
    let geojson: serde_json::Value =
        serde_json::from_str(&briefed("straight-map", &plan, &["--geojson"])).unwrap();
    let turn = geojson["features"]
        .as_array()
        .unwrap()
        .iter()
        .find(|feature| feature["properties"]["kind"] == "turn");
    assert!(turn.unwrap()["geometry"].is_null());
}

/// The keys a plan may have are those that the reader names when it meets another.
#[test]
fn help_and_documentation_name_every_key() {
    let help = run(&["--help"]).1;
    let page = std::fs::read_to_string(top().join("docs/brief.md")).unwrap();
    let mut keys = Vec::new();
    for (name, place, table) in [
        ("aircraft", "[aircraft]", "[aircraft]"),
        ("air", "[air]", "[air]"),
        ("errors", "[errors]", "[errors]"),
        ("station", "[[station]]", "[[station]]"),
        ("route", "[[route]]", "[[route]]"),
        ("level", "[errors]", "[[air.wind_level]]"),
    ] {
        let rest = if table == place { String::new() } else { format!("\n{place}") };
        let plan = changed(&[(place, &format!("{table}\nno_such_key = 1{rest}"))]);
        let (code, _, error) = super::run_plan(&format!("keys-{name}"), &plan, &[]);
        assert_eq!(code, 2);
        let expected = error.split("expected one of ").nth(1).unwrap();
        keys.extend(expected.split('`').skip(1).step_by(2).map(str::to_string));
    }
    assert!(keys.len() > 35, "{keys:?}");
    for key in keys {
        assert!(help.contains(&key), "--help does not name {key}");
        assert!(page.contains(&format!("`{key}`")), "docs/brief.md does not name {key}");
    }
}

#[test]
fn a_limit_kept_already_leaves_lead_to_spare_and_one_that_is_not_asks_for_more() {
    let limit =
        |limit: &str| briefed("limit", &changed(&[("limit_nm = 1 ", &format!("limit_nm = {limit} "))]), &[]);
    assert!(limit("4").contains("over by more than 4 NM: 0 of 100\n"));
    assert!(limit("4").contains("95 of 100 keep that, with "));
    let narrow = limit("0.1");
    assert!(narrow.contains("for 95 of 100 to keep that: ") && narrow.contains(" NM more lead, begun at "));
}
