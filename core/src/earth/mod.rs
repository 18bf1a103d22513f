//! The shape of the earth: lines, distances and heights on WGS-84.

mod circle;
mod circle_crossing;
mod cross_track;
mod crossing;
#[cfg(feature = "geo")]
mod geo_types;
mod geodesic;
mod meridian;
mod offset;
mod rhumb;
mod slant;
mod sphere;
mod straight;
mod tangent_turn;

pub use circle::{Circle, Extent, Tangent};
pub use cross_track::{Abeam, Course, CourseReach, leg_contains};
pub use crossing::Crossing;
pub use geodesic::{GeodesicLine, direct, inverse};
pub use offset::OffsetLine;
pub use rhumb::{RhumbExcess, RhumbLine, rhumb_direct, rhumb_excess, rhumb_inverse};
pub use slant::{MEAN_RADIUS_M, ground_distance, slant_range};
pub use sphere::Sphere;
pub use straight::straight_line;
pub(crate) use straight::{ECCENTRICITY_SQUARED, SEMI_MAJOR_M};
pub use tangent_turn::TangentTurn;
