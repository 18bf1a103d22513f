"""How the named functions and the objects reach the native ones."""

from collections.abc import Mapping
from numbers import Integral, Real
from typing import Any, TypeAlias

import numpy as np

from . import _native, ufunc

#: What counts as a plain number.
Number: TypeAlias = float | np.floating[Any] | np.integer[Any]

#: Native functions on plain numbers; they give None if an argument is no plain number.
scalars: dict[str, Any] = _native.scalars

#: Makes a named tuple of a tuple, without the copy and the check of `_make`.
named = tuple.__new__

_BARE = (np.ndarray, np.generic, float, int, list, tuple)


def number(parameter: str, value: Any) -> float:
    """A setting as a float; a text, a truth value, a complex number or an array is none."""
    if isinstance(value, np.ndarray) and value.ndim == 0:
        value = value[()]
    if isinstance(value, bool) or not isinstance(value, Real):
        raise TypeError(f"{parameter} must be a real number, not {type(value).__name__}")
    return float(value)


def whole_wind(wind_from_deg: Any, wind_speed_kt: Any, neither: str = "calm air") -> tuple[float, float]:
    """The wind of two settings as floats, calm if both are left out; one without the other is no wind."""
    if wind_from_deg is None or wind_speed_kt is None:
        return calm(wind_from_deg, wind_speed_kt, neither)
    return number("wind_from_deg", wind_from_deg), number("wind_speed_kt", wind_speed_kt)


def calm(wind_from_deg: Any, wind_speed_kt: Any, neither: str = "calm air") -> tuple[float, float]:
    """Calm air, if both halves of the wind are left out; one without the other is no wind. `neither` says what both left out mean."""
    if wind_from_deg is None and wind_speed_kt is None:
        return 0.0, 0.0
    given, missing = ("wind_from_deg", "wind_speed_kt") if wind_speed_kt is None else ("wind_speed_kt", "wind_from_deg")
    raise TypeError(f"{given} is given without {missing}; allowed: both of them, or neither for {neither}")


def mapping(parameter: str, value: Any) -> Mapping[str, Any]:
    """A mapping as it is."""
    if not isinstance(value, Mapping):
        raise TypeError(f"{parameter} must be a mapping, not {type(value).__name__}")
    return value


def chosen(codes: dict[str, int], parameter: str, value: Any) -> Any:
    """The code of a word, or of each in an array; what else is no word, but a truth value, is left to the function itself."""
    if isinstance(value, str):
        try:
            return codes[value]
        except KeyError:
            allowed = ", ".join(repr(word) for word in codes)
            error = _native.NavigationError(f"{parameter} is {value!r}; allowed: {allowed}")
            error.code, error.parameter = _native.UNKNOWN_CHOICE, parameter
            raise error from None
    if isinstance(value, (list, tuple, np.ndarray, bool, np.bool_)):
        array = np.asarray(value)
        if array.dtype.kind == "b":
            raise TypeError(f"{parameter} must be one of {', '.join(map(repr, codes))}, not bool")
        if array.dtype.kind in "UO":
            each = [chosen(codes, parameter, one) for one in array.ravel().tolist()]
            return np.array(each, dtype=float).reshape(array.shape)
    return value


def one_chosen(codes: dict[str, int], parameter: str, value: Any) -> int:
    """The code of a word, or a code."""
    code = chosen(codes, parameter, value)
    if not isinstance(code, Integral):
        raise TypeError(f"{parameter} must be one of {', '.join(map(repr, codes))}, not {type(value).__name__}")
    return int(code)


def many(function: str, outputs: tuple[str, ...], arguments: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
    """All outputs of a function: in one pass over plain arrays, one by one over what only wraps them."""
    out = kwargs.get("out")
    if out is not None and (not isinstance(out, tuple) or len(out) != len(outputs)):
        raise TypeError(f"out must be a tuple of {len(outputs)} arrays, for {', '.join(outputs)}")
    if all(isinstance(argument, _BARE) for argument in arguments):
        return _native.many[function](*arguments, **kwargs)
    kwargs.pop("out", None)
    one_by_one = [getattr(ufunc, f"{function}_{output}") for output in outputs]
    if out is None:
        return [one(*arguments, **kwargs) for one in one_by_one]
    return [one(*arguments, out=given, **kwargs) for one, given in zip(one_by_one, out, strict=True)]
