//! Plain functions of the rules of thumb of DME distance and of the radio horizon, beside the exact answers, term by term.

use super::{any_nan, outputs};
use crate::Error;
use crate::rules;
use crate::station::HorizonRule;
use crate::value::units::nautical_mile;
use crate::value::{HeightAboveStation, SlantRange, SurfaceHeight};

/// The DME reading from which on the trade does not count the slant: a mile for each 1 000 ft.
///
/// `height / 1000`.
///
/// # Arguments
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000
///
/// # Accuracy
/// There the reading is 1.35 percent more than the distance along the ground. See `rule_ground_distance_error`.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// FAA-H-8083-15 (Instrument Flying Handbook), as study notes quote it.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_slant_negligible_from_nm;
/// assert_eq!(format!("{:.0}", rule_slant_negligible_from_nm(30_000.0)?), "30");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_slant_negligible_from_nm(height_ft: f64) -> Result<f64, Error> {
    if any_nan(&[height_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    Ok(rules::slant_negligible_from(height).get::<nautical_mile>())
}

outputs! {
    /// The DME reading taken for the distance along the ground, beside that distance: what [`rule_ground_distance_error`] gives. The error is the rule less the exact answer.
    RuleGroundDistanceError {
        /// The rule's answer.
        rule_nm,
        /// The exact answer.
        exact_nm,
        /// The error: the sum of the terms.
        error_nm,
        /// The slant for the side of the triangle.
        triangle_nm,
        /// A flat earth for a round one.
        curve_nm,
    }
}

/// The DME reading taken for the distance along the ground, beside that distance, term by term.
///
/// The reading less `ground_distance_nm`.
///
/// # Arguments
/// - `slant_range_nm`: DME reading, 0 to 10 900
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// Overhead the whole reading is error.
///
/// # Errors
/// A value outside its range, or a reading shorter than the height.
///
/// # Source
/// The rule: `rule_slant_negligible_from_nm`. The exact distance: `ground_distance_nm`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_ground_distance_error;
/// assert_eq!(format!("{:.2}", rule_ground_distance_error(30.0, 30_000.0)?.error_nm), "0.43");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_ground_distance_error(
    slant_range_nm: f64,
    height_ft: f64,
) -> Result<RuleGroundDistanceError, Error> {
    if any_nan(&[slant_range_nm, height_ft]) {
        return Ok(RuleGroundDistanceError::NAN);
    }
    let reading = SlantRange::named("slant_range_nm", slant_range_nm)?;
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    let error = rules::ground_distance_error(reading, height)?;
    let [triangle, curve] = error.terms;
    Ok(RuleGroundDistanceError {
        rule_nm: error.rule.get::<nautical_mile>(),
        exact_nm: error.exact.get::<nautical_mile>(),
        error_nm: error.error().get::<nautical_mile>(),
        triangle_nm: triangle.get::<nautical_mile>(),
        curve_nm: curve.get::<nautical_mile>(),
    })
}

outputs! {
    /// A rule of the radio horizon beside the exact horizon: what [`rule_radio_horizon_error`] gives. The error is the rule less the exact answer.
    RuleRadioHorizonError {
        /// The rule's answer.
        rule_nm,
        /// The exact answer.
        exact_nm,
        /// The error: the sum of the terms.
        error_nm,
        /// The rule's factor for 1.2289.
        factor_nm,
        /// The square roots of the heights for the tangents.
        root_nm,
    }
}

/// A rule of the radio horizon beside the tangent to a sphere of 4/3 of the earth's radius, term by term.
///
/// `radio_horizon_nm` by the rule less that of `four_thirds`.
///
/// # Arguments
/// - `aircraft_height_ft`: height of the aircraft above the surface, 0 to 400 000
/// - `antenna_height_ft`: height of the antenna above the surface, 0 to 400 000
/// - `rule`: which rule
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// The rule `four_thirds` is the exact one and has no error.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendix, and common practice (`radio_horizon_nm`).
///
/// # Example
/// ```
/// # use lubberline::plain::rule_radio_horizon_error;
/// # use lubberline::station::HorizonRule;
/// assert_eq!(format!("{:.2}", rule_radio_horizon_error(35_000.0, 0.0, HorizonRule::FiveQuarters)?.factor_nm), "3.98");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_radio_horizon_error(
    aircraft_height_ft: f64,
    antenna_height_ft: f64,
    rule: HorizonRule,
) -> Result<RuleRadioHorizonError, Error> {
    if any_nan(&[aircraft_height_ft, antenna_height_ft]) {
        return Ok(RuleRadioHorizonError::NAN);
    }
    let aircraft = SurfaceHeight::named("aircraft_height_ft", aircraft_height_ft)?;
    let antenna = SurfaceHeight::named("antenna_height_ft", antenna_height_ft)?;
    let error = rules::radio_horizon_error(aircraft, antenna, rule);
    let [factor, root] = error.terms;
    Ok(RuleRadioHorizonError {
        rule_nm: error.rule.get::<nautical_mile>(),
        exact_nm: error.exact.get::<nautical_mile>(),
        error_nm: error.error().get::<nautical_mile>(),
        factor_nm: factor.get::<nautical_mile>(),
        root_nm: root.get::<nautical_mile>(),
    })
}
