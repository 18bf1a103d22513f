//! Every leg is flown, in wind, and ends where it should.

use super::*;
use crate::earth::{Course, direct, inverse};
use crate::lead::{ArcSense, RadialFlown, onto_arc};
use crate::procedure::{HoldingSide, TimedLeg};
use crate::station::{Ident, Station};
use crate::turn::TurnLimits;
use crate::value::units::{
    degree, degrees, feet, feet_per_minute, foot, knot, knots, meter, metres, nautical_mile, nautical_miles,
    second, seconds,
};
use crate::value::{
    ArcRadius, Bank, Declination, Elevation, GroundDistance, HoldTime, Position, PressureAltitude, Radial,
    SlantRange, TrueAirspeed, TrueAltitude, TrueBearing, WindSpeed,
};
use crate::wind::{Wind, WindLevel, WindsAloft};
use crate::{Error, LegReason};

fn at(latitude: f64, longitude: f64) -> Position {
    Position::derived(latitude, longitude)
}

fn bearing(value: f64) -> TrueBearing {
    TrueBearing::from_degrees(value)
}

fn by(position: Position) -> Fix {
    Fix { position, passage: Passage::FlyBy }
}

fn over(position: Position) -> Fix {
    Fix { position, passage: Passage::FlyOver }
}

fn miles(value: f64) -> GroundDistance {
    GroundDistance::new(nautical_miles(value)).unwrap()
}

fn off(from: Position, toward: f64, distance_nm: f64) -> Position {
    direct(from, bearing(toward), miles(distance_nm)).0
}

fn altitude(value_ft: f64) -> TrueAltitude {
    TrueAltitude::new(feet(value_ft)).unwrap()
}

fn windy() -> Conditions {
    Conditions {
        wind: Wind { from: bearing(280.0), speed: WindSpeed::new(knots(45.0)).unwrap() },
        climb: feet_per_minute(900.0),
        ..Conditions::level(TrueAirspeed::new(knots(220.0)).unwrap(), altitude(4000.0))
    }
}

fn station(position: Position) -> Station {
    Station {
        position,
        elevation: Elevation::new(feet(300.0)).unwrap(),
        declination: Declination::new(degrees(-7.0)).unwrap(),
        ident: Ident::NONE,
    }
}

/// Flies a sequence, and checks what holds for every path: it is of one piece, and time and length only grow.
fn flown(legs: &[Leg], conditions: &Conditions) -> GroundPath {
    // The wind keeps its direction against each point's own north, which over a racetrack leaves some metres.
    flown_within(5.0, legs, conditions)
}

/// The same where a turn may have left more to be taken up, at the most what counts as on the line.
fn flown_within(taken_up_m: f64, legs: &[Leg], conditions: &Conditions) -> GroundPath {
    let path = GroundPath::fly(legs, conditions).unwrap();
    for pair in path.segments.windows(2) {
        let gap_m = inverse(pair[0].end.position, pair[1].start.position).distance.value().get::<meter>();
        assert!(gap_m < 1e-6, "a gap of {gap_m} m after leg {}", pair[0].leg);
        assert!((pair[0].end.time - pair[1].start.time).get::<second>().abs() < 1e-9);
        let bend = pair[0].end.course.change_to(pair[1].start.course).degrees();
        assert!(bend.abs() < 0.3, "a bend of {bend} degrees after leg {}", pair[0].leg);
    }
    for segment in &path.segments {
        assert!(segment.length > metres(0.0) && segment.duration() > seconds(0.0), "{segment:?}");
        let end_m = inverse(segment.at(1.0), segment.end.position).distance.value().get::<meter>();
        assert!(end_m < taken_up_m, "{:?} is drawn {end_m} m away from its end", segment.kind);
    }
    path
}

fn end(path: &GroundPath) -> Place {
    path.segments.last().unwrap().end
}

fn apart_m(one: Position, other: Position) -> f64 {
    inverse(one, other).distance.value().get::<meter>()
}

#[test]
fn tf_flies_by_and_over() {
    let (a, b, c) = (at(60.0, -10.0), at(60.5, -10.3), at(60.6, -9.0));
    let flies_by = flown(&[Leg::InitialFix(by(a)), Leg::TrackToFix(by(b)), Leg::TrackToFix(by(c))], &windy());
    let flies_over =
        flown(&[Leg::InitialFix(by(a)), Leg::TrackToFix(over(b)), Leg::TrackToFix(by(c))], &windy());
    for path in [&flies_by, &flies_over] {
        assert!(apart_m(end(path).position, c) < 1e-3);
    }
    let nearest = |path: &GroundPath| {
        let points = path.points(metres(20.0));
        points.iter().map(|point| apart_m(*point, b)).fold(f64::INFINITY, f64::min)
    };
    assert!(nearest(&flies_by) > 200.0 && nearest(&flies_over) < 1.0);
    assert!(flies_by.length() < flies_over.length());
    // What the turn leaves is on the next leg's line, as the closed form promised, before it is taken up.
    let turn = flies_by.segments[1];
    assert_eq!(turn.kind, SegmentKind::Turn);
    let line = Course { through: b, bearing: inverse(b, c).initial_bearing.unwrap() };
    assert!(line.abeam(turn.at(1.0)).cross_track.get::<meter>().abs() < 0.2);
}

#[test]
fn cf_intercepts_its_course_and_df_turns_to_its_fix() {
    let (a, b, fix) = (at(60.0, -10.0), at(60.3, -10.0), at(60.9, -9.2));
    let start = [Leg::InitialFix(by(a)), Leg::TrackToFix(over(b))];
    let by_course = flown(&[start[0], start[1], Leg::CourseToFix(bearing(60.0), by(fix))], &windy());
    let miss_m = apart_m(end(&by_course).position, fix);
    assert!(miss_m < 1e-3, "{miss_m}");
    assert!(end(&by_course).course.change_to(bearing(60.0)).degrees().abs() < 1e-6);
    let straight = flown(&[start[0], start[1], Leg::DirectToFix(by(fix))], &windy());
    assert!(apart_m(end(&straight).position, fix) < 1e-3);
    assert_eq!(straight.segments.len(), 3);
    assert!(straight.length() < by_course.length());
}

#[test]
fn legs_from_a_fix_end_at_altitude_distance_dme_or_by_hand() {
    let fix = at(60.0, -10.0);
    let site = station(off(fix, 200.0, 5.0));
    let to = |leg| end(&flown(&[leg], &windy()));
    let climbed = to(Leg::FixToAltitude(fix, bearing(30.0), altitude(9000.0)));
    assert!((climbed.altitude.value().get::<foot>() - 9000.0).abs() < 1e-6);
    assert!((climbed.time.get::<second>() - 5000.0 / 900.0 * 60.0).abs() < 1e-6);
    let far = to(Leg::FixToDistance(fix, bearing(30.0), miles(12.0)));
    assert!((apart_m(far.position, fix) - 12.0 * 1852.0).abs() < 1e-3);
    let dme = SlantRange::new(nautical_miles(17.5)).unwrap();
    let met = to(Leg::FixToDme(fix, bearing(30.0), site, dme));
    let seen = site.observe(met.position, met.altitude).dme.value().get::<nautical_mile>();
    assert!((seen - 17.5).abs() < 1e-6, "{seen}");
    let ended = to(Leg::FixToManual(fix, bearing(30.0)));
    assert!((apart_m(ended.position, fix) - 18_520.0).abs() < 1e-3);
}

#[test]
fn courses_and_headings_end_at_altitude_dme_radial_or_by_hand() {
    let (a, b) = (at(60.0, -10.0), at(60.3, -10.0));
    let site = station(off(b, 120.0, 9.0));
    let to = |leg| end(&flown(&[Leg::InitialFix(by(a)), Leg::TrackToFix(over(b)), leg], &windy()));
    for leg in [
        Leg::CourseToAltitude(bearing(70.0), altitude(19_000.0)),
        Leg::HeadingToAltitude(bearing(70.0), altitude(19_000.0)),
    ] {
        let reached_ft = to(leg).altitude.value().get::<foot>();
        assert!((reached_ft - 19_000.0).abs() < 1e-6, "{reached_ft}");
    }
    let dme = SlantRange::new(nautical_miles(15.0)).unwrap();
    for leg in [Leg::CourseToDme(bearing(20.0), site, dme), Leg::HeadingToDme(bearing(20.0), site, dme)] {
        let met = to(leg);
        let seen = site.observe(met.position, met.altitude).dme.value().get::<nautical_mile>();
        assert!((seen - 15.0).abs() < 1e-6, "{} {seen}", leg.code().word());
    }
    let radial = Radial::new(degrees(10.0)).unwrap();
    for leg in
        [Leg::CourseToRadial(bearing(80.0), site, radial), Leg::HeadingToRadial(bearing(80.0), site, radial)]
    {
        let met = to(leg);
        let seen = site.observe(met.position, met.altitude).radial.unwrap();
        assert!(radial.change_to(seen).degrees().abs() < 1e-6, "{} {seen:?}", leg.code().word());
    }
    // The wind from the west carries an eastward heading along, and a northward one to the right.
    let drifted = to(Leg::HeadingToManual(bearing(0.0)));
    let drift = bearing(0.0).change_to(drifted.course).degrees();
    assert!((5.0..15.0).contains(&drift), "{drift}");
}

#[test]
fn courses_and_headings_meet_the_next_leg() {
    let (a, b, fix) = (at(60.0, -10.0), at(60.3, -10.0), at(60.5, -8.6));
    for leg in [Leg::CourseToIntercept(bearing(20.0)), Leg::HeadingToIntercept(bearing(20.0))] {
        let path = flown(
            &[
                Leg::InitialFix(by(a)),
                Leg::TrackToFix(over(b)),
                leg,
                Leg::CourseToFix(bearing(95.0), by(fix)),
            ],
            &windy(),
        );
        assert!(apart_m(end(&path).position, fix) < 1e-3, "{}", leg.code().word());
        let line = Course { through: fix, bearing: bearing(95.0) };
        let onto = path.segments[path.segments.len() - 2];
        assert_eq!(onto.kind, SegmentKind::Turn);
        assert!(line.abeam(onto.at(1.0)).cross_track.get::<meter>().abs() < 0.2, "{}", leg.code().word());
    }
}

#[test]
fn arcs_keep_their_distance() {
    let center = at(60.0, -10.0);
    let (gate, exit) = (off(center, 250.0, 14.0), off(center, 340.0, 14.0));
    let legs = [
        Leg::InitialFix(by(off(center, 250.0, 30.0))),
        Leg::TrackToFix(by(gate)),
        Leg::ArcToFix { station: center, sense: ArcSense::Clockwise, fix: by(exit) },
        Leg::CourseToFix(inverse(exit, center).final_bearing.unwrap(), by(center)),
    ];
    let path = flown(&legs, &windy());
    let kinds: Vec<SegmentKind> = path.segments.iter().map(|segment| segment.kind).collect();
    use SegmentKind::{Arc, Straight, Turn};
    assert_eq!(kinds, [Straight, Turn, Arc, Turn, Straight]);
    for share in [0.0, 0.3, 1.0] {
        assert!((apart_m(path.segments[2].at(share), center) - 14.0 * 1852.0).abs() < 1e-3);
    }
    assert!(apart_m(end(&path).position, center) < 1e-3);
    // The turn onto the arc ends on it before what is left is taken up.
    let off_m = apart_m(path.segments[1].at(1.0), center) - 14.0 * 1852.0;
    assert!(off_m.abs() < 1.0, "{off_m}");
}

/// The lead onto an arc from any course is that from a radial where the course is one: [`onto_arc`], on a plane about the station.
#[test]
fn from_a_radial_the_turn_onto_an_arc_is_that_of_the_plane() {
    let center = at(60.0, -10.0);
    // The plane has one north and the legs each place's own: a wind would be another one where the arc is met.
    let conditions = Conditions { wind: Wind::calm(), ..windy() };
    for sense in [ArcSense::Clockwise, ArcSense::Counterclockwise] {
        for (way, from_nm, onward) in [(RadialFlown::Inbound, 30.0, 180.0), (RadialFlown::Outbound, 1.0, 0.0)]
        {
            let start = off(center, 250.0, from_nm);
            let radial = inverse(center, start).final_bearing.unwrap();
            let course = bearing(radial.degrees() + onward);
            let end = by(off(center, 250.0 + 120.0 * f64::from(sense.code()), 14.0));
            let legs = [
                Leg::InitialFix(by(start)),
                Leg::CourseToIntercept(course),
                Leg::ArcToFix { station: center, sense, fix: end },
            ];
            let path = flown(&legs, &conditions);
            let plane = onto_arc(
                bearing(250.0),
                way,
                ArcRadius::new(nautical_miles(14.0)).unwrap(),
                sense,
                conditions.true_airspeed,
                conditions.wind,
                &conditions.limits,
            )
            .unwrap();
            let begun_m = apart_m(path.segments[1].start.position, center);
            let planned_m = plane.distance_at_roll_in.value().get::<meter>();
            assert!((begun_m - planned_m).abs() < 2e-4 * 1852.0, "{begun_m} {planned_m}");
        }
    }
}

/// What ends at a reading or a radial on the arc, or meets it, rolls out on it; what ends before it flies on to it.
#[test]
fn an_arc_is_joined_from_courses_and_headings() {
    let center = at(60.0, -10.0);
    let site = Station { elevation: Elevation::new(feet(0.0)).unwrap(), ..station(center) };
    let level = Conditions { climb: feet_per_minute(0.0), ..windy() };
    let met = off(center, 250.0, 14.0);
    let arc = Leg::ArcToFix { station: center, sense: ArcSense::Clockwise, fix: by(off(center, 20.0, 14.0)) };
    let start = off(met, 240.0, 12.0);
    let course = inverse(start, met).initial_bearing.unwrap();
    let dme = |place| site.observe(place, level.altitude).dme;
    let beside = station(off(met, 330.0, 9.0));
    let radial = beside.observe(met, level.altitude).radial.unwrap();
    let before = direct(start, course, miles(4.0)).0;
    let mut ends: Vec<Place> = Vec::new();
    for leg in [
        Leg::CourseToIntercept(course),
        Leg::CourseToDme(course, site, dme(met)),
        Leg::FixToDme(start, course, site, dme(met)),
        Leg::CourseToRadial(course, beside, radial),
        // Ended before the arc, by a reading, an altitude or by hand, and flown on.
        Leg::CourseToDme(course, site, dme(before)),
        Leg::FixToDistance(start, course, miles(3.0)),
        Leg::CourseToAltitude(course, level.altitude),
    ] {
        let path = flown(&[Leg::InitialFix(by(start)), leg, arc], &level);
        let turn = path.segments.iter().find(|segment| segment.kind == SegmentKind::Turn).unwrap();
        assert_eq!(turn.leg, 2, "{}", leg.code().word());
        let off_m = apart_m(turn.at(1.0), center) - 14.0 * 1852.0;
        assert!(off_m.abs() < 0.2, "{off_m} {}", leg.code().word());
        assert_eq!(path.segments.last().unwrap().kind, SegmentKind::Arc);
        assert!(apart_m(end(&path).position, off(center, 20.0, 14.0)) < 1e-3);
        ends.push(turn.start);
    }
    // All of them begin the turn at the same place, since they come along the same line.
    for place in &ends {
        assert!(apart_m(place.position, ends[0].position) < 0.01);
    }
    // Held by the wind's crab, a heading is the same course.
    let held = crate::wind::hold_course(course, level.true_airspeed, level.wind).unwrap().heading;
    for leg in [
        Leg::HeadingToIntercept(held),
        Leg::HeadingToDme(held, site, dme(met)),
        Leg::HeadingToRadial(held, beside, radial),
    ] {
        let path = flown(&[Leg::InitialFix(by(start)), leg, arc], &level);
        assert!(apart_m(path.segments[1].start.position, ends[0].position) < 0.01, "{}", leg.code().word());
    }
}

#[test]
fn an_arc_that_cannot_be_rolled_out_on_says_so() {
    let center = at(60.0, -10.0);
    let refused = |legs: &[Leg]| refused(legs, &windy());
    let arc = |radius_nm: f64, end_deg: f64| Leg::ArcToFix {
        station: center,
        sense: ArcSense::Clockwise,
        fix: by(off(center, end_deg, radius_nm)),
    };
    let outbound = Leg::CourseToIntercept(bearing(90.0));
    let from = |bearing_deg, distance_nm| Leg::InitialFix(by(off(center, bearing_deg, distance_nm)));
    // From inside, an arc below twice the radius of the turn.
    let (leg, code, reason) = refused(&[from(90.0, 0.1), outbound, arc(1.5, 200.0)]);
    let LegReason::NoTurnOntoArc { radius_nm } = reason else { panic!("{reason}") };
    assert!((leg, code) == (2, "CI") && close(radius_nm, 1.5), "{reason}");
    let (leg, code, reason) = refused(&[from(90.0, 13.8), outbound, arc(14.0, 200.0)]);
    let LegReason::TooShort { left_nm, lead_nm } = reason else { panic!("{reason}") };
    assert!((leg, code) == (2, "CI") && close(left_nm, 0.2) && lead_nm > 0.2, "{reason}");
    let (leg, code, reason) = refused(&[from(90.0, 20.0), outbound, arc(14.0, 200.0)]);
    let LegReason::NextArcNotMet { radius_nm, .. } = reason else { panic!("{reason}") };
    assert!((leg, code) == (2, "CI") && close(radius_nm, 14.0), "{reason}");
    let (leg, code, reason) = refused(&[from(90.0, 5.0), outbound, arc(14.0, 90.5)]);
    let LegReason::FixPassedInTurn { past_deg, allowed_deg } = reason else { panic!("{reason}") };
    assert!((leg, code) == (2, "CI") && past_deg > allowed_deg, "{reason}");
    let climb = Leg::CourseToAltitude(bearing(90.0), altitude(4200.0));
    let (leg, code, reason) = refused(&[from(90.0, 12.0), climb, arc(14.0, 200.0)]);
    let LegReason::ArcTooClose { left_nm, lead_nm } = reason else { panic!("{reason}") };
    assert!((leg, code) == (3, "AF") && left_nm < 2.0 && lead_nm > left_nm, "{reason}");
    let (leg, code, reason) = refused(&[from(90.0, 20.0), climb, arc(14.0, 200.0)]);
    let LegReason::ArcNotMet { radius_nm, .. } = reason else { panic!("{reason}") };
    assert!((leg, code) == (3, "AF") && close(radius_nm, 14.0), "{reason}");
    // An arc of a fixed radius is joined along it, and only so.
    let radius = Leg::RadiusToFix { center, sense: ArcSense::Clockwise, fix: by(off(center, 180.0, 14.0)) };
    let to_gate = Leg::TrackToFix(by(off(center, 90.0, 14.0)));
    assert_eq!(refused(&[from(90.0, 30.0), to_gate, radius]).1, "RF");
}

#[test]
fn rf_is_flown_tangent() {
    let (a, center) = (at(60.0, -10.0), off(at(60.0, -10.0), 90.0, 4.0));
    let begin = a;
    let finish = off(center, 0.0, 4.0);
    let legs = [
        Leg::InitialFix(by(off(begin, 180.0, 8.0))),
        Leg::TrackToFix(by(begin)),
        Leg::RadiusToFix { center, sense: ArcSense::Clockwise, fix: by(finish) },
        Leg::TrackToFix(by(off(finish, 90.0, 6.0))),
    ];
    let path = flown(&legs, &windy());
    let arc = path.segments.iter().find(|segment| segment.kind == SegmentKind::Arc).unwrap();
    let quarter_m = std::f64::consts::FRAC_PI_2 * 4.0 * 1852.0;
    assert!((arc.length.get::<meter>() - quarter_m).abs() < 0.01 * quarter_m);
    assert!(apart_m(arc.end.position, finish) < 1e-3);
}

fn hold(fix: Position, inbound: f64, side: HoldingSide) -> Hold {
    let length = HoldLength::Time(TimedLeg::OutboundFromLevel, HoldTime::new(seconds(60.0)).unwrap());
    Hold { fix, inbound: bearing(inbound), side, length }
}

#[test]
fn racetracks_end_over_their_fix_on_their_inbound_course_whatever_the_entry() {
    let fix = at(60.0, -10.0);
    for side in [HoldingSide::Right, HoldingSide::Left] {
        for from in [0.0, 60.0, 100.0, 140.0, 170.0, 200.0, 260.0, 300.0] {
            let legs = [
                Leg::InitialFix(by(off(fix, from, 15.0))),
                Leg::TrackToFix(over(fix)),
                Leg::HoldToFix(hold(fix, 90.0, side)),
            ];
            let path = flown(&legs, &windy());
            assert!(apart_m(end(&path).position, fix) < 1e-3, "from {from}");
            assert!(bearing(90.0).change_to(end(&path).course).degrees().abs() < 1e-3, "from {from}");
        }
    }
    let legs = [Leg::HoldToManual(hold(fix, 200.0, HoldingSide::Right))];
    let path = flown(&legs, &windy());
    assert!(apart_m(end(&path).position, fix) < 1e-3);
    let calm = Conditions { wind: Wind::calm(), ..windy() };
    let still = flown(&legs, &calm);
    // In still air: two straights of a minute and two half circles at g tan(25) / V = 2.315 degrees per second, each with a roll of
    // five seconds at its two ends, in which on average half the rate is turned.
    let one_s = still.duration().get::<second>() / 2.0;
    assert!((one_s - 2.0 * (60.0 + 180.0 / 2.315 + 5.0)).abs() < 1.0, "{one_s}");
    let climbed =
        flown(&[Leg::HoldToAltitude(hold(fix, 200.0, HoldingSide::Right), altitude(12_000.0))], &windy());
    assert!(end(&climbed).altitude.value() >= feet(12_000.0) && apart_m(end(&climbed).position, fix) < 1e-3);
}

#[test]
fn a_procedure_turn_comes_back_on_the_next_course() {
    let fix = at(60.0, -10.0);
    for first_right in [true, false] {
        let turn = Leg::ProcedureTurn {
            fix,
            outbound: bearing(250.0),
            outbound_distance: miles(6.0),
            first_right,
            form: ReversalForm::Off45,
            off_time: HoldTime::new(seconds(60.0)).unwrap(),
        };
        let path = flown(&[turn, Leg::CourseToFix(bearing(70.0), by(fix))], &windy());
        assert!(apart_m(end(&path).position, fix) < 1e-3);
        assert!(bearing(70.0).change_to(end(&path).course).angle().get::<degree>().abs() < 1e-6);
    }
}

/// The leg that is refused, its letters, and why.
fn refused(legs: &[Leg], conditions: &Conditions) -> (usize, &'static str, LegReason) {
    match GroundPath::fly(legs, conditions) {
        Err(Error::LegNotFlown { leg, code, reason }) => (leg, code, reason),
        other => panic!("{other:?}"),
    }
}

/// To a thousandth, of miles or of degrees.
fn close(one: f64, other: f64) -> bool {
    (one - other).abs() < 1e-3
}

#[test]
fn what_cannot_be_flown_says_which_leg_and_why() {
    let a = at(60.0, -10.0);
    let refused = |legs: &[Leg]| {
        let (leg, code, reason) = refused(legs, &windy());
        (leg, code, reason.to_string())
    };
    assert_eq!(refused(&[]).0, 1);
    assert_eq!(refused(&[Leg::TrackToFix(by(a))]).1, "TF");
    assert_eq!(refused(&[Leg::InitialFix(by(a)), Leg::TrackToFix(by(a))]).2, "its two fixes are one point");
}

#[test]
fn an_altitude_that_is_not_reached_is_told_with_the_climb() {
    let a = at(60.0, -10.0);
    let high = Leg::FixToAltitude(a, bearing(0.0), altitude(9000.0));
    let round = Leg::HoldToAltitude(hold(a, 0.0, HoldingSide::Right), altitude(9000.0));
    let climbing = |fpm| Conditions { climb: feet_per_minute(fpm), ..windy() };
    let told = |leg, fpm| GroundPath::fly(&[leg], &climbing(fpm)).unwrap_err().to_string();
    assert_eq!(
        told(high, 0.0),
        "leg 1 (FA) cannot be flown: its altitude of 9000 ft is not reached from 4000 ft at 0 ft/min; allowed: a rate toward it"
    );
    assert_eq!(
        told(round, 0.0),
        "leg 1 (HA) cannot be flown: its altitude of 9000 ft is not reached from 4000 ft at 0 ft/min; allowed: a rate that \
         reaches it within 200 racetracks"
    );
    // 5000 ft at a foot a minute: 83 h northward, with the wind nearly across.
    let (.., reason) = refused(&[high], &climbing(1.0));
    let LegReason::AltitudeTooFar { altitude_ft, needed_nm, allowed_nm } = reason else { panic!("{reason}") };
    assert!(
        close(altitude_ft, 9000.0) && (15_000.0..20_000.0).contains(&needed_nm) && close(allowed_nm, 1000.0)
    );
}

#[test]
fn an_end_that_is_behind_is_told_with_how_far() {
    let a = at(60.0, -10.0);
    let north = [Leg::InitialFix(by(a)), Leg::TrackToFix(over(off(a, 0.0, 10.0)))];
    let after = |leg| refused(&[north[0], north[1], leg], &windy());
    let turn = Leg::ProcedureTurn {
        fix: a,
        outbound: bearing(0.0),
        outbound_distance: miles(4.0),
        first_right: true,
        form: ReversalForm::Off45,
        off_time: HoldTime::new(seconds(60.0)).unwrap(),
    };
    for (leg, given_nm, by_nm) in
        [(Leg::FixToDistance(a, bearing(0.0), miles(7.0)), 7.0, 3.0), (turn, 4.0, 6.0)]
    {
        let (number, code, reason) = after(leg);
        let LegReason::DistanceBehind { distance_nm, behind_nm } = reason else { panic!("{reason}") };
        assert!(close(distance_nm, given_nm) && close(behind_nm, by_nm), "{code}: {reason}");
        assert_eq!((number, code), (3, leg.code().word()));
    }
    let (.., reason) = after(Leg::CourseToFix(bearing(0.0), by(off(a, 0.0, 5.0))));
    let LegReason::FixBehind { behind_nm } = reason else { panic!("{reason}") };
    assert!(close(behind_nm, 5.0), "{reason}");
    assert_eq!(
        reason.to_string(),
        "its fix lies behind where the aircraft joins it by 5 NM; allowed: a fix ahead"
    );
}

#[test]
fn what_its_course_does_not_meet_is_told() {
    let a = at(60.0, -10.0);
    let begun = Leg::InitialFix(by(a));
    let (beside, behind) = (station(off(a, 90.0, 30.0)), station(off(a, 180.0, 20.0)));
    let reading = SlantRange::new(nautical_miles(5.0)).unwrap();
    let told = |legs: &[Leg]| refused(legs, &windy()).2.to_string();
    assert_eq!(
        told(&[begun, Leg::CourseToDme(bearing(0.0), beside, reading)]),
        "its DME reading of 5 NM is not met within 1000 NM; allowed: one that its course meets by then"
    );
    let radial = Radial::from_degrees(90.0);
    assert_eq!(
        told(&[begun, Leg::CourseToRadial(bearing(0.0), behind, radial)]),
        "its radial of 90 deg is not crossed within 1000 NM; allowed: one that its course crosses by then"
    );
    let parallel = Leg::CourseToFix(bearing(180.0), by(off(a, 90.0, 1.5)));
    let (leg, code, reason) = refused(&[begun, Leg::CourseToIntercept(bearing(180.0)), parallel], &windy());
    let LegReason::NextCourseNotMet { across_nm, course_deg, .. } = reason else { panic!("{reason}") };
    assert!((leg, code) == (2, "CI") && close(across_nm, 1.5) && close(course_deg, 180.0), "{reason}");
}

#[test]
fn what_is_too_near_or_too_far_is_told_with_its_distance() {
    let a = at(60.0, -10.0);
    let north = [Leg::InitialFix(by(a)), Leg::TrackToFix(over(off(a, 0.0, 10.0)))];
    let beside = |distance_nm| off(off(a, 0.0, 10.0), 90.0, distance_nm);
    let after = |leg| refused(&[north[0], north[1], leg], &windy()).2;
    let calm = Conditions { wind: Wind::calm(), ..windy() };
    let (.., reason) = refused(&[north[0], north[1], Leg::DirectToFix(by(beside(0.3)))], &calm);
    let LegReason::FixTooClose { distance_nm, radius_nm } = reason else { panic!("{reason}") };
    assert!(close(distance_nm, 0.3) && radius_nm > 0.5 && radius_nm < 2.0, "{reason}");
    // A fix that the wind keeps the aircraft from is not too close.
    let strong = Wind { from: bearing(0.0), speed: WindSpeed::new(knots(250.0)).unwrap() };
    let backed = [
        Leg::InitialFix(by(a)),
        Leg::DirectToFix(over(off(a, 180.0, 20.0))),
        Leg::DirectToFix(by(off(a, 0.0, 200.0))),
    ];
    let error = GroundPath::fly(&backed, &Conditions { wind: strong, ..windy() }).unwrap_err();
    assert!(matches!(error, Error::WindTooStrong { .. }), "{error}");
    let reason = after(Leg::HoldToFix(hold(beside(3.0), 0.0, HoldingSide::Right)));
    let LegReason::OffFix { off_nm, allowed_nm } = reason else { panic!("{reason}") };
    assert!(close(off_nm, 3.0) && close(allowed_nm, 20.0 / 1852.0), "{reason}");
    // A corner a mile from the one before leaves a mile less the turn's end to the next lead.
    let by_corner = Leg::TrackToFix(by(off(a, 0.0, 1.0)));
    let (leg, code, reason) =
        refused(&[north[0], by_corner, Leg::TrackToFix(by(off(off(a, 0.0, 1.0), 90.0, 9.0)))], &windy());
    let LegReason::TooShort { left_nm, lead_nm } = reason else { panic!("{reason}") };
    assert!((leg, code) == (2, "TF") && close(left_nm, 1.0) && lead_nm > 1.0, "{reason}");
}

#[test]
fn an_arc_that_is_not_begun_or_left_along_it_is_told() {
    let center = at(60.0, -10.0);
    let arc = |from_deg: f64| Leg::RadiusToFix {
        center,
        sense: ArcSense::Clockwise,
        fix: by(off(center, from_deg + 40.0, 14.0)),
    };
    let to =
        |distance_nm| [Leg::InitialFix(by(center)), Leg::TrackToFix(over(off(center, 0.0, distance_nm)))];
    let after = |distance_nm, leg| refused(&[&to(distance_nm)[..], &[leg]].concat(), &windy()).2;
    let reason = after(13.0, arc(0.0));
    let LegReason::OffArc { radius_nm, off_nm, .. } = reason else { panic!("{reason}") };
    assert!(close(radius_nm, 14.0) && close(off_nm, 1.0), "{reason}");
    let reason = after(14.0, arc(0.0));
    let LegReason::AcrossArc { angle_deg, allowed_deg } = reason else { panic!("{reason}") };
    assert!((angle_deg - 90.0).abs() < 0.1 && close(allowed_deg, 5.0), "{reason}");
    // Along the arc from its beginning, and off it: at 45 degrees to the radial, or on the radial one degree on.
    let gate = off(center, 0.0, 14.0);
    let along = [Leg::InitialFix(by(off(gate, 270.0, 20.0))), Leg::TrackToFix(over(gate))];
    let leave = |end_deg: f64, off_deg: f64| {
        let fix = by(off(center, end_deg, 14.0));
        let outward = inverse(center, fix.position).final_bearing.unwrap();
        let round = Leg::RadiusToFix { center, sense: ArcSense::Clockwise, fix };
        let onward = Leg::FixToManual(fix.position, bearing(outward.degrees() + off_deg));
        refused(&[along[0], along[1], round, onward], &windy()).2
    };
    let reason = leave(40.0, 45.0);
    let LegReason::NeitherTangentNorRadial { angle_deg, along_deg, radial_deg } = reason else {
        panic!("{reason}")
    };
    assert!((angle_deg - 45.0).abs() < 0.5 && (along_deg, radial_deg) == (5.0, 1.0), "{reason}");
    // Back along the arc, and beside what is along it or along a radial.
    for (off_deg, told_deg) in [(-90.0, 180.0), (84.0, 6.0), (96.0, 6.0), (2.0, 88.0), (178.0, 88.0)] {
        let reason = leave(40.0, off_deg);
        let LegReason::NeitherTangentNorRadial { angle_deg, .. } = reason else { panic!("{reason}") };
        assert!((angle_deg - told_deg).abs() < 0.5, "{reason}");
    }
    let reason = leave(1.0, 0.0);
    let LegReason::ArcTooShort { left_deg, lead_deg } = reason else { panic!("{reason}") };
    assert!((left_deg - 1.0).abs() < 0.01 && lead_deg > 1.0, "{reason}");
}

#[test]
fn what_leaves_no_way_is_told_with_the_turns_and_the_wind() {
    let strong = Wind { from: bearing(270.0), speed: WindSpeed::new(knots(200.0)).unwrap() };
    let conditions = Conditions { wind: strong, climb: feet_per_minute(0.0), ..windy() };
    let legs = [Leg::HoldToFix(hold(at(60.0, -10.0), 0.0, HoldingSide::Right))];
    let (leg, code, reason) = refused(&legs, &conditions);
    let LegReason::NoWay { wind_from_deg, wind_speed_kt, true_airspeed_kt, radius_nm, .. } = reason else {
        panic!("{reason}")
    };
    assert!(radius_nm > 0.5 && radius_nm < 3.0, "{reason}");
    assert!((leg, code) == (1, "HF") && close(wind_from_deg, 270.0), "{reason}");
    assert!(close(wind_speed_kt, 200.0) && close(true_airspeed_kt, 220.0), "{reason}");
    let told = reason.to_string();
    assert!(told.ends_with(" NM at a true airspeed of 220 kt, in a wind from 270 deg at 200 kt; allowed: tighter turns, or less wind"), "{told}");
    // In calm air it is the turn.
    let bank = Bank::new(degrees(1.0)).unwrap();
    let limits = TurnLimits { bank, ..conditions.limits };
    let calm = Conditions { wind: Wind::calm(), limits, ..conditions };
    let fix = at(60.0, -10.0);
    let to = [Leg::InitialFix(by(off(fix, 180.0, 24.0))), Leg::TrackToFix(over(fix))];
    let (.., reason) =
        refused(&[&to[..], &[Leg::HoldToFix(hold(fix, 200.0, HoldingSide::Right))]].concat(), &calm);
    let LegReason::NoWay { wind_speed_kt, radius_nm, .. } = reason else { panic!("{reason}") };
    assert!(wind_speed_kt == 0.0 && radius_nm > 30.0, "{reason}");
}

/// One wind at every level is that wind; between two levels a climb comes from the one into the other.
#[test]
fn each_leg_is_flown_in_the_wind_where_it_begins() {
    let (a, b, c) = (at(60.0, -10.0), at(60.5, -10.3), at(61.5, -9.0));
    let legs = [Leg::InitialFix(by(a)), Leg::TrackToFix(by(b)), Leg::TrackToFix(by(c))];
    let uniform = GroundPath::fly_aloft(&legs, &windy(), &WindsAloft::uniform(windy().wind)).unwrap();
    assert_eq!(uniform, flown(&legs, &windy()));
    let level = |altitude_ft: f64, speed_kt: f64| WindLevel {
        altitude: PressureAltitude::new(feet(altitude_ft)).unwrap(),
        wind: Wind { from: bearing(280.0), speed: WindSpeed::new(knots(speed_kt)).unwrap() },
    };
    let winds = WindsAloft::new(level(4000.0, 10.0), vec![level(14_000.0, 110.0)]).unwrap();
    let path = GroundPath::fly_aloft(&legs, &windy(), &winds).unwrap();
    let speed_kt = |segment: &Segment| segment.wind.speed.value().get::<knot>();
    assert!((speed_kt(&path.segments[0]) - 10.0).abs() < 0.1, "{}", speed_kt(&path.segments[0]));
    let last = path.segments.last().unwrap();
    let begun = path.segments.iter().rfind(|segment| segment.leg == 1).unwrap().end.altitude;
    // Ten knots for each thousand feet above 4000; the turn onto the last leg is flown before that leg's wind is taken.
    let expected_kt = 10.0 + (begun.value().get::<foot>() - 4000.0) / 100.0;
    assert!((speed_kt(last) - expected_kt).abs() < 15.0, "{} {expected_kt}", speed_kt(last));
    assert!(apart_m(last.end.position, c) < 1e-3);
}
/// A racetrack's straight parts, outbound and inbound, when it is begun on its inbound course.
fn legs_of_racetrack(length: HoldLength, from_deg: f64, side: HoldingSide) -> (Segment, Segment) {
    let conditions = Conditions {
        wind: Wind { from: bearing(from_deg), speed: WindSpeed::new(knots(30.0)).unwrap() },
        climb: feet_per_minute(0.0),
        ..windy()
    };
    let hold = Hold { fix: at(60.0, -10.0), inbound: bearing(90.0), side, length };
    let path = flown(&[Leg::HoldToFix(hold)], &conditions);
    let straight: Vec<Segment> =
        path.segments.iter().copied().filter(|segment| segment.kind == SegmentKind::Straight).collect();
    assert_eq!((straight.len(), path.segments.len()), (2, 4), "{from_deg} {:?}", path.segments);
    (straight[0], straight[1])
}

/// Each way of giving the length is kept by what is flown, in wind from anywhere.
#[test]
fn racetracks_keep_their_time_distance_or_reading() {
    let minute = HoldTime::new(seconds(60.0)).unwrap();
    let fix = at(60.0, -10.0);
    let line = Course { through: fix, bearing: bearing(90.0) };
    for side in [HoldingSide::Right, HoldingSide::Left] {
        for from_deg in [0.0, 60.0, 90.0, 150.0, 230.0, 270.0, 320.0] {
            let by = |length| legs_of_racetrack(length, from_deg, side);
            let (_, inbound) = by(HoldLength::Time(TimedLeg::Inbound, minute));
            let inbound_s = inbound.duration().get::<second>();
            assert!((inbound_s - 60.0).abs() < 0.3, "{from_deg} {inbound_s}");
            let (outbound, _) = by(HoldLength::Time(TimedLeg::OutboundFromLevel, minute));
            assert!((outbound.duration().get::<second>() - 60.0).abs() < 0.01);
            // From abeam, or from wings level where that is later.
            let (outbound, _) = by(HoldLength::Time(TimedLeg::Outbound, minute));
            let ahead_m = line.abeam(outbound.start.position).along_track.get::<meter>();
            let gone_m = ahead_m - line.abeam(outbound.end.position).along_track.get::<meter>();
            let outbound_s = outbound.duration().get::<second>();
            let clock_s = outbound_s * (1.0 - ahead_m.max(0.0) / gone_m);
            assert!((clock_s - 60.0).abs() < 0.05, "{from_deg} {clock_s}");
            let nm = |segment: &Segment| segment.length.get::<nautical_mile>();
            let (_, inbound) = by(HoldLength::Distance(TimedLeg::Inbound, miles(5.0)));
            assert!((nm(&inbound) - 5.0).abs() < 0.01, "{from_deg} {}", nm(&inbound));
            let (outbound, _) = by(HoldLength::Distance(TimedLeg::OutboundFromLevel, miles(6.0)));
            assert!((nm(&outbound) - 6.0).abs() < 0.001, "{from_deg} {}", nm(&outbound));
            // Held toward a station, and away from it.
            for (toward_deg, reading_nm) in [(90.0, 19.0), (270.0, 10.0)] {
                let site = station(off(fix, toward_deg, 14.0));
                let reading = SlantRange::new(nautical_miles(reading_nm)).unwrap();
                let (outbound, _) = by(HoldLength::Dme(site, reading));
                let seen = site.observe(outbound.end.position, outbound.end.altitude).dme;
                let seen_nm = seen.value().get::<nautical_mile>();
                assert!((seen_nm - reading_nm).abs() < 0.005, "{from_deg} {seen_nm}");
            }
        }
    }
    let site = station(off(fix, 90.0, 14.0));
    let near = HoldLength::Dme(site, SlantRange::new(nautical_miles(12.0)).unwrap());
    let hold = Hold { fix, inbound: bearing(90.0), side: HoldingSide::Right, length: near };
    let refused = GroundPath::fly(&[Leg::HoldToFix(hold)], &windy());
    assert!(
        matches!(refused, Err(Error::LegNotFlown { reason, .. }) if reason.to_string().contains("does not meet its DME reading of 12 NM within 600 s; allowed: "))
    );
}

/// Whatever the course of arrival and the wind, the racetrack is entered and its fix reached on its inbound course, without going far.
#[test]
fn racetracks_are_entered_from_every_course_in_every_wind() {
    let fix = at(60.3, -10.0);
    let minute = HoldTime::new(seconds(60.0)).unwrap();
    let mut longest_s = 0.0_f64;
    for side in [HoldingSide::Right, HoldingSide::Left] {
        for inbound in 0..24 {
            for from in 0..8 {
                for (timed, wind_kt) in [(TimedLeg::OutboundFromLevel, 45.0), (TimedLeg::Inbound, 60.0)] {
                    let conditions = Conditions {
                        wind: Wind {
                            from: bearing(45.0 * f64::from(from)),
                            speed: WindSpeed::new(knots(wind_kt)).unwrap(),
                        },
                        climb: feet_per_minute(0.0),
                        ..windy()
                    };
                    let inbound = bearing(15.0 * f64::from(inbound));
                    let hold = Hold { fix, inbound, side, length: HoldLength::Time(timed, minute) };
                    let start = off(fix, 180.0, 4.0);
                    let legs = [Leg::InitialFix(by(start)), Leg::TrackToFix(over(fix)), Leg::HoldToFix(hold)];
                    let path = flown_within(flight::ON_THE_LINE_M, &legs, &conditions);
                    assert!(apart_m(end(&path).position, fix) < 1e-3);
                    assert!(inbound.change_to(end(&path).course).degrees().abs() < 1e-3);
                    let entry_s = path.duration() - path.segments[0].end.time;
                    longest_s = longest_s.max(entry_s.get::<second>());
                }
            }
        }
    }
    // Three half circles, a minute and a half out and as much back, and what the cuts take.
    assert!(longest_s < 480.0, "{longest_s}");
}

/// A racetrack on 030 with right turns, arrived at on 000 with the wind from 280 at 45 kt: the turn inbound of the usual outbound course
/// overshoots so far that no cut of 30 degrees comes back before the fix. Another outbound course ends on the inbound one.
#[test]
fn a_direct_entry_off_the_inbound_course_is_laid_from_its_own_course() {
    let fix = at(60.3, -10.0);
    let legs = [
        Leg::InitialFix(by(at(60.0, -10.0))),
        Leg::TrackToFix(over(fix)),
        Leg::HoldToFix(hold(fix, 30.0, HoldingSide::Right)),
    ];
    let path = flown(&legs, &windy());
    let kinds: Vec<SegmentKind> = path.segments.iter().map(|segment| segment.kind).collect();
    use SegmentKind::{Straight, Turn};
    assert_eq!(kinds, [Straight, Turn, Straight, Turn, Straight]);
    assert!(apart_m(end(&path).position, fix) < 1e-3);
    assert!(bearing(30.0).change_to(end(&path).course).degrees().abs() < 1e-6);
}

/// A procedure turn with the time of the faster categories takes that much longer; the 80/260 turns by 80 degrees of heading.
#[test]
fn procedure_turns_of_either_form_and_time() {
    let fix = at(60.0, -10.0);
    let turn = |form, off_s: f64, first_right| Leg::ProcedureTurn {
        fix,
        outbound: bearing(250.0),
        outbound_distance: miles(4.0),
        first_right,
        form,
        off_time: HoldTime::new(seconds(off_s)).unwrap(),
    };
    let conditions = Conditions { climb: feet_per_minute(0.0), ..windy() };
    let calm = Conditions { wind: Wind::calm(), ..conditions };
    for first_right in [true, false] {
        let fly = |form, off_s, conditions: &Conditions| {
            let path = flown(
                &[turn(form, off_s, first_right), Leg::CourseToFix(bearing(70.0), by(fix))],
                conditions,
            );
            assert!(apart_m(end(&path).position, fix) < 1e-3);
            assert!(bearing(70.0).change_to(end(&path).course).degrees().abs() < 1e-6);
            path
        };
        for off_s in [60.0, 75.0] {
            let path = fly(ReversalForm::Off45, off_s, &conditions);
            // Out, the turn off, the leg, and the turn back begins.
            let begun = path.segments[1].start.time;
            let back = path.segments[3];
            assert_eq!(back.kind, SegmentKind::Turn);
            assert!(((back.start.time - begun).get::<second>() - off_s).abs() < 0.05);
        }
        for conditions in [&calm, &conditions] {
            let path = fly(ReversalForm::Off80, 60.0, conditions);
            let (first, back) = (path.segments[1], path.segments[2]);
            let sign = if first_right { 1.0 } else { -1.0 };
            let turned_deg = first.turn().unwrap().heading_change().get::<degree>();
            assert!((turned_deg - 80.0 * sign).abs() < 1e-9);
            assert!(back.turn().unwrap().heading_change().get::<degree>() * sign < -200.0);
        }
    }
}
