//! Whether any of many numbers is beyond a bound.

/// Collects, in its highest bit, whether a number was outside its bounds; what is no number is outside of any.
///
/// Numbers that are not negative compare as their bits do. Differences of bits and their sum any processor has for whole vectors; a
/// comparison that is counted takes twice as many operations.
#[derive(Debug, Clone, Copy, Default)]
pub struct Beyond(u64);

impl Beyond {
    /// A number and its bounds, which are not negative: of a number with a minus sign it says that it is outside.
    #[inline(always)]
    pub fn look(&mut self, value: f64, least: f64, most: f64) {
        let (value, least, most) = (value.to_bits(), least.to_bits(), most.to_bits());
        self.0 |= value | value.wrapping_sub(least) | most.wrapping_sub(value);
    }

    /// A number of either sign and what its size may be.
    #[inline(always)]
    pub fn look_at_size(&mut self, value: f64, most: f64) {
        self.0 |= most.to_bits().wrapping_sub(value.abs().to_bits());
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
        for (least, most) in [(2.0_f64, 3.0_f64), (0.0, 90.0), (1e-14, 1e300)] {
            let edges = [least, most].map(|edge| [edge.next_down(), edge, edge.next_up()]);
            let others = [5e-324, 0.0, 2.5, 1e300, f64::MAX, f64::INFINITY, f64::NAN];
            for value in edges.into_iter().flatten().chain(others).flat_map(|value| [value, -value]) {
                let mut beyond = Beyond::default();
                beyond.look(value, least, most);
                let outside = value.is_sign_negative() || !(least..=most).contains(&value);
                assert_eq!(beyond.any(), outside, "{value} from {least} to {most}");
                let mut size = Beyond::default();
                size.look_at_size(value, most);
                assert_eq!(size.any(), !(0.0..=most).contains(&value.abs()), "{value} to {most}");
                // It stays so, whatever comes after.
                beyond.look(least, least, most);
                assert_eq!(beyond.any(), outside);
            }
        }
    }
}
