//! How a C call reaches the library: guarded, and with its outputs set whatever happens.

use std::panic::{AssertUnwindSafe, catch_unwind};

use lubberline::Error;
use lubberline::plain::table::Function;
use lubberline_strided::{INTERNAL_ERROR, Input, Output, run};

use crate::generated::LUBBER_ERROR_STRUCT;

/// Computes one point and writes its outputs, NaN on a failure; an output may be null.
///
/// # Safety
/// Each output must be null or writable.
pub(crate) unsafe fn one<const N: usize>(
    compute: impl FnOnce() -> Result<[f64; N], Error>,
    outputs: [*mut f64; N],
) -> i32 {
    let (status, answer) = match catch_unwind(AssertUnwindSafe(compute)) {
        Ok(Ok(answer)) => (0, answer),
        Ok(Err(error)) => (error.code(), [f64::NAN; N]),
        Err(_) => (INTERNAL_ERROR, [f64::NAN; N]),
    };
    for (output, value) in outputs.into_iter().zip(answer) {
        if !output.is_null() {
            // SAFETY: the caller vouches for it; alignment is not assumed.
            unsafe { output.write_unaligned(value) };
        }
    }
    status
}

/// One operand of an array function.
pub(crate) struct Array;

impl Array {
    pub(crate) fn input(data: *const f64, stride: isize) -> Input {
        Input { data: data.cast(), stride }
    }

    pub(crate) fn output(data: *mut f64, stride: isize) -> Output {
        Output { data: data.cast(), stride }
    }
}

/// Computes many points and gives back how many failed; all of them if an argument is null, which is answered, not read.
///
/// # Safety
/// As [`lubberline_strided::run`] for operands that are not null.
pub(crate) unsafe fn many(
    function: Option<&'static Function>,
    count: usize,
    inputs: &[Input],
    outputs: &[Output],
    status: *mut i32,
) -> usize {
    match function {
        // SAFETY: the caller vouches for the arrays.
        Some(function) if inputs.iter().all(|input| !input.data.is_null()) => unsafe {
            run(function, count, inputs, outputs, status)
        },
        // SAFETY: as above.
        _ => unsafe { refuse(count, outputs, status) },
    }
}

/// Answers every point with NaN and a status of its own.
///
/// # Safety
/// As [`many`].
unsafe fn refuse(count: usize, outputs: &[Output], status: *mut i32) -> usize {
    for index in 0..count {
        for output in outputs {
            // SAFETY: the caller vouches for the arrays.
            unsafe { output.write(index, f64::NAN) };
        }
        if !status.is_null() {
            // SAFETY: the caller vouches for the statuses.
            unsafe { status.add(index).write(LUBBER_ERROR_STRUCT) };
        }
    }
    count
}
