"""The course change at a station: where to begin the turn, and what it does."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, fields
from typing import Any, Literal, NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from . import _native
from ._call import number, one_chosen, whole_wind
from ._table import html_table, shown

_SIDES = {"shortest": 0, "left": -1, "right": 1}


@dataclass(frozen=True)
class FlyOver:
    """What flying over the station before turning would cost, against the turn begun in time."""

    intercept_angle_deg: float
    """The intercept angle flown: the chosen one, or the largest for which there is room."""
    greatest_overshoot_nm: float
    """Greatest distance from the outbound course on its outer side."""
    established_past_fix_nm: float
    """Distance past the station at which the aircraft is established on the outbound course."""
    extra_distance_nm: float
    """Distance flown in addition."""
    extra_time_s: float
    """Time flown in addition."""
    duration_s: float
    """Time from over the station until established."""

    def _repr_html_(self) -> str:
        return html_table("Flying over first", {field.name: getattr(self, field.name) for field in fields(self)})


class TurnPoint(NamedTuple):
    """A place in the turn."""

    bearing_from_fix_deg: Any
    """Bearing from the station; NaN over it."""
    distance_nm: Any
    """Distance from the station over the ground."""
    heading_deg: Any
    """Heading."""
    bank_deg: Any
    """Bank, right positive."""


@dataclass(frozen=True, repr=False)
class CourseChange:
    """A course change at a station, flown as a turn begun before it; made by `course_change`."""

    lead_nm: float
    """Distance before the station at which roll-in begins; negative past it."""
    dme_at_roll_in_nm: float
    """The DME reading there: the one to begin the turn at."""
    radial_at_roll_in_deg: float
    """The bearing from the station there: the radial, if the north is the station's."""
    past_fix_at_roll_out_nm: float
    """Distance past the station, along the outbound course, at which the wings are level again."""
    dme_at_roll_out_nm: float
    """The DME reading there."""
    radial_at_roll_out_deg: float
    """The bearing from the station there."""
    duration_s: float
    """From roll-in to roll-out."""
    turn_length_nm: float
    """Distance over the ground from roll-in to roll-out."""
    bank_deg: float
    """The greatest bank."""
    radius_nm: float
    """Radius through the air at that bank; infinite if there is no turn."""
    governed_by: str | None
    """What governs the bank: "bank_limit", "turn_rate_limit", "roll_rate" or "no_turn"; None if a number given is NaN."""
    heading_before_deg: float
    """Heading that holds the inbound course."""
    heading_after_deg: float
    """Heading that holds the outbound course."""
    heading_change_deg: float
    """Heading to turn through, right positive."""
    groundspeed_before_kt: float
    """Groundspeed on the inbound course."""
    groundspeed_after_kt: float
    """Groundspeed on the outbound course."""
    wind_correction_before_deg: float
    """Heading less course on the inbound course, right positive."""
    wind_correction_after_deg: float
    """Heading less course on the outbound course, right positive."""
    closest_approach_nm: float
    """Least distance from the station over the ground."""
    cone_radius_nm: float
    """Radius of the cone of confusion at the height."""
    enters_cone: bool | None
    """Whether the aircraft comes closer than that; None if a number given is NaN."""
    fly_over: FlyOver
    """What flying over the station before turning would cost."""
    settings: tuple[Any, ...]
    """What was asked, in the order of the parameters of `course_change`, the side of the turn as its code."""

    def at(self, time_s: ArrayLike) -> TurnPoint:
        """Where the aircraft is a time after roll-in began; on the inbound course before, on the outbound course after the turn.

        Examples
        --------
        >>> import lubberline
        >>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0)
        >>> f"{change.at(change.duration_s).distance_nm - change.past_fix_at_roll_out_nm:.6f}"
        '0.000000'
        """
        return self._places(_native.course_change_at, time_s)

    def fly_over_at(self, time_s: ArrayLike) -> TurnPoint:
        """Where the aircraft is a time after it passed the station, if it flies over it before turning; NaN if the wind leaves no way back.

        Examples
        --------
        >>> import lubberline
        >>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0)
        >>> f"{change.fly_over_at(change.fly_over.duration_s).distance_nm - change.fly_over.established_past_fix_nm:.6f}"
        '0.000000'
        """
        return self._places(_native.fly_over_at, time_s)

    def _places(self, at: Callable[[tuple[Any, ...], float], tuple[float, float, float, float]], time_s: ArrayLike) -> TurnPoint:
        if np.ndim(time_s) == 0:
            return TurnPoint._make(at(self.settings, number("time_s", time_s)))
        times: NDArray[np.float64] = np.asarray(time_s, dtype=float)
        points = np.array([at(self.settings, float(time)) for time in times.ravel()])
        return TurnPoint._make(column.reshape(times.shape) for column in points.reshape(-1, 4).T)

    def _rows(self) -> dict[str, Any]:
        return {field.name: getattr(self, field.name) for field in fields(self) if field.name not in ("fly_over", "settings")}

    def __repr__(self) -> str:
        parts = (f"{name}={shown(value) if isinstance(value, float) else repr(value)}" for name, value in self._rows().items())
        return f"CourseChange({', '.join(parts)})"

    def _repr_html_(self) -> str:
        return html_table("Course change", self._rows()) + self.fly_over._repr_html_()


def course_change(
    inbound_course_deg: float,
    outbound_course_deg: float,
    *,
    true_airspeed_kt: float,
    wind_from_deg: float | None = None,
    wind_speed_kt: float | None = None,
    bank_limit_deg: float = 25.0,
    turn_rate_limit_deg_per_s: float = 3.0,
    roll_rate_deg_per_s: float = 5.0,
    height_above_station_ft: float = 0.0,
    turn: Literal["shortest", "left", "right"] = "shortest",
    intercept_angle_deg: float = 30.0,
    cone_half_angle_deg: float = 50.0,
) -> CourseChange:
    """Where to begin the turn at a station so as to roll out on the outbound course, and what that turn does.

    The displacement of the turn through the air (roll in, hold the bank, roll out wings level) plus wind times duration is a
    vector D; with u and v the unit vectors of the inbound and outbound course, the lead is `(D x v) / (u x v)`. The reading is the
    slant range from the station to the point at that lead.

    Parameters
    ----------
    inbound_course_deg, outbound_course_deg : float
        Courses flown to and from the station, any finite numbers, against one north (which may be the station's).
    true_airspeed_kt : float
        True airspeed, above 0 to 5000.
    wind_from_deg, wind_speed_kt : float, optional
        Where the wind blows from, against the same north, and its speed, 0 to 1000; calm air if both are left out.
    bank_limit_deg : float
        Greatest bank, above 0 below 90.
    turn_rate_limit_deg_per_s : float
        Greatest rate of turn, above 0.
    roll_rate_deg_per_s : float
        Rate of roll, above 0; infinite for an instant roll.
    height_above_station_ft : float
        Height above the station's antenna, -60 000 to 400 000.
    turn : {"shortest", "left", "right"}
        Which way to turn.
    intercept_angle_deg : float
        Angle at which the outbound course would be intercepted after flying over, above 0 to 90.
    cone_half_angle_deg : float
        Half-angle of the cone of confusion from the vertical, above 0 below 90.

    Returns
    -------
    CourseChange
        All NaN if any number given is NaN, and None for `governed_by` and `enters_cone`.

    Raises
    ------
    NavigationError
        A value outside its range, a reversal, or a wind that the airspeed cannot hold.

    Notes
    -----
    Accuracy: 1.5e-5 NM against a fine integration over the ellipsoid for leads to 10 NM, 1.2e-4 NM to 20 NM.

    Source: derived from the equilibrium of a coordinated turn; in still air with an instant roll the distance of turn anticipation of
    ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.

    Examples
    --------
    >>> import lubberline
    >>> change = lubberline.course_change(
    ...     40.0, 110.0, true_airspeed_kt=430.0, wind_from_deg=270.0, wind_speed_kt=60.0, height_above_station_ft=33_000.0
    ... )
    >>> f"{change.dme_at_roll_in_nm:.2f}"
    '7.67'
    >>> change.governed_by
    'bank_limit'
    """
    settings = (
        number("inbound_course_deg", inbound_course_deg),
        number("outbound_course_deg", outbound_course_deg),
        number("true_airspeed_kt", true_airspeed_kt),
        *whole_wind(wind_from_deg, wind_speed_kt),
        number("bank_limit_deg", bank_limit_deg),
        number("turn_rate_limit_deg_per_s", turn_rate_limit_deg_per_s),
        number("roll_rate_deg_per_s", roll_rate_deg_per_s),
        number("height_above_station_ft", height_above_station_ft),
        number("intercept_angle_deg", intercept_angle_deg),
        number("cone_half_angle_deg", cone_half_angle_deg),
        one_chosen(_SIDES, "turn", turn),
    )
    answer, over = _native.course_change(settings)
    return CourseChange(**answer, fly_over=FlyOver(**over), settings=settings)
