//! The magnetic field beside another implementation of the same models, which is in single precision.
#![allow(clippy::unwrap_used, missing_docs, reason = "a test fails by panicking")]

use lubberline::plain::table::Function;
use lubberline::plain::{magnetic_field, variation_deg};
use uom::si::angle::degree;
use uom::si::f32::{Angle, Length};
use uom::si::length::meter;
use uom::si::magnetic_flux_density::nanotesla;
use world_magnetic_model::GeomagneticField;
use world_magnetic_model::time::Date;

/// Single precision keeps seven digits: some hundredths of a nanotesla of each of ninety terms.
const COMPONENT_NT: f64 = 0.05;

#[test]
fn another_implementation_agrees_in_single_precision() {
    let mut random = fastrand::Rng::with_seed(12);
    for _ in 0..3000 {
        // Numbers that single precision holds as they are.
        let latitude_deg = f64::from(random.i32(-359..=359)) / 4.0;
        let longitude_deg = f64::from(random.i32(-720..720)) / 4.0;
        let height_m = f64::from(random.i32(0..400) * 256);
        let (year, day) = (random.i32(2020..2030), random.u16(1..=365));
        let days = if year % 4 == 0 { 366.0 } else { 365.0 };
        let decimal_year = f64::from(year) + (f64::from(day) - 1.0) / days;
        let here = format!("{latitude_deg} {longitude_deg} {height_m} m {decimal_year}");
        let ours = magnetic_field(latitude_deg, longitude_deg, height_m / 0.3048, decimal_year).unwrap();
        let theirs = GeomagneticField::new(
            Length::new::<meter>(height_m as f32),
            Angle::new::<degree>(latitude_deg as f32),
            Angle::new::<degree>(longitude_deg as f32),
            Date::from_ordinal_date(year, day).unwrap(),
        )
        .unwrap();
        for (ours_nt, theirs) in
            [(ours.north_nt, theirs.x()), (ours.east_nt, theirs.y()), (ours.down_nt, theirs.z())]
        {
            let differs_nt = (ours_nt - f64::from(theirs.get::<nanotesla>())).abs();
            assert!(differs_nt < COMPONENT_NT, "{here}: {differs_nt} nT");
        }
        let differs_deg = (ours.declination_deg - f64::from(theirs.declination().get::<degree>()) + 540.0)
            .rem_euclid(360.0)
            - 180.0;
        // An angle of a part of the field is that part over the horizontal field.
        let allowed_deg = 1e-5 + (COMPONENT_NT / ours.horizontal_nt).to_degrees();
        assert!(differs_deg.abs() < allowed_deg, "{here}: {differs_deg} deg");
        let deviation_deg = f64::from(theirs.declination_uncertainty().get::<degree>());
        assert!((ours.declination_uncertainty_deg - deviation_deg).abs() < 1e-4 * deviation_deg, "{here}");
    }
}

/// Every declination that the models' authors print, in arrays, to half of its last digit.
#[test]
fn arrays_give_every_printed_declination() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/data/published/magnetic.csv");
    let mut rows = csv::Reader::from_path(path).unwrap();
    let (mut columns, mut printed): ([Vec<f64>; 4], Vec<(f64, f64)>) = Default::default();
    for row in rows.records().map(Result::unwrap).filter(|row| &row[3] == "declination_deg") {
        for (column, value) in columns.iter_mut().zip(row[2].split(';')) {
            column.push(value.parse().unwrap());
        }
        printed.push((row[6].parse().unwrap(), row[7].parse().unwrap()));
    }
    assert!(printed.len() >= 70, "{}", printed.len());
    let (mut answers, mut statuses) = (vec![0.0; printed.len()], vec![0; printed.len()]);
    let given = columns.each_ref().map(Vec::as_slice);
    (Function::named("variation_deg").unwrap().block)(&given, &mut [&mut answers], &mut statuses);
    for (index, ((expected, tolerance), answer)) in printed.into_iter().zip(answers).enumerate() {
        assert!((answer - expected).abs() <= tolerance * (1.0 + 1e-9), "{index}: {answer} {expected}");
    }
}

/// Every value of the field that the models' authors print, in arrays, to half of its last digit.
#[test]
fn arrays_give_every_printed_field() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/data/published/magnetic.csv");
    let mut rows = csv::Reader::from_path(path).unwrap();
    let function = Function::named("magnetic_field").unwrap();
    let (mut columns, mut printed): ([Vec<f64>; 4], Vec<csv::StringRecord>) = Default::default();
    for row in rows.records().map(Result::unwrap).filter(|row| &row[1] == "magnetic_field") {
        for (column, value) in columns.iter_mut().zip(row[2].split(';')) {
            column.push(value.parse().unwrap());
        }
        printed.push(row);
    }
    assert!(printed.len() >= 900, "{}", printed.len());
    let mut answers = vec![vec![0.0; printed.len()]; function.outputs.len()];
    let mut outputs: Vec<&mut [f64]> = answers.iter_mut().map(Vec::as_mut_slice).collect();
    (function.block)(&columns.each_ref().map(Vec::as_slice), &mut outputs, &mut vec![0; printed.len()]);
    for (index, row) in printed.iter().enumerate() {
        let output = function.outputs.iter().position(|name| *name == &row[3]).unwrap();
        let [scale, offset, expected, tolerance] =
            [4, 5, 6, 7].map(|field| row[field].parse::<f64>().unwrap());
        let answer = answers[output][index] * scale + offset;
        assert!((answer - expected).abs() <= tolerance * (1.0 + 1e-9), "{row:?}: {answer}");
    }
}

/// Arrays have a grid variation where single calls have one, at a latitude of one number too, and with or without what else there is.
#[test]
fn arrays_leave_out_grid_variations_where_there_are_none() {
    let latitudes =
        [-90.0, -55.0, -54.999_999_999_999, 0.0, 54.999_999_999_999, 55.0, 70.0, 90.0, 91.0, f64::NAN];
    let function = Function::named("magnetic_field").unwrap();
    let place = function.outputs.iter().position(|name| *name == "grid_variation_deg").unwrap();
    let asked = |latitudes: &[f64], count: usize| {
        let mut answers = vec![Vec::new(); function.outputs.len()];
        answers[place] = vec![0.0; count];
        let mut outputs: Vec<&mut [f64]> = answers.iter_mut().map(Vec::as_mut_slice).collect();
        (function.block)(&[latitudes, &[170.0], &[0.0], &[2026.0]], &mut outputs, &mut vec![0; count]);
        answers.swap_remove(place)
    };
    for (latitude_deg, answer) in latitudes.into_iter().zip(asked(&latitudes, latitudes.len())) {
        let single = magnetic_field(latitude_deg, 170.0, 0.0, 2026.0)
            .map_or(f64::NAN, |field| field.grid_variation_deg);
        assert_eq!(answer.is_nan(), single.is_nan(), "{latitude_deg}");
        assert!(answer.is_nan() || (answer - single).abs() < 1e-10, "{latitude_deg}: {answer} {single}");
        for same in asked(&[latitude_deg], 3) {
            assert!(same == answer || same.is_nan() && answer.is_nan(), "{latitude_deg}");
        }
    }
}

/// A block is as long as its statuses: what stands behind that in longer columns is nobody's.
#[test]
fn a_block_ends_with_its_statuses() {
    let function = Function::named("magnetic_field").unwrap();
    let columns = [vec![10.0; 9], vec![170.0; 9], vec![0.0; 9], vec![2026.0; 9]];
    for latitudes in [&columns[0][..], &columns[0][..1]] {
        let mut answers = vec![[7.0; 9]; function.outputs.len()];
        let mut outputs: Vec<&mut [f64]> = answers.iter_mut().map(<[f64; 9]>::as_mut_slice).collect();
        (function.block)(&[latitudes, &columns[1], &columns[2], &columns[3]], &mut outputs, &mut [0; 4]);
        for (answer, name) in answers.iter().zip(function.outputs) {
            assert!(answer[..4].iter().all(|value| *value != 7.0), "{name}");
            assert!(answer[4..].iter().all(|value| *value == 7.0), "{name}");
        }
    }
}

/// From one model to the next the declination steps by what the older one had come to miss, not by more.
#[test]
fn the_models_meet_at_2025() {
    for (latitude_deg, longitude_deg) in [(50.0, 10.0), (40.0, -100.0), (-30.0, 140.0), (0.0, 0.0)] {
        let before = variation_deg(latitude_deg, longitude_deg, 0.0, 2_024.999_999).unwrap();
        let after = variation_deg(latitude_deg, longitude_deg, 0.0, 2025.0).unwrap();
        assert!((after - before).abs() < 0.3, "{before} {after}");
    }
}
