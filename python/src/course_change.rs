//! The course change, from keywords to a dictionary; the object is made in Python.

use lubberline::Error;
use lubberline::plain::{self, CourseChangeInput, FlyOverOutput, TurnPointOutput};
use lubberline::turn::Governor;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::error::raised;

/// The settings as Python gives them, in the order of [`CourseChangeInput`].
pub type Settings = (f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, f64, i32);

pub fn input(settings: Settings) -> CourseChangeInput {
    CourseChangeInput {
        inbound_course_deg: settings.0,
        outbound_course_deg: settings.1,
        true_airspeed_kt: settings.2,
        wind_from_deg: settings.3,
        wind_speed_kt: settings.4,
        bank_limit_deg: settings.5,
        turn_rate_limit_deg_per_s: settings.6,
        roll_rate_deg_per_s: settings.7,
        height_above_station_ft: settings.8,
        intercept_angle_deg: settings.9,
        cone_half_angle_deg: settings.10,
        turn: settings.11,
    }
}

/// The answer as two dictionaries: of the turn, and of flying over.
#[pyfunction]
pub fn course_change<'py>(
    python: Python<'py>,
    settings: Settings,
) -> PyResult<(Bound<'py, PyDict>, Bound<'py, PyDict>)> {
    let answer = plain::course_change(&input(settings)).map_err(|error| raised(python, &error))?;
    let turn = PyDict::new(python);
    for (name, value) in [
        ("lead_nm", answer.lead_nm),
        ("dme_at_roll_in_nm", answer.dme_at_roll_in_nm),
        ("radial_at_roll_in_deg", answer.radial_at_roll_in_deg),
        ("past_fix_at_roll_out_nm", answer.past_fix_at_roll_out_nm),
        ("dme_at_roll_out_nm", answer.dme_at_roll_out_nm),
        ("radial_at_roll_out_deg", answer.radial_at_roll_out_deg),
        ("duration_s", answer.duration_s),
        ("turn_length_nm", answer.turn_length_nm),
        ("bank_deg", answer.bank_deg),
        ("radius_nm", answer.radius_nm),
        ("heading_before_deg", answer.heading_before_deg),
        ("heading_after_deg", answer.heading_after_deg),
        ("heading_change_deg", answer.heading_change_deg),
        ("groundspeed_before_kt", answer.groundspeed_before_kt),
        ("groundspeed_after_kt", answer.groundspeed_after_kt),
        ("wind_correction_before_deg", answer.wind_correction_before_deg),
        ("wind_correction_after_deg", answer.wind_correction_after_deg),
        ("closest_approach_nm", answer.closest_approach_nm),
        ("cone_radius_nm", answer.cone_radius_nm),
    ] {
        turn.set_item(name, value)?;
    }
    turn.set_item("governed_by", answer.governed_by.map(Governor::word))?;
    turn.set_item("enters_cone", (!answer.enters_cone.is_nan()).then_some(answer.enters_cone > 0.0))?;
    Ok((turn, fly_over_dict(python, &answer.fly_over)?))
}

/// The cost of flying over as a dictionary.
pub fn fly_over_dict<'py>(python: Python<'py>, cost: &FlyOverOutput) -> PyResult<Bound<'py, PyDict>> {
    let over = PyDict::new(python);
    for (name, value) in [
        ("intercept_angle_deg", cost.intercept_angle_deg),
        ("greatest_overshoot_nm", cost.greatest_overshoot_nm),
        ("established_past_fix_nm", cost.established_past_fix_nm),
        ("extra_distance_nm", cost.extra_distance_nm),
        ("extra_time_s", cost.extra_time_s),
        ("duration_s", cost.duration_s),
    ] {
        over.set_item(name, value)?;
    }
    Ok(over)
}

/// A place in the turn: bearing from the station, distance, heading, bank.
#[pyfunction]
pub fn course_change_at(
    python: Python<'_>,
    settings: Settings,
    time_s: f64,
) -> PyResult<(f64, f64, f64, f64)> {
    place(python, plain::course_change_at(&input(settings), time_s))
}

/// A place on the way over the station, likewise.
#[pyfunction]
pub fn fly_over_at(python: Python<'_>, settings: Settings, time_s: f64) -> PyResult<(f64, f64, f64, f64)> {
    place(python, plain::fly_over_at(&input(settings), time_s))
}

fn place(python: Python<'_>, point: Result<TurnPointOutput, Error>) -> PyResult<(f64, f64, f64, f64)> {
    let point = point.map_err(|error| raised(python, &error))?;
    Ok((point.bearing_from_fix_deg, point.distance_nm, point.heading_deg, point.bank_deg))
}
