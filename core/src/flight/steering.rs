//! Steering laws: what bank to take, by plan or by what the receiver shows.

use std::f64::consts::{FRAC_PI_2, FRAC_PI_6, TAU};

use super::fly::Flight;
use super::hold::Racetrack;
use super::place::Place;
use super::receiver::{Sight, Tuned};
use super::vector::Vector;
use crate::earth::{MEAN_RADIUS_M, inverse};
use crate::lead::{ArcSense, CourseChange};
use crate::plane::Plane;
use crate::station::Station;
use crate::turn::{RolledTurn, STANDARD_GRAVITY_M_S2};
use crate::value::units::{Angle, degrees, meter, metres_per_second, radian};
use crate::value::{
    ArcRadius, HeightAboveStation, InterceptAngle, SlantRange, TrueAirspeed, TrueBearing, TrueNorth,
};
use crate::wind::Wind;

/// Rate of turn asked for by each unit of heading error, per second, in every law that steers to a heading.
pub const HEADING_GAIN_PER_S: f64 = 0.4;

/// The time in which a law that closes a distance (on an arc, in a hold) would close it at its first speed. With the gain above, both of its
/// own motions then die out with 5 s, the fastest without swinging.
const CLOSING_TIME_S: f64 = 4.0 / HEADING_GAIN_PER_S;
/// The most by which such a law cuts toward its line, where nothing else is said.
pub(super) const GREATEST_CUT_RAD: f64 = FRAC_PI_6;
/// The radius of the turn onto the line against that of the bank limit, to leave time to roll.
const CAPTURE_ROOM: f64 = 1.3;
/// What is left of a distance or of a time counts as nothing.
pub(super) const NOTHING_M: f64 = 1e-4;
pub(super) const NOTHING_S: f64 = 1e-10;

/// How an aircraft is steered. Directions are counted from the carried north unless a station is named.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Steering {
    /// Hold a heading, taken up by the shortest way.
    Heading(TrueBearing),
    /// Hold the heading until the plan says to turn, then fly its turn without looking at an instrument.
    Turn(PlannedTurn),
    /// Track a course by the needle.
    Needle(NeedleTracking),
    /// Intercept a course at an angle, turn onto it with the right lead, then track it.
    Intercept(Interception),
    /// Keep a distance from a station.
    Arc(ArcTracking),
    /// Fly a racetrack over and over, from the fix on.
    Hold(Racetrack),
}

/// What a planned turn begins by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Begin {
    /// Without waiting.
    Now,
    /// The DME reading of a station has come down to this, or rises again without having done so.
    Dme(Station, SlantRange),
    /// The DME reading of a station has risen to this: past the station, for a lead that lies beyond the fix.
    RisingDme(Station, SlantRange),
}

/// A turn as planned: when it begins, the bank, and the heading on which it ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlannedTurn {
    /// What it begins by. The reaction time is added.
    pub begin: Begin,
    /// The heading on which the wings are level again.
    pub heading_after: TrueBearing,
    /// The change of heading planned, right positive, up to any angle.
    pub heading_change: Angle,
    /// The bank, without its side.
    pub bank: Angle,
}

impl PlannedTurn {
    /// The turn of a course change at a station, begun by its DME reading.
    pub fn at_station(
        change: &CourseChange<TrueNorth>,
        station: Station,
        height: HeightAboveStation,
    ) -> Self {
        let reading = change.reading_at_roll_in(height);
        let past_fix = change.lead().get::<meter>() < 0.0;
        Self {
            begin: if past_fix { Begin::RisingDme(station, reading) } else { Begin::Dme(station, reading) },
            heading_after: change.after().heading,
            heading_change: change.turn().heading_change(),
            bank: change.turn().bank(),
        }
    }
}

/// Tracking by the needle: the heading is the course's, for the wind believed in, plus the gain times the deflection, plus what
/// was learned. In the cone, and on the flag, the needle is not looked at: the heading that has kept the course, that of the wind
/// believed in with what was learned, is taken up and held.
///
/// The needle shows an angle. At distance `d` it turns a displacement `y` into `y / d`, so that the displacement closes with the time constant
/// `d / (gain V)`; where that falls to the time of reaction, heading and roll (some 5 s) the tracker hunts: with a gain of 15 and two
/// seconds to react at 120 kt the bank changes sides twelve times from 4.3 to 0.3 NM, and once from 30 to 26 NM (measured in
/// the tests). A gain of 4 gets to the cone without hunting; past it, where a mile is many degrees, it too swings before it settles.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NeedleTracking {
    /// The receiver whose needle is tracked.
    pub receiver: Tuned,
    /// Degrees of heading for each degree of deflection; 4 is usual here.
    pub gain: f64,
    /// The most that needle and learning together turn the heading off.
    pub greatest_cut: InterceptAngle,
    /// Degrees of heading learned per second for each degree of deflection while the needle is on its scale; 0.02 is usual here.
    pub learning_per_s: f64,
    /// The wind the crew believes in, from the carried north.
    pub believed_wind: Wind<TrueNorth>,
}

impl NeedleTracking {
    /// Gain 4, a cut of at most 30 degrees, learning 0.02 per second.
    pub fn new(receiver: Tuned, believed_wind: Wind<TrueNorth>) -> Self {
        let greatest_cut = InterceptAngle::derived(degrees(30.0));
        Self { receiver, gain: 4.0, greatest_cut, learning_per_s: 0.02, believed_wind }
    }
}

/// A cut toward a course, and its capture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interception {
    /// How the course is tracked once captured; its receiver and wind serve for the interception too.
    pub tracking: NeedleTracking,
    /// The angle between the track flown and the course.
    pub angle: InterceptAngle,
}

/// An arc about a station by DME.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArcTracking {
    /// The station.
    pub station: Station,
    /// The distance along the ground that is kept.
    pub radius: ArcRadius,
    /// Which way round.
    pub sense: ArcSense,
    /// The wind the crew believes in, from the carried north.
    pub believed_wind: Wind<TrueNorth>,
}

/// A bank to take, and how long before the law wants to be asked again.
#[derive(Debug, Clone, Copy)]
pub(super) struct Command {
    pub bank_rad: f64,
    pub valid_s: f64,
}

impl Command {
    pub fn for_now(bank_rad: f64) -> Self {
        Self { bank_rad, valid_s: f64::INFINITY }
    }
}

/// Where in its course a law is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Phase {
    #[default]
    Before,
    Reacting,
    Turning,
    RollingOut,
    Done,
    Timing,
    TurningBack,
    RollingOutBack,
    Inbound,
}

/// What a law remembers from one step to the next.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Memory {
    pub phase: Phase,
    /// When the phase began, or the law was last asked.
    pub since_s: f64,
    /// When the crew looks next, what it then does, and what it does now.
    pub look_s: f64,
    pub pending_rad: f64,
    pub active_rad: f64,
    /// Where a turn ends, and its bank with its side.
    pub target_rad: f64,
    pub turn_bank_rad: f64,
    /// The heading learned for the wind.
    learned_rad: f64,
    /// Whether a reading that is to come down has been seen to fall.
    pub approached: bool,
    /// Whether a racetrack is being entered.
    pub entering: bool,
}

impl Memory {
    pub fn begun(time_s: f64) -> Self {
        Self { since_s: time_s, look_s: time_s, ..Self::default() }
    }

    pub fn is_done(&self) -> bool {
        self.phase == Phase::Done
    }

    pub fn enter(&mut self, phase: Phase, time_s: f64) {
        self.phase = phase;
        self.since_s = time_s;
    }
}

/// An angle brought to half a circle either way.
pub(super) fn wrapped(angle_rad: f64) -> f64 {
    angle_rad - TAU * (angle_rad / TAU).round()
}

fn log_secant(bank_rad: f64) -> f64 {
    let tangent = bank_rad.tan();
    (tangent * tangent).ln_1p() / 2.0
}

impl Steering {
    /// The bank to take now, and whether it comes of looking at an indication (which takes the reaction time).
    pub(super) fn command(&self, flight: &Flight, memory: &mut Memory) -> (Command, bool) {
        match self {
            Self::Heading(heading) => (flight.turn_toward(heading.radians(), 0.0), false),
            Self::Turn(turn) => (flight.planned(turn, memory), false),
            Self::Needle(tracking) => (flight.by_needle(tracking, memory), true),
            Self::Intercept(interception) => flight.intercepting(interception, memory),
            Self::Arc(arc) => (flight.on_arc(arc), true),
            Self::Hold(racetrack) => flight.holding(racetrack, memory),
        }
    }
}

impl Flight {
    /// Heading turned in rolling out from a bank, with its side.
    fn roll_out_rad(&self, bank_rad: f64) -> f64 {
        if self.roll_rad_s.is_infinite() {
            return 0.0;
        }
        let turned_rad = STANDARD_GRAVITY_M_S2 / (self.airspeed_m_s * self.roll_rad_s) * log_secant(bank_rad);
        turned_rad.copysign(bank_rad)
    }

    /// The bank toward a heading, by the shortest way, with the rate of turn that the heading itself has.
    pub(super) fn turn_toward(&self, heading_rad: f64, rate_rad_s: f64) -> Command {
        let steady_rad = (self.airspeed_m_s * rate_rad_s / STANDARD_GRAVITY_M_S2).atan();
        let excess_rad = self.roll_out_rad(self.bank_rad) - self.roll_out_rad(steady_rad);
        let error_rad = wrapped(heading_rad - self.heading_rad) - excess_rad;
        let asked_rad_s = rate_rad_s + HEADING_GAIN_PER_S * error_rad;
        Command::for_now((self.airspeed_m_s * asked_rad_s / STANDARD_GRAVITY_M_S2).atan())
    }

    /// A turn to a heading that ends on it with the wings level, in two phases; none when it is over.
    pub(super) fn turning(&self, memory: &mut Memory, phases: (Phase, Phase)) -> Option<Command> {
        let instant = self.roll_rad_s.is_infinite();
        if memory.phase == phases.0 {
            let full_rad = memory.turn_bank_rad.clamp(-self.bank_limit_rad, self.bank_limit_rad);
            let bank_rad = if instant { full_rad } else { self.bank_rad };
            let left_rad =
                (memory.target_rad - self.heading_rad - self.roll_out_rad(bank_rad)) * full_rad.signum();
            let rolling_s = (full_rad - bank_rad).abs() / self.roll_rad_s;
            let rate_rad_s = STANDARD_GRAVITY_M_S2 * bank_rad.tan().abs() / self.airspeed_m_s;
            let steady_s = left_rad / rate_rad_s;
            if rolling_s > NOTHING_S && left_rad > 0.0 {
                return Some(Command { bank_rad: full_rad, valid_s: rolling_s });
            }
            if steady_s > NOTHING_S {
                return Some(Command { bank_rad: full_rad, valid_s: steady_s });
            }
            memory.enter(phases.1, self.time_s);
        }
        if memory.phase == phases.1 && self.bank_rad != 0.0 && !instant {
            return Some(Command { bank_rad: 0.0, valid_s: self.bank_rad.abs() / self.roll_rad_s });
        }
        None
    }

    fn planned(&self, turn: &PlannedTurn, memory: &mut Memory) -> Command {
        let change_rad = turn.heading_change.get::<radian>();
        let before_rad = turn.heading_after.radians() - change_rad;
        if memory.phase == Phase::Before {
            let wait_s = match turn.begin {
                Begin::Now => 0.0,
                Begin::Dme(station, reading) => self.time_to_falling_s(station, reading, memory),
                Begin::RisingDme(station, reading) => self.time_to_rising_s(station, reading),
            };
            if wait_s > 0.0 {
                return Command { valid_s: wait_s, ..self.turn_toward(self.heading_rad, 0.0) };
            }
            memory.enter(Phase::Reacting, self.time_s);
        }
        if memory.phase == Phase::Reacting {
            let wait_s = memory.since_s + self.reaction_s - self.time_s;
            if wait_s > NOTHING_S {
                return Command { valid_s: wait_s, ..self.turn_toward(self.heading_rad, 0.0) };
            }
            memory.target_rad = self.heading_rad + change_rad + wrapped(before_rad - self.heading_rad);
            memory.turn_bank_rad = turn.bank.get::<radian>().copysign(change_rad);
            memory.enter(Phase::Turning, self.time_s);
        }
        if let Some(command) = self.turning(memory, (Phase::Turning, Phase::RollingOut)) {
            return command;
        }
        memory.phase = Phase::Done;
        self.turn_toward(turn.heading_after.radians(), 0.0)
    }

    /// From a station's antenna to the aircraft, in space.
    fn off_antenna_m(&self, station: Station) -> Vector {
        let antenna_m =
            Place::new(station.position, 0.0).in_space_m(station.elevation.value().get::<meter>());
        self.place.in_space_m(self.altitude_m) - antenna_m
    }

    /// Time until a station's DME reading comes down to a value, by its present rate; zero if it has, or has ceased to fall.
    pub(super) fn time_to_falling_s(
        &self,
        station: Station,
        reading: SlantRange,
        memory: &mut Memory,
    ) -> f64 {
        let from_antenna_m = self.off_antenna_m(station);
        let slant_m = from_antenna_m.length();
        let left_m = slant_m - reading.value().get::<meter>();
        if left_m <= NOTHING_M {
            return 0.0;
        }
        // The reading falls ever more slowly on the way in: this comes short of the moment and is asked again.
        let closing_m_s = -from_antenna_m.dot(self.velocity_m_s()) / slant_m;
        if closing_m_s > 0.0 {
            memory.approached = true;
            return left_m / closing_m_s;
        }
        if memory.approached { 0.0 } else { f64::INFINITY }
    }

    /// Time until a station's DME reading has risen to a value, on the straight line flown now; zero if it has.
    pub(super) fn time_to_rising_s(&self, station: Station, reading: SlantRange) -> f64 {
        let (from_antenna_m, velocity_m_s) = (self.off_antenna_m(station), self.velocity_m_s());
        let reading_m = reading.value().get::<meter>();
        let opening_m2_s = from_antenna_m.dot(velocity_m_s);
        let speed_m2_s2 = velocity_m_s.dot(velocity_m_s);
        // |d + v t| = reading: the later root, and none if the line passes the antenna farther off than the reading.
        let lacking_m2 = reading_m * reading_m - from_antenna_m.dot(from_antenna_m);
        if opening_m2_s >= 0.0 && lacking_m2 <= 2.0 * reading_m * NOTHING_M {
            return 0.0;
        }
        let root = opening_m2_s * opening_m2_s + speed_m2_s2 * lacking_m2;
        let time_s = (root.max(0.0).sqrt() - opening_m2_s) / speed_m2_s2;
        // The way flown is no straight line in space, but so nearly that what is left of it shrinks fast.
        if time_s > 1.0 { 0.9 * time_s } else { time_s }
    }

    /// Heading less course, from the carried north, for a wind believed in; at most a right angle.
    pub(super) fn crab_rad(&self, course_rad: f64, wind: Wind<TrueNorth>) -> f64 {
        let wind_m_s = wind.velocity_m_s();
        -(Plane::along(course_rad).cross(wind_m_s) / self.airspeed_m_s).clamp(-1.0, 1.0).asin()
    }

    fn sight(&self, receiver: &Tuned) -> Sight {
        receiver.sight(self.position(), self.altitude())
    }

    /// The course selected, as a direction here from the carried north.
    fn course_here_rad(&self, receiver: &Tuned, sight: &Sight) -> f64 {
        let selected_rad = receiver.course.radians() + receiver.station.declination.angle().get::<radian>();
        let convergence_rad = match (sight.line.initial_bearing, sight.line.final_bearing) {
            (Some(first), Some(last)) => first.change_to(last).degrees().to_radians(),
            _ => 0.0,
        };
        selected_rad + convergence_rad - self.place.north_from_true_rad()
    }

    fn by_needle(&self, tracking: &NeedleTracking, memory: &mut Memory) -> Command {
        let sight = self.sight(&tracking.receiver);
        let course_rad = self.course_here_rad(&tracking.receiver, &sight);
        let heading_rad = course_rad + self.crab_rad(course_rad, tracking.believed_wind);
        let since_s = self.time_s - memory.since_s;
        memory.since_s = self.time_s;
        let Some(needle_rad) = sight.indication.deviation.map(|deviation| deviation.get::<radian>()) else {
            return self.turn_toward(heading_rad + memory.learned_rad, 0.0);
        };
        let cut_rad = tracking.greatest_cut.value().get::<radian>();
        if needle_rad.abs() < tracking.receiver.receiver.indicator.full_scale.value().get::<radian>() {
            memory.learned_rad = (memory.learned_rad + tracking.learning_per_s * needle_rad * since_s)
                .clamp(-cut_rad, cut_rad);
        }
        let asked_rad = (tracking.gain * needle_rad + memory.learned_rad).clamp(-cut_rad, cut_rad);
        self.turn_toward(heading_rad + asked_rad, 0.0)
    }

    fn intercepting(&self, interception: &Interception, memory: &mut Memory) -> (Command, bool) {
        let tracking = &interception.tracking;
        if memory.phase == Phase::Done {
            return (self.by_needle(tracking, memory), true);
        }
        let sight = self.sight(&tracking.receiver);
        let course_rad = self.course_here_rad(&tracking.receiver, &sight);
        let onto_rad = course_rad + self.crab_rad(course_rad, tracking.believed_wind);
        if memory.phase == Phase::Before {
            let Some(needle_rad) = sight.indication.deviation.map(|deviation| deviation.get::<radian>())
            else {
                return (self.turn_toward(self.heading_rad, 0.0), true);
            };
            let arc_rad = sight.line.distance.value().get::<meter>() / MEAN_RADIUS_M;
            // Distance to the course, positive when it lies to the right: the sphere's triangle with a right angle abeam.
            let off_m = MEAN_RADIUS_M * (arc_rad.sin() * needle_rad.sin()).asin();
            let side = off_m.signum();
            let cut_rad = course_rad + side * interception.angle.value().get::<radian>();
            let cutting_rad = cut_rad + self.crab_rad(cut_rad, tracking.believed_wind);
            // Where the turn begins the wings may not be level yet from the turn onto the cut: it begins with rolling them level.
            let levelling_s = self.bank_rad.abs() / self.roll_rad_s;
            let levelled_rad = self.roll_out_rad(self.bank_rad);
            let level_rad = self.heading_rad + levelled_rad;
            let change_rad = wrapped(onto_rad - level_rad);
            let turn = RolledTurn::new(
                TrueAirspeed::derived(metres_per_second(self.airspeed_m_s)),
                &self.limits,
                degrees(change_rad.to_degrees()),
            );
            let wind_m_s = tracking.believed_wind.velocity_m_s();
            // On the average over that time two thirds of it is turned.
            let levelling_m = (Plane::along(self.heading_rad + levelled_rad * 2.0 / 3.0) * self.airspeed_m_s
                + wind_m_s)
                * levelling_s;
            let turned_m = levelling_m + turn.over_ground_m(level_rad, wind_m_s);
            let abeam = Plane::along(course_rad + side * FRAC_PI_2);
            let velocity = Plane::along(self.heading_rad) * self.airspeed_m_s + wind_m_s;
            let closing_m_s = velocity.dot(abeam);
            let left_m = off_m.abs() - turned_m.dot(abeam);
            if left_m > NOTHING_M {
                let valid_s = if closing_m_s > 0.0 { left_m / closing_m_s } else { f64::INFINITY };
                return (Command { valid_s, ..self.turn_toward(cutting_rad, 0.0) }, false);
            }
            memory.target_rad = level_rad + change_rad;
            memory.turn_bank_rad = turn.bank().get::<radian>().copysign(change_rad);
            memory.enter(Phase::Turning, self.time_s);
        }
        match self.turning(memory, (Phase::Turning, Phase::RollingOut)) {
            Some(command) => (command, false),
            None => {
                memory.enter(Phase::Done, self.time_s);
                (self.by_needle(tracking, memory), true)
            }
        }
    }

    /// How steeply to cut toward a line that lies so far to one side: so that the distance closes in its time, and the turn onto the
    /// line can still be flown.
    pub(super) fn cut_rad(&self, off_m: f64, greatest_rad: f64) -> f64 {
        let speed_m_s = self.velocity_m_s().length();
        let radius_m =
            CAPTURE_ROOM * speed_m_s * speed_m_s / (STANDARD_GRAVITY_M_S2 * self.bank_limit_rad.tan());
        let closing_rad = (off_m.abs() / (CLOSING_TIME_S * speed_m_s)).atan();
        let turn_rad = (1.0 - off_m.abs() / radius_m).max(-1.0).acos();
        closing_rad.min(turn_rad).min(greatest_rad).copysign(off_m)
    }

    fn on_arc(&self, arc: &ArcTracking) -> Command {
        let line = inverse(arc.station.position, self.position());
        let Some(outward) = line.final_bearing else {
            return self.turn_toward(self.heading_rad, 0.0);
        };
        let side = f64::from(arc.sense.code());
        let off_m = line.distance.value().get::<meter>() - arc.radius.value().get::<meter>();
        let velocity = self.velocity_m_s();
        let speed_m_s = velocity.length();
        let cut_rad = self.cut_rad(off_m, GREATEST_CUT_RAD);
        let course_rad = outward.radians() - self.place.north_from_true_rad() + side * (FRAC_PI_2 + cut_rad);
        let crab_rad = self.crab_rad(course_rad, arc.believed_wind);
        // As the course turns, so does the crab: d(crab)/d(course), from the sine of the crab.
        let along_m_s = Plane::along(course_rad).dot(arc.believed_wind.velocity_m_s());
        let crab_rate = along_m_s / (self.airspeed_m_s * crab_rad.cos().max(0.1));
        let rate_rad_s = side * speed_m_s / arc.radius.value().get::<meter>() * (1.0 + crab_rate);
        self.turn_toward(course_rad + crab_rad, rate_rad_s)
    }
}
