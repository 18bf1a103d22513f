//! A ground station and what an aircraft makes of it.

mod accuracy;
mod cone;
mod fix;
mod horizon;
mod ident;
mod near;
mod needle;
mod receiver;
mod service;
mod site;

pub use accuracy::{
    Containment, DEVIATIONS_TO_A_TOLERANCE, DmeAccuracy, DmeCoverage, DmeDmeTolerances, RadialAccuracy,
    RadialErrors, ReceiverCheck, dme_dme_tolerances, route_half_width, splay_distance,
};
pub use cone::{NDB_CONE_HALF_ANGLE_DEG, VOR_CONE_HALF_ANGLE_DEG, cone_radius};
pub use fix::{FixError, LineOfPosition, ellipse_factor, fix_error};
pub use horizon::{EFFECTIVE_RADIUS_FACTOR, HorizonRule, least_height, radio_horizon};
pub use ident::Ident;
pub use needle::{
    DEGREES_PER_DOT, FULL_SCALE_FIVE_DOTS_DEG, FULL_SCALE_HANDBOOK_DEG, Indicator, Needle, ToFrom,
    cross_track_of_deviation, deviation_of_cross_track, needle_rate, needle_time,
};
pub use receiver::{Flag, Indication, Receiver, displayed_dme};
pub use service::ServiceClass;
pub use site::{Observation, Station};
