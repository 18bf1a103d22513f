//! Coordinated level turns: radius, rate and bank, the limits an aircraft keeps, and turns with their roll.

mod limits;
mod manner;
mod published;
mod rolled;
mod steady;

pub use crate::value::units::STANDARD_GRAVITY_M_S2;
pub use limits::{Governor, TurnLimits};
pub use published::{TurnConstants, published_turn};
pub(crate) use rolled::RollHeadings;
pub use rolled::RolledTurn;
pub use steady::{
    STANDARD_RATE_DEG_PER_S, bank_for_load_factor, bank_for_radius, bank_for_rate, load_factor, radius,
    radius_at_rate, rate,
};
