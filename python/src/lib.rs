//! The native half of the Python package: NumPy functions, fast calls on plain numbers, and the course change.
//!
//! Names, documentation and objects are Python's own, in `python/package/lubberline`.

mod course_change;
mod error;
mod flags;
mod flight;
mod legs;
mod path;
mod route;
mod scalar;
mod ufunc;

use lubberline::Error;
use pyo3::prelude::*;

#[pymodule(gil_used = false)]
fn _native(module: &Bound<'_, PyModule>) -> PyResult<()> {
    let python = module.py();
    module.add("__version__", env!("CARGO_PKG_VERSION"))?;
    module.add("NavigationError", error::exception(python)?)?;
    module.add("UNKNOWN_CHOICE", Error::UnknownChoice { parameter: "", code: 0.0, allowed: "" }.code())?;
    module.add("ufuncs", ufunc::one_output(python)?)?;
    module.add("many", ufunc::all_outputs(python)?)?;
    module.add("outputs", ufunc::outputs(python)?)?;
    module.add_function(wrap_pyfunction!(ufunc::some, module)?)?;
    module.add("scalars", scalar::functions(python)?)?;
    module.add_function(wrap_pyfunction!(course_change::course_change, module)?)?;
    module.add_function(wrap_pyfunction!(course_change::course_change_at, module)?)?;
    module.add_function(wrap_pyfunction!(course_change::fly_over_at, module)?)?;
    module.add_class::<flight::Flight>()?;
    module.add_function(wrap_pyfunction!(flight::sureness, module)?)?;
    module.add_function(wrap_pyfunction!(flight::usual_errors, module)?)?;
    module.add_function(wrap_pyfunction!(flight::overshoots, module)?)?;
    module.add_function(wrap_pyfunction!(legs::flown_legs, module)?)?;
    module.add_function(wrap_pyfunction!(legs::check_leg, module)?)?;
    module.add_function(wrap_pyfunction!(path::brief_path, module)?)?;
    module.add_function(wrap_pyfunction!(route::brief_route, module)?)?;
    module.add_function(wrap_pyfunction!(error::check_station, module)?)?;
    module.add_function(wrap_pyfunction!(error::check_fix, module)?)?;
    Ok(())
}
