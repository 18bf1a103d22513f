//! A leg of a route: the geodesic between two stations, flown straight between the turns at its ends.

use super::{RouteFix, RoutePlan};
use crate::Error;
use crate::earth::{direct, inverse};
use crate::value::units::{Length, Time, meter, meter_per_second, metres, seconds};
use crate::value::{GroundDistance, Radial, TrueBearing, TrueNorth};
use crate::wind::{Crabbed, hold_course};

/// The geodesic from one station to the next, before it is flown.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Line {
    pub length: GroundDistance,
    pub initial: TrueBearing,
    pub middle: TrueBearing,
    pub last: TrueBearing,
}

impl Line {
    pub fn between(from: &RouteFix, to: &RouteFix) -> Result<Self, Error> {
        let line = inverse(from.station.position, to.station.position);
        let (Some(initial), Some(last)) = (line.initial_bearing, line.final_bearing) else {
            return Err(Error::SamePlace);
        };
        let half = GroundDistance::derived(line.distance.value() / 2.0);
        let (_, middle) = direct(from.station.position, initial, half);
        Ok(Self { length: line.distance, initial, middle, last })
    }
}

/// A leg as it is flown, in the wind of the station it leads to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RouteLeg {
    /// From station to station.
    pub length: GroundDistance,
    /// True course where it begins.
    pub initial_course: TrueBearing,
    /// True course where it ends.
    pub final_course: TrueBearing,
    /// The radial of the first station it is flown on, away from it.
    pub radial_from: Radial,
    /// The radial of the second station it is flown on, toward it.
    pub radial_to: Radial,
    /// What holds the course half-way.
    pub crab: Crabbed<TrueNorth>,
    /// What is left between the turns at its ends; negative if they overlap.
    pub straight: Length,
    /// The time for that.
    pub straight_time: Time,
}

impl RouteLeg {
    /// A leg of which the turns at its ends take their parts.
    pub(super) fn of(
        plan: &RoutePlan,
        from: &RouteFix,
        to: &RouteFix,
        line: &Line,
        taken: Length,
    ) -> Result<Self, Error> {
        let crab = hold_course(line.middle, plan.true_airspeed, to.wind)?;
        let straight = line.length.value() - taken;
        let groundspeed_m_s = crab.groundspeed.value().get::<meter_per_second>();
        Ok(Self {
            length: line.length,
            initial_course: line.initial,
            final_course: line.last,
            radial_from: line.initial.to_radial(&from.station),
            radial_to: line.last.reciprocal().to_radial(&to.station),
            crab,
            straight,
            straight_time: seconds(straight.get::<meter>() / groundspeed_m_s),
        })
    }

    /// Whether the turns at its ends leave anything of it, or nothing is lacking.
    pub fn is_long_enough(&self) -> bool {
        self.straight >= metres(0.0)
    }
}
