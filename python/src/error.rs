//! The exception that Python sees for a value refused.

use lubberline::Error;
use lubberline::route::RouteError;
use lubberline::value::Quantity;
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;
use pyo3::types::PyType;

pyo3::create_exception!(
    lubberline,
    NavigationError,
    PyValueError,
    "A value was refused, or no answer exists: the message names the parameter, its value with the unit, and what is allowed.\n\n\
     `code` is the error as a stable number, `parameter` the name of the parameter or None."
);

/// The exception's type. One that was raised by someone else has attributes too.
pub fn exception(python: Python<'_>) -> PyResult<Bound<'_, PyType>> {
    let exception = python.get_type::<NavigationError>();
    exception.setattr("code", 0)?;
    exception.setattr("parameter", python.None())?;
    Ok(exception)
}

/// The exception for an error of the core.
pub fn raised(python: Python<'_>, error: &Error) -> PyErr {
    told(python, error.to_string(), error.code(), error.parameter())
}

/// The exception for an error on a route, which says where it is.
pub fn raised_on_route(python: Python<'_>, refused: &RouteError) -> PyErr {
    told(python, refused.to_string(), refused.error.code(), refused.error.parameter())
}

/// The exception for a word that is none of a choice's.
pub fn unknown_word(
    python: Python<'_>,
    parameter: &'static str,
    word: &str,
    allowed: impl Iterator<Item = &'static str>,
) -> PyErr {
    let allowed = allowed.map(|word| format!("'{word}'")).collect::<Vec<_>>().join(", ");
    let message = format!("{parameter} is '{word}'; allowed: {allowed}");
    let code = Error::UnknownChoice { parameter, code: f64::NAN, allowed: "" }.code();
    told(python, message, code, Some(parameter))
}

/// A value of a quantity, or the exception that names the parameter.
pub fn checked(python: Python<'_>, quantity: Quantity, parameter: &'static str, value: f64) -> PyResult<f64> {
    quantity.check(parameter, value).map_err(|error| raised(python, &error))
}

/// Refuses a number of wind levels by the name of what was given: the levels, from which it was counted.
pub fn checked_levels(python: Python<'_>, quantity: Quantity, count: usize) -> PyResult<()> {
    quantity.check("wind_levels", count as f64).map(|_| ()).map_err(|error| {
        let message = format!("wind_levels has {count} levels; allowed: {}", quantity.allowed());
        told(python, message, error.code(), error.parameter())
    })
}

fn told(python: Python<'_>, message: String, code: i32, parameter: Option<&str>) -> PyErr {
    let exception = NavigationError::new_err(message);
    let value = exception.value(python);
    let set = value.setattr("code", code).and_then(|()| value.setattr("parameter", parameter));
    set.err().unwrap_or(exception)
}

/// Refuses what cannot be a station, in the names of its own parameters.
#[pyfunction]
pub fn check_station(
    python: Python<'_>,
    latitude_deg: f64,
    longitude_deg: f64,
    elevation_ft: f64,
    declination_deg: f64,
) -> PyResult<()> {
    let checks = [
        (Quantity::Latitude, "latitude_deg", latitude_deg),
        (Quantity::Longitude, "longitude_deg", longitude_deg),
        (Quantity::Elevation, "elevation_ft", elevation_ft),
        (Quantity::Declination, "declination_deg", declination_deg),
    ];
    for (quantity, parameter, value) in checks {
        checked(python, quantity, parameter, value)?;
    }
    Ok(())
}

/// Refuses what cannot be the place of a name.
#[pyfunction]
pub fn check_fix(python: Python<'_>, ident: &str, latitude_deg: f64, longitude_deg: f64) -> PyResult<()> {
    let checks = [
        (Quantity::Latitude, "latitude_deg", "latitude", latitude_deg),
        (Quantity::Longitude, "longitude_deg", "longitude", longitude_deg),
    ];
    for (quantity, parameter, word, value) in checks {
        quantity.check(parameter, value).map_err(|error| {
            let message = error.to_string().replacen(parameter, &format!("{word} of {ident}"), 1);
            told(python, message, error.code(), Some("fixes"))
        })?;
    }
    Ok(())
}
