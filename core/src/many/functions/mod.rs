//! Sine, cosine, arctangent, logarithm and exponential without branches or calls.
//!
//! Each is a polynomial over a range to which its argument is reduced exactly. Accuracy in units of the last place, as the
//! tests hold them against fifty-digit values: sine, cosine and arctangent 2, logarithm and exponential 2.

#[rustfmt::skip]
mod polynomials;
#[cfg(test)]
mod tests;

use super::arithmetic::{polynomial, polynomial_by_pairs, sum};
use polynomials::{ARCTANGENT, COSINE, COSINE_OF_HALF, EXPONENTIAL, LOGARITHM, SINE, SINE_OF_HALF};
pub use polynomials::{EXPANSION, IMPACT, LOG_SECANT, LOG_SECANT_SHALLOW};

/// Added and taken away again it leaves a number rounded; its last bits are then the whole number.
const ROUNDER: f64 = 6_755_399_441_055_744.0;
/// A degree in radians.
pub const RADIAN: f64 = 0.017_453_292_519_943_295;
/// A radian in degrees.
pub const DEGREE: f64 = 57.295_779_513_082_32;

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

/// Sine and cosine of half an angle in degrees, to 90 either way: cheaper, within 2.5e-16 of the truth rather than to the last
/// place.
#[inline(always)]
pub fn sin_cos_of_half_deg<const FMA: bool>(angle_deg: f64) -> (f64, f64) {
    let [first, rest @ ..] = SINE_OF_HALF;
    let z = angle_deg * angle_deg;
    let sine = sum::<FMA>(angle_deg * z, polynomial_by_pairs::<FMA, 6>(z, rest), angle_deg * first);
    (sine, sum::<FMA>(z, polynomial_by_pairs::<FMA, 7>(z, COSINE_OF_HALF), 1.0))
}

/// Sine and cosine of an angle in degrees, to 90 either way: cheaper, within 4e-16 of the truth.
#[inline(always)]
pub fn sin_cos_of_quarter_deg<const FMA: bool>(angle_deg: f64) -> (f64, f64) {
    let (sine, cosine) = sin_cos_of_half_deg::<FMA>(angle_deg);
    // Doubled, the cosine of a small one without loss.
    let twice = sine + sine;
    (twice * cosine, sum::<FMA>(-twice, sine, 1.0))
}

/// Sine and cosine of an angle in degrees, up to 1e9 either way: cheaper, within 1e-15 of the truth.
#[inline(always)]
pub fn sin_cos_of_turn_deg<const FMA: bool>(angle_deg: f64) -> (f64, f64) {
    let turns = sum::<FMA>(angle_deg, 1.0 / 360.0, ROUNDER) - ROUNDER;
    let (sine, cosine) = sin_cos_of_quarter_deg::<FMA>(sum::<FMA>(turns, -180.0, 0.5 * angle_deg));
    // Not as above: what a sine near one is off by would count four times.
    ((sine + sine) * cosine, sum::<FMA>(cosine, cosine, -(sine * sine)))
}

/// A direction on its way: the whole eighths of a circle next to it, in degrees, and the tangent of what it has over them.
///
/// In a loop of many points it is found in one pass and ended in another: what waits for the quotient would else keep the processor
/// from beginning the next points.
#[derive(Debug, Clone, Copy)]
pub struct Direction {
    pub eighths_deg: f64,
    pub over: f64,
}

impl Direction {
    /// That of a point, -180 to 180, counted from the first axis to the second; no number at the origin.
    #[inline(always)]
    pub fn of<const FMA: bool>(along_second: f64, along_first: f64) -> Self {
        Self::counted::<FMA, true>(along_second, along_first)
    }

    /// The same where what is along the first axis is not negative.
    #[inline(always)]
    pub fn of_slope<const FMA: bool>(along_second: f64, along_first: f64) -> Self {
        Self::counted::<FMA, false>(along_second, along_first)
    }

    /// `BEHIND`: what is along the first axis may be negative.
    #[inline(always)]
    fn counted<const FMA: bool, const BEHIND: bool>(along_second: f64, along_first: f64) -> Self {
        const SIGN: u64 = 1 << 63;
        let (second, first) = (along_second.abs(), along_first.abs());
        let (low, high) = if second < first { (second, first) } else { (first, second) };
        // Ones and zeros multiply where a choice would cost more.
        let steep = low > 0.414_213_562_373_095_03 * high;
        let one_if_steep = if steep { 1.0 } else { 0.0 };
        let below = sum::<FMA>(-one_if_steep, high, low);
        let above = sum::<FMA>(one_if_steep, low, high);
        let (axis, side): (f64, u64) = if second < first { (0.0, 0) } else { (90.0, SIGN) };
        let eighths = (axis - if steep { 45.0 } else { 0.0 }).abs();
        let behind: f64 = if BEHIND && along_first < 0.0 { 180.0 } else { 0.0 };
        let eighths = if BEHIND { (behind - eighths).abs() } else { eighths };
        let turned = if BEHIND { along_first.to_bits() } else { 0 };
        let side = (side ^ turned ^ along_second.to_bits()) & SIGN;
        Self {
            eighths_deg: eighths.copysign(along_second),
            over: f64::from_bits(below.to_bits() ^ side) / above,
        }
    }

    #[inline(always)]
    pub fn deg<const FMA: bool>(self) -> f64 {
        let z = self.over * self.over;
        let slope = sum::<FMA>(z, polynomial_by_pairs::<FMA, 11>(z, ARCTANGENT), DEGREE);
        sum::<FMA>(self.over, slope, self.eighths_deg)
    }
}

/// The direction of a point in degrees, counted from the first axis to the second, -180 to 180; NaN at the origin.
#[inline(always)]
pub fn atan2_deg<const FMA: bool>(along_second: f64, along_first: f64) -> f64 {
    Direction::of::<FMA>(along_second, along_first).deg::<FMA>()
}

/// [`atan2_deg`] where what is along the first axis is not negative.
#[inline(always)]
pub fn slope_deg<const FMA: bool>(along_second: f64, along_first: f64) -> f64 {
    Direction::of_slope::<FMA>(along_second, along_first).deg::<FMA>()
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
