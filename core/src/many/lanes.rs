//! A few points side by side, for a loop over terms that all of them share.

use super::arithmetic::sum;

/// Points in a group: two of the widest vectors, which hides how long a product takes.
pub const WIDTH: usize = 8;

/// One number for each point of a group.
#[derive(Debug, Clone, Copy)]
pub struct Lanes(pub [f64; WIDTH]);

impl Lanes {
    #[inline(always)]
    pub fn of(value: f64) -> Self {
        Self([value; WIDTH])
    }

    #[inline(always)]
    fn each(mut self, other: Self, function: impl Fn(f64, f64) -> f64) -> Self {
        for (one, other) in self.0.iter_mut().zip(other.0) {
            *one = function(*one, other);
        }
        self
    }

    #[inline(always)]
    pub fn times(self, other: Self) -> Self {
        self.each(other, |one, other| one * other)
    }

    #[inline(always)]
    pub fn less(self, other: Self) -> Self {
        self.each(other, |one, other| one - other)
    }

    /// `self + x y`.
    #[inline(always)]
    pub fn plus<const FMA: bool>(mut self, x: Self, y: Self) -> Self {
        for ((value, x), y) in self.0.iter_mut().zip(x.0).zip(y.0) {
            *value = sum::<FMA>(x, y, *value);
        }
        self
    }

    /// `self - x y`.
    #[inline(always)]
    pub fn minus<const FMA: bool>(mut self, x: Self, y: Self) -> Self {
        for ((value, x), y) in self.0.iter_mut().zip(x.0).zip(y.0) {
            *value = sum::<FMA>(-x, y, *value);
        }
        self
    }
}
