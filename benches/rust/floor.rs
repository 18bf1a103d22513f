//! What one point of `observe` costs beside the least there is to compute of it: two sine-cosines, one arctangent and one
//! square root, by the library's own polynomials, over three columns in and three out.
//!
//! The loops are compiled from the library's sources, since they are no part of its interface, and run by each instruction set the
//! processor has, interleaved in one process. Printed is the best of many rounds.
//!
//! Run: cargo run --release -p lubberline-benches --bin floor

use std::hint::black_box;
use std::time::Instant;

use many::functions::{Direction, atan2_deg, sin_cos_deg, sin_cos_of_quarter_deg, sin_cos_of_turn_deg};
use many::observe::{Columns, Observe, Station};
use many::{Column, Kernel, ROOM, pass};

#[allow(dead_code, unused_imports, missing_docs, reason = "only some of the library's loops are timed here")]
mod many;

/// The floor: columns in and out.
struct Floor<'a> {
    given: [&'a [f64]; 3],
    answers: [&'a mut [f64]; 3],
    way: Way,
}

/// How the floor is computed.
#[derive(Debug, Clone, Copy)]
enum Way {
    /// For any angle, to two units of the last place, in one loop.
    OneLoop,
    /// The same in short passes.
    Passes,
    /// In short passes by what `observe` itself uses: cheaper sines and cosines, one of them to 90 degrees only.
    Cheap,
}

impl Kernel for Floor<'_> {
    #[inline(always)]
    fn run<const FMA: bool>(self) {
        let ([first, second, third], [direction, root, product]) = (self.given, self.answers);
        if matches!(self.way, Way::OneLoop) {
            pass!(a in first, b in second, c in third, x in direction, y in root, z in product, => {
                let ((sine_1, cosine_1), (sine_2, cosine_2)) = (sin_cos_deg::<FMA>(*a), sin_cos_deg::<FMA>(*b));
                *x = atan2_deg::<FMA>(cosine_1 * sine_2, sine_1);
                (*y, *z) = (c.sqrt(), cosine_1 * cosine_2);
            });
            return;
        }
        let (mut sines, mut cosines, mut easts) = (Column::of(0.0), Column::of(0.0), Column::of(0.0));
        let given = first.chunks(ROOM).zip(second.chunks(ROOM)).zip(third.chunks(ROOM));
        let answers = direction.chunks_mut(ROOM).zip(root.chunks_mut(ROOM)).zip(product.chunks_mut(ROOM));
        for (((first, second), third), ((direction, root), product)) in given.zip(answers) {
            if matches!(self.way, Way::Passes) {
                pass!(a in first, sine in &mut sines, cosine in &mut cosines, => {
                    (*sine, *cosine) = sin_cos_deg::<FMA>(*a);
                });
                pass!(b in second, cosine in &cosines, east in &mut easts, z in product, => {
                    let (sine_2, cosine_2) = sin_cos_deg::<FMA>(*b);
                    (*east, *z) = (*cosine * sine_2, *cosine * cosine_2);
                });
            } else {
                pass!(a in first, sine in &mut sines, cosine in &mut cosines, => {
                    (*sine, *cosine) = sin_cos_of_quarter_deg::<FMA>(*a);
                });
                pass!(b in second, cosine in &cosines, east in &mut easts, z in product, => {
                    let (sine_2, cosine_2) = sin_cos_of_turn_deg::<FMA>(*b);
                    (*east, *z) = (*cosine * sine_2, *cosine * cosine_2);
                });
            }
            pass!(sine in &mut sines, east in &mut easts, c in third, y in root, => {
                let direction = Direction::of::<FMA>(*east, *sine);
                (*sine, *east, *y) = (direction.eighths_deg, direction.over, c.sqrt());
            });
            pass!(eighths_deg in &sines, over in &easts, x in direction, => {
                *x = Direction { eighths_deg: *eighths_deg, over: *over }.deg::<FMA>();
            });
        }
    }
}

/// Runs a kernel by the instructions of a name.
#[cfg_attr(not(target_arch = "x86_64"), allow(unused_variables, reason = "there is one set elsewhere"))]
fn run<K: Kernel>(instructions: &str, kernel: K) {
    #[cfg(target_arch = "x86_64")]
    {
        #[target_feature(enable = "avx2,fma")]
        fn four<K: Kernel>(kernel: K) {
            kernel.run::<true>();
        }
        #[target_feature(enable = "avx512f,avx512dq,avx512bw,avx512vl,avx2,fma")]
        fn eight<K: Kernel>(kernel: K) {
            kernel.run::<true>();
        }
        match instructions {
            // SAFETY: `there` has found these instructions.
            "AVX-512" => return unsafe { eight(kernel) },
            // SAFETY: as above.
            "AVX2" => return unsafe { four(kernel) },
            _ => {}
        }
    }
    kernel.run::<{ cfg!(target_arch = "aarch64") }>();
}

/// The instruction sets there are.
#[cfg_attr(not(target_arch = "x86_64"), allow(unused_mut, reason = "there is one set elsewhere"))]
fn there() -> Vec<&'static str> {
    let mut found = vec!["baseline"];
    #[cfg(target_arch = "x86_64")]
    {
        let four = is_x86_feature_detected!("avx2") && is_x86_feature_detected!("fma");
        let eight = is_x86_feature_detected!("avx512f")
            && is_x86_feature_detected!("avx512dq")
            && is_x86_feature_detected!("avx512bw")
            && is_x86_feature_detected!("avx512vl");
        if four {
            found.insert(0, "AVX2");
        }
        if four && eight {
            found.insert(0, "AVX-512");
        }
    }
    found
}

/// Aircraft within 300 NM of a station at 61 N 12 W: latitudes, longitudes and altitudes, the same in every run.
fn aircraft(count: usize) -> [Vec<f64>; 3] {
    let part = |index: usize, factor: f64| (index as f64 * factor).fract();
    let place = |index: usize| {
        let (turn, distance_deg) =
            (part(index, 0.618_033_988_7) * 360.0, 4.9 * part(index, 0.754_877_666_2).sqrt());
        let latitude = 61.0 + distance_deg * turn.to_radians().cos();
        (latitude, -12.0 + distance_deg * turn.to_radians().sin() / latitude.to_radians().cos())
    };
    let (latitudes, longitudes) = (0..count).map(place).unzip();
    [latitudes, longitudes, (0..count).map(|index| 40_000.0 * part(index, 0.569_840_290_9)).collect()]
}

fn main() {
    let station =
        Station { latitude_deg: 61.0, longitude_deg: -12.0, elevation_ft: 420.0, declination_deg: -8.0 };
    println!(
        "| points | instructions | floor, one loop | in passes | in passes, cheap | observe | times the lesser floor | times the cheap one |"
    );
    println!("|---|---|---|---|---|---|---|---|");
    for (count, rounds) in [(1 << 10, 3000), (1 << 20, 40)] {
        let given = aircraft(count);
        let mut answers = [(); 3].map(|()| vec![0.0; count]);
        for instructions in there() {
            let mut best = [f64::INFINITY; 4];
            for _ in 0..rounds {
                for (kind, best) in best.iter_mut().enumerate() {
                    let begin = Instant::now();
                    let [x, y, z] = answers.each_mut().map(Vec::as_mut_slice);
                    let [a, b, c] = given.each_ref().map(Vec::as_slice);
                    match [Way::OneLoop, Way::Passes, Way::Cheap].into_iter().nth(kind) {
                        Some(way) => run(instructions, Floor { given: [a, b, c], answers: [x, y, z], way }),
                        None => run(
                            instructions,
                            Observe {
                                station: black_box(station),
                                latitude_deg: a,
                                longitude_deg: b,
                                altitude_ft: c,
                                radial_deg: Some(x),
                                dme_nm: Some(y),
                                ground_distance_nm: Some(z),
                                elevation_angle_deg: None,
                                asks: &mut false,
                                columns: &mut Columns::new(),
                            },
                        ),
                    }
                    black_box(&mut answers);
                    *best = best.min(begin.elapsed().as_nanos() as f64 / count as f64);
                }
            }
            let [one_loop, passes, cheap, observe] = best;
            let floor = one_loop.min(passes);
            println!(
                "| {count} | {instructions} | {one_loop:.2} | {passes:.2} | {cheap:.2} | {observe:.2} | {:.2} | {:.2} |",
                observe / floor,
                observe / cheap
            );
        }
    }
}
