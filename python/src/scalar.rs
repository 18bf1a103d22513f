//! Calls on plain numbers that pass by NumPy: a tenth of a microsecond instead of one.

use std::ffi::c_char;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::ptr;
use std::sync::OnceLock;

use lubberline::plain::table::{FUNCTIONS, Function};
use lubberline_strided::MOST_OPERANDS;
use pyo3::exceptions::{PyRuntimeError, PyTypeError};
use pyo3::ffi;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDict, PyTuple};

use crate::error::raised;

/// The types of NumPy's own real scalars, for as long as the process lives.
static NUMPY_REAL: OnceLock<Py<PyAny>> = OnceLock::new();

/// The type of NumPy's truth values, for as long.
static NUMPY_BOOL: OnceLock<Py<PyAny>> = OnceLock::new();

/// A method table of Python's C interface that never changes once made.
struct Method(ffi::PyMethodDef);

/// For each plain function a callable that takes plain numbers and gives a float or a tuple of floats, raises for a value
/// refused or a truth value, and gives None if any other argument is no plain number.
pub fn functions(python: Python<'_>) -> PyResult<Bound<'_, PyDict>> {
    let numpy = python.import("numpy")?;
    // Not `numpy.generic`: a complex scalar or a text would pass as a float.
    let real = (numpy.getattr("floating")?, numpy.getattr("integer")?);
    let real = real.into_pyobject(python)?.into_any();
    NUMPY_REAL.get_or_init(|| real.unbind());
    let truth = numpy.getattr("bool_")?;
    NUMPY_BOOL.get_or_init(|| truth.unbind());
    let found = PyDict::new(python);
    for function in FUNCTIONS {
        let name = std::ffi::CString::new(function.name)?;
        let method = Box::leak(Box::new(Method(ffi::PyMethodDef {
            ml_name: name.into_raw().cast_const().cast::<c_char>(),
            ml_meth: ffi::PyMethodDefPointer { PyCFunctionFast: call },
            ml_flags: ffi::METH_FASTCALL,
            ml_doc: ptr::null(),
        })));
        // SAFETY: the table entry and the method live forever; the capsule only carries the entry's address.
        let callable = unsafe {
            let entry = ptr::from_ref::<Function>(function).cast_mut().cast();
            let capsule = Bound::from_owned_ptr_or_err(python, ffi::PyCapsule_New(entry, ptr::null(), None))?;
            Bound::from_owned_ptr_or_err(
                python,
                ffi::PyCFunction_NewEx(&raw mut method.0, capsule.as_ptr(), ptr::null_mut()),
            )?
        };
        found.set_item(function.name, callable)?;
    }
    Ok(found)
}

/// What Python calls. A panic, which none should see, becomes an exception.
unsafe extern "C" fn call(
    capsule: *mut ffi::PyObject,
    arguments: *mut *mut ffi::PyObject,
    count: ffi::Py_ssize_t,
) -> *mut ffi::PyObject {
    // SAFETY: Python calls with its lock held, the capsule the callable was made with, and `count` arguments.
    unsafe {
        let python = Python::assume_attached();
        let answer = catch_unwind(AssertUnwindSafe(|| answered(python, capsule, arguments, count)));
        match answer.unwrap_or_else(|_| Err(PyRuntimeError::new_err("internal error"))) {
            Ok(object) => object,
            Err(error) => {
                error.restore(python);
                ptr::null_mut()
            }
        }
    }
}

unsafe fn answered(
    python: Python<'_>,
    capsule: *mut ffi::PyObject,
    arguments: *mut *mut ffi::PyObject,
    count: ffi::Py_ssize_t,
) -> PyResult<*mut ffi::PyObject> {
    // SAFETY: as for `call`.
    let function: &Function = unsafe { &*ffi::PyCapsule_GetPointer(capsule, ptr::null()).cast() };
    let mut given = [0.0; MOST_OPERANDS];
    let mut answer = [0.0; MOST_OPERANDS];
    let count = usize::try_from(count).unwrap_or(usize::MAX);
    let (Some(given), Some(answer)) = (given.get_mut(..count), answer.get_mut(..function.outputs.len()))
    else {
        return Ok(python.None().into_ptr());
    };
    for (index, value) in given.iter_mut().enumerate() {
        // SAFETY: `index` is below the count of arguments.
        match unsafe { number(python, *arguments.add(index)) } {
            Some(number) => *value = number,
            // SAFETY: as above.
            None => return unsafe { no_number(python, function, arguments, count) },
        }
    }
    (function.run)(given, answer).map_err(|error| raised(python, &error))?;
    match answer {
        // SAFETY: a new float, owned by the caller.
        [single] => Ok(unsafe { ffi::PyFloat_FromDouble(*single) }),
        several => Ok(PyTuple::new(python, several.iter())?.into_ptr()),
    }
}

/// None, for NumPy to take the arguments as arrays; it would take a truth value for 1 or 0, so that one is refused here.
#[cold]
unsafe fn no_number(
    python: Python<'_>,
    function: &Function,
    arguments: *mut *mut ffi::PyObject,
    count: usize,
) -> PyResult<*mut ffi::PyObject> {
    for (index, name) in function.inputs.iter().enumerate().take(count) {
        // SAFETY: `index` is below the count of arguments; the objects are borrowed from Python for the call.
        let given = unsafe { Bound::from_borrowed_ptr(python, *arguments.add(index)) };
        let of_numpy =
            NUMPY_BOOL.get().is_some_and(|truth| given.is_instance(truth.bind(python)).unwrap_or(false));
        if of_numpy || given.is_instance_of::<PyBool>() {
            return Err(PyTypeError::new_err(format!("{name} must be a real number, not bool")));
        }
    }
    Ok(python.None().into_ptr())
}

/// The value of a float, an int or a real scalar of NumPy; none for anything else.
unsafe fn number(python: Python<'_>, object: *mut ffi::PyObject) -> Option<f64> {
    // SAFETY: the object is borrowed from Python for the call.
    unsafe {
        if ffi::PyFloat_Check(object) == 0
            && (ffi::PyLong_Check(object) == 0 || ffi::PyBool_Check(object) != 0)
        {
            let real = NUMPY_REAL.get()?;
            if ffi::PyObject_IsInstance(object, real.as_ptr()) != 1 {
                ffi::PyErr_Clear();
                return None;
            }
        }
        let value = ffi::PyFloat_AsDouble(object);
        // An int beyond a float is left to NumPy to refuse.
        if value == -1.0 && PyErr::take(python).is_some() { None } else { Some(value) }
    }
}
