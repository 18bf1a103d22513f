//! The height at which the mental arithmetic of a DME reading comes out right.

use super::{LeadComparison, least_dme, third_of_a_mile};
use crate::Error;
use crate::numeric::root_between;
use crate::value::units::{feet, foot};
use crate::value::{DirectionChange, HeightAboveStation, North, TrueAirspeed};

/// The greatest height that is looked at, in feet: the end of the range of [`HeightAboveStation`].
const GREATEST_HEIGHT_FT: f64 = 400_000.0;

impl<N: North> LeadComparison<N> {
    /// The height above the station at which the rule's DME reading is the exact one.
    ///
    /// Below it the turn begins too late, above it too early. With `l` the rule's lead and `L` the exact one it is where `l + h` is `sqrt(L² + h²)`: near
    /// `(L² - l²) / (2 l)`, and somewhat lower since the rule's mile is short. The faster the aircraft, the higher.
    ///
    /// # Accuracy
    /// Rounding: a root in a bracket, of the readings over a curved earth.
    ///
    /// # Degenerate cases
    /// None where the rule is early at every height, as for a slow aircraft with a quick roll, and where it is late up to 400 000 ft.
    ///
    /// # Errors
    /// As [`crate::lead::CourseChange::new`].
    ///
    /// # Source
    /// Derived.
    ///
    /// # Example
    /// ```
    /// use lubberline::rules::{LeadComparison, LeadRule};
    /// use lubberline::turn::TurnLimits;
    /// use lubberline::value::{DirectionChange, TrueAirspeed, TrueBearing, units::*};
    /// use lubberline::wind::Wind;
    /// let comparison = LeadComparison {
    ///     inbound: TrueBearing::new(degrees(40.0))?,
    ///     wind: Wind::calm(),
    ///     limits: TurnLimits::default(),
    ///     rule: LeadRule::Third,
    /// };
    /// let square = DirectionChange::new(degrees(90.0))?;
    /// let height = |speed| comparison.holds_at(TrueAirspeed::new(knots(speed))?, square);
    /// assert_eq!(height(350.0)?.map(|it| it.value().get::<foot>().round()), Some(19_490.0));
    /// assert_eq!(height(120.0)?.map(|it| it.value().get::<foot>().round()), Some(201.0));
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn holds_at(
        &self,
        true_airspeed: TrueAirspeed,
        change: DirectionChange,
    ) -> Result<Option<HeightAboveStation>, Error> {
        let exact = self.turn(true_airspeed, change, &self.limits)?;
        let third = third_of_a_mile(exact.before().groundspeed, change);
        let early_ft = |height_ft: f64| {
            let height = HeightAboveStation::derived(feet(height_ft));
            let by_rule = third + self.rule.allowance(height) + least_dme(height);
            (by_rule - exact.reading_at_roll_in(height).value()).get::<foot>()
        };
        let late_then_early = early_ft(0.0) < 0.0 && early_ft(GREATEST_HEIGHT_FT) >= 0.0;
        Ok(late_then_early
            .then(|| HeightAboveStation::derived(feet(root_between(0.0, GREATEST_HEIGHT_FT, early_ft)))))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::LeadRule;
    use crate::turn::TurnLimits;
    use crate::value::units::{knots, metres, nautical_mile};
    use crate::value::{RollRate, TrueBearing};
    use crate::wind::Wind;

    fn comparison(rule: LeadRule) -> LeadComparison<crate::value::TrueNorth> {
        LeadComparison {
            inbound: TrueBearing::from_degrees(0.0),
            wind: Wind::calm(),
            limits: TurnLimits::default(),
            rule,
        }
    }

    #[test]
    fn there_the_reading_is_exact_below_late_and_above_early() {
        for &rule in LeadRule::ALL {
            for (airspeed_kt, change_deg) in [(250.0, 90.0), (350.0, 60.0), (450.0, 120.0), (480.0, -90.0)] {
                let airspeed = TrueAirspeed::new(knots(airspeed_kt)).unwrap();
                let change = DirectionChange::from_degrees(change_deg);
                let Some(height) = comparison(rule).holds_at(airspeed, change).unwrap() else { continue };
                let error = |share: f64| {
                    let height = HeightAboveStation::derived(height.value() * share);
                    comparison(rule).error(airspeed, height, change).unwrap().reading_error()
                };
                assert!(error(1.0).abs() < metres(0.1), "{rule:?} {airspeed_kt}: {:?}", error(1.0));
                assert!(error(0.5) < metres(0.0) && error(1.5) > metres(0.0));
            }
        }
    }

    /// Over a flat earth, with a mile of 6 076 ft and an instant roll: `(L² - l²) / (2 l)`.
    #[test]
    fn it_is_nearly_the_closed_form() {
        let airspeed = TrueAirspeed::new(knots(350.0)).unwrap();
        let change = DirectionChange::from_degrees(90.0);
        let error = comparison(LeadRule::Third)
            .error(airspeed, HeightAboveStation::derived(metres(0.0)), change)
            .unwrap();
        let (rule_nm, exact_nm) =
            (error.rule_lead.get::<nautical_mile>(), error.exact_lead.get::<nautical_mile>());
        let flat_nm = (exact_nm * exact_nm - rule_nm * rule_nm) / (2.0 * rule_nm);
        let found = comparison(LeadRule::Third).holds_at(airspeed, change).unwrap().unwrap();
        assert!((found.value().get::<nautical_mile>() / flat_nm - 1.0).abs() < 0.04, "{found:?} {flat_nm}");
    }

    #[test]
    fn a_slow_aircraft_that_rolls_at_once_is_early_at_every_height() {
        let airspeed = TrueAirspeed::new(knots(120.0)).unwrap();
        let mut comparison = comparison(LeadRule::Third);
        comparison.limits.roll = RollRate::instant();
        for change_deg in [30.0, 60.0, 90.0, 0.0] {
            let found = comparison.holds_at(airspeed, DirectionChange::from_degrees(change_deg));
            assert_eq!(found.unwrap(), None, "{change_deg}");
        }
    }
}
