//! Procedure turns, in plain numbers.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::procedure::{self, HoldingSide};
use crate::value::units::{degree, nautical_mile, second};
use crate::value::{AngleOffBow, Bearing, HoldTime, TrueAirspeed, TrueNorth};

outputs! {
    /// A 45/180 procedure turn in a wind: what [`procedure_turn_45_180`] gives.
    ProcedureTurn {
        /// Track of the leg off the outbound course.
        off_track_deg,
        /// Heading that holds it.
        off_heading_deg,
        /// Heading that holds the way back to the course.
        back_heading_deg,
        /// Distance straight between the half circle and the turn onto the inbound course; negative where the course
        /// is crossed.
        straight_nm,
        /// Time from the start of the first turn to the turn back that would leave just no straight part.
        least_off_time_s,
        /// Distance outbound from where the first turn began at which the wings are level on the inbound course;
        /// negative before it.
        established_nm,
        /// How far outbound the path reaches.
        farthest_nm,
        /// How far from the course it reaches, to the side of the first turn.
        widest_nm,
        /// From the first turn to wings level inbound.
        duration_s,
    }
}

/// The geometry of a 45/180 procedure turn in a steady wind and with roll.
///
/// Off the outbound course by 45 degrees, straight on that track until a time from the start of the turn, half a
/// circle the other way onto the opposite track, straight until the lead of the turn onto the inbound course.
///
/// # Arguments
/// - `outbound_course_deg`: course flown outbound before the turn, any finite number
/// - `side`: to which side the first turn goes
/// - `off_time_s`: time from the start of the first turn to the turn back, 0 to 3600: 60 for categories A and B, 75 for C to E
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// 1e-9 of its size in the plane.
///
/// # Degenerate cases
/// A leg that is too short makes the straight part before the last turn negative: the course is crossed. A time
/// shorter than the first turn leaves nothing straight off the course.
///
/// # Errors
/// A value outside its range, a track that the airspeed cannot hold.
///
/// # Source
/// The manoeuvre: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, 3.5.4.1, its times as quoted; its geometry is derived.
///
/// # Example
/// ```
/// # use lubberline::plain::procedure_turn_45_180;
/// # use lubberline::procedure::HoldingSide;
/// assert_eq!(format!("{:.1}", procedure_turn_45_180(250.0, HoldingSide::Right, 60.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0)?.off_heading_deg), "284.8");
/// assert_eq!(format!("{:.2}", procedure_turn_45_180(250.0, HoldingSide::Right, 60.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0)?.straight_nm), "0.51");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn procedure_turn_45_180(
    outbound_course_deg: f64,
    side: HoldingSide,
    off_time_s: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<ProcedureTurn, Error> {
    if any_nan(&[
        outbound_course_deg,
        off_time_s,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(ProcedureTurn::NAN);
    }
    let turn = procedure::ProcedureTurn::<TrueNorth>::new(
        Bearing::named("outbound_course_deg", outbound_course_deg)?,
        side,
        HoldTime::named("off_time_s", off_time_s)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    Ok(ProcedureTurn {
        off_track_deg: turn.off_track.angle().get::<degree>(),
        off_heading_deg: turn.off.heading.angle().get::<degree>(),
        back_heading_deg: turn.back.heading.angle().get::<degree>(),
        straight_nm: turn.straight.get::<nautical_mile>(),
        least_off_time_s: turn.least_off_time.get::<second>(),
        established_nm: turn.established.get::<nautical_mile>(),
        farthest_nm: turn.farthest.get::<nautical_mile>(),
        widest_nm: turn.widest.get::<nautical_mile>(),
        duration_s: turn.duration.get::<second>(),
    })
}

outputs! {
    /// An 80/260 procedure turn in a wind: what [`procedure_turn_80_260`] gives.
    ReverseTurn {
        /// Heading at the end of the first turn.
        off_heading_deg,
        /// Distance from the course at its end, positive on the side of the first turn.
        across_nm,
        /// Distance outbound from where the first turn began at its end; negative before it.
        established_nm,
        /// How far outbound the path reaches.
        farthest_nm,
        /// How far from the course it reaches, to the side of the first turn.
        widest_nm,
        /// From the first turn to wings level inbound.
        duration_s,
        /// The angle of the first turn for which it ends on the course; NaN where none up to 170 degrees does.
        exact_angle_deg,
    }
}

/// The geometry of an 80/260 procedure turn in a steady wind and with roll, and the angle that would end it on the course.
///
/// Off the outbound heading by an angle, and at once back the other way onto the heading that holds the inbound
/// course. In calm air with an instant roll it ends `2 r cos(angle)` off the course, on the side away from the first
/// turn.
///
/// # Arguments
/// - `outbound_course_deg`: course flown outbound before the turn, any finite number
/// - `side`: to which side the first turn goes
/// - `first_turn_deg`: angle of the first turn, above 0 below 180: 80 as published
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// 1e-9 of its size in the plane.
///
/// # Degenerate cases
/// In calm air with an instant roll the exact angle is 90 degrees.
///
/// # Errors
/// A value outside its range, a course that the airspeed cannot hold.
///
/// # Source
/// The manoeuvre: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, 3.5.4.2 (number from memory), as quoted; its geometry is derived.
///
/// # Example
/// ```
/// # use lubberline::plain::procedure_turn_80_260;
/// # use lubberline::procedure::HoldingSide;
/// assert_eq!(format!("{:.2}", procedure_turn_80_260(250.0, HoldingSide::Right, 80.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0)?.across_nm), "0.30");
/// assert_eq!(format!("{:.1}", procedure_turn_80_260(250.0, HoldingSide::Right, 80.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0)?.exact_angle_deg), "69.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn procedure_turn_80_260(
    outbound_course_deg: f64,
    side: HoldingSide,
    first_turn_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<ReverseTurn, Error> {
    if any_nan(&[
        outbound_course_deg,
        first_turn_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(ReverseTurn::NAN);
    }
    let turn = procedure::ReverseTurn::<TrueNorth>::new(
        Bearing::named("outbound_course_deg", outbound_course_deg)?,
        side,
        AngleOffBow::named("first_turn_deg", first_turn_deg)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    Ok(ReverseTurn {
        off_heading_deg: turn.off_heading.angle().get::<degree>(),
        across_nm: turn.across.get::<nautical_mile>(),
        established_nm: turn.established.get::<nautical_mile>(),
        farthest_nm: turn.farthest.get::<nautical_mile>(),
        widest_nm: turn.widest.get::<nautical_mile>(),
        duration_s: turn.duration.get::<second>(),
        exact_angle_deg: turn.exact_angle.map_or(f64::NAN, |angle| angle.get::<degree>()),
    })
}
