//! The C interface of lubberline: the functions declared in `ffi/include/lubberline.h`.

mod call;
pub mod course_change;
pub mod flight;
#[rustfmt::skip]
pub mod generated;
pub mod legs;
pub mod path;
pub mod route;
mod sized;
pub mod sureness;
pub mod version;
pub mod wind_levels;
