//! Norths: true, magnetic by the World Magnetic Model, a station's own, and the grids of charts.

mod conversion;
mod decimal_year;
mod grid;
pub(crate) mod harmonics;
mod magnetic_field;
mod transverse_grid;
pub(crate) mod wmm2020;
pub(crate) mod wmm2025;

pub use decimal_year::DecimalYear;
pub use grid::{LambertGrid, polar_grid_convergence};
pub use magnetic_field::{FieldVector, MagneticField, MagneticZone};
pub(crate) use magnetic_field::{POLAR_GRID_LATITUDE_DEG, UNCERTAINTIES_DEG_NT};
pub use transverse_grid::{TransverseGrid, utm_meridian};
