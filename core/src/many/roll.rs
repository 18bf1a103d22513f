//! The way through the air while a bank grows evenly: an integral without a closed form.

use super::arithmetic::polynomial;
use super::functions::{LOG_SECANT, LOG_SECANT_SHALLOW, sin_cos_within};

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

/// As [`NODES`], of order 8: enough for banks to [`SHALLOW`] and headings to [`LITTLE`].
///
/// Source: as there.
pub const FEW_NODES: [(f64, f64); 4] = [
    (0.183_434_642_495_649_8, 0.362_683_783_378_361_96),
    (0.525_532_409_916_329, 0.313_706_645_877_887_27),
    (0.796_666_477_413_626_7, 0.222_381_034_453_374_48),
    (0.960_289_856_497_536_2, 0.101_228_536_290_376_26),
];

/// The bank and about the heading turned, in radians, to which few nodes will do.
const SHALLOW: f64 = std::f64::consts::FRAC_PI_6;
const LITTLE: f64 = 0.25;

/// Heading turned while rolling in from level to a bank in radians, with what is turned for a unit of `-ln cos(bank)`.
#[inline(always)]
pub fn turned<const FMA: bool>(per_log: f64, squared_bank: f64) -> f64 {
    per_log * squared_bank * polynomial::<FMA, 14>(squared_bank, LOG_SECANT)
}

/// The headings at the nodes of a mean over one roll, and their weights.
#[derive(Debug, Clone, Copy)]
pub struct Headings {
    /// Cosine, sine and weight of as many as are needed.
    nodes: [(f64, f64, f64); 6],
    count: usize,
}

impl Headings {
    /// The headings turned while rolling in from level to a bank, with what is turned for a unit of `-ln cos(bank)`: at few nodes in a
    /// shallow roll.
    ///
    /// To 1e-12 for banks to [`STEEPEST`] and headings to [`MOST_ROLLED`].
    pub fn of(per_log: f64, bank: f64) -> Self {
        let square = bank * bank;
        let mut nodes = [(0.0, 0.0, 0.0); 6];
        let count = if bank <= SHALLOW && per_log * square * 0.53 <= LITTLE {
            for (place, (node, weight)) in nodes.iter_mut().zip(FEW_NODES) {
                let here = square * (node * node);
                let turned = per_log * here * polynomial::<false, 9>(here, LOG_SECANT_SHALLOW);
                let (sine, cosine) = sin_cos_within::<false>(turned);
                *place = (cosine, sine, weight);
            }
            FEW_NODES.len()
        } else {
            for (place, (node, weight)) in nodes.iter_mut().zip(NODES) {
                let (sine, cosine) =
                    sin_cos_within::<false>(turned::<false>(per_log, square * (node * node)));
                *place = (cosine, sine, weight);
            }
            NODES.len()
        };
        Self { nodes, count }
    }

    /// Calls `add(cosine, sine, weight)` for each of them.
    #[inline]
    pub fn each(&self, mut add: impl FnMut(f64, f64, f64)) {
        for (cosine, sine, weight) in self.nodes.iter().take(self.count) {
            add(*cosine, *sine, *weight);
        }
    }
}
