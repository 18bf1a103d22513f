//! Winds by level in C: an array of levels that a structure of conditions, or a call, points to.

use std::panic::{AssertUnwindSafe, catch_unwind};

use lubberline::Error;
use lubberline::plain::{WindLevelInput, check_wind_levels};
use lubberline::value::Quantity;

use crate::generated::{LUBBER_ERROR_INTERNAL, LUBBER_ERROR_STRUCT, LUBBER_OK};
use crate::sized::{self, Grows};

/// The wind at one of several levels.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
#[allow(non_camel_case_types, reason = "the name is C's")]
pub struct lubber_wind_level {
    /// sizeof(lubber_wind_level), in each level of an array.
    pub struct_size: usize,
    /// Pressure altitude of the level, above that of the level before it.
    pub pressure_altitude_ft: f64,
    /// Where its wind blows from, true.
    pub wind_from_deg: f64,
    /// Speed of its wind, 0 to 1000.
    pub wind_speed_kt: f64,
}

// SAFETY: as the trait asks; none of its numbers has a usual value.
unsafe impl Grows for lubber_wind_level {
    const LEAST: usize = size_of::<Self>();
}

/// Checks winds by level as what flies through them does, and says which level is wrong.
///
/// @param levels the levels in ascending order, `level_count` of them, all of one size
/// @param level_count 1 to 1000
/// @param[out] failed_level the first level that is wrong, counted from 1, 0 if none; may be NULL
/// @return LUBBER_OK, LUBBER_ERROR_WIND_LEVELS for a count out of range, LUBBER_ERROR_LEVELS_NOT_ASCENDING, the status of a value out
/// of its range, or LUBBER_ERROR_STRUCT
///
/// # Safety
/// `levels` must be null (a failure) or hold what the count says; `failed_level` must be null or writable.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lubber_wind_levels_check(
    levels: *const lubber_wind_level,
    level_count: usize,
    failed_level: *mut usize,
) -> i32 {
    let mut failed = 0;
    let check = || {
        // SAFETY: the caller vouches for the levels.
        let checked = unsafe { read_levels(levels, level_count) };
        match checked.and_then(|levels| check_wind_levels(&levels).map_err(Failure::Error)) {
            Ok(()) => LUBBER_OK,
            Err(failure) => {
                if let Failure::Error(
                    Error::OutOfRangeAt { number: level, .. } | Error::WindLevelNotAbove { level, .. },
                ) = failure
                {
                    failed = level;
                }
                failure.status()
            }
        }
    };
    let status = catch_unwind(AssertUnwindSafe(check)).unwrap_or(LUBBER_ERROR_INTERNAL);
    if !failed_level.is_null() {
        // SAFETY: the caller vouches for it.
        unsafe { failed_level.write(failed) };
    }
    status
}

/// Why something of a caller's was not taken.
pub(crate) enum Failure {
    Status(i32),
    Error(Error),
    /// The error is of one of several legs, counted from one.
    OfLeg(usize, Error),
}

impl Failure {
    pub(crate) fn status(&self) -> i32 {
        match self {
            Self::Status(status) => *status,
            Self::Error(error) | Self::OfLeg(_, error) => error.code(),
        }
    }

    /// The leg that was refused, counted from one, where it is of one.
    pub(crate) fn leg(&self) -> Option<usize> {
        match self {
            Self::Status(_) => None,
            Self::Error(error) => error.leg(),
            Self::OfLeg(leg, _) => Some(*leg),
        }
    }
}

/// Reads the levels, all of the size of the first; a count out of range is refused before any is looked at.
///
/// # Safety
/// They must be null (a failure, unless there is none) or hold what the count says.
pub(crate) unsafe fn read_levels(
    levels: *const lubber_wind_level,
    level_count: usize,
) -> Result<Vec<WindLevelInput>, Failure> {
    const UNKNOWN: Failure = Failure::Status(LUBBER_ERROR_STRUCT);
    Quantity::WindLevels.check("wind_level_count", level_count as f64).map_err(Failure::Error)?;
    let usual = lubber_wind_level {
        struct_size: size_of::<lubber_wind_level>(),
        pressure_altitude_ft: f64::NAN,
        wind_from_deg: f64::NAN,
        wind_speed_kt: f64::NAN,
    };
    // SAFETY: the caller vouches for them.
    unsafe {
        let size = sized::size(levels).ok_or(UNKNOWN)?;
        let mut plain_levels = Vec::with_capacity(level_count);
        for index in 0..level_count {
            let place = levels.byte_add(index * size);
            if sized::size(place) != Some(size) {
                return Err(UNKNOWN);
            }
            let level = sized::read(place, usual).ok_or(UNKNOWN)?;
            plain_levels.push(WindLevelInput {
                pressure_altitude_ft: level.pressure_altitude_ft,
                wind_from_deg: level.wind_from_deg,
                wind_speed_kt: level.wind_speed_kt,
            });
        }
        Ok(plain_levels)
    }
}
