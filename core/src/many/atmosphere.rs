//! The standard atmosphere at many altitudes.

use super::arithmetic::sum;
use super::functions::{exp, ln};
use super::{Column, Kernel, pass};
use crate::air::standard::{ABOVE, GAS_CONSTANT, GRAVITY_M_S2, HEAT_RATIO, Layer, TROPOSPHERE};

const FOOT_M: f64 = 0.3048;
const KNOT_M_S: f64 = 1852.0 / 3600.0;

/// What a layer's pressure is made of: `p exp(-power ln(1 + gradient h) - fall h)`, with h from its base.
#[derive(Clone, Copy)]
struct Law {
    base_m: f64,
    base_k: f64,
    base_pa: f64,
    gradient_k_m: f64,
    power: f64,
    fall: f64,
}

impl Law {
    const fn of(layer: &Layer) -> Self {
        let even = layer.gradient_k_m == 0.0;
        Self {
            base_m: layer.base_m,
            base_k: layer.base_k,
            base_pa: layer.base_pa,
            gradient_k_m: layer.gradient_k_m,
            power: if even { 0.0 } else { GRAVITY_M_S2 / (layer.gradient_k_m * GAS_CONSTANT) },
            fall: if even { GRAVITY_M_S2 / (GAS_CONSTANT * layer.base_k) } else { 0.0 },
        }
    }

    /// The law of an altitude, of those of the troposphere and of so many layers above it.
    #[inline(always)]
    fn at<const LAYERS: usize>(altitude_m: f64) -> Self {
        let mut law = const { Self::of(&TROPOSPHERE) };
        for layer in ABOVE.iter().take(LAYERS) {
            let other = Self::of(layer);
            let above = altitude_m >= other.base_m;
            let chosen = |one, other| if above { other } else { one };
            law = Self {
                base_m: chosen(law.base_m, other.base_m),
                base_k: chosen(law.base_k, other.base_k),
                base_pa: chosen(law.base_pa, other.base_pa),
                gradient_k_m: chosen(law.gradient_k_m, other.gradient_k_m),
                power: chosen(law.power, other.power),
                fall: chosen(law.fall, other.fall),
            };
        }
        law
    }
}

/// The standard air at altitudes, for a kernel's own use: temperature, a pressure, and the logarithm of what the air's
/// pressure is of that one. The logarithm is NaN outside the range.
pub struct Air {
    pub temperature_k: Column,
    pub base_pa: Column,
    pub logarithm: Column,
}

impl Air {
    #[inline(always)]
    pub fn at<const FMA: bool>(altitude_ft: &[f64]) -> Self {
        let mut air =
            Self { temperature_k: Column::of(0.0), base_pa: Column::of(0.0), logarithm: Column::of(0.0) };
        // Hardly anyone flies above the first two layers, and a choice among seven costs as much as the logarithm. What is chosen
        // for a point is the same either way.
        let above_two =
            altitude_ft.iter().map(|altitude| u64::from(*altitude * FOOT_M >= 20_000.0)).sum::<u64>();
        if above_two == 0 {
            air.fill::<FMA, 1>(altitude_ft)
        } else {
            air.fill::<FMA, 6>(altitude_ft)
        }
        air
    }

    #[inline(always)]
    fn fill<const FMA: bool, const LAYERS: usize>(&mut self, altitude_ft: &[f64]) {
        pass!(altitude_ft in altitude_ft, temperature_k in &mut self.temperature_k, base_pa in &mut self.base_pa,
            logarithm in &mut self.logarithm, => {
            let altitude_m = *altitude_ft * FOOT_M;
            let law = Law::at::<LAYERS>(altitude_m);
            let above_m = altitude_m - law.base_m;
            let warmer_k = law.gradient_k_m * above_m;
            let inside = (*altitude_ft >= -16_420.0) & (*altitude_ft <= 262_467.2);
            let ratio = ln::<FMA>(1.0 + warmer_k / law.base_k);
            *logarithm = if inside { -sum::<FMA>(law.power, ratio, law.fall * above_m) } else { f64::NAN };
            *base_pa = law.base_pa;
            *temperature_k = law.base_k + warmer_k;
        });
    }
}

/// Altitudes and deviations, no more than [`super::ROOM`], and where temperature, pressure, density and speed of sound go: NaN outside the range.
pub struct Atmosphere<'a> {
    pub pressure_altitude_ft: &'a [f64],
    pub isa_deviation_k: &'a [f64],
    pub temperature_degc: &'a mut [f64],
    pub pressure_hpa: &'a mut [f64],
    pub density_kg_per_m3: &'a mut [f64],
    pub speed_of_sound_kt: &'a mut [f64],
}

impl Kernel for Atmosphere<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        let air = Air::at::<FMA>(self.pressure_altitude_ft);
        pass!(base_pa in &air.base_pa, logarithm in &air.logarithm, pressure_hpa in &mut *self.pressure_hpa, => {
            *pressure_hpa = 0.01 * *base_pa * exp::<FMA>(*logarithm);
        });
        pass!(deviation_k in self.isa_deviation_k, standard_k in &air.temperature_k,
            temperature_degc in self.temperature_degc, pressure_hpa in &*self.pressure_hpa,
            density_kg_per_m3 in self.density_kg_per_m3, speed_of_sound_kt in self.speed_of_sound_kt, => {
            let temperature_k = *standard_k + *deviation_k;
            let inside = deviation_k.abs() <= 150.0;
            *temperature_degc = temperature_k - 273.15;
            *density_kg_per_m3 = 100.0 * *pressure_hpa / (GAS_CONSTANT * temperature_k);
            let sound_m_s = (HEAT_RATIO * GAS_CONSTANT * temperature_k).sqrt();
            *speed_of_sound_kt = if inside { sound_m_s / KNOT_M_S } else { f64::NAN };
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::standard_atmosphere;

    fn compared<const FMA: bool>() -> f64 {
        let mut worst: f64 = 0.0;
        for step in 0..=28_000 {
            let altitude_ft = [-16_420.0 + 10.0 * f64::from(step) - 1e-3 * f64::from(step % 7)];
            let deviation_k = [f64::from(step % 31) * 10.0 - 150.0];
            let [mut temperature, mut pressure, mut density, mut sound] = [[0.0]; 4];
            Atmosphere {
                pressure_altitude_ft: &altitude_ft,
                isa_deviation_k: &deviation_k,
                temperature_degc: &mut temperature,
                pressure_hpa: &mut pressure,
                density_kg_per_m3: &mut density,
                speed_of_sound_kt: &mut sound,
            }
            .run::<FMA>();
            let Ok(single) = standard_atmosphere(altitude_ft[0], deviation_k[0]) else {
                assert!(pressure[0].is_nan() || sound[0].is_nan(), "{altitude_ft:?}");
                continue;
            };
            for (many, single) in [
                (temperature[0] + 273.15, single.temperature_degc + 273.15),
                (pressure[0], single.pressure_hpa),
                (density[0], single.density_kg_per_m3),
                (sound[0], single.speed_of_sound_kt),
            ] {
                let off = (many / single - 1.0).abs();
                assert!(off.is_finite(), "{altitude_ft:?} {deviation_k:?}: {many} {single}");
                worst = worst.max(off);
            }
        }
        worst
    }

    #[test]
    fn as_single_calls_to_rounding() {
        let (fused, plain) = (compared::<true>(), compared::<false>());
        println!("standard atmosphere: {fused:e}, without fused multiplication {plain:e} of the value");
        assert!(fused < 1e-14 && plain < 1e-14);
    }
}
