//! The wind and what it does to a heading, a track and a speed.

mod triangle;

pub use triangle::{Crabbed, Wind, hold_course};
