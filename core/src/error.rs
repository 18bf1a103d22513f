//! The one error type: which parameter, its value with its unit, and what is allowed.

use crate::leg_reason::LegReason;
use crate::value::Quantity;

/// Why a value was refused or why no answer exists.
///
/// Every variant carries the numbers that led to it, so that the message can be shown to the person who gave
/// them. [`Error::code`] is the same error as a stable number; the C interface returns it as its status.
///
/// # Example
/// ```
/// use lubberline::plain::slant_range_nm;
/// let error = slant_range_nm(-3.0, 9_000.0).unwrap_err();
/// assert_eq!(error.to_string(), "ground_distance_nm is -3 NM; allowed: from 0.0 to 10900.0 NM");
/// ```
#[non_exhaustive]
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum Error {
    /// A value lies outside the range of its quantity.
    #[error(
        "{parameter} is {value}; allowed: {allowed}",
        value = with_unit(*value, *quantity), allowed = quantity.allowed()
    )]
    OutOfRange {
        /// The kind of quantity, with its unit and its range.
        quantity: Quantity,
        /// The parameter as the caller knows it.
        parameter: &'static str,
        /// What was given, in the quantity's unit.
        value: f64,
    },
    /// The outbound course is the reciprocal of the inbound one: no line of roll-out exists.
    #[error(
        "the course change from {inbound_course_deg} deg to {outbound_course_deg} deg is a reversal and has no lead; \
         allowed: a change other than 180 deg (fly a course reversal instead)",
        inbound_course_deg = rough(*inbound_course_deg), outbound_course_deg = rough(*outbound_course_deg)
    )]
    CourseReversal {
        /// The course flown to the fix.
        inbound_course_deg: f64,
        /// The course flown from it.
        outbound_course_deg: f64,
    },
    /// The airspeed cannot hold the course against the wind, or makes no way along it.
    #[error(
        "wind of {wind_speed_kt} kt from {wind_from_deg} deg lets a true airspeed of {true_airspeed_kt} kt make no way \
         along course {course_deg} deg; allowed: a crosswind below the airspeed and a groundspeed above 0 kt",
        wind_speed_kt = shown(*wind_speed_kt), wind_from_deg = shown(*wind_from_deg),
        true_airspeed_kt = rough(*true_airspeed_kt), course_deg = rough(*course_deg)
    )]
    WindTooStrong {
        /// The course to be held.
        course_deg: f64,
        /// The true airspeed.
        true_airspeed_kt: f64,
        /// The direction the wind blows from, against the same north as the course.
        wind_from_deg: f64,
        /// The speed of the wind.
        wind_speed_kt: f64,
    },
    /// The turn does not fit between the radial and the arc.
    #[error(
        "a turn of radius {turn_radius_nm} NM does not join the {arc_radius_nm} NM arc and the radial; \
         allowed: an arc of at least twice the turn radius when turning on its inside, and a wind that lets it close"
    )]
    ArcTooTight {
        /// Radius of the arc about the station.
        arc_radius_nm: f64,
        /// Radius of the turn in still air.
        turn_radius_nm: f64,
    },
    /// The slant range is shorter than the height, or longer than through the earth: no point on the ground answers to it.
    #[error(
        "slant_range_nm is {slant_range_nm} NM; allowed: from the height above or below the station, {height_nm} NM, to the \
         far side of the earth",
        slant_range_nm = shown(*slant_range_nm), height_nm = rough(*height_nm)
    )]
    SlantRangeBelowHeight {
        /// The slant range that was given.
        slant_range_nm: f64,
        /// The height above (or depth below) the station in nautical miles.
        height_nm: f64,
    },
    /// The turn would have to begin, or would end, impossibly far from the fix.
    #[error(
        "the turn needs {needed_nm} NM between the fix and its end or beginning; allowed: up to {allowed_nm} NM \
         (the change is all but a reversal, or the roll takes too long)",
        needed_nm = rough(*needed_nm)
    )]
    LeadTooLong {
        /// The longer of the lead and the distance past the fix at roll-out.
        needed_nm: f64,
        /// The most for which a plane about the fix has a meaning.
        allowed_nm: f64,
    },
    /// A leg of a procedure cannot be flown.
    #[error("leg {leg} ({code}) cannot be flown: {reason}")]
    LegNotFlown {
        /// The leg, counted from one.
        leg: usize,
        /// Its two letters.
        code: &'static str,
        /// What stands in its way.
        reason: LegReason,
    },
    /// A number that a leg of a procedure needs has not been given.
    #[error("leg {leg} ({code}): {parameter} is missing; allowed: {allowed}", allowed = quantity.allowed())]
    LegLacks {
        /// The leg, counted from one.
        leg: usize,
        /// Its two letters.
        code: &'static str,
        /// The kind of quantity, with its unit and its range.
        quantity: Quantity,
        /// The number's name in it.
        parameter: &'static str,
    },
    /// Two points between which a line is to run are one.
    #[error("the two stations are at the same place; allowed: different positions")]
    SamePlace,
    /// Lines on the earth do not meet.
    #[error("{what}; allowed: lines that meet")]
    NoMeeting {
        /// Which do not.
        what: &'static str,
    },
    /// A number that stands for none of a choice's alternatives.
    #[error("{parameter} is {code}; allowed:{allowed}")]
    UnknownChoice {
        /// The parameter as the caller knows it.
        parameter: &'static str,
        /// What was given.
        code: f64,
        /// The codes and their meaning.
        allowed: &'static str,
    },
    /// The levels of a wind profile do not ascend.
    #[error(
        "a level at {upper_ft} ft follows one at {lower_ft} ft; allowed: levels that ascend",
        upper_ft = shown(*upper_ft), lower_ft = shown(*lower_ft)
    )]
    LevelsNotAscending {
        /// The altitude of a level.
        lower_ft: f64,
        /// The altitude of the level given after it.
        upper_ft: f64,
    },
    /// No altitude makes the two speeds one.
    #[error(
        "a calibrated airspeed of {calibrated_airspeed_kt} kt is Mach {mach} at no pressure altitude; \
         allowed: speeds that meet between -16420 and 262467 ft"
    )]
    NoCrossover {
        /// The calibrated airspeed.
        calibrated_airspeed_kt: f64,
        /// The Mach number.
        mach: f64,
    },
    /// Two bearings to a station that do not meet ahead.
    #[error(
        "a station {angle_off_bow_deg} deg off the bow cannot draw aft by {bearing_change_deg} deg; \
         allowed: a sum of the two below 180 deg"
    )]
    BearingsDiverge {
        /// The angle between the track and the first bearing.
        angle_off_bow_deg: f64,
        /// The change of the bearing.
        bearing_change_deg: f64,
    },
    /// No outbound heading closes a holding pattern.
    #[error(
        "no outbound heading closes the holding pattern on inbound course {inbound_course_deg} deg at {true_airspeed_kt} kt \
         in a wind of {wind_speed_kt} kt from {wind_from_deg} deg; allowed: a wind and a time that leave both legs a length \
         (against a headwind inbound, more time outbound)",
        inbound_course_deg = rough(*inbound_course_deg), true_airspeed_kt = rough(*true_airspeed_kt),
        wind_from_deg = shown(*wind_from_deg), wind_speed_kt = shown(*wind_speed_kt)
    )]
    PatternOpen {
        /// The course flown to the fix.
        inbound_course_deg: f64,
        /// The true airspeed.
        true_airspeed_kt: f64,
        /// The direction the wind blows from, against the same north as the course.
        wind_from_deg: f64,
        /// The speed of the wind.
        wind_speed_kt: f64,
    },
    /// No height that is accepted sees as far as that over the curve of the earth.
    #[error(
        "ground_distance_nm is {ground_distance_nm} NM; allowed: up to the radio horizon of the greatest height, \
         {horizon_nm} NM",
        ground_distance_nm = shown(*ground_distance_nm), horizon_nm = rough(*horizon_nm)
    )]
    BeyondHorizon {
        /// The distance that was given.
        ground_distance_nm: f64,
        /// The farthest at which anything is received.
        horizon_nm: f64,
    },
    /// The aircraft is farther off course than from the station.
    #[error(
        "cross_track_nm is {cross_track_nm} NM; allowed: up to the distance from the station, {distance_nm} NM, either side",
        cross_track_nm = shown(*cross_track_nm), distance_nm = shown(*distance_nm)
    )]
    OffCourseBeyondDistance {
        /// The distance off course that was given, right positive.
        cross_track_nm: f64,
        /// The distance from the station.
        distance_nm: f64,
    },
    /// An ident is longer than any station's.
    #[error("the ident has {bytes} bytes; allowed: at most 16")]
    IdentTooLong {
        /// Its length in UTF-8.
        bytes: usize,
    },
    /// Two lines of position run side by side and fix nothing.
    #[error(
        "the lines of position cross at {crossing_angle_deg} deg and give no fix; allowed: lines that cross",
        crossing_angle_deg = rough(*crossing_angle_deg)
    )]
    NoFix {
        /// The angle between them, 0 to 90 degrees.
        crossing_angle_deg: f64,
    },
    /// The calendar has no such date.
    #[error(
        "year {year}, month {month}, day {day} is no date; allowed: whole years and months, a day that the month has"
    )]
    NoSuchDate {
        /// The year.
        year: f64,
        /// The month, counted from one.
        month: f64,
        /// The day of the month, counted from one, with its elapsed fraction.
        day: f64,
    },
    /// The aircraft would pass under a station.
    #[error(
        "the aircraft is {below_ft} ft below the station; allowed: at its elevation or above",
        below_ft = rough(*below_ft)
    )]
    BelowStation {
        /// By how much.
        below_ft: f64,
    },
    /// A value of one of several legs, wind levels or stations lies outside the range of its quantity.
    #[error(
        "{item} {number}: {parameter} is {value}; allowed: {allowed}",
        value = with_unit(*value, *quantity), allowed = quantity.allowed()
    )]
    OutOfRangeAt {
        /// What there are several of: "leg", "wind level", "station".
        item: &'static str,
        /// Which of them, counted from one.
        number: usize,
        /// The kind of quantity, with its unit and its range.
        quantity: Quantity,
        /// The value's name in it.
        parameter: &'static str,
        /// What was given, in the quantity's unit.
        value: f64,
    },
    /// One of the levels of winds aloft does not lie above the one before it.
    #[error(
        "wind level {level} is at {altitude_ft} ft; allowed: above the level before it, at {before_ft} ft",
        altitude_ft = shown(*altitude_ft), before_ft = shown(*before_ft)
    )]
    WindLevelNotAbove {
        /// The level, counted from one.
        level: usize,
        /// Its altitude.
        altitude_ft: f64,
        /// The altitude of the level before it.
        before_ft: f64,
    },
    /// A rhumb line winds about a pole without end, and leads nowhere beyond.
    #[error(
        "the rhumb line on course {course_deg} deg meets a pole after {pole_nm} NM; allowed: a shorter way, or one along a \
         meridian from the pole or to it",
        course_deg = shown(*course_deg), pole_nm = rough(*pole_nm)
    )]
    PoleOnRhumbLine {
        /// The course of the line.
        course_deg: f64,
        /// The length of the line as far as the pole.
        pole_nm: f64,
    },
}

/// A number that was given, without what a conversion between units left in its last digits: twelve of them.
pub(crate) fn shown(value: f64) -> f64 {
    format!("{value:.11e}").parse().unwrap_or(value)
}

/// A number that was computed, in the six digits that a person reads.
pub(crate) fn rough(value: f64) -> f64 {
    format!("{value:.5e}").parse().unwrap_or(value)
}

/// A number for a person, with its unit if it has one.
fn with_unit(value: f64, quantity: Quantity) -> String {
    format!("{} {}", shown(value), quantity.unit()).trim_end().to_owned()
}

/// Every failure that is not a value out of range: its code, its name in the C interface, and the text shown for it.
pub(crate) const RELATION_FAILURES: &[(i32, &str, &str)] = &[
    (-101, "course_reversal", "the course change is a reversal and has no lead"),
    (-102, "wind_too_strong", "the airspeed cannot hold the course against the wind"),
    (-103, "arc_too_tight", "the turn does not fit between the radial and the arc"),
    (
        -104,
        "slant_range_below_height",
        "the slant range is shorter than the height, or longer than through the earth",
    ),
    (-105, "lead_too_long", "the turn would begin or end impossibly far from the fix"),
    (-106, "unknown_choice", "a choice is none of its alternatives"),
    (-107, "levels_not_ascending", "the levels of a wind profile do not ascend"),
    (-108, "no_crossover", "the calibrated airspeed is that Mach number at no pressure altitude"),
    (-109, "bearings_do_not_meet", "the two bearings to the station do not meet"),
    (-110, "leg_not_flown", "a leg of a procedure cannot be flown"),
    (-111, "no_meeting", "the lines do not meet"),
    (-112, "pattern_open", "no outbound heading closes the holding pattern"),
    (-113, "same_place", "two points between which a line is to run are one"),
    (-114, "beyond_horizon", "no height receives the station at that distance"),
    (-115, "off_course_beyond_distance", "the distance off course is more than that from the station"),
    (-116, "ident_too_long", "an ident is longer than 16 bytes"),
    (-117, "no_fix", "the lines of position do not cross and give no fix"),
    (-118, "no_such_date", "the calendar has no such date"),
    (-119, "below_station", "the aircraft is below the station"),
    (-120, "pole_on_rhumb_line", "the rhumb line meets a pole before its end"),
];

impl Error {
    /// The error as a stable negative number: -1 to -99 for a quantity out of range, from -101 for the others.
    pub fn code(&self) -> i32 {
        match self {
            Self::OutOfRange { quantity, .. }
            | Self::OutOfRangeAt { quantity, .. }
            | Self::LegLacks { quantity, .. } => quantity.code(),
            Self::CourseReversal { .. } => -101,
            Self::WindTooStrong { .. } => -102,
            Self::ArcTooTight { .. } => -103,
            Self::SlantRangeBelowHeight { .. } => -104,
            Self::LeadTooLong { .. } => -105,
            Self::UnknownChoice { .. } => -106,
            Self::SamePlace => -113,
            Self::NoMeeting { .. } => -111,
            Self::LegNotFlown { .. } => -110,
            Self::LevelsNotAscending { .. } | Self::WindLevelNotAbove { .. } => -107,
            Self::NoCrossover { .. } => -108,
            Self::BearingsDiverge { .. } => -109,
            Self::PatternOpen { .. } => -112,
            Self::BeyondHorizon { .. } => -114,
            Self::OffCourseBeyondDistance { .. } => -115,
            Self::IdentTooLong { .. } => -116,
            Self::NoFix { .. } => -117,
            Self::NoSuchDate { .. } => -118,
            Self::BelowStation { .. } => -119,
            Self::PoleOnRhumbLine { .. } => -120,
        }
    }

    /// Whether one value by itself was refused (rather than a relation between several).
    pub fn is_out_of_range(&self) -> bool {
        matches!(
            self,
            Self::OutOfRange { .. }
                | Self::UnknownChoice { .. }
                | Self::OutOfRangeAt { .. }
                | Self::LegLacks { .. }
        )
    }

    /// The same error with the place of what it is of among several, counted from one, where it is of a value out of range.
    pub(crate) fn at(self, item: &'static str, number: usize) -> Self {
        match self {
            Self::OutOfRange { quantity, parameter, value } => {
                Self::OutOfRangeAt { item, number, quantity, parameter, value }
            }
            other => other,
        }
    }

    /// The same error for a leg, counted from one, whose numbers are NaN where they have not been given.
    pub(crate) fn of_leg(self, leg: usize, code: &'static str) -> Self {
        match self {
            Self::OutOfRange { quantity, parameter, value } if value.is_nan() => {
                Self::LegLacks { leg, code, quantity, parameter }
            }
            other => other.at("leg", leg),
        }
    }

    /// The leg that was refused, counted from one, where the error is of one of several legs.
    pub fn leg(&self) -> Option<usize> {
        match *self {
            Self::LegNotFlown { leg, .. }
            | Self::LegLacks { leg, .. }
            | Self::OutOfRangeAt { item: "leg", number: leg, .. } => Some(leg),
            _ => None,
        }
    }

    /// The parameter that was refused, where one can be named.
    pub fn parameter(&self) -> Option<&'static str> {
        match self {
            Self::OutOfRange { parameter, .. }
            | Self::UnknownChoice { parameter, .. }
            | Self::OutOfRangeAt { parameter, .. }
            | Self::LegLacks { parameter, .. } => Some(parameter),
            _ => None,
        }
    }
}

/// What a status code means, for callers that see codes only; `None` for a number that is no code.
pub fn status_text(code: i32) -> Option<&'static str> {
    if code == 0 {
        return Some("ok");
    }
    let relation = RELATION_FAILURES.iter().find(|(known, ..)| *known == code).map(|(.., text)| *text);
    relation.or_else(|| {
        Quantity::ALL.iter().find(|quantity| quantity.code() == code).map(|quantity| quantity.status_text())
    })
}
