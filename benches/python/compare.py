"""What arrays cost from Python, beside named peers in the same process.

    python -m venv target/peers
    target/peers/bin/pip install -r benches/python/requirements.txt ./python
    target/peers/bin/python benches/python/compare.py [points]

Each row is the median of interleaved runs, in CPU time of the thread. Only the ratios carry over to other machines, and
those best when the machine is idle: the load is printed with them.
"""
import importlib.metadata
import os
import platform
import statistics
import sys
import time

import numpy as np
from ambiance import Atmosphere
from pyproj import Geod

import air
from lubberline import _native

RUNS = 9
STATION = (61.0, -12.0, 420.0, -8.0)
EARTH = Geod(ellps="WGS84")


def interleaved(calls, points):
    """Median nanoseconds a point of each call."""
    taken = {name: [] for name in calls}
    for call in calls.values():
        call()
    for _ in range(RUNS):
        for name, call in calls.items():
            start = time.thread_time_ns()
            call()
            taken[name].append((time.thread_time_ns() - start) / points)
    return {name: statistics.median(values) for name, values in taken.items()}


def table(title, calls, points, peer):
    found = interleaved(calls, points)
    print(f"\n{title}\n")
    print(f"| what | ns a point | times {peer} |\n|---|---|---|")
    for name, value in found.items():
        print(f"| {name} | {value:.1f} | {found[peer] / value:.1f} |")


def places(count, points):
    return tuple(np.empty(points) for _ in range(count))


def observed(points, reach_nm, random):
    bearing, distance = 360 * random.random(points), 1852 * reach_nm * np.sqrt(random.random(points))
    latitude, longitude = np.full(points, STATION[0]), np.full(points, STATION[1])
    there_longitude, there_latitude, _ = EARTH.fwd(longitude, latitude, bearing, distance)
    altitude = 40_000 * random.random(points)
    observe, out = _native.many["observe"], places(4, points)
    arguments = (*STATION, np.asarray(there_latitude), np.asarray(there_longitude), altitude)
    table(
        f"One station, {points} aircraft within {reach_nm} NM: radial, DME, ground distance and elevation angle",
        {
            "pyproj Geod.inv": lambda: EARTH.inv(longitude, latitude, there_longitude, there_latitude),
            "observe, outputs given": lambda: observe(*arguments, out=out),
            "observe, freshly allocated": lambda: observe(*arguments),
        },
        points,
        "pyproj Geod.inv",
    )


def triangles(points, random):
    course, airspeed = 360 * random.random(points), 120 + 380 * random.random(points)
    wind_from, wind = 360 * random.random(points), 100 * random.random(points)

    def formula():
        angle = np.radians(wind_from - course)
        correction = np.arcsin(wind * np.sin(angle) / airspeed)
        return (course + np.degrees(correction)) % 360, airspeed * np.cos(correction) - wind * np.cos(angle)

    triangle, out = _native.many["wind_triangle"], places(2, points)
    table(
        f"Wind triangle, {points} points",
        {
            "NumPy formula": formula,
            "wind_triangle, outputs given": lambda: triangle(course, airspeed, wind_from, wind, out=out),
            "wind_triangle, freshly allocated": lambda: triangle(course, airspeed, wind_from, wind),
        },
        points,
        "NumPy formula",
    )


def atmospheres(points, random):
    altitude_m = 20_000 * random.random(points)
    altitude_ft = altitude_m / 0.3048

    def peer():
        air = Atmosphere(altitude_m)
        return air.temperature, air.pressure, air.density, air.speed_of_sound

    standard, out = _native.many["standard_atmosphere"], places(4, points)
    table(
        f"Standard atmosphere, {points} heights: temperature, pressure, density, speed of sound",
        {
            "ambiance": peer,
            "standard_atmosphere, outputs given": lambda: standard(altitude_ft, 0.0, out=out),
            "standard_atmosphere, freshly allocated": lambda: standard(altitude_ft, 0.0),
        },
        points,
        "ambiance",
    )


def processor():
    try:
        with open("/proc/cpuinfo", encoding="utf-8") as lines:
            return next(line.split(":")[1].strip() for line in lines if line.startswith("model name"))
    except (OSError, StopIteration):
        return platform.processor()


def main():
    points = int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000
    random = np.random.default_rng(1)
    print(f"{processor()}, {os.cpu_count()} cores, load {os.getloadavg()[0]:.1f}; Python {platform.python_version()}, " + ", ".join(
        f"{name} {importlib.metadata.version(name)}" for name in ("numpy", "pyproj", "ambiance", "lubberline")))
    observed(points, 300, random)
    observed(points, 1000, random)
    triangles(points, random)
    atmospheres(points, random)
    air.tables(table, places, points, random)


main()
