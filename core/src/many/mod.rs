//! Many points at once: loops without branches, which the compiler turns into vector instructions.
//!
//! A kernel computes whole columns, each point from itself alone. It is written once and compiled twice: for the
//! processor the library was built for, and for one with AVX2 and fused multiplication, which is asked for as the program
//! runs. The two differ in rounding only. Calls to the system's mathematics would keep a loop from being vectorised, hence
//! the [`functions`] here.

pub mod airspeed;
pub mod arithmetic;
pub mod atmosphere;
pub mod functions;
pub mod geodesic;
pub mod lead;
pub mod observe;
pub mod slant_range;
pub mod turn_radius;
pub mod wind_triangle;

/// The most points a kernel works on at a time: its columns stay in the nearest cache.
pub const ROOM: usize = 128;

/// A column of a kernel's own.
pub type Column = [f64; ROOM];

/// A loop over columns.
pub trait Kernel {
    /// Runs it; with fused multiplications if the processor has them. To be inlined always.
    fn run<const FMA: bool>(self);
}

/// Runs a kernel by the best instructions there are.
// The one place of the library that needs the word: the call of a function compiled for another processor.
#[allow(unsafe_code)]
pub fn run<K: Kernel>(kernel: K) {
    #[cfg(all(target_arch = "x86_64", not(feature = "baseline")))]
    {
        #[target_feature(enable = "avx2,fma")]
        fn wide<K: Kernel>(kernel: K) {
            kernel.run::<true>();
        }
        if std::arch::is_x86_feature_detected!("avx2") && std::arch::is_x86_feature_detected!("fma") {
            // SAFETY: the processor has just been found to have these instructions.
            return unsafe { wide(kernel) };
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
