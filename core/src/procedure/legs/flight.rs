//! An aircraft along a sequence of legs: where it is, and the straights, turns and arcs it flies from there.

use super::ground_path::{Segment, SegmentKind, Shape, displaced};
use super::leg::{Leg, Passage};
use super::onto_arc::{DmeArc, OntoArc};
use super::{Conditions, GroundPath, LegEnd, Place};
use crate::air::standard_pressure_altitude;
use crate::earth::{Course, direct, inverse};
use crate::lead::{ArcSense, CourseChange, TurnSide};
use crate::numeric::quadrature;
use crate::plane::Plane;
use crate::turn::{RolledTurn, radius};
use crate::value::units::{
    Length, Time, degree, knot, meter, meter_per_second, metres, nautical_mile, second, seconds,
};
use crate::value::{GroundDistance, Position, TrueAltitude, TrueBearing, TrueNorth};
use crate::wind::{Crabbed, WindsAloft, hold_course};
use crate::{Error, LegReason};

/// A point nearer to a line than this is on it, in metres.
pub(super) const ON_THE_LINE_M: f64 = 20.0;

/// A way shorter than this is none, in metres.
const NO_WAY_M: f64 = 1e-6;

/// A change of heading smaller than this is rounding, in degrees.
const NO_TURN_DEG: f64 = 1e-9;

/// The path of a leg, once it is joined.
#[derive(Debug, Clone, Copy)]
pub(super) enum Path {
    /// Along a line.
    Line(Course),
    /// On a course over the ground from wherever it is begun.
    Track(TrueBearing),
    /// Straight to a point from wherever it is begun.
    Direct(Position),
    /// Round a centre.
    Arc { center: Position, radius: GroundDistance, sense: ArcSense },
    /// What is flown as a whole: a racetrack or a procedure turn.
    Whole,
}

pub(super) struct Flight<'a> {
    pub legs: &'a [Leg],
    /// With the wind of the leg being flown.
    pub conditions: Conditions,
    pub now: Place,
    pub segments: Vec<Segment>,
    /// The leg being flown, counted from zero.
    pub leg: usize,
}

impl GroundPath {
    /// Flies a sequence of legs.
    ///
    /// The first leg must say where it begins: IF, or a leg from a fix (FA, FC, FD, FM, HA, HF, HM, PI).
    ///
    /// # Accuracy
    /// Straights and arcs are exact on WGS-84; turns are flown in the plane about their beginning. What they leave, metres at most
    /// since the wind keeps its direction against each point's own north, is taken up where they roll out: the end of a
    /// turn lies exactly on the path it leads onto.
    ///
    /// # Errors
    /// [`Error::LegNotFlown`] names the leg and what stands in its way: a leg too short for its turns, an end that is not met
    /// within a thousand miles, a sequence that does not hang together. [`Error::WindTooStrong`] if a course cannot be held.
    ///
    /// # Example
    /// ```
    /// use lubberline::procedure::legs::{Conditions, Fix, GroundPath, Leg, Passage};
    /// use lubberline::value::{Latitude, Longitude, Position, TrueAirspeed, TrueAltitude, units::*};
    /// let fix = |latitude, longitude| -> Result<Fix, lubberline::Error> {
    ///     let position = Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?);
    ///     Ok(Fix { position, passage: Passage::FlyBy })
    /// };
    /// let legs = [
    ///     Leg::InitialFix(fix(60.0, -10.0)?),
    ///     Leg::TrackToFix(fix(60.5, -10.0)?),
    ///     Leg::TrackToFix(fix(60.5, -9.0)?),
    /// ];
    /// let conditions = Conditions::level(TrueAirspeed::new(knots(250.0))?, TrueAltitude::new(feet(9_000.0))?);
    /// let path = GroundPath::fly(&legs, &conditions)?;
    /// assert_eq!(path.segments.len(), 3, "a straight, the turn at the second fix, and a straight");
    /// assert!(path.length() < nautical_miles(30.1 + 29.6), "flying by cuts the corner");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn fly(legs: &[Leg], conditions: &Conditions) -> Result<Self, Error> {
        Self::fly_in(legs, conditions, None)
    }

    /// Flies a sequence of legs through winds by level: each leg in the wind at the altitude where it is begun, as of the standard
    /// atmosphere; that of the conditions is not looked at.
    ///
    /// # Accuracy
    /// As [`GroundPath::fly`]. What the wind changes from leg to leg is taken up at once: between two legs the heading jumps by as much.
    ///
    /// # Errors
    /// As [`GroundPath::fly`], [`Error::OutOfRangeAt`] names the leg that begins where a climb has left the standard atmosphere.
    ///
    /// # Example
    /// ```
    /// use lubberline::procedure::legs::{Conditions, Fix, GroundPath, Leg, Passage};
    /// use lubberline::value::{*, units::*};
    /// use lubberline::wind::{Wind, WindLevel, WindsAloft};
    /// let level = |altitude_ft, from_deg, speed_kt| -> Result<WindLevel<TrueNorth>, lubberline::Error> {
    ///     let wind = Wind { from: TrueBearing::new(degrees(from_deg))?, speed: WindSpeed::new(knots(speed_kt))? };
    ///     Ok(WindLevel { altitude: PressureAltitude::new(feet(altitude_ft))?, wind })
    /// };
    /// let winds = WindsAloft::new(level(2_000.0, 180.0, 10.0)?, vec![level(10_000.0, 270.0, 50.0)?])?;
    /// let position = Position::new(Latitude::new(degrees(60.0))?, Longitude::new(degrees(-10.0))?);
    /// let east = TrueBearing::new(degrees(90.0))?;
    /// let legs = [
    ///     Leg::FixToAltitude(position, east, TrueAltitude::new(feet(10_000.0))?),
    ///     Leg::CourseToAltitude(east, TrueAltitude::new(feet(12_000.0))?),
    /// ];
    /// let conditions = Conditions {
    ///     climb: feet_per_minute(1_000.0),
    ///     ..Conditions::level(TrueAirspeed::new(knots(220.0))?, TrueAltitude::new(feet(2_000.0))?)
    /// };
    /// let path = GroundPath::fly_aloft(&legs, &conditions, &winds)?;
    /// assert!(path.segments[1].wind.speed > path.segments[0].wind.speed);
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn fly_aloft(
        legs: &[Leg],
        conditions: &Conditions,
        winds: &WindsAloft<TrueNorth>,
    ) -> Result<Self, Error> {
        Self::fly_in(legs, conditions, Some(winds))
    }

    fn fly_in(
        legs: &[Leg],
        conditions: &Conditions,
        winds: Option<&WindsAloft<TrueNorth>>,
    ) -> Result<Self, Error> {
        let refuse = |reason: &'static str| Error::LegNotFlown {
            leg: 1,
            code: legs.first().map_or("none", |leg| leg.code().word()),
            reason: reason.into(),
        };
        let start = match legs.first() {
            Some(Leg::InitialFix(fix)) => fix.position,
            Some(
                Leg::FixToAltitude(fix, ..)
                | Leg::FixToDistance(fix, ..)
                | Leg::FixToDme(fix, ..)
                | Leg::FixToManual(fix, ..)
                | Leg::ProcedureTurn { fix, .. },
            ) => *fix,
            Some(Leg::HoldToAltitude(hold, _) | Leg::HoldToFix(hold) | Leg::HoldToManual(hold)) => hold.fix,
            _ => return Err(refuse("a sequence begins with IF or with a leg from a fix")),
        };
        let now = Place {
            position: start,
            course: TrueBearing::from_degrees(0.0),
            altitude: conditions.altitude,
            time: seconds(0.0),
        };
        let mut flight = Flight { legs, conditions: *conditions, now, segments: Vec::new(), leg: 0 };
        flight.enter_wind(winds)?;
        // The sequence is begun on the course of its first path, as if it had been flown before.
        let first = usize::from(matches!(legs.first(), Some(Leg::InitialFix(_))));
        flight.leg = first;
        if let Some(course) = flight.begun_on(first)? {
            flight.now.course = course;
        }
        for index in first..legs.len() {
            flight.leg = index;
            flight.enter_wind(winds)?;
            flight.fly_leg()?;
        }
        Ok(Self { segments: flight.segments, conditions: *conditions })
    }
}

impl Flight<'_> {
    pub fn refuse(&self, reason: impl Into<LegReason>) -> Error {
        Error::LegNotFlown {
            leg: self.leg + 1,
            code: self.legs.get(self.leg).map_or("none", |leg| leg.code().word()),
            reason: reason.into(),
        }
    }

    /// Refuses what these turns do not allow in this wind.
    pub fn refuse_way(&self, what: &'static str) -> Error {
        let Conditions { wind, true_airspeed, .. } = self.conditions;
        self.refuse(LegReason::NoWay {
            what,
            radius_nm: self.radius().get::<nautical_mile>(),
            wind_from_deg: wind.from.degrees(),
            wind_speed_kt: wind.speed.value().get::<knot>(),
            true_airspeed_kt: true_airspeed.value().get::<knot>(),
        })
    }

    /// The radius of its turns in still air.
    pub fn radius(&self) -> Length {
        let (bank, _) = self.conditions.limits.governing_bank(self.conditions.true_airspeed);
        radius(self.conditions.true_airspeed, bank)
    }

    /// Takes the wind by level at the altitude flown now, if there is one.
    fn enter_wind(&mut self, winds: Option<&WindsAloft<TrueNorth>>) -> Result<(), Error> {
        if let Some(winds) = winds {
            let altitude = standard_pressure_altitude(self.now.altitude);
            self.conditions.wind = winds.at(altitude.map_err(|error| error.at("leg", self.leg + 1))?);
        }
        Ok(())
    }

    pub fn crab(&self, course: TrueBearing) -> Result<Crabbed<TrueNorth>, Error> {
        hold_course(course, self.conditions.true_airspeed, self.conditions.wind)
    }

    /// The course over the ground of a heading.
    fn track_of(&self, heading: TrueBearing) -> TrueBearing {
        let speed_m_s = self.conditions.true_airspeed.value().get::<meter_per_second>();
        let over_ground =
            Plane::along_deg(heading.degrees()) * speed_m_s + self.conditions.wind.velocity_m_s();
        TrueBearing::from_radians(over_ground.east.atan2(over_ground.north))
    }

    /// The path of a leg; `from` is where a TF begins, the fix before it.
    pub fn path(&self, index: usize) -> Result<Path, Error> {
        let Some(leg) = self.legs.get(index) else { return Err(self.refuse("a leg must follow")) };
        Ok(match *leg {
            Leg::InitialFix(_) => return Err(self.refuse("IF only begins a sequence")),
            Leg::TrackToFix(fix) => {
                let before = index.checked_sub(1).and_then(|before| self.legs.get(before)?.ends_at());
                let Some(before) = before else {
                    return Err(self.refuse("TF follows a leg that ends at a fix"));
                };
                match inverse(before.position, fix.position).initial_bearing {
                    Some(bearing) => Path::Line(Course { through: before.position, bearing }),
                    None => return Err(self.refuse("its two fixes are one point")),
                }
            }
            Leg::CourseToFix(bearing, fix) => Path::Line(Course { through: fix.position, bearing }),
            Leg::DirectToFix(fix) => Path::Direct(fix.position),
            Leg::ArcToFix { station: center, sense, fix } | Leg::RadiusToFix { center, sense, fix } => {
                Path::Arc { center, radius: inverse(center, fix.position).distance, sense }
            }
            Leg::FixToAltitude(through, bearing, _)
            | Leg::FixToDistance(through, bearing, _)
            | Leg::FixToDme(through, bearing, ..)
            | Leg::FixToManual(through, bearing) => Path::Line(Course { through, bearing }),
            Leg::CourseToAltitude(course, _)
            | Leg::CourseToDme(course, ..)
            | Leg::CourseToIntercept(course)
            | Leg::CourseToRadial(course, ..) => Path::Track(course),
            Leg::HeadingToAltitude(heading, _)
            | Leg::HeadingToDme(heading, ..)
            | Leg::HeadingToIntercept(heading)
            | Leg::HeadingToManual(heading)
            | Leg::HeadingToRadial(heading, ..) => Path::Track(self.track_of(heading)),
            Leg::HoldToAltitude(..)
            | Leg::HoldToFix(_)
            | Leg::HoldToManual(_)
            | Leg::ProcedureTurn { .. } => Path::Whole,
        })
    }

    /// The course on which a sequence that begins with a leg is begun.
    fn begun_on(&self, index: usize) -> Result<Option<TrueBearing>, Error> {
        if index >= self.legs.len() {
            return Ok(None);
        }
        Ok(Some(match self.path(index)? {
            Path::Line(line) => line.abeam(self.now.position).bearing,
            Path::Track(course) => course,
            Path::Direct(fix) => match inverse(self.now.position, fix).initial_bearing {
                Some(bearing) => bearing,
                None => return Err(self.refuse("the fix is where the aircraft is")),
            },
            Path::Arc { center, sense, .. } => self.tangent(center, sense)?,
            Path::Whole => match self.legs.get(index) {
                Some(Leg::ProcedureTurn { outbound, .. }) => *outbound,
                Some(Leg::HoldToAltitude(hold, _) | Leg::HoldToFix(hold) | Leg::HoldToManual(hold)) => {
                    hold.inbound
                }
                _ => return Ok(None),
            },
        }))
    }

    fn fly_leg(&mut self) -> Result<(), Error> {
        let path = self.path(self.leg)?;
        if matches!(path, Path::Whole) {
            return self.fly_whole();
        }
        self.join(path)?;
        match path {
            Path::Arc { center, radius, sense } => self.fly_arc(center, radius, sense),
            _ => self.fly_straight(path),
        }
    }

    /// Along a straight path to its end, and through the turn onto the next leg where that is led.
    fn fly_straight(&mut self, path: Path) -> Result<(), Error> {
        let to_end = self.distance_to_end(path)?;
        self.straight_and_turn(to_end)
    }

    /// A distance along the course flown now, less the lead of the turn onto the next leg, and that turn.
    pub fn straight_and_turn(&mut self, to_end: Length) -> Result<(), Error> {
        let (end, course) = direct(self.now.position, self.now.course, GroundDistance::derived(to_end));
        if let Some((lead, turn)) = self.led_turn(end, course)? {
            let straight = to_end - lead;
            if straight < metres(-ON_THE_LINE_M) {
                return Err(self.refuse(LegReason::TooShort {
                    left_nm: to_end.get::<nautical_mile>(),
                    lead_nm: lead.get::<nautical_mile>(),
                }));
            }
            self.straight(straight.max(metres(0.0)))?;
            match turn {
                LedTurn::Course(change) => self.turn(*change.turn(), change.inbound(), self.leg + 1)?,
                LedTurn::OntoArc(onto) => self.turn(onto.turn, onto.course, self.leg + 1)?,
            }
        } else {
            self.straight(to_end)?;
        }
        Ok(())
    }

    /// The turn that leads onto the next leg at a point reached on a course, if it is to be flown by.
    fn led_turn(&self, end: Position, course: TrueBearing) -> Result<Option<(Length, LedTurn)>, Error> {
        if self.leg + 1 >= self.legs.len() {
            return Ok(None);
        }
        let Some(leg) = self.legs.get(self.leg) else { return Ok(None) };
        let flies_by = leg.code().end() == LegEnd::Intercept
            || leg.ends_at().is_some_and(|fix| fix.passage == Passage::FlyBy);
        // What ends at a reading or a radial ends onto an arc that it has reached there.
        let ends_onto_arc = matches!(leg.code().end(), LegEnd::Distance | LegEnd::Dme | LegEnd::Radial);
        if let Some(arc) = self.dme_arc(self.leg + 1) {
            if !(flies_by || ends_onto_arc) || !arc.is_near(end) || self.is_along(&arc, end, course)? {
                return Ok(None);
            }
            let onto = self.onto_arc(&arc, end, course)?;
            return Ok(Some((onto.lead, LedTurn::OntoArc(onto))));
        }
        if !flies_by {
            return Ok(None);
        }
        match self.path(self.leg + 1)? {
            Path::Line(line) => {
                let abeam = line.abeam(end);
                if abeam.cross_track.get::<meter>().abs() > ON_THE_LINE_M {
                    return Ok(None);
                }
                let change = self.change(course, abeam.bearing)?;
                Ok(Some((change.lead(), LedTurn::Course(change))))
            }
            Path::Arc { .. } | Path::Track(_) | Path::Direct(_) | Path::Whole => Ok(None),
        }
    }

    /// The arc of a leg, if it is an AF.
    pub fn dme_arc(&self, index: usize) -> Option<DmeArc> {
        match (self.legs.get(index)?, self.path(index).ok()?) {
            (Leg::ArcToFix { .. }, Path::Arc { center, radius, sense }) => {
                Some(DmeArc { center, radius, sense })
            }
            _ => None,
        }
    }

    pub fn change(&self, from: TrueBearing, to: TrueBearing) -> Result<CourseChange<TrueNorth>, Error> {
        let conditions = self.conditions;
        CourseChange::new(
            from,
            to,
            conditions.true_airspeed,
            conditions.wind,
            &conditions.limits,
            TurnSide::Shortest,
        )
    }

    /// A straight part along the course flown now.
    pub fn straight(&mut self, length: Length) -> Result<(), Error> {
        if length.get::<meter>() <= NO_WAY_M {
            return Ok(());
        }
        let time = self.time_along(length)?;
        let (position, course) = direct(self.now.position, self.now.course, GroundDistance::derived(length));
        self.add(SegmentKind::Straight, self.leg, Shape::Straight, length, time, position, course);
        Ok(())
    }

    /// The time for a straight part: its course turns along a geodesic, and with it the groundspeed.
    pub fn time_along(&self, length: Length) -> Result<Time, Error> {
        let mut sum_s = 0.0;
        let mut failed = None;
        quadrature(0.0, length.get::<meter>(), 1, |along_m, weight_m| {
            let along = GroundDistance::derived(metres(along_m));
            match self.crab(direct(self.now.position, self.now.course, along).1) {
                Ok(crab) => sum_s += weight_m / crab.groundspeed.value().get::<meter_per_second>(),
                Err(error) => failed = Some(error),
            }
        });
        failed.map_or(Ok(seconds(sum_s)), Err)
    }

    /// A turn begun now. It was worked out in the frame of another place, in which the course flown now is `course`; directions
    /// and wind are carried parallel from there to here.
    pub fn turn(&mut self, turn: RolledTurn, course: TrueBearing, leg: usize) -> Result<(), Error> {
        if turn.heading_change().get::<degree>().abs() <= NO_TURN_DEG {
            return Ok(());
        }
        let frame_deg = course.change_to(self.now.course).degrees();
        let before = self.crab(course)?.heading;
        let heading = TrueBearing::from_degrees(before.degrees() + frame_deg);
        let wind_m_s = self.conditions.wind.velocity_m_s().turned(Plane::along_deg(frame_deg));
        let by_m = turn.over_ground_m(heading.radians(), wind_m_s);
        let (position, turned_deg) = displaced(self.now.position, by_m);
        let after = TrueBearing::from_degrees(before.degrees() + turn.heading_change().get::<degree>());
        let onward = TrueBearing::from_degrees(self.track_of(after).degrees() + frame_deg + turned_deg);
        let length = metres(turn.ground_length_m(Plane::along_deg(heading.degrees()), wind_m_s));
        let shape = Shape::Turn { turn, heading, wind_m_s };
        self.add(SegmentKind::Turn, leg, shape, length, turn.duration(), position, onward);
        Ok(())
    }

    #[expect(
        clippy::too_many_arguments,
        reason = "a segment has that many parts, and only here are they put together"
    )]
    pub fn add(
        &mut self,
        kind: SegmentKind,
        leg: usize,
        shape: Shape,
        length: Length,
        time: Time,
        position: Position,
        course: TrueBearing,
    ) {
        let climbed = metres(self.conditions.climb.get::<meter_per_second>() * time.get::<second>());
        let end = Place {
            position,
            course,
            altitude: TrueAltitude::derived(self.now.altitude.value() + climbed),
            time: self.now.time + time,
        };
        let wind = self.conditions.wind;
        self.segments.push(Segment { leg, kind, start: self.now, end, length, wind, shape });
        self.now = end;
    }

    /// Puts the aircraft exactly on a line it has come onto, taking up what the plane of the turn has left.
    pub fn settle(&mut self, line: Course) {
        let abeam = line.abeam(self.now.position);
        if abeam.cross_track.get::<meter>().abs() <= ON_THE_LINE_M {
            self.now.position = abeam.point;
            self.now.course = abeam.bearing;
            if let Some(last) = self.segments.last_mut() {
                last.end.position = abeam.point;
                last.end.course = abeam.bearing;
            }
        }
    }
}

/// A turn begun before the end of a leg.
enum LedTurn {
    Course(CourseChange<TrueNorth>),
    OntoArc(OntoArc),
}
