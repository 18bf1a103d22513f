//! Base turns, in plain numbers.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::procedure::{self, DesignUnits, HoldingSide};
use crate::value::units::{degree, nautical_mile, second};
use crate::value::{ArcRadius, Bearing, ElapsedTime, GroundDistance, TrueAirspeed, TrueNorth};

/// The angle between outbound track and inbound course of a base turn, as published.
///
/// `36 / T` up to 170 kt, `0.215 V / T` above, with T in minutes; SI: up to 315 km/h, `0.116 V / T` above.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `outbound_time_s`: time outbound, above 0 to 1 000 000
/// - `units`: in which units the formula is printed
///
/// # Accuracy
/// As published: within 2 percent of `base_turn_offset_exact_deg` for two minutes, 7 percent high at 250 kt for one.
///
/// # Degenerate cases
/// At 170 kt the two formulas differ by 1.5 percent.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, base turns.
///
/// # Example
/// ```
/// # use lubberline::plain::design_base_turn_offset_deg;
/// # use lubberline::procedure::DesignUnits;
/// assert_eq!(format!("{:.1}", design_base_turn_offset_deg(157.23, 120.0, DesignUnits::NonSi)?), "18.0");
/// assert_eq!(format!("{:.1}", design_base_turn_offset_deg(200.0, 120.0, DesignUnits::NonSi)?), "21.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn design_base_turn_offset_deg(
    true_airspeed_kt: f64,
    outbound_time_s: f64,
    units: DesignUnits,
) -> Result<f64, Error> {
    if any_nan(&[true_airspeed_kt, outbound_time_s]) {
        return Ok(f64::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let time = ElapsedTime::named("outbound_time_s", outbound_time_s)?;
    Ok(procedure::base_turn_offset(airspeed, time, units).get::<degree>())
}

/// The angle of a base turn for which, in still air with an instant roll, the turn ends on the inbound course.
///
/// `2 atan(r / L)`.
///
/// # Arguments
/// - `turn_radius_nm`: radius of the turn, above 0 to 1000
/// - `outbound_leg_nm`: length of the outbound leg, 0 to 10 900
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// Without an outbound leg it is 180 degrees.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Derived: a circle tangent to two lines that cross at the fix.
///
/// # Example
/// ```
/// # use lubberline::plain::base_turn_offset_exact_deg;
/// assert_eq!(format!("{:.2}", base_turn_offset_exact_deg(0.834, 5.241)?), "18.08");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn base_turn_offset_exact_deg(turn_radius_nm: f64, outbound_leg_nm: f64) -> Result<f64, Error> {
    if any_nan(&[turn_radius_nm, outbound_leg_nm]) {
        return Ok(f64::NAN);
    }
    let turn_radius = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    let leg = GroundDistance::named("outbound_leg_nm", outbound_leg_nm)?;
    Ok(procedure::base_turn_offset_exact(turn_radius, leg).get::<degree>())
}

outputs! {
    /// A base turn in a wind: what [`base_turn`] and [`base_turn_on_track`] give.
    BaseTurn {
        /// Direction over the ground outbound.
        track_deg,
        /// Heading that holds it.
        heading_deg,
        /// From the reciprocal of the inbound course to the outbound track, right positive.
        offset_deg,
        /// Time from the fix to the beginning of the turn.
        outbound_time_s,
        /// Heading to turn through, right positive.
        heading_change_deg,
        /// Distance from the fix at which the wings are level on the inbound course.
        established_nm,
        /// Time from the fix until then.
        duration_s,
    }
}

fn output(turn: &procedure::BaseTurn<TrueNorth>) -> BaseTurn {
    BaseTurn {
        track_deg: turn.track.angle().get::<degree>(),
        heading_deg: turn.outbound.heading.angle().get::<degree>(),
        offset_deg: turn.offset.angle().get::<degree>(),
        outbound_time_s: turn.outbound_time.get::<second>(),
        heading_change_deg: turn.turn.heading_change().get::<degree>(),
        established_nm: turn.established.get::<nautical_mile>(),
        duration_s: turn.duration.get::<second>(),
    }
}

/// The base turn of a time outbound in a steady wind, exactly: the track and heading from which the turn ends on the inbound course.
///
/// The turn runs with its roll between the wind-corrected headings; over the ground wind times duration is added. Its
/// end has no part across the inbound course.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `turn_side`: which way the turn inbound goes
/// - `outbound_time_s`: time outbound, above 0 to 1 000 000
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// 1e-9 of its size in the plane of the fix. The aircraft is taken to be on the outbound track over the fix.
///
/// # Degenerate cases
/// In calm air with an instant roll the angle is that of `base_turn_offset_exact_deg`.
///
/// # Errors
/// A value outside its range, an inbound course that the airspeed cannot hold, a turn that ends past the fix whatever
/// the heading.
///
/// # Source
/// Derived from the equilibrium of a coordinated turn and the triangle of velocities.
///
/// # Example
/// ```
/// # use lubberline::plain::base_turn;
/// # use lubberline::procedure::HoldingSide;
/// assert_eq!(format!("{:.1}", base_turn(100.0, HoldingSide::Right, 120.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0)?.heading_deg), "271.7");
/// assert_eq!(format!("{:.2}", base_turn(100.0, HoldingSide::Right, 120.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0)?.established_nm), "6.86");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn base_turn(
    inbound_course_deg: f64,
    turn_side: HoldingSide,
    outbound_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<BaseTurn, Error> {
    if any_nan(&[
        inbound_course_deg,
        outbound_time_s,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(BaseTurn::NAN);
    }
    let turn = procedure::BaseTurn::for_time(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        turn_side,
        ElapsedTime::named("outbound_time_s", outbound_time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    Ok(output(&turn))
}

/// The base turn on a published outbound track in a steady wind, exactly: the heading, and the time after which the turn ends on the inbound course.
///
/// As `base_turn`; for a given track the condition is linear in the time.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `outbound_track_deg`: direction over the ground outbound, against the same north
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// 1e-9 of its size in the plane of the fix. The aircraft is taken to be on the outbound track over the fix.
///
/// # Degenerate cases
/// The turn goes to the side of the inbound course.
///
/// # Errors
/// A value outside its range, a track along the inbound course, a course that the airspeed cannot hold, a wind in
/// which the turn does not end on the course before the fix.
///
/// # Source
/// Derived from the equilibrium of a coordinated turn and the triangle of velocities.
///
/// # Example
/// ```
/// # use lubberline::plain::base_turn_on_track;
/// assert_eq!(format!("{:.1}", base_turn_on_track(100.0, 262.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0)?.outbound_time_s), "91.8");
/// assert_eq!(format!("{:.1}", base_turn_on_track(100.0, 262.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0)?.heading_deg), "267.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn base_turn_on_track(
    inbound_course_deg: f64,
    outbound_track_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<BaseTurn, Error> {
    if any_nan(&[
        inbound_course_deg,
        outbound_track_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(BaseTurn::NAN);
    }
    let turn = procedure::BaseTurn::for_track(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        Bearing::named("outbound_track_deg", outbound_track_deg)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    Ok(output(&turn))
}
