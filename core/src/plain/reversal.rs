//! Plain functions of course reversals: base turns, procedure turns, and the distances of their design.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::procedure::{self, DesignUnits, HoldingSide};
use crate::value::units::{degree, degrees, knot, nautical_mile, second};
use crate::value::{
    AngleOffBow, ArcRadius, Bearing, ElapsedTime, GroundDistance, HoldTime, ProcedureAltitude, Quantity,
    TrueAirspeed, TrueNorth, TurnRate, WindSpeed,
};

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

/// The wind from all sides that procedure design assumes at an altitude.
///
/// `2 h + 47` kt with h in thousands of feet; `12 h + 87` km/h with h in kilometres.
///
/// # Arguments
/// - `altitude_ft`: altitude, -2000 to 50 000
/// - `units`: in which units the formula is printed
///
/// # Accuracy
/// As published. The two forms differ by up to 2.4 percent.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Table I-2-3-1, ICAO standard wind.
///
/// # Example
/// ```
/// # use lubberline::plain::icao_wind_kt;
/// # use lubberline::procedure::DesignUnits;
/// assert_eq!(format!("{:.0}", icao_wind_kt(6_000.0, DesignUnits::NonSi)?), "59");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn icao_wind_kt(altitude_ft: f64, units: DesignUnits) -> Result<f64, Error> {
    if any_nan(&[altitude_ft]) {
        return Ok(f64::NAN);
    }
    let altitude = ProcedureAltitude::named("altitude_ft", altitude_ft)?;
    Ok(procedure::icao_wind(altitude, units).value().get::<knot>())
}

/// How far a wind carries an aircraft while it turns through an angle.
///
/// `(angle / rate) wind`.
///
/// # Arguments
/// - `angle_deg`: angle turned through, either way, -360 to 360
/// - `turn_rate_deg_per_s`: rate of the turn, above 0
/// - `wind_speed_kt`: speed of the wind, 0 to 1000
///
/// # Accuracy
/// Rounding error, for an instant roll.
///
/// # Degenerate cases
/// An infinite rate leaves no time to be carried.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 8 and 16 to 19.
///
/// # Example
/// ```
/// # use lubberline::plain::turn_wind_effect_nm;
/// assert_eq!(format!("{:.2}", turn_wind_effect_nm(190.0, 3.0, 59.0)?), "1.04");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn turn_wind_effect_nm(
    angle_deg: f64,
    turn_rate_deg_per_s: f64,
    wind_speed_kt: f64,
) -> Result<f64, Error> {
    if any_nan(&[angle_deg, turn_rate_deg_per_s, wind_speed_kt]) {
        return Ok(f64::NAN);
    }
    let angle = degrees(Quantity::HeadingChange.check("angle_deg", angle_deg)?);
    let rate = TurnRate::named("turn_rate_deg_per_s", turn_rate_deg_per_s)?;
    let wind = WindSpeed::named("wind_speed_kt", wind_speed_kt)?;
    Ok(procedure::wind_effect(angle, rate, wind).get::<nautical_mile>())
}

outputs! {
    /// The distances of the template of a base turn: what [`base_turn_template`] gives.
    BaseTurnTemplate {
        /// Length of the outbound leg in still air.
        leg_nm,
        /// Nearest place of the outbound leg's end, from the fix.
        nearest_nm,
        /// Farthest place of the outbound leg's end, from the fix.
        farthest_nm,
    }
}

/// The distances of the template of a base turn in procedure design.
///
/// `V T`, `(T - 5 s)(V - w) - z` and `(T + 21 s)(V + w) + z`.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `outbound_time_s`: time outbound, 0 to 3600
/// - `wind_speed_kt`: speed of the wind, 0 to 1000
/// - `fix_tolerance_nm`: tolerance of the fix along the track, 0 to 10 900
///
/// # Accuracy
/// As published; the tables printed beside it round speeds and winds to four figures before.
///
/// # Degenerate cases
/// A short time and a strong wind make the nearest place negative: past the fix.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 10 to 15.
///
/// # Example
/// ```
/// # use lubberline::plain::base_turn_template;
/// assert_eq!(format!("{:.2}", base_turn_template(157.23, 120.0, 59.0, 0.83)?.nearest_nm), "2.31");
/// assert_eq!(format!("{:.2}", base_turn_template(157.23, 120.0, 59.0, 0.83)?.farthest_nm), "9.30");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn base_turn_template(
    true_airspeed_kt: f64,
    outbound_time_s: f64,
    wind_speed_kt: f64,
    fix_tolerance_nm: f64,
) -> Result<BaseTurnTemplate, Error> {
    if any_nan(&[true_airspeed_kt, outbound_time_s, wind_speed_kt, fix_tolerance_nm]) {
        return Ok(BaseTurnTemplate::NAN);
    }
    let template = procedure::base_turn_template(
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        HoldTime::named("outbound_time_s", outbound_time_s)?,
        WindSpeed::named("wind_speed_kt", wind_speed_kt)?,
        GroundDistance::named("fix_tolerance_nm", fix_tolerance_nm)?,
    );
    Ok(BaseTurnTemplate {
        leg_nm: template.leg.get::<nautical_mile>(),
        nearest_nm: template.nearest.get::<nautical_mile>(),
        farthest_nm: template.farthest.get::<nautical_mile>(),
    })
}

/// The radius of the sector that protects a base turn flown without a drawn area.
///
/// `(V / 60 + 1.0) T + 1.5` NM; `(V / 60 + 1.9) T + 2.8` km with V in km/h.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `outbound_time_s`: time outbound, above 0 to 1 000 000
/// - `units`: in which units the formula is printed
///
/// # Accuracy
/// As published: the second form has the constants of the first, rounded after conversion.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 2 Chapter 5, 5.3; a margin of 2.0 NM is added on all sides
/// there.
///
/// # Example
/// ```
/// # use lubberline::plain::base_turn_sector_nm;
/// # use lubberline::procedure::DesignUnits;
/// assert_eq!(format!("{:.1}", base_turn_sector_nm(180.0, 120.0, DesignUnits::NonSi)?), "9.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn base_turn_sector_nm(
    true_airspeed_kt: f64,
    outbound_time_s: f64,
    units: DesignUnits,
) -> Result<f64, Error> {
    if any_nan(&[true_airspeed_kt, outbound_time_s]) {
        return Ok(f64::NAN);
    }
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let time = ElapsedTime::named("outbound_time_s", outbound_time_s)?;
    Ok(procedure::base_turn_sector(airspeed, time, units)?.value().get::<nautical_mile>())
}
