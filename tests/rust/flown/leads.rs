//! Every lead flown: inbound at a held heading, the turn begun at the DME reading, and where it rolls out.

use lubberline::earth::Course;
use lubberline::flight::{PlannedTurn, Steering};
use lubberline::lead::{CourseChange, TurnSide};
use lubberline::turn::TurnLimits;
use lubberline::value::units::*;
use lubberline::value::*;

use super::{Draw, airspeed, bearing, flight_from};

/// Which way round.
#[derive(Clone, Copy, PartialEq)]
enum Way {
    Short,
    Long,
}

/// A lead flown.
struct Miss {
    /// Across the outbound course.
    miss_nm: f64,
    /// The room that the flight took.
    room_nm: f64,
    /// Diameter of the turn.
    turn_nm: f64,
    past_fix: bool,
    what: String,
}

/// Flies a seeded case.
fn flown(draw: &mut Draw, height_ft: f64, step_s: f64, way: Way) -> Miss {
    let station = draw.station();
    let airspeed_kt = draw.between(60.0, 600.0);
    let wind = draw.wind(airspeed_kt, 0.5);
    let inbound_deg = draw.between(0.0, 360.0);
    let change_deg = draw.between(5.0, 150.0) * draw.side();
    let limits = TurnLimits {
        bank: Bank::new(degrees(draw.between(15.0, 30.0))).unwrap(),
        rate: TurnRate::new(degrees_per_second(3.0)).unwrap(),
        roll: RollRate::new(degrees_per_second(draw.between(2.0, 10.0))).unwrap(),
    };
    let (inbound, outbound) = (bearing(inbound_deg), bearing(inbound_deg + change_deg));
    let what = format!("{station:?} {airspeed_kt} kt {wind:?} {inbound_deg} by {change_deg} {height_ft} ft");
    let side = match way {
        Way::Short => TurnSide::Shortest,
        Way::Long if change_deg < 0.0 => TurnSide::Right,
        Way::Long => TurnSide::Left,
    };
    let change = CourseChange::new(inbound, outbound, airspeed(airspeed_kt), wind, &limits, side).unwrap();
    let lead_nm = change.lead().get::<nautical_mile>();
    // A lead before the fix begins where the reading falls, one past the fix (in a strong wind) where it rises.
    let begin = nautical_miles(lead_nm.max(0.0) + 1.0);
    let height = HeightAboveStation::new(feet(height_ft)).unwrap();
    let mut flight = flight_from(
        station.position,
        inbound.reciprocal(),
        begin,
        change.before().heading,
        feet(height_ft),
        airspeed(airspeed_kt),
        wind,
        &limits,
    );
    flight.steer(Steering::Turn(PlannedTurn::at_station(&change, station, height)));
    let mut ticks = 0;
    while !flight.is_done() {
        flight.step(seconds(step_s));
        ticks += 1;
        assert!(ticks < 20_000, "{what}: the turn never ends");
    }
    let abeam = Course { through: station.position, bearing: outbound }.abeam(flight.position());
    let room_nm = 1.0 + lead_nm.abs().max(change.past_fix_at_roll_out().get::<nautical_mile>().abs());
    let turn_nm = 2.0 * change.turn().radius().get::<nautical_mile>();
    Miss {
        turn_nm,
        miss_nm: abeam.cross_track.get::<nautical_mile>(),
        room_nm,
        past_fix: lead_nm < 0.0,
        what,
    }
}

#[test]
fn at_the_surface_every_lead_rolls_out_on_the_outbound_course() {
    let mut draw = Draw::new(20_417);
    let mut worst: f64 = 0.0;
    for _ in 0..400 {
        let case = flown(&mut draw, 0.0, 1.0, Way::Short);
        let allowed_nm = if case.room_nm < 11.0 {
            2e-5
        } else if case.room_nm < 21.0 {
            2e-4
        } else {
            2e-4 * (case.room_nm / 20.0).powi(3)
        };
        worst = worst.max(case.miss_nm.abs() / allowed_nm);
        assert!(case.miss_nm.abs() < allowed_nm, "{} NM of {}: {}", case.miss_nm, case.room_nm, case.what);
    }
    println!("leads at the surface: worst {worst} of what is allowed");
}

#[test]
fn up_to_45_000_ft_it_misses_by_what_the_height_takes_off_the_ground() {
    let mut draw = Draw::new(71_553);
    let mut worst: f64 = 0.0;
    for _ in 0..400 {
        let height_ft = draw.between(0.0, 45_000.0);
        let case = flown(&mut draw, height_ft, 1.0, Way::Short);
        // A mile in the air is 1 / (1 + h/R) of a mile on the ground; the turn spans at most lead and end together.
        let room_nm = case.room_nm;
        let allowed_nm = 2e-4 * (room_nm / 10.0).powi(3).max(1.0) + 2.0 * room_nm * height_ft / 20_925_000.0;
        worst = worst.max(case.miss_nm.abs() / allowed_nm);
        assert!(case.miss_nm.abs() < allowed_nm, "{} NM of {room_nm}: {}", case.miss_nm, case.what);
    }
    println!("leads at height: worst {worst} of what is allowed");
}

#[test]
fn the_long_way_round_begins_past_the_fix_and_rolls_out_on_the_course_too() {
    let mut draw = Draw::new(40_093);
    let (mut worst, mut past_fix): (f64, u32) = (0.0, 0);
    for _ in 0..200 {
        let height_ft = draw.between(0.0, 45_000.0);
        let case = flown(&mut draw, height_ft, 1.0, Way::Long);
        let room_nm = case.room_nm + case.turn_nm;
        let allowed_nm = 2e-4 * (room_nm / 10.0).powi(3).max(1.0) + 2.0 * room_nm * height_ft / 20_925_000.0;
        worst = worst.max(case.miss_nm.abs() / allowed_nm);
        past_fix += u32::from(case.past_fix);
        assert!(case.miss_nm.abs() < allowed_nm, "{} NM of {room_nm}: {}", case.miss_nm, case.what);
    }
    assert!(past_fix >= 100, "{past_fix}");
    println!("the long way: worst {worst} of what is allowed, {past_fix} past the fix");
}

#[test]
fn the_step_hardly_matters() {
    let (mut worst_second_m, mut worst_coarse_m): (f64, f64) = (0.0, 0.0);
    for seed in 0..40 {
        let [fine, by_the_second, coarse] =
            [1.0 / 60.0, 1.0, 5.0].map(|step_s| flown(&mut Draw::new(seed), 30_000.0, step_s, Way::Short));
        let by_second_m = 1852.0 * (by_the_second.miss_nm - fine.miss_nm).abs();
        let by_coarse_m = 1852.0 * (coarse.miss_nm - fine.miss_nm).abs();
        assert!(by_second_m < 0.005 && by_coarse_m < 0.1, "{by_second_m} m {by_coarse_m} m: {}", fine.what);
        worst_second_m = worst_second_m.max(by_second_m);
        worst_coarse_m = worst_coarse_m.max(by_coarse_m);
    }
    println!("steps: {worst_second_m} m by 1 s, {worst_coarse_m} m by 5 s");
}
