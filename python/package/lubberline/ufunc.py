"""Every function as NumPy functions of one output each.

A function of several outputs has one NumPy function for each, named after both: `geodesic_inverse_distance_nm`. They broadcast, take
`out` and `where`, and work on whatever speaks NumPy's protocol. A value refused becomes NaN with NumPy's `invalid` warning, as
`numpy.errstate` asks; a NaN given comes back in silence. Choices are given by their codes.
"""

import functools
from typing import Any

from . import _native

__all__ = sorted(_native.ufuncs)

globals().update(_native.ufuncs)


@functools.cache
def some(function: str, *outputs: str) -> Any:
    """The NumPy function that gives the named outputs of a function in one pass, in the function's own order; the others cost less
    than they would, or nothing.

    >>> seen = some("observe", "radial_deg", "dme_nm")
    >>> [f"{answer:.2f}" for answer in seen(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31_000.0)]
    ['49.60', '21.46']
    """
    return _native.some(function, list(outputs))
