//! A flight in C: a handle that is made, steered, stepped and freed.

use std::mem::offset_of;
use std::panic::{AssertUnwindSafe, catch_unwind};

use lubberline::Error;
use lubberline::plain::{FlightAndReceiver, FlightInput, FlightState};

use crate::generated::{LUBBER_ERROR_INTERNAL, LUBBER_ERROR_STRUCT, LUBBER_OK};
use crate::sized::{self, Grows};
use crate::wind_levels::{lubber_wind_level, read_levels};

/// A flight with its receiver; made by lubber_flight_new, freed by lubber_flight_free.
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_flight(FlightAndReceiver);

/// How a flight begins, and the station its receiver is tuned to. Set it with lubber_flight_start_init, then what differs.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_flight_start {
    /// sizeof(lubber_flight_start).
    pub struct_size: usize,
    /// Where it begins: latitude.
    pub latitude_deg: f64,
    /// Where it begins: longitude.
    pub longitude_deg: f64,
    /// Altitude.
    pub altitude_ft: f64,
    /// Heading at first, from the carried north.
    pub heading_deg: f64,
    /// True airspeed, above 0 to 5000.
    pub true_airspeed_kt: f64,
    /// Where the wind blows from, from the carried north; 0 at first, which is north: set it with the speed.
    pub wind_from_deg: f64,
    /// Speed of the wind, 0 to 1000; 0 at first.
    pub wind_speed_kt: f64,
    /// Greatest bank, above 0 below 90; 25 at first.
    pub bank_limit_deg: f64,
    /// Greatest rate of turn, above 0; 3 at first.
    pub turn_rate_limit_deg_per_s: f64,
    /// Rate of roll, above 0; 5 at first.
    pub roll_rate_deg_per_s: f64,
    /// How long after an indication the crew acts on it, 0 to 3600; 0 at first.
    pub reaction_s: f64,
    /// The station: latitude. Its true north is the north that is carried along.
    pub station_latitude_deg: f64,
    /// The station: longitude.
    pub station_longitude_deg: f64,
    /// The station's elevation; 0 at first.
    pub station_elevation_ft: f64,
    /// The station's declination, positive east; 0 at first.
    pub station_declination_deg: f64,
    /// The course selected on the receiver, from the station's north; 0 at first.
    pub course_deg: f64,
    /// Half-angle of the cone of confusion, above 0 below 90; 50 at first.
    pub cone_half_angle_deg: f64,
}

// SAFETY: as the trait asks; where the flight begins and where the station is have no usual values.
unsafe impl Grows for lubber_flight_start {
    const LEAST: usize = offset_of!(Self, station_elevation_ft);
}

/// Where a flight is and what its receiver shows.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_flight_state {
    /// sizeof(lubber_flight_state), set by the caller.
    pub struct_size: usize,
    /// Time since the start.
    pub time_s: f64,
    /// Latitude.
    pub latitude_deg: f64,
    /// Longitude.
    pub longitude_deg: f64,
    /// Altitude.
    pub altitude_ft: f64,
    /// Heading, from the true north of the place.
    pub true_heading_deg: f64,
    /// Bank, right positive.
    pub bank_deg: f64,
    /// Track over the ground, from the true north of the place.
    pub true_track_deg: f64,
    /// Speed over the ground.
    pub groundspeed_kt: f64,
    /// The radial, from the station's north; NaN overhead.
    pub radial_deg: f64,
    /// The DME distance, with all its digits.
    pub dme_nm: f64,
    /// How far the selected course lies to the right, in degrees of the radial, -90 to 90; NaN where the needle is not to be used.
    pub deviation_deg: f64,
    /// The least altitude at which the station is received here, over a smooth earth at its elevation; infinite if none.
    pub least_altitude_ft: f64,
    /// LUBBER_TO_FROM_TO (1), LUBBER_TO_FROM_FROM (2) or LUBBER_TO_FROM_OFF (0).
    pub to_from: i32,
    /// LUBBER_FLAG_CLEAR (0), or why neither is shown: LUBBER_FLAG_ABEAM (1; the needle is good), LUBBER_FLAG_CONE (2), LUBBER_FLAG_BELOW_HORIZON
    /// (3), LUBBER_FLAG_OUT_OF_RANGE (4).
    pub flag: i32,
    /// 1 in the cone of confusion, else 0.
    pub in_cone: i32,
    /// 1 when the turn is turned or the course captured, else 0.
    pub done: i32,
}

// SAFETY: as the trait asks; an answer of one number is an answer.
unsafe impl Grows for lubber_flight_state {
    const LEAST: usize = offset_of!(Self, latitude_deg);
}

/// Sets the usual values; place, altitude, heading, speed and station NaN, to be set.
///
/// @param[out] start the structure
/// @param struct_size sizeof(lubber_flight_start)
/// @return LUBBER_OK, or LUBBER_ERROR_STRUCT
///
/// # Safety
/// `start` must be null (a failure) or have room for `struct_size` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_start_init(
    start: *mut lubber_flight_start,
    struct_size: usize,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { sized::init(start, struct_size, &usual()) }
}

/// Makes a flight that holds its heading. This allocates; steering and stepping do not.
///
/// @param start how it begins
/// @param[out] flight the flight, NULL on a failure; to be freed with lubber_flight_free
/// @return LUBBER_OK, or a negative status; a NaN is out of range here
///
/// # Safety
/// `start` must be null (a failure) or hold what its size says; `flight` must be null (a failure) or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_new(
    start: *const lubber_flight_start,
    flight: *mut *mut lubber_flight,
) -> i32 {
    if flight.is_null() {
        return LUBBER_ERROR_STRUCT;
    }
    // SAFETY: the caller vouches for both.
    unsafe {
        flight.write(std::ptr::null_mut());
        let Some(given) = sized::read(start, usual()) else { return LUBBER_ERROR_STRUCT };
        let input = FlightInput {
            latitude_deg: given.latitude_deg,
            longitude_deg: given.longitude_deg,
            altitude_ft: given.altitude_ft,
            heading_deg: given.heading_deg,
            true_airspeed_kt: given.true_airspeed_kt,
            wind_from_deg: given.wind_from_deg,
            wind_speed_kt: given.wind_speed_kt,
            bank_limit_deg: given.bank_limit_deg,
            turn_rate_limit_deg_per_s: given.turn_rate_limit_deg_per_s,
            roll_rate_deg_per_s: given.roll_rate_deg_per_s,
            reaction_s: given.reaction_s,
            station_latitude_deg: given.station_latitude_deg,
            station_longitude_deg: given.station_longitude_deg,
            station_elevation_ft: given.station_elevation_ft,
            station_declination_deg: given.station_declination_deg,
            course_deg: given.course_deg,
            cone_half_angle_deg: given.cone_half_angle_deg,
        };
        match catch_unwind(|| FlightAndReceiver::new(&input)) {
            Ok(Ok(made)) => {
                flight.write(Box::into_raw(Box::new(lubber_flight(made))));
                LUBBER_OK
            }
            Ok(Err(error)) => error.code(),
            Err(_) => LUBBER_ERROR_INTERNAL,
        }
    }
}

/// Frees a flight.
///
/// # Safety
/// `flight` must be null (nothing is done) or come from lubber_flight_new and not be used again.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_free(flight: *mut lubber_flight) {
    if !flight.is_null() {
        // SAFETY: the caller vouches for it.
        drop(unsafe { Box::from_raw(flight) });
    }
}

/// Does something with a flight, which stays as it was on a failure.
///
/// # Safety
/// `flight` must be null (a failure) or come from [`lubber_flight_new`].
unsafe fn with(
    flight: *mut lubber_flight,
    act: impl FnOnce(&mut FlightAndReceiver) -> Result<(), Error>,
) -> i32 {
    if flight.is_null() {
        return LUBBER_ERROR_STRUCT;
    }
    // SAFETY: the caller vouches for it.
    let kept = unsafe { &mut (*flight).0 };
    let mut changed = *kept;
    match catch_unwind(AssertUnwindSafe(|| act(&mut changed))) {
        Ok(Ok(())) => {
            *kept = changed;
            LUBBER_OK
        }
        Ok(Err(error)) => error.code(),
        Err(_) => LUBBER_ERROR_INTERNAL,
    }
}

/// Flies on for a time, such as a sixtieth of a second; zero, a negative time, one beyond 1 000 000 s and NaN do nothing.
///
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_step(flight: *mut lubber_flight, time_s: f64) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe {
        with(flight, |flown| {
            flown.step(time_s);
            Ok(())
        })
    }
}

/// Where a flight is and what its receiver shows.
///
/// @param flight the flight
/// @param[out] state the answer, its `struct_size` set by the caller; on a failure every number is NaN and every code -1
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new; `state` must be null (a failure) or as long as its size says.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_look(
    flight: *const lubber_flight,
    state: *mut lubber_flight_state,
) -> i32 {
    // SAFETY: the caller vouches for both.
    unsafe {
        sized::answer(state, || {
            let flown = flight.as_ref().ok_or(LUBBER_ERROR_STRUCT)?;
            Ok(to_c(&flown.0.state()))
        })
    }
}

/// Tunes the receiver to another station and selects a course, from its north.
///
/// The station's true north is the north that is carried from now on: the flight holds its heading, and the wind stays what it is in space. Steer anew.
///
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_tune(
    flight: *mut lubber_flight,
    station_latitude_deg: f64,
    station_longitude_deg: f64,
    station_elevation_ft: f64,
    station_declination_deg: f64,
    course_deg: f64,
) -> i32 {
    let tune = |flown: &mut FlightAndReceiver| {
        flown.tune(
            station_latitude_deg,
            station_longitude_deg,
            station_elevation_ft,
            station_declination_deg,
            course_deg,
        )
    };
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, tune) }
}

/// Holds a heading, from the carried north.
///
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_hold_heading(flight: *mut lubber_flight, heading_deg: f64) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, |flown| flown.hold_heading(heading_deg)) }
}

/// Holds the heading until the DME reading of the lead, then turns onto the outbound course without looking at an instrument.
/// The reading is that of the height and the wind of this moment: ask again after a climb or in another wind.
///
/// @param flight the flight
/// @param inbound_course_deg course flown to the station, from true north there
/// @param outbound_course_deg course flown from it, from true north there
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_turn_at_station(
    flight: *mut lubber_flight,
    inbound_course_deg: f64,
    outbound_course_deg: f64,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, |flown| flown.turn_at_station(inbound_course_deg, outbound_course_deg)) }
}

/// Tracks a course by the needle.
///
/// @param flight the flight
/// @param course_deg the course, from the station's north
/// @param gain degrees of heading for each degree of the needle, above 0 to 100; 4 is usual
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_track(flight: *mut lubber_flight, course_deg: f64, gain: f64) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, |flown| flown.track(course_deg, gain)) }
}

/// Intercepts a course, turns onto it with the right lead, then tracks it by the needle.
///
/// @param flight the flight
/// @param course_deg the course, from the station's north
/// @param intercept_angle_deg the angle between track and course, above 0 to 90
/// @param gain as for lubber_flight_track
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_intercept(
    flight: *mut lubber_flight,
    course_deg: f64,
    intercept_angle_deg: f64,
    gain: f64,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, |flown| flown.intercept(course_deg, intercept_angle_deg, gain)) }
}

/// Keeps a distance from the station.
///
/// @param flight the flight
/// @param radius_nm the distance along the ground
/// @param sense LUBBER_ARC_SENSE_CLOCKWISE (1) or LUBBER_ARC_SENSE_COUNTERCLOCKWISE (-1)
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_arc(flight: *mut lubber_flight, radius_nm: f64, sense: i32) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, |flown| flown.arc(radius_nm, f64::from(sense))) }
}

/// Enters a racetrack at the station, from over it, and flies it round after round, its outbound leg by the clock.
///
/// @param flight the flight
/// @param inbound_course_deg the inbound course, from true north at the station
/// @param side LUBBER_HOLDING_SIDE_RIGHT (1) or LUBBER_HOLDING_SIDE_LEFT (-1)
/// @param entry LUBBER_HOLDING_ENTRY_DIRECT (3; on the inbound course too), LUBBER_HOLDING_ENTRY_PARALLEL (1) or LUBBER_HOLDING_ENTRY_OFFSET (2), as
/// lubber_holding_entry gives it
/// @param outbound_heading_deg the heading flown outbound, from true north at the station, as lubber_holding_pattern gives it
/// @param outbound_time_s the time flown outbound with the wings level, 0 to 3600
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_hold(
    flight: *mut lubber_flight,
    inbound_course_deg: f64,
    side: i32,
    entry: i32,
    outbound_heading_deg: f64,
    outbound_time_s: f64,
) -> i32 {
    let (side, entry) = (f64::from(side), f64::from(entry));
    let hold = |flown: &mut FlightAndReceiver| {
        flown.hold(inbound_course_deg, side, entry, outbound_heading_deg, outbound_time_s)
    };
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, hold) }
}

/// Enters a racetrack at the station, as lubber_flight_hold, with an outbound leg that ends where the DME reading has risen to a value.
///
/// @param outbound_dme_nm the reading, 0 to 1000
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_hold_by_dme(
    flight: *mut lubber_flight,
    inbound_course_deg: f64,
    side: i32,
    entry: i32,
    outbound_heading_deg: f64,
    outbound_dme_nm: f64,
) -> i32 {
    let (side, entry) = (f64::from(side), f64::from(entry));
    let hold = |flown: &mut FlightAndReceiver| {
        flown.hold_by_dme(inbound_course_deg, side, entry, outbound_heading_deg, outbound_dme_nm)
    };
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, hold) }
}

/// Climbs or descends to an altitude at a rate, whose sign does not matter, and levels off there.
///
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_climb_to(
    flight: *mut lubber_flight,
    altitude_ft: f64,
    climb_fpm: f64,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, |flown| flown.climb_to(altitude_ft, climb_fpm)) }
}

/// Flies through another wind from now on, from the carried north; what is steered goes on believing in the old one.
///
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_set_wind(
    flight: *mut lubber_flight,
    wind_from_deg: f64,
    wind_speed_kt: f64,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, |flown| flown.set_wind(wind_from_deg, wind_speed_kt)) }
}

fn usual() -> lubber_flight_start {
    let input = FlightInput::USUAL;
    lubber_flight_start {
        struct_size: size_of::<lubber_flight_start>(),
        latitude_deg: input.latitude_deg,
        longitude_deg: input.longitude_deg,
        altitude_ft: input.altitude_ft,
        heading_deg: input.heading_deg,
        true_airspeed_kt: input.true_airspeed_kt,
        wind_from_deg: input.wind_from_deg,
        wind_speed_kt: input.wind_speed_kt,
        bank_limit_deg: input.bank_limit_deg,
        turn_rate_limit_deg_per_s: input.turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s: input.roll_rate_deg_per_s,
        reaction_s: input.reaction_s,
        station_latitude_deg: input.station_latitude_deg,
        station_longitude_deg: input.station_longitude_deg,
        station_elevation_ft: input.station_elevation_ft,
        station_declination_deg: input.station_declination_deg,
        course_deg: input.course_deg,
        cone_half_angle_deg: input.cone_half_angle_deg,
    }
}

/// Flies through a wind that changes by components from one altitude to a higher one, and not beyond them, from now on.
///
/// Directions are from the carried north. What is steered goes on believing in the old wind; what is steered afterwards believes in the wind at the
/// altitude where the flight is then.
///
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_set_wind_levels(
    flight: *mut lubber_flight,
    lower_altitude_ft: f64,
    lower_from_deg: f64,
    lower_speed_kt: f64,
    upper_altitude_ft: f64,
    upper_from_deg: f64,
    upper_speed_kt: f64,
) -> i32 {
    let set = |flown: &mut FlightAndReceiver| {
        flown.set_wind_levels(
            lower_altitude_ft,
            lower_from_deg,
            lower_speed_kt,
            upper_altitude_ft,
            upper_from_deg,
            upper_speed_kt,
        )
    };
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, set) }
}

/// Flies through winds at several levels from now on, as lubber_flight_set_wind_levels through two: they change by components from one level to
/// the next, and not beyond the lowest and the highest.
///
/// @param flight the flight
/// @param levels the levels in ascending order, `level_count` of them, all of one size; directions are from the carried north
/// @param level_count 1 to 16
/// @return LUBBER_OK, or a negative status; lubber_wind_levels_check says which level is wrong
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new; `levels` must be null (a failure) or hold what the count says.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_set_winds_aloft(
    flight: *mut lubber_flight,
    levels: *const lubber_wind_level,
    level_count: usize,
) -> i32 {
    // SAFETY: the caller vouches for both.
    unsafe {
        match read_levels(levels, level_count) {
            Ok(levels) => with(flight, |flown| flown.set_winds_aloft(&levels)),
            Err(failure) => failure.status(),
        }
    }
}

/// Flies at another true airspeed from now on, above 0 to 5000.
///
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// `flight` must be null (a failure) or come from lubber_flight_new.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_flight_set_airspeed(
    flight: *mut lubber_flight,
    true_airspeed_kt: f64,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { with(flight, |flown| flown.set_airspeed(true_airspeed_kt)) }
}

fn to_c(state: &FlightState) -> lubber_flight_state {
    lubber_flight_state {
        struct_size: size_of::<lubber_flight_state>(),
        time_s: state.time_s,
        latitude_deg: state.latitude_deg,
        longitude_deg: state.longitude_deg,
        altitude_ft: state.altitude_ft,
        true_heading_deg: state.true_heading_deg,
        bank_deg: state.bank_deg,
        true_track_deg: state.true_track_deg,
        groundspeed_kt: state.groundspeed_kt,
        radial_deg: state.radial_deg,
        dme_nm: state.dme_nm,
        deviation_deg: state.deviation_deg,
        least_altitude_ft: state.least_altitude_ft,
        to_from: state.to_from as i32,
        flag: state.flag as i32,
        in_cone: state.in_cone as i32,
        done: state.done as i32,
    }
}
