"""Rows of compare.py: airspeeds, turns, leads and declinations in arrays beside peers, and single calls."""
import time

import numpy as np
from pygeomag import GeoMag

import lubberline

KNOT = 1852 / 3600
GRAVITY = 9.80665
SEA_LEVEL_SOUND = np.sqrt(1.4 * 287.05287 * 288.15)


def numpy_pressure(altitude_m):
    """Pressure over that of sea level, and temperature, to 20 km."""
    low = np.minimum(altitude_m, 11_000.0)
    temperature = 288.15 - 0.0065 * low
    ratio = (temperature / 288.15) ** (GRAVITY / (0.0065 * 287.05287))
    return ratio * np.exp(-GRAVITY / (287.05287 * 216.65) * (altitude_m - low)), temperature


def numpy_tas(cas_kt, altitude_ft, deviation_k):
    ratio, temperature = numpy_pressure(altitude_ft * 0.3048)
    impact = (1 + 0.2 * (cas_kt * KNOT / SEA_LEVEL_SOUND) ** 2) ** 3.5 - 1
    mach = np.sqrt(5 * ((impact / ratio + 1) ** (2 / 7) - 1))
    return mach * np.sqrt(1.4 * 287.05287 * (temperature + deviation_k)) / KNOT


def numpy_cas(tas_kt, altitude_ft, deviation_k):
    ratio, temperature = numpy_pressure(altitude_ft * 0.3048)
    mach = tas_kt * KNOT / np.sqrt(1.4 * 287.05287 * (temperature + deviation_k))
    impact = ((1 + 0.2 * mach**2) ** 3.5 - 1) * ratio
    return SEA_LEVEL_SOUND * np.sqrt(5 * ((impact + 1) ** (2 / 7) - 1)) / KNOT


def numpy_lead(inbound, outbound, airspeed_kt, wind_from, wind_kt, bank, rate):
    """The lead of an instant roll: wind-corrected headings, a circle in the air, the wind's drift, two lines crossed."""
    inbound, outbound, wind_from = np.radians(inbound), np.radians(outbound), np.radians(wind_from)
    first = np.arcsin(wind_kt * np.sin(wind_from - inbound) / airspeed_kt)
    second = np.arcsin(wind_kt * np.sin(wind_from - outbound) / airspeed_kt)
    change = (outbound - inbound + np.pi) % (2 * np.pi) - np.pi
    turned = change + second - first
    airspeed = airspeed_kt * KNOT
    tangent = np.minimum(np.tan(np.radians(bank)), np.radians(rate) * airspeed / GRAVITY)
    radius = airspeed**2 / (GRAVITY * tangent)
    chord, middle = 2 * radius * np.sin(np.abs(turned) / 2), inbound + first + turned / 2
    drift = wind_kt * KNOT * np.abs(turned) * radius / airspeed
    north = chord * np.cos(middle) - drift * np.cos(wind_from)
    east = chord * np.sin(middle) - drift * np.sin(wind_from)
    return (north * np.sin(outbound) - east * np.cos(outbound)) / np.sin(change) / 1852


def against(table, places, points, title, name, peer, arguments, peer_name="NumPy formula", digits=1e-6):
    """One function beside a peer, whose answers must be its own."""
    function, out = getattr(lubberline.ufunc, name), places(1, points)
    given = function(*arguments)
    asked = peer()
    assert np.nanmax(np.abs(given - asked)) < digits, (name, np.nanmax(np.abs(given - asked)))
    table(
        f"{title}, {points} points",
        {
            peer_name: peer,
            f"{name}, outputs given": lambda: function(*arguments, out=out),
            f"{name}, freshly allocated": lambda: function(*arguments),
        },
        points,
        peer_name,
    )


def leads(table, places, points, random):
    inbound = 360 * random.random(points)
    change = 2 + 128 * random.random(points)
    outbound = (inbound + np.where(random.random(points) < 0.5, change, -change)) % 360
    airspeed, wind_from = 120 + 380 * random.random(points), 360 * random.random(points)
    flight = (inbound, outbound, airspeed, wind_from, 100 * random.random(points), 25.0, 3.0)
    against(table, places, points, "Lead in wind, instant roll", "lead_nm", lambda: numpy_lead(*flight), (*flight, np.inf))
    lead, out, few = lubberline.ufunc.lead_nm, places(1, points), min(points, 20_000)
    columns = [np.broadcast_to(column, (points,))[:few].tolist() for column in (*flight, 5.0)]

    def one_by_one():
        return [lubberline.lead_nm(*point) for point in zip(*columns)]

    start = time.thread_time_ns()
    one_by_one()
    single = (time.thread_time_ns() - start) / few
    table(
        f"Lead in wind, roll of 5 degrees a second, {points} points; point after point over lists in Python {single:.0f} ns",
        {
            "lead_nm, outputs given": lambda: lead(*flight, 5.0, out=out),
            "lead_nm, freshly allocated": lambda: lead(*flight, 5.0),
        },
        points,
        "lead_nm, outputs given",
    )


def declinations(table, places, points, random):
    latitude, longitude = 180 * random.random(points) - 90, 360 * random.random(points) - 180
    altitude, year = 40_000 * random.random(points), 2025 + 5 * random.random(points)
    few = min(points, 200)
    model = GeoMag(coefficients_file="wmm/WMM_2025.COF")
    spots = list(zip(*(column[:few].tolist() for column in (latitude, longitude, altitude, year))))

    def peer():
        return [model.calculate(glat=spot[0], glon=spot[1], alt=spot[2] * 0.0003048, time=spot[3]).d for spot in spots]

    function, out = lubberline.ufunc.variation_deg, places(1, points)
    peer()
    taken = []
    for _ in range(3):
        start = time.thread_time_ns()
        asked = peer()
        taken.append((time.thread_time_ns() - start) / few)
    given = function(latitude, longitude, altitude, year)
    differ = (given[:few] - asked + 180) % 360 - 180
    print(f"\n`pygeomag` takes {sorted(taken)[1]:.0f} ns a call and differs by {np.max(np.abs(differ)):.1e} degrees at most over {few} places.")
    table(
        f"Declination, {points} places",
        {
            "variation_deg, outputs given": lambda: function(latitude, longitude, altitude, year, out=out),
            "variation_deg, freshly allocated": lambda: function(latitude, longitude, altitude, year),
        },
        points,
        "variation_deg, outputs given",
    )


def single_calls():
    print("\n### Single calls from Python\n\n| what | ns |\n|---|---|")
    for name, arguments in (
        ("slant_range_nm", (10.0, 30_000.0)),
        ("turn_radius_nm", (450.0, 25.0)),
        ("mach_from_cas", (280.0, 35_000.0)),
        ("tas_from_cas_kt", (280.0, 35_000.0, 0.0)),
        ("lead_nm", (40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0)),
    ):
        function, calls, taken = getattr(lubberline, name), 20_000, []
        for _ in range(7):
            start = time.thread_time_ns()
            for _ in range(calls):
                function(*arguments)
            taken.append((time.thread_time_ns() - start) / calls)
        print(f"| {name} | {sorted(taken)[3]:.0f} |")


def tables(table, places, points, random):
    altitude, deviation = 45_000 * random.random(points), 30 * random.random(points) - 10
    cas = 120 + 130 * random.random(points)
    against(table, places, points, "True from calibrated airspeed", "tas_from_cas_kt",
            lambda: numpy_tas(cas, altitude, deviation), (cas, altitude, deviation))
    tas = 120 + 380 * random.random(points)
    against(table, places, points, "Calibrated from true airspeed", "cas_from_tas_kt",
            lambda: numpy_cas(tas, altitude, deviation), (tas, altitude, deviation))
    leads(table, places, points, random)
    declinations(table, places, points, random)
    single_calls()
