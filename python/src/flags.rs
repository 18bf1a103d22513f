//! The processor's floating-point flags, by which a NumPy loop says that a value was invalid.
//!
//! The values of the flags differ from processor to processor, so none is named here: the whole environment is kept and
//! put back, and the one flag is raised by an operation that is invalid.

use std::ffi::c_int;
use std::hint::black_box;
use std::mem::MaybeUninit;

/// At least as large as C's `fenv_t` anywhere (32 bytes on x86-64, 8 or 16 elsewhere).
#[repr(C, align(16))]
struct Environment([u8; 128]);

unsafe extern "C" {
    fn fegetenv(environment: *mut Environment) -> c_int;
    fn fesetenv(environment: *const Environment) -> c_int;
}

/// The flags as they were at a moment.
pub struct Saved(MaybeUninit<Environment>);

impl Saved {
    /// The flags as they are.
    pub fn now() -> Self {
        let mut environment = MaybeUninit::zeroed();
        // SAFETY: the memory is large enough for what C writes.
        unsafe { fegetenv(environment.as_mut_ptr()) };
        Self(environment)
    }

    /// Makes the flags what they were.
    pub fn restore(&self) {
        // SAFETY: `now` filled the memory.
        unsafe { fesetenv(self.0.as_ptr()) };
    }
}

/// Raises the flag for an invalid operation.
pub fn raise_invalid() {
    black_box(black_box(f64::INFINITY) - black_box(f64::INFINITY));
}
