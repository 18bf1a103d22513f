"""Every function as NumPy functions of one output each.

A function of several outputs has one NumPy function for each, named after both: `geodesic_inverse_distance_nm`. They broadcast, take
`out` and `where`, and work on whatever speaks NumPy's protocol. A value refused becomes NaN with NumPy's `invalid` warning, as
`numpy.errstate` asks; a NaN given comes back in silence. Choices are given by their codes.
"""

from . import _native

__all__ = sorted(_native.ufuncs)

globals().update(_native.ufuncs)
