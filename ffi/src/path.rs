//! The brief of path-and-terminator legs in C: an array of legs in; legs, turns, readings and checks out into the caller's arrays.

use std::ffi::c_char;
use std::mem::offset_of;
use std::panic::{AssertUnwindSafe, catch_unwind};

use lubberline::plain::{
    BriefedPath, LegCode, PathCheckOutput, PathLegOutput, PathReadingOutput, PathStationInput,
    PathSurroundingsInput, PathTurnOutput, brief_path,
};
use lubberline::procedure::HoldingSpeedRule;
use lubberline::route::PathCheckKind;

use crate::generated::{LUBBER_ERROR_INTERNAL, LUBBER_ERROR_STRUCT, LUBBER_OK};
use crate::legs::{lubber_leg, lubber_leg_conditions, read_conditions, read_legs};
use crate::sized::{self, Grows};
use crate::wind_levels::Failure;

/// A station that is received along a path. Set it with lubber_path_station_init, then change what differs.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_path_station {
    /// sizeof(lubber_path_station).
    pub struct_size: usize,
    /// Its latitude.
    pub latitude_deg: f64,
    /// Its longitude.
    pub longitude_deg: f64,
    /// Elevation of its antenna above mean sea level; 0 at first.
    pub elevation_ft: f64,
    /// From true north to its own, positive east; 0 at first.
    pub declination_deg: f64,
    /// Half-angle of its cone of confusion from the vertical, above 0 below 90; 50 at first.
    pub cone_half_angle_deg: f64,
}

// SAFETY: as the trait asks; its place has no usual value.
unsafe impl Grows for lubber_path_station {
    const LEAST: usize = offset_of!(Self, elevation_ft);
}

/// What a path is briefed in. Set it with lubber_path_surroundings_init, then change what differs.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_path_surroundings {
    /// sizeof(lubber_path_surroundings).
    pub struct_size: usize,
    /// The stations that are received along it, all of one size; NULL, as at first, for none.
    pub stations: *const lubber_path_station,
    /// How many; 0 at first.
    pub station_count: usize,
    /// Altimeter setting of the region, reduced to sea level; 1013.25 at first.
    pub altimeter_setting_hpa: f64,
    /// Deviation of the temperature from the standard atmosphere; 0 at first.
    pub isa_deviation_k: f64,
    /// Whose speed limit a racetrack is checked against, a LUBBER_HOLDING_SPEED_RULE_ code; that of ICAO at first.
    pub holding_rule: i32,
}

// SAFETY: as the trait asks; everything has a usual value, the stations are no use without their count.
unsafe impl Grows for lubber_path_surroundings {
    const LEAST: usize = offset_of!(Self, altimeter_setting_hpa);
}

/// A leg as it is flown. Directions are true where nothing else is said; what a leg has not is NaN.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_path_leg {
    /// sizeof(lubber_path_leg), set by the caller in the first one of an array.
    pub struct_size: usize,
    /// Which leg it is, as in lubber_leg.
    pub code: i32,
    /// 1 if the bank that its arc takes is within the limit, or it has no arc, else 0.
    pub keeps_its_arc: i32,
    /// How many turns it has: as many of lubber_path_turns, in their order.
    pub turn_count: usize,
    /// How many checks have found something: as many of lubber_path_checks, in their order.
    pub check_count: usize,
    /// Where the turn onto it begins, or it itself, if it has none: latitude.
    pub start_latitude_deg: f64,
    /// Where it begins: longitude.
    pub start_longitude_deg: f64,
    /// Course where it begins.
    pub start_course_deg: f64,
    /// Altitude where it begins.
    pub start_altitude_ft: f64,
    /// Time at its beginning since the first fix.
    pub start_time_s: f64,
    /// Where it ends, or the turn onto the next leg begins: latitude.
    pub end_latitude_deg: f64,
    /// Where it ends: longitude.
    pub end_longitude_deg: f64,
    /// Course where it ends.
    pub end_course_deg: f64,
    /// Altitude where it ends.
    pub end_altitude_ft: f64,
    /// Time at its end since the first fix.
    pub end_time_s: f64,
    /// Its course where it is first flown straight or round its arc; where it ends, if it is all turn.
    pub course_deg: f64,
    /// The heading that holds that course.
    pub heading_deg: f64,
    /// Heading less course, right positive.
    pub wind_correction_deg: f64,
    /// Speed made good along that course.
    pub groundspeed_kt: f64,
    /// Where the wind it is flown in blows from.
    pub wind_from_deg: f64,
    /// Speed of that wind.
    pub wind_speed_kt: f64,
    /// The wind against that course; a tailwind is negative.
    pub headwind_kt: f64,
    /// The wind from the right of that course; from the left is negative.
    pub crosswind_kt: f64,
    /// Over the ground, with its turns.
    pub distance_nm: f64,
    /// From its start to its end.
    pub time_s: f64,
    /// The shortest straight between its turns; NaN if it is all turn and arc.
    pub shortest_straight_nm: f64,
    /// The greatest bank that keeps to its arc; NaN if it has none.
    pub arc_bank_deg: f64,
    /// `course_deg` from magnetic north; NaN without a variation in the conditions.
    pub magnetic_course_deg: f64,
    /// `heading_deg` from magnetic north; NaN without a variation in the conditions.
    pub magnetic_heading_deg: f64,
}

// SAFETY: as the trait asks; the codes and counts say nothing without a number beside them.
unsafe impl Grows for lubber_path_leg {
    const LEAST: usize = offset_of!(Self, start_longitude_deg);
}

/// A turn of a path. Directions are true where nothing else is said.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_path_turn {
    /// sizeof(lubber_path_turn), set by the caller in the first one of an array.
    pub struct_size: usize,
    /// The leg it leads onto, counted from zero.
    pub leg: usize,
    /// Which leg that is, as in lubber_leg.
    pub code: i32,
    /// What sets its bank, a LUBBER_GOVERNOR_ code.
    pub governed_by: i32,
    /// Where the roll into it begins: latitude.
    pub begin_latitude_deg: f64,
    /// Where it begins: longitude.
    pub begin_longitude_deg: f64,
    /// Course where it begins.
    pub begin_course_deg: f64,
    /// Altitude where it begins.
    pub begin_altitude_ft: f64,
    /// Time at its beginning since the first fix.
    pub begin_after_start_s: f64,
    /// Where the wings are level on the new course: latitude.
    pub roll_out_latitude_deg: f64,
    /// Where it rolls out: longitude.
    pub roll_out_longitude_deg: f64,
    /// Course where it rolls out.
    pub roll_out_course_deg: f64,
    /// Altitude where it rolls out.
    pub roll_out_altitude_ft: f64,
    /// Time at its end since the first fix.
    pub roll_out_after_start_s: f64,
    /// Change of heading, right positive.
    pub heading_change_deg: f64,
    /// Its greatest bank.
    pub bank_deg: f64,
    /// Radius through the air at that bank; infinite without a turn.
    pub radius_nm: f64,
    /// From wings level to wings level.
    pub time_s: f64,
    /// `begin_course_deg` from magnetic north; NaN without a variation in the conditions.
    pub begin_magnetic_course_deg: f64,
    /// `roll_out_course_deg` from magnetic north; NaN without a variation in the conditions.
    pub roll_out_magnetic_course_deg: f64,
}

// SAFETY: as the trait asks; the leg and the codes say nothing without a number beside them.
unsafe impl Grows for lubber_path_turn {
    const LEAST: usize = offset_of!(Self, begin_longitude_deg);
}

/// What a station is seen as where a turn begins or rolls out.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_path_reading {
    /// sizeof(lubber_path_reading), set by the caller in the first one of an array.
    pub struct_size: usize,
    /// The turn, counted from zero along the path.
    pub turn: usize,
    /// The station, counted from zero.
    pub station: usize,
    /// 1 where it rolls out, 0 where it begins.
    pub at_roll_out: i32,
    /// Whether the station can be used, a LUBBER_FLAG_ code.
    pub flag: i32,
    /// The DME reading.
    pub dme_nm: f64,
    /// The radial, in the station's north; NaN overhead, within a metre on the ground.
    pub radial_deg: f64,
}

// SAFETY: as the trait asks; the places say nothing without a number beside them.
unsafe impl Grows for lubber_path_reading {
    const LEAST: usize = offset_of!(Self, radial_deg);
}

/// What a check of a leg has found.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_path_check {
    /// sizeof(lubber_path_check), set by the caller in the first one of an array.
    pub struct_size: usize,
    /// The leg, counted from zero.
    pub leg: usize,
    /// What is found, a LUBBER_PATH_CHECK_KIND_ code; lubber_path_check_text puts it in words.
    pub kind: i32,
    /// Whose speed limit is exceeded, a LUBBER_HOLDING_SPEED_RULE_ code; -1 if it is no speed.
    pub holding_rule: i32,
    /// The turn that begins in a cone, or begins or rolls out where a station is not received, counted from zero along the path, else -1.
    pub turn: isize,
    /// The station of that cone, or that is not received, counted from zero, else -1: so too a leg's own that is not among them.
    pub station: isize,
    /// What it takes: degrees of bank, knots of calibrated airspeed, Mach number, nautical miles from a station that is not received, or
    /// the altitude in feet at which a leg begins past its end; NaN for a cone.
    pub value: f64,
    /// The most there is or is allowed of that, or the altitude that ends the leg; NaN for a cone.
    pub limit: f64,
    /// Pressure altitude where a racetrack ends that is flown too fast, else NaN.
    pub pressure_altitude_ft: f64,
}

// SAFETY: as the trait asks; the codes say nothing without the place they are of.
unsafe impl Grows for lubber_path_check {
    const LEAST: usize = offset_of!(Self, value);
}

/// Sets a station at a place: at sea level without declination, with a cone of 50 degrees.
///
/// @param[out] station the station
/// @param struct_size sizeof(lubber_path_station)
/// @param latitude_deg its latitude
/// @param longitude_deg its longitude
/// @return LUBBER_OK, or LUBBER_ERROR_STRUCT
///
/// # Safety
/// `station` must be null (a failure) or have room for `struct_size` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_path_station_init(
    station: *mut lubber_path_station,
    struct_size: usize,
    latitude_deg: f64,
    longitude_deg: f64,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { sized::init(station, struct_size, &usual_station(latitude_deg, longitude_deg)) }
}

/// Sets the usual surroundings: no station, the standard atmosphere, the holding speeds of ICAO.
///
/// @param[out] surroundings the structure
/// @param struct_size sizeof(lubber_path_surroundings)
/// @return LUBBER_OK, or LUBBER_ERROR_STRUCT
///
/// # Safety
/// `surroundings` must be null (a failure) or have room for `struct_size` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_path_surroundings_init(
    surroundings: *mut lubber_path_surroundings,
    struct_size: usize,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { sized::init(surroundings, struct_size, &usual_surroundings()) }
}

/// Briefs a sequence of legs and gives what is flown on each.
///
/// @param legs the legs, `leg_count` of them, all of one size
/// @param conditions what they are flown with
/// @param surroundings what they are briefed in; NULL for the usual
/// @param[out] path_legs room for `capacity` legs, the `struct_size` of the first set by the caller and taken for all; may be NULL if that
/// is 0
/// @param[out] path_leg_count how many there are: as many as were given; if they do not fit, call again with more room
/// @param[out] failed_leg the leg that could not be flown, is none or has a number out of range, counted from 1, 0 if none; may be NULL
/// @return LUBBER_OK, or a negative status; path_leg_count is then 0
///
/// # Safety
/// The arrays must hold what their counts say, the stations of the surroundings too; `path_leg_count` must be writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_path_legs(
    legs: *const lubber_leg,
    leg_count: usize,
    conditions: *const lubber_leg_conditions,
    surroundings: *const lubber_path_surroundings,
    path_legs: *mut lubber_path_leg,
    capacity: usize,
    path_leg_count: *mut usize,
    failed_leg: *mut usize,
) -> i32 {
    let given = Given { legs, leg_count, conditions, surroundings };
    // SAFETY: the caller vouches for the arrays.
    unsafe {
        give(given, path_legs, capacity, path_leg_count, failed_leg, |path, _| {
            path.legs().iter().map(leg_to_c).collect()
        })
    }
}

/// Briefs a sequence of legs and gives its turns, in their order along the path.
///
/// @param legs the legs, `leg_count` of them, all of one size
/// @param conditions what they are flown with
/// @param surroundings what they are briefed in; NULL for the usual
/// @param[out] turns room for `capacity` turns, as in lubber_path_legs; may be NULL if that is 0
/// @param[out] turn_count how many there are, which may be more than fit: call again with more room
/// @param[out] failed_leg as in lubber_path_legs
/// @return LUBBER_OK, or a negative status; turn_count is then 0
///
/// # Safety
/// As for lubber_path_legs.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_path_turns(
    legs: *const lubber_leg,
    leg_count: usize,
    conditions: *const lubber_leg_conditions,
    surroundings: *const lubber_path_surroundings,
    turns: *mut lubber_path_turn,
    capacity: usize,
    turn_count: *mut usize,
    failed_leg: *mut usize,
) -> i32 {
    let given = Given { legs, leg_count, conditions, surroundings };
    // SAFETY: the caller vouches for the arrays.
    unsafe {
        give(given, turns, capacity, turn_count, failed_leg, |path, _| {
            let legs = path.legs();
            path.turns().iter().map(|turn| turn_to_c(turn, &legs)).collect()
        })
    }
}

/// Briefs a sequence of legs and gives what the stations are seen as: of each turn every station's reading where it begins, then
/// every station's where it rolls out.
///
/// @param legs the legs, `leg_count` of them, all of one size
/// @param conditions what they are flown with
/// @param surroundings what they are briefed in; NULL for the usual, which has no station
/// @param[out] readings room for `capacity` readings, as in lubber_path_legs; may be NULL if that is 0
/// @param[out] reading_count how many there are, which may be more than fit: call again with more room
/// @param[out] failed_leg as in lubber_path_legs
/// @return LUBBER_OK, or a negative status; reading_count is then 0
///
/// # Safety
/// As for lubber_path_legs.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_path_readings(
    legs: *const lubber_leg,
    leg_count: usize,
    conditions: *const lubber_leg_conditions,
    surroundings: *const lubber_path_surroundings,
    readings: *mut lubber_path_reading,
    capacity: usize,
    reading_count: *mut usize,
    failed_leg: *mut usize,
) -> i32 {
    let given = Given { legs, leg_count, conditions, surroundings };
    // SAFETY: the caller vouches for the arrays.
    unsafe {
        give(given, readings, capacity, reading_count, failed_leg, |path, _| {
            path.readings().iter().map(reading_to_c).collect()
        })
    }
}

/// Briefs a sequence of legs and gives what a crew should know before flying it: an arc that takes more bank than the limit, a turn that
/// begins in a station's cone, a station that is not received where a turn begins or rolls out or where the leg ends that it ends, a
/// racetrack flown faster than the rule allows.
///
/// @param legs the legs, `leg_count` of them, all of one size
/// @param conditions what they are flown with
/// @param surroundings what they are briefed in; NULL for the usual
/// @param[out] checks room for `capacity` checks, as in lubber_path_legs; may be NULL if that is 0
/// @param[out] check_count how many have found something, which may be more than fit: call again with more room
/// @param[out] failed_leg as in lubber_path_legs
/// @return LUBBER_OK, or a negative status; check_count is then 0
///
/// # Safety
/// As for lubber_path_legs.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_path_checks(
    legs: *const lubber_leg,
    leg_count: usize,
    conditions: *const lubber_leg_conditions,
    surroundings: *const lubber_path_surroundings,
    checks: *mut lubber_path_check,
    capacity: usize,
    check_count: *mut usize,
    failed_leg: *mut usize,
) -> i32 {
    let given = Given { legs, leg_count, conditions, surroundings };
    // SAFETY: the caller vouches for the arrays.
    unsafe {
        give(given, checks, capacity, check_count, failed_leg, |path, rule| {
            path.checks().iter().map(|check| check_to_c(check, rule)).collect()
        })
    }
}

/// What a check says of a leg, without its numbers: English, valid for ever, "unknown check" for no LUBBER_PATH_CHECK_KIND_ code.
#[unsafe(no_mangle)]
pub extern "C" fn lubber_path_check_text(kind: i32) -> *const c_char {
    let text = match PathCheckKind::from_code("kind", f64::from(kind)) {
        Ok(PathCheckKind::ArcBank) => c"keeping to the arc takes more bank than the limit",
        Ok(PathCheckKind::Cone) => c"a turn begins in the cone of a station, where radials are of no use",
        Ok(PathCheckKind::HoldingAirspeed) => {
            c"the racetrack is flown at a higher calibrated airspeed than the rule allows"
        }
        Ok(PathCheckKind::HoldingMach) => {
            c"the racetrack is flown at a higher Mach number than the rule allows"
        }
        Ok(PathCheckKind::NotReceived) => c"a station is not received where a turn or the leg takes it",
        Ok(PathCheckKind::AltitudePassed) => {
            c"the altitude that ends the leg is passed already where it begins"
        }
        Err(_) => c"unknown check",
    };
    text.as_ptr()
}

/// What is given to each of the functions above.
#[derive(Clone, Copy)]
struct Given {
    legs: *const lubber_leg,
    leg_count: usize,
    conditions: *const lubber_leg_conditions,
    surroundings: *const lubber_path_surroundings,
}

/// Briefs the caller's legs and writes what is asked for into the caller's array, as far as that reaches.
///
/// # Safety
/// As for [`lubber_path_legs`].
unsafe fn give<T: Grows>(
    given: Given,
    places: *mut T,
    capacity: usize,
    count: *mut usize,
    failed_leg: *mut usize,
    asked: impl FnOnce(&BriefedPath, HoldingSpeedRule) -> Vec<T>,
) -> i32 {
    // SAFETY: the caller vouches for the arrays.
    unsafe {
        if count.is_null() {
            return LUBBER_ERROR_STRUCT;
        }
        count.write(0);
        if !failed_leg.is_null() {
            failed_leg.write(0);
        }
        let Some(size) = sized::room(places, capacity) else { return LUBBER_ERROR_STRUCT };
        let answer = || briefed(given).map(|(path, rule)| asked(&path, rule));
        match catch_unwind(AssertUnwindSafe(answer)) {
            Ok(Ok(values)) => {
                count.write(values.len());
                sized::fill_array(places, size, capacity, &values);
                LUBBER_OK
            }
            Ok(Err(failure)) => {
                if let Some(leg) = failure.leg()
                    && !failed_leg.is_null()
                {
                    failed_leg.write(leg);
                }
                failure.status()
            }
            Err(_) => LUBBER_ERROR_INTERNAL,
        }
    }
}

/// Briefs the caller's legs.
///
/// # Safety
/// As for [`lubber_path_legs`].
unsafe fn briefed(given: Given) -> Result<(BriefedPath, HoldingSpeedRule), Failure> {
    // SAFETY: the caller vouches for what is pointed to.
    let ((conditions, levels), legs, (stations, surroundings)) = unsafe {
        (
            read_conditions(given.conditions)?,
            read_legs(given.legs, given.leg_count)?,
            read_surroundings(given.surroundings)?,
        )
    };
    let path = brief_path(&legs, &conditions, levels.as_deref(), &stations, &surroundings);
    Ok((path.map_err(Failure::Error)?, surroundings.holding_rule))
}

/// Reads the surroundings and their stations, all of the size of the first.
///
/// # Safety
/// They must be null or hold what their sizes and the count say.
unsafe fn read_surroundings(
    surroundings: *const lubber_path_surroundings,
) -> Result<(Vec<PathStationInput>, PathSurroundingsInput), Failure> {
    const UNKNOWN: Failure = Failure::Status(LUBBER_ERROR_STRUCT);
    if surroundings.is_null() {
        return Ok((Vec::new(), PathSurroundingsInput::USUAL));
    }
    // SAFETY: the caller vouches for them.
    unsafe {
        let given = sized::read(surroundings, usual_surroundings()).ok_or(UNKNOWN)?;
        let mut stations = Vec::new();
        if given.station_count > 0 {
            let size = sized::size(given.stations).ok_or(UNKNOWN)?;
            for index in 0..given.station_count {
                let place = given.stations.byte_add(index * size);
                if sized::size(place) != Some(size) {
                    return Err(UNKNOWN);
                }
                let station = sized::read(place, usual_station(f64::NAN, f64::NAN)).ok_or(UNKNOWN)?;
                stations.push(PathStationInput {
                    latitude_deg: station.latitude_deg,
                    longitude_deg: station.longitude_deg,
                    elevation_ft: station.elevation_ft,
                    declination_deg: station.declination_deg,
                    cone_half_angle_deg: station.cone_half_angle_deg,
                });
            }
        }
        let rule = HoldingSpeedRule::from_code("holding_rule", f64::from(given.holding_rule));
        let input = PathSurroundingsInput {
            altimeter_setting_hpa: given.altimeter_setting_hpa,
            isa_deviation_k: given.isa_deviation_k,
            holding_rule: rule.map_err(Failure::Error)?,
        };
        Ok((stations, input))
    }
}

fn usual_station(latitude_deg: f64, longitude_deg: f64) -> lubber_path_station {
    let input = PathStationInput::new(latitude_deg, longitude_deg);
    lubber_path_station {
        struct_size: size_of::<lubber_path_station>(),
        latitude_deg: input.latitude_deg,
        longitude_deg: input.longitude_deg,
        elevation_ft: input.elevation_ft,
        declination_deg: input.declination_deg,
        cone_half_angle_deg: input.cone_half_angle_deg,
    }
}

fn usual_surroundings() -> lubber_path_surroundings {
    let input = PathSurroundingsInput::USUAL;
    lubber_path_surroundings {
        struct_size: size_of::<lubber_path_surroundings>(),
        stations: std::ptr::null(),
        station_count: 0,
        altimeter_setting_hpa: input.altimeter_setting_hpa,
        isa_deviation_k: input.isa_deviation_k,
        holding_rule: input.holding_rule.code(),
    }
}

fn leg_to_c(leg: &PathLegOutput) -> lubber_path_leg {
    lubber_path_leg {
        struct_size: size_of::<lubber_path_leg>(),
        code: leg.code.code(),
        keeps_its_arc: i32::from(leg.keeps_its_arc),
        turn_count: leg.turns,
        check_count: leg.checks,
        start_latitude_deg: leg.start_latitude_deg,
        start_longitude_deg: leg.start_longitude_deg,
        start_course_deg: leg.start_course_deg,
        start_altitude_ft: leg.start_altitude_ft,
        start_time_s: leg.start_time_s,
        end_latitude_deg: leg.end_latitude_deg,
        end_longitude_deg: leg.end_longitude_deg,
        end_course_deg: leg.end_course_deg,
        end_altitude_ft: leg.end_altitude_ft,
        end_time_s: leg.end_time_s,
        course_deg: leg.course_deg,
        heading_deg: leg.heading_deg,
        wind_correction_deg: leg.wind_correction_deg,
        groundspeed_kt: leg.groundspeed_kt,
        wind_from_deg: leg.wind_from_deg,
        wind_speed_kt: leg.wind_speed_kt,
        headwind_kt: leg.headwind_kt,
        crosswind_kt: leg.crosswind_kt,
        distance_nm: leg.distance_nm,
        time_s: leg.time_s,
        shortest_straight_nm: leg.shortest_straight_nm,
        arc_bank_deg: leg.arc_bank_deg,
        magnetic_course_deg: leg.magnetic_course_deg,
        magnetic_heading_deg: leg.magnetic_heading_deg,
    }
}

fn turn_to_c(turn: &PathTurnOutput, legs: &[PathLegOutput]) -> lubber_path_turn {
    lubber_path_turn {
        struct_size: size_of::<lubber_path_turn>(),
        leg: turn.leg,
        code: legs.get(turn.leg).map_or(-1, |leg| LegCode::code(leg.code)),
        governed_by: turn.governed_by.code(),
        begin_latitude_deg: turn.begin_latitude_deg,
        begin_longitude_deg: turn.begin_longitude_deg,
        begin_course_deg: turn.begin_course_deg,
        begin_altitude_ft: turn.begin_altitude_ft,
        begin_after_start_s: turn.begin_after_start_s,
        roll_out_latitude_deg: turn.roll_out_latitude_deg,
        roll_out_longitude_deg: turn.roll_out_longitude_deg,
        roll_out_course_deg: turn.roll_out_course_deg,
        roll_out_altitude_ft: turn.roll_out_altitude_ft,
        roll_out_after_start_s: turn.roll_out_after_start_s,
        heading_change_deg: turn.heading_change_deg,
        bank_deg: turn.bank_deg,
        radius_nm: turn.radius_nm,
        time_s: turn.time_s,
        begin_magnetic_course_deg: turn.begin_magnetic_course_deg,
        roll_out_magnetic_course_deg: turn.roll_out_magnetic_course_deg,
    }
}

fn reading_to_c(reading: &PathReadingOutput) -> lubber_path_reading {
    lubber_path_reading {
        struct_size: size_of::<lubber_path_reading>(),
        turn: reading.turn,
        station: reading.station,
        at_roll_out: i32::from(reading.at_roll_out),
        flag: reading.flag.code(),
        dme_nm: reading.dme_nm,
        radial_deg: reading.radial_deg,
    }
}

fn check_to_c(check: &PathCheckOutput, rule: HoldingSpeedRule) -> lubber_path_check {
    let place = |index: Option<usize>| index.and_then(|index| isize::try_from(index).ok()).unwrap_or(-1);
    let is_speed = matches!(check.kind, PathCheckKind::HoldingAirspeed | PathCheckKind::HoldingMach);
    lubber_path_check {
        struct_size: size_of::<lubber_path_check>(),
        leg: check.leg,
        kind: check.kind.code(),
        holding_rule: if is_speed { rule.code() } else { -1 },
        turn: place(check.turn),
        station: place(check.station),
        value: check.value,
        limit: check.limit,
        pressure_altitude_ft: check.pressure_altitude_ft,
    }
}

#[cfg(test)]
mod tests {
    use std::ffi::CStr;

    use super::*;

    #[test]
    fn the_words_are_those_of_the_core() {
        for kind in PathCheckKind::ALL {
            // SAFETY: it is a text.
            let text = unsafe { CStr::from_ptr(lubber_path_check_text(kind.code())) };
            assert_eq!(text.to_bytes(), kind.text().as_bytes());
        }
    }
}
