//! The shape of the earth: lines, distances and heights on WGS-84.

mod geodesic;
mod slant;
mod sphere;
mod straight;

pub use geodesic::{GeodesicLine, direct, inverse};
pub use slant::{MEAN_RADIUS, ground_distance, slant_range};
pub use sphere::Sphere;
pub use straight::straight_line;
