//! A ground station and what an aircraft makes of it.

mod cone;
mod site;

pub use cone::{NDB_CONE_HALF_ANGLE_DEG, VOR_CONE_HALF_ANGLE_DEG, cone_radius};
pub use site::{Observation, Station};
