//! The trade's mental arithmetic as functions, to be set beside the exact ones.
//!
//! Each says where it comes from: a published text by its name, or common practice, which has no source. None of them
//! is what the rest of the library computes with.

mod arc;
mod beside;
mod beside_air;
mod beside_arc;
mod beside_hold;
mod beside_station;
mod dme;
mod holding;
mod intercept;
mod lead;
mod lead_error;
mod lead_flown;
mod lead_holds;
mod needle;
mod roll_out;
mod turn;

pub use arc::{ArcEntryRule, ArcLeadRule, arc_correction, arc_entry_lead, lead_radials, radials_per_mile};
pub use beside::{
    RuleError, cone_radius_error, lead_radials_error, least_dme_error, off_course_error,
    standard_rate_bank_error, time_to_station_error, turn_radius_error,
};
pub use beside_air::{cold_temperature_correction_error, density_altitude_error, pressure_altitude_error};
pub use beside_arc::{
    arc_correction_error, arc_entry_lead_error, intercept_angle_error, intercept_lead_error,
    radials_per_mile_error,
};
pub use beside_hold::{next_outbound_time_error, outbound_correction_error, outbound_time_by_headwind_error};
pub use beside_station::{ground_distance_error, radio_horizon_error};
pub use dme::{cone_radius, least_dme, slant_negligible_from};
pub use holding::{DriftRule, next_outbound_time, outbound_heading, outbound_time_by_headwind};
pub use intercept::{intercept_angle, intercept_lead};
pub use lead::{height_allowance, margin_for_fast_aircraft, reading, rule_lead, third_of_a_mile};
pub use lead_error::{LeadComparison, LeadError, LeadErrorRow, LeadRule};
pub use lead_flown::{FlownTurn, FlownTurnRow, RollOutAllowed, TurnCue, TurnVerdict};
pub use needle::off_course;
pub use roll_out::{RollOutRule, roll_out_lead, roll_out_lead_error};
pub use turn::{BankRule, RadiusRule, standard_rate_bank, turn_radius};
