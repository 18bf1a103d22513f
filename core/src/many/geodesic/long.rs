//! The shortest lines between points anywhere on the earth but near each other's antipode.
//!
//! The ellipsoid's line belongs to an arc on a sphere, between the reduced latitudes and over a longitude difference that is
//! larger by a correction of at most 0.6 degrees, which depends on the arc. It is found by Newton's method: a first step from
//! the plain difference, with the second derivative, and a second one with the whole series. Where the second step ends, what
//! it leaves is of its third order in length and of its second in azimuth.

use super::karney::{
    LENGTH, LENGTH_1, LENGTH_2, LENGTH_3, LENGTH_4, LONGITUDE, LONGITUDE_1, LONGITUDE_2, LONGITUDE_3, ROUGH,
    ROUGH_1,
};
use super::{AXIS_M, FLATTENING, normal};
use crate::many::arithmetic::{polynomial, sum};
use crate::many::functions::{Direction, RADIAN, sin_cos_of_quarter_deg, sin_cos_of_turn_deg};
use crate::many::{Column, Kernel, ROOM, pass};

const MILE_M: f64 = 1852.0;
/// The cosine of the longest arc answered for, 177.5 degrees: up to it the correction changes by less than a third as fast as
/// the longitude, so that there is one solution and the steps lead to it; beyond come the lines that the antipode's fold meets.
const LEAST_COSINE: f64 = -0.999_048_221_581_857_8;
/// The sine of the shortest arc answered for, about ten metres: of shorter ones, whose bearings are off by a nanometre like all, a
/// digit more is asked.
const LEAST_SINE: f64 = 1.6e-6;
/// The largest second step, in radians, that is believed.
const MOST_STEP: f64 = 1e-5;

/// Pairs of points, no more than [`ROOM`], and where the distance between them and the bearings of the shortest line go. Of a
/// bearing without a place (no points) nothing is computed.
///
/// A distance that is NaN asks for the exact path: within ten metres, near the antipode, for longitudes beyond a full circle,
/// and for whatever is outside its range.
pub struct Long<'a> {
    pub lat1_deg: &'a [f64],
    pub lon1_deg: &'a [f64],
    pub lat2_deg: &'a [f64],
    pub lon2_deg: &'a [f64],
    pub distance_nm: &'a mut [f64],
    pub initial_bearing_deg: &'a mut [f64],
    pub final_bearing_deg: &'a mut [f64],
}

/// Sine and cosine of a reduced latitude.
#[inline(always)]
fn reduced<const FMA: bool>(latitude_deg: f64) -> (f64, f64) {
    let (sine, cosine) = sin_cos_of_quarter_deg::<FMA>(latitude_deg);
    reduced_from::<FMA>(sine, cosine)
}

/// Sine and cosine of a reduced latitude from those of the latitude.
#[inline(always)]
pub fn reduced_from<const FMA: bool>(sine: f64, cosine: f64) -> (f64, f64) {
    let normal = normal::<FMA>(sine);
    ((1.0 - FLATTENING) * normal * sine, normal * cosine)
}

/// Sines and cosines of reduced latitudes; where all are the same, computed once.
#[inline(always)]
pub fn reduced_columns<const FMA: bool>(latitudes_deg: &[f64], sines: &mut Column, cosines: &mut Column) {
    let first_deg = latitudes_deg.first().copied().unwrap_or(f64::NAN);
    let differing = |bits: u64, latitude_deg: &f64| bits | (latitude_deg.to_bits() ^ first_deg.to_bits());
    if latitudes_deg.iter().fold(0, differing) == 0 {
        let (sine, cosine) = reduced::<FMA>(first_deg);
        (*sines, *cosines) = (Column::of(sine), Column::of(cosine));
        return;
    }
    pass!(sine in sines, cosine in cosines, latitude_deg in latitudes_deg, => {
        (*sine, *cosine) = reduced::<FMA>(*latitude_deg);
    });
}

/// What lines are found from: sines and cosines of both reduced latitudes, and of the longitude difference.
pub struct Ends {
    pub sines_1: Column,
    pub cosines_1: Column,
    pub sines_2: Column,
    pub cosines_2: Column,
    pub sines: Column,
    pub cosines: Column,
}

/// The arc on the sphere over a longitude difference.
struct Arc {
    sine: f64,
    cosine: f64,
    /// One over the sine.
    inverse: f64,
    /// Sine of the azimuth at the equator, and the square of its cosine: m.
    equator: f64,
    m: f64,
    /// m times the cosine of the sum of both ends' arcs from the equator.
    p: f64,
    /// How fast the sine of the azimuth at the equator grows with the longitude difference.
    growth: f64,
}

impl Arc {
    #[inline(always)]
    fn new<const FMA: bool>(one: (f64, f64), two: (f64, f64), longitude: (f64, f64)) -> Self {
        let across = two.1 * longitude.0;
        let along = sum::<FMA>(one.1, two.0, -(one.0 * two.1 * longitude.1));
        let (sines, cosines) = (one.0 * two.0, one.1 * two.1);
        let sine = sum::<FMA>(across, across, along * along).sqrt();
        let cosine = sum::<FMA>(cosines, longitude.1, sines);
        let inverse = 1.0 / sine;
        let equator = cosines * longitude.0 * inverse;
        let m = sum::<FMA>(-equator, equator, 1.0);
        let p = sum::<FMA>(m, cosine, -2.0 * sines);
        let growth = inverse * sum::<FMA>(cosines, longitude.1, -(equator * equator * cosine));
        Self { sine, cosine, inverse, equator, m, p, growth }
    }

    /// By Newton's method with the second derivative, from what the longitude difference is off, with the correction's factor
    /// and its derivative.
    #[inline(always)]
    fn step<const FMA: bool>(&self, off: f64, factor: f64, slope: f64, arc: f64) -> (f64, f64) {
        let inverse = 1.0 / (1.0 - slope);
        let bent = 3.0 * self.growth * sum::<FMA>(-arc * self.cosine, self.inverse, 1.0);
        let second = factor * self.equator * sum::<FMA>(-arc, self.m, bent);
        let step = off * inverse;
        (sum::<FMA>(0.5 * second * inverse, step * step, step), inverse)
    }
}

impl Kernel for Long<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        if self.lat1_deg.len() > ROOM {
            self.distance_nm.fill(f64::NAN);
            return;
        }
        let (mut sines_1, mut cosines_1): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        reduced_columns::<FMA>(self.lat1_deg, &mut sines_1, &mut cosines_1);
        let (mut sines_2, mut cosines_2): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        reduced_columns::<FMA>(self.lat2_deg, &mut sines_2, &mut cosines_2);
        let (mut sines, mut cosines): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(sine in &mut sines, cosine in &mut cosines, lon1_deg in self.lon1_deg, lon2_deg in self.lon2_deg, => {
            (*sine, *cosine) = sin_cos_of_turn_deg::<FMA>(*lon2_deg - *lon1_deg);
        });
        Ends { sines_1, cosines_1, sines_2, cosines_2, sines, cosines }.lines::<FMA>(
            &mut *self.distance_nm,
            self.initial_bearing_deg,
            self.final_bearing_deg,
        );
        pass!(distance_nm in self.distance_nm, lat1_deg in self.lat1_deg, lon1_deg in self.lon1_deg,
            lat2_deg in self.lat2_deg, lon2_deg in self.lon2_deg, => {
            let known = (lat1_deg.abs() <= 90.0) & (lat2_deg.abs() <= 90.0) & (lon1_deg.abs() <= 360.0)
                & (lon2_deg.abs() <= 360.0);
            *distance_nm = if known { *distance_nm } else { f64::NAN };
        });
    }
}

impl Ends {
    /// As [`Long`] computes them, of as many as have a place for a distance; what is asked for may be anything.
    #[inline(always)]
    pub fn lines<const FMA: bool>(
        mut self,
        distance_nm: &mut [f64],
        initial_bearing_deg: &mut [f64],
        final_bearing_deg: &mut [f64],
    ) {
        let Self { sines_1, cosines_1, sines_2, cosines_2, sines, cosines } = &mut self;
        let (sines_1, cosines_1, sines_2, cosines_2) = (&*sines_1, &*cosines_1, &*sines_2, &*cosines_2);
        // The arc over the difference itself, and from it the first step.
        let (mut arc_sines, mut arc_cosines, mut arcs): (Column, Column, Column) =
            (Column::of(0.0), Column::of(0.0), Column::of(0.0));
        pass!(s1 in sines_1, c1 in cosines_1, s2 in sines_2, c2 in cosines_2, sine in &*sines,
            cosine in &*cosines, arc_sine in &mut arc_sines, arc_cosine in &mut arc_cosines, => {
            let (across, along) = (*c2 * *sine, sum::<FMA>(*c1, *s2, -(*s1 * *c2 * *cosine)));
            *arc_sine = sum::<FMA>(across, across, along * along).sqrt();
            *arc_cosine = sum::<FMA>(*c1 * *c2, *cosine, *s1 * *s2);
        });
        let (mut overs, mut steps): (Column, Column) = (Column::of(0.0), Column::of(0.0));
        pass!(eighths_deg in &mut arcs, over in &mut overs, arc_sine in &arc_sines, arc_cosine in &arc_cosines, => {
            Direction { eighths_deg: *eighths_deg, over: *over } = Direction::of::<FMA>(*arc_sine, *arc_cosine);
        });
        pass!(arc in &mut arcs, over in &overs, => {
            *arc = RADIAN * Direction { eighths_deg: *arc, over: *over }.deg::<FMA>();
        });
        pass!(s1 in sines_1, c1 in cosines_1, s2 in sines_2, c2 in cosines_2, sine in &mut *sines,
            cosine in &mut *cosines, arc in &arcs, step in &mut steps, => {
            let first = Arc::new::<FMA>((*s1, *c1), (*s2, *c2), (*sine, *cosine));
            let factor = polynomial::<FMA, 2>(first.m, ROUGH);
            let bent = first.sine * first.p;
            let correction = factor * first.equator * sum::<FMA>(bent, polynomial::<FMA, 2>(first.m, ROUGH_1), *arc);
            let slope = factor * sum::<FMA>(*arc, first.growth, first.equator * first.equator);
            let (x, _) = first.step::<FMA>(correction, factor, slope, *arc);
            let z = x * x;
            let step_sine = x * polynomial::<FMA, 3>(z, [1.0, -1.0 / 6.0, 1.0 / 120.0]);
            let step_cosine = polynomial::<FMA, 3>(z, [1.0, -0.5, 1.0 / 24.0]);
            *step = x;
            (*sine, *cosine) = (
                sum::<FMA>(*sine, step_cosine, *cosine * step_sine),
                sum::<FMA>(*cosine, step_cosine, -(*sine * step_sine)),
            );
        });

        // The arc there, the residue of the longitude, and from it the length and the second step.
        pass!(s1 in sines_1, c1 in cosines_1, s2 in sines_2, c2 in cosines_2, sine in &mut *sines,
            cosine in &mut *cosines, arc in &arcs, arc_sine in &arc_sines, arc_cosine in &arc_cosines, step in &steps,
            distance_nm in &mut *distance_nm, => {
            let second = Arc::new::<FMA>((*s1, *c1), (*s2, *c2), (*sine, *cosine));
            let Arc { sine: sine_2, cosine: cosine_2, equator, m, p, growth, .. } = second;
            let turned = sum::<FMA>(sine_2, *arc_cosine, -(cosine_2 * *arc_sine));
            let z = turned * turned;
            let arc_2 = *arc + turned * polynomial::<FMA, 4>(z, [1.0, 1.0 / 6.0, 3.0 / 40.0, 5.0 / 112.0]);
            // Cosines of multiples of the ends' sum and sines of those of the arc, over the first sine.
            let (mm, pp, twice) = (m * m, p * p, cosine_2 + cosine_2);
            let p2 = sum::<FMA>(pp, 2.0, -mm) * cosine_2;
            let p3 = p * sum::<FMA>(pp, 4.0, -3.0 * mm) * sum::<FMA>(twice, twice, -1.0);
            let p4 = sum::<FMA>(8.0 * pp, pp - mm, mm * mm) * cosine_2 * sum::<FMA>(twice, cosine_2, -1.0);
            let factor = polynomial::<FMA, 4>(m, LONGITUDE);
            let waves = sum::<FMA>(p, polynomial::<FMA, 3>(m, LONGITUDE_1),
                sum::<FMA>(p2, polynomial::<FMA, 2>(m, LONGITUDE_2), p3 * polynomial::<FMA, 1>(m, LONGITUDE_3)));
            let correction = factor * equator * sum::<FMA>(sine_2, waves, arc_2);
            let residue = *step - correction;
            // The derivative with that of the first wave and of the factor.
            let (slow, even) = (equator * equator, second.sine * p);
            let wave = sum::<FMA>(growth, even,
                slow * sum::<FMA>(cosine_2, p, -(sine_2 * sum::<FMA>(2.0 * growth, cosine_2, m * sine_2))));
            let slope = sum::<FMA>(factor, sum::<FMA>(ROUGH_1[0], wave, sum::<FMA>(arc_2, growth, slow)),
                (-2.0 * ROUGH[1]) * slow * growth * arc_2);
            let (x, inverse) = second.step::<FMA>(-residue, factor, slope, arc_2);
            let waves = sum::<FMA>(p, polynomial::<FMA, 4>(m, LENGTH_1),
                sum::<FMA>(p2, polynomial::<FMA, 3>(m, LENGTH_2),
                    sum::<FMA>(p3, polynomial::<FMA, 2>(m, LENGTH_3), p4 * polynomial::<FMA, 1>(m, LENGTH_4))));
            let length = polynomial::<FMA, 5>(m, LENGTH) * sum::<FMA>(sine_2, waves, arc_2);
            let shift = sum::<FMA>(0.5 * growth * inverse, residue, -equator) * residue;
            let vouched = (*arc_cosine > LEAST_COSINE) & (*arc_sine > LEAST_SINE) & (x.abs() < MOST_STEP);
            *distance_nm = if vouched { (AXIS_M / MILE_M) * (length + shift) } else { f64::NAN };
            let near_one = sum::<FMA>(-0.5 * x, x, 1.0);
            (*sine, *cosine) = (
                sum::<FMA>(*cosine, x, *sine * near_one),
                sum::<FMA>(-*sine, x, *cosine * near_one),
            );
        });
        pass!(eighths_deg in &mut *initial_bearing_deg, over in &mut overs, s1 in sines_1, c1 in cosines_1,
            s2 in sines_2, c2 in cosines_2, sine in &*sines, cosine in &*cosines, => {
            let north = sum::<FMA>(*c1, *s2, -(*s1 * *c2 * *cosine));
            Direction { eighths_deg: *eighths_deg, over: *over } = Direction::of::<FMA>(*c2 * *sine, north);
        });
        pass!(bearing_deg in initial_bearing_deg, over in &overs, => {
            *bearing_deg = bearing::<FMA>(Direction { eighths_deg: *bearing_deg, over: *over });
        });
        pass!(eighths_deg in &mut *final_bearing_deg, over in &mut overs, s1 in sines_1, c1 in cosines_1,
            s2 in sines_2, c2 in cosines_2, sine in &*sines, cosine in &*cosines, => {
            let north = sum::<FMA>(*c1 * *s2, *cosine, -(*s1 * *c2));
            Direction { eighths_deg: *eighths_deg, over: *over } = Direction::of::<FMA>(*c1 * *sine, north);
        });
        pass!(bearing_deg in final_bearing_deg, over in &overs, => {
            *bearing_deg = bearing::<FMA>(Direction { eighths_deg: *bearing_deg, over: *over });
        });
    }
}

/// The bearing of a direction, 0 to 360.
#[inline(always)]
pub fn bearing<const FMA: bool>(direction: Direction) -> f64 {
    let counted = direction.deg::<FMA>();
    let positive = counted + if counted < 0.0 { 360.0 } else { 0.0 };
    positive - if positive >= 360.0 { 360.0 } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::geodesic_inverse;

    /// What the loop is off from Karney's solution, in metres: along, and across at either end. The bearing of a long line
    /// moves its far end by the sine of the arc only.
    #[derive(Debug, Default)]
    struct Worst {
        along_m: f64,
        across_m: f64,
        alone: usize,
        all: usize,
    }

    fn compared<const FMA: bool>(pairs: &[[f64; 4]], worst: &mut Worst) {
        for pairs in pairs.chunks(ROOM) {
            let column = |place: usize| pairs.iter().map(|pair| pair[place]).collect::<Vec<_>>();
            let (mut distances, mut initials, mut finals) =
                (Column::of(0.0), Column::of(0.0), Column::of(0.0));
            Long {
                lat1_deg: &column(0),
                lon1_deg: &column(1),
                lat2_deg: &column(2),
                lon2_deg: &column(3),
                distance_nm: &mut distances[..pairs.len()],
                initial_bearing_deg: &mut initials[..pairs.len()],
                final_bearing_deg: &mut finals[..pairs.len()],
            }
            .run::<FMA>();
            for (index, [lat1, lon1, lat2, lon2]) in pairs.iter().copied().enumerate() {
                worst.all += 1;
                let karney = geodesic_inverse(lat1, lon1, lat2, lon2).unwrap();
                if distances[index].is_nan() {
                    let ordinary = (11.0 / 1852.0..10_600.0).contains(&karney.distance_nm);
                    assert!(!ordinary, "{lat1} {lon1} {lat2} {lon2}: not answered");
                    worst.alone += 1;
                    continue;
                }
                let along_m = (distances[index] - karney.distance_nm).abs() * MILE_M;
                let lever_m = (karney.distance_nm * MILE_M / AXIS_M).sin() * AXIS_M;
                for (bearing, single) in
                    [(initials[index], karney.initial_bearing_deg), (finals[index], karney.final_bearing_deg)]
                {
                    assert!((0.0..360.0).contains(&bearing), "{bearing}");
                    let turn = (bearing - single + 540.0).rem_euclid(360.0) - 180.0;
                    worst.across_m = worst.across_m.max((turn.to_radians() * lever_m).abs());
                }
                worst.along_m = worst.along_m.max(along_m);
                assert!(
                    worst.along_m < 1e-6 && worst.across_m < 4e-6,
                    "{lat1} {lon1} {lat2} {lon2}: {worst:?}"
                );
            }
        }
    }

    struct Random(u64);

    impl Random {
        fn next(&mut self) -> f64 {
            self.0 ^= self.0 << 13;
            self.0 ^= self.0 >> 7;
            self.0 ^= self.0 << 17;
            (self.0 >> 11) as f64 / (1_u64 << 53) as f64
        }

        fn between(&mut self, low: f64, high: f64) -> f64 {
            low + (high - low) * self.next()
        }

        fn point(&mut self) -> [f64; 2] {
            [self.between(-1.0, 1.0).asin().to_degrees(), self.between(-180.0, 180.0)]
        }

        /// A scale between 10^-7 and 1.
        fn scale(&mut self) -> f64 {
            10_f64.powf(self.between(-7.0, 0.0))
        }
    }

    /// All over the earth, near each other, about the poles, on the equator, on a meridian, and about the antipode.
    fn pairs(count: usize, random: &mut Random) -> Vec<[f64; 4]> {
        (0..count)
            .map(|index| {
                let [lat1, lon1] = random.point();
                let [lat2, lon2] = random.point();
                let (turn, scale, size) =
                    (random.between(0.0, 360.0).to_radians(), random.scale(), random.next());
                match index % 8 {
                    0 | 1 => [lat1, lon1, lat2, lon2],
                    2 => [
                        lat1,
                        lon1,
                        (lat1 + 20.0 * scale * turn.cos()).clamp(-90.0, 90.0),
                        lon1 + 40.0 * scale * turn.sin(),
                    ],
                    3 => [(90.0 - scale).copysign(lat1), lon1, lat2, lon2],
                    4 => [0.0, lon1, if size < 0.5 { 0.0 } else { scale.copysign(lat2) }, lon2],
                    5 => [lat1, lon1, lat2, if size < 0.5 { lon1 } else { lon1 - 180.0 }],
                    6 => {
                        let away = 8.0 * size;
                        [
                            lat1,
                            lon1,
                            (-lat1 + away * turn.cos()).clamp(-90.0, 90.0),
                            (lon1 + 360.0) % 360.0 - 180.0 + away * turn.sin(),
                        ]
                    }
                    _ => {
                        let lat1 = (90.0 - 10.0 * scale).copysign(lat1);
                        [
                            lat1,
                            lon1,
                            (90.0 - 10.0 * size).copysign(if turn < 3.0 { lat1 } else { -lat1 }),
                            lon2,
                        ]
                    }
                }
            })
            .collect()
    }

    fn to_a_micrometre(count: usize) {
        let mut random = Random(0x2545_f491_4f6c_dd1d);
        let pairs = pairs(count, &mut random);
        let (mut fused, mut plain) = (Worst::default(), Worst::default());
        compared::<true>(&pairs, &mut fused);
        compared::<false>(&pairs, &mut plain);
        println!("{fused:?}; without fused multiplication {plain:?}");
        assert!(fused.alone < fused.all / 8, "{fused:?}");
    }

    #[test]
    fn pairs_are_within_their_bounds() {
        to_a_micrometre(100_000);
    }

    /// The same with many more; some minutes.
    #[test]
    #[ignore = "slow"]
    fn twenty_million_pairs_are_within_their_bounds() {
        to_a_micrometre(20_000_000);
    }

    /// Of pairs all over the earth, one in a thousand is left to the exact path.
    #[test]
    fn few_are_left() {
        let mut random = Random(77);
        let pairs: Vec<[f64; 4]> = (0..50_000)
            .map(|_| {
                let ([lat1, lon1], [lat2, lon2]) = (random.point(), random.point());
                [lat1, lon1, lat2, lon2]
            })
            .collect();
        let mut worst = Worst::default();
        compared::<true>(&pairs, &mut worst);
        assert!(worst.alone < 50, "{worst:?}");
    }
}
