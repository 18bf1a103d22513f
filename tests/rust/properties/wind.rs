//! The triangle of velocities, closed by plain vectors.

use lubberline::plain::{
    airspeed_for_groundspeed, track_and_groundspeed, wind_components, wind_correction_deg,
    wind_from_components, wind_from_track, wind_triangle,
};
use proptest::prelude::*;

use crate::{apart_deg, config};

/// North and east of a speed in a direction.
fn vector(direction_deg: f64, speed: f64) -> (f64, f64) {
    (speed * direction_deg.to_radians().cos(), speed * direction_deg.to_radians().sin())
}

/// Through the air, and with the wind: over the ground.
fn over_ground(heading_deg: f64, airspeed: f64, from_deg: f64, wind: f64) -> (f64, f64) {
    let (air, blown) = (vector(heading_deg, airspeed), vector(from_deg, -wind));
    (air.0 + blown.0, air.1 + blown.1)
}

fn near(one: (f64, f64), other: (f64, f64), tolerance: f64) -> bool {
    (one.0 - other.0).hypot(one.1 - other.1) < tolerance
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn the_triangle_closes(
        course in 0.0..360.0, airspeed in 50.0..600.0, from in 0.0..360.0, share in 0.0..0.95,
    ) {
        let wind = share * airspeed;
        let held = wind_triangle(course, airspeed, from, wind)?;
        let ground = over_ground(held.heading_deg, airspeed, from, wind);
        prop_assert!(near(ground, vector(course, held.groundspeed_kt), 1e-9));
        let correction = wind_correction_deg(course, airspeed, from, wind)?;
        prop_assert!(apart_deg(held.heading_deg, course + correction) < 1e-9 && correction.abs() < 90.0);
        // And the other ways round.
        let flown = track_and_groundspeed(held.heading_deg, airspeed, from, wind)?;
        prop_assert!(near(vector(flown.track_deg, flown.groundspeed_kt), ground, 1e-9));
        prop_assert!(apart_deg(flown.drift_deg, -correction) < 1e-8);
        let observed = wind_from_track(held.heading_deg, airspeed, course, held.groundspeed_kt)?;
        prop_assert!(near(vector(observed.wind_from_deg, observed.wind_speed_kt), vector(from, wind), 1e-9));
        let needed = airspeed_for_groundspeed(course, held.groundspeed_kt, from, wind)?;
        prop_assert!(near(vector(needed.heading_deg, needed.true_airspeed_kt), vector(held.heading_deg, airspeed), 1e-8));
    }

    #[test]
    fn components_are_the_wind_seen_along_the_course(course in 0.0..360.0, from in 0.0..360.0, wind in 0.0..200.0) {
        let parts = wind_components(course, from, wind)?;
        let (ahead, right) = (vector(course, 1.0), vector(course + 90.0, 1.0));
        let blows_from = vector(from, wind);
        prop_assert!((parts.headwind_kt - (blows_from.0 * ahead.0 + blows_from.1 * ahead.1)).abs() < 1e-10);
        prop_assert!((parts.crosswind_kt - (blows_from.0 * right.0 + blows_from.1 * right.1)).abs() < 1e-10);
        let again = wind_from_components(course, parts.headwind_kt, parts.crosswind_kt)?;
        prop_assert!(near(vector(again.wind_from_deg, again.wind_speed_kt), blows_from, 1e-10));
    }

    #[test]
    fn mirrored_and_turned(
        course in 0.0..360.0, airspeed in 50.0..600.0, from in 0.0..360.0, share in 0.0..0.95, turned in -720.0..720.0,
    ) {
        let wind = share * airspeed;
        let held = wind_triangle(course, airspeed, from, wind)?;
        let mirrored = wind_triangle(-course, airspeed, -from, wind)?;
        prop_assert!(apart_deg(mirrored.heading_deg, -held.heading_deg) < 1e-9);
        let other = wind_triangle(course + turned, airspeed, from + turned, wind)?;
        prop_assert!(apart_deg(other.heading_deg, held.heading_deg + turned) < 1e-9);
        for groundspeed in [mirrored.groundspeed_kt, other.groundspeed_kt] {
            prop_assert!((groundspeed - held.groundspeed_kt).abs() < 1e-9);
        }
    }
}
