//! Sums of products, fused where the processor can.

/// `x y + z`.
#[inline(always)]
pub fn sum<const FMA: bool>(x: f64, y: f64, z: f64) -> f64 {
    if FMA { x.mul_add(y, z) } else { x * y + z }
}

/// A polynomial by its coefficients, the constant first.
#[inline(always)]
pub fn polynomial<const FMA: bool, const N: usize>(x: f64, coefficients: [f64; N]) -> f64 {
    // From the last one on, not from zero: that product could not be left out, since x may be no number.
    let mut downwards = coefficients.into_iter().rev();
    let last = downwards.next().unwrap_or(0.0);
    downwards.fold(last, |value, coefficient| sum::<FMA>(x, value, coefficient))
}
