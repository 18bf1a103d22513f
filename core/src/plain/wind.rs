//! Plain functions of [`crate::wind`].

use super::lead::wind;
use super::{any_nan, outputs};
use crate::Error;
use crate::many::{self, run};
use crate::value::units::{degree, knot};
use crate::value::{
    Bearing, Groundspeed, PressureAltitude, TrueAirspeed, TrueNorth, WindComponent, WindSpeed,
};
use crate::wind::{
    self as triangle, Crabbed, Wind, WindComponents as Components, WindInterpolation, WindLevel,
};

fn crabbed(
    course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<Crabbed<TrueNorth>, Error> {
    triangle::hold_course(
        Bearing::named("course_deg", course_deg)?,
        TrueAirspeed::named("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
    )
}

outputs! {
    /// How to hold a course: what [`wind_triangle`] gives.
    WindTriangle {
        /// The heading to fly, 0 to 360, from the north of the course.
        heading_deg,
        /// The speed made good along the course.
        groundspeed_kt,
    }
}

/// The heading that holds a course in a wind, and the groundspeed it leaves.
///
/// With `w` the angle from the course to where the wind comes from: wind correction `asin(Vw sin(w)/V)`,
/// groundspeed `V cos(correction) - Vw cos(w)`. All directions share one north.
///
/// # Arguments
/// - `course_deg`: the course to hold, any finite number
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, any finite number
/// - `wind_speed_kt`: speed of the wind, 0 to 1000
///
/// # Accuracy
/// Rounding; in arrays 1e-12 degrees, times the wind's speed over the airspeed where that is more, and 1e-14 of the speeds.
///
/// # Degenerate cases
/// In calm air the heading is the course. A wind faster than the aircraft leaves courses downwind that can be
/// held; of the two headings that hold such a course the one with the higher groundspeed is given.
///
/// # Errors
/// A value outside its range, a crosswind above the airspeed, or no groundspeed left.
///
/// # Source
/// The triangle of velocities; FAA-H-8083-25, Pilot's Handbook of Aeronautical Knowledge, chapter 16 (from
/// memory).
///
/// # Example
/// ```
/// # use lubberline::plain::wind_triangle;
/// assert_eq!(format!("{:.1}", wind_triangle(90.0, 120.0, 45.0, 40.0)?.heading_deg), "76.4");
/// assert_eq!(format!("{:.1}", wind_triangle(90.0, 120.0, 45.0, 40.0)?.groundspeed_kt), "88.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_triangle(
    course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<WindTriangle, Error> {
    if any_nan(&[course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt]) {
        return Ok(WindTriangle::NAN);
    }
    let crabbed = crabbed(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)?;
    Ok(WindTriangle {
        heading_deg: crabbed.heading.angle().get::<degree>(),
        groundspeed_kt: crabbed.groundspeed.value().get::<knot>(),
    })
}

/// [`wind_triangle`] over columns.
pub(super) fn wind_triangle_block(inputs: [&[f64]; 4], outputs: [&mut [f64]; 2]) {
    let [course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt] = inputs;
    let [heading_deg, groundspeed_kt] = outputs;
    run(many::wind_triangle::WindTriangle {
        course_deg,
        true_airspeed_kt,
        wind_from_deg,
        wind_speed_kt,
        heading_deg,
        groundspeed_kt,
    });
}

/// The wind correction that holds a course: heading less course, right positive.
///
/// `asin(Vw sin(w)/V)` with `w` the angle from the course to where the wind comes from.
///
/// # Arguments
/// - `course_deg`: the course to hold, any finite number
/// - `true_airspeed_kt`: true airspeed, above 0 to 5000
/// - `wind_from_deg`: where the wind blows from, any finite number
/// - `wind_speed_kt`: speed of the wind, 0 to 1000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// As [`wind_triangle`].
///
/// # Errors
/// As [`wind_triangle`].
///
/// # Source
/// As [`wind_triangle`].
///
/// # Example
/// ```
/// # use lubberline::plain::wind_correction_deg;
/// assert_eq!(format!("{:.1}", wind_correction_deg(90.0, 120.0, 45.0, 40.0)?), "-13.6");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_correction_deg(
    course_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<f64, Error> {
    if any_nan(&[course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt]) {
        return Ok(f64::NAN);
    }
    let crabbed = crabbed(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)?;
    Ok(crabbed.wind_correction.get::<degree>())
}

outputs! {
    /// What a heading makes good: what [`track_and_groundspeed`] gives.
    TrackAndGroundspeed {
        /// Direction of motion over the ground, 0 to 360; NaN where there is no motion.
        track_deg,
        /// Speed over the ground.
        groundspeed_kt,
        /// Track less heading, right positive, -180 to 180; NaN where there is no motion.
        drift_deg,
    }
}

/// The track and groundspeed that a heading makes good in a wind.
///
/// The sum of the velocity through the air and the velocity of the air. All directions share one north.
///
/// # Arguments
/// - `heading_deg`: the heading, any finite number
/// - `true_airspeed_kt`: true airspeed, 0 to 5000
/// - `wind_from_deg`: where the wind blows from, any finite number
/// - `wind_speed_kt`: speed of the wind, 0 to 1000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Where the wind cancels the airspeed there is no track and no drift (NaN). With no airspeed the track is
/// downwind.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The triangle of velocities.
///
/// # Example
/// ```
/// # use lubberline::plain::track_and_groundspeed;
/// assert_eq!(format!("{:.1}", track_and_groundspeed(315.0, 150.0, 45.0, 30.0)?.track_deg), "303.7");
/// assert_eq!(format!("{:.1}", track_and_groundspeed(315.0, 150.0, 45.0, 30.0)?.groundspeed_kt), "153.0");
/// assert_eq!(format!("{:.1}", track_and_groundspeed(315.0, 150.0, 45.0, 30.0)?.drift_deg), "-11.3");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn track_and_groundspeed(
    heading_deg: f64,
    true_airspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<TrackAndGroundspeed, Error> {
    if any_nan(&[heading_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt]) {
        return Ok(TrackAndGroundspeed::NAN);
    }
    let good = triangle::make_good::<TrueNorth>(
        Bearing::named("heading_deg", heading_deg)?,
        TrueAirspeed::or_rest("true_airspeed_kt", true_airspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
    );
    Ok(TrackAndGroundspeed {
        track_deg: good.track.map_or(f64::NAN, |track| track.angle().get::<degree>()),
        groundspeed_kt: good.groundspeed.value().get::<knot>(),
        drift_deg: good.drift.map_or(f64::NAN, |drift| drift.angle().get::<degree>()),
    })
}

outputs! {
    /// An observed wind: what [`wind_from_track`] gives.
    WindFromTrack {
        /// Where the wind blows from, 0 to 360; 0 in calm air.
        wind_from_deg,
        /// Speed of the wind.
        wind_speed_kt,
    }
}

/// The wind that an observed track and groundspeed tell, with the heading and true airspeed flown.
///
/// The velocity over the ground less the velocity through the air. All directions share one north.
///
/// # Arguments
/// - `heading_deg`: the heading, any finite number
/// - `true_airspeed_kt`: true airspeed, 0 to 5000
/// - `track_deg`: the track made good, any finite number
/// - `groundspeed_kt`: the groundspeed, 0 to 10 000
///
/// # Accuracy
/// Rounding; what matters is the observation. One degree of drift at 450 kt is 8 kt of wind across.
///
/// # Degenerate cases
/// Calm air is 0 kt from 0 degrees, as it is reported.
///
/// # Errors
/// A value outside its range, or a wind above 1000 kt.
///
/// # Source
/// The triangle of velocities.
///
/// # Example
/// ```
/// # use lubberline::plain::wind_from_track;
/// assert_eq!(format!("{:.1}", wind_from_track(104.0, 165.0, 94.0, 146.0)?.wind_from_deg), "154.1");
/// assert_eq!(format!("{:.1}", wind_from_track(104.0, 165.0, 94.0, 146.0)?.wind_speed_kt), "33.1");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_from_track(
    heading_deg: f64,
    true_airspeed_kt: f64,
    track_deg: f64,
    groundspeed_kt: f64,
) -> Result<WindFromTrack, Error> {
    if any_nan(&[heading_deg, true_airspeed_kt, track_deg, groundspeed_kt]) {
        return Ok(WindFromTrack::NAN);
    }
    let wind = triangle::wind_from_track::<TrueNorth>(
        Bearing::named("heading_deg", heading_deg)?,
        TrueAirspeed::or_rest("true_airspeed_kt", true_airspeed_kt)?,
        Bearing::named("track_deg", track_deg)?,
        Groundspeed::named("groundspeed_kt", groundspeed_kt)?,
    )?;
    Ok(WindFromTrack {
        wind_from_deg: wind.from.angle().get::<degree>(),
        wind_speed_kt: wind.speed.value().get::<knot>(),
    })
}

outputs! {
    /// A wind along and across a course: what [`wind_components`] gives.
    WindComponents {
        /// Against the course; a tailwind is negative.
        headwind_kt,
        /// From the right of the course; from the left is negative.
        crosswind_kt,
    }
}

/// A wind split into its parts along and across a course, positive from ahead and from the right.
///
/// `Vw cos(w)` and `Vw sin(w)` with `w` the angle from the course to where the wind comes from. A positive
/// crosswind asks for a correction to the right.
///
/// # Arguments
/// - `course_deg`: the course, any finite number
/// - `wind_from_deg`: where the wind blows from, any finite number
/// - `wind_speed_kt`: speed of the wind, 0 to 1000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Calm air has two parts of zero.
///
/// # Errors
/// A value outside its range.
///
/// # Source
/// The two projections of a vector.
///
/// # Example
/// ```
/// # use lubberline::plain::wind_components;
/// assert_eq!(format!("{:.1}", wind_components(90.0, 120.0, 20.0)?.headwind_kt), "17.3");
/// assert_eq!(format!("{:.1}", wind_components(90.0, 120.0, 20.0)?.crosswind_kt), "10.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_components(
    course_deg: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<WindComponents, Error> {
    if any_nan(&[course_deg, wind_from_deg, wind_speed_kt]) {
        return Ok(WindComponents::NAN);
    }
    let course: Bearing<TrueNorth> = Bearing::named("course_deg", course_deg)?;
    let parts = wind(wind_from_deg, wind_speed_kt)?.along(course);
    Ok(WindComponents {
        headwind_kt: parts.headwind.value().get::<knot>(),
        crosswind_kt: parts.crosswind.value().get::<knot>(),
    })
}

outputs! {
    /// A wind put together from its parts: what [`wind_from_components`] gives.
    WindFromComponents {
        /// Where the wind blows from, 0 to 360; 0 in calm air.
        wind_from_deg,
        /// Speed of the wind.
        wind_speed_kt,
    }
}

/// The wind whose parts along and across a course are given: the inverse of [`wind_components`].
///
/// Direction `course + atan2(crosswind, headwind)`, speed the root of the sum of the squares.
///
/// # Arguments
/// - `course_deg`: the course, any finite number
/// - `headwind_kt`: part against the course, -1000 to 1000
/// - `crosswind_kt`: part from the right of the course, -1000 to 1000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// Two parts of zero are calm air: 0 kt from 0 degrees.
///
/// # Errors
/// A value outside its range, or a wind above 1000 kt.
///
/// # Source
/// The two projections of a vector.
///
/// # Example
/// ```
/// # use lubberline::plain::wind_from_components;
/// assert_eq!(format!("{:.1}", wind_from_components(90.0, 17.32, 10.0)?.wind_from_deg), "120.0");
/// assert_eq!(format!("{:.1}", wind_from_components(90.0, 17.32, 10.0)?.wind_speed_kt), "20.0");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_from_components(
    course_deg: f64,
    headwind_kt: f64,
    crosswind_kt: f64,
) -> Result<WindFromComponents, Error> {
    if any_nan(&[course_deg, headwind_kt, crosswind_kt]) {
        return Ok(WindFromComponents::NAN);
    }
    let course: Bearing<TrueNorth> = Bearing::named("course_deg", course_deg)?;
    let parts = Components {
        headwind: WindComponent::named("headwind_kt", headwind_kt)?,
        crosswind: WindComponent::named("crosswind_kt", crosswind_kt)?,
    };
    let wind = Wind::from_components(course, parts)?;
    Ok(WindFromComponents {
        wind_from_deg: wind.from.angle().get::<degree>(),
        wind_speed_kt: wind.speed.value().get::<knot>(),
    })
}

outputs! {
    /// How to be on time: what [`airspeed_for_groundspeed`] gives.
    AirspeedForGroundspeed {
        /// The heading to fly, 0 to 360, from the north of the course.
        heading_deg,
        /// The true airspeed to fly.
        true_airspeed_kt,
    }
}

/// The heading and true airspeed that make good a course at a wanted groundspeed.
///
/// The velocity over the ground less the velocity of the air; there is always one answer.
///
/// # Arguments
/// - `course_deg`: the course to make good, any finite number
/// - `groundspeed_kt`: the groundspeed wanted, 0 to 10 000
/// - `wind_from_deg`: where the wind blows from, any finite number
/// - `wind_speed_kt`: speed of the wind, 0 to 1000
///
/// # Accuracy
/// Rounding.
///
/// # Degenerate cases
/// A groundspeed of zero holds against the wind. A tailwind faster than the groundspeed wants the aircraft to
/// face it.
///
/// # Errors
/// A value outside its range, or a true airspeed that comes out at zero (the wind alone does it) or above 5000
/// kt.
///
/// # Source
/// The triangle of velocities.
///
/// # Example
/// ```
/// # use lubberline::plain::airspeed_for_groundspeed;
/// assert_eq!(format!("{:.1}", airspeed_for_groundspeed(351.0, 232.0, 33.0, 47.0)?.heading_deg), "357.7");
/// assert_eq!(format!("{:.1}", airspeed_for_groundspeed(351.0, 232.0, 33.0, 47.0)?.true_airspeed_kt), "268.8");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn airspeed_for_groundspeed(
    course_deg: f64,
    groundspeed_kt: f64,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> Result<AirspeedForGroundspeed, Error> {
    if any_nan(&[course_deg, groundspeed_kt, wind_from_deg, wind_speed_kt]) {
        return Ok(AirspeedForGroundspeed::NAN);
    }
    let fly = triangle::make_groundspeed::<TrueNorth>(
        Bearing::named("course_deg", course_deg)?,
        Groundspeed::named("groundspeed_kt", groundspeed_kt)?,
        wind(wind_from_deg, wind_speed_kt)?,
    )?;
    Ok(AirspeedForGroundspeed {
        heading_deg: fly.heading.angle().get::<degree>(),
        true_airspeed_kt: fly.airspeed.value().get::<knot>(),
    })
}

outputs! {
    /// A wind between two levels: what [`wind_between_levels`] and [`wind_between_levels_by_method`] give.
    WindBetweenLevels {
        /// Where the wind blows from, 0 to 360; 0 in calm air.
        wind_from_deg,
        /// Speed of the wind.
        wind_speed_kt,
    }
}

/// The wind at an altitude between two levels: its components change evenly with altitude.
///
/// `w = w1 + (w2 - w1)(H - H1)/(H2 - H1)` for the north and for the east component.
///
/// # Arguments
/// - `pressure_altitude_ft`: where the wind is wanted, -16 420 to 262 467.2
/// - `lower_altitude_ft`: pressure altitude of the lower level, -16 420 to 262 467.2
/// - `lower_wind_from_deg`: where its wind blows from, any finite number
/// - `lower_wind_speed_kt`: speed of its wind, 0 to 1000
/// - `upper_altitude_ft`: pressure altitude of the upper level, above the lower one
/// - `upper_wind_from_deg`: where its wind blows from, any finite number
/// - `upper_wind_speed_kt`: speed of its wind, 0 to 1000
///
/// # Accuracy
/// Rounding, for winds that do change evenly.
///
/// # Degenerate cases
/// Below the lower level its wind holds, and above the upper one that one's. A wind that reverses passes
/// through a calm.
///
/// # Errors
/// A value outside its range, or levels that do not ascend.
///
/// # Source
/// Common practice.
///
/// # Example
/// ```
/// # use lubberline::plain::wind_between_levels;
/// assert_eq!(format!("{:.1}", wind_between_levels(21_000.0, 18_000.0, 270.0, 40.0, 24_000.0, 300.0, 60.0)?.wind_from_deg), "288.1");
/// assert_eq!(format!("{:.1}", wind_between_levels(21_000.0, 18_000.0, 270.0, 40.0, 24_000.0, 300.0, 60.0)?.wind_speed_kt), "48.4");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn wind_between_levels(
    pressure_altitude_ft: f64,
    lower_altitude_ft: f64,
    lower_wind_from_deg: f64,
    lower_wind_speed_kt: f64,
    upper_altitude_ft: f64,
    upper_wind_from_deg: f64,
    upper_wind_speed_kt: f64,
) -> Result<WindBetweenLevels, Error> {
    wind_between_levels_by_method(
        pressure_altitude_ft,
        lower_altitude_ft,
        lower_wind_from_deg,
        lower_wind_speed_kt,
        upper_altitude_ft,
        upper_wind_from_deg,
        upper_wind_speed_kt,
        WindInterpolation::Components,
    )
}

/// The wind at an altitude between two levels, by a named way of interpolating.
///
/// By components, as `wind_between_levels`; or direction and speed each by itself, the direction by the shorter way, as it is taught for flight planning.
/// Where the wind turns little between the levels the two are alike; where it turns by 90 degrees the former has 71 percent of the speed half-way.
///
/// # Arguments
/// - `pressure_altitude_ft`: where the wind is wanted, -16 420 to 262 467.2
/// - `lower_altitude_ft`: pressure altitude of the lower level, -16 420 to 262 467.2
/// - `lower_wind_from_deg`: where its wind blows from, any finite number
/// - `lower_wind_speed_kt`: speed of its wind, 0 to 1000
/// - `upper_altitude_ft`: pressure altitude of the upper level, above the lower one
/// - `upper_wind_from_deg`: where its wind blows from, any finite number
/// - `upper_wind_speed_kt`: speed of its wind, 0 to 1000
/// - `method`: which way
///
/// # Accuracy
/// Rounding, for winds that do change so.
///
/// # Degenerate cases
/// Below the lower level its wind holds, and above the upper one that one's. By direction and speed a calm counts with the direction given for it, and
/// winds straight against each other turn to the right.
///
/// # Errors
/// A value outside its range, or levels that do not ascend.
///
/// # Source
/// Common practice, both: components in forecasting; direction and speed in the worked answer of a Transport Canada practice examination for private
/// pilots, as a training page has it.
///
/// # Example
/// ```
/// # use lubberline::plain::wind_between_levels_by_method;
/// # use lubberline::wind::WindInterpolation;
/// assert_eq!(format!("{:.1}", wind_between_levels_by_method(5_500.0, 3_000.0, 280.0, 25.0, 6_000.0, 270.0, 28.0, WindInterpolation::DirectionAndSpeed)?.wind_speed_kt), "27.5");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[expect(
    clippy::too_many_arguments,
    reason = "two levels with their winds, and how to go between them, in plain numbers"
)]
pub fn wind_between_levels_by_method(
    pressure_altitude_ft: f64,
    lower_altitude_ft: f64,
    lower_wind_from_deg: f64,
    lower_wind_speed_kt: f64,
    upper_altitude_ft: f64,
    upper_wind_from_deg: f64,
    upper_wind_speed_kt: f64,
    method: WindInterpolation,
) -> Result<WindBetweenLevels, Error> {
    if any_nan(&[
        pressure_altitude_ft,
        lower_altitude_ft,
        lower_wind_from_deg,
        lower_wind_speed_kt,
        upper_altitude_ft,
        upper_wind_from_deg,
        upper_wind_speed_kt,
    ]) {
        return Ok(WindBetweenLevels::NAN);
    }
    let level =
        |altitude, altitude_ft, from, from_deg, speed, speed_kt| -> Result<WindLevel<TrueNorth>, Error> {
            Ok(WindLevel {
                altitude: PressureAltitude::named(altitude, altitude_ft)?,
                wind: Wind {
                    from: Bearing::named(from, from_deg)?,
                    speed: WindSpeed::named(speed, speed_kt)?,
                },
            })
        };
    let lower = level(
        "lower_altitude_ft",
        lower_altitude_ft,
        "lower_wind_from_deg",
        lower_wind_from_deg,
        "lower_wind_speed_kt",
        lower_wind_speed_kt,
    )?;
    let upper = level(
        "upper_altitude_ft",
        upper_altitude_ft,
        "upper_wind_from_deg",
        upper_wind_from_deg,
        "upper_wind_speed_kt",
        upper_wind_speed_kt,
    )?;
    let altitude = PressureAltitude::named("pressure_altitude_ft", pressure_altitude_ft)?;
    let wind = triangle::wind_between_by_method(lower, upper, altitude, method)?;
    Ok(WindBetweenLevels {
        wind_from_deg: wind.from.angle().get::<degree>(),
        wind_speed_kt: wind.speed.value().get::<knot>(),
    })
}
