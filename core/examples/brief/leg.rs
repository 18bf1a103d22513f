//! The legs of a route in plain numbers, for showing.

use lubberline::route::RouteLeg;
use lubberline::value::units::{degree, knot, nautical_mile, second};
use serde::Serialize;

use crate::plan::Fix;

/// A leg as it is briefed. Plain numbers with their units.
#[derive(Serialize)]
pub struct Leg {
    pub from: String,
    pub to: String,
    pub length_nm: f64,
    /// True courses where it begins and where it ends.
    pub initial_course_deg: f64,
    pub final_course_deg: f64,
    /// The radials it is flown on: away from the first station, toward the second.
    pub radial_from_deg: f64,
    pub radial_to_deg: f64,
    /// What holds the course half-way.
    pub heading_deg: f64,
    pub groundspeed_kt: f64,
    /// What is left between the turns at its ends; negative if they overlap.
    pub straight_nm: f64,
    /// None if they overlap.
    pub straight_time_s: Option<f64>,
    /// What the turns at its ends take, which would be long enough.
    pub least_length_nm: f64,
    pub long_enough: bool,
    /// The radio horizons of the two stations at this altitude, over a smooth earth.
    pub horizon_from_nm: f64,
    pub horizon_to_nm: f64,
    /// How much of it lies beyond both.
    pub unreceived_nm: f64,
}

impl Leg {
    pub fn of(from: &Fix, to: &Fix, leg: &RouteLeg) -> Self {
        Self {
            from: from.ident.clone(),
            to: to.ident.clone(),
            length_nm: leg.length.value().get::<nautical_mile>(),
            initial_course_deg: leg.initial_course.angle().get::<degree>(),
            final_course_deg: leg.final_course.angle().get::<degree>(),
            radial_from_deg: leg.radial_from.angle().get::<degree>(),
            radial_to_deg: leg.radial_to.angle().get::<degree>(),
            heading_deg: leg.crab.heading.angle().get::<degree>(),
            groundspeed_kt: leg.crab.groundspeed.value().get::<knot>(),
            straight_nm: leg.straight.get::<nautical_mile>(),
            straight_time_s: leg.is_long_enough().then(|| leg.straight_time.get::<second>()),
            least_length_nm: leg.least_length().get::<nautical_mile>(),
            long_enough: leg.is_long_enough(),
            horizon_from_nm: leg.horizon_from.value().get::<nautical_mile>(),
            horizon_to_nm: leg.horizon_to.value().get::<nautical_mile>(),
            unreceived_nm: leg.unreceived().get::<nautical_mile>(),
        }
    }
}
