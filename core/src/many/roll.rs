//! The way through the air while a bank grows evenly: an integral without a closed form.

use super::arithmetic::{polynomial, sum};
use super::functions::{LOG_SECANT, sin_cos_within};

/// The steepest bank that is answered, by its tangent.
pub const STEEPEST: f64 = 1.0;
/// The most heading turned in a roll that is answered, in radians.
pub const MOST_ROLLED: f64 = 0.785;

/// Gauss-Legendre nodes and weights of order 12 on [-1, 1], one of each symmetric pair: the heading is even in the bank.
///
/// Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), table 25.4.
pub const NODES: [(f64, f64); 6] = [
    (0.125_233_408_511_468_9, 0.249_147_045_813_402_77),
    (0.367_831_498_998_180_2, 0.233_492_536_538_354_8),
    (0.587_317_954_286_617_5, 0.203_167_426_723_065_92),
    (0.769_902_674_194_304_7, 0.160_078_328_543_346_22),
    (0.904_117_256_370_474_9, 0.106_939_325_995_318_43),
    (0.981_560_634_246_719_2, 0.047_175_336_386_511_83),
];

/// Heading turned while rolling in from level to a bank in radians, with what is turned for a unit of `-ln cos(bank)`.
#[inline(always)]
pub fn turned<const FMA: bool>(per_log: f64, squared_bank: f64) -> f64 {
    per_log * squared_bank * polynomial::<FMA, 14>(squared_bank, LOG_SECANT)
}

/// Cosine and sine of the heading turned at each node, and its weight: the nodes are shares of the bank.
#[inline(always)]
pub fn at_nodes<const FMA: bool>(per_log: f64, bank: f64, mut add: impl FnMut(f64, f64, f64)) {
    for (node, weight) in NODES {
        let (sine, cosine) = sin_cos_within::<FMA>(turned::<FMA>(per_log, bank * bank * (node * node)));
        add(cosine, sine, weight);
    }
}

/// The mean of cosine and sine of the heading while rolling in: where the way leads, of its length.
///
/// To 1e-13 for banks to [`STEEPEST`] and headings to [`MOST_ROLLED`].
#[inline(always)]
pub fn mean<const FMA: bool>(per_log: f64, bank: f64) -> (f64, f64) {
    let (mut along, mut across) = (0.0, 0.0);
    at_nodes::<FMA>(per_log, bank, |cosine, sine, weight| {
        along = sum::<FMA>(weight, cosine, along);
        across = sum::<FMA>(weight, sine, across);
    });
    (along, across)
}
