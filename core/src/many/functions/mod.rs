//! Sine, cosine, arctangent, logarithm and exponential without branches or calls.
//!
//! Each is a polynomial over a range to which its argument is reduced exactly. Accuracy in units of the last place, as the
//! tests hold them against fifty-digit values: sine, cosine and arctangent 2, logarithm and exponential 2.

#[rustfmt::skip]
mod polynomials;
#[cfg(test)]
mod tests;

use super::arithmetic::{polynomial, sum};
use polynomials::{ARCTANGENT, COSINE, EXPONENTIAL, LOGARITHM, SINE};
pub use polynomials::{EXPANSION, IMPACT, LOG_SECANT};

/// Added and taken away again it leaves a number rounded; its last bits are then the whole number.
const ROUNDER: f64 = 6_755_399_441_055_744.0;
/// A degree in radians, and what its rounding leaves.
const RADIAN: f64 = 0.017_453_292_519_943_295;
const RADIAN_REST: f64 = 2.948_652_250_003_154e-19;
/// A radian in degrees, and what its rounding leaves.
const DEGREE: f64 = 57.295_779_513_082_32;
const DEGREE_REST: f64 = -1.987_849_567_057_628_4e-15;

/// Sine and cosine of an angle in degrees, up to 1e9 either way.
#[inline(always)]
pub fn sin_cos_deg<const FMA: bool>(angle_deg: f64) -> (f64, f64) {
    let shifted = angle_deg * (1.0 / 90.0) + ROUNDER;
    let quarter = shifted.to_bits();
    let rest_deg = angle_deg - 90.0 * (shifted - ROUNDER);
    let x = rest_deg * RADIAN;
    // What the product lost; without fused multiplication it cannot be had, and half a unit more is lost.
    let low = if FMA { rest_deg.mul_add(RADIAN, -x) + rest_deg * RADIAN_REST } else { 0.0 };
    let z = x * x;
    let sine = x + sum::<FMA>(x * z, polynomial::<FMA, 6>(z, SINE), low);
    let half = 0.5 * z;
    let near_one = 1.0 - half;
    let rest = sum::<FMA>(z * z, polynomial::<FMA, 6>(z, COSINE), (1.0 - near_one) - half - x * low);
    let cosine = near_one + rest;
    let odd = quarter & 1 != 0;
    let (first, second) = if odd { (cosine, sine) } else { (sine, cosine) };
    let sign_of_first = (quarter & 2) << 62;
    let sign_of_second = (quarter.wrapping_add(1) & 2) << 62;
    (f64::from_bits(first.to_bits() ^ sign_of_first), f64::from_bits(second.to_bits() ^ sign_of_second))
}

/// Sine and cosine of an angle in radians, up to an eighth of a circle either way.
#[inline(always)]
pub fn sin_cos_within<const FMA: bool>(x: f64) -> (f64, f64) {
    let z = x * x;
    let half = 0.5 * z;
    let near_one = 1.0 - half;
    let rest = sum::<FMA>(z * z, polynomial::<FMA, 6>(z, COSINE), (1.0 - near_one) - half);
    (sum::<FMA>(x * z, polynomial::<FMA, 6>(z, SINE), x), near_one + rest)
}

/// The direction of a point in degrees, counted from the first axis to the second, -180 to 180; NaN at the origin.
#[inline(always)]
pub fn atan2_deg<const FMA: bool>(along_second: f64, along_first: f64) -> f64 {
    let (second, first) = (along_second.abs(), along_first.abs());
    let (low, high) = if second < first { (second, first) } else { (first, second) };
    let steep = low > 0.414_213_562_373_095_03 * high;
    let (above, below) = if steep { (low - high, low + high) } else { (low, high) };
    let u = above / below;
    let z = u * u;
    let rest = sum::<FMA>(u * z, polynomial::<FMA, 11>(z, ARCTANGENT), u * DEGREE_REST);
    let within = sum::<FMA>(u, DEGREE, rest);
    let octant = if steep { 45.0 + within } else { within };
    let quadrant = if second < first { octant } else { 90.0 - octant };
    let half = if along_first < 0.0 { 180.0 - quadrant } else { quadrant };
    half.copysign(along_second)
}

/// Natural logarithm of a normal number above zero.
#[inline(always)]
pub fn ln<const FMA: bool>(x: f64) -> f64 {
    const LN_2_HIGH: f64 = 0.693_147_180_369_123_8;
    const LN_2_LOW: f64 = 1.908_214_929_270_587_7e-10;
    // Exponent such that the rest is between the roots of a half and of two.
    let bits = x.to_bits();
    let shifted = bits.wrapping_sub(0x3fe6_a09e_667f_3bcd);
    let exponent_bits = shifted & 0xfff0_0000_0000_0000;
    let mantissa = f64::from_bits(bits.wrapping_sub(exponent_bits));
    // The exponent as a number, by the same trick as above: no conversion of whole numbers, which AVX2 lacks.
    let biased = (exponent_bits >> 52).wrapping_add(1024) & 0xfff;
    let exponent = f64::from_bits(0x4330_0000_0000_0000 | biased) - 4_503_599_627_370_496.0 - 1024.0;
    let above = mantissa - 1.0;
    let u = above / (mantissa + 1.0);
    let z = u * u;
    // 2 atanh u = above - u (above - 2 atanh's rest): the first term is exact.
    let half = 0.5 * above * above;
    let tail = u * (half + z * polynomial::<FMA, 7>(z, LOGARITHM));
    let rest = sum::<FMA>(exponent, LN_2_LOW, tail - half);
    sum::<FMA>(exponent, LN_2_HIGH, above + rest)
}

/// Exponential of a number between -700 and 700.
#[inline(always)]
pub fn exp<const FMA: bool>(x: f64) -> f64 {
    const LN_2_HIGH: f64 = 0.693_147_180_369_123_8;
    const LN_2_LOW: f64 = 1.908_214_929_270_587_7e-10;
    let shifted = x * std::f64::consts::LOG2_E + ROUNDER;
    let doublings = shifted - ROUNDER;
    let high = sum::<FMA>(-doublings, LN_2_HIGH, x);
    let r = sum::<FMA>(-doublings, LN_2_LOW, high);
    let grown = 1.0 + (r + r * r * polynomial::<FMA, 10>(r, EXPONENTIAL));
    f64::from_bits(grown.to_bits().wrapping_add(shifted.to_bits() << 52))
}
