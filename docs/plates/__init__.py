"""What the pictures of the documentation have in common. Each of the other files here draws those of the page of its name."""

from collections.abc import Callable
from typing import Any

import numpy as np
from matplotlib import pyplot
from matplotlib.axes import Axes
from matplotlib.figure import Figure

from lubberline import geodesic_inverse
from lubberline.plot import _look

PICTURES: list[Callable[[], Figure]] = []


def picture(draw: Callable[[], Figure]) -> Callable[[], Figure]:
    PICTURES.append(draw)
    return draw


def figure(width: float, height: float, rows: int = 1, columns: int = 1, **more: Any) -> tuple[Figure, Any]:
    return pyplot.subplots(rows, columns, figsize=(width, height), layout="constrained", **more)


def chart(ax: Axes, across: str, up: str) -> None:
    """Axes of numbers, with a grid and names for both."""
    ax.set_xlabel(across)
    ax.set_ylabel(up)
    ax.grid(visible=True, color="#e6e6e6", linewidth=0.6)
    _look.plain(ax)


def from_middle(middle: tuple[float, float], latitude_deg: Any, longitude_deg: Any) -> tuple[Any, Any]:
    """Miles east and north of a point, by the bearing and the distance of each place."""
    line = geodesic_inverse(*middle, latitude_deg, longitude_deg)
    return _look.place(line.initial_bearing_deg, line.distance_nm)


def measure(ax: Axes, one: Any, other: Any, *, color: str = _look.COLORS["ink"]) -> None:
    """A thin line with an arrow head at either end: a distance that is named beside it."""
    look = {"arrowstyle": "<|-|>", "shrinkA": 0.0, "shrinkB": 0.0, "linewidth": 0.9, "color": color, "mutation_scale": 9}
    ax.annotate("", tuple(map(float, one)), xytext=tuple(map(float, other)), arrowprops=look, zorder=5)


def mark(ax: Axes, at: Any, marker: str = "o", *, color: str = _look.COLORS["path"], **more: Any) -> None:
    """A point that is named or counted."""
    ax.plot(*map(float, at), marker=marker, markersize=7, linestyle="", color=color, markeredgecolor="white", zorder=6, **more)


def middle_of(*points: Any) -> tuple[float, float]:
    """The middle between points."""
    east, north = np.mean(np.array(points, dtype=float), axis=0)
    return float(east), float(north)
