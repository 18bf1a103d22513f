//! The geodesic between two points of WGS-84: near ones from the straight line between them, others by Karney's series.

mod direct;
mod ellipsoid;
#[rustfmt::skip]
mod karney;
mod long;
#[rustfmt::skip]
mod middle;
#[rustfmt::skip]
mod near;
mod series;

pub use direct::Direct;
pub use ellipsoid::{AXIS_M, ECCENTRICITY_SQUARED, FLATTENING, normal};
pub use long::{Ends, Long, reduced_from};
pub use middle::Middle;
pub use near::Near;
pub use series::Series;
