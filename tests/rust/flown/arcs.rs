//! Turns onto and off an arc flown, and the arc between them.

use lubberline::earth::{Course, inverse};
use lubberline::flight::{ArcTracking, Begin, PlannedTurn, Steering};
use lubberline::lead::{ArcSense, RadialFlown, off_arc, onto_arc};
use lubberline::turn::TurnLimits;
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::hold_course;

use super::{Draw, airspeed, bearing, flight_from, ground};

fn planned(
    begin: Begin,
    turn_deg: f64,
    after: TrueBearing,
    limits: &TurnLimits,
    tas: TrueAirspeed,
) -> Steering {
    let turn = lubberline::turn::RolledTurn::new(tas, limits, degrees(turn_deg));
    Steering::Turn(PlannedTurn {
        begin,
        heading_after: after,
        heading_change: turn.heading_change(),
        bank: turn.bank(),
    })
}

#[test]
fn onto_the_arc_round_it_and_off_it_again() {
    let mut draw = Draw::new(990_017);
    let (mut flown, mut worst_on_m, mut worst_round_m, mut worst_off_m) = (0, 0.0_f64, 0.0_f64, 0.0_f64);
    for _ in 0..120 {
        let station = draw.station();
        let airspeed_kt = draw.between(60.0, 300.0);
        let tas = airspeed(airspeed_kt);
        let wind = draw.wind(airspeed_kt, 0.5);
        let limits = TurnLimits::default();
        let arc_nm = draw.between(8.0, 15.0);
        let arc = ArcRadius::new(nautical_miles(arc_nm)).unwrap();
        let radial_deg = draw.between(0.0, 360.0);
        let (sense, side) =
            if draw.side() > 0.0 { (ArcSense::Clockwise, 1.0) } else { (ArcSense::Counterclockwise, -1.0) };
        let radial = bearing(radial_deg);
        // In a strong wind a turn may not fit, which is an answer too.
        let Ok(onto) = onto_arc(radial, RadialFlown::Inbound, arc, sense, tas, wind, &limits) else {
            continue;
        };
        let inbound = hold_course(radial.reciprocal(), tas, wind).unwrap();
        let begin = onto.distance_at_roll_in.value();
        let what = format!("{station:?} {airspeed_kt} kt {wind:?} {radial_deg} {sense:?} {arc_nm}");

        let mut flight = flight_from(
            station.position,
            radial,
            begin + nautical_miles(0.5),
            inbound.heading,
            feet(0.0),
            tas,
            wind,
            &limits,
        );
        let change_deg = onto.heading_change.get::<degree>();
        let after = bearing(inbound.heading.angle().get::<degree>() + change_deg);
        let reading = SlantRange::new(begin).unwrap();
        flight.steer(planned(Begin::Dme(station, reading), change_deg, after, &limits, tas));
        let mut ticks = 0;
        while !flight.is_done() {
            flight.step(seconds(0.25));
            ticks += 1;
            assert!(ticks < 10_000, "{what}");
        }
        // Less than a step past the roll-out, straight on: in a quarter of a second that is off the arc by V² t² / 2 D, below 0.1 m.
        let seen = |flight: &lubberline::flight::Flight| inverse(station.position, flight.position());
        let off_m = (seen(&flight).distance.value() - arc.value()).get::<meter>().abs();
        worst_on_m = worst_on_m.max(off_m);
        assert!(off_m < 0.3, "onto: {off_m} m, {what}");

        // A third of the way round by DME.
        flight.steer(Steering::Arc(ArcTracking { station, radius: arc, sense, believed_wind: wind }));
        let end_deg = onto.bearing_at_roll_out.angle().get::<degree>() + side * 120.0;
        let Ok(lead) = off_arc(bearing(end_deg), RadialFlown::Inbound, arc, sense, tas, wind, &limits) else {
            continue;
        };
        let settled = |flight: &lubberline::flight::Flight| {
            let bearing = seen(flight).initial_bearing.unwrap();
            side * bearing.change_to(lead.bearing_at_roll_in).angle().get::<degree>()
        };
        while settled(&flight) > 0.0 {
            flight.step(seconds(0.2));
            let off_m = (seen(&flight).distance.value() - arc.value()).get::<meter>().abs();
            worst_round_m = worst_round_m.max(off_m);
            assert!(off_m < 60.0, "round: {off_m} m, {what}");
        }

        // The lead radial's turn, from wings level on the arc as it is computed.
        let tangent = bearing(lead.bearing_at_roll_in.angle().get::<degree>() + side * 90.0);
        let along = hold_course(tangent, tas, wind).unwrap();
        let mut flight = flight_from(
            station.position,
            lead.bearing_at_roll_in,
            ground(arc.value()).value(),
            along.heading,
            feet(0.0),
            tas,
            wind,
            &limits,
        );
        let change_deg = lead.heading_change.get::<degree>();
        let after = bearing(along.heading.angle().get::<degree>() + change_deg);
        flight.steer(planned(Begin::Now, change_deg, after, &limits, tas));
        while !flight.is_done() {
            flight.step(seconds(0.25));
        }
        let course = Course { through: station.position, bearing: bearing(end_deg) };
        let off_m = course.abeam(flight.position()).cross_track.get::<meter>().abs();
        worst_off_m = worst_off_m.max(off_m);
        assert!(off_m < 0.05, "off: {off_m} m, {what}");
        flown += 1;
    }
    assert!(flown >= 110, "{flown}");
    println!("{flown} flown: {worst_on_m} m onto, {worst_round_m} m round, {worst_off_m} m off");
}
