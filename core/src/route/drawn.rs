//! Where a route runs: the points to draw its legs and turns by.

use super::{RouteBrief, RouteFix, RoutePlan, RouteTurn};
use crate::earth::{direct, inverse};
use crate::value::units::{Length, Time, ratio, seconds};
use crate::value::{GroundDistance, Position};

/// The most parts that a leg is drawn in.
const MOST_PARTS: f64 = 10_000.0;

impl RouteTurn {
    /// Points of the turn as it is flown at a fix, at even times, from where it begins to where the wings are level: one more than parts.
    ///
    /// # Accuracy
    /// That of the turn: its places are laid off from the station by bearing and distance.
    ///
    /// # Degenerate cases
    /// No parts are one. Without a turn all points are the station.
    pub fn points(&self, fix: &RouteFix, parts: u32) -> Vec<Position> {
        let parts = parts.max(1);
        let whole = self.change.turn().duration();
        (0..=parts).map(|part| self.place(fix, whole * (f64::from(part) / f64::from(parts)))).collect()
    }

    /// Where the turn begins.
    pub fn begin_place(&self, fix: &RouteFix) -> Position {
        self.place(fix, seconds(0.0))
    }

    /// Where the wings are level again.
    pub fn roll_out_place(&self, fix: &RouteFix) -> Position {
        self.place(fix, self.change.turn().duration())
    }

    /// Where the aircraft is a time after the turn begins.
    fn place(&self, fix: &RouteFix, time: Time) -> Position {
        let point = self.change.at(time);
        let station = fix.station.position;
        point.bearing_from_fix.map_or(station, |bearing| direct(station, bearing, point.distance).0)
    }
}

impl RouteBrief {
    /// Points of what is flown straight on a leg, no farther apart than `spacing`, its ends among them. The brief must be that of the plan.
    ///
    /// # Degenerate cases
    /// None where the turns at its ends overlap, and where there is no such leg. A spacing of zero or less, or one that is not a number,
    /// draws the ends only; no leg gets more than ten thousand parts.
    pub fn leg_points(&self, plan: &RoutePlan, leg: usize, spacing: Length) -> Vec<Position> {
        let (Some(briefed), Some(first), Some(second)) =
            (self.legs.get(leg), plan.fixes.get(leg), plan.fixes.get(leg.saturating_add(1)))
        else {
            return Vec::new();
        };
        if !briefed.is_long_enough() {
            return Vec::new();
        }
        let behind = leg.checked_sub(1).and_then(|before| self.turns.get(before));
        let from = behind.map_or(first.station.position, |turn| turn.roll_out_place(first));
        let to = self.turns.get(leg).map_or(second.station.position, |turn| turn.begin_place(second));
        geodesic_points(from, to, spacing)
    }

    /// Points of a turn as it is flown: see [`RouteTurn::points`]. None where there is no such turn.
    pub fn turn_points(&self, plan: &RoutePlan, turn: usize, parts: u32) -> Vec<Position> {
        match (self.turns.get(turn), plan.fixes.get(turn.saturating_add(1))) {
            (Some(briefed), Some(fix)) => briefed.points(fix, parts),
            _ => Vec::new(),
        }
    }
}

/// The points of a geodesic, in parts no longer than a spacing.
fn geodesic_points(from: Position, to: Position, spacing: Length) -> Vec<Position> {
    let line = inverse(from, to);
    let parts = (line.distance.value() / spacing).get::<ratio>().ceil();
    let parts = if parts.is_finite() { parts.clamp(1.0, MOST_PARTS) } else { 1.0 };
    let mut points = vec![from];
    if let Some(bearing) = line.initial_bearing {
        let mut part = 1.0;
        while part < parts {
            let distance = GroundDistance::derived(line.distance.value() * (part / parts));
            points.push(direct(from, bearing, distance).0);
            part += 1.0;
        }
    }
    points.push(to);
    points
}
