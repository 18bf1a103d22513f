//! Sums of products, fused where the processor can.

/// `x y + z`.
#[inline(always)]
pub fn sum<const FMA: bool>(x: f64, y: f64, z: f64) -> f64 {
    if FMA { x.mul_add(y, z) } else { x * y + z }
}

/// A polynomial by its coefficients, the constant first.
#[inline(always)]
pub fn polynomial<const FMA: bool, const N: usize>(x: f64, coefficients: [f64; N]) -> f64 {
    coefficients.into_iter().rev().fold(0.0, |value, coefficient| sum::<FMA>(x, value, coefficient))
}
