//! Briefs a plan: for each course change of a route, the DME reading at which to begin the turn, and what it does.
//!
//!     cargo run --release --example brief -- PLAN.toml [--json | --geojson]
//!
//! Without a file it briefs an invented route; `core/examples/brief/plans` holds that plan and another.

#![allow(clippy::indexing_slicing, reason = "a place is an array of two numbers")]

mod brief;
mod geojson;
mod plan;
mod text;

use std::process::ExitCode;

use brief::Brief;
use plan::Plan;

const HELP: &str = "Briefs a plan: where to begin each turn of a route.

usage: brief [PLAN.toml] [--json | --geojson]

  PLAN.toml   the plan; without one, an invented route is briefed
  --json      the brief as data
  --geojson   legs, turns and stations as GeoJSON
";

const DEFAULT_PLAN: &str = include_str!("plans/islands.toml");

enum Form {
    Text,
    Json,
    GeoJson,
}

fn main() -> ExitCode {
    match run(std::env::args().skip(1).collect()) {
        Ok(text) => {
            // A reader that stops early, such as a pager, is no failure.
            use std::io::Write;
            let _ = writeln!(std::io::stdout(), "{}", text.trim_end());
            ExitCode::SUCCESS
        }
        Err(error) => {
            eprintln!("{error}");
            ExitCode::from(2)
        }
    }
}

fn run(arguments: Vec<String>) -> Result<String, String> {
    let mut form = Form::Text;
    let mut file = None;
    for argument in arguments {
        match argument.as_str() {
            "--help" | "-h" => return Ok(HELP.to_string()),
            "--json" => form = Form::Json,
            "--geojson" => form = Form::GeoJson,
            option if option.starts_with('-') => {
                return Err(format!("{option} is no option; allowed: --json, --geojson, --help"));
            }
            _ if file.is_some() => return Err(format!("{argument}: a second plan; allowed: one")),
            _ => file = Some(argument),
        }
    }
    let (name, text) = match file {
        Some(name) => {
            let text = std::fs::read_to_string(&name).map_err(|error| format!("{name}: {error}"))?;
            (name, text)
        }
        None => ("the default plan".to_string(), DEFAULT_PLAN.to_string()),
    };
    let plan = Plan::read(&text).map_err(|error| format!("{name}: {error}"))?;
    let brief = Brief::of(&plan).map_err(|error| format!("{name}: {error}"))?;
    match form {
        Form::Text => Ok(text::write(&brief)),
        Form::Json => serde_json::to_string_pretty(&brief).map_err(|error| error.to_string()),
        Form::GeoJson => {
            serde_json::to_string_pretty(&geojson::write(&plan, &brief)).map_err(|error| error.to_string())
        }
    }
}
