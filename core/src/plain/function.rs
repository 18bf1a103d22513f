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
    fn other_lengths_give_nan() {
        let function = Function::named("slant_range_nm").unwrap();
        let mut output = [0.0];
        assert!((function.run)(&[1.0], &mut output).is_ok() && output[0].is_nan());
        let mut column = [0.0; 3];
        let mut statuses = [7; 3];
        (function.block)(&[&[1.0, 2.0, 3.0]], &mut [&mut column], &mut statuses);
        assert!(column.iter().all(|value| value.is_nan()) && statuses == [0; 3]);
        (function.block)(&[&[1.0, 2.0, 3.0], &[9000.0; 2]], &mut [&mut column], &mut statuses);
        assert!(column[0] > 1.0 && column[1] > 2.0 && column[2].is_nan());
    }
}
