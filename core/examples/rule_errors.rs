//! The mental arithmetic of a lead beside the exact answer over a range of speeds, heights and changes, term by term, as CSV.
//!
//! `cargo run -p lubberline --example rule_errors`, with a wind by `-- 270 40` (from 270 degrees, 40 kt; the inbound course is north).

use std::error::Error;

use lubberline::rules::{LeadComparison, LeadRule};
use lubberline::turn::TurnLimits;
use lubberline::value::{
    DirectionChange, HeightAboveStation, TrueAirspeed, TrueBearing, WindSpeed, units::*,
};
use lubberline::wind::Wind;

const HEADER: &str = "true_airspeed_kt,height_ft,change_deg,rule_reading_nm,exact_reading_nm,reading_error_nm,round_radius_nm,proportion_nm,\
    standard_rate_nm,groundspeed_nm,heading_change_nm,drift_nm,roll_nm,mile_nm,sum_nm";

/// A list of plain numbers as a list of values.
fn values<T>(
    numbers: &[f64],
    value: impl Fn(f64) -> Result<T, lubberline::Error>,
) -> Result<Vec<T>, lubberline::Error> {
    numbers.iter().map(|number| value(*number)).collect()
}

fn main() -> Result<(), Box<dyn Error>> {
    let given: Vec<f64> = std::env::args()
        .skip(1)
        .map(|word| word.parse())
        .collect::<Result<_, std::num::ParseFloatError>>()?;
    let wind = match given.as_slice() {
        [] => Wind::calm(),
        [from_deg, speed_kt] => {
            Wind { from: TrueBearing::new(degrees(*from_deg))?, speed: WindSpeed::new(knots(*speed_kt))? }
        }
        _ => return Err("give the wind's direction in degrees and its speed in knots, or nothing".into()),
    };
    let comparison = LeadComparison {
        inbound: TrueBearing::new(degrees(0.0))?,
        wind,
        limits: TurnLimits::default(),
        rule: LeadRule::Third,
    };
    let speeds = values(&[90.0, 120.0, 180.0, 250.0, 350.0, 450.0], |kt| TrueAirspeed::new(knots(kt)))?;
    let heights =
        values(&[3_000.0, 10_000.0, 20_000.0, 36_000.0], |height| HeightAboveStation::new(feet(height)))?;
    let changes = values(&[30.0, 60.0, 90.0, 120.0], |change| DirectionChange::new(degrees(change)))?;

    println!("{HEADER}");
    for row in comparison.over(&speeds, &heights, &changes) {
        let error = row.error?;
        let at = [
            row.true_airspeed.value().get::<knot>(),
            row.height.value().get::<foot>(),
            row.change.angle().get::<degree>(),
        ];
        let lengths = [
            error.rule_reading,
            error.exact_reading,
            error.reading_error(),
            error.round_radius,
            error.proportion,
            error.standard_rate,
            error.groundspeed,
            error.heading_change,
            error.drift,
            error.roll,
            error.mile,
            error.sum,
        ];
        let whole = at.map(|value| format!("{value:.0}")).into_iter();
        // Rounding first leaves no negative zero.
        let miles = lengths.map(|length| (length.get::<nautical_mile>() * 1e3).round() / 1e3 + 0.0);
        println!("{}", whole.chain(miles.map(|value| format!("{value:.3}"))).collect::<Vec<_>>().join(","));
    }
    Ok(())
}
