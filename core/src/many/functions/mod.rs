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
pub use polynomials::{EXPANSION, IMPACT, LOG_SECANT, LOG_SECANT_SHALLOW};

/// Added and taken away again it leaves a number rounded; its last bits are then the whole number.
const ROUNDER: f64 = 6_755_399_441_055_744.0;
/// A degree in radians.
pub const RADIAN: f64 = 0.017_453_292_519_943_295;
/// A radian in degrees, and what its rounding leaves.
pub const DEGREE: f64 = 57.295_779_513_082_32;
const DEGREE_REST: f64 = -1.987_849_567_057_628_4e-15;

/// Sine and cosine of an angle in radians, up to an eighth of a circle either way.
#[inline(always)]
pub fn sin_cos_within<const FMA: bool>(x: f64) -> (f64, f64) {
    let z = x * x;
    let sine = sum::<FMA>(x * z, polynomial::<FMA, 6>(z, SINE), x);
    let rest = sum::<FMA>(z, polynomial::<FMA, 6>(z, COSINE), -0.5);
    (sine, sum::<FMA>(z, rest, 1.0))
}

/// Sine and cosine of an angle in degrees, up to 1e9 either way.
#[inline(always)]
pub fn sin_cos_deg<const FMA: bool>(angle_deg: f64) -> (f64, f64) {
    let shifted = sum::<FMA>(angle_deg, 1.0 / 90.0, ROUNDER);
    let quarter = shifted.to_bits();
    // Exact, fused or not: both are whole multiples of the angle's last place.
    let rest_deg = sum::<FMA>(shifted - ROUNDER, -90.0, angle_deg);
    let (sine, cosine) = sin_cos_within::<FMA>(rest_deg * RADIAN);
    let odd = quarter & 1 != 0;
    let (first, second) = if odd { (cosine, sine) } else { (sine, cosine) };
    let sign_of_first = (quarter & 2) << 62;
    let sign_of_second = (quarter.wrapping_add(1) & 2) << 62;
    (f64::from_bits(first.to_bits() ^ sign_of_first), f64::from_bits(second.to_bits() ^ sign_of_second))
}

/// The nearest whole number, of a number up to 2^51.
#[inline(always)]
pub fn rounded(x: f64) -> f64 {
    (x + ROUNDER) - ROUNDER
}

/// Sine and cosine of an angle in degrees, to 90 either way: cheaper, within 4e-16 of the truth rather than to the last place.
#[inline(always)]
pub fn sin_cos_of_quarter_deg<const FMA: bool>(angle_deg: f64) -> (f64, f64) {
    let (sine, cosine) = sin_cos_within::<FMA>(angle_deg * (0.5 * RADIAN));
    doubled::<FMA>(sine, cosine)
}

/// Sine and cosine of an angle in degrees, up to 1e9 either way: cheaper, within 1e-15 of the truth.
#[inline(always)]
pub fn sin_cos_of_turn_deg<const FMA: bool>(angle_deg: f64) -> (f64, f64) {
    let turns = sum::<FMA>(angle_deg, 1.0 / 360.0, ROUNDER) - ROUNDER;
    let (sine, cosine) = sin_cos_of_quarter_deg::<FMA>(0.5 * sum::<FMA>(turns, -360.0, angle_deg));
    doubled::<FMA>(sine, cosine)
}

/// Sine and cosine of twice an angle; the cosine of a small one without loss.
#[inline(always)]
fn doubled<const FMA: bool>(sine: f64, cosine: f64) -> (f64, f64) {
    let twice = sine + sine;
    (twice * cosine, sum::<FMA>(-twice, sine, 1.0))
}

/// The direction of a point with neither coordinate negative, in degrees, 0 to 90; NaN at the origin.
#[inline(always)]
fn in_first_quadrant_deg<const FMA: bool>(second: f64, first: f64) -> f64 {
    let (low, high) = if second < first { (second, first) } else { (first, second) };
    // Ones and zeros multiply where a choice would cost more.
    let steep = low > 0.414_213_562_373_095_03 * high;
    let one_if_steep = if steep { 1.0 } else { 0.0 };
    let u = sum::<FMA>(-one_if_steep, high, low) / sum::<FMA>(one_if_steep, low, high);
    let z = u * u;
    let rest = sum::<FMA>(u * z, polynomial::<FMA, 11>(z, ARCTANGENT), u * DEGREE_REST);
    let within = sum::<FMA>(u, DEGREE, rest);
    let octant = if steep { 45.0 } else { 0.0 } + within;
    (if second < first { 0.0 } else { 90.0 } - octant).abs()
}

/// The direction of a point in degrees, counted from the first axis to the second, -180 to 180; NaN at the origin.
#[inline(always)]
pub fn atan2_deg<const FMA: bool>(along_second: f64, along_first: f64) -> f64 {
    let quadrant = in_first_quadrant_deg::<FMA>(along_second.abs(), along_first.abs());
    let half = (if along_first < 0.0 { 180.0 } else { 0.0 } - quadrant).abs();
    half.copysign(along_second)
}

/// [`atan2_deg`] where what is along the first axis is not negative.
#[inline(always)]
pub fn slope_deg<const FMA: bool>(along_second: f64, along_first: f64) -> f64 {
    in_first_quadrant_deg::<FMA>(along_second.abs(), along_first).copysign(along_second)
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
