//! The radii of many steady turns.

use super::functions::sin_cos_deg;
use super::{Kernel, pass};
use crate::turn::STANDARD_GRAVITY_M_S2;

const MILE_M: f64 = 1852.0;
const KNOT_M_S: f64 = MILE_M / 3600.0;
/// A squared knot over standard gravity, in miles.
pub const KNOT2_NM: f64 = KNOT_M_S * KNOT_M_S / STANDARD_GRAVITY_M_S2 / MILE_M;

/// Airspeeds and banks, and where the radii go: NaN outside their ranges.
pub struct TurnRadius<'a> {
    pub true_airspeed_kt: &'a [f64],
    pub bank_deg: &'a [f64],
    pub turn_radius_nm: &'a mut [f64],
}

impl Kernel for TurnRadius<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        pass!(airspeed_kt in self.true_airspeed_kt, bank_deg in self.bank_deg, radius_nm in self.turn_radius_nm, => {
            let (sine, cosine) = sin_cos_deg::<FMA>(*bank_deg);
            let radius = KNOT2_NM * *airspeed_kt * *airspeed_kt * cosine / sine;
            let vouched = (*airspeed_kt > 0.0) & (*airspeed_kt <= 5000.0) & (*bank_deg > 0.0) & (*bank_deg < 90.0);
            *radius_nm = if vouched { radius } else { f64::NAN };
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
            let airspeed = [5000.0 * (1.0 - part(0.618_033_988_7))];
            let small = if step % 7 == 0 { 10_f64.powf(-9.0 * part(0.569_840_290_9)) } else { 1.0 };
            let bank = [89.0 * small * (1.0 - part(0.754_877_666_2))];
            let mut radius = [0.0];
            TurnRadius { true_airspeed_kt: &airspeed, bank_deg: &bank, turn_radius_nm: &mut radius }
                .run::<FMA>();
            let single = crate::plain::turn_radius_nm(airspeed[0], bank[0]).unwrap();
            // The last bit of a steep bank counts as often as the tangent magnifies it.
            let off = (radius[0] / single - 1.0).abs() * bank[0].to_radians().cos();
            assert!(off.is_finite(), "{airspeed:?} {bank:?}");
            worst = worst.max(off);
        }
        worst
    }

    #[test]
    fn as_single_calls_to_rounding() {
        let (fused, plain) = (compared::<true>(), compared::<false>());
        println!("turn radius: {fused:e}, without fused multiplication {plain:e} of the value");
        assert!(fused < 2e-15 && plain < 2e-15);
    }
}
