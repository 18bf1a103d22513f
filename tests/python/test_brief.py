"""The brief of every plan beside the example, computed a second time: plain arithmetic and fine steps, nothing of the library."""

import json
import math
import subprocess

import numpy as np
import pytest
from conftest import ROOT

tomllib = pytest.importorskip("tomllib", reason="reading the plans takes Python 3.11")

# A plan of path-and-terminator legs has a brief of another kind.
PLANS = [path for path in sorted((ROOT / "core/examples/brief/plans").glob("*.toml")) if "[[route]]" in path.read_text()]
NM, FT, KT, G = 1852.0, 0.3048, 1852.0 / 3600.0, 9.80665
R_AIR = 287.05287
EARTH_NM = 6371008.771415 / NM
# The data are given to nine decimals; three such numbers make a sum.
NINE_DECIMALS = 2e-9


def brief_of(plan, *options):
    command = ["cargo", "run", "--quiet", "-p", "lubberline", "--example", "brief", "--", str(plan), *options]
    return subprocess.run(command, capture_output=True, text=True, check=True, cwd=ROOT).stdout


@pytest.fixture(scope="module", params=PLANS, ids=lambda path: path.stem)
def both(request):
    plan = tomllib.loads(request.param.read_text())
    return plan, json.loads(brief_of(request.param, "--json"))


def flown_geodesic(latitude_deg, longitude_deg, course_deg, length_nm, steps=2000):
    """Where a geodesic of WGS-84 leads: its differential equations by Runge and Kutta."""
    a, e2 = 6378137.0, 0.00669437999014132

    def slope(state):
        phi, _, alpha = state
        w = math.sqrt(1 - e2 * math.sin(phi) ** 2)
        meridian, normal = a * (1 - e2) / w**3, a / w
        return math.cos(alpha) / meridian, math.sin(alpha) / (normal * math.cos(phi)), math.tan(phi) * math.sin(alpha) / normal

    state, h = tuple(map(math.radians, (latitude_deg, longitude_deg, course_deg))), length_nm * NM / steps
    for _ in range(steps):
        k1 = slope(state)
        k2 = slope([s + h / 2 * k for s, k in zip(state, k1)])
        k3 = slope([s + h / 2 * k for s, k in zip(state, k2)])
        k4 = slope([s + h * k for s, k in zip(state, k3)])
        state = tuple(s + h / 6 * (p + 2 * q + 2 * r + t) for s, p, q, r, t in zip(state, k1, k2, k3, k4))
    return tuple(map(math.degrees, state))


def standard_temperature_k(altitude_m):
    return 288.15 - 0.0065 * min(altitude_m, 11000.0)


def standard_pressure_pa(altitude_m):
    low = 101325.0 * (1 - 0.0065 * min(altitude_m, 11000.0) / 288.15) ** (G / (0.0065 * R_AIR))
    return low * math.exp(-G * max(altitude_m - 11000.0, 0.0) / (R_AIR * 216.65))


def altitude_of_pressure_m(pressure_pa):
    low, high = -2000.0, 20000.0
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if standard_pressure_pa(middle) > pressure_pa else (low, middle)
    return low


def air_of(plan):
    """Pressure altitude in metres, temperature in kelvins and its deviation from standard."""
    altitude_m = plan["aircraft"]["pressure_altitude_ft"] * FT
    standard_k = standard_temperature_k(altitude_m)
    if "temperature_degc" in plan["air"]:
        return altitude_m, plan["air"]["temperature_degc"] + 273.15, plan["air"]["temperature_degc"] + 273.15 - standard_k
    return altitude_m, standard_k + plan["air"]["isa_deviation_k"], plan["air"]["isa_deviation_k"]


def height_ft(plan, elevation_ft, steps=20000):
    """Height above a station: hydrostatic steps up a column as much warmer than standard as the air of the plan."""
    altitude_m, _, deviation_k = air_of(plan)
    sea_level_m = altitude_of_pressure_m(plan["air"]["altimeter_setting_hpa"] * 100.0)
    # An altimeter under this setting shows the elevation on the ground.
    from_m = elevation_ft * FT + sea_level_m
    step_m = (altitude_m - from_m) / steps
    earth_m = 6356766.0
    geopotential_m = earth_m * elevation_ft * FT / (earth_m + elevation_ft * FT)
    for index in range(steps):
        standard_k = standard_temperature_k(from_m + (index + 0.5) * step_m)
        geopotential_m += step_m * (standard_k + deviation_k) / standard_k
    return earth_m * geopotential_m / (earth_m - geopotential_m) / FT - elevation_ft


def vector(direction_deg, length=1.0):
    """North and east."""
    return length * math.cos(math.radians(direction_deg)), length * math.sin(math.radians(direction_deg))


def held(course_deg, speed_kt, wind_from_deg, wind_kt):
    """Heading and groundspeed on a course, found by halving until the track is the course."""
    east_of = lambda heading: (vector(heading - course_deg, speed_kt)[1] - vector(wind_from_deg - course_deg, wind_kt)[1])
    low, high = course_deg - 90, course_deg + 90
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if east_of(middle) < 0 else (low, middle)
    return low % 360, vector(low - course_deg, speed_kt)[0] - vector(wind_from_deg - course_deg, wind_kt)[0]


def wind_at(plan, fix):
    """Where the wind blows from and its speed: of the fix or of the air, from levels by components at the altitude flown."""
    given = fix if "wind_level" in fix or "wind_from_deg" in fix else plan["air"]
    if "wind_level" not in given:
        return given["wind_from_deg"], given["wind_speed_kt"]
    altitude = plan["aircraft"]["pressure_altitude_ft"]
    levels = [
        (level["pressure_altitude_ft"], vector(level["wind_from_deg"], level["wind_speed_kt"])) for level in given["wind_level"]
    ]
    heights = [height for height, _ in levels]
    north, east = (np.interp(altitude, heights, [wind[axis] for _, wind in levels]) for axis in (0, 1))
    return math.degrees(math.atan2(east, north)) % 360.0, math.hypot(north, east)


def turn(heading_deg, change_deg, speed_kt, wind, limits, step_s=0.01):
    """Flies a turn in small steps. Gives the bank in degrees, and the time in s, north and east in NM and the length at each step."""
    bank_limit_deg, rate_limit, roll_rate = limits
    speed = speed_kt * KT
    bank = min(math.radians(bank_limit_deg), math.atan(math.radians(rate_limit) * speed / G))
    in_roll = lambda top: -G / (speed * math.radians(roll_rate)) * math.log(math.cos(top))
    amount = math.radians(abs(change_deg))
    if 2 * in_roll(bank) > amount:
        low, high = 0.0, bank
        for _ in range(80):
            middle = (low + high) / 2
            low, high = (middle, high) if 2 * in_roll(middle) < amount else (low, middle)
        bank = low
    roll_s = math.degrees(bank) / roll_rate
    total_s = 2 * roll_s + (amount - 2 * in_roll(bank)) / (G * math.tan(bank) / speed)
    steps = math.ceil(total_s / step_s)
    step_s = total_s / steps
    side = math.copysign(1.0, change_deg)
    wind_north, wind_east = vector(wind[0] + 180, wind[1])
    heading, north, east, length = math.radians(heading_deg), 0.0, 0.0, 0.0
    path = [(0.0, 0.0, 0.0, 0.0)]
    for index in range(steps):
        # The middle of each step stands for all of it.
        now_s = (index + 0.5) * step_s
        rate = G * math.tan(math.radians(roll_rate) * min(now_s, total_s - now_s, roll_s)) / speed
        middle = heading + side * rate * step_s / 2
        v_north, v_east = speed_kt * math.cos(middle) + wind_north, speed_kt * math.sin(middle) + wind_east
        north, east = north + v_north * step_s / 3600, east + v_east * step_s / 3600
        length += math.hypot(v_north, v_east) * step_s / 3600
        heading += side * rate * step_s
        path.append(((index + 1) * step_s, north, east, length))
    assert math.degrees(heading) == pytest.approx(heading_deg + change_deg, abs=0.01)
    return math.degrees(bank), path


def cross(a, b):
    return a[0] * b[1] - a[1] * b[0]


def signed(degrees):
    return (degrees + 180) % 360 - 180


def slant_nm(ground_nm, height_above_ft):
    """Two sides and the angle between them at the centre of the earth."""
    station, aircraft, angle = EARTH_NM, EARTH_NM + height_above_ft * FT / NM, ground_nm / EARTH_NM
    return math.sqrt(station**2 + aircraft**2 - 2 * station * aircraft * math.cos(angle))


def test_air_and_airspeed(both):
    plan, brief = both
    altitude_m, temperature_k, deviation_k = air_of(plan)
    sound = math.sqrt(1.4 * R_AIR * temperature_k)
    if "mach" in plan["aircraft"]:
        mach = plan["aircraft"]["mach"]
    else:
        sea_sound = math.sqrt(1.4 * R_AIR * 288.15)
        impact = 101325.0 * ((1 + 0.2 * (plan["aircraft"]["calibrated_airspeed_kt"] * KT / sea_sound) ** 2) ** 3.5 - 1)
        mach = math.sqrt(5 * ((impact / standard_pressure_pa(altitude_m) + 1) ** (2 / 7) - 1))
    assert brief["mach"] == pytest.approx(mach, abs=1e-6)
    assert brief["true_airspeed_kt"] == pytest.approx(mach * sound / KT, abs=1e-3)
    assert brief["temperature_degc"] == pytest.approx(temperature_k - 273.15, abs=1e-6)
    assert brief["isa_deviation_k"] == pytest.approx(deviation_k, abs=1e-6)


def test_legs_lead_from_station_to_station(both):
    plan, brief = both
    stations = {station["ident"]: station for station in plan["station"]}
    assert [(leg["from"], leg["to"]) for leg in brief["legs"]] == list(
        zip([fix["fix"] for fix in plan["route"]], [fix["fix"] for fix in plan["route"]][1:])
    )
    for leg, fix in zip(brief["legs"], plan["route"][1:]):
        start, end = stations[leg["from"]], stations[leg["to"]]
        begin = start["latitude_deg"], start["longitude_deg"], leg["initial_course_deg"]
        latitude, longitude, course = flown_geodesic(*begin, leg["length_nm"])
        assert (latitude, longitude) == pytest.approx((end["latitude_deg"], end["longitude_deg"]), abs=1e-8)
        assert signed(course - leg["final_course_deg"]) == pytest.approx(0, abs=1e-7)
        assert signed(leg["radial_from_deg"] + start["declination_deg"] - leg["initial_course_deg"]) == pytest.approx(0, abs=NINE_DECIMALS)
        assert signed(leg["radial_to_deg"] + end["declination_deg"] - course - 180) == pytest.approx(0, abs=1e-7)
        half_way = flown_geodesic(*begin, leg["length_nm"] / 2)[2] % 360
        wind = wind_at(plan, fix)
        heading, speed = held(half_way, brief["true_airspeed_kt"], *wind)
        assert (leg["heading_deg"], leg["groundspeed_kt"]) == pytest.approx((heading, speed), abs=1e-6)
        assert leg["straight_time_s"] == pytest.approx(leg["straight_nm"] / speed * 3600, abs=1e-3)


def test_each_course_change(both):
    plan, brief = both
    stations = {station["ident"]: station for station in plan["station"]}
    aircraft, speed = plan["aircraft"], brief["true_airspeed_kt"]
    limits = aircraft["bank_limit_deg"], aircraft["turn_rate_limit_deg_per_s"], aircraft["roll_rate_deg_per_s"]
    for index, (change, fix) in enumerate(zip(brief["course_changes"], plan["route"][1:])):
        wind = wind_at(plan, fix)
        height = height_ft(plan, stations[change["fix"]]["elevation_ft"])
        assert change["height_above_station_ft"] == pytest.approx(height, abs=1.0)
        inbound, outbound = brief["legs"][index]["final_course_deg"], brief["legs"][index + 1]["initial_course_deg"]
        assert (change["inbound_course_deg"], change["outbound_course_deg"]) == (inbound, outbound)

        (before, before_kt), (after, after_kt) = held(inbound, speed, *wind), held(outbound, speed, *wind)
        assert (change["heading_before_deg"], change["heading_after_deg"]) == pytest.approx((before, after), abs=1e-6)
        assert change["groundspeed_before_kt"] == pytest.approx(before_kt, abs=1e-6)
        assert change["groundspeed_after_kt"] == pytest.approx(after_kt, abs=1e-6)
        amount = signed(outbound - inbound)
        if "turn" in fix and (fix["turn"] == "left") != (amount < 0):
            amount -= math.copysign(360, amount)
        turned = amount + signed(after - outbound) - signed(before - inbound)
        assert change["heading_change_deg"] == pytest.approx(turned, abs=1e-6)

        bank, path = turn(before, turned, speed, wind, limits)
        u, v = vector(inbound), vector(outbound)
        end = path[-1][1:3]
        lead, past = cross(end, v) / cross(u, v), cross(u, end) / cross(u, v)
        assert change["bank_deg"] == pytest.approx(bank, abs=1e-6)
        assert change["turn_time_s"] == pytest.approx(path[-1][0], abs=1e-3)
        assert change["turn_length_nm"] == pytest.approx(path[-1][3], abs=1e-4)
        assert change["begin_before_fix_nm"] == pytest.approx(lead, abs=1e-4)
        assert change["roll_out_past_fix_nm"] == pytest.approx(past, abs=1e-4)
        assert change["begin_at_dme_nm"] == pytest.approx(slant_nm(lead, height), abs=1e-3)
        assert change["roll_out_dme_nm"] == pytest.approx(slant_nm(past, height), abs=1e-3)
        closest = min(math.hypot(north - lead * u[0], east - lead * u[1]) for _, north, east, _ in path)
        assert change["closest_approach_nm"] == pytest.approx(closest, abs=1e-3)
        cone = height * FT / NM * math.tan(math.radians(50))
        assert change["cone_radius_nm"] == pytest.approx(cone, abs=1e-3)
        assert (change["begins_in_cone"], change["enters_cone"]) == (lead < cone, closest < cone)
        assert change["cone_edge_dme_nm"] == pytest.approx(slant_nm(cone, height), abs=2e-3)
        slope = slant_nm(lead + 0.01, height) - slant_nm(lead - 0.01, height)
        assert change["ground_per_dme_tenth_nm"] == pytest.approx(0.1 / (slope / 0.02), rel=1e-3)
        declination = stations[change["fix"]]["declination_deg"]
        assert signed(change["begin_on_radial_deg"] + declination - inbound - 180) == pytest.approx(0, abs=NINE_DECIMALS)
        assert signed(change["roll_out_radial_deg"] + declination - outbound) == pytest.approx(0, abs=NINE_DECIMALS)
        by_rule(change, before_kt, amount, height, lead)
        over_the_fix(change, amount, speed, wind, limits, (path, lead, past, before_kt, after_kt))


def by_rule(change, groundspeed_kt, amount_deg, height, lead_nm):
    """As it is said: a third of a mile for each 60 kt, for 90 degrees; half a mile for each 10 000 ft above 5 000 ft."""
    rule = change["by_rule"]
    short_way = min(abs(amount_deg), 360 - abs(amount_deg))
    plain = groundspeed_kt / 180 * short_way / 90
    higher = plain + 0.5 * max(height - 5000, 0) / 10000
    reading = plain + height / 6000
    assert rule["lead_nm"] == pytest.approx(plain, abs=1e-3)
    assert rule["lead_error_nm"] == pytest.approx(plain - lead_nm, abs=1e-3)
    assert rule["lead_with_height_nm"] == pytest.approx(higher, abs=1e-3)
    assert rule["lead_with_height_error_nm"] == pytest.approx(higher - lead_nm, abs=1e-3)
    assert rule["dme_nm"] == pytest.approx(reading, abs=1e-3)
    assert rule["dme_error_nm"] == pytest.approx(reading - change["begin_at_dme_nm"], abs=1e-3)


def over_the_fix(change, amount, speed, wind, limits, fly_by):
    """Over the fix, through the outbound course, and back to it at the intercept angle."""
    over, side = change["fly_over"], math.copysign(1, amount)
    outbound = change["outbound_course_deg"]
    back = outbound + side * over["intercept_angle_deg"]
    heading, back_kt = held(back, speed, *wind)
    _, after_kt = held(outbound, speed, *wind)
    crab = lambda heading_deg, course_deg: signed(heading_deg - course_deg)
    first = (
        amount + side * over["intercept_angle_deg"] + crab(heading, back) - crab(change["heading_before_deg"], change["inbound_course_deg"])
    )
    last = -side * over["intercept_angle_deg"] + crab(change["heading_after_deg"], outbound) - crab(heading, back)
    _, out = turn(change["heading_before_deg"], first, speed, wind, limits)
    _, onto = turn(heading, last, speed, wind, limits)
    u = vector(outbound)
    # Left of the outbound course for a right turn: where the aircraft swings out to.
    outside = lambda north, east: -side * cross(u, (north, east))
    greatest = max(outside(north, east) for _, north, east, _ in out)
    assert over["greatest_overshoot_nm"] == pytest.approx(greatest, abs=1e-3)
    left = outside(*out[-1][1:3]) + outside(*onto[-1][1:3])
    closing = -outside(*vector(back))
    straight = left / closing
    assert straight > -0.01, "there is room for the intercept"
    north, east = (out[-1][i] + onto[-1][i] + straight * vector(back)[i - 1] for i in (1, 2))
    established = north * u[0] + east * u[1]
    assert over["established_past_fix_nm"] == pytest.approx(established, abs=2e-3)
    path, lead, past, before_kt, _ = fly_by
    extra_nm = lead + out[-1][3] + straight + onto[-1][3] - path[-1][3] - (established - past)
    extra_s = (
        lead / before_kt * 3600 + out[-1][0] + straight / back_kt * 3600 + onto[-1][0]
        - path[-1][0] - (established - past) / after_kt * 3600
    )
    assert over["extra_distance_nm"] == pytest.approx(extra_nm, abs=2e-3)
    assert over["extra_time_s"] == pytest.approx(extra_s, abs=0.02)
