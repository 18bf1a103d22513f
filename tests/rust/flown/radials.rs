//! Leads onto a radial from any intercept, flown: straight on for the time to roll-in, then the turn.

use lubberline::earth::{Course, inverse};
use lubberline::flight::{Begin, PlannedTurn, Steering};
use lubberline::lead::{RadialFlown, RadialIntercept};
use lubberline::turn::TurnLimits;
use lubberline::value::units::*;

use super::{Draw, airspeed, bearing, flight_from, ground};

#[test]
fn the_lead_onto_a_radial_begins_where_it_says_and_ends_on_it() {
    let mut draw = Draw::new(55_021);
    let (mut flown, mut worst_begin, mut worst_end): (u32, f64, f64) = (0, 0.0, 0.0);
    for case in 0..3000 {
        let station = draw.station();
        let airspeed_kt = draw.between(60.0, 600.0);
        let height_ft = if case % 2 == 0 { 0.0 } else { draw.between(0.0, 45_000.0) };
        let wind = draw.wind(airspeed_kt, 0.5);
        let (from, distance_nm) = (bearing(draw.between(0.0, 360.0)), draw.between(10.0, 60.0));
        let (radial, track) = (bearing(draw.between(0.0, 360.0)), bearing(draw.between(0.0, 360.0)));
        let way = if draw.side() > 0.0 { RadialFlown::Inbound } else { RadialFlown::Outbound };
        let limits = TurnLimits::default();
        let distance = ground(nautical_miles(distance_nm));
        let tas = airspeed(airspeed_kt);
        // Most tracks never come to the radial; of those that do, some are too close to it for the turn, or cross it far away.
        let Ok(onto) = RadialIntercept::new(from, distance, radial, way, track, tas, wind, &limits) else {
            continue;
        };
        let to_roll_in_nm = onto.distance_to_roll_in().get::<nautical_mile>();
        let course_change_deg =
            onto.change().inbound().change_to(onto.change().outbound()).angle().get::<degree>().abs();
        if !(0.0..60.0).contains(&to_roll_in_nm) || !(5.0..=150.0).contains(&course_change_deg) {
            continue;
        }
        let what = format!(
            "{station:?} {from:?} {distance_nm} NM {radial:?} {way:?} {track:?} {airspeed_kt} kt {height_ft} ft {wind:?}"
        );
        let heading = onto.change().before().heading;
        let mut flight = flight_from(
            station.position,
            from,
            distance.value(),
            heading,
            feet(height_ft),
            tas,
            wind,
            &limits,
        );
        flight.step(onto.time_to_roll_in());
        let seen = inverse(station.position, flight.position());
        let room_nm = distance_nm
            .max(onto.distance_at_roll_in().value().get::<nautical_mile>())
            .max(onto.distance_at_roll_out().get::<nautical_mile>().abs());
        let allowed_nm = 3e-4 * (room_nm / 20.0).powi(3).max(1.0)
            + (to_roll_in_nm + onto.change().lead().get::<nautical_mile>().abs()) * 2.0 * height_ft
                / 20_925_000.0;
        let radius_off_nm = seen.distance.value() - onto.distance_at_roll_in().value();
        let begin_nm = radius_off_nm.get::<nautical_mile>().abs();
        worst_begin = worst_begin.max(begin_nm / allowed_nm);

        let change = onto.change();
        flight.steer(Steering::Turn(PlannedTurn {
            begin: Begin::Now,
            heading_after: change.after().heading,
            heading_change: change.turn().heading_change(),
            bank: change.turn().bank(),
        }));
        let mut ticks = 0;
        while !flight.is_done() {
            flight.step(seconds(0.5));
            ticks += 1;
            assert!(ticks < 10_000, "{what}");
        }
        let course = Course { through: station.position, bearing: change.outbound() };
        let end_nm = course.abeam(flight.position()).cross_track.get::<nautical_mile>().abs();
        assert!(
            begin_nm < allowed_nm && end_nm < allowed_nm,
            "{begin_nm} {end_nm} of {allowed_nm} NM: {what}"
        );
        worst_end = worst_end.max(end_nm / allowed_nm);
        flown += 1;
    }
    assert!(flown > 300, "{flown}");
    println!("onto radials: {flown}, begin {worst_begin}, end {worst_end} of what is allowed");
}
