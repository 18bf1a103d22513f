//! The rules of the holding pattern set beside the pattern that closes, term by term.

use super::{DriftRule, RuleError, next_outbound_time, outbound_heading, outbound_time_by_headwind};
use crate::procedure::HoldingPattern;
use crate::value::units::{Angle, Time, meter_per_second, metres_per_second};
use crate::value::{DirectionChange, HoldTime, North, WindComponent};

/// The correction that [`outbound_heading`] makes beside that of the pattern which closes, right positive. The term: a fixed multiple for what the wind does in the two turns.
/// Once the inbound correction, the other way, is what the leg itself takes, and is exact.
///
/// # Example
/// ```
/// use lubberline::procedure::{HoldingPattern, HoldingSide, TimedLeg};
/// use lubberline::rules::{DriftRule, outbound_correction_error};
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{HoldTime, TrueAirspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::Wind;
/// let wind = Wind { from: TrueBearing::new(degrees(130.0))?, speed: WindSpeed::new(knots(20.0))? };
/// let pattern = HoldingPattern::new(
///     TrueBearing::new(degrees(40.0))?,
///     HoldingSide::Right,
///     TimedLeg::Inbound,
///     HoldTime::new(seconds(60.0))?,
///     TrueAirspeed::new(knots(150.0))?,
///     wind,
///     &TurnLimits::default(),
/// )?;
/// // Three times the inbound correction is nearly right for a minute inbound.
/// let beside = outbound_correction_error(&pattern, DriftRule::Triple);
/// assert!(beside.error().abs() < degrees(5.0));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn outbound_correction_error<N: North>(
    pattern: &HoldingPattern<N>,
    rule: DriftRule,
) -> RuleError<Angle, 1> {
    let inbound_correction =
        DirectionChange::from_degrees(pattern.inbound().wind_correction.value.to_degrees());
    let by_rule = pattern
        .course()
        .reciprocal()
        .change_to(outbound_heading(pattern.course(), inbound_correction, rule))
        .angle();
    let exact = pattern.outbound_correction().angle();
    RuleError { rule: by_rule, exact, terms: [by_rule - exact] }
}

/// [`outbound_time_by_headwind`] beside the time on the outbound clock of the pattern that closes with the same time inbound. The terms: a second for each knot, where the
/// legs go as their groundspeeds; and what the wind does in the turns.
///
/// # Example
/// ```
/// use lubberline::procedure::{HoldingPattern, HoldingSide, TimedLeg};
/// use lubberline::rules::outbound_time_by_headwind_error;
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{HoldTime, TrueAirspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::Wind;
/// let wind = Wind { from: TrueBearing::new(degrees(130.0))?, speed: WindSpeed::new(knots(20.0))? };
/// let pattern = HoldingPattern::new(
///     TrueBearing::new(degrees(40.0))?,
///     HoldingSide::Right,
///     TimedLeg::Inbound,
///     HoldTime::new(seconds(60.0))?,
///     TrueAirspeed::new(knots(150.0))?,
///     wind,
///     &TurnLimits::default(),
/// )?;
/// let beside = outbound_time_by_headwind_error(&pattern);
/// assert!((beside.error() - beside.terms[0] - beside.terms[1]).abs() < seconds(1e-9));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn outbound_time_by_headwind_error<N: North>(pattern: &HoldingPattern<N>) -> RuleError<Time, 2> {
    let inbound = pattern.inbound_time();
    let headwind = WindComponent::derived(metres_per_second(pattern.tailwind_inbound_m_s()));
    let rule = outbound_time_by_headwind(HoldTime::derived(inbound), headwind);
    let by_legs = inbound * groundspeeds(pattern);
    let exact = pattern.outbound_clock();
    RuleError { rule, exact, terms: [rule - by_legs, by_legs - exact] }
}

/// [`next_outbound_time`] after a round that is flown, beside the time on the outbound clock of the pattern that is wanted. The terms: both legs at one groundspeed; and the
/// outbound heading, which has to change with the time.
///
/// # Example
/// ```
/// use lubberline::procedure::{HoldingPattern, HoldingSide, TimedLeg};
/// use lubberline::rules::next_outbound_time_error;
/// use lubberline::turn::TurnLimits;
/// use lubberline::value::{HoldTime, TrueAirspeed, TrueBearing, WindSpeed, units::*};
/// use lubberline::wind::Wind;
/// let wind = Wind { from: TrueBearing::new(degrees(130.0))?, speed: WindSpeed::new(knots(20.0))? };
/// let short = HoldingPattern::new(
///     TrueBearing::new(degrees(40.0))?,
///     HoldingSide::Right,
///     TimedLeg::Inbound,
///     HoldTime::new(seconds(50.0))?,
///     TrueAirspeed::new(knots(150.0))?,
///     wind,
///     &TurnLimits::default(),
/// )?;
/// let wanted = HoldingPattern::new(
///     TrueBearing::new(degrees(40.0))?,
///     HoldingSide::Right,
///     TimedLeg::Inbound,
///     HoldTime::new(seconds(60.0))?,
///     TrueAirspeed::new(knots(150.0))?,
///     wind,
///     &TurnLimits::default(),
/// )?;
/// let beside = next_outbound_time_error(&short, &wanted);
/// assert!((beside.error() - beside.terms[0] - beside.terms[1]).abs() < seconds(1e-9));
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn next_outbound_time_error<N: North>(
    flown: &HoldingPattern<N>,
    wanted: &HoldingPattern<N>,
) -> RuleError<Time, 2> {
    let (outbound, inbound) = (flown.outbound_clock(), flown.inbound_time());
    let rule = next_outbound_time(
        HoldTime::derived(outbound),
        HoldTime::derived(inbound),
        HoldTime::derived(wanted.inbound_time()),
    );
    let by_legs = outbound + (wanted.inbound_time() - inbound) * groundspeeds(flown);
    let exact = wanted.outbound_clock();
    RuleError { rule, exact, terms: [rule - by_legs, by_legs - exact] }
}

/// Groundspeed inbound over that outbound.
fn groundspeeds<N: North>(pattern: &HoldingPattern<N>) -> f64 {
    let inbound_m_s = pattern.inbound().groundspeed.value().get::<meter_per_second>();
    inbound_m_s / pattern.outbound_over_ground().1.value().get::<meter_per_second>()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::procedure::{HoldingSide, TimedLeg};
    use crate::turn::TurnLimits;
    use crate::value::units::{degree, knots, second, seconds};
    use crate::value::{TrueAirspeed, TrueBearing, TrueNorth, WindSpeed};
    use crate::wind::Wind;

    fn pattern(timed: TimedLeg, time_s: f64, from_deg: f64, wind_kt: f64) -> HoldingPattern<TrueNorth> {
        HoldingPattern::new(
            TrueBearing::from_degrees(270.0),
            HoldingSide::Right,
            timed,
            HoldTime::new(seconds(time_s)).unwrap(),
            TrueAirspeed::new(knots(150.0)).unwrap(),
            Wind {
                from: TrueBearing::from_degrees(from_deg),
                speed: WindSpeed::new(knots(wind_kt)).unwrap(),
            },
            &TurnLimits::default(),
        )
        .unwrap()
    }

    #[test]
    fn in_calm_air_every_rule_is_exact() {
        let calm = pattern(TimedLeg::Inbound, 60.0, 0.0, 0.0);
        for &rule in DriftRule::ALL {
            assert!(outbound_correction_error(&calm, rule).error().get::<degree>().abs() < 1e-9);
        }
        let by_headwind = outbound_time_by_headwind_error(&calm);
        assert!(by_headwind.error().get::<second>().abs() < 1e-6, "{by_headwind:?}");
        let short = pattern(TimedLeg::Outbound, 50.0, 0.0, 0.0);
        assert!(next_outbound_time_error(&short, &calm).error().get::<second>().abs() < 1e-6);
    }

    /// The drift factor of this pattern is 2.80 (the example of [`HoldingPattern`]); the inbound correction is 7.66 degrees.
    #[test]
    fn in_a_crosswind_the_multiple_is_between_two_and_three() {
        let crosswind = pattern(TimedLeg::Inbound, 60.0, 0.0, 20.0);
        let twice = outbound_correction_error(&crosswind, DriftRule::Double);
        let thrice = outbound_correction_error(&crosswind, DriftRule::Triple);
        assert!((twice.error().get::<degree>() - 0.80 * 7.66).abs() < 0.05, "{twice:?}");
        assert!((thrice.error().get::<degree>() + 0.20 * 7.66).abs() < 0.05, "{thrice:?}");
    }

    #[test]
    fn the_terms_sum_to_the_whole() {
        for (from_deg, wind_kt) in [(270.0, 30.0), (90.0, 30.0), (0.0, 25.0), (215.0, 40.0)] {
            let wanted = pattern(TimedLeg::Inbound, 60.0, from_deg, wind_kt);
            let by_headwind = outbound_time_by_headwind_error(&wanted);
            let first = pattern(TimedLeg::Outbound, 75.0, from_deg, wind_kt);
            for error in [by_headwind, next_outbound_time_error(&first, &wanted)] {
                let left = error.terms[0] + error.terms[1] - error.error();
                assert!(left.get::<second>().abs() < 1e-9, "{from_deg}: {error:?}");
            }
        }
    }

    /// A headwind inbound is a tailwind outbound: the clock must run shorter, and the rule says so.
    #[test]
    fn the_side_of_the_wind() {
        let against = outbound_time_by_headwind_error(&pattern(TimedLeg::Inbound, 60.0, 270.0, 20.0));
        assert!((against.rule.get::<second>() - 40.0).abs() < 1e-9 && against.exact < seconds(60.0));
        let with = outbound_time_by_headwind_error(&pattern(TimedLeg::Inbound, 60.0, 90.0, 20.0));
        assert!((with.rule.get::<second>() - 80.0).abs() < 1e-9 && with.exact > seconds(60.0));
    }
}
