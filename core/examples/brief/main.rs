//! Briefs a plan: for each course change of a route, the DME reading at which to begin the turn, and what it does.
//!
//!     cargo run --release --example brief -- PLAN.toml [--json | --geojson]
//!
//! Without a file it briefs an invented route; `core/examples/brief/plans` holds that plan and another, and
//! `docs/brief.md` says what a plan may hold.

#![allow(clippy::indexing_slicing, reason = "a place is an array of two numbers")]

mod brief;
mod change;
mod geojson;
mod leg;
mod path;
mod plan;
mod sure;
mod text;
mod written;

use std::ffi::OsString;
use std::io::{ErrorKind, Write};
use std::process::ExitCode;

use brief::Brief;
use plan::Plan;
use serde_json::Value;

const HELP: &str = "\
Briefs a plan: the DME reading at which to begin each turn of a route.

usage: cargo run --release --example brief -- [PLAN.toml] [--json | --geojson]

  PLAN.toml    the plan; without one, an invented route is briefed
  --json       the brief as data; the keys end in their units
  --geojson    stations, legs and turns as GeoJSON
  --help       this text

A plan is a TOML file (docs/brief.md; three are in core/examples/brief/plans):

  title = \"...\"
  [aircraft]   mach or calibrated_airspeed_kt, pressure_altitude_ft;
               bank_limit_deg (25), turn_rate_limit_deg_per_s (3),
               roll_rate_deg_per_s (5)
  [air]        isa_deviation_k or temperature_degc (standard),
               altimeter_setting_hpa (1013.25),
               wind_from_deg with wind_speed_kt (calm), or by level:
  [[air.wind_level]]  pressure_altitude_ft, wind_from_deg, wind_speed_kt
  [[station]]  ident, latitude_deg, longitude_deg; name, elevation_ft (0),
               declination_deg (0, east positive), cone_half_angle_deg (50)
  [[route]]    fix, a station's ident, at least three times in the order flown;
               turn (\"shortest\", \"left\" or \"right\"),
               wind_from_deg with wind_speed_kt (as in [air]) at that fix
               and on the leg to it, or [[route.wind_level]] as in [air]
  [errors]     standard deviations: station_bearing_deg (2.9), dme_nm (0.1),
               wind_speed_kt (10), wind_direction_deg (10), airspeed_kt (5),
               bank_deg (2), roll_in_delay_s (1.5), height_ft (150); and
               mean_delay_s (3), limit_nm (1), confidence (0.95),
               trials (20000), seed (1)

A plan of path-and-terminator legs has [[leg]] in place of [[route]]:

  [path]       climb_fpm (0), intercept_angle_deg (30), manual_distance_nm (10),
               holding_rule (\"icao\"), magnetic_variation_deg (east positive;
               courses and headings are magnetic with it, else true)
  [[fix]]      ident, latitude_deg, longitude_deg
  [[leg]]      code, \"IF\" to \"PI\", and what it needs of fix, course_deg,
               altitude_ft, distance_nm, dme_nm, station, radial_deg, center,
               turn (\"left\" or \"right\"); fly_over (false),
               outbound_time_s (60), timed (\"outbound_from_level\"),
               reversal (\"45_180\"), off_time_s (60)

In parentheses stands what is taken where a key is left out.
A plan that is wrong ends with exit code 2 and says what is wrong with it;
output that cannot be written ends with 1.
";

const DEFAULT_PLAN: &str = include_str!("plans/islands.toml");

#[derive(Clone, Copy)]
enum Form {
    Text,
    Json,
    GeoJson,
}

fn main() -> ExitCode {
    match run(std::env::args_os().skip(1)) {
        Ok(text) => match printed(&text) {
            Ok(()) => ExitCode::SUCCESS,
            Err(error) => failed(1, &format!("the output is lost: {error}")),
        },
        Err(error) => failed(2, &error),
    }
}

/// Writes to the standard output. A reader that stops early, such as a pager, is no failure.
fn printed(text: &str) -> std::io::Result<()> {
    let mut out = std::io::stdout().lock();
    match writeln!(out, "{}", text.trim_end()).and_then(|()| out.flush()) {
        Err(error) if error.kind() == ErrorKind::BrokenPipe => Ok(()),
        result => result,
    }
}

/// Ends with a message; where that cannot be written either, the exit code is all there is to say.
fn failed(code: u8, message: &str) -> ExitCode {
    let _ = writeln!(std::io::stderr(), "{message}");
    ExitCode::from(code)
}

fn run(arguments: impl Iterator<Item = OsString>) -> Result<String, String> {
    let mut form = None;
    let mut file: Option<OsString> = None;
    for argument in arguments {
        let asked = match argument.to_str() {
            Some("--help" | "-h") => return Ok(HELP.to_string()),
            Some("--json") => Form::Json,
            Some("--geojson") => Form::GeoJson,
            Some(option) if option.starts_with('-') => {
                return Err(format!("{option} is no option; allowed: --json, --geojson, --help"));
            }
            _ if file.is_some() => {
                return Err(format!("{} is a second plan; allowed: one", argument.display()));
            }
            _ => {
                file = Some(argument);
                continue;
            }
        };
        if form.replace(asked).is_some() {
            return Err("two forms are asked for; allowed: one of --json, --geojson".into());
        }
    }
    let (name, text) = match file {
        Some(path) => {
            let name = path.display().to_string();
            let text = std::fs::read_to_string(&path).map_err(|error| format!("{name}: {error}"))?;
            (name, text)
        }
        None => ("the default plan".to_string(), DEFAULT_PLAN.to_string()),
    };
    briefed(&text, form.unwrap_or(Form::Text)).map_err(|error| format!("{name}: {error}"))
}

fn briefed(text: &str, form: Form) -> Result<String, String> {
    let table: toml::Table = text.parse().map_err(|error| plan::in_words(&error))?;
    let of_legs = match (table.contains_key("route"), table.contains_key("leg")) {
        (false, true) => true,
        (true, false) => false,
        (true, true) => return Err("the plan has [[route]] and [[leg]]; allowed: one of the two".into()),
        (false, false) => {
            return Err("the plan has no [[route]] and no [[leg]]; allowed: one of the two".into());
        }
    };
    if of_legs {
        let plan = path::Plan::read(text)?;
        let brief = path::Brief::of(&plan)?;
        return match form {
            Form::Text => Ok(path::text(&brief)),
            Form::Json => written(serde_json::to_value(&brief).map_err(|error| error.to_string())?),
            Form::GeoJson => written(path::geojson(&plan, &brief)),
        };
    }
    let plan = Plan::read(text)?;
    let brief = Brief::of(&plan)?;
    match form {
        Form::Text => Ok(text::write(&brief)),
        Form::Json => written(serde_json::to_value(&brief).map_err(|error| error.to_string())?),
        Form::GeoJson => written(geojson::write(&plan, &brief)),
    }
}

fn written(data: Value) -> Result<String, String> {
    serde_json::to_string_pretty(&rounded(data)).map_err(|error| error.to_string())
}

/// Data without what conversions of units left in the last digits: to nine decimals, a tenth of a millimetre in a degree.
fn rounded(data: Value) -> Value {
    match data {
        Value::Number(number) if number.is_u64() => Value::Number(number),
        Value::Number(number) => match number.as_f64() {
            Some(value) => ((value * 1e9).round() / 1e9).into(),
            None => Value::Number(number),
        },
        Value::Array(items) => items.into_iter().map(rounded).collect(),
        Value::Object(members) => members.into_iter().map(|(key, value)| (key, rounded(value))).collect(),
        other => other,
    }
}
