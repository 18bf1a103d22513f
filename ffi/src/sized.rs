//! Structures that begin with their size, so that a program and a library of different ages understand each other.
//!
//! They grow at their ends, by eight bytes or more at a time: a new code takes eight too, so that nothing new lies in what was
//! padding before and an old caller never set. The header says what follows from that for the caller.

use std::panic::{AssertUnwindSafe, catch_unwind};

use crate::generated::{LUBBER_ERROR_INTERNAL, LUBBER_ERROR_STRUCT, LUBBER_OK};

/// The most bytes a structure may have, known here or not: what says it has more was never set.
const MOST: usize = 4096;

/// Each byte of an answer that there is not: all of them together are a NaN, or the code -1.
pub(crate) const NO_ANSWER: u8 = 0xFF;

/// A structure that can grow.
///
/// # Safety
/// It is `repr(C)`, its first field is its size as a `usize`, and any bytes are a value of it. From [`Grows::LEAST`] bytes on,
/// every eighth one begins a field or ends the structure.
pub(crate) unsafe trait Grows: Copy {
    /// The fewest bytes that are of use: as far as the last field that has no usual value.
    const LEAST: usize;

    /// Whether a header may have given it this size: to a boundary of fields, or as far as some newer header goes.
    fn is_size(size: usize) -> bool {
        let whole = size_of::<Self>();
        if size > whole {
            return size <= MOST && size.is_multiple_of(align_of::<Self>());
        }
        size == whole || size.checked_sub(Self::LEAST).is_some_and(|more| more.is_multiple_of(8))
    }
}

/// The size that a caller's structure says it has; none if it is null or that is no size.
///
/// # Safety
/// It must be null or begin with a readable size.
pub(crate) unsafe fn size<T: Grows>(structure: *const T) -> Option<usize> {
    if structure.is_null() {
        return None;
    }
    // SAFETY: the caller vouches for it; a size is what every such structure begins with.
    let size = unsafe { structure.cast::<usize>().read() };
    T::is_size(size).then_some(size)
}

/// Reads a caller's structure, with the usual values for what it lacks. None if it is null, of no known size, or sets something
/// that is not known here.
///
/// # Safety
/// It must be null or readable as far as its size says.
pub(crate) unsafe fn read<T: Grows>(structure: *const T, usual: T) -> Option<T> {
    // SAFETY: the caller vouches for as many bytes as the size says.
    unsafe {
        let size = size(structure)?;
        let known = size.min(size_of::<T>());
        let bytes: *const u8 = structure.cast();
        if (known..size).any(|index| bytes.add(index).read() != 0) {
            return None;
        }
        let mut whole = usual;
        (&raw mut whole).cast::<u8>().copy_from_nonoverlapping(bytes, known);
        Some(whole)
    }
}

/// Sets a caller's structure of a size to the usual values, what is not known here to zero.
///
/// # Safety
/// It must be null (a failure) or have room for `size` bytes.
pub(crate) unsafe fn init<T: Grows>(structure: *mut T, size: usize, usual: &T) -> i32 {
    if structure.is_null() || !T::is_size(size) {
        return LUBBER_ERROR_STRUCT;
    }
    // SAFETY: the caller vouches for the room.
    unsafe { fill(structure, size, usual, 0) };
    LUBBER_OK
}

/// Computes an answer and writes it into the caller's structure as far as that reaches; what there is no answer for is NaN, a
/// code -1. Nothing is computed or written if the structure is null or of no known size.
///
/// # Safety
/// It must be null (a failure) or have room for as many bytes as its size says.
pub(crate) unsafe fn answer<T: Grows>(structure: *mut T, compute: impl FnOnce() -> Result<T, i32>) -> i32 {
    // SAFETY: the caller vouches for the size and the room.
    unsafe {
        let Some(size) = size(structure) else { return LUBBER_ERROR_STRUCT };
        let status = match catch_unwind(AssertUnwindSafe(compute)) {
            Ok(Ok(answer)) => {
                fill(structure, size, &answer, NO_ANSWER);
                return LUBBER_OK;
            }
            Ok(Err(status)) => status,
            Err(_) => LUBBER_ERROR_INTERNAL,
        };
        let begin = size_of::<usize>();
        structure.cast::<u8>().add(begin).write_bytes(NO_ANSWER, size - begin);
        status
    }
}

/// Writes a structure of a size: the size, the values as far as both reach, and a byte for each beyond.
///
/// # Safety
/// There must be room for `size` bytes, no fewer than a size has.
pub(crate) unsafe fn fill<T: Grows>(structure: *mut T, size: usize, values: &T, beyond: u8) {
    let known = size.min(size_of::<T>());
    // SAFETY: the caller vouches for the room.
    unsafe {
        let bytes: *mut u8 = structure.cast();
        bytes.copy_from_nonoverlapping((&raw const *values).cast(), known);
        bytes.add(known).write_bytes(beyond, size - known);
        structure.cast::<usize>().write(size);
    }
}

/// The size of the structures in a caller's array, by its first; 0 where there is room for none. None if it is null or of no known size.
///
/// # Safety
/// As [`size`], if there is room for one.
pub(crate) unsafe fn room<T: Grows>(places: *const T, capacity: usize) -> Option<usize> {
    // SAFETY: the caller vouches for the first.
    if capacity == 0 { Some(0) } else { unsafe { size(places) } }
}

/// Writes values into a caller's array of structures of a size, as far as it reaches.
///
/// # Safety
/// There must be room for `capacity` structures of `size` bytes.
pub(crate) unsafe fn fill_array<T: Grows>(places: *mut T, size: usize, capacity: usize, values: &[T]) {
    for (index, value) in values.iter().take(capacity).enumerate() {
        // SAFETY: the caller vouches for the room.
        unsafe { fill(places.byte_add(index * size), size, value, NO_ANSWER) };
    }
}
