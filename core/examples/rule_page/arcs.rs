//! The rules of arcs and intercepts beside the exact answers, over a range.

use lubberline::Error;
use lubberline::lead::{CourseChange, RadialFlown, TurnSide};
use lubberline::rules::{
    ArcEntryRule, ArcLeadRule, arc_entry_lead_error, intercept_angle_error, intercept_lead_error,
    lead_radials_error,
};
use lubberline::turn::TurnLimits;
use lubberline::value::{ArcRadius, DirectionChange, InterceptAngle, TrueAirspeed, TrueBearing, units::*};
use lubberline::wind::Wind;

use crate::page::{signed, table, words};

/// The turn of the tables: 250 kt at half standard rate, by the rule of one percent.
const TURN_NM: f64 = 2.5;

fn miles(value_nm: f64) -> Result<ArcRadius, Error> {
    ArcRadius::new(nautical_miles(value_nm))
}

/// The lead radials off an arc, for a turn of 2.5 NM.
pub fn lead_radials() -> Result<String, Error> {
    let head =
        words(&["arc", "radial", "exact", "plain", "proportion", "third", "added", "sixty", "geometry"]);
    let mut rows = Vec::new();
    for arc_nm in [7.0, 10.0, 15.0, 20.0] {
        for flown in [RadialFlown::Inbound, RadialFlown::Outbound] {
            let error = |rule| lead_radials_error(miles(arc_nm)?, miles(TURN_NM)?, flown, rule);
            let plain = error(ArcLeadRule::Plain)?;
            let mut row = vec![
                format!("{arc_nm} NM"),
                flown.word().to_owned(),
                format!("{:.1}°", plain.exact.get::<degree>()),
            ];
            for &rule in ArcLeadRule::ALL {
                let it = error(rule)?;
                row.push(format!(
                    "{:.1}° ({})",
                    it.rule.get::<degree>(),
                    signed(it.error().get::<degree>(), 1)
                ));
            }
            let [sixty, _, geometry] = plain.terms;
            row.extend([sixty, geometry].map(|term| signed(term.get::<degree>(), 1)));
            rows.push(row);
        }
    }
    Ok(table(&head, &rows))
}

/// The leads onto an arc.
pub fn entry() -> Result<String, Error> {
    let head = words(&["arc", "radial", "exact", "radius", "radius and half", "half a mile", "curve"]);
    let mut rows = Vec::new();
    for arc_nm in [7.0, 10.0, 12.0, 20.0] {
        for flown in [RadialFlown::Inbound, RadialFlown::Outbound] {
            let error = |rule| arc_entry_lead_error(miles(arc_nm)?, miles(TURN_NM)?, flown, rule);
            let plain = error(ArcEntryRule::Radius)?;
            let mut row = vec![
                format!("{arc_nm} NM"),
                flown.word().to_owned(),
                format!("{:.2}", plain.exact.get::<nautical_mile>()),
            ];
            for &rule in ArcEntryRule::ALL {
                let it = error(rule)?;
                let (value, off) = (it.rule.get::<nautical_mile>(), it.error().get::<nautical_mile>());
                row.push(format!("{value:.1} ({})", signed(off, 1)));
            }
            row.push(signed(plain.terms[1].get::<nautical_mile>(), 2));
            rows.push(row);
        }
    }
    Ok(table(&head, &rows))
}

/// The lead onto a radial at 15 NM.
pub fn intercept_lead() -> Result<String, Error> {
    let head = words(&["intercept", "rule", "exact", "error", "sixty", "share", "arc"]);
    let mut rows = Vec::new();
    for angle_deg in [30.0, 45.0, 60.0, 75.0, 90.0] {
        let error =
            intercept_lead_error(miles(15.0)?, miles(TURN_NM)?, InterceptAngle::new(degrees(angle_deg))?)?;
        let mut row = vec![format!("{angle_deg}°")];
        row.extend([error.rule, error.exact].map(|it| format!("{:.1}°", it.get::<degree>())));
        let [sixty, share, arc] = error.terms;
        row.extend([error.error(), sixty, share, arc].map(|it| signed(it.get::<degree>(), 1)));
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The angle at which to intercept.
pub fn intercept_angle() -> Result<String, Error> {
    let head = words(&["off the radial", "rule", "halfway", "error", "limits", "doubling"]);
    let mut rows = Vec::new();
    for off_deg in [5.0, 10.0, 20.0, 30.0, 45.0, 60.0] {
        let error = intercept_angle_error(DirectionChange::new(degrees(off_deg))?);
        let mut row = vec![format!("{off_deg}°")];
        row.extend([error.rule, error.exact].map(|it| format!("{:.1}°", it.get::<degree>())));
        let [limits, doubling] = error.terms;
        row.extend([error.error(), limits, doubling].map(|it| signed(it.get::<degree>(), 1)));
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// How far from the course the turn onto it begins, and where the needle stands then 10 NM out.
pub fn intercept_room() -> Result<String, Error> {
    let head = words(&["speed", "10°", "20°", "30°", "45°", "50°", "90°"]);
    let mut rows = Vec::new();
    for speed_kt in [120.0, 180.0, 250.0, 450.0] {
        let mut row = vec![format!("{speed_kt} kt")];
        for angle_deg in [10.0_f64, 20.0, 30.0, 45.0, 50.0, 90.0] {
            let change = CourseChange::new(
                TrueBearing::new(degrees(0.0))?,
                TrueBearing::new(degrees(angle_deg))?,
                TrueAirspeed::new(knots(speed_kt))?,
                Wind::calm(),
                &TurnLimits::default(),
                TurnSide::Shortest,
            )?;
            let off_nm = change.lead().get::<nautical_mile>() * angle_deg.to_radians().sin();
            row.push(format!("{off_nm:.2} NM, {:.1}°", (off_nm / 10.0).asin().to_degrees()));
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}
