//! A ground station and what an aircraft makes of it.

mod cone;

pub use cone::{NDB_CONE_HALF_ANGLE_DEG, VOR_CONE_HALF_ANGLE_DEG, cone_radius};
