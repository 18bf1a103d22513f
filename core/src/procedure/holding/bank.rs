//! How steeply the turns of a holding pattern are flown.

use crate::turn::{STANDARD_RATE_DEG_PER_S, TurnLimits};
use crate::value::units::{degrees, degrees_per_second};
use crate::value::{Bank, RollRate, TurnRate, choice};

choice! {
    /// Whose limits the turns of a holding pattern keep: standard rate or a bank, whichever needs less bank.
    HoldingBankRule {
        /// 3 degrees per second or 25 degrees. ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1.
        Icao = 0: "icao",
        /// 3 degrees per second or 30 degrees. FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (b), and (20 April 2023), 5-3-8 j.
        Faa = 1: "faa",
        /// 3 degrees per second or, with a flight director, 25 degrees. The same.
        FaaFlightDirector = 2: "faa_flight_director",
    }
}

/// The limits of a holding pattern's turns, with a rate of roll.
///
/// [`TurnLimits::governing_bank`] says which of them governs at an airspeed.
///
/// # Example
/// ```
/// use lubberline::procedure::{HoldingBankRule, holding_turn_limits};
/// use lubberline::value::{RollRate, units::*};
/// assert_eq!(format!("{:.0}", holding_turn_limits(HoldingBankRule::Faa, RollRate::instant()).bank.value().get::<degree>()), "30");
/// ```
pub fn holding_turn_limits(rule: HoldingBankRule, roll: RollRate) -> TurnLimits {
    let bank_deg = match rule {
        HoldingBankRule::Icao | HoldingBankRule::FaaFlightDirector => 25.0,
        HoldingBankRule::Faa => 30.0,
    };
    TurnLimits {
        bank: Bank::derived(degrees(bank_deg)),
        rate: TurnRate::derived(degrees_per_second(STANDARD_RATE_DEG_PER_S)),
        roll,
    }
}
