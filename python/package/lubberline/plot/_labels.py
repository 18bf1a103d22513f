"""Labels that look for a place of their own: beside their point, off the lines, off one another."""

from __future__ import annotations

from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.text import Annotation

from ._look import COLORS, Array

_SIZE = 8.5
_AWAY = 10.0
#: How wide a letter and how high a line are, in points.
_LETTER, _LINE = 0.58 * _SIZE, 1.25 * _SIZE
#: How much paper lies between two labels, across and up, so that they do not read as one.
_APART = np.array([9.0, 3.0])
_BEARINGS_DEG = np.arange(0.0, 360.0, 15.0)


class Labels:
    """The labels of one picture. Lines and legend must have been drawn and the limits be set before."""

    def __init__(self, ax: Axes) -> None:
        self._ax = ax
        figure = ax.get_figure()
        self._points = 72.0 / (figure.dpi if figure is not None else 72.0)
        # Where the axes will come to lie, with the legend and all: before that no distance on the paper is known.
        layout = figure.canvas.figure.get_layout_engine() if figure is not None else None
        if layout is not None and figure is not None:
            layout.execute(figure.canvas.figure)
        ax.apply_aspect()
        lines = [self._on_paper(np.asarray(line.get_xydata(), dtype=float)) for line in ax.get_lines()]
        self._drawn: Array = np.vstack([_filled(line) for line in lines]) if lines else np.empty((0, 2))
        self._boxes: list[Array] = []
        for text in ax.texts:
            if isinstance(text, Annotation) and text.get_text():
                on = ax.transData if text.xycoords == "data" else ax.transAxes
                middle = np.asarray(on.transform(text.xy)) * self._points + (0.0 if text.xycoords == "data" else np.asarray(text.xyann))
                size = _size(text.get_text())
                self._boxes.append(np.array([middle - size / 2.0, middle + size / 2.0]))

    def add(self, at: tuple[float, float], text: str, *, prefer_deg: float = 45.0, color: str = COLORS["ink"], **more: Any) -> None:
        """A text beside a point, toward the bearing preferred if there is room."""
        size = _size(text) * (1.12 if more.get("fontweight") else 1.0)
        here = self._on_paper(np.array([at]))[0]
        bearing_deg = min(_BEARINGS_DEG, key=lambda one: self._cost(_box(here, size, one), one - prefer_deg))
        box = _box(here, size, bearing_deg)
        self._boxes.append(box)
        middle = box.mean(axis=0) - here
        self._ax.annotate(
            text,
            at,
            xytext=(float(middle[0]), float(middle[1])),
            textcoords="offset points",
            ha="center",
            va="center",
            multialignment="left" if middle[0] > 4.0 else "right" if middle[0] < -4.0 else "center",
            fontsize=_SIZE,
            color=color,
            zorder=8,
            bbox={"boxstyle": "square,pad=0.1", "facecolor": "white", "edgecolor": "none", "alpha": 0.7},
            **more,
        )

    def _cost(self, box: Array, turned_deg: float) -> float:
        """What a place costs: lines under it, other labels under it, leaving the axes, and turning from the bearing preferred."""
        covered = np.count_nonzero(((self._drawn > box[0] - 3.5) & (self._drawn < box[1] + 3.5)).all(axis=1))
        overlaps = sum(bool((box[0] < other[1] + _APART).all() and (box[1] > other[0] - _APART).all()) for other in self._boxes)
        bounds = self._on_paper_axes()
        outside = float(np.maximum(bounds[0] - box[0], 0.0).sum() + np.maximum(box[1] - bounds[1], 0.0).sum())
        return 3.0 * covered + 60.0 * overlaps + 3.0 * outside + 2.5 * (1.0 - float(np.cos(np.radians(turned_deg))))

    def _on_paper(self, data: Array) -> Array:
        """Points of the paper, 72 to the inch; infinite coordinates go."""
        paper: Array = np.asarray(self._ax.transData.transform(data[np.isfinite(data).all(axis=1)])) * self._points
        return paper

    def _on_paper_axes(self) -> Array:
        corners: Array = np.asarray(self._ax.transAxes.transform([(0.0, 0.0), (1.0, 1.0)])) * self._points
        return corners


def _size(text: str) -> Array:
    rows = text.split("\n")
    return np.array([_LETTER * max(map(len, rows)), _LINE * len(rows)])


def _box(at: Array, size: Array, bearing_deg: float) -> Array:
    """Lower left and upper right of a text whose nearest point lies a little away from its point."""
    toward = np.array([np.sin(np.radians(bearing_deg)), np.cos(np.radians(bearing_deg))])
    middle = at + toward * _AWAY + np.sign(np.round(toward, 6)) * np.minimum(1.0, np.abs(toward) * 1.5) * size / 2.0
    return np.array([middle - size / 2.0, middle + size / 2.0])


def _filled(line: Array) -> Array:
    """A line as points no more than 3 apart."""
    if len(line) < 2:
        return line
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))])
    at = np.arange(0.0, along[-1] + 3.0, 3.0)
    return np.column_stack([np.interp(at, along, line[:, 0]), np.interp(at, along, line[:, 1])])
