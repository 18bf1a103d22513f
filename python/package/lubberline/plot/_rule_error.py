"""How far the mental arithmetic of a lead is from exact, over speed and height."""

from __future__ import annotations

import numpy as np
from matplotlib.axes import Axes
from matplotlib.colors import LinearSegmentedColormap, TwoSlopeNorm

from .._functions import rule_lead_error
from . import _look

#: Late is warm and dangerous, early is cold; the middle is white, and both ends are dark.
_MAP = LinearSegmentedColormap.from_list(
    "late_early", ["#7a2d04", _look.COLORS["late"], "#f8e3d3", "#ffffff", "#dcebf5", _look.COLORS["early"], _look.COLORS["path"]]
)


def rule_error(
    course_change_deg: float = 90.0,
    *,
    greatest_speed_kt: float = 500.0,
    greatest_height_ft: float = 40_000.0,
    tolerance_nm: float = 0.5,
    span_nm: float = 4.0,
    ax: Axes | None = None,
) -> Axes:
    """How much too early (positive) or late (negative) the DME reading of the rule of thumb is, over airspeed and height, in calm air.

    The rule adds a third of a mile for each 60 kt, in proportion to the change of course, to the height in miles; the exact reading is that of a turn
    with 25 degrees of bank, no faster than 3 degrees per second (`lubberline.rule_lead_error`).

    Parameters
    ----------
    course_change_deg : float
        The change of course, more than 0 and less than 180.
    greatest_speed_kt, greatest_height_ft : float
        How far the axes reach, from 80 kt and from the station's height.
    tolerance_nm : float
        What counts as good enough: hatched.
    span_nm : float
        Where the colours end.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Raises
    ------
    ValueError
        A change of course outside its range.

    Examples
    --------
    >>> import lubberline.plot
    >>> ax = lubberline.plot.rule_error(90.0)
    >>> ax.get_xlabel(), ax.get_ylabel()
    ('true airspeed (kt)', 'height above the station (1000 ft)')
    """
    if not 0.0 < course_change_deg < 180.0:
        raise ValueError(f"course_change_deg is {course_change_deg:g} deg; allowed: more than 0 to less than 180 deg")
    ax = _look.axes(ax, size=(5.6, 4.8))
    speeds_kt, heights_ft = np.linspace(80.0, greatest_speed_kt, 106), np.linspace(0.0, greatest_height_ft, 101)
    error_nm = rule_lead_error(0.0, course_change_deg, speeds_kt, heights_ft[:, None]).reading_error_nm
    at = (speeds_kt, heights_ft / 1000.0, error_nm)
    norm = TwoSlopeNorm(0.0, -span_nm, span_nm)
    ax.contourf(*at, levels=np.linspace(-span_nm, span_nm, 49), cmap=_MAP, norm=norm, extend="both")
    whole = np.arange(-12.0, 12.5, 1.0)
    lines = ax.contour(*at, levels=whole[whole != 0.0], colors=_look.COLORS["ink"], linewidths=0.6, negative_linestyles="dashed")
    ax.clabel(lines, fmt=lambda value: f"{value:+.0f}", fontsize=8)
    ax.contour(*at, levels=[0.0], colors=_look.COLORS["ink"], linewidths=1.8)
    good = ax.contourf(*at, levels=[-tolerance_nm, tolerance_nm], colors="none", hatches=["////"])
    good.set(edgecolor="#00000055", linewidth=0.0)
    ax.set_xlabel("true airspeed (kt)")
    ax.set_ylabel("height above the station (1000 ft)")
    ax.set_title(f"change of {course_change_deg:.0f}\N{DEGREE SIGN}", fontsize=10)
    return ax
