//! Coming onto a course from beside it: turn toward it, fly straight, lead the turn onto it.

use crate::numeric::root_to;
use crate::plane::Plane;
use crate::turn::{RollHeadings, RolledTurn};
use crate::value::units::{degrees, meter_per_second};
use crate::value::{Bearing, North, TrueAirspeed};
use crate::wind::{Crabbed, Wind, hold_course};

/// The smallest angle of interception that is tried, in degrees: at less, the way is longer than any use.
const LEAST_ANGLE_DEG: f64 = 1e-3;

/// The last step of the search for the largest angle that there is room for, in degrees.
const STEP_DEG: f64 = 1e-11;

/// An aircraft on one course that is to come onto another, whose line passes near it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Recapture<'a, N: North> {
    /// How the aircraft flies now.
    pub from_crab: Crabbed<N>,
    /// The unit vector of its heading.
    pub from_heading: Plane,
    /// The course to come onto, and how it is held.
    pub onto: Bearing<N>,
    pub onto_crab: Crabbed<N>,
    /// The unit vector of that course.
    pub onto_along: Plane,
    /// Signed change of course to the direction of the line, in degrees, the way the first turn goes.
    pub change_deg: f64,
    /// On which side of the line's direction the intercept course lies: 1 right, -1 left.
    pub side: f64,
    /// The aircraft's place relative to a point of the line, in metres.
    pub place_m: Plane,
    pub true_airspeed: TrueAirspeed,
    pub wind: Wind<N>,
    /// The wind's velocity.
    pub wind_m_s: Plane,
    /// A turn of the same aircraft, at that airspeed within its limits.
    pub like: &'a RolledTurn,
    /// The headings while rolling in that turn.
    pub rolls: &'a RollHeadings,
}

/// One way onto the line.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Recaptured<N: North> {
    /// The angle at which the line is intercepted.
    pub angle_deg: f64,
    /// The course flown between the turns.
    pub between: Bearing<N>,
    pub first: RolledTurn,
    /// Straight distance between the turns; negative if there is no room for it.
    pub straight_m: f64,
    pub second: RolledTurn,
    /// From the first roll to wings level on the line.
    pub duration_s: f64,
    /// Distance over the ground.
    pub length_m: f64,
    /// Where on the line it ends, from the line's point along its direction.
    pub established_m: f64,
}

impl<N: North> Recapture<'_, N> {
    /// The way at the wanted angle, or at the largest smaller one for which there is room; none if no course can be held.
    pub fn solve(&self, wanted_deg: f64) -> Option<Recaptured<N>> {
        // What the straight part covers across the line: its own length grows without bound as the angle vanishes.
        let room_m = |angle_deg: f64| self.turns(angle_deg).map_or(-1.0, |turns| -turns.outside_m);
        let wanted = self.turns(wanted_deg).filter(|turns| turns.outside_m <= 0.0);
        let flown = wanted.or_else(|| self.turns(root_to(STEP_DEG, LEAST_ANGLE_DEG, wanted_deg, room_m)))?;
        Some(self.flown(&flown))
    }

    /// The way for an aircraft that is on its course: none at all.
    pub fn straight_on(&self) -> Recaptured<N> {
        let no_turn = self.like.another(degrees(0.0));
        Recaptured {
            angle_deg: 0.0,
            between: self.onto,
            first: no_turn,
            straight_m: 0.0,
            second: no_turn,
            duration_s: 0.0,
            length_m: 0.0,
            established_m: 0.0,
        }
    }

    /// The first turn, from the course flown now to the intercept course.
    pub fn first_turn(&self, angle_deg: f64) -> Option<(Bearing<N>, Crabbed<N>, RolledTurn)> {
        let signed_deg = angle_deg * self.side;
        let between = Bearing::from_degrees(self.onto.degrees() + signed_deg);
        let crab = hold_course(between, self.true_airspeed, self.wind).ok()?;
        let change =
            degrees(self.change_deg + signed_deg) + crab.wind_correction - self.from_crab.wind_correction;
        Some((between, crab, self.like.another(change)))
    }

    fn turns(&self, angle_deg: f64) -> Option<Turns<N>> {
        let (between, between_crab, first) = self.first_turn(angle_deg)?;
        let back =
            degrees(-angle_deg * self.side) + self.onto_crab.wind_correction - between_crab.wind_correction;
        let second = self.like.another(back);

        let between_heading = Plane::along_deg(between_crab.heading.degrees());
        let turned_m = self.place_m
            + (first.displaced_m(self.from_heading) + self.wind_m_s * first.duration_s())
            + (second.displaced_m(between_heading) + self.wind_m_s * second.duration_s());
        let outside_m = self.onto_along.cross(turned_m) * self.side;
        Some(Turns { angle_deg, between, between_crab, between_heading, first, second, turned_m, outside_m })
    }

    fn flown(&self, turns: &Turns<N>) -> Recaptured<N> {
        let Turns { angle_deg, between, between_crab, between_heading, first, second, turned_m, .. } = *turns;
        let (toward, along) = (Plane::along_deg(between.degrees()), self.onto_along);
        // The straight part takes away what the two turns leave across the line.
        let straight_m = -along.cross(turned_m) / along.cross(toward);
        let groundspeed_m_s = between_crab.groundspeed.value().get::<meter_per_second>();
        Recaptured {
            angle_deg,
            between,
            first,
            straight_m,
            second,
            duration_s: first.duration_s() + second.duration_s() + straight_m / groundspeed_m_s,
            length_m: first.ground_length_like_m(self.rolls, self.from_heading, self.wind_m_s)
                + straight_m
                + second.ground_length_like_m(self.rolls, between_heading, self.wind_m_s),
            established_m: (turned_m + toward * straight_m).dot(along),
        }
    }
}

/// The two turns of a way, before what lies between them is known.
struct Turns<N: North> {
    angle_deg: f64,
    between: Bearing<N>,
    between_crab: Crabbed<N>,
    between_heading: Plane,
    first: RolledTurn,
    second: RolledTurn,
    /// Where they end with nothing between them, relative to the point of the line.
    turned_m: Plane,
    /// How far that is across the line to the side the intercept course goes to: no room for a straight part if it is positive.
    outside_m: f64,
}
