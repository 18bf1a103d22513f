//! What a route is flown through and with.

use std::fmt;

use crate::Error;
use crate::lead::TurnSide;
use crate::station::Station;
use crate::turn::TurnLimits;
use crate::value::{
    AltimeterSetting, ConeHalfAngle, InterceptAngle, IsaDeviation, PressureAltitude, TrueAirspeed, TrueNorth,
};
use crate::wind::Wind;

/// A station on a route.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RouteFix {
    /// The station.
    pub station: Station,
    /// Half-angle of its cone of confusion.
    pub cone_half_angle: ConeHalfAngle,
    /// Which way to turn there.
    pub turn: TurnSide,
    /// The wind there and on the leg to it.
    pub wind: Wind<TrueNorth>,
}

/// A route, and the aircraft and the air it is flown with.
#[derive(Debug, Clone, PartialEq)]
pub struct RoutePlan {
    /// True airspeed.
    pub true_airspeed: TrueAirspeed,
    /// Pressure altitude.
    pub pressure_altitude: PressureAltitude,
    /// Altimeter setting, from which the heights above the stations follow.
    pub setting: AltimeterSetting,
    /// Deviation of the temperature from the standard atmosphere.
    pub deviation: IsaDeviation,
    /// Limits of the turns.
    pub limits: TurnLimits,
    /// The angle at which the outbound course would be intercepted after flying over a station; 30 degrees is common practice.
    pub intercept: InterceptAngle,
    /// The stations in their order.
    pub fixes: Vec<RouteFix>,
}

/// Where on a route something stands in the way, counted from zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RoutePlace {
    /// In what holds all the way: the aircraft, the air.
    Plan,
    /// At a station.
    Fix(usize),
    /// On the leg from a station to the next.
    Leg(usize),
}

/// Why a route cannot be briefed: where, and what.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RouteError {
    /// Where.
    pub place: RoutePlace,
    /// What.
    pub error: Error,
}

impl fmt::Display for RouteError {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.place {
            RoutePlace::Plan => self.error.fmt(formatter),
            RoutePlace::Fix(index) => write!(formatter, "route fix {}: {}", index + 1, self.error),
            RoutePlace::Leg(index) => write!(formatter, "route leg {}: {}", index + 1, self.error),
        }
    }
}

impl std::error::Error for RouteError {}
