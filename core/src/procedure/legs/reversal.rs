//! The procedure turn as a leg: off the outbound course and back onto the course of the leg after.

use super::end::REACHED_M;
use super::flight::{Flight, Path};
use super::leg::{Leg, ReversalForm};
use crate::Error;
use crate::earth::Course;
use crate::lead::TurnSide;
use crate::turn::RolledTurn;
use crate::value::TrueBearing;
use crate::value::units::{degrees, metres, seconds};

/// By how much the first turn leaves the outbound course (of the 45/180), or its heading (of the 80/260), in degrees.
const OFF_45_DEG: f64 = 45.0;
const OFF_80_DEG: f64 = 80.0;

impl Flight<'_> {
    /// Out along the outbound course, off it, and back onto the course of the leg after.
    pub fn fly_reversal(&mut self) -> Result<(), Error> {
        let Some(Leg::ProcedureTurn { fix, outbound, outbound_distance, first_right, form, off_time }) =
            self.legs.get(self.leg).copied()
        else {
            return Err(self.refuse("it is no procedure turn"));
        };
        self.join_line(Course { through: fix, bearing: outbound }, TurnSide::Shortest)?;
        let to_turn = outbound_distance.value() + self.ahead(fix);
        if to_turn < metres(-REACHED_M) {
            return Err(self.distance_behind(outbound_distance, to_turn));
        }
        self.straight(to_turn.max(metres(0.0)))?;
        let sign = if first_right { 1.0 } else { -1.0 };
        let (away, back) =
            if first_right { (TurnSide::Right, TurnSide::Left) } else { (TurnSide::Left, TurnSide::Right) };
        match form {
            ReversalForm::Off45 => {
                let off = TrueBearing::from_degrees(self.now.course.degrees() + sign * OFF_45_DEG);
                let begun = self.now.time;
                self.join_track(off, away)?;
                let turning = self.now.time - begun;
                self.straight_for((off_time.value() - turning).max(seconds(0.0)))?;
            }
            ReversalForm::Off80 => {
                let conditions = &self.conditions;
                let turn =
                    RolledTurn::new(conditions.true_airspeed, &conditions.limits, degrees(sign * OFF_80_DEG));
                let (course, leg) = (self.now.course, self.leg);
                self.turn(turn, course, leg)?;
            }
        }
        match self.path(self.leg + 1)? {
            Path::Line(line) => self.join_line(line, back),
            _ => Err(self.refuse("the leg after it must be a course to or from a fix")),
        }
    }
}
