//! The legs of a route: geodesics between stations, flown straight between the turns at their ends.

use lubberline::earth::{direct, inverse};
use lubberline::value::units::{degree, knot, nautical_mile};
use lubberline::value::{GroundDistance, TrueAirspeed, TrueBearing};
use lubberline::wind::hold_course;
use serde::Serialize;

use crate::plan::Fix;

/// A leg as it is briefed. Plain numbers with their units, for showing.
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
    pub straight_time_s: f64,
    pub long_enough: bool,
}

/// The geodesic from one fix to the next.
pub struct Line {
    pub length_nm: f64,
    pub initial: TrueBearing,
    pub middle: TrueBearing,
    pub last: TrueBearing,
}

impl Line {
    pub fn between(from: &Fix, to: &Fix) -> Result<Self, String> {
        let line = inverse(from.station.position, to.station.position);
        let (Some(initial), Some(last)) = (line.initial_bearing, line.final_bearing) else {
            return Err(format!(
                "route: {} and {} are at the same place; allowed: different positions",
                from.ident, to.ident
            ));
        };
        let half = GroundDistance::new(line.distance.value() / 2.0).map_err(|error| error.to_string())?;
        let (_, middle) = direct(from.station.position, initial, half);
        Ok(Self { length_nm: line.distance.value().get::<nautical_mile>(), initial, middle, last })
    }
}

impl Leg {
    /// A leg of which the turns at its ends take their parts. It is flown in the wind of the fix it leads to.
    pub fn of(
        from: &Fix,
        to: &Fix,
        line: &Line,
        true_airspeed: TrueAirspeed,
        behind_nm: f64,
        ahead_nm: f64,
    ) -> Result<Self, String> {
        let crabbed = hold_course(line.middle, true_airspeed, to.wind)
            .map_err(|error| format!("leg {} to {}: {error}", from.ident, to.ident))?;
        let groundspeed_kt = crabbed.groundspeed.value().get::<knot>();
        let straight_nm = line.length_nm - behind_nm - ahead_nm;
        Ok(Self {
            from: from.ident.clone(),
            to: to.ident.clone(),
            length_nm: line.length_nm,
            initial_course_deg: line.initial.angle().get::<degree>(),
            final_course_deg: line.last.angle().get::<degree>(),
            radial_from_deg: from.radial_deg(line.initial),
            radial_to_deg: to.radial_deg(line.last.reciprocal()),
            heading_deg: crabbed.heading.angle().get::<degree>(),
            groundspeed_kt,
            straight_nm,
            straight_time_s: straight_nm / groundspeed_kt * 3600.0,
            long_enough: straight_nm >= 0.0,
        })
    }
}

impl Fix {
    /// A true direction from this station as one of its radials, 0 to 360.
    pub fn radial_deg(&self, bearing: TrueBearing) -> f64 {
        let declination_deg = self.station.declination.angle().get::<degree>();
        (bearing.angle().get::<degree>() - declination_deg).rem_euclid(360.0)
    }
}
