//! A flight that Python steps, and the sureness of a course change; names, units and objects are Python's own.

use lubberline::plain::{
    ErrorModelInput, FlightAndReceiver, FlightInput, SurenessOutput, course_change_overshoots,
    course_change_sureness,
};
use lubberline::value::Quantity;
use pyo3::prelude::*;
use pyo3::types::{PyBytes, PyDict};

use crate::course_change::{Settings, input};
use crate::error::{checked_levels, raised};
use crate::legs::level;

/// The state behind `lubberline.Flight`.
#[pyclass(name = "Flight", module = "lubberline._native")]
pub struct Flight(FlightAndReceiver);

impl Flight {
    fn steered(
        &mut self,
        python: Python<'_>,
        act: impl FnOnce(&mut FlightAndReceiver) -> Result<(), lubberline::Error>,
    ) -> PyResult<()> {
        act(&mut self.0).map_err(|error| raised(python, &error))
    }
}

#[pymethods]
impl Flight {
    /// From the settings in the order of [`FlightInput`].
    #[new]
    fn new(python: Python<'_>, settings: [f64; 17]) -> PyResult<Self> {
        let [
            latitude_deg,
            longitude_deg,
            altitude_ft,
            heading_deg,
            true_airspeed_kt,
            wind_from_deg,
            wind_speed_kt,
            bank_limit_deg,
            turn_rate_limit_deg_per_s,
            roll_rate_deg_per_s,
            reaction_s,
            station_latitude_deg,
            station_longitude_deg,
            station_elevation_ft,
            station_declination_deg,
            course_deg,
            cone_half_angle_deg,
        ] = settings;
        let input = FlightInput {
            latitude_deg,
            longitude_deg,
            altitude_ft,
            heading_deg,
            true_airspeed_kt,
            wind_from_deg,
            wind_speed_kt,
            bank_limit_deg,
            turn_rate_limit_deg_per_s,
            roll_rate_deg_per_s,
            reaction_s,
            station_latitude_deg,
            station_longitude_deg,
            station_elevation_ft,
            station_declination_deg,
            course_deg,
            cone_half_angle_deg,
        };
        FlightAndReceiver::new(&input).map(Self).map_err(|error| raised(python, &error))
    }

    fn copy(&self) -> Self {
        Self(self.0)
    }

    fn step(&mut self, time_s: f64) {
        self.0.step(time_s);
    }

    fn state(&self) -> [f64; 16] {
        self.0.state().columns()
    }

    /// Steps on and gives the states one after the other, the present one first, as the bytes of their numbers.
    fn run<'py>(
        &mut self,
        python: Python<'py>,
        steps: u32,
        step_s: f64,
        until_done: bool,
    ) -> Bound<'py, PyBytes> {
        let mut bytes: Vec<u8> = Vec::new();
        let flight = &mut self.0;
        python.detach(|| {
            let mut state = flight.state();
            for step in 0..=steps {
                bytes.extend(state.columns().iter().flat_map(|value| value.to_ne_bytes()));
                if step == steps || (until_done && state.done > 0.0) {
                    break;
                }
                flight.step(step_s);
                state = flight.state();
            }
        });
        PyBytes::new(python, &bytes)
    }

    /// From latitude, longitude, elevation and declination of the station, and the course.
    fn tune(&mut self, python: Python<'_>, station: [f64; 4], course_deg: f64) -> PyResult<()> {
        let [latitude_deg, longitude_deg, elevation_ft, declination_deg] = station;
        self.steered(python, |flight| {
            flight.tune(latitude_deg, longitude_deg, elevation_ft, declination_deg, course_deg)
        })
    }

    fn hold_heading(&mut self, python: Python<'_>, heading_deg: f64) -> PyResult<()> {
        self.steered(python, |flight| flight.hold_heading(heading_deg))
    }

    fn turn_at_station(&mut self, python: Python<'_>, inbound_deg: f64, outbound_deg: f64) -> PyResult<()> {
        self.steered(python, |flight| flight.turn_at_station(inbound_deg, outbound_deg))
    }

    fn track(&mut self, python: Python<'_>, course_deg: f64, gain: f64) -> PyResult<()> {
        self.steered(python, |flight| flight.track(course_deg, gain))
    }

    fn intercept(&mut self, python: Python<'_>, course_deg: f64, angle_deg: f64, gain: f64) -> PyResult<()> {
        self.steered(python, |flight| flight.intercept(course_deg, angle_deg, gain))
    }

    fn arc(&mut self, python: Python<'_>, radius_nm: f64, sense: f64) -> PyResult<()> {
        self.steered(python, |flight| flight.arc(radius_nm, sense))
    }

    #[allow(clippy::too_many_arguments, reason = "they are the library's")]
    fn hold(
        &mut self,
        python: Python<'_>,
        inbound_deg: f64,
        side: f64,
        entry: f64,
        heading_deg: f64,
        time_s: f64,
    ) -> PyResult<()> {
        self.steered(python, |flight| flight.hold(inbound_deg, side, entry, heading_deg, time_s))
    }

    #[allow(clippy::too_many_arguments, reason = "they are the library's")]
    fn hold_by_dme(
        &mut self,
        python: Python<'_>,
        inbound_deg: f64,
        side: f64,
        entry: f64,
        heading_deg: f64,
        dme_nm: f64,
    ) -> PyResult<()> {
        self.steered(python, |flight| flight.hold_by_dme(inbound_deg, side, entry, heading_deg, dme_nm))
    }

    fn climb_to(&mut self, python: Python<'_>, altitude_ft: f64, climb_fpm: f64) -> PyResult<()> {
        self.steered(python, |flight| flight.climb_to(altitude_ft, climb_fpm))
    }

    fn set_wind(&mut self, python: Python<'_>, from_deg: f64, speed_kt: f64) -> PyResult<()> {
        self.steered(python, |flight| flight.set_wind(from_deg, speed_kt))
    }

    /// From the numbers of the lower level and of the upper one.
    fn set_wind_levels(&mut self, python: Python<'_>, lower: [f64; 3], upper: [f64; 3]) -> PyResult<()> {
        let ([low_ft, low_deg, low_kt], [high_ft, high_deg, high_kt]) = (lower, upper);
        self.steered(python, |flight| {
            flight.set_wind_levels(low_ft, low_deg, low_kt, high_ft, high_deg, high_kt)
        })
    }

    /// From levels of altitude, direction and speed.
    fn set_winds_aloft(&mut self, python: Python<'_>, levels: Vec<[f64; 3]>) -> PyResult<()> {
        checked_levels(python, Quantity::FlightWindLevels, levels.len())?;
        let levels: Vec<_> = levels.iter().map(level).collect();
        self.steered(python, |flight| flight.set_winds_aloft(&levels))
    }

    fn set_airspeed(&mut self, python: Python<'_>, true_airspeed_kt: f64) -> PyResult<()> {
        self.steered(python, |flight| flight.set_airspeed(true_airspeed_kt))
    }
}

/// The errors that are usual, by the names of [`sureness`]' settings.
#[pyfunction]
pub fn usual_errors(python: Python<'_>) -> PyResult<Bound<'_, PyDict>> {
    let usual = ErrorModelInput::usual();
    let answer = PyDict::new(python);
    for (name, value) in [
        ("station_bearing_deg", usual.station_bearing_deg),
        ("dme_nm", usual.dme_nm),
        ("wind_speed_kt", usual.wind_speed_kt),
        ("wind_direction_deg", usual.wind_direction_deg),
        ("airspeed_kt", usual.airspeed_kt),
        ("bank_deg", usual.bank_deg),
        ("roll_in_delay_s", usual.roll_in_delay_s),
        ("height_ft", usual.height_ft),
        ("mean_delay_s", usual.mean_delay_s),
    ] {
        answer.set_item(name, value)?;
    }
    Ok(answer)
}

/// How sure a course change is, as a dictionary, and what each source is worth, as another.
#[pyfunction]
pub fn sureness<'py>(
    python: Python<'py>,
    settings: Settings,
    errors: [f64; 9],
    limit_nm: f64,
    confidence: f64,
    trials: u64,
    seed: u64,
) -> PyResult<(Bound<'py, PyDict>, Bound<'py, PyDict>)> {
    let model = model(errors);
    let question = input(settings);
    let sure = python
        .detach(|| course_change_sureness(&question, &model, limit_nm, confidence, trials, seed))
        .map_err(|error| raised(python, &error))?;
    sureness_dicts(python, &sure)
}

/// A sureness as a dictionary, and what each source is worth, as another.
pub fn sureness_dicts<'py>(
    python: Python<'py>,
    sure: &SurenessOutput,
) -> PyResult<(Bound<'py, PyDict>, Bound<'py, PyDict>)> {
    let answer = PyDict::new(python);
    for (name, value) in [
        ("mean_nm", sure.mean_nm),
        ("deviation_nm", sure.deviation_nm),
        ("chance_beyond", sure.chance_beyond),
        ("margin_nm", sure.margin_nm),
        ("linear_mean_nm", sure.linear_mean_nm),
        ("linear_deviation_nm", sure.linear_deviation_nm),
        ("linear_chance_beyond", sure.linear_chance_beyond),
        ("linear_margin_nm", sure.linear_margin_nm),
        ("begin_with_margin_at_dme_nm", sure.begin_with_margin_at_dme_nm),
        ("begin_with_margin_before_fix_nm", sure.begin_with_margin_before_fix_nm),
    ] {
        answer.set_item(name, value)?;
    }
    let by_source = PyDict::new(python);
    for (name, value) in [
        ("station_bearing", sure.by_station_bearing_nm),
        ("dme", sure.by_dme_nm),
        ("wind_speed", sure.by_wind_speed_nm),
        ("wind_direction", sure.by_wind_direction_nm),
        ("airspeed", sure.by_airspeed_nm),
        ("bank", sure.by_bank_nm),
        ("roll_in_delay", sure.by_roll_in_delay_nm),
        ("height", sure.by_height_nm),
    ] {
        by_source.set_item(name, value)?;
    }
    Ok((answer, by_source))
}

/// The overshoots of trials, as the bytes of their numbers.
#[pyfunction]
pub fn overshoots<'py>(
    python: Python<'py>,
    settings: Settings,
    errors: [f64; 9],
    trials: u32,
    seed: u64,
) -> PyResult<Bound<'py, PyBytes>> {
    let (question, model) = (input(settings), model(errors));
    let mut each_nm = vec![f64::NAN; trials as usize];
    python
        .detach(|| course_change_overshoots(&question, &model, seed, &mut each_nm))
        .map_err(|error| raised(python, &error))?;
    let bytes: Vec<u8> = each_nm.iter().flat_map(|value| value.to_ne_bytes()).collect();
    Ok(PyBytes::new(python, &bytes))
}

pub fn model(errors: [f64; 9]) -> ErrorModelInput {
    let [
        station_bearing_deg,
        dme_nm,
        wind_speed_kt,
        wind_direction_deg,
        airspeed_kt,
        bank_deg,
        roll_in_delay_s,
        height_ft,
        mean_delay_s,
    ] = errors;
    ErrorModelInput {
        station_bearing_deg,
        dme_nm,
        wind_speed_kt,
        wind_direction_deg,
        airspeed_kt,
        bank_deg,
        roll_in_delay_s,
        height_ft,
        mean_delay_s,
    }
}
