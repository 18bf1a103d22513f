//! The geodesic between two points of WGS-84, from the straight line between them.

mod ellipsoid;
#[rustfmt::skip]
mod middle;
#[rustfmt::skip]
mod near;
mod series;

pub use ellipsoid::{AXIS_M, ECCENTRICITY_SQUARED, normal};
pub use middle::Middle;
pub use near::Near;
pub use series::Series;
