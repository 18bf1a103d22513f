//! The turns that the mental arithmetic of a lead begins, flown.

use lubberline::Error;
use lubberline::air::Air;
use lubberline::rules::{LeadComparison, LeadRule, RollOutAllowed, TurnCue, TurnVerdict};
use lubberline::station::VOR_CONE_HALF_ANGLE_DEG;
use lubberline::turn::TurnLimits;
use lubberline::value::{
    CalibratedAirspeed, ConeHalfAngle, DirectionChange, HeightAboveStation, Mach, PressureAltitude,
    TrueAirspeed, TrueBearing, TrueNorth, WindSpeed, units::*,
};
use lubberline::wind::Wind;

use crate::page::{signed, table, whole, words};

const SPEEDS_KT: [f64; 7] = [90.0, 120.0, 180.0, 250.0, 350.0, 450.0, 500.0];
const HEIGHTS_FT: [f64; 6] = [1_000.0, 5_000.0, 10_000.0, 20_000.0, 30_000.0, 40_000.0];
const CHANGES_DEG: [f64; 5] = [30.0, 60.0, 90.0, 120.0, 150.0];

/// The north of the page: the inbound course is 360 degrees.
pub fn comparison(
    rule: LeadRule,
    wind_from_deg: f64,
    wind_kt: f64,
) -> Result<LeadComparison<TrueNorth>, Error> {
    let wind =
        Wind { from: TrueBearing::new(degrees(wind_from_deg))?, speed: WindSpeed::new(knots(wind_kt))? };
    Ok(LeadComparison { inbound: TrueBearing::new(degrees(0.0))?, wind, limits: TurnLimits::default(), rule })
}

/// Speed, height, change.
fn at(point: (f64, f64, f64)) -> Result<(TrueAirspeed, HeightAboveStation, DirectionChange), Error> {
    Ok((
        TrueAirspeed::new(knots(point.0))?,
        HeightAboveStation::new(feet(point.1))?,
        DirectionChange::new(degrees(point.2))?,
    ))
}

/// The overshoot of a turn and what it comes to, as a cell.
fn cell(
    comparison: &LeadComparison<TrueNorth>,
    point: (f64, f64, f64),
    cue: TurnCue,
) -> Result<String, Error> {
    let (airspeed, height, change) = at(point)?;
    let half_angle = ConeHalfAngle::new(degrees(VOR_CONE_HALF_ANGLE_DEG))?;
    let flown = comparison.flown(airspeed, height, change, cue, half_angle)?;
    let overshoot = signed(flown.overshoot.get::<nautical_mile>(), 1);
    let cone = if flown.began_in_cone || flown.ended_in_cone { " c" } else { "" };
    Ok(match flown.verdict(RollOutAllowed::default()) {
        TurnVerdict::Safe => format!("{overshoot}{cone}"),
        TurnVerdict::Late => format!("**{overshoot} late**{cone}"),
        TurnVerdict::Early => format!("*{overshoot} early*{cone}"),
    })
}

/// Over speed and height, for one change of course.
pub fn grid(change_deg: f64) -> Result<String, Error> {
    let comparison = comparison(LeadRule::Third, 0.0, 0.0)?;
    let mut head = words(&["height"]);
    head.extend(SPEEDS_KT.map(|speed| format!("{speed} kt")));
    let mut rows = Vec::new();
    for height_ft in HEIGHTS_FT {
        let mut row = vec![format!("{} ft", whole(height_ft))];
        for speed_kt in SPEEDS_KT {
            row.push(cell(&comparison, (speed_kt, height_ft, change_deg), TurnCue::Reading)?);
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The greatest airspeed, in steps of 10 kt, to which the turn begun by the reading is not late; none if it is not to 600 kt.
pub fn not_late_to_kt(height_ft: f64, change_deg: f64) -> Result<Option<f64>, Error> {
    let comparison = comparison(LeadRule::Third, 0.0, 0.0)?;
    let half_angle = ConeHalfAngle::new(degrees(VOR_CONE_HALF_ANGLE_DEG))?;
    for tens in 6..=60_u32 {
        let (airspeed, height, change) = at((f64::from(tens) * 10.0, height_ft, change_deg))?;
        let flown = comparison.flown(airspeed, height, change, TurnCue::Reading, half_angle)?;
        if flown.verdict(RollOutAllowed::default()) == TurnVerdict::Late {
            return Ok(Some(f64::from(tens - 1) * 10.0));
        }
    }
    Ok(None)
}

/// Up to which airspeed the turn is not late, over height and change.
pub fn late() -> Result<String, Error> {
    const HEIGHTS_FT: [f64; 7] = [0.0, 1_000.0, 5_000.0, 10_000.0, 20_000.0, 30_000.0, 40_000.0];
    let mut head = words(&["change"]);
    head.extend(HEIGHTS_FT.map(|height| format!("{} ft", whole(height))));
    let mut rows = Vec::new();
    for change_deg in [30.0, 60.0, 90.0, 120.0] {
        let mut row = vec![format!("{change_deg}°")];
        for height_ft in HEIGHTS_FT {
            let speed_kt = not_late_to_kt(height_ft, change_deg)?;
            row.push(speed_kt.map_or_else(|| "600 kt".to_owned(), |speed| format!("{speed} kt")));
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The heights at which the reading is exact.
pub fn holds() -> Result<String, Error> {
    let comparison = comparison(LeadRule::Third, 0.0, 0.0)?;
    let mut head = words(&["change"]);
    head.extend(SPEEDS_KT.map(|speed| format!("{speed} kt")));
    let mut rows = Vec::new();
    for change_deg in CHANGES_DEG {
        let mut row = vec![format!("{change_deg}°")];
        for speed_kt in SPEEDS_KT {
            let (airspeed, _, change) = at((speed_kt, 0.0, change_deg))?;
            let height = comparison.holds_at(airspeed, change)?;
            row.push(height.map_or_else(
                || "none".to_owned(),
                |height| format!("{} ft", whole((height.value().get::<foot>() / 100.0).round() * 100.0)),
            ));
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The heights of a climb at which it is looked at.
const CLIMB_FT: [f64; 6] = [3_000.0, 10_000.0, 17_000.0, 24_000.0, 31_000.0, 37_000.0];

/// An invented jet's climb, as many are: 250 kt to 10 000 ft, then 280 kt until it is Mach 0.78, in standard air.
pub fn climb_airspeed(height_ft: f64) -> Result<TrueAirspeed, Error> {
    let air = Air::standard(PressureAltitude::new(feet(height_ft))?);
    let calibrated_kt = if height_ft <= 10_000.0 { 250.0 } else { 280.0 };
    let by_calibrated = air.true_from_calibrated(CalibratedAirspeed::new(knots(calibrated_kt))?)?;
    let by_mach = air.true_from_mach(Mach::new(Ratio::new::<ratio>(0.78))?)?;
    Ok(if by_mach < by_calibrated { by_mach } else { by_calibrated })
}

/// Up the climb of a jet.
pub fn climb() -> Result<String, Error> {
    let comparison = comparison(LeadRule::Third, 0.0, 0.0)?;
    let head = words(&["height", "true airspeed", "holds at", "30°", "60°", "90°", "120°"]);
    let mut rows = Vec::new();
    for height_ft in CLIMB_FT {
        let speed_kt = climb_airspeed(height_ft)?.value().get::<knot>();
        let (airspeed, _, square) = at((speed_kt, height_ft, 90.0))?;
        let holds_ft = comparison.holds_at(airspeed, square)?.map_or(f64::NAN, |it| it.value().get::<foot>());
        let mut row = vec![
            format!("{} ft", whole(height_ft)),
            format!("{speed_kt:.0} kt"),
            format!("{} ft", whole((holds_ft / 100.0).round() * 100.0)),
        ];
        for change_deg in [30.0, 60.0, 90.0, 120.0] {
            row.push(cell(&comparison, (speed_kt, height_ft, change_deg), TurnCue::Reading)?);
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// By the rule's lead along the ground, over speed and change.
pub fn distance() -> Result<String, Error> {
    let comparison = comparison(LeadRule::Third, 0.0, 0.0)?;
    let mut head = words(&["change"]);
    head.extend(SPEEDS_KT.map(|speed| format!("{speed} kt")));
    let mut rows = Vec::new();
    for change_deg in CHANGES_DEG {
        let mut row = vec![format!("{change_deg}°")];
        for speed_kt in SPEEDS_KT {
            // The cone is a matter of height, which this lead does not know.
            row.push(cell(&comparison, (speed_kt, 0.0, change_deg), TurnCue::Distance)?);
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// What the allowance and the margin make of the lead along the ground, up the climb.
pub fn allowance() -> Result<String, Error> {
    let head = words(&[
        "height",
        "true",
        "third",
        "with allowance",
        "with margin",
        "exact",
        "overshoot: third",
        "with allowance",
        "with margin",
    ]);
    let mut rows = Vec::new();
    for height_ft in CLIMB_FT {
        let speed_kt = climb_airspeed(height_ft)?.value().get::<knot>();
        let point = (speed_kt, height_ft, 90.0);
        let (airspeed, height, change) = at(point)?;
        let (mut leads, mut cells) = (Vec::new(), Vec::new());
        let mut exact = String::new();
        for &rule in LeadRule::ALL {
            let comparison = comparison(rule, 0.0, 0.0)?;
            let error = comparison.error(airspeed, height, change)?;
            leads.push(format!("{:.1}", error.rule_lead.get::<nautical_mile>()));
            exact = format!("{:.1}", error.exact_lead.get::<nautical_mile>());
            cells.push(cell(&comparison, point, TurnCue::Distance)?.replace(" c", ""));
        }
        let mut row = vec![format!("{} ft", whole(height_ft)), format!("{speed_kt:.0} kt")];
        row.extend(leads);
        row.push(exact);
        row.extend(cells);
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// In winds of 50 kt, for a turn to the right.
pub fn wind() -> Result<String, Error> {
    let head = words(&[
        "speed, height, change",
        "calm",
        "from ahead",
        "from behind",
        "from the left",
        "from the right",
    ]);
    let mut rows = Vec::new();
    for point in [
        (120.0, 3_000.0, 90.0),
        (180.0, 10_000.0, 60.0),
        (250.0, 10_000.0, 90.0),
        (450.0, 37_000.0, 60.0),
        (450.0, 37_000.0, 90.0),
    ] {
        let mut row = vec![format!("{} kt, {} ft, {}°", point.0, whole(point.1), point.2)];
        for (from_deg, speed_kt) in [(0.0, 0.0), (0.0, 50.0), (180.0, 50.0), (270.0, 50.0), (90.0, 50.0)] {
            row.push(cell(&comparison(LeadRule::Third, from_deg, speed_kt)?, point, TurnCue::Reading)?);
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}
