//! How much of a leg a turn takes in procedure design: the minimum stabilization distance, without wind.

use super::legs::Passage;
use crate::Error;
use crate::lead::turn_anticipation;
use crate::turn::{TurnLimits, radius};
use crate::value::units::{Length, radian, seconds};
use crate::value::{ArcRadius, Bank, DirectionChange, RollRate, TrueAirspeed, TurnRate};

/// Time for the bank to be established in a fly-by turn, and in the two turns after a fly-over, in seconds.
///
/// Source: as [`stabilization_distance`] (from memory).
const FLY_BY_S: f64 = 5.0;
const FLY_OVER_S: f64 = 10.0;

/// The angle at which the leg is intercepted after flying over, in radians: 30 degrees.
const INTERCEPT_RAD: f64 = std::f64::consts::FRAC_PI_6;

/// What a turn at a waypoint takes of a leg in procedure design: the minimum stabilization distance.
///
/// Flown by, on either side of the waypoint: `r tan(A/2) + 5 V / 3600`. Flown over, after the waypoint, with an intercept at 30
/// degrees: `r1 sin A + r1 cos A tan 30° + r1 (1 / sin 30° - 2 cos A / sin 60°) + r2 tan 15° + 10 V / 3600`. The radius `r1` is that of
/// the bank or of 3 degrees per second, the larger; `r2` that of the bank of the turn onto the leg. The least length of a leg
/// is the sum of the distances of its two waypoints, of which one that is flown over at the leg's end takes nothing.
///
/// # Accuracy
/// As published. Set beside the geometry it stands for, the sum of the second and third term is exact for an intercept at 30
/// degrees and no other. Wind and roll are left out; [`super::SuccessiveTurns`] has both.
///
/// # Degenerate cases
/// Flown over with a change below 30 degrees, there is no room for the intercept, and the sum no longer has a meaning: it does not
/// vanish without a change.
///
/// # Errors
/// [`Error::LeadTooLong`] for a reversal that is flown by, [`Error::OutOfRange`] of a radius beyond 1 000 NM.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 2 Chapter 1: the sequences and the choice of bank (25 degrees or 3 degrees per
/// second on approach, 15 in a missed approach, 15 to 25 on departure) as read; the formulas, and 15 degrees for the turn onto the
/// leg, from memory.
///
/// # Example
/// ```
/// use lubberline::procedure::{Passage, stabilization_distance};
/// use lubberline::value::{Bank, DirectionChange, TrueAirspeed, TurnRate, units::*};
/// let (bank, rate) = (Bank::new(degrees(25.0))?, TurnRate::new(degrees_per_second(3.0))?);
/// assert_eq!(format!("{:.1}", stabilization_distance(Passage::FlyBy, DirectionChange::new(degrees(60.0))?, TrueAirspeed::new(knots(220.0))?, bank, rate, Bank::new(degrees(15.0))?)?.get::<nautical_mile>()), "1.2");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn stabilization_distance(
    passage: Passage,
    change: DirectionChange,
    true_airspeed: TrueAirspeed,
    bank: Bank,
    rate: TurnRate,
    bank_onto_leg: Bank,
) -> Result<Length, Error> {
    let limits = TurnLimits { bank, rate, roll: RollRate::instant() };
    let (governing, _) = limits.governing_bank(true_airspeed);
    let first = ArcRadius::new(radius(true_airspeed, governing))?;
    match passage {
        Passage::FlyBy => Ok(turn_anticipation(first, change)? + true_airspeed.value() * seconds(FLY_BY_S)),
        Passage::FlyOver => {
            let second = ArcRadius::new(radius(true_airspeed, bank_onto_leg))?;
            let (sine, cosine) = change.angle().get::<radian>().abs().sin_cos();
            let (intercept_sine, intercept_cosine) = INTERCEPT_RAD.sin_cos();
            let of_first =
                sine + cosine * INTERCEPT_RAD.tan() + 1.0 / intercept_sine - 2.0 * cosine / intercept_cosine;
            Ok(first.value() * of_first
                + second.value() * (INTERCEPT_RAD / 2.0).tan()
                + true_airspeed.value() * seconds(FLY_OVER_S))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lead::{CourseChange, TurnSide};
    use crate::value::units::{degrees, degrees_per_second, knots, meter};
    use crate::value::{InterceptAngle, TrueBearing};
    use crate::wind::Wind;

    #[test]
    fn without_its_time_it_is_the_geometry_of_calm_air() {
        let airspeed = TrueAirspeed::new(knots(300.0)).unwrap();
        let bank = Bank::new(degrees(20.0)).unwrap();
        let rate = TurnRate::new(degrees_per_second(3.0)).unwrap();
        let limits = TurnLimits { bank, rate, roll: RollRate::instant() };
        let timed_m = |time_s: f64| (airspeed.value() * seconds(time_s)).get::<meter>();
        for change_deg in [50.0, 90.0, 120.0] {
            let change = CourseChange::new(
                TrueBearing::from_degrees(0.0),
                TrueBearing::from_degrees(change_deg),
                airspeed,
                Wind::calm(),
                &limits,
                TurnSide::Shortest,
            )
            .unwrap();
            let published = |passage| {
                let change = DirectionChange::from_degrees(-change_deg);
                stabilization_distance(passage, change, airspeed, bank, rate, bank).unwrap().get::<meter>()
            };
            let by_m = change.lead().get::<meter>() + timed_m(5.0);
            assert!((published(Passage::FlyBy) - by_m).abs() < 1e-6, "{change_deg}");
            let over = change.fly_over(InterceptAngle::new(degrees(30.0)).unwrap());
            let over_m = over.established_past_fix.get::<meter>() + timed_m(10.0);
            assert!((published(Passage::FlyOver) - over_m).abs() < 1e-6, "{change_deg}");
        }
    }
}
