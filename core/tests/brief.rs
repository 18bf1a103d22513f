//! The brief of a plan: what it says, and what it says of a plan that is wrong.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, missing_docs, reason = "a test fails by panicking")]

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

use serde_json::Value;

fn plans() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("examples/brief/plans")
}

/// The example's program, built if need be.
fn program() -> &'static Path {
    static BUILT: OnceLock<PathBuf> = OnceLock::new();
    BUILT.get_or_init(|| {
        let build = ["build", "--quiet", "-p", "lubberline", "--example", "brief"];
        assert!(Command::new(env!("CARGO")).args(build).status().unwrap().success());
        let test = std::env::current_exe().unwrap();
        test.parent().unwrap().parent().unwrap().join("examples/brief")
    })
}

fn run(arguments: &[&str]) -> (i32, String, String) {
    let output = Command::new(program()).args(arguments).output().unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code().unwrap(), text(output.stdout), text(output.stderr))
}

/// Briefs the default plan with one thing replaced; gives what it complains of.
fn refused(name: &str, from: &str, to: &str) -> String {
    let text = std::fs::read_to_string(plans().join("islands.toml")).unwrap();
    assert!(text.contains(from), "{from}");
    let path = std::env::temp_dir().join(format!("lubberline-{}-{name}.toml", std::process::id()));
    std::fs::write(&path, text.replacen(from, to, 1)).unwrap();
    let (code, out, error) = run(&[path.to_str().unwrap()]);
    std::fs::remove_file(&path).unwrap();
    assert_eq!((code, out.as_str()), (2, ""), "{name}: {error}");
    assert!(error.contains(path.to_str().unwrap()), "{name}: the file is not named in {error}");
    error
}

#[test]
fn the_default_plan_is_briefed() {
    let (code, text, error) = run(&[]);
    assert_eq!((code, error.as_str()), (0, ""));
    assert_eq!(text.matches("BEGIN THE TURN").count(), 3);
    for word in
        ["DME on radial", "cone of confusion", "if flown over", "by rule", "CAUTION: This is arithmetic"]
    {
        assert!(text.contains(word), "{word}");
    }
}

#[test]
fn every_plan_beside_it_is_briefed_too() {
    for entry in std::fs::read_dir(plans()).unwrap() {
        let path = entry.unwrap().path();
        let (code, text, error) = run(&[path.to_str().unwrap()]);
        assert_eq!(code, 0, "{}: {error}", path.display());
        assert!(text.contains("BEGIN THE TURN"));
    }
}

#[test]
fn data_agrees_with_the_library() {
    let (code, text, _) = run(&["--json"]);
    assert_eq!(code, 0);
    let brief: Value = serde_json::from_str(&text).unwrap();
    let number = |value: &Value| value.as_f64().unwrap();
    assert!(brief["caution"].as_str().unwrap().contains("not certified"));
    assert_eq!(brief["legs"].as_array().unwrap().len(), 4);
    for change in brief["course_changes"].as_array().unwrap() {
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
        assert!((lead_nm.unwrap() - number(&change["begin_before_fix_nm"])).abs() < 1e-9);
        let slant_nm = lubberline::plain::slant_range_nm(
            number(&change["begin_before_fix_nm"]),
            number(&change["height_above_station_ft"]),
        );
        assert!((slant_nm.unwrap() - number(&change["begin_at_dme_nm"])).abs() < 1e-9);
    }
}

#[test]
fn geojson_joins_legs_and_turns() {
    let (code, text, _) = run(&["--geojson"]);
    assert_eq!(code, 0);
    let collection: Value = serde_json::from_str(&text).unwrap();
    assert_eq!(collection["type"], "FeatureCollection");
    let features = collection["features"].as_array().unwrap();
    let of = |kind: &str| -> Vec<&Value> {
        features
            .iter()
            .filter(|feature| feature["properties"]["kind"] == kind)
            .map(|feature| &feature["geometry"])
            .collect()
    };
    assert_eq!((of("station").len(), of("turn").len(), of("leg").len()), (5, 3, 4));
    assert_eq!((of("begin the turn").len(), of("wings level").len()), (3, 3));
    for (leg, turn) in of("leg").iter().zip(of("turn")) {
        let end = leg["coordinates"].as_array().unwrap().last().unwrap();
        assert_eq!(end, &turn["coordinates"][0], "a leg ends where its turn begins");
        let (longitude, latitude) = (end[0].as_f64().unwrap(), end[1].as_f64().unwrap());
        assert!((-15.0..-7.0).contains(&longitude) && (59.0..62.0).contains(&latitude));
    }
}

#[test]
fn a_line_over_the_antimeridian_is_cut() {
    let text = std::fs::read_to_string(plans().join("islands.toml")).unwrap();
    let path = std::env::temp_dir().join(format!("lubberline-{}-antimeridian.toml", std::process::id()));
    let moved = text.replace("-14.4000", "177.5").replace("-11.5000", "-179.6").replace("-10.9000", "-179.0");
    std::fs::write(&path, moved.replace("-8.3500", "-176.5").replace("-7.2500", "-175.0")).unwrap();
    let (code, text, error) = run(&[path.to_str().unwrap(), "--geojson"]);
    std::fs::remove_file(&path).unwrap();
    assert_eq!(code, 0, "{error}");
    assert!(text.contains("MultiLineString"));
}

#[test]
fn a_wrong_plan_is_refused_with_the_reason() {
    for (name, from, to, words) in [
        ("speed twice", "mach = 0.78 ", "mach = 0.78\ncalibrated_airspeed_kt = 250 #", "both given"),
        ("no speed", "mach = 0.78 ", "# ", "calibrated_airspeed_kt or mach"),
        ("bank", "bank_limit_deg = 25", "bank_limit_deg = 95", "bank is 95"),
        ("latitude", "latitude_deg = 61.2500", "latitude_deg = 161.25", "station OST: latitude_deg"),
        ("unknown station", "fix = \"MAR\"", "fix = \"XYZ\"", "no station of the plan; allowed: SKE, OST"),
        ("ident twice", "ident = \"MAR\"", "ident = \"OST\"", "given twice"),
        ("unknown key", "bank_limit_deg = 25", "bank_limit = 25", "line 7"),
        ("wrong type", "bank_limit_deg = 25", "bank_limit_deg = \"much\"", "line 7"),
        ("missing key", "pressure_altitude_ft = 35000", "", "pressure_altitude_ft"),
        ("side", "fix = \"OST\"", "fix = \"OST\"\nturn = \"up\"", "allowed: shortest, left, right"),
        ("same again", "fix = \"MAR\"", "fix = \"OST\"", "follows itself"),
        ("wind", "wind_speed_kt = 85", "wind_speed_kt = 700", "make no way"),
        ("reversal", "fix = \"MAR\"", "fix = \"SKE\"", "at OST"),
        ("toml", "[aircraft]", "[aircraft", "line 4"),
    ] {
        let error = refused(&name.replace(' ', "-"), from, to);
        assert!(error.contains(words), "{name}: {error}");
    }
    let (code, _, error) = run(&["/nowhere/plan.toml"]);
    assert!(code == 2 && error.contains("/nowhere/plan.toml"));
    let (code, _, error) = run(&["--xml"]);
    assert!(code == 2 && error.contains("--json"));
    assert!(run(&["--help"]).1.contains("usage"));
}
