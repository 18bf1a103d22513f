//! What is published as a definition or a formula rather than as a value, where the library offers it.
#![allow(clippy::unwrap_used, missing_docs, reason = "a test fails by panicking")]

use lubberline::plain;

fn near(value: f64, expected: f64, tolerance: f64) {
    assert!((value - expected).abs() <= tolerance, "{value}, not {expected} within {tolerance}");
}

/// ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 2, 2.5.1 and 2.5.2.
#[test]
fn cones_of_a_vor_and_an_ndb() {
    assert_eq!(lubberline::station::VOR_CONE_HALF_ANGLE_DEG, 50.0);
    assert_eq!(lubberline::station::NDB_CONE_HALF_ANGLE_DEG, 40.0);
    let input = plain::CourseChangeInput::new(40.0, 110.0, 430.0);
    assert_eq!(input.cone_half_angle_deg, lubberline::station::VOR_CONE_HALF_ANGLE_DEG);
}

/// ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3, 3.1.2.2 e), prints 68 625 NM/h² and Part III Section 3
/// Chapter 1 127 094 km/h².
#[test]
fn gravity_in_the_units_of_procedure_design() {
    let gravity = lubberline::turn::STANDARD_GRAVITY_M_S2 * 3600.0 * 3600.0;
    near(gravity / 1852.0, 68_625.0, 0.5);
    near(gravity / 1000.0, 127_094.0, 0.5);
}

/// Turn anticipation, `r tan(A / 2)`: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.
#[test]
fn turn_anticipation() {
    for change_deg in [1.0_f64, 30.0, 70.0, 90.0, 120.0, 179.0] {
        let expected_nm = 2.5 * (change_deg.to_radians() / 2.0).tan();
        for signed_deg in [change_deg, -change_deg] {
            near(plain::turn_anticipation_nm(2.5, signed_deg).unwrap(), expected_nm, 1e-12 * expected_nm);
        }
    }
}

/// Radius with a tailwind, `(V + Vw)² / (127094 tan bank)` km: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3
/// Chapter 1, 1.4.5.2. The constant is rounded to six digits.
#[test]
fn radius_with_a_tailwind() {
    let (airspeed_kmh, wind_kmh, bank_deg) = (400.0_f64, 90.0, 20.0_f64);
    let published_km = (airspeed_kmh + wind_kmh).powi(2) / (127_094.0 * bank_deg.to_radians().tan());
    let radius_nm = plain::turn_radius_nm((airspeed_kmh + wind_kmh) / 1.852, bank_deg).unwrap();
    near(radius_nm * 1.852, published_km, 4e-6 * published_km);
}

/// What DME measures: the straight line to the aircraft.
#[test]
fn overhead_the_slant_range_is_the_height() {
    near(plain::slant_range_nm(0.0, 12_000.0).unwrap(), 12_000.0 * 0.3048 / 1852.0, 1e-14);
}

/// Due west where the variation is 20 degrees west is 290 by the compass: Aviation International News, 4 February 2013, on the rule "variation
/// east, magnetic least; variation west, magnetic best".
#[test]
fn a_magnetic_course_where_the_variation_is_west() {
    use plain::{ConditionsInput, LegCode, LegInput, fly_legs, segment_output};
    let west = LegInput {
        fix_latitude_deg: 60.0,
        fix_longitude_deg: -10.0,
        course_deg: 290.0,
        ..LegInput::new(LegCode::FixToManual)
    };
    let conditions =
        ConditionsInput { magnetic_variation_deg: -20.0, ..ConditionsInput::new(120.0, 3_000.0) };
    let path = fly_legs(&[west], &conditions).unwrap();
    near(segment_output(&path, &path.segments[0]).start_course_deg, 270.0, 1e-9);
}

/// A third of a mile for each 60 kt at a right angle is the radius of standard rate: common practice. At 180 kt it gives 1 NM.
#[test]
fn a_third_of_a_mile_for_each_sixty_knots() {
    let rule_nm = plain::rule_lead_nm(180.0, 90.0, 0.0).unwrap();
    near(rule_nm, 1.0, 1e-12);
    let radius_nm = plain::limited_turn(180.0, 60.0, 3.0).unwrap().radius_nm;
    near(radius_nm, 180.0 / (60.0 * std::f64::consts::PI), 1e-12);
    near(radius_nm, rule_nm, 0.05 * rule_nm);
}

/// ICAO Doc 8168 Vol I, Part III Section 1 Chapter 4, 4.3.1, read in a quotation: 4 percent for each 10 °C is safe above -15 °C
/// at the source, which is to say never less than the formula.
#[test]
fn the_cold_temperature_rule_is_safe_where_it_is_said_to_be() {
    for temperature_degc in [-15.0, -10.0, 0.0, 10.0, 15.0] {
        for height_ft in [200.0, 1_000.0, 3_000.0, 5_000.0] {
            let rule_ft =
                plain::cold_temperature_correction_rule_ft(height_ft, temperature_degc, 0.0).unwrap();
            let formula_ft = plain::cold_temperature_correction_ft(height_ft, temperature_degc, 0.0).unwrap();
            assert!(rule_ft >= formula_ft, "{height_ft} ft at {temperature_degc}: {rule_ft}, {formula_ft}");
        }
    }
    let rule_ft = plain::cold_temperature_correction_rule_ft(5_000.0, -50.0, 0.0).unwrap();
    let formula_ft = plain::cold_temperature_correction_ft(5_000.0, -50.0, 0.0).unwrap();
    assert!(rule_ft < formula_ft, "far below: {rule_ft}, {formula_ft}");
}

/// `docs/sources.md`: every row it names stands in the data, and every name it offers in the list of functions.
#[test]
fn the_page_of_contradictions_names_what_exists() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
    let read = |path: &str| std::fs::read_to_string(root.join(path)).unwrap();
    let (page, functions) = (read("../docs/sources.md"), read("../docs/functions.md"));
    let mut ids = std::collections::HashSet::new();
    for file in std::fs::read_dir(root.join("data/published")).unwrap() {
        let rows = std::fs::read_to_string(file.unwrap().path()).unwrap();
        ids.extend(rows.lines().filter_map(|line| line.split(',').next()).map(str::to_string));
    }
    let mut named = 0;
    for line in page.lines().filter(|line| line.starts_with('|') && !line.starts_with("|--")) {
        let cells: Vec<&str> = line.trim_matches('|').split(" | ").map(str::trim).collect();
        let is_id =
            |word: &&str| word.len() > 4 && word.starts_with(|first: char| first.is_ascii_uppercase());
        let rows = match cells.as_slice() {
            [_, _, rows, _] | [rows, _, _] if rows.contains('-') => *rows,
            _ => continue,
        };
        for id in rows.split(", ").filter(is_id) {
            assert!(ids.contains(id), "no row is called {id}");
            named += 1;
        }
        for name in cells.last().unwrap().split('`').skip(1).step_by(2) {
            assert!(functions.contains(name), "the list of functions has no {name}");
        }
    }
    assert!(named > 80, "{named} rows");
}

/// The calls at the end of the pages: what C and Rust are shown to say comes out as printed. Python's are held by its own tests.
#[test]
fn the_calls_on_the_pages_give_what_they_say() {
    let docs = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../docs");
    let mut held = 0;
    for file in std::fs::read_dir(docs).unwrap().map(|entry| entry.unwrap().path()) {
        if file.extension().is_none_or(|extension| extension != "md") {
            continue;
        }
        let page = std::fs::read_to_string(&file).unwrap();
        for line in page.lines().filter(|line| line.contains("| `lubberline.") && line.contains("| `plain::"))
        {
            let cells: Vec<&str> =
                line.trim_matches('|').split(" | ").map(|cell| cell.trim().trim_matches('`')).collect();
            let [_, python, in_c, rust, gives] = cells[..] else { panic!("{line}") };
            let call = |text: &str, prefix: &str| {
                let (name, rest) = text.strip_prefix(prefix).unwrap().split_once('(').unwrap();
                let (arguments, after) = rest.split_once(')').unwrap();
                let parts: Vec<String> = arguments.split(", ").map(str::to_string).collect();
                (name.to_string(), parts, after.to_string())
            };
            let numbers =
                |parts: &[String]| -> Vec<f64> { parts.iter().map_while(|part| part.parse().ok()).collect() };
            let (name, c_parts, _) = call(in_c, "lubber_");
            let (rust_name, rust_parts, field) = call(rust, "plain::");
            let (python_name, python_parts, _) = call(python, "lubberline.");
            assert!(rust_name == name && python_name == name, "{line}");
            let inputs = numbers(&rust_parts);
            assert!(numbers(&c_parts) == inputs && numbers(&python_parts) == inputs, "{line}");
            let function = plain::table::Function::named(&name).unwrap();
            let mut outputs = vec![f64::NAN; function.outputs.len()];
            (function.run)(&inputs, &mut outputs).unwrap();
            let pointers = &c_parts[inputs.len()..];
            assert_eq!(pointers.len(), outputs.len(), "{line}");
            let asked = pointers.iter().position(|pointer| pointer == "&answer").unwrap();
            let output = field.trim_start_matches("?.").trim_start_matches('?');
            assert!(output.is_empty() || function.outputs[asked] == output, "{line}");
            let digits = gives.split_once('.').map_or(0, |(_, decimals)| decimals.len());
            assert_eq!(format!("{:.digits$}", outputs[asked]), gives, "{line}");
            held += 1;
        }
    }
    assert!(held >= 25, "{held} calls");
}
