//! The rules of the holding pattern beside the pattern that closes.

use lubberline::Error;
use lubberline::procedure::{HoldingPattern, HoldingSide, TimedLeg};
use lubberline::rules::{
    DriftRule, next_outbound_time_error, outbound_correction_error, outbound_time_by_headwind_error,
};
use lubberline::turn::TurnLimits;
use lubberline::value::{HoldTime, TrueAirspeed, TrueBearing, TrueNorth, WindSpeed, units::*};
use lubberline::wind::Wind;

use crate::page::{signed, table, words};

/// A hold on course north with turns to the right.
fn pattern(
    timed: TimedLeg,
    speed_kt: f64,
    from_deg: f64,
    wind_kt: f64,
) -> Result<HoldingPattern<TrueNorth>, Error> {
    HoldingPattern::new(
        TrueBearing::new(degrees(0.0))?,
        HoldingSide::Right,
        timed,
        HoldTime::new(seconds(60.0))?,
        TrueAirspeed::new(knots(speed_kt))?,
        Wind { from: TrueBearing::new(degrees(from_deg))?, speed: WindSpeed::new(knots(wind_kt))? },
        &TurnLimits::default(),
    )
}

/// The outbound correction in a wind from the right of the inbound course.
pub fn correction() -> Result<String, Error> {
    let head = words(&["speed", "wind", "inbound", "exact", "factor", "twice", "three times"]);
    let mut rows = Vec::new();
    for (speed_kt, wind_kt) in [(90.0, 10.0), (150.0, 20.0), (150.0, 40.0), (230.0, 30.0), (230.0, 60.0)] {
        let pattern = pattern(TimedLeg::Inbound, speed_kt, 90.0, wind_kt)?;
        let angle = |it: Angle| format!("{}°", signed(it.get::<degree>(), 1));
        let mut row = vec![
            format!("{speed_kt} kt"),
            format!("{wind_kt} kt"),
            angle(pattern.inbound().wind_correction),
            angle(pattern.outbound_correction().angle()),
            pattern
                .drift_factor()
                .map_or("none".to_owned(), |factor| format!("{:.1}", factor.get::<ratio>())),
        ];
        for &rule in DriftRule::ALL {
            let error = outbound_correction_error(&pattern, rule);
            row.push(format!("{} ({})", angle(error.rule), signed(error.error().get::<degree>(), 1)));
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}

/// The outbound time in a wind along the inbound course.
pub fn time() -> Result<String, Error> {
    let head = words(&[
        "speed",
        "wind inbound",
        "exact",
        "by the headwind",
        "knot",
        "turns",
        "by the round before",
        "groundspeed",
        "heading",
    ]);
    let mut rows = Vec::new();
    for (speed_kt, from_deg, wind_kt) in [
        (90.0, 0.0, 15.0),
        (90.0, 180.0, 15.0),
        (150.0, 0.0, 30.0),
        (150.0, 180.0, 30.0),
        (230.0, 180.0, 50.0),
    ] {
        let wanted = pattern(TimedLeg::Inbound, speed_kt, from_deg, wind_kt)?;
        let by_headwind = outbound_time_by_headwind_error(&wanted);
        let by_round =
            next_outbound_time_error(&pattern(TimedLeg::Outbound, speed_kt, from_deg, wind_kt)?, &wanted);
        let time = |it: Time| it.get::<second>();
        let side = if from_deg == 0.0 { "from ahead" } else { "from behind" };
        let mut row = vec![
            format!("{speed_kt} kt"),
            format!("{wind_kt} kt {side}"),
            format!("{:.0} s", time(by_headwind.exact)),
        ];
        for error in [by_headwind, by_round] {
            row.push(format!("{:.0} s ({})", time(error.rule), signed(time(error.error()), 0)));
            row.extend(error.terms.map(|term| signed(time(term), 0)));
        }
        rows.push(row);
    }
    Ok(table(&head, &rows))
}
