//! Holding: how it is entered, timed, limited in speed and bank, and what its pattern is in a wind.

mod bank;
mod dme;
mod entry;
mod pattern;
mod speed;
mod timing;

pub use bank::{HoldingBankRule, holding_turn_limits};
pub use dme::{LimitingDme, limiting_dme, outbound_end_reading};
pub use entry::{EntrySector, HoldingEntry, HoldingSide, OFFSET_ENTRY_DEG, entry_sector};
pub use pattern::HoldingPattern;
pub use speed::{HoldingSpeed, HoldingSpeedRule, holding_speed};
pub use timing::{LegTiming, TimedLeg, TimingAuthority, leg_timing};
