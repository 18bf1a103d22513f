//! A ground station and what an aircraft makes of it.

mod cone;
mod horizon;
mod service;
mod site;

pub use cone::{NDB_CONE_HALF_ANGLE_DEG, VOR_CONE_HALF_ANGLE_DEG, cone_radius};
pub use horizon::{EFFECTIVE_RADIUS_FACTOR, HorizonRule, least_height, radio_horizon};
pub use service::ServiceClass;
pub use site::{Observation, Station};
