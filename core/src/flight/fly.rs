//! The flight itself: its state and its step in time.

use super::place::Place;
use super::receiver::Tuned;
use super::steering::{Command, Memory, Steering};
use super::vector::Vector;
use super::wind_field::WindField;
use crate::earth::inverse;
use crate::station::Indication;
use crate::turn::{STANDARD_GRAVITY_M_S2, TurnLimits};
use crate::value::units::{
    Angle, Time, Velocity, degrees, meter, meter_per_second, metres, metres_per_second, radian,
    radian_per_second, second, seconds,
};
use crate::value::{Groundspeed, Position, TrueAirspeed, TrueAltitude, TrueBearing, TrueNorth};
use crate::wind::Wind;

/// How often a step may be divided at events (a reading reached, a bank reached) before the rest is flown as it is.
const MOST_PARTS: u32 = 40;

/// A longer step is flown in parts of no more than this, so that its error stays that of a step of as much.
const LONGEST_PART_S: f64 = 5.0;

/// The longest step.
const LONGEST_STEP_S: f64 = 1e6;

/// A speed and a roll below these are flown as these, so that the rate of turn and the time of a roll stay finite.
const LEAST_AIRSPEED_M_S: f64 = 1e-3;
const LEAST_ROLL_RAD_S: f64 = 1e-12;

/// An altitude that is reached within this time counts as reached.
const ALTITUDE_REACHED_S: f64 = 1e-9;

/// The rate of a climb is held below this part of the airspeed.
const STEEPEST: f64 = 0.99;

/// How a flight begins, wings level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Start {
    /// Where.
    pub position: Position,
    /// How high; altitude is taken for height over the ellipsoid.
    pub altitude: TrueAltitude,
    /// The heading, counted from the north that is carried.
    pub heading: TrueBearing,
    /// The point whose true north is carried along, over the shortest line, to where the flight begins; the start itself if none.
    pub north_of: Option<Position>,
    /// Speed through the air, constant along the path of the aircraft.
    pub true_airspeed: TrueAirspeed,
    /// The wind.
    pub wind: WindField,
    /// What bank, rate of turn and roll the aircraft keeps.
    pub limits: TurnLimits,
    /// How long after an indication the crew acts on it.
    pub reaction: Time,
}

/// An aircraft as a point mass in coordinated flight.
///
/// Bank grows and returns linearly at the roll rate, the heading turns at `g tan(bank) / V`, position moves with air and wind over
/// WGS-84 at the aircraft's height: a nautical mile flown at 45 000 ft is 0.2 percent less of the ground's. Directions of
/// [`Steering`] are counted from a north that is carried parallel along the path.
///
/// # Accuracy
/// Bank and heading are closed forms, without an error of the step; a step is divided where a reading, a bank or an altitude is reached.
/// Position is integrated by the classical rule of order four: at the roll-out of a lead the error is below 5 mm at steps
/// to a second, 0.1 m at 5 s (measured in the tests). Steering by an indication looks once a step. A step
/// beyond 5 s is flown as several.
///
/// # Degenerate cases
/// A step of zero, below it, beyond 1 000 000 s or not finite does nothing. A speed below 1 mm/s and a roll below
/// 1e-12 rad/s are flown as these. The state is plain data: copy it to branch a flight.
///
/// # Source
/// Equilibrium in a coordinated turn; kinematics on the ellipsoid by its normal vector, derived.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flight {
    pub(super) place: Place,
    pub(super) altitude_m: f64,
    climb_m_s: f64,
    level_m: f64,
    /// Counted from the carried north, not reduced to a circle.
    pub(super) heading_rad: f64,
    pub(super) bank_rad: f64,
    pub(super) time_s: f64,
    pub(super) airspeed_m_s: f64,
    pub(super) wind: WindField,
    pub(super) limits: TurnLimits,
    pub(super) bank_limit_rad: f64,
    pub(super) roll_rad_s: f64,
    pub(super) reaction_s: f64,
    steering: Steering,
    memory: Memory,
}

impl Flight {
    /// A flight that holds the heading it begins on.
    pub fn new(start: &Start) -> Self {
        let north_from_true_rad = start.north_of.map_or(0.0, |from| carried_rad(from, start.position));
        let altitude_m = start.altitude.value().get::<meter>();
        let mut flight = Self {
            place: Place::new(start.position, north_from_true_rad),
            altitude_m,
            climb_m_s: 0.0,
            level_m: altitude_m,
            heading_rad: start.heading.radians(),
            bank_rad: 0.0,
            time_s: 0.0,
            airspeed_m_s: 0.0,
            wind: start.wind,
            limits: start.limits,
            bank_limit_rad: 0.0,
            roll_rad_s: start.limits.roll.value().get::<radian_per_second>().max(LEAST_ROLL_RAD_S),
            reaction_s: start.reaction.get::<second>().max(0.0),
            steering: Steering::Heading(start.heading),
            memory: Memory::default(),
        };
        flight.set_airspeed(start.true_airspeed);
        flight
    }

    /// Steers otherwise from now on.
    pub fn steer(&mut self, steering: Steering) {
        self.steering = steering;
        self.memory = Memory::begun(self.time_s);
    }

    /// Carries the true north of another point from now on, as if it had begun there, and holds its heading. Nothing in space is
    /// turned by it: heading and wind are only counted anew, so that a turn planned for that point can be flown.
    pub fn carry_north_of(&mut self, point: Position) {
        let turned_rad = carried_rad(point, self.position()) - self.place.north_from_true_rad();
        self.place = self.place.north_turned(turned_rad);
        self.heading_rad -= turned_rad;
        self.wind = self.wind.north_turned(turned_rad);
        self.steer(Steering::Heading(self.carried_heading()));
    }

    /// Flies at another airspeed from now on; the rate of a climb is held below it.
    pub fn set_airspeed(&mut self, true_airspeed: TrueAirspeed) {
        self.airspeed_m_s = true_airspeed.value().get::<meter_per_second>().max(LEAST_AIRSPEED_M_S);
        let steepest_m_s = STEEPEST * self.airspeed_m_s;
        self.climb_m_s = self.climb_m_s.clamp(-steepest_m_s, steepest_m_s);
        self.bank_limit_rad = self.limits.governing_bank(true_airspeed).0.value().get::<radian>();
    }

    /// Acts this long after an indication from now on.
    pub fn set_reaction(&mut self, reaction: Time) {
        self.reaction_s = reaction.get::<second>().max(0.0);
    }

    /// Flies through another wind from now on.
    pub fn set_wind(&mut self, wind: WindField) {
        self.wind = wind;
    }

    /// Climbs or descends at a rate, without its sign, to an altitude and levels off there. The rate is held below the airspeed.
    pub fn climb_to(&mut self, altitude: TrueAltitude, rate: Velocity) {
        self.level_m = altitude.value().get::<meter>();
        let rate_m_s = rate.get::<meter_per_second>().abs().min(STEEPEST * self.airspeed_m_s);
        self.climb_m_s = if self.level_m < self.altitude_m { -rate_m_s } else { rate_m_s };
    }

    /// Flies on for a time.
    pub fn step(&mut self, time: Time) {
        let step_s = time.get::<second>();
        if !(step_s > 0.0 && step_s <= LONGEST_STEP_S) {
            return;
        }
        let parts = (step_s / LONGEST_PART_S).ceil() as u32;
        for _ in 0..parts {
            self.part(step_s / f64::from(parts));
        }
    }

    /// Flies on for a part of a step, divided at events.
    fn part(&mut self, time_s: f64) {
        let mut left_s = time_s;
        let end_s = self.time_s + left_s;
        let mut command = Command { bank_rad: self.bank_rad, valid_s: 0.0 };
        for _ in 0..MOST_PARTS {
            if command.valid_s <= 0.0 {
                command = self.decide();
            }
            let part_s = left_s.min(command.valid_s.max(0.0)).min(self.time_to_altitude_s());
            let flown_s = self.roll_toward(command.bank_rad, part_s);
            command.valid_s -= flown_s;
            left_s -= flown_s;
            if left_s <= 0.0 {
                break;
            }
        }
        if left_s > 0.0 {
            self.advance(left_s, self.bank_rad);
        }
        self.time_s = end_s;
    }

    /// Asks the steering law, and follows it after the reaction time if it steers by what is seen.
    fn decide(&mut self) -> Command {
        let mut memory = self.memory;
        let (decided, by_sight) = self.steering.command(self, &mut memory);
        self.memory = memory;
        if !by_sight || self.reaction_s == 0.0 {
            return decided;
        }
        if self.time_s >= self.memory.look_s {
            self.memory.active_rad = self.memory.pending_rad;
            self.memory.pending_rad = decided.bank_rad;
            self.memory.look_s = self.time_s + self.reaction_s;
        }
        let valid_s = decided.valid_s.min(self.memory.look_s - self.time_s);
        Command { bank_rad: self.memory.active_rad, valid_s }
    }

    /// Flies toward a bank for a time, or until it is reached if that is earlier; gives the time flown.
    fn roll_toward(&mut self, bank_rad: f64, time_s: f64) -> f64 {
        let target_rad = bank_rad.clamp(-self.bank_limit_rad, self.bank_limit_rad);
        let ramp_s = (target_rad - self.bank_rad).abs() / self.roll_rad_s;
        if ramp_s > 0.0 && ramp_s > time_s {
            let end_rad = self.bank_rad + (self.roll_rad_s * time_s).copysign(target_rad - self.bank_rad);
            self.advance(time_s, end_rad);
            return time_s;
        }
        if ramp_s > 0.0 {
            self.advance(ramp_s, target_rad);
            return ramp_s;
        }
        self.bank_rad = target_rad;
        self.advance(time_s, target_rad);
        time_s
    }

    /// Flies for a time in which bank changes evenly to another.
    fn advance(&mut self, time_s: f64, end_bank_rad: f64) {
        if time_s <= 0.0 {
            return;
        }
        let (start_heading_rad, start_bank_rad) = (self.heading_rad, self.bank_rad);
        let middle_bank_rad = (start_bank_rad + end_bank_rad) / 2.0;
        let turned_rad = |to_rad: f64, span_s: f64| {
            STANDARD_GRAVITY_M_S2 / self.airspeed_m_s * mean_tangent(start_bank_rad, to_rad) * span_s
        };
        let middle_rad = start_heading_rad + turned_rad(middle_bank_rad, time_s / 2.0);
        let end_rad = start_heading_rad + turned_rad(end_bank_rad, time_s);

        let (height_m, climb_m_s) = (self.altitude_m, self.climbing_m_s());
        let reached_m = if climb_m_s == 0.0 {
            height_m
        } else {
            let flown_m = height_m + climb_m_s * time_s;
            if climb_m_s > 0.0 { flown_m.min(self.level_m) } else { flown_m.max(self.level_m) }
        };
        let height = |part: f64| height_m + (reached_m - height_m) * part;
        let level_m_s = (self.airspeed_m_s * self.airspeed_m_s - climb_m_s * climb_m_s).sqrt();
        let wind = &self.wind;
        self.place = self.place.after(time_s, height, |place, part| {
            let heading_rad = if part == 0.0 {
                start_heading_rad
            } else if part == 1.0 {
                end_rad
            } else {
                middle_rad
            };
            let (sine, cosine) = heading_rad.sin_cos();
            place.along_carried(level_m_s * cosine, level_m_s * sine) + wind.velocity_m_s(place, height(part))
        });
        self.altitude_m = reached_m;
        self.heading_rad = end_rad;
        self.bank_rad = end_bank_rad;
        self.time_s += time_s;
    }

    /// Time until the climb ends or the wind begins to change otherwise with altitude: there a step is divided.
    fn time_to_altitude_s(&self) -> f64 {
        let climb_m_s = self.climbing_m_s();
        if climb_m_s == 0.0 {
            return f64::INFINITY;
        }
        std::iter::once(self.level_m)
            .chain(self.wind.altitudes_m())
            .map(|altitude_m| (altitude_m - self.altitude_m) / climb_m_s)
            .filter(|time_s| *time_s > ALTITUDE_REACHED_S)
            .fold(f64::INFINITY, f64::min)
    }

    fn climbing_m_s(&self) -> f64 {
        if self.altitude_m == self.level_m { 0.0 } else { self.climb_m_s }
    }

    /// Velocity over the ground, with the climb, in space.
    pub(super) fn velocity_m_s(&self) -> Vector {
        let climb_m_s = self.climbing_m_s();
        let level_m_s = (self.airspeed_m_s * self.airspeed_m_s - climb_m_s * climb_m_s).sqrt();
        let (sine, cosine) = self.heading_rad.sin_cos();
        self.place.along_carried(level_m_s * cosine, level_m_s * sine)
            + self.wind.velocity_m_s(&self.place, self.altitude_m)
            + self.place.normal * climb_m_s
    }

    /// Time since the start.
    pub fn time(&self) -> Time {
        seconds(self.time_s)
    }

    /// Where the aircraft is.
    pub fn position(&self) -> Position {
        self.place.position()
    }

    /// How high it is.
    pub fn altitude(&self) -> TrueAltitude {
        TrueAltitude::derived(metres(self.altitude_m))
    }

    /// Its heading from the true north of where it is.
    pub fn true_heading(&self) -> TrueBearing {
        TrueBearing::from_radians(self.heading_rad + self.place.north_from_true_rad())
    }

    /// Its heading from the north that it carries.
    pub fn carried_heading(&self) -> TrueBearing {
        TrueBearing::from_radians(self.heading_rad)
    }

    /// Its track over the ground from the true north of where it is.
    pub fn track(&self) -> TrueBearing {
        let velocity = self.velocity_m_s();
        let track_rad = velocity.dot(self.place.east()).atan2(velocity.dot(self.place.north));
        TrueBearing::from_radians(track_rad + self.place.north_from_true_rad())
    }

    /// Its speed over the ground, at its height.
    pub fn groundspeed(&self) -> Groundspeed {
        let velocity = self.velocity_m_s();
        let level = velocity - self.place.normal * velocity.dot(self.place.normal);
        Groundspeed::derived(metres_per_second(level.length()))
    }

    /// The speed through the air.
    pub fn true_airspeed(&self) -> TrueAirspeed {
        TrueAirspeed::derived(metres_per_second(self.airspeed_m_s))
    }

    /// The wind it flies through.
    pub fn wind(&self) -> WindField {
        self.wind
    }

    /// The wind where it is, against what the field's directions are counted from.
    pub fn wind_here(&self) -> Wind<TrueNorth> {
        self.wind.at(self.altitude())
    }

    /// What bank, rate of turn and roll it keeps.
    pub fn limits(&self) -> TurnLimits {
        self.limits
    }

    /// Its bank, right positive.
    pub fn bank(&self) -> Angle {
        degrees(self.bank_rad.to_degrees())
    }

    /// Whether what was to be steered is done: the turn turned, the course captured. What only holds is never done.
    pub fn is_done(&self) -> bool {
        self.memory.is_done()
    }

    /// What a receiver on board shows.
    pub fn shows(&self, receiver: &Tuned) -> Indication {
        receiver.shows(self.position(), self.altitude())
    }
}

/// How far clockwise of true north at a place the true north of a point lies, carried there over the shortest line.
fn carried_rad(from: Position, to: Position) -> f64 {
    let line = inverse(from, to);
    match (line.initial_bearing, line.final_bearing) {
        (Some(first), Some(last)) => first.change_to(last).degrees().to_radians(),
        _ => 0.0,
    }
}

/// The mean of the tangent of a bank that changes evenly: `(ln sec b - ln sec a) / (b - a)`.
fn mean_tangent(from_rad: f64, to_rad: f64) -> f64 {
    let width_rad = to_rad - from_rad;
    if width_rad.abs() < 1e-3 {
        // The closed form loses digits; the next term of Simpson's rule is below 1e-15 here.
        let middle = ((from_rad + to_rad) / 2.0).tan();
        return (from_rad.tan() + 4.0 * middle + to_rad.tan()) / 6.0;
    }
    (from_rad.cos() / to_rad.cos()).ln() / width_rad
}
