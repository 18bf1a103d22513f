//! Plain functions of [`crate::rules`]: mental arithmetic, to be set beside the exact functions.

use super::any_nan;
use crate::Error;
use crate::lead::RadialFlown;
use crate::rules::{self, ArcLeadRule, BankRule, RadiusRule};
use crate::value::units::{degree, degrees, nautical_mile, ratio};
use crate::value::{
    ArcRadius, DirectionChange, Dots, Groundspeed, HeightAboveStation, Quantity, StationDistance,
    TrueAirspeed,
};

fn change(course_change_deg: f64) -> Result<DirectionChange, Error> {
    DirectionChange::new(degrees(Quantity::DirectionChange.check("course_change_deg", course_change_deg)?))
}

/// The lead of a course change by mental arithmetic: a third of a mile for each 60 kt, and more for height.
///
/// `(gs / 60) / 3 * change / 90`, and half a nautical mile for each 10 000 ft above 5 000 ft.
///
/// # Arguments
/// - `groundspeed_kt`: groundspeed, 0 to 10 000
/// - `course_change_deg`: change of course, either way, reduced to half a circle
/// - `height_above_station_ft`: height above the station's antenna, -60 000 to 400 000 (default 0.0)
///
/// # Accuracy
/// A rule: short by half at jet speeds, where no one flies the bank of standard rate. See `lead_nm` for the exact lead.
///
/// # Degenerate cases
/// Beyond 90 degrees the proportion goes on, while the exact lead grows like a tangent.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_lead_nm;
/// assert_eq!(format!("{:.2}", rule_lead_nm(180.0, 90.0, 0.0)?), "1.00");
/// assert_eq!(format!("{:.2}", rule_lead_nm(450.0, 60.0, 35_000.0)?), "3.17");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_lead_nm(
    groundspeed_kt: f64,
    course_change_deg: f64,
    height_above_station_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[groundspeed_kt, course_change_deg, height_above_station_ft]) {
        return Ok(f64::NAN);
    }
    let speed = Groundspeed::named("groundspeed_kt", groundspeed_kt)?;
    let height = HeightAboveStation::named("height_above_station_ft", height_above_station_ft)?;
    Ok(rules::rule_lead(speed, change(course_change_deg)?, height).get::<nautical_mile>())
}

/// The DME reading at which mental arithmetic begins the turn: the rule's lead added to the height in miles.
///
/// `(gs / 60) / 3 * change / 90 + height / 6000`.
///
/// # Arguments
/// - `groundspeed_kt`: groundspeed, 0 to 10 000
/// - `course_change_deg`: change of course, either way, reduced to half a circle
/// - `height_above_station_ft`: height above the station's antenna, -60 000 to 400 000 (default 0.0)
///
/// # Accuracy
/// A rule whose two errors work against each other: the lead of standard rate is too short for a fast aircraft, and the sum of distance and
/// height is more than the slant. See `dme_at_roll_in_nm` for the exact reading.
///
/// # Degenerate cases
/// As `rule_lead_nm`.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_reading_nm;
/// assert_eq!(format!("{:.2}", rule_reading_nm(450.0, 60.0, 36_000.0)?), "7.67");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_reading_nm(
    groundspeed_kt: f64,
    course_change_deg: f64,
    height_above_station_ft: f64,
) -> Result<f64, Error> {
    if any_nan(&[groundspeed_kt, course_change_deg, height_above_station_ft]) {
        return Ok(f64::NAN);
    }
    let speed = Groundspeed::named("groundspeed_kt", groundspeed_kt)?;
    let height = HeightAboveStation::named("height_above_station_ft", height_above_station_ft)?;
    Ok(rules::reading(speed, change(course_change_deg)?, height).get::<nautical_mile>())
}

/// The least DME reading overhead by rule: the height in miles, 6 000 ft to the mile.
///
/// `height / 6000`.
///
/// # Arguments
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000
///
/// # Accuracy
/// 1.3 percent high: a nautical mile is 6 076.1 ft. See `least_dme_nm`.
///
/// # Degenerate cases
/// None.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_least_dme_nm;
/// assert_eq!(format!("{:.2}", rule_least_dme_nm(12_000.0)?), "2.00");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_least_dme_nm(height_ft: f64) -> Result<f64, Error> {
    if any_nan(&[height_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    Ok(rules::least_dme(height).get::<nautical_mile>())
}

/// The cone of confusion by rule: as wide on each side as the aircraft is high.
///
/// `height / 6000`, a half-angle of 45 degrees.
///
/// # Arguments
/// - `height_ft`: height above the station's antenna, -60 000 to 400 000
///
/// # Accuracy
/// ICAO Doc 8168 takes 50 degrees, which is wider by 19 percent. See `cone_radius_nm`.
///
/// # Degenerate cases
/// At the station's height and below it the radius is zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_cone_radius_nm;
/// assert_eq!(format!("{:.2}", rule_cone_radius_nm(36_000.0)?), "6.00");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_cone_radius_nm(height_ft: f64) -> Result<f64, Error> {
    if any_nan(&[height_ft]) {
        return Ok(f64::NAN);
    }
    let height = HeightAboveStation::named("height_ft", height_ft)?;
    Ok(rules::cone_radius(height).get::<nautical_mile>())
}

/// The bank of a standard-rate turn by a rule of thumb.
///
/// 15 percent of the speed, a tenth of it and 7, a tenth of it and 5, or 20 percent of it.
///
/// # Arguments
/// - `true_airspeed_kt`: true airspeed (the indicated one for `twenty_percent`), above 0 to 5000
/// - `rule`: which rule
///
/// # Accuracy
/// They contradict each other; the exact bank is `atan(V / 364.07)`. See `bank_for_rate_deg`.
///
/// # Degenerate cases
/// At jet speeds the rules give more bank than anyone flies.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// 15 percent, a tenth and 7, a tenth and 5: common practice. 20 percent: CNATRA P-1215.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_bank_deg;
/// # use lubberline::rules::BankRule;
/// assert_eq!(format!("{:.1}", rule_bank_deg(120.0, BankRule::TenthAndSeven)?), "19.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_bank_deg(true_airspeed_kt: f64, rule: BankRule) -> Result<f64, Error> {
    if any_nan(&[true_airspeed_kt]) {
        return Ok(f64::NAN);
    }
    let speed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    Ok(rules::standard_rate_bank(speed, rule).get::<degree>())
}

/// The radius of a turn by a rule of thumb.
///
/// 0.5 percent of the speed (standard rate), 1 percent (half standard rate), miles a minute less two, or a tenth of their square (30 degrees).
///
/// # Arguments
/// - `speed_kt`: speed, above 0 to 5000
/// - `rule`: which rule
///
/// # Accuracy
/// Within 6 percent of `V / (60 pi)` and `V / (30 pi)`; the last is 10 percent high throughout. See `turn_radius_nm`.
///
/// # Degenerate cases
/// Miles a minute less two is zero below 120 kt.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// CNATRA P-340 p. 6-98; CNATRA P-1282; AFMAN 11-217 (rescinded), as quoted.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_turn_radius_nm;
/// # use lubberline::rules::RadiusRule;
/// assert_eq!(format!("{:.2}", rule_turn_radius_nm(250.0, RadiusRule::OnePercent)?), "2.50");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_turn_radius_nm(speed_kt: f64, rule: RadiusRule) -> Result<f64, Error> {
    if any_nan(&[speed_kt]) {
        return Ok(f64::NAN);
    }
    let speed = TrueAirspeed::named("speed_kt", speed_kt)?;
    Ok(rules::turn_radius(speed, rule).get::<nautical_mile>())
}

/// Radials to the mile along an arc by the sixty-to-one rule.
///
/// `60 / D`; the exact divisor is 57.3.
///
/// # Arguments
/// - `arc_radius_nm`: distance of the arc from the station, above 0 to 5000
///
/// # Accuracy
/// 4.7 percent high.
///
/// # Degenerate cases
/// None in the range.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// CNATRA P-871 chapter 4, Radial Interception from an Arc.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_radials_per_mile;
/// assert_eq!(format!("{:.1}", rule_radials_per_mile(12.0)?), "5.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_radials_per_mile(arc_radius_nm: f64) -> Result<f64, Error> {
    if any_nan(&[arc_radius_nm]) {
        return Ok(f64::NAN);
    }
    Ok(rules::radials_per_mile(ArcRadius::named("arc_radius_nm", arc_radius_nm)?).get::<ratio>())
}

/// The lead in radials for the turn off an arc, by the sixty-to-one rule and a correction.
///
/// `(60 / D) r`, times (90 ± lead) / 90 (`proportion`), or a third more inbound and less outbound inside 10 NM (`third`).
///
/// # Arguments
/// - `arc_radius_nm`: distance of the arc from the station, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
/// - `flown`: whether the radial is flown inbound or outbound
/// - `rule`: which correction
///
/// # Accuracy
/// A rule. See `arc_exit` for the exact lead in wind and with roll.
///
/// # Degenerate cases
/// Where the exact turn toward the station no longer fits, the rules still give a number.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// CNATRA P-871 chapter 4; CNATRA P-1204 p. 76 (4-01), whose text multiplies by the radials per mile where its worked example adds the miles;
/// CNATRA P-1265 p. 2-10 (5-99).
///
/// # Example
/// ```
/// # use lubberline::plain::rule_lead_radials_deg;
/// # use lubberline::{lead::RadialFlown, rules::ArcLeadRule};
/// assert_eq!(format!("{:.1}", rule_lead_radials_deg(10.0, 2.5, RadialFlown::Inbound, ArcLeadRule::Proportion)?), "17.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_lead_radials_deg(
    arc_radius_nm: f64,
    turn_radius_nm: f64,
    flown: RadialFlown,
    rule: ArcLeadRule,
) -> Result<f64, Error> {
    if any_nan(&[arc_radius_nm, turn_radius_nm]) {
        return Ok(f64::NAN);
    }
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    let turn_radius = ArcRadius::named("turn_radius_nm", turn_radius_nm)?;
    Ok(rules::lead_radials(arc, turn_radius, flown, rule).get::<degree>())
}

/// Distance off course by rule, right positive: 200 ft for each dot and each nautical mile from the station.
///
/// `-200 ft dots distance`.
///
/// # Arguments
/// - `deflection_dots`: where the needle stands in dots of two degrees, positive right of centre, -20 to 20
/// - `distance_nm`: distance from the station along the ground, above 0 to 5000
///
/// # Accuracy
/// 6 percent short near the centre: two degrees are 212 ft at a nautical mile. See `cross_track_of_deflection_nm`.
///
/// # Degenerate cases
/// The proportion goes on past the end of the scale.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// Common practice, as printed on training pages for the FAA's written test.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_off_course_nm;
/// assert_eq!(format!("{:.2}", rule_off_course_nm(-2.0, 30.0)?), "1.97");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_off_course_nm(deflection_dots: f64, distance_nm: f64) -> Result<f64, Error> {
    if any_nan(&[deflection_dots, distance_nm]) {
        return Ok(f64::NAN);
    }
    let deflection = Dots::named("deflection_dots", deflection_dots)?;
    let distance = StationDistance::named("distance_nm", distance_nm)?;
    Ok(rules::off_course(deflection, distance).get::<nautical_mile>())
}
