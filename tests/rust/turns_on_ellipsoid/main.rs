//! Turns about a fix against an aircraft that flies them in small steps over the ellipsoid.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, missing_docs, reason = "a test fails by panicking")]

mod arc;
mod course_change;
mod flown;
mod fly_over;

use flown::{Aircraft, Fix};

/// How far from the fix a turn may begin and end.
const FARTHEST_NM: f64 = 20.0;

fn between(random: &mut fastrand::Rng, low: f64, high: f64) -> f64 {
    low + (high - low) * random.f64()
}

fn random_fix(random: &mut fastrand::Rng) -> Fix {
    Fix { latitude_deg: between(random, -80.0, 80.0), longitude_deg: between(random, -180.0, 180.0) }
}

fn random_aircraft(random: &mut fastrand::Rng) -> Aircraft {
    let airspeed_kt = between(random, 60.0, 600.0);
    Aircraft {
        airspeed_kt,
        wind_from_deg: between(random, 0.0, 360.0),
        wind_kt: airspeed_kt * between(random, 0.0, 0.5),
        bank_limit_deg: between(random, 10.0, 45.0),
        rate_limit_deg_s: between(random, 1.0, 6.0),
        roll_deg_s: if random.u8(..4) == 0 { f64::INFINITY } else { between(random, 1.0, 15.0) },
    }
}

/// The difference of two directions, right positive, the short way.
fn change_deg(from_deg: f64, to_deg: f64) -> f64 {
    (to_deg - from_deg + 540.0).rem_euclid(360.0) - 180.0
}
