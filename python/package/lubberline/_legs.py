"""Path-and-terminator legs of ARINC 424, and the path over the ground that a sequence of them gives."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from types import MappingProxyType
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from . import _native
from ._call import number, whole_wind
from ._leg_codes import no_more_than_it_takes, with_its_side
from ._wind_levels import WindLevels, each_level


#: What is given by a word, and what by a truth value.
_WORDS = ("timed", "reversal")
_SWITCHES = ("fly_over", "to_right")


class Leg:
    """One leg: the two letters of ARINC 424, and the numbers it needs.

    Parameters
    ----------
    code : str
        How the path is flown and what ends it: "IF", "TF", "CF", "DF", "AF", "RF", "FA", "FC", "FD", "FM", "CA", "CD", "CI", "CR",
        "VA", "VD", "VI", "VM", "VR", "HA", "HF", "HM" or "PI".
    **numbers
        `fix_latitude_deg`, `fix_longitude_deg` (all but C and V legs, and CF); `fly_over` (the fix that ends it is flown over, not by);
        `course_deg` (course or heading, true or, where it is flown with a magnetic variation, magnetic; of a racetrack the inbound,
        of a procedure turn the outbound course); `altitude_ft` (FA, CA, VA, HA); `distance_nm` (of FC and PI; the DME reading of FD,
        CD, VD); `center_latitude_deg`, `center_longitude_deg`, `center_elevation_ft`, `center_declination_deg` (the station, or the
        centre of RF); `radial_deg` (CR, VR, from the station's north); `outbound_time_s` (of a racetrack); `to_right` (an arc goes
        clockwise, a procedure turn first turns right: AF, RF and PI need it; a racetrack turns right, the standard side, if it is
        left out); `timed` (the leg of a racetrack that is timed, or whose length is given: "inbound", "outbound" from abeam the fix or wings level, whichever is later, or "outbound_from_level",
        the default); `hold_distance_nm` (the length of that leg in place of its time); `hold_dme_nm` (the DME reading of the station
        at which a racetrack's turn inbound begins); `reversal` (of PI: "45_180", the default, or "80_260"); `off_time_s` (of the
        45/180, from its first turn to its second, 60 by default).

    Raises
    ------
    TypeError
        What the leg has no use for, such as a course of TF or the `distance_nm` of a racetrack: the message names it, and what is allowed. NaN
        is as if it were left out. An arc or a procedure turn without its side.
    NavigationError
        A code, or a word for `timed` or `reversal`, that is none.

    Examples
    --------
    >>> import lubberline
    >>> lubberline.Leg("TF", fix_latitude_deg=60.5, fix_longitude_deg=-10.0)
    Leg('TF', fix_latitude_deg=60.5, fix_longitude_deg=-10.0)
    """

    __slots__ = ("code", "numbers")
    code: str
    numbers: Mapping[str, float | bool | str]

    def __init__(self, code: str, **numbers: float | bool | str) -> None:
        checked = {name: _given(name, value) for name, value in numbers.items()}
        _native.check_leg(code, checked)
        no_more_than_it_takes(code, checked)
        with_its_side(code, checked)
        object.__setattr__(self, "code", code)
        object.__setattr__(self, "numbers", MappingProxyType(checked))

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"a leg does not change: make another with another {name}")

    def __reduce__(self) -> tuple[Any, ...]:
        return partial(Leg, self.code, **self.numbers), ()

    def __repr__(self) -> str:
        return f"Leg({', '.join([repr(self.code), *(f'{name}={value!r}' for name, value in self.numbers.items())])})"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Leg) and (self.code, self.numbers) == (other.code, other.numbers)

    def __hash__(self) -> int:
        return hash((self.code, tuple(sorted(self.numbers.items()))))


def _given(name: str, value: Any) -> float | bool | str:
    """What is given of a leg, of the type that it has by its name."""
    if name in _SWITCHES:
        if not isinstance(value, (bool, np.bool_)):
            raise TypeError(f"{name} must be True or False, not {type(value).__name__}")
        return bool(value)
    if name in _WORDS:
        if not isinstance(value, str):
            raise TypeError(f"{name} must be a text, not {type(value).__name__}")
        return value
    return number(name, value)


class PathSegment(NamedTuple):
    """A part of the path over the ground. Directions are true."""

    leg: int
    """The leg it belongs to, counted from zero; a turn belongs to the leg it leads onto."""
    kind: str
    """What it is: "straight", "turn" or "arc"."""
    start_latitude_deg: float
    start_longitude_deg: float
    start_course_deg: float
    end_latitude_deg: float
    end_longitude_deg: float
    end_course_deg: float
    end_altitude_ft: float
    length_nm: float
    duration_s: float
    end_time_s: float
    """Time at its end since the first fix."""
    start_heading_deg: float
    start_groundspeed_kt: float
    end_heading_deg: float
    end_groundspeed_kt: float
    bank_deg: float
    """The greatest bank of a turn, or what keeps to an arc; 0 along a straight."""
    heading_change_deg: float
    """Change of heading of a turn, right positive; 0 else."""


@dataclass(frozen=True, eq=False, repr=False)
class GroundPath:
    """A sequence of legs as it is flown over the ground; made by `fly_legs`."""

    segments: tuple[PathSegment, ...]
    """Its parts, in order; the end of each is the start of the next."""
    latitude_deg: NDArray[np.float64]
    """Latitudes of points along it."""
    longitude_deg: NDArray[np.float64]
    """Their longitudes."""

    @property
    def length_nm(self) -> float:
        """Its length over the ground."""
        return sum(segment.length_nm for segment in self.segments)

    @property
    def duration_s(self) -> float:
        """How long it takes."""
        return self.segments[-1].end_time_s if self.segments else 0.0

    @property
    def __geo_interface__(self) -> dict[str, Any]:
        """The path as a GeoJSON geometry (RFC 7946): longitude before latitude, cut where it crosses the antimeridian."""
        parts: list[list[tuple[float, float]]] = [[]]
        for longitude, latitude in zip(self.longitude_deg.tolist(), self.latitude_deg.tolist()):
            if parts[-1] and abs(longitude - parts[-1][-1][0]) > 180.0:
                before, below = parts[-1][-1]
                edge = math.copysign(180.0, before)
                share = (edge - before) / (longitude + math.copysign(360.0, before) - before)
                crossing = below + share * (latitude - below)
                parts[-1].append((edge, crossing))
                parts.append([(-edge, crossing)])
            parts[-1].append((longitude, latitude))
        if len(parts) == 1:
            return {"type": "LineString", "coordinates": parts[0]}
        return {"type": "MultiLineString", "coordinates": parts}

    def __eq__(self, other: object) -> bool:
        return (
            isinstance(other, GroundPath)
            and self.segments == other.segments
            and np.array_equal(self.latitude_deg, other.latitude_deg)
            and np.array_equal(self.longitude_deg, other.longitude_deg)
        )

    def __hash__(self) -> int:
        return hash((self.segments, self.latitude_deg.size))

    def __repr__(self) -> str:
        return f"GroundPath({len(self.segments)} segments, {self.length_nm:.3f} NM, {self.duration_s:.1f} s)"


def fly_legs(
    legs: Sequence[Leg],
    *,
    true_airspeed_kt: float,
    altitude_ft: float,
    wind_from_deg: float | None = None,
    wind_speed_kt: float | None = None,
    bank_limit_deg: float = 25.0,
    turn_rate_limit_deg_per_s: float = 3.0,
    roll_rate_deg_per_s: float = 5.0,
    climb_fpm: float = 0.0,
    intercept_angle_deg: float = 30.0,
    manual_distance_nm: float = 10.0,
    spacing_nm: float = 0.5,
    wind_altitude_ft: float | None = None,
    upper_wind_altitude_ft: float | None = None,
    upper_wind_from_deg: float | None = None,
    upper_wind_speed_kt: float | None = None,
    wind_levels: WindLevels | None = None,
    magnetic_variation_deg: float | None = None,
) -> GroundPath:
    """Fly a sequence of path-and-terminator legs over the ellipsoid in a steady wind.

    Each leg is joined from wherever the one before has left the aircraft and followed to its end, less the lead of the turn onto the
    next. Straight parts are geodesics of WGS-84, arcs are circles about their centre, turns are flown with their roll.

    Parameters
    ----------
    legs : sequence of Leg
        The legs; the first says where the sequence begins: IF, or a leg from a fix.
    true_airspeed_kt, altitude_ft : float
        True airspeed, and altitude at the first fix.
    wind_from_deg, wind_speed_kt : float, optional
        Where the wind blows from, true, and its speed; calm air if both are left out.
    bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s : float
        Limits of the turns.
    climb_fpm : float
        Rate of climb, negative to descend.
    intercept_angle_deg : float
        The angle at which a course is intercepted from beside it.
    manual_distance_nm : float
        How far a leg is drawn that is ended by hand.
    spacing_nm : float
        The most that two points of the path are apart, in a turn on the average: above 0; infinite for the ends of its segments only.
    wind_altitude_ft, upper_wind_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt : float, optional
        Pressure altitude of the wind given above, and a wind at a higher one: each leg is then flown in the wind at the altitude
        where it begins.
    wind_levels : sequence of WindLevel or of three numbers, or array of three columns, optional
        Winds at one to a thousand levels in ascending order, in place of the winds above: pressure altitude in feet, direction it blows
        from, speed in knots. Each leg is flown in the wind at the altitude where it begins.
    magnetic_variation_deg : float, optional
        Magnetic variation that the courses and headings of the legs are given with, east positive, -180 to 180: they are magnetic then,
        and else true. Winds and what comes out are true all the same; radials are counted from their station's north.

    Returns
    -------
    GroundPath

    Raises
    ------
    NavigationError
        A value outside its range, one that a leg needs and lacks, or a leg that cannot be flown: the message says which and why.

    Examples
    --------
    >>> import lubberline
    >>> fixes = [("IF", 60.0, -10.0), ("TF", 60.5, -10.0), ("TF", 60.5, -9.0)]
    >>> legs = [lubberline.Leg(code, fix_latitude_deg=latitude, fix_longitude_deg=longitude) for code, latitude, longitude in fixes]
    >>> path = lubberline.fly_legs(legs, true_airspeed_kt=250.0, altitude_ft=9000.0)
    >>> [segment.kind for segment in path.segments]
    ['straight', 'turn', 'straight']

    A magnetic course of 95 degrees, where the variation is 5 degrees west:

    >>> climb = [legs[0], lubberline.Leg("CA", course_deg=95.0, altitude_ft=12_000.0)]
    >>> path = lubberline.fly_legs(climb, true_airspeed_kt=250.0, altitude_ft=9000.0, climb_fpm=1000.0, magnetic_variation_deg=-5.0)
    >>> f"{path.segments[0].start_course_deg:.0f}"
    '90'
    """
    conditions = _conditions(
        true_airspeed_kt=true_airspeed_kt,
        wind_from_deg=wind_from_deg,
        wind_speed_kt=wind_speed_kt,
        bank_limit_deg=bank_limit_deg,
        turn_rate_limit_deg_per_s=turn_rate_limit_deg_per_s,
        roll_rate_deg_per_s=roll_rate_deg_per_s,
        altitude_ft=altitude_ft,
        climb_fpm=climb_fpm,
        intercept_angle_deg=intercept_angle_deg,
        manual_distance_nm=manual_distance_nm,
        levels=(wind_altitude_ft, upper_wind_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt),
        wind_levels=wind_levels,
        magnetic_variation_deg=magnetic_variation_deg,
    )
    spelled = [(leg.code, dict(leg.numbers)) for leg in legs]
    flown, points = _native.fly_legs(spelled, conditions, number("spacing_nm", spacing_nm))
    segments = tuple(PathSegment(leg, kind, *start, *end, *rest, *flying, *turn) for leg, kind, start, end, rest, flying, turn in flown)
    columns: NDArray[np.float64] = np.array(points, dtype=float).reshape(-1, 2)
    return GroundPath(segments, columns[:, 0], columns[:, 1])


_UPPER = ("wind_altitude_ft", "upper_wind_altitude_ft", "upper_wind_from_deg", "upper_wind_speed_kt")


def _conditions(
    *,
    true_airspeed_kt: float,
    wind_from_deg: float | None,
    wind_speed_kt: float | None,
    levels: tuple[float | None, ...],
    wind_levels: WindLevels | None,
    magnetic_variation_deg: float | None,
    **numbers: float,
) -> tuple[Any, ...]:
    """What legs are flown with, as the native functions take it: numbers, the upper wind, the winds by level, the variation."""
    if wind_levels is not None and any(value is not None for value in (wind_from_deg, wind_speed_kt, *levels)):
        raise TypeError("wind_levels and another wind are both given; allowed: one of them")
    return (
        [
            number("true_airspeed_kt", true_airspeed_kt),
            *whole_wind(wind_from_deg, wind_speed_kt),
            *(number(name, value) for name, value in numbers.items()),
        ],
        [math.nan if value is None else number(name, value) for name, value in zip(_UPPER, levels)],
        None if wind_levels is None else each_level(wind_levels),
        None if magnetic_variation_deg is None else number("magnetic_variation_deg", magnetic_variation_deg),
    )
