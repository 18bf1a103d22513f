//! A route as it is briefed: from station to station, or by path-and-terminator legs.
//!
//! [`RouteBrief`]: from station to station. Legs are geodesics. At each station but the first and the last the course changes from the final course of one leg to the initial course of
//! the next, as a turn begun in time ([`crate::lead::CourseChange`]); what the turns take is not flown straight.
//!
//! [`PathBrief`]: any sequence of the legs of [`crate::procedure::legs`], with what is flown on each and where its turns begin and end.

mod brief;
mod drawn;
mod leg;
mod path;
mod path_check;
mod path_surroundings;
mod plan;
mod turn;

pub use brief::RouteBrief;
pub use leg::RouteLeg;
pub use path::{PathBrief, PathLeg, PathTurn};
pub use path_check::{PathCheck, PathCheckKind};
pub use path_surroundings::{PathStation, PathSurroundings, StationReading};
pub use plan::{RouteError, RouteFix, RoutePlace, RoutePlan};
pub use turn::{RouteTurn, RuleOfThumb};
