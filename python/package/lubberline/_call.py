"""How the named functions reach the native ones."""

from typing import Any

import numpy as np

from . import _native, ufunc

#: Native functions on plain numbers; they give None if an argument is no plain number.
scalars: dict[str, Any] = _native.scalars


def chosen(codes: dict[str, int], parameter: str, value: Any) -> Any:
    """The code of a word; anything else is left to the function itself."""
    if isinstance(value, str):
        try:
            return codes[value]
        except KeyError:
            allowed = ", ".join(repr(word) for word in codes)
            error = _native.NavigationError(f"{parameter} is {value!r}; allowed: {allowed}")
            error.code, error.parameter = -106, parameter
            raise error from None
    return value


def many(function: str, outputs: tuple[str, ...], arguments: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
    """All outputs of a function: in one pass over plain arrays, one by one over what only wraps them."""
    if all(isinstance(argument, (np.ndarray, np.generic, float, int, list, tuple)) for argument in arguments):
        return _native.many[function](*arguments, **kwargs)
    return [getattr(ufunc, f"{function}_{output}")(*arguments, **kwargs) for output in outputs]
