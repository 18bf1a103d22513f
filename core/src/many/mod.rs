//! Many points at once: loops without branches, which the compiler turns into vector instructions.
//!
//! A kernel computes whole columns, each point from itself alone. It is written once and compiled for several processors:
//! for the one the library was built for, and for those whose [`Instructions`] are found as the program runs. Only fused
//! multiplication makes a difference to an answer, and that in rounding. Calls to the system's mathematics would keep a
//! loop from being vectorised, hence the [`functions`] here.

pub mod airspeed;
pub mod arithmetic;
pub mod atmosphere;
pub mod functions;
pub mod geodesic;
#[cfg(all(target_arch = "x86_64", not(feature = "baseline")))]
mod instructions;
pub mod lead;
pub mod observe;
pub mod slant_range;
pub mod turn_radius;
pub mod wind_triangle;

#[cfg(all(target_arch = "x86_64", not(feature = "baseline")))]
use instructions::Instructions;

/// The most points a kernel works on at a time: its columns stay in the nearest cache.
pub const ROOM: usize = 128;

/// A column of a kernel's own.
pub type Column = [f64; ROOM];

/// A loop over columns.
pub trait Kernel {
    /// Runs it; with fused multiplications if the processor has them. To be inlined always.
    fn run<const FMA: bool>(self);
}

/// Runs a kernel by the best instructions there are, or by those asked for.
// The one place of the library that needs the word: the calls of functions compiled for another processor.
#[allow(unsafe_code)]
pub fn run<K: Kernel>(kernel: K) {
    #[cfg(all(target_arch = "x86_64", not(feature = "baseline")))]
    {
        #[target_feature(enable = "avx2,fma")]
        fn four<K: Kernel>(kernel: K) {
            kernel.run::<true>();
        }
        #[target_feature(enable = "avx512f,avx512dq,avx512bw,avx512vl,avx2,fma")]
        fn eight<K: Kernel>(kernel: K) {
            kernel.run::<true>();
        }
        match Instructions::best() {
            // SAFETY: the processor has been found to have these instructions.
            Instructions::Eight => return unsafe { eight(kernel) },
            // SAFETY: as above.
            Instructions::Four => return unsafe { four(kernel) },
            Instructions::Baseline => {}
        }
    }
    kernel.run::<{ cfg!(target_arch = "aarch64") }>();
}
/// `pass!(x in column, ... => { body })`: the body for each point of columns of one length.
macro_rules! pass {
    (@ [$pattern:pat] [$columns:expr] => $body:block) => { for $pattern in $columns $body };
    (@ [$pattern:pat] [$columns:expr] $name:ident in $column:expr, $($rest:tt)*) => {
        pass!(@ [($pattern, $name)] [$columns.zip($column)] $($rest)*)
    };
    ($name:ident in $column:expr, $($rest:tt)*) => {
        pass!(@ [$name] [IntoIterator::into_iter($column)] $($rest)*)
    };
}
pub(crate) use pass;
