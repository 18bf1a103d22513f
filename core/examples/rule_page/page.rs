//! The page: its tables by their names, and how they are put in place.

use lubberline::Error;

use crate::{air, arcs, flown, holds, small, terms};

/// A table is computed by a function without an argument.
type Compute = fn() -> Result<String, Error>;

/// Every table of the page.
const TABLES: &[(&str, Compute)] = &[
    ("terms", terms::lead),
    ("climb", flown::climb),
    ("flown 30", || flown::grid(30.0)),
    ("flown 60", || flown::grid(60.0)),
    ("flown 90", || flown::grid(90.0)),
    ("flown 120", || flown::grid(120.0)),
    ("late", flown::late),
    ("holds", flown::holds),
    ("distance", flown::distance),
    ("allowance", flown::allowance),
    ("wind", flown::wind),
    ("radius", small::radius),
    ("bank", small::bank),
    ("lead radials", arcs::lead_radials),
    ("time to station", small::time_to_station),
    ("off course", small::off_course),
    ("cone", small::cone),
    ("roll out", small::roll_out),
    ("arc entry", arcs::entry),
    ("intercept lead", arcs::intercept_lead),
    ("intercept angle", arcs::intercept_angle),
    ("intercept room", arcs::intercept_room),
    ("hold correction", holds::correction),
    ("hold time", holds::time),
    ("ground distance", air::ground_distance),
    ("horizon", air::horizon),
    ("density altitude", air::density_altitude),
    ("pressure altitude", air::pressure_altitude),
    ("cold", air::cold),
];

/// A page with each of its tables computed anew: what stands between `<!-- table: name -->` and `<!-- end -->`.
///
/// # Errors
/// A name that is no table's, a table that is not ended, a table that the page has not, and what the computing refuses.
pub fn renew(page: &str) -> Result<String, Box<dyn std::error::Error>> {
    let mut renewed = String::new();
    let mut rest = page;
    let mut placed = Vec::new();
    while let Some((before, after)) = rest.split_once("<!-- table: ") {
        let (name, after) = after.split_once(" -->").ok_or("a table's name is not ended")?;
        let (_, after) =
            after.split_once("<!-- end -->").ok_or_else(|| format!("table {name} is not ended"))?;
        let (_, compute) = TABLES
            .iter()
            .find(|(known, _)| *known == name)
            .ok_or_else(|| format!("{name} is no table's name"))?;
        renewed += &format!("{before}<!-- table: {name} -->\n{}<!-- end -->", compute()?);
        placed.push(name);
        rest = after;
    }
    if let Some((name, _)) = TABLES.iter().find(|(name, _)| !placed.contains(name)) {
        return Err(format!("the page has no table {name}").into());
    }
    Ok(renewed + rest)
}

/// A table in the page's own form.
pub fn table(head: &[String], rows: &[Vec<String>]) -> String {
    let line = |cells: &[String]| format!("| {} |\n", cells.join(" | "));
    let rule = format!("|{}\n", "---|".repeat(head.len()));
    line(head) + &rule + &rows.iter().map(|row| line(row)).collect::<String>()
}

/// A list of words as the head of a table.
pub fn words(words: &[&str]) -> Vec<String> {
    words.iter().map(|word| (*word).to_owned()).collect()
}

/// A number with its sign and so many decimals, and no sign for nothing.
pub fn signed(value: f64, decimals: usize) -> String {
    let shown = format!("{value:+.decimals$}");
    if shown.bytes().all(|byte| !byte.is_ascii_digit() || byte == b'0') {
        shown.replace(['+', '-'], "")
    } else {
        shown
    }
}

/// A whole number with a space at the thousands.
pub fn whole(value: f64) -> String {
    let digits = format!("{value:.0}");
    match digits.len().checked_sub(3).filter(|at| *at > 1).and_then(|at| digits.split_at_checked(at)) {
        Some((thousands, rest)) => format!("{thousands} {rest}"),
        None => digits,
    }
}
