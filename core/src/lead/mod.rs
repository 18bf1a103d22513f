//! Where to begin the turn.

mod arc;
mod course_change;
mod fly_over;
mod fly_over_path;
mod onto_radial;
pub(crate) mod recapture;
mod still_air;

pub use arc::{ArcSense, ArcTurn, RadialFlown, off_arc, onto_arc};
pub use course_change::{CourseChange, TurnPoint, TurnSide};
pub use fly_over::FlyOver;
pub use fly_over_path::FlyOverPath;
pub use onto_radial::RadialIntercept;
pub use still_air::{arc_entry, lead_radial, turn_anticipation};

/// The most that a lead may be, in nautical miles: about a quarter of the earth's circumference.
const LONGEST_LEAD_NM: f64 = 5000.0;
