//! A leg of a route: the geodesic between two stations, flown straight between the turns at its ends.

use super::{RouteFix, RoutePlan};
use crate::Error;
use crate::air::height_above_station;
use crate::earth::{direct, inverse};
use crate::station::{HorizonRule, radio_horizon};
use crate::value::units::{Length, Time, meter, meter_per_second, metres, seconds};
use crate::value::{GroundDistance, Radial, SurfaceHeight, TrueBearing, TrueNorth};
use crate::wind::{Crabbed, Wind, hold_course};

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
    /// The wind on it: that of the second station.
    pub wind: Wind<TrueNorth>,
    /// What holds the course half-way.
    pub crab: Crabbed<TrueNorth>,
    /// What is left between the turns at its ends; negative if they overlap.
    pub straight: Length,
    /// The time for that.
    pub straight_time: Time,
    /// How far from the first station it is received over a smooth earth, at the height of the flight.
    pub horizon_from: GroundDistance,
    /// How far from the second one.
    pub horizon_to: GroundDistance,
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
            wind: to.wind,
            crab,
            straight,
            straight_time: seconds(straight.get::<meter>() / groundspeed_m_s),
            horizon_from: horizon(plan, from),
            horizon_to: horizon(plan, to),
        })
    }

    /// Whether the turns at its ends leave anything of it, or nothing is lacking.
    pub fn is_long_enough(&self) -> bool {
        self.straight >= metres(0.0)
    }

    /// The least length that would be enough: what the turns at its ends take.
    pub fn least_length(&self) -> Length {
        self.length.value() - self.straight
    }

    /// How much of it lies beyond the radio horizons of both its stations; zero if none.
    pub fn unreceived(&self) -> Length {
        (self.length.value() - self.horizon_from.value() - self.horizon_to.value()).max(metres(0.0))
    }
}

/// The radio horizon of a station for the altitude of a plan, over a smooth earth at its elevation; zero below it.
fn horizon(plan: &RoutePlan, fix: &RouteFix) -> GroundDistance {
    let height =
        height_above_station(plan.pressure_altitude, plan.setting, fix.station.elevation, plan.deviation);
    let above = SurfaceHeight::derived(height.value().max(metres(0.0)));
    radio_horizon(above, SurfaceHeight::derived(metres(0.0)), HorizonRule::FourThirds)
}
