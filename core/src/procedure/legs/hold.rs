//! Legs that are flown as a whole: racetracks and the procedure turn.

use super::flight::{Flight, ON_THE_LINE_M, Path};
use super::leg::{Hold, Leg};
use crate::Error;
use crate::earth::{Course, inverse};
use crate::lead::TurnSide;
use crate::procedure::holding::{HoldingEntry, HoldingPattern, HoldingSide, TimedLeg, entry_sector};
use crate::procedure::procedure_turn::OFF_LEG_SLOW_S;
use crate::value::units::{Time, meter_per_second, metres, second, seconds};
use crate::value::{HoldTime, TrueBearing};

/// By how much the outbound time is extended at a time where it is too short, in seconds, and how often.
const EXTENSION_S: f64 = 5.0;
const LONGEST_EXTENSIONS: u32 = 120;

/// More racetracks than this reach no altitude.
const MOST_RACETRACKS: u32 = 200;

impl Flight<'_> {
    pub fn fly_whole(&mut self) -> Result<(), Error> {
        match self.legs.get(self.leg).copied() {
            Some(Leg::HoldToFix(hold)) => self.enter(&hold),
            Some(Leg::HoldToManual(hold)) => {
                self.enter(&hold)?;
                self.racetrack(&hold)
            }
            Some(Leg::HoldToAltitude(hold, altitude)) => {
                self.enter(&hold)?;
                let climb_m_s = self.conditions.climb.get::<meter_per_second>();
                for _ in 0..MOST_RACETRACKS {
                    let left = altitude.value() - self.now.altitude.value();
                    if left.value * climb_m_s <= 0.0 && (climb_m_s != 0.0 || left.value == 0.0) {
                        return Ok(());
                    }
                    self.racetrack(&hold)?;
                }
                Err(self.refuse("its altitude is not reached with this rate of climb"))
            }
            Some(Leg::ProcedureTurn { fix, outbound, outbound_distance, first_right }) => {
                self.join_line(Course { through: fix, bearing: outbound }, TurnSide::Shortest)?;
                self.straight(outbound_distance.value())?;
                let off_deg = if first_right { 45.0 } else { -45.0 };
                let off = TrueBearing::from_degrees(self.now.course.degrees() + off_deg);
                let (away, back) = if first_right {
                    (TurnSide::Right, TurnSide::Left)
                } else {
                    (TurnSide::Left, TurnSide::Right)
                };
                let begun = self.now.time;
                self.join_track(off, away)?;
                let turning = self.now.time - begun;
                self.straight_for((seconds(OFF_LEG_SLOW_S) - turning).max(seconds(0.0)))?;
                match self.path(self.leg + 1)? {
                    Path::Line(line) => self.join_line(line, back),
                    _ => Err(self.refuse("the leg after it must be a course to or from a fix")),
                }
            }
            _ => Err(self.refuse("it is not flown as a whole")),
        }
    }

    fn straight_for(&mut self, time: Time) -> Result<(), Error> {
        let groundspeed_m_s = self.crab(self.now.course)?.groundspeed.value().get::<meter_per_second>();
        self.straight(metres(groundspeed_m_s * time.get::<second>()))
    }

    /// From the fix on whatever course into the racetrack, until the fix is reached on its inbound course.
    fn enter(&mut self, hold: &Hold) -> Result<(), Error> {
        if inverse(self.now.position, hold.fix).distance.value() > metres(ON_THE_LINE_M) {
            return Err(self.refuse("it does not begin at its fix; end the leg before it there"));
        }
        let sector = entry_sector(self.crab(self.now.course)?.heading, hold.inbound, hold.side);
        let back_to = match (sector.entry, hold.side) {
            (HoldingEntry::Direct, _) => return self.racetrack(hold),
            (HoldingEntry::Offset, HoldingSide::Right) | (HoldingEntry::Parallel, HoldingSide::Left) => {
                TurnSide::Right
            }
            (HoldingEntry::Offset, HoldingSide::Left) | (HoldingEntry::Parallel, HoldingSide::Right) => {
                TurnSide::Left
            }
        };
        self.join_track(sector.first_course, TurnSide::Shortest)?;
        self.out_and_back(hold, hold.outbound_time.value(), back_to)
    }

    /// Once round, from the fix to the fix, on the outbound heading that closes the pattern in the wind. Where the outbound time is
    /// too short for that it is flown longer.
    fn racetrack(&mut self, hold: &Hold) -> Result<(), Error> {
        self.crab(hold.inbound)?;
        let pattern = (0..LONGEST_EXTENSIONS).find_map(|longer| {
            let time = hold.outbound_time.value() + seconds(EXTENSION_S * f64::from(longer));
            HoldingPattern::new(
                hold.inbound,
                hold.side,
                TimedLeg::OutboundFromLevel,
                HoldTime::derived(time),
                self.conditions.true_airspeed,
                self.conditions.wind,
                &self.conditions.limits,
            )
            .ok()
        });
        let pattern =
            pattern.ok_or_else(|| self.refuse("no outbound course closes the racetrack in this wind"))?;
        let side = match hold.side {
            HoldingSide::Right => TurnSide::Right,
            HoldingSide::Left => TurnSide::Left,
        };
        self.turn_to(pattern.outbound_over_ground().0, side)?;
        self.out_and_back(hold, pattern.outbound_time(), side)
    }

    /// Straight outbound for a time, or as much longer as it takes to be on the inbound course before the fix; back onto that course,
    /// and to the fix.
    fn out_and_back(&mut self, hold: &Hold, time: Time, side: TurnSide) -> Result<(), Error> {
        let line = Course { through: hold.fix, bearing: hold.inbound };
        let (begun, kept) = (self.now, self.segments.len());
        for longer in 0..LONGEST_EXTENSIONS {
            self.straight_for(time + seconds(EXTENSION_S * f64::from(longer)))?;
            self.join_line(line, side)?;
            let left = -line.abeam(self.now.position).along_track;
            if left >= metres(0.0) {
                self.straight(left)?;
                self.settle(line);
                return Ok(());
            }
            self.now = begun;
            self.segments.truncate(kept);
        }
        Err(self.refuse("in this wind the inbound course is not reached before the fix"))
    }
}
