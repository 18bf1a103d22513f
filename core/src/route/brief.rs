//! The brief of a route.

use super::leg::Line;
use super::{RouteError, RouteLeg, RoutePlace, RoutePlan, RouteTurn};
use crate::Error;
use crate::lead::CourseChange;
use crate::value::TrueNorth;
use crate::value::units::{Length, Time, metres, seconds};

/// What a route comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct RouteBrief {
    /// Its legs, one fewer than its stations.
    pub legs: Vec<RouteLeg>,
    /// The turns at its stations, without the first and the last.
    pub turns: Vec<RouteTurn>,
}

impl RouteBrief {
    /// Briefs a route: each leg less what the turns at its ends take, each turn with its reading, its time and its alternatives.
    ///
    /// # Accuracy
    /// That of [`CourseChange`] for the turns; leg times with the groundspeed half-way.
    ///
    /// # Degenerate cases
    /// Fewer than two stations have no leg. A leg too short for the turns at its ends is briefed all the same, with what is lacking.
    ///
    /// # Errors
    /// [`RouteError`] says where, and what: two stations at one place, a wind that a course cannot be held in, a reversal,
    /// a turn below the station.
    ///
    /// # Example
    /// ```
    /// use lubberline::route::{RouteBrief, RouteFix, RoutePlan};
    /// use lubberline::station::{Ident, Station, VOR_CONE_HALF_ANGLE_DEG};
    /// use lubberline::lead::TurnSide;
    /// use lubberline::turn::TurnLimits;
    /// use lubberline::value::{*, units::*};
    /// use lubberline::wind::Wind;
    /// let fix = |latitude, longitude| -> Result<RouteFix, lubberline::Error> {
    ///     Ok(RouteFix {
    ///         station: Station {
    ///             position: Position::new(Latitude::new(degrees(latitude))?, Longitude::new(degrees(longitude))?),
    ///             elevation: Elevation::new(feet(300.0))?,
    ///             declination: Declination::new(degrees(-6.0))?,
    ///             ident: Ident::NONE,
    ///         },
    ///         cone_half_angle: ConeHalfAngle::new(degrees(VOR_CONE_HALF_ANGLE_DEG))?,
    ///         turn: TurnSide::Shortest,
    ///         wind: Wind { from: TrueBearing::new(degrees(250.0))?, speed: WindSpeed::new(knots(60.0))? },
    ///     })
    /// };
    /// let brief = RouteBrief::of(&RoutePlan {
    ///     true_airspeed: TrueAirspeed::new(knots(440.0))?,
    ///     pressure_altitude: PressureAltitude::new(feet(35_000.0))?,
    ///     setting: AltimeterSetting::new(hectopascals(1004.0))?,
    ///     deviation: IsaDeviation::new(kelvins(7.0))?,
    ///     limits: TurnLimits::default(),
    ///     intercept: InterceptAngle::new(degrees(30.0))?,
    ///     fixes: vec![fix(61.82, -14.4)?, fix(61.25, -11.5)?, fix(59.93, -10.9)?],
    /// })?;
    /// assert_eq!((brief.legs.len(), brief.turns.len()), (2, 1));
    /// assert!(brief.turns[0].begin_reading().value() > nautical_miles(6.0));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn of(plan: &RoutePlan) -> Result<Self, RouteError> {
        let pairs = || plan.fixes.iter().zip(plan.fixes.iter().skip(1));
        let on_leg = |index| move |error: Error| RouteError { place: RoutePlace::Leg(index), error };
        let mut lines = Vec::new();
        for (index, (from, to)) in pairs().enumerate() {
            lines.push(Line::between(from, to).map_err(on_leg(index))?);
        }

        let mut changes: Vec<CourseChange<TrueNorth>> = Vec::new();
        let inner = plan.fixes.iter().enumerate().skip(1);
        for ((index, fix), (inbound, outbound)) in inner.zip(lines.iter().zip(lines.iter().skip(1))) {
            let change = CourseChange::new(
                inbound.last,
                outbound.initial,
                plan.true_airspeed,
                fix.wind,
                &plan.limits,
                fix.turn,
            );
            changes.push(change.map_err(|error| RouteError { place: RoutePlace::Fix(index), error })?);
        }

        let mut legs = Vec::new();
        for (index, ((from, to), line)) in pairs().zip(&lines).enumerate() {
            let behind = index.checked_sub(1).and_then(|before| changes.get(before));
            let behind = behind.map_or(metres(0.0), CourseChange::past_fix_at_roll_out);
            let ahead = changes.get(index).map_or(metres(0.0), CourseChange::lead);
            legs.push(RouteLeg::of(plan, from, to, line, behind + ahead).map_err(on_leg(index))?);
        }

        let mut turns: Vec<RouteTurn> = Vec::new();
        let inner = plan.fixes.iter().enumerate().skip(1);
        for ((change, (index, fix)), leg) in changes.iter().zip(inner).zip(&legs) {
            let last_roll_out = turns.last().map_or(seconds(0.0), RouteTurn::roll_out_time);
            let turn = RouteTurn::of(plan, fix, *change, leg.straight_time, last_roll_out);
            turns.push(turn.map_err(|error| RouteError { place: RoutePlace::Fix(index), error })?);
        }
        Ok(Self { legs, turns })
    }

    /// How many legs, from the first on, are flown before one that is too short for the turns at its ends: from that one on, times run backwards.
    pub fn timed_legs(&self) -> usize {
        self.legs.iter().take_while(|leg| leg.is_long_enough()).count()
    }

    /// Distance over the ground, with the turns.
    pub fn distance(&self) -> Length {
        let straight = self.legs.iter().map(|leg| leg.straight);
        straight
            .chain(self.turns.iter().map(|turn| turn.change.turn_length()))
            .fold(metres(0.0), |sum, part| sum + part)
    }

    /// Time from the first station to the last, with the turns.
    pub fn time(&self) -> Time {
        let straight = self.legs.iter().map(|leg| leg.straight_time);
        straight
            .chain(self.turns.iter().map(|turn| turn.change.turn().duration()))
            .fold(seconds(0.0), |sum, part| sum + part)
    }
}
