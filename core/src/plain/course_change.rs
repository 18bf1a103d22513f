//! The course change at a station in plain numbers, bound by hand: many settings in, a whole answer out.

use super::any_nan;
use super::lead::wind;
use super::turn::turn_limits;
use crate::Error;
use crate::lead::{CourseChange, FlyOver, TurnPoint, TurnSide};
use crate::station::cone_radius;
use crate::turn::Governor;
use crate::value::units::{degree, knot, nautical_mile, second, seconds};
use crate::value::{
    Bearing, ConeHalfAngle, HeightAboveStation, InterceptAngle, Quantity, TrueAirspeed, TrueNorth,
};

/// The question: a course change at a station. Directions share one north, which may be the station's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CourseChangeInput {
    /// Course flown to the station, any finite number.
    pub inbound_course_deg: f64,
    /// Course flown from it, which is the outbound radial if the north is the station's.
    pub outbound_course_deg: f64,
    /// True airspeed, above 0 to 5000.
    pub true_airspeed_kt: f64,
    /// Where the wind blows from.
    pub wind_from_deg: f64,
    /// Speed of the wind, 0 to 1000.
    pub wind_speed_kt: f64,
    /// Greatest bank, above 0 below 90.
    pub bank_limit_deg: f64,
    /// Greatest rate of turn, above 0.
    pub turn_rate_limit_deg_per_s: f64,
    /// Rate of roll, above 0, infinite for an instant roll.
    pub roll_rate_deg_per_s: f64,
    /// Height above the station's antenna, -60 000 to 400 000.
    pub height_above_station_ft: f64,
    /// Angle at which the outbound course would be intercepted after flying over the station, above 0 to 90.
    pub intercept_angle_deg: f64,
    /// Half-angle of the cone of confusion from the vertical, above 0 below 90.
    pub cone_half_angle_deg: f64,
    /// Which way to turn: -1 left, 0 the short way, 1 right.
    pub turn: i32,
}

impl CourseChangeInput {
    /// A course change with the usual settings: calm air, 25 degrees of bank, standard rate, a roll of 5 degrees per second,
    /// at the station's height, an intercept of 30 degrees, a cone of 50 degrees, the short way.
    pub const fn new(inbound_course_deg: f64, outbound_course_deg: f64, true_airspeed_kt: f64) -> Self {
        Self {
            inbound_course_deg,
            outbound_course_deg,
            true_airspeed_kt,
            wind_from_deg: 0.0,
            wind_speed_kt: 0.0,
            bank_limit_deg: 25.0,
            turn_rate_limit_deg_per_s: 3.0,
            roll_rate_deg_per_s: 5.0,
            height_above_station_ft: 0.0,
            intercept_angle_deg: 30.0,
            cone_half_angle_deg: 50.0,
            turn: 0,
        }
    }
}

/// The answer: where to begin the turn, and what it does. See [`crate::lead::CourseChange`] for the model.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CourseChangeOutput {
    /// Distance before the station at which roll-in begins; negative past it.
    pub lead_nm: f64,
    /// The DME reading there.
    pub dme_at_roll_in_nm: f64,
    /// The bearing from the station there: the radial, in the station's north.
    pub radial_at_roll_in_deg: f64,
    /// Distance past the station, along the outbound course, at which the wings are level again; negative before it.
    pub past_fix_at_roll_out_nm: f64,
    /// The DME reading there.
    pub dme_at_roll_out_nm: f64,
    /// The bearing from the station there.
    pub radial_at_roll_out_deg: f64,
    /// From roll-in to roll-out.
    pub duration_s: f64,
    /// Distance over the ground from roll-in to roll-out.
    pub turn_length_nm: f64,
    /// The greatest bank.
    pub bank_deg: f64,
    /// Radius through the air at that bank; infinite if there is no turn.
    pub radius_nm: f64,
    /// What governs the bank; none for a question that holds a NaN.
    pub governed_by: Option<Governor>,
    /// Heading that holds the inbound course.
    pub heading_before_deg: f64,
    /// Heading that holds the outbound course.
    pub heading_after_deg: f64,
    /// Heading to turn through, right positive.
    pub heading_change_deg: f64,
    /// Groundspeed on the inbound course.
    pub groundspeed_before_kt: f64,
    /// Groundspeed on the outbound course.
    pub groundspeed_after_kt: f64,
    /// Heading less course on the inbound course, right positive.
    pub wind_correction_before_deg: f64,
    /// Heading less course on the outbound course, right positive.
    pub wind_correction_after_deg: f64,
    /// Least distance from the station over the ground.
    pub closest_approach_nm: f64,
    /// Radius of the cone of confusion at the height, zero at or below the station.
    pub cone_radius_nm: f64,
    /// Whether the aircraft comes closer than that: 1 if so, 0 if not, NaN for a question that holds a NaN.
    pub enters_cone: f64,
    /// What flying over the station before turning would cost.
    pub fly_over: FlyOverOutput,
}

/// The cost of flying over the station first. See [`crate::lead::FlyOver`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlyOverOutput {
    /// The intercept angle flown: the chosen one, or the largest for which there is room.
    pub intercept_angle_deg: f64,
    /// Greatest distance from the outbound course on its outer side.
    pub greatest_overshoot_nm: f64,
    /// Distance past the station at which the aircraft is established on the outbound course.
    pub established_past_fix_nm: f64,
    /// Distance flown in addition.
    pub extra_distance_nm: f64,
    /// Time flown in addition.
    pub extra_time_s: f64,
    /// Time from over the station until established; [`fly_over_at`] gives the way.
    pub duration_s: f64,
}

/// A place in the turn: what [`course_change_at`] and [`fly_over_at`] give.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurnPointOutput {
    /// Bearing from the station; NaN over it.
    pub bearing_from_fix_deg: f64,
    /// Distance from the station over the ground.
    pub distance_nm: f64,
    /// Heading.
    pub heading_deg: f64,
    /// Bank, right positive.
    pub bank_deg: f64,
}

/// Where to begin the turn at a station so as to roll out on the outbound course, and what that turn does.
///
/// # Errors
/// A value outside its range, a reversal, or a wind that the airspeed cannot hold. A NaN in any input makes every number of the
/// answer NaN and leaves no word of what governs, without an error.
///
/// # Source
/// As [`crate::lead::CourseChange`].
///
/// # Example
/// ```
/// use lubberline::plain::{CourseChangeInput, course_change};
/// let answer = course_change(&CourseChangeInput {
///     wind_from_deg: 270.0,
///     wind_speed_kt: 60.0,
///     height_above_station_ft: 33_000.0,
///     ..CourseChangeInput::new(40.0, 110.0, 430.0)
/// })?;
/// assert_eq!(format!("{:.2}", answer.lead_nm), "5.41");
/// assert_eq!(format!("{:.2}", answer.dme_at_roll_in_nm), "7.67");
/// # Ok::<(), lubberline::Error>(())
/// ```
pub fn course_change(input: &CourseChangeInput) -> Result<CourseChangeOutput, Error> {
    if holds_nan(input) {
        return Ok(CourseChangeOutput::NAN);
    }
    let change = typed(input)?;
    let height = HeightAboveStation::named("height_above_station_ft", input.height_above_station_ft)?;
    let half_angle = ConeHalfAngle::named("cone_half_angle_deg", input.cone_half_angle_deg)?;
    let intercept = InterceptAngle::named("intercept_angle_deg", input.intercept_angle_deg)?;

    let (before, after, turn) = (change.before(), change.after(), change.turn());
    let (turn_length, fly_over) = change.turn_length_and_fly_over(intercept);
    let closest_approach_nm = change.closest_approach().value().get::<nautical_mile>();
    let cone_radius_nm = cone_radius(height, half_angle).value().get::<nautical_mile>();
    Ok(CourseChangeOutput {
        lead_nm: change.lead().get::<nautical_mile>(),
        dme_at_roll_in_nm: change.reading_at_roll_in(height).value().get::<nautical_mile>(),
        radial_at_roll_in_deg: change.bearing_at_roll_in().angle().get::<degree>(),
        past_fix_at_roll_out_nm: change.past_fix_at_roll_out().get::<nautical_mile>(),
        dme_at_roll_out_nm: change.reading_at_roll_out(height).value().get::<nautical_mile>(),
        radial_at_roll_out_deg: change.bearing_at_roll_out().angle().get::<degree>(),
        duration_s: turn.duration().get::<second>(),
        turn_length_nm: turn_length.get::<nautical_mile>(),
        bank_deg: turn.bank().get::<degree>(),
        radius_nm: turn.radius().get::<nautical_mile>(),
        governed_by: Some(turn.governor()),
        heading_before_deg: before.heading.angle().get::<degree>(),
        heading_after_deg: after.heading.angle().get::<degree>(),
        heading_change_deg: turn.heading_change().get::<degree>(),
        groundspeed_before_kt: before.groundspeed.value().get::<knot>(),
        groundspeed_after_kt: after.groundspeed.value().get::<knot>(),
        wind_correction_before_deg: before.wind_correction.get::<degree>(),
        wind_correction_after_deg: after.wind_correction.get::<degree>(),
        closest_approach_nm,
        cone_radius_nm,
        enters_cone: f64::from(closest_approach_nm < cone_radius_nm),
        fly_over: fly_over_output(&fly_over),
    })
}

/// Where the aircraft is a time after roll-in began; negative times lie on the inbound course.
///
/// # Errors
/// As [`course_change`], and a time beyond 1 000 000 s either way.
pub fn course_change_at(input: &CourseChangeInput, time_s: f64) -> Result<TurnPointOutput, Error> {
    if holds_nan(input) || time_s.is_nan() {
        return Ok(TurnPointOutput::NAN);
    }
    let time_s = Quantity::TurnTime.check("time_s", time_s)?;
    Ok(turn_point(&typed(input)?.at(seconds(time_s))))
}

/// Where the aircraft is a time after it passed the station, if it flies over it before turning; negative times lie on the inbound course.
///
/// # Errors
/// As [`course_change_at`]. Where the wind leaves no way back onto the outbound course, every number is NaN without an error.
pub fn fly_over_at(input: &CourseChangeInput, time_s: f64) -> Result<TurnPointOutput, Error> {
    if holds_nan(input) || time_s.is_nan() {
        return Ok(TurnPointOutput::NAN);
    }
    let time_s = Quantity::TurnTime.check("time_s", time_s)?;
    let intercept = InterceptAngle::named("intercept_angle_deg", input.intercept_angle_deg)?;
    let path = typed(input)?.fly_over_path(intercept);
    Ok(path.map_or(TurnPointOutput::NAN, |path| turn_point(&path.at(seconds(time_s)))))
}

fn turn_point(point: &TurnPoint<TrueNorth>) -> TurnPointOutput {
    TurnPointOutput {
        bearing_from_fix_deg: point
            .bearing_from_fix
            .map_or(f64::NAN, |bearing| bearing.angle().get::<degree>()),
        distance_nm: point.distance.value().get::<nautical_mile>(),
        heading_deg: point.heading.angle().get::<degree>(),
        bank_deg: point.bank.get::<degree>(),
    }
}

impl TurnPointOutput {
    /// No place.
    pub const NAN: Self = Self {
        bearing_from_fix_deg: f64::NAN,
        distance_nm: f64::NAN,
        heading_deg: f64::NAN,
        bank_deg: f64::NAN,
    };
}

pub(super) fn holds_nan(input: &CourseChangeInput) -> bool {
    any_nan(&[
        input.inbound_course_deg,
        input.outbound_course_deg,
        input.true_airspeed_kt,
        input.wind_from_deg,
        input.wind_speed_kt,
        input.bank_limit_deg,
        input.turn_rate_limit_deg_per_s,
        input.roll_rate_deg_per_s,
        input.height_above_station_ft,
        input.intercept_angle_deg,
        input.cone_half_angle_deg,
    ])
}

pub(super) fn typed(input: &CourseChangeInput) -> Result<CourseChange<TrueNorth>, Error> {
    let side = TurnSide::from_code("turn", f64::from(input.turn))?;
    CourseChange::new(
        Bearing::named("inbound_course_deg", input.inbound_course_deg)?,
        Bearing::named("outbound_course_deg", input.outbound_course_deg)?,
        TrueAirspeed::named("true_airspeed_kt", input.true_airspeed_kt)?,
        wind(input.wind_from_deg, input.wind_speed_kt)?,
        &turn_limits(input.bank_limit_deg, input.turn_rate_limit_deg_per_s, input.roll_rate_deg_per_s)?,
        side,
    )
}

pub(super) fn fly_over_output(cost: &FlyOver) -> FlyOverOutput {
    FlyOverOutput {
        intercept_angle_deg: cost.intercept_angle.get::<degree>(),
        greatest_overshoot_nm: cost.greatest_overshoot.get::<nautical_mile>(),
        established_past_fix_nm: cost.established_past_fix.get::<nautical_mile>(),
        extra_distance_nm: cost.extra_distance.get::<nautical_mile>(),
        extra_time_s: cost.extra_time.get::<second>(),
        duration_s: cost.duration.get::<second>(),
    }
}

impl CourseChangeOutput {
    /// The answer to a question that holds a NaN.
    pub const NAN: Self = Self {
        lead_nm: f64::NAN,
        dme_at_roll_in_nm: f64::NAN,
        radial_at_roll_in_deg: f64::NAN,
        past_fix_at_roll_out_nm: f64::NAN,
        dme_at_roll_out_nm: f64::NAN,
        radial_at_roll_out_deg: f64::NAN,
        duration_s: f64::NAN,
        turn_length_nm: f64::NAN,
        bank_deg: f64::NAN,
        radius_nm: f64::NAN,
        governed_by: None,
        heading_before_deg: f64::NAN,
        heading_after_deg: f64::NAN,
        heading_change_deg: f64::NAN,
        groundspeed_before_kt: f64::NAN,
        groundspeed_after_kt: f64::NAN,
        wind_correction_before_deg: f64::NAN,
        wind_correction_after_deg: f64::NAN,
        closest_approach_nm: f64::NAN,
        cone_radius_nm: f64::NAN,
        enters_cone: f64::NAN,
        fly_over: FlyOverOutput {
            intercept_angle_deg: f64::NAN,
            greatest_overshoot_nm: f64::NAN,
            established_past_fix_nm: f64::NAN,
            extra_distance_nm: f64::NAN,
            extra_time_s: f64::NAN,
            duration_s: f64::NAN,
        },
    };
}
