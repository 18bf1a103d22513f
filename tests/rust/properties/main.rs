//! What must hold whatever the numbers: there and back again, mirrored, turned, and beside another library's answer.
#![allow(clippy::unwrap_used, clippy::expect_used, missing_docs, reason = "a test fails by panicking")]

mod air;
mod arc;
mod earth;
mod lead;
mod lines;
mod rules;
mod wind;

use proptest::test_runner::{Config, RngSeed};

/// The same cases in every run, and no files left behind.
fn config() -> Config {
    Config { cases: 1000, failure_persistence: None, rng_seed: RngSeed::Fixed(20), ..Config::default() }
}

/// The difference of two directions in degrees, the short way.
fn apart_deg(one_deg: f64, other_deg: f64) -> f64 {
    ((one_deg - other_deg + 180.0).rem_euclid(360.0) - 180.0).abs()
}
