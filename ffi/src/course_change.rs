//! The course change in C: a structure in, a structure out, both of which can grow.

use std::mem::offset_of;

use lubberline::Error;
use lubberline::plain::{
    CourseChangeInput, CourseChangeOutput, TurnPointOutput, course_change, course_change_at, fly_over_at,
};
use lubberline::turn::Governor;

use crate::call::one;
use crate::generated::LUBBER_ERROR_STRUCT;
use crate::sized::{self, Grows};

/// A course change at a station. Directions share one north, which may be the station's.
///
/// Set it with lubber_course_change_input_init, then change what differs.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_course_change_input {
    /// sizeof(lubber_course_change_input).
    pub struct_size: usize,
    /// Course flown to the station, any finite number.
    pub inbound_course_deg: f64,
    /// Course flown from it: the outbound radial, if the north is the station's.
    pub outbound_course_deg: f64,
    /// True airspeed, above 0 to 5000.
    pub true_airspeed_kt: f64,
    /// Where the wind blows from; 0 at first, which is north: set it with the speed.
    pub wind_from_deg: f64,
    /// Speed of the wind, 0 to 1000; 0 at first.
    pub wind_speed_kt: f64,
    /// Greatest bank, above 0 below 90; 25 at first.
    pub bank_limit_deg: f64,
    /// Greatest rate of turn, above 0; 3 at first.
    pub turn_rate_limit_deg_per_s: f64,
    /// Rate of roll, above 0, INFINITY for an instant roll; 5 at first.
    pub roll_rate_deg_per_s: f64,
    /// Height above the station's antenna; 0 at first.
    pub height_above_station_ft: f64,
    /// Angle at which the outbound course would be intercepted after flying over, above 0 to 90; 30 at first.
    pub intercept_angle_deg: f64,
    /// Half-angle of the cone of confusion from the vertical, above 0 below 90; 50 at first.
    pub cone_half_angle_deg: f64,
    /// Which way to turn: LUBBER_TURN_SIDE_SHORTEST (0, at first), LUBBER_TURN_SIDE_LEFT (-1) or LUBBER_TURN_SIDE_RIGHT (1).
    pub turn: i32,
}

// SAFETY: as the trait asks; the courses and the airspeed have no usual values.
unsafe impl Grows for lubber_course_change_input {
    const LEAST: usize = offset_of!(Self, wind_from_deg);
}

/// Where to begin the turn, and what it does.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_course_change_result {
    /// sizeof(lubber_course_change_result), set by the caller.
    pub struct_size: usize,
    /// Distance before the station at which roll-in begins; negative past it.
    pub lead_nm: f64,
    /// The DME reading there.
    pub dme_at_roll_in_nm: f64,
    /// The bearing from the station there: the radial, in the station's north.
    pub radial_at_roll_in_deg: f64,
    /// Distance past the station, along the outbound course, at which the wings are level again.
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
    /// Radius of the cone of confusion at the height.
    pub cone_radius_nm: f64,
    /// Flying over first: the intercept angle flown, the chosen one or the largest for which there is room.
    pub fly_over_intercept_angle_deg: f64,
    /// Flying over first: greatest distance from the outbound course on its outer side.
    pub fly_over_greatest_overshoot_nm: f64,
    /// Flying over first: distance past the station at which the outbound course is held.
    pub fly_over_established_past_fix_nm: f64,
    /// Flying over first: distance flown in addition.
    pub fly_over_extra_distance_nm: f64,
    /// Flying over first: time flown in addition.
    pub fly_over_extra_time_s: f64,
    /// What governs the bank: LUBBER_GOVERNOR_BANK_LIMIT (0), LUBBER_GOVERNOR_TURN_RATE_LIMIT (1), LUBBER_GOVERNOR_ROLL_RATE
    /// (2) or LUBBER_GOVERNOR_NO_TURN (3); -1 if a number given is NaN.
    pub governed_by: i32,
    /// 1 if the aircraft enters the cone of confusion, 0 if not; -1 if a number given is NaN.
    pub enters_cone: i32,
    /// Flying over first: time from over the station until the outbound course is held; lubber_fly_over_at gives the way.
    pub fly_over_duration_s: f64,
}

// SAFETY: as the trait asks; an answer of one number is an answer.
unsafe impl Grows for lubber_course_change_result {
    const LEAST: usize = offset_of!(Self, dme_at_roll_in_nm);
}

/// Sets the usual values: calm air, 25 degrees of bank, 3 degrees per second, a roll of 5 degrees per second, at the station's
/// height, an intercept of 30 degrees, a cone of 50 degrees, the short way; courses and airspeed NaN, to be set.
///
/// @param[out] input the structure
/// @param struct_size sizeof(lubber_course_change_input)
/// @return LUBBER_OK, or LUBBER_ERROR_STRUCT
///
/// # Safety
/// `input` must be null (a failure) or have room for `struct_size` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_course_change_input_init(
    input: *mut lubber_course_change_input,
    struct_size: usize,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { sized::init(input, struct_size, &usual()) }
}

/// Where to begin the turn at a station so as to roll out on the outbound course, and what that turn does.
///
/// @param input the course change
/// @param[out] result the answer, its `struct_size` set by the caller; on a failure every number is NaN and every code -1
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// Both must be null (a failure) or point to as many bytes as their `struct_size` says.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_course_change(
    input: *const lubber_course_change_input,
    result: *mut lubber_course_change_result,
) -> i32 {
    // SAFETY: the caller vouches for both, as far as their sizes reach.
    unsafe {
        sized::answer(result, || {
            let question = read(input).ok_or(LUBBER_ERROR_STRUCT)?;
            Ok(to_c(&course_change(&question).map_err(|error| error.code())?))
        })
    }
}

/// Where the aircraft is a time after roll-in began; negative times lie on the inbound course, times beyond the duration on
/// the outbound one.
///
/// @param input the course change, its `struct_size` set
/// @param time_s time from the beginning of roll-in, -1 000 000 to 1 000 000
/// @param[out] bearing_from_fix_deg bearing from the station, NaN over it; may be NULL
/// @param[out] distance_nm distance from the station over the ground; may be NULL
/// @param[out] heading_deg heading; may be NULL
/// @param[out] bank_deg bank, right positive; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN
///
/// # Safety
/// The input must be null (a failure) or point to as many bytes as its `struct_size` says; each output must be null or
/// writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_course_change_at(
    input: *const lubber_course_change_input,
    time_s: f64,
    bearing_from_fix_deg: *mut f64,
    distance_nm: *mut f64,
    heading_deg: *mut f64,
    bank_deg: *mut f64,
) -> i32 {
    // SAFETY: the caller vouches for the input, as far as its size reaches, and for the outputs.
    unsafe {
        place(input, [bearing_from_fix_deg, distance_nm, heading_deg, bank_deg], |question| {
            course_change_at(question, time_s)
        })
    }
}

/// Where the aircraft is a time after it passed the station, if it flies over it before turning; negative times lie on the inbound
/// course, times beyond the duration of flying over on the outbound one.
///
/// @param input the course change, its `struct_size` set
/// @param time_s time since the station was passed, -1 000 000 to 1 000 000
/// @param[out] bearing_from_fix_deg bearing from the station, NaN over it; may be NULL
/// @param[out] distance_nm distance from the station over the ground; may be NULL
/// @param[out] heading_deg heading; may be NULL
/// @param[out] bank_deg bank, right positive; may be NULL
/// @return LUBBER_OK, or a negative status with every output NaN; where the wind leaves no way back, LUBBER_OK and NaN
///
/// # Safety
/// As lubber_course_change_at.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_fly_over_at(
    input: *const lubber_course_change_input,
    time_s: f64,
    bearing_from_fix_deg: *mut f64,
    distance_nm: *mut f64,
    heading_deg: *mut f64,
    bank_deg: *mut f64,
) -> i32 {
    // SAFETY: the caller vouches for the input, as far as its size reaches, and for the outputs.
    unsafe {
        place(input, [bearing_from_fix_deg, distance_nm, heading_deg, bank_deg], |question| {
            fly_over_at(question, time_s)
        })
    }
}

/// A place along a course change.
///
/// # Safety
/// As [`lubber_course_change_at`].
unsafe fn place(
    input: *const lubber_course_change_input,
    outputs: [*mut f64; 4],
    find: impl Fn(&CourseChangeInput) -> Result<TurnPointOutput, Error>,
) -> i32 {
    // SAFETY: the caller vouches for the input, as far as its size reaches, and for the outputs.
    unsafe {
        let Some(question) = read(input) else {
            one(|| Ok([f64::NAN; 4]), outputs);
            return LUBBER_ERROR_STRUCT;
        };
        let solve = || {
            find(&question).map(|at| [at.bearing_from_fix_deg, at.distance_nm, at.heading_deg, at.bank_deg])
        };
        one(solve, outputs)
    }
}

/// Reads a question; none for one that is not understood here.
///
/// # Safety
/// As [`lubber_course_change`].
pub(crate) unsafe fn read(input: *const lubber_course_change_input) -> Option<CourseChangeInput> {
    // SAFETY: the caller vouches for as many bytes as the size says.
    let given = unsafe { sized::read(input, usual())? };
    Some(CourseChangeInput {
        inbound_course_deg: given.inbound_course_deg,
        outbound_course_deg: given.outbound_course_deg,
        true_airspeed_kt: given.true_airspeed_kt,
        wind_from_deg: given.wind_from_deg,
        wind_speed_kt: given.wind_speed_kt,
        bank_limit_deg: given.bank_limit_deg,
        turn_rate_limit_deg_per_s: given.turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s: given.roll_rate_deg_per_s,
        height_above_station_ft: given.height_above_station_ft,
        intercept_angle_deg: given.intercept_angle_deg,
        cone_half_angle_deg: given.cone_half_angle_deg,
        turn: given.turn,
    })
}

fn usual() -> lubber_course_change_input {
    let input = CourseChangeInput::new(f64::NAN, f64::NAN, f64::NAN);
    lubber_course_change_input {
        struct_size: size_of::<lubber_course_change_input>(),
        inbound_course_deg: input.inbound_course_deg,
        outbound_course_deg: input.outbound_course_deg,
        true_airspeed_kt: input.true_airspeed_kt,
        wind_from_deg: input.wind_from_deg,
        wind_speed_kt: input.wind_speed_kt,
        bank_limit_deg: input.bank_limit_deg,
        turn_rate_limit_deg_per_s: input.turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s: input.roll_rate_deg_per_s,
        height_above_station_ft: input.height_above_station_ft,
        intercept_angle_deg: input.intercept_angle_deg,
        cone_half_angle_deg: input.cone_half_angle_deg,
        turn: input.turn,
    }
}

/// The code of what is not known, as in an answer that there is not.
const UNKNOWN: i32 = -1;

fn to_c(output: &CourseChangeOutput) -> lubber_course_change_result {
    lubber_course_change_result {
        struct_size: size_of::<lubber_course_change_result>(),
        lead_nm: output.lead_nm,
        dme_at_roll_in_nm: output.dme_at_roll_in_nm,
        radial_at_roll_in_deg: output.radial_at_roll_in_deg,
        past_fix_at_roll_out_nm: output.past_fix_at_roll_out_nm,
        dme_at_roll_out_nm: output.dme_at_roll_out_nm,
        radial_at_roll_out_deg: output.radial_at_roll_out_deg,
        duration_s: output.duration_s,
        turn_length_nm: output.turn_length_nm,
        bank_deg: output.bank_deg,
        radius_nm: output.radius_nm,
        heading_before_deg: output.heading_before_deg,
        heading_after_deg: output.heading_after_deg,
        heading_change_deg: output.heading_change_deg,
        groundspeed_before_kt: output.groundspeed_before_kt,
        groundspeed_after_kt: output.groundspeed_after_kt,
        wind_correction_before_deg: output.wind_correction_before_deg,
        wind_correction_after_deg: output.wind_correction_after_deg,
        closest_approach_nm: output.closest_approach_nm,
        cone_radius_nm: output.cone_radius_nm,
        fly_over_intercept_angle_deg: output.fly_over.intercept_angle_deg,
        fly_over_greatest_overshoot_nm: output.fly_over.greatest_overshoot_nm,
        fly_over_established_past_fix_nm: output.fly_over.established_past_fix_nm,
        fly_over_extra_distance_nm: output.fly_over.extra_distance_nm,
        fly_over_extra_time_s: output.fly_over.extra_time_s,
        governed_by: output.governed_by.map_or(UNKNOWN, Governor::code),
        enters_cone: if output.enters_cone.is_nan() { UNKNOWN } else { i32::from(output.enters_cone > 0.0) },
        fly_over_duration_s: output.fly_over.duration_s,
    }
}
