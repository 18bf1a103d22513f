//! The turn at a station of a route: when, where, and what other ways would do.

use super::{RouteFix, RoutePlan};
use crate::Error;
use crate::air::height_above_station;
use crate::earth::slant_range;
use crate::flight::{ErrorModel, Sureness, sureness};
use crate::lead::{CourseChange, FlyOver};
use crate::rules;
use crate::station::cone_radius;
use crate::value::units::{Length, Ratio, Time, foot, metres, nautical_miles, ratio};
use crate::value::{DirectionChange, GroundDistance, HeightAboveStation, Radial, SlantRange, TrueNorth};

/// A turn at a station.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RouteTurn {
    /// The turn itself: courses, headings, bank, lead.
    pub change: CourseChange<TrueNorth>,
    /// Height above the station.
    pub height: HeightAboveStation,
    /// The radial it is reached on.
    pub inbound_radial: Radial,
    /// The radial it is left on.
    pub outbound_radial: Radial,
    /// The radial on which the turn begins.
    pub begin_radial: Radial,
    /// The radial on which the wings are level again.
    pub roll_out_radial: Radial,
    /// From the last roll-out, or the start, to where the turn begins.
    pub straight_time: Time,
    /// From the start of the route to where the turn begins.
    pub begin_time: Time,
    /// Least distance from the station.
    pub closest_approach: GroundDistance,
    /// Radius of its cone of confusion at the height.
    pub cone_radius: GroundDistance,
    /// What flying over the station first would cost.
    pub fly_over: FlyOver,
}

/// The common mental arithmetic for a turn: see [`crate::rules`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RuleOfThumb {
    /// A third of a mile for each 60 kt, for 90 degrees.
    pub lead: Length,
    /// The same with half a mile for each 10 000 ft above 5 000 ft.
    pub lead_with_height: Length,
    /// The lead added to the height in miles: the reading.
    pub reading: Length,
}

impl RouteTurn {
    pub(super) fn of(
        plan: &RoutePlan,
        fix: &RouteFix,
        change: CourseChange<TrueNorth>,
        straight_time: Time,
        last_roll_out: Time,
    ) -> Result<Self, Error> {
        let height =
            height_above_station(plan.pressure_altitude, plan.setting, fix.station.elevation, plan.deviation);
        let height_ft = height.value().get::<foot>();
        if height_ft < 0.0 {
            return Err(Error::BelowStation { below_ft: -height_ft });
        }
        Ok(Self {
            change,
            height,
            inbound_radial: change.inbound().reciprocal().to_radial(&fix.station),
            outbound_radial: change.outbound().to_radial(&fix.station),
            begin_radial: change.bearing_at_roll_in().to_radial(&fix.station),
            roll_out_radial: change.bearing_at_roll_out().to_radial(&fix.station),
            straight_time,
            begin_time: last_roll_out + straight_time,
            closest_approach: change.closest_approach(),
            cone_radius: cone_radius(height, fix.cone_half_angle),
            fly_over: change.fly_over(plan.intercept),
        })
    }

    /// From the start of the route to where the wings are level again.
    pub fn roll_out_time(&self) -> Time {
        self.begin_time + self.change.turn().duration()
    }

    /// The DME reading at which to begin the turn.
    pub fn begin_reading(&self) -> SlantRange {
        self.change.reading_at_roll_in(self.height)
    }

    /// The DME reading where the wings are level again.
    pub fn roll_out_reading(&self) -> SlantRange {
        self.change.reading_at_roll_out(self.height)
    }

    /// The DME reading at the edge of the cone of confusion.
    pub fn cone_edge_reading(&self) -> SlantRange {
        slant_range(self.cone_radius, self.height)
    }

    /// Whether the turn begins inside the cone of confusion.
    pub fn begins_in_cone(&self) -> bool {
        self.change.lead().abs() < self.cone_radius.value()
    }

    /// Whether the aircraft enters it at all.
    pub fn enters_cone(&self) -> bool {
        self.closest_approach < self.cone_radius
    }

    /// How far the aircraft moves along the ground for a change of the reading where the turn begins: much, close to overhead,
    /// where the reading hardly changes. Taken over a hundredth of a mile; infinite overhead.
    pub fn ground_per_reading(&self) -> Ratio {
        let step = nautical_miles(0.005);
        let here = self.change.lead().abs();
        let reading = |ground: Length| {
            slant_range(GroundDistance::derived(ground.max(metres(0.0))), self.height).value()
        };
        let (nearer, farther) = ((here - step).max(metres(0.0)), here + step);
        Ratio::new::<ratio>(((farther - nearer) / (reading(farther) - reading(nearer))).value)
    }

    /// What errors make of it: see [`sureness`].
    ///
    /// # Errors
    /// As [`sureness`].
    pub fn sureness(
        &self,
        errors: &ErrorModel,
        limit: Length,
        confidence: f64,
        trials: u64,
        seed: u64,
    ) -> Result<Sureness, Error> {
        sureness(&self.change, self.height, errors, limit, confidence, trials, seed)
    }

    /// The reading at which to begin with so much more lead; none if that lies past the fix.
    pub fn reading_with_margin(&self, margin: Length) -> Option<SlantRange> {
        self.change.reading_with_margin(margin, self.height)
    }

    /// What the common mental arithmetic gives for it.
    pub fn by_rule(&self) -> RuleOfThumb {
        let groundspeed = self.change.before().groundspeed;
        let amount: DirectionChange = self.change.inbound().change_to(self.change.outbound());
        RuleOfThumb {
            lead: rules::third_of_a_mile(groundspeed, amount),
            lead_with_height: rules::rule_lead(groundspeed, amount, self.height),
            reading: rules::reading(groundspeed, amount, self.height),
        }
    }
}
