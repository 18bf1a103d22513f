//! The brief of a sequence of path-and-terminator legs: what is flown on each, and where its turns begin and end.

use crate::Error;
use crate::procedure::legs::{Conditions, GroundPath, Leg, LegCode, Place, Segment, SegmentKind};
use crate::station::Station;
use crate::turn::RolledTurn;
use crate::value::units::{Angle, Length, Time, metres, ratio};
use crate::value::{Position, TrueAltitude, TrueBearing, TrueNorth};
use crate::wind::{Crabbed, Wind, WindComponents, hold_course};

/// The most parts that a segment is drawn in.
const MOST_PARTS: f64 = 10_000.0;

/// What a sequence of legs comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct PathBrief {
    /// Its legs, as many as were given.
    pub legs: Vec<PathLeg>,
    /// The path over the ground.
    pub path: GroundPath,
}

/// A leg as it is flown.
#[derive(Debug, Clone, PartialEq)]
pub struct PathLeg {
    /// Which leg it is.
    pub code: LegCode,
    /// Where the turn onto it begins, or it itself, if it has none.
    pub start: Place,
    /// Where it ends: at its end, or where the turn onto the next leg begins.
    pub end: Place,
    /// Its course where it is first flown straight or round its arc; where it ends, if it is all turn.
    pub course: TrueBearing,
    /// What holds that course.
    pub crab: Crabbed<TrueNorth>,
    /// The wind it is flown in.
    pub flown_in: Wind<TrueNorth>,
    /// That wind along the course and across it.
    pub wind: WindComponents,
    /// Over the ground, with its turns.
    pub distance: Length,
    /// From its start to its end.
    pub time: Time,
    /// Its turns, that onto it first.
    pub turns: Vec<PathTurn>,
    /// The shortest straight between its turns, none if it is all turn and arc.
    pub shortest_straight: Option<Length>,
    /// The greatest bank that keeps to its arc, if it has one.
    pub arc_bank: Option<Angle>,
    /// The station that its end is told by, if one is: see [`Leg::station`].
    pub station: Option<Station>,
    /// The altitude that ends it, if one does: see [`Leg::end_altitude`].
    pub end_altitude: Option<TrueAltitude>,
}

/// A turn of a path, between the places where it is begun and where its wings are level again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathTurn {
    /// Where the roll into it begins.
    pub begin: Place,
    /// Where the wings are level on the new course.
    pub roll_out: Place,
    /// The turn itself: its bank, what governs it, its change of heading.
    pub turn: RolledTurn,
}

impl PathBrief {
    /// Briefs a sequence of legs: flies it ([`GroundPath::fly`]) and says of each leg its course, distance, time, heading, wind and turns.
    ///
    /// # Accuracy
    /// That of the path.
    ///
    /// # Degenerate cases
    /// A leg on which nothing is flown (IF, or one whose end is reached already) begins and ends at one place.
    ///
    /// # Errors
    /// As [`GroundPath::fly`].
    ///
    /// # Example
    /// ```
    /// use lubberline::procedure::legs::{Conditions, Fix, Leg, Passage};
    /// use lubberline::route::PathBrief;
    /// use lubberline::value::{*, units::*};
    /// let fix = |latitude, longitude| -> Result<Fix, lubberline::Error> {
    ///     let position = Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?);
    ///     Ok(Fix { position, passage: Passage::FlyBy })
    /// };
    /// let legs = [
    ///     Leg::InitialFix(fix(60.0, -10.0)?),
    ///     Leg::TrackToFix(fix(60.5, -10.0)?),
    ///     Leg::CourseToAltitude(TrueBearing::new(degrees(90.0))?, TrueAltitude::new(feet(9_000.0))?),
    /// ];
    /// let conditions = Conditions {
    ///     climb: feet_per_minute(500.0),
    ///     ..Conditions::level(TrueAirspeed::new(knots(250.0))?, TrueAltitude::new(feet(3_000.0))?)
    /// };
    /// let brief = PathBrief::of(&legs, &conditions)?;
    /// assert_eq!(brief.legs.len(), 3);
    /// assert_eq!(brief.legs[2].code.word(), "CA");
    /// assert!((brief.time() - seconds(720.0)).abs() < seconds(1e-6), "6000 ft at 500 ft a minute");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn of(legs: &[Leg], conditions: &Conditions) -> Result<Self, Error> {
        Self::of_path(legs, GroundPath::fly(legs, conditions)?)
    }

    /// Briefs a sequence of legs as it has been flown, for one through winds by level ([`GroundPath::fly_aloft`]).
    ///
    /// # Errors
    /// [`Error::LegNotFlown`] if nothing has been flown.
    pub fn of_path(legs: &[Leg], path: GroundPath) -> Result<Self, Error> {
        let mut here = path.segments.first().map(|first| first.start);
        let mut briefed = Vec::new();
        for (index, leg) in legs.iter().enumerate() {
            let flown: Vec<&Segment> = path.segments.iter().filter(|segment| segment.leg == index).collect();
            // A sequence of which nothing is flown has no place, and is no plan.
            let Some(start) = flown.first().map(|first| first.start).or(here) else {
                return Err(Error::LegNotFlown {
                    leg: index + 1,
                    code: leg.code().word(),
                    reason: "nothing is flown of the sequence".into(),
                });
            };
            let end = flown.last().map_or(start, |last| last.end);
            here = Some(end);
            briefed.push(PathLeg::of(leg, start, end, &flown, &path.conditions)?);
        }
        Ok(Self { legs: briefed, path })
    }

    /// Distance over the ground.
    pub fn distance(&self) -> Length {
        self.path.length()
    }

    /// Time from the first fix to the end of the last leg.
    pub fn time(&self) -> Time {
        self.path.duration()
    }

    /// Points of a segment of the path, its ends among them, no farther apart than `straight` on a straight and `bent` else (in a turn on
    /// the average, since it is cut by time).
    ///
    /// # Degenerate cases
    /// None where there is no such segment. A spacing of zero or less, or one that is not a number, draws the ends only; no segment gets
    /// more than ten thousand parts.
    pub fn segment_points(&self, segment: usize, straight: Length, bent: Length) -> Vec<Position> {
        let Some(segment) = self.path.segments.get(segment) else { return Vec::new() };
        let spacing = if segment.kind == SegmentKind::Straight { straight } else { bent };
        let parts = (segment.length / spacing).get::<ratio>().ceil();
        let parts = if parts.is_finite() { parts.clamp(1.0, MOST_PARTS) } else { 1.0 };
        let mut points = vec![segment.start.position];
        let mut part = 1.0;
        while part < parts {
            points.push(segment.at(part / parts));
            part += 1.0;
        }
        points.push(segment.end.position);
        points
    }
}

impl PathLeg {
    fn of(
        leg: &Leg,
        start: Place,
        end: Place,
        flown: &[&Segment],
        conditions: &Conditions,
    ) -> Result<Self, Error> {
        let on_course = flown.iter().find(|segment| segment.kind != SegmentKind::Turn);
        let course = on_course.map_or(end.course, |segment| segment.start.course);
        let straights = flown.iter().filter(|segment| segment.kind == SegmentKind::Straight);
        let mut arc_bank: Option<Angle> = None;
        for segment in flown {
            if let Some(bank) = segment.arc_bank(conditions)? {
                arc_bank = Some(arc_bank.map_or(bank, |greatest| greatest.max(bank)));
            }
        }
        let wind = on_course.or(flown.last()).map_or(conditions.wind, |segment| segment.wind);
        Ok(Self {
            code: leg.code(),
            start,
            end,
            course,
            crab: hold_course(course, conditions.true_airspeed, wind)?,
            flown_in: wind,
            wind: wind.along(course),
            distance: flown.iter().map(|segment| segment.length).fold(metres(0.0), |sum, part| sum + part),
            time: end.time - start.time,
            turns: flown
                .iter()
                .filter_map(|segment| {
                    let turn = segment.turn()?;
                    Some(PathTurn { begin: segment.start, roll_out: segment.end, turn })
                })
                .collect(),
            shortest_straight: straights
                .map(|segment| segment.length)
                .reduce(|least, other| least.min(other)),
            arc_bank,
            station: leg.station(),
            end_altitude: leg.end_altitude(),
        })
    }

    /// Whether the bank that keeps to its arc is within a limit; nothing to keep is.
    pub fn keeps_its_arc(&self, conditions: &Conditions) -> bool {
        self.arc_bank.is_none_or(|bank| bank <= conditions.limits.bank.value())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::earth::direct;
    use crate::lead::{ArcSense, CourseChange, TurnSide};
    use crate::procedure::legs::{Fix, Passage};
    use crate::value::units::{degree, degrees, feet, knots, meter, nautical_miles, second};
    use crate::value::{Bank, GroundDistance, TrueAirspeed, TrueAltitude, WindSpeed};

    fn off(from: Position, toward_deg: f64, distance_nm: f64) -> Position {
        let distance = GroundDistance::new(nautical_miles(distance_nm)).unwrap();
        direct(from, TrueBearing::from_degrees(toward_deg), distance).0
    }

    fn by(position: Position) -> Fix {
        Fix { position, passage: Passage::FlyBy }
    }

    fn windy() -> Conditions {
        let wind =
            Wind { from: TrueBearing::from_degrees(280.0), speed: WindSpeed::new(knots(45.0)).unwrap() };
        let (speed, altitude) = (TrueAirspeed::new(knots(220.0)), TrueAltitude::new(feet(4000.0)));
        Conditions { wind, ..Conditions::level(speed.unwrap(), altitude.unwrap()) }
    }

    #[test]
    fn the_parts_of_the_legs_are_the_path() {
        let center = Position::derived(60.0, -10.0);
        let (gate, exit) = (off(center, 250.0, 14.0), off(center, 340.0, 14.0));
        let legs = [
            Leg::InitialFix(by(off(center, 250.0, 30.0))),
            Leg::TrackToFix(by(gate)),
            Leg::ArcToFix { station: center, sense: ArcSense::Clockwise, fix: by(exit) },
            Leg::DirectToFix(by(center)),
        ];
        let brief = PathBrief::of(&legs, &windy()).unwrap();
        let distance_m: f64 = brief.legs.iter().map(|leg| leg.distance.get::<meter>()).sum();
        let time_s: f64 = brief.legs.iter().map(|leg| leg.time.get::<second>()).sum();
        assert!((distance_m - brief.distance().get::<meter>()).abs() < 1e-6);
        assert!((time_s - brief.time().get::<second>()).abs() < 1e-6);
        assert_eq!(brief.legs[0].distance, metres(0.0));
        let turns: Vec<usize> = brief.legs.iter().map(|leg| leg.turns.len()).collect();
        assert_eq!(turns, [0, 0, 1, 1]);
        assert!(brief.legs[2].arc_bank.is_some() && brief.legs[3].arc_bank.is_none());
    }

    #[test]
    fn the_turn_at_a_fix_is_that_of_its_course_change() {
        let first = Position::derived(60.0, -10.0);
        let corner = off(first, 20.0, 25.0);
        let last = off(corner, 95.0, 30.0);
        let legs = [first, corner, last].map(by);
        let legs = [Leg::InitialFix(legs[0]), Leg::TrackToFix(legs[1]), Leg::TrackToFix(legs[2])];
        let conditions = windy();
        let brief = PathBrief::of(&legs, &conditions).unwrap();
        let turn = brief.legs[2].turns[0];
        let line = |from, to| crate::earth::inverse(from, to);
        let change = CourseChange::new(
            line(first, corner).final_bearing.unwrap(),
            line(corner, last).initial_bearing.unwrap(),
            conditions.true_airspeed,
            conditions.wind,
            &conditions.limits,
            TurnSide::Shortest,
        )
        .unwrap();
        let before_m = line(turn.begin.position, corner).distance.value().get::<meter>();
        assert!((before_m - change.lead().get::<meter>()).abs() < 1e-3, "{before_m}");
        assert_eq!(turn.turn.bank(), change.turn().bank());
        let long_nm = brief.legs[2].shortest_straight.unwrap();
        assert!(
            (long_nm + change.past_fix_at_roll_out() - nautical_miles(30.0)).abs() < nautical_miles(0.01)
        );
    }

    /// With the wind behind, `GS² / (g D)` is the tangent of the bank that keeps to an arc in calm air of that speed.
    #[test]
    fn an_arc_too_tight_for_the_bank_is_told() {
        let center = Position::derived(60.0, -10.0);
        let legs = |radius_nm: f64| {
            [
                Leg::InitialFix(by(off(off(center, 270.0, radius_nm), 180.0, 8.0))),
                Leg::TrackToFix(by(off(center, 270.0, radius_nm))),
                Leg::RadiusToFix { center, sense: ArcSense::Clockwise, fix: by(off(center, 0.0, radius_nm)) },
            ]
        };
        let conditions = windy();
        for (radius_nm, keeps) in [(1.2, false), (4.0, true)] {
            let brief = PathBrief::of(&legs(radius_nm), &conditions).unwrap();
            assert_eq!(brief.legs[2].keeps_its_arc(&conditions), keeps, "{:?}", brief.legs[2].arc_bank);
        }
        let calm = Conditions { wind: Wind::calm(), ..conditions };
        let brief = PathBrief::of(&legs(4.0), &calm).unwrap();
        let bank = crate::turn::bank_for_radius(
            calm.true_airspeed,
            crate::value::ArcRadius::new(nautical_miles(4.0)).unwrap(),
        );
        let bank: Bank = bank.unwrap();
        assert!((brief.legs[2].arc_bank.unwrap() - bank.value()).abs() < degrees(1e-6));
        assert!(bank.value().get::<degree>() > 5.0);
    }

    #[test]
    fn nothing_flown_is_no_plan() {
        let alone = PathBrief::of(&[Leg::InitialFix(by(Position::derived(60.0, -10.0)))], &windy());
        assert!(matches!(alone, Err(Error::LegNotFlown { leg: 1, code: "IF", .. })));
    }
}
