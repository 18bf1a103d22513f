//! Paths of legs flown: the turn of a leg that ends onto a DME arc, open loop from where the path begins it, and the arc after it by DME;
//! racetracks and procedure turns, open loop from entry to end.

use lubberline::earth::{direct, inverse};
use lubberline::flight::{ArcTracking, Begin, Flight, PlannedTurn, Reference, Start, Steering, WindField};
use lubberline::lead::ArcSense;
use lubberline::procedure::legs::{
    Conditions, Fix, GroundPath, Hold, HoldLength, Leg, Passage, ReversalForm, SegmentKind,
};
use lubberline::procedure::{HoldingSide, TimedLeg};
use lubberline::station::Station;
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::hold_course;

use super::{Draw, airspeed, bearing, ground};

/// How far from the arc the wings may come level (4 cm measured), and how far from it the flight may go after that: as much as
/// that round the arcs of `arcs.rs` (13 m measured).
const ROLL_OUT_M: f64 = 0.1;
const ROUND_M: f64 = 25.0;

fn turned(from: TrueBearing, by_deg: f64) -> TrueBearing {
    bearing((from.angle().get::<degree>() + by_deg).rem_euclid(360.0))
}

#[test]
fn a_leg_that_ends_onto_an_arc_rolls_out_on_it() {
    let mut draw = Draw::new(990_031);
    let codes = ["CD", "CI", "CR", "FD", "VD", "VI", "VR"];
    let mut flown = [[[0_u32; 2]; 2]; 7];
    let (mut worst_on_m, mut worst_round_m, mut refused) = (0.0_f64, 0.0_f64, 0);
    for case in 0..210 {
        let station = draw.station();
        let airspeed_kt = draw.between(90.0, 350.0);
        let tas = airspeed(airspeed_kt);
        let altitude = TrueAltitude::new(feet(0.0)).unwrap();
        let mut conditions = Conditions::level(tas, altitude);
        conditions.wind = draw.wind(airspeed_kt, 0.4);
        let (right, outside) = (draw.side() > 0.0, draw.side() > 0.0);
        let (sense, side) =
            if right { (ArcSense::Clockwise, 1.0) } else { (ArcSense::Counterclockwise, -1.0) };
        let arc_nm = draw.between(10.0, 18.0) * (airspeed_kt / 300.0).powi(2).max(1.0);
        // Where the course meets the arc, at up to 60 degrees from the radial there, from a start well before it.
        let met_deg = draw.between(0.0, 360.0);
        let (met, outward) = direct(station.position, bearing(met_deg), ground(nautical_miles(arc_nm)));
        let off_deg = draw.between(-60.0, 60.0);
        let course = turned(outward, if outside { 180.0 } else { 0.0 } + off_deg);
        let back_nm = if outside { arc_nm } else { 0.9 * arc_nm * off_deg.to_radians().cos() };
        let (start, onward) = direct(met, course.reciprocal(), ground(nautical_miles(back_nm)));
        let course = onward.reciprocal();
        let reading = station.observe(met, altitude).dme;
        // A radial that the course crosses there at a right angle.
        let (abeam, _) = direct(met, turned(course, 90.0), ground(nautical_miles(20.0)));
        let beside = Station { position: abeam, ..station };
        let radial = beside.observe(met, altitude).radial.unwrap();
        let end =
            direct(station.position, turned(bearing(met_deg), side * 170.0), ground(nautical_miles(arc_nm)))
                .0;
        let fix = |position| Fix { position, passage: Passage::FlyBy };
        let heading = hold_course(course, tas, conditions.wind).unwrap().heading;
        let code = case % 7;
        let leg = match codes[code] {
            "CD" => Leg::CourseToDme(course, station, reading),
            "CI" => Leg::CourseToIntercept(course),
            "CR" => Leg::CourseToRadial(course, beside, radial),
            "FD" => Leg::FixToDme(start, course, station, reading),
            "VD" => Leg::HeadingToDme(heading, station, reading),
            "VI" => Leg::HeadingToIntercept(heading),
            _ => Leg::HeadingToRadial(heading, beside, radial),
        };
        let what = format!(
            "{} {station:?} {airspeed_kt} kt {:?} met {met_deg} off {off_deg} outside {outside} {sense:?} {arc_nm}",
            codes[code], conditions.wind
        );
        let arc = Leg::ArcToFix { station: station.position, sense, fix: fix(end) };
        let path = if codes[code] == "FD" {
            GroundPath::fly(&[leg, arc], &conditions)
        } else {
            GroundPath::fly(&[Leg::InitialFix(fix(start)), leg, arc], &conditions)
        };
        // From inside a strong wind may leave no room for the turn, which is an answer too.
        let path = match path {
            Ok(path) => path,
            Err(lubberline::Error::LegNotFlown { reason, .. }) => {
                assert!(!outside, "{reason}: {what}");
                refused += 1;
                continue;
            }
            Err(other) => panic!("{other} {what}"),
        };
        let kinds: Vec<SegmentKind> = path.segments.iter().map(|segment| segment.kind).collect();
        assert_eq!(kinds, [SegmentKind::Straight, SegmentKind::Turn, SegmentKind::Arc], "{what}");
        let turn = path.segments[1];

        // The turn is worked out in the frame of its end, and so is the wind in it.
        let carried = inverse(turn.start.position, turn.end.position);
        let turned_deg = carried.initial_bearing.unwrap().change_to(carried.final_bearing.unwrap());
        let in_frame = turned(turn.start.course, turned_deg.angle().get::<degree>());
        let before = hold_course(in_frame, tas, conditions.wind).unwrap();
        let mut flight = Flight::new(&Start {
            position: turn.start.position,
            altitude,
            heading: before.heading,
            north_of: Some(turn.end.position),
            true_airspeed: tas,
            wind: WindField::uniform(conditions.wind, Reference::Carried),
            limits: conditions.limits,
            reaction: seconds(0.0),
        });
        let plan = turn.turn().unwrap();
        let change_deg = plan.heading_change().get::<degree>();
        flight.steer(Steering::Turn(PlannedTurn {
            begin: Begin::Now,
            heading_after: turned(before.heading, change_deg),
            heading_change: plan.heading_change(),
            bank: plan.bank(),
        }));
        let mut ticks = 0;
        while !flight.is_done() {
            flight.step(seconds(0.25));
            ticks += 1;
            assert!(ticks < 10_000, "{what}");
        }
        let off_m = |flight: &Flight| {
            let away = inverse(station.position, flight.position()).distance.value();
            (away - nautical_miles(arc_nm)).get::<meter>().abs()
        };
        let on_m = off_m(&flight);
        worst_on_m = worst_on_m.max(on_m);
        assert!(on_m < ROLL_OUT_M, "onto: {on_m} m, {what}");
        flight.steer(Steering::Arc(ArcTracking {
            station,
            radius: ArcRadius::new(nautical_miles(arc_nm)).unwrap(),
            sense,
            believed_wind: conditions.wind,
        }));
        // Half the way to the fix.
        let sweep_s = path.segments[2].duration().get::<second>();
        while flight.time() < turn.duration() + seconds(0.5 * sweep_s) {
            flight.step(seconds(0.25));
            worst_round_m = worst_round_m.max(off_m(&flight));
            assert!(off_m(&flight) < ROUND_M, "round: {} m, {what}", off_m(&flight));
        }
        flown[code][usize::from(right)][usize::from(outside)] += 1;
    }
    println!(
        "onto arcs: {flown:?}, refused {refused}, {worst_on_m} m at the roll-out, {worst_round_m} m after it"
    );
    // Each of the seven codes, both ways round, from inside and from outside.
    assert!(flown.iter().flatten().flatten().all(|count| *count >= 2), "{flown:?}");
}

/// How far from where the path ends the open loop may, over five minutes and more: the wind's direction against each place's own north,
/// which the path takes up turn by turn, is let run here.
const ROUND_THE_HOLD_M: f64 = 60.0;

/// Flies the segments of a path one after the other, by their times, headings and turns alone; how far from its end that comes out.
fn open_loop_m(path: &GroundPath, from: usize, fix: Position) -> f64 {
    let conditions = &path.conditions;
    let begin = &path.segments[from].start;
    let (tas, wind) = (conditions.true_airspeed, conditions.wind);
    let mut flight = Flight::new(&Start {
        position: begin.position,
        altitude: begin.altitude,
        heading: hold_course(begin.course, tas, wind).unwrap().heading,
        north_of: Some(fix),
        true_airspeed: tas,
        wind: WindField::uniform(wind, Reference::Carried),
        limits: conditions.limits,
        reaction: seconds(0.0),
    });
    let mut heading = hold_course(begin.course, tas, wind).unwrap().heading;
    for segment in &path.segments[from..] {
        match segment.turn() {
            Some(turn) => {
                heading = turned(heading, turn.heading_change().get::<degree>());
                flight.steer(Steering::Turn(PlannedTurn {
                    begin: Begin::Now,
                    heading_after: heading,
                    heading_change: turn.heading_change(),
                    bank: turn.bank(),
                }));
            }
            None => flight.steer(Steering::Heading(heading)),
        }
        let until = segment.end.time - begin.time;
        while flight.time() < until - seconds(1e-9) {
            flight.step((until - flight.time()).min(seconds(0.5)));
        }
    }
    let end = path.segments.last().unwrap().end.position;
    inverse(end, flight.position()).distance.value().get::<meter>()
}

#[test]
fn racetracks_and_procedure_turns_come_out_where_their_path_does() {
    let mut draw = Draw::new(990_033);
    let (mut worst_m, mut flown) = (0.0_f64, 0);
    for case in 0..72 {
        let fix = direct(
            Position::new(Latitude::new(degrees(50.0)).unwrap(), Longitude::new(degrees(8.0)).unwrap()),
            bearing(draw.between(0.0, 360.0)),
            ground(nautical_miles(draw.between(0.0, 300.0))),
        )
        .0;
        let airspeed_kt = draw.between(120.0, 230.0);
        let mut conditions = Conditions::level(airspeed(airspeed_kt), TrueAltitude::new(feet(0.0)).unwrap());
        conditions.wind = draw.wind(airspeed_kt, 0.25);
        let inbound = bearing(draw.between(0.0, 360.0));
        let first_right = draw.side() > 0.0;
        let minute = HoldTime::new(seconds(draw.between(60.0, 90.0))).unwrap();
        let miles = ground(nautical_miles(draw.between(4.0, 8.0)));
        let site = Station {
            position: direct(fix, inbound, ground(nautical_miles(10.0))).0,
            elevation: Elevation::new(feet(0.0)).unwrap(),
            declination: Declination::ZERO,
            ident: lubberline::station::Ident::NONE,
        };
        let length = match case % 6 {
            0 => HoldLength::Time(TimedLeg::Inbound, minute),
            1 => HoldLength::Time(TimedLeg::Outbound, minute),
            2 => HoldLength::Time(TimedLeg::OutboundFromLevel, minute),
            3 => HoldLength::Distance(TimedLeg::Inbound, miles),
            4 => HoldLength::Distance(TimedLeg::Outbound, miles),
            _ => HoldLength::Dme(site, SlantRange::new(nautical_miles(17.0)).unwrap()),
        };
        let side = if first_right { HoldingSide::Right } else { HoldingSide::Left };
        let start = direct(fix, bearing(draw.between(0.0, 360.0)), ground(nautical_miles(12.0))).0;
        let over = Fix { position: fix, passage: Passage::FlyOver };
        let legs = if case % 4 == 3 {
            let form = if case % 8 == 3 { ReversalForm::Off45 } else { ReversalForm::Off80 };
            vec![
                Leg::ProcedureTurn {
                    fix,
                    outbound: inbound.reciprocal(),
                    outbound_distance: miles,
                    first_right,
                    form,
                    off_time: minute,
                },
                Leg::CourseToFix(inbound, over),
            ]
        } else {
            let hold = Hold { fix, inbound, side, length };
            vec![
                Leg::InitialFix(Fix { position: start, passage: Passage::FlyBy }),
                Leg::TrackToFix(over),
                Leg::HoldToManual(hold),
            ]
        };
        let path = GroundPath::fly(&legs, &conditions).unwrap();
        let from = if legs.len() == 3 { 1 } else { 0 };
        let off_m = open_loop_m(&path, from, fix);
        worst_m = worst_m.max(off_m);
        assert!(off_m < ROUND_THE_HOLD_M, "{off_m} m {legs:?} {conditions:?}");
        flown += 1;
    }
    println!("racetracks and procedure turns: {flown}, {worst_m} m from the end of their path");
}
