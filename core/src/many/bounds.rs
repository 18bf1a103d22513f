//! Whether any of many numbers is beyond a bound.

/// Collects, in its highest bit, whether a number was beyond a bound. What is no number is beyond any.
///
/// Numbers that are not negative compare as their bits do. A difference of bits and a sum of them are two operations a number and
/// any processor has them for whole vectors; a comparison that is counted takes four.
#[derive(Debug, Clone, Copy, Default)]
pub struct Beyond(u64);

impl Beyond {
    /// A number that is not negative, if it is a number, and should be no larger than the other.
    #[inline(always)]
    pub fn above(&mut self, value: f64, most: f64) {
        self.0 |= most.to_bits().wrapping_sub(value.to_bits());
    }

    /// A number that should be no less than the other, which is not negative.
    #[inline(always)]
    pub fn below(&mut self, value: f64, least: f64) {
        self.0 |= value.to_bits() | value.to_bits().wrapping_sub(least.to_bits());
    }

    /// Whether a number was.
    #[inline(always)]
    pub fn any(self) -> bool {
        self.0 >> 63 == 1
    }
}

/// The value, or no number.
// By its bits, as below: a choice of a value that comes from memory the compiler may turn into a branch, and the loop with it.
#[inline(always)]
pub fn only_if(known: bool, value: f64) -> f64 {
    f64::from_bits(value.to_bits() | u64::from(!known).wrapping_neg())
}

/// The first value or the other.
#[inline(always)]
pub fn either(is_first: bool, first: f64, other: f64) -> f64 {
    let mask = u64::from(is_first).wrapping_neg();
    f64::from_bits(first.to_bits() & mask | other.to_bits() & !mask)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_or_none() {
        assert!(only_if(true, -2.5) == -2.5 && only_if(true, f64::NAN).is_nan());
        assert!(only_if(false, -2.5).is_nan() && only_if(false, f64::INFINITY).is_nan());
        assert!(either(true, -2.5, f64::NAN) == -2.5 && either(false, f64::NAN, -2.5) == -2.5);
    }

    #[test]
    fn what_is_beyond() {
        let negative_nan = -f64::NAN;
        for value in
            [0.5, 2.0, 3.0, 7.0, f64::INFINITY, f64::NAN, negative_nan, 0.0, -1.0, -f64::INFINITY, -1e300]
        {
            let mut both = Beyond::default();
            both.below(value, 2.0);
            both.above(value, 3.0);
            assert_eq!(both.any(), !(2.0..=3.0).contains(&value), "{value}");
            let mut above = Beyond::default();
            above.above(value.abs(), 3.0);
            assert_eq!(above.any(), !(0.0..=3.0).contains(&value.abs()), "{value}");
            let mut from_zero = Beyond::default();
            from_zero.below(value, 0.0);
            from_zero.above(value, 3.0);
            assert_eq!(from_zero.any(), !(0.0..=3.0).contains(&value), "{value}");
        }
    }
}
