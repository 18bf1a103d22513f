"""What the instruments show against time: needle, TO and FROM, flag, DME, bank."""

from __future__ import annotations

from typing import Any

import numpy as np
from matplotlib.axes import Axes
from numpy.typing import NDArray

from . import _look

#: Full deflection of the needle, in degrees.
FULL_SCALE_DEG = 10.0

#: The codes of what is shown beside the needle.
TO, FROM = 1.0, 2.0


def needle(table: NDArray[Any], *, ax: Axes | None = None) -> Axes:
    """The needle against time: how far the selected course lies to the right, as far as the needle goes.

    Where the needle is not to be used there is no line; the time in the cone is shaded.

    Parameters
    ----------
    table : ndarray
        A table of `lubberline.Flight.run`, or anything with its columns `time_s`, `deviation_deg` and `in_cone`.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Examples
    --------
    >>> import lubberline
    >>> import lubberline.plot
    >>> flight = lubberline.Flight(
    ...     59.8, -20.0, 5_000.0, heading_deg=0.0, true_airspeed_kt=300.0, station_latitude_deg=60.0, station_longitude_deg=-20.0
    ... )
    >>> ax = lubberline.plot.needle(flight.run(120.0))
    >>> ax.get_ylabel()
    'needle right of\\ncentre (degrees)'
    """
    ax = _look.axes(ax, size=(6.4, 3.0))
    _times(ax, table)
    shown = np.clip(np.asarray(table["deviation_deg"], dtype=float), -FULL_SCALE_DEG, FULL_SCALE_DEG)
    ax.axhline(0.0, **_look.LINES["course"])
    ax.plot(table["time_s"], shown, **_look.LINES["path"])
    ax.set_ylim(-1.3 * FULL_SCALE_DEG, 1.3 * FULL_SCALE_DEG)
    ax.set_yticks(np.linspace(-FULL_SCALE_DEG, FULL_SCALE_DEG, 5))
    ax.set_ylabel("needle right of\ncentre (degrees)")
    return ax


def to_from(table: NDArray[Any], *, ax: Axes | None = None) -> Axes:
    """When the receiver shows TO, when FROM, and when its flag is out, which says not to look at the needle.

    Parameters
    ----------
    table : ndarray
        A table of `lubberline.Flight.run`, or anything with its columns `time_s`, `to_from`, `flag` and `in_cone`.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Examples
    --------
    >>> import lubberline
    >>> import lubberline.plot
    >>> flight = lubberline.Flight(
    ...     59.8, -20.0, 5_000.0, heading_deg=0.0, true_airspeed_kt=300.0, station_latitude_deg=60.0, station_longitude_deg=-20.0
    ... )
    >>> [text.get_text() for text in lubberline.plot.to_from(flight.run(120.0)).get_yticklabels()]
    ['TO', 'FROM', 'flag out']
    """
    ax = _look.axes(ax, size=(6.4, 1.8))
    _times(ax, table)
    time_s, shown = np.asarray(table["time_s"], dtype=float), np.asarray(table["to_from"], dtype=float)
    rows = {"TO": shown == TO, "FROM": shown == FROM, "flag out": np.asarray(table["flag"], dtype=float) != 0.0}
    for row, (name, on) in enumerate(rows.items()):
        color = _look.COLORS["over" if name == "flag out" else "path"]
        spans = [(first, after - first) for first, after in _spans(time_s, on)]
        ax.broken_barh(spans, (row - 0.3, 0.6), facecolors=color, hatch="////" if name == "flag out" else "", edgecolor="white", linewidth=0.0)
    ax.set_yticks(range(len(rows)), list(rows))
    ax.set_ylim(len(rows) - 0.4, -0.9)
    return ax


def dme(table: NDArray[Any], *, ax: Axes | None = None) -> Axes:
    """The DME reading against time. Over the station it shows the height, and nothing less.

    Parameters
    ----------
    table : ndarray
        A table of `lubberline.Flight.run`, or anything with its columns `time_s`, `dme_nm` and `in_cone`.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Examples
    --------
    >>> import lubberline
    >>> import lubberline.plot
    >>> flight = lubberline.Flight(
    ...     59.8, -20.0, 5_000.0, heading_deg=0.0, true_airspeed_kt=300.0, station_latitude_deg=60.0, station_longitude_deg=-20.0
    ... )
    >>> lubberline.plot.dme(flight.run(120.0)).get_ylabel()
    'DME reading (NM)'
    """
    ax = _look.axes(ax, size=(6.4, 3.0))
    _times(ax, table)
    ax.plot(table["time_s"], table["dme_nm"], **_look.LINES["path"])
    ax.set_ylim(0.0, 1.12 * ax.get_ylim()[1])
    ax.set_ylabel("DME reading (NM)")
    return ax


def bank(table: NDArray[Any], *, ax: Axes | None = None) -> Axes:
    """The bank against time, right positive.

    Parameters
    ----------
    table : ndarray
        A table of `lubberline.Flight.run`, or anything with its columns `time_s`, `bank_deg` and `in_cone`.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Examples
    --------
    >>> import lubberline
    >>> import lubberline.plot
    >>> flight = lubberline.Flight(
    ...     59.8, -20.0, 5_000.0, heading_deg=0.0, true_airspeed_kt=300.0, station_latitude_deg=60.0, station_longitude_deg=-20.0
    ... )
    >>> lubberline.plot.bank(flight.run(120.0)).get_ylabel()
    'bank, right\\npositive (degrees)'
    """
    ax = _look.axes(ax, size=(6.4, 3.0))
    _times(ax, table)
    ax.axhline(0.0, **_look.LINES["course"])
    ax.plot(table["time_s"], table["bank_deg"], **_look.LINES["path"])
    ax.margins(y=0.18)
    ax.set_ylabel("bank, right\npositive (degrees)")
    return ax


def _times(ax: Axes, table: NDArray[Any]) -> None:
    """The axis of time, and the time in the cone."""
    _look.plain(ax)
    ax.grid(visible=True, color="#e6e6e6", linewidth=0.6)
    ax.set_xlabel("time (s)")
    time_s, within = np.asarray(table["time_s"], dtype=float), np.asarray(table["in_cone"], dtype=float) > 0.0
    if len(time_s) > 1:
        ax.set_xlim(time_s[0], time_s[-1])
    for first, after in _spans(time_s, within):
        ax.axvspan(first, after, facecolor=_look.COLORS["cone"], alpha=0.55, zorder=0)
        ax.annotate(
            "cone", ((first + after) / 2.0, 1.0), xycoords=("data", "axes fraction"), xytext=(0, -3), textcoords="offset points",
            ha="center", va="top", fontsize=8, color=_look.COLORS["ink"],
        )  # fmt: skip


def _spans(time_s: NDArray[np.float64], on: NDArray[np.bool_]) -> list[tuple[float, float]]:
    """From when to when something is so."""
    edges = np.flatnonzero(np.diff(np.concatenate([[False], on, [False]]).astype(int)))
    return [(float(time_s[first]), float(time_s[min(after, len(time_s) - 1)])) for first, after in zip(edges[::2], edges[1::2], strict=True)]
