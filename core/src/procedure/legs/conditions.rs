//! What a sequence of legs is flown with.

use crate::turn::TurnLimits;
use crate::value::units::{Velocity, degrees, feet_per_minute, nautical_miles};
use crate::value::{GroundDistance, InterceptAngle, TrueAirspeed, TrueAltitude, TrueNorth};
use crate::wind::Wind;

/// Speed, wind and limits, the same along the whole path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// True airspeed.
    pub true_airspeed: TrueAirspeed,
    /// Wind, from true north; its direction is kept against each point's own north.
    pub wind: Wind<TrueNorth>,
    /// Limits of the turns.
    pub limits: TurnLimits,
    /// Altitude at the first fix.
    pub altitude: TrueAltitude,
    /// Rate of climb, negative to descend.
    pub climb: Velocity,
    /// The angle at which a course is intercepted from beside it.
    pub intercept: InterceptAngle,
    /// How far a leg is drawn that is ended by hand.
    pub manual_distance: GroundDistance,
}

impl Conditions {
    /// Calm air, level flight, [`TurnLimits::default`], an intercept of 30 degrees, ten miles for what is ended by hand.
    pub fn level(true_airspeed: TrueAirspeed, altitude: TrueAltitude) -> Self {
        Self {
            true_airspeed,
            wind: Wind::calm(),
            limits: TurnLimits::default(),
            altitude,
            climb: feet_per_minute(0.0),
            intercept: InterceptAngle::derived(degrees(30.0)),
            manual_distance: GroundDistance::derived(nautical_miles(10.0)),
        }
    }
}
