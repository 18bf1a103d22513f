//! The path over the ground: its segments, and points along it.

use super::Conditions;
use crate::Error;
use crate::earth::direct;
use crate::lead::ArcSense;
use crate::plane::Plane;
use crate::procedure::dme_arc::on_arc;
use crate::turn::RolledTurn;
use crate::value::units::{Angle, Length, Time, degrees, meter, metres, second, seconds};
use crate::value::{ArcRadius, GroundDistance, Position, TrueAltitude, TrueBearing, TrueNorth, choice};
use crate::wind::{Crabbed, Wind, hold_course};

choice! {
    /// What a segment of a path is.
    SegmentKind {
        /// A geodesic.
        Straight = 0: "straight",
        /// A turn with its roll, in wind.
        Turn = 1: "turn",
        /// A circle about a centre.
        Arc = 2: "arc",
    }
}

/// How far apart the places are at which the bank along an arc is looked at, in degrees.
const ARC_STEP_DEG: f64 = 5.0;

/// A place on the path and what the aircraft does there, with wings level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// Where.
    pub position: Position,
    /// The course over the ground.
    pub course: TrueBearing,
    /// How high.
    pub altitude: TrueAltitude,
    /// Time since the first fix.
    pub time: Time,
}

/// A part of the path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Segment {
    /// The leg it belongs to, counted from zero; a turn belongs to the leg it leads onto.
    pub leg: usize,
    /// What it is.
    pub kind: SegmentKind,
    /// Where it begins.
    pub start: Place,
    /// Where it ends.
    pub end: Place,
    /// Its length over the ground.
    pub length: Length,
    /// The wind it is flown in.
    pub wind: Wind<TrueNorth>,
    pub(super) shape: Shape,
}

/// What a segment is drawn from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Shape {
    Straight,
    Turn { turn: RolledTurn, heading: TrueBearing, wind_m_s: Plane },
    Arc { center: Position, radius: GroundDistance, from: TrueBearing, sweep_deg: f64 },
}

/// A sequence of legs as it is flown over the ground.
#[derive(Debug, Clone, PartialEq)]
pub struct GroundPath {
    /// Its parts, in order; the end of each is the start of the next.
    pub segments: Vec<Segment>,
    /// What it was flown with.
    pub conditions: Conditions,
}

/// The point a plane displacement leads to, and how much the meridian has turned on the way, in degrees.
pub(super) fn displaced(from: Position, by_m: Plane) -> (Position, f64) {
    let toward = TrueBearing::from_radians(by_m.east.atan2(by_m.north));
    let (point, onward) = direct(from, toward, GroundDistance::derived(metres(by_m.length())));
    (point, if by_m.length() > 0.0 { toward.change_to(onward).degrees() } else { 0.0 })
}

impl Segment {
    /// How long it takes.
    pub fn duration(&self) -> Time {
        self.end.time - self.start.time
    }

    /// What holds the course flown at a place of it: at its start or its end.
    ///
    /// # Errors
    /// [`Error::WindTooStrong`] if the course cannot be held.
    pub fn crab(&self, place: &Place, conditions: &Conditions) -> Result<Crabbed<TrueNorth>, Error> {
        hold_course(place.course, conditions.true_airspeed, self.wind)
    }

    /// The turn it is, if it is one.
    pub fn turn(&self) -> Option<RolledTurn> {
        match self.shape {
            Shape::Turn { turn, .. } => Some(turn),
            Shape::Straight | Shape::Arc { .. } => None,
        }
    }

    /// The greatest bank that keeps to it, if it is an arc: that of [`on_arc`], at its ends and every few degrees between.
    ///
    /// # Errors
    /// [`Error::WindTooStrong`] if the track cannot be held.
    pub fn arc_bank(&self, conditions: &Conditions) -> Result<Option<Angle>, Error> {
        let Shape::Arc { center, radius, from, sweep_deg } = self.shape else { return Ok(None) };
        let arc = ArcRadius::new(radius.value())?;
        let sense = if sweep_deg < 0.0 { ArcSense::Counterclockwise } else { ArcSense::Clockwise };
        // An arc has no more than 360 degrees.
        let parts = (sweep_deg.abs() / ARC_STEP_DEG).ceil().max(1.0) as u32;
        let mut greatest = degrees(0.0);
        for part in 0..=parts {
            let bearing_deg = from.degrees() + sweep_deg * f64::from(part) / f64::from(parts);
            let outward = direct(center, TrueBearing::from_degrees(bearing_deg), radius).1;
            let here = on_arc(outward, arc, sense, conditions.true_airspeed, self.wind)?;
            greatest = greatest.max(here.bank.abs());
        }
        Ok(Some(greatest))
    }

    /// The point at a share of the segment, from 0 to 1.
    pub fn at(&self, share: f64) -> Position {
        let share = share.clamp(0.0, 1.0);
        match self.shape {
            Shape::Straight => {
                direct(self.start.position, self.start.course, GroundDistance::derived(self.length * share)).0
            }
            Shape::Turn { turn, heading, wind_m_s } => {
                let time_s = turn.duration_s() * share;
                let by_m = turn.over_ground_after_m(time_s, heading.radians(), wind_m_s);
                displaced(self.start.position, by_m).0
            }
            Shape::Arc { center, radius, from, sweep_deg } => {
                direct(center, TrueBearing::from_degrees(from.degrees() + sweep_deg * share), radius).0
            }
        }
    }
}

impl GroundPath {
    /// Its length over the ground.
    pub fn length(&self) -> Length {
        self.segments.iter().map(|segment| segment.length).fold(metres(0.0), |sum, length| sum + length)
    }

    /// How long it takes.
    pub fn duration(&self) -> Time {
        seconds(self.segments.last().map_or(0.0, |segment| segment.end.time.get::<second>()))
    }

    /// Points along it, no farther apart than `spacing` (in a turn on the average, since it is cut by time), with every beginning and end
    /// of a segment among them.
    ///
    /// # Degenerate cases
    /// A spacing of zero or less, or one that is not a number, draws the ends only; no segment gets more than ten thousand points.
    pub fn points(&self, spacing: Length) -> Vec<Position> {
        let mut points: Vec<Position> =
            self.segments.first().map(|first| first.start.position).into_iter().collect();
        for segment in &self.segments {
            let parts = (segment.length.get::<meter>() / spacing.get::<meter>()).ceil();
            let parts = if parts.is_finite() { parts.clamp(1.0, 10_000.0) } else { 1.0 };
            let mut part = 1.0;
            while part < parts {
                points.push(segment.at(part / parts));
                part += 1.0;
            }
            points.push(segment.end.position);
        }
        points
    }
}
