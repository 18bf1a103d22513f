//! Plain functions of [`crate::lead`].

use super::any_nan;
use super::turn::turn_limits;
use crate::Error;
use crate::lead::{self, CourseChange, RadialFlown, TurnSide};
use crate::many::lead::Lead;
use crate::many::run;
use crate::value::units::{degree, degrees, nautical_mile};
use crate::value::{
    ArcRadius, Bearing, DirectionChange, HeightAboveStation, Quantity, TrueAirspeed, TrueNorth, WindSpeed,
};
use crate::wind::Wind;

/// A wind from plain numbers. Which north the plain directions share is their caller's to know; true stands for it.
pub(super) fn wind(wind_from_deg: f64, wind_speed_kt: f64) -> Result<Wind<TrueNorth>, Error> {
    Ok(Wind {
        from: Bearing::named("wind_from_deg", wind_from_deg)?,
        speed: WindSpeed::named("wind_speed_kt", wind_speed_kt)?,
    })
}

/// Distance before a fix at which to begin the turn, so as to roll out on the outbound course.
///
/// The displacement of the turn through the air (roll in at the roll rate, hold the bank, roll out wings level) plus wind times
/// duration is a vector D; with u and v the unit vectors of the inbound and outbound course the lead is `(D x v) / (u x v)`.
/// In still air with an instant roll that is `radius tan(change / 2)`.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `outbound_course_deg`: course flown from it, against the same north
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// 1.5e-5 NM against a fine integration over the ellipsoid for leads to 10 NM, 1.2e-4 NM to 20 NM.
/// Arrays and single calls agree to 1e-12 of the radius and the rolls of the turn, over the sine of the change of course.
///
/// # Degenerate cases
/// No change of course has a lead of zero. The turn goes the short way.
///
/// # Errors
/// A value outside its range, a reversal, a wind that the airspeed cannot hold.
///
/// # Source
/// Derived from the equilibrium of a coordinated turn; in still air the distance of turn anticipation of ICAO Doc 8168 Vol II
/// (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.
///
/// # Example
/// ```
/// # use lubberline::plain::lead_nm;
/// assert_eq!(format!("{:.2}", lead_nm(40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0)?), "5.41");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn lead_nm(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<f64, Error> {
    if any_nan(&[
        inbound_course_deg,
        outbound_course_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(f64::NAN);
    }
    let change = CourseChange::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        Bearing::named("outbound_course_deg", outbound_course_deg)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
        TurnSide::Shortest,
    )?;
    Ok(change.lead().get::<nautical_mile>())
}

/// [`lead_nm`] over columns.
pub(super) fn lead_nm_block(inputs: [&[f64]; 8], outputs: [&mut [f64]; 1]) {
    let [
        inbound_course_deg,
        outbound_course_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ] = inputs;
    let [lead_nm] = outputs;
    run(Lead {
        inbound_course_deg,
        outbound_course_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
        lead_nm,
    });
}

/// The DME reading at which to begin the turn at a station, so as to roll out on the outbound radial.
///
/// The slant range from the station to the point at the lead before it: `sqrt(h^2 + 4 R (R + h) sin^2(lead / 2R))`, with the
/// lead as [`lead_nm`] gives it.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `outbound_course_deg`: course flown from it, against the same north
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
/// - `height_above_station_ft`: height above the station's antenna, -60 000 to 400 000 (default 0.0)
///
/// # Accuracy
/// That of [`lead_nm`], and within 1.1 m for the slant.
///
/// # Degenerate cases
/// No change of course reads the height: it begins overhead.
///
/// # Errors
/// As [`lead_nm`].
///
/// # Source
/// As [`lead_nm`], and the law of cosines between the radii of the earth and of the flight.
///
/// # Example
/// ```
/// # use lubberline::plain::dme_at_roll_in_nm;
/// assert_eq!(format!("{:.2}", dme_at_roll_in_nm(40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0, 33_000.0)?), "7.67");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn dme_at_roll_in_nm(
    inbound_course_deg: f64,
    outbound_course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
    height_above_station_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[
        inbound_course_deg,
        outbound_course_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
        height_above_station_ft,
    ]) {
        return Ok(f64::NAN);
    }
    let change = CourseChange::new(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        Bearing::named("outbound_course_deg", outbound_course_deg)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
        TurnSide::Shortest,
    )?;
    let height = HeightAboveStation::named("height_above_station_ft", height_above_station_ft)?;
    Ok(change.reading_at_roll_in(height).value().get::<nautical_mile>())
}

/// Distance of turn anticipation in still air with an instant roll.
///
/// `r tan(change / 2)`.
///
/// # Arguments
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
/// - `course_change_deg`: change of course, either way, reduced to half a circle
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// It grows without bound toward a reversal.
///
/// # Errors
/// A value outside its range, or a reversal.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.
///
/// # Example
/// ```
/// # use lubberline::plain::turn_anticipation_nm;
/// assert_eq!(format!("{:.3}", turn_anticipation_nm(6.33, 90.0)?), "6.330");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn turn_anticipation_nm(turn_radius_nm: f64, course_change_deg: f64) -> Result<f64, Error> {
    if any_nan(&[turn_radius_nm, course_change_deg]) {
        return Ok(f64::NAN);
    }
    let radius = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    let change_deg = Quantity::DirectionChange.check("course_change_deg", course_change_deg)?;
    Ok(lead::turn_anticipation(radius, DirectionChange::new(degrees(change_deg))?)?.get::<nautical_mile>())
}

/// Distance from the station at which a radial flown inbound is left for an arc.
///
/// `sqrt(D^2 + 2 D r)` with D the radius of the arc and r that of the turn, in still air with an instant roll.
///
/// # Arguments
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
///
/// # Accuracy
/// Exact in the plane.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a turn that does not fit.
///
/// # Source
/// Derived: the turn is a circle tangent to the radial and to the arc.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_entry_inbound_nm;
/// assert_eq!(format!("{:.2}", arc_entry_inbound_nm(10.0, 2.5)?), "12.25");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_entry_inbound_nm(arc_radius_nm: f64, turn_radius_nm: f64) -> Result<f64, Error> {
    if any_nan(&[arc_radius_nm, turn_radius_nm]) {
        return Ok(f64::NAN);
    }
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    let turn_radius = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    Ok(lead::arc_entry(arc, turn_radius, RadialFlown::Inbound)?.value().get::<nautical_mile>())
}

/// Distance from the station at which a radial flown outbound is left for an arc.
///
/// `sqrt(D^2 - 2 D r)` with D the radius of the arc and r that of the turn, in still air with an instant roll.
///
/// # Arguments
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
///
/// # Accuracy
/// Exact in the plane.
///
/// # Degenerate cases
/// For an arc of twice the turn radius the turn begins over the station.
///
/// # Errors
/// A value outside its range, or a turn that does not fit.
///
/// # Source
/// Derived: the turn is a circle tangent to the radial and to the arc.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_entry_outbound_nm;
/// assert_eq!(format!("{:.2}", arc_entry_outbound_nm(10.0, 2.5)?), "7.07");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_entry_outbound_nm(arc_radius_nm: f64, turn_radius_nm: f64) -> Result<f64, Error> {
    if any_nan(&[arc_radius_nm, turn_radius_nm]) {
        return Ok(f64::NAN);
    }
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    let turn_radius = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    Ok(lead::arc_entry(arc, turn_radius, RadialFlown::Outbound)?.value().get::<nautical_mile>())
}

/// Angle at the station by which the turn off an arc begins before a radial to be flown inbound.
///
/// `asin(r / (D - r))` with D the radius of the arc and r that of the turn, in still air with an instant roll.
///
/// # Arguments
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
///
/// # Accuracy
/// Exact in the plane.
///
/// # Degenerate cases
/// For an arc of twice the turn radius it is 90 degrees.
///
/// # Errors
/// A value outside its range, or a turn that does not fit.
///
/// # Source
/// Derived: the turn is a circle tangent to the radial and to the arc.
///
/// # Example
/// ```
/// # use lubberline::plain::lead_radial_inbound_deg;
/// assert_eq!(format!("{:.2}", lead_radial_inbound_deg(12.0, 0.6)?), "3.02");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn lead_radial_inbound_deg(arc_radius_nm: f64, turn_radius_nm: f64) -> Result<f64, Error> {
    if any_nan(&[arc_radius_nm, turn_radius_nm]) {
        return Ok(f64::NAN);
    }
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    let turn_radius = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    Ok(lead::lead_radial(arc, turn_radius, RadialFlown::Inbound)?.get::<degree>())
}

/// Angle at the station by which the turn off an arc begins before a radial to be flown outbound.
///
/// `asin(r / (D + r))` with D the radius of the arc and r that of the turn, in still air with an instant roll.
///
/// # Arguments
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
///
/// # Accuracy
/// Exact in the plane.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a turn that does not fit.
///
/// # Source
/// Derived: the turn is a circle tangent to the radial and to the arc.
///
/// # Example
/// ```
/// # use lubberline::plain::lead_radial_outbound_deg;
/// assert_eq!(format!("{:.2}", lead_radial_outbound_deg(12.0, 0.6)?), "2.73");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn lead_radial_outbound_deg(arc_radius_nm: f64, turn_radius_nm: f64) -> Result<f64, Error> {
    if any_nan(&[arc_radius_nm, turn_radius_nm]) {
        return Ok(f64::NAN);
    }
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    let turn_radius = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    Ok(lead::lead_radial(arc, turn_radius, RadialFlown::Outbound)?.get::<degree>())
}
