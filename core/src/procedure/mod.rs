//! What a procedure is made of: holding, reversals, intercepts, arcs, and path-and-terminator legs.

mod base_turn;
mod chords;
mod design;
mod dme_arc;
mod extent;
mod holding;
mod intercept;
pub mod legs;
mod procedure_turn;
mod stabilization;
mod successive;

pub use base_turn::{BaseTurn, DesignUnits, base_turn_offset, base_turn_offset_exact};
pub use chords::{ChordLeg, ChordLegs, ChordPlacement};
pub use design::{
    BANK_ESTABLISHMENT_S, BaseTurnTemplate, HEADING_TOLERANCE_DEG, OUTBOUND_TIMING_S, PILOT_REACTION_S,
    base_turn_sector, base_turn_template, icao_wind, wind_effect,
};
pub use dme_arc::{ArcFlown, ArcRegained, OnArc, fly_arc, least_correction, on_arc, regain_arc};
pub use holding::{
    EntrySector, HoldingBankRule, HoldingEntry, HoldingPattern, HoldingSide, HoldingSpeed, HoldingSpeedRule,
    LegTiming, LimitingDme, OFFSET_ENTRY_DEG, TimedLeg, TimingAuthority, entry_sector, holding_speed,
    holding_turn_limits, leg_timing, limiting_dme, outbound_end_reading,
};
pub use intercept::{DoubleAngle, Intercept, double_angle};
pub use legs::{LegCode, Passage};
pub use procedure_turn::{OFF_LEG_FAST_S, OFF_LEG_SLOW_S, ProcedureTurn, ReverseTurn};
pub use stabilization::stabilization_distance;
pub use successive::{SingleTurn, SuccessiveTurns};
