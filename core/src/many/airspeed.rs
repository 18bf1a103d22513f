//! True, calibrated airspeed and Mach number, each from each, at many altitudes.

use super::arithmetic::{polynomial, sum};
use super::atmosphere::Air;
use super::functions::{EXPANSION, IMPACT, exp};
use super::{Column, Kernel, pass};
use crate::air::standard::{GAS_CONSTANT, HEAT_RATIO, SEA_LEVEL_K, SEA_LEVEL_PA};

const KNOT_M_S: f64 = 1852.0 / 3600.0;
/// Impact over static pressure at Mach 1.
const SONIC: f64 = 0.892_929_158_737_854;
/// A squared speed of sound in knots, of the temperature.
const SOUND_KT2_K: f64 = HEAT_RATIO * GAS_CONSTANT / (KNOT_M_S * KNOT_M_S);
const SEA_LEVEL_SOUND_KT2: f64 = SOUND_KT2_K * SEA_LEVEL_K;

/// `(1 + 0.2 M^2)^3.5 - 1` from `M^2`, below the speed of sound.
#[inline(always)]
fn impact<const FMA: bool>(squared_mach: f64) -> f64 {
    let x = 0.2 * squared_mach;
    x * polynomial::<FMA, 10>(x, IMPACT)
}

/// The inverse of [`impact`], of what is not below zero: the seventh root of `1 + q` is `1 + e`, and `M^2 = 5 ((1 + e)^2 - 1)`. NaN above the speed of sound.
#[inline(always)]
fn squared_mach<const FMA: bool>(impact: f64) -> f64 {
    let e = impact * polynomial::<FMA, 20>(impact, EXPANSION);
    let squared = 5.0 * sum::<FMA>(e, e, 2.0 * e);
    if impact <= SONIC { squared } else { f64::NAN }
}

/// What is asked of an airspeed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Conversion {
    TrueFromCalibrated,
    MachFromCalibrated,
    CalibratedFromTrue,
}

/// Airspeeds in knots and altitudes, no more than [`super::ROOM`], and where what is asked of them goes.
///
/// NaN asks for the exact path: whatever is outside its range, and speeds above that of sound, where the pitot tube stands behind
/// a shock.
pub struct Airspeed<'a> {
    pub conversion: Conversion,
    pub airspeed_kt: &'a [f64],
    pub pressure_altitude_ft: &'a [f64],
    /// None counts as zero, which is right for what the temperature has no part in.
    pub isa_deviation_k: Option<&'a [f64]>,
    pub converted: &'a mut [f64],
}

impl Kernel for Airspeed<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        let air = Air::at::<FMA>(self.pressure_altitude_ft);
        // Squared speed of sound, NaN for a deviation outside its range.
        let mut squared_sounds: Column = Column::of(SEA_LEVEL_SOUND_KT2);
        if let Some(deviations_k) = self.isa_deviation_k {
            pass!(deviation_k in deviations_k, standard_k in &air.temperature_k, squared_sound in &mut squared_sounds, => {
                let sound_kt2 = SOUND_KT2_K * (*standard_k + *deviation_k);
                *squared_sound = if deviation_k.abs() <= 150.0 { sound_kt2 } else { f64::NAN };
            });
        }
        let mut impacts: Column = Column::of(0.0);
        if self.conversion == Conversion::CalibratedFromTrue {
            pass!(airspeed_kt in self.airspeed_kt, squared_sound in &squared_sounds, base_pa in &air.base_pa,
                logarithm in &air.logarithm, impact_here in &mut impacts, => {
                let squared_mach = *airspeed_kt * *airspeed_kt / *squared_sound;
                let vouched = (*airspeed_kt >= 0.0) & (squared_mach <= 1.0);
                let over_sea_level = *base_pa * exp::<FMA>(*logarithm) * (1.0 / SEA_LEVEL_PA);
                *impact_here = if vouched { impact::<FMA>(squared_mach) * over_sea_level } else { f64::NAN };
            });
            squared_sounds = Column::of(SEA_LEVEL_SOUND_KT2);
        } else {
            pass!(airspeed_kt in self.airspeed_kt, base_pa in &air.base_pa, logarithm in &air.logarithm,
                impact_here in &mut impacts, => {
                let squared_mach = *airspeed_kt * *airspeed_kt * (1.0 / SEA_LEVEL_SOUND_KT2);
                let vouched = (*airspeed_kt >= 0.0) & (squared_mach <= 1.0);
                let over_static = SEA_LEVEL_PA / *base_pa * exp::<FMA>(-*logarithm);
                *impact_here = if vouched { impact::<FMA>(squared_mach) * over_static } else { f64::NAN };
            });
        }
        if self.conversion == Conversion::MachFromCalibrated {
            squared_sounds = Column::of(1.0);
        }
        pass!(impact_here in &impacts, squared_sound in &squared_sounds, converted in self.converted, => {
            *converted = (squared_mach::<FMA>(*impact_here) * *squared_sound).sqrt();
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain;

    type Single = fn(f64, f64, f64) -> Result<f64, crate::Error>;

    /// The largest difference from single calls, of the value, and how many points were answered.
    fn compared<const FMA: bool>(conversion: Conversion, single: Single) -> (f64, u32) {
        let (mut worst, mut answered) = (0.0_f64, 0);
        for step in 0..200_000_u32 {
            let part = |factor: f64| (f64::from(step) * factor).fract();
            let slow = if step % 9 == 0 { 10_f64.powf(-6.0 * part(0.438_579_021_4)) } else { 1.0 };
            let airspeed_kt = [700.0 * slow * part(0.618_033_988_7)];
            let altitude_ft =
                [if step % 3 == 0 { 278_888.0 } else { 61_000.0 } * part(0.754_877_666_2) - 16_420.0];
            let deviation_k = [320.0 * part(0.569_840_290_9) - 160.0];
            let mut converted = [0.0];
            let isa_deviation_k = (conversion != Conversion::MachFromCalibrated).then_some(&deviation_k[..]);
            Airspeed {
                conversion,
                airspeed_kt: &airspeed_kt,
                pressure_altitude_ft: &altitude_ft,
                isa_deviation_k,
                converted: &mut converted,
            }
            .run::<FMA>();
            if converted[0].is_nan() {
                continue;
            }
            let single = single(airspeed_kt[0], altitude_ft[0], deviation_k[0]).unwrap();
            let off = if single == converted[0] { 0.0 } else { (converted[0] / single - 1.0).abs() };
            assert!(off.is_finite(), "{conversion:?} {airspeed_kt:?} {altitude_ft:?}: {single}");
            worst = worst.max(off);
            answered += 1;
        }
        (worst, answered)
    }

    #[test]
    fn as_single_calls_to_rounding() {
        let conversions: [(Conversion, Single); 3] = [
            (Conversion::TrueFromCalibrated, plain::tas_from_cas_kt),
            (Conversion::MachFromCalibrated, |speed, altitude, _| plain::mach_from_cas(speed, altitude)),
            (Conversion::CalibratedFromTrue, plain::cas_from_tas_kt),
        ];
        for (conversion, single) in conversions {
            let (fused, answered) = compared::<true>(conversion, single);
            let (plain, _) = compared::<false>(conversion, single);
            println!(
                "{conversion:?}: {fused:e}, without fused multiplication {plain:e} of the value; {answered}"
            );
            assert!(fused < 1e-14 && plain < 1e-14, "{conversion:?} {fused:e} {plain:e}");
            assert!(answered > 90_000, "{answered}");
        }
    }
}
