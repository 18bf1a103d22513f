//! Path-and-terminator legs in C: an array of legs in, segments and points out into the caller's arrays.

use std::mem::offset_of;
use std::panic::{AssertUnwindSafe, catch_unwind};

use lubberline::Error;
use lubberline::plain::{
    ConditionsInput, LegCode, LegInput, SegmentOutput, WindLevelInput, fly_legs, fly_legs_aloft, path_points,
    segment_output,
};
use lubberline::procedure::TimedLeg;
use lubberline::procedure::legs::{GroundPath, Passage, ReversalForm};

use crate::generated::{LUBBER_ERROR_INTERNAL, LUBBER_ERROR_STRUCT, LUBBER_OK};
use crate::sized::{self, Grows};
use crate::wind_levels::{Failure, lubber_wind_level, read_levels};

/// A leg of a procedure; which numbers it needs follows from its code, the others may be NaN. Set it with lubber_leg_init, then
/// what the leg needs.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_leg {
    /// sizeof(lubber_leg).
    pub struct_size: usize,
    /// Which leg: 1 IF, 2 TF, 3 CF, 4 DF, 5 AF, 6 RF, 7 FA, 8 FC, 9 FD, 10 FM, 11 CA, 12 CD, 13 CI, 14 CR, 15 VA, 16 VD, 17 VI,
    /// 18 VM, 19 VR, 20 HA, 21 HF, 22 HM, 23 PI.
    pub code: i32,
    /// How the fix that ends it is passed: 0 flown by, 1 flown over.
    pub passage: i32,
    /// 1 if an arc goes clockwise, a racetrack turns right, a procedure turn first turns right; else 0.
    pub to_right: i32,
    /// The fix: latitude.
    pub fix_latitude_deg: f64,
    /// The fix: longitude.
    pub fix_longitude_deg: f64,
    /// Course or heading, true or, with a magnetic variation in lubber_leg_conditions, magnetic; of a racetrack the inbound, of a procedure
    /// turn the outbound course.
    pub course_deg: f64,
    /// Altitude that ends FA, CA, VA and HA.
    pub altitude_ft: f64,
    /// Distance of FC and PI; DME reading of FD, CD and VD.
    pub distance_nm: f64,
    /// Station of FD, CD, CR, VD, VR, AF and of a racetrack by DME, centre of RF: latitude.
    pub center_latitude_deg: f64,
    /// Station or centre: longitude.
    pub center_longitude_deg: f64,
    /// The station's elevation.
    pub center_elevation_ft: f64,
    /// The station's declination.
    pub center_declination_deg: f64,
    /// Radial of CR and VR, from the station's north.
    pub radial_deg: f64,
    /// Time of a racetrack's timed leg; 60 at first.
    pub outbound_time_s: f64,
    /// The leg of a racetrack that is timed, or whose length is given: LUBBER_TIMED_LEG_INBOUND, LUBBER_TIMED_LEG_OUTBOUND (from abeam
    /// the fix or wings level, whichever is later), LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL as at first.
    pub timed: i32,
    /// Which procedure turn a PI is: 0 the 45/180, as at first, 1 the 80/260.
    pub reversal: i32,
    /// Length of that leg of a racetrack over the ground; NaN, as at first, where it is given by time or by DME.
    pub hold_distance_nm: f64,
    /// DME reading of the station at which a racetrack's turn inbound begins; NaN, as at first, where there is none.
    pub hold_dme_nm: f64,
    /// Time of a 45/180 from the start of its first turn to that of its second; 60 at first.
    pub off_time_s: f64,
}

// SAFETY: as the trait asks; no leg goes without its code, nearly none without its fix.
unsafe impl Grows for lubber_leg {
    const LEAST: usize = offset_of!(Self, course_deg);
}

/// What a sequence of legs is flown with. Set it with lubber_leg_conditions_init, then change what differs.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_leg_conditions {
    /// sizeof(lubber_leg_conditions).
    pub struct_size: usize,
    /// True airspeed, above 0 to 5000.
    pub true_airspeed_kt: f64,
    /// Where the wind blows from, true; 0 at first, which is north: set it with the speed.
    pub wind_from_deg: f64,
    /// Speed of the wind, 0 to 1000; 0 at first.
    pub wind_speed_kt: f64,
    /// Greatest bank, above 0 below 90; 25 at first.
    pub bank_limit_deg: f64,
    /// Greatest rate of turn, above 0; 3 at first.
    pub turn_rate_limit_deg_per_s: f64,
    /// Rate of roll, above 0; 5 at first.
    pub roll_rate_deg_per_s: f64,
    /// Altitude at the first fix.
    pub altitude_ft: f64,
    /// Rate of climb, negative to descend, -30 000 to 30 000; 0 at first.
    pub climb_fpm: f64,
    /// The angle at which a course is intercepted from beside it, above 0 to 90; 30 at first.
    pub intercept_angle_deg: f64,
    /// How far a leg is drawn that is ended by hand; 10 at first.
    pub manual_distance_nm: f64,
    /// Pressure altitude of that wind, where another one is given above it; NaN, as at first, for one wind at every altitude.
    pub wind_altitude_ft: f64,
    /// Pressure altitude of the upper wind, or NaN, as at first.
    pub upper_wind_altitude_ft: f64,
    /// Where the upper wind blows from, true, or NaN, as at first.
    pub upper_wind_from_deg: f64,
    /// Speed of the upper wind, or NaN, as at first.
    pub upper_wind_speed_kt: f64,
    /// Winds at any number of levels, in place of the winds above, which are not looked at then; NULL, as at first, for none. Each leg is
    /// flown in the wind at the altitude where it begins.
    pub wind_levels: *const lubber_wind_level,
    /// How many levels, up to 1000; 0, as at first, for none.
    pub wind_level_count: usize,
    /// Magnetic variation that the legs' courses and headings are given with, positive east, -180 to 180: they are magnetic then. NaN, as at
    /// first, where they are true. Winds are true all the same, and radials counted from their station's north.
    pub magnetic_variation_deg: f64,
}

// SAFETY: as the trait asks; the airspeed and the altitude have no usual values.
unsafe impl Grows for lubber_leg_conditions {
    const LEAST: usize = offset_of!(Self, climb_fpm);
}

/// A segment of the path over the ground. Directions are true.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_path_segment {
    /// sizeof(lubber_path_segment), set by the caller in the first one of an array.
    pub struct_size: usize,
    /// The leg it belongs to, counted from zero; a turn belongs to the leg it leads onto.
    pub leg: usize,
    /// 0 a straight, 1 a turn, 2 an arc.
    pub kind: i32,
    /// Where it begins: latitude.
    pub start_latitude_deg: f64,
    /// Where it begins: longitude.
    pub start_longitude_deg: f64,
    /// True course where it begins.
    pub start_course_deg: f64,
    /// Where it ends: latitude.
    pub end_latitude_deg: f64,
    /// Where it ends: longitude.
    pub end_longitude_deg: f64,
    /// True course where it ends.
    pub end_course_deg: f64,
    /// Altitude where it ends.
    pub end_altitude_ft: f64,
    /// Length over the ground.
    pub length_nm: f64,
    /// How long it takes.
    pub duration_s: f64,
    /// Time at its end since the first fix.
    pub end_time_s: f64,
    /// True heading where it begins.
    pub start_heading_deg: f64,
    /// Groundspeed where it begins.
    pub start_groundspeed_kt: f64,
    /// True heading where it ends.
    pub end_heading_deg: f64,
    /// Groundspeed where it ends.
    pub end_groundspeed_kt: f64,
    /// The greatest bank of a turn, or what keeps to an arc; 0 along a straight.
    pub bank_deg: f64,
    /// Change of heading of a turn, right positive; 0 else.
    pub heading_change_deg: f64,
}

// SAFETY: as the trait asks; the leg and the kind say nothing without a number beside them.
unsafe impl Grows for lubber_path_segment {
    const LEAST: usize = offset_of!(Self, start_longitude_deg);
}

/// Sets a leg of a code: numbers NaN, a station at sea level without declination, flown by, to the right, a minute outbound from wings
/// level, a 45/180 procedure turn with a minute off.
///
/// @param[out] leg the leg
/// @param struct_size sizeof(lubber_leg)
/// @param code which leg, as in the structure
/// @return LUBBER_OK, LUBBER_ERROR_STRUCT, or LUBBER_ERROR_UNKNOWN_CHOICE for a code that is none
///
/// # Safety
/// `leg` must be null (a failure) or have room for `struct_size` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_leg_init(leg: *mut lubber_leg, struct_size: usize, code: i32) -> i32 {
    match LegCode::from_code("code", f64::from(code)) {
        // SAFETY: the caller vouches for it.
        Ok(known) => unsafe { sized::init(leg, struct_size, &to_c(&LegInput::new(known))) },
        Err(error) => error.code(),
    }
}

/// Sets the usual conditions for a speed and an altitude: calm air, level flight, 25 degrees of bank, 3 degrees per second, a roll
/// of 5, an intercept of 30 degrees, ten miles for what is ended by hand, courses that are true.
///
/// @param[out] conditions the structure
/// @param struct_size sizeof(lubber_leg_conditions)
/// @param true_airspeed_kt true airspeed
/// @param altitude_ft altitude at the first fix
/// @return LUBBER_OK, or LUBBER_ERROR_STRUCT
///
/// # Safety
/// `conditions` must be null (a failure) or have room for `struct_size` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_leg_conditions_init(
    conditions: *mut lubber_leg_conditions,
    struct_size: usize,
    true_airspeed_kt: f64,
    altitude_ft: f64,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { sized::init(conditions, struct_size, &usual(true_airspeed_kt, altitude_ft)) }
}

/// Flies a sequence of legs and gives the segments of its path.
///
/// @param legs the legs, `leg_count` of them, all of one size
/// @param conditions what they are flown with
/// @param[out] segments room for `capacity` segments, the `struct_size` of the first set by the caller and taken for all; may be
/// NULL if that is 0
/// @param[out] segment_count how many segments there are, which may be more than fit: call again with more room
/// @param[out] failed_leg the leg that could not be flown, is none or has a number out of range, counted from 1, 0 if none; may be NULL
/// @return LUBBER_OK, or a negative status; segment_count is then 0
///
/// # Safety
/// The arrays must hold what their counts say; `segment_count` must be writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_legs_fly(
    legs: *const lubber_leg,
    leg_count: usize,
    conditions: *const lubber_leg_conditions,
    segments: *mut lubber_path_segment,
    capacity: usize,
    segment_count: *mut usize,
    failed_leg: *mut usize,
) -> i32 {
    // SAFETY: the caller vouches for the arrays.
    unsafe {
        if segment_count.is_null() {
            return LUBBER_ERROR_STRUCT;
        }
        segment_count.write(0);
        if !failed_leg.is_null() {
            failed_leg.write(0);
        }
        let Some(size) = sized::room(segments, capacity) else { return LUBBER_ERROR_STRUCT };
        match flown(legs, leg_count, conditions) {
            Ok(path) => {
                segment_count.write(path.segments.len());
                let told = path.segments.iter().take(capacity);
                let told: Vec<_> =
                    told.map(|segment| segment_to_c(&segment_output(&path, segment))).collect();
                sized::fill_array(segments, size, capacity, &told);
                LUBBER_OK
            }
            Err(failure) => {
                if let Some(leg) = failure.leg()
                    && !failed_leg.is_null()
                {
                    failed_leg.write(leg);
                }
                failure.status()
            }
        }
    }
}

/// Flies a sequence of legs and gives points along its path, no farther apart than a spacing.
///
/// @param legs the legs, `leg_count` of them, all of one size
/// @param conditions what they are flown with
/// @param spacing_nm the spacing, above 0; zero, less or NaN gives the ends of the segments only. No segment gets more than 10 000
/// points
/// @param[out] latitudes_deg room for `capacity` latitudes; may be NULL if that is 0
/// @param[out] longitudes_deg room for as many longitudes
/// @param[out] point_count how many points there are, which may be more than fit: call again with more room
/// @return LUBBER_OK, or a negative status; point_count is then 0
///
/// # Safety
/// The arrays must hold what their counts say; `point_count` must be writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_legs_points(
    legs: *const lubber_leg,
    leg_count: usize,
    conditions: *const lubber_leg_conditions,
    spacing_nm: f64,
    latitudes_deg: *mut f64,
    longitudes_deg: *mut f64,
    capacity: usize,
    point_count: *mut usize,
) -> i32 {
    // SAFETY: the caller vouches for the arrays.
    unsafe {
        if point_count.is_null() {
            return LUBBER_ERROR_STRUCT;
        }
        point_count.write(0);
        if (latitudes_deg.is_null() || longitudes_deg.is_null()) && capacity > 0 {
            return LUBBER_ERROR_STRUCT;
        }
        match flown(legs, leg_count, conditions) {
            Ok(path) => {
                let points = catch_unwind(|| path_points(&path, spacing_nm));
                let Ok(points) = points else { return LUBBER_ERROR_INTERNAL };
                point_count.write(points.len());
                for (index, (latitude_deg, longitude_deg)) in points.iter().take(capacity).enumerate() {
                    latitudes_deg.add(index).write_unaligned(*latitude_deg);
                    longitudes_deg.add(index).write_unaligned(*longitude_deg);
                }
                LUBBER_OK
            }
            Err(failure) => failure.status(),
        }
    }
}

/// Flies the caller's legs.
///
/// # Safety
/// Both must be null (a failure, unless there is no leg) or hold what their sizes and the count say.
unsafe fn flown(
    legs: *const lubber_leg,
    leg_count: usize,
    conditions: *const lubber_leg_conditions,
) -> Result<GroundPath, Failure> {
    let fly = || {
        // SAFETY: the caller vouches for both.
        let ((conditions, levels), legs) =
            unsafe { (read_conditions(conditions)?, read_legs(legs, leg_count)?) };
        match levels {
            Some(levels) => fly_legs_aloft(&legs, &conditions, &levels),
            None => fly_legs(&legs, &conditions),
        }
        .map_err(Failure::Error)
    };
    catch_unwind(AssertUnwindSafe(fly)).unwrap_or(Err(Failure::Status(LUBBER_ERROR_INTERNAL)))
}

/// Reads the legs, all of the size of the first.
///
/// # Safety
/// As [`flown`].
pub(crate) unsafe fn read_legs(legs: *const lubber_leg, leg_count: usize) -> Result<Vec<LegInput>, Failure> {
    const UNKNOWN: Failure = Failure::Status(LUBBER_ERROR_STRUCT);
    let mut plain_legs = Vec::new();
    if leg_count == 0 {
        return Ok(plain_legs);
    }
    // SAFETY: the caller vouches for them.
    unsafe {
        let size = sized::size(legs).ok_or(UNKNOWN)?;
        for index in 0..leg_count {
            let place = legs.byte_add(index * size);
            if sized::size(place) != Some(size) {
                return Err(UNKNOWN);
            }
            // The usual values of what an old caller's leg lacks are the same for every code.
            let leg = sized::read(place, to_c(&LegInput::new(LegCode::InitialFix))).ok_or(UNKNOWN)?;
            plain_legs.push(from_c(&leg).map_err(|error| Failure::OfLeg(index + 1, error))?);
        }
    }
    Ok(plain_legs)
}

/// Reads the conditions, and the winds by level if there are any.
///
/// # Safety
/// As [`flown`]; the winds by level must be null (a failure, unless there is none) or hold what their count says.
pub(crate) unsafe fn read_conditions(
    conditions: *const lubber_leg_conditions,
) -> Result<(ConditionsInput, Option<Vec<WindLevelInput>>), Failure> {
    // SAFETY: the caller vouches for them.
    let given = unsafe { sized::read(conditions, usual(f64::NAN, f64::NAN)) };
    let given = given.ok_or(Failure::Status(LUBBER_ERROR_STRUCT))?;
    let levels = if given.wind_level_count == 0 {
        None
    } else {
        // SAFETY: the caller vouches for them.
        Some(unsafe { read_levels(given.wind_levels, given.wind_level_count)? })
    };
    let input = ConditionsInput {
        true_airspeed_kt: given.true_airspeed_kt,
        wind_from_deg: given.wind_from_deg,
        wind_speed_kt: given.wind_speed_kt,
        bank_limit_deg: given.bank_limit_deg,
        turn_rate_limit_deg_per_s: given.turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s: given.roll_rate_deg_per_s,
        altitude_ft: given.altitude_ft,
        climb_fpm: given.climb_fpm,
        intercept_angle_deg: given.intercept_angle_deg,
        manual_distance_nm: given.manual_distance_nm,
        wind_altitude_ft: given.wind_altitude_ft,
        upper_wind_altitude_ft: given.upper_wind_altitude_ft,
        upper_wind_from_deg: given.upper_wind_from_deg,
        upper_wind_speed_kt: given.upper_wind_speed_kt,
        magnetic_variation_deg: given.magnetic_variation_deg,
    };
    Ok((input, levels))
}

fn usual(true_airspeed_kt: f64, altitude_ft: f64) -> lubber_leg_conditions {
    let input = ConditionsInput::new(true_airspeed_kt, altitude_ft);
    lubber_leg_conditions {
        struct_size: size_of::<lubber_leg_conditions>(),
        true_airspeed_kt: input.true_airspeed_kt,
        wind_from_deg: input.wind_from_deg,
        wind_speed_kt: input.wind_speed_kt,
        bank_limit_deg: input.bank_limit_deg,
        turn_rate_limit_deg_per_s: input.turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s: input.roll_rate_deg_per_s,
        altitude_ft: input.altitude_ft,
        climb_fpm: input.climb_fpm,
        intercept_angle_deg: input.intercept_angle_deg,
        manual_distance_nm: input.manual_distance_nm,
        wind_altitude_ft: input.wind_altitude_ft,
        upper_wind_altitude_ft: input.upper_wind_altitude_ft,
        upper_wind_from_deg: input.upper_wind_from_deg,
        upper_wind_speed_kt: input.upper_wind_speed_kt,
        wind_levels: std::ptr::null(),
        wind_level_count: 0,
        magnetic_variation_deg: input.magnetic_variation_deg,
    }
}

fn from_c(leg: &lubber_leg) -> Result<LegInput, Error> {
    Ok(LegInput {
        code: LegCode::from_code("code", f64::from(leg.code))?,
        passage: Passage::from_code("passage", f64::from(leg.passage))?,
        to_right: leg.to_right != 0,
        fix_latitude_deg: leg.fix_latitude_deg,
        fix_longitude_deg: leg.fix_longitude_deg,
        course_deg: leg.course_deg,
        altitude_ft: leg.altitude_ft,
        distance_nm: leg.distance_nm,
        center_latitude_deg: leg.center_latitude_deg,
        center_longitude_deg: leg.center_longitude_deg,
        center_elevation_ft: leg.center_elevation_ft,
        center_declination_deg: leg.center_declination_deg,
        radial_deg: leg.radial_deg,
        outbound_time_s: leg.outbound_time_s,
        timed: TimedLeg::from_code("timed", f64::from(leg.timed))?,
        reversal: ReversalForm::from_code("reversal", f64::from(leg.reversal))?,
        hold_distance_nm: leg.hold_distance_nm,
        hold_dme_nm: leg.hold_dme_nm,
        off_time_s: leg.off_time_s,
    })
}

fn to_c(leg: &LegInput) -> lubber_leg {
    lubber_leg {
        struct_size: size_of::<lubber_leg>(),
        code: leg.code.code(),
        passage: leg.passage.code(),
        to_right: i32::from(leg.to_right),
        fix_latitude_deg: leg.fix_latitude_deg,
        fix_longitude_deg: leg.fix_longitude_deg,
        course_deg: leg.course_deg,
        altitude_ft: leg.altitude_ft,
        distance_nm: leg.distance_nm,
        center_latitude_deg: leg.center_latitude_deg,
        center_longitude_deg: leg.center_longitude_deg,
        center_elevation_ft: leg.center_elevation_ft,
        center_declination_deg: leg.center_declination_deg,
        radial_deg: leg.radial_deg,
        outbound_time_s: leg.outbound_time_s,
        timed: leg.timed.code(),
        reversal: leg.reversal.code(),
        hold_distance_nm: leg.hold_distance_nm,
        hold_dme_nm: leg.hold_dme_nm,
        off_time_s: leg.off_time_s,
    }
}

fn segment_to_c(segment: &SegmentOutput) -> lubber_path_segment {
    lubber_path_segment {
        struct_size: size_of::<lubber_path_segment>(),
        leg: segment.leg,
        kind: segment.kind,
        start_latitude_deg: segment.start_latitude_deg,
        start_longitude_deg: segment.start_longitude_deg,
        start_course_deg: segment.start_course_deg,
        end_latitude_deg: segment.end_latitude_deg,
        end_longitude_deg: segment.end_longitude_deg,
        end_course_deg: segment.end_course_deg,
        end_altitude_ft: segment.end_altitude_ft,
        length_nm: segment.length_nm,
        duration_s: segment.duration_s,
        end_time_s: segment.end_time_s,
        start_heading_deg: segment.start_heading_deg,
        start_groundspeed_kt: segment.start_groundspeed_kt,
        end_heading_deg: segment.end_heading_deg,
        end_groundspeed_kt: segment.end_groundspeed_kt,
        bank_deg: segment.bank_deg,
        heading_change_deg: segment.heading_change_deg,
    }
}
