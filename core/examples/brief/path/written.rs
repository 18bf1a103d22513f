//! The words of a plan of legs.

use serde::Deserialize;

use crate::written::{WrittenAir, WrittenAircraft, WrittenStation};

/// A plan of legs as it is written. Every number's key ends in its unit.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Written {
    pub title: Option<String>,
    pub aircraft: WrittenAircraft,
    #[serde(default)]
    pub air: WrittenAir,
    #[serde(default)]
    pub path: WrittenPath,
    #[serde(default)]
    pub station: Vec<WrittenStation>,
    #[serde(default)]
    pub fix: Vec<WrittenFix>,
    pub leg: Vec<WrittenLeg>,
}

/// How the legs are flown; what is left out is as in `Conditions::level`.
#[derive(Deserialize, Default)]
#[serde(deny_unknown_fields)]
pub struct WrittenPath {
    pub climb_fpm: Option<f64>,
    pub intercept_angle_deg: Option<f64>,
    pub manual_distance_nm: Option<f64>,
    pub holding_rule: Option<String>,
    pub magnetic_variation_deg: Option<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WrittenFix {
    pub ident: String,
    pub latitude_deg: f64,
    pub longitude_deg: f64,
}

/// A leg: which keys it needs follows from its code.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WrittenLeg {
    pub code: String,
    pub fix: Option<String>,
    pub fly_over: Option<bool>,
    pub course_deg: Option<f64>,
    pub altitude_ft: Option<f64>,
    pub distance_nm: Option<f64>,
    pub dme_nm: Option<f64>,
    pub station: Option<String>,
    pub radial_deg: Option<f64>,
    pub center: Option<String>,
    pub turn: Option<String>,
    pub outbound_time_s: Option<f64>,
    pub timed: Option<String>,
    pub reversal: Option<String>,
    pub off_time_s: Option<f64>,
}
