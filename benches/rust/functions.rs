//! The hot functions, each over a thousand points, beside a peer where one exists. Compare within a group of one run only.
//!
//! Run: cargo bench -p lubberline-benches

use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use geographiclib_rs::{Geodesic, InverseGeodesic};
use lubberline::lead::{ArcSense, CourseChange, RadialFlown, TurnSide};
use lubberline::plain::table::Function;
use lubberline::plain::{self, CourseChangeInput};
use lubberline::turn::TurnLimits;
use lubberline::value::units::{degrees, knots, nautical_mile};
use lubberline::value::{TrueAirspeed, TrueBearing, WindSpeed};
use lubberline::wind::Wind;

const POINTS: u64 = 1000;

/// Positions spread about a station, the same in every run.
fn positions() -> Vec<(f64, f64)> {
    let mut seed = 0x2545_f491_4f6c_dd1d_u64;
    let mut next = || {
        seed ^= seed << 13;
        seed ^= seed >> 7;
        seed ^= seed << 17;
        (seed >> 11) as f64 / (1_u64 << 53) as f64
    };
    (0..POINTS).map(|_| (58.0 + 6.0 * next(), -18.0 + 12.0 * next())).collect()
}

fn geodesic(criterion: &mut Criterion) {
    let points = positions();
    let wgs84 = Geodesic::wgs84();
    let mut group = criterion.benchmark_group("geodesic inverse");
    group.throughput(Throughput::Elements(POINTS));
    group.bench_function("geographiclib-rs (peer)", |bencher| {
        bencher.iter(|| {
            for (latitude, longitude) in &points {
                let answer: (f64, f64, f64, f64) =
                    wgs84.inverse(61.0, -12.0, black_box(*latitude), *longitude);
                black_box(answer);
            }
        });
    });
    group.bench_function("geo Geodesic distance and bearing (peer)", |bencher| {
        use geo::{Bearing, Distance, Geodesic, Point};
        let station = Point::new(-12.0, 61.0);
        bencher.iter(|| {
            for (latitude, longitude) in &points {
                let point = Point::new(*longitude, black_box(*latitude));
                black_box((Geodesic.distance(station, point), Geodesic.bearing(station, point)));
            }
        });
    });
    group.bench_function("geodesic_inverse", |bencher| {
        bencher.iter(|| {
            for (latitude, longitude) in &points {
                let _ = black_box(plain::geodesic_inverse(61.0, -12.0, black_box(*latitude), *longitude));
            }
        });
    });
    group.bench_function("observe", |bencher| {
        bencher.iter(|| {
            for (latitude, longitude) in &points {
                let _ = black_box(plain::observe(
                    61.0,
                    -12.0,
                    400.0,
                    -6.0,
                    black_box(*latitude),
                    *longitude,
                    33_000.0,
                ));
            }
        });
    });
    group.finish();
}

fn formulas(criterion: &mut Criterion) {
    let speeds: Vec<f64> = (0..POINTS).map(|index| 200.0 + 0.1 * index as f64).collect();
    let mut group = criterion.benchmark_group("formulas");
    group.throughput(Throughput::Elements(POINTS));
    let mut each = |name: &str, function: &dyn Fn(f64) -> f64| {
        group.bench_function(name, |bencher| {
            bencher.iter(|| {
                for speed in &speeds {
                    black_box(function(black_box(*speed)));
                }
            });
        });
    };
    each("sine and cosine (peer)", &|speed| speed.sin() + speed.cos());
    each("slant_range_nm", &|speed| plain::slant_range_nm(speed, 33_000.0).unwrap_or(f64::NAN));
    each("tas_from_cas_kt", &|speed| plain::tas_from_cas_kt(speed, 33_000.0, 8.0).unwrap_or(f64::NAN));
    each("wind_triangle", &|speed| {
        plain::wind_triangle(40.0, speed, 270.0, 60.0).map_or(f64::NAN, |answer| answer.heading_deg)
    });
    each("turn_radius_nm", &|speed| plain::turn_radius_nm(speed, 25.0).unwrap_or(f64::NAN));
    // Through a pointer that the compiler does not see behind, as from another language: not taken into the loop.
    type OfTwo = fn(f64, f64) -> Result<f64, lubberline::Error>;
    let (slant_range, turn_radius): (OfTwo, OfTwo) =
        black_box((plain::slant_range_nm, plain::turn_radius_nm));
    each("slant_range_nm, called", &|speed| slant_range(speed, 33_000.0).unwrap_or(f64::NAN));
    each("turn_radius_nm, called", &|speed| turn_radius(speed, 25.0).unwrap_or(f64::NAN));
    each("lead_nm, instant roll", &|speed| {
        plain::lead_nm(40.0, 110.0, speed, 270.0, 60.0, 25.0, 3.0, f64::INFINITY).unwrap_or(f64::NAN)
    });
    each("lead_nm, 5 degrees per second", &|speed| {
        plain::lead_nm(40.0, 110.0, speed, 270.0, 60.0, 25.0, 3.0, 5.0).unwrap_or(f64::NAN)
    });
    each("CourseChange, the lead alone", &|speed| {
        let course = |value| TrueBearing::new(degrees(value));
        let change = || {
            let wind = Wind { from: course(270.0)?, speed: WindSpeed::new(knots(60.0))? };
            let airspeed = TrueAirspeed::new(knots(speed))?;
            CourseChange::new(
                course(40.0)?,
                course(110.0)?,
                airspeed,
                wind,
                &TurnLimits::default(),
                TurnSide::Shortest,
            )
        };
        change().map_or(f64::NAN, |change| change.lead().get::<nautical_mile>())
    });
    each("arc_entry", &|speed| {
        let (flown, sense) = (RadialFlown::Inbound, ArcSense::Clockwise);
        plain::arc_entry(300.0, flown, 12.0, sense, speed, 250.0, 40.0, 25.0, 3.0, 5.0)
            .map_or(f64::NAN, |turn| turn.duration_s)
    });
    each("arc_exit", &|speed| {
        let (flown, sense) = (RadialFlown::Inbound, ArcSense::Clockwise);
        plain::arc_exit(300.0, flown, 12.0, sense, speed, 250.0, 40.0, 25.0, 3.0, 5.0)
            .map_or(f64::NAN, |turn| turn.duration_s)
    });
    each("course_change, with what flying over costs", &|speed| {
        let input = CourseChangeInput {
            wind_from_deg: 270.0,
            wind_speed_kt: 60.0,
            height_above_station_ft: 33_000.0,
            ..CourseChangeInput::new(40.0, 110.0, speed)
        };
        plain::course_change(&input).map_or(f64::NAN, |answer| answer.lead_nm)
    });
    group.finish();
}

/// Columns through the loops that arrays take, and the same points one by one.
fn arrays(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("arrays");
    group.throughput(Throughput::Elements(POINTS));
    let ranges: [(&str, &[(f64, f64)]); 9] = [
        (
            "observe",
            &[
                (61.0, 61.0),
                (-12.0, -12.0),
                (420.0, 420.0),
                (-8.0, -8.0),
                (58.0, 64.0),
                (-18.0, -6.0),
                (0.0, 40_000.0),
            ],
        ),
        ("geodesic_inverse", &[(-90.0, 90.0), (-180.0, 180.0), (-90.0, 90.0), (-180.0, 180.0)]),
        ("geodesic_direct", &[(61.0, 61.0), (-12.0, -12.0), (0.0, 360.0), (0.0, 5000.0)]),
        ("tas_from_cas_kt", &[(120.0, 300.0), (0.0, 45_000.0), (-10.0, 20.0)]),
        ("wind_triangle", &[(0.0, 360.0), (120.0, 500.0), (0.0, 360.0), (0.0, 100.0)]),
        ("slant_range_nm", &[(0.0, 300.0), (0.0, 45_000.0)]),
        (
            "lead_nm",
            &[
                (0.0, 180.0),
                (200.0, 340.0),
                (120.0, 500.0),
                (0.0, 360.0),
                (0.0, 100.0),
                (25.0, 25.0),
                (3.0, 3.0),
                (5.0, 5.0),
            ],
        ),
        ("variation_deg", &[(-90.0, 90.0), (-180.0, 180.0), (0.0, 40_000.0), (2025.0, 2030.0)]),
        ("magnetic_field", &[(-90.0, 90.0), (-180.0, 180.0), (0.0, 40_000.0), (2025.0, 2030.0)]),
    ];
    for (name, ranges) in ranges {
        let Some(function) = Function::named(name) else { continue };
        // What is the same for all points is one number.
        let column = |(place, (low, high)): (usize, &(f64, f64))| -> Vec<f64> {
            if low == high {
                return vec![*low];
            }
            let step = 0.618_033_988_7 + 0.037 * place as f64;
            (0..POINTS).map(|point| low + (high - low) * (point as f64 * step).fract()).collect()
        };
        let columns: Vec<Vec<f64>> = ranges.iter().enumerate().map(column).collect();
        let given: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
        let mut answers = vec![vec![0.0; POINTS as usize]; function.outputs.len()];
        let mut statuses = vec![0; POINTS as usize];
        group.bench_function(format!("{name}, together"), |bencher| {
            bencher.iter(|| {
                let mut places: Vec<&mut [f64]> = answers.iter_mut().map(Vec::as_mut_slice).collect();
                (function.block)(black_box(&given), &mut places, &mut statuses);
            });
        });
        group.bench_function(format!("{name}, one by one"), |bencher| {
            let (mut point, mut answer) = (vec![0.0; ranges.len()], vec![0.0; function.outputs.len()]);
            bencher.iter(|| {
                for index in 0..POINTS as usize {
                    for (value, column) in point.iter_mut().zip(&given) {
                        *value = column.get(index.min(column.len() - 1)).copied().unwrap_or(f64::NAN);
                    }
                    let _ = black_box((function.run)(&point, &mut answer));
                }
            });
        });
    }
    group.finish();
}

criterion_group! {
    name = benches;
    config = Criterion::default()
        .warm_up_time(std::time::Duration::from_millis(300))
        .measurement_time(std::time::Duration::from_secs(1))
        .sample_size(30);
    targets = geodesic, formulas, arrays
}
criterion_main!(benches);
