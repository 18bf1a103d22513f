"""GeoJSON (RFC 7946) as dictionaries: longitude before latitude, lines cut at the antimeridian."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from typing import Any

#: What must be said with every brief.
CAUTION = (
    "This is arithmetic, not certified avionics. Follow charts, clearances, the flight manual and the local authority; leave decisions to licensed "
    "crews; do not use it for real navigation unless your own approval process covers it."
)


def feature(geometry: dict[str, Any] | None, properties: Mapping[str, Any]) -> dict[str, Any]:
    """A feature; unlocated (section 3.2) without a geometry."""
    return {"type": "Feature", "geometry": geometry, "properties": dict(properties)}


def point(latitude_deg: float, longitude_deg: float) -> dict[str, Any]:
    """A point."""
    return {"type": "Point", "coordinates": [longitude_deg, latitude_deg]}


def line(points: Iterable[tuple[float, float]]) -> dict[str, Any] | None:
    """A line through latitudes and longitudes, cut where it crosses the antimeridian as section 3.1.9 asks; none if it has no length."""
    parts: list[list[list[float]]] = [[]]
    last: tuple[float, float] | None = None
    for latitude, longitude in points:
        if last is not None and abs(longitude - last[1]) > 180.0:
            below, before = last
            edge = math.copysign(180.0, before)
            share = (edge - before) / (longitude + math.copysign(360.0, before) - before)
            crossing = below + share * (latitude - below)
            _extend(parts[-1], [edge, crossing])
            parts.append([[-edge, crossing]])
        _extend(parts[-1], [longitude, latitude])
        last = latitude, longitude
    # A line has two places at least (section 3.1.4); one that only touches the antimeridian leaves a single place beyond it.
    parts = [part for part in parts if len(part) > 1]
    if not parts:
        return None
    if len(parts) == 1:
        return {"type": "LineString", "coordinates": parts[0]}
    return {"type": "MultiLineString", "coordinates": parts}


def _extend(part: list[list[float]], place: list[float]) -> None:
    """Add a place, unless the part stands there already."""
    if not part or part[-1] != place:
        part.append(place)
