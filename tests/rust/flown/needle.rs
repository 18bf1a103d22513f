//! Tracking by the needle: far out it settles, close in it hunts, in the cone it is left alone.

use lubberline::earth::Course;
use lubberline::flight::{Flight, Interception, NeedleTracking, Steering, Tuned};
use lubberline::station::{Flag, Ident, Receiver, Station, ToFrom};
use lubberline::turn::{RolledTurn, TurnLimits};
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::Wind;

use super::{Draw, airspeed, bearing, flight_from};

fn station() -> Station {
    let at = (Latitude::new(degrees(58.3)).unwrap(), Longitude::new(degrees(-21.7)).unwrap());
    Station {
        position: Position::new(at.0, at.1),
        elevation: Elevation::new(feet(200.0)).unwrap(),
        declination: Declination::new(degrees(-9.0)).unwrap(),
        ident: Ident::NONE,
    }
}

fn receiver(course_deg: f64) -> Tuned {
    Tuned {
        receiver: Receiver::default(),
        station: station(),
        course: Radial::new(degrees(course_deg)).unwrap(),
    }
}

fn wind() -> Wind<TrueNorth> {
    Wind { from: bearing(320.0), speed: WindSpeed::new(knots(40.0)).unwrap() }
}

/// Inbound on a course of 090 true (099 from the station's north) from a distance west.
fn inbound(
    distance_nm: f64,
    off_deg: f64,
    altitude_ft: f64,
    believed: Wind<TrueNorth>,
) -> (Flight, NeedleTracking) {
    let flight = flight_from(
        station().position,
        bearing(270.0 + off_deg),
        nautical_miles(distance_nm),
        bearing(90.0),
        feet(altitude_ft),
        airspeed(240.0),
        wind(),
        &TurnLimits::default(),
    );
    (flight, NeedleTracking::new(receiver(99.0), believed))
}

#[test]
fn far_out_the_needle_comes_to_the_middle_even_in_a_wind_unknown() {
    // Believing in calm air, the needle must stand off by the crab over the gain, some 1.8 degrees, until it is learned.
    let (mut flight, tracking) = inbound(60.0, 0.0, 6_000.0, Wind::calm());
    flight.steer(Steering::Needle(tracking));
    let mut greatest_deg: f64 = 0.0;
    for _ in 0..5000 {
        flight.step(seconds(0.125));
        greatest_deg =
            greatest_deg.max(flight.shows(&tracking.receiver).deviation.unwrap().get::<degree>().abs());
    }
    let deflection_deg = flight.shows(&tracking.receiver).deviation.unwrap().get::<degree>();
    assert!(
        greatest_deg > 0.8 && deflection_deg.abs() < greatest_deg / 4.0,
        "{greatest_deg} {deflection_deg}"
    );
}

/// How often the bank changes its side by more than two degrees while the DME runs from one value to another at 120 kt, in a wind
/// the crew does not know of, with two seconds to react.
fn reversals(gain: f64, from_nm: f64, to_nm: f64) -> usize {
    let (mut flight, mut tracking) = inbound(from_nm, 0.0, 1_200.0, Wind::calm());
    flight.set_airspeed(airspeed(120.0));
    flight.set_reaction(seconds(2.0));
    tracking.gain = gain;
    flight.steer(Steering::Needle(tracking));
    let (mut count, mut side, mut ticks) = (0, 0.0, 0);
    while flight.shows(&tracking.receiver).observation.dme.value().get::<nautical_mile>() > to_nm {
        flight.step(seconds(0.125));
        ticks += 1;
        assert!(ticks < 10_000, "never comes near");
        let bank_deg = flight.bank().get::<degree>();
        if bank_deg.abs() > 2.0 && bank_deg.signum() != side {
            count += 1;
            side = bank_deg.signum();
        }
    }
    count
}

#[test]
fn near_the_station_the_tracker_hunts_and_more_with_more_gain() {
    let (far, near, near_gentle) =
        (reversals(15.0, 30.0, 26.0), reversals(15.0, 4.3, 0.3), reversals(4.0, 4.3, 0.3));
    println!("{far} {near} {near_gentle}");
    assert!(far <= 2 && near >= 5 && near_gentle <= 2, "{far} {near} {near_gentle}");
}

#[test]
fn in_the_cone_the_heading_is_held() {
    let (mut flight, tracking) = inbound(8.0, 0.0, 20_000.0, wind());
    flight.steer(Steering::Needle(tracking));
    let (mut least_deg, mut most_deg, mut inside) = (f64::INFINITY, f64::NEG_INFINITY, 0);
    for _ in 0..2400 {
        flight.step(seconds(0.125));
        let shown = flight.shows(&tracking.receiver);
        if shown.flag == Flag::Cone {
            inside += 1;
            assert!(shown.to_from == ToFrom::Off && shown.deviation.is_none());
            let heading_deg = flight.carried_heading().angle().get::<degree>();
            (least_deg, most_deg) = (least_deg.min(heading_deg), most_deg.max(heading_deg));
        }
    }
    // A cone of 50 degrees at 20 000 ft is 7.8 NM across.
    assert!(inside > 500, "{inside}");
    assert!(most_deg - least_deg < 1.0, "{least_deg} to {most_deg}");
    let end = flight.shows(&tracking.receiver);
    assert!(end.to_from == ToFrom::From, "{end:?}");
    assert!(end.deviation.unwrap().get::<degree>().abs() < 1.0, "{end:?}");
}

#[test]
fn an_interception_is_captured_on_the_course() {
    let mut draw = Draw::new(27_551);
    let (mut flown, mut needles, mut worst, mut worst_needle_deg): (u32, u32, f64, f64) = (0, 0, 0.0, 0.0);
    for _ in 0..80 {
        let mut receiver = receiver(0.0);
        receiver.station = draw.station();
        let airspeed_kt = draw.between(60.0, 600.0);
        let wind = draw.wind(airspeed_kt, 0.5);
        let height_ft = draw.between(8_000.0, 45_000.0);
        let limits = TurnLimits::default();
        let radius_m = RolledTurn::new(airspeed(airspeed_kt), &limits, degrees(90.0)).radius().get::<meter>();
        let radius_nm = radius_m / 1852.0;
        // Far enough off the course for the turn, in any wind, and far enough out to meet it before the station.
        let (off_nm, side) = (3.0 + 2.5 * radius_nm, draw.side());
        let distance_nm = 20.0 + 2.0 * off_nm;
        let off_deg = side * (off_nm / distance_nm).asin().to_degrees();
        let angle_deg = draw.between(30.0, 90.0);
        let mut flight = flight_from(
            receiver.station.position,
            bearing(180.0 + off_deg),
            nautical_miles(distance_nm),
            bearing(0.0),
            feet(height_ft),
            airspeed(airspeed_kt),
            wind,
            &limits,
        );
        let angle = InterceptAngle::new(degrees(angle_deg)).unwrap();
        let tracking = NeedleTracking::new(receiver, wind);
        flight.steer(Steering::Intercept(Interception { tracking, angle }));
        let what = format!("{off_nm} NM off at {angle_deg}, {airspeed_kt} kt {height_ft} ft {wind:?}");
        let mut ticks = 0;
        while !flight.is_done() {
            flight.step(seconds(0.5));
            ticks += 1;
            assert!(ticks < 8_000, "{what}");
        }
        let course = Course { through: receiver.station.position, bearing: bearing(0.0) };
        let off_m = course.abeam(flight.position()).cross_track.get::<meter>().abs();
        // As for an arc: the turn is computed on a plane, in miles of the surface.
        let allowed_m = 1.0 + 2.0 * (2.0 * radius_m) * height_ft / 20_925_000.0;
        assert!(off_m < allowed_m, "{off_m} of {allowed_m} m, {what}");
        worst = worst.max(off_m / allowed_m);
        for _ in 0..120 {
            flight.step(seconds(0.5));
        }
        // A minute on it is near the station or past it; where the needle shows, it is in the middle.
        if let Some(deviation) = flight.shows(&receiver).deviation {
            worst_needle_deg = worst_needle_deg.max(deviation.get::<degree>().abs());
            needles += 1;
        }
        flown += 1;
    }
    assert!(needles > 50 && worst_needle_deg < 0.05, "{needles}, {worst_needle_deg} degrees");
    println!("interceptions: {flown}, {worst} of what is allowed, needle {worst_needle_deg} of {needles}");
}
