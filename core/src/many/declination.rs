//! The declination of the World Magnetic Model at many places.

use std::sync::LazyLock;

use super::functions::{atan2_deg, sin_cos_deg};
use super::lanes::{Lanes, WIDTH};
use super::{Column, Kernel, pass};
use crate::earth::{ECCENTRICITY_SQUARED, SEMI_MAJOR_M};
use crate::north::harmonics::{Coefficients, DEGREE, REFERENCE_RADIUS_M};
use crate::north::{wmm2020, wmm2025};

const FOOT_M: f64 = 0.3048;
/// The epochs of the models. Each is made for the years to the next.
const OLDER_YEAR: f64 = 2020.0;
pub const NEWER_YEAR: f64 = 2025.0;

/// Places and dates, no more than [`super::ROOM`], and where the declinations go.
///
/// NaN asks for the exact path: longitudes beyond a full circle, horizontal fields of less than a nanotesla, and whatever is outside
/// its range.
pub struct Variation<'a> {
    pub latitude_deg: &'a [f64],
    pub longitude_deg: &'a [f64],
    pub altitude_ft: &'a [f64],
    pub decimal_year: &'a [f64],
    pub variation_deg: &'a mut [f64],
}

/// What a degree of an order adds, in Gauss's normalisation, whose recursion takes no roots.
#[derive(Debug, Clone, Copy, Default)]
struct Term {
    /// The function is the sine times that of the degree before, less this times that of the degree before it.
    recursion: f64,
    /// Its slope is `degree` times the sine times it, less this times that of the degree before, over the cosine.
    back: f64,
    next_degree: f64,
    g: f64,
    h: f64,
    g_change: f64,
    h_change: f64,
    /// In order one: the coefficient of the same degree in order none, whose slope goes with the functions of order one.
    zonal: f64,
    zonal_change: f64,
}

/// By order, then by degree.
type Model = [[Term; 13]; 13];

static MODELS: LazyLock<[Model; 2]> =
    LazyLock::new(|| [model(&wmm2020::COEFFICIENTS), model(&wmm2025::COEFFICIENTS)]);

/// The terms of a model given in Schmidt's semi-normalisation.
///
/// Source: The US/UK World Magnetic Model for 2025-2030: Technical Report, equations 4 to 17; Gauss's functions are those without their
/// roots, and follow from the recursions there.
fn model(coefficients: &Coefficients) -> Model {
    let mut model = Model::default();
    let mut zonals = [(0.0, 0.0); 13];
    for (order, terms) in model.iter_mut().enumerate() {
        let m = order as f64;
        for (degree, (term, zonal)) in terms.iter_mut().zip(&mut zonals).enumerate().skip(order) {
            let n = degree as f64;
            // From Schmidt's functions to Gauss's: (2n - 1)!!/(n - m)! and the root that Schmidt's have.
            let odds: f64 = (1..=degree).map(|k| 2.0 * k as f64 - 1.0).product();
            let below: f64 = (1..=degree - order).map(|k| k as f64).product();
            let between: f64 = (degree - order + 1..=degree + order).map(|k| k as f64).product();
            let schmidt = if order == 0 { 1.0 } else { (2.0 / between).sqrt() };
            let scale = schmidt * odds / below;
            let row =
                (degree * (degree + 1) / 2 + order).checked_sub(1).and_then(|row| coefficients.get(row));
            let &(_, _, g, h, g_change, h_change) = row.unwrap_or(&(0, 0, 0.0, 0.0, 0.0, 0.0));
            if order == 0 {
                *zonal = (n * scale * g, n * scale * g_change);
            }
            *term = Term {
                recursion: ((n - 1.0).powi(2) - m * m) / ((2.0 * n - 1.0) * (2.0 * n - 3.0)),
                back: (n * n - m * m) / (2.0 * n - 1.0),
                next_degree: n + 1.0,
                g: scale * g,
                h: scale * h,
                g_change: scale * g_change,
                h_change: scale * h_change,
                zonal: zonal.0,
                zonal_change: zonal.1,
            };
        }
    }
    model
}

/// Where the field is looked for: geocentric latitude and longitude by their sines and cosines, and what the reference radius is of the
/// distance from the earth's centre.
struct Place {
    sine: Lanes,
    cosine: Lanes,
    longitude_sine: Lanes,
    longitude_cosine: Lanes,
    ratio: Lanes,
}

impl Place {
    /// The field's parts to the north, to the east and down, in the geocentric frame, or their changes in a year.
    ///
    /// The functions carry the power of the radius with them, and from order one on they are divided by the cosine of the latitude, so that
    /// nothing divides at the poles.
    #[inline(always)]
    fn parts<const FMA: bool, const CHANGE: bool>(&self, model: &Model, years: Lanes) -> [Lanes; 3] {
        let zero = Lanes::of(0.0);
        let at = |value: f64, change: f64| match CHANGE {
            true => Lanes::of(change),
            false => Lanes::of(value).plus::<FMA>(years, Lanes::of(change)),
        };
        let Self { sine, cosine, longitude_sine, longitude_cosine, ratio } = *self;
        let (up, back) = (sine.times(ratio), ratio.times(ratio));
        let [mut north, mut east, mut down] = [zero; 3];
        let (mut sine_m, mut cosine_m) = (zero, Lanes::of(1.0));
        let (mut sectoral, mut whole) = (back, Lanes::of(1.0));
        for (order, terms) in model.iter().enumerate() {
            if order > 0 {
                (sine_m, cosine_m) = (
                    sine_m.times(longitude_cosine).plus::<FMA>(cosine_m, longitude_sine),
                    cosine_m.times(longitude_cosine).minus::<FMA>(sine_m, longitude_sine),
                );
                sectoral = sectoral.times(if order == 1 { ratio } else { ratio.times(cosine) });
                whole = cosine;
            }
            let (mut function, mut before) = (sectoral, zero);
            // Sums of the functions, of their next degrees times them, and of the multiples of the ones before.
            let [mut even, mut odd, mut even_next, mut odd_next, mut even_back, mut odd_back] = [zero; 6];
            let mut zonal = zero;
            for (above, term) in terms.iter().skip(order).enumerate() {
                if above > 0 {
                    let next = up.times(function).minus::<FMA>(back.times(Lanes::of(term.recursion)), before);
                    (before, function) = (function, next);
                }
                let g = at(term.g, term.g_change);
                let h = at(term.h, term.h_change);
                let next = function.times(Lanes::of(term.next_degree));
                even_next = even_next.plus::<FMA>(next, g);
                odd_next = odd_next.plus::<FMA>(next, h);
                if order > 0 {
                    let behind = before.times(Lanes::of(term.back));
                    even = even.plus::<FMA>(function, g);
                    odd = odd.plus::<FMA>(function, h);
                    even_back = even_back.plus::<FMA>(behind, g);
                    odd_back = odd_back.plus::<FMA>(behind, h);
                }
                if order == 1 {
                    let g = at(term.zonal, term.zonal_change);
                    zonal = zonal.plus::<FMA>(function, g);
                }
            }
            let even_slope = sine.times(even_next.less(even)).minus::<FMA>(ratio, even_back);
            let odd_slope = sine.times(odd_next.less(odd)).minus::<FMA>(ratio, odd_back);
            if order > 0 {
                north = north.plus::<FMA>(cosine_m, even_slope).plus::<FMA>(sine_m, odd_slope);
                let turned = sine_m.times(even).minus::<FMA>(cosine_m, odd);
                east = east.plus::<FMA>(Lanes::of(order as f64), turned);
            }
            if order == 1 {
                north = north.minus::<FMA>(cosine, zonal);
            }
            let along = cosine_m.times(even_next).plus::<FMA>(sine_m, odd_next);
            down = down.minus::<FMA>(whole, along);
        }
        [north, east, down]
    }
}

/// Places and dates as the models take them.
pub struct Places {
    sines: Column,
    cosines: Column,
    longitude_sines: Column,
    longitude_cosines: Column,
    ratios: Column,
    /// The angle from the geocentric vertical to the geodetic one.
    pub sines_v: Column,
    pub cosines_v: Column,
    pub years: Column,
}

impl Places {
    #[inline(always)]
    pub fn of<const FMA: bool>(
        latitude_deg: &[f64],
        longitude_deg: &[f64],
        altitude_ft: &[f64],
        decimal_year: &[f64],
    ) -> Self {
        let mut places = Self {
            sines: Column::of(0.0),
            cosines: Column::of(1.0),
            longitude_sines: Column::of(0.0),
            longitude_cosines: Column::of(0.0),
            ratios: Column::of(1.0),
            sines_v: Column::of(0.0),
            cosines_v: Column::of(0.0),
            years: Column::of(NEWER_YEAR),
        };
        let (mut sines, mut cosines): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(latitude_deg in latitude_deg, sine in &mut sines, cosine in &mut cosines, => {
            (*sine, *cosine) = sin_cos_deg::<FMA>(*latitude_deg);
        });
        pass!(longitude_deg in longitude_deg, sine in &mut places.longitude_sines,
            cosine in &mut places.longitude_cosines, => {
            (*sine, *cosine) = sin_cos_deg::<FMA>(*longitude_deg);
        });
        pass!(sine in &sines, cosine in &cosines, altitude_ft in altitude_ft, sine_c in &mut places.sines,
            cosine_c in &mut places.cosines, ratio in &mut places.ratios, sine_v in &mut places.sines_v,
            cosine_v in &mut places.cosines_v, => {
            let height_m = *altitude_ft * FOOT_M;
            let curvature_m = SEMI_MAJOR_M / (1.0 - ECCENTRICITY_SQUARED * *sine * *sine).sqrt();
            let outward_m = (curvature_m + height_m) * *cosine;
            let poleward_m = (curvature_m * (1.0 - ECCENTRICITY_SQUARED) + height_m) * *sine;
            let per_m = 1.0 / (outward_m * outward_m + poleward_m * poleward_m).sqrt();
            (*sine_c, *cosine_c) = (poleward_m * per_m, outward_m * per_m);
            *ratio = REFERENCE_RADIUS_M * per_m;
            *sine_v = *sine_c * *cosine - *cosine_c * *sine;
            *cosine_v = *cosine_c * *cosine + *sine_c * *sine;
        });
        pass!(year in &mut places.years, given in decimal_year, => { *year = *given; });
        places
    }

    /// The field's parts to the north, to the east and down at so many of the places, in the geocentric frame, each by the model of
    /// its date; or their changes in a year.
    #[inline(always)]
    pub fn parts<const FMA: bool, const CHANGE: bool>(&self, count: usize, into: [&mut Column; 3]) {
        const { assert!(DEGREE == 12) };
        let [older, newer] = &*MODELS;
        let groups = count.div_ceil(WIDTH);
        let [norths, easts, downs] = into;
        pass!(sine in self.sines.as_chunks::<WIDTH>().0.iter().take(groups), cosine in self.cosines.as_chunks().0,
            longitude_sine in self.longitude_sines.as_chunks().0, longitude_cosine in self.longitude_cosines.as_chunks().0,
            ratio in self.ratios.as_chunks().0, years in self.years.as_chunks().0, north in norths.as_chunks_mut().0,
            east in easts.as_chunks_mut().0, down in downs.as_chunks_mut().0, => {
            let place = Place {
                sine: Lanes(*sine),
                cosine: Lanes(*cosine),
                longitude_sine: Lanes(*longitude_sine),
                longitude_cosine: Lanes(*longitude_cosine),
                ratio: Lanes(*ratio),
            };
            let year = Lanes(*years);
            let recent = years.iter().filter(|year| **year >= NEWER_YEAR).count();
            let mut parts = [Lanes::of(0.0); 3];
            if recent < WIDTH {
                parts = place.parts::<FMA, CHANGE>(older, year.less(Lanes::of(OLDER_YEAR)));
            }
            if recent > 0 {
                let others = place.parts::<FMA, CHANGE>(newer, year.less(Lanes::of(NEWER_YEAR)));
                for (part, other) in parts.iter_mut().zip(others) {
                    pass!(value in &mut part.0, other in other.0, year in years, => {
                        *value = if *year >= NEWER_YEAR { other } else { *value };
                    });
                }
            }
            [*north, *east, *down] = parts.map(|part| part.0);
        });
    }
}

/// Whether a place and date are answered for.
#[inline(always)]
pub fn vouched(latitude_deg: f64, longitude_deg: f64, altitude_ft: f64, year: f64) -> bool {
    let within = |value: f64, least: f64, most: f64| (value >= least) & (value <= most);
    within(latitude_deg, -90.0, 90.0)
        & within(longitude_deg, -360.0, 360.0)
        & within(altitude_ft, -16_500.0, 400_000.0)
        & within(year, OLDER_YEAR, 2035.0)
}

impl Kernel for Variation<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        let places =
            Places::of::<FMA>(self.latitude_deg, self.longitude_deg, self.altitude_ft, self.decimal_year);
        let (mut norths, mut easts, mut downs): (Column, Column, Column) =
            (Column::of(0.0), Column::of(0.0), Column::of(0.0));
        places.parts::<FMA, false>(self.latitude_deg.len(), [&mut norths, &mut easts, &mut downs]);
        pass!(north in &mut norths, down in &downs, sine_v in &places.sines_v, cosine_v in &places.cosines_v, => {
            *north = *north * *cosine_v - *down * *sine_v;
        });
        pass!(north in &norths, east in &easts, latitude_deg in self.latitude_deg, longitude_deg in self.longitude_deg,
            altitude_ft in self.altitude_ft, year in self.decimal_year, variation_deg in self.variation_deg, => {
            let vouched = vouched(*latitude_deg, *longitude_deg, *altitude_ft, *year)
                & (*north * *north + *east * *east >= 1.0);
            *variation_deg = if vouched { atan2_deg::<FMA>(*east, *north) } else { f64::NAN };
        });
    }
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use crate::plain::magnetic_field;

    /// Places and dates, some at the poles of the earth and of the field, on the date line, and where one model follows another.
    pub(crate) fn hard_points(steps: std::ops::Range<u32>) -> Vec<[f64; 4]> {
        steps
            .map(|step| {
                let part = |factor: f64| (f64::from(step) * factor).fract();
                let latitude = match step % 50 {
                    0 => 90.0,
                    1 => -90.0,
                    2 => 89.999_999 + 1e-6 * part(0.618_033_988_7),
                    3 => 0.0,
                    // About the magnetic poles.
                    4..8 => 85.0 + 2.0 * part(0.618_033_988_7),
                    8..12 => -63.0 - 3.0 * part(0.618_033_988_7),
                    _ => 180.0 * part(0.618_033_988_7) - 90.0,
                };
                let longitude = match step % 50 {
                    5 => 180.0,
                    6 | 7 => 139.0 + 2.0 * part(0.754_877_666_2),
                    8..12 => 135.0 + 3.0 * part(0.754_877_666_2),
                    _ => 720.0 * part(0.754_877_666_2) - 360.0,
                };
                let year = match step % 7 {
                    0 => 2025.0,
                    1 => 2030.0,
                    _ => 2020.0 + 15.0 * part(0.569_840_290_9),
                };
                [latitude, longitude, 400_000.0 * part(0.819_172_513_4) - 10_000.0, year]
            })
            .collect()
    }

    /// The largest difference from single calls, in nanotesla across the horizontal field.
    fn compared<const FMA: bool>() -> f64 {
        let (mut worst, mut answered) = (0.0_f64, 0);
        for start in (0..30_000_u32).step_by(100) {
            let points = hard_points(start..start + 100);
            let column = |place: usize| points.iter().map(|point| point[place]).collect::<Vec<_>>();
            let mut answers = vec![0.0; points.len()];
            Variation {
                latitude_deg: &column(0),
                longitude_deg: &column(1),
                altitude_ft: &column(2),
                decimal_year: &column(3),
                variation_deg: &mut answers,
            }
            .run::<FMA>();
            for ([latitude, longitude, altitude, year], answer) in points.into_iter().zip(answers) {
                let single = magnetic_field(latitude, longitude, altitude, year).unwrap();
                if answer.is_nan() {
                    assert!(single.horizontal_nt < 1.0);
                    continue;
                }
                let turn = (answer - single.declination_deg + 540.0).rem_euclid(360.0) - 180.0;
                let off_nt = turn.to_radians().abs() * single.horizontal_nt;
                assert!(off_nt.is_finite());
                worst = worst.max(off_nt);
                answered += 1;
            }
        }
        assert!(answered > 29_900, "{answered}");
        worst
    }

    #[test]
    fn as_single_calls_to_a_hundred_millionth_of_a_nanotesla() {
        let (fused, plain) = (compared::<true>(), compared::<false>());
        println!("declination: {fused:e} nT, without fused multiplication {plain:e} nT");
        assert!(fused < 1e-8 && plain < 1e-8);
    }
}
