//! Runs a plain function over strided memory: the one loop that C arrays and NumPy share.
//!
//! Operands are pointers with a stride in bytes. A stride may be zero (one value for all points) or negative, the
//! memory unaligned, and an output may be an input. Points are computed in blocks by the function's own block loop, which
//! works on slices: over the operand's own memory where its values stand side by side, aligned, and an output's memory is no
//! other operand's; elsewhere over a copy on the stack. Blocks are long where nothing is copied, and one value for all points is a slice of
//! one. The answer is always that of computing one point after the other;
//! where an output runs over what later points read, that is how it is done.

mod operand;

pub use operand::{Input, Output};

use std::mem::MaybeUninit;
use std::ops::Range;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::slice;

use lubberline::plain::table::Function;

/// The most arguments, and the most outputs, a plain function may have.
pub const MOST_OPERANDS: usize = 24;

/// The status of a point whose computation panicked, which none should; the outputs are NaN.
pub const INTERNAL_ERROR: i32 = -1000;

/// The most points that are computed together where an operand is copied: enough for a vectorised loop, few enough for the stack
/// and the nearest cache.
const BLOCK: usize = 128;

/// The most that are where none is: what a block costs by itself is then nothing to its points.
const LONG_BLOCK: usize = 16 * BLOCK;

/// Points in a line of the cache: long blocks begin with one of their first output's, and mostly of the other operands', so that no vector
/// lies across two.
const LINE: usize = 8;

/// Fewer points than this are not worth a block's columns.
const WORTHWHILE: usize = 8;

/// Columns of a block, each as long as it was filled.
type Columns = [MaybeUninit<[f64; BLOCK]>; MOST_OPERANDS];

/// Runs a function over `count` points and gives back how many of them failed.
///
/// A failed point has NaN outputs; `status`, if given, receives each point's code, 0 for success.
/// Operands of another number than the function's fail every point and write nothing.
///
/// # Safety
/// For every index below `count`, `data + index * stride` of each operand must point to eight bytes that may be read
/// (and written, for an output that is not null), and `status`, if not null, to `count` values that are no operand's.
pub unsafe fn run(
    function: &Function,
    count: usize,
    inputs: &[Input],
    outputs: &[Output],
    status: *mut i32,
) -> usize {
    let most = inputs.len().max(outputs.len());
    if inputs.len() != function.inputs.len()
        || outputs.len() != function.outputs.len()
        || most > MOST_OPERANDS
    {
        return count;
    }
    // SAFETY: the caller vouches for every index below `count`.
    unsafe {
        if count < WORTHWHILE || !in_step(count, inputs, outputs) {
            return one_by_one(function, 0..count, inputs, outputs, status);
        }
        in_blocks(function, count, inputs, outputs, status)
    }
}

/// Whether no point writes what another one reads or writes, so that points may be computed together.
fn in_step(count: usize, inputs: &[Input], outputs: &[Output]) -> bool {
    outputs.iter().enumerate().all(|(index, output)| {
        let written = outputs.iter().skip(index).filter(|other| !other.data.is_null());
        let operands = inputs.iter().map(|input| (input.data, input.stride));
        operands
            .chain(written.map(|other| (other.data.cast_const(), other.stride)))
            .all(|(data, stride)| !output.disturbs(data, stride, count))
    })
}

/// Computes all points, a block of them together, and gives back how many failed.
///
/// # Safety
/// As [`run`]; there are no more operands than columns.
// By itself, so that a call for a few points does not pay for the room of a block.
#[inline(never)]
unsafe fn in_blocks(
    function: &Function,
    count: usize,
    inputs: &[Input],
    outputs: &[Output],
    status: *mut i32,
) -> usize {
    let mut given: Columns = [const { MaybeUninit::uninit() }; MOST_OPERANDS];
    let mut answers: Columns = [const { MaybeUninit::uninit() }; MOST_OPERANDS];
    // An output has its memory to itself, or its answers are copied there.
    let mut alone = [false; MOST_OPERANDS];
    for (index, (output, alone)) in outputs.iter().zip(&mut alone).enumerate() {
        let others = outputs.iter().enumerate().filter(|(other, _)| *other != index);
        let others = others.map(|(_, other)| (other.data.cast_const(), other.stride));
        let mut operands = inputs.iter().map(|input| (input.data, input.stride)).chain(others);
        *alone = output.is_slice() && operands.all(|(data, stride)| !output.touches(data, stride, count));
    }
    let in_place = inputs.iter().all(|input| input.is_slice() || input.stride == 0)
        && outputs.iter().zip(&alone).all(|(output, alone)| *alone || output.data.is_null());
    // The first block is shorter, to end where a line of the cache does.
    let first = outputs.iter().find(|output| in_place && !output.data.is_null());
    let before = first.map_or(0, |output| output.data.addr() / size_of::<f64>() % LINE);
    let (mut failures, mut start) = (0, 0);
    while start < count {
        let most = if in_place { LONG_BLOCK } else { BLOCK };
        let end = count.min(start + most - if start == 0 { before } else { 0 });
        let points = start..end;
        // SAFETY: the caller vouches for the points.
        failures += unsafe {
            block(function, points.clone(), inputs, outputs, status, &mut given, &mut answers, &alone)
                // What panicked has changed no input; by themselves, only the point at fault is lost.
                .unwrap_or_else(|| one_by_one(function, points, inputs, outputs, status))
        };
        start = end;
    }
    failures
}

/// Computes the points of a range, no more than a block of them, together, and gives back how many failed; nothing if
/// something panicked, and then only outputs that are `alone` may have been written.
///
/// # Safety
/// As [`in_blocks`], for those points; ranges come from the first on, with the same columns.
#[allow(clippy::too_many_arguments)]
unsafe fn block(
    function: &Function,
    points: Range<usize>,
    inputs: &[Input],
    outputs: &[Output],
    status: *mut i32,
    given: &mut Columns,
    answers: &mut Columns,
    alone: &[bool; MOST_OPERANDS],
) -> Option<usize> {
    let (start, count) = (points.start, points.len());
    let mut statuses = [const { MaybeUninit::<i32>::uninit() }; LONG_BLOCK];
    let mut columns: [&[f64]; MOST_OPERANDS] = [&[]; MOST_OPERANDS];
    let mut results: [&mut [f64]; MOST_OPERANDS] = std::array::from_fn(|_| Default::default());
    let columns = columns.get_mut(..inputs.len())?;
    let results = results.get_mut(..outputs.len())?;
    let statuses = statuses.get_mut(..count)?;
    for status in &mut *statuses {
        status.write(0);
    }
    // SAFETY: all have just been written.
    let statuses = unsafe { slice::from_raw_parts_mut(statuses.as_mut_ptr().cast::<i32>(), count) };
    for ((column, input), memory) in columns.iter_mut().zip(inputs).zip(given) {
        let memory = memory.as_mut_ptr().cast::<f64>();
        // SAFETY: the caller vouches for the points; a column has room for them, and as many are filled as are shown. Nothing
        // writes to an input while its slice lives: an output that is computed in place touches none.
        *column = unsafe {
            if input.is_slice() {
                slice::from_raw_parts(input.address(start).cast(), count)
            } else {
                let count = if input.stride == 0 { 1 } else { count };
                input.gather(start, memory, count);
                slice::from_raw_parts(memory, count)
            }
        };
    }
    for (((result, output), memory), alone) in results.iter_mut().zip(outputs).zip(answers).zip(alone) {
        let memory = memory.as_mut_ptr().cast::<f64>();
        // SAFETY: the caller vouches for the points; an output that is alone is touched through this slice only.
        *result = unsafe {
            if output.data.is_null() {
                &mut []
            } else if *alone {
                slice::from_raw_parts_mut(output.address(start).cast(), count)
            } else {
                if start == 0 {
                    (0..count).for_each(|index| memory.add(index).write(f64::NAN));
                }
                slice::from_raw_parts_mut(memory, count)
            }
        };
    }
    catch_unwind(AssertUnwindSafe(|| (function.block)(columns, results, statuses))).ok()?;
    for ((output, result), alone) in outputs.iter().zip(results).zip(alone) {
        if !alone {
            // SAFETY: the caller vouches for the points.
            unsafe { output.scatter(start, result) };
        }
    }
    if !status.is_null() {
        // SAFETY: the caller vouches for the statuses, none of them ours.
        unsafe { status.add(start).copy_from_nonoverlapping(statuses.as_ptr(), count) };
    }
    // Of most blocks nothing failed, which is found faster than how many did.
    let any = statuses.iter().fold(0, |all, status| all | status);
    Some(if any == 0 { 0 } else { statuses.iter().filter(|status| **status != 0).count() })
}

/// Computes the points of a range one after the other, each as a block of itself, so that a point's answer is the same in an
/// array of any length; and gives back how many failed.
///
/// # Safety
/// As [`run`], for those points; there are no more operands than places.
unsafe fn one_by_one(
    function: &Function,
    points: Range<usize>,
    inputs: &[Input],
    outputs: &[Output],
    status: *mut i32,
) -> usize {
    let (mut given, mut answers) = ([0.0; MOST_OPERANDS], [0.0; MOST_OPERANDS]);
    let (Some(given), Some(answers)) = (given.get_mut(..inputs.len()), answers.get_mut(..outputs.len()))
    else {
        return points.len();
    };
    let mut failures = 0;
    for index in points {
        for (value, input) in given.iter_mut().zip(inputs) {
            // SAFETY: the caller vouches for the point.
            *value = unsafe { input.read(index) };
        }
        let mut code = [0];
        let computed = catch_unwind(AssertUnwindSafe(|| {
            let mut columns: [&[f64]; MOST_OPERANDS] = [&[]; MOST_OPERANDS];
            let mut results: [&mut [f64]; MOST_OPERANDS] = std::array::from_fn(|_| Default::default());
            columns.iter_mut().zip(&*given).for_each(|(column, value)| *column = slice::from_ref(value));
            results
                .iter_mut()
                .zip(&mut *answers)
                .for_each(|(result, value)| *result = slice::from_mut(value));
            if let (Some(columns), Some(results)) =
                (columns.get(..inputs.len()), results.get_mut(..outputs.len()))
            {
                (function.block)(columns, results, &mut code);
            }
        }));
        if computed.is_err() {
            answers.fill(f64::NAN);
            code = [INTERNAL_ERROR];
        }
        let [code] = code;
        failures += usize::from(code != 0);
        for (output, value) in outputs.iter().zip(&*answers) {
            // SAFETY: the caller vouches for the point.
            unsafe { output.write(index, *value) };
        }
        if !status.is_null() {
            // SAFETY: the caller vouches for the statuses.
            unsafe { status.add(index).write(code) };
        }
    }
    failures
}

#[cfg(test)]
mod tests;
