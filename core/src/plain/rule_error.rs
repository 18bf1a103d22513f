//! Plain functions that set a rule of thumb of one step beside the exact answer, term by term.

use super::{any_nan, outputs};
use crate::Error;
use crate::lead::RadialFlown;
use crate::rules::{self, ArcLeadRule, BankRule, RadiusRule};
use crate::value::units::{degree, nautical_mile, second};
use crate::value::{
    ArcRadius, BearingDrift, ConeHalfAngle, Dots, ElapsedTime, HeightAboveStation, StationDistance,
    TrueAirspeed,
};

outputs! {
    /// The rule of the least DME beside the height itself: what [`rule_least_dme_error`] gives. The error is the rule less the exact answer.
    RuleLeastDmeError {
        /// The rule's answer.
        rule_nm,
        /// The exact answer.
        exact_nm,
        /// The error, of a single term: a nautical mile of 6 000 ft.
        error_nm,
    }
}

/// The rule of the least DME overhead beside the height itself.
///
/// `h / 6000` less `h`.
///
/// # Arguments
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000
///
/// # Accuracy
/// 1.3 percent high throughout.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The rule: common practice (`rule_least_dme_nm`).
///
/// # Example
/// ```
/// # use lubberline::plain::rule_least_dme_error;
/// assert_eq!(format!("{:.3}", rule_least_dme_error(36_000.0)?.error_nm), "0.075");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_least_dme_error(height_ft: f64) -> Result<RuleLeastDmeError, Error> {
    if any_nan(&[height_ft]) {
        return Ok(RuleLeastDmeError::NAN);
    }
    let error = rules::least_dme_error(HeightAboveStation::named("height_ft", height_ft)?);
    Ok(RuleLeastDmeError {
        rule_nm: error.rule.get::<nautical_mile>(),
        exact_nm: error.exact.get::<nautical_mile>(),
        error_nm: error.error().get::<nautical_mile>(),
    })
}

outputs! {
    /// The rule of the cone beside that of a half-angle: what [`rule_cone_radius_error`] gives. The error is the rule less the exact answer.
    RuleConeRadiusError {
        /// The rule's answer.
        rule_nm,
        /// The exact answer.
        exact_nm,
        /// The error: the sum of the terms.
        error_nm,
        /// A nautical mile of 6 000 ft.
        mile_nm,
        /// 45 degrees for the half-angle.
        angle_nm,
    }
}

/// The rule of the cone of confusion beside the cone of a half-angle, term by term.
///
/// `h / 6000` less `h tan(half-angle)`.
///
/// # Arguments
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000
/// - `cone_half_angle_deg`: half-angle from the vertical, above 0 below 90 (default 50.0)
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// At the station's height and below it both are zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The rule: common practice (`rule_cone_radius_nm`); 50 degrees: `cone_radius_nm`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_cone_radius_error;
/// assert_eq!(format!("{:.2}", rule_cone_radius_error(36_000.0, 50.0)?.angle_nm), "-1.14");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_cone_radius_error(
    height_ft: f64,
    cone_half_angle_deg: f64,
) -> Result<RuleConeRadiusError, Error> {
    if any_nan(&[height_ft, cone_half_angle_deg]) {
        return Ok(RuleConeRadiusError::NAN);
    }
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    let half_angle = ConeHalfAngle::named("cone_half_angle_deg", cone_half_angle_deg)?;
    let error = rules::cone_radius_error(height, half_angle);
    let [mile, angle] = error.terms;
    Ok(RuleConeRadiusError {
        rule_nm: error.rule.get::<nautical_mile>(),
        exact_nm: error.exact.get::<nautical_mile>(),
        error_nm: error.error().get::<nautical_mile>(),
        mile_nm: mile.get::<nautical_mile>(),
        angle_nm: angle.get::<nautical_mile>(),
    })
}

outputs! {
    /// A rule of the bank beside that of standard rate: what [`rule_bank_error`] gives. The error is the rule less the exact answer.
    RuleBankError {
        /// The rule's answer.
        rule_deg,
        /// The exact answer.
        exact_deg,
        /// The error, of a single term: the rule's line for an arctangent.
        error_deg,
    }
}

/// A rule of the bank of a standard-rate turn beside the exact bank.
///
/// The rule less `atan(V / 364.07)`.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed (the indicated one for `twenty_percent`), above 0 to 5000
/// - `rule`: which rule
///
/// # Accuracy
/// Rounding error of the difference; the rules contradict each other.
///
/// # Degenerate cases
/// At jet speeds the rules give more bank than anyone flies.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Named at `rule_bank_deg`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_bank_error;
/// # use lubberline::rules::BankRule;
/// assert_eq!(format!("{:.1}", rule_bank_error(120.0, BankRule::TenthAndSeven)?.error_deg), "0.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_bank_error(true_airspeed_kt: f64, rule: BankRule) -> Result<RuleBankError, Error> {
    if any_nan(&[true_airspeed_kt]) {
        return Ok(RuleBankError::NAN);
    }
    let speed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let error = rules::standard_rate_bank_error(speed, rule)?;
    Ok(RuleBankError {
        rule_deg: error.rule.get::<degree>(),
        exact_deg: error.exact.get::<degree>(),
        error_deg: error.error().get::<degree>(),
    })
}

outputs! {
    /// A rule of the radius beside that of the turn it is for: what [`rule_turn_radius_error`] gives. The error is the rule less the exact answer.
    RuleTurnRadiusError {
        /// The rule's answer.
        rule_nm,
        /// The exact answer.
        exact_nm,
        /// The error, of a single term: the rule's round number.
        error_nm,
    }
}

/// A rule of the radius of a turn beside the radius of the turn that it is for.
///
/// The rule less `V / (60 pi)`, `V / (30 pi)` or `V^2 / (g tan 30)`.
///
/// # Arguments
/// - `speed_kt`: speed, above 0 to 5000
/// - `rule`: which rule
///
/// # Accuracy
/// Standard and half standard rate: 6 percent short. A tenth of the square: 10 percent long.
///
/// # Degenerate cases
/// Miles a minute less two is zero below 120 kt.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Named at `rule_turn_radius_nm`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_turn_radius_error;
/// # use lubberline::rules::RadiusRule;
/// assert_eq!(format!("{:.3}", rule_turn_radius_error(250.0, RadiusRule::OnePercent)?.error_nm), "-0.153");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_turn_radius_error(speed_kt: f64, rule: RadiusRule) -> Result<RuleTurnRadiusError, Error> {
    if any_nan(&[speed_kt]) {
        return Ok(RuleTurnRadiusError::NAN);
    }
    let error = rules::turn_radius_error(TrueAirspeed::named("speed_kt", speed_kt)?, rule);
    Ok(RuleTurnRadiusError {
        rule_nm: error.rule.get::<nautical_mile>(),
        exact_nm: error.exact.get::<nautical_mile>(),
        error_nm: error.error().get::<nautical_mile>(),
    })
}

outputs! {
    /// The rule of the distance off course beside the exact one: what [`rule_off_course_error`] gives. The error is the rule less the exact answer.
    RuleOffCourseError {
        /// The rule's answer.
        rule_nm,
        /// The exact answer.
        exact_nm,
        /// The error: the sum of the terms.
        error_nm,
        /// 200 ft for 212 to a dot and a mile.
        dot_nm,
        /// The angle for its sine.
        sine_nm,
    }
}

/// The rule of the distance off course beside the exact one, term by term.
///
/// `-200 ft dots distance` less `-R asin(sin(d / R) sin(2 dots))`.
///
/// # Arguments
/// - `deflection_dots`: where the needle stands in dots of two degrees, positive right of centre, -20 to 20
/// - `distance_nm`: distance from the station along the ground, above 0 to 5000
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// On course there is no error.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The rule: common practice (`rule_off_course_nm`). The exact distance: `cross_track_of_deflection_nm`.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_off_course_error;
/// assert_eq!(format!("{:.3}", rule_off_course_error(-2.0, 30.0)?.dot_nm), "-0.119");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_off_course_error(deflection_dots: f64, distance_nm: f64) -> Result<RuleOffCourseError, Error> {
    if any_nan(&[deflection_dots, distance_nm]) {
        return Ok(RuleOffCourseError::NAN);
    }
    let deflection = Dots::named("deflection_dots", deflection_dots)?;
    let distance = StationDistance::named("distance_nm", distance_nm)?;
    let error = rules::off_course_error(deflection, distance);
    let [dot, sine] = error.terms;
    Ok(RuleOffCourseError {
        rule_nm: error.rule.get::<nautical_mile>(),
        exact_nm: error.exact.get::<nautical_mile>(),
        error_nm: error.error().get::<nautical_mile>(),
        dot_nm: dot.get::<nautical_mile>(),
        sine_nm: sine.get::<nautical_mile>(),
    })
}

outputs! {
    /// The lead radials by rule beside the exact ones: what [`rule_lead_radials_error`] gives. The error is the rule less the exact answer.
    RuleLeadRadialsError {
        /// The rule's answer.
        rule_deg,
        /// The exact answer.
        exact_deg,
        /// The error: the sum of the terms.
        error_deg,
        /// 60 for 57.3.
        sixty_deg,
        /// The rule's correction for the direction of the radial, which is there to make up for the next term.
        correction_deg,
        /// `r / D` for `asin(r / (D - r))` inbound, `asin(r / (D + r))` outbound.
        geometry_deg,
    }
}

/// The lead radials off an arc by rule beside the exact ones in still air with an instant roll, term by term.
///
/// The rule of `rule_lead_radials_deg` less `asin(r / (D - r))` inbound, `asin(r / (D + r))` outbound.
///
/// # Arguments
/// - `arc_radius_nm`: distance of the arc from the station, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
/// - `flown`: whether the radial is flown inbound or outbound
/// - `rule`: which correction
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
/// Named at `rule_lead_radials_deg`; the exact lead is derived from the geometry of tangent circles.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_lead_radials_error;
/// # use lubberline::{lead::RadialFlown, rules::ArcLeadRule};
/// assert_eq!(format!("{:.2}", rule_lead_radials_error(10.0, 2.5, RadialFlown::Inbound, ArcLeadRule::Proportion)?.error_deg), "-1.97");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_lead_radials_error(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    flown: RadialFlown,
    rule: ArcLeadRule,
) -> Result<RuleLeadRadialsError, Error> {
    if any_nan(&[arc_radius_nm, turn_radius_nm]) {
        return Ok(RuleLeadRadialsError::NAN);
    }
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    let turn = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    let error = rules::lead_radials_error(arc, turn, flown, rule)?;
    let [sixty, correction, geometry] = error.terms;
    Ok(RuleLeadRadialsError {
        rule_deg: error.rule.get::<degree>(),
        exact_deg: error.exact.get::<degree>(),
        error_deg: error.error().get::<degree>(),
        sixty_deg: sixty.get::<degree>(),
        correction_deg: correction.get::<degree>(),
        geometry_deg: geometry.get::<degree>(),
    })
}

outputs! {
    /// The rule of the time to a station beside the time itself: what [`rule_time_to_station_error`] gives. The error is the rule less the exact answer.
    RuleTimeToStationError {
        /// The rule's answer.
        rule_s,
        /// The exact answer.
        exact_s,
        /// The error: the sum of the terms.
        error_s,
        /// 60 for 57.3.
        sixty_s,
        /// The angle for its sine.
        sine_s,
    }
}

/// The rule of the time to a station abeam beside the time itself, term by term.
///
/// `60 t / c` with the change in degrees less `t / sin(c)`.
///
/// # Arguments
/// - `elapsed_s`: time between the two bearings, above 0 to 1 000 000
/// - `bearing_change_deg`: change of the bearing, above 0 below 180
///
/// # Accuracy
/// The terms sum to the whole to rounding error.
///
/// # Degenerate cases
/// The terms cancel at 30 degrees.
///
/// # Errors
/// A value outside its range, or a change of 90 degrees and more, which a station abeam cannot make.
///
/// # Source
/// The rule: FAA-H-8083-15 (`time_to_station_rule_s`). The exact time: the law of sines.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_time_to_station_error;
/// assert_eq!(format!("{:.1}", rule_time_to_station_error(75.0, 10.0)?.error_s), "18.1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_time_to_station_error(
    elapsed_s: f64,
    bearing_change_deg: f64,
) -> Result<RuleTimeToStationError, Error> {
    if any_nan(&[elapsed_s, bearing_change_deg]) {
        return Ok(RuleTimeToStationError::NAN);
    }
    let elapsed = ElapsedTime::named("elapsed_s", elapsed_s)?;
    let change = BearingDrift::named("bearing_change_deg", bearing_change_deg)?;
    let error = rules::time_to_station_error(elapsed, change)?;
    let [sixty, sine] = error.terms;
    Ok(RuleTimeToStationError {
        rule_s: error.rule.get::<second>(),
        exact_s: error.exact.get::<second>(),
        error_s: error.error().get::<second>(),
        sixty_s: sixty.get::<second>(),
        sine_s: sine.get::<second>(),
    })
}
