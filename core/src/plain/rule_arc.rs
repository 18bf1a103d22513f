//! Plain functions of the rules of thumb of arcs and intercepts, beside the exact answers, term by term.

use super::{any_nan, outputs};
use crate::Error;
use crate::lead::RadialFlown;
use crate::rules::{self, ArcEntryRule};
use crate::value::units::{degree, degrees, nautical_mile, ratio};
use crate::value::{ArcRadius, DirectionChange, GroundDistance, InterceptAngle, Quantity};

/// The distance before an arc, along a radial, at which mental arithmetic begins the turn onto it.
///
/// The radius of the turn; that and, inside 12 NM, half a mile more outbound or less inbound; or half a mile.
///
/// # Arguments
/// - `arc_radius_nm`: distance of the arc from the station, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
/// - `flown`: whether the radial is flown inbound or outbound
/// - `rule`: which mental arithmetic
///
/// # Accuracy
/// A rule. See `arc_entry_inbound_nm` and `arc_entry_outbound_nm` for the exact distance in still air, `arc_entry` in wind.
///
/// # Degenerate cases
/// Inbound the radius less half a mile is zero for a turn of less than half a mile.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The radius: CNATRA P-871 chapter 4. With half a mile: CNATRA P-1265 p. 2-11 (5-99). Half a mile, to 150 kt: FAA-H-8083-15.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_arc_entry_lead_nm;
/// # use lubberline::{lead::RadialFlown, rules::ArcEntryRule};
/// assert_eq!(format!("{:.1}", rule_arc_entry_lead_nm(10.0, 2.5, RadialFlown::Outbound, ArcEntryRule::RadiusAndHalf)?), "3.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_arc_entry_lead_nm(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    flown: RadialFlown,
    rule: ArcEntryRule,
) -> Result<f64, Error> {
    if any_nan(&[arc_radius_nm, turn_radius_nm]) {
        return Ok(f64::NAN);
    }
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    let turn = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    Ok(rules::arc_entry_lead(arc, turn, flown, rule).get::<nautical_mile>())
}

outputs! {
    /// A rule of the lead onto an arc beside the exact lead: what [`rule_arc_entry_lead_error`] gives. The error is the rule less the exact answer.
    RuleArcEntryLeadError {
        /// The rule's answer.
        rule_nm,
        /// The exact answer.
        exact_nm,
        /// The error: the sum of the terms.
        error_nm,
        /// What the rule makes of the radius.
        radius_nm,
        /// The radius for the lead, as if the arc were a straight line.
        curve_nm,
    }
}

/// A rule of the lead onto an arc beside the exact lead in still air with an instant roll, term by term.
///
/// The rule of `rule_arc_entry_lead_nm` less `sqrt(D^2 + 2 D r) - D` inbound, `D - sqrt(D^2 - 2 D r)` outbound.
///
/// # Arguments
/// - `arc_radius_nm`: distance of the arc from the station, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
/// - `flown`: whether the radial is flown inbound or outbound
/// - `rule`: which mental arithmetic
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or an arc below twice the turn radius when turning on its inside.
///
/// # Source
/// Named at `rule_arc_entry_lead_nm`; the exact lead is derived from the geometry of tangent circles.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_arc_entry_lead_error;
/// # use lubberline::{lead::RadialFlown, rules::ArcEntryRule};
/// assert_eq!(format!("{:.2}", rule_arc_entry_lead_error(10.0, 2.5, RadialFlown::Inbound, ArcEntryRule::RadiusAndHalf)?.error_nm), "-0.25");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_arc_entry_lead_error(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    flown: RadialFlown,
    rule: ArcEntryRule,
) -> Result<RuleArcEntryLeadError, Error> {
    if any_nan(&[arc_radius_nm, turn_radius_nm]) {
        return Ok(RuleArcEntryLeadError::NAN);
    }
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    let turn = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    let error = rules::arc_entry_lead_error(arc, turn, flown, rule)?;
    let [radius, curve] = error.terms;
    Ok(RuleArcEntryLeadError {
        rule_nm: error.rule.get::<nautical_mile>(),
        exact_nm: error.exact.get::<nautical_mile>(),
        error_nm: error.error().get::<nautical_mile>(),
        radius_nm: radius.get::<nautical_mile>(),
        curve_nm: curve.get::<nautical_mile>(),
    })
}

outputs! {
    /// Radials to the mile by rule beside the exact number: what [`rule_radials_per_mile_error`] gives. The error is the rule less the exact answer.
    RuleRadialsPerMileError {
        /// The rule's answer, degrees for a nautical mile.
        rule,
        /// The exact answer.
        exact,
        /// The error, of a single term: 60 for 57.3.
        error,
    }
}

/// Radials to the mile along an arc by the sixty-to-one rule beside the degrees of a mile.
///
/// `60 / D` less `57.3 / D`.
///
/// # Arguments
/// - `arc_radius_nm`: distance of the arc from the station, above 0 to 5000
///
/// # Accuracy
/// 4.7 percent high throughout.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The rule: CNATRA P-871 chapter 4 (`rule_radials_per_mile`).
///
/// # Example
/// ```
/// # use lubberline::plain::rule_radials_per_mile_error;
/// assert_eq!(format!("{:.3}", rule_radials_per_mile_error(12.0)?.error), "0.225");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_radials_per_mile_error(arc_radius_nm: f64) -> Result<RuleRadialsPerMileError, Error> {
    if any_nan(&[arc_radius_nm]) {
        return Ok(RuleRadialsPerMileError::NAN);
    }
    let error = rules::radials_per_mile_error(ArcRadius::named("arc_radius_nm", arc_radius_nm)?);
    Ok(RuleRadialsPerMileError {
        rule: error.rule.get::<ratio>(),
        exact: error.exact.get::<ratio>(),
        error: error.error().get::<ratio>(),
    })
}

outputs! {
    /// The rule of the way back onto an arc beside the least correction: what [`rule_arc_correction_error`] gives. The error is the rule less the exact answer.
    RuleArcCorrectionError {
        /// The rule's answer.
        rule_deg,
        /// The exact answer.
        exact_deg,
        /// The error, of a single term: a proportion for the tangent to a circle.
        error_deg,
    }
}

/// The rule of the way back onto an arc beside the least correction that meets it.
///
/// The rule of `rule_arc_correction_deg` less `acos(D / d)` from outside, less nothing from inside, where the track leads onto the arc by itself.
///
/// # Arguments
/// - `distance_nm`: distance from the station along the ground, 0 to 10 900
/// - `arc_radius_nm`: distance of the arc from the station, above 0 to 5000
///
/// # Accuracy
/// Rounding error of the difference.
///
/// # Degenerate cases
/// Below zero from outside, the arc is passed: the rule has to be renewed on the way.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The rule: CNATRA P-871 chapter 4. The least correction: `arc_least_correction_deg`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_arc_correction_error;
/// assert_eq!(format!("{:.1}", rule_arc_correction_error(10.5, 10.0)?.error_deg), "-7.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_arc_correction_error(
    distance_nm: f64,
    arc_radius_nm: f64,
) -> Result<RuleArcCorrectionError, Error> {
    if any_nan(&[distance_nm, arc_radius_nm]) {
        return Ok(RuleArcCorrectionError::NAN);
    }
    let distance = GroundDistance::named("distance_nm", distance_nm)?;
    let error = rules::arc_correction_error(distance, ArcRadius::named("arc_radius_nm", arc_radius_nm)?);
    Ok(RuleArcCorrectionError {
        rule_deg: error.rule.get::<degree>(),
        exact_deg: error.exact.get::<degree>(),
        error_deg: error.error().get::<degree>(),
    })
}

outputs! {
    /// The rule of the intercept angle beside the exact angle: what [`rule_intercept_angle_error`] gives. The error is the rule less the exact answer.
    RuleInterceptAngleError {
        /// The rule's answer.
        rule_deg,
        /// The exact answer.
        exact_deg,
        /// The error: the sum of the terms.
        error_deg,
        /// At least 20 and at most 90.
        limits_deg,
        /// Twice the angle for that of the triangle.
        doubling_deg,
    }
}

/// The rule of the intercept angle beside the angle that meets the radial halfway to the station, term by term.
///
/// Twice the degrees within 20 and 90, less `atan2(sin d, cos d - 1/2)`: halfway is what doubling the degrees means.
///
/// # Arguments
/// - `off_radial_deg`: degrees to the radial, either way, reduced to half a circle
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// On the radial the exact angle is zero. From 60 degrees on halfway is abeam or behind: the exact angle is 90 degrees and more.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The rule: FAA-H-8083-15 (`rule_intercept_angle_deg`). The exact angle: derived.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_intercept_angle_error;
/// assert_eq!(format!("{:.2}", rule_intercept_angle_error(15.0)?.error_deg), "0.95");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_intercept_angle_error(off_radial_deg: f64) -> Result<RuleInterceptAngleError, Error> {
    if any_nan(&[off_radial_deg]) {
        return Ok(RuleInterceptAngleError::NAN);
    }
    let off_deg = Quantity::DirectionChange.check("off_radial_deg", off_radial_deg)?;
    let error = rules::intercept_angle_error(DirectionChange::new(degrees(off_deg))?);
    let [limits, doubling] = error.terms;
    Ok(RuleInterceptAngleError {
        rule_deg: error.rule.get::<degree>(),
        exact_deg: error.exact.get::<degree>(),
        error_deg: error.error().get::<degree>(),
        limits_deg: limits.get::<degree>(),
        doubling_deg: doubling.get::<degree>(),
    })
}

outputs! {
    /// The lead radials onto a radial by rule beside the exact ones: what [`rule_intercept_lead_error`] gives. The error is the rule less the exact answer.
    RuleInterceptLeadError {
        /// The rule's answer.
        rule_deg,
        /// The exact answer.
        exact_deg,
        /// The error: the sum of the terms.
        error_deg,
        /// 60 for 57.3.
        sixty_deg,
        /// The rule's share for `1 - cos i`.
        share_deg,
        /// The arc for its angle.
        arc_deg,
    }
}

/// The lead onto a radial in radials by rule beside the exact one in still air with an instant roll, term by term.
///
/// The rule of `rule_intercept_lead_deg` less `asin(r (1 - cos i) / D)`.
///
/// # Arguments
/// - `distance_nm`: distance from the station where the turn begins, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
/// - `intercept_angle_deg`: angle of the intercept, above 0 to 90 (default 90.0)
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range, or a turn that begins farther from the radial than from the station.
///
/// # Source
/// The rule: CNATRA P-1215 and P-1265 p. 2-11 (`rule_intercept_lead_deg`). The exact lead: derived.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_intercept_lead_error;
/// assert_eq!(format!("{:.2}", rule_intercept_lead_error(15.0, 2.5, 60.0)?.error_deg), "1.89");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_intercept_lead_error(
    distance_nm: f64,
    turn_radius_nm: f64,
    intercept_angle_deg: f64,
) -> Result<RuleInterceptLeadError, Error> {
    if any_nan(&[distance_nm, turn_radius_nm, intercept_angle_deg]) {
        return Ok(RuleInterceptLeadError::NAN);
    }
    let error = rules::intercept_lead_error(
        ArcRadius::named("distance_nm", distance_nm)?,
        ArcRadius::named("turn_radius_nm", turn_radius_nm)?,
        InterceptAngle::named("intercept_angle_deg", intercept_angle_deg)?,
    )?;
    let [sixty, share, arc] = error.terms;
    Ok(RuleInterceptLeadError {
        rule_deg: error.rule.get::<degree>(),
        exact_deg: error.exact.get::<degree>(),
        error_deg: error.error().get::<degree>(),
        sixty_deg: sixty.get::<degree>(),
        share_deg: share.get::<degree>(),
        arc_deg: arc.get::<degree>(),
    })
}
