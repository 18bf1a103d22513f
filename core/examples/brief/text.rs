//! The brief for a person at a terminal.

use std::fmt::Write;

use crate::brief::{Brief, Change, Leg};

/// An angle as it is said: three digits, 360 for north.
fn direction(degrees: f64) -> String {
    let whole = degrees.round().rem_euclid(360.0);
    format!("{:03.0}", if whole == 0.0 { 360.0 } else { whole })
}

/// A time as minutes and seconds.
fn clock(time_s: f64) -> String {
    let whole = time_s.abs().round();
    let sign = if time_s < 0.0 { "-" } else { "" };
    format!("{sign}{:.0}:{:02.0}", (whole / 60.0).floor(), whole % 60.0)
}

fn side(degrees: f64) -> &'static str {
    if degrees < 0.0 { "left" } else { "right" }
}

fn governed(word: &str) -> &'static str {
    match word {
        "bank_limit" => "the bank limit",
        "turn_rate_limit" => "the limit of the rate of turn",
        "roll_rate" => "the roll: too small a change to reach the limit",
        _ => "nothing: there is no turn",
    }
}

/// The whole brief.
pub fn write(brief: &Brief) -> String {
    let mut text = String::new();
    let _ = writeln!(text, "{}\n{}\n", brief.title, "=".repeat(brief.title.chars().count()));
    let _ = writeln!(
        text,
        "Pressure altitude {:.0} ft, {:.0} degC (ISA {:+.0} K). {:.0} kt calibrated, Mach {:.3}, {:.0} kt true.\n\
         Distance {:.1} NM, time {} (minutes:seconds). Courses are true; radials are in each station's own north.\n",
        brief.pressure_altitude_ft,
        brief.temperature_degc,
        brief.isa_deviation_k,
        brief.calibrated_airspeed_kt,
        brief.mach,
        brief.true_airspeed_kt,
        brief.total_distance_nm,
        clock(brief.total_time_s)
    );
    let _ =
        writeln!(text, "LEG          length   course   radials      heading   groundspeed   straight   time");
    for leg in &brief.legs {
        self::leg(&mut text, leg);
    }
    for (index, change) in brief.course_changes.iter().enumerate() {
        self::change(&mut text, change, index == 0);
    }
    let _ = writeln!(
        text,
        "\nBY RULE: a third of a mile for each 60 kt of groundspeed for 90 degrees, in proportion for less; the reading adds the\n\
         height in miles (6 000 ft each). Its errors work against each other: see docs/lead.md.\n\n\
         CAUTION: {}",
        wrapped(brief.caution)
    );
    text
}

fn leg(text: &mut String, leg: &Leg) {
    let _ = writeln!(
        text,
        "{:<4} - {:<4} {:>6.1} NM      {}   {} / {}        {}        {:>4.0} kt  {:>6.1} NM  {:>5}{}",
        leg.from,
        leg.to,
        leg.length_nm,
        direction(leg.initial_course_deg),
        direction(leg.radial_from_deg),
        direction(leg.radial_to_deg),
        direction(leg.heading_deg),
        leg.groundspeed_kt,
        leg.straight_nm,
        clock(leg.straight_time_s),
        if leg.long_enough { "" } else { "   TOO SHORT for the turns at its ends" }
    );
}

fn change(text: &mut String, change: &Change, first: bool) {
    let title = format!(
        "{} ({}): course {} to {}, {:.0} degrees {}",
        change.fix,
        change.name,
        direction(change.inbound_course_deg),
        direction(change.outbound_course_deg),
        change.course_change_deg.abs(),
        side(change.course_change_deg)
    );
    let _ = writeln!(text, "\n{title}\n{}", "-".repeat(title.chars().count()));
    if change.begin_before_fix_nm < 0.0 {
        let _ = writeln!(
            text,
            "  BEGIN THE TURN     past the station, at {:.1} DME outbound ({:.2} NM along the ground)",
            change.begin_at_dme_nm, -change.begin_before_fix_nm
        );
    } else {
        let _ = writeln!(
            text,
            "  BEGIN THE TURN     at {:.1} DME on radial {} inbound, {:.2} NM before the station, {} after {}",
            change.begin_at_dme_nm,
            direction(change.inbound_radial_deg),
            change.begin_before_fix_nm,
            clock(change.time_from_last_roll_out_s),
            if first { "the start" } else { "the last turn" }
        );
    }
    let _ = writeln!(
        text,
        "  turn               {:.0} degrees of heading {}, {:.0} degrees of bank ({}), in {}",
        change.heading_change_deg.abs(),
        side(change.heading_change_deg),
        change.bank_deg,
        governed(change.governed_by),
        clock(change.turn_time_s)
    );
    let _ = writeln!(
        text,
        "  heading            {} to {}, groundspeed {:.0} to {:.0} kt in wind {} at {:.0} kt",
        direction(change.heading_before_deg),
        direction(change.heading_after_deg),
        change.groundspeed_before_kt,
        change.groundspeed_after_kt,
        direction(change.wind_from_deg),
        change.wind_speed_kt
    );
    let _ = writeln!(
        text,
        "  roll out           on radial {} at {:.1} DME, {:.2} NM past the station",
        direction(change.roll_out_radial_deg),
        change.roll_out_dme_nm,
        change.roll_out_past_fix_nm
    );
    let _ = writeln!(
        text,
        "  closest            {:.2} NM from the station, {:.0} ft above it: {} the cone of confusion ({:.2} NM)",
        change.closest_approach_nm,
        change.height_above_station_ft,
        if change.enters_cone { "INSIDE" } else { "outside" },
        change.cone_radius_nm
    );
    let over = &change.fly_over;
    let _ = writeln!(
        text,
        "  if flown over      {:.2} NM of overshoot, {:+.2} NM and {:+.0} s until back on course at {:.0} degrees, {:.1} NM past",
        over.greatest_overshoot_nm,
        over.extra_distance_nm,
        over.extra_time_s,
        over.intercept_angle_deg,
        over.established_past_fix_nm
    );
    let rule = &change.by_rule;
    let _ = writeln!(
        text,
        "  by rule            lead {:.2} NM ({:+.2} NM), reading {:.1} DME ({:+.1} NM)",
        rule.lead_nm, rule.lead_error_nm, rule.reading_nm, rule.reading_error_nm
    );
}

/// The caution in lines of a terminal's width.
fn wrapped(text: &str) -> String {
    let mut lines = vec![String::from("")];
    for word in text.split(' ') {
        let full = lines.last().is_some_and(|line| line.len() + word.len() > 108);
        if full {
            lines.push(String::new());
        }
        if let Some(line) = lines.last_mut() {
            line.push_str(word);
            line.push(' ');
        }
    }
    lines.iter().map(|line| line.trim_end()).collect::<Vec<_>>().join("\n")
}
