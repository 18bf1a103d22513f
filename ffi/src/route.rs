//! The brief of a route in C: an array of stations in, legs and turns out into the caller's arrays.

use std::mem::offset_of;
use std::panic::{AssertUnwindSafe, catch_unwind};

use lubberline::Error;
use lubberline::plain::{
    BriefedRoute, RouteConditionsInput, RouteFixInput, RouteLegOutput, RouteTurnOutput, WindLevelInput,
    brief_route,
};
use lubberline::route::{RouteError, RoutePlace};

use crate::generated::{LUBBER_ERROR_INTERNAL, LUBBER_ERROR_STRUCT, LUBBER_OK};
use crate::sized::{self, Grows};
use crate::sureness::{lubber_error_model, lubber_sureness, model, sureness_to_c};
use crate::wind_levels::{Failure, lubber_wind_level, read_levels};

/// A station of a route, which way to turn there, and the wind there and on the leg to it. Set it with lubber_route_fix_init, then change what
/// differs.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_route_fix {
    /// sizeof(lubber_route_fix).
    pub struct_size: usize,
    /// The station: latitude.
    pub latitude_deg: f64,
    /// The station: longitude.
    pub longitude_deg: f64,
    /// Elevation of its antenna above mean sea level; 0 at first.
    pub elevation_ft: f64,
    /// From true north to its own, positive east; 0 at first.
    pub declination_deg: f64,
    /// Half-angle of its cone of confusion from the vertical, above 0 below 90; 50 at first.
    pub cone_half_angle_deg: f64,
    /// Where the wind blows from, true; NaN with the speed, as at first, for that of the conditions.
    pub wind_from_deg: f64,
    /// Speed of the wind, 0 to 1000; NaN with the direction, as at first, for that of the conditions.
    pub wind_speed_kt: f64,
    /// Winds by level in place of that wind, of which the one at the altitude flown counts; NULL, as at first, for none.
    pub wind_levels: *const lubber_wind_level,
    /// How many levels, up to 1000; 0, as at first, for none.
    pub wind_level_count: usize,
    /// Which way to turn: LUBBER_TURN_SIDE_SHORTEST (0, at first), LUBBER_TURN_SIDE_LEFT (-1) or LUBBER_TURN_SIDE_RIGHT (1). Nothing is turned at
    /// the first station and the last.
    pub turn: i32,
}

// SAFETY: as the trait asks; the position has no usual value.
unsafe impl Grows for lubber_route_fix {
    const LEAST: usize = offset_of!(Self, elevation_ft);
}

/// What a route is flown with, and the air it lies in. Set it with lubber_route_conditions_init, then change what differs.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_route_conditions {
    /// sizeof(lubber_route_conditions).
    pub struct_size: usize,
    /// True airspeed, above 0 to 5000.
    pub true_airspeed_kt: f64,
    /// Pressure altitude, held all the way.
    pub pressure_altitude_ft: f64,
    /// Altimeter setting of the region; 1013.25 at first.
    pub altimeter_setting_hpa: f64,
    /// How much warmer than the standard atmosphere it is; 0 at first.
    pub isa_deviation_k: f64,
    /// Where the wind blows from, true, at stations without a wind of their own; 0 at first, which is north: set it with the speed.
    pub wind_from_deg: f64,
    /// Speed of that wind, 0 to 1000; 0 at first.
    pub wind_speed_kt: f64,
    /// Greatest bank, above 0 below 90; 25 at first.
    pub bank_limit_deg: f64,
    /// Greatest rate of turn, above 0, INFINITY for none; 3 at first.
    pub turn_rate_limit_deg_per_s: f64,
    /// Rate of roll, above 0, INFINITY for an instant roll; 5 at first.
    pub roll_rate_deg_per_s: f64,
    /// The angle at which an outbound course would be intercepted after flying over a station, above 0 to 90; 30 at first.
    pub intercept_angle_deg: f64,
    /// Winds by level in place of that wind, of which the one at the altitude flown counts; NULL, as at first, for none.
    pub wind_levels: *const lubber_wind_level,
    /// How many levels, up to 1000; 0, as at first, for none.
    pub wind_level_count: usize,
}

// SAFETY: as the trait asks; the airspeed and the altitude have no usual values.
unsafe impl Grows for lubber_route_conditions {
    const LEAST: usize = offset_of!(Self, altimeter_setting_hpa);
}

/// A leg of a route. Radials are in the stations' own north, all else is true.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_route_leg {
    /// sizeof(lubber_route_leg), set by the caller in the first one of an array.
    pub struct_size: usize,
    /// From station to station.
    pub length_nm: f64,
    /// Course where it begins.
    pub initial_course_deg: f64,
    /// Course where it ends.
    pub final_course_deg: f64,
    /// The radial of the first station it is flown on, away from it.
    pub radial_from_deg: f64,
    /// The radial of the second station it is flown on, toward it.
    pub radial_to_deg: f64,
    /// Where the wind on it blows from.
    pub wind_from_deg: f64,
    /// Speed of that wind.
    pub wind_speed_kt: f64,
    /// What holds the course half-way.
    pub heading_deg: f64,
    /// Heading less course half-way, right positive.
    pub wind_correction_deg: f64,
    /// Groundspeed half-way.
    pub groundspeed_kt: f64,
    /// What is left between the turns at its ends; negative if they overlap.
    pub straight_nm: f64,
    /// The time for that; NaN if they overlap.
    pub straight_time_s: f64,
    /// The least length that would be enough for the turns at its ends.
    pub least_length_nm: f64,
    /// Radio horizon of the first station at this altitude, over a smooth earth.
    pub horizon_from_nm: f64,
    /// Radio horizon of the second station.
    pub horizon_to_nm: f64,
    /// How much of it lies beyond both horizons; 0 if none.
    pub unreceived_nm: f64,
    /// 1 if it is long enough for the turns at its ends, else 0.
    pub long_enough: i32,
    /// 1 if no part of it lies beyond both horizons, else 0.
    pub received: i32,
}

// SAFETY: as the trait asks; an answer of one number is an answer.
unsafe impl Grows for lubber_route_leg {
    const LEAST: usize = offset_of!(Self, initial_course_deg);
}

/// A turn at a station of a route. Radials are in the station's own north, all else is true.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_route_turn {
    /// sizeof(lubber_route_turn), set by the caller in the first one of an array.
    pub struct_size: usize,
    /// The DME reading at which the turn begins.
    pub begin_at_dme_nm: f64,
    /// The radial on which it begins.
    pub begin_on_radial_deg: f64,
    /// The lead: the distance before the station at which it begins; negative past it.
    pub begin_before_fix_nm: f64,
    /// Where it begins: latitude.
    pub begin_latitude_deg: f64,
    /// Where it begins: longitude.
    pub begin_longitude_deg: f64,
    /// What a tenth of a mile on the DME is along the ground there: much, close to overhead; infinite overhead.
    pub ground_per_dme_tenth_nm: f64,
    /// When it begins, after the last roll-out or the start; NaN, like all times after the start, from a leg on that is too short.
    pub begin_after_last_roll_out_s: f64,
    /// When it begins, after the start of the route.
    pub begin_after_start_s: f64,
    /// From its beginning to wings level.
    pub turn_time_s: f64,
    /// Its length over the ground.
    pub turn_length_nm: f64,
    /// When the wings are level again, after the start of the route.
    pub roll_out_after_start_s: f64,
    /// The DME reading there.
    pub roll_out_dme_nm: f64,
    /// The radial there.
    pub roll_out_radial_deg: f64,
    /// How far past the station that is, along the outbound course; negative before it.
    pub roll_out_past_fix_nm: f64,
    /// Where the wings are level again: latitude.
    pub roll_out_latitude_deg: f64,
    /// Where the wings are level again: longitude.
    pub roll_out_longitude_deg: f64,
    /// Height above the station.
    pub height_above_station_ft: f64,
    /// Where the wind blows from.
    pub wind_from_deg: f64,
    /// Speed of the wind.
    pub wind_speed_kt: f64,
    /// Course to the station.
    pub inbound_course_deg: f64,
    /// Course from it.
    pub outbound_course_deg: f64,
    /// The change between them, right positive, the short way.
    pub course_change_deg: f64,
    /// The radial it is reached on.
    pub inbound_radial_deg: f64,
    /// The radial it is left on.
    pub outbound_radial_deg: f64,
    /// Heading that holds the inbound course.
    pub heading_before_deg: f64,
    /// Heading that holds the outbound course.
    pub heading_after_deg: f64,
    /// Heading to turn through, right positive, the way that is turned.
    pub heading_change_deg: f64,
    /// Groundspeed on the inbound course.
    pub groundspeed_before_kt: f64,
    /// Groundspeed on the outbound course.
    pub groundspeed_after_kt: f64,
    /// The greatest bank.
    pub bank_deg: f64,
    /// Radius through the air at that bank; infinite if there is no turn.
    pub radius_nm: f64,
    /// Least distance from the station over the ground.
    pub closest_approach_nm: f64,
    /// Radius of its cone of confusion at the height.
    pub cone_radius_nm: f64,
    /// The DME reading at the edge of the cone.
    pub cone_edge_dme_nm: f64,
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
    /// Flying over first: time from over the station until the outbound course is held.
    pub fly_over_duration_s: f64,
    /// By rule, the lead: a third of a mile for each 60 kt, for 90 degrees.
    pub rule_lead_nm: f64,
    /// By how much that is too long.
    pub rule_lead_error_nm: f64,
    /// By rule, with half a mile for each 10 000 ft above 5 000 ft.
    pub rule_lead_with_height_nm: f64,
    /// By how much that is too long.
    pub rule_lead_with_height_error_nm: f64,
    /// By rule, the reading: the lead added to the height in miles.
    pub rule_dme_nm: f64,
    /// By how much that is too much.
    pub rule_dme_error_nm: f64,
    /// What governs the bank: LUBBER_GOVERNOR_BANK_LIMIT (0), LUBBER_GOVERNOR_TURN_RATE_LIMIT (1), LUBBER_GOVERNOR_ROLL_RATE
    /// (2) or LUBBER_GOVERNOR_NO_TURN (3).
    pub governed_by: i32,
    /// Which way is turned: -1 left, 1 right, 0 if there is no turn.
    pub side: i32,
    /// 1 if the turn begins inside the cone of confusion, else 0.
    pub begins_in_cone: i32,
    /// 1 if the aircraft enters the cone at all, else 0.
    pub enters_cone: i32,
}

// SAFETY: as the trait asks; an answer of one number is an answer.
unsafe impl Grows for lubber_route_turn {
    const LEAST: usize = offset_of!(Self, begin_on_radial_deg);
}

/// What a route comes to, or where it failed.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_route_summary {
    /// sizeof(lubber_route_summary), set by the caller.
    pub struct_size: usize,
    /// Distance over the ground, with the turns; NaN on a failure, and if a leg is too short for its turns.
    pub total_distance_nm: f64,
    /// Time from the first station to the last, with the turns; NaN likewise.
    pub total_time_s: f64,
    /// How many legs there are, which may be more than fit; 0 on a failure.
    pub leg_count: usize,
    /// How many turns there are, which may be more than fit; 0 on a failure.
    pub turn_count: usize,
    /// The station at which it failed, counted from 1; 0 if at none.
    pub failed_fix: usize,
    /// The leg on which it failed, counted from 1; 0 if on none.
    pub failed_leg: usize,
    /// The level of winds that is wrong, counted from 1, in that station's or else in the conditions'; 0 if none.
    pub failed_wind_level: usize,
}

// SAFETY: as the trait asks; the totals are an answer.
unsafe impl Grows for lubber_route_summary {
    const LEAST: usize = offset_of!(Self, leg_count);
}

/// Sets a station: at sea level without declination, with a cone of 50 degrees, the wind of the conditions, and the short way to turn.
///
/// @param[out] fix the structure
/// @param struct_size sizeof(lubber_route_fix)
/// @param latitude_deg latitude of the station
/// @param longitude_deg longitude of the station
/// @return LUBBER_OK, or LUBBER_ERROR_STRUCT
///
/// # Safety
/// `fix` must be null (a failure) or have room for `struct_size` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_route_fix_init(
    fix: *mut lubber_route_fix,
    struct_size: usize,
    latitude_deg: f64,
    longitude_deg: f64,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { sized::init(fix, struct_size, &usual_fix(latitude_deg, longitude_deg)) }
}

/// Sets the usual conditions for a speed and an altitude: standard air, calm, 25 degrees of bank, 3 degrees per second, a roll of 5, an
/// intercept of 30 degrees.
///
/// @param[out] conditions the structure
/// @param struct_size sizeof(lubber_route_conditions)
/// @param true_airspeed_kt true airspeed
/// @param pressure_altitude_ft pressure altitude, held all the way
/// @return LUBBER_OK, or LUBBER_ERROR_STRUCT
///
/// # Safety
/// `conditions` must be null (a failure) or have room for `struct_size` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_route_conditions_init(
    conditions: *mut lubber_route_conditions,
    struct_size: usize,
    true_airspeed_kt: f64,
    pressure_altitude_ft: f64,
) -> i32 {
    // SAFETY: the caller vouches for it.
    unsafe { sized::init(conditions, struct_size, &usual_conditions(true_airspeed_kt, pressure_altitude_ft)) }
}

/// Briefs a route from station to station: its legs, and the turns at the stations between, with the reading at which each begins.
///
/// @param fixes the stations in the order flown, `fix_count` of them, all of one size
/// @param fix_count how many; fewer than two make no leg, fewer than three no turn
/// @param conditions what the route is flown with
/// @param[out] legs room for `leg_capacity` legs, one fewer than the stations, the `struct_size` of the first set by the caller and taken for
/// all; may be NULL if that is 0
/// @param leg_capacity for how many legs there is room
/// @param[out] turns room for `turn_capacity` turns, two fewer than the stations, likewise
/// @param turn_capacity for how many turns there is room
/// @param[out] summary the whole, its `struct_size` set by the caller: how many legs and turns there are, which may be more than fit, and on a
/// failure where it lies
/// @return LUBBER_OK, or a negative status; no leg and no turn is then written
///
/// # Safety
/// The arrays must hold what their counts say; the structures must be null (a failure) or hold what their sizes say.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_route_brief(
    fixes: *const lubber_route_fix,
    fix_count: usize,
    conditions: *const lubber_route_conditions,
    legs: *mut lubber_route_leg,
    leg_capacity: usize,
    turns: *mut lubber_route_turn,
    turn_capacity: usize,
    summary: *mut lubber_route_summary,
) -> i32 {
    // SAFETY: the caller vouches for the arrays and the structures.
    unsafe {
        let Some(summary_size) = sized::size(summary) else { return LUBBER_ERROR_STRUCT };
        let (leg_size, turn_size) = (sized::room(legs, leg_capacity), sized::room(turns, turn_capacity));
        let (Some(leg_size), Some(turn_size)) = (leg_size, turn_size) else {
            let nothing = failed(&Refused::status(LUBBER_ERROR_STRUCT));
            sized::fill(summary, summary_size, &nothing, sized::NO_ANSWER);
            return LUBBER_ERROR_STRUCT;
        };
        let (status, told) = match briefed(fixes, fix_count, conditions, told) {
            Ok((told, all_legs, all_turns)) => {
                sized::fill_array(legs, leg_size, leg_capacity, &all_legs);
                sized::fill_array(turns, turn_size, turn_capacity, &all_turns);
                (LUBBER_OK, told)
            }
            Err(refused) => (refused.status, failed(&refused)),
        };
        sized::fill(summary, summary_size, &told, sized::NO_ANSWER);
        status
    }
}

/// How sure each turn of a route is: what lubber_course_change_sureness says of it.
///
/// @param fixes the stations, as of lubber_route_brief
/// @param fix_count how many
/// @param conditions what the route is flown with
/// @param errors the errors
/// @param limit_nm the overshoot that matters
/// @param confidence the chance with which it is to be kept, between 0 and 1
/// @param trials how many of each turn are flown, 1 to 10 000 000
/// @param seed the same seed gives the same trials
/// @param[out] sureness room for `capacity` turns, the `struct_size` of the first set by the caller and taken for all; may be NULL if that is 0
/// @param capacity for how many turns there is room
/// @param[out] turn_count how many turns there are, which may be more than fit
/// @return LUBBER_OK, or a negative status; turn_count is then 0
///
/// # Safety
/// As lubber_route_brief; `turn_count` must be writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_route_sureness(
    fixes: *const lubber_route_fix,
    fix_count: usize,
    conditions: *const lubber_route_conditions,
    errors: *const lubber_error_model,
    limit_nm: f64,
    confidence: f64,
    trials: u64,
    seed: u64,
    sureness: *mut lubber_sureness,
    capacity: usize,
    turn_count: *mut usize,
) -> i32 {
    // SAFETY: the caller vouches for the arrays and the structures.
    unsafe {
        if turn_count.is_null() {
            return LUBBER_ERROR_STRUCT;
        }
        turn_count.write(0);
        let (Some(size), Some(model)) = (sized::room(sureness, capacity), model(errors)) else {
            return LUBBER_ERROR_STRUCT;
        };
        let each = briefed(fixes, fix_count, conditions, |route| {
            route.sureness(&model, limit_nm, confidence, trials, seed)
        });
        match each {
            Ok(Ok(each)) => {
                turn_count.write(each.len());
                let told: Vec<_> = each.iter().map(sureness_to_c).collect();
                sized::fill_array(sureness, size, capacity, &told);
                LUBBER_OK
            }
            Ok(Err(error)) => error.code(),
            Err(refused) => refused.status,
        }
    }
}

/// Points along what is flown straight on a leg of a route, no farther apart than a spacing, its ends among them.
///
/// @param fixes the stations, as of lubber_route_brief
/// @param fix_count how many
/// @param conditions what the route is flown with
/// @param leg which leg, counted from 0
/// @param spacing_nm the spacing, above 0; zero, less or NaN gives the ends only. No leg gets more than 10 001 points
/// @param[out] latitudes_deg room for `capacity` latitudes; may be NULL if that is 0
/// @param[out] longitudes_deg room for as many longitudes
/// @param capacity for how many points there is room
/// @param[out] point_count how many points there are, which may be more than fit: call again with more room; 0 for a leg that is too short for
/// its turns, and for one that is none
/// @return LUBBER_OK, or a negative status; point_count is then 0
///
/// # Safety
/// As lubber_route_brief; `point_count` must be writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_route_leg_points(
    fixes: *const lubber_route_fix,
    fix_count: usize,
    conditions: *const lubber_route_conditions,
    leg: usize,
    spacing_nm: f64,
    latitudes_deg: *mut f64,
    longitudes_deg: *mut f64,
    capacity: usize,
    point_count: *mut usize,
) -> i32 {
    // SAFETY: the caller vouches for the arrays and the structures.
    unsafe {
        let find = || briefed(fixes, fix_count, conditions, |route| route.leg_points(leg, spacing_nm));
        points(find, latitudes_deg, longitudes_deg, capacity, point_count)
    }
}

/// Points of a turn of a route as it is flown, at even times: 41 of them.
///
/// @param fixes the stations, as of lubber_route_brief
/// @param fix_count how many
/// @param conditions what the route is flown with
/// @param turn which turn, counted from 0
/// @param[out] latitudes_deg room for `capacity` latitudes; may be NULL if that is 0
/// @param[out] longitudes_deg room for as many longitudes
/// @param capacity for how many points there is room
/// @param[out] point_count how many points there are, which may be more than fit; 0 for a turn that is none
/// @return LUBBER_OK, or a negative status; point_count is then 0
///
/// # Safety
/// As lubber_route_brief; `point_count` must be writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_route_turn_points(
    fixes: *const lubber_route_fix,
    fix_count: usize,
    conditions: *const lubber_route_conditions,
    turn: usize,
    latitudes_deg: *mut f64,
    longitudes_deg: *mut f64,
    capacity: usize,
    point_count: *mut usize,
) -> i32 {
    // SAFETY: the caller vouches for the arrays and the structures.
    unsafe {
        let find = || briefed(fixes, fix_count, conditions, |route| route.turn_points(turn));
        points(find, latitudes_deg, longitudes_deg, capacity, point_count)
    }
}

/// Writes points into the caller's arrays as far as they reach.
///
/// # Safety
/// As [`lubber_route_leg_points`].
unsafe fn points(
    find: impl FnOnce() -> Result<Vec<(f64, f64)>, Refused>,
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
        match find() {
            Ok(points) => {
                point_count.write(points.len());
                for (index, (latitude_deg, longitude_deg)) in points.iter().take(capacity).enumerate() {
                    latitudes_deg.add(index).write_unaligned(*latitude_deg);
                    longitudes_deg.add(index).write_unaligned(*longitude_deg);
                }
                LUBBER_OK
            }
            Err(refused) => refused.status,
        }
    }
}

/// Why a route was refused, and where: counted from one, zero for nowhere.
struct Refused {
    status: i32,
    fix: usize,
    leg: usize,
    level: usize,
}

impl Refused {
    fn status(status: i32) -> Self {
        Self { status, fix: 0, leg: 0, level: 0 }
    }

    fn error(refused: &RouteError) -> Self {
        let (fix, leg) = match refused.place {
            RoutePlace::Plan => (0, 0),
            RoutePlace::Fix(index) => (index + 1, 0),
            RoutePlace::Leg(index) => (0, index + 1),
        };
        let level = match refused.error {
            Error::OutOfRangeAt { item: "wind level", number: level, .. }
            | Error::WindLevelNotAbove { level, .. } => level,
            _ => 0,
        };
        Self { status: refused.error.code(), fix, leg, level }
    }

    fn reading(failure: &Failure, place: RoutePlace) -> Self {
        match failure {
            Failure::Status(status) => Self::status(*status),
            Failure::Error(error) | Failure::OfLeg(_, error) => {
                Self::error(&RouteError { place, error: *error })
            }
        }
    }
}

/// Briefs the caller's route and makes something of it.
///
/// # Safety
/// Both must be null (a failure, unless there is no station) or hold what their sizes and counts say.
unsafe fn briefed<T>(
    fixes: *const lubber_route_fix,
    fix_count: usize,
    conditions: *const lubber_route_conditions,
    make: impl FnOnce(&BriefedRoute) -> T,
) -> Result<T, Refused> {
    let brief = || {
        // SAFETY: the caller vouches for both.
        let (given, levels, stations) = unsafe {
            let (given, levels) = read_conditions(conditions)?;
            (given, levels, read_fixes(fixes, fix_count)?)
        };
        let plain: Vec<RouteFixInput<'_>> =
            stations.iter().map(|(fix, levels)| fix_from_c(fix, levels)).collect();
        let route = brief_route(&plain, &conditions_from_c(&given, &levels));
        route.map(|route| make(&route)).map_err(|refused| Refused::error(&refused))
    };
    catch_unwind(AssertUnwindSafe(brief)).unwrap_or(Err(Refused::status(LUBBER_ERROR_INTERNAL)))
}

/// A structure that points to winds by level, with these.
type WithLevels<T> = (T, Vec<WindLevelInput>);

/// Reads the stations, all of the size of the first, each with its winds by level.
///
/// # Safety
/// As [`briefed`].
unsafe fn read_fixes(
    fixes: *const lubber_route_fix,
    fix_count: usize,
) -> Result<Vec<WithLevels<lubber_route_fix>>, Refused> {
    let mut read = Vec::new();
    if fix_count == 0 {
        return Ok(read);
    }
    let unknown = || Refused::status(LUBBER_ERROR_STRUCT);
    // SAFETY: the caller vouches for them.
    unsafe {
        let size = sized::size(fixes).ok_or_else(unknown)?;
        for index in 0..fix_count {
            let place = fixes.byte_add(index * size);
            if sized::size(place) != Some(size) {
                return Err(unknown());
            }
            let fix = sized::read(place, usual_fix(f64::NAN, f64::NAN)).ok_or_else(unknown)?;
            let levels = levels_of(fix.wind_levels, fix.wind_level_count)
                .map_err(|failure| Refused::reading(&failure, RoutePlace::Fix(index)))?;
            read.push((fix, levels));
        }
    }
    Ok(read)
}

/// Reads the conditions with their winds by level.
///
/// # Safety
/// As [`briefed`].
unsafe fn read_conditions(
    conditions: *const lubber_route_conditions,
) -> Result<WithLevels<lubber_route_conditions>, Refused> {
    // SAFETY: the caller vouches for them.
    unsafe {
        let given = sized::read(conditions, usual_conditions(f64::NAN, f64::NAN));
        let given = given.ok_or_else(|| Refused::status(LUBBER_ERROR_STRUCT))?;
        let levels = levels_of(given.wind_levels, given.wind_level_count)
            .map_err(|failure| Refused::reading(&failure, RoutePlace::Plan))?;
        Ok((given, levels))
    }
}

/// Reads winds by level, if there are any.
///
/// # Safety
/// As [`read_levels`].
unsafe fn levels_of(levels: *const lubber_wind_level, count: usize) -> Result<Vec<WindLevelInput>, Failure> {
    if count == 0 {
        return Ok(Vec::new());
    }
    // SAFETY: the caller vouches for them.
    unsafe { read_levels(levels, count) }
}

fn usual_fix(latitude_deg: f64, longitude_deg: f64) -> lubber_route_fix {
    let input = RouteFixInput::new(latitude_deg, longitude_deg);
    lubber_route_fix {
        struct_size: size_of::<lubber_route_fix>(),
        latitude_deg: input.latitude_deg,
        longitude_deg: input.longitude_deg,
        elevation_ft: input.elevation_ft,
        declination_deg: input.declination_deg,
        cone_half_angle_deg: input.cone_half_angle_deg,
        wind_from_deg: input.wind_from_deg,
        wind_speed_kt: input.wind_speed_kt,
        wind_levels: std::ptr::null(),
        wind_level_count: 0,
        turn: input.turn,
    }
}

fn fix_from_c<'a>(fix: &lubber_route_fix, wind_levels: &'a [WindLevelInput]) -> RouteFixInput<'a> {
    RouteFixInput {
        latitude_deg: fix.latitude_deg,
        longitude_deg: fix.longitude_deg,
        elevation_ft: fix.elevation_ft,
        declination_deg: fix.declination_deg,
        cone_half_angle_deg: fix.cone_half_angle_deg,
        wind_from_deg: fix.wind_from_deg,
        wind_speed_kt: fix.wind_speed_kt,
        wind_levels,
        turn: fix.turn,
    }
}

fn usual_conditions(true_airspeed_kt: f64, pressure_altitude_ft: f64) -> lubber_route_conditions {
    let input = RouteConditionsInput::new(true_airspeed_kt, pressure_altitude_ft);
    lubber_route_conditions {
        struct_size: size_of::<lubber_route_conditions>(),
        true_airspeed_kt: input.true_airspeed_kt,
        pressure_altitude_ft: input.pressure_altitude_ft,
        altimeter_setting_hpa: input.altimeter_setting_hpa,
        isa_deviation_k: input.isa_deviation_k,
        wind_from_deg: input.wind_from_deg,
        wind_speed_kt: input.wind_speed_kt,
        bank_limit_deg: input.bank_limit_deg,
        turn_rate_limit_deg_per_s: input.turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s: input.roll_rate_deg_per_s,
        intercept_angle_deg: input.intercept_angle_deg,
        wind_levels: std::ptr::null(),
        wind_level_count: 0,
    }
}

fn conditions_from_c<'a>(
    given: &lubber_route_conditions,
    wind_levels: &'a [WindLevelInput],
) -> RouteConditionsInput<'a> {
    RouteConditionsInput {
        true_airspeed_kt: given.true_airspeed_kt,
        pressure_altitude_ft: given.pressure_altitude_ft,
        altimeter_setting_hpa: given.altimeter_setting_hpa,
        isa_deviation_k: given.isa_deviation_k,
        wind_from_deg: given.wind_from_deg,
        wind_speed_kt: given.wind_speed_kt,
        wind_levels,
        bank_limit_deg: given.bank_limit_deg,
        turn_rate_limit_deg_per_s: given.turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s: given.roll_rate_deg_per_s,
        intercept_angle_deg: given.intercept_angle_deg,
    }
}

/// The whole of a route, with its legs and turns.
fn told(route: &BriefedRoute) -> (lubber_route_summary, Vec<lubber_route_leg>, Vec<lubber_route_turn>) {
    let legs: Vec<lubber_route_leg> = route.legs().iter().map(leg_to_c).collect();
    let turns: Vec<lubber_route_turn> = route.turns().iter().map(turn_to_c).collect();
    let summary = lubber_route_summary {
        struct_size: size_of::<lubber_route_summary>(),
        total_distance_nm: route.total_distance_nm(),
        total_time_s: route.total_time_s(),
        leg_count: legs.len(),
        turn_count: turns.len(),
        failed_fix: 0,
        failed_leg: 0,
        failed_wind_level: 0,
    };
    (summary, legs, turns)
}

fn failed(refused: &Refused) -> lubber_route_summary {
    lubber_route_summary {
        struct_size: size_of::<lubber_route_summary>(),
        total_distance_nm: f64::NAN,
        total_time_s: f64::NAN,
        leg_count: 0,
        turn_count: 0,
        failed_fix: refused.fix,
        failed_leg: refused.leg,
        failed_wind_level: refused.level,
    }
}

fn leg_to_c(leg: &RouteLegOutput) -> lubber_route_leg {
    lubber_route_leg {
        struct_size: size_of::<lubber_route_leg>(),
        length_nm: leg.length_nm,
        initial_course_deg: leg.initial_course_deg,
        final_course_deg: leg.final_course_deg,
        radial_from_deg: leg.radial_from_deg,
        radial_to_deg: leg.radial_to_deg,
        wind_from_deg: leg.wind_from_deg,
        wind_speed_kt: leg.wind_speed_kt,
        heading_deg: leg.heading_deg,
        wind_correction_deg: leg.wind_correction_deg,
        groundspeed_kt: leg.groundspeed_kt,
        straight_nm: leg.straight_nm,
        straight_time_s: leg.straight_time_s,
        least_length_nm: leg.least_length_nm,
        horizon_from_nm: leg.horizon_from_nm,
        horizon_to_nm: leg.horizon_to_nm,
        unreceived_nm: leg.unreceived_nm,
        long_enough: i32::from(leg.long_enough),
        received: i32::from(leg.unreceived_nm == 0.0),
    }
}

fn turn_to_c(turn: &RouteTurnOutput) -> lubber_route_turn {
    let (over, rule) = (&turn.fly_over, &turn.by_rule);
    lubber_route_turn {
        struct_size: size_of::<lubber_route_turn>(),
        begin_at_dme_nm: turn.begin_at_dme_nm,
        begin_on_radial_deg: turn.begin_on_radial_deg,
        begin_before_fix_nm: turn.begin_before_fix_nm,
        begin_latitude_deg: turn.begin_latitude_deg,
        begin_longitude_deg: turn.begin_longitude_deg,
        ground_per_dme_tenth_nm: turn.ground_per_dme_tenth_nm,
        begin_after_last_roll_out_s: turn.begin_after_last_roll_out_s,
        begin_after_start_s: turn.begin_after_start_s,
        turn_time_s: turn.turn_time_s,
        turn_length_nm: turn.turn_length_nm,
        roll_out_after_start_s: turn.roll_out_after_start_s,
        roll_out_dme_nm: turn.roll_out_dme_nm,
        roll_out_radial_deg: turn.roll_out_radial_deg,
        roll_out_past_fix_nm: turn.roll_out_past_fix_nm,
        roll_out_latitude_deg: turn.roll_out_latitude_deg,
        roll_out_longitude_deg: turn.roll_out_longitude_deg,
        height_above_station_ft: turn.height_above_station_ft,
        wind_from_deg: turn.wind_from_deg,
        wind_speed_kt: turn.wind_speed_kt,
        inbound_course_deg: turn.inbound_course_deg,
        outbound_course_deg: turn.outbound_course_deg,
        course_change_deg: turn.course_change_deg,
        inbound_radial_deg: turn.inbound_radial_deg,
        outbound_radial_deg: turn.outbound_radial_deg,
        heading_before_deg: turn.heading_before_deg,
        heading_after_deg: turn.heading_after_deg,
        heading_change_deg: turn.heading_change_deg,
        groundspeed_before_kt: turn.groundspeed_before_kt,
        groundspeed_after_kt: turn.groundspeed_after_kt,
        bank_deg: turn.bank_deg,
        radius_nm: turn.radius_nm,
        closest_approach_nm: turn.closest_approach_nm,
        cone_radius_nm: turn.cone_radius_nm,
        cone_edge_dme_nm: turn.cone_edge_dme_nm,
        fly_over_intercept_angle_deg: over.intercept_angle_deg,
        fly_over_greatest_overshoot_nm: over.greatest_overshoot_nm,
        fly_over_established_past_fix_nm: over.established_past_fix_nm,
        fly_over_extra_distance_nm: over.extra_distance_nm,
        fly_over_extra_time_s: over.extra_time_s,
        fly_over_duration_s: over.duration_s,
        rule_lead_nm: rule.lead_nm,
        rule_lead_error_nm: rule.lead_error_nm,
        rule_lead_with_height_nm: rule.lead_with_height_nm,
        rule_lead_with_height_error_nm: rule.lead_with_height_error_nm,
        rule_dme_nm: rule.dme_nm,
        rule_dme_error_nm: rule.dme_error_nm,
        governed_by: turn.governed_by.code(),
        side: i32::from(turn.heading_change_deg > 0.0) - i32::from(turn.heading_change_deg < 0.0),
        begins_in_cone: i32::from(turn.begins_in_cone),
        enters_cone: i32::from(turn.enters_cone),
    }
}
