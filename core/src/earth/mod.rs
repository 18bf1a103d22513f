//! The shape of the earth: lines, distances and heights on WGS-84.

mod cross_track;
#[cfg(feature = "geo")]
mod geo_types;
mod geodesic;
#[cfg(feature = "geo")]
mod rhumb;
mod slant;
mod sphere;
mod straight;

pub use cross_track::{Abeam, Course};
pub use geodesic::{GeodesicLine, direct, inverse};
#[cfg(feature = "geo")]
pub use rhumb::{rhumb_direct, rhumb_inverse};
pub use slant::{MEAN_RADIUS, ground_distance, slant_range};
pub use sphere::Sphere;
pub use straight::straight_line;
