"""The side view of a station: lines of equal DME, the cone of confusion, and the way of a level aircraft."""

from __future__ import annotations

import numpy as np
from matplotlib.axes import Axes

from .._functions import cone_radius_nm, ground_distance_nm, least_dme_nm
from . import _look

_FEET_PER_MILE = 1852.0 / 0.3048


def profile(
    height_ft: float, *, cone_half_angle_deg: float = 50.0, reach_nm: float | None = None, ident: str = "", ax: Axes | None = None
) -> Axes:
    """A station and the air above it from the side, with one scale both ways: DME measures along the slant.

    Parameters
    ----------
    height_ft : float
        Height of the aircraft above the station's antenna, more than 0.
    cone_half_angle_deg : float
        Half-angle of the cone of confusion from the vertical.
    reach_nm : float
        How far to each side; about three times the height if left out.
    ident : str
        The station's name.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Raises
    ------
    ValueError
        A height of 0 or less.

    Examples
    --------
    >>> import lubberline.plot
    >>> ax = lubberline.plot.profile(33_000.0)
    >>> ax.get_ylabel()
    'height above the station (1000 ft)'
    """
    if not 0.0 < height_ft < np.inf:
        raise ValueError(f"height_ft is {height_ft:g} ft; allowed: more than 0 ft")
    ax = _look.axes(ax, size=(7.2, 3.8))
    _look.plain(ax)
    ax.set_aspect("equal", adjustable="box")
    height_nm = height_ft / _FEET_PER_MILE
    reach = 3.0 * height_nm if reach_nm is None else reach_nm
    top_nm = 1.45 * height_nm
    edge_nm = cone_radius_nm(top_nm * _FEET_PER_MILE, cone_half_angle_deg)
    ax.fill([0.0, -edge_nm, edge_nm], [0.0, top_nm, top_nm], facecolor=_look.COLORS["cone"], alpha=0.55, zorder=1, label="cone of confusion")
    ax.plot([-edge_nm, 0.0, edge_nm], [top_nm, 0.0, top_nm], color="#a08c3c", linewidth=0.8, zorder=1)

    def above(across_nm: float, text: str) -> None:
        ax.annotate(text, (across_nm, height_nm), xytext=(0, 5), textcoords="offset points", ha="center", va="bottom", fontsize=8.5, zorder=6)

    step = _round_step(reach)
    angle_rad = np.linspace(-np.pi / 2.0, np.pi / 2.0, 181)
    for reading_nm in np.arange(step, np.hypot(reach, top_nm), step):
        ax.plot(reading_nm * np.sin(angle_rad), reading_nm * np.cos(angle_rad), color="#9a9a9a", linewidth=0.8, zorder=2)
        if reading_nm > 1.02 * least_dme_nm(height_ft):
            # Where the level aircraft reads it, which is nearer than the reading.
            across_nm = ground_distance_nm(float(reading_nm), height_ft)
            if across_nm < 0.97 * reach:
                for side in (-1.0, 1.0):
                    ax.plot(side * across_nm, height_nm, marker="o", markersize=4, color=_look.COLORS["path"], zorder=5)
                if across_nm > 0.12 * reach:
                    above(across_nm, f"{reading_nm:g}")
    ax.plot([-reach, reach], [height_nm, height_nm], label="level aircraft and the DME it reads", **_look.LINES["path"])
    ax.plot([], [], color="#9a9a9a", linewidth=0.8, label="equal DME readings")
    above(0.0, f"{least_dme_nm(height_ft):.1f} overhead")
    _look.station(ax)
    ax.annotate(ident, (0.0, 0.0), xytext=(10, 1), textcoords="offset points", fontsize=8.5, fontweight="bold", va="bottom")
    ax.set_xlim(-reach, reach)
    ax.set_ylim(-0.05 * top_nm, top_nm)
    thousands = _round_step(top_nm * _FEET_PER_MILE / 1000.0)
    marks = np.arange(0.0, top_nm * _FEET_PER_MILE / 1000.0, thousands)
    ax.set_yticks(marks * 1000.0 / _FEET_PER_MILE, [f"{mark:g}" for mark in marks])
    sides = np.arange(-np.floor(reach / step) * step, reach + 0.01 * step, step)
    ax.set_xticks(sides, [f"{abs(side):g}" for side in sides])
    ax.set_xlabel("distance over the ground (NM)")
    ax.set_ylabel("height above the station (1000 ft)")
    _look.legend(ax, columns=3)
    return ax


def _round_step(span: float) -> float:
    """A round step that divides a span into five parts or so."""
    power = 10.0 ** np.floor(np.log10(span / 5.0))
    return float(min((factor * power for factor in (1.0, 2.0, 5.0, 10.0)), key=lambda step: abs(step - span / 5.0)))
