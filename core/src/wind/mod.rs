//! The wind and what it does to a heading, a track and a speed.

mod aloft;
mod components;
mod schedule;
mod track;
mod triangle;

pub use aloft::{WindInterpolation, WindLevel, WindsAloft, wind_between, wind_between_by_method};
pub use components::WindComponents;
pub use schedule::{Scheduled, make_groundspeed};
pub use track::{MadeGood, make_good, wind_from_track};
pub use triangle::{Crabbed, Wind, hold_course};
