"""What arrays cost from Python, beside named peers in the same process.

    python -m venv target/peers
    target/peers/bin/pip install -r benches/python/requirements.txt ./python
    target/peers/bin/python benches/python/compare.py [part ...] [--points N]

Parts: earth, stations, air, instructions, floor, threads, growth; all of them if none is named. Another, given, prints the bare rows that
instructions asks for in each set. What is printed is what `docs/performance.md`
shows. Each row is the median of interleaved runs, in CPU time of the thread (threads: by the clock); a run is one call that is not counted
and as many as take a tenth of a second. Only the ratios carry over to other
machines, and those best when the machine is idle: the load is printed with them. LUBBERLINE_INSTRUCTIONS=baseline or avx2 in
the environment asks for less than the processor has; the part `instructions` does so itself.
"""
import argparse
import functools
import importlib.metadata
import os
import platform
import statistics
import subprocess
import sys
import threading
import time

import numpy as np
from ambiance import Atmosphere
from pyproj import Geod

import air
from lubberline import _native, ufunc

RUNS = 9
RUN_NS = 100_000_000
STATION = (61.0, -12.0, 420.0, -8.0)
EARTH = Geod(ellps="WGS84")
REACHES = {
    "within 300 NM": 300,
    "within 1000 NM": 1000,
    "within 18 000 km": 18_000 / 1.852,
    "uniform over the globe": None,
}


def interleaved(calls, points, runs=RUNS):
    """Median nanoseconds a point of each call; a run is as many calls as take RUN_NS, after one that is not counted."""
    taken = {name: [] for name in calls}
    for _ in range(runs):
        for name, call in calls.items():
            call()
            times, start = 0, time.thread_time_ns()
            while times == 0 or time.thread_time_ns() - start < RUN_NS:
                call()
                times += 1
            taken[name].append((time.thread_time_ns() - start) / times / points)
    return {name: statistics.median(values) for name, values in taken.items()}


def table(title, calls, points, peer):
    found = interleaved(calls, points)
    print(f"\n### {title}\n")
    print(f"| what | ns a point | times {peer} |\n|---|---|---|")
    for name, value in found.items():
        print(f"| {name} | {value:.1f} | {found[peer] / value:.1f} |", flush=True)


def places(count, points):
    return tuple(np.empty(points) for _ in range(count))


def globe(points, random):
    return np.degrees(np.arcsin(random.uniform(-1, 1, points))), random.uniform(-180, 180, points)


def about(points, reach_nm, random):
    """Aircraft about the station to a distance, or all over the globe."""
    if reach_nm is None:
        return globe(points, random)
    bearing, distance = 360 * random.random(points), 1852 * reach_nm * np.sqrt(random.random(points))
    latitude, longitude = np.full(points, STATION[0]), np.full(points, STATION[1])
    there_longitude, there_latitude, _ = EARTH.fwd(longitude, latitude, bearing, distance)
    return np.asarray(there_latitude), np.asarray(there_longitude)


def observing(points, reach_nm, random):
    """The station's calls, and the peer's."""
    latitude, longitude = np.full(points, STATION[0]), np.full(points, STATION[1])
    there_latitude, there_longitude = about(points, reach_nm, random)
    arguments = (*STATION, there_latitude, there_longitude, 40_000 * random.random(points))
    observe, out = _native.many["observe"], places(4, points)
    three = ufunc.some("observe", "radial_deg", "dme_nm", "ground_distance_nm")
    return {
        "pyproj Geod.inv": lambda: EARTH.inv(longitude, latitude, there_longitude, there_latitude),
        "observe but for the elevation angle, outputs given": lambda: three(*arguments, out=out[:3]),
        "observe but for the elevation angle, freshly allocated": lambda: three(*arguments),
        "observe, outputs given": lambda: observe(*arguments, out=out),
        "observe, freshly allocated": lambda: observe(*arguments),
    }


def stations(points, random):
    """How many points in a row have one station: what each station costs by itself."""
    latitude, longitude = about(points, 300, random)
    altitude, out = 40_000 * random.random(points), places(3, points)
    three = ufunc.some("observe", "radial_deg", "dme_nm", "ground_distance_nm")
    calls = {"pyproj Geod.inv": lambda: EARTH.inv(*(np.full(points, STATION[index]) for index in (1, 0)), longitude, latitude)}
    for run in (1, 2, 5, 20, 100, 1000):
        shift = np.repeat(random.uniform(-0.1, 0.1, -(-points // run)), run)[:points]
        station = (STATION[0] + shift, STATION[1] - shift, np.full(points, STATION[2]), np.full(points, STATION[3]))
        calls[f"{run} at a time"] = lambda station=station: three(*station, latitude, longitude, altitude, out=out)
    calls["all"] = lambda: three(*STATION, latitude, longitude, altitude, out=out)
    table(f"Stations given by point, {points} aircraft within 300 NM, outputs given: points in a row that have one station", calls, points,
          "pyproj Geod.inv")


def inverting(points, random):
    (lat1, lon1), (lat2, lon2) = globe(points, random), globe(points, random)
    inverse, out = _native.many["geodesic_inverse"], places(3, points)
    return {
        "pyproj Geod.inv": lambda: EARTH.inv(lon1, lat1, lon2, lat2),
        "geodesic_inverse, outputs given": lambda: inverse(lat1, lon1, lat2, lon2, out=out),
        "geodesic_inverse, freshly allocated": lambda: inverse(lat1, lon1, lat2, lon2),
    }


def directing(points, random):
    latitude, longitude = np.full(points, STATION[0]), np.full(points, STATION[1])
    bearing, distance = 360 * random.random(points), 5000 * random.random(points)
    distance_m = 1852 * distance
    direct, out = _native.many["geodesic_direct"], places(3, points)
    return {
        "pyproj Geod.fwd": lambda: EARTH.fwd(longitude, latitude, bearing, distance_m),
        "geodesic_direct, outputs given": lambda: direct(*STATION[:2], bearing, distance, out=out),
        "geodesic_direct, freshly allocated": lambda: direct(*STATION[:2], bearing, distance),
    }


def earth(points, random):
    for where, reach_nm in REACHES.items():
        title = f"One station, {points} aircraft {where}: radial, DME, ground distance, elevation angle"
        table(title, observing(points, reach_nm, random), points, "pyproj Geod.inv")
    table(f"{points} pairs of points, uniform over the globe: distance and both bearings", inverting(points, random), points,
          "pyproj Geod.inv")
    table(f"{points} points at bearings and distances to 5000 NM from one point", directing(points, random), points,
          "pyproj Geod.fwd")


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


def of_air(points, random):
    triangles(points, random)
    atmospheres(points, random)
    air.tables(table, places, points, random)


def given(points, random):
    """The rows compared between instruction sets: each kind of call with outputs given, and its peer."""
    kinds = {f"observe {where}": functools.partial(observing, points, reach_nm) for where, reach_nm in REACHES.items()}
    kinds |= {"geodesic_inverse": functools.partial(inverting, points), "geodesic_direct": functools.partial(directing, points)}
    for name, make in kinds.items():
        calls = make(random)
        found = list(interleaved(dict(list(calls.items())[:2]), points).values())
        print(f"{name}\t{found[0]}\t{found[1]}", flush=True)


def instructions(points, _random):
    """Each in a process of its own, as the instructions are chosen once."""
    print(f"\n### By instructions, {points} points, outputs given\n")
    print("| what | instructions | ns a point | times pyproj |\n|---|---|---|---|")
    for name in ("the processor's best", "avx2", "baseline"):
        environment = os.environ | {"LUBBERLINE_INSTRUCTIONS": name}
        command = [sys.executable, __file__, "given", "--points", str(points)]
        rows = subprocess.run(command, env=environment, check=True, capture_output=True, text=True).stdout
        for row in rows.splitlines():
            if "\t" in row:
                what, peer, own = row.split("\t")
                print(f"| {what} | {name} | {float(own):.1f} | {float(peer) / float(own):.1f} |", flush=True)


def floor(_points, _random):
    """The observing loop beside the least there is to compute of it: a program of its own, in Rust."""
    print("\n### The loop of observe within 300 NM and its floor, ns a point\n")
    command = ["cargo", "run", "--quiet", "--release", "-p", "lubberline-benches", "--bin", "floor"]
    try:
        here = os.path.dirname(os.path.abspath(__file__))
        print(subprocess.run(command, cwd=here, check=True, stdout=subprocess.PIPE, text=True).stdout, end="", flush=True)
    except FileNotFoundError:
        print("There is no cargo to build it.")


def threads(points, random):
    """One thread and two, each over its own half of the same arrays, by the clock: NumPy lets go of the interpreter's lock."""
    print(f"\n### Threads, {points} points, outputs given\n\n| what | threads | ns a point | times one |\n|---|---|---|---|")
    latitude, longitude = about(points, 300, random)
    altitude = 40_000 * random.random(points)
    (lat2, lon2), out = globe(points, random), places(4, points)
    calls = {
        "observe within 300 NM": lambda part: _native.many["observe"](
            *STATION, latitude[part], longitude[part], altitude[part], out=tuple(place[part] for place in out)),
        "geodesic_inverse": lambda part: _native.many["geodesic_inverse"](
            latitude[part], longitude[part], lat2[part], lon2[part], out=tuple(place[part] for place in out[:3])),
    }
    for name, call in calls.items():
        taken = {1: [], 2: []}
        for _ in range(RUNS):
            for count in taken:
                parts = [slice(points * k // count, points * (k + 1) // count) for k in range(count)]
                workers = [threading.Thread(target=lambda part=part: [call(part) for _ in range(5)]) for part in parts]
                start = time.perf_counter_ns()
                for worker in workers:
                    worker.start()
                for worker in workers:
                    worker.join()
                taken[count].append((time.perf_counter_ns() - start) / (5 * points))
        found = {count: min(values) for count, values in taken.items()}
        for count, value in found.items():
            print(f"| {name} | {count} | {value:.1f} | {found[1] / value:.2f} |", flush=True)


def growth(_points, random):
    """From one point to a hundred million, as memory allows."""
    print("\n### From one point to a hundred million: observe within 300 NM, outputs given\n")
    print("| points | ns a call | ns a point |\n|---|---|---|")
    pages = os.sysconf("SC_AVPHYS_PAGES") * os.sysconf("SC_PAGE_SIZE") if hasattr(os, "sysconf") else 0
    some_latitude, some_longitude = about(1_000_000, 300, random)
    for points in [10**power for power in range(9)]:
        if points * 8 * 8 > max(pages, 1_000_000_000):
            print(f"| {points} | more than the free memory | |")
            continue
        times = -(-points // 1_000_000)
        latitude, longitude = (np.tile(column, times)[:points] for column in (some_latitude, some_longitude))
        altitude, out = np.full(points, 31_000.0), places(4, points)
        repeats = max(1, 100_000 // points)

        def call():
            for _ in range(repeats):
                _native.many["observe"](*STATION, latitude, longitude, altitude, out=out)

        value = interleaved({"observe": call}, repeats * points, 3 if points > 10**7 else RUNS)["observe"]
        print(f"| {points} | {value * points:.0f} | {value:.1f} |", flush=True)


def processor():
    try:
        with open("/proc/cpuinfo", encoding="utf-8") as lines:
            return next(line.split(":")[1].strip() for line in lines if line.startswith("model name"))
    except (OSError, StopIteration):
        return platform.processor()


PARTS = {"earth": earth, "stations": stations, "air": of_air, "instructions": instructions, "floor": floor, "threads": threads, "growth": growth, "given": given}


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("parts", nargs="*", metavar="part", help=", ".join(PARTS))
    parser.add_argument("--points", type=int, default=1_000_000)
    asked = parser.parse_args()
    parts = asked.parts or [name for name in PARTS if name != "given"]
    if unknown := set(parts) - set(PARTS):
        parser.error(f"no part {', '.join(unknown)}; there are {', '.join(PARTS)}")
    print(f"{processor()}, {os.cpu_count()} cores, load {os.getloadavg()[0]:.1f}; Python {platform.python_version()}, " + ", ".join(
        f"{name} {importlib.metadata.version(name)}" for name in ("numpy", "pyproj", "ambiance", "lubberline")))
    for part in parts:
        PARTS[part](asked.points, np.random.default_rng(1))


if __name__ == "__main__":
    main()
