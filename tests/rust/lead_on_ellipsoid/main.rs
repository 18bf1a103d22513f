//! The lead against an aircraft that flies it in small steps over the ellipsoid: it rolls out on the outbound course, or on the arc.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, missing_docs, reason = "a test fails by panicking")]

mod arc;
mod flown;
mod fly_over;

use flown::Case;
use lubberline::Error;
use lubberline::lead::{CourseChange, TurnSide};
use lubberline::turn::TurnLimits;
use lubberline::value::units::{degrees, degrees_per_second, knots, nautical_mile, second};
use lubberline::value::{Bank, RollRate, TrueAirspeed, TrueBearing, TrueNorth, TurnRate, WindSpeed};
use lubberline::wind::Wind;

const CASES: usize = 5000;
const LONGEST_LEAD_NM: f64 = 20.0;

fn random_case(random: &mut fastrand::Rng) -> Case {
    let between = |random: &mut fastrand::Rng, low: f64, high: f64| low + (high - low) * random.f64();
    let airspeed_kt = between(random, 60.0, 600.0);
    let inbound_deg = between(random, 0.0, 360.0);
    let change_deg = between(random, 5.0, 150.0) * if random.bool() { 1.0 } else { -1.0 };
    Case {
        latitude_deg: between(random, -80.0, 80.0),
        longitude_deg: between(random, -180.0, 180.0),
        inbound_deg,
        outbound_deg: inbound_deg + change_deg,
        airspeed_kt,
        wind_from_deg: between(random, 0.0, 360.0),
        wind_kt: airspeed_kt * between(random, 0.0, 0.5),
        bank_limit_deg: between(random, 10.0, 45.0),
        rate_limit_deg_s: between(random, 1.0, 6.0),
        roll_deg_s: if random.u8(..4) == 0 { f64::INFINITY } else { between(random, 1.0, 15.0) },
    }
}

fn change(case: &Case) -> Result<CourseChange<TrueNorth>, Error> {
    let bearing = |value| TrueBearing::new(degrees(value));
    CourseChange::new(
        bearing(case.inbound_deg)?,
        bearing(case.outbound_deg)?,
        TrueAirspeed::new(knots(case.airspeed_kt))?,
        Wind { from: bearing(case.wind_from_deg)?, speed: WindSpeed::new(knots(case.wind_kt))? },
        &TurnLimits {
            bank: Bank::new(degrees(case.bank_limit_deg))?,
            rate: TurnRate::new(degrees_per_second(case.rate_limit_deg_s))?,
            roll: RollRate::new(degrees_per_second(case.roll_deg_s))?,
        },
        TurnSide::Shortest,
    )
}

#[test]
fn an_aircraft_that_flies_the_lead_rolls_out_on_the_outbound_course() {
    let mut random = fastrand::Rng::with_seed(0x1e4d);
    let (mut flown_cases, mut worst_near_nm, mut worst_far_nm) = (0, 0.0_f64, 0.0_f64);
    while flown_cases < CASES {
        let case = random_case(&mut random);
        let answer = change(&case).unwrap();
        let lead_nm = answer.lead().get::<nautical_mile>();
        let past_nm = answer.past_fix_at_roll_out().get::<nautical_mile>();
        let reach_nm = lead_nm.abs().max(past_nm.abs());
        if reach_nm > LONGEST_LEAD_NM {
            continue;
        }
        flown_cases += 1;
        let flown = case.fly(lead_nm);
        let miss_nm = flown.across_nm.abs().max((flown.along_nm - past_nm).abs());
        let (worst_nm, allowed_nm) =
            if reach_nm <= 10.0 { (&mut worst_near_nm, 2e-5) } else { (&mut worst_far_nm, 1.5e-4) };
        *worst_nm = worst_nm.max(miss_nm);
        assert!(miss_nm < allowed_nm, "lead {lead_nm} NM, roll-out at {past_nm} NM; {flown:?} for {case:?}");
        let duration_s = answer.turn().duration().get::<second>();
        assert!((flown.duration_s - duration_s).abs() < 1e-6, "{duration_s} s, {flown:?} for {case:?}");
        let closest_nm = answer.closest_approach().value().get::<nautical_mile>();
        if lead_nm > 0.0 && past_nm > 0.0 {
            assert!((flown.closest_nm - closest_nm).abs() < 5e-4, "{closest_nm} NM, {flown:?} for {case:?}");
        }
    }
    println!(
        "{flown_cases} turns; worst miss {worst_near_nm:.1e} NM to 10 NM, {worst_far_nm:.1e} NM to 20 NM"
    );
}

/// ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1: with no wind and no roll, `r tan(A / 2)`.
#[test]
fn in_still_air_with_an_instant_roll_it_is_the_distance_of_turn_anticipation() {
    let mut random = fastrand::Rng::with_seed(0x57111);
    for _ in 0..CASES {
        let case = Case { wind_kt: 0.0, roll_deg_s: f64::INFINITY, ..random_case(&mut random) };
        let change_rad = (case.outbound_deg - case.inbound_deg).abs().to_radians();
        let airspeed_m_s = case.airspeed_kt * 1852.0 / 3600.0;
        let by_bank_m = airspeed_m_s.powi(2) / (9.80665 * case.bank_limit_deg.to_radians().tan());
        let by_rate_m = airspeed_m_s / case.rate_limit_deg_s.to_radians();
        let expected_nm = by_bank_m.max(by_rate_m) * (change_rad / 2.0).tan() / 1852.0;
        let answer = change(&case).unwrap();
        for length in [answer.lead(), answer.past_fix_at_roll_out()] {
            let length_nm = length.get::<nautical_mile>();
            assert!((length_nm - expected_nm).abs() < 1e-10 * expected_nm, "{length_nm} NM for {case:?}");
        }
    }
}
