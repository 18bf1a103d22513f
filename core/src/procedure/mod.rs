//! What a procedure is made of: holding, reversals, intercepts, arcs, and path-and-terminator legs.

mod holding;
mod intercept;
pub mod legs;
mod stabilization;
mod successive;

pub use holding::{
    EntrySector, HoldingBankRule, HoldingEntry, HoldingPattern, HoldingSide, HoldingSpeed, HoldingSpeedRule,
    LegTiming, LimitingDme, TimedLeg, TimingAuthority, entry_sector, holding_speed, holding_turn_limits,
    leg_timing, limiting_dme, outbound_end_reading,
};
pub use intercept::{DoubleAngle, Intercept, double_angle};
pub use legs::Passage;
pub use stabilization::stabilization_distance;
pub use successive::{SingleTurn, SuccessiveTurns};
