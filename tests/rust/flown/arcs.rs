//! Turns onto and off an arc flown, and the arc between them.

use lubberline::earth::{Course, inverse, slant_range};
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
    let (mut worst_on, mut worst_off) = (0.0_f64, 0.0_f64);
    for case in 0..160 {
        let station = draw.station();
        let airspeed_kt = draw.between(60.0, 600.0);
        let height_ft = if case % 2 == 0 { 0.0 } else { draw.between(0.0, 45_000.0) };
        let height = HeightAboveStation::new(feet(height_ft)).unwrap();
        let tas = airspeed(airspeed_kt);
        let wind = draw.wind(airspeed_kt, 0.5);
        let limits = TurnLimits::default();
        // At 600 kt the turn alone is 11 NM in radius: the arc grows with it.
        let arc_nm = draw.between(8.0, 15.0) * (airspeed_kt / 300.0).powi(2).max(1.0);
        let arc = ArcRadius::new(nautical_miles(arc_nm)).unwrap();
        let radial_deg = draw.between(0.0, 360.0);
        let (sense, side) =
            if draw.side() > 0.0 { (ArcSense::Clockwise, 1.0) } else { (ArcSense::Counterclockwise, -1.0) };
        let radial = bearing(radial_deg);
        let way = if draw.side() > 0.0 { RadialFlown::Inbound } else { RadialFlown::Outbound };
        // In a strong wind a turn may not fit, which is an answer too.
        let Ok(onto) = onto_arc(radial, way, arc, sense, tas, wind, &limits) else {
            continue;
        };
        let course = if way == RadialFlown::Inbound { radial.reciprocal() } else { radial };
        let before = hold_course(course, tas, wind).unwrap();
        let at_roll_in = onto.distance_at_roll_in;
        let what = format!(
            "{station:?} {airspeed_kt} kt {height_ft} ft {wind:?} {radial_deg} {way:?} {sense:?} {arc_nm}"
        );
        let reading = slant_range(at_roll_in, height);
        let early = nautical_miles(0.5).min(at_roll_in.value());
        let (from, begin) = match way {
            RadialFlown::Inbound => (at_roll_in.value() + early, Begin::Dme(station, reading)),
            RadialFlown::Outbound => (at_roll_in.value() - early, Begin::RisingDme(station, reading)),
        };
        // A mile in the air is 1 / (1 + h/R) of a mile on the ground, over the extent of the turn; the turn is computed on a plane.
        let room_m = 2.0 * 1852.0 * arc_nm;
        let height_m = room_m * height_ft / 20_925_000.0;
        let plane_m = 0.3 * (arc_nm / 15.0).powi(3).max(1.0);

        let mut flight =
            flight_from(station.position, radial, from, before.heading, feet(height_ft), tas, wind, &limits);
        let change_deg = onto.heading_change.get::<degree>();
        let after = bearing(before.heading.angle().get::<degree>() + change_deg);
        flight.steer(planned(begin, change_deg, after, &limits, tas));
        let mut ticks = 0;
        while !flight.is_done() {
            flight.step(seconds(0.25));
            ticks += 1;
            assert!(ticks < 10_000, "{what}");
        }
        // Less than a step past the roll-out, straight on: in a quarter of a second that is off the arc by V² t² / 2 D, below 0.1 m.
        let seen = |flight: &lubberline::flight::Flight| inverse(station.position, flight.position());
        let off_m = (seen(&flight).distance.value() - arc.value()).get::<meter>().abs();
        if height_ft == 0.0 {
            worst_on_m = worst_on_m.max(off_m);
        }
        let on_m = off_m;
        worst_on = worst_on.max(off_m / (plane_m + height_m));
        assert!(off_m < plane_m + height_m, "onto: {off_m} m, {what}");

        // A third of the way round by DME.
        flight.steer(Steering::Arc(ArcTracking { station, radius: arc, sense, believed_wind: wind }));
        let end_deg = onto.bearing_at_roll_out.angle().get::<degree>() + side * 120.0;
        let Ok(lead) = off_arc(bearing(end_deg), way, arc, sense, tas, wind, &limits) else {
            continue;
        };
        let settled = |flight: &lubberline::flight::Flight| {
            let bearing = seen(flight).initial_bearing.unwrap();
            side * bearing.change_to(lead.bearing_at_roll_in).angle().get::<degree>()
        };
        let mut ticks = 0;
        while settled(&flight) > 0.0 {
            flight.step(seconds(0.2));
            ticks += 1;
            assert!(ticks < 100_000, "round: {what}");
            let off_m = (seen(&flight).distance.value() - arc.value()).get::<meter>().abs();
            worst_round_m = worst_round_m.max(off_m - on_m);
            assert!(off_m < on_m + 25.0, "round: {off_m} m, {what}");
        }

        // The lead radial's turn, from wings level on the arc as it is computed.
        let tangent = bearing(lead.bearing_at_roll_in.angle().get::<degree>() + side * 90.0);
        let along = hold_course(tangent, tas, wind).unwrap();
        let mut flight = flight_from(
            station.position,
            lead.bearing_at_roll_in,
            ground(arc.value()).value(),
            along.heading,
            feet(height_ft),
            tas,
            wind,
            &limits,
        );
        let change_deg = lead.heading_change.get::<degree>();
        let after = bearing(along.heading.angle().get::<degree>() + change_deg);
        flight.steer(planned(Begin::Now, change_deg, after, &limits, tas));
        let mut ticks = 0;
        while !flight.is_done() {
            flight.step(seconds(0.25));
            ticks += 1;
            assert!(ticks < 10_000, "off: {what}");
        }
        let course = Course { through: station.position, bearing: bearing(end_deg) };
        let off_m = course.abeam(flight.position()).cross_track.get::<meter>().abs();
        if height_ft == 0.0 {
            worst_off_m = worst_off_m.max(off_m);
        }
        worst_off = worst_off.max(off_m / (plane_m + height_m));
        assert!(off_m < plane_m + height_m, "off: {off_m} m, {what}");
        flown += 1;
    }
    assert!(flown >= 140, "{flown}");
    println!(
        "arcs: {flown}, at the surface {worst_on_m} m onto, {worst_off_m} m off; onto {worst_on}, off {worst_off} of what is allowed"
    );
    println!("arcs: {worst_round_m} m worse round than at first");
}
