//! The arc of a meridian of WGS-84, between latitudes and from one onward.

use super::straight::SEMI_MAJOR_M;

/// Third flattening of WGS-84, `f / (2 - f)`.
const THIRD_FLATTENING: f64 = {
    const FLATTENING: f64 = 1.0 / 298.257_223_563;
    FLATTENING / (2.0 - FLATTENING)
};

/// What scales the radius of curvature of the meridian, `a (1 - n)^2 (1 + n) |1 + n exp(2iB)|^-3`.
const SCALE_M: f64 =
    SEMI_MAJOR_M * (1.0 - THIRD_FLATTENING) * (1.0 - THIRD_FLATTENING) * (1.0 + THIRD_FLATTENING);

/// The binomial coefficient of the power -3/2 with its power of `n`, as a multiple of the one before.
const fn step(j: u8) -> f64 {
    THIRD_FLATTENING * (-0.5 - j as f64) / j as f64
}

/// How much of `cos 2kB` the radius of curvature holds, half of it for k above zero.
///
/// With the binomial coefficients `b_j` of the power -3/2, `|1 + n exp(2iB)|^-3` is the sum of `b_j b_k n^(j + k) exp(2i (j - k) B)`.
/// The first term left out is of order `n^12`.
const fn harmonic_m(k: u8) -> f64 {
    let (mut near, mut far) = (1.0, 1.0);
    let mut j = 1;
    while j <= k {
        far *= step(j);
        j += 1;
    }
    let mut sum = near * far;
    j = 1;
    while j < 6 {
        near *= step(j);
        far *= step(j + k);
        sum += near * far;
        j += 1;
    }
    SCALE_M * sum
}

/// Mean radius of the meridian.
const MEAN_M: f64 = harmonic_m(0);

/// The harmonics of the radius; the next is worth a hundred-millionth of a nanometre.
const HARMONICS_M: [f64; 6] =
    [harmonic_m(1), harmonic_m(2), harmonic_m(3), harmonic_m(4), harmonic_m(5), harmonic_m(6)];

/// The arc of the meridian from a latitude over a difference of latitude, both north positive.
///
/// Each harmonic is integrated, `2 cos 2kB` to `sin(2kB) / k`, whose difference over the way is `2 sin(kw) cos(k (2B + w)) / k`, so that a
/// short arc keeps its digits.
pub(super) fn arc_m(latitude_deg: f64, way_rad: f64) -> f64 {
    let middle_rad = 2.0 * latitude_deg.to_radians() + way_rad;
    let waves = (1_u8..).zip(HARMONICS_M).map(|(k, harmonic_m)| {
        let k = f64::from(k);
        2.0 * harmonic_m / k * (k * way_rad).sin() * (k * middle_rad).cos()
    });
    MEAN_M * way_rad + waves.sum::<f64>()
}

/// Radius of curvature of the meridian.
fn curvature_m(latitude_rad: f64) -> f64 {
    let n = THIRD_FLATTENING;
    let bent = 1.0 + n * (2.0 * (2.0 * latitude_rad).cos() + n);
    SCALE_M / (bent * bent.sqrt())
}

/// The difference of latitude that an arc of the meridian makes from a latitude onward, north positive.
///
/// Newton's method from the mean radius, which is within one percent: four steps leave only rounding.
pub(super) fn latitude_after(latitude_deg: f64, arc: f64) -> f64 {
    let start_rad = latitude_deg.to_radians();
    let mut way_rad = arc / MEAN_M;
    for _ in 0..4 {
        way_rad -= (arc_m(latitude_deg, way_rad) - arc) / curvature_m(start_rad + way_rad);
    }
    way_rad
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The quarter of the meridian of WGS-84, 10 001 965.729 m (tests/data/published/rhumb.csv), in one and in degrees.
    #[test]
    fn a_quarter_is_the_sum_of_its_parts() {
        let quarter_m = arc_m(0.0, 90.0_f64.to_radians());
        assert!((quarter_m - 10_001_965.729_3).abs() < 1e-4, "{quarter_m}");
        let parts_m: f64 = (0_u8..90).map(|deg| arc_m(f64::from(deg), 1.0_f64.to_radians())).sum();
        assert!((parts_m - quarter_m).abs() < 1e-8);
        assert!((arc_m(-90.0, 180.0_f64.to_radians()) - 2.0 * quarter_m).abs() < 1e-8);
    }

    #[test]
    fn a_short_arc_is_its_radius_of_curvature() {
        for latitude_deg in [-90.0_f64, -33.0, 0.0, 45.0, 89.0] {
            let way_rad = 1e-9;
            let expected_m = curvature_m(latitude_deg.to_radians() + way_rad / 2.0) * way_rad;
            assert!((arc_m(latitude_deg, way_rad) / expected_m - 1.0).abs() < 1e-14, "{latitude_deg}");
        }
    }

    #[test]
    fn the_latitude_after_an_arc_is_found_again() {
        for latitude_deg in [-90.0_f64, -45.0, 0.0, 1.0, 60.0, 90.0] {
            for to_deg in [-90.0_f64, -12.0, 0.0, 44.9, 90.0] {
                let way_rad = (to_deg - latitude_deg).to_radians();
                let found_rad = latitude_after(latitude_deg, arc_m(latitude_deg, way_rad));
                assert!(
                    (found_rad - way_rad).abs() < 1e-15 * (1.0 + way_rad.abs()),
                    "{latitude_deg} {to_deg}"
                );
            }
        }
    }
}
