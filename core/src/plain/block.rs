//! Blocks of points: the loops over columns that functions have, and what they do not answer by single calls.

use std::mem::MaybeUninit;

use crate::Error;
use crate::many::{Kernel, ROOM, run};

/// Arguments of a block. A column of one number is that number for all points.
pub(super) struct Arguments<'a, const I: usize, const MOST: usize> {
    columns: [&'a [f64]; I],
    count: usize,
    /// If there are columns of one number, the first number of each, for as many points as are asked for at a time.
    repeated: Option<&'a [[f64; MOST]; I]>,
}

impl<'a, const I: usize, const MOST: usize> Arguments<'a, I, MOST> {
    /// Those of `count` points; `repeated` is filled if it is needed.
    // It is the caller's, as what is big costs more to give back than to fill.
    #[inline(always)]
    pub(super) fn of(
        columns: [&'a [f64]; I],
        count: usize,
        repeated: &'a mut MaybeUninit<[[f64; MOST]; I]>,
    ) -> Self {
        let any_one = columns.iter().any(|column| column.len() < count);
        let repeated = any_one.then(|| &*repeated.write(columns.map(|column| [value(column, 0); MOST])));
        Self { columns, count, repeated }
    }

    /// The most points that may be asked for at a time.
    pub(super) fn most(&self) -> usize {
        if self.repeated.is_some() { MOST } else { self.count }
    }

    /// Columns as long as asked for, from a point on.
    pub(super) fn part(&self, start: usize, count: usize) -> [&'a [f64]; I] {
        let mut repeated = self.repeated.into_iter().flatten();
        self.columns.map(|column| {
            let part = match repeated.next() {
                Some(same) if column.len() < self.count => same.get(..count),
                _ => column.get(start..start + count),
            };
            part.unwrap_or_default()
        })
    }
}

/// An argument for a point.
fn value(column: &[f64], index: usize) -> f64 {
    match column {
        [same] => *same,
        _ => column.get(index).copied().unwrap_or(f64::NAN),
    }
}

/// [`Function::block`](super::table::Function::block) from a function of arrays, point after point.
pub(super) fn each<const I: usize, const O: usize>(
    inputs: &[&[f64]],
    outputs: &mut [&mut [f64]],
    statuses: &mut [i32],
    function: impl Fn([f64; I]) -> Result<[f64; O], Error>,
) {
    let inputs = <[&[f64]; I]>::try_from(inputs).ok();
    for (index, status) in statuses.iter_mut().enumerate() {
        let given = inputs.map(|inputs| inputs.map(|column| value(column, index)));
        let (code, answer) = match given.map(&function) {
            Some(Ok(answer)) => (0, answer),
            Some(Err(error)) => (error.code(), [f64::NAN; O]),
            None => (0, [f64::NAN; O]),
        };
        *status = code;
        for (output, value) in outputs.iter_mut().zip(answer) {
            if let Some(output) = output.get_mut(index) {
                *output = value;
            }
        }
    }
}

/// The same from a loop over columns of at most [`ROOM`] points, which leaves a NaN in an output where it does not
/// answer for a point; that point is then computed by the function itself. Where columns are missing or short all are.
pub(super) fn columns<const I: usize, const O: usize>(
    inputs: &[&[f64]],
    outputs: &mut [&mut [f64]],
    statuses: &mut [i32],
    loops: impl Fn([&[f64]; I], [&mut [f64]; O]),
    function: impl Fn([f64; I]) -> Result<[f64; O], Error>,
) {
    let Some((given, answers)) = fitting(inputs, outputs, statuses.len()) else {
        return each(inputs, outputs, statuses, function);
    };
    let mut repeated = MaybeUninit::uninit();
    let given = Arguments::<I, ROOM>::of(given, statuses.len(), &mut repeated);
    let all_wanted = answers.iter().all(|column| !column.is_empty());
    for (part, statuses) in statuses.chunks_mut(ROOM).enumerate() {
        let (start, count) = (part * ROOM, statuses.len());
        let given = given.part(start, count);
        // What is not wanted goes where nobody reads it but for its NaN.
        let mut spares = MaybeUninit::uninit();
        let mut spares =
            if all_wanted { None } else { Some(spares.write([[0.0; ROOM]; O])) }.into_iter().flatten();
        let mut places = answers.each_mut().map(|column| {
            let spare = spares.next().and_then(|spare| spare.get_mut(..count));
            column.get_mut(start..start + count).or(spare).unwrap_or_default()
        });
        loops(given, places.each_mut().map(|place| &mut **place));
        let seen = places.map(|place| &*place);
        statuses.fill(0);
        if unanswered(seen) > 0 {
            let marks = marked(seen);
            singly(given, answers, statuses, start, &marks, &function);
        }
    }
}

/// As [`columns`], from a loop over any number of points that computes the outputs only that are wanted, leaves its NaN in every one
/// of them, takes columns of one number, and says whether it left none.
pub(super) fn wanted<const I: usize, const O: usize>(
    inputs: &[&[f64]],
    outputs: &mut [&mut [f64]],
    statuses: &mut [i32],
    loops: impl Fn([&[f64]; I], [Option<&mut [f64]>; O], usize) -> bool,
    function: impl Fn([f64; I]) -> Result<[f64; O], Error>,
) {
    let count = statuses.len();
    let none = outputs.iter().all(|column| column.is_empty());
    let Some((given, answers)) = fitting(inputs, outputs, count).filter(|_| !none) else {
        return each(inputs, outputs, statuses, function);
    };
    statuses.fill(0);
    if loops(given, answers.each_mut().map(|column| column.get_mut(..count)), count) {
        return;
    }
    for (part, statuses) in statuses.chunks_mut(ROOM).enumerate() {
        let (start, end) = (part * ROOM, part * ROOM + statuses.len());
        let seen = answers.each_ref().map(|column| column.get(start..end).unwrap_or_default());
        if unanswered(seen) > 0 {
            let given = given.map(|column| match column {
                [_] => column,
                _ => column.get(start..end).unwrap_or_default(),
            });
            let marks = marked(seen);
            singly(given, answers, statuses, start, &marks, &function);
        }
    }
}

/// The columns of a block of `count` points, if none is missing or short.
#[allow(clippy::type_complexity)]
fn fitting<'a, 'b, 'c, const I: usize, const O: usize>(
    inputs: &[&'a [f64]],
    outputs: &'b mut [&'c mut [f64]],
    count: usize,
) -> Option<([&'a [f64]; I], &'b mut [&'c mut [f64]; O])> {
    let given = <[&[f64]; I]>::try_from(inputs).ok()?;
    let answers = <&mut [&mut [f64]; O]>::try_from(outputs).ok()?;
    let fit = given.iter().all(|column| column.len() == 1 || column.len() >= count)
        && answers.iter().all(|column| column.is_empty() || column.len() >= count);
    fit.then_some((given, answers))
}

/// The answers for the marked points of a part of a block, from `start` on, each computed by itself, and their statuses.
fn singly<const I: usize, const O: usize>(
    given: [&[f64]; I],
    answers: &mut [&mut [f64]; O],
    statuses: &mut [i32],
    start: usize,
    marks: &[f64; ROOM],
    function: impl Fn([f64; I]) -> Result<[f64; O], Error>,
) {
    for ((index, status), mark) in statuses.iter_mut().enumerate().zip(marks) {
        if mark.is_nan() {
            let answer = function(given.map(|column| value(column, index))).unwrap_or_else(|error| {
                *status = error.code();
                [f64::NAN; O]
            });
            for (column, value) in answers.iter_mut().zip(answer) {
                if let Some(place) = column.get_mut(start + index) {
                    *place = value;
                }
            }
        }
    }
}

/// How many of the answers are no numbers.
fn unanswered<const O: usize>(answers: [&[f64]; O]) -> u64 {
    let mut count = 0;
    run(Unanswered { answers, count: &mut count });
    count
}

/// A NaN for each point that has an answer which is no number, else 0.
fn marked<const O: usize>(answers: [&[f64]; O]) -> [f64; ROOM] {
    let mut marks = [0.0; ROOM];
    run(Marking { answers, marks: &mut marks });
    marks
}

/// Counts the answers that are no numbers.
struct Unanswered<'a, const O: usize> {
    answers: [&'a [f64]; O],
    count: &'a mut u64,
}

impl<const O: usize> Kernel for Unanswered<'_, O> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        let among = |answer: &[f64]| answer.iter().map(|value| u64::from(!value.is_finite())).sum::<u64>();
        *self.count = self.answers.into_iter().map(among).sum();
    }
}

/// Marks with a NaN the points that have an answer which is no number.
struct Marking<'a, const O: usize> {
    answers: [&'a [f64]; O],
    marks: &'a mut [f64; ROOM],
}

impl<const O: usize> Kernel for Marking<'_, O> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        for answer in self.answers {
            for (mark, value) in self.marks.iter_mut().zip(answer) {
                *mark += 0.0 * value;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::plain::table::FUNCTIONS;

    fn bits(values: &[f64]) -> Vec<u64> {
        values.iter().map(|value| if value.is_nan() { f64::NAN.to_bits() } else { value.to_bits() }).collect()
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

    /// An argument of one number is a column of it, in blocks of more than one part too, among points that are answered for and not.
    #[test]
    fn one_number_is_a_column_of_it() {
        const COUNT: usize = 700;
        let values = [1.0, 20.0, 0.25, 40.0, 3.0, 7.0, 30.0, f64::NAN];
        for function in FUNCTIONS {
            let value =
                |place: usize, index: usize| values[(index / 90 * (place + 3) + place + index % 3) % 8];
            let columns: Vec<Vec<f64>> = (0..function.inputs.len())
                .map(|place| (0..COUNT).map(|index| value(place, index)).collect())
                .collect();
            for same in 0..function.inputs.len() {
                let full = vec![values[same % 7]; COUNT];
                let asked = |same_column: &[f64]| {
                    let mut inputs: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
                    inputs[same] = same_column;
                    let mut answers = vec![vec![0.0; COUNT]; function.outputs.len()];
                    let mut outputs: Vec<&mut [f64]> = answers.iter_mut().map(Vec::as_mut_slice).collect();
                    let mut statuses = vec![7; COUNT];
                    (function.block)(&inputs, &mut outputs, &mut statuses);
                    (answers.iter().map(|answer| bits(answer)).collect::<Vec<_>>(), statuses)
                };
                assert!(asked(&full[..1]) == asked(&full), "{} {same}", function.name);
            }
        }
    }
}
