//! The error of a lead's reading, term by term.

use lubberline::Error;
use lubberline::rules::LeadRule;
use lubberline::value::{DirectionChange, HeightAboveStation, TrueAirspeed, units::*};

use crate::flown::comparison;
use crate::page::{signed, table, whole, words};

/// In calm air, for some speeds and heights and changes.
pub fn lead() -> Result<String, Error> {
    let comparison = comparison(LeadRule::Third, 0.0, 0.0)?;
    let head = words(&[
        "speed",
        "height",
        "change",
        "rule",
        "exact",
        "error",
        "round radius",
        "proportion",
        "standard rate",
        "roll",
        "mile",
        "sum",
    ]);
    let mut rows = Vec::new();
    for (speed_kt, height_ft, change_deg) in [
        (120.0, 10_000.0, 90.0),
        (180.0, 10_000.0, 90.0),
        (250.0, 10_000.0, 90.0),
        (450.0, 10_000.0, 90.0),
        (450.0, 37_000.0, 90.0),
        (450.0, 37_000.0, 45.0),
        (450.0, 37_000.0, 120.0),
    ] {
        let error = comparison.error(
            TrueAirspeed::new(knots(speed_kt))?,
            HeightAboveStation::new(feet(height_ft))?,
            DirectionChange::new(degrees(change_deg))?,
        )?;
        let mut row =
            vec![format!("{speed_kt} kt"), format!("{} ft", whole(height_ft)), format!("{change_deg}°")];
        row.extend(
            [error.rule_reading, error.exact_reading].map(|it| format!("{:.2}", it.get::<nautical_mile>())),
        );
        row.extend(
            [
                error.reading_error(),
                error.round_radius,
                error.proportion,
                error.standard_rate,
                error.roll,
                error.mile,
                error.sum,
            ]
            .map(|it| signed(it.get::<nautical_mile>(), 2)),
        );
        rows.push(row);
    }
    Ok(table(&head, &rows))
}
