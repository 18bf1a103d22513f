"""A recorded or flown track on a plan about a station."""

from __future__ import annotations

from typing import Any

from matplotlib.axes import Axes
from numpy.typing import ArrayLike

from .._station import Station
from . import _look
from ._labels import Labels


def track(
    station: Station, latitude_deg: ArrayLike, longitude_deg: ArrayLike, *, ax: Axes | None = None, label: str = "track", **line: Any
) -> Axes:
    """A track over the ground, from above, about a station and in its north.

    It goes with `course_change` in one picture, if the courses are radials of the station.

    Parameters
    ----------
    station : Station
        The station in the middle.
    latitude_deg, longitude_deg : array_like
        The track's points.
    ax : Axes
        Where to draw; new axes if left out.
    label : str
        What it is called in the legend.
    **line
        How the line is drawn, as for `matplotlib.axes.Axes.plot`.

    Returns
    -------
    Axes

    Examples
    --------
    >>> import lubberline
    >>> import lubberline.plot
    >>> station = lubberline.Station(61.25, -11.5, declination_deg=-6.0, ident="OST")
    >>> ax = lubberline.plot.track(station, [61.15, 61.25], [-11.6, -11.5])
    >>> len(ax.get_lines()[0].get_xdata())
    2
    """
    alone = ax is None
    ax = _look.axes(ax)
    seen = station.observe(latitude_deg, longitude_deg, station.elevation_ft)
    style: dict[str, Any] = {"color": _look.COLORS["ink"], "linewidth": 1.3, "zorder": 5} | line
    ax.plot(*_look.place(seen.radial_deg, seen.ground_distance_nm), label=label, **style)
    if alone:
        _look.plan(ax, of=station.ident or "the station", north="the station's")
        _look.station(ax)
        _look.widen(ax)
        if station.ident:
            Labels(ax).add((0.0, 0.0), station.ident, fontweight="bold")
        return ax
    # A plan that shows a track about a station is one in the station's north.
    if ax.get_ylabel() and "north (" not in ax.get_ylabel():
        ax.set_ylabel(ax.get_ylabel().replace(" (NM)", ", the station's north (NM)"))
    if ax.get_legend() is not None:
        _look.legend(ax)
    return ax
