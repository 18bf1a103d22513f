//! The geodesic between two points of WGS-84, from the straight line between them.

#[rustfmt::skip]
mod middle;
#[rustfmt::skip]
mod near;
mod series;

pub use middle::Middle;
pub use near::Near;
pub use series::Series;
