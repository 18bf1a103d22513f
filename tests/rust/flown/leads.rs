//! Every lead flown: inbound at a held heading, the turn begun at the DME reading, and where it rolls out.

use lubberline::earth::Course;
use lubberline::flight::{PlannedTurn, Steering};
use lubberline::lead::{CourseChange, TurnSide};
use lubberline::turn::TurnLimits;
use lubberline::value::units::*;
use lubberline::value::*;

use super::{Draw, airspeed, bearing, flight_from};

/// Miss across the outbound course, the room that the flight took, whether done, by a seeded case.
fn miss_nm(draw: &mut Draw, height_ft: f64, step_s: f64) -> (f64, f64, String) {
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
    let change =
        CourseChange::new(inbound, outbound, airspeed(airspeed_kt), wind, &limits, TurnSide::Shortest)
            .unwrap();
    let lead_nm = change.lead().get::<nautical_mile>();
    // A lead before the fix begins where the reading falls; in a strong wind it may lie past the fix, where no reading falls.
    if lead_nm <= 0.01 {
        return (0.0, 1.0, what);
    }
    let begin = nautical_miles(lead_nm + 1.0);
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
    let room_nm = 1.0 + lead_nm.max(change.past_fix_at_roll_out().get::<nautical_mile>().abs());
    (abeam.cross_track.get::<nautical_mile>(), room_nm, what)
}

#[test]
fn at_the_surface_every_lead_rolls_out_on_the_outbound_course() {
    let mut draw = Draw::new(20_417);
    let mut worst_nm: f64 = 0.0;
    for _ in 0..400 {
        let (miss, room_nm, what) = miss_nm(&mut draw, 0.0, 1.0);
        let allowed_nm = if room_nm < 11.0 {
            2e-5
        } else if room_nm < 21.0 {
            2e-4
        } else {
            2e-4 * (room_nm / 20.0).powi(3)
        };
        worst_nm = worst_nm.max(miss.abs() / allowed_nm);
        assert!(miss.abs() < allowed_nm, "{miss} NM of {room_nm}: {what}");
    }
    println!("worst {worst_nm} of what is allowed");
}

#[test]
fn up_to_45_000_ft_it_misses_by_what_the_height_takes_off_the_ground() {
    let mut draw = Draw::new(71_553);
    let mut worst: f64 = 0.0;
    for _ in 0..400 {
        let height_ft = draw.between(0.0, 45_000.0);
        let (miss, room_nm, what) = miss_nm(&mut draw, height_ft, 1.0);
        // A mile in the air is 1 / (1 + h/R) of a mile on the ground; the turn spans at most lead and end together.
        let allowed_nm = 2e-4 * (room_nm / 10.0).powi(3).max(1.0) + 2.0 * room_nm * height_ft / 20_925_000.0;
        worst = worst.max(miss.abs() / allowed_nm);
        assert!(miss.abs() < allowed_nm, "{miss} NM of {room_nm}: {what}");
    }
    println!("worst {worst} of what is allowed");
}

#[test]
fn the_step_hardly_matters() {
    for seed in 0..40 {
        let fine = miss_nm(&mut Draw::new(seed), 30_000.0, 1.0 / 60.0).0;
        let by_the_second = miss_nm(&mut Draw::new(seed), 30_000.0, 1.0);
        let coarse = miss_nm(&mut Draw::new(seed), 30_000.0, 5.0).0;
        let (by_second_m, by_coarse_m) =
            (1852.0 * (by_the_second.0 - fine).abs(), 1852.0 * (coarse - fine).abs());
        assert!(
            by_second_m < 0.005 && by_coarse_m < 1.0,
            "{by_second_m} m {by_coarse_m} m: {}",
            by_the_second.2
        );
    }
}
