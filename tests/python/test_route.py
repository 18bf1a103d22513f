"""The brief of a route: the same as that of Rust's example on every plan of its own, and on plans that are short, long and at the antimeridian."""

import contextlib
import copy
import io
import json
import math
import pickle
import re
import subprocess

import numpy as np
import pytest
from conftest import ROOT

import lubberline
from lubberline import NavigationError, RouteFix, Station, brief_route

tomllib = pytest.importorskip("tomllib", reason="reading the plans takes Python 3.11")

FOLDER = ROOT / "core/examples/brief/plans"
PLANS = {path.stem: path.read_text() for path in sorted(FOLDER.glob("*.toml")) if "[[route]]" in path.read_text()}
ISLANDS = PLANS["islands"]


def replaced(text, *changes):
    for before, after in changes:
        assert before in text
        text = text.replace(before, after)
    return text


PLANS |= {
    "too short": replaced(ISLANDS, ("latitude_deg = 59.9300", "latitude_deg = 61.1500"), ("-10.9000", "-11.5500")),
    "antimeridian": replaced(
        ISLANDS, ("-14.4000", "177.5"), ("-11.5000", "-179.95"), ("-10.9000", "-179.0"), ("-9.3500", "-177.5"), ("-7.0200", "-175.0")
    ),
    "twice": ISLANDS + 'turn = "right"\n[[route]]\nfix = "OST"\n[[route]]\nfix = "SKE"\n',
    "by level": replaced(
        ISLANDS,
        ("wind_from_deg = 255\nwind_speed_kt = 85\n", ""),
        (
            "[errors]",
            "[[air.wind_level]]\npressure_altitude_ft = 30000\nwind_from_deg = 230\nwind_speed_kt = 70\n"
            "[[air.wind_level]]\npressure_altitude_ft = 40000\nwind_from_deg = 280\nwind_speed_kt = 100\n[errors]",
        ),
    ),
    "at once, no limit": replaced(
        ISLANDS, ("turn_rate_limit_deg_per_s = 3", "turn_rate_limit_deg_per_s = inf"), ("roll_rate_deg_per_s = 4", "roll_rate_deg_per_s = inf")
    ),
    "far and low": replaced(ISLANDS, ("pressure_altitude_ft = 35000", "pressure_altitude_ft = 4000"), ("mach = 0.78", "mach = 0.3"), ("58.7200", "54.5")),
}
# Few trials take the same way as many.
PLANS = {name: text.replace("[errors]", "[errors]\ntrials = 400", 1) for name, text in PLANS.items()}


def levels_of(given):
    rows = [(level["pressure_altitude_ft"], level["wind_from_deg"], level["wind_speed_kt"]) for level in given.get("wind_level", [])]
    return rows or None


def fix_of(fix, stations):
    site = stations[fix["fix"]]
    return RouteFix(
        Station(
            site["latitude_deg"],
            site["longitude_deg"],
            elevation_ft=site.get("elevation_ft", 0.0),
            declination_deg=site.get("declination_deg", 0.0),
            ident=site["ident"],
        ),
        name=site.get("name", ""),
        cone_half_angle_deg=site.get("cone_half_angle_deg", 50.0),
        turn=fix.get("turn", "shortest"),
        wind_from_deg=fix.get("wind_from_deg"),
        wind_speed_kt=fix.get("wind_speed_kt"),
        wind_levels=levels_of(fix),
    )


def briefed(text):
    """The plan read by Python and briefed."""
    plan = tomllib.loads(text)
    aircraft, air, errors = plan["aircraft"], plan.get("air", {}), plan.get("errors", {})
    altitude = aircraft["pressure_altitude_ft"]
    deviation = air.get("isa_deviation_k", 0.0)
    if "temperature_degc" in air:
        deviation = lubberline.isa_deviation_k(air["temperature_degc"], altitude)
    if "mach" in aircraft:
        airspeed = lubberline.tas_from_mach_kt(aircraft["mach"], altitude, deviation)
    else:
        airspeed = lubberline.tas_from_cas_kt(aircraft["calibrated_airspeed_kt"], altitude, deviation)
    usual = lubberline.usual_errors()
    limits = {name: aircraft[name] for name in ("bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s") if name in aircraft}
    stations = {station["ident"]: station for station in plan["station"]}
    return plan["title"], brief_route(
        [fix_of(fix, stations) for fix in plan["route"]],
        true_airspeed_kt=airspeed,
        pressure_altitude_ft=altitude,
        altimeter_setting_hpa=air.get("altimeter_setting_hpa", 1013.25),
        isa_deviation_k=deviation,
        wind_from_deg=air.get("wind_from_deg"),
        wind_speed_kt=air.get("wind_speed_kt"),
        wind_levels=levels_of(air),
        errors={**usual, **{name: value for name, value in errors.items() if name in usual}},
        **{name: value for name, value in errors.items() if name not in usual},
        **limits,
    )


@pytest.fixture(scope="module", params=PLANS)
def both(request, tmp_path_factory):
    """What Rust's example says of a plan, as data and as GeoJSON, and what Python makes of it."""
    path = tmp_path_factory.mktemp("plan") / "plan.toml"
    path.write_text(PLANS[request.param])

    def example(option):
        command = ["cargo", "run", "--quiet", "-p", "lubberline", "--example", "brief", "--", str(path), option]
        return json.loads(subprocess.run(command, capture_output=True, text=True, check=True, cwd=ROOT).stdout)

    return example("--json"), example("--geojson"), *briefed(PLANS[request.param])


def agree(expected, given, place="", counted=None):
    """The same structure and words; numbers to the nine decimals of the example, which a conversion of units may tip."""
    counted = [0] if counted is None else counted
    if isinstance(expected, dict):
        assert set(expected) <= set(given), place
        for key, value in expected.items():
            agree(value, given[key], f"{place}.{key}", counted)
    elif isinstance(expected, list):
        assert len(expected) == len(given), place
        for index, (one, other) in enumerate(zip(expected, given)):
            agree(one, other, f"{place}[{index}]", counted)
    elif isinstance(expected, (int, float)) and not isinstance(expected, bool):
        counted[0] += 1
        # Seconds of a whole route and feet have more digits before the point.
        assert given == pytest.approx(expected, abs=2e-9, rel=1e-11), place
    else:
        assert given == expected, place
    return counted[0]


def test_data_is_that_of_the_example(both):
    data, _, title, brief = both
    assert agree(data, brief.data(title)) > 150
    json.dumps(brief.data(title), allow_nan=False)


def test_geojson_is_that_of_the_example(both):
    _, collection, title, brief = both
    given = brief.geojson(title)
    assert agree(collection, given) > 200
    # Not a key more, unlike the data, which has the places too.
    assert [set(one["properties"]) for one in given["features"]] == [set(one["properties"]) for one in collection["features"]]
    assert brief.__geo_interface__ == brief.geojson()
    json.dumps(given, allow_nan=False)


def test_legs_say_what_is_lacking(both):
    data, _, _, brief = both
    assert [leg.long_enough for leg in brief.legs] == [leg["long_enough"] for leg in data["legs"]]
    assert all((leg.unreceived_nm > 0.0) == (leg.length_nm > leg.horizon_from_nm + leg.horizon_to_nm) for leg in brief.legs)
    assert all(leg.least_length_nm == pytest.approx(leg.length_nm - leg.straight_nm, abs=1e-9) for leg in brief.legs)


SKE = Station(61.82, -14.40, elevation_ft=310.0, declination_deg=-8.0, ident="SKE")
OST = Station(61.25, -11.50, elevation_ft=420.0, declination_deg=-6.0, ident="OST")
MAR = Station(59.93, -10.90, elevation_ft=95.0, declination_deg=-5.0, ident="MAR")
FLOWN = {"true_airspeed_kt": 455.0, "pressure_altitude_ft": 35_000.0, "wind_from_deg": 255.0, "wind_speed_kt": 85.0}


def test_the_special_plans_are_special():
    _, short = briefed(PLANS["too short"])
    assert [leg.long_enough for leg in short.legs] == [True, False, True, True]
    assert short.geojson()["features"][6 + 3]["geometry"] is None
    assert math.isnan(short.total_time_s) and math.isnan(short.turns[1].begin_after_start_s) and short.turns[0].begin_after_start_s > 0.0
    _, low = briefed(PLANS["far and low"])
    assert [leg.unreceived_nm > 0.0 for leg in low.legs] == [False, False, True, True]
    kinds = [one["geometry"]["type"] for one in briefed(PLANS["antimeridian"])[1].geojson()["features"]]
    assert kinds.count("MultiLineString") == 1


def test_a_turn_is_the_course_change_it_is_made_of():
    turn = brief_route([SKE, RouteFix(OST, turn="left", cone_half_angle_deg=40.0), MAR], **FLOWN).turns[0]
    change = turn.change
    assert change.dme_at_roll_in_nm == pytest.approx(turn.begin_at_dme_nm, abs=1e-9)
    assert change.heading_change_deg == pytest.approx(turn.heading_change_deg, abs=1e-9) and turn.heading_change_deg < -180.0
    assert change.cone_radius_nm == pytest.approx(turn.cone_radius_nm, abs=1e-9)
    assert change.fly_over.extra_time_s == pytest.approx(turn.fly_over.extra_time_s, abs=1e-6)
    # Its places, seen from the station by the library's own eyes.
    begin = lubberline.geodesic_inverse(OST.latitude_deg, OST.longitude_deg, turn.begin_latitude_deg, turn.begin_longitude_deg)
    assert begin.distance_nm == pytest.approx(abs(turn.begin_before_fix_nm), abs=1e-9)
    assert (begin.initial_bearing_deg - OST.declination_deg) % 360.0 == pytest.approx(turn.begin_on_radial_deg, abs=1e-7)
    assert turn.points[0] == (turn.begin_latitude_deg, turn.begin_longitude_deg)
    assert turn.points[-1] == (turn.roll_out_latitude_deg, turn.roll_out_longitude_deg)
    assert np.array(turn.points).shape == (41, 2)


def test_sureness_is_that_of_the_course_change():
    errors = lubberline.usual_errors()
    turn = brief_route([SKE, OST, MAR], **FLOWN, errors=errors, trials=500, seed=7).turns[0]
    alone = lubberline.course_change_sureness(turn.change, **errors, limit_nm=1.0, trials=500, seed=7)
    assert turn.sureness.margin_nm == pytest.approx(alone.margin_nm, abs=1e-6)
    assert turn.sureness.begin_with_margin_at_dme_nm == pytest.approx(
        lubberline.slant_range_nm(abs(turn.begin_before_fix_nm + turn.sureness.margin_nm), turn.height_above_station_ft), abs=1e-9
    )
    assert turn.sureness.begin_with_margin_before_fix_nm == pytest.approx(turn.begin_before_fix_nm + turn.sureness.margin_nm, abs=1e-12)
    assert turn.sureness.begin_with_margin_at_dme_nm == pytest.approx(alone.begin_with_margin_at_dme_nm, abs=1e-6)
    assert turn.sureness.foremost == alone.foremost
    nothing = brief_route([SKE, OST, MAR], **FLOWN, errors={"dme_nm": math.nan}, trials=5).turns[0].sureness
    assert math.isnan(nothing.margin_nm) and math.isnan(nothing.begin_with_margin_at_dme_nm)
    assert brief_route([SKE, OST, MAR], **FLOWN).turns[0].sureness is None


def test_winds_by_level_in_every_form():
    levels = [lubberline.WindLevel(30_000.0, 230.0, 70.0), (40_000.0, 280.0, 100.0)]
    still = {name: value for name, value in FLOWN.items() if not name.startswith("wind")}
    one = brief_route([SKE, OST, MAR], **still, wind_levels=levels)
    assert brief_route([SKE, OST, MAR], **still, wind_levels=np.array(levels)).turns == one.turns
    there = [SKE, *(RouteFix(station, wind_levels=levels) for station in (OST, MAR))]
    fixed = brief_route(there, **FLOWN)
    assert fixed.turns[0].begin_at_dme_nm == one.turns[0].begin_at_dme_nm
    between = lubberline.wind_between_levels(35_000.0, 30_000.0, 230.0, 70.0, 40_000.0, 280.0, 100.0)
    assert one.legs[0].wind_speed_kt == pytest.approx(between.wind_speed_kt, abs=1e-9)
    for wrong in ({"wind_speed_kt": 3.0, "wind_from_deg": 1.0}, {"wind_from_deg": 10.0}):
        with pytest.raises(TypeError, match="both given"):
            RouteFix(OST, wind_levels=levels, **wrong)
    with pytest.raises(TypeError, match="both given"):
        brief_route([SKE, OST, MAR], **FLOWN, wind_levels=levels)
    with pytest.raises(NavigationError, match=r"^route fix 2: wind level 2: wind_speed_kt is -1 kt; allowed: "):
        brief_route([SKE, RouteFix(OST, wind_levels=[levels[0], (40_000.0, 0.0, -1.0)])], **FLOWN)
    with pytest.raises(NavigationError, match=r"^wind level 2 is at 30000 ft; allowed: above"):
        brief_route([SKE, OST], **still, wind_levels=[levels[0], levels[0]])


@pytest.mark.parametrize(
    ("route", "flown", "message", "parameter"),
    [
        ([SKE, SKE], {}, "route leg 1: the two stations are at the same place; allowed: different positions", None),
        ([SKE, RouteFix(OST, cone_half_angle_deg=95.0)], {}, "route fix 2: cone_half_angle_deg is 95 deg; allowed: ", "cone_half_angle_deg"),
        ([SKE, RouteFix(OST, wind_from_deg=3.0, wind_speed_kt=math.nan)], {}, "route fix 2: wind_speed_kt is NaN kt; allowed: ", "wind_speed_kt"),
        ([SKE, RouteFix(OST, wind_from_deg=3.0, wind_speed_kt=-1.0)], {}, "route fix 2: wind_speed_kt is -1 kt; allowed: ", "wind_speed_kt"),
        ([SKE, OST, SKE], {}, "route fix 2: the course change from ", None),
        ([SKE, OST, MAR], {"pressure_altitude_ft": 100.0}, "route fix 2: the aircraft is ", None),
        ([SKE, OST], {"true_airspeed_kt": 0.0}, "true_airspeed_kt is 0 kt; allowed: ", "true_airspeed_kt"),
        ([SKE, OST], {"isa_deviation_k": math.nan}, "isa_deviation_k is NaN K; allowed: ", "isa_deviation_k"),
        ([SKE, OST], {"true_airspeed_kt": 45.0}, "route leg 1: wind of 85 kt from 255 deg", None),
        ([SKE, OST, MAR], {"errors": {"dme_nm": -1.0}}, "dme_nm is -1", "dme_nm"),
        ([SKE, OST, MAR], {"errors": {}, "confidence": 1.5}, "confidence is 1.5", "confidence"),
        ([SKE, OST, MAR], {"errors": {}, "trials": 0}, "trials", "trials"),
    ],
)
def test_errors_say_where_and_what(route, flown, message, parameter):
    with pytest.raises(NavigationError) as raised:
        brief_route(route, **{**FLOWN, **flown})
    assert str(raised.value).startswith(message)
    assert raised.value.parameter == parameter and raised.value.code < 0


def test_what_is_no_route_is_refused():
    with pytest.raises(TypeError, match="station must be a Station"):
        brief_route([SKE, "OST"], **FLOWN)
    with pytest.raises(NavigationError, match="turn is 'up'; allowed: 'shortest', 'left', 'right'"):
        RouteFix(OST, turn="up")
    with pytest.raises(TypeError, match="true_airspeed_kt must be a real number"):
        brief_route([SKE, OST], **{**FLOWN, "true_airspeed_kt": None})
    with pytest.raises(TypeError, match="errors has 'dme'"):
        brief_route([SKE, OST], **FLOWN, errors={"dme": 0.1})
    with pytest.raises(TypeError, match="errors must be a mapping, not list"):
        brief_route([SKE, OST], **FLOWN, errors=["dme"])


def test_few_stations_make_no_turn():
    for route in ([], [SKE], [SKE, OST]):
        brief = brief_route(iter(route), **FLOWN)
        assert (len(brief.legs), brief.turns) == (max(len(route) - 1, 0), ())
        assert brief.data()["course_changes"] == [] and len(brief.geojson()["features"]) == len(route) + len(brief.legs)
    assert brief_route([], **FLOWN).total_time_s == 0.0


def test_spacing_says_how_finely_a_leg_is_drawn():
    for spacing, most in ((5.0, 5.0), (math.inf, 100.0)):
        leg = brief_route([SKE, OST], **FLOWN, spacing_nm=spacing).legs[0]
        places = np.array(leg.points)
        steps = lubberline.geodesic_inverse(*places[:-1].T, *places[1:].T).distance_nm
        assert steps.max() <= most + 1e-9 and steps.sum() == pytest.approx(leg.straight_nm, abs=1e-6)


@pytest.mark.parametrize(("given", "told"), [(0.0, "0 NM"), (-1.0, "-1 NM"), (math.nan, "NaN NM"), (-math.inf, "-inf NM")])
def test_a_spacing_that_is_none_is_refused_by_name(given, told):
    with pytest.raises(lubberline.NavigationError, match=f"^spacing_nm is {told}; allowed: above 0 NM, or infinite$") as refused:
        brief_route([SKE, OST], **FLOWN, spacing_nm=given)
    assert refused.value.parameter == "spacing_nm"


def test_a_brief_is_a_value():
    ask = {**FLOWN, "errors": lubberline.usual_errors(), "trials": 50}
    brief, again = brief_route([SKE, OST, MAR], **ask), brief_route([SKE, OST, MAR], **ask)
    assert brief == again and hash(brief) == hash(again)
    assert pickle.loads(pickle.dumps(brief)) == brief == copy.deepcopy(brief)
    assert brief != brief_route([SKE, OST, MAR], **{**ask, "seed": 2})
    assert repr(brief).startswith("RouteBrief(SKE - OST - MAR, ")
    assert "begin_at_dme_nm" in brief._repr_html_() and "Turn at OST" in brief.turns[0]._repr_html_()
    with pytest.raises(AttributeError):
        brief.turns = ()


def test_the_page_prints_what_it_says():
    _, section = (ROOT / "docs/brief.md").read_text().split("## A route in Python\n")
    code, said = re.search(r"```python\n(.*?)```\n\n```text\n(.*?)```", section, re.DOTALL).groups()
    printed = io.StringIO()
    with contextlib.redirect_stdout(printed):
        exec(compile(code, "brief.md", "exec"), {})
    assert printed.getvalue() == said
