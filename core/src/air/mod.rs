//! The air: the standard atmosphere, and what it does to the readings of an airspeed indicator.

mod airspeed;
mod geopotential;
mod pitot;
mod procedure_factor;
mod standard;
mod state;

pub use geopotential::{geometric_altitude, geopotential_altitude, standard_pressure_altitude};
pub use pitot::{
    calibrated_from_impact, impact_from_calibrated, isentropic_pressure_ratio, pitot_pressure_ratio,
};
pub use procedure_factor::procedure_tas_factor;
pub use standard::{pressure_altitude, standard_pressure, standard_temperature};
pub use state::{Air, isa_deviation, speed_of_sound};
