//! Arrays of observations against Karney's solution and single calls.

use super::*;
use crate::plain::table::Function;
use crate::station::{Ident, Station as Antenna};
use crate::value::units::{degree, degrees, feet, nautical_mile};
use crate::value::{Declination, Elevation, Position, TrueAltitude};

/// Radial, DME, ground distance and elevation angle by Karney's solution alone.
fn by_karney(station: Station, latitude_deg: f64, longitude_deg: f64, altitude_ft: f64) -> [f64; 4] {
    let antenna = Antenna {
        position: Position::derived(station.latitude_deg, station.longitude_deg),
        elevation: Elevation::new(feet(station.elevation_ft)).unwrap(),
        declination: Declination::new(degrees(station.declination_deg)).unwrap(),
        ident: Ident::NONE,
    };
    let altitude = TrueAltitude::new(feet(altitude_ft)).unwrap();
    let seen = antenna.observe_anywhere(Position::derived(latitude_deg, longitude_deg), altitude);
    [
        seen.radial.map_or(f64::NAN, |radial| radial.angle().get::<degree>()),
        seen.dme.value().get::<nautical_mile>(),
        seen.ground_distance.value().get::<nautical_mile>(),
        seen.elevation_angle.get::<degree>(),
    ]
}

/// The largest differences from Karney's solution: along, across, slant in metres, elevation in degrees.
type Worst = [f64; 4];

fn compared<const FMA: bool>(station: Station, points: &[[f64; 3]], worst: &mut Worst) -> usize {
    let mut exact = 0;
    for points in points.chunks(ROOM) {
        let column = |place: usize| points.iter().map(|point| point[place]).collect::<Vec<_>>();
        let (mut answers, mut asks) = ([Column::of(0.0); 4], false);
        let [radial, dme, ground, angle] = answers.each_mut().map(|answer| &mut answer[..points.len()]);
        Observe {
            station,
            latitude_deg: &column(0),
            longitude_deg: &column(1),
            altitude_ft: &column(2),
            radial_deg: Some(radial),
            dme_nm: Some(dme),
            ground_distance_nm: Some(ground),
            elevation_angle_deg: Some(angle),
            asks: &mut asks,
            columns: &mut Columns::new(),
        }
        .run::<FMA>();
        assert!(
            asks || answers.iter().all(|answer| answer[..points.len()].iter().all(|value| value.is_finite()))
        );
        for (index, [latitude, longitude, altitude]) in points.iter().enumerate() {
            let [radial_deg, dme_nm, ground_nm, angle_deg] =
                by_karney(station, *latitude, *longitude, *altitude);
            if answers[2][index].is_nan() {
                let ordinary = (1.1 / 1852.0..10_560.0).contains(&ground_nm);
                assert!(!ordinary, "{station:?} {latitude} {longitude}: not answered");
                exact += 1;
                continue;
            }
            let turn = (answers[0][index] - radial_deg + 540.0).rem_euclid(360.0) - 180.0;
            assert!((0.0..360.0).contains(&answers[0][index]));
            // Towards the antipode a bearing moves the other end by less than the line is long.
            let lever_nm =
                if ground_nm > 9719.0 { 3440.0 * (ground_nm / 3440.0).sin().abs() } else { ground_nm };
            let off = [
                (answers[2][index] - ground_nm) * 1852.0,
                turn.to_radians() * lever_nm * 1852.0,
                (answers[1][index] - dme_nm) * 1852.0,
                (answers[3][index] - angle_deg).to_radians() * dme_nm * 1852.0,
            ];
            for (worst, off) in worst.iter_mut().zip(off) {
                assert!(off.is_finite());
                *worst = worst.max(off.abs());
            }
        }
    }
    exact
}

/// Points about a station at every scale, to a distance.
fn about(station: Station, reach_nm: f64, count: usize, seed: &mut u64) -> Vec<[f64; 3]> {
    let mut next = || {
        *seed ^= *seed << 13;
        *seed ^= *seed >> 7;
        *seed ^= *seed << 17;
        (*seed >> 11) as f64 / (1_u64 << 53) as f64
    };
    (0..count)
        .map(|index| {
            let scale = if index % 3 == 0 { 10_f64.powf(-7.0 * next()) } else { next().sqrt() };
            let bearing = if index % 7 == 0 { 90.0 * (index % 4) as f64 } else { 360.0 * next() };
            let (lat, lon) = (station.latitude_deg, station.longitude_deg);
            let there = crate::plain::geodesic_direct(lat, lon, bearing, reach_nm * scale).unwrap();
            [there.latitude_deg, there.longitude_deg, 60_000.0 * next()]
        })
        .collect()
}

fn stations() -> Vec<Station> {
    let latitudes =
        [-90.0, -89.9999, -66.0, -45.0, -1e-9, 0.0, 0.3, 12.0, 33.0, 51.5, 61.0, 74.0, 86.0, 89.0, 90.0];
    let longitudes = [-180.0, -12.0, 0.0, 179.99, 350.0];
    let all = latitudes.into_iter().flat_map(|latitude| longitudes.map(|longitude| (latitude, longitude)));
    all.map(|(latitude_deg, longitude_deg)| Station {
        latitude_deg,
        longitude_deg,
        elevation_ft: 420.0,
        declination_deg: 0.1 * longitude_deg,
    })
    .collect()
}

/// A tenth of a micrometre within 300 NM, a micrometre within 1000 and to 18 000 km, and three to where the loop ends, of Karney's
/// solution, with and without fused multiplication.
#[test]
fn within_micrometres() {
    for (reach_nm, most) in [(300.0, 1e-7), (1000.0, 1e-6), (9719.0, 1e-6), (10_560.0, 3e-6)] {
        let (mut fused, mut plain, mut seed) = ([0.0; 4], [0.0; 4], 0x2545_f491_4f6c_dd1d);
        for station in stations() {
            let points = about(station, reach_nm, 1500, &mut seed);
            compared::<true>(station, &points, &mut fused);
            compared::<false>(station, &points, &mut plain);
        }
        println!("{reach_nm} NM: {fused:?} m; without fused multiplication {plain:?} m");
        assert!(fused.iter().chain(&plain).all(|worst| *worst <= most), "{reach_nm} {fused:?} {plain:?}");
    }
}

/// Beyond it, next to the station, and with what is no place at all, the answer is that of a single call.
#[test]
fn elsewhere_it_is_the_single_call() {
    let function = Function::named("observe").unwrap();
    let hard = [
        [61.0, -12.0, 9e3],
        [61.0, 348.0, 9e3],
        [61.000_000_1, -12.0, 9e3],
        [-61.0, 168.0, 0.0],
        [-60.9, 167.9, 0.0],
        [91.0, 0.0, 0.0],
        [f64::NAN, 0.0, 0.0],
        [60.0, f64::INFINITY, 0.0],
        [60.0, 1e9, 0.0],
        [60.0, -12.0, 5e5],
        [80.0, 100.0, f64::NAN],
        [-90.0, 0.0, -2e4],
    ];
    for [latitude, longitude, altitude] in hard {
        let given = [61.0, -12.0, 100.0, -8.0, latitude, longitude, altitude];
        let (mut single, mut many, mut status) = ([0.0; 4], [0.0; 4], [7]);
        let result = (function.run)(&given, &mut single);
        let columns = given.each_ref().map(std::slice::from_ref);
        let mut places = many.each_mut().map(std::slice::from_mut);
        (function.block)(&columns, &mut places, &mut status);
        assert_eq!(status[0], result.map_or_else(|error| error.code(), |()| 0), "{given:?}");
        assert_eq!(single.map(f64::to_bits), many.map(f64::to_bits), "{given:?}");
    }
}

/// The same point gives the same bits wherever it stands, among whatever stations, in an array of any length.
#[test]
fn a_place_in_the_array_is_nothing_to_a_point() {
    let function = Function::named("observe").unwrap();
    let (stations, mut seed) = (stations(), 77);
    let points: Vec<[f64; 7]> = (0..1000)
        .map(|index| {
            let station = stations[(index / 90) % stations.len()];
            let [latitude, longitude, altitude] =
                about(station, if index % 2 == 0 { 290.0 } else { 1300.0 }, 1, &mut seed)[0];
            let Station { latitude_deg, longitude_deg, elevation_ft, declination_deg } = station;
            [latitude_deg, longitude_deg, elevation_ft, declination_deg, latitude, longitude, altitude]
        })
        .collect();
    let all = |points: &[[f64; 7]]| {
        let columns: [Vec<f64>; 7] =
            std::array::from_fn(|place| points.iter().map(|point| point[place]).collect());
        let mut answers: [Vec<f64>; 4] = std::array::from_fn(|_| vec![0.0; points.len()]);
        let given = columns.each_ref().map(Vec::as_slice);
        let mut places = answers.each_mut().map(Vec::as_mut_slice);
        (function.block)(&given, &mut places, &mut vec![0; points.len()]);
        (0..points.len())
            .map(|index| answers.each_ref().map(|answer| answer[index].to_bits()))
            .collect::<Vec<_>>()
    };
    let together = all(&points);
    for length in [1, 7, 129, 333] {
        let parts: Vec<_> = points.chunks(length).flat_map(all).collect();
        assert!(parts == together, "{length}");
    }
}

/// At the edges of every range, of near longitudes and of what is looked at first, by itself and among ordinary points: the status of
/// a single call and its answer, to a micrometre and no number where it is none.
#[test]
fn edges_are_those_of_the_single_call() {
    let function = Function::named("observe").unwrap();
    let ordinary = [61.5, -11.0, 31_000.0];
    let around = |edge: f64| [edge.next_down(), edge, edge.next_up()];
    let mut points = vec![];
    let altitudes = [-16_500.0, 399_500.0, 400_000.0].map(around);
    points.extend(altitudes.into_iter().flatten().map(|altitude| ([61.0, -12.0], [61.5, -11.0, altitude])));
    let latitudes = [-90.0, 90.0].map(around);
    points.extend(
        latitudes
            .into_iter()
            .flatten()
            .map(|latitude| ([latitude.clamp(-88.0, 88.0), -12.0], [latitude, -11.0, 9e3])),
    );
    for station_longitude in [-360.0, -315.0, 0.0, 315.0, 360.0].map(around).into_iter().flatten() {
        for longitude in [-45.0, 45.0].map(|side| around(station_longitude + side)).into_iter().flatten() {
            points.push(([61.0, station_longitude], [61.0, longitude, 9e3]));
        }
        for longitude in [-360.0, 360.0].map(around).into_iter().flatten() {
            points.push(([61.0, station_longitude], [61.0, longitude, 9e3]));
        }
    }
    for ([station_latitude, station_longitude], point) in points {
        let given = |[latitude, longitude, altitude]: [f64; 3]| {
            [station_latitude, station_longitude, 420.0, -8.0, latitude, longitude, altitude]
        };
        let mut single = [0.0; 4];
        let wanted = (function.run)(&given(point), &mut single).map_or_else(|error| error.code(), |()| 0);
        for (count, place) in [(1, 0), (40, 0), (40, 39), (300, 200)] {
            let all: Vec<[f64; 7]> =
                (0..count).map(|index| given(if index == place { point } else { ordinary })).collect();
            let columns: [Vec<f64>; 7] =
                std::array::from_fn(|input| all.iter().map(|one| one[input]).collect());
            let mut answers: [Vec<f64>; 4] = std::array::from_fn(|_| vec![0.0; count]);
            let mut statuses = vec![7; count];
            let mut places = answers.each_mut().map(Vec::as_mut_slice);
            (function.block)(&columns.each_ref().map(Vec::as_slice), &mut places, &mut statuses);
            assert_eq!(statuses[place], wanted, "{:?}", given(point));
            for (answer, single) in answers.iter().map(|answer| answer[place]).zip(single) {
                let near = (answer - single).abs() < 1e-9 || (answer - single).abs() > 360.0 - 1e-9;
                assert!(near || answer.is_nan() && single.is_nan(), "{:?} {answer} {single}", given(point));
            }
        }
    }
}

/// One aircraft and one altitude are as columns of them, whatever the stations, in more points than are repeated at a time.
#[test]
fn one_number_is_a_column_of_it_for_any_stations() {
    const COUNT: usize = 1300;
    let (function, stations) = (Function::named("observe").unwrap(), stations());
    for run in [1, 5, 90, 300, COUNT] {
        let station = |index: usize| stations[index / run % stations.len()];
        let columns: [Vec<f64>; 7] = std::array::from_fn(|input| {
            let value = |index: usize| {
                let Station { latitude_deg, longitude_deg, elevation_ft, declination_deg } = station(index);
                let part = |factor: f64| (index as f64 * factor).fract();
                let about = [
                    latitude_deg + part(0.618_033_988_7) - 0.5,
                    longitude_deg + part(0.754_877_666_2),
                    3e4 * part(0.57),
                ];
                [
                    latitude_deg,
                    longitude_deg,
                    elevation_ft,
                    declination_deg,
                    about[0].clamp(-90.0, 90.0),
                    about[1],
                    about[2],
                ][input]
            };
            (0..COUNT).map(value).collect()
        });
        let asked = |same: &dyn Fn(usize) -> bool, full: bool| {
            let repeated: [Vec<f64>; 7] = std::array::from_fn(|input| match (same(input), full) {
                (true, true) => vec![columns[input][0]; COUNT],
                (true, false) => columns[input][..1].to_vec(),
                (false, _) => columns[input].clone(),
            });
            let mut answers: [Vec<f64>; 4] = std::array::from_fn(|_| vec![0.0; COUNT]);
            let mut places = answers.each_mut().map(Vec::as_mut_slice);
            (function.block)(&repeated.each_ref().map(Vec::as_slice), &mut places, &mut [7; COUNT]);
            answers.map(|answer| answer.into_iter().map(f64::to_bits).collect::<Vec<_>>())
        };
        let sames: [&dyn Fn(usize) -> bool; 4] =
            [&|input| input == 6, &|input| input > 3, &|input| input < 4, &|input| input < 4 || input == 6];
        for same in sames {
            assert!(asked(same, false) == asked(same, true), "{run}");
        }
    }
}
