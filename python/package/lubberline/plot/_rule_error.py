"""Where a turn begun by the mental arithmetic of a lead really ends, over speed and height, and where that is safe."""

from __future__ import annotations

from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.colors import BoundaryNorm, LinearSegmentedColormap, ListedColormap
from matplotlib.patches import Rectangle
from matplotlib.patheffects import withStroke

from .._functions import cone_radius_nm, rule_lead_flown
from . import _look

#: What is safe is all but white; beyond it late is warm and dangerous, early is cold, both darker the worse.
_EARLY = LinearSegmentedColormap.from_list("early", [_look.COLORS["path"], _look.COLORS["early"], "#bcd9ea"])
_LATE = LinearSegmentedColormap.from_list("late", ["#f3c9a5", _look.COLORS["late"], "#b4500f", "#662300"])
_SAFE_SHORT, _SAFE_BEYOND = "#f1f7fb", "#fdf5ee"

_ON_COURSE: dict[str, Any] = {"linewidth": 2.4, "linestyle": "solid"}
_EDGE: dict[str, Any] = {"linewidth": 1.3, "linestyle": "dashed"}
_CONE: dict[str, Any] = {"linewidth": 1.5, "linestyle": "dotted"}


def rule_error(
    course_change_deg: float = 90.0,
    *,
    greatest_speed_kt: float = 600.0,
    greatest_height_ft: float = 45_000.0,
    allowed_beyond_nm: float = 0.5,
    allowed_short_nm: float = 1.0,
    key: bool = True,
    ax: Axes | None = None,
) -> Axes:
    """How far beyond (positive) or short of (negative) the outbound course a turn rolls out that the rule of thumb begins, over airspeed and height.

    The rule adds a third of a mile for each 60 kt, in proportion to the change of course, to the height in miles, and begins the turn at that DME
    reading. The turn is flown (`lubberline.rule_lead_flown`) in calm air with 25 degrees of bank, no faster than 3 degrees per second. It is safe if it
    rolls out no farther beyond and no farther short of the course than is allowed; docs/rules.md says why so far.

    Parameters
    ----------
    course_change_deg : float
        The change of course, more than 0 and less than 180.
    greatest_speed_kt, greatest_height_ft : float
        How far the axes reach, from 80 kt and from the station's height.
    allowed_beyond_nm, allowed_short_nm : float
        How far beyond and short of the course is safe, more than 0.
    key : bool
        Whether the bar of colours and the legend are drawn too; False where one of them serves several pictures.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Raises
    ------
    ValueError
        A change of course or something allowed outside its range.

    Examples
    --------
    >>> import lubberline.plot
    >>> ax = lubberline.plot.rule_error(90.0)
    >>> ax.get_xlabel(), ax.get_ylabel()
    ('true airspeed (kt)', 'height above the station (1000 ft)')
    """
    if not 0.0 < course_change_deg < 180.0:
        raise ValueError(f"course_change_deg is {course_change_deg:g} deg; allowed: more than 0 to less than 180 deg")
    for name, allowed_nm in (("allowed_beyond_nm", allowed_beyond_nm), ("allowed_short_nm", allowed_short_nm)):
        if not 0.0 < allowed_nm < np.inf:
            raise ValueError(f"{name} is {allowed_nm:g} NM; allowed: more than 0 NM")
    ax = _look.axes(ax, size=(6.4, 5.6))
    speeds_kt, heights_ft = np.linspace(80.0, greatest_speed_kt, 79), np.linspace(0.0, greatest_height_ft, 69)[:, None]
    flown = rule_lead_flown(0.0, course_change_deg, speeds_kt, heights_ft)
    at = speeds_kt, heights_ft[:, 0] / 1000.0

    early, late = allowed_short_nm * np.array([-3.0, -2.0, -1.0]), allowed_beyond_nm * np.array([1.0, 2.0, 4.0, 8.0, 16.0])
    levels = [*early, 0.0, *late]
    colors = [*_EARLY(np.linspace(0.0, 1.0, len(early))), _SAFE_SHORT, _SAFE_BEYOND, *_LATE(np.linspace(0.0, 1.0, len(late)))]
    cmap = ListedColormap(colors)
    field = ax.contourf(*at, flown.overshoot_nm, levels=levels, cmap=cmap, norm=BoundaryNorm(levels, len(colors), extend="both"), extend="both")
    safe = ax.contourf(*at, flown.overshoot_nm, levels=[-allowed_short_nm, allowed_beyond_nm], colors="none", hatches=["///"])
    safe.set(edgecolor="#00000040", linewidth=0.0)

    ink = _look.COLORS["ink"]
    inner = [one for one in levels if one not in (-allowed_short_nm, 0.0, allowed_beyond_nm)]
    steps = ax.contour(*at, flown.overshoot_nm, levels=inner, colors=ink, linewidths=0.5, linestyles="solid")
    edges = ax.contour(*at, flown.overshoot_nm, levels=[-allowed_short_nm, allowed_beyond_nm], colors=ink, **_many(_EDGE))
    ax.contour(*at, flown.overshoot_nm, levels=[0.0], colors=ink, **_many(_ON_COURSE))
    for lines in (steps, edges):
        for text in ax.clabel(lines, fmt=_signed, fontsize=8.5, colors=ink):
            text.set_path_effects([withStroke(linewidth=2.6, foreground="white")])
            across, up = ax.transAxes.inverted().transform(ax.transData.transform(text.get_position()))
            # A label on the frame is cut off.
            text.set_visible(bool(0.03 < across < 0.97 and 0.03 < up < 0.97))
    # Out of the cone by so much, at the nearer of where the turn begins and where it ends.
    nearer_nm = np.minimum(np.abs(flown.before_station_nm), np.hypot(flown.past_station_nm, flown.overshoot_nm))
    cone = ax.contour(*at, nearer_nm - cone_radius_nm(heights_ft), levels=[0.0], colors=_look.COLORS["path"], **_many(_CONE))
    cone.set_path_effects([withStroke(linewidth=3.2, foreground="white")])

    ax.set_xlabel("true airspeed (kt)")
    ax.set_ylabel("height above the station (1000 ft)")
    ax.set_title(f"change of {course_change_deg:g}\N{DEGREE SIGN}", fontsize=10)
    # Contours have no place in a legend: what stands for them there draws nothing here.
    ax.add_patch(Rectangle((speeds_kt[0], 0.0), 0.0, 0.0, facecolor="white", edgecolor="#00000080", hatch="///", label="safe where it rolls out"))
    ax.plot([], [], color=ink, label=f"edge of that: {allowed_beyond_nm:g} NM beyond, {allowed_short_nm:g} NM short", **_EDGE)
    ax.plot([], [], color=ink, label="rolls out on the course", **_ON_COURSE)
    ax.plot([], [], color=_look.COLORS["path"], label="above it, begins or ends in the cone of confusion", **_CONE)
    figure = ax.get_figure()
    if key and figure is not None:
        _look.legend(ax, columns=1)
        figure.colorbar(field, ax=ax, format=_signed).set_label("rolls out short of the course (\N{MINUS SIGN}) or beyond it (+) by (NM)")
    return ax


def _signed(value_nm: float, _: object = None) -> str:
    return f"{value_nm:+g}".replace("-", "\N{MINUS SIGN}") if value_nm else "0"


def _many(style: dict[str, Any]) -> dict[str, Any]:
    """The style of a line as contours call it."""
    return {f"{name}s": value for name, value in style.items()}
