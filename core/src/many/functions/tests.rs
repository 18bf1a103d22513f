//! The functions against fifty-digit values, in units of the last place.

use super::*;

/// What `core/fit/references.py` wrote: a function's name, its arguments, and the value as two doubles.
const REFERENCES: &str = include_str!("references.csv");

fn ulp(value: f64) -> f64 {
    let magnitude = value.abs().max(f64::MIN_POSITIVE);
    f64::from_bits(magnitude.to_bits() + 1) - magnitude
}

fn worst<const FMA: bool>(wanted: &str) -> f64 {
    let mut most: f64 = 0.0;
    let mut rows = 0;
    for line in REFERENCES.lines().filter(|line| line.starts_with(wanted)) {
        let fields: Vec<f64> = line.split(',').skip(1).map(|field| field.parse().unwrap()).collect();
        let (x, y, high, low) = (fields[0], fields[1], fields[2], fields[3]);
        let value = match wanted {
            "sine" => sin_cos_deg::<FMA>(x).0,
            "cosine" => sin_cos_deg::<FMA>(x).1,
            "direction" => atan2_deg::<FMA>(x, y),
            "logarithm" => ln::<FMA>(x),
            _ => exp::<FMA>(x),
        };
        let off = ((value - high) - low).abs() / ulp(high);
        assert!(off.is_finite(), "{line}: {value}");
        most = most.max(off);
        rows += 1;
    }
    assert!(rows >= 400);
    println!("{wanted}, fused {FMA}: {most:.3} units of the last place");
    most
}

#[test]
fn within_two_units_of_the_last_place() {
    for wanted in ["sine", "cosine", "direction", "logarithm", "exponential"] {
        assert!(worst::<true>(wanted) <= 2.0 && worst::<false>(wanted) <= 2.0, "{wanted}");
    }
}

/// The cheap ones against the same values, as they stand rather than in units of the last place.
#[test]
fn cheap_ones_are_within_their_bounds() {
    fn worst<const FMA: bool>(wanted: &str, most_deg: f64, value: impl Fn(f64) -> f64) -> f64 {
        let mut most: f64 = 0.0;
        let mut rows = 0;
        for line in REFERENCES.lines().filter(|line| line.starts_with(wanted)) {
            let fields: Vec<f64> = line.split(',').skip(1).map(|field| field.parse().unwrap()).collect();
            if fields[0].abs() <= most_deg {
                most = most.max(((value(fields[0]) - fields[2]) - fields[3]).abs());
                rows += 1;
            }
        }
        assert!(rows > 100);
        most
    }
    fn all<const FMA: bool>() {
        let half = [
            worst::<FMA>("sine", 45.0, |x| sin_cos_of_half_deg::<FMA>(x + x).0),
            worst::<FMA>("cosine", 45.0, |x| sin_cos_of_half_deg::<FMA>(x + x).1),
        ];
        let quarter = [
            worst::<FMA>("sine", 90.0, |x| sin_cos_of_quarter_deg::<FMA>(x).0),
            worst::<FMA>("cosine", 90.0, |x| sin_cos_of_quarter_deg::<FMA>(x).1),
        ];
        let turn = [
            worst::<FMA>("sine", 1e9, |x| sin_cos_of_turn_deg::<FMA>(x).0),
            worst::<FMA>("cosine", 1e9, |x| sin_cos_of_turn_deg::<FMA>(x).1),
        ];
        println!("fused {FMA}: to 45 degrees {half:?}, to 90 {quarter:?}, beyond {turn:?}");
        assert!(half.iter().all(|off| *off < 2.5e-16));
        assert!(quarter.iter().all(|off| *off < 4e-16) && turn.iter().all(|off| *off < 1e-15));
    }
    all::<true>();
    all::<false>();
    assert!(sin_cos_of_turn_deg::<true>(f64::INFINITY).0.is_nan());
}

#[test]
fn slopes_are_directions() {
    for (second, first) in [(0.0, 1.0), (-0.0, 1.0), (1.0, 2.0), (-1.0, 0.5), (3.0, 0.0), (-3.0, 0.0)] {
        assert_eq!(slope_deg::<true>(second, first), atan2_deg::<true>(second, first));
        assert_eq!(slope_deg::<false>(second, first), atan2_deg::<false>(second, first));
    }
    assert!(slope_deg::<true>(0.0, 0.0).is_nan());
}

#[test]
fn whole_quarters_are_exact() {
    for turns in [-1e6, -1.0, 0.0, 1.0, 1e6] {
        for (angle_deg, expected) in
            [(0.0, (0.0, 1.0)), (90.0, (1.0, 0.0)), (180.0, (0.0, -1.0)), (270.0, (-1.0, 0.0))]
        {
            assert_eq!(sin_cos_deg::<true>(angle_deg + 360.0 * turns), expected);
            assert_eq!(sin_cos_deg::<false>(angle_deg + 360.0 * turns), expected);
        }
    }
    for ((second, first), expected) in [
        ((0.0, 1.0), 0.0),
        ((1.0, 1.0), 45.0),
        ((1.0, 0.0), 90.0),
        ((1.0, -1.0), 135.0),
        ((0.0, -1.0), 180.0),
        ((-1.0, 0.0), -90.0),
        ((-1.0, -1.0), -135.0),
    ] {
        assert_eq!(atan2_deg::<true>(second, first), expected);
    }
    assert!(atan2_deg::<true>(f64::NAN, 1.0).is_nan() && atan2_deg::<true>(1.0, f64::NAN).is_nan());
    assert!(sin_cos_deg::<true>(f64::NAN).0.is_nan() && sin_cos_deg::<true>(f64::INFINITY).1.is_nan());
}

/// Against the system's functions, which are right to half a unit of the last place or little more.
#[test]
fn within_an_eighth_of_a_circle_too() {
    let most = std::f64::consts::FRAC_PI_4;
    let mut worst = 0.0_f64;
    for step in -100_000..=100_000 {
        let x = most * f64::from(step) * 1e-5;
        let (sine, cosine) = x.sin_cos();
        for (near, far) in [sin_cos_within::<true>(x), sin_cos_within::<false>(x)]
            .map(|both| ((both.0 - sine).abs() / ulp(sine), (both.1 - cosine).abs() / ulp(cosine)))
        {
            worst = worst.max(near).max(far);
        }
    }
    assert!(worst <= 1.0, "{worst}");
}
