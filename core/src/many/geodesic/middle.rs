// Written by core/fit/near_geodesic.py; do not edit.

//! The power series of [`Series`], whose form `core/fit/near_geodesic.py` explains.

use super::series::Series;
use crate::many::arithmetic::{polynomial, sum};


/// The corrections to 1020 NM; off by 4.4e-08 m along and 1.7e-07 m across at the fitted points.
#[derive(Clone, Copy)]
pub struct Middle {
    s04: f64,
    s05: f64,
    s06: f64,
    s12: f64,
    s13: f64,
    s14: f64,
    s15: f64,
    s20: f64,
    s21: f64,
    s22: f64,
    s23: f64,
    s24: f64,
    s30: f64,
    s31: f64,
    s32: f64,
    s33: f64,
    s40: f64,
    s41: f64,
    s42: f64,
    s43: f64,
    s50: f64,
    s51: f64,
    s52: f64,
    s60: f64,
    s61: f64,
    s70: f64,
    v03: f64,
    v04: f64,
    v05: f64,
    v11: f64,
    v12: f64,
    v13: f64,
    v14: f64,
    v20: f64,
    v21: f64,
    v22: f64,
    v23: f64,
    v30: f64,
    v31: f64,
    v32: f64,
    v33: f64,
    v40: f64,
    v41: f64,
    v42: f64,
    v50: f64,
    v51: f64,
    v61: f64,
}

impl Series for Middle {
    const REACH_NM: f64 = 1020.0;

    #[inline(always)]
    fn at<const FMA: bool>(t: f64) -> Self {
        let t2 = t * t;
        Self {
            s04: polynomial::<FMA, 2>(t2, [3.7850714608612705e-06, -2.5347367873991342e-08]),
            s05: t * polynomial::<FMA, 2>(t2, [-7.657987240875849e-08, 1.058670969829924e-09]),
            s06: -3.1972489085012883e-09,
            s12: polynomial::<FMA, 2>(t2, [0.0011232494542350799, -7.519454038118269e-06]),
            s13: t * polynomial::<FMA, 2>(t2, [-2.2710333919844975e-05, 2.2759658375501144e-07]),
            s14: polynomial::<FMA, 3>(t2, [-5.188144591945666e-07, 3.977516880718438e-07, -6.263686074644288e-09]),
            s15: t * polynomial::<FMA, 2>(t2, [3.1645944590449356e-08, -1.3802993258065266e-08]),
            s20: polynomial::<FMA, 2>(t2, [0.08333333333335739, -0.0005578649992506948]),
            s21: t * polynomial::<FMA, 3>(t2, [-0.001684874203778309, 1.6918883233475208e-05, -2.8432339593550025e-08]),
            s22: polynomial::<FMA, 3>(t2, [7.387422138509011e-05, 3.2949332304845065e-05, -4.4918225531472756e-07]),
            s23: t * polynomial::<FMA, 2>(t2, [-5.86203259863708e-07, -6.243152821898626e-07]),
            s24: polynomial::<FMA, 2>(t2, [-6.249623195192262e-08, -3.431373653515889e-08]),
            s30: polynomial::<FMA, 4>(t2, [0.01111111112321064, 0.00035669825384165784, -6.269618937486923e-06, 2.2697547608484984e-08]),
            s31: t * polynomial::<FMA, 4>(t2, [-0.0002801808286991886, -1.2978235243456449e-05, 2.7698451626964066e-07, -3.4086947335338946e-09]),
            s32: polynomial::<FMA, 3>(t2, [-5.809352750937657e-06, 5.181948854569947e-06, 3.606888851926159e-07]),
            s33: t * polynomial::<FMA, 2>(t2, [3.597603555891715e-07, -7.183454227249655e-08]),
            s40: polynomial::<FMA, 4>(t2, [0.0017857130681806065, 6.0316983671218735e-05, 1.3477052229625663e-06, -4.745670085237492e-08]),
            s41: t * polynomial::<FMA, 3>(t2, [-5.591951808757185e-05, -2.1797540986435155e-06, -7.963996958750096e-08]),
            s42: polynomial::<FMA, 2>(t2, [-5.226485811260594e-06, 1.363191063320507e-06]),
            s43: t * 2.2031712086505951e-07,
            s50: polynomial::<FMA, 3>(t2, [0.0003174901442345823, 1.2283483300360211e-05, 2.13123411347659e-07]),
            s51: t * polynomial::<FMA, 2>(t2, [-1.1920934663609204e-05, -6.489662132682649e-07]),
            s52: -2.0745164643095535e-06,
            s60: polynomial::<FMA, 2>(t2, [5.9807593555328855e-05, 2.95369042266149e-06]),
            s61: t * -2.777848674853036e-06,
            s70: 1.3413156722777077e-05,
            v03: polynomial::<FMA, 2>(t2, [7.570135627025908e-06, -5.067532481635198e-08]),
            v04: t * -1.146060578424951e-07,
            v05: -5.900372776517231e-09,
            v11: polynomial::<FMA, 2>(t2, [0.001123249457877956, -7.519462301677657e-06]),
            v12: t * polynomial::<FMA, 2>(t2, [-1.8925399148977816e-05, 1.9030695579304747e-07]),
            v13: polynomial::<FMA, 3>(t2, [2.5056868946706695e-07, 2.905908388127708e-07, -5.252660102293884e-09]),
            v14: t * 8.947851976805666e-09,
            v20: t * polynomial::<FMA, 3>(t2, [-0.0002808123580683779, 2.819768615269406e-06, -4.716884942627705e-09]),
            v21: polynomial::<FMA, 3>(t2, [0.0001693705527739942, 7.0687099837406686e-06, -1.1615558781779167e-07]),
            v22: t * polynomial::<FMA, 2>(t2, [-3.7421167066956063e-06, -1.5276734470060328e-07]),
            v23: polynomial::<FMA, 2>(t2, [-2.2206171514948413e-07, 6.309746557221379e-08]),
            v30: t * polynomial::<FMA, 3>(t2, [-2.8333705571942897e-05, -9.759009564236765e-07, 2.1210649163001784e-08]),
            v31: polynomial::<FMA, 2>(t2, [3.237473282441286e-05, 8.889762872220646e-07]),
            v32: t * -9.799372005285828e-07,
            v33: -1.365255321467775e-07,
            v40: t * polynomial::<FMA, 2>(t2, [-4.076258011385381e-06, -7.3287535763743e-08]),
            v41: polynomial::<FMA, 3>(t2, [6.740610311526612e-06, 2.3686850382137105e-07, 1.037182401339658e-06]),
            v42: t * -3.1818245041132317e-07,
            v50: t * -7.072974967100491e-07,
            v51: polynomial::<FMA, 3>(t2, [1.607856580314286e-06, 0.0, -1.1682452789284944e-05]),
            v61: polynomial::<FMA, 3>(t2, [0.0, 0.0, 4.786589173775623e-05]),
        }
    }

    #[inline(always)]
    fn square<const FMA: bool>(&self, q: f64, z: f64) -> f64 {
        let z2 = z * z;
        let z4 = z2 * z2;
        sum::<FMA>(z4, sum::<FMA>(z, sum::<FMA>(z, self.s06, self.s05), self.s04), q * (sum::<FMA>(z2, sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.s15, self.s14), self.s13), self.s12), q * (sum::<FMA>(q, sum::<FMA>(q, sum::<FMA>(q, sum::<FMA>(q, sum::<FMA>(q, self.s70, sum::<FMA>(z, self.s61, self.s60)), sum::<FMA>(z, sum::<FMA>(z, self.s52, self.s51), self.s50)), sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.s43, self.s42), self.s41), self.s40)), sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.s33, self.s32), self.s31), self.s30)), sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.s24, self.s23), self.s22), self.s21), self.s20))))))
    }

    #[inline(always)]
    fn north<const FMA: bool>(&self, q: f64, z: f64) -> f64 {
        let z3 = z * (z * z);
        sum::<FMA>(z3, sum::<FMA>(z, sum::<FMA>(z, self.v05, self.v04), self.v03), q * (sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.v14, self.v13), self.v12), self.v11), q * (sum::<FMA>(q, sum::<FMA>(q, sum::<FMA>(q, sum::<FMA>(q, z * (self.v61), sum::<FMA>(z, self.v51, self.v50)), sum::<FMA>(z, sum::<FMA>(z, self.v42, self.v41), self.v40)), sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.v33, self.v32), self.v31), self.v30)), sum::<FMA>(z, sum::<FMA>(z, sum::<FMA>(z, self.v23, self.v22), self.v21), self.v20))))))
    }
}
