//! The rules of one step beside the exact answers, over a range.

use lubberline::Error;
use lubberline::rules::{
    BankRule, RadiusRule, RollOutRule, cone_radius_error, off_course_error, roll_out_lead_error,
    standard_rate_bank_error, time_to_station_error, turn_radius_error,
};
use lubberline::station::VOR_CONE_HALF_ANGLE_DEG;
use lubberline::turn::TurnLimits;
use lubberline::value::{
    BearingDrift, ConeHalfAngle, Dots, ElapsedTime, HeightAboveStation, StationDistance, TrueAirspeed,
    units::*,
};

use crate::page::{signed, table, whole, words};

const SPEEDS_KT: [f64; 6] = [90.0, 120.0, 180.0, 250.0, 350.0, 450.0];

/// Percent by which a rule is above the exact answer.
fn percent(rule: f64, exact: f64) -> String {
    format!("{}%", signed((rule / exact - 1.0) * 100.0, 0))
}

/// The rules of the radius.
pub fn radius() -> Result<String, Error> {
    let head = words(&[
        "speed",
        "half percent",
        "exact, 3°/s",
        "one percent",
        "exact, 1.5°/s",
        "less two",
        "a tenth of the square",
        "exact, 30°",
    ]);
    let mut rows = Vec::new();
    for speed_kt in SPEEDS_KT {
        let speed = TrueAirspeed::new(knots(speed_kt))?;
        let error = |rule| turn_radius_error(speed, rule);
        let miles = |length: Length| length.get::<nautical_mile>();
        let shown = |rule| {
            format!(
                "{:.2} ({})",
                miles(error(rule).rule),
                percent(miles(error(rule).rule), miles(error(rule).exact))
            )
        };
        let exact = |rule| format!("{:.2}", miles(error(rule).exact));
        rows.push(vec![
            format!("{speed_kt} kt"),
            shown(RadiusRule::HalfPercent),
            exact(RadiusRule::HalfPercent),
            shown(RadiusRule::OnePercent),
            exact(RadiusRule::OnePercent),
            shown(RadiusRule::MilesAMinuteLessTwo),
            shown(RadiusRule::TenthOfSquare),
            exact(RadiusRule::TenthOfSquare),
        ]);
    }
    Ok(table(&head, &rows))
}

/// The rules of the bank of standard rate.
pub fn bank() -> Result<String, Error> {
    let head = words(&["speed", "exact", "15 percent", "a tenth and 7", "a tenth and 5", "20 percent"]);
    let mut rows = Vec::new();
    for speed_kt in SPEEDS_KT {
        let speed = TrueAirspeed::new(knots(speed_kt))?;
        let mut row = vec![format!("{speed_kt} kt")];
        for (index, &rule) in BankRule::ALL.iter().enumerate() {
            let error = standard_rate_bank_error(speed, rule)?;
            if index == 0 {
                row.push(format!("{:.1}°", error.exact.get::<degree>()));
            }
            row.push(format!(
                "{:.1}° ({})",
                error.rule.get::<degree>(),
                signed(error.error().get::<degree>(), 1)
            ));
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The time to a station abeam, for 60 seconds between the bearings.
pub fn time_to_station() -> Result<String, Error> {
    let head = words(&["change of bearing", "rule", "exact", "error", "sixty", "sine"]);
    let mut rows = Vec::new();
    for change_deg in [5.0, 10.0, 20.0, 30.0, 45.0, 60.0] {
        let error =
            time_to_station_error(ElapsedTime::new(seconds(60.0))?, BearingDrift::new(degrees(change_deg))?)?;
        let [sixty, sine] = error.terms;
        let mut row = vec![format!("{change_deg}°")];
        row.extend([error.rule, error.exact].map(|it| format!("{:.0} s", it.get::<second>())));
        row.extend([error.error(), sixty, sine].map(|it| format!("{} s", signed(it.get::<second>(), 1))));
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The distance off course at 10 NM.
pub fn off_course() -> Result<String, Error> {
    let head = words(&["dots", "rule", "exact", "error", "200 for 212", "sine"]);
    let mut rows = Vec::new();
    for dots in [1.0, 2.0, 5.0, 15.0] {
        // The needle to the left of centre: the aircraft is to the right of its course.
        let error = off_course_error(
            Dots::new(Ratio::new::<ratio>(-dots))?,
            StationDistance::new(nautical_miles(10.0))?,
        );
        let [dot, sine] = error.terms;
        let mut row = vec![format!("{dots}")];
        row.extend([error.rule, error.exact].map(|it| format!("{:.2} NM", it.get::<nautical_mile>())));
        row.extend(
            [error.error(), dot, sine].map(|it| format!("{} NM", signed(it.get::<nautical_mile>(), 2))),
        );
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The cone as wide each side as the aircraft is high.
pub fn cone() -> Result<String, Error> {
    let head = words(&["height", "rule", "cone of 50°", "error", "mile", "angle"]);
    let mut rows = Vec::new();
    for height_ft in [5_000.0, 10_000.0, 20_000.0, 40_000.0] {
        let error = cone_radius_error(
            HeightAboveStation::new(feet(height_ft))?,
            ConeHalfAngle::new(degrees(VOR_CONE_HALF_ANGLE_DEG))?,
        );
        let [mile, angle] = error.terms;
        let mut row = vec![format!("{} ft", whole(height_ft))];
        row.extend([error.rule, error.exact].map(|it| format!("{:.2} NM", it.get::<nautical_mile>())));
        row.extend(
            [error.error(), mile, angle].map(|it| format!("{} NM", signed(it.get::<nautical_mile>(), 2))),
        );
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The roll-out from the bank that the limits leave, at a roll of 5 degrees per second.
pub fn roll_out() -> Result<String, Error> {
    let limits = TurnLimits::default();
    let head = words(&["speed", "bank", "exact", "a third", "half", "share of a third", "tangent"]);
    let mut rows = Vec::new();
    for speed_kt in SPEEDS_KT {
        let speed = TrueAirspeed::new(knots(speed_kt))?;
        let bank = limits.governing_bank(speed).0;
        let error = |rule| roll_out_lead_error(speed, bank, limits.roll, rule);
        let third = error(RollOutRule::Third);
        let shown = |rule| {
            let error = error(rule);
            format!("{:.1}° ({})", error.rule.get::<degree>(), signed(error.error().get::<degree>(), 1))
        };
        let mut row = vec![
            format!("{speed_kt} kt"),
            format!("{:.1}°", bank.value().get::<degree>()),
            format!("{:.1}°", third.exact.get::<degree>()),
            shown(RollOutRule::Third),
            shown(RollOutRule::Half),
        ];
        row.extend(third.terms.map(|term| signed(term.get::<degree>(), 1)));
        rows.push(row);
    }
    Ok(table(&head, &rows))
}
