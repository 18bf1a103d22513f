"""The brief of a sequence of legs: against the program of the Rust library on the same plans, and against its own parts."""

import copy
import json
import math
import pickle
import subprocess

import numpy as np
import pytest
from conftest import ROOT

import lubberline
import lubberline.plot
from lubberline import Leg, Station, brief_path

tomllib = pytest.importorskip("tomllib", reason="reading the plans takes Python 3.11")

PLANS = [path for path in sorted((ROOT / "core/examples/brief/plans").glob("*.toml")) if "[[leg]]" in path.read_text()]
APPROACH = (ROOT / "core/examples/brief/plans/approach.toml").read_text()
# The program's data are given to nine decimals.
NINE_DECIMALS = 0.6e-9


def changed(*changes):
    """The approach with some of its words replaced, each of which must be there."""
    text = APPROACH
    for old, new in changes:
        assert old in text
        text = text.replace(old, new)
    return text


LEVELS = """
[[air.wind_level]]
pressure_altitude_ft = 1000
wind_from_deg = 200
wind_speed_kt = 10
[[air.wind_level]]
pressure_altitude_ft = 2500
wind_from_deg = 240
wind_speed_kt = 30
[[air.wind_level]]
pressure_altitude_ft = 6000
wind_from_deg = 280
wind_speed_kt = 55
"""
HEAD = APPROACH[: APPROACH.index("[[leg]]")]
# A hold over the station at a Mach number that is too high where the rule gives one.
TURBULENT = HEAD.replace("calibrated_airspeed_kt = 150", "mach = 0.85").replace("= 3000", "= 36000").replace('"icao"', '"icao_turbulence"') + """
[[leg]]
code = "IF"
fix = "OUTER"
[[leg]]
code = "TF"
fix = "HOL"
fly_over = true
[[leg]]
code = "HM"
fix = "HOL"
course_deg = 150
turn = "right"
"""
# An arc of 1.2 NM.
TIGHT = HEAD + "".join(
    f'[[fix]]\nident = "{ident}"\nlatitude_deg = {latitude}\nlongitude_deg = {longitude}\n'
    for ident, latitude, longitude in [("BEFORE", 59.86701, -10.03983), ("BEGIN", 59.99999, -10.03983), ("END", 60.01995, -10.0), ("MIDDLE", 60.0, -10.0)]
) + """
[[leg]]
code = "IF"
fix = "BEFORE"
[[leg]]
code = "TF"
fix = "BEGIN"
[[leg]]
code = "RF"
fix = "END"
center = "MIDDLE"
turn = "right"
"""
# The approach as a chart would give it where the variation is 7.5 degrees west.
CHARTED = changed(
    ("[path]", "[path]\nmagnetic_variation_deg = -7.5"), ("course_deg = 85\n", "course_deg = 92.5\n"), ("course_deg = 265\n", "course_deg = 272.5\n")
)
TEXTS = {path.stem: path.read_text() for path in PLANS} | {
    "tight": TIGHT.replace("= 150", "= 230").replace("limit_deg = 25", "limit_deg = 20"),
    "shallow": changed(("bank_limit_deg = 25", "bank_limit_deg = 12")),
    "fast": changed(("calibrated_airspeed_kt = 150", "calibrated_airspeed_kt = 250")),
    "climbing in levels": changed(("wind_from_deg = 250\nwind_speed_kt = 25\n", LEVELS), ("[path]", "[path]\nclimb_fpm = 250")),
    "turbulent": TURBULENT,
    "passed": changed(("[path]", "[path]\nclimb_fpm = 250"), ('code = "HM"', 'code = "HA"\naltitude_ft = 3500')),
    "charted": CHARTED,
    "charted in levels": CHARTED.replace("wind_from_deg = 250\nwind_speed_kt = 25\n", LEVELS),
}


@pytest.fixture(scope="session")
def example():
    """The program of the Rust library, built if need be."""
    command = ["cargo", "build", "--quiet", "-p", "lubberline", "--example", "brief", "--message-format=json"]
    built = subprocess.run(command, capture_output=True, text=True, check=True, cwd=ROOT)
    return next(line["executable"] for line in map(json.loads, built.stdout.splitlines()) if line.get("executable"))


def program(example, text, option, folder):
    plan = folder / "plan.toml"
    plan.write_text(text)
    answer = subprocess.run([example, str(plan), option], capture_output=True, text=True, check=False)
    assert answer.returncode == 0, answer.stderr
    return json.loads(answer.stdout)


def briefed(text):
    """The same plan, by the functions of the package."""
    plan = tomllib.loads(text)
    air, craft, path = plan["air"], plan["aircraft"], plan["path"]
    height_ft, setting, deviation = craft["pressure_altitude_ft"], air["altimeter_setting_hpa"], air["isa_deviation_k"]
    if "mach" in craft:
        airspeed = lubberline.tas_from_mach_kt(craft["mach"], height_ft, deviation)
    else:
        airspeed = lubberline.tas_from_cas_kt(craft["calibrated_airspeed_kt"], height_ft, deviation)
    sites = [
        Station(one["latitude_deg"], one["longitude_deg"], elevation_ft=one["elevation_ft"], declination_deg=one["declination_deg"], ident=one["ident"])
        for one in plan["station"]
    ]
    station = {site.ident: site for site in sites}
    fixes = {one["ident"]: (one["latitude_deg"], one["longitude_deg"]) for one in plan["fix"]}
    legs = []
    for one in plan["leg"]:
        numbers = {name: one[name] for name in ("fly_over", "course_deg", "altitude_ft", "distance_nm", "radial_deg", "outbound_time_s") if name in one}
        if "dme_nm" in one:
            numbers["distance_nm"] = one["dme_nm"]
        if "fix" in one:
            site = station.get(one["fix"])
            place = (site.latitude_deg, site.longitude_deg) if site else fixes[one["fix"]]
            numbers |= {"fix_latitude_deg": place[0], "fix_longitude_deg": place[1]}
        if "station" in one:
            site = station[one["station"]]
            numbers |= {f"center_{name}": getattr(site, name) for name in ("latitude_deg", "longitude_deg", "elevation_ft", "declination_deg")}
        if "center" in one:
            numbers |= dict(zip(("center_latitude_deg", "center_longitude_deg"), fixes[one["center"]]))
        if "turn" in one:
            numbers["to_right"] = one["turn"] == "right"
        legs.append(Leg(one["code"], **numbers))
    winds = [(one["pressure_altitude_ft"], one["wind_from_deg"], one["wind_speed_kt"]) for one in air.get("wind_level", [])]
    wind = {"wind_levels": winds} if winds else {"wind_from_deg": air["wind_from_deg"], "wind_speed_kt": air["wind_speed_kt"]}
    return brief_path(
        legs,
        true_airspeed_kt=airspeed,
        altitude_ft=lubberline.true_altitude_ft(height_ft, setting, 0.0, deviation),
        bank_limit_deg=craft["bank_limit_deg"],
        roll_rate_deg_per_s=craft["roll_rate_deg_per_s"],
        climb_fpm=path.get("climb_fpm", 0.0),
        holding_rule=path["holding_rule"],
        magnetic_variation_deg=path.get("magnetic_variation_deg"),
        altimeter_setting_hpa=setting,
        isa_deviation_k=deviation,
        stations=sites,
        fixes=fixes,
        **wind,
    ), plan["title"]


def agree(ours, theirs, place=""):
    if isinstance(theirs, dict):
        assert set(ours) == set(theirs), place
        for name in theirs:
            agree(ours[name], theirs[name], f"{place}.{name}")
    elif isinstance(theirs, list):
        assert len(ours) == len(theirs), place
        for index, (one, other) in enumerate(zip(ours, theirs)):
            agree(one, other, f"{place}[{index}]")
    elif isinstance(theirs, float):
        assert ours == pytest.approx(theirs, abs=NINE_DECIMALS, rel=1e-12), place
    else:
        assert ours == theirs, place


@pytest.fixture(scope="module", params=TEXTS)
def plan(request):
    return TEXTS[request.param]


# Levels are flown by the altitude in the standard atmosphere, the program's first wind is that at its pressure altitude.
def test_the_data_are_those_of_the_program(plan, example, tmp_path):
    brief, title = briefed(plan)
    theirs, ours = program(example, plan, "--json", tmp_path), brief.data(title)
    assert json.loads(json.dumps(ours)) == ours
    if "wind_level" in plan:
        for name in ("wind_from_deg", "wind_speed_kt"):
            theirs.pop(name), ours.pop(name)
        for name in ("heading_deg", "magnetic_heading_deg", "groundspeed_kt", "headwind_kt", "crosswind_kt"):
            # Of the initial fix, on which nothing is flown.
            theirs["legs"][0].pop(name), ours["legs"][0].pop(name)
    agree(ours, theirs)


def test_the_geojson_is_that_of_the_program(plan, example, tmp_path):
    brief, title = briefed(plan)
    agree(brief.geojson(title), program(example, plan, "--geojson", tmp_path))


def test_the_checks_have_codes_and_numbers():
    tight, _ = briefed(TEXTS["tight"])
    arc = next(check for check in tight.checks if check.kind == "arc_bank")
    leg = next(leg for leg in tight.legs if arc in leg.checks)
    assert not leg.keeps_its_arc and arc.value == leg.arc_bank_deg > arc.limit == pytest.approx(tight.conditions.bank_limit_deg)
    assert arc.sentence == f"keeping to the arc takes {arc.value:.0f} degrees of bank; the limit is {arc.limit:.0f}"
    approach, _ = briefed(APPROACH)
    cone = next(check for check in approach.checks if check.kind == "cone")
    leg = next(leg for leg in approach.legs if cone in leg.checks)
    assert cone.station.ident == "HOL" and math.isnan(cone.value)
    assert leg.turns[cone.turn].begin.stations[0].flag == "cone"
    assert "HOL" in cone.sentence

    fast, _ = briefed(TEXTS["fast"])
    held = fast.legs[-1].checks[-1]
    most = lubberline.holding_speed(lubberline.indicated_altitude_ft(held.pressure_altitude_ft, 1009.0), "icao")
    assert held.kind == "holding_airspeed" and held.limit == pytest.approx(most.indicated_kt) and held.value > held.limit
    assert held.value == pytest.approx(lubberline.cas_from_tas_kt(fast.conditions.true_airspeed_kt, held.pressure_altitude_ft, 4.0))
    mach, _ = briefed(TEXTS["turbulent"])
    held = mach.legs[-1].checks[-1]
    assert held.kind == "holding_mach" and (held.value, held.limit) == pytest.approx((0.85, 0.83), abs=1e-9)
    assert "Mach 0.83 (icao_turbulence)" in held.sentence


def test_an_altitude_that_is_passed_where_a_leg_begins_is_told():
    begin = Leg("IF", fix_latitude_deg=60.5, fix_longitude_deg=-10.0)
    far = Leg("TF", fix_latitude_deg=61.0, fix_longitude_deg=-10.0)
    given = {"true_airspeed_kt": 250.0, "altitude_ft": 4000.0}
    for more in ({"climb_fpm": 300.0}, {"climb_fpm": -300.0}):
        above = math.copysign(500.0, more["climb_fpm"])
        brief = brief_path([begin, far, Leg("CA", course_deg=0.0, altitude_ft=4000.0 + above)], **given, **more)
        (check,) = brief.checks
        assert brief.legs[2].checks == (check,) and (check.kind, check.turn, check.station) == ("altitude_passed", None, None)
        assert (check.value, check.limit) == pytest.approx((brief.legs[2].start_altitude_ft, 4000.0 + above))
        assert brief.legs[2].distance_nm == 0.0 and math.isnan(check.pressure_altitude_ft)
        told = f"its altitude of {check.limit:.0f} ft is passed already where it begins, at {check.value:.0f} ft"
        assert check.sentence == told and brief.data()["legs"][2]["checks"] == [told]
        # Thirty miles at 250 kt take 7.2 min.
        ahead = Leg("CA", course_deg=0.0, altitude_ft=4000.0 + 9.0 * above)
        assert brief_path([begin, far, ahead], **given, **more).checks == ()


def test_a_station_that_is_not_received_is_told():
    far, near = Station(60.5, -7.0, ident="FAR"), Station(60.5, -9.5, ident="NEAR")
    brief, _ = corner(altitude_ft=2000.0, climb_fpm=0.0, stations=[near, far])
    (check,) = brief.checks
    assert check in brief.legs[2].checks and (check.kind, check.turn, check.station) == ("not_received", 0, far)
    begin = brief.legs[2].turns[0].begin
    assert [seen.flag for seen in begin.stations] == ["clear", "below_horizon"]
    assert check.value == pytest.approx(lubberline.geodesic_inverse(begin.latitude_deg, begin.longitude_deg, 60.5, -7.0).distance_nm, rel=1e-3)
    # Common practice: 1.23 times the root of the feet.
    assert check.limit == pytest.approx(1.23 * math.sqrt(2000.0), abs=0.5) and check.limit < check.value
    assert check.sentence == f"turn 1 begins {check.value:.1f} NM from FAR, which is received to {check.limit:.1f} NM at that altitude"
    assert corner(altitude_ft=2000.0, climb_fpm=0.0, stations=[near])[0].checks == ()

    reading = {"center_latitude_deg": 60.5, "center_longitude_deg": -7.0, "distance_nm": 70.0, "course_deg": 90.0}
    legs = [Leg("IF", fix_latitude_deg=60.5, fix_longitude_deg=-10.0), Leg("CD", **reading)]
    (check,) = brief_path(legs, true_airspeed_kt=250.0, altitude_ft=2000.0).checks
    assert (check.kind, check.turn, check.station) == ("not_received", None, None) and check.value == pytest.approx(70.0, abs=0.1)
    assert check.sentence.startswith("the leg ends 70.0 NM from its station, which is received to ")
    (check,) = brief_path(legs, true_airspeed_kt=250.0, altitude_ft=2000.0, stations=[far]).checks
    assert check.station == far and check.sentence.startswith("the leg ends 70.0 NM from FAR")
    assert brief_path(legs, true_airspeed_kt=250.0, altitude_ft=9000.0).checks == ()


def corner(**more):
    legs = [
        Leg(code, fix_latitude_deg=latitude, fix_longitude_deg=longitude) for code, latitude, longitude in [("IF", 60.0, -10.0), ("TF", 60.5, -10.0), ("TF", 60.5, -9.0)]
    ]
    given = {"true_airspeed_kt": 250.0, "altitude_ft": 9000.0, "wind_from_deg": 280.0, "wind_speed_kt": 30.0, "climb_fpm": 500.0}
    return brief_path(legs, **{**given, **more}), lubberline.fly_legs(
        legs, **{name: value for name, value in {**given, **more}.items() if name in ("wind_levels", *given)}, spacing_nm=math.inf
    )


def test_the_path_is_the_one_that_is_flown():
    levels = [(9000.0, 280.0, 5.0), (12_000.0, 300.0, 50.0), (16_000.0, 310.0, 90.0)]
    for wind in ({}, {"wind_levels": levels, "wind_from_deg": None, "wind_speed_kt": None}):
        brief, flown = corner(**wind)
        assert brief.path.segments == flown.segments
        assert brief.total_distance_nm == pytest.approx(flown.length_nm) and brief.total_time_s == flown.duration_s
        assert sum(leg.distance_nm for leg in brief.legs) == pytest.approx(brief.total_distance_nm)
        assert brief.legs[-1].end_time_s == brief.total_time_s
        for leg in brief.legs[1:]:
            straight = next(segment for segment in flown.segments if segment.leg == leg.number - 1 and segment.kind == "straight")
            assert (leg.course_deg, leg.heading_deg) == pytest.approx((straight.start_course_deg, straight.start_heading_deg))
            assert leg.groundspeed_kt == pytest.approx(straight.start_groundspeed_kt)
            parts = lubberline.wind_components(leg.course_deg, leg.wind_from_deg, leg.wind_speed_kt)
            assert (leg.headwind_kt, leg.crosswind_kt) == pytest.approx(tuple(parts), abs=1e-9)
            assert leg.wind_correction_deg == pytest.approx((leg.heading_deg - leg.course_deg + 540.0) % 360.0 - 180.0)
        if wind:
            assert brief.legs[2].wind_speed_kt > brief.legs[1].wind_speed_kt == pytest.approx(5.0, abs=0.5)
        turn = brief.legs[2].turns[0]
        segment = flown.segments[1]
        assert (turn.bank_deg, turn.heading_change_deg, turn.time_s) == pytest.approx((segment.bank_deg, segment.heading_change_deg, segment.duration_s))
        assert (turn.begin.latitude_deg, turn.begin.course_deg) == (segment.start_latitude_deg, segment.start_course_deg)
        assert (turn.roll_out.latitude_deg, turn.roll_out.after_start_s) == (segment.end_latitude_deg, segment.end_time_s)
        assert turn.radius_nm == pytest.approx(lubberline.turn_radius_nm(250.0, turn.bank_deg))
        assert turn.governed_by == "bank_limit"
        drawn = brief.points[1]
        assert tuple(drawn[0]) == pytest.approx((turn.begin.latitude_deg, turn.begin.longitude_deg))
        assert len(brief.path.latitude_deg) == sum(len(each) - 1 for each in brief.points) + 1


def test_magnetic_directions_stand_beside_the_true_ones():
    charted, _ = briefed(CHARTED)
    approach, _ = briefed(APPROACH)
    assert (charted.conditions.magnetic_variation_deg, approach.conditions.magnetic_variation_deg) == (-7.5, None)
    assert charted.path == approach.path and charted != approach
    for leg, same in zip(charted.legs, approach.legs):
        assert (leg.course_deg, leg.heading_deg) == (same.course_deg, same.heading_deg)
        assert leg.magnetic_course_deg == pytest.approx(lubberline.magnetic_from_true_deg(leg.course_deg, -7.5))
        assert leg.magnetic_heading_deg == pytest.approx(lubberline.magnetic_from_true_deg(leg.heading_deg, -7.5))
        assert same.magnetic_course_deg is same.magnetic_heading_deg is None
        for turn, other in zip(leg.turns, same.turns):
            for point, at in ((turn.begin, other.begin), (turn.roll_out, other.roll_out)):
                assert point.magnetic_course_deg == pytest.approx(lubberline.magnetic_from_true_deg(point.course_deg, -7.5))
                # A radial overhead is NaN, which equals nothing.
                assert at.magnetic_course_deg is None and repr(point.stations) == repr(at.stations)
    assert charted.legs[4].magnetic_course_deg == pytest.approx(92.5)
    for told in (charted.data(), charted.geojson()):
        assert (told["courses_given"], told["magnetic_variation_deg"]) == ("magnetic", -7.5)
    for told in (approach.data(), approach.geojson()):
        assert (told["courses_given"], told["magnetic_variation_deg"]) == ("true", None)
    assert charted.geojson()["features"] == approach.geojson()["features"]
    assert pickle.loads(pickle.dumps(charted)) == charted and hash(charted) == hash(briefed(CHARTED)[0])


def test_the_stations_are_seen_from_where_each_turn_begins_and_ends():
    sites = [Station(60.5, -10.0, elevation_ft=300.0, declination_deg=-4.0, ident="CNR"), Station(40.0, -10.0)]
    brief, _ = corner(stations=iter(sites), cone_half_angle_deg=[60.0, 40.0])
    turn = brief.legs[2].turns[0]
    for point in (turn.begin, turn.roll_out):
        assert [reading.station for reading in point.stations] == sites
        seen = sites[0].observe(point.latitude_deg, point.longitude_deg, point.altitude_ft)
        near, far = point.stations
        assert (near.dme_nm, near.radial_deg) == pytest.approx((seen.dme_nm, seen.radial_deg))
        assert near.flag == ("cone" if seen.elevation_angle_deg > 30.0 else "clear") and far.flag == "out_of_range"
    assert brief.legs[1].fix == "CNR" and brief.legs[0].fix is None
    wide, _ = corner(stations=sites, cone_half_angle_deg=85.0)
    assert [(check.kind, check.turn, check.station.ident) for check in wide.legs[2].checks] == [("cone", 0, "CNR"), ("not_received", 0, "")]
    unnamed, _ = corner(stations=[Station(60.5, -10.0)], cone_half_angle_deg=85.0)
    assert unnamed.checks[0].sentence == "turn 1 begins in the cone of station 1, where radials are of no use"


def test_a_brief_is_a_value():
    brief, _ = corner(stations=[Station(60.5, -10.0, ident="CNR")], fixes={"END": (60.5, -9.0)})
    again, _ = corner(stations=[Station(60.5, -10.0, ident="CNR")], fixes={"END": (60.5, -9.0)})
    assert brief == again and hash(brief) == hash(again) and pickle.loads(pickle.dumps(brief)) == copy.deepcopy(brief) == brief
    assert brief != corner()[0] and brief != corner(bank_limit_deg=20.0)[0]
    assert brief.legs[2].fix == "END" and repr(brief).startswith("PathBrief(3 legs, 58.818 NM")
    assert "<table" in brief._repr_html_()
    with pytest.raises(AttributeError):
        brief.legs = ()
    kinds = [feature["properties"]["kind"] for feature in brief.__geo_interface__["features"]]
    assert kinds == ["station", "fix", "straight", "turn", "straight", "begin", "roll_out"]
    assert lubberline.plot.route(brief.path) is not None


def test_a_line_over_the_antimeridian_is_cut():
    legs = [Leg(code, fix_latitude_deg=60.0, fix_longitude_deg=longitude) for code, longitude in [("IF", 179.5), ("TF", -179.5)]]
    brief = brief_path(legs, true_airspeed_kt=250.0, altitude_ft=9000.0)
    (segment,) = brief.geojson()["features"]
    assert segment["geometry"]["type"] == "MultiLineString"


@pytest.mark.parametrize(
    ("more", "error", "message"),
    [
        ({"stations": [Station(60.0, -10.0)], "cone_half_angle_deg": 95.0}, lubberline.NavigationError, "station 1: cone_half_angle_deg is 95 deg"),
        ({"stations": [(60.0, -10.0)]}, TypeError, "station 1 must be a Station, not tuple"),
        ({"stations": [Station(60.0, -10.0)], "cone_half_angle_deg": [50.0, 50.0]}, ValueError, "2 values; allowed: one, or one for each of 1 stations"),
        ({"stations": [Station(60.0, -10.0)], "cone_half_angle_deg": "50"}, TypeError, "cone_half_angle_deg must be a real number"),
        ({"altimeter_setting_hpa": 10.0}, lubberline.NavigationError, "altimeter_setting_hpa is 10 hPa"),
        ({"isa_deviation_k": math.nan}, lubberline.NavigationError, "isa_deviation_k is NaN"),
        ({"holding_rule": "mine"}, lubberline.NavigationError, "holding_rule is 'mine'; allowed: 'faa'"),
        ({"holding_rule": 3}, TypeError, "holding_rule must be a text, not int"),
        ({"wind_levels": [(9000.0, 1.0, 2.0)]}, TypeError, "allowed: one of them"),
        ({"wind_levels": [], "wind_from_deg": None, "wind_speed_kt": None}, lubberline.NavigationError, "^wind_levels has 0 levels; allowed: from 1.0 to 1000.0$"),
        ({"true_airspeed_kt": None}, TypeError, "true_airspeed_kt must be a real number"),
        ({"true_airspeed_kt": True}, TypeError, "true_airspeed_kt must be a real number, not bool"),
        ({"fixes": {"END": ("60", -9.0)}}, TypeError, "latitude of END must be a real number"),
        ({"fixes": [1]}, TypeError, "fixes must be a mapping, not list"),
        ({"fixes": {"END": (95.0, -10.0)}}, lubberline.NavigationError, "^latitude of END is 95 deg; allowed: from -90.0 to 90.0 deg$"),
        ({"fixes": {"END": (60.0, math.inf)}}, lubberline.NavigationError, "^longitude of END is inf deg; allowed: any finite number of deg$"),
        ({"fixes": {"END": (math.nan, -10.0)}}, lubberline.NavigationError, "^latitude of END is NaN deg; allowed: "),
        ({"fixes": {3: (1.0, 2.0)}}, TypeError, "^the name of a fix must be a text, not int$"),
    ],
)
def test_what_is_wrong_is_named(more, error, message):
    with pytest.raises(error, match=message):
        corner(**more)


def test_what_is_no_leg_is_refused():
    with pytest.raises(TypeError, match="legs must be of Leg, not str"):
        brief_path(["TF"], true_airspeed_kt=250.0, altitude_ft=9000.0)


@pytest.mark.parametrize(
    ("legs", "message"),
    [
        ([], r"leg 1 \(none\)"),
        ([Leg("IF", fix_latitude_deg=60.0, fix_longitude_deg=-10.0)], "nothing is flown of the sequence"),
        ([Leg("IF", fix_latitude_deg=60.0, fix_longitude_deg=-10.0), Leg("CA", course_deg=10.0)], r"^leg 2 \(CA\): altitude_ft is missing; allowed: from "),
    ],
)
def test_legs_that_cannot_be_briefed_say_why(legs, message):
    with pytest.raises(lubberline.NavigationError, match=message):
        brief_path(legs, true_airspeed_kt=250.0, altitude_ft=9000.0)


def test_a_leg_on_which_nothing_is_flown_begins_and_ends_at_one_place():
    brief, _ = corner()
    first = brief.legs[0]
    assert (first.start_latitude_deg, first.start_longitude_deg) == (first.end_latitude_deg, first.end_longitude_deg) == pytest.approx((60.0, -10.0))
    assert first.distance_nm == first.time_s == 0.0 and math.isnan(first.shortest_straight_nm) and math.isnan(first.arc_bank_deg)
    assert first.keeps_its_arc and first.turns == first.checks == () and not np.isnan(first.course_deg)


def test_the_page_prints_what_it_says(capsys):
    page = (ROOT / "docs" / "legs.md").read_text()
    blocks = page.split("```python\n")[1:]
    for block in blocks:
        exec(compile(block.split("```")[0], "legs.md", "exec"), {})
    told = "".join(block.split("```text\n")[1].split("```")[0] for block in blocks if "```text\n" in block)
    assert capsys.readouterr().out == told
