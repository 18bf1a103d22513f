//! A point mass flown through the wind over the ellipsoid, with a receiver on board: the proof of the library's numbers.

mod fly;
mod hold;
mod place;
mod random;
mod receiver;
mod steering;
mod sureness;
mod vector;
mod wind_field;

pub use fly::{Flight, Start};
pub use hold::{OutboundEnd, Racetrack};
pub use receiver::Tuned;
pub use steering::{
    ArcTracking, Begin, HEADING_GAIN_PER_S, Interception, NeedleTracking, PlannedTurn, Steering,
};
pub use sureness::{ERROR_SOURCES, ErrorModel, ErrorSource, Sureness, overshoots, sureness};
pub use wind_field::{Reference, WindField};
