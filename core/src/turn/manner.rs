//! What every turn of an aircraft at one airspeed within one set of limits has in common.

use super::{Governor, STANDARD_GRAVITY_M_S2, TurnLimits};
use crate::many::roll::{Headings, MOST_ROLLED, STEEPEST};
use crate::numeric::quadrature;
use crate::plane::Plane;
use crate::value::TrueAirspeed;
use crate::value::units::{meter_per_second, radian_per_second};

/// A roll slower than this takes an age for any bank, and would lose its digits.
const SLOWEST_ROLL_RAD_S: f64 = 1e-12;

/// How an aircraft turns: its airspeed, how it rolls, and the bank it holds in a long turn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Manner {
    pub airspeed_m_s: f64,
    pub roll_rad_s: f64,
    /// Heading turned per unit of `-ln cos(bank)` while rolling; zero for an instant roll.
    pub turn_per_roll: f64,
    /// The bank of a long turn, what sets it, and its tangent.
    pub bank_rad: f64,
    pub governor: Governor,
    pub tangent: f64,
    /// Heading turned while rolling to that bank.
    pub roll_turn_rad: f64,
}

impl Manner {
    pub fn new(true_airspeed: TrueAirspeed, limits: &TurnLimits) -> Self {
        let airspeed_m_s = true_airspeed.value().get::<meter_per_second>();
        let roll_rad_s = limits.roll.value().get::<radian_per_second>().max(SLOWEST_ROLL_RAD_S);
        let turn_per_roll = STANDARD_GRAVITY_M_S2 / (airspeed_m_s * roll_rad_s);
        let (bank_rad, governor) = limits.governing_bank_rad(true_airspeed);
        let tangent = bank_rad.tan();
        let roll_turn_rad = turn_per_roll * log_secant(tangent);
        Self { airspeed_m_s, roll_rad_s, turn_per_roll, bank_rad, governor, tangent, roll_turn_rad }
    }

    /// The radius at a bank whose tangent is given; infinite for none.
    pub fn radius_m(&self, tangent_of_bank: f64) -> f64 {
        self.airspeed_m_s * self.airspeed_m_s / (STANDARD_GRAVITY_M_S2 * tangent_of_bank)
    }

    /// The bank at which rolling in and out alone turns through an angle; not a number only for no angle at an instant roll.
    pub fn peak_rad(&self, amount_rad: f64) -> f64 {
        (amount_rad / self.turn_per_roll).exp_m1().sqrt().atan()
    }

    /// Heading turned while rolling in for a time.
    pub fn turned_rad(&self, time_s: f64) -> f64 {
        self.turn_per_roll * log_secant((self.roll_rad_s * time_s).tan())
    }

    /// The time into the roll at which a heading is turned.
    pub fn time_s(&self, amount_rad: f64) -> f64 {
        (2.0 * amount_rad.max(0.0) / self.turn_per_roll).exp_m1().sqrt().atan() / self.roll_rad_s
    }

    /// Whether a roll to a bank, through a heading, is of those whose way is a sum of a few terms.
    pub fn rolls_gently(bank_rad: f64, roll_turn_rad: f64) -> bool {
        bank_rad <= STEEPEST.atan() && roll_turn_rad <= MOST_ROLLED
    }

    /// Displacement through the air while rolling in from level to a bank, in the turn's own frame; of a gentle roll or part of it, or any.
    pub fn rolling_m(&self, gently: bool, bank_rad: f64) -> Plane {
        let mut sum_m = Plane::ZERO;
        let metres_per_rad = self.airspeed_m_s / self.roll_rad_s;
        if metres_per_rad == 0.0 || bank_rad == 0.0 {
            return sum_m;
        }
        if gently {
            Headings::of(self.turn_per_roll, bank_rad).each(|cosine, sine, weight| {
                sum_m = sum_m + Plane { north: cosine, east: sine } * weight;
            });
            return sum_m * (metres_per_rad * bank_rad);
        }
        let tangent = bank_rad.tan();
        let end = tangent.asinh();
        let count = panels(2.0 * end).max(panels(self.turn_per_roll * log_secant(tangent)));
        quadrature(0.0, end, count, |u, weight| {
            let half = (u / 2.0).sinh();
            let secant_less_one = 2.0 * half * half;
            let heading_rad = self.turn_per_roll * secant_less_one.ln_1p();
            sum_m = sum_m + Plane::along(heading_rad) * (weight * metres_per_rad / (1.0 + secant_less_one));
        });
        sum_m
    }
}

/// `-ln cos(bank)` by the bank's tangent, with all its digits for a small bank.
fn log_secant(tangent: f64) -> f64 {
    (tangent * tangent).ln_1p() / 2.0
}

/// Panels of quadrature for a part of a path that turns through an angle: at most one radian each, at most a hundred.
pub(super) fn panels(turned_rad: f64) -> u32 {
    // The conversion saturates, and the angle is bounded: a turn of a hundred radians is no turn.
    turned_rad.clamp(1.0, 100.0).ceil() as u32
}
