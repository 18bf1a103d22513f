//! A route flown from its brief: each leg by the needle, each turn open loop from its DME reading.

use lubberline::earth::{Course, inverse};
use lubberline::flight::{Flight, NeedleTracking, PlannedTurn, Reference, Start, Steering, Tuned, WindField};
use lubberline::lead::TurnSide;
use lubberline::route::{RouteBrief, RouteFix, RoutePlan};
use lubberline::station::{Ident, Receiver, Station, VOR_CONE_HALF_ANGLE_DEG};
use lubberline::turn::TurnLimits;
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::Wind;

use super::bearing;

/// How far before a station the needle is left alone and the turn is waited for: outside its cone.
const LEFT_ALONE_NM: f64 = 18.0;

/// Latitude, longitude, declination, and the wind on the leg to it.
type Fix = (f64, f64, f64, (f64, f64));

fn fix((latitude, longitude, declination, (from, speed)): Fix) -> RouteFix {
    let position =
        Position::new(Latitude::new(degrees(latitude)).unwrap(), Longitude::new(degrees(longitude)).unwrap());
    RouteFix {
        station: Station {
            position,
            elevation: Elevation::new(feet(600.0)).unwrap(),
            declination: Declination::new(degrees(declination)).unwrap(),
            ident: Ident::NONE,
        },
        cone_half_angle: ConeHalfAngle::new(degrees(VOR_CONE_HALF_ANGLE_DEG)).unwrap(),
        turn: TurnSide::Shortest,
        wind: Wind { from: bearing(from), speed: WindSpeed::new(knots(speed)).unwrap() },
    }
}

/// Flies a route; the greatest miss at a roll-out, and how far from the brief's time that of the last roll-out is.
fn flown(fixes: &[Fix], airspeed_kt: f64, altitude_ft: f64) -> (f64, f64, f64) {
    let plan = RoutePlan {
        true_airspeed: TrueAirspeed::new(knots(airspeed_kt)).unwrap(),
        pressure_altitude: PressureAltitude::new(feet(altitude_ft)).unwrap(),
        setting: AltimeterSetting::new(hectopascals(1013.25)).unwrap(),
        deviation: IsaDeviation::new(kelvins(0.0)).unwrap(),
        limits: TurnLimits::default(),
        intercept: InterceptAngle::new(degrees(30.0)).unwrap(),
        fixes: fixes.iter().copied().map(fix).collect(),
    };
    let brief = RouteBrief::of(&plan).unwrap();
    let first = plan.fixes[0].station.position;
    let mut flight = Flight::new(&Start {
        position: first,
        // Of the air of the plan.
        altitude: TrueAltitude::new(brief.turns[0].height.value() + plan.fixes[1].station.elevation.value())
            .unwrap(),
        heading: brief.legs[0].initial_course,
        north_of: None,
        true_airspeed: plan.true_airspeed,
        wind: WindField::uniform(plan.fixes[1].wind, Reference::Carried),
        limits: plan.limits,
        reaction: seconds(0.0),
    });
    let mut worst_nm: f64 = 0.0;
    for (turn, fix) in brief.turns.iter().zip(&plan.fixes[1..]) {
        flight.carry_north_of(fix.station.position);
        flight.set_wind(WindField::uniform(fix.wind, Reference::Carried));
        let receiver = Tuned {
            receiver: Receiver::default(),
            station: fix.station,
            course: turn.inbound_radial.reciprocal(),
        };
        flight.steer(Steering::Needle(NeedleTracking::new(receiver, fix.wind)));
        let away_nm = |flight: &Flight| {
            inverse(fix.station.position, flight.position()).distance.value().get::<nautical_mile>()
        };
        while away_nm(&flight) > LEFT_ALONE_NM {
            flight.step(seconds(0.5));
            assert!(flight.time() < turn.begin_time + seconds(60.0), "the station is not reached");
        }
        flight.steer(Steering::Turn(PlannedTurn::at_station(&turn.change, fix.station, turn.height)));
        while !flight.is_done() {
            flight.step(seconds(0.5));
            assert!(flight.time() < turn.roll_out_time() + seconds(60.0), "the turn is not turned");
        }
        let course = Course { through: fix.station.position, bearing: turn.change.outbound() };
        worst_nm = worst_nm.max(course.abeam(flight.position()).cross_track.get::<nautical_mile>().abs());
    }
    let planned_s = brief.turns[brief.turns.len() - 1].roll_out_time().get::<second>();
    (worst_nm, flight.time().get::<second>() - planned_s, planned_s)
}

#[test]
fn a_route_is_flown_as_it_is_briefed() {
    let high: [Fix; 6] = [
        (63.9, -24.1, -12.0, (0.0, 0.0)),
        (63.2, -20.7, -11.0, (260.0, 90.0)),
        (61.6, -19.9, -10.0, (255.0, 80.0)),
        (60.8, -22.9, -12.0, (250.0, 95.0)),
        (62.1, -25.6, -14.0, (250.0, 95.0)),
        (63.5, -25.9, -14.0, (265.0, 85.0)),
    ];
    let low: [Fix; 4] = [
        (-33.1, 148.2, 12.0, (0.0, 0.0)),
        (-33.6, 148.9, 12.0, (30.0, 35.0)),
        (-34.3, 148.7, 12.0, (40.0, 30.0)),
        (-34.6, 147.9, 11.0, (40.0, 30.0)),
    ];
    for (name, fixes, airspeed_kt, altitude_ft) in
        [("high", &high[..], 450.0, 36_000.0), ("low", &low[..], 150.0, 6_000.0)]
    {
        let (miss_nm, late_s, planned_s) = flown(fixes, airspeed_kt, altitude_ft);
        println!("route {name}: {miss_nm} NM at worst, {late_s} s late of {planned_s}");
        assert!(miss_nm < 0.02, "{name}: {miss_nm} NM");
        // A mile at height is more air than one on the ground, and the brief takes one groundspeed for a leg.
        assert!(late_s.abs() < 0.005 * planned_s, "{name}: {late_s} s of {planned_s}");
    }
}
