//! Plain functions of two turns one after the other, and of the room that procedure design gives a turn.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::procedure::{self, Passage};
use crate::value::units::{Length, degree, degrees, knot, nautical_mile, second};
use crate::value::{
    Bank, Bearing, DirectionChange, GroundDistance, Quantity, TrueAirspeed, TrueNorth, TurnRate,
};

outputs! {
    /// Two turns one after the other: what [`successive_turns`] gives.
    SuccessiveTurns {
        /// Distance past the first fix, along the leg, at which its turn is done.
        past_first_nm,
        /// Distance before the second fix, along the leg, at which its turn begins.
        before_second_nm,
        /// What the leg has left between the two; negative where it is too short.
        spare_nm,
        /// Time flown straight between the two turns; negative where the leg is too short.
        straight_time_s,
        /// Largest true airspeed at which the leg is long enough; NaN where there is none, or no limit.
        largest_true_airspeed_kt,
        /// Groundspeed on the leg at that airspeed.
        largest_groundspeed_kt,
        /// Least bank, with no limit of the rate of turn, at which the leg is long enough; NaN where none is, or
        /// every bank.
        bank_needed_deg,
        /// Where the course to the first fix crosses the course from the second, past the first fix; NaN for parallel
        /// courses.
        crossing_past_first_nm,
        /// The same crossing, before the second fix along the course from it.
        crossing_before_second_nm,
        /// Lead of the one turn there that would do for both.
        crossing_lead_nm,
    }
}

/// Whether a leg between two fixes is long enough for the turns at both, in wind and with roll, and if not, what is possible.
///
/// `length - past first - before second`: the distance past its fix at which the first turn is done, and the lead of
/// the second. The largest airspeed and the least bank are those that leave nothing to spare.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the first fix, any finite number
/// - `leg_course_deg`: course from the first fix to the second
/// - `outbound_course_deg`: course flown from the second fix
/// - `leg_length_nm`: distance between the fixes, 0 to 10 900
/// - `first_passage`: how the first fix is passed
/// - `second_passage`: how the second fix is passed
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// That of `lead_nm`; the largest airspeed and the least bank to rounding.
///
/// # Degenerate cases
/// A first fix that is flown over is followed by an intercept of the leg at 30 degrees; a second one that is flown
/// over takes nothing of the leg. The largest airspeed is looked for from the one given: upward where the leg is long
/// enough.
///
/// # Errors
/// A value outside its range, a reversal at either fix, a wind that the airspeed cannot hold.
///
/// # Source
/// Derived from the leads of the two turns; the sum of two distances as in ICAO Doc 8168 Vol II (5th ed. 2006), Part
/// III Section 2 Chapter 1.
///
/// # Example
/// ```
/// # use lubberline::plain::successive_turns;
/// # use lubberline::procedure::Passage;
/// assert_eq!(format!("{:.2}", successive_turns(40.0, 130.0, 60.0, 8.0, Passage::FlyBy, Passage::FlyBy, 400.0, 300.0, 40.0, 25.0, 3.0, 5.0)?.spare_nm), "-2.71");
/// assert_eq!(format!("{:.0}", successive_turns(40.0, 130.0, 60.0, 8.0, Passage::FlyBy, Passage::FlyBy, 400.0, 300.0, 40.0, 25.0, 3.0, 5.0)?.largest_true_airspeed_kt), "339");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn successive_turns(
    inbound_course_deg: f64,
    leg_course_deg: f64,
    outbound_course_deg: f64,
    leg_length_nm: f64,
    first_passage: Passage,
    second_passage: Passage,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<SuccessiveTurns, Error> {
    if any_nan(&[
        inbound_course_deg,
        leg_course_deg,
        outbound_course_deg,
        leg_length_nm,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(SuccessiveTurns::NAN);
    }
    let turns = procedure::SuccessiveTurns::<TrueNorth> {
        inbound: Bearing::named("inbound_course_deg", inbound_course_deg)?,
        leg: Bearing::named("leg_course_deg", leg_course_deg)?,
        outbound: Bearing::named("outbound_course_deg", outbound_course_deg)?,
        length: GroundDistance::named("leg_length_nm", leg_length_nm)?,
        first: first_passage,
        second: second_passage,
        true_airspeed: TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind: wind(wind_from_deg, wind_speed_kt)?,
        limits: turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    };
    let miles = |length: Length| length.get::<nautical_mile>();
    let (past_first, before_second) = (turns.past_first()?, turns.before_second()?);
    let largest = turns.largest_true_airspeed();
    let on_leg = largest.and_then(|airspeed| crate::wind::hold_course(turns.leg, airspeed, turns.wind).ok());
    let single = turns.single_turn();
    Ok(SuccessiveTurns {
        past_first_nm: miles(past_first),
        before_second_nm: miles(before_second),
        spare_nm: miles(turns.spare()?),
        straight_time_s: turns.straight_time()?.get::<second>(),
        largest_true_airspeed_kt: largest.map_or(f64::NAN, |speed| speed.value().get::<knot>()),
        largest_groundspeed_kt: on_leg.map_or(f64::NAN, |crab| crab.groundspeed.value().get::<knot>()),
        bank_needed_deg: turns.bank_needed().map_or(f64::NAN, |bank| bank.value().get::<degree>()),
        crossing_past_first_nm: single.map_or(f64::NAN, |single| miles(single.past_first)),
        crossing_before_second_nm: single.map_or(f64::NAN, |single| miles(single.before_second)),
        crossing_lead_nm: single.map_or(f64::NAN, |single| miles(single.turn.lead())),
    })
}

/// What a turn at a waypoint takes of a leg in procedure design: the minimum stabilization distance.
///
/// Flown by: `r tan(A/2) + 5 V / 3600`. Flown over, with an intercept at 30 degrees: `r1 sin(A) + r1 cos(A) tan(30) +
/// r1 (1/sin(30) - 2 cos(A)/sin(60)) + r2 tan(15) + 10 V / 3600`. The least length of a leg is the sum of the
/// distances of its two waypoints.
///
/// # Arguments
/// - `passage`: how the waypoint is passed
/// - `course_change_deg`: change of course, either way, reduced to half a circle
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `bank_deg`: bank of the turn at the waypoint, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of that turn, above 0 (default 3.0)
/// - `bank_onto_leg_deg`: bank of the turn onto the leg after flying over, above 0 below 90 (default 15.0)
///
/// # Accuracy
/// As published, without wind and roll; `successive_turns` has both.
///
/// # Degenerate cases
/// Flown over with a change below 30 degrees the sum has no meaning: it does not vanish without a change.
///
/// # Errors
/// A value outside its range, a reversal that is flown by.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 2 Chapter 1: sequences and banks as read, formulas from
/// memory.
///
/// # Example
/// ```
/// # use lubberline::plain::stabilization_distance_nm;
/// # use lubberline::procedure::Passage;
/// assert_eq!(format!("{:.2}", stabilization_distance_nm(Passage::FlyBy, 90.0, 250.0, 25.0, 3.0, 15.0)?), "2.30");
/// assert_eq!(format!("{:.2}", stabilization_distance_nm(Passage::FlyOver, 90.0, 250.0, 25.0, 3.0, 15.0)?), "7.46");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn stabilization_distance_nm(
    passage: Passage,
    course_change_deg: f64,
    true_airspeed_kt: f64,
    bank_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    bank_onto_leg_deg: f64,
) -> Result<f64, Error> {
    if any_nan(&[course_change_deg, true_airspeed_kt, bank_deg, turn_rate_limit_deg_per_s, bank_onto_leg_deg])
    {
        return Ok(f64::NAN);
    }
    let change_deg = Quantity::DirectionChange.check("course_change_deg", course_change_deg)?;
    let distance = procedure::stabilization_distance(
        passage,
        DirectionChange::new(degrees(change_deg))?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        Bank::named("bank_deg", bank_deg)?,
        TurnRate::named("turn_rate_limit_deg_per_s", turn_rate_limit_deg_per_s)?,
        Bank::named("bank_onto_leg_deg", bank_onto_leg_deg)?,
    )?;
    Ok(distance.get::<nautical_mile>())
}
