//! The shape of WGS-84.

use crate::many::arithmetic::polynomial_by_pairs;

/// Semi-major axis.
pub const AXIS_M: f64 = 6_378_137.0;
/// Flattening.
pub const FLATTENING: f64 = 1.0 / 298.257_223_563;
/// Squared eccentricity.
pub const ECCENTRICITY_SQUARED: f64 = 0.006_694_379_990_141_317;

/// One over the root of `1 - e^2 s^2`, s the sine of a latitude: the radius of curvature across the meridian, of the
/// semi-major axis. A polynomial in the square of s that meets it at six Chebyshev nodes, from `core/fit/ellipsoid.py`; within
/// 3e-16.
#[inline(always)]
pub fn normal<const FMA: bool>(sine: f64) -> f64 {
    const COEFFICIENTS: [f64; 6] = [
        1.0,
        0.0033471899950713855,
        1.680552128617138e-05,
        9.375215738149434e-08,
        5.49091190701655e-10,
        3.3702895573958157e-12,
    ];
    polynomial_by_pairs::<FMA, 6>(sine * sine, COEFFICIENTS)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_polynomial_is_the_radius() {
        for step in 0..=1000 {
            let sine = f64::from(step) / 1000.0;
            let radius = 1.0 / (1.0 - ECCENTRICITY_SQUARED * sine * sine).sqrt();
            assert!((normal::<true>(sine) / radius - 1.0).abs() < 5e-16);
            assert!((normal::<false>(sine) / radius - 1.0).abs() < 5e-16);
        }
    }
}
