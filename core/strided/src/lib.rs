//! Runs a plain function over strided memory: the one loop that C arrays and NumPy share.
//!
//! Operands are pointers with a stride in bytes. A stride may be zero (one value for all points) or negative, the
//! memory unaligned, and an output may be an input. No Rust slice is ever formed over that memory: each point is read
//! into the loop's own variables, computed, and written.

use std::panic::{AssertUnwindSafe, catch_unwind};

use lubberline::plain::table::Function;

/// The most arguments, and the most outputs, a plain function may have.
pub const MOST_OPERANDS: usize = 24;

/// The status of a point whose computation panicked, which none should; the outputs are NaN.
pub const INTERNAL_ERROR: i32 = -1000;

/// An argument: where its first value is, and the bytes from one value to the next.
#[derive(Debug, Clone, Copy)]
pub struct Input {
    /// The first value.
    pub data: *const u8,
    /// Bytes to the next value.
    pub stride: isize,
}

/// An output: where its first value goes (nowhere if null), and the bytes from one value to the next.
#[derive(Debug, Clone, Copy)]
pub struct Output {
    /// The first value.
    pub data: *mut u8,
    /// Bytes to the next value.
    pub stride: isize,
}

/// Runs a function over `count` points and gives back how many of them failed.
///
/// A failed point has NaN outputs; `status`, if given, receives each point's code, 0 for success.
/// Operands of another number than the function's fail every point and write nothing.
///
/// # Safety
/// For every index below `count`, `data + index * stride` of each operand must point to eight bytes that may be read
/// (and written, for an output that is not null), and `status`, if not null, to `count` values.
pub unsafe fn run(
    function: &Function,
    count: usize,
    inputs: &[Input],
    outputs: &[Output],
    status: *mut i32,
) -> usize {
    let mut given = [0.0; MOST_OPERANDS];
    let mut answer = [0.0; MOST_OPERANDS];
    let fits = inputs.len() == function.inputs.len() && outputs.len() == function.outputs.len();
    let (true, Some(given), Some(answer)) =
        (fits, given.get_mut(..inputs.len()), answer.get_mut(..outputs.len()))
    else {
        return count;
    };
    let mut failures = 0;
    for index in 0..count {
        for (value, input) in given.iter_mut().zip(inputs) {
            // SAFETY: the caller vouches for every index below `count`; alignment is not assumed.
            *value = unsafe { at(input.data, input.stride, index).cast::<f64>().read_unaligned() };
        }
        let code = point(function, given, answer);
        failures += usize::from(code != 0);
        for (value, output) in answer.iter().zip(outputs) {
            if !output.data.is_null() {
                // SAFETY: as above.
                unsafe {
                    at(output.data, output.stride, index).cast::<f64>().cast_mut().write_unaligned(*value)
                };
            }
        }
        if !status.is_null() {
            // SAFETY: the caller vouches for `count` values.
            unsafe { status.add(index).write(code) };
        }
    }
    failures
}

/// One point, with whatever happens inside it kept from the caller.
pub fn point(function: &Function, given: &[f64], answer: &mut [f64]) -> i32 {
    match catch_unwind(AssertUnwindSafe(|| (function.run)(given, answer))) {
        Ok(Ok(())) => 0,
        Ok(Err(error)) => error.code(),
        Err(_) => {
            answer.fill(f64::NAN);
            INTERNAL_ERROR
        }
    }
}

/// The address of a value. The arithmetic wraps, so that an operand of no points has no address to be wrong.
fn at(data: *const u8, stride: isize, index: usize) -> *const u8 {
    data.wrapping_offset(stride.wrapping_mul(index.cast_signed()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn slant() -> &'static Function {
        Function::named("slant_range_nm").unwrap()
    }

    fn input(values: &[f64], stride: isize) -> Input {
        Input { data: values.as_ptr().cast(), stride }
    }

    #[test]
    fn strides_may_be_zero_or_negative() {
        let ground = [10.0, 20.0, 30.0];
        let height = [30_000.0];
        let mut slants = [0.0; 3];
        let backwards = Input { data: (&raw const ground[2]).cast(), stride: -8 };
        let output = Output { data: slants.as_mut_ptr().cast(), stride: 8 };
        let failures =
            unsafe { run(slant(), 3, &[backwards, input(&height, 0)], &[output], std::ptr::null_mut()) };
        assert_eq!(failures, 0);
        for (slant_nm, ground_nm) in slants.iter().zip([30.0, 20.0, 10.0]) {
            assert_eq!(*slant_nm, lubberline::plain::slant_range_nm(ground_nm, 30_000.0).unwrap());
        }
    }

    #[test]
    fn an_output_may_be_an_input_and_memory_unaligned() {
        let mut bytes = [0_u8; 33];
        for (index, value) in [10.0_f64, 20.0, -5.0].iter().enumerate() {
            bytes[1 + 8 * index..9 + 8 * index].copy_from_slice(&value.to_ne_bytes());
        }
        let height = [9000.0];
        let mut status = [7; 3];
        let data = unsafe { bytes.as_mut_ptr().add(1) };
        let both = (Input { data, stride: 8 }, Output { data, stride: 8 });
        let failures =
            unsafe { run(slant(), 3, &[both.0, input(&height, 0)], &[both.1], status.as_mut_ptr()) };
        assert_eq!((failures, status[0], status[1]), (1, 0, 0));
        assert!(status[2] < 0);
        let value =
            |index: usize| f64::from_ne_bytes(bytes[1 + 8 * index..9 + 8 * index].try_into().unwrap());
        assert_eq!(value(0), lubberline::plain::slant_range_nm(10.0, 9000.0).unwrap());
        assert!(value(2).is_nan());
    }

    #[test]
    fn nothing_to_do_and_nowhere_to_write_are_fine() {
        let nowhere = Output { data: std::ptr::null_mut(), stride: 8 };
        let none = Input { data: std::ptr::null(), stride: 8 };
        assert_eq!(unsafe { run(slant(), 0, &[none, none], &[nowhere], std::ptr::null_mut()) }, 0);
        let values = [1.0];
        let some = input(&values, 0);
        assert_eq!(unsafe { run(slant(), 5, &[some, some], &[nowhere], std::ptr::null_mut()) }, 0);
        assert_eq!(
            unsafe { run(slant(), 5, &[some], &[nowhere], std::ptr::null_mut()) },
            5,
            "too few operands"
        );
    }
}
