//! Path-and-terminator legs, from dictionaries of numbers to tuples; the objects are made in Python.

use lubberline::plain::{
    ConditionsInput, LegCode, LegInput, SegmentOutput, WindLevelInput, fly_legs, fly_legs_aloft, path_points,
    segment_output,
};
use lubberline::procedure::TimedLeg;
use lubberline::procedure::legs::{Passage, ReversalForm, SegmentKind};
use lubberline::value::Quantity;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList, PyTuple};

use crate::error::{checked, checked_levels, raised, unknown_word};

/// The conditions in the order of [`ConditionsInput`] as far as the distance of what is ended by hand; lower altitude, upper altitude, direction
/// and speed, NaN where there is one wind; levels of altitude, direction and speed, none if winds are not given so; magnetic variation, none if
/// courses are true.
pub type Conditions = ([f64; 10], [f64; 4], Option<Vec<[f64; 3]>>, Option<f64>);

/// The conditions, and the winds by level if there are any. A variation that is no number is refused.
pub fn conditions_of(
    python: Python<'_>,
    given: &Conditions,
) -> PyResult<(ConditionsInput, Option<Vec<WindLevelInput>>)> {
    let (
        [
            true_airspeed_kt,
            wind_from_deg,
            wind_speed_kt,
            bank_limit_deg,
            turn_rate_limit_deg_per_s,
            roll_rate_deg_per_s,
            altitude_ft,
            climb_fpm,
            intercept_angle_deg,
            manual_distance_nm,
        ],
        [wind_altitude_ft, upper_wind_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt],
        levels,
        variation_deg,
    ) = given;
    let variation_deg = variation_deg
        .map(|given| checked(python, Quantity::MagneticVariation, "magnetic_variation_deg", given))
        .transpose()?;
    if let Some(levels) = levels {
        checked_levels(python, Quantity::WindLevels, levels.len())?;
    }
    let conditions = ConditionsInput {
        true_airspeed_kt: *true_airspeed_kt,
        wind_from_deg: *wind_from_deg,
        wind_speed_kt: *wind_speed_kt,
        bank_limit_deg: *bank_limit_deg,
        turn_rate_limit_deg_per_s: *turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s: *roll_rate_deg_per_s,
        altitude_ft: *altitude_ft,
        climb_fpm: *climb_fpm,
        intercept_angle_deg: *intercept_angle_deg,
        manual_distance_nm: *manual_distance_nm,
        wind_altitude_ft: *wind_altitude_ft,
        upper_wind_altitude_ft: *upper_wind_altitude_ft,
        upper_wind_from_deg: *upper_wind_from_deg,
        upper_wind_speed_kt: *upper_wind_speed_kt,
        magnetic_variation_deg: variation_deg.unwrap_or(f64::NAN),
    };
    Ok((conditions, levels.as_ref().map(|levels| levels.iter().map(level).collect())))
}

/// A level from its altitude, direction and speed.
pub fn level(&[pressure_altitude_ft, wind_from_deg, wind_speed_kt]: &[f64; 3]) -> WindLevelInput {
    WindLevelInput { pressure_altitude_ft, wind_from_deg, wind_speed_kt }
}

/// Segments as tuples, and points as latitudes and longitudes.
type Flown<'py> = (Bound<'py, PyList>, Vec<(f64, f64)>);

/// The alternative of a word.
fn alternative<T: Copy>(
    python: Python<'_>,
    name: &'static str,
    value: &Bound<'_, PyAny>,
    all: &[T],
    word_of: fn(T) -> &'static str,
) -> PyResult<T> {
    let word: String = value.extract()?;
    let known = all.iter().copied().find(|one| word_of(*one) == word);
    known.ok_or_else(|| unknown_word(python, name, &word, all.iter().copied().map(word_of)))
}

/// What a leg may be given that is no number.
const WORDS: [&str; 4] = ["fly_over", "to_right", "timed", "reversal"];

/// The place of a number in a leg.
type Place = fn(&mut LegInput) -> &mut f64;

/// The numbers that a leg may be given.
const NUMBERS: [(&str, Place); 14] = [
    ("fix_latitude_deg", |leg| &mut leg.fix_latitude_deg),
    ("fix_longitude_deg", |leg| &mut leg.fix_longitude_deg),
    ("course_deg", |leg| &mut leg.course_deg),
    ("altitude_ft", |leg| &mut leg.altitude_ft),
    ("distance_nm", |leg| &mut leg.distance_nm),
    ("center_latitude_deg", |leg| &mut leg.center_latitude_deg),
    ("center_longitude_deg", |leg| &mut leg.center_longitude_deg),
    ("center_elevation_ft", |leg| &mut leg.center_elevation_ft),
    ("center_declination_deg", |leg| &mut leg.center_declination_deg),
    ("radial_deg", |leg| &mut leg.radial_deg),
    ("outbound_time_s", |leg| &mut leg.outbound_time_s),
    ("hold_distance_nm", |leg| &mut leg.hold_distance_nm),
    ("hold_dme_nm", |leg| &mut leg.hold_dme_nm),
    ("off_time_s", |leg| &mut leg.off_time_s),
];

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
            "timed" => leg.timed = alternative(python, "timed", &value, TimedLeg::ALL, TimedLeg::word)?,
            "reversal" => {
                leg.reversal =
                    alternative(python, "reversal", &value, ReversalForm::ALL, ReversalForm::word)?;
            }
            _ => {
                let place = NUMBERS.iter().find(|(known, _)| *known == name);
                let (_, place) = place.ok_or_else(|| {
                    let allowed: Vec<&str> = NUMBERS.iter().map(|(known, _)| *known).chain(WORDS).collect();
                    PyTypeError::new_err(format!("a leg has no {name}; allowed: {}", allowed.join(", ")))
                })?;
                *place(&mut leg) = value.extract()?;
            }
        }
    }
    Ok(leg)
}

/// Refuses a leg of an unknown word, or with what no leg has.
#[pyfunction]
pub fn check_leg(python: Python<'_>, word: &str, numbers: &Bound<'_, PyDict>) -> PyResult<()> {
    leg(python, word, numbers).map(|_| ())
}

/// Legs, each a word and the numbers given for it.
pub type Spelled<'py> = Vec<(String, Bound<'py, PyDict>)>;

/// The legs of their words and numbers.
pub fn read(python: Python<'_>, legs: &Spelled<'_>) -> PyResult<Vec<LegInput>> {
    legs.iter().map(|(word, numbers)| leg(python, word, numbers)).collect()
}

/// Flies legs, each a word and a dictionary; gives the segments as tuples and the points at a spacing.
#[pyfunction]
#[pyo3(name = "fly_legs")]
pub fn flown_legs<'py>(
    python: Python<'py>,
    legs: Spelled<'py>,
    conditions: Conditions,
    spacing_nm: f64,
) -> PyResult<Flown<'py>> {
    let legs = read(python, &legs)?;
    let (conditions, levels) = conditions_of(python, &conditions)?;
    let spacing_nm = checked(python, Quantity::PointSpacing, "spacing_nm", spacing_nm)?;
    let path = match levels {
        Some(levels) => fly_legs_aloft(&legs, &conditions, &levels),
        None => fly_legs(&legs, &conditions),
    };
    let path = path.map_err(|error| raised(python, &error))?;
    let segments = PyList::empty(python);
    for segment in &path.segments {
        segments.append(segment_tuple(python, &segment_output(&path, segment))?)?;
    }
    Ok((segments, path_points(&path, spacing_nm)))
}

/// A segment: its leg and kind, where it begins and ends, its length and times, how its ends are flown, and its turn.
pub fn segment_tuple<'py>(python: Python<'py>, segment: &SegmentOutput) -> PyResult<Bound<'py, PyTuple>> {
    let kind =
        SegmentKind::from_code("kind", f64::from(segment.kind)).map_err(|error| raised(python, &error))?;
    let start = (segment.start_latitude_deg, segment.start_longitude_deg, segment.start_course_deg);
    let end = (
        segment.end_latitude_deg,
        segment.end_longitude_deg,
        segment.end_course_deg,
        segment.end_altitude_ft,
    );
    let times = (segment.length_nm, segment.duration_s, segment.end_time_s);
    let flown = (
        segment.start_heading_deg,
        segment.start_groundspeed_kt,
        segment.end_heading_deg,
        segment.end_groundspeed_kt,
    );
    let turn = (segment.bank_deg, segment.heading_change_deg);
    (segment.leg, kind.word(), start, end, times, flown, turn).into_pyobject(python)
}
