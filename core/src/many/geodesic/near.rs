// Written by core/fit/near_geodesic.py; do not edit.

//! The power series of [`Series`], whose form `core/fit/near_geodesic.py` explains.

use super::series::Series;
use crate::many::arithmetic::{polynomial, sum};


/// The corrections to 310 NM; off by 1.3e-08 m along and 9.0e-09 m across at the fitted points.
#[derive(Clone, Copy)]
pub struct Near {
    s04: f64,
    s05: f64,
    s12: f64,
    s13: f64,
    s14: f64,
    s20: f64,
    s21: f64,
    s22: f64,
    s23: f64,
    s30: f64,
    s31: f64,
    s32: f64,
    s40: f64,
    v03: f64,
    v04: f64,
    v11: f64,
    v12: f64,
    v13: f64,
    v20: f64,
    v21: f64,
    v22: f64,
    v30: f64,
    v31: f64,
}

impl Series for Near {
    const REACH_NM: f64 = 310.0;

    #[inline(always)]
    fn at<const FMA: bool>(t: f64) -> Self {
        let t2 = t * t;
        Self {
            s04: polynomial::<FMA, 2>(t2, [3.7850727719320115e-06, -2.5356509666178548e-08]),
            s05: t * -7.614788509969348e-08,
            s12: polynomial::<FMA, 2>(t2, [0.001123249452328968, -7.519440337080517e-06]),
            s13: t * polynomial::<FMA, 2>(t2, [-2.2710788619683846e-05, 2.2850371745659112e-07]),
            s14: polynomial::<FMA, 2>(t2, [-5.244614642997049e-07, 4.0193420019806096e-07]),
            s20: polynomial::<FMA, 2>(t2, [0.0833333333791966, -0.0005578649983595604]),
            s21: t * polynomial::<FMA, 3>(t2, [-0.0016848719551431812, 1.6918764611292663e-05, -2.8366173575421152e-08]),
            s22: polynomial::<FMA, 3>(t2, [7.387752912471895e-05, 3.294086563432988e-05, -4.468451270139199e-07]),
            s23: t * polynomial::<FMA, 2>(t2, [-5.422723215118809e-07, -6.648928160895074e-07]),
            s30: polynomial::<FMA, 5>(t2, [0.011111082566715063, 0.0003566979667281763, -6.261204123832393e-06, 0.0, 1.4171748403707348e-08]),
            s31: t * polynomial::<FMA, 3>(t2, [-0.0002808999190930768, -1.298955061647211e-05, 2.667762673080059e-07]),
            s32: polynomial::<FMA, 2>(t2, [-5.990297967299385e-06, 5.662252729920442e-06]),
            s40: polynomial::<FMA, 5>(t2, [0.0017910861406681803, 6.049664905652478e-05, 0.0, 3.3774910351794796e-06, -2.1107443225218587e-06]),
            v03: polynomial::<FMA, 2>(t2, [7.5701429867766306e-06, -5.0676481892307415e-08]),
            v04: t * -1.1449590573182016e-07,
            v11: polynomial::<FMA, 2>(t2, [0.0011232494605585475, -7.519491037155251e-06]),
            v12: t * polynomial::<FMA, 2>(t2, [-1.892508721440623e-05, 1.8916911680115824e-07]),
            v13: polynomial::<FMA, 2>(t2, [2.4217795940521026e-07, 2.9462252138167105e-07]),
            v20: t * polynomial::<FMA, 3>(t2, [-0.00028081220468573263, 2.8197249011680165e-06, -4.584199775835104e-09]),
            v21: polynomial::<FMA, 3>(t2, [0.00016937026041643737, 7.077832004212656e-06, -1.1627244410681862e-07]),
            v22: t * -3.7951121645160666e-06,
            v30: t * polynomial::<FMA, 2>(t2, [-2.8385302150948288e-05, -9.672175239322902e-07]),
            v31: 3.2551856857852033e-05,
        }
    }

    #[inline(always)]
    fn square<const FMA: bool>(&self, q: f64, z: f64) -> f64 {
        let z2 = z * z;
        let z4 = z2 * z2;
        sum::<FMA>(z4, sum::<FMA>(z, self.s05, self.s04), q * (sum::<FMA>(z2, sum::<FMA>(z, sum::<FMA>(z, self.s14, self.s13), self.s12), q * (sum::<FMA>(q, sum::<FMA>(q, self.s40, sum::<FMA>(z, sum::<FMA>(z, self.s32, self.s31), self.s30)), sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.s23, self.s22), self.s21), self.s20))))))
    }

    #[inline(always)]
    fn north<const FMA: bool>(&self, q: f64, z: f64) -> f64 {
        let z3 = z * (z * z);
        sum::<FMA>(z3, sum::<FMA>(z, self.v04, self.v03), q * (sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.v13, self.v12), self.v11), q * (sum::<FMA>(q, sum::<FMA>(z, self.v31, self.v30), sum::<FMA>(z, sum::<FMA>(z, self.v22, self.v21), self.v20))))))
    }
}
