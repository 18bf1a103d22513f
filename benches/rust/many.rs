//! The library's loops, from its sources, in the place where they look for each other.

#[path = "../../core/src/many/arithmetic.rs"]
pub mod arithmetic;
#[path = "../../core/src/many/bounds.rs"]
pub mod bounds;
#[path = "../../core/src/many/functions/mod.rs"]
pub mod functions;
#[path = "../../core/src/many/geodesic/mod.rs"]
pub mod geodesic;
#[path = "../../core/src/many/loops.rs"]
mod loops;
#[path = "../../core/src/many/observe/mod.rs"]
pub mod observe;

pub(crate) use loops::pass;
pub use loops::{Column, Kernel, ROOM};
