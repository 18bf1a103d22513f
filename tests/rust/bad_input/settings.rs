//! The functions that take a structure of settings: course changes and sequences of legs, of numbers good and bad.

use std::time::{Duration, Instant};

use lubberline::plain::{
    ConditionsInput, CourseChangeInput, LegCode, LegInput, course_change, course_change_at, fly_legs,
    fly_over_at, path_points, segment_output,
};
use lubberline::procedure::TimedLeg;
use lubberline::procedure::legs::{Passage, ReversalForm};

use crate::points::{EXTREMES, near};

const TIME: Duration = Duration::from_secs(2);

/// Mostly a number near a good one.
fn draw(good: f64, random: &mut fastrand::Rng) -> f64 {
    match random.u8(..24) {
        0 => f64::from_bits(random.u64(..)),
        1 => *random.choice(&EXTREMES).unwrap(),
        2 => near(good, random) * f64::exp2(f64::from(random.i8(..)) / 8.0),
        _ => near(good, random),
    }
}

#[test]
fn course_changes_of_any_settings() {
    let mut random = fastrand::Rng::with_seed(5);
    let begun = Instant::now();
    let (mut answers, mut refusals) = (0, 0);
    while begun.elapsed() < TIME {
        let mut number = |good: f64| draw(good, &mut random);
        let input = CourseChangeInput {
            inbound_course_deg: number(40.0),
            outbound_course_deg: number(110.0),
            true_airspeed_kt: number(430.0),
            wind_from_deg: number(270.0),
            wind_speed_kt: number(60.0),
            bank_limit_deg: number(25.0),
            turn_rate_limit_deg_per_s: number(3.0),
            roll_rate_deg_per_s: number(5.0),
            height_above_station_ft: number(33_000.0),
            intercept_angle_deg: number(30.0),
            cone_half_angle_deg: number(50.0),
            turn: random.i32(-2..=2),
        };
        let time_s = draw(30.0, &mut random);
        match course_change(&input) {
            Ok(answer) => {
                answers += 1;
                assert!(answer.lead_nm.is_nan() || answer.lead_nm.abs() <= 5_000.0, "{input:?} {answer:?}");
            }
            Err(error) => {
                refusals += 1;
                assert!(!error.to_string().is_empty());
            }
        }
        let _ = (course_change_at(&input, time_s), fly_over_at(&input, time_s));
    }
    assert!(answers > 100 && refusals > 100, "{answers} answers, {refusals} refusals");
}

fn leg(random: &mut fastrand::Rng) -> LegInput {
    let code = LegCode::from_code("code", f64::from(random.i32(1..=23))).unwrap();
    let (by_distance, by_dme) = (random.u8(..4) == 0, random.u8(..4) == 0);
    let (timed, reversal) = (TimedLeg::ALL[random.usize(..3)], ReversalForm::ALL[random.usize(..2)]);
    let mut number = |good: f64| draw(good, random);
    LegInput {
        fix_latitude_deg: number(60.0),
        fix_longitude_deg: number(-10.0),
        course_deg: number(90.0),
        altitude_ft: number(9_000.0),
        distance_nm: number(12.0),
        center_latitude_deg: number(60.0),
        center_longitude_deg: number(-10.0),
        center_elevation_ft: number(500.0),
        center_declination_deg: number(-6.0),
        radial_deg: number(240.0),
        outbound_time_s: number(60.0),
        hold_distance_nm: if by_distance { number(5.0) } else { f64::NAN },
        hold_dme_nm: if by_dme { number(9.0) } else { f64::NAN },
        off_time_s: number(75.0),
        timed,
        reversal,
        passage: if random.bool() { Passage::FlyBy } else { Passage::FlyOver },
        to_right: random.bool(),
        ..LegInput::new(code)
    }
}

#[test]
fn legs_of_any_settings() {
    let mut random = fastrand::Rng::with_seed(6);
    let begun = Instant::now();
    let (mut answers, mut refusals) = (0, 0);
    while begun.elapsed() < TIME {
        let mut legs: Vec<LegInput> = (0..random.usize(0..5)).map(|_| leg(&mut random)).collect();
        if let Some(first) = legs.first_mut().filter(|_| random.u8(..8) > 0) {
            first.code = LegCode::InitialFix;
        }
        // Racetracks begin where the leg before them ends.
        for place in 1..legs.len() {
            let before = legs[place - 1];
            if matches!(legs[place].code.word(), "HA" | "HF" | "HM") && random.u8(..8) > 0 {
                legs[place].fix_latitude_deg = before.fix_latitude_deg;
                legs[place].fix_longitude_deg = before.fix_longitude_deg;
            }
        }
        let magnetic = random.bool();
        let mut number = |good: f64| draw(good, &mut random);
        let conditions = ConditionsInput {
            wind_from_deg: number(270.0),
            wind_speed_kt: number(30.0),
            bank_limit_deg: number(25.0),
            turn_rate_limit_deg_per_s: number(3.0),
            roll_rate_deg_per_s: number(5.0),
            climb_fpm: number(500.0),
            intercept_angle_deg: number(30.0),
            manual_distance_nm: number(10.0),
            magnetic_variation_deg: if magnetic { number(-6.0) } else { f64::NAN },
            ..ConditionsInput::new(number(250.0), number(8_000.0))
        };
        match fly_legs(&legs, &conditions) {
            Ok(path) => {
                answers += 1;
                let spacing_nm = draw(1.0, &mut random);
                let points = path_points(&path, spacing_nm);
                assert!(points.len() <= 1 + 10_000 * path.segments.len(), "{legs:?} {conditions:?}");
                for segment in &path.segments {
                    assert!(segment_output(&path, segment).leg < legs.len());
                }
            }
            Err(error) => {
                refusals += 1;
                assert!(!error.to_string().is_empty());
            }
        }
    }
    assert!(answers > 5 && refusals > 5, "{answers} answers, {refusals} refusals");
}
