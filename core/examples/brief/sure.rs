//! How sure a turn is: what the errors of a plan make of its roll-out.

use lubberline::Error;
use lubberline::flight::{ErrorModel, ErrorSource};
use lubberline::route::RouteTurn;
use lubberline::value::units::{Length, degree, foot, knot, nautical_mile, second};
use serde::Serialize;

/// The errors of a plan and what is asked of them.
#[derive(Clone, Copy)]
pub struct Errors {
    pub model: ErrorModel,
    /// The overshoot that matters.
    pub limit: Length,
    /// The chance with which it is to be kept.
    pub confidence: f64,
    pub trials: u64,
    pub seed: u64,
}

/// The same as plain numbers: standard deviations, and what is asked.
#[derive(Serialize)]
pub struct ErrorsGiven {
    pub station_bearing_deg: f64,
    pub dme_nm: f64,
    pub wind_speed_kt: f64,
    pub wind_direction_deg: f64,
    pub airspeed_kt: f64,
    pub bank_deg: f64,
    pub roll_in_delay_s: f64,
    pub height_ft: f64,
    pub mean_delay_s: f64,
    pub limit_nm: f64,
    pub confidence: f64,
    pub trials: u64,
    pub seed: u64,
}

impl ErrorsGiven {
    pub fn of(errors: &Errors) -> Self {
        let model = &errors.model;
        Self {
            station_bearing_deg: model.station_bearing.get::<degree>(),
            dme_nm: model.dme.get::<nautical_mile>(),
            wind_speed_kt: model.wind_speed.get::<knot>(),
            wind_direction_deg: model.wind_direction.get::<degree>(),
            airspeed_kt: model.airspeed.get::<knot>(),
            bank_deg: model.bank.get::<degree>(),
            roll_in_delay_s: model.roll_in_delay.get::<second>(),
            height_ft: model.height.get::<foot>(),
            mean_delay_s: model.mean_delay.get::<second>(),
            limit_nm: errors.limit.get::<nautical_mile>(),
            confidence: errors.confidence,
            trials: errors.trials,
            seed: errors.seed,
        }
    }
}

/// Cross-track where the wings are level, positive on the outer side, where a late turn ends.
#[derive(Serialize)]
pub struct Sure {
    pub mean_overshoot_nm: f64,
    pub deviation_nm: f64,
    /// The share of trials beyond the limit.
    pub chance_beyond_limit: f64,
    /// What to add to the lead to keep the limit with the confidence; negative if there is room, or if less lead is what helps.
    pub margin_nm: f64,
    /// The reading at which to begin with the margin, and where that is: negative past the fix. None if there is no turn.
    pub begin_with_margin_at_dme_nm: Option<f64>,
    pub begin_with_margin_before_fix_nm: f64,
    /// The same by linear propagation.
    pub linear_deviation_nm: f64,
    pub linear_chance_beyond_limit: f64,
    pub linear_margin_nm: f64,
    /// The source that is worth most, and what one standard deviation of each moves the roll-out by.
    pub foremost: Option<&'static str>,
    pub by_source_nm: serde_json::Map<String, serde_json::Value>,
}

impl Sure {
    pub fn of(turn: &RouteTurn, errors: &Errors) -> Result<Self, Error> {
        let sure =
            turn.sureness(&errors.model, errors.limit, errors.confidence, errors.trials, errors.seed)?;
        let miles = |length: Length| length.get::<nautical_mile>();
        let begin = turn.change.lead() + sure.margin;
        let by_source = ErrorSource::ALL.iter().zip(sure.by_source);
        Ok(Self {
            mean_overshoot_nm: miles(sure.mean),
            deviation_nm: miles(sure.deviation),
            chance_beyond_limit: sure.chance_beyond,
            margin_nm: miles(sure.margin),
            begin_with_margin_at_dme_nm: turn
                .reading_with_margin(sure.margin)
                .map(|reading| miles(reading.value())),
            begin_with_margin_before_fix_nm: miles(begin),
            linear_deviation_nm: miles(sure.linear_deviation),
            linear_chance_beyond_limit: sure.linear_chance_beyond,
            linear_margin_nm: miles(sure.linear_margin),
            foremost: sure.foremost().map(ErrorSource::word),
            by_source_nm: by_source
                .map(|(source, worth)| (source.word().to_string(), miles(worth).into()))
                .collect(),
        })
    }
}
