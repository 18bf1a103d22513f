//! A racetrack flown: its entry, its turns, the outbound leg by the clock or by DME, and the way back onto the inbound course.

use std::f64::consts::{FRAC_PI_3, FRAC_PI_4, PI, TAU};

use super::fly::Flight;
use super::steering::{Command, GREATEST_CUT_RAD, Memory, NOTHING_M, NOTHING_S, Phase, wrapped};
use crate::earth::inverse;
use crate::plane::Plane;
use crate::procedure::{HoldingEntry, HoldingPattern, HoldingSide, OFFSET_ENTRY_DEG};
use crate::station::Station;
use crate::value::units::{Time, meter, second};
use crate::value::{Position, SlantRange, TrueBearing, TrueNorth};
use crate::wind::Wind;

/// The angle to the inbound course at which the turn of a parallel entry ends, on the holding side.
const PARALLEL_CUT_RAD: f64 = FRAC_PI_4;
/// The way back from an entry cuts by so much more than the bearing of the fix, so as to meet the course before it.
const BEFORE_FIX: f64 = 1.5;
const GREATEST_ENTRY_CUT_RAD: f64 = FRAC_PI_3;

/// What an outbound leg ends by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum OutboundEnd {
    /// So much time has passed with the wings level.
    Time(Time),
    /// The DME reading of a station has risen to this: the fix is held at toward the station, or is the station.
    RisingDme(Station, SlantRange),
    /// The DME reading of a station has come down to this: the fix is held at away from the station.
    Dme(Station, SlantRange),
}

/// A racetrack: from the fix a turn, straight outbound, a turn, and inbound to the fix.
///
/// The flight is over the fix when it begins. A direct entry turns onto the outbound heading to the side of the racetrack. A parallel one turns by the shortest way onto
/// the outbound course, an offset one onto a course [`OFFSET_ENTRY_DEG`] off it into the holding side; both keep it, in the wind believed in,
/// until the outbound leg ends, and turn back onto the inbound course, a parallel one through the holding side.
/// Inbound the course is closed as on an arc, at most at 30 degrees, or more if the fix could else not be met.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Racetrack {
    /// The fix.
    pub fix: Position,
    /// The inbound course, from the true north at the fix.
    pub inbound: TrueBearing,
    /// Which way the turns go.
    pub side: HoldingSide,
    /// The heading flown outbound, from the true north at the fix.
    pub outbound_heading: TrueBearing,
    /// What the outbound leg ends by.
    pub outbound_end: OutboundEnd,
    /// How it is entered; `Direct` too when the fix is passed on the inbound course.
    pub entry: HoldingEntry,
    /// The wind the crew believes in, from the carried north.
    pub believed_wind: Wind<TrueNorth>,
}

impl Racetrack {
    /// A pattern as it was computed for a wind, by the clock from wings level, entered directly.
    pub fn of(pattern: &HoldingPattern<TrueNorth>, fix: Position, wind: Wind<TrueNorth>) -> Self {
        Self {
            fix,
            inbound: pattern.inbound_course(),
            side: pattern.side(),
            outbound_heading: pattern.outbound_heading(),
            outbound_end: OutboundEnd::Time(pattern.outbound_time()),
            entry: HoldingEntry::Direct,
            believed_wind: wind,
        }
    }
}

impl Flight {
    pub(super) fn holding(&self, racetrack: &Racetrack, memory: &mut Memory) -> (Command, bool) {
        let side = f64::from(racetrack.side.code());
        let line = inverse(racetrack.fix, self.position());
        // Along and right of the inbound course, beyond the fix positive.
        let (bearing_rad, convergence_rad) = match (line.initial_bearing, line.final_bearing) {
            (Some(first), Some(last)) => (first.radians(), first.change_to(last).degrees().to_radians()),
            _ => (racetrack.inbound.radians(), 0.0),
        };
        let place_m =
            Plane::along(bearing_rad - racetrack.inbound.radians()) * line.distance.value().get::<meter>();
        let inbound_rad = racetrack.inbound.radians() + convergence_rad - self.place.north_from_true_rad();
        let onto_rad = inbound_rad + self.crab_rad(inbound_rad, racetrack.believed_wind);
        let passed_fix = memory.phase == Phase::Inbound && place_m.north >= -NOTHING_M;
        if passed_fix || memory.phase == Phase::Before {
            memory.entering = memory.phase == Phase::Before && racetrack.entry != HoldingEntry::Direct;
            let way = if memory.entering { 0.0 } else { side };
            self.begin_turn(memory, self.outbound_rad(racetrack, memory, inbound_rad), way, Phase::Turning);
        }
        if let Some(command) = self.turning(memory, (Phase::Turning, Phase::RollingOut)) {
            return (command, false);
        }
        if memory.phase == Phase::RollingOut {
            memory.enter(Phase::Timing, self.time_s);
            memory.approached = false;
        }
        if memory.phase == Phase::Timing {
            let left_s = match racetrack.outbound_end {
                OutboundEnd::Time(time) => memory.since_s + time.get::<second>() - self.time_s,
                OutboundEnd::RisingDme(station, reading) => self.time_to_rising_s(station, reading),
                OutboundEnd::Dme(station, reading) => self.time_to_falling_s(station, reading, memory),
            };
            if left_s > NOTHING_S {
                let hold = self.turn_toward(self.outbound_rad(racetrack, memory, inbound_rad), 0.0);
                return (Command { valid_s: left_s, ..hold }, false);
            }
            if memory.entering && racetrack.entry == HoldingEntry::Parallel {
                let cut_rad = inbound_rad - side * PARALLEL_CUT_RAD;
                let heading_rad = cut_rad + self.crab_rad(cut_rad, racetrack.believed_wind);
                self.begin_turn(memory, heading_rad, -side, Phase::TurningBack);
            } else {
                self.begin_turn(memory, onto_rad, side, Phase::TurningBack);
            }
        }
        if let Some(command) = self.turning(memory, (Phase::TurningBack, Phase::RollingOutBack)) {
            return (command, false);
        }
        memory.phase = Phase::Inbound;
        let to_fix_rad = (place_m.east.abs() / -place_m.north.min(-NOTHING_M)).atan();
        let greatest_rad = (BEFORE_FIX * to_fix_rad).clamp(GREATEST_CUT_RAD, GREATEST_ENTRY_CUT_RAD);
        let course_rad = inbound_rad + self.cut_rad(-place_m.east, greatest_rad);
        let heading_rad = course_rad + self.crab_rad(course_rad, racetrack.believed_wind);
        // Not later than the fix is passed.
        let velocity_m_s = self.velocity_m_s();
        let ahead = self.place.along_carried(inbound_rad.cos(), inbound_rad.sin());
        let nearing_m_s = velocity_m_s.dot(ahead);
        let valid_s = if nearing_m_s > 0.0 { -place_m.north / nearing_m_s } else { f64::INFINITY };
        (Command { valid_s, ..self.turn_toward(heading_rad, 0.0) }, true)
    }

    /// The heading outbound: that of the racetrack, or that which keeps the first course of the entry.
    fn outbound_rad(&self, racetrack: &Racetrack, memory: &Memory, inbound_rad: f64) -> f64 {
        let off_rad = match racetrack.entry {
            _ if !memory.entering => {
                return inbound_rad + racetrack.outbound_heading.radians() - racetrack.inbound.radians();
            }
            HoldingEntry::Offset => -f64::from(racetrack.side.code()) * OFFSET_ENTRY_DEG.to_radians(),
            HoldingEntry::Parallel | HoldingEntry::Direct => 0.0,
        };
        let course_rad = inbound_rad + PI + off_rad;
        course_rad + self.crab_rad(course_rad, racetrack.believed_wind)
    }

    /// Begins a turn to a heading: right for a way of 1, left for -1, the shorter for 0.
    fn begin_turn(&self, memory: &mut Memory, heading_rad: f64, way: f64, phase: Phase) {
        let short_rad = wrapped(heading_rad - self.heading_rad);
        let change_rad = if short_rad * way < 0.0 { short_rad + way * TAU } else { short_rad };
        memory.target_rad = self.heading_rad + change_rad;
        memory.turn_bank_rad = self.bank_limit_rad.copysign(change_rad);
        memory.enter(phase, self.time_s);
    }
}
