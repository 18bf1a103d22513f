//! What limits a turn, and which limit governs.

use super::steady::bank_for_rate_rad;
use crate::value::units::{degrees, degrees_per_second, radian};
use crate::value::{Bank, RollRate, TrueAirspeed, TurnRate, choice};

/// The limits a crew or an autopilot keeps in a turn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurnLimits {
    /// The greatest bank.
    pub bank: Bank,
    /// The greatest rate of turn.
    pub rate: TurnRate,
    /// How fast the aircraft rolls into and out of its bank.
    pub roll: RollRate,
}

impl Default for TurnLimits {
    /// 25 degrees, standard rate (3 degrees per second) and a roll of 5 degrees per second.
    ///
    /// Bank and rate as ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3, takes for holding and initial approach;
    /// the roll is common practice.
    fn default() -> Self {
        Self {
            bank: Bank::derived(degrees(25.0)),
            rate: TurnRate::derived(degrees_per_second(super::STANDARD_RATE_DEG_PER_S)),
            roll: RollRate::derived(degrees_per_second(5.0)),
        }
    }
}

choice! {
    /// Which limit set the bank of a turn.
    Governor {
        /// The bank limit.
        BankLimit = 0: "bank_limit",
        /// The limit of the rate of turn.
        TurnRateLimit = 1: "turn_rate_limit",
        /// The roll: so small a change that rolling in and out alone would make it.
        RollRate = 2: "roll_rate",
        /// Nothing: there is no turn.
        NoTurn = 3: "no_turn",
    }
}

/// A bank smaller than this turns in no lifetime, and would lose its digits.
const LEAST_BANK_RAD: f64 = 1e-12;

impl TurnLimits {
    /// The bank of a long turn and what sets it: the lesser of the bank limit and the bank of the rate limit.
    ///
    /// Standard-rate at low speed, bank-limited from the speed `g tan(bank) / rate` on: 169.8 kt for 25 degrees and 3 degrees
    /// per second.
    pub fn governing_bank(&self, true_airspeed: TrueAirspeed) -> (Bank, Governor) {
        let (bank_rad, governor) = self.governing_bank_rad(true_airspeed);
        (Bank::derived(degrees(bank_rad.to_degrees())), governor)
    }

    pub(super) fn governing_bank_rad(&self, true_airspeed: TrueAirspeed) -> (f64, Governor) {
        let limit_rad = self.bank.value().get::<radian>().max(LEAST_BANK_RAD);
        let rate_rad = bank_for_rate_rad(true_airspeed, self.rate).max(LEAST_BANK_RAD);
        if rate_rad < limit_rad {
            (rate_rad, Governor::TurnRateLimit)
        } else {
            (limit_rad, Governor::BankLimit)
        }
    }
}
