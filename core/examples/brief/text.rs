//! The brief for a person at a terminal, in lines of up to eighty characters.

use std::fmt::Write;

use crate::brief::Brief;
use crate::change::{ByRule, Change, FlyOver};
use crate::leg::Leg;
use crate::sure::{ErrorsGiven, Sure};

const WIDTH: usize = 80;

/// What is said in place of a time that would have run backwards.
const NO_TIME: &str = "no time can be said: a leg before it is too short";

const EXPLANATION: &str = "BEGIN is where the roll into the turn begins, ROLL OUT where the wings are level on the outbound course. The DME \
reading is the slant range, the straight line from the station to the aircraft. Inside the cone of confusion above a station its \
radials cannot be used. IF FLOWN OVER: the turn begins only over the station, passes through the outbound course and comes back to \
it. BY RULE: a third of a mile of lead for each 60 kt of groundspeed for 90 degrees, in proportion for less; half a mile more for \
each 10 000 ft above 5 000 ft; or the lead added to the height in miles (6 000 ft each) as a DME reading, where the errors \
work against each other (docs/lead.md). HOW SURE: where trials with the errors named above roll out, across the outbound course; \
over is the outer side, where a turn begun late ends (docs/flight.md).";

/// An angle as it is said: three digits, 360 for north.
pub fn direction(degrees: f64) -> String {
    let whole = degrees.round().rem_euclid(360.0);
    format!("{:03.0}", if whole == 0.0 { 360.0 } else { whole })
}

/// A time in minutes and seconds, and hours where there are some.
pub fn clock(time_s: f64) -> String {
    let whole = time_s.abs().round();
    let (hours, minutes, seconds) = ((whole / 3600.0).floor(), (whole / 60.0).floor() % 60.0, whole % 60.0);
    let sign = if time_s < 0.0 && whole > 0.0 { "-" } else { "" };
    if hours > 0.0 {
        format!("{sign}{hours:.0}:{minutes:02.0}:{seconds:02.0}")
    } else {
        format!("{sign}{minutes:.0}:{seconds:02.0}")
    }
}

/// A number as it was written, without what a conversion of units left in its last digits.
pub fn trimmed(value: f64) -> f64 {
    (value * 1e6).round() / 1e6
}

pub fn side(degrees: f64) -> &'static str {
    if degrees < 0.0 { "left" } else { "right" }
}

fn governor(word: &str) -> &'static str {
    match word {
        "bank_limit" => "the bank limit",
        "turn_rate_limit" => "the turn-rate limit",
        _ => "the roll: so small a change never reaches a limit",
    }
}

/// Text broken between words to the terminal's width.
pub fn wrapped(text: &str) -> String {
    let mut lines = vec![String::new()];
    for word in text.split(' ') {
        match lines.last_mut() {
            Some(line) if line.is_empty() => line.push_str(word),
            Some(line) if line.chars().count() + 1 + word.chars().count() <= WIDTH => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_string()),
        }
    }
    lines.join("\n")
}

/// Lines under a label of fixed width.
pub struct Block(pub String);

impl Block {
    pub fn row(&mut self, label: &str, lines: &[String]) {
        for (index, line) in lines.iter().enumerate() {
            let shown = if index == 0 { label } else { "" };
            let _ = writeln!(self.0, "{shown:<16}{line}");
        }
    }

    /// What bank, rate of turn and roll are kept; none of a rate is no limit, of a roll an instant one.
    pub fn limits(&mut self, bank_deg: f64, rate_deg_per_s: Option<f64>, roll_deg_per_s: Option<f64>) {
        let rate = |rate: Option<f64>, none: &str| {
            rate.map_or(none.to_string(), |rate| format!("{} deg/s", trimmed(rate)))
        };
        let (bank_deg, rate_text) = (trimmed(bank_deg), rate(rate_deg_per_s, "free"));
        let roll = rate(roll_deg_per_s, "instant");
        self.row("limits", &[format!("bank {bank_deg} deg, rate of turn {rate_text}, roll {roll}")]);
    }

    pub fn title(&mut self, title: &str, rule: &str) {
        let _ = writeln!(self.0, "{title}\n{}", rule.repeat(title.chars().count().min(WIDTH)));
    }
}

/// The whole brief.
pub fn write(brief: &Brief) -> String {
    let mut text = Block(String::new());
    text.title(&brief.title, "=");
    text.row(
        "altitude",
        &[format!(
            "{:.0} ft by pressure; altimeter setting {:.1} hPa",
            brief.pressure_altitude_ft, brief.altimeter_setting_hpa
        )],
    );
    text.row(
        "temperature",
        &[format!("{:.0} degC (ISA {:+.0} K)", brief.temperature_degc, brief.isa_deviation_k)],
    );
    text.row(
        "airspeed",
        &[format!(
            "{:.0} kt true, {:.0} kt calibrated, Mach {:.3}",
            brief.true_airspeed_kt, brief.calibrated_airspeed_kt, brief.mach
        )],
    );
    text.limits(brief.bank_limit_deg, brief.turn_rate_limit_deg_per_s, brief.roll_rate_deg_per_s);
    text.row(
        "in all",
        &[match (brief.total_distance_nm, brief.total_time_s) {
            (Some(distance_nm), Some(time_s)) => {
                format!("{distance_nm:.1} NM in {} (minutes:seconds)", clock(time_s))
            }
            _ => "not to be said: a leg is too short for the turns at its ends".into(),
        }],
    );
    let errors = &brief.errors;
    text.row(
        "errors",
        &[
            format!(
                "to one deviation: radial {:.1} deg, DME {} NM, bank {} deg,",
                errors.station_bearing_deg,
                trimmed(errors.dme_nm),
                trimmed(errors.bank_deg)
            ),
            format!(
                "wind {} deg and {} kt, airspeed {} kt, height {} ft,",
                trimmed(errors.wind_direction_deg),
                trimmed(errors.wind_speed_kt),
                trimmed(errors.airspeed_kt),
                trimmed(errors.height_ft)
            ),
            format!(
                "roll-in {} s late, give or take {} s",
                trimmed(errors.mean_delay_s),
                trimmed(errors.roll_in_delay_s)
            ),
        ],
    );
    text.0.push_str("\nCourses, headings and winds are true; radials are in each station's own north.\n\n");
    legs(&mut text, &brief.legs);
    for (change, leg) in brief.course_changes.iter().zip(&brief.legs) {
        self::change(&mut text, change, leg, &brief.errors);
    }
    let _ =
        write!(text.0, "\n{}\n\n{}", wrapped(EXPLANATION), wrapped(&format!("CAUTION: {}", brief.caution)));
    text.0
}

fn legs(text: &mut Block, legs: &[Leg]) {
    let names: Vec<String> = legs.iter().map(|leg| format!("{} - {}", leg.from, leg.to)).collect();
    let width = names.iter().map(|name| name.chars().count()).max().unwrap_or(0).max(9);
    let _ = writeln!(
        text.0,
        "{:<width$}    length     course    radials  heading  ground-   straight     time\n\
         {:<width$}            from - to  from / to             speed       part",
        "leg", ""
    );
    for (leg, name) in legs.iter().zip(&names) {
        let _ = writeln!(
            text.0,
            "{name:<width$}  {:>5.1} NM  {} - {}  {} / {}      {}  {:>3.0} kt  {:>6.1} NM  {:>7}",
            leg.length_nm,
            direction(leg.initial_course_deg),
            direction(leg.final_course_deg),
            direction(leg.radial_from_deg),
            direction(leg.radial_to_deg),
            direction(leg.heading_deg),
            leg.groundspeed_kt,
            leg.straight_nm,
            leg.straight_time_s.map_or_else(|| "-".into(), clock),
        );
        if !leg.long_enough {
            let _ = writeln!(
                text.0,
                "{:<width$}  TOO SHORT by {:.1} NM: the turns at its ends take {:.1} NM",
                "", -leg.straight_nm, leg.least_length_nm
            );
        }
        if leg.unreceived_nm > 0.0 {
            let _ = writeln!(
                text.0,
                "{:<width$}  {:.0} NM of it lie BEYOND THE RADIO HORIZON of both stations",
                "", leg.unreceived_nm
            );
        }
    }
}

fn change(text: &mut Block, change: &Change, leg: &Leg, errors: &ErrorsGiven) {
    let name = if change.name.is_empty() { String::new() } else { format!(" ({})", change.name) };
    text.0.push('\n');
    text.title(
        &format!(
            "{}{name}: {:.0} degrees {}{}, course {} to {}",
            change.fix,
            change.course_change_deg.abs(),
            side(change.course_change_deg),
            long_way(change),
            direction(change.inbound_course_deg),
            direction(change.outbound_course_deg)
        ),
        "-",
    );
    if change.governed_by == "no_turn" {
        text.row("NO TURN", &["the course stays as it is".into()]);
        return;
    }
    text.row("BEGIN", &begin(change, leg));
    text.row(
        "turn",
        &[
            format!(
                "{:.0} degrees of heading {}, {} to {}, in {}",
                change.heading_change_deg.abs(),
                side(change.heading_change_deg),
                direction(change.heading_before_deg),
                direction(change.heading_after_deg),
                clock(change.turn_time_s)
            ),
            format!("bank {:.0} degrees, set by {}", change.bank_deg, governor(change.governed_by)),
        ],
    );
    text.row(
        "groundspeed",
        &[format!(
            "{:.0} kt before, {:.0} kt after, in a wind from {} at {:.0} kt",
            change.groundspeed_before_kt,
            change.groundspeed_after_kt,
            direction(change.wind_from_deg),
            change.wind_speed_kt
        )],
    );
    text.row(
        "ROLL OUT",
        &[
            format!(
                "at {:.1} DME on radial {}, {:.2} NM {} the station",
                change.roll_out_dme_nm,
                direction(change.roll_out_radial_deg),
                change.roll_out_past_fix_nm.abs(),
                if change.roll_out_past_fix_nm < 0.0 { "before" } else { "past" }
            ),
            match change.roll_out_after_start_s {
                Some(time_s) => format!("{} from the start", clock(time_s)),
                None => NO_TIME.into(),
            },
        ],
    );
    text.row(
        "closest",
        &[format!(
            "{:.2} NM from the station, {:.0} ft above it",
            change.closest_approach_nm, change.height_above_station_ft
        )],
    );
    text.row(
        "cone",
        &[format!(
            "reaches to {:.2} NM, {:.1} DME: {}",
            change.cone_radius_nm,
            change.cone_edge_dme_nm,
            match (change.begins_in_cone, change.enters_cone) {
                (true, _) => "ENTERED BEFORE THE TURN BEGINS",
                (false, true) => "ENTERED IN THE TURN",
                (false, false) => "not entered",
            }
        )],
    );
    text.row("if flown over", &over(&change.fly_over));
    text.row("by rule", &by_rule(&change.by_rule));
    text.row("how sure", &how_sure(&change.sureness, errors));
}

/// A turn against the side of the change is the long way round.
fn long_way(change: &Change) -> String {
    let against = change.heading_change_deg * change.course_change_deg < 0.0;
    if against && change.heading_change_deg.abs() > 180.0 {
        format!(", turned {} the long way", side(change.heading_change_deg))
    } else {
        String::new()
    }
}

fn begin(change: &Change, leg: &Leg) -> Vec<String> {
    let (way, place) =
        if change.begin_before_fix_nm < 0.0 { ("outbound", "past") } else { ("inbound", "before") };
    let time = if !leg.long_enough {
        "before the turn at the last station has ended: THE LEG IS TOO SHORT".into()
    } else {
        match (change.begin_after_start_s, change.begin_after_last_roll_out_s) {
            (Some(start_s), Some(last_s)) if start_s > last_s => {
                format!("{} from the start, {} after the last turn", clock(start_s), clock(last_s))
            }
            (Some(start_s), _) => format!("{} from the start", clock(start_s)),
            (None, _) => NO_TIME.into(),
        }
    };
    vec![
        format!(
            "at {:.1} DME {way} on radial {}, {:.2} NM {place} the station",
            change.begin_at_dme_nm,
            direction(change.begin_on_radial_deg),
            change.begin_before_fix_nm.abs()
        ),
        time,
        match change.ground_per_dme_tenth_nm {
            Some(ground_nm) if ground_nm < 1.0 => {
                format!("0.1 on the DME is {ground_nm:.2} NM along the ground there")
            }
            _ => "the DME hardly moves there, so near overhead: go by time".into(),
        },
    ]
}

fn over(over: &FlyOver) -> Vec<String> {
    if over.extra_time_s.is_nan() {
        return vec!["the wind leaves no way back to the outbound course".into()];
    }
    let overshoot = if over.greatest_overshoot_nm < 0.0 {
        "no overshoot".into()
    } else {
        format!("overshoot {:.2} NM", over.greatest_overshoot_nm)
    };
    // Turned the long way, coming back from over the station can be the shorter flight.
    let than = |extra: f64| if extra < 0.0 { "less" } else { "more" };
    let (farther, longer) = (than(over.extra_distance_nm), than(over.extra_time_s));
    let between = if farther == longer { String::new() } else { format!(" {farther}") };
    vec![
        format!(
            "{overshoot}; {:.2} NM{between} and {} {longer} than turning before it",
            over.extra_distance_nm.abs(),
            clock(over.extra_time_s.abs())
        ),
        format!(
            "established {:.1} NM {}, intercepting at {:.0} degrees",
            over.established_past_fix_nm.abs(),
            if over.established_past_fix_nm < 0.0 { "before it" } else { "past" },
            over.intercept_angle_deg
        ),
    ]
}

fn how_sure(sure: &Sure, errors: &ErrorsGiven) -> Vec<String> {
    let hundred = |share: f64| format!("{} of 100", trimmed((1000.0 * share).round() / 10.0));
    let mut lines = vec![
        format!(
            "rolls out {:.2} NM {} in the mean, {:.2} NM to one deviation",
            sure.mean_overshoot_nm.abs(),
            if sure.mean_overshoot_nm < 0.0 { "short" } else { "over" },
            sure.deviation_nm
        ),
        format!("over by more than {} NM: {}", trimmed(errors.limit_nm), hundred(sure.chance_beyond_limit)),
    ];
    let kept = hundred(errors.confidence);
    lines.push(if sure.chance_beyond_limit <= 1.0 - errors.confidence {
        format!("{kept} keep that, with {:.2} NM of lead to spare", sure.margin_nm.abs())
    } else {
        let way = if sure.margin_nm < 0.0 { "less" } else { "more" };
        let past = if sure.begin_with_margin_before_fix_nm < 0.0 { " past the station" } else { "" };
        let begin = sure
            .begin_with_margin_at_dme_nm
            .map_or_else(String::new, |dme_nm| format!(", begun at {dme_nm:.1} DME{past}"));
        format!("for {kept} to keep that: {:.2} NM {way} lead{begin}", sure.margin_nm.abs())
    });
    if let Some(foremost) = sure.foremost {
        let worth_nm = sure.by_source_nm.get(foremost).and_then(|worth| worth.as_f64()).unwrap_or(f64::NAN);
        lines.push(format!("what matters most: {}, {:.2} NM", source(foremost), worth_nm.abs()));
    }
    lines
}

/// A source of error as it is said.
fn source(word: &str) -> &str {
    match word {
        "station_bearing" => "the radial",
        "dme" => "the DME reading",
        "wind_speed" => "the wind's speed",
        "wind_direction" => "the wind's direction",
        "airspeed" => "the airspeed",
        "bank" => "the bank",
        "roll_in_delay" => "the moment of roll-in",
        "height" => "the height",
        other => other,
    }
}

fn by_rule(rule: &ByRule) -> Vec<String> {
    let verdict = |error_nm: f64| {
        format!("{:.2} NM too {}", error_nm.abs(), if error_nm < 0.0 { "late" } else { "early" })
    };
    let mut lines =
        vec![format!("lead                   {:>5.2} NM   {}", rule.lead_nm, verdict(rule.lead_error_nm))];
    // Low down there is no allowance.
    if rule.lead_with_height_nm > rule.lead_nm {
        lines.push(format!(
            "with height allowance  {:>5.2} NM   {}",
            rule.lead_with_height_nm,
            verdict(rule.lead_with_height_error_nm)
        ));
    }
    lines.push(format!(
        "lead + height          {:>5.2} DME  {} on the DME",
        rule.dme_nm,
        verdict(rule.dme_error_nm)
    ));
    lines
}
