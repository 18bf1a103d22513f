//! Racetracks as legs: the entry, and round after round.

use super::flight::{Flight, ON_THE_LINE_M};
use super::ground_path::displaced;
use super::leg::{Hold, HoldLength, Leg};
use crate::earth::{Course, inverse};
use crate::lead::TurnSide;
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::procedure::holding::{HoldingEntry, HoldingPattern, HoldingSide, TimedLeg, entry_sector};
use crate::station::Station;
use crate::turn::RolledTurn;
use crate::value::units::{
    Time, degree, degrees, foot, foot_per_minute, meter, meter_per_second, metres, nautical_mile, second,
    seconds,
};
use crate::value::{
    GroundDistance, HoldTime, InterceptAngle, SlantRange, TrueAltitude, TrueBearing, TrueNorth,
};
use crate::{Error, LegReason};

/// By how much the outbound time is extended at a time where it is too short, in seconds, and how often.
const EXTENSION_S: f64 = 5.0;
const LONGEST_EXTENSIONS: u32 = 120;

/// More racetracks than this reach no altitude.
const MOST_RACETRACKS: u32 = 200;

/// How far from the reciprocal of the inbound course the outbound one of the first round is looked for, and in what steps, in degrees.
const SEARCH_DEG: f64 = 120.0;
const SEARCH_STEP_DEG: f64 = 3.0;

/// What a sound root leaves of the way across the inbound course, in metres.
const SOUND_M: f64 = 1e-3;

/// A length of a leg is met by its time when that changes by no more than this, in seconds, and after how many rounds at the latest.
const SETTLED_S: f64 = 1e-6;
const MOST_ROUNDS: u32 = 50;

/// In steps of what time outbound a DME reading is looked for, in seconds, and how many.
const READING_STEP_S: f64 = 20.0;
const READING_STEPS: u32 = 30;

/// The least angles at which the inbound course is cut, in degrees, and how often the time outbound is extended with each before the
/// next: by the angle of the conditions, and steeper where that does not meet the course before the fix.
const CUTS: [(f64, u32); 3] = [(0.0, 24), (45.0, 24), (60.0, LONGEST_EXTENSIONS)];

impl Flight<'_> {
    pub fn fly_whole(&mut self) -> Result<(), Error> {
        match self.legs.get(self.leg).copied() {
            Some(Leg::HoldToFix(hold)) => self.enter(&hold),
            Some(Leg::HoldToManual(hold)) => {
                self.enter(&hold)?;
                self.racetrack(&hold)
            }
            Some(Leg::HoldToAltitude(hold, altitude)) => {
                let from_ft = self.now.altitude.value().get::<foot>();
                self.enter(&hold)?;
                let climb_m_s = self.conditions.climb.get::<meter_per_second>();
                for _ in 0..MOST_RACETRACKS {
                    let left = altitude.value() - self.now.altitude.value();
                    if left.value * climb_m_s <= 0.0 && (climb_m_s != 0.0 || left.value == 0.0) {
                        return Ok(());
                    }
                    self.racetrack(&hold)?;
                }
                Err(self.refuse(LegReason::AltitudeNotHeldTo {
                    altitude_ft: altitude.value().get::<foot>(),
                    from_ft,
                    climb_fpm: self.conditions.climb.get::<foot_per_minute>(),
                    rounds: MOST_RACETRACKS,
                }))
            }
            Some(Leg::ProcedureTurn { .. }) => self.fly_reversal(),
            _ => Err(self.refuse("it is not flown as a whole")),
        }
    }

    pub fn straight_for(&mut self, time: Time) -> Result<(), Error> {
        let groundspeed_m_s = self.crab(self.now.course)?.groundspeed.value().get::<meter_per_second>();
        self.straight(metres(groundspeed_m_s * time.get::<second>()))
    }

    /// From the fix on whatever course into the racetrack, until the fix is reached on its inbound course.
    fn enter(&mut self, hold: &Hold) -> Result<(), Error> {
        let off = inverse(self.now.position, hold.fix).distance.value();
        if off > metres(ON_THE_LINE_M) {
            return Err(self.refuse(LegReason::OffFix {
                off_nm: off.get::<nautical_mile>(),
                allowed_nm: metres(ON_THE_LINE_M).get::<nautical_mile>(),
            }));
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
        // Outbound as long as the racetrack itself.
        let time = self.pattern(hold)?.outbound_time();
        self.join_track(sector.first_course, TurnSide::Shortest)?;
        self.out_and_back(hold, time, back_to)
    }

    /// Once round, from the fix to the fix, on the outbound course from which the turn inbound ends on the inbound course in the wind.
    /// Where the outbound leg is too short for that to be before the fix it is flown longer.
    fn racetrack(&mut self, hold: &Hold) -> Result<(), Error> {
        let pattern = self.pattern(hold)?;
        let side = match hold.side {
            HoldingSide::Right => TurnSide::Right,
            HoldingSide::Left => TurnSide::Left,
        };
        let along_inbound = self.now.course.change_to(hold.inbound).degrees().abs() < 1e-3;
        let (mut time, mut course) = (pattern.outbound_time(), pattern.outbound_over_ground().0);
        // Arrived at on another course, the fix is the end of no racetrack: the first round is laid from that course.
        if !along_inbound {
            let found = (0..LONGEST_EXTENSIONS).find_map(|longer| {
                let longer_s = time.get::<second>() + EXTENSION_S * f64::from(longer);
                self.first_outbound(hold, longer_s, side).map(|course| (seconds(longer_s), course))
            });
            (time, course) = found
                .ok_or_else(|| self.refuse_way("no outbound course leads back onto the inbound course"))?;
        }
        self.turn_to(course, side)?;
        self.out_and_back(hold, time, side)
    }

    /// The outbound course on which, after a time straight, the turn inbound ends on the inbound course before the fix: that nearest to
    /// its reciprocal.
    fn first_outbound(&self, hold: &Hold, straight_s: f64, side: TurnSide) -> Option<TrueBearing> {
        let outbound = hold.inbound.reciprocal();
        let wind_m_s = self.conditions.wind.velocity_m_s();
        let inbound = Plane::along_deg(hold.inbound.degrees());
        let begun = self.crab(self.now.course).ok()?;
        let ended = self.crab(hold.inbound).ok()?;
        let turned = |from: TrueBearing, to: TrueBearing, corrected_deg: f64| {
            let change_deg = side.way_round_deg(from.change_to(to)) + corrected_deg;
            RolledTurn::new(self.conditions.true_airspeed, &self.conditions.limits, degrees(change_deg))
        };
        let end_m = |off_deg: f64| -> Option<Plane> {
            let course = TrueBearing::from_degrees(outbound.degrees() + off_deg);
            let out = self.crab(course).ok()?;
            let correction_deg = |crab: crate::wind::Crabbed<TrueNorth>| crab.wind_correction.get::<degree>();
            let away = turned(self.now.course, course, correction_deg(out) - correction_deg(begun));
            let back = turned(course, hold.inbound, correction_deg(ended) - correction_deg(out));
            let straight_m = out.groundspeed.value().get::<meter_per_second>() * straight_s;
            Some(
                away.over_ground_m(begun.heading.radians(), wind_m_s)
                    + Plane::along_deg(course.degrees()) * straight_m
                    + back.over_ground_m(out.heading.radians(), wind_m_s),
            )
        };
        let across_m = |off_deg: f64| end_m(off_deg).map_or(f64::NAN, |end_m| inbound.cross(end_m));
        let sound = |off_deg: f64| {
            end_m(off_deg)
                .is_some_and(|end_m| inbound.cross(end_m).abs() < SOUND_M && inbound.dot(end_m) <= 0.0)
        };
        let here_m = across_m(0.0);
        let (mut up, mut down): ((f64, f64), (f64, f64)) = ((0.0, here_m), (0.0, here_m));
        let mut off_deg = SEARCH_STEP_DEG;
        while off_deg <= SEARCH_DEG {
            for (last, next_deg) in [(&mut up, off_deg), (&mut down, -off_deg)] {
                let next = (next_deg, across_m(next_deg));
                if last.1 * next.1 <= 0.0 {
                    let root_deg = root_between(last.0.min(next.0), last.0.max(next.0), across_m);
                    if sound(root_deg) {
                        return Some(TrueBearing::from_degrees(outbound.degrees() + root_deg));
                    }
                }
                *last = next;
            }
            off_deg += SEARCH_STEP_DEG;
        }
        None
    }

    /// The racetrack that closes in the wind, of the length that is asked for, or, where no course closes one so short, as much longer
    /// as it takes.
    fn pattern(&self, hold: &Hold) -> Result<HoldingPattern<TrueNorth>, Error> {
        let inbound = self.crab(hold.inbound)?;
        let found = match hold.length {
            HoldLength::Time(timed, time) => self.closed(hold, timed, time.value()),
            HoldLength::Distance(TimedLeg::Inbound, distance) => {
                self.closed(hold, TimedLeg::Inbound, distance.value() / inbound.groundspeed.value())
            }
            HoldLength::Distance(timed, distance) => self.outbound_for(hold, timed, distance),
            HoldLength::Dme(station, reading) => return self.outbound_to(hold, station, reading),
        };
        found.ok_or_else(|| self.refuse_way("no outbound course closes the racetrack"))
    }

    fn closed(&self, hold: &Hold, timed: TimedLeg, time: Time) -> Option<HoldingPattern<TrueNorth>> {
        (0..LONGEST_EXTENSIONS)
            .find_map(|longer| self.closed_at(hold, timed, time + seconds(EXTENSION_S * f64::from(longer))))
    }

    fn closed_at(&self, hold: &Hold, timed: TimedLeg, time: Time) -> Option<HoldingPattern<TrueNorth>> {
        HoldingPattern::new(
            hold.inbound,
            hold.side,
            timed,
            HoldTime::derived(time),
            self.conditions.true_airspeed,
            self.conditions.wind,
            &self.conditions.limits,
        )
        .ok()
    }

    /// With the outbound leg so long over the ground: its groundspeed hardly depends on its time, so that a few rounds settle it.
    fn outbound_for(
        &self,
        hold: &Hold,
        timed: TimedLeg,
        distance: GroundDistance,
    ) -> Option<HoldingPattern<TrueNorth>> {
        let mut time = distance.value() / self.conditions.true_airspeed.value();
        let mut pattern = self.closed(hold, timed, time)?;
        for _ in 0..MOST_ROUNDS {
            let next = distance.value() / pattern.outbound_over_ground().1.value();
            let changed = (next - time).abs();
            time = next;
            pattern = self.closed(hold, timed, time)?;
            if changed <= seconds(SETTLED_S) {
                break;
            }
        }
        Some(pattern)
    }

    /// With the turn inbound begun at a DME reading: the time outbound for which the leg ends there.
    fn outbound_to(
        &self,
        hold: &Hold,
        station: Station,
        reading: SlantRange,
    ) -> Result<HoldingPattern<TrueNorth>, Error> {
        let climb_m_s = self.conditions.climb.get::<meter_per_second>();
        let timed = TimedLeg::OutboundFromLevel;
        let beyond_m = |time_s: f64| {
            let Some(pattern) = self.closed_at(hold, timed, seconds(time_s)) else { return f64::NAN };
            let (before, across) = pattern.outbound_end();
            let end_m = Plane {
                north: -before.get::<meter>(),
                east: across.get::<meter>() * f64::from(hold.side.code()),
            };
            let place = displaced(hold.fix, end_m.turned(Plane::along_deg(hold.inbound.degrees()))).0;
            let outbound_s = pattern.outbound_turn().duration().get::<second>() + time_s;
            let altitude = TrueAltitude::derived(self.now.altitude.value() + metres(climb_m_s * outbound_s));
            (station.observe(place, altitude).dme.value() - reading.value()).get::<meter>()
        };
        let (mut low_s, mut at_low_m) = (0.0, beyond_m(0.0));
        for _ in 0..READING_STEPS {
            let high_s = low_s + READING_STEP_S;
            let at_high_m = beyond_m(high_s);
            if at_low_m * at_high_m <= 0.0 {
                let found = self.closed_at(hold, timed, seconds(root_between(low_s, high_s, beyond_m)));
                if let Some(pattern) = found {
                    return Ok(pattern);
                }
            }
            (low_s, at_low_m) = (high_s, at_high_m);
        }
        Err(self.refuse(LegReason::ReadingNotMetOutbound {
            reading_nm: reading.value().get::<nautical_mile>(),
            allowed_s: READING_STEP_S * f64::from(READING_STEPS),
        }))
    }

    /// Straight outbound for a time, or as much longer as it takes to be on the inbound course before the fix, or on a steeper cut toward
    /// it; back onto that course, and to the fix.
    fn out_and_back(&mut self, hold: &Hold, time: Time, side: TurnSide) -> Result<(), Error> {
        let line = Course { through: hold.fix, bearing: hold.inbound };
        let (begun, kept, usual) = (self.now, self.segments.len(), self.conditions.intercept);
        let usual_deg = usual.value().get::<degree>();
        for (least_deg, most) in CUTS {
            for longer in 0..most {
                self.conditions.intercept = InterceptAngle::derived(degrees(usual_deg.max(least_deg)));
                let joined = self
                    .straight_for(time + seconds(EXTENSION_S * f64::from(longer)))
                    .and_then(|()| self.join_line(line, side));
                self.conditions.intercept = usual;
                joined?;
                let left = -line.abeam(self.now.position).along_track;
                if left >= metres(0.0) {
                    self.straight(left)?;
                    self.settle(line);
                    return Ok(());
                }
                self.now = begun;
                self.segments.truncate(kept);
            }
        }
        Err(self.refuse_way("the inbound course is not reached before the fix"))
    }
}
