//! What a loop over columns is.

use std::ops::{Deref, DerefMut};

/// The most points a kernel works on at a time: its columns stay in the nearest cache.
pub const ROOM: usize = 128;

/// A column of a kernel's own; where the widest vectors begin, so that none of them lies across two lines of the cache.
#[derive(Debug, Clone, Copy)]
#[repr(align(64))]
pub struct Column([f64; ROOM]);

impl Column {
    /// A value at every place.
    #[inline(always)]
    pub const fn of(value: f64) -> Self {
        Self([value; ROOM])
    }
}

impl Deref for Column {
    type Target = [f64; ROOM];

    #[inline(always)]
    fn deref(&self) -> &[f64; ROOM] {
        &self.0
    }
}

impl DerefMut for Column {
    #[inline(always)]
    fn deref_mut(&mut self) -> &mut [f64; ROOM] {
        &mut self.0
    }
}

impl<'a> IntoIterator for &'a Column {
    type Item = &'a f64;
    type IntoIter = std::slice::Iter<'a, f64>;

    #[inline(always)]
    fn into_iter(self) -> Self::IntoIter {
        self.0.iter()
    }
}

impl<'a> IntoIterator for &'a mut Column {
    type Item = &'a mut f64;
    type IntoIter = std::slice::IterMut<'a, f64>;

    #[inline(always)]
    fn into_iter(self) -> Self::IntoIter {
        self.0.iter_mut()
    }
}

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
