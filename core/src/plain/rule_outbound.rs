//! Rules of thumb for the outbound leg of a holding pattern, in plain numbers.

use super::any_nan;
use crate::Error;
use crate::rules::{self, DriftRule};
use crate::value::units::{degree, degrees, second};
use crate::value::{Bearing, DirectionChange, HoldTime, Quantity, TrueNorth, WindComponent};

/// The outbound heading of a holding pattern by rule: a multiple of the inbound wind correction, the other way.
///
/// `inbound course + 180 - k * correction`, with k = 2 or 3.
///
/// # Arguments
/// - `inbound_course_deg`: course flown to the fix, any finite number
/// - `inbound_correction_deg`: inbound heading less inbound course, right positive, any finite number
/// - `rule`: by what the correction is multiplied
///
/// # Accuracy
/// The rules contradict each other; see the drift factor of `holding_pattern` for the exact one.
///
/// # Degenerate cases
/// No correction inbound leaves the reciprocal.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Three times: FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (c), and (20 April 2023), 5-3-8 j; CNATRA P-871 chapter 4. Two to three times: CNATRA
/// P-1244 p. 5-17.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_outbound_heading_deg;
/// # use lubberline::rules::DriftRule;
/// assert_eq!(format!("{:.0}", rule_outbound_heading_deg(270.0, 5.0, DriftRule::Triple)?), "75");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_outbound_heading_deg(
    inbound_course_deg: f64,
    inbound_correction_deg: f64,
    rule: DriftRule,
) -> Result<f64, Error> {
    if any_nan(&[inbound_course_deg, inbound_correction_deg]) {
        return Ok(f64::NAN);
    }
    let correction_deg = Quantity::DirectionChange.check("inbound_correction_deg", inbound_correction_deg)?;
    let heading = rules::outbound_heading::<TrueNorth>(
        Bearing::named("inbound_course_deg", inbound_course_deg)?,
        DirectionChange::new(degrees(correction_deg))?,
        rule,
    );
    Ok(heading.angle().get::<degree>())
}

/// The next outbound time of a holding pattern by rule: the last one, and what the inbound leg came out short.
///
/// `outbound + wanted - inbound`.
///
/// # Arguments
/// - `outbound_time_s`: time flown outbound, 0 to 3600
/// - `inbound_time_s`: time the inbound leg then took, 0 to 3600
/// - `wanted_inbound_time_s`: time the inbound leg is to take, 0 to 3600 (default 60.0)
///
/// # Accuracy
/// It leaves out that the legs are flown at different groundspeeds, so it takes several rounds to settle. See
/// `holding_pattern`.
///
/// # Degenerate cases
/// Zero where the rule leaves no time.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// CNATRA P-871 chapter 4, figure 4-16; against a strong headwind inbound it flies the first outbound leg for no less
/// than 30 s.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_outbound_time_s;
/// assert_eq!(format!("{:.0}", rule_outbound_time_s(60.0, 50.0, 60.0)?), "70");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_outbound_time_s(
    outbound_time_s: f64,
    inbound_time_s: f64,
    wanted_inbound_time_s: f64,
) -> Result<f64, Error> {
    if any_nan(&[outbound_time_s, inbound_time_s, wanted_inbound_time_s]) {
        return Ok(f64::NAN);
    }
    let time = rules::next_outbound_time(
        HoldTime::named("outbound_time_s", outbound_time_s)?,
        HoldTime::named("inbound_time_s", inbound_time_s)?,
        HoldTime::named("wanted_inbound_time_s", wanted_inbound_time_s)?,
    );
    Ok(time.get::<second>())
}

/// The outbound time of a holding pattern by rule for a known wind: a second more for each knot of headwind.
///
/// `still air + headwind`, less for a tailwind.
///
/// # Arguments
/// - `still_air_time_s`: time outbound in still air, 0 to 3600
/// - `outbound_headwind_kt`: headwind on the outbound leg, negative for a tailwind, -1000 to 1000
///
/// # Accuracy
/// See `holding_pattern` for the exact time.
///
/// # Degenerate cases
/// Zero where the rule leaves no time.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_outbound_time_by_headwind_s;
/// assert_eq!(format!("{:.0}", rule_outbound_time_by_headwind_s(60.0, -15.0)?), "45");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_outbound_time_by_headwind_s(
    still_air_time_s: f64,
    outbound_headwind_kt: f64,
) -> Result<f64, Error> {
    if any_nan(&[still_air_time_s, outbound_headwind_kt]) {
        return Ok(f64::NAN);
    }
    let time = rules::outbound_time_by_headwind(
        HoldTime::named("still_air_time_s", still_air_time_s)?,
        WindComponent::named("outbound_headwind_kt", outbound_headwind_kt)?,
    );
    Ok(time.get::<second>())
}
