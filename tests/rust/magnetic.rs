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

/// From one model to the next the declination steps by what the older one had come to miss, not by more.
#[test]
fn the_models_meet_at_2025() {
    for (latitude_deg, longitude_deg) in [(50.0, 10.0), (40.0, -100.0), (-30.0, 140.0), (0.0, 0.0)] {
        let before = variation_deg(latitude_deg, longitude_deg, 0.0, 2_024.999_999).unwrap();
        let after = variation_deg(latitude_deg, longitude_deg, 0.0, 2025.0).unwrap();
        assert!((after - before).abs() < 0.3, "{before} {after}");
    }
}
