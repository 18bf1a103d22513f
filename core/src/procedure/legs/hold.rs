//! Legs that are flown as a whole: racetracks and the procedure turn.

use super::flight::{Flight, ON_THE_LINE_M, Path};
use super::leg::{Hold, Leg};
use crate::Error;
use crate::earth::{Course, inverse};
use crate::numeric::root_between;
use crate::plane::Plane;
use crate::turn::RolledTurn;
use crate::value::TrueBearing;
use crate::value::units::{Time, degrees, meter_per_second, metres, second, seconds};

/// Time flown on the leg that leaves the outbound course of a 45/180 procedure turn.
///
/// Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 4 Chapter 3, 45/180 procedure turn: 1 minute from the
/// start of the turn for categories A and B (from memory).
const OFF_COURSE_S: f64 = 60.0;

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
                self.join_line(Course { through: fix, bearing: outbound }, None)?;
                self.straight(outbound_distance.value())?;
                let off_deg = if first_right { 45.0 } else { -45.0 };
                let off = TrueBearing::from_degrees(self.now.course.degrees() + off_deg);
                self.join_track(off, Some(first_right))?;
                self.straight_for(seconds(OFF_COURSE_S))?;
                match self.path(self.leg + 1)? {
                    Path::Line(line) => self.join_line(line, Some(!first_right)),
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
    ///
    /// By the sector of the heading: direct, parallel or offset. The boundaries are 70 degrees to the inbound track.
    ///
    /// Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, entry sectors.
    fn enter(&mut self, hold: &Hold) -> Result<(), Error> {
        if inverse(self.now.position, hold.fix).distance.value() > metres(ON_THE_LINE_M) {
            return Err(self.refuse("it does not begin at its fix; end the leg before it there"));
        }
        let side = if hold.right_turns { 1.0 } else { -1.0 };
        let off_deg = side * hold.inbound.change_to(self.crab(self.now.course)?.heading).degrees();
        if (-70.0..=110.0).contains(&off_deg) {
            let outbound = self.outbound(hold)?;
            self.turn_to(outbound, Some(hold.right_turns))?;
            self.out_and_back(hold, hold.right_turns)
        } else if off_deg > 0.0 {
            // Offset: thirty degrees into the holding side.
            let offset = TrueBearing::from_degrees(hold.inbound.degrees() + 180.0 - 30.0 * side);
            self.join_track(offset, None)?;
            self.out_and_back(hold, hold.right_turns)
        } else {
            self.join_track(hold.inbound.reciprocal(), None)?;
            self.out_and_back(hold, !hold.right_turns)
        }
    }

    /// Once round, from the fix to the fix.
    fn racetrack(&mut self, hold: &Hold) -> Result<(), Error> {
        let outbound = self.outbound(hold)?;
        self.turn_to(outbound, Some(hold.right_turns))?;
        self.out_and_back(hold, hold.right_turns)
    }

    /// Straight outbound for the time of the hold, or as much longer as it takes to be on the inbound course before the fix;
    /// back onto that course, and to the fix.
    fn out_and_back(&mut self, hold: &Hold, turn_right: bool) -> Result<(), Error> {
        let line = Course { through: hold.fix, bearing: hold.inbound };
        let (begun, kept) = (self.now, self.segments.len());
        for longer in 0..LONGEST_EXTENSIONS {
            self.straight_for(hold.outbound_time + seconds(EXTENSION_S * f64::from(longer)))?;
            self.join_line(line, Some(turn_right))?;
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

    /// The outbound course whose racetrack ends on the inbound course.
    fn outbound(&self, hold: &Hold) -> Result<TrueBearing, Error> {
        let side = if hold.right_turns { 1.0 } else { -1.0 };
        let conditions = self.conditions;
        let wind_m_s = conditions.wind.velocity_m_s();
        let inbound_crab = self.crab(hold.inbound)?;
        let inward = Plane::along(hold.inbound.radians());
        let round_m = |bent_deg: f64| -> Option<Plane> {
            let outbound = TrueBearing::from_degrees(hold.inbound.degrees() + 180.0 + bent_deg);
            let crab = self.crab(outbound).ok()?;
            let corrected = crab.wind_correction - inbound_crab.wind_correction;
            let away = RolledTurn::new(
                conditions.true_airspeed,
                &conditions.limits,
                degrees(180.0 * side + bent_deg) + corrected,
            );
            let back = RolledTurn::new(
                conditions.true_airspeed,
                &conditions.limits,
                degrees(180.0 * side - bent_deg) - corrected,
            );
            let straight_m =
                crab.groundspeed.value().get::<meter_per_second>() * hold.outbound_time.get::<second>();
            Some(
                away.displacement_m(inbound_crab.heading.radians())
                    + back.displacement_m(crab.heading.radians())
                    + wind_m_s * (away.duration_s() + back.duration_s())
                    + Plane::along(outbound.radians()) * straight_m,
            )
        };
        let across_m = |bent_deg: f64| round_m(bent_deg).map_or(f64::NAN, |round_m| inward.cross(round_m));
        if across_m(-75.0) * across_m(75.0) <= 0.0 {
            let bent_deg = root_between(-75.0, 75.0, across_m);
            return Ok(TrueBearing::from_degrees(hold.inbound.degrees() + 180.0 + bent_deg));
        }
        Err(self.refuse("no outbound course closes the racetrack in this wind"))
    }
}
