//! The numerical methods the library needs: quadrature of a smooth function, and its root and its least value in a bracket.

/// Gauss-Legendre nodes and weights of order 8 on [-1, 1], one of each symmetric pair.
///
/// Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), table 25.4.
const NODES: [(f64, f64); 4] = [
    (0.183_434_642_495_649_8, 0.362_683_783_378_361_96),
    (0.525_532_409_916_329, 0.313_706_645_877_887_27),
    (0.796_666_477_413_626_7, 0.222_381_034_453_374_48),
    (0.960_289_856_497_536_2, 0.101_228_536_290_376_26),
];

/// Calls `add(x, weight)` at the nodes of a composite rule over `[from, to]` in equal panels.
pub(crate) fn quadrature(from: f64, to: f64, panels: u32, mut add: impl FnMut(f64, f64)) {
    let half = (to - from) / (2.0 * f64::from(panels));
    for panel in 0..panels {
        let middle = from + half * (2.0 * f64::from(panel) + 1.0);
        for (node, weight) in NODES {
            add(middle - half * node, half * weight);
            add(middle + half * node, half * weight);
        }
    }
}

/// A root of `function` between `low` and `high`, at which its signs differ; the better end if they do not.
///
/// Regula falsi with the Illinois correction, which keeps the bracket; it ends when the bracket or the function
/// is at rounding error, at the latest after 100 steps.
pub(crate) fn root_between(low: f64, high: f64, function: impl FnMut(f64) -> f64) -> f64 {
    root_to(0.0, low, high, function)
}

/// [`root_between`], to a step of `least` at the last: for a function whose own rounding would keep the steps from vanishing.
///
/// The steps shrink faster than in proportion, so that the root is far nearer than the last of them was long.
pub(crate) fn root_to(least: f64, mut low: f64, mut high: f64, mut function: impl FnMut(f64) -> f64) -> f64 {
    let (mut at_low, mut at_high) = (function(low), function(high));
    if at_low * at_high > 0.0 {
        return if at_low.abs() < at_high.abs() { low } else { high };
    }
    for _ in 0..100 {
        if at_low == 0.0 || at_high == 0.0 {
            break;
        }
        let middle = (low * at_high - high * at_low) / (at_high - at_low);
        let at_middle = function(middle);
        if at_middle * at_high < 0.0 {
            (low, at_low) = (high, at_high);
        } else {
            at_low /= 2.0;
        }
        let step = (middle - high).abs();
        (high, at_high) = (middle, at_middle);
        if step <= least.max(4.0 * f64::EPSILON * middle.abs()) {
            break;
        }
    }
    if at_low == 0.0 { low } else { high }
}

/// Steps of the golden section that narrow a bracket to the square root of rounding: ln(2^-26) / ln(0.618).
const GOLDEN_STEPS: u32 = 38;

/// Where `function`, which falls and then rises between `low` and `high`, is least.
///
/// Golden section to the square root of rounding, below which no such place is known. A count of steps ends it, since a
/// bracket narrower than the spacing of the numbers in it would never grow narrower.
pub(crate) fn least_between(mut low: f64, mut high: f64, mut function: impl FnMut(f64) -> f64) -> f64 {
    let golden = (5.0_f64.sqrt() - 1.0) / 2.0;
    let (mut left, mut right) = (high - golden * (high - low), low + golden * (high - low));
    let (mut at_left, mut at_right) = (function(left), function(right));
    for _ in 0..GOLDEN_STEPS {
        if at_left < at_right {
            (high, right, at_right) = (right, left, at_left);
            left = high - golden * (high - low);
            at_left = function(left);
        } else {
            (low, left, at_left) = (left, right, at_right);
            right = low + golden * (high - low);
            at_right = function(right);
        }
    }
    if at_left < at_right { left } else { right }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quadrature_is_exact_for_polynomials_of_degree_15() {
        let mut sum = 0.0;
        quadrature(0.0, 2.0, 1, |x, weight| sum += weight * x.powi(15));
        assert!((sum - 4096.0).abs() < 1e-10, "{sum}");
    }

    #[test]
    fn the_root_is_found_to_rounding() {
        let root = root_between(0.0, 2.0, |x| x * x * x - 2.0);
        assert!((root - 2.0_f64.cbrt()).abs() < 1e-15, "{root}");
    }

    #[test]
    fn the_least_value_is_found() {
        let least = least_between(-1.0, 5.0, |x| (x - 2.0).powi(2) + 1.0);
        assert!((least - 2.0).abs() < 1e-7, "{least}");
    }

    #[test]
    fn a_bracket_of_a_few_neighbouring_numbers_ends() {
        let low = 7_000_000.0_f64;
        let high = low.next_up().next_up();
        let least = least_between(low, high, |x| (x - low).abs());
        assert!((low..=high).contains(&least), "{least}");
    }
}
