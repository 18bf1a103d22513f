//! Path-and-terminator legs, from dictionaries of numbers to tuples; the objects are made in Python.

use lubberline::plain::{ConditionsInput, LegCode, LegInput, fly_legs as fly, path_points, segment_output};
use lubberline::procedure::legs::Passage;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

use crate::error::{raised, unknown_word};

/// The conditions in the order of [`ConditionsInput`].
type Conditions = (f64, f64, f64, f64, f64, f64, f64, f64, f64, f64);

/// Lower altitude, upper altitude, direction and speed; NaN where there is one wind.
type Levels = (f64, f64, f64, f64);

fn conditions(given: Conditions, levels: Levels) -> ConditionsInput {
    ConditionsInput {
        true_airspeed_kt: given.0,
        wind_from_deg: given.1,
        wind_speed_kt: given.2,
        bank_limit_deg: given.3,
        turn_rate_limit_deg_per_s: given.4,
        roll_rate_deg_per_s: given.5,
        altitude_ft: given.6,
        climb_fpm: given.7,
        intercept_angle_deg: given.8,
        manual_distance_nm: given.9,
        wind_altitude_ft: levels.0,
        upper_wind_altitude_ft: levels.1,
        upper_wind_from_deg: levels.2,
        upper_wind_speed_kt: levels.3,
    }
}

/// Segments as tuples, and points as latitudes and longitudes.
type Flown<'py> = (Bound<'py, PyList>, Vec<(f64, f64)>);

/// A leg from its word and the numbers that were given for it.
fn leg(python: Python<'_>, word: &str, numbers: &Bound<'_, PyDict>) -> PyResult<LegInput> {
    let known = LegCode::ALL.iter().copied().find(|code| code.word() == word);
    let words = || LegCode::ALL.iter().copied().map(LegCode::word);
    let mut leg = LegInput::new(known.ok_or_else(|| unknown_word(python, "code", word, words()))?);
    for (name, value) in numbers {
        let name: String = name.extract()?;
        match name.as_str() {
            "fly_over" => leg.passage = if value.extract()? { Passage::FlyOver } else { Passage::FlyBy },
            "to_right" => leg.to_right = value.extract()?,
            _ => {
                let number: f64 = value.extract()?;
                let field = match name.as_str() {
                    "fix_latitude_deg" => &mut leg.fix_latitude_deg,
                    "fix_longitude_deg" => &mut leg.fix_longitude_deg,
                    "course_deg" => &mut leg.course_deg,
                    "altitude_ft" => &mut leg.altitude_ft,
                    "distance_nm" => &mut leg.distance_nm,
                    "center_latitude_deg" => &mut leg.center_latitude_deg,
                    "center_longitude_deg" => &mut leg.center_longitude_deg,
                    "center_elevation_ft" => &mut leg.center_elevation_ft,
                    "center_declination_deg" => &mut leg.center_declination_deg,
                    "radial_deg" => &mut leg.radial_deg,
                    "outbound_time_s" => &mut leg.outbound_time_s,
                    _ => return Err(PyTypeError::new_err(format!("a leg has no {name}"))),
                };
                *field = number;
            }
        }
    }
    Ok(leg)
}

/// Flies legs, each a word and a dictionary; gives the segments as tuples and the points at a spacing.
#[pyfunction]
pub fn fly_legs<'py>(
    python: Python<'py>,
    legs: Vec<(String, Bound<'py, PyDict>)>,
    given: Conditions,
    levels: Levels,
    spacing_nm: f64,
) -> PyResult<Flown<'py>> {
    let legs = legs.iter().map(|(word, numbers)| leg(python, word, numbers)).collect::<PyResult<Vec<_>>>()?;
    let path = fly(&legs, &conditions(given, levels)).map_err(|error| raised(python, &error))?;
    let segments = PyList::empty(python);
    for segment in &path.segments {
        let plain = segment_output(&path, segment);
        let start = (plain.start_latitude_deg, plain.start_longitude_deg, plain.start_course_deg);
        let end =
            (plain.end_latitude_deg, plain.end_longitude_deg, plain.end_course_deg, plain.end_altitude_ft);
        segments.append((
            plain.leg,
            segment.kind.word(),
            start,
            end,
            (plain.length_nm, plain.duration_s, plain.end_time_s),
            (
                plain.start_heading_deg,
                plain.start_groundspeed_kt,
                plain.end_heading_deg,
                plain.end_groundspeed_kt,
            ),
            (plain.bank_deg, plain.heading_change_deg),
        ))?;
    }
    Ok((segments, path_points(&path, spacing_nm)))
}
