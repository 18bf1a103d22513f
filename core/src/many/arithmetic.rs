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

/// [`polynomial`] by pairs of its terms: a product more, and half as long from the first step to the last, for a loop that has
/// nothing else to do meanwhile.
#[inline(always)]
pub fn polynomial_by_pairs<const FMA: bool, const N: usize>(x: f64, coefficients: [f64; N]) -> f64 {
    let square = x * x;
    let mut pairs = coefficients.chunks(2).rev().map(|pair| match pair {
        [first, second] => sum::<FMA>(x, *second, *first),
        [first] => *first,
        _ => 0.0,
    });
    let last = pairs.next().unwrap_or(0.0);
    pairs.fold(last, |value, pair| sum::<FMA>(square, value, pair))
}
