//! Where to begin the turn.

mod arc;
mod course_change;
mod fly_over;

pub use arc::{ArcSense, ArcTurn, RadialFlown, off_arc, onto_arc};
pub use course_change::{CourseChange, TurnPoint, TurnSide};
pub use fly_over::FlyOver;
