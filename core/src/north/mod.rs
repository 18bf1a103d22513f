//! Norths: true, magnetic by the World Magnetic Model, a station's own, and the grid of the polar regions.

mod conversion;
mod magnetic_field;
mod wmm2025;

pub use conversion::polar_grid_convergence;
pub use magnetic_field::{DecimalYear, MagneticField, MagneticZone};
