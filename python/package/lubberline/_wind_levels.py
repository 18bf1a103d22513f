"""Winds at any number of levels, for what is flown through them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any, NamedTuple, TypeAlias

import numpy as np
from numpy.typing import NDArray

from ._call import number


class WindLevel(NamedTuple):
    """The wind at one level.

    Examples
    --------
    >>> import lubberline
    >>> lubberline.WindLevel(9000.0, 260.0, 35.0)
    WindLevel(pressure_altitude_ft=9000.0, wind_from_deg=260.0, wind_speed_kt=35.0)
    """

    pressure_altitude_ft: float
    """Pressure altitude of the level, above that of the level before it."""
    wind_from_deg: float
    """Where its wind blows from, true."""
    wind_speed_kt: float
    """Speed of its wind."""


#: Levels in ascending order: of each pressure altitude, direction and speed.
WindLevels: TypeAlias = Iterable[WindLevel | Sequence[float] | NDArray[Any]] | NDArray[Any]


def each_level(given: WindLevels) -> list[list[float]]:
    """The numbers of each level; what is no level is named by its place, counted from one."""
    if isinstance(given, np.ndarray) and given.ndim == 0:
        raise TypeError("wind_levels must be a sequence of levels, not one number")
    levels = []
    for place, level in enumerate(given, start=1):
        try:
            values = tuple(level)
        except TypeError:
            values = ()
        if len(values) != 3 or isinstance(level, (str, bytes)):
            raise TypeError(f"wind level {place} must be three numbers: {', '.join(WindLevel._fields)}")
        levels.append([number(f"wind level {place}: {name}", value) for name, value in zip(WindLevel._fields, values)])
    return levels
