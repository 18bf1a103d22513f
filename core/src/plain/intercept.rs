//! Plain functions of intercepts: of a course from beside it, of a radial from another, at double the angle, and by rule.

use super::lead::wind;
use super::turn::turn_limits;
use super::{any_nan, outputs};
use crate::Error;
use crate::lead::{self, RadialFlown};
use crate::procedure;
use crate::rules;
use crate::value::units::{degree, degrees, knot, nautical_mile, nautical_miles, second};
use crate::value::{
    ArcRadius, Bearing, DirectionChange, GroundDistance, InterceptAngle, Quantity, TrueAirspeed, TrueNorth,
};

outputs! {
    /// How a course is intercepted: what [`intercept`] gives.
    Intercept {
        /// Direction over the ground to the course.
        track_deg,
        /// Heading that holds it.
        heading_deg,
        /// Groundspeed on the way.
        groundspeed_kt,
        /// Distance over the ground to the course.
        distance_nm,
        /// Time to the course.
        time_s,
        /// Distance gained along the course on the way.
        along_nm,
        /// Distance before the course, along the track, at which the turn onto it begins.
        lead_nm,
        /// Distance over the ground to where the turn begins; negative where that is behind.
        distance_to_roll_in_nm,
        /// Time to where the turn begins; negative where that is behind.
        time_to_roll_in_s,
        /// Cross-track at which the turn begins, positive right of the course.
        cross_track_at_roll_in_nm,
    }
}

/// Heading, distance and time to intercept a course from beside it at an angle, in wind, and the lead of the turn onto it.
///
/// `|x| / sin(angle)` to the course and `|x| / tan(angle)` along it, flown on the heading that holds that track; the
/// turn onto the course begins its lead before, as `lead_nm` has it.
///
/// # Arguments
/// - `course_deg`: the course, any finite number
/// - `cross_track_nm`: where the aircraft is, positive right of the course, -5000 to 5000
/// - `intercept_angle_deg`: angle at which the course is intercepted, above 0 to 90
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// Rounding error on a plane; 1e-4 of the distance on the ellipsoid within 60 NM, with the cross-track measured on
/// it.
///
/// # Degenerate cases
/// On the course the track is the course; distance, time and lead are zero. Closer than the turn needs, the distance
/// to roll-in is negative.
///
/// # Errors
/// A value outside its range, a course or a way to it that the airspeed cannot hold.
///
/// # Source
/// The right triangle of cross-track and track; the lead as `lead_nm`.
///
/// # Example
/// ```
/// # use lubberline::plain::intercept;
/// assert_eq!(format!("{:.1}", intercept(90.0, -4.0, 30.0, 180.0, 40.0, 35.0, 25.0, 3.0, 5.0)?.heading_deg), "109.0");
/// assert_eq!(format!("{:.2}", intercept(90.0, -4.0, 30.0, 180.0, 40.0, 35.0, 25.0, 3.0, 5.0)?.distance_to_roll_in_nm), "7.65");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn intercept(
    course_deg: f64,
    cross_track_nm: f64,
    intercept_angle_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<Intercept, Error> {
    if any_nan(&[
        course_deg,
        cross_track_nm,
        intercept_angle_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(Intercept::NAN);
    }
    let onto = procedure::Intercept::<TrueNorth>::new(
        Bearing::named("course_deg", course_deg)?,
        nautical_miles(Quantity::CrossTrack.check("cross_track_nm", cross_track_nm)?),
        InterceptAngle::named("intercept_angle_deg", intercept_angle_deg)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    Ok(Intercept {
        track_deg: onto.track().angle().get::<degree>(),
        heading_deg: onto.crab().heading.angle().get::<degree>(),
        groundspeed_kt: onto.crab().groundspeed.value().get::<knot>(),
        distance_nm: onto.distance().value().get::<nautical_mile>(),
        time_s: onto.time().get::<second>(),
        along_nm: onto.along().get::<nautical_mile>(),
        lead_nm: onto.turn().lead().get::<nautical_mile>(),
        distance_to_roll_in_nm: onto.distance_to_roll_in().get::<nautical_mile>(),
        time_to_roll_in_s: onto.time_to_roll_in().get::<second>(),
        cross_track_at_roll_in_nm: onto.cross_track_at_roll_in().get::<nautical_mile>(),
    })
}

outputs! {
    /// The lead onto a radial: what [`radial_intercept`] gives.
    RadialIntercept {
        /// Heading that holds the track to the radial.
        heading_deg,
        /// Groundspeed on it.
        groundspeed_kt,
        /// Distance from the station at which the track crosses the radial.
        crossing_distance_nm,
        /// Distance along the track to there.
        distance_to_crossing_nm,
        /// Distance before it at which the turn begins.
        lead_nm,
        /// Time to where the turn begins; negative where that is behind.
        time_to_roll_in_s,
        /// Radial on which the turn begins.
        radial_at_roll_in_deg,
        /// Ground distance from the station at which the turn begins.
        distance_at_roll_in_nm,
        /// Degrees of the needle from its centre there, with the course set that is to be flown; positive when the
        /// course lies to the right.
        needle_at_roll_in_deg,
        /// Cross-track at which the turn begins, positive right of the course.
        cross_track_at_roll_in_nm,
        /// Distance from the station at which the wings are level on the radial; negative past the station.
        distance_at_roll_out_nm,
        /// From roll-in to wings level.
        turn_duration_s,
    }
}

/// Where the turn onto a radial begins, from another radial along any track, in wind and with roll: distance, radial and needle.
///
/// With p, t and w the aircraft, the track and the radial from the station, the track crosses the radial at `s = -(p
/// x w) / (t x w)`; the turn begins its lead L before that, as `lead_nm` has it.
///
/// # Arguments
/// - `radial_deg`: radial on which the aircraft is, any finite number
/// - `distance_nm`: its ground distance from the station, 0 to 10 900
/// - `wanted_radial_deg`: radial to intercept
/// - `flown`: whether the radial is then flown inbound or outbound
/// - `track_deg`: direction flown over the ground to the radial, against the station's north
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
/// - `bank_limit_deg`: greatest bank, above 0 below 90 (default 25.0)
/// - `turn_rate_limit_deg_per_s`: greatest rate of turn, above 0 (default 3.0)
/// - `roll_rate_deg_per_s`: rate of roll, above 0, infinite for an instant roll (default 5.0)
///
/// # Accuracy
/// Rounding error on a plane about the station; 1e-4 of the distance within 60 NM.
///
/// # Degenerate cases
/// On the radial, and closer to it than the lead, the time to roll-in is negative. Distances count along the ground.
///
/// # Errors
/// A value outside its range, a track that is parallel to the radial, leads away from it or crosses its line on the
/// other side of the station, a reversal, a wind that the airspeed cannot hold.
///
/// # Source
/// Derived from the crossing of two lines and the equilibrium of a coordinated turn.
///
/// # Example
/// ```
/// # use lubberline::plain::radial_intercept;
/// # use lubberline::lead::RadialFlown;
/// assert_eq!(format!("{:.2}", radial_intercept(180.0, 30.0, 200.0, RadialFlown::Inbound, 335.0, 240.0, 250.0, 40.0, 25.0, 3.0, 5.0)?.distance_at_roll_in_nm), "18.61");
/// assert_eq!(format!("{:.2}", radial_intercept(180.0, 30.0, 200.0, RadialFlown::Inbound, 335.0, 240.0, 250.0, 40.0, 25.0, 3.0, 5.0)?.needle_at_roll_in_deg), "-2.07");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn radial_intercept(
    radial_deg: f64,
    distance_nm: f64,
    wanted_radial_deg: f64,
    flown: RadialFlown,
    track_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
    bank_limit_deg: f64,
    turn_rate_limit_deg_per_s: f64,
    roll_rate_deg_per_s: f64,
) -> Result<RadialIntercept, Error> {
    if any_nan(&[
        radial_deg,
        distance_nm,
        wanted_radial_deg,
        track_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
    ]) {
        return Ok(RadialIntercept::NAN);
    }
    let onto = lead::RadialIntercept::<TrueNorth>::new(
        Bearing::named("radial_deg", radial_deg)?,
        GroundDistance::named("distance_nm", distance_nm)?,
        Bearing::named("wanted_radial_deg", wanted_radial_deg)?,
        flown,
        Bearing::named("track_deg", track_deg)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
        &turn_limits(bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)?,
    )?;
    let before = onto.change().before();
    Ok(RadialIntercept {
        heading_deg: before.heading.angle().get::<degree>(),
        groundspeed_kt: before.groundspeed.value().get::<knot>(),
        crossing_distance_nm: onto.crossing().value().get::<nautical_mile>(),
        distance_to_crossing_nm: onto.distance_to_crossing().value().get::<nautical_mile>(),
        lead_nm: onto.change().lead().get::<nautical_mile>(),
        time_to_roll_in_s: onto.time_to_roll_in().get::<second>(),
        radial_at_roll_in_deg: onto.radial_at_roll_in().angle().get::<degree>(),
        distance_at_roll_in_nm: onto.distance_at_roll_in().value().get::<nautical_mile>(),
        needle_at_roll_in_deg: onto.needle_at_roll_in().angle().get::<degree>(),
        cross_track_at_roll_in_nm: onto.cross_track_at_roll_in().get::<nautical_mile>(),
        distance_at_roll_out_nm: onto.distance_at_roll_out().get::<nautical_mile>(),
        turn_duration_s: onto.change().turn().duration().get::<second>(),
    })
}

outputs! {
    /// An intercept at double the angle: what [`double_angle_intercept`] gives.
    DoubleAngle {
        /// Direction over the ground to the radial.
        track_deg,
        /// Heading that holds it.
        heading_deg,
        /// Distance to the radial, and from there to the station.
        distance_nm,
        /// Time to the radial.
        time_s,
        /// Time from there to the station.
        time_to_station_s,
    }
}

/// The intercept of a radial toward the station at twice the degrees to it, exactly.
///
/// From the distance d and a degrees off the radial, the way to it is as long as what is left to the station: `d / (2
/// cos(a))`.
///
/// # Arguments
/// - `radial_deg`: radial on which the aircraft is, any finite number
/// - `distance_nm`: its ground distance from the station, 0 to 10 900
/// - `wanted_radial_deg`: radial to intercept
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the same north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
///
/// # Accuracy
/// Rounding error on a plane. Turns are left out.
///
/// # Degenerate cases
/// On the radial the way is the radial, and half the distance is left.
///
/// # Errors
/// A value outside its range, more than 45 degrees off the radial, a course that the airspeed cannot hold.
///
/// # Source
/// The isosceles triangle; the technique: CNATRA P-340 chapter 6, 609.
///
/// # Example
/// ```
/// # use lubberline::plain::double_angle_intercept;
/// assert_eq!(format!("{:.2}", double_angle_intercept(150.0, 24.0, 135.0, 200.0, 20.0, 50.0)?.distance_nm), "12.42");
/// assert_eq!(format!("{:.1}", double_angle_intercept(150.0, 24.0, 135.0, 200.0, 20.0, 50.0)?.heading_deg), "353.2");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn double_angle_intercept(
    radial_deg: f64,
    distance_nm: f64,
    wanted_radial_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<DoubleAngle, Error> {
    if any_nan(&[radial_deg, distance_nm, wanted_radial_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt])
    {
        return Ok(DoubleAngle::NAN);
    }
    let found = procedure::double_angle::<TrueNorth>(
        Bearing::named("radial_deg", radial_deg)?,
        GroundDistance::named("distance_nm", distance_nm)?,
        Bearing::named("wanted_radial_deg", wanted_radial_deg)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
    )?;
    Ok(DoubleAngle {
        track_deg: found.track.angle().get::<degree>(),
        heading_deg: found.crab.heading.angle().get::<degree>(),
        distance_nm: found.distance.value().get::<nautical_mile>(),
        time_s: found.time.get::<second>(),
        time_to_station_s: found.time_to_station.get::<second>(),
    })
}

/// The angle at which to intercept a radial by rule: twice the degrees to it, at least 20 and at most 90.
///
/// `2 * degrees`, within 20 and 90.
///
/// # Arguments
/// - `off_radial_deg`: degrees to the radial, either way, reduced to half a circle
///
/// # Accuracy
/// A rule.
///
/// # Degenerate cases
/// On the radial it still says 20 degrees.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// FAA-H-8083-15 (Instrument Flying Handbook), from memory.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_intercept_angle_deg;
/// assert_eq!(format!("{:.0}", rule_intercept_angle_deg(15.0)?), "30");
/// assert_eq!(format!("{:.0}", rule_intercept_angle_deg(4.0)?), "20");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_intercept_angle_deg(off_radial_deg: f64) -> Result<f64, Error> {
    if any_nan(&[off_radial_deg]) {
        return Ok(f64::NAN);
    }
    let off_deg = Quantity::DirectionChange.check("off_radial_deg", off_radial_deg)?;
    Ok(rules::intercept_angle(DirectionChange::new(degrees(off_deg))?).get::<degree>())
}

/// The lead onto a radial in radials by the sixty-to-one rule and a share for the angle of the intercept.
///
/// `(60 / D) r`, times a third at 45 degrees, two thirds at 60, nothing up to 30; in between interpolated.
///
/// # Arguments
/// - `distance_nm`: distance from the station, above 0 to 5000
/// - `turn_radius_nm`: radius of the turn, above 0 to 5000
/// - `intercept_angle_deg`: angle of the intercept, above 0 to 90 (default 90.0)
///
/// # Accuracy
/// The exact share is `1 - cos(angle)`: 0.13 at 30 degrees, 0.29 at 45, 0.5 at 60. See `radial_intercept`.
///
/// # Degenerate cases
/// Close to the station it gives more radials than there are.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// A third at 45 degrees: CNATRA P-1215, course intercepts. That, two thirds at 60, the whole at 90 and very little below 30: CNATRA P-1265
/// p. 2-11 (5-99), there of arcs. The library's own reading: nothing to 30 degrees, and straight lines from 30 to 45, to 60 and to the whole at 90.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_intercept_lead_deg;
/// assert_eq!(format!("{:.2}", rule_intercept_lead_deg(15.0, 2.5, 45.0)?), "3.33");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_intercept_lead_deg(
    distance_nm: f64,
    turn_radius_nm: f64,
    intercept_angle_deg: f64,
) -> Result<f64, Error> {
    if any_nan(&[distance_nm, turn_radius_nm, intercept_angle_deg]) {
        return Ok(f64::NAN);
    }
    let lead = rules::intercept_lead(
        ArcRadius::named("distance_nm", distance_nm)?,
        ArcRadius::named("turn_radius_nm", turn_radius_nm)?,
        InterceptAngle::named("intercept_angle_deg", intercept_angle_deg)?,
    );
    Ok(lead.get::<degree>())
}
