//! Path-and-terminator legs, and the ground path that a sequence of them gives.
//!
//! The 23 legs are those of ARINC 424: the first letter says how the path is flown, the second what ends it. A sequence is
//! flown in its order from a first fix: each leg is joined from wherever the one before has left the aircraft, with the turns
//! of [`crate::lead`], and followed to its end, less the lead of the turn onto the next. The path is over the ground, in a steady
//! wind, on WGS-84: straight parts are geodesics, arcs are circles about their centre, turns are flown with their roll.
//!
//! # Source
//! ARINC 424 path-and-terminator concept; the codes as listed in AIXM 5.1, `CodeSegmentPathBaseType`.

mod arc;
mod code;
mod conditions;
mod end;
mod flight;
mod ground_path;
mod hold;
mod join;
mod leg;
mod onto_arc;
mod reversal;
#[cfg(test)]
mod tests;

pub use code::{LegCode, LegEnd, LegPath};
pub use conditions::Conditions;
pub use ground_path::{GroundPath, Place, Segment, SegmentKind};
pub use leg::{Fix, Hold, HoldLength, Leg, Passage, ReversalForm};
