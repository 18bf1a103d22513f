//! The brief of a route, from plain numbers to dictionaries; the objects are made in Python.

use lubberline::plain::{
    BriefedRoute, RouteConditionsInput, RouteFixInput, RouteLegOutput, RouteTurnOutput, SurenessOutput,
    WindLevelInput, brief_route as brief,
};
use lubberline::value::Quantity;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

use crate::course_change::fly_over_dict;
use crate::error::{checked, raised, raised_on_route};
use crate::flight::{model, sureness_dicts};

/// Levels of altitude, direction and speed; empty for winds that are not given so.
type Levels = Vec<[f64; 3]>;

/// A station: its numbers in the order of [`RouteFixInput`], which way to turn, its winds by level.
type Fix = ([f64; 7], i32, Levels);

/// What errors are asked with: deviations and the mean delay, limit, confidence, trials and seed.
type Asked = ([f64; 9], f64, f64, u64, u64);

/// Legs, turns, distance and time of the whole.
type Briefed<'py> = (Bound<'py, PyList>, Bound<'py, PyList>, (f64, f64));

fn levels(given: &Levels) -> Vec<WindLevelInput> {
    let level = |&[pressure_altitude_ft, wind_from_deg, wind_speed_kt]: &[f64; 3]| WindLevelInput {
        pressure_altitude_ft,
        wind_from_deg,
        wind_speed_kt,
    };
    given.iter().map(level).collect()
}

fn fix<'a>(given: &Fix, wind_levels: &'a [WindLevelInput]) -> RouteFixInput<'a> {
    let [
        latitude_deg,
        longitude_deg,
        elevation_ft,
        declination_deg,
        cone_half_angle_deg,
        wind_from_deg,
        wind_speed_kt,
    ] = given.0;
    RouteFixInput {
        latitude_deg,
        longitude_deg,
        elevation_ft,
        declination_deg,
        cone_half_angle_deg,
        wind_from_deg,
        wind_speed_kt,
        wind_levels,
        turn: given.1,
    }
}

/// Briefs a route through stations, in conditions in the order of [`RouteConditionsInput`] and winds by level.
#[pyfunction]
pub fn brief_route<'py>(
    python: Python<'py>,
    fixes: Vec<Fix>,
    conditions: ([f64; 10], Levels),
    asked: Option<Asked>,
    spacing_nm: f64,
) -> PyResult<Briefed<'py>> {
    let (numbers, everywhere) = conditions;
    let [
        true_airspeed_kt,
        pressure_altitude_ft,
        altimeter_setting_hpa,
        isa_deviation_k,
        wind_from_deg,
        wind_speed_kt,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
        intercept_angle_deg,
    ] = numbers;
    let (each, everywhere): (Vec<Vec<WindLevelInput>>, _) =
        (fixes.iter().map(|fix| levels(&fix.2)).collect(), levels(&everywhere));
    let plain: Vec<RouteFixInput<'_>> =
        fixes.iter().zip(&each).map(|(given, levels)| fix(given, levels)).collect();
    let conditions = RouteConditionsInput {
        true_airspeed_kt,
        pressure_altitude_ft,
        altimeter_setting_hpa,
        isa_deviation_k,
        wind_from_deg,
        wind_speed_kt,
        wind_levels: &everywhere,
        bank_limit_deg,
        turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s,
        intercept_angle_deg,
    };
    let spacing_nm = checked(python, Quantity::PointSpacing, "spacing_nm", spacing_nm)?;
    let route = brief(&plain, &conditions).map_err(|refused| raised_on_route(python, &refused))?;
    let sureness = sureness(python, &route, asked)?;
    let legs = PyList::empty(python);
    for (index, leg) in route.legs().iter().enumerate() {
        let dict = leg_dict(python, leg)?;
        dict.set_item("points", route.leg_points(index, spacing_nm))?;
        legs.append(dict)?;
    }
    let turns = PyList::empty(python);
    for (index, turn) in route.turns().iter().enumerate() {
        let dict = turn_dict(python, turn)?;
        dict.set_item("points", route.turn_points(index))?;
        let sure = sureness.as_ref().and_then(|each| each.get(index));
        dict.set_item("sureness", sure.map(|sure| sureness_dicts(python, sure)).transpose()?)?;
        turns.append(dict)?;
    }
    Ok((legs, turns, (route.total_distance_nm(), route.total_time_s())))
}

fn sureness(
    python: Python<'_>,
    route: &BriefedRoute,
    asked: Option<Asked>,
) -> PyResult<Option<Vec<SurenessOutput>>> {
    let Some((errors, limit_nm, confidence, trials, seed)) = asked else { return Ok(None) };
    let model = model(errors);
    let each = python.detach(|| route.sureness(&model, limit_nm, confidence, trials, seed));
    each.map(Some).map_err(|error| raised(python, &error))
}

fn leg_dict<'py>(python: Python<'py>, leg: &RouteLegOutput) -> PyResult<Bound<'py, PyDict>> {
    let dict = PyDict::new(python);
    for (name, value) in [
        ("length_nm", leg.length_nm),
        ("initial_course_deg", leg.initial_course_deg),
        ("final_course_deg", leg.final_course_deg),
        ("radial_from_deg", leg.radial_from_deg),
        ("radial_to_deg", leg.radial_to_deg),
        ("wind_from_deg", leg.wind_from_deg),
        ("wind_speed_kt", leg.wind_speed_kt),
        ("heading_deg", leg.heading_deg),
        ("wind_correction_deg", leg.wind_correction_deg),
        ("groundspeed_kt", leg.groundspeed_kt),
        ("straight_nm", leg.straight_nm),
        ("straight_time_s", leg.straight_time_s),
        ("least_length_nm", leg.least_length_nm),
        ("horizon_from_nm", leg.horizon_from_nm),
        ("horizon_to_nm", leg.horizon_to_nm),
        ("unreceived_nm", leg.unreceived_nm),
    ] {
        dict.set_item(name, value)?;
    }
    dict.set_item("long_enough", leg.long_enough)?;
    Ok(dict)
}

fn turn_dict<'py>(python: Python<'py>, turn: &RouteTurnOutput) -> PyResult<Bound<'py, PyDict>> {
    let dict = PyDict::new(python);
    for (name, value) in [
        ("height_above_station_ft", turn.height_above_station_ft),
        ("wind_from_deg", turn.wind_from_deg),
        ("wind_speed_kt", turn.wind_speed_kt),
        ("inbound_course_deg", turn.inbound_course_deg),
        ("outbound_course_deg", turn.outbound_course_deg),
        ("course_change_deg", turn.course_change_deg),
        ("inbound_radial_deg", turn.inbound_radial_deg),
        ("outbound_radial_deg", turn.outbound_radial_deg),
        ("heading_before_deg", turn.heading_before_deg),
        ("heading_after_deg", turn.heading_after_deg),
        ("heading_change_deg", turn.heading_change_deg),
        ("groundspeed_before_kt", turn.groundspeed_before_kt),
        ("groundspeed_after_kt", turn.groundspeed_after_kt),
        ("bank_deg", turn.bank_deg),
        ("radius_nm", turn.radius_nm),
        ("begin_at_dme_nm", turn.begin_at_dme_nm),
        ("begin_on_radial_deg", turn.begin_on_radial_deg),
        ("begin_before_fix_nm", turn.begin_before_fix_nm),
        ("begin_latitude_deg", turn.begin_latitude_deg),
        ("begin_longitude_deg", turn.begin_longitude_deg),
        ("ground_per_dme_tenth_nm", turn.ground_per_dme_tenth_nm),
        ("begin_after_last_roll_out_s", turn.begin_after_last_roll_out_s),
        ("begin_after_start_s", turn.begin_after_start_s),
        ("turn_time_s", turn.turn_time_s),
        ("turn_length_nm", turn.turn_length_nm),
        ("roll_out_after_start_s", turn.roll_out_after_start_s),
        ("roll_out_dme_nm", turn.roll_out_dme_nm),
        ("roll_out_radial_deg", turn.roll_out_radial_deg),
        ("roll_out_past_fix_nm", turn.roll_out_past_fix_nm),
        ("roll_out_latitude_deg", turn.roll_out_latitude_deg),
        ("roll_out_longitude_deg", turn.roll_out_longitude_deg),
        ("closest_approach_nm", turn.closest_approach_nm),
        ("cone_radius_nm", turn.cone_radius_nm),
        ("cone_edge_dme_nm", turn.cone_edge_dme_nm),
    ] {
        dict.set_item(name, value)?;
    }
    dict.set_item("governed_by", turn.governed_by.word())?;
    dict.set_item("begins_in_cone", turn.begins_in_cone)?;
    dict.set_item("enters_cone", turn.enters_cone)?;
    dict.set_item("fly_over", fly_over_dict(python, &turn.fly_over)?)?;
    let rule = PyDict::new(python);
    for (name, value) in [
        ("lead_nm", turn.by_rule.lead_nm),
        ("lead_error_nm", turn.by_rule.lead_error_nm),
        ("lead_with_height_nm", turn.by_rule.lead_with_height_nm),
        ("lead_with_height_error_nm", turn.by_rule.lead_with_height_error_nm),
        ("dme_nm", turn.by_rule.dme_nm),
        ("dme_error_nm", turn.by_rule.dme_error_nm),
    ] {
        rule.set_item(name, value)?;
    }
    dict.set_item("by_rule", rule)?;
    Ok(dict)
}
