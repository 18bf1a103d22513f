//! Plain functions of a DME arc flown in a wind: heading, bank and time, straight legs, and the way back onto it.

use super::lead::wind;
use super::{any_nan, outputs};
use crate::Error;
use crate::lead::ArcSense;
use crate::procedure::{self, ChordPlacement};
use crate::rules;
use crate::value::units::{degree, degrees, knot, nautical_mile, second};
use crate::value::{ArcRadius, Bearing, DirectionChange, GroundDistance, Quantity, TrueAirspeed, TrueNorth};

outputs! {
    /// What is flown at one bearing of an arc: what [`arc_heading`] gives.
    ArcHeading {
        /// Direction over the ground.
        track_deg,
        /// Heading that holds it.
        heading_deg,
        /// Groundspeed along the arc.
        groundspeed_kt,
        /// Heading less track, right positive.
        wind_correction_deg,
        /// Where the station is from the nose, right positive: 90 or -90 in calm air.
        station_off_nose_deg,
        /// By how much the bearing pointer is kept ahead of the wing tip; behind it when negative.
        ahead_of_wing_tip_deg,
        /// Bank that bends the path over the ground along the arc, positive toward the station.
        bank_deg,
    }
}

/// The heading at one bearing of a DME arc in a wind, where the bearing pointer then stands, and the bank that keeps to the arc.
///
/// The track is square to the radial; the wind correction moves the station off the wing tip by as much. The heading
/// turns at `(GS / D)(1 - (Vw / V) cos(w) / cos(c))`, with c the wind correction and w the angle from the track to
/// where the wind comes from.
///
/// # Arguments
/// - `radial_deg`: radial on which the aircraft is, any finite number
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 1000
/// - `sense`: which way round the station the arc is flown
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the radials' north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
///
/// # Accuracy
/// Rounding error on a plane.
///
/// # Degenerate cases
/// In a wind near the airspeed the heading may have to turn away from the station for a while: the bank is negative
/// there. An arc counts along the ground; `ground_distance_nm` turns the DME reading that is flown into it.
///
/// # Errors
/// A value outside its range, a track that the airspeed cannot hold.
///
/// # Source
/// The triangle of velocities, differentiated along the arc.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_heading;
/// # use lubberline::lead::ArcSense;
/// assert_eq!(format!("{:.1}", arc_heading(130.0, 12.0, ArcSense::Clockwise, 160.0, 310.0, 30.0)?.heading_deg), "230.8");
/// assert_eq!(format!("{:.1}", arc_heading(130.0, 12.0, ArcSense::Clockwise, 160.0, 310.0, 30.0)?.ahead_of_wing_tip_deg), "10.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_heading(
    radial_deg: f64,
    arc_radius_nm: f64,
    sense: ArcSense,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<ArcHeading, Error> {
    if any_nan(&[radial_deg, arc_radius_nm, true_airspeed_kt, wind_from_deg, wind_speed_kt]) {
        return Ok(ArcHeading::NAN);
    }
    let here = procedure::on_arc::<TrueNorth>(
        Bearing::named("radial_deg", radial_deg)?,
        ArcRadius::named("arc_radius_nm", arc_radius_nm)?,
        sense,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
    )?;
    Ok(ArcHeading {
        track_deg: here.track.angle().get::<degree>(),
        heading_deg: here.crab.heading.angle().get::<degree>(),
        groundspeed_kt: here.crab.groundspeed.value().get::<knot>(),
        wind_correction_deg: here.crab.wind_correction.get::<degree>(),
        station_off_nose_deg: here.station_off_nose.angle().get::<degree>(),
        ahead_of_wing_tip_deg: here.ahead_of_wing_tip.get::<degree>(),
        bank_deg: here.bank.get::<degree>(),
    })
}

outputs! {
    /// An arc from one radial to another: what [`arc_flown`] gives.
    ArcFlown {
        /// Angle at the station, in the sense of the arc.
        angle_deg,
        /// Length of the arc.
        distance_nm,
        /// Time along it.
        time_s,
    }
}

/// How long a DME arc from one radial to another is, and how long it takes in a wind.
///
/// `D a`, and the integral of `D / GS` over the bearing.
///
/// # Arguments
/// - `from_radial_deg`: radial on which the arc begins, any finite number
/// - `to_radial_deg`: radial on which it ends
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 1000
/// - `sense`: which way round the station the arc is flown
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the radials' north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
///
/// # Accuracy
/// 1e-10 of the time for winds to half the airspeed.
///
/// # Degenerate cases
/// From a radial to itself there is no arc, not a full circle.
///
/// # Errors
/// A value outside its range, a track on the way that the airspeed cannot hold.
///
/// # Source
/// The triangle of velocities, integrated.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_flown;
/// # use lubberline::lead::ArcSense;
/// assert_eq!(format!("{:.1}", arc_flown(20.0, 110.0, 10.0, ArcSense::Clockwise, 160.0, 310.0, 45.0)?.time_s), "291.2");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_flown(
    from_radial_deg: f64,
    to_radial_deg: f64,
    arc_radius_nm: f64,
    sense: ArcSense,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<ArcFlown, Error> {
    if any_nan(&[
        from_radial_deg,
        to_radial_deg,
        arc_radius_nm,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
    ]) {
        return Ok(ArcFlown::NAN);
    }
    let flown = procedure::fly_arc::<TrueNorth>(
        Bearing::named("from_radial_deg", from_radial_deg)?,
        Bearing::named("to_radial_deg", to_radial_deg)?,
        ArcRadius::named("arc_radius_nm", arc_radius_nm)?,
        sense,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
    )?;
    Ok(ArcFlown {
        angle_deg: flown.angle.get::<degree>(),
        distance_nm: flown.distance.value().get::<nautical_mile>(),
        time_s: flown.time.get::<second>(),
    })
}

outputs! {
    /// The straight legs of an arc: what [`arc_chords`] gives.
    ArcChords {
        /// How many legs there are.
        legs,
        /// Angle of each at the station, which is also the change of course from one to the next.
        angle_deg,
        /// Length of each.
        length_nm,
        /// Distance from the station at which each begins and ends.
        distance_at_ends_nm,
        /// Distance from the station in the middle of each.
        distance_at_middle_nm,
    }
}

/// The straight legs of a DME arc that stay within a tolerance of it: how many, how long, and how far they depart.
///
/// Half a leg sees the station under the angle h with `cos(h) = (D - t) / D` inside, `D / (D + t)` outside and `(D -
/// t) / (D + t)` on both sides; the legs share the arc evenly.
///
/// # Arguments
/// - `from_radial_deg`: radial on which the arc begins, any finite number
/// - `to_radial_deg`: radial on which it ends
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 1000
/// - `sense`: which way round the station the arc is flown
/// - `placement`: where the legs lie
/// - `tolerance_nm`: greatest distance from the arc, above 0 to 1000
///
/// # Accuracy
/// Rounding error on a plane. The turns between the legs are left out.
///
/// # Degenerate cases
/// From a radial to itself there is no leg. A tolerance near the radius and above still makes a leg for each 120
/// degrees.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The right triangle of station, middle and end of a leg.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_chords;
/// # use lubberline::lead::ArcSense;
/// # use lubberline::procedure::ChordPlacement;
/// assert_eq!(format!("{:.0}", arc_chords(350.0, 50.0, 12.0, ArcSense::Clockwise, ChordPlacement::Inside, 0.25)?.legs), "3");
/// assert_eq!(format!("{:.2}", arc_chords(350.0, 50.0, 12.0, ArcSense::Clockwise, ChordPlacement::Inside, 0.25)?.length_nm), "4.17");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_chords(
    from_radial_deg: f64,
    to_radial_deg: f64,
    arc_radius_nm: f64,
    sense: ArcSense,
    placement: ChordPlacement,
    tolerance_nm: f64,
) -> Result<ArcChords, Error> {
    if any_nan(&[from_radial_deg, to_radial_deg, arc_radius_nm, tolerance_nm]) {
        return Ok(ArcChords::NAN);
    }
    let chords = procedure::ChordLegs::<TrueNorth>::new(
        Bearing::named("from_radial_deg", from_radial_deg)?,
        Bearing::named("to_radial_deg", to_radial_deg)?,
        ArcRadius::named("arc_radius_nm", arc_radius_nm)?,
        sense,
        placement,
        ArcRadius::named("tolerance_nm", tolerance_nm)?,
    );
    Ok(ArcChords {
        legs: f64::from(chords.count()),
        angle_deg: chords.angle().get::<degree>(),
        length_nm: chords.length().get::<nautical_mile>(),
        distance_at_ends_nm: chords.distance_at_ends().value().get::<nautical_mile>(),
        distance_at_middle_nm: chords.distance_at_middle().value().get::<nautical_mile>(),
    })
}

outputs! {
    /// One straight leg of an arc: what [`arc_chord_leg`] gives.
    ArcChordLeg {
        /// Radial of its beginning.
        from_radial_deg,
        /// Radial of its end.
        to_radial_deg,
        /// Its course.
        course_deg,
        /// Heading that holds it.
        heading_deg,
        /// Groundspeed on it.
        groundspeed_kt,
        /// Time along it.
        time_s,
    }
}

/// One of the straight legs of a DME arc, flown in a wind: radials, course, heading and time.
///
/// The course is square to the radial of its middle. The legs are those of `arc_chords`.
///
/// # Arguments
/// - `from_radial_deg`: radial on which the arc begins, any finite number
/// - `to_radial_deg`: radial on which it ends
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 1000
/// - `sense`: which way round the station the arc is flown
/// - `placement`: where the legs lie
/// - `tolerance_nm`: greatest distance from the arc, above 0 to 1000
/// - `leg`: which leg, counted from 1: a whole number, 1 to 1 000 000
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the radials' north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
///
/// # Accuracy
/// Rounding error on a plane. The turns between the legs are left out.
///
/// # Degenerate cases
/// A leg behind the last is NaN throughout.
///
/// # Errors
/// A value outside its range, a course that the airspeed cannot hold.
///
/// # Source
/// The right triangle of station, middle and end of a leg.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_chord_leg;
/// # use lubberline::lead::ArcSense;
/// # use lubberline::procedure::ChordPlacement;
/// assert_eq!(format!("{:.1}", arc_chord_leg(350.0, 50.0, 12.0, ArcSense::Clockwise, ChordPlacement::Inside, 0.25, 1.0, 150.0, 310.0, 30.0)?.course_deg), "90.0");
/// assert_eq!(format!("{:.1}", arc_chord_leg(350.0, 50.0, 12.0, ArcSense::Clockwise, ChordPlacement::Inside, 0.25, 1.0, 150.0, 310.0, 30.0)?.heading_deg), "82.6");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn arc_chord_leg(
    from_radial_deg: f64,
    to_radial_deg: f64,
    arc_radius_nm: f64,
    sense: ArcSense,
    placement: ChordPlacement,
    tolerance_nm: f64,
    leg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<ArcChordLeg, Error> {
    if any_nan(&[
        from_radial_deg,
        to_radial_deg,
        arc_radius_nm,
        tolerance_nm,
        leg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
    ]) {
        return Ok(ArcChordLeg::NAN);
    }
    let chords = procedure::ChordLegs::<TrueNorth>::new(
        Bearing::named("from_radial_deg", from_radial_deg)?,
        Bearing::named("to_radial_deg", to_radial_deg)?,
        ArcRadius::named("arc_radius_nm", arc_radius_nm)?,
        sense,
        placement,
        ArcRadius::named("tolerance_nm", tolerance_nm)?,
    );
    let airspeed = TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?;
    let wind = wind(wind_from_deg, wind_speed_kt)?;
    let number = Quantity::LegNumber.check("leg", leg)?;
    // The number is in the range of the type; a part of a leg is the leg.
    let Some(leg) = chords.leg(number as u32 - 1, airspeed, wind) else {
        return Ok(ArcChordLeg::NAN);
    };
    let leg = leg?;
    Ok(ArcChordLeg {
        from_radial_deg: leg.from.angle().get::<degree>(),
        to_radial_deg: leg.to.angle().get::<degree>(),
        course_deg: leg.course.angle().get::<degree>(),
        heading_deg: leg.crab.heading.angle().get::<degree>(),
        groundspeed_kt: leg.crab.groundspeed.value().get::<knot>(),
        time_s: leg.time.get::<second>(),
    })
}

outputs! {
    /// A straight way back onto an arc: what [`arc_regained`] gives.
    ArcRegained {
        /// Direction over the ground.
        track_deg,
        /// Heading that holds it.
        heading_deg,
        /// Distance to the arc.
        distance_nm,
        /// Time to the arc.
        time_s,
        /// Radial on which the arc is met.
        radial_deg,
        /// Angle at which the arc is met, without its side.
        angle_deg,
    }
}

/// The straight way back onto a DME arc from inside or outside it: where and when the arc is met.
///
/// On a track turned from square by a correction c, the way is `d sin(c) + sqrt(D^2 - d^2 cos^2(c))` from inside,
/// with the root taken away from outside.
///
/// # Arguments
/// - `radial_deg`: radial on which the aircraft is, any finite number
/// - `distance_nm`: its ground distance from the station, 0 to 10 900
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 1000
/// - `sense`: which way round the station the arc is flown
/// - `correction_deg`: angle of the track from square to the radial, positive toward the station, any finite number
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, against the radials' north (default 0.0)
/// - `wind_speed_kt`: speed of the wind, 0 to 1000 (default 0.0)
///
/// # Accuracy
/// Rounding error on a plane.
///
/// # Degenerate cases
/// On the arc the way is nothing. From outside the correction must be at least `acos(D / d)`, at which the arc is met
/// along it.
///
/// # Errors
/// A value outside its range, a track from outside that passes the arc, a track that the airspeed cannot hold.
///
/// # Source
/// The law of cosines.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_regained;
/// # use lubberline::lead::ArcSense;
/// assert_eq!(format!("{:.2}", arc_regained(200.0, 11.0, 10.0, ArcSense::Clockwise, 30.0, 160.0, 310.0, 30.0)?.distance_nm), "2.46");
/// assert_eq!(format!("{:.1}", arc_regained(200.0, 11.0, 10.0, ArcSense::Clockwise, 30.0, 160.0, 310.0, 30.0)?.heading_deg), "318.1");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "a plain function takes plain numbers; the typed one groups them"
)]
pub fn arc_regained(
    radial_deg: f64,
    distance_nm: f64,
    arc_radius_nm: f64,
    sense: ArcSense,
    correction_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<ArcRegained, Error> {
    if any_nan(&[
        radial_deg,
        distance_nm,
        arc_radius_nm,
        correction_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
    ]) {
        return Ok(ArcRegained::NAN);
    }
    let correction_deg = Quantity::DirectionChange.check("correction_deg", correction_deg)?;
    let back = procedure::regain_arc::<TrueNorth>(
        Bearing::named("radial_deg", radial_deg)?,
        GroundDistance::named("distance_nm", distance_nm)?,
        ArcRadius::named("arc_radius_nm", arc_radius_nm)?,
        sense,
        DirectionChange::new(degrees(correction_deg))?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
    )?;
    Ok(ArcRegained {
        track_deg: back.track.angle().get::<degree>(),
        heading_deg: back.crab.heading.angle().get::<degree>(),
        distance_nm: back.distance.value().get::<nautical_mile>(),
        time_s: back.time.get::<second>(),
        radial_deg: back.radial.angle().get::<degree>(),
        angle_deg: back.angle.get::<degree>(),
    })
}

/// The least correction toward the station with which a DME arc is met from outside.
///
/// `acos(D / d)`, the tangent from a point to a circle.
///
/// # Arguments
/// - `distance_nm`: ground distance from the station, 0 to 10 900
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 1000
///
/// # Accuracy
/// Rounding error.
///
/// # Degenerate cases
/// Zero on the arc and inside it.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The tangent from a point to a circle.
///
/// # Example
/// ```
/// # use lubberline::plain::arc_least_correction_deg;
/// assert_eq!(format!("{:.1}", arc_least_correction_deg(10.5, 10.0)?), "17.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn arc_least_correction_deg(distance_nm: f64, arc_radius_nm: f64) -> Result<f64, Error> {
    if any_nan(&[distance_nm, arc_radius_nm]) {
        return Ok(f64::NAN);
    }
    let distance = GroundDistance::named("distance_nm", distance_nm)?;
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    Ok(procedure::least_correction(distance, arc).get::<degree>())
}

/// By how much to displace the bearing pointer from the wing tip to get back onto a DME arc, by rule.
///
/// 5 degrees away from the station for each half mile inside, 10 degrees toward it for each half mile outside;
/// positive toward the station.
///
/// # Arguments
/// - `distance_nm`: distance from the station, 0 to 10 900
/// - `arc_radius_nm`: ground distance of the arc from the station, above 0 to 1000
///
/// # Accuracy
/// A rule. From outside it is short of `arc_least_correction_deg`, so the arc is met only as the correction is
/// renewed.
///
/// # Degenerate cases
/// On the arc there is nothing to displace.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// CNATRA P-871 chapter 4, To adjust to/from the arc.
///
/// # Example
/// ```
/// # use lubberline::plain::rule_arc_correction_deg;
/// assert_eq!(format!("{:.0}", rule_arc_correction_deg(9.5, 10.0)?), "-5");
/// assert_eq!(format!("{:.0}", rule_arc_correction_deg(10.5, 10.0)?), "10");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn rule_arc_correction_deg(distance_nm: f64, arc_radius_nm: f64) -> Result<f64, Error> {
    if any_nan(&[distance_nm, arc_radius_nm]) {
        return Ok(f64::NAN);
    }
    let distance = GroundDistance::named("distance_nm", distance_nm)?;
    let arc = ArcRadius::named("arc_radius_nm", arc_radius_nm)?;
    Ok(rules::arc_correction(distance, arc).get::<degree>())
}
