//! Arguments for any plain function, by their names: plausible ones, and numbers of every kind that no one should give.

use lubberline::Error;
use lubberline::plain::table::Function;

/// Numbers at the edges of what an f64 can be, and of what a navigator would write.
pub const EXTREMES: [f64; 26] = [
    f64::INFINITY,
    f64::NEG_INFINITY,
    f64::MAX,
    f64::MIN,
    1e308,
    -1e308,
    1e154,
    -1e154,
    1e15,
    -1e15,
    f64::MIN_POSITIVE,
    -f64::MIN_POSITIVE,
    5e-324,
    -5e-324,
    1e-310,
    0.0,
    -0.0,
    1.0,
    -1.0,
    90.0,
    -90.0,
    180.0,
    -180.0,
    360.0,
    89.999_999_999_999_99,
    1e-9,
];

/// A plausible value of the argument of this name.
pub fn plausible(name: &str, random: &mut fastrand::Rng) -> f64 {
    let ranges: [(&str, f64, f64); 26] = [
        ("_deg_per_s", 0.5, 10.0),
        ("lat_deg", -85.0, 85.0),
        ("lat1_deg", -85.0, 85.0),
        ("lat2_deg", -85.0, 85.0),
        ("latitude_deg", -85.0, 85.0),
        ("declination_deg", -30.0, 30.0),
        ("bank_deg", 5.0, 60.0),
        ("bank_limit_deg", 5.0, 60.0),
        ("half_angle_deg", 20.0, 70.0),
        ("bearing_change_deg", 5.0, 60.0),
        ("angle_off_bow_deg", 20.0, 100.0),
        ("intercept_angle_deg", 20.0, 60.0),
        ("_deg", -180.0, 360.0),
        ("_nm", 0.5, 50.0),
        ("_ft", 0.0, 40_000.0),
        ("wind_speed_kt", 0.0, 50.0),
        ("_kt", 50.0, 500.0),
        ("_s", 10.0, 600.0),
        ("_hpa", 600.0, 1080.0),
        ("_degc", -50.0, 30.0),
        ("_k", -20.0, 20.0),
        ("mach", 0.2, 0.9),
        ("load_factor", 1.05, 4.0),
        ("recovery_factor", 0.5, 1.0),
        ("sense", -1.0, 1.0),
        ("", 0.0, 1.0),
    ];
    let (_, low, high) = ranges.into_iter().find(|(ending, ..)| name.ends_with(ending)).unwrap();
    match name {
        "sense" => *random.choice(&[low, high]).unwrap(),
        "flown" | "rule" => random.bool().into(),
        _ => low + (high - low) * random.f64(),
    }
}

/// Runs a function on outputs that hold something else before.
pub fn run(function: &Function, inputs: &[f64]) -> (Result<(), Error>, Vec<f64>) {
    let mut outputs = vec![4.75; function.outputs.len()];
    let result = (function.run)(inputs, &mut outputs);
    (result, outputs)
}

/// Plausible arguments that the function has an answer to.
pub fn answered(function: &Function, random: &mut fastrand::Rng) -> Vec<f64> {
    for _ in 0..10_000 {
        let inputs: Vec<f64> = function.inputs.iter().map(|name| plausible(name, random)).collect();
        let (result, outputs) = run(function, &inputs);
        if result.is_ok() && outputs.iter().all(|value| value.is_finite()) {
            return inputs;
        }
    }
    panic!("{}: no plausible arguments have an answer; teach points.rs theirs", function.name);
}
