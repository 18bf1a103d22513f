//! An operand in memory that is not ours: a pointer, and the bytes from one value to the next.

use std::ptr;

/// Bytes of a value.
const SIZE: isize = size_of::<f64>().cast_signed();

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

impl Input {
    /// Whether its values are as those of a slice are.
    pub(crate) fn is_slice(self) -> bool {
        self.stride == SIZE && self.data.cast::<f64>().is_aligned() && !self.data.is_null()
    }

    /// Where a value is.
    pub(crate) fn address(self, index: usize) -> *const u8 {
        at(self.data, self.stride, index)
    }

    /// One value.
    ///
    /// # Safety
    /// It must be readable.
    pub(crate) unsafe fn read(self, index: usize) -> f64 {
        // SAFETY: the caller vouches for the value; alignment is not assumed.
        unsafe { at(self.data, self.stride, index).cast::<f64>().read_unaligned() }
    }

    /// Copies `count` values, from the value at `start` on, to `column`.
    ///
    /// # Safety
    /// Those values must be readable, and `column` have room for them.
    pub(crate) unsafe fn gather(self, start: usize, column: *mut f64, count: usize) {
        // SAFETY: the caller vouches for the values and the room; alignment is not assumed of the former.
        unsafe {
            match self.stride {
                SIZE => {
                    let first = at(self.data, self.stride, start);
                    ptr::copy_nonoverlapping(first, column.cast(), count * size_of::<f64>());
                }
                _ => (0..count).for_each(|index| column.add(index).write(self.read(start + index))),
            }
        }
    }
}

impl Output {
    /// Whether its values are as those of a slice are.
    pub(crate) fn is_slice(self) -> bool {
        self.stride == SIZE && self.data.cast::<f64>().is_aligned() && !self.data.is_null()
    }

    /// Where a value goes.
    pub(crate) fn address(self, index: usize) -> *mut u8 {
        at(self.data, self.stride, index).cast_mut()
    }

    /// Writes one value.
    ///
    /// # Safety
    /// Unless the output goes nowhere, its place must be writable.
    pub unsafe fn write(self, index: usize, value: f64) {
        if !self.data.is_null() {
            // SAFETY: the caller vouches for the place; alignment is not assumed.
            unsafe { at(self.data, self.stride, index).cast_mut().cast::<f64>().write_unaligned(value) };
        }
    }

    /// Copies the values of `column` to where they go, the first to the place of the value at `start`.
    ///
    /// # Safety
    /// Unless the output goes nowhere, those places must be writable.
    pub(crate) unsafe fn scatter(self, start: usize, column: &[f64]) {
        // SAFETY: the caller vouches for the places; alignment is not assumed of them.
        unsafe {
            if self.stride == SIZE && !self.data.is_null() {
                let first = at(self.data, self.stride, start).cast_mut();
                ptr::copy_nonoverlapping(column.as_ptr().cast(), first, size_of_val(column));
            } else {
                column.iter().enumerate().for_each(|(index, value)| self.write(start + index, *value));
            }
        }
    }

    /// Whether its memory, from the first value to the last, and that of an operand at `data` have anything in common.
    pub(crate) fn touches(self, data: *const u8, stride: isize, count: usize) -> bool {
        let (low, high) = extent(self.data, self.stride, count);
        let (other_low, other_high) = extent(data, stride, count);
        !data.is_null() && low < other_high && other_low < high
    }

    /// Whether writing a value of this output may change a value, of an operand at `data`, that belongs to another point.
    pub(crate) fn disturbs(self, data: *const u8, stride: isize, count: usize) -> bool {
        if self.data.is_null() || count < 2 {
            return false;
        }
        if !self.touches(data, stride, count) {
            return false;
        }
        if stride != self.stride || stride.unsigned_abs() < size_of::<f64>() {
            return true;
        }
        // Values in step: each in its own place, or apart within the stride, as the members of structures are.
        let apart = data.addr().wrapping_sub(self.data.addr()).cast_signed();
        let within = apart.rem_euclid(stride).unsigned_abs();
        apart != 0 && (within < size_of::<f64>() || within > stride.unsigned_abs() - size_of::<f64>())
    }
}

/// The first address of an operand and the one behind its last byte.
fn extent(data: *const u8, stride: isize, count: usize) -> (usize, usize) {
    let (one, other) = (data.addr(), at(data, stride, count - 1).addr());
    (one.min(other), one.max(other).saturating_add(size_of::<f64>()))
}

/// The address of a value. The arithmetic wraps, so that an operand of no points has no address to be wrong.
fn at(data: *const u8, stride: isize, index: usize) -> *const u8 {
    data.wrapping_offset(stride.wrapping_mul(index.cast_signed()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_disturbs_what() {
        let mut memory = [0_u8; 400];
        let base = memory.as_mut_ptr();
        let place = |offset: usize| base.wrapping_add(offset);
        let disturbs = |output: (usize, isize), operand: (usize, isize), count| {
            Output { data: place(output.0), stride: output.1 }.disturbs(place(operand.0), operand.1, count)
        };
        assert!(!disturbs((0, 8), (0, 8), 10), "in place");
        assert!(disturbs((8, 8), (0, 8), 10), "shifted by one");
        assert!(!disturbs((8, 8), (0, 8), 1), "a single point");
        assert!(!disturbs((16, 24), (0, 24), 10), "members of a structure");
        assert!(!disturbs((0, 24), (16, 24), 10), "members the other way round");
        assert!(disturbs((20, 24), (0, 24), 10), "members that overlap");
        assert!(disturbs((24, 24), (0, 24), 10), "the next structure");
        assert!(!disturbs((216, -24), (216, -24), 10), "in place, backwards");
        assert!(disturbs((72, -8), (0, 8), 10), "backwards over what is read forwards");
        assert!(disturbs((0, 0), (0, 0), 10), "one place for all");
        assert!(disturbs((0, 0), (0, 8), 10), "a place that is read once");
        assert!(!disturbs((200, 8), (0, 8), 10), "apart");
        assert!(!disturbs((80, 8), (0, 0), 10), "one value for all, elsewhere");
        let nowhere = Output { data: ptr::null_mut(), stride: 8 };
        assert!(!nowhere.disturbs(base, 8, 10));
    }
}
