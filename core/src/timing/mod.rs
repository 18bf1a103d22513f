//! Time, distance and speed: from fix to fix, and to a station by how its bearing changes.

mod bearing_change;
mod leg;

pub use bearing_change::{StationByBearing, station_by_bearing_change, time_to_station_by_rule};
pub use leg::{distance_flown, groundspeed_over, time_between_fixes, time_to_fly};
