//! Typed functions that take a plain quantity, of which any value may come: they answer, and a value that is none gives none.

use lubberline::earth::{Circle, Course, CourseReach, OffsetLine, leg_contains};
use lubberline::lead::{CourseChange, RadialFlown, TurnSide};
use lubberline::procedure::legs::{Conditions, Fix, GroundPath, Leg, Passage};
use lubberline::procedure::{
    HoldingPattern, HoldingSide, Intercept, TimedLeg, outbound_end_reading, wind_effect,
};
use lubberline::station::{Indicator, deviation_of_cross_track};
use lubberline::turn::{RolledTurn, TurnLimits};
use lubberline::value::units::*;
use lubberline::value::*;
use lubberline::wind::Wind;

const VALUES: [f64; 9] =
    [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, f64::MIN, 5e-324, 0.0, 1e20, -1e20];

fn at(latitude: f64, longitude: f64) -> Position {
    Position::new(Latitude::new(degrees(latitude)).unwrap(), Longitude::new(degrees(longitude)).unwrap())
}

fn bearing(value: f64) -> TrueBearing {
    TrueBearing::new(degrees(value)).unwrap()
}

fn is_nan(position: Position) -> bool {
    position.latitude().angle().value.is_nan()
}

fn airspeed() -> TrueAirspeed {
    TrueAirspeed::new(knots(250.0)).unwrap()
}

fn wind() -> Wind<TrueNorth> {
    Wind { from: bearing(250.0), speed: WindSpeed::new(knots(40.0)).unwrap() }
}

#[test]
fn places_along_lines_and_round_arcs() {
    let course = Course { through: at(60.0, -10.0), bearing: bearing(30.0) };
    let circle = Circle { center: at(60.2, -10.0), radius: ArcRadius::new(nautical_miles(12.0)).unwrap() };
    for value in VALUES {
        let length = metres(value);
        let (there, onward) = course.at(length);
        assert_eq!(
            (is_nan(there), onward.angle().value.is_nan()),
            (!value.is_finite(), !value.is_finite()),
            "{value}"
        );
        let line = OffsetLine { course, offset: length };
        let beside = line.at(metres(1000.0)).0;
        assert_eq!(is_nan(beside), !value.is_finite(), "{value}");
        let line = OffsetLine { course, offset: metres(3000.0) };
        assert_eq!(is_nan(line.at(length).0), !value.is_finite(), "{value}");
        let other = Course { through: at(60.3, -9.0), bearing: bearing(300.0) };
        for (from, to) in [(length, metres(1e5)), (metres(-1e5), length), (length, length)] {
            for (point, _) in line.meets_course(&other, from, to) {
                assert!(!is_nan(point), "{value}");
            }
            for (point, _) in line.meets_circle(&circle, from, to) {
                assert!(!is_nan(point), "{value}");
            }
        }
        assert!(line.meets_course_near(&other, length, metres(1e5)).is_none_or(|(point, _)| !is_nan(point)));
        assert!(line.meets_course_near(&other, metres(0.0), length).is_none_or(|(point, _)| !is_nan(point)));
        if value.is_nan() {
            assert!(!course.contains(CourseReach::BothWays, there, metres(1.0)));
            assert!(!course.contains(CourseReach::BothWays, course.through, length));
            assert!(!leg_contains(course.through, other.through, course.through, length));
            assert!(!circle.arc_contains(bearing(0.0), bearing(90.0), true, at(60.4, -10.0), length));
        }
        let around = circle.arc_length(bearing(0.0), degrees(value));
        assert_eq!(around.value.is_finite(), value.is_finite() && value.abs() < 1e300, "{value}: {around:?}");
    }
}

#[test]
fn times_of_turns_holds_and_paths() {
    let limits = TurnLimits::default();
    let change =
        CourseChange::new(bearing(40.0), bearing(110.0), airspeed(), wind(), &limits, TurnSide::Shortest)
            .unwrap();
    let time = HoldTime::new(seconds(60.0)).unwrap();
    let (side, leg) = (HoldingSide::Right, TimedLeg::Outbound);
    let hold = HoldingPattern::new(bearing(40.0), side, leg, time, airspeed(), wind(), &limits).unwrap();
    let fix = |position| Fix { position, passage: Passage::FlyBy };
    let legs = [
        Leg::InitialFix(fix(at(60.0, -10.0))),
        Leg::TrackToFix(fix(at(60.5, -10.0))),
        Leg::TrackToFix(fix(at(60.5, -9.0))),
    ];
    let conditions = Conditions::level(airspeed(), TrueAltitude::new(feet(9000.0)).unwrap());
    let path = GroundPath::fly(&legs, &conditions).unwrap();
    for value in VALUES {
        let point = change.at(seconds(value));
        assert_eq!(point.distance.value().value.is_nan(), value.is_nan(), "{value}: {point:?}");
        assert!(
            point.heading.angle().value.is_nan() == value.is_nan()
                && point.bank.value.is_nan() == value.is_nan()
        );
        assert_eq!(hold.at(seconds(value)).distance.value().value.is_nan(), !value.is_finite(), "{value}");
        let over =
            change.fly_over_path(InterceptAngle::new(degrees(30.0)).unwrap()).unwrap().at(seconds(value));
        assert_eq!(over.distance.value().value.is_nan(), value.is_nan(), "{value}: {over:?}");
        assert!(path.points(metres(value)).len() <= 30_001);
        for segment in &path.segments {
            assert_eq!(is_nan(segment.at(value)), value.is_nan(), "{value}");
        }
        let turn = RolledTurn::new(airspeed(), &limits, degrees(value));
        assert_eq!(turn.duration().value.is_nan(), value.is_nan(), "{value}: {turn:?}");
    }
}

#[test]
fn distances_across_and_angles() {
    let distance = StationDistance::new(nautical_miles(10.0)).unwrap();
    let height = HeightAboveStation::new(feet(9000.0)).unwrap();
    let angle = InterceptAngle::new(degrees(30.0)).unwrap();
    let rate = TurnRate::new(degrees_per_second(3.0)).unwrap();
    let limits = TurnLimits::default();
    for value in VALUES {
        let length = metres(value);
        let seen = deviation_of_cross_track(length, distance);
        assert!(value.is_finite() && value.abs() < 1e5 || seen.is_err(), "{value}: {seen:?}");
        let shown = Indicator::default().deflection_of_cross_track(length, distance);
        assert!(value.is_finite() && value.abs() < 1e5 || shown.is_err(), "{value}: {shown:?}");
        let way = Intercept::new(bearing(40.0), length, angle, airspeed(), wind(), &limits);
        assert!(value.abs() < 1e5 || way.is_err(), "{value}: {way:?}");
        let reading = SlantRange::new(nautical_miles(12.0)).unwrap();
        for (before, across) in [(length, metres(0.0)), (metres(0.0), length)] {
            let end = outbound_end_reading(reading, RadialFlown::Inbound, before, across, height);
            assert!(end.is_err() || value.is_finite(), "{value}: {end:?}");
        }
        let effect = wind_effect(degrees(value), rate, WindSpeed::new(knots(40.0)).unwrap());
        assert_eq!(effect.value.is_nan(), value.is_nan(), "{value}");
    }
}
