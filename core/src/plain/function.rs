//! A plain function as data: its name, the names of what it takes and gives, and how to run it on slices.

use super::table::FUNCTIONS;
use crate::Error;

/// A plain function as data, as `FUNCTIONS` lists it. Choices are given by their codes.
///
/// # Example
/// ```
/// use lubberline::plain::table::Function;
/// let function = Function::named("slant_range_nm").unwrap();
/// assert_eq!(function.inputs, ["ground_distance_nm", "height_ft"]);
/// let mut outputs = [0.0];
/// (function.run)(&[10.0, 30_000.0], &mut outputs)?;
/// assert_eq!(format!("{:.3}", outputs[0]), "11.159");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Function {
    /// Its name.
    pub name: &'static str,
    /// The names of its arguments, which end in their units.
    pub inputs: &'static [&'static str],
    /// The names of its outputs, which end in their units.
    pub outputs: &'static [&'static str],
    /// Computes one point: arguments in, outputs out, in the order of their names. On an error every output is NaN.
    /// Slices of another length give NaN too.
    pub run: fn(&[f64], &mut [f64]) -> Result<(), Error>,
    /// Computes many points, as [`Block`] says.
    pub block: Block,
}

/// Computes many points: a column of numbers for each argument and for each output, and a status for each point, which
/// is 0 or the code of an error, whose outputs are then NaN. There are as many points as statuses; an argument's column of
/// one number is that number for all of them, another column that is shorter, and columns of another number, give NaN. An
/// output's column that is empty is not wanted.
///
/// A point's answer depends on that point alone, not on its place nor on how many there are. A function that has a loop of
/// its own over columns says in its documentation how far its answers are from those of single calls.
pub type Block = fn(&[&[f64]], &mut [&mut [f64]], &mut [i32]);

impl Function {
    /// The function of a name; at compile time too.
    pub const fn named(name: &str) -> Option<&'static Self> {
        let mut rest = FUNCTIONS;
        while let [function, others @ ..] = rest {
            if same(function.name, name) {
                return Some(function);
            }
            rest = others;
        }
        None
    }
}

/// Equality of texts, which `==` is not yet at compile time.
const fn same(one: &str, other: &str) -> bool {
    let (mut one, mut other) = (one.as_bytes(), other.as_bytes());
    while let ([first, one_rest @ ..], [second, other_rest @ ..]) = (one, other) {
        if *first != *second {
            return false;
        }
        (one, other) = (one_rest, other_rest);
    }
    one.is_empty() && other.is_empty()
}

/// [`Function::run`] from a function of arrays.
pub(super) fn one<const I: usize, const O: usize>(
    inputs: &[f64],
    outputs: &mut [f64],
    function: impl Fn([f64; I]) -> Result<[f64; O], Error>,
) -> Result<(), Error> {
    outputs.fill(f64::NAN);
    if let (Ok(inputs), Ok(outputs)) = (inputs.try_into(), <&mut [f64; O]>::try_from(outputs)) {
        *outputs = function(inputs)?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bits(values: &[f64]) -> Vec<u64> {
        values.iter().map(|value| if value.is_nan() { f64::NAN.to_bits() } else { value.to_bits() }).collect()
    }

    #[test]
    fn names_are_unique_and_found() {
        for function in FUNCTIONS {
            let same = FUNCTIONS.iter().filter(|other| other.name == function.name).count();
            assert_eq!(same, 1, "{}", function.name);
            assert_eq!(Function::named(function.name).unwrap().outputs, function.outputs);
        }
        assert!(Function::named("slant_range").is_none() && Function::named("").is_none());
    }

    #[test]
    fn a_block_is_its_points() {
        let values = [1.0, -1.0, 0.25, 40.0, f64::NAN, f64::INFINITY, 1e300, 7.0];
        for function in FUNCTIONS {
            let columns: Vec<Vec<f64>> = (0..function.inputs.len())
                .map(|place| (0..values.len()).map(|index| values[(index * (place + 1)) % 8]).collect())
                .collect();
            let inputs: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
            let mut answers = vec![[0.0; 8]; function.outputs.len()];
            let mut outputs: Vec<&mut [f64]> = answers.iter_mut().map(<[f64; 8]>::as_mut_slice).collect();
            let mut statuses = [7; 8];
            (function.block)(&inputs, &mut outputs, &mut statuses);
            for (index, status) in statuses.into_iter().enumerate() {
                let given: Vec<f64> = columns.iter().map(|column| column[index]).collect();
                let mut answer = vec![0.0; function.outputs.len()];
                let result = (function.run)(&given, &mut answer);
                assert_eq!(status, result.map_or_else(|error| error.code(), |()| 0), "{}", function.name);
                let of_block: Vec<f64> = answers.iter().map(|column| column[index]).collect();
                // A loop of its own rounds in its own way, by a bound that is held beside it; and it knows no neighbours.
                for (single, many) in answer.iter().zip(&of_block) {
                    let near = (single - many).abs() <= 1e-13 * single.abs().max(1.0) || single == many;
                    assert!(near || (single.is_nan() && many.is_nan()), "{} {given:?}", function.name);
                }
                let mut alone = vec![0.0; function.outputs.len()];
                let columns: Vec<&[f64]> = given.iter().map(std::slice::from_ref).collect();
                let mut places: Vec<&mut [f64]> = alone.iter_mut().map(std::slice::from_mut).collect();
                (function.block)(&columns, &mut places, &mut [7]);
                assert_eq!(bits(&alone), bits(&of_block), "{} {given:?}", function.name);
                assert!(result.is_ok() || answer.iter().all(|value| value.is_nan()), "{}", function.name);
            }
        }
    }

    /// An output that is not wanted changes nothing about the others, nor about the status.
    #[test]
    fn what_is_not_wanted_is_left_out() {
        let values = [1.0, -1.0, 0.25, 40.0, f64::NAN, 1e300, 7.0, 30.0];
        for function in FUNCTIONS.iter().filter(|function| function.outputs.len() > 1) {
            let columns: Vec<Vec<f64>> = (0..function.inputs.len())
                .map(|place| (0..values.len()).map(|index| values[(index * (place + 1)) % 8]).collect())
                .collect();
            let inputs: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
            let asked = |wants: &dyn Fn(usize) -> bool| {
                let mut answers: Vec<Vec<f64>> = (0..function.outputs.len())
                    .map(|place| vec![0.0; if wants(place) { 8 } else { 0 }])
                    .collect();
                let mut outputs: Vec<&mut [f64]> = answers.iter_mut().map(Vec::as_mut_slice).collect();
                let mut statuses = [7; 8];
                (function.block)(&inputs, &mut outputs, &mut statuses);
                (answers, statuses)
            };
            let (all, statuses) = asked(&|_| true);
            for one in 0..function.outputs.len() {
                let (alone, statuses_alone) = asked(&|place| place == one);
                assert_eq!(bits(&alone[one]), bits(&all[one]), "{} {one}", function.name);
                assert_eq!(statuses_alone, statuses, "{} {one}", function.name);
                let (others, _) = asked(&|place| place != one);
                let same = others.iter().zip(&all).filter(|(other, all)| bits(other) == bits(all)).count();
                assert_eq!(same, function.outputs.len() - 1, "{} {one}", function.name);
            }
        }
    }

    #[test]
    fn other_lengths_give_nan() {
        let function = Function::named("slant_range_nm").unwrap();
        let mut output = [0.0];
        assert!((function.run)(&[1.0], &mut output).is_ok() && output[0].is_nan());
        let mut column = [0.0; 2];
        let mut statuses = [7; 2];
        (function.block)(&[&[1.0, 2.0]], &mut [&mut column], &mut statuses);
        assert!(column.iter().all(|value| value.is_nan()) && statuses == [0; 2]);
        (function.block)(&[&[1.0, 2.0], &[9000.0]], &mut [&mut column], &mut statuses);
        assert!(column[0] > 1.0 && column[1].is_nan());
    }
}
