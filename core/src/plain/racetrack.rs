//! A holding pattern flown in wind, in plain numbers.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::procedure::{self, HoldingSide, TimedLeg};
use crate::value::units::{degree, nautical_mile, ratio, second, seconds};
use crate::value::{Bearing, HoldTime, Quantity, TrueAirspeed, TrueNorth};

outputs! {
    /// A holding pattern in a wind: what [`holding_pattern`] gives.
    HoldingPattern {
        /// Heading to fly outbound.
        outbound_heading_deg,
        /// Outbound heading less the reciprocal of the inbound course, right positive.
        outbound_correction_deg,
        /// Inbound heading less inbound course, right positive.
        inbound_correction_deg,
        /// By what the inbound correction has to be multiplied, and its side changed, to give the outbound one; NaN
        /// without an inbound correction.
        drift_factor,
        /// Time straight outbound, from wings level to the turn inbound.
        outbound_time_s,
        /// Time on the outbound clock: from abeam the fix, or from wings level where the fix is passed abeam in the
        /// turn.
        outbound_clock_s,
        /// Time straight inbound, from wings level to the fix.
        inbound_time_s,
        /// From the fix to the fix.
        duration_s,
        /// Where the outbound leg ends, before the fix along the inbound course.
        outbound_end_before_fix_nm,
        /// Where the outbound leg ends, across the inbound course to the side of the turns.
        outbound_end_across_nm,
        /// Distance from the fix at which the wings are level on the inbound course.
        inbound_leg_nm,
        /// Length of the whole path over the ground, along the inbound course.
        length_nm,
        /// Width of the whole path over the ground, across the inbound course.
        width_nm,
        /// The greatest bank.
        bank_deg,
    }
}

/// The holding pattern that closes in a steady wind, exactly: outbound heading, times and size.
///
/// A turn with its roll over the fix onto the outbound heading, straight outbound, a turn that ends on the inbound
/// course, and that course to the fix; over the ground wind times duration is added to each. The outbound heading is
/// the one for which the sum is nothing.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `side`: which way the turns go
/// - `timed`: the leg whose time is given, and where its clock starts
/// - `time_s`: time of that leg, 0 to 3600
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// 1e-9 of the size of the pattern, in the plane of the fix.
///
/// # Degenerate cases
/// In calm air the outbound heading is the reciprocal. Where several headings close the pattern, the one nearest to
/// the reciprocal is meant.
///
/// # Errors
/// A value outside its range, an inbound course that the airspeed cannot hold, a wind in which no heading closes the
/// pattern before the fix.
///
/// # Source
/// Derived from the equilibrium of a coordinated turn and the triangle of velocities.
///
/// # Example
/// ```
/// # use lubberline::plain::holding_pattern;
/// # use lubberline::procedure::{HoldingSide, TimedLeg};
/// assert_eq!(format!("{:.1}", holding_pattern(270.0, HoldingSide::Right, TimedLeg::Inbound, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0)?.outbound_heading_deg), "68.5");
/// assert_eq!(format!("{:.2}", holding_pattern(270.0, HoldingSide::Right, TimedLeg::Inbound, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0)?.drift_factor), "2.80");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn holding_pattern(
    inbound_course_deg: f64,
    side: HoldingSide,
    timed: TimedLeg,
    time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<HoldingPattern, Error> {
    if any_nan(&[
        inbound_course_deg,
        time_s,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(HoldingPattern::NAN);
    }
    let pattern = procedure::HoldingPattern::<TrueNorth>::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        side,
        timed,
        HoldTime::named("time_s", time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    let (before, across) = pattern.outbound_end();
    let (length, width) = pattern.size();
    Ok(HoldingPattern {
        outbound_heading_deg: pattern.outbound_heading().angle().get::<degree>(),
        outbound_correction_deg: pattern.outbound_correction().angle().get::<degree>(),
        inbound_correction_deg: pattern.inbound().wind_correction.get::<degree>(),
        drift_factor: pattern.drift_factor().map_or(f64::NAN, |factor| factor.get::<ratio>()),
        outbound_time_s: pattern.outbound_time().get::<second>(),
        outbound_clock_s: pattern.outbound_clock().get::<second>(),
        inbound_time_s: pattern.inbound_time().get::<second>(),
        duration_s: pattern.duration().get::<second>(),
        outbound_end_before_fix_nm: before.get::<nautical_mile>(),
        outbound_end_across_nm: across.get::<nautical_mile>(),
        inbound_leg_nm: pattern.inbound_leg().get::<nautical_mile>(),
        length_nm: length.get::<nautical_mile>(),
        width_nm: width.get::<nautical_mile>(),
        bank_deg: pattern.bank().get::<degree>(),
    })
}

outputs! {
    /// A place in a holding pattern: what [`holding_pattern_at`] gives.
    HoldingPoint {
        /// Bearing from the fix; NaN over it.
        bearing_from_fix_deg,
        /// Distance from the fix over the ground.
        distance_nm,
        /// Heading.
        heading_deg,
        /// Bank, right positive.
        bank_deg,
    }
}

/// Where the aircraft is in the holding pattern that closes in a steady wind, a time after it passed the fix.
///
/// The turn outbound, the outbound leg, the turn inbound and the inbound leg of `holding_pattern`, one after the other, round after
/// round.
///
/// # Arguments
/// - `since_fix_s`: time since the fix was passed, -1 000 000 to 1 000 000
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `side`: which way the turns go
/// - `timed`: the leg whose time is given, and where its clock starts
/// - `time_s`: time of that leg, 0 to 3600
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// As `holding_pattern`.
///
/// # Degenerate cases
/// Over the fix there is no bearing. Before the fix the last round is meant.
///
/// # Errors
/// As `holding_pattern`; a time outside its range.
///
/// # Source
/// As `holding_pattern`.
///
/// # Example
/// ```
/// # use lubberline::plain::holding_pattern_at;
/// # use lubberline::procedure::{HoldingSide, TimedLeg};
/// assert_eq!(format!("{:.1}", holding_pattern_at(100.0, 270.0, HoldingSide::Right, TimedLeg::Inbound, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0)?.heading_deg), "68.5");
/// assert_eq!(format!("{:.2}", holding_pattern_at(100.0, 270.0, HoldingSide::Right, TimedLeg::Inbound, 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0)?.distance_nm), "2.32");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn holding_pattern_at(
    since_fix_s: f64,
    inbound_course_deg: f64,
    side: HoldingSide,
    timed: TimedLeg,
    time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<HoldingPoint, Error> {
    if any_nan(&[
        since_fix_s,
        inbound_course_deg,
        time_s,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(HoldingPoint::NAN);
    }
    let since_fix_s = Quantity::TurnTime.check("since_fix_s", since_fix_s)?;
    let point = procedure::HoldingPattern::<TrueNorth>::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        side,
        timed,
        HoldTime::named("time_s", time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?
    .at(seconds(since_fix_s));
    Ok(HoldingPoint {
        bearing_from_fix_deg: point
            .bearing_from_fix
            .map_or(f64::NAN, |bearing| bearing.angle().get::<degree>()),
        distance_nm: point.distance.value().get::<nautical_mile>(),
        heading_deg: point.heading.angle().get::<degree>(),
        bank_deg: point.bank.get::<degree>(),
    })
}
