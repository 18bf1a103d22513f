//! The air: the standard atmosphere, what it does to the readings of an airspeed indicator and of an altimeter.

mod airspeed;
mod altimeter;
mod cold;
mod cold_table;
mod column;
mod crossover;
mod density_altitude;
mod edition;
mod geopotential;
mod pitot;
mod procedure_factor;
pub(crate) mod standard;
mod state;
mod total_temperature;
mod transition;

pub use altimeter::{
    altimeter_setting, altimeter_setting_smithsonian, indicated_altitude, pressure_altitude_by_rule,
    pressure_altitude_from_indicated, station_pressure,
};
pub use cold::{
    cold_temperature_correction, cold_temperature_correction_by_rule, cold_temperature_correction_exact,
    cold_temperature_correction_tabulated,
};
pub use cold_table::{ColdTemperatureMethod, cold_temperature_correction_by_method};
pub use column::{height_above_station, pressure_altitude_at, true_altitude};
pub use crossover::crossover_altitude;
pub use density_altitude::density_altitude_by_rule;
pub use edition::{AtmosphereEdition, EditionAir, standard_air_by_edition};
pub use geopotential::{geometric_altitude, geopotential_altitude, standard_pressure_altitude};
pub use pitot::{
    calibrated_from_impact, impact_from_calibrated, isentropic_pressure_ratio, pitot_pressure_ratio,
};
pub use procedure_factor::{TasFactorMethod, procedure_tas_factor, procedure_tas_factor_by_method};
pub use standard::{pressure_altitude, standard_pressure, standard_temperature};
pub use state::{Air, isa_deviation, speed_of_sound};
pub use total_temperature::{static_temperature, total_temperature};
pub use transition::transition_level;
