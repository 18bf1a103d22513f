//! How sure a course change is, in C: a course change and the errors in, the overshoot out.

use std::mem::offset_of;
use std::panic::{AssertUnwindSafe, catch_unwind};

use lubberline::plain::{ErrorModelInput, SurenessOutput, course_change_overshoots, course_change_sureness};

use crate::course_change::{lubber_course_change_input, read};
use crate::generated::{LUBBER_ERROR_INTERNAL, LUBBER_ERROR_STRUCT, LUBBER_OK};
use crate::sized::{self, Grows};

/// The standard deviations of what a turn begun by DME depends on, none negative; 0 is none.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_error_model {
    /// sizeof(lubber_error_model), set by the caller.
    pub struct_size: usize,
    /// Of the bearing of the station's signal.
    pub station_bearing_deg: f64,
    /// Of the DME reading.
    pub dme_nm: f64,
    /// Of the wind's speed.
    pub wind_speed_kt: f64,
    /// Of the wind's direction.
    pub wind_direction_deg: f64,
    /// Of the true airspeed.
    pub airspeed_kt: f64,
    /// Of the bank.
    pub bank_deg: f64,
    /// Of the moment of roll-in.
    pub roll_in_delay_s: f64,
    /// Of the height above the station.
    pub height_ft: f64,
    /// By how much the crew is late on the average.
    pub mean_delay_s: f64,
}

// SAFETY: as the trait asks; what is not given is no error.
unsafe impl Grows for lubber_error_model {
    const LEAST: usize = offset_of!(Self, dme_nm);
}

/// Sets the errors that are usual where nothing better is known: half a VOR's tolerance en route with flying by the needle, half the total system error of a DME by
/// Annex 10, a crew's reaction of 0 to 6 s by ICAO Doc 8168, and for wind, airspeed, bank and height common practice.
///
/// @param[out] errors the structure
/// @param struct_size sizeof(lubber_error_model)
/// @return LUBBER_OK, or LUBBER_ERROR_STRUCT
///
/// # Safety
/// `errors` must be null (a failure) or have room for `struct_size` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_error_model_init(errors: *mut lubber_error_model, struct_size: usize) -> i32 {
    let usual = ErrorModelInput::usual();
    let usual = lubber_error_model {
        struct_size: size_of::<lubber_error_model>(),
        station_bearing_deg: usual.station_bearing_deg,
        dme_nm: usual.dme_nm,
        wind_speed_kt: usual.wind_speed_kt,
        wind_direction_deg: usual.wind_direction_deg,
        airspeed_kt: usual.airspeed_kt,
        bank_deg: usual.bank_deg,
        roll_in_delay_s: usual.roll_in_delay_s,
        height_ft: usual.height_ft,
        mean_delay_s: usual.mean_delay_s,
    };
    // SAFETY: the caller vouches for it.
    unsafe { sized::init(errors, struct_size, &usual) }
}

/// How sure a course change is. Overshoot is the cross-track at roll-out on the outer side of the outbound course.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_sureness {
    /// sizeof(lubber_sureness), set by the caller.
    pub struct_size: usize,
    /// Mean overshoot of the trials.
    pub mean_nm: f64,
    /// Its standard deviation.
    pub deviation_nm: f64,
    /// The share of trials that overshot by more than the limit.
    pub chance_beyond: f64,
    /// What to add to the lead for the confidence; negative if there is room.
    pub margin_nm: f64,
    /// The overshoot without any error but the mean delay.
    pub linear_mean_nm: f64,
    /// The standard deviation by linear propagation.
    pub linear_deviation_nm: f64,
    /// The chance by linear propagation.
    pub linear_chance_beyond: f64,
    /// The margin by linear propagation.
    pub linear_margin_nm: f64,
    /// What one standard deviation of each source is worth, in the order of lubber_error_model.
    pub by_source_nm: [f64; 8],
    /// The source that is worth most, by its place among the eight from 0; -1 if none is worth anything.
    pub foremost: f64,
    /// The DME reading at which the turn begins with the margin added to its lead; NaN if there is no turn.
    pub begin_with_margin_at_dme_nm: f64,
    /// The lead with the margin added: how far before the station that is, negative past it.
    pub begin_with_margin_before_fix_nm: f64,
}

// SAFETY: as the trait asks; the sources are one field, which no boundary divides.
unsafe impl Grows for lubber_sureness {
    const LEAST: usize = offset_of!(Self, begin_with_margin_at_dme_nm);
}

/// How sure a course change is that is begun by its DME reading: by trials, and by linear propagation beside them.
///
/// @param input the course change
/// @param errors the errors
/// @param limit_nm the overshoot that matters
/// @param confidence the chance with which it is to be kept, between 0 and 1
/// @param trials how many are flown, 1 to 10 000 000; a million takes about a second, and eight bytes each while it runs
/// @param seed the same seed gives the same trials
/// @param[out] result the answer, its `struct_size` set by the caller; on a failure every number is NaN
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// Each must be null (a failure) or hold what its size says.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_course_change_sureness(
    input: *const lubber_course_change_input,
    errors: *const lubber_error_model,
    limit_nm: f64,
    confidence: f64,
    trials: u64,
    seed: u64,
    result: *mut lubber_sureness,
) -> i32 {
    // SAFETY: the caller vouches for them.
    unsafe {
        sized::answer(result, || {
            let question = read(input).ok_or(LUBBER_ERROR_STRUCT)?;
            let model = model(errors).ok_or(LUBBER_ERROR_STRUCT)?;
            course_change_sureness(&question, &model, limit_nm, confidence, trials, seed)
                .map(|sure| sureness_to_c(&sure))
                .map_err(|error| error.code())
        })
    }
}

/// The overshoots of the trials that lubber_course_change_sureness makes its answer of with the same seed, as to draw them.
///
/// @param input the course change
/// @param errors the errors
/// @param seed the same seed gives the same trials
/// @param trials how many are flown
/// @param[out] overshoots_nm room for as many numbers; on a failure every one is NaN
/// @return LUBBER_OK, or a negative status
///
/// # Safety
/// The structures must be null (a failure) or hold what their size says; `overshoots_nm` must be null (a failure) or as long as `trials`
/// says, and nobody else's while the call lasts.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_course_change_overshoots(
    input: *const lubber_course_change_input,
    errors: *const lubber_error_model,
    seed: u64,
    trials: usize,
    overshoots_nm: *mut f64,
) -> i32 {
    // SAFETY: the caller vouches for them; every place is written before the slice is made.
    unsafe {
        if overshoots_nm.is_null() {
            return LUBBER_ERROR_STRUCT;
        }
        for trial in 0..trials {
            overshoots_nm.add(trial).write(f64::NAN);
        }
        let (Some(question), Some(model)) = (read(input), model(errors)) else { return LUBBER_ERROR_STRUCT };
        let places = std::slice::from_raw_parts_mut(overshoots_nm, trials);
        match catch_unwind(AssertUnwindSafe(|| course_change_overshoots(&question, &model, seed, places))) {
            Ok(Ok(())) => LUBBER_OK,
            Ok(Err(error)) => error.code(),
            Err(_) => LUBBER_ERROR_INTERNAL,
        }
    }
}

/// Reads the errors; none for a structure that is not understood here.
///
/// # Safety
/// As [`lubber_course_change_sureness`].
pub(crate) unsafe fn model(errors: *const lubber_error_model) -> Option<ErrorModelInput> {
    // SAFETY: the caller vouches for as many bytes as the size says.
    let model = unsafe { sized::read(errors, NO_ERRORS)? };
    Some(ErrorModelInput {
        station_bearing_deg: model.station_bearing_deg,
        dme_nm: model.dme_nm,
        wind_speed_kt: model.wind_speed_kt,
        wind_direction_deg: model.wind_direction_deg,
        airspeed_kt: model.airspeed_kt,
        bank_deg: model.bank_deg,
        roll_in_delay_s: model.roll_in_delay_s,
        height_ft: model.height_ft,
        mean_delay_s: model.mean_delay_s,
    })
}

const NO_ERRORS: lubber_error_model = lubber_error_model {
    struct_size: size_of::<lubber_error_model>(),
    station_bearing_deg: 0.0,
    dme_nm: 0.0,
    wind_speed_kt: 0.0,
    wind_direction_deg: 0.0,
    airspeed_kt: 0.0,
    bank_deg: 0.0,
    roll_in_delay_s: 0.0,
    height_ft: 0.0,
    mean_delay_s: 0.0,
};

pub(crate) fn sureness_to_c(sure: &SurenessOutput) -> lubber_sureness {
    lubber_sureness {
        struct_size: size_of::<lubber_sureness>(),
        mean_nm: sure.mean_nm,
        deviation_nm: sure.deviation_nm,
        chance_beyond: sure.chance_beyond,
        margin_nm: sure.margin_nm,
        linear_mean_nm: sure.linear_mean_nm,
        linear_deviation_nm: sure.linear_deviation_nm,
        linear_chance_beyond: sure.linear_chance_beyond,
        linear_margin_nm: sure.linear_margin_nm,
        by_source_nm: [
            sure.by_station_bearing_nm,
            sure.by_dme_nm,
            sure.by_wind_speed_nm,
            sure.by_wind_direction_nm,
            sure.by_airspeed_nm,
            sure.by_bank_nm,
            sure.by_roll_in_delay_nm,
            sure.by_height_nm,
        ],
        foremost: sure.foremost,
        begin_with_margin_at_dme_nm: sure.begin_with_margin_at_dme_nm,
        begin_with_margin_before_fix_nm: sure.begin_with_margin_before_fix_nm,
    }
}
