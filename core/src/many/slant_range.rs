//! The slant ranges of many ground distances and heights.

use super::arithmetic::sum;
use super::functions::sin_cos_within;
use super::{Kernel, pass};
use crate::earth::MEAN_RADIUS_M;

const MILE_M: f64 = 1852.0;
/// Height in feet to miles, and the earth's mean radius in miles.
const MILE: f64 = 0.3048 / MILE_M;
const RADIUS_NM: f64 = MEAN_RADIUS_M / MILE_M;

/// Ground distances and heights, and where the slant ranges go.
///
/// NaN asks for the exact path: beyond a quarter of the earth's circumference, and for whatever is outside its range.
pub struct Slant<'a> {
    pub ground_distance_nm: &'a [f64],
    pub height_ft: &'a [f64],
    pub slant_range_nm: &'a mut [f64],
}

impl Kernel for Slant<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        pass!(ground_nm in self.ground_distance_nm, height_ft in self.height_ft, slant_nm in self.slant_range_nm, => {
            let (sine, _) = sin_cos_within::<FMA>(*ground_nm * (0.5 / RADIUS_NM));
            let height_nm = *height_ft * MILE;
            let across_nm2 = 4.0 * RADIUS_NM * (RADIUS_NM + height_nm) * sine * sine;
            let vouched = (*ground_nm >= 0.0) & (*ground_nm <= 5400.0) & (*height_ft >= -60_000.0)
                & (*height_ft <= 400_000.0);
            let slant = sum::<FMA>(height_nm, height_nm, across_nm2).sqrt();
            *slant_nm = if vouched { slant } else { f64::NAN };
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn compared<const FMA: bool>() -> f64 {
        let mut worst = 0.0_f64;
        for step in 0..100_000_u32 {
            let part = |factor: f64| (f64::from(step) * factor).fract();
            let ground = [5400.0 * 10_f64.powf(-8.0 * part(0.618_033_988_7))];
            let height = [460_000.0 * part(0.754_877_666_2) - 60_000.0];
            let mut slant = [0.0];
            Slant { ground_distance_nm: &ground, height_ft: &height, slant_range_nm: &mut slant }
                .run::<FMA>();
            let single = crate::plain::slant_range_nm(ground[0], height[0]).unwrap();
            let off = (slant[0] / single - 1.0).abs();
            assert!(off.is_finite(), "{ground:?} {height:?}");
            worst = worst.max(off);
        }
        worst
    }

    #[test]
    fn as_single_calls_to_rounding() {
        let (fused, plain) = (compared::<true>(), compared::<false>());
        println!("slant range: {fused:e}, without fused multiplication {plain:e} of the value");
        assert!(fused < 1e-15 && plain < 1e-15);
    }
}
