//! Many points at once: loops without branches, which the compiler turns into vector instructions.
//!
//! A kernel computes whole columns, each point from itself alone. It is written once and compiled for several processors:
//! for the one the library was built for, and for those whose [`Instructions`] are found as the program runs. Only fused
//! multiplication makes a difference to an answer, and that in rounding. Calls to the system's mathematics would keep a
//! loop from being vectorised, hence the [`functions`] here.

pub mod airspeed;
pub mod arithmetic;
pub mod atmosphere;
pub mod bounds;
pub mod declination;
pub mod functions;
pub mod geodesic;
#[cfg(all(target_arch = "x86_64", not(feature = "baseline")))]
mod instructions;
pub mod lanes;
pub mod lead;
mod loops;
pub mod magnetic_field;
pub mod observe;
pub mod roll;
pub mod slant_range;
pub mod turn_radius;
pub mod wind_triangle;

#[cfg(all(target_arch = "x86_64", not(feature = "baseline")))]
use instructions::Instructions;
pub(crate) use loops::pass;
pub use loops::{Column, Kernel, ROOM};

/// Runs a kernel by the best instructions there are, or by those asked for.
// The one place of the library that needs the word: the calls of functions compiled for another processor.
#[allow(unsafe_code)]
pub fn run<K: Kernel>(kernel: K) {
    #[cfg(all(target_arch = "x86_64", not(feature = "baseline")))]
    {
        #[target_feature(enable = "avx2,fma")]
        fn four<K: Kernel>(kernel: K) {
            kernel.run::<true>();
        }
        #[target_feature(enable = "avx512f,avx512dq,avx512bw,avx512vl,avx2,fma")]
        fn eight<K: Kernel>(kernel: K) {
            kernel.run::<true>();
        }
        match Instructions::best() {
            // SAFETY: the processor has been found to have these instructions.
            Instructions::Eight => return unsafe { eight(kernel) },
            // SAFETY: as above.
            Instructions::Four => return unsafe { four(kernel) },
            Instructions::Baseline => {}
        }
    }
    kernel.run::<{ cfg!(target_arch = "aarch64") }>();
}

#[cfg(test)]
mod tests {
    use crate::plain::table::Function;

    /// Functions with loops of their own, and ranges to draw their arguments from; an empty one is that number.
    const LOOPS: [(&str, &[(f64, f64)]); 10] = [
        ("standard_atmosphere", &[(-20_000.0, 270_000.0), (-160.0, 160.0)]),
        ("tas_from_cas_kt", &[(0.0, 700.0), (-17_000.0, 80_000.0), (-60.0, 60.0)]),
        ("cas_from_tas_kt", &[(0.0, 700.0), (-17_000.0, 80_000.0), (-60.0, 60.0)]),
        ("mach_from_cas", &[(0.0, 700.0), (-17_000.0, 80_000.0)]),
        ("wind_triangle", &[(-400.0, 400.0), (0.0, 300.0), (-400.0, 400.0), (0.0, 120.0)]),
        ("slant_range_nm", &[(0.0, 6000.0), (-70_000.0, 420_000.0)]),
        ("turn_radius_nm", &[(0.0, 5100.0), (0.0, 91.0)]),
        (
            "lead_nm",
            &[
                (-400.0, 400.0),
                (-400.0, 400.0),
                (50.0, 500.0),
                (0.0, 360.0),
                (0.0, 100.0),
                (1.0, 50.0),
                (3.0, 3.0),
                (5.0, 5.0),
            ],
        ),
        ("magnetic_field", &[(-91.0, 91.0), (-370.0, 370.0), (-20_000.0, 410_000.0), (2019.0, 2036.0)]),
        ("variation_deg", &[(-91.0, 91.0), (-370.0, 370.0), (-20_000.0, 410_000.0), (2019.0, 2036.0)]),
    ];

    /// The same point gives the same bits wherever it stands, in an array of any length, and among whatever neighbours.
    #[test]
    fn a_place_in_the_array_is_nothing_to_a_point() {
        let mut seed = 0x2545_f491_4f6c_dd1d_u64;
        let mut next = || {
            seed ^= seed << 13;
            seed ^= seed >> 7;
            seed ^= seed << 17;
            (seed >> 11) as f64 / (1_u64 << 53) as f64
        };
        for (name, ranges) in LOOPS {
            let function = Function::named(name).unwrap();
            let mut draw = || -> Vec<f64> {
                ranges
                    .iter()
                    .map(|(low, high)| if low == high { *low } else { low + (high - low) * next() })
                    .collect()
            };
            let mut points: Vec<Vec<f64>> = (0..1000).map(|_| draw()).collect();
            if name == "lead_nm" {
                points.iter_mut().step_by(3).for_each(|point| point[7] = f64::INFINITY);
            }
            let all = |points: &[Vec<f64>]| {
                let columns: Vec<Vec<f64>> = (0..function.inputs.len())
                    .map(|place| points.iter().map(|point| point[place]).collect())
                    .collect();
                let given: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
                let mut answers = vec![vec![0.0; points.len()]; function.outputs.len()];
                let mut places: Vec<&mut [f64]> = answers.iter_mut().map(Vec::as_mut_slice).collect();
                let mut statuses = vec![0; points.len()];
                (function.block)(&given, &mut places, &mut statuses);
                let bits =
                    |index: usize| answers.iter().map(|answer| answer[index].to_bits()).collect::<Vec<_>>();
                (0..points.len()).map(|index| (statuses[index], bits(index))).collect::<Vec<_>>()
            };
            let together = all(&points);
            assert!(together.iter().filter(|(status, _)| *status == 0).count() > 300, "{name}");
            for length in [1, 3, 7, 129, 333] {
                let parts: Vec<_> = points.chunks(length).flat_map(all).collect();
                assert!(parts == together, "{name} by {length}");
            }
        }
    }

    /// What is no number, or none that is allowed, is for an array what it is for a single call: among points that are answered for,
    /// by itself, and where all points of a part have it.
    #[test]
    fn what_is_refused_is_refused_among_any_points() {
        let bad = [f64::NAN, -f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1e300, 1e300];
        let (observe, lead) = (
            &[61.0, -12.0, 420.0, -8.0, 61.5, -11.0, 31_000.0],
            &[40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0],
        );
        let instant: Vec<f64> = lead.iter().copied().chain([f64::INFINITY]).collect();
        let rolled: Vec<f64> = lead.iter().copied().chain([5.0]).collect();
        let points: [(&str, &[f64]); 14] = [
            ("observe", observe),
            ("geodesic_inverse", &[61.0, -12.0, 40.0, 100.0]),
            ("geodesic_direct", &[61.0, -12.0, 80.0, 300.0]),
            ("standard_atmosphere", &[31_000.0, 5.0]),
            ("tas_from_cas_kt", &[250.0, 31_000.0, 5.0]),
            ("cas_from_tas_kt", &[430.0, 31_000.0, 5.0]),
            ("mach_from_cas", &[250.0, 31_000.0]),
            ("wind_triangle", &[40.0, 430.0, 270.0, 60.0]),
            ("slant_range_nm", &[10.0, 31_000.0]),
            ("turn_radius_nm", &[430.0, 25.0]),
            ("lead_nm", &instant),
            ("lead_nm", &rolled),
            ("variation_deg", &[61.0, -12.0, 31_000.0, 2026.5]),
            ("magnetic_field", &[61.0, -12.0, 31_000.0, 2026.5]),
        ];
        for (name, good) in points {
            let function = Function::named(name).unwrap();
            let shape = |answers: &[f64], status: i32| {
                (answers.iter().map(|value| value.is_nan()).collect::<Vec<_>>(), status)
            };
            for (place, value) in (0..good.len()).flat_map(|place| bad.map(|value| (place, value))) {
                let point = |is_bad: bool| {
                    let mut point = good.to_vec();
                    point[place] = if is_bad { value } else { point[place] };
                    point
                };
                let wanted = [false, true].map(|is_bad| {
                    let mut answers = vec![0.0; function.outputs.len()];
                    let result = (function.run)(&point(is_bad), &mut answers);
                    shape(&answers, result.map_or_else(|error| error.code(), |()| 0))
                });
                // Which of the points are bad: all, every other, the last one alone in its part.
                let among: [&dyn Fn(usize) -> bool; 3] =
                    [&|_| true, &|index| index % 2 == 1, &|index| index == 128];
                for (count, is_bad) in
                    [1, 7, 129].into_iter().flat_map(|count| among.map(|is_bad| (count, is_bad)))
                {
                    let points: Vec<Vec<f64>> = (0..count).map(|index| point(is_bad(index))).collect();
                    let columns: Vec<Vec<f64>> = (0..good.len())
                        .map(|place| points.iter().map(|point| point[place]).collect())
                        .collect();
                    let given: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
                    let mut answers = vec![vec![0.0; count]; function.outputs.len()];
                    let mut places: Vec<&mut [f64]> = answers.iter_mut().map(Vec::as_mut_slice).collect();
                    let mut statuses = vec![7; count];
                    (function.block)(&given, &mut places, &mut statuses);
                    for (index, status) in statuses.into_iter().enumerate() {
                        let answer: Vec<f64> = answers.iter().map(|column| column[index]).collect();
                        let wanted = &wanted[usize::from(is_bad(index))];
                        assert_eq!(
                            &shape(&answer, status),
                            wanted,
                            "{name} {:?} {index} of {count}",
                            points[index]
                        );
                    }
                }
            }
        }
    }
}
