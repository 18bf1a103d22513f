//! What a loop over columns is.

/// The most points a kernel works on at a time: its columns stay in the nearest cache.
pub const ROOM: usize = 128;

/// A column of a kernel's own.
pub type Column = [f64; ROOM];

/// A loop over columns.
pub trait Kernel {
    /// Runs it; with fused multiplications if the processor has them. To be inlined always.
    fn run<const FMA: bool>(self);
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
