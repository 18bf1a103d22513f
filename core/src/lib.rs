#![doc = include_str!("../../README.md")]
// One call in `many` is allowed it, and nothing else.
#![deny(unsafe_code)]

pub mod air;
pub mod earth;
mod error;
pub mod flight;
pub mod lead;
mod leg_reason;
mod many;
pub mod north;
mod numeric;
pub mod plain;
mod plane;
pub mod procedure;
pub mod route;
pub mod rules;
pub mod station;
pub mod timing;
pub mod turn;
pub mod value;
pub mod wind;

pub use error::{Error, status_text};
pub use leg_reason::LegReason;
