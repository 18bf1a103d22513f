//! NumPy functions made of the plain functions, through NumPy's own C interface.
//!
//! The only calls into NumPy are one capsule and one constructor; the loop itself is `lubberline_strided::run`.

use std::ffi::{CString, c_char, c_int, c_void};
use std::ptr;

use lubberline::plain::table::{FUNCTIONS, Function};
use lubberline_strided::{Input, MOST_OPERANDS, Output, run};
use pyo3::exceptions::{PyImportError, PyValueError};
use pyo3::ffi;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::flags;

/// NumPy's number for a C double.
const NPY_DOUBLE: c_char = 12;
/// NumPy's number for a function that cannot be reduced.
const PYUFUNC_NONE: c_int = -1;
/// Where `PyUFunc_FromFuncAndData` stands in NumPy's table of its C interface.
const FROM_FUNC_AND_DATA: usize = 1;

type Loop = unsafe extern "C" fn(*mut *mut c_char, *const isize, *const isize, *mut c_void);
type FromFuncAndData = unsafe extern "C" fn(
    *mut Loop,
    *mut *mut c_void,
    *const c_char,
    c_int,
    c_int,
    c_int,
    c_int,
    *const c_char,
    *const c_char,
    c_int,
) -> *mut ffi::PyObject;

/// What a loop computes: a function, and the places of those of its outputs that are wanted, in the order they are given in.
struct Task {
    function: &'static Function,
    wanted: Vec<usize>,
}

/// A NumPy function of the named outputs of a function, in the order of the names. What is left out is not computed where the
/// function has a loop that can leave it out.
#[pyfunction]
pub fn some<'py>(python: Python<'py>, function: &str, outputs: Vec<String>) -> PyResult<Bound<'py, PyAny>> {
    let found = Function::named(function)
        .ok_or_else(|| PyValueError::new_err(format!("there is no function {function:?}")))?;
    let mut wanted = Vec::new();
    for output in &outputs {
        let place = found.outputs.iter().position(|other| other == output);
        let allowed = found.outputs.join(", ");
        let place = place.ok_or_else(|| {
            PyValueError::new_err(format!("{function} has no output {output:?}; it has {allowed}"))
        })?;
        if wanted.contains(&place) {
            return Err(PyValueError::new_err(format!("output {output:?} is named twice")));
        }
        wanted.push(place);
    }
    if wanted.is_empty() {
        return Err(PyValueError::new_err("no output is named"));
    }
    made(python, function, Task { function: found, wanted })
}

/// NumPy functions of one output each, by name.
pub fn one_output(python: Python<'_>) -> PyResult<Bound<'_, PyDict>> {
    let found = PyDict::new(python);
    for function in FUNCTIONS {
        for (index, output) in function.outputs.iter().enumerate() {
            let name = if function.outputs.len() == 1 {
                function.name.to_string()
            } else {
                format!("{}_{output}", function.name)
            };
            found.set_item(&name, made(python, &name, Task { function, wanted: vec![index] })?)?;
        }
    }
    Ok(found)
}

/// NumPy functions that give all outputs at once, by the name of the plain function.
pub fn all_outputs(python: Python<'_>) -> PyResult<Bound<'_, PyDict>> {
    let found = PyDict::new(python);
    for function in FUNCTIONS.iter().filter(|function| function.outputs.len() > 1) {
        let wanted = (0..function.outputs.len()).collect();
        found.set_item(function.name, made(python, function.name, Task { function, wanted })?)?;
    }
    Ok(found)
}

/// The outputs of each function by its name, in the function's order.
pub fn outputs(python: Python<'_>) -> PyResult<Bound<'_, PyDict>> {
    let found = PyDict::new(python);
    for function in FUNCTIONS {
        found.set_item(function.name, function.outputs)?;
    }
    Ok(found)
}

fn made<'py>(python: Python<'py>, name: &str, task: Task) -> PyResult<Bound<'py, PyAny>> {
    let inputs = task.function.inputs.len();
    let outputs = task.wanted.len();
    let doc =
        format!("{name}({}, /)\n\nSee lubberline.{}.", task.function.inputs.join(", "), task.function.name);
    let (name, doc) = (CString::new(name)?, CString::new(doc)?);
    // NumPy keeps what it is given for as long as the process lives.
    let loops = Box::leak(Box::new([run_loop as Loop]));
    let data = Box::leak(Box::new([Box::into_raw(Box::new(task)).cast::<c_void>()]));
    let types = vec![NPY_DOUBLE; inputs + outputs].leak();
    let constructor = constructor(python)?;
    // SAFETY: every pointer lives forever, and there are as many types as operands.
    unsafe {
        let object = constructor(
            loops.as_mut_ptr(),
            data.as_mut_ptr(),
            types.as_ptr(),
            1,
            c_int::try_from(inputs)?,
            c_int::try_from(outputs)?,
            PYUFUNC_NONE,
            name.into_raw(),
            doc.into_raw(),
            0,
        );
        Bound::from_owned_ptr_or_err(python, object)
    }
}

/// NumPy's constructor of functions, from the table behind its capsule.
fn constructor(python: Python<'_>) -> PyResult<FromFuncAndData> {
    let core = python
        .import("numpy._core._multiarray_umath")
        .or_else(|_| python.import("numpy.core._multiarray_umath"))?;
    let capsule = core.getattr("_UFUNC_API")?;
    // SAFETY: NumPy promises a table of pointers in which the constructor has had this place since 2006.
    unsafe {
        let table = ffi::PyCapsule_GetPointer(capsule.as_ptr(), ptr::null()).cast::<*const c_void>();
        if table.is_null() {
            return Err(
                PyErr::take(python).unwrap_or_else(|| PyImportError::new_err("NumPy has no _UFUNC_API"))
            );
        }
        Ok(std::mem::transmute::<*const c_void, FromFuncAndData>(*table.add(FROM_FUNC_AND_DATA)))
    }
}

/// The loop that NumPy calls, without the interpreter's lock.
unsafe extern "C" fn run_loop(
    operands: *mut *mut c_char,
    counts: *const isize,
    strides: *const isize,
    data: *mut c_void,
) {
    // SAFETY: NumPy gives as many operands and strides as the function was made with, valid for the count; the task was
    // leaked when the function was made.
    unsafe {
        let task = &*data.cast::<Task>();
        let inputs = task.function.inputs.len();
        let mut given = [Input { data: ptr::null(), stride: 0 }; MOST_OPERANDS];
        let mut wanted = [Output { data: ptr::null_mut(), stride: 0 }; MOST_OPERANDS];
        for (index, input) in given.iter_mut().take(inputs).enumerate() {
            *input = Input { data: (*operands.add(index)).cast(), stride: *strides.add(index) };
        }
        let outputs = task.function.outputs.len();
        for (index, output) in (inputs..).zip(&task.wanted) {
            if let Some(output) = wanted.get_mut(*output) {
                *output = Output { data: (*operands.add(index)).cast(), stride: *strides.add(index) };
            }
        }
        let (Some(given), Some(wanted)) = (given.get(..inputs), wanted.get(..outputs)) else { return };
        let count = usize::try_from(*counts).unwrap_or(0);
        // What the computation itself raises says nothing; a refused value does. NumPy calls the loop once for every part of an
        // array and looks at the flags after the last, so those of earlier parts must survive.
        let before = flags::Saved::now();
        let failures = run(task.function, count, given, wanted, ptr::null_mut());
        before.restore();
        if failures > 0 {
            flags::raise_invalid();
        }
    }
}
