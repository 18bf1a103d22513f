//! Plans that are wrong: each is refused with exit code 2, the file, the key or line, the value and what is allowed.

use super::{changed, default_plan, plans, run, run_plan};

/// What a wrong plan is told.
fn refused(name: &str, plan: &str) -> String {
    let (code, out, error) = run_plan(name, plan, &[]);
    assert_eq!((code, out.as_str()), (2, ""), "{name}: {error}");
    assert!(error.contains(&format!("-{name}.toml: ")), "{name}: the file is not named in {error}");
    error
}

#[test]
fn a_plan_is_one_of_a_route_or_one_of_legs() {
    let both = format!("{}\n[[leg]]\ncode = \"IF\"\n", default_plan());
    let error = refused("route-and-legs", &both);
    assert!(error.contains("the plan has [[route]] and [[leg]]; allowed: one of the two"), "{error}");
    let neither = "[aircraft]\nmach = 0.5\npressure_altitude_ft = 20000\n";
    let error = refused("no-route", neither);
    assert!(error.contains("the plan has no [[route]] and no [[leg]]; allowed: one of the two"), "{error}");
}

#[test]
fn each_key_is_checked_by_its_name_value_and_range() {
    for (from, to, key, value, allowed) in [
        ("mach = 0.78", "mach = 78", "aircraft.mach", "78", "from 0.0 to 10.0"),
        ("mach = 0.78", "mach = 0", "aircraft.mach is 0, by which the true airspeed", "0 kt", "above 0.0"),
        ("mach = 0.78", "mach = 9", "aircraft.mach is 9, by which the true airspeed", "kt", "to 5000.0 kt"),
        ("mach = 0.78", "mach = \"fast\"", "mach = \"fast\"", "line 5", "allowed: a number"),
        (
            "pressure_altitude_ft = 35000",
            "pressure_altitude_ft = -300",
            "route fix 2 (OST)",
            "ft below the station",
            "its elevation or above",
        ),
        (
            "mach = 0.78",
            "calibrated_airspeed_kt = -250",
            "aircraft.calibrated_airspeed_kt",
            "-250 kt",
            "from 0.0",
        ),
        (
            "pressure_altitude_ft = 35000",
            "pressure_altitude_ft = 350000",
            "aircraft.pressure_altitude_ft",
            "350000 ft",
            "262467.2 ft",
        ),
        ("bank_limit_deg = 25", "bank_limit_deg = 90", "aircraft.bank_limit_deg", "90 deg", "below 90.0 deg"),
        (
            "bank_limit_deg = 25",
            "bank_limit_deg = nan",
            "aircraft.bank_limit_deg",
            "NaN deg",
            "below 90.0 deg",
        ),
        (
            "_limit_deg_per_s = 3",
            "_limit_deg_per_s = 0",
            "aircraft.turn_rate_limit_deg_per_s",
            "0 deg/s",
            "above 0 deg/s",
        ),
        (
            "roll_rate_deg_per_s = 4",
            "roll_rate_deg_per_s = -4",
            "aircraft.roll_rate_deg_per_s",
            "-4 deg/s",
            "above 0 deg/s",
        ),
        ("isa_deviation_k = 7", "isa_deviation_k = 280", "air.isa_deviation_k", "280 K", "150.0 K"),
        (
            "isa_deviation_k = 7",
            "temperature_degc = -300",
            "air.temperature_degc",
            "-300 degC",
            "from -200.0",
        ),
        (
            "altimeter_setting_hpa = 1004",
            "altimeter_setting_hpa = 29.92",
            "air.altimeter_setting_hpa",
            "29.92 hPa",
            "allowed: from",
        ),
        ("wind_from_deg = 255", "wind_from_deg = 2550", "air.wind_from_deg", "2550 deg", "from 0 to 360 deg"),
        ("wind_speed_kt = 85", "wind_speed_kt = -85", "air.wind_speed_kt", "-85 kt", "from 0.0"),
        ("wind_from_deg = 255", "", "air.wind_speed_kt", "85 kt", "together with wind_from_deg"),
        ("wind_speed_kt = 85", "", "air.wind_from_deg", "255 deg", "together with wind_speed_kt"),
        (
            "latitude_deg = 61.2500",
            "latitude_deg = 161.25",
            "station OST: latitude_deg",
            "161.25 deg",
            "from -90.0 to 90.0 deg",
        ),
        (
            "longitude_deg = -11.5000",
            "longitude_deg = -1115",
            "station OST: longitude_deg",
            "-1115 deg",
            "from -180 to 180 deg",
        ),
        (
            "elevation_ft = 420",
            "elevation_ft = 420000",
            "station OST: elevation_ft",
            "420000 ft",
            "60000.0 ft",
        ),
        (
            "declination_deg = -6",
            "declination_deg = 354",
            "station OST: declination_deg",
            "354 deg",
            "from -180.0",
        ),
        (
            "declination_deg = -6",
            "cone_half_angle_deg = 0",
            "station OST: cone_half_angle_deg",
            "0 deg",
            "above 0.0",
        ),
        (
            "wind_from_deg = 240",
            "wind_from_deg = -1",
            "route fix 4 (TUL): wind_from_deg",
            "-1 deg",
            "from 0 to 360",
        ),
        (
            "fix = \"OST\"",
            "fix = \"OST\"\nturn = \"up\"",
            "route fix 2 (OST): turn",
            "\"up\"",
            "shortest, left, right",
        ),
        (
            "fix = \"SKE\"",
            "fix = \"SKE\"\nturn = \"left\"",
            "route fix 1 (SKE): turn",
            "\"left\"",
            "between two legs",
        ),
        (
            "fix = \"SKE\"",
            "fix = \"SKE\"\nwind_from_deg = 1\nwind_speed_kt = 1",
            "route fix 1 (SKE)",
            "wind",
            "leads to",
        ),
        ("fix = \"MAR\"", "fix = \"XYZ\"", "route fix 3 (XYZ)", "no station", "SKE, OST, MAR, TUL, HOL"),
        ("fix = \"MAR\"", "fix = \"OST\"", "route fix 3 (OST)", "follows itself", "another one"),
        ("ident = \"MAR\"", "ident = \"OST\"", "station OST", "twice", "once for each"),
        ("ident = \"MAR\"", "ident = \"\"", "station 3", "empty", "any word"),
        (
            "mach = 0.78 ",
            "mach = 0.78\ncalibrated_airspeed_kt = 250 #",
            "aircraft",
            "(250) and mach (0.78)",
            "one of them",
        ),
        (
            "isa_deviation_k = 7 ",
            "isa_deviation_k = 7\ntemperature_degc = -40 #",
            "air",
            "(7) and temperature_degc (-40)",
            "one of them",
        ),
        ("mach = 0.78 ", "# ", "aircraft", "no speed", "calibrated_airspeed_kt or mach"),
        (
            "wind_speed_kt = 85",
            "wind_speed_kt = 700",
            "route fix 2 (OST)",
            "wind of 700 kt from 255",
            "crosswind below",
        ),
        ("fix = \"MAR\"", "fix = \"SKE\"", "route fix 2 (OST)", "reversal", "other than 180 deg"),
    ] {
        let name: String = format!("key-{to}")
            .chars()
            .map(|letter| if letter.is_alphanumeric() { letter } else { '_' })
            .collect();
        let error = refused(&name, &changed(&[(from, to)]));
        for words in [key, value, allowed] {
            assert!(error.contains(words), "{to:?}: {words:?} is not in {error:?}");
        }
        assert!(error.contains("allowed"), "{error}");
    }
}

#[test]
fn what_is_no_plan_is_told_with_its_line() {
    for (name, from, to, words) in [
        ("unknown-key", "bank_limit_deg = 25", "bank_limit = 25", "line 7"),
        ("wrong-type", "bank_limit_deg = 25", "bank_limit_deg = \"much\"", "line 7"),
        ("missing-key", "pressure_altitude_ft = 35000", "", "pressure_altitude_ft"),
        ("no-toml", "[aircraft]", "[aircraft", "line 4"),
    ] {
        let error = refused(name, &changed(&[(from, to)]));
        assert!(error.contains(words), "{name}: {error}");
    }
    assert!(refused("empty", "").contains("no [[route]] and no [[leg]]"));
    assert!(refused("no-aircraft", "[[route]]\nfix = \"SKE\"\n").contains("aircraft"));
    let route = default_plan().find("[[route]]").unwrap();
    let short = default_plan()[..route].to_string() + "[[route]]\nfix = \"SKE\"\n[[route]]\nfix = \"OST\"\n";
    assert!(refused("two-fixes", &short).contains("2 fixes are given; allowed: at least 3"));
    let same = changed(&[("61.8200", "61.2500"), ("-14.4000", "-11.5000")]);
    assert!(refused("same-place", &same).contains("leg SKE to OST: the two stations are at the same place"));
}

/// The air may be left out: it is standard and calm then, as `docs/brief.md` says.
#[test]
fn a_plan_without_air_is_none_of_these() {
    let plan = default_plan();
    let (air, stations) = (plan.find("[air]").unwrap(), plan.find("[[station]]").unwrap());
    let without = plan[..air].to_string() + &plan[stations..];
    let written =
        "[air]\nisa_deviation_k = 0\naltimeter_setting_hpa = 1013.25\nwind_from_deg = 0\nwind_speed_kt = 0\n";
    let with = plan[..air].to_string() + written + &plan[stations..];
    assert_eq!(
        super::briefed("without-air", &without, &["--json"]),
        super::briefed("with-air", &with, &["--json"])
    );
}

#[test]
fn wrong_arguments_are_told_what_is_allowed() {
    let islands = plans().join("islands.toml");
    let islands = islands.to_str().unwrap();
    for (arguments, words) in [
        (vec!["/nowhere/plan.toml"], "/nowhere/plan.toml"),
        (vec!["--xml"], "allowed: --json, --geojson, --help"),
        (vec![islands, islands], "second plan"),
        (vec!["--json", "--geojson"], "one of --json, --geojson"),
        (vec!["/"], "/: "),
    ] {
        let (code, out, error) = run(&arguments);
        assert_eq!((code, out.as_str()), (2, ""), "{arguments:?}");
        assert!(error.contains(words), "{arguments:?}: {error}");
    }
    assert!(run(&["--help"]).1.contains("usage"));
}

/// Every number of the plan in turn replaced by odd ones: an answer or a refusal, never a crash.
#[test]
fn no_number_makes_it_crash() {
    // So few trials take no time.
    let plan = changed(&[("bank_deg = 2\n", "bank_deg = 2\ntrials = 5\n")]);
    let numbers: Vec<&str> = plan
        .lines()
        .filter(|line| {
            line.contains("_deg")
                || line.contains("_kt")
                || line.contains("_ft")
                || line.contains("_k ")
                || line.contains("mach")
                || line.contains("hpa")
        })
        .collect();
    assert!(numbers.len() > 25);
    for (index, line) in numbers.iter().enumerate() {
        let key = line.split('=').next().unwrap();
        for odd in [
            "0", "-0.0", "1e-300", "-1", "1e308", "90", "-90", "180", "1e-9", "89.9999", "nan", "inf", "-inf",
        ] {
            let changed = plan.replacen(line, &format!("{key}= {odd}"), 1);
            for option in ["--json", "--geojson"] {
                let (code, _, error) = run_plan(&format!("odd-{index}"), &changed, &[option]);
                assert!(code == 0 || code == 2, "{key}= {odd}: {error}");
            }
            let (code, _, error) = run_plan(&format!("odd-{index}"), &changed, &[]);
            assert!(code == 0 || code == 2, "{key}= {odd}: {error}");
        }
    }
}

#[test]
fn errors_and_levels_that_are_none_are_refused() {
    let level = |altitude: &str| {
        format!(
            "[[air.wind_level]]\npressure_altitude_ft = {altitude}\nwind_from_deg = 250\nwind_speed_kt = 60\n"
        )
    };
    let levels = |plan: &str| {
        changed(&[
            ("wind_from_deg = 255\n", ""),
            ("wind_speed_kt = 85\n", ""),
            ("[errors]", &format!("{plan}[errors]")),
        ])
    };
    for (name, plan, words) in [
        (
            "negative",
            changed(&[("bank_deg = 2\n", "bank_deg = -2\n")]),
            ["errors.bank_deg is -2 deg", "from 0"],
        ),
        (
            "no-number",
            changed(&[("bank_deg = 2\n", "dme_nm = nan\n")]),
            ["errors.dme_nm is NaN NM", "from 0"],
        ),
        (
            "certain",
            changed(&[("confidence = 0.95", "confidence = 1")]),
            ["errors.confidence is 1;", "below 1"],
        ),
        (
            "no-trials",
            changed(&[("bank_deg = 2\n", "trials = 0\n")]),
            ["errors.trials is 0;", "from 1 to 10000000"],
        ),
        (
            "descending",
            levels(&(level("40000") + &level("30000"))),
            ["air.wind_level: a level", "levels that ascend"],
        ),
        ("too-high", levels(&level("400000")), ["air.wind_level 1: pressure_altitude_ft", "400000 ft"]),
        (
            "both-winds",
            changed(&[("[errors]", &format!("{}[errors]", level("30000")))]),
            ["both given", "one of them"],
        ),
    ] {
        let error = refused(name, &plan);
        for word in words {
            assert!(error.contains(word), "{name}: {error}");
        }
    }
}
