//! The plain layer: the one place where numbers gain and lose their units, for C and for Python.
//!
//! Every function takes and gives plain `f64` numbers whose units end their names. Each is total: any numbers
//! give a value or an error, nothing panics, nothing allocates, and a NaN given comes back as NaN without an error.
//! Only what takes a list of legs ([`fly_legs`]) or of stations ([`brief_route`]) allocates, and refuses a number that is needed and lacks.
//! The C functions, the NumPy functions, their documentation and `docs/functions.md` are generated from the files
//! of this folder; `DEVELOPERS.md` says how.

mod accuracy;
mod air;
mod airspeed;
mod altimeter;
mod altimeter_setting;
mod arc;
mod base_turns;
mod block;
mod circle;
mod cold;
mod course;
mod course_change;
mod crossover;
mod density_altitude;
mod dme_arc;
mod earth;
mod equivalent_airspeed;
mod fix_accuracy;
mod flight;
mod function;
mod grid;
mod holding;
mod holding_dme;
mod intercept;
mod lead;
mod legs;
mod mach;
mod magnetic;
mod north;
mod offset;
mod path;
mod pitot;
mod procedure_factor;
mod procedure_turns;
mod published;
mod racetrack;
mod receiver;
mod rhumb;
mod route;
mod route_width;
mod rule_air;
mod rule_arc;
mod rule_error;
mod rule_hold;
mod rule_lead;
mod rule_outbound;
mod rule_station;
mod rule_turn;
mod rules;
mod station;
mod successive;
#[rustfmt::skip]
pub mod table;
mod tangent_turn;
mod timing;
mod total_temperature;
mod transition;
mod true_altitude;
mod turn;
mod turn_area;
mod wind;
mod wind_levels;

pub use accuracy::*;
pub use air::*;
pub use airspeed::*;
pub use altimeter::*;
pub use altimeter_setting::*;
pub use arc::*;
pub use base_turns::*;
pub use circle::*;
pub use cold::*;
pub use course::*;
pub use course_change::*;
pub use crossover::*;
pub use density_altitude::*;
pub use dme_arc::*;
pub use earth::*;
pub use equivalent_airspeed::*;
pub use fix_accuracy::*;
pub use flight::*;
pub use grid::*;
pub use holding::*;
pub use holding_dme::*;
pub use intercept::*;
pub use lead::*;
pub use legs::*;
pub use mach::*;
pub use magnetic::*;
pub use north::*;
pub use offset::*;
pub use path::*;
pub use pitot::*;
pub use procedure_factor::*;
pub use procedure_turns::*;
pub use published::*;
pub use racetrack::*;
pub use receiver::*;
pub use rhumb::*;
pub use route::*;
pub use route_width::*;
pub use rule_air::*;
pub use rule_arc::*;
pub use rule_error::*;
pub use rule_hold::*;
pub use rule_lead::*;
pub use rule_outbound::*;
pub use rule_station::*;
pub use rule_turn::*;
pub use rules::*;
pub use station::*;
pub use successive::*;
pub use tangent_turn::*;
pub use timing::*;
pub use total_temperature::*;
pub use transition::*;
pub use true_altitude::*;
pub use turn::*;
pub use turn_area::*;
pub use wind::*;
pub use wind_levels::*;

/// Whether a number was given that is not one; the answer is then NaN too, in silence.
fn any_nan(given: &[f64]) -> bool {
    given.iter().any(|value| value.is_nan())
}

/// Declares the plain result of a function with several outputs.
macro_rules! outputs {
    ($(#[$doc:meta])* $name:ident { $($(#[$field_doc:meta])* $field:ident,)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct $name { $($(#[$field_doc])* pub $field: f64,)+ }

        impl $name {
            /// The answer to a question that holds a NaN.
            pub const NAN: Self = Self { $($field: f64::NAN,)+ };
        }
    };
}
pub(crate) use outputs;
