//! How far a path of turns and straight parts reaches, along a course and across it.

use crate::plane::Plane;
use crate::turn::RolledTurn;
use crate::value::units::radian;

/// The least and the greatest place of a path, along a course and to its right, in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Extent {
    pub low: Plane,
    pub high: Plane,
}

impl Extent {
    /// Of a path that begins where places are counted from.
    pub fn new() -> Self {
        Self { low: Plane::ZERO, high: Plane::ZERO }
    }

    /// Takes in a place. A straight part is no farther than its ends.
    pub fn reach(&mut self, place_m: Plane) {
        self.low = Plane { north: self.low.north.min(place_m.north), east: self.low.east.min(place_m.east) };
        self.high =
            Plane { north: self.high.north.max(place_m.north), east: self.high.east.max(place_m.east) };
    }

    /// Takes in a turn begun at a place on a heading, both against the course, in a wind, and gives where it ends.
    ///
    /// Its farthest places are its ends, and where the motion over the ground has no part along the course or none across it: with
    /// the part along `V cos(heading) + w`.
    pub fn turn(
        &mut self,
        from_m: Plane,
        turn: &RolledTurn,
        heading_rad: f64,
        airspeed_m_s: f64,
        wind_m_s: Plane,
    ) -> Plane {
        let place_m = |time_s: f64| from_m + turn.over_ground_after_m(time_s, heading_rad, wind_m_s);
        let change_rad = turn.heading_change().get::<radian>();
        let along_rad = (-wind_m_s.north / airspeed_m_s).acos();
        let across_rad = (-wind_m_s.east / airspeed_m_s).acos();
        let quarter_rad = std::f64::consts::FRAC_PI_2;
        for still_rad in [along_rad, -along_rad, quarter_rad + across_rad, quarter_rad - across_rad] {
            let turned_rad =
                (change_rad.signum() * (still_rad - heading_rad)).rem_euclid(std::f64::consts::TAU);
            // A wind faster than the aircraft leaves no such heading: a NaN, which is not within the turn.
            if turned_rad <= change_rad.abs() {
                self.reach(place_m(turn.time_at_s(turned_rad)));
            }
        }
        self.reach(from_m);
        let end_m = place_m(turn.duration_s());
        self.reach(end_m);
        end_m
    }
}
