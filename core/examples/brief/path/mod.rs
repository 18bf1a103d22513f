//! Plans of path-and-terminator legs: an approach, a departure, anything that is coded as a sequence of legs.

mod brief;
mod geojson;
mod plan;
mod text;
mod written;

pub use brief::Brief;
pub use plan::Plan;

/// The brief for a person.
pub fn text(brief: &Brief) -> String {
    text::write(brief)
}

/// The brief as GeoJSON.
pub fn geojson(plan: &Plan, brief: &Brief) -> serde_json::Value {
    geojson::write(plan, brief)
}
