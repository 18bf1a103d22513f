//! A route from station to station: its legs, and the turn at each station between them.
//!
//! Legs are geodesics. At each station but the first and the last the course changes from the final course of one leg to the initial course of
//! the next, as a turn begun in time ([`crate::lead::CourseChange`]); what the turns take is not flown straight.

mod brief;
mod leg;
mod plan;
mod turn;

pub use brief::RouteBrief;
pub use leg::RouteLeg;
pub use plan::{RouteError, RouteFix, RoutePlace, RoutePlan};
pub use turn::{RouteTurn, RuleOfThumb};
