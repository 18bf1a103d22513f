//! Every plain function is total: whatever numbers it is given, it answers, or says what is wrong and gives NaN, and never panics.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    missing_docs,
    reason = "a test fails by panicking"
)]

mod points;
mod settings;
mod typed;

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::time::{Duration, Instant};

use lubberline::Error;
use lubberline::plain::table::{FUNCTIONS, Function};
use points::{EXTREMES, Examples, near, run};

/// What holds for every answer: no panic, NaN in every output after an error, and for a NaN given, which is no error.
fn check(function: &Function, inputs: &[f64]) {
    let answer = catch_unwind(AssertUnwindSafe(|| run(function, inputs)));
    let (result, outputs) = answer.unwrap_or_else(|_| panic!("{}{inputs:?} panics", function.name));
    if inputs.iter().any(|value| value.is_nan()) {
        assert!(result.is_ok(), "{}{inputs:?}: {result:?}", function.name);
    }
    if result.is_err() || inputs.iter().any(|value| value.is_nan()) {
        assert!(outputs.iter().all(|value| value.is_nan()), "{}{inputs:?}: {outputs:?}", function.name);
    }
}

#[test]
fn a_nan_gives_nan_and_no_error() {
    let examples = Examples::read();
    for function in FUNCTIONS {
        let good = examples.of(function);
        assert!(run(function, &good).0.is_ok(), "{}{good:?}", function.name);
        for place in 0..good.len() {
            let mut inputs = good.clone();
            inputs[place] = f64::NAN;
            check(function, &inputs);
            // Even if all the others would be refused.
            let mut inputs = vec![f64::NEG_INFINITY; good.len()];
            inputs[place] = -f64::NAN;
            check(function, &inputs);
        }
    }
}

#[test]
fn an_extreme_number_in_each_argument_alone_and_beside_another() {
    let examples = Examples::read();
    let mut random = fastrand::Rng::with_seed(2);
    for function in FUNCTIONS {
        let good = examples.of(function);
        for place in 0..good.len() {
            for extreme in EXTREMES {
                for other in 0..good.len() {
                    let mut inputs = good.clone();
                    inputs[other] = *random.choice(&EXTREMES).unwrap();
                    inputs[place] = extreme;
                    check(function, &inputs);
                }
            }
        }
    }
}

/// The ends of the range that an error states, and whether they are in it.
fn stated_range(allowed: &str) -> Option<[(f64, bool); 2]> {
    let words: Vec<&str> = allowed.split(' ').collect();
    let [low_word @ ("from" | "above"), low, high_word @ ("to" | "below"), high, ..] = words[..] else {
        return None;
    };
    Some([(low.parse().unwrap(), low_word == "from"), (high.parse().unwrap(), high_word == "to")])
}

/// Whether this very argument was refused.
fn refuses(function: &Function, place: usize, inputs: &[f64]) -> bool {
    let (result, _) = run(function, inputs);
    matches!(result, Err(Error::OutOfRange { parameter, .. }) if parameter == function.inputs[place])
}

/// Whether it is an argument that was refused, not a quantity that follows from them.
fn refuses_an_argument(function: &Function, error: Error) -> bool {
    matches!(error, Error::OutOfRange { parameter, .. } if function.inputs.contains(&parameter))
}

#[test]
fn each_argument_is_refused_by_name_just_beyond_the_range_that_the_error_states() {
    let examples = Examples::read();
    for function in FUNCTIONS {
        let good = examples.of(function);
        for place in 0..good.len() {
            let name = function.inputs[place];
            let with = |value: f64| {
                let mut inputs = good.clone();
                inputs[place] = value;
                inputs
            };
            let (result, _) = run(function, &with(-1e300));
            let quantity = match result {
                Err(Error::OutOfRange { quantity, parameter, .. }) if parameter == name => quantity,
                Err(Error::UnknownChoice { parameter, .. }) if parameter == name => continue,
                // Any finite number of degrees is a direction or a longitude, though there may be nothing that way.
                result
                    if name.ends_with("_deg")
                        && !result.is_err_and(|error| refuses_an_argument(function, error)) =>
                {
                    assert!(refuses(function, place, &with(f64::INFINITY)), "{} {name}", function.name);
                    continue;
                }
                other => panic!("{} {name}: {other:?}", function.name),
            };
            let Some(ends) = stated_range(quantity.allowed()) else {
                assert!(quantity.allowed().starts_with("above 0"), "{}", quantity.allowed());
                assert!(refuses(function, place, &with(0.0)), "{} {name}", function.name);
                continue;
            };
            for ((end, included), outward) in ends.into_iter().zip([-1.0, 1.0]) {
                // The conversion of a unit may cost an end of a range its last digits.
                let little = end.abs().max(1e-300) * 1e-14;
                let [beyond, within] = [end + outward * little, end - outward * little];
                assert!(refuses(function, place, &with(beyond)), "{} {name}: {beyond}", function.name);
                assert!(!refuses(function, place, &with(within)), "{} {name}: {within}", function.name);
                assert_eq!(
                    refuses(function, place, &with(end)),
                    !included,
                    "{} {name}: {end}",
                    function.name
                );
            }
        }
    }
}

/// Numbers near the example, far from it, extreme, and of any bits. A second for ten functions, a million points at most.
#[test]
fn any_bits_at_all() {
    let examples = Examples::read();
    let each = |(index, function): (usize, &Function)| {
        let mut random = fastrand::Rng::with_seed(4 + index as u64);
        let good = examples.of(function);
        let mut inputs = good.clone();
        let mut outputs = vec![0.0; function.outputs.len()];
        let begun = Instant::now();
        for point in 0..1_000_000 {
            if point % 1000 == 0 && begun.elapsed() > Duration::from_millis(100) {
                break;
            }
            for (value, good) in inputs.iter_mut().zip(&good) {
                *value = match random.u8(..8) {
                    0 => f64::from_bits(random.u64(..)),
                    1 => *random.choice(&EXTREMES).unwrap(),
                    2 => near(*good, &mut random) * f64::exp2(f64::from(random.i8(..)) / 8.0),
                    3 => *good,
                    _ => near(*good, &mut random),
                };
            }
            let result = (function.run)(&inputs, &mut outputs);
            let nan_given = inputs.iter().any(|value| value.is_nan());
            if nan_given || result.is_err() {
                assert!(
                    outputs.iter().all(|value| value.is_nan()),
                    "{}{inputs:?}: {outputs:?}",
                    function.name
                );
            }
            assert!(!nan_given || result.is_ok(), "{}{inputs:?}: {result:?}", function.name);
        }
    };
    let half = FUNCTIONS.len() / 2;
    std::thread::scope(|scope| {
        scope.spawn(|| FUNCTIONS.iter().enumerate().skip(half).for_each(each));
        FUNCTIONS.iter().enumerate().take(half).for_each(each);
    });
}
