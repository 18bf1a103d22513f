//! The words of a plan file, as TOML: which keys there are, which may be left out, and what stands in for them.

use serde::Deserialize;

/// A plan as it is written. Every number's key ends in its unit.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Written {
    pub title: Option<String>,
    pub aircraft: WrittenAircraft,
    #[serde(default)]
    pub air: WrittenAir,
    #[serde(default)]
    pub errors: WrittenErrors,
    pub station: Vec<WrittenStation>,
    pub route: Vec<WrittenFix>,
}

/// How the aircraft flies; limits left out are those of `TurnLimits::default()`.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WrittenAircraft {
    pub calibrated_airspeed_kt: Option<f64>,
    pub mach: Option<f64>,
    pub pressure_altitude_ft: f64,
    pub bank_limit_deg: Option<f64>,
    pub turn_rate_limit_deg_per_s: Option<f64>,
    pub roll_rate_deg_per_s: Option<f64>,
}

/// The air the route lies in; left out, it is standard and calm.
#[derive(Deserialize, Default)]
#[serde(deny_unknown_fields)]
pub struct WrittenAir {
    pub isa_deviation_k: Option<f64>,
    pub temperature_degc: Option<f64>,
    pub altimeter_setting_hpa: Option<f64>,
    pub wind_from_deg: Option<f64>,
    pub wind_speed_kt: Option<f64>,
    #[serde(default)]
    pub wind_level: Vec<WrittenLevel>,
}

/// A wind at a level.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WrittenLevel {
    pub pressure_altitude_ft: f64,
    pub wind_from_deg: f64,
    pub wind_speed_kt: f64,
}

/// Standard deviations of what a turn depends on, left out as `ErrorModel::usual()` has them, and what is asked of them.
#[derive(Deserialize, Default)]
#[serde(deny_unknown_fields)]
pub struct WrittenErrors {
    pub station_bearing_deg: Option<f64>,
    pub dme_nm: Option<f64>,
    pub wind_speed_kt: Option<f64>,
    pub wind_direction_deg: Option<f64>,
    pub airspeed_kt: Option<f64>,
    pub bank_deg: Option<f64>,
    pub roll_in_delay_s: Option<f64>,
    pub height_ft: Option<f64>,
    pub mean_delay_s: Option<f64>,
    pub limit_nm: Option<f64>,
    pub confidence: Option<f64>,
    pub trials: Option<u64>,
    pub seed: Option<u64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WrittenStation {
    pub ident: String,
    pub name: Option<String>,
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    #[serde(default)]
    pub elevation_ft: f64,
    #[serde(default)]
    pub declination_deg: f64,
    pub cone_half_angle_deg: Option<f64>,
}

/// A fix of the route: a station by its ident, which way to turn there, and the wind there and on the leg to it.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WrittenFix {
    pub fix: String,
    pub turn: Option<String>,
    pub wind_from_deg: Option<f64>,
    pub wind_speed_kt: Option<f64>,
    #[serde(default)]
    pub wind_level: Vec<WrittenLevel>,
}
