//! The brief of a sequence of legs, from plain numbers to dictionaries; the objects are made in Python.

use lubberline::plain::{
    BriefedPath, PathCheckOutput, PathLegOutput, PathReadingOutput, PathStationInput, PathSurroundingsInput,
    PathTurnOutput, brief_path as brief,
};
use lubberline::procedure::HoldingSpeedRule;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

use crate::error::{raised, unknown_word};
use crate::legs::{Conditions, Spelled, conditions_of, read, segment_tuple};

/// Latitude, longitude, elevation, declination and half-angle of the cone of each station, and its ident.
type Stations = Vec<([f64; 5], String)>;

/// Altimeter setting, deviation from standard, and the rule of holding speeds as a word.
type Surroundings = (f64, f64, String);

/// Briefs legs, each a word and a dictionary; gives lists of dictionaries, the segments with their points, and distance and time of the whole.
#[pyfunction]
pub fn brief_path<'py>(
    python: Python<'py>,
    legs: Spelled<'py>,
    conditions: Conditions,
    stations: Stations,
    surroundings: Surroundings,
    spacing: (f64, f64),
) -> PyResult<Bound<'py, PyDict>> {
    let legs = read(python, &legs)?;
    let (conditions, levels) = conditions_of(python, &conditions)?;
    let (stations, idents): (Vec<_>, Vec<_>) = stations.into_iter().map(station).unzip();
    let path = brief(&legs, &conditions, levels.as_deref(), &stations, &surrounded(python, &surroundings)?);
    let path = path.map_err(|error| raised(python, &error))?;
    let sentences = path.check_sentences(&idents);
    let answer = PyDict::new(python);
    answer.set_item("legs", list(python, path.legs(), leg_dict)?)?;
    answer.set_item("turns", list(python, path.turns(), turn_dict)?)?;
    answer.set_item("readings", list(python, path.readings(), reading_tuple)?)?;
    let checks = path.checks().into_iter().zip(sentences);
    answer.set_item("checks", list(python, checks, check_dict)?)?;
    answer.set_item(
        "segments",
        list(python, path.segments(), |python, segment| segment_tuple(python, &segment))?,
    )?;
    answer.set_item("points", points(&path, spacing))?;
    answer.set_item("total_distance_nm", path.total_distance_nm())?;
    answer.set_item("total_time_s", path.total_time_s())?;
    Ok(answer)
}

fn list<'py, T, Made>(
    python: Python<'py>,
    plain: impl IntoIterator<Item = T>,
    made: impl Fn(Python<'py>, T) -> PyResult<Made>,
) -> PyResult<Bound<'py, PyList>>
where
    Made: IntoPyObject<'py>,
{
    let list = PyList::empty(python);
    for one in plain {
        list.append(made(python, one)?)?;
    }
    Ok(list)
}

fn station((numbers, ident): ([f64; 5], String)) -> (PathStationInput, String) {
    let [latitude_deg, longitude_deg, elevation_ft, declination_deg, cone_half_angle_deg] = numbers;
    let station =
        PathStationInput { latitude_deg, longitude_deg, elevation_ft, declination_deg, cone_half_angle_deg };
    (station, ident)
}

fn surrounded(python: Python<'_>, given: &Surroundings) -> PyResult<PathSurroundingsInput> {
    let known = HoldingSpeedRule::ALL.iter().copied();
    let words = known.clone().map(HoldingSpeedRule::word);
    let rule = known.clone().find(|rule| rule.word() == given.2);
    Ok(PathSurroundingsInput {
        altimeter_setting_hpa: given.0,
        isa_deviation_k: given.1,
        holding_rule: rule.ok_or_else(|| unknown_word(python, "holding_rule", &given.2, words))?,
    })
}

/// The points of each segment: latitudes and longitudes.
fn points(path: &BriefedPath, (straight_nm, bent_nm): (f64, f64)) -> Vec<Vec<(f64, f64)>> {
    (0..path.segments().len()).map(|segment| path.segment_points(segment, straight_nm, bent_nm)).collect()
}

fn leg_dict(python: Python<'_>, leg: PathLegOutput) -> PyResult<Bound<'_, PyDict>> {
    let dict = PyDict::new(python);
    for (name, value) in [
        ("start_latitude_deg", leg.start_latitude_deg),
        ("start_longitude_deg", leg.start_longitude_deg),
        ("start_course_deg", leg.start_course_deg),
        ("start_altitude_ft", leg.start_altitude_ft),
        ("start_time_s", leg.start_time_s),
        ("end_latitude_deg", leg.end_latitude_deg),
        ("end_longitude_deg", leg.end_longitude_deg),
        ("end_course_deg", leg.end_course_deg),
        ("end_altitude_ft", leg.end_altitude_ft),
        ("end_time_s", leg.end_time_s),
        ("course_deg", leg.course_deg),
        ("heading_deg", leg.heading_deg),
        ("wind_correction_deg", leg.wind_correction_deg),
        ("groundspeed_kt", leg.groundspeed_kt),
        ("wind_from_deg", leg.wind_from_deg),
        ("wind_speed_kt", leg.wind_speed_kt),
        ("headwind_kt", leg.headwind_kt),
        ("crosswind_kt", leg.crosswind_kt),
        ("distance_nm", leg.distance_nm),
        ("time_s", leg.time_s),
        ("shortest_straight_nm", leg.shortest_straight_nm),
        ("arc_bank_deg", leg.arc_bank_deg),
    ] {
        dict.set_item(name, value)?;
    }
    dict.set_item("magnetic_course_deg", known(leg.magnetic_course_deg))?;
    dict.set_item("magnetic_heading_deg", known(leg.magnetic_heading_deg))?;
    dict.set_item("code", leg.code.word())?;
    dict.set_item("meaning", leg.code.meaning())?;
    dict.set_item("keeps_its_arc", leg.keeps_its_arc)?;
    Ok(dict)
}

/// A direction from magnetic north, none without a variation.
fn known(magnetic_deg: f64) -> Option<f64> {
    (!magnetic_deg.is_nan()).then_some(magnetic_deg)
}

/// The leg it leads onto, where it begins and where it rolls out (latitude, longitude, altitude, time, course, magnetic course), and the turn itself.
fn turn_dict(python: Python<'_>, turn: PathTurnOutput) -> PyResult<Bound<'_, PyDict>> {
    let dict = PyDict::new(python);
    dict.set_item("leg", turn.leg)?;
    let begin = (
        turn.begin_latitude_deg,
        turn.begin_longitude_deg,
        turn.begin_altitude_ft,
        turn.begin_after_start_s,
        turn.begin_course_deg,
        known(turn.begin_magnetic_course_deg),
    );
    let roll_out = (
        turn.roll_out_latitude_deg,
        turn.roll_out_longitude_deg,
        turn.roll_out_altitude_ft,
        turn.roll_out_after_start_s,
        turn.roll_out_course_deg,
        known(turn.roll_out_magnetic_course_deg),
    );
    dict.set_item("begin", begin)?;
    dict.set_item("roll_out", roll_out)?;
    for (name, value) in [
        ("heading_change_deg", turn.heading_change_deg),
        ("bank_deg", turn.bank_deg),
        ("radius_nm", turn.radius_nm),
        ("time_s", turn.time_s),
    ] {
        dict.set_item(name, value)?;
    }
    dict.set_item("governed_by", turn.governed_by.word())?;
    Ok(dict)
}

/// Turn, whether at its end, station, DME, radial and flag.
#[allow(clippy::unnecessary_wraps, reason = "one of several that make a list")]
fn reading_tuple(
    _python: Python<'_>,
    reading: PathReadingOutput,
) -> PyResult<(usize, bool, usize, f64, f64, &'static str)> {
    let flag = reading.flag.word();
    Ok((reading.turn, reading.at_roll_out, reading.station, reading.dme_nm, reading.radial_deg, flag))
}

fn check_dict(python: Python<'_>, found: (PathCheckOutput, String)) -> PyResult<Bound<'_, PyDict>> {
    let (check, sentence) = found;
    let dict = PyDict::new(python);
    dict.set_item("leg", check.leg)?;
    dict.set_item("kind", check.kind.word())?;
    dict.set_item("sentence", sentence)?;
    dict.set_item("turn", check.turn)?;
    dict.set_item("station", check.station)?;
    dict.set_item("value", check.value)?;
    dict.set_item("limit", check.limit)?;
    dict.set_item("pressure_altitude_ft", check.pressure_altitude_ft)?;
    Ok(dict)
}
