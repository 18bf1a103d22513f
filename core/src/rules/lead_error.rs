//! How far the mental arithmetic of a lead is from the exact answer, term by term.

use super::{height_allowance, least_dme, margin_for_fast_aircraft, third_of_a_mile};
use crate::Error;
use crate::lead::{CourseChange, TurnSide};
use crate::turn::{STANDARD_RATE_DEG_PER_S, TurnLimits, radius, radius_at_rate};
use crate::value::units::{Length, degree, degrees_per_second, metres, radian};
use crate::value::{
    Bearing, DirectionChange, HeightAboveStation, North, RollRate, TrueAirspeed, TurnRate, choice,
};
use crate::wind::Wind;

choice! {
    /// Which mental arithmetic gives the lead.
    LeadRule {
        /// A third of a mile for each 60 kt and 90 degrees: [`third_of_a_mile`].
        Third = 0: "third",
        /// That and half a mile for each 10 000 ft above 5 000 ft: [`height_allowance`].
        ThirdAndAllowance = 1: "third_and_allowance",
        /// A third of a mile and half a mile more, the greater of [`margin_for_fast_aircraft`].
        ThirdAndMargin = 2: "third_and_margin",
    }
}

impl LeadRule {
    /// What it adds to a third of a mile for each 60 kt and 90 degrees.
    pub fn allowance(self, height: HeightAboveStation) -> Length {
        match self {
            Self::Third => metres(0.0),
            Self::ThirdAndAllowance => height_allowance(height),
            Self::ThirdAndMargin => margin_for_fast_aircraft().1,
        }
    }
}

/// The mental arithmetic of a lead set beside the exact answer, term by term.
///
/// Every term is what one simplification adds: positive where it makes the rule begin the turn too early. The rule is turned into the exact
/// answer by taking the simplifications back one after the other, in the order of the fields, so that the terms sum to the whole error
/// ([`Self::lead_error`], [`Self::reading_error`]); another order would share it out a little differently.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeadError {
    /// The lead by the rule.
    pub rule_lead: Length,
    /// The exact lead.
    pub exact_lead: Length,
    /// The DME reading by the rule: its lead and the height in miles, added.
    pub rule_reading: Length,
    /// The exact DME reading.
    pub exact_reading: Length,
    /// The allowance for height or the margin, if the rule makes one: the exact lead has none.
    pub allowance: Length,
    /// The standard-rate radius as speed over 180, where it is speed over 60 π.
    pub round_radius: Length,
    /// The lead in proportion to the change, where it goes with the tangent of half of it.
    pub proportion: Length,
    /// The radius of standard rate, where the bank limit makes it longer.
    pub standard_rate: Length,
    /// The groundspeed as the speed of the turn, where the airspeed is.
    pub groundspeed: Length,
    /// The turn through the change of course, where that of heading has to be turned.
    pub heading_change: Length,
    /// No drift during the turn.
    pub drift: Length,
    /// A roll that takes no time.
    pub roll: Length,
    /// A nautical mile of 6 000 ft in the height.
    pub mile: Length,
    /// Distance and height added, where the slant is the root of their squares.
    pub sum: Length,
}

impl LeadError {
    /// The lead by the rule less the exact one: the sum of the terms from [`Self::allowance`] to [`Self::roll`].
    pub fn lead_error(&self) -> Length {
        self.rule_lead - self.exact_lead
    }

    /// The reading by the rule less the exact one: the sum of all terms.
    pub fn reading_error(&self) -> Length {
        self.rule_reading - self.exact_reading
    }
}

/// What is held fixed while the mental arithmetic is compared: the inbound course, the wind, the limits of the turn, the rule.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeadComparison<N: North> {
    /// The course flown to the station.
    pub inbound: Bearing<N>,
    /// The wind.
    pub wind: Wind<N>,
    /// The limits of the turn that is really flown.
    pub limits: TurnLimits,
    /// Which mental arithmetic.
    pub rule: LeadRule,
}

/// One row of a comparison over a range.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeadErrorRow {
    /// The true airspeed.
    pub true_airspeed: TrueAirspeed,
    /// The height above the station.
    pub height: HeightAboveStation,
    /// The change of course.
    pub change: DirectionChange,
    /// The comparison there, or why there is no exact answer.
    pub error: Result<LeadError, Error>,
}

impl<N: North> LeadComparison<N> {
    /// The mental arithmetic beside the exact answer, for one speed, height and change of course.
    ///
    /// With `c` the change, the lead goes in steps from `gs / 180 · c / 90` by `gs / (60 π) · c / 90`, `gs / (60 π) · tan(c / 2)`, `r(gs) tan(c / 2)` and
    /// `r(V) tan(c / 2)`, with `r` the radius that the limits leave, to the turn through the wind-corrected headings without its drift, with it,
    /// and with the roll. The reading adds the height: `h / 6000 ft`, `h`, and the slant range.
    ///
    /// # Accuracy
    /// The terms sum to the whole to rounding error. In calm air those of the wind are zero to rounding error.
    ///
    /// # Degenerate cases
    /// No change of course has no error of the lead but the allowance. Toward a reversal the proportion stays finite where the exact lead does not.
    ///
    /// # Errors
    /// As [`CourseChange::new`].
    ///
    /// # Source
    /// The rules: common practice. The exact answer: [`CourseChange`]. The terms: derived.
    ///
    /// # Example
    /// ```
    /// use lubberline::rules::{LeadComparison, LeadRule};
    /// use lubberline::turn::TurnLimits;
    /// use lubberline::value::{DirectionChange, HeightAboveStation, TrueAirspeed, TrueBearing, units::*};
    /// use lubberline::wind::Wind;
    /// let comparison = LeadComparison {
    ///     inbound: TrueBearing::new(degrees(40.0))?,
    ///     wind: Wind::calm(),
    ///     limits: TurnLimits::default(),
    ///     rule: LeadRule::Third,
    /// };
    /// let error = comparison.error(
    ///     TrueAirspeed::new(knots(450.0))?,
    ///     HeightAboveStation::new(feet(36_000.0))?,
    ///     DirectionChange::new(degrees(90.0))?,
    /// )?;
    /// let miles = |length: Length| format!("{:.1}", length.get::<nautical_mile>());
    /// // The radius of standard rate makes the lead four miles short, and adding the height covers for most of it.
    /// assert_eq!((miles(error.standard_rate), miles(error.sum)), ("-3.9".into(), "3.7".into()));
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn error(
        &self,
        true_airspeed: TrueAirspeed,
        height: HeightAboveStation,
        change: DirectionChange,
    ) -> Result<LeadError, Error> {
        let exact = self.turn(true_airspeed, change, &self.limits)?;
        let instant = TurnLimits { roll: RollRate::instant(), ..self.limits };
        let at_once = self.turn(true_airspeed, change, &instant)?;
        let groundspeed = exact.before().groundspeed;
        // The rule turns at the groundspeed, as if it were the airspeed.
        let rule_speed = TrueAirspeed::derived(groundspeed.value());
        let half_tangent = (change.angle().get::<radian>().abs() / 2.0).tan();
        let parts_of_90 = change.angle().get::<degree>().abs() / 90.0;
        let flown_radius = |speed| radius(speed, self.limits.governing_bank(speed).0);
        let standard_radius =
            radius_at_rate(rule_speed, TurnRate::derived(degrees_per_second(STANDARD_RATE_DEG_PER_S)));

        let by_third = third_of_a_mile(groundspeed, change);
        let allowance = self.rule.allowance(height);
        let by_radius = standard_radius * parts_of_90;
        let by_tangent = standard_radius * half_tangent;
        let by_groundspeed = flown_radius(rule_speed) * half_tangent;
        let by_airspeed = flown_radius(true_airspeed) * half_tangent;
        let with_headings = at_once.lead_without_drift();

        let above = height.value().abs();
        let slant = exact.reading_at_roll_in(height).value();
        let rule_height = least_dme(height);
        Ok(LeadError {
            rule_lead: by_third + allowance,
            exact_lead: exact.lead(),
            rule_reading: by_third + allowance + rule_height,
            exact_reading: slant,
            allowance,
            round_radius: by_third - by_radius,
            proportion: by_radius - by_tangent,
            standard_rate: by_tangent - by_groundspeed,
            groundspeed: by_groundspeed - by_airspeed,
            heading_change: by_airspeed - with_headings,
            drift: with_headings - at_once.lead(),
            roll: at_once.lead() - exact.lead(),
            mile: rule_height - above,
            sum: exact.lead() + above - slant,
        })
    }

    /// The exact turn, within some limits.
    pub(super) fn turn(
        &self,
        true_airspeed: TrueAirspeed,
        change: DirectionChange,
        limits: &TurnLimits,
    ) -> Result<CourseChange<N>, Error> {
        let outbound = self.inbound.turned_by(change);
        CourseChange::new(self.inbound, outbound, true_airspeed, self.wind, limits, TurnSide::Shortest)
    }

    /// The comparison over a range: a row for each speed, at each height, for each change of course, in this order.
    ///
    /// # Example
    /// ```
    /// use lubberline::rules::{LeadComparison, LeadRule};
    /// use lubberline::turn::TurnLimits;
    /// use lubberline::value::{DirectionChange, HeightAboveStation, TrueAirspeed, TrueBearing, units::*};
    /// use lubberline::wind::Wind;
    /// let comparison = LeadComparison {
    ///     inbound: TrueBearing::new(degrees(0.0))?,
    ///     wind: Wind::calm(),
    ///     limits: TurnLimits::default(),
    ///     rule: LeadRule::Third,
    /// };
    /// let speeds = [TrueAirspeed::new(knots(120.0))?, TrueAirspeed::new(knots(450.0))?];
    /// let heights = [HeightAboveStation::new(feet(5_000.0))?];
    /// let changes = [DirectionChange::new(degrees(90.0))?, DirectionChange::new(degrees(180.0))?];
    /// let rows: Vec<_> = comparison.over(&speeds, &heights, &changes).collect();
    /// assert_eq!(rows.len(), 4);
    /// assert!(rows.iter().filter(|row| row.error.is_err()).count() == 2, "reversals");
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn over<'a>(
        &'a self,
        speeds: &'a [TrueAirspeed],
        heights: &'a [HeightAboveStation],
        changes: &'a [DirectionChange],
    ) -> impl Iterator<Item = LeadErrorRow> + 'a {
        speeds.iter().flat_map(move |&true_airspeed| {
            heights.iter().flat_map(move |&height| {
                changes.iter().map(move |&change| {
                    let error = self.error(true_airspeed, height, change);
                    LeadErrorRow { true_airspeed, height, change, error }
                })
            })
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{degrees, feet, knots, nautical_mile};
    use crate::value::{TrueBearing, TrueNorth, WindSpeed};

    fn comparison(wind_from_deg: f64, wind_kt: f64, rule: LeadRule) -> LeadComparison<TrueNorth> {
        let from = TrueBearing::from_degrees(wind_from_deg);
        let wind = Wind { from, speed: WindSpeed::new(knots(wind_kt)).unwrap() };
        LeadComparison { inbound: TrueBearing::from_degrees(33.0), wind, limits: TurnLimits::default(), rule }
    }

    fn grid() -> (Vec<TrueAirspeed>, Vec<HeightAboveStation>, Vec<DirectionChange>) {
        let speeds = [90.0, 165.0, 250.0, 480.0].map(|value| TrueAirspeed::new(knots(value)).unwrap());
        let heights =
            [-200.0, 0.0, 3000.0, 37_000.0].map(|value| HeightAboveStation::new(feet(value)).unwrap());
        let changes = [0.0, 2.0, -30.0, 60.0, -90.0, 120.0, 170.0].map(DirectionChange::from_degrees);
        (speeds.to_vec(), heights.to_vec(), changes.to_vec())
    }

    #[test]
    fn the_terms_sum_to_the_whole() {
        let (speeds, heights, changes) = grid();
        let mut compared = 0;
        for comparison in [
            comparison(0.0, 0.0, LeadRule::Third),
            comparison(250.0, 60.0, LeadRule::ThirdAndAllowance),
            comparison(33.0, 80.0, LeadRule::Third),
            comparison(190.0, 85.0, LeadRule::ThirdAndMargin),
        ] {
            for row in comparison.over(&speeds, &heights, &changes) {
                let Ok(error) = row.error else { continue };
                compared += 1;
                let of_lead = error.allowance
                    + error.round_radius
                    + error.proportion
                    + error.standard_rate
                    + error.groundspeed
                    + error.heading_change
                    + error.drift
                    + error.roll;
                let of_reading = of_lead + error.mile + error.sum;
                let largest = error.rule_reading + error.exact_lead.abs() + metres(1.0);
                assert!((of_lead - error.lead_error()).abs() < 1e-12 * largest, "{row:?}");
                assert!((of_reading - error.reading_error()).abs() < 1e-12 * largest, "{row:?}");
            }
        }
        assert!(compared > 400, "{compared}");
    }

    #[test]
    fn in_calm_air_the_wind_has_no_terms() {
        let (speeds, heights, changes) = grid();
        for row in comparison(0.0, 0.0, LeadRule::Third).over(&speeds, &heights, &changes) {
            let error = row.error.unwrap();
            for term in [error.groundspeed, error.heading_change, error.drift, error.allowance] {
                assert!(term.abs() < 1e-9 * error.exact_lead.abs() + metres(1e-9), "{row:?}");
            }
            let slow = row.true_airspeed.value() < knots(169.0);
            assert_eq!(
                error.standard_rate.abs() < metres(1e-6),
                slow || row.change.degrees() == 0.0,
                "{row:?}"
            );
        }
    }

    /// 450 kt in calm air, 90 degrees: standard rate is 2.39 NM of radius, 25 degrees of bank 6.33.
    #[test]
    fn the_terms_are_the_differences_of_known_radii() {
        let error = comparison(0.0, 0.0, LeadRule::Third)
            .error(
                TrueAirspeed::new(knots(450.0)).unwrap(),
                HeightAboveStation::new(feet(0.0)).unwrap(),
                DirectionChange::from_degrees(90.0),
            )
            .unwrap();
        let close = |term: Length, miles: f64| (term.get::<nautical_mile>() - miles).abs() < 5e-3;
        assert!(close(error.round_radius, 2.5 - 450.0 / (60.0 * std::f64::consts::PI)));
        assert!(close(
            error.standard_rate,
            2.387 - 450.0_f64.powi(2) / (68_625.37 * degrees(25.0).tan().value)
        ));
        assert!(close(error.proportion, 0.0) && close(error.mile, 0.0) && close(error.sum, 0.0));
    }

    #[test]
    fn a_head_wind_makes_the_groundspeed_too_slow_for_the_turn() {
        let at = |from| {
            comparison(from, 60.0, LeadRule::Third)
                .error(
                    TrueAirspeed::new(knots(250.0)).unwrap(),
                    HeightAboveStation::new(feet(0.0)).unwrap(),
                    DirectionChange::from_degrees(60.0),
                )
                .unwrap()
        };
        assert!(at(33.0).groundspeed < metres(0.0) && at(213.0).groundspeed > metres(0.0));
    }
}
