//! Every leg code after every other: a path of one piece that ends as the second's letters say, or a refusal, as the page of the legs has it.

use std::collections::{HashMap, HashSet};

use lubberline::Error;
use lubberline::earth::{direct, inverse};
use lubberline::lead::ArcSense;
use lubberline::procedure::legs::{
    Conditions, Fix, GroundPath, Hold, HoldLength, Leg, LegCode, LegEnd, Passage, Place, ReversalForm,
};
use lubberline::procedure::{HoldingSide, TimedLeg};
use lubberline::station::{Ident, Station};
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::{Wind, hold_course};

use super::{airspeed, bearing, ground};

/// The page that says which leg may follow which.
const PAGE: &str = include_str!("../../../docs/legs.md");
const HEAD: &str = "| after | may follow |";

/// What two parts of a path may leave between them: the wings are level there, so that a bend is what the plane of a turn leaves.
const GAP_M: f64 = 1e-6;
const BEND_DEG: f64 = 0.3;

fn admitted() -> HashMap<String, HashSet<String>> {
    let (_, table) = PAGE.split_once(HEAD).unwrap();
    let rows = table.lines().skip(2).take_while(|line| line.starts_with('|'));
    let mut admitted = HashMap::new();
    for row in rows {
        let cells: Vec<&str> = row.split('|').collect();
        let after = cells[2].split_whitespace().map(str::to_owned).collect::<HashSet<_>>();
        for first in cells[1].split(',') {
            admitted.insert(first.trim().to_owned(), after.clone());
        }
    }
    admitted
}

fn off(from: Position, toward_deg: f64, distance_nm: f64) -> Position {
    direct(from, bearing(toward_deg), ground(nautical_miles(distance_nm))).0
}

fn by(position: Position) -> Fix {
    Fix { position, passage: Passage::FlyBy }
}

fn altitude(value_ft: f64) -> TrueAltitude {
    TrueAltitude::new(feet(value_ft)).unwrap()
}

fn station(position: Position) -> Station {
    Station {
        position,
        elevation: Elevation::new(feet(0.0)).unwrap(),
        declination: Declination::ZERO,
        ident: Ident::NONE,
    }
}

fn conditions() -> Conditions {
    Conditions {
        wind: Wind { from: bearing(300.0), speed: WindSpeed::new(knots(25.0)).unwrap() },
        climb: feet_per_minute(500.0),
        ..Conditions::level(airspeed(220.0), altitude(5_000.0))
    }
}

/// Where the first leg of a pair begins and, if it has a fix, ends: eastward twenty miles.
fn places() -> (Position, Position) {
    let end = Position::new(Latitude::new(degrees(60.0)).unwrap(), Longitude::new(degrees(-10.0)).unwrap());
    (off(end, 270.0, 20.0), end)
}

fn heading(course: TrueBearing) -> TrueBearing {
    hold_course(course, conditions().true_airspeed, conditions().wind).unwrap().heading
}

fn hold(fix: Position, inbound: TrueBearing) -> Hold {
    let length = HoldLength::Time(TimedLeg::Inbound, HoldTime::new(seconds(60.0)).unwrap());
    Hold { fix, inbound, side: HoldingSide::Right, length }
}

fn dme(site: Station, place: Position) -> SlantRange {
    site.observe(place, altitude(5_500.0)).dme
}

fn procedure_turn(fix: Position, outbound: TrueBearing) -> Leg {
    Leg::ProcedureTurn {
        fix,
        outbound,
        // Far enough to be on the outbound course from wherever the leg before has ended.
        outbound_distance: ground(nautical_miles(20.0)),
        first_right: true,
        form: ReversalForm::Off45,
        off_time: HoldTime::new(seconds(60.0)).unwrap(),
    }
}

/// The first leg with what it needs before it; it comes to the end eastward.
fn first(code: LegCode) -> Vec<Leg> {
    let (start, end) = places();
    let course = inverse(start, end).initial_bearing.unwrap();
    let begin = Leg::InitialFix(by(start));
    let low = altitude(5_750.0);
    // Ahead to the left and beside the end, and the centre of an arc that comes there eastward.
    let (behind, beside) = (station(off(start, 200.0, 5.0)), station(off(end, 180.0, 10.0)));
    let radial = beside.observe(end, low).radial.unwrap();
    let center = off(end, 0.0, 12.0);
    let gate = Leg::InitialFix(by(off(center, 230.0, 12.0)));
    let round = ArcSense::Counterclockwise;
    match code {
        LegCode::InitialFix => vec![Leg::InitialFix(by(end))],
        LegCode::TrackToFix => vec![begin, Leg::TrackToFix(by(end))],
        LegCode::CourseToFix => vec![begin, Leg::CourseToFix(bearing(90.0), by(end))],
        LegCode::DirectToFix => vec![begin, Leg::DirectToFix(by(end))],
        LegCode::ArcToFix => vec![gate, Leg::ArcToFix { station: center, sense: round, fix: by(end) }],
        LegCode::RadiusToFix => vec![gate, Leg::RadiusToFix { center, sense: round, fix: by(end) }],
        LegCode::FixToAltitude => vec![Leg::FixToAltitude(start, course, low)],
        LegCode::FixToDistance => vec![Leg::FixToDistance(start, course, ground(nautical_miles(20.0)))],
        LegCode::FixToDme => vec![Leg::FixToDme(start, course, behind, dme(behind, end))],
        LegCode::FixToManual => vec![Leg::FixToManual(start, course)],
        LegCode::CourseToAltitude => vec![begin, Leg::CourseToAltitude(course, low)],
        LegCode::CourseToDme => vec![begin, Leg::CourseToDme(course, behind, dme(behind, end))],
        LegCode::CourseToIntercept => vec![begin, Leg::CourseToIntercept(course)],
        LegCode::CourseToRadial => vec![begin, Leg::CourseToRadial(course, beside, radial)],
        LegCode::HeadingToAltitude => vec![begin, Leg::HeadingToAltitude(heading(course), low)],
        LegCode::HeadingToDme => vec![begin, Leg::HeadingToDme(heading(course), behind, dme(behind, end))],
        LegCode::HeadingToIntercept => vec![begin, Leg::HeadingToIntercept(heading(course))],
        LegCode::HeadingToManual => vec![begin, Leg::HeadingToManual(heading(course))],
        LegCode::HeadingToRadial => vec![begin, Leg::HeadingToRadial(heading(course), beside, radial)],
        LegCode::HoldToAltitude => vec![Leg::HoldToAltitude(hold(end, bearing(90.0)), low)],
        LegCode::HoldToFix => vec![Leg::HoldToFix(hold(end, bearing(90.0)))],
        LegCode::HoldToManual => vec![Leg::HoldToManual(hold(end, bearing(90.0)))],
        LegCode::ProcedureTurn => vec![procedure_turn(start, bearing(270.0))],
    }
}

/// The second leg, with a third where it needs one to meet.
fn second(code: LegCode, after: LegCode) -> Vec<Leg> {
    let (start, end) = places();
    let has_fix = first(after).last().unwrap().ends_at().is_some();
    // A procedure turn comes back onto a course past where it began; an arc is left along a radial or along itself.
    let from = if after == LegCode::ProcedureTurn { start } else { end };
    let onward_deg = match after {
        LegCode::ProcedureTurn | LegCode::RadiusToFix => 90.0,
        LegCode::ArcToFix => 0.0,
        _ => 50.0,
    };
    let (onward, course) = (bearing(onward_deg), bearing(50.0));
    let far = by(off(from, onward_deg, 25.0));
    let high = altitude(14_000.0);
    let left = station(off(end, 320.0, 6.0));
    let reading = SlantRange::new(nautical_miles(30.0)).unwrap();
    let right = station(off(off(end, 50.0, 12.0), 140.0, 10.0));
    let radial = Radial::new(degrees(320.0)).unwrap();
    let onto = Leg::CourseToFix(bearing(110.0), by(off(off(end, 50.0, 15.0), 110.0, 25.0)));
    // Where no fix ends the leg before, a racetrack or a fixed radius elsewhere is not where that ends.
    let own = if has_fix { end } else { off(end, 0.0, 3.0) };
    let along = matches!(after.word(), "IF" | "AF" | "RF" | "HA" | "HF" | "HM");
    let (center, arc_nm, arc_end_deg) =
        if along { (off(end, 0.0, 12.0), 12.0, 100.0) } else { (off(end, 50.0, 14.0), 14.0, 120.0) };
    let round = ArcSense::Counterclockwise;
    match code {
        LegCode::InitialFix => vec![Leg::InitialFix(far)],
        LegCode::TrackToFix => vec![Leg::TrackToFix(far)],
        LegCode::CourseToFix => {
            vec![Leg::CourseToFix(inverse(from, far.position).final_bearing.unwrap(), far)]
        }
        LegCode::DirectToFix => vec![Leg::DirectToFix(far)],
        LegCode::ArcToFix => {
            vec![Leg::ArcToFix { station: center, sense: round, fix: by(off(center, arc_end_deg, arc_nm)) }]
        }
        LegCode::RadiusToFix => {
            let center = off(own, 0.0, 12.0);
            vec![Leg::RadiusToFix { center, sense: round, fix: by(off(center, 100.0, 12.0)) }]
        }
        LegCode::FixToAltitude => vec![Leg::FixToAltitude(from, onward, high)],
        LegCode::FixToDistance => vec![Leg::FixToDistance(from, onward, ground(nautical_miles(12.0)))],
        LegCode::FixToDme => vec![Leg::FixToDme(from, onward, left, reading)],
        LegCode::FixToManual => vec![Leg::FixToManual(from, onward)],
        LegCode::CourseToAltitude => vec![Leg::CourseToAltitude(course, high)],
        LegCode::CourseToDme => vec![Leg::CourseToDme(course, left, reading)],
        LegCode::CourseToIntercept => vec![Leg::CourseToIntercept(course), onto],
        LegCode::CourseToRadial => vec![Leg::CourseToRadial(course, right, radial)],
        LegCode::HeadingToAltitude => vec![Leg::HeadingToAltitude(course, high)],
        LegCode::HeadingToDme => vec![Leg::HeadingToDme(course, left, reading)],
        LegCode::HeadingToIntercept => vec![Leg::HeadingToIntercept(course), onto],
        LegCode::HeadingToManual => vec![Leg::HeadingToManual(course)],
        LegCode::HeadingToRadial => vec![Leg::HeadingToRadial(course, right, radial)],
        LegCode::HoldToAltitude => vec![Leg::HoldToAltitude(hold(own, course), high)],
        LegCode::HoldToFix => vec![Leg::HoldToFix(hold(own, course))],
        LegCode::HoldToManual => vec![Leg::HoldToManual(hold(own, course))],
        LegCode::ProcedureTurn => {
            vec![procedure_turn(end, onward), Leg::CourseToFix(onward.reciprocal(), by(end))]
        }
    }
}

fn apart_m(one: Position, other: Position) -> f64 {
    inverse(one, other).distance.value().get::<meter>()
}

/// That a leg ends where its second letter says.
fn ends_as_it_says(leg: &Leg, end: &Place, what: &str) {
    let seen = |site: Station| site.observe(end.position, end.altitude);
    let fix = leg.ends_at();
    match leg.code().end() {
        LegEnd::Fix => assert!(apart_m(fix.unwrap().position, end.position) < 1e-3, "{what}"),
        LegEnd::Altitude => {
            let over_ft = (end.altitude.value() - altitude(14_000.0).value()).get::<foot>();
            // A racetrack goes on to its fix.
            assert!(if fix.is_some() { over_ft >= 0.0 } else { over_ft.abs() < 1e-6 }, "{what} {over_ft}");
        }
        LegEnd::Dme => match *leg {
            Leg::FixToDme(_, _, site, reading)
            | Leg::CourseToDme(_, site, reading)
            | Leg::HeadingToDme(_, site, reading) => {
                let off_m = (seen(site).dme.value() - reading.value()).get::<meter>();
                assert!(off_m.abs() < 0.01, "{what} {off_m}");
            }
            _ => panic!("{what}"),
        },
        LegEnd::Radial => match *leg {
            Leg::CourseToRadial(_, site, radial) | Leg::HeadingToRadial(_, site, radial) => {
                let off = radial.change_to(seen(site).radial.unwrap()).angle();
                assert!(off.get::<degree>().abs() < 1e-6, "{what} {off:?}");
            }
            _ => panic!("{what}"),
        },
        LegEnd::Distance => match *leg {
            Leg::FixToDistance(from, _, distance) => {
                let off_m = apart_m(from, end.position) - distance.value().get::<meter>();
                assert!(off_m.abs() < 0.01, "{what} {off_m}");
            }
            _ => panic!("{what}"),
        },
        LegEnd::Manual | LegEnd::Intercept => {}
    }
}

#[test]
fn every_leg_after_every_other_is_flown_or_refused_as_the_page_says() {
    let admitted = admitted();
    assert_eq!(admitted.len(), LegCode::ALL.len(), "{:?}", admitted.keys());
    let mut wrong = Vec::new();
    for one in LegCode::ALL.iter().copied() {
        for other in LegCode::ALL.iter().copied() {
            let what = format!("{} {}", one.word(), other.word());
            let before = first(one);
            let place = before.len();
            let legs: Vec<Leg> = before.into_iter().chain(second(other, one)).collect();
            match GroundPath::fly(&legs, &conditions()) {
                Ok(path) => {
                    if !admitted[one.word()].contains(other.word()) {
                        wrong.push(format!("{what} is flown"));
                        continue;
                    }
                    for pair in path.segments.windows(2) {
                        let gap_m = apart_m(pair[0].end.position, pair[1].start.position);
                        let bend = pair[0].end.course.change_to(pair[1].start.course).angle().get::<degree>();
                        assert!(gap_m < GAP_M && bend.abs() < BEND_DEG, "{what} {gap_m} m {bend} degrees");
                    }
                    let last = path.segments.iter().rfind(|segment| segment.leg == place);
                    let last = last.unwrap_or_else(|| panic!("{what}: nothing is flown"));
                    if place + 1 == legs.len() {
                        ends_as_it_says(&legs[place], &last.end, &what);
                    } else {
                        // What meets the next leg has ended on that, and that at its fix.
                        ends_as_it_says(&legs[place + 1], &path.segments.last().unwrap().end, &what);
                    }
                }
                Err(Error::LegNotFlown { reason, .. }) => {
                    if admitted[one.word()].contains(other.word()) {
                        wrong.push(format!("{what} is refused: {reason}"));
                    }
                }
                Err(error) => wrong.push(format!("{what}: {error}")),
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}
