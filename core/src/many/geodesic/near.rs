// Written by core/fit/near_geodesic.py; do not edit.

//! The power series of [`Series`], whose form `core/fit/near_geodesic.py` explains.

use super::series::Series;
use crate::many::arithmetic::{polynomial, sum};


/// The corrections to 310 NM; off by 1.3e-08 m along and 5.2e-09 m across at the fitted points.
#[derive(Clone, Copy)]
pub struct Near {
    s04: f64,
    s05: f64,
    s06: f64,
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
    v05: f64,
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
            s04: polynomial::<FMA, 2>(t2, [3.7850707380950108e-06, -2.532894666952971e-08]),
            s05: t * -7.614675370387814e-08,
            s06: -3.3502529666629606e-09,
            s12: polynomial::<FMA, 2>(t2, [0.0011232494531751233, -7.5194525112462e-06]),
            s13: t * polynomial::<FMA, 2>(t2, [-2.2710799976769874e-05, 2.285274061086808e-07]),
            s14: polynomial::<FMA, 2>(t2, [-5.191817599053979e-07, 3.931742681563603e-07]),
            s20: polynomial::<FMA, 2>(t2, [0.08333333337919308, -0.0005578649980051198]),
            s21: t * polynomial::<FMA, 3>(t2, [-0.0016848719461041283, 1.6918738414845623e-05, -2.8349113375679816e-08]),
            s22: polynomial::<FMA, 3>(t2, [7.387545393519729e-05, 3.294671690967843e-05, -4.4843814643127583e-07]),
            s23: t * polynomial::<FMA, 2>(t2, [-5.407944732739377e-07, -6.683483693367195e-07]),
            s30: polynomial::<FMA, 5>(t2, [0.011111082826479091, 0.0003566978439925028, -6.272714278177572e-06, 2.8183288271207983e-08, -2.97779402465582e-09]),
            s31: t * polynomial::<FMA, 3>(t2, [-0.00028090121748718843, -1.2985588687475991e-05, 2.6411344572868413e-07]),
            s32: polynomial::<FMA, 2>(t2, [-5.975161654952571e-06, 5.574574747199287e-06]),
            s40: polynomial::<FMA, 3>(t2, [0.0017910617307072448, 6.05381475602125e-05, 1.287790514461224e-06]),
            v03: polynomial::<FMA, 2>(t2, [7.570143754035287e-06, -5.0678860501503533e-08]),
            v04: t * -1.1449020942550359e-07,
            v05: -5.89213411713366e-09,
            v11: polynomial::<FMA, 2>(t2, [0.0011232494601761637, -7.519490542000709e-06]),
            v12: t * polynomial::<FMA, 2>(t2, [-1.89250954698187e-05, 1.8916389170540302e-07]),
            v13: polynomial::<FMA, 2>(t2, [2.479218984632174e-07, 2.8917018162741706e-07]),
            v20: t * polynomial::<FMA, 3>(t2, [-0.0002808122027825864, 2.819723031161592e-06, -4.583504502324916e-09]),
            v21: polynomial::<FMA, 3>(t2, [0.00016936924989230574, 7.079954074563072e-06, -1.1738577214575715e-07]),
            v22: t * -3.7938953763124666e-06,
            v30: t * polynomial::<FMA, 2>(t2, [-2.8385601462792975e-05, -9.6696833183503e-07]),
            v31: 3.2547825563076186e-05,
        }
    }

    #[inline(always)]
    fn square<const FMA: bool>(&self, q: f64, z: f64) -> f64 {
        sum::<FMA>(q, sum::<FMA>(q, sum::<FMA>(q, sum::<FMA>(q, self.s40, sum::<FMA>(z, sum::<FMA>(z, self.s32, self.s31), self.s30)), sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.s23, self.s22), self.s21), self.s20)), z * (z * (sum::<FMA>(z, sum::<FMA>(z, self.s14, self.s13), self.s12)))), z * (z * (z * (z * (sum::<FMA>(z, sum::<FMA>(z, self.s06, self.s05), self.s04))))))
    }

    #[inline(always)]
    fn north<const FMA: bool>(&self, q: f64, z: f64) -> f64 {
        sum::<FMA>(q, sum::<FMA>(q, sum::<FMA>(q, sum::<FMA>(z, self.v31, self.v30), sum::<FMA>(z, sum::<FMA>(z, self.v22, self.v21), self.v20)), z * (sum::<FMA>(z, sum::<FMA>(z, self.v13, self.v12), self.v11))), z * (z * (z * (sum::<FMA>(z, sum::<FMA>(z, self.v05, self.v04), self.v03)))))
    }
}
