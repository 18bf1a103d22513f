//! Why a leg of a procedure cannot be flown, with the numbers that it hangs on.

use crate::error::{rough, shown};

/// What stands in the way of a leg: the reason of [`crate::Error::LegNotFlown`].
///
/// Numbers are in the units of their names; the text gives them with what is allowed.
///
/// # Example
/// ```
/// use lubberline::{Error, LegReason};
/// use lubberline::plain::{ConditionsInput, LegCode, LegInput, fly_legs};
/// let begin = LegInput { fix_latitude_deg: 60.0, fix_longitude_deg: -10.0, ..LegInput::new(LegCode::InitialFix) };
/// let climb = LegInput { course_deg: 90.0, altitude_ft: 9_000.0, ..LegInput::new(LegCode::CourseToAltitude) };
/// let level = ConditionsInput::new(200.0, 5_000.0);
/// let error = fly_legs(&[begin, climb], &level).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "leg 2 (CA) cannot be flown: its altitude of 9000 ft is not reached from 5000 ft at 0 ft/min; allowed: a rate toward it"
/// );
/// let Error::LegNotFlown { reason: LegReason::AltitudeNotReached { from_ft, climb_fpm, .. }, .. } = error else { panic!() };
/// assert_eq!((from_ft.round(), climb_fpm), (5_000.0, 0.0));
/// ```
#[non_exhaustive]
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum LegReason {
    /// What hangs on no number: how the legs follow each other.
    #[error("{0}")]
    Sequence(&'static str),
    /// There is no rate of climb.
    #[error(
        "its altitude of {altitude_ft} ft is not reached from {from_ft} ft at {climb_fpm} ft/min; allowed: a rate toward it",
        altitude_ft = shown(*altitude_ft), from_ft = rough(*from_ft), climb_fpm = shown(*climb_fpm)
    )]
    AltitudeNotReached {
        /// The altitude that ends it.
        altitude_ft: f64,
        /// That from which it is to be reached.
        from_ft: f64,
        /// The rate of climb.
        climb_fpm: f64,
    },
    /// The altitude is reached only far ahead.
    #[error(
        "its altitude of {altitude_ft} ft is not reached before {needed_nm} NM; allowed: up to {allowed_nm} NM",
        altitude_ft = shown(*altitude_ft), needed_nm = rough(*needed_nm)
    )]
    AltitudeTooFar {
        /// The altitude that ends it.
        altitude_ft: f64,
        /// How far ahead it is reached.
        needed_nm: f64,
        /// How far ahead an end may be.
        allowed_nm: f64,
    },
    /// No racetrack reaches the altitude.
    #[error(
        "its altitude of {altitude_ft} ft is not reached from {from_ft} ft at {climb_fpm} ft/min; allowed: a rate that reaches \
         it within {rounds} racetracks",
        altitude_ft = shown(*altitude_ft), from_ft = rough(*from_ft), climb_fpm = shown(*climb_fpm)
    )]
    AltitudeNotHeldTo {
        /// The altitude that ends it.
        altitude_ft: f64,
        /// That from which it is to be reached.
        from_ft: f64,
        /// The rate of climb.
        climb_fpm: f64,
        /// The most rounds that are flown.
        rounds: u32,
    },
    /// The distance from its fix has been flown already where it is joined.
    #[error(
        "its distance of {distance_nm} NM from the fix is behind the aircraft by {behind_nm} NM; allowed: a distance ahead of it",
        distance_nm = shown(*distance_nm), behind_nm = rough(*behind_nm)
    )]
    DistanceBehind {
        /// The distance that was given.
        distance_nm: f64,
        /// How far behind the aircraft it ends.
        behind_nm: f64,
    },
    /// The fix that ends it has been passed where it is joined.
    #[error(
        "its fix lies behind where the aircraft joins it by {behind_nm} NM; allowed: a fix ahead",
        behind_nm = rough(*behind_nm)
    )]
    FixBehind {
        /// How far behind.
        behind_nm: f64,
    },
    /// The DME reading is not met on its course.
    #[error(
        "its DME reading of {reading_nm} NM is not met within {allowed_nm} NM; allowed: one that its course meets by then",
        reading_nm = shown(*reading_nm)
    )]
    ReadingNotMet {
        /// The reading that ends it.
        reading_nm: f64,
        /// How far ahead an end may be.
        allowed_nm: f64,
    },
    /// The DME reading is not met on the outbound leg of a racetrack.
    #[error(
        "its outbound leg does not meet its DME reading of {reading_nm} NM within {allowed_s} s; allowed: one that it meets by then",
        reading_nm = shown(*reading_nm)
    )]
    ReadingNotMetOutbound {
        /// The reading that ends the outbound leg.
        reading_nm: f64,
        /// How long it is flown at the most.
        allowed_s: f64,
    },
    /// The radial is not crossed on its course.
    #[error(
        "its radial of {radial_deg} deg is not crossed within {allowed_nm} NM; allowed: one that its course crosses by then",
        radial_deg = shown(*radial_deg)
    )]
    RadialNotCrossed {
        /// The radial that ends it, from the station's north.
        radial_deg: f64,
        /// How far ahead an end may be.
        allowed_nm: f64,
    },
    /// The arc of the next leg is not met on its course.
    #[error(
        "the next arc, of {radius_nm} NM, is not met within {allowed_nm} NM; allowed: a course that meets it by then",
        radius_nm = rough(*radius_nm)
    )]
    NextArcNotMet {
        /// Radius of the arc.
        radius_nm: f64,
        /// How far ahead an end may be.
        allowed_nm: f64,
    },
    /// The course of the next leg is not met on its course.
    #[error(
        "the next course, {across_nm} NM away, is not met within {allowed_nm} NM on course {course_deg} deg; allowed: a course \
         that meets it by then",
        across_nm = rough(*across_nm), course_deg = rough(*course_deg)
    )]
    NextCourseNotMet {
        /// How far away that course is.
        across_nm: f64,
        /// The course over the ground that is flown toward it.
        course_deg: f64,
        /// How far ahead an end may be.
        allowed_nm: f64,
    },
    /// What is left of it is shorter than the lead of the turn after it.
    #[error(
        "it is too short for the turns at its ends: {left_nm} NM are left for a lead of {lead_nm} NM; allowed: at least the lead",
        left_nm = rough(*left_nm), lead_nm = rough(*lead_nm)
    )]
    TooShort {
        /// What is left after the turn before.
        left_nm: f64,
        /// What the turn after takes.
        lead_nm: f64,
    },
    /// What is left of an arc is shorter than the lead of the turn after it.
    #[error(
        "the arc is too short for the turns at its ends: {left_deg} deg are left for a lead of {lead_deg} deg; allowed: at least \
         the lead",
        left_deg = rough(*left_deg), lead_deg = rough(*lead_deg)
    )]
    ArcTooShort {
        /// What is left after the turn before, at the centre.
        left_deg: f64,
        /// What the turn after takes.
        lead_deg: f64,
    },
    /// No turn has the fix dead ahead at its end.
    #[error(
        "its fix, {distance_nm} NM away, is too close for a turn of {radius_nm} NM toward it; allowed: a fix farther off, or a \
         tighter turn",
        distance_nm = rough(*distance_nm), radius_nm = rough(*radius_nm)
    )]
    FixTooClose {
        /// How far away it is.
        distance_nm: f64,
        /// Radius of the turn in still air.
        radius_nm: f64,
    },
    /// A racetrack is begun away from its fix.
    #[error(
        "it does not begin at its fix but {off_nm} NM from it; allowed: up to {allowed_nm} NM (end the leg before it there)",
        off_nm = rough(*off_nm), allowed_nm = rough(*allowed_nm)
    )]
    OffFix {
        /// How far away.
        off_nm: f64,
        /// How far is near enough.
        allowed_nm: f64,
    },
    /// An arc is begun beside it.
    #[error(
        "it does not begin on its arc of {radius_nm} NM but {off_nm} NM off; allowed: up to {allowed_nm} NM (fly by the fix \
         before it)",
        radius_nm = rough(*radius_nm), off_nm = rough(*off_nm), allowed_nm = rough(*allowed_nm)
    )]
    OffArc {
        /// Radius of the arc.
        radius_nm: f64,
        /// How far off.
        off_nm: f64,
        /// How far is near enough.
        allowed_nm: f64,
    },
    /// An arc is begun across it.
    #[error(
        "it is not begun along its arc but at {angle_deg} deg to it; allowed: up to {allowed_deg} deg (fly by the fix before it)",
        angle_deg = rough(*angle_deg)
    )]
    AcrossArc {
        /// The angle between the course and the arc.
        angle_deg: f64,
        /// What is along it.
        allowed_deg: f64,
    },
    /// The course before an arc passes it by.
    #[error(
        "the course before it does not meet its arc of {radius_nm} NM; allowed: a course that does within {allowed_nm} NM",
        radius_nm = rough(*radius_nm)
    )]
    ArcNotMet {
        /// Radius of the arc.
        radius_nm: f64,
        /// How far ahead it may be.
        allowed_nm: f64,
    },
    /// The turn onto an arc would have to begin before the leg.
    #[error(
        "its arc is too close to roll out on it: it is met in {left_nm} NM, and the turn takes a lead of {lead_nm} NM; allowed: \
         at least the lead (end the leg before it earlier)",
        left_nm = rough(*left_nm), lead_nm = rough(*lead_nm)
    )]
    ArcTooClose {
        /// How far ahead the arc is.
        left_nm: f64,
        /// What the turn takes.
        lead_nm: f64,
    },
    /// No turn from a course ends along the arc after it.
    #[error(
        "no turn from its course rolls out on the arc of {radius_nm} NM after it; allowed: an arc of at least twice the radius \
         of the turn where it turns on its inside, and a wind that lets it close",
        radius_nm = rough(*radius_nm)
    )]
    NoTurnOntoArc {
        /// Radius of the arc.
        radius_nm: f64,
    },
    /// The turn onto an arc rolls out past the fix that ends it.
    #[error(
        "the fix of the arc is passed in the turn onto it by {past_deg} deg; allowed: up to {allowed_deg} deg",
        past_deg = rough(*past_deg)
    )]
    FixPassedInTurn {
        /// By how much, at the station.
        past_deg: f64,
        /// How much is none.
        allowed_deg: f64,
    },
    /// The course after an arc leaves it neither along it nor along a radial.
    #[error(
        "the next course leaves the arc at {angle_deg} deg to it; allowed: along it, up to {along_deg} deg, or along a radial of \
         its centre, 90 deg to within {radial_deg} deg",
        angle_deg = rough(*angle_deg)
    )]
    NeitherTangentNorRadial {
        /// The angle between the course and that along the arc, in the sense it is flown in, at the fix.
        angle_deg: f64,
        /// What is along it.
        along_deg: f64,
        /// What is a radial, to either side of a right angle.
        radial_deg: f64,
    },
    /// Turns like these, in this wind, leave no way of flying it.
    #[error(
        "{what} by turns of {radius_nm} NM at a true airspeed of {true_airspeed_kt} kt, in a wind from {wind_from_deg} deg at \
         {wind_speed_kt} kt; allowed: tighter turns, or less wind",
        radius_nm = rough(*radius_nm), true_airspeed_kt = shown(*true_airspeed_kt),
        wind_from_deg = shown(*wind_from_deg), wind_speed_kt = shown(*wind_speed_kt)
    )]
    NoWay {
        /// What cannot be done.
        what: &'static str,
        /// Radius of the turns in still air.
        radius_nm: f64,
        /// The true direction the wind blows from.
        wind_from_deg: f64,
        /// The speed of the wind.
        wind_speed_kt: f64,
        /// The true airspeed.
        true_airspeed_kt: f64,
    },
}

impl From<&'static str> for LegReason {
    fn from(what: &'static str) -> Self {
        Self::Sequence(what)
    }
}
