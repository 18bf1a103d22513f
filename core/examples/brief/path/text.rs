//! The brief of legs for a person at a terminal, in lines of up to eighty characters.

use std::fmt::Write;

use super::brief::{Brief, Leg, Reading, TurnPoint};
use crate::text::{Block, clock, direction, side, trimmed, wrapped};

const EXPLANATION: &str = "A turn belongs to the leg it leads onto; BEGIN is where the roll into it begins, ROLL OUT where the wings are \
level. A leg's distance and time are with its turns. DME readings are slant ranges.";

/// The whole brief.
pub fn write(brief: &Brief) -> String {
    let mut text = Block(String::new());
    text.title(&brief.title, "=");
    let climb = match brief.climb_fpm {
        0.0 => "level".to_string(),
        climb => format!(
            "{} at {} ft/min",
            if climb > 0.0 { "climbing" } else { "descending" },
            trimmed(climb.abs())
        ),
    };
    text.row(
        "altitude",
        &[format!(
            "{:.0} ft by pressure at the first fix, {climb}; setting {:.1} hPa",
            brief.pressure_altitude_ft, brief.altimeter_setting_hpa
        )],
    );
    text.row(
        "airspeed",
        &[format!("{:.0} kt true (ISA {:+.0} K)", brief.true_airspeed_kt, brief.isa_deviation_k)],
    );
    let wind = if brief.wind_speed_kt == 0.0 {
        "calm".to_string()
    } else {
        format!("from {} at {:.0} kt", direction(brief.wind_from_deg), brief.wind_speed_kt)
    };
    text.row("wind", &[wind]);
    text.limits(brief.bank_limit_deg, brief.turn_rate_limit_deg_per_s, brief.roll_rate_deg_per_s);
    text.row(
        "in all",
        &[format!("{:.1} NM in {} (minutes:seconds)", brief.total_distance_nm, clock(brief.total_time_s))],
    );
    let _ = write!(text.0, "\n{}\n\n", wrapped(&norths(brief.magnetic_variation_deg)));
    table(&mut text, brief);
    for leg in &brief.legs {
        self::leg(&mut text, leg);
    }
    let _ =
        write!(text.0, "\n{}\n\n{}", wrapped(EXPLANATION), wrapped(&format!("CAUTION: {}", brief.caution)));
    text.0
}

/// From which north each direction is told.
fn norths(variation_deg: Option<f64>) -> String {
    let Some(variation_deg) = variation_deg else {
        return "Courses, headings and winds are true; radials are in each station's own north.".into();
    };
    let side = match variation_deg {
        0.0 => "",
        east if east > 0.0 => " east",
        _ => " west",
    };
    format!(
        "Courses and headings are magnetic (variation {} degrees{side}); winds are true; radials are in each station's own north.",
        trimmed(variation_deg.abs())
    )
}

fn table(text: &mut Block, brief: &Brief) {
    let width = brief
        .legs
        .iter()
        .filter_map(|leg| leg.fix.as_ref())
        .map(|fix| fix.chars().count())
        .max()
        .unwrap_or(0)
        .max(3);
    let north = match brief.magnetic_variation_deg {
        Some(_) => "    mag      mag     ",
        None => "                    ",
    };
    let _ = writeln!(
        text.0,
        "leg    {:<width$}  course  heading  ground-  distance     time   total  altitude\n       {:<width$}{north}speed",
        "fix", ""
    );
    for leg in &brief.legs {
        let _ = writeln!(
            text.0,
            "{:>3} {}  {:<width$}   {}      {}   {:>3.0} kt  {:>5.1} NM  {:>7} {:>7}  {:>5.0} ft",
            leg.number,
            leg.code,
            leg.fix.as_deref().unwrap_or(""),
            direction(leg.magnetic_course_deg.unwrap_or(leg.course_deg)),
            direction(leg.magnetic_heading_deg.unwrap_or(leg.heading_deg)),
            leg.groundspeed_kt,
            leg.distance_nm,
            clock(leg.time_s),
            clock(leg.end_after_start_s),
            leg.end_altitude_ft,
        );
    }
}

fn leg(text: &mut Block, leg: &Leg) {
    if leg.turns.is_empty() && leg.checks.is_empty() {
        return;
    }
    text.0.push('\n');
    let fix = leg.fix.as_ref().map_or(String::new(), |fix| format!(" ({fix})"));
    text.title(&format!("{} {}{fix}: {}", leg.number, leg.code, leg.meaning), "-");
    for turn in &leg.turns {
        text.row("BEGIN", &place(&turn.begin));
        text.row(
            "turn",
            &[
                format!(
                    "{:.0} degrees of heading {}, in {}",
                    turn.heading_change_deg.abs(),
                    side(turn.heading_change_deg),
                    clock(turn.time_s)
                ),
                format!("bank {:.0} degrees, set by {}", turn.bank_deg, governor(turn.governed_by)),
            ],
        );
        text.row("ROLL OUT", &place(&turn.roll_out));
    }
    if let Some(bank_deg) = leg.arc_bank_deg {
        text.row("arc", &[format!("{bank_deg:.0} degrees of bank keep to it")]);
    }
    for check in &leg.checks {
        text.row("CHECK", std::slice::from_ref(check));
    }
}

fn governor(word: &str) -> &'static str {
    match word {
        "bank_limit" => "the bank limit",
        "turn_rate_limit" => "the turn-rate limit",
        _ => "the roll alone",
    }
}

fn place(place: &TurnPoint) -> Vec<String> {
    let course = match place.magnetic_course_deg {
        Some(course_deg) => format!("{} magnetic", direction(course_deg)),
        None => direction(place.course_deg),
    };
    let mut lines = vec![format!(
        "{} from the start, on course {course}, at {:.0} ft",
        clock(place.after_start_s),
        place.altitude_ft
    )];
    lines.extend(place.stations.iter().map(seen));
    lines
}

fn seen(reading: &Reading) -> String {
    let radial =
        reading.radial_deg.map_or("overhead".to_string(), |radial| format!("radial {}", direction(radial)));
    let flag = match reading.flag {
        "clear" => "",
        "cone" => ", in its cone",
        "below_horizon" => ", below its horizon",
        _ => ", out of its range",
    };
    format!("{} {radial}, {:.1} DME{flag}", reading.ident, reading.dme_nm)
}
