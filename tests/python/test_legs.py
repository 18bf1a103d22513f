"""Path-and-terminator legs."""

import math
import pickle

import numpy as np
import pytest

import lubberline
from lubberline import Leg, _native


def fix(code, latitude, longitude, **more):
    return Leg(code, fix_latitude_deg=latitude, fix_longitude_deg=longitude, **more)


CORNER = [fix("IF", 60.0, -10.0), fix("TF", 60.5, -10.0), fix("TF", 60.5, -9.0)]
FLOWN = {"true_airspeed_kt": 250.0, "altitude_ft": 9000.0, "wind_from_deg": 280.0, "wind_speed_kt": 30.0}


def test_a_corner_is_cut_by_the_lead():
    path = lubberline.fly_legs(CORNER, **FLOWN)
    assert [segment.kind for segment in path.segments] == ["straight", "turn", "straight"]
    inbound = lubberline.geodesic_inverse(60.0, -10.0, 60.5, -10.0)
    outbound = lubberline.geodesic_inverse(60.5, -10.0, 60.5, -9.0)
    lead_nm = lubberline.lead_nm(inbound.final_bearing_deg, outbound.initial_bearing_deg, 250.0, 280.0, 30.0)
    assert path.segments[0].length_nm == pytest.approx(inbound.distance_nm - lead_nm, abs=1e-9)
    assert (path.latitude_deg[-1], path.longitude_deg[-1]) == pytest.approx((60.5, -9.0), abs=1e-9)
    over = lubberline.fly_legs([CORNER[0], fix("TF", 60.5, -10.0, fly_over=True), CORNER[2]], **FLOWN)
    assert over.length_nm > path.length_nm and over.duration_s > path.duration_s


def test_each_end_has_its_heading_and_groundspeed_and_the_turn_its_bank():
    first, turn, last = lubberline.fly_legs(CORNER, **FLOWN).segments
    held = lubberline.wind_triangle(last.start_course_deg, 250.0, 280.0, 30.0)
    assert (last.start_heading_deg, last.start_groundspeed_kt) == pytest.approx((held.heading_deg, held.groundspeed_kt))
    assert turn.bank_deg == pytest.approx(25.0) and first.bank_deg == first.heading_change_deg == 0.0
    turned = (turn.end_heading_deg - turn.start_heading_deg + 540.0) % 360.0 - 180.0
    assert turn.heading_change_deg == pytest.approx(turned, abs=0.2)


def test_the_points_are_as_close_as_asked():
    path = lubberline.fly_legs(CORNER, **FLOWN, spacing_nm=0.25)
    steps = lubberline.geodesic_inverse(
        path.latitude_deg[:-1], path.longitude_deg[:-1], path.latitude_deg[1:], path.longitude_deg[1:]
    ).distance_nm
    # A turn is cut by time, and the groundspeed varies by the wind: 30 in 250 kt.
    assert steps.max() <= 0.25 * (1 + 30 / 250)
    assert np.sum(steps) == pytest.approx(path.length_nm, rel=1e-4)


@pytest.mark.parametrize(("given", "told"), [(0.0, "0 NM"), (-1.0, "-1 NM"), (math.nan, "NaN NM"), (-math.inf, "-inf NM")])
def test_a_spacing_that_is_none_is_refused_by_name(given, told):
    with pytest.raises(lubberline.NavigationError, match=f"^spacing_nm is {told}; allowed: above 0 NM, or infinite$") as refused:
        lubberline.fly_legs(CORNER, **FLOWN, spacing_nm=given)
    assert refused.value.parameter == "spacing_nm"
    ends = lubberline.fly_legs(CORNER, **FLOWN, spacing_nm=math.inf)
    assert ends.latitude_deg.size == len(ends.segments) + 1


def test_an_arc_keeps_its_distance():
    center = (60.0, -10.0)
    gate = lubberline.geodesic_direct(*center, 250.0, 14.0)
    leave = lubberline.geodesic_direct(*center, 340.0, 14.0)
    far = lubberline.geodesic_direct(*center, 250.0, 30.0)
    legs = [
        fix("IF", far.latitude_deg, far.longitude_deg),
        fix("TF", gate.latitude_deg, gate.longitude_deg),
        fix("AF", leave.latitude_deg, leave.longitude_deg, center_latitude_deg=60.0, center_longitude_deg=-10.0, to_right=True),
    ]
    path = lubberline.fly_legs(legs, **FLOWN)
    arc = path.segments[-1]
    assert arc.kind == "arc"
    distance = lubberline.geodesic_inverse(*center, arc.end_latitude_deg, arc.end_longitude_deg).distance_nm
    assert distance == pytest.approx(14.0, abs=1e-9)


@pytest.mark.parametrize("code", ["CI", "VI", "CD", "VD", "CR", "VR", "FD"])
@pytest.mark.parametrize(("met_deg", "back_deg", "clockwise"), [(280.0, 265.0, True), (80.0, 275.0, False)])
def test_an_arc_is_rolled_out_on_from_a_course_or_a_heading(code, met_deg, back_deg, clockwise):
    # From outside and from inside, 12 NM before it meets the arc; a station beside it there, whose radial it crosses.
    center = {"center_latitude_deg": 60.0, "center_longitude_deg": -10.0}
    met = lubberline.geodesic_direct(60.0, -10.0, met_deg, 14.0)[:2]
    start = lubberline.geodesic_direct(*met, back_deg, 12.0)[:2]
    beside = lubberline.geodesic_direct(*met, back_deg + 90.0, 20.0)[:2]
    leave = lubberline.geodesic_direct(60.0, -10.0, 0.0, 14.0)[:2]
    course = lubberline.geodesic_inverse(*start, *met).initial_bearing_deg
    if code[0] == "V":
        course = lubberline.wind_triangle(course, WINDY["true_airspeed_kt"], WINDY["wind_from_deg"], WINDY["wind_speed_kt"]).heading_deg
    numbers = {"course_deg": course}
    if code[1] == "D":
        numbers |= {"distance_nm": 14.0, **center}
    if code[1] == "R":
        numbers |= {"radial_deg": lubberline.geodesic_inverse(*beside, *met).initial_bearing_deg}
        numbers |= {"center_latitude_deg": beside[0], "center_longitude_deg": beside[1]}
    arc = fix("AF", *leave, **center, to_right=clockwise)
    legs = [fix("FD", *start, **numbers), arc] if code == "FD" else [fix("IF", *start), Leg(code, **numbers), arc]
    straight, turn, arc = lubberline.fly_legs(legs, **WINDY).segments
    assert (straight.kind, turn.kind, arc.kind) == ("straight", "turn", "arc")
    # From outside away from the station on the right, from inside around that on the left: to the left both times.
    assert turn.heading_change_deg < 0.0
    away = lubberline.geodesic_inverse(60.0, -10.0, turn.end_latitude_deg, turn.end_longitude_deg)
    assert away.distance_nm == pytest.approx(14.0, abs=1e-6)
    along = away.final_bearing_deg + (90.0 if clockwise else -90.0)
    assert (turn.end_course_deg - along + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=1e-6)


def test_an_arc_that_no_turn_rolls_out_on_is_refused():
    start = lubberline.geodesic_direct(60.0, -10.0, 90.0, 0.1)
    leave = lubberline.geodesic_direct(60.0, -10.0, 200.0, 1.5)
    arc = fix("AF", leave.latitude_deg, leave.longitude_deg, center_latitude_deg=60.0, center_longitude_deg=-10.0, to_right=True)
    with pytest.raises(lubberline.NavigationError, match=r"leg 2 \(CI\) cannot be flown: no turn from its course rolls out"):
        lubberline.fly_legs([fix("IF", start.latitude_deg, start.longitude_deg), Leg("CI", course_deg=90.0), arc], **WINDY)


WINDY = {"true_airspeed_kt": 220.0, "altitude_ft": 4000.0, "climb_fpm": 900.0, "wind_from_deg": 280.0, "wind_speed_kt": 45.0}
START = [fix("IF", 60.0, -10.0), fix("TF", 60.3, -10.0, fly_over=True)]
SITE = {"center_latitude_deg": 60.2, "center_longitude_deg": -9.7, "center_elevation_ft": 300.0, "center_declination_deg": -7.0}
STATION = lubberline.Station(60.2, -9.7, elevation_ft=300.0, declination_deg=-7.0)
NEXT = fix("TF", 60.6, -9.2)


def seen(end):
    return STATION.observe(end.end_latitude_deg, end.end_longitude_deg, end.end_altitude_ft)


def ends_at(end, latitude, longitude):
    distance = lubberline.geodesic_inverse(end.end_latitude_deg, end.end_longitude_deg, latitude, longitude).distance_nm
    assert distance == pytest.approx(0.0, abs=1e-6)


def flown_from(end, latitude, longitude):
    return lubberline.geodesic_inverse(latitude, longitude, end.end_latitude_deg, end.end_longitude_deg).distance_nm


@pytest.mark.parametrize(
    ("leg", "check"),
    [
        (NEXT, lambda end: ends_at(end, 60.6, -9.2)),
        (fix("CF", 60.6, -9.2, course_deg=70.0), lambda end: ends_at(end, 60.6, -9.2) or end.end_course_deg == pytest.approx(70.0)),
        (fix("DF", 60.6, -9.2), lambda end: ends_at(end, 60.6, -9.2)),
        (fix("FA", 60.3, -10.0, course_deg=30.0, altitude_ft=12_000.0), lambda end: end.end_altitude_ft == pytest.approx(12_000.0)),
        (fix("FC", 60.3, -10.0, course_deg=30.0, distance_nm=12.0), lambda end: flown_from(end, 60.3, -10.0) == pytest.approx(12.0)),
        (fix("FD", 60.3, -10.0, course_deg=30.0, distance_nm=17.5, **SITE), lambda end: seen(end).dme_nm == pytest.approx(17.5)),
        (fix("FM", 60.3, -10.0, course_deg=30.0), lambda end: flown_from(end, 60.3, -10.0) == pytest.approx(10.0)),
        (Leg("CA", course_deg=70.0, altitude_ft=19_000.0), lambda end: end.end_altitude_ft == pytest.approx(19_000.0)),
        (Leg("VA", course_deg=70.0, altitude_ft=19_000.0), lambda end: end.end_altitude_ft == pytest.approx(19_000.0)),
        (Leg("CD", course_deg=20.0, distance_nm=15.0, **SITE), lambda end: seen(end).dme_nm == pytest.approx(15.0)),
        (Leg("VD", course_deg=20.0, distance_nm=15.0, **SITE), lambda end: seen(end).dme_nm == pytest.approx(15.0)),
        (Leg("CR", course_deg=80.0, radial_deg=10.0, **SITE), lambda end: seen(end).radial_deg == pytest.approx(10.0)),
        (Leg("VR", course_deg=80.0, radial_deg=10.0, **SITE), lambda end: seen(end).radial_deg == pytest.approx(10.0)),
        (Leg("VM", course_deg=0.0), lambda end: 5.0 < end.end_course_deg < 15.0 and end.start_heading_deg % 360.0 == pytest.approx(0.0, abs=0.1)),
        (
            fix("HF", 60.3, -10.0, course_deg=0.0, outbound_time_s=60.0, to_right=True),
            lambda end: ends_at(end, 60.3, -10.0) or end.end_course_deg % 360.0 == pytest.approx(0.0, abs=0.1),
        ),
        (fix("HM", 60.3, -10.0, course_deg=0.0, outbound_time_s=60.0, to_right=True), lambda end: ends_at(end, 60.3, -10.0)),
        (
            fix("HA", 60.3, -10.0, course_deg=0.0, outbound_time_s=60.0, altitude_ft=12_000.0, to_right=False),
            lambda end: ends_at(end, 60.3, -10.0) or end.end_altitude_ft >= 12_000.0,
        ),
    ],
    ids=lambda value: value.code if isinstance(value, Leg) else "",
)
def test_a_leg_ends_where_its_letters_say(leg, check):
    # A leg from a fix may be the first.
    legs = [leg] if leg.code in ("FA", "FC", "FD", "FM") else [*START, leg]
    path = lubberline.fly_legs(legs, **WINDY)
    assert path.segments[-1].leg == len(legs) - 1
    assert check(path.segments[-1]) in (None, True)


def magnetic(leg, variation_deg):
    """The leg as a chart gives it; its radial is from the station's north all the same."""
    if "course_deg" not in leg.numbers:
        return leg
    return Leg(leg.code, **{**leg.numbers, "course_deg": lubberline.magnetic_from_true_deg(leg.numbers["course_deg"], variation_deg)})


COURSES = [
    [fix("CF", 60.6, -9.2, course_deg=70.0)],
    [fix("FA", 60.3, -10.0, course_deg=30.0, altitude_ft=12_000.0)],
    [fix("FC", 60.3, -10.0, course_deg=30.0, distance_nm=12.0)],
    [fix("FD", 60.3, -10.0, course_deg=30.0, distance_nm=17.5, **SITE)],
    [fix("FM", 60.3, -10.0, course_deg=30.0)],
    [Leg("CA", course_deg=70.0, altitude_ft=19_000.0)],
    [Leg("CD", course_deg=20.0, distance_nm=15.0, **SITE)],
    [Leg("CI", course_deg=20.0), fix("CF", 60.8, -8.6, course_deg=95.0)],
    [Leg("CR", course_deg=80.0, radial_deg=10.0, **SITE)],
    [Leg("VA", course_deg=70.0, altitude_ft=19_000.0)],
    [Leg("VD", course_deg=20.0, distance_nm=15.0, **SITE)],
    [Leg("VI", course_deg=20.0), fix("CF", 60.8, -8.6, course_deg=95.0)],
    [Leg("VM", course_deg=2.0)],
    [Leg("VR", course_deg=80.0, radial_deg=10.0, **SITE)],
    [fix("HA", 60.3, -10.0, course_deg=60.0, altitude_ft=12_000.0)],
    [fix("HF", 60.3, -10.0, course_deg=60.0)],
    [fix("HM", 60.3, -10.0, course_deg=60.0)],
    [fix("PI", 60.3, -10.0, course_deg=250.0, distance_nm=6.0, to_right=True), fix("CF", 60.3, -10.0, course_deg=70.0)],
]


@pytest.mark.parametrize("legs", COURSES, ids=lambda legs: legs[0].code)
@pytest.mark.parametrize("variation_deg", [-6.5, 12.0, 0.0])
def test_a_magnetic_course_is_flown_as_the_true_one_it_stands_for(legs, variation_deg):
    sequence = legs if legs[0].code in ("FA", "FC", "FD", "FM", "PI") else [*START, *legs]
    charted = [magnetic(leg, variation_deg) for leg in sequence]
    path = lubberline.fly_legs(charted, **WINDY, magnetic_variation_deg=variation_deg)
    straight = lubberline.fly_legs(sequence, **WINDY)
    # To rounding: what the conversion leaves in the last digits of a course.
    assert [segment.kind for segment in path.segments] == [segment.kind for segment in straight.segments]
    for segment, same in zip(path.segments, straight.segments):
        assert segment[2:] == pytest.approx(same[2:], rel=1e-9, abs=1e-9)
    if variation_deg:
        assert charted != sequence and path != lubberline.fly_legs(charted, **WINDY)


def test_legs_without_a_course_know_no_variation():
    assert lubberline.fly_legs(CORNER, **FLOWN, magnetic_variation_deg=20.0) == lubberline.fly_legs(CORNER, **FLOWN)


VARIATION = "magnetic_variation_deg is {} deg; allowed: from -180.0 to 180.0 deg"


@pytest.mark.parametrize("fly", [lubberline.fly_legs, lubberline.brief_path])
@pytest.mark.parametrize(
    ("given", "error", "message"),
    [
        (200.0, lubberline.NavigationError, VARIATION.format(200)),
        (-180.5, lubberline.NavigationError, VARIATION.format(-180.5)),
        (math.nan, lubberline.NavigationError, VARIATION.format("NaN")),
        (math.inf, lubberline.NavigationError, VARIATION.format("inf")),
        ("5 W", TypeError, "magnetic_variation_deg must be a real number, not str"),
        (True, TypeError, "magnetic_variation_deg must be a real number, not bool"),
        (np.array([5.0]), TypeError, "magnetic_variation_deg must be a real number, not ndarray"),
    ],
)
def test_a_variation_that_is_none_is_refused_by_name(fly, given, error, message):
    with pytest.raises(error, match=message) as refused:
        fly(CORNER, **FLOWN, magnetic_variation_deg=given)
    if error is lubberline.NavigationError:
        assert refused.value.parameter == "magnetic_variation_deg"


@pytest.mark.parametrize("code", ["CI", "VI"])
def test_a_leg_to_an_intercept_ends_on_the_next(code):
    path = lubberline.fly_legs([*START, Leg(code, course_deg=20.0), fix("CF", 60.8, -8.6, course_deg=95.0)], **WINDY)
    ends_at(path.segments[-1], 60.8, -8.6)
    first = next(segment for segment in path.segments if segment.leg == 2 and segment.kind == "straight")
    flown = first.start_course_deg if code == "CI" else first.start_heading_deg
    assert flown == pytest.approx(20.0, abs=0.3)


def test_a_fixed_radius_leg_keeps_its_radius():
    center = (60.0, -10.0)
    begin, finish = (lubberline.geodesic_direct(*center, bearing, 5.0) for bearing in (270.0, 360.0))
    before = lubberline.geodesic_direct(begin.latitude_deg, begin.longitude_deg, 180.0, 8.0)
    path = lubberline.fly_legs(
        [
            fix("IF", before.latitude_deg, before.longitude_deg),
            fix("TF", begin.latitude_deg, begin.longitude_deg),
            fix("RF", finish.latitude_deg, finish.longitude_deg, center_latitude_deg=60.0, center_longitude_deg=-10.0, to_right=True),
        ],
        **WINDY,
    )
    arc = path.segments[-1]
    assert arc.kind == "arc" and arc.length_nm == pytest.approx(5.0 * math.pi / 2.0, abs=0.02)
    assert flown_from(arc, *center) == pytest.approx(5.0, abs=1e-6)


@pytest.mark.parametrize("to_right", [True, False])
def test_a_procedure_turn_comes_back_on_its_course(to_right):
    path = lubberline.fly_legs(
        [fix("PI", 60.0, -10.0, course_deg=250.0, distance_nm=6.0, to_right=to_right), fix("CF", 60.0, -10.0, course_deg=70.0)], **WINDY
    )
    ends_at(path.segments[-1], 60.0, -10.0)
    assert path.segments[-1].end_course_deg == pytest.approx(70.0, abs=0.1)
    first, back = (segment.heading_change_deg for segment in path.segments[:4] if segment.kind == "turn")
    assert (first > 0.0) is to_right and (back > 0.0) is not to_right
    # In heading, with the wind's crab; the turn back goes on until it cuts the inbound course from its own side.
    assert abs(first) == pytest.approx(45.0, abs=12.0) and abs(back) > 150.0


STEADY = {**WINDY, "climb_fpm": 0.0, "wind_speed_kt": 30.0}


def hold(**more):
    return lubberline.fly_legs([fix("HF", 60.3, -10.0, course_deg=60.0, **more)], **STEADY).segments


def test_a_racetrack_is_as_long_as_it_is_given():
    assert hold()[1].duration_s == pytest.approx(60.0, abs=0.01)
    assert hold(timed="inbound", outbound_time_s=90.0)[3].duration_s == pytest.approx(90.0, abs=0.3)
    # The wings are level before the fix is abeam: the clock waits.
    assert hold(timed="outbound")[1].duration_s >= 60.0
    assert hold(timed="inbound", hold_distance_nm=5.0)[3].length_nm == pytest.approx(5.0, abs=0.01)
    assert hold(hold_distance_nm=6.0)[1].length_nm == pytest.approx(6.0, abs=0.001)
    end = hold(hold_dme_nm=14.0, **SITE)[1]
    assert seen(end).dme_nm == pytest.approx(14.0, abs=0.005)
    with pytest.raises(lubberline.NavigationError, match="timed is 'both'; allowed: 'inbound', 'outbound'"):
        hold(timed="both")
    with pytest.raises(TypeError, match="hold_dme_nm"):
        Leg("HF", hold_dme_nm="14")


@pytest.mark.parametrize("to_right", [True, False])
def test_a_procedure_turn_of_either_form(to_right):
    def segments(**more):
        turn = fix("PI", 60.0, -10.0, course_deg=250.0, distance_nm=4.0, to_right=to_right, **more)
        path = lubberline.fly_legs([turn, fix("CF", 60.0, -10.0, course_deg=70.0)], **STEADY)
        ends_at(path.segments[-1], 60.0, -10.0)
        return path.segments

    fast = segments(off_time_s=75.0)
    assert fast[1].duration_s + fast[2].duration_s == pytest.approx(75.0, abs=0.05)
    _, first, back, *_ = segments(reversal="80_260")
    assert first.heading_change_deg == pytest.approx(80.0 if to_right else -80.0)
    assert back.heading_change_deg * first.heading_change_deg < 0.0 and abs(back.heading_change_deg) > 200.0
    with pytest.raises(lubberline.NavigationError, match="reversal is '90_270'; allowed: '45_180', '80_260'"):
        segments(reversal="90_270")


def test_a_racetrack_entered_off_its_inbound_course_is_laid_from_there():
    path = lubberline.fly_legs([*START, fix("HF", 60.3, -10.0, course_deg=30.0)], **WINDY)
    ends_at(path.segments[-1], 60.3, -10.0)
    assert path.segments[-1].end_course_deg == pytest.approx(30.0, abs=1e-6)


@pytest.mark.parametrize(
    ("legs", "message"),
    [
        ([CORNER[0], fix("TF", 60.01, -10.0), CORNER[2]], r"^leg 2 \(TF\) cannot be flown: it is too short for the turns at its ends: 0\.601\d* NM are left for a lead of 0\.9\d* NM; allowed: at least the lead$"),
        ([CORNER[1]], "begins with IF"),
        (
            [CORNER[0], Leg("CA", course_deg=10.0, altitude_ft=12_000.0)],
            r"^leg 2 \(CA\) cannot be flown: its altitude of 12000 ft is not reached from 9000 ft at 0 ft/min; allowed: a rate toward it$",
        ),
        ([CORNER[0], Leg("TF", fix_latitude_deg=math.nan, fix_longitude_deg=1.0)], r"^leg 2 \(TF\): fix_latitude_deg is missing; allowed: from -90"),
        ([CORNER[0], Leg("CA", course_deg=10.0)], r"^leg 2 \(CA\): altitude_ft is missing; allowed: from "),
    ],
)
def test_what_cannot_be_flown_says_why(legs, message):
    with pytest.raises(lubberline.NavigationError, match=message):
        lubberline.fly_legs(legs, **FLOWN)


def test_a_word_that_no_leg_has_is_a_type_error():
    with pytest.raises(TypeError, match="a leg has no latitude; allowed: fix_latitude_deg, "):
        Leg("IF", latitude=1.0)


@pytest.mark.parametrize(
    ("given", "message"),
    [
        ({"course_deg": True}, "^course_deg must be a real number, not bool$"),
        ({"outbound_time_s": False}, "^outbound_time_s must be a real number, not bool$"),
        ({"center_declination_deg": np.True_}, "^center_declination_deg must be a real number, not bool"),
        ({"fly_over": 1}, "^fly_over must be True or False, not int$"),
        ({"to_right": 0.0}, "^to_right must be True or False, not float$"),
        ({"timed": True}, "^timed must be a text, not bool$"),
        ({"reversal": 45}, "^reversal must be a text, not int$"),
    ],
)
def test_truth_values_and_numbers_do_not_stand_for_each_other(given, message):
    with pytest.raises(TypeError, match=message):
        Leg("HF", **given)
    assert Leg("RF", fly_over=True, to_right=False, center_latitude_deg=1).numbers == {"fly_over": True, "to_right": False, "center_latitude_deg": 1.0}


#: What every leg can be flown with, if it has use for it; the lengths of a racetrack are given one by one.
ANYTHING = {"fix_latitude_deg": 60.3, "fix_longitude_deg": -10.0, "course_deg": 30.0, "altitude_ft": 12_000.0, "distance_nm": 15.0, "radial_deg": 10.0, **SITE, "off_time_s": 60.0}
LENGTHS = {"outbound_time_s": 60.0, "hold_distance_nm": 5.0, "hold_dme_nm": 14.0}
SIDED = ("AF", "RF", "PI")
CODES = "IF TF CF DF AF RF FA FC FD FM CA CD CI CR VA VD VI VM VR PI".split()
RACETRACKS = [(code, {name: value}) for code in ("HA", "HF", "HM") for name, value in LENGTHS.items()]


def is_made(code, **given):
    try:
        Leg(code, **given)
    except TypeError as refused:
        name = list(given)[-1]
        assert str(refused).startswith(f"{code} has no use for {name}; allowed: ")
        assert name not in str(refused).split("allowed: ")[1].split(", ")
        return False
    return True


@pytest.mark.parametrize(("code", "length"), [*((code, {}) for code in CODES), *RACETRACKS])
def test_a_leg_is_given_the_numbers_that_are_looked_at_and_no_other(code, length):
    # The native function takes any number and looks at those that the leg needs: one that is infinite is refused if it does.
    conditions = [250.0, 280.0, 30.0, 25.0, 3.0, 5.0, 9000.0, 0.0, 30.0, 10.0], [math.nan] * 4, None, None
    for name in [*ANYTHING, *(length or LENGTHS)]:
        given = {**ANYTHING, **length, name: math.inf}
        try:
            _native.fly_legs([(code, given)], conditions, 1.0)
            told = ""
        except lubberline.NavigationError as refused:
            told = str(refused)
        looked_at = f"{name} is inf" in told
        if code == "AF" and name in ("center_elevation_ft", "center_declination_deg"):
            assert not looked_at, "a station is given whole all the same"
            looked_at = True
        side = {"to_right": True} if code in SIDED else {}
        assert is_made(code, **side, **{**length, name: 1.0}) is looked_at, name


WORDS = {"fly_over": (True, False), "to_right": (True, False), "timed": ("outbound", "inbound"), "reversal": ("45_180", "80_260")}


def each_flown():
    """The place of a leg of each code, and a sequence that is flown with it there; what it ends at a fix is left by a turn."""
    yield 0, CORNER
    for code in ("TF", "DF"):
        yield 2, [*START, fix(code, 60.6, -9.2), fix("TF", 60.9, -9.3)]
    for code in ("AF", "RF"):
        begin, end, beyond = (lubberline.geodesic_direct(60.0, -10.0, *polar)[:2] for polar in ((270.0, 14.0), (0.0, 14.0), (0.0, 30.0)))
        before = lubberline.geodesic_direct(*begin, 180.0, 12.0)[:2]
        arc = fix(code, *end, center_latitude_deg=60.0, center_longitude_deg=-10.0, to_right=True)
        yield 2, [fix("IF", *before), fix("TF", *begin), arc, fix("CF", *beyond, course_deg=0.0)]
    for leg, *rest in COURSES:
        begin = [] if leg.code in ("FA", "FC", "FD", "FM", "PI") else START
        onward = [fix("TF", 60.9, -9.3)] if leg.code == "CF" else []
        yield len(begin), [*begin, leg, *rest, *onward]


@pytest.mark.parametrize(("place", "legs"), list(each_flown()))
def test_a_leg_is_given_the_words_that_change_how_it_is_flown_and_no_other(place, legs):
    conditions = [220.0, 280.0, 30.0, 25.0, 3.0, 5.0, 4000.0, 900.0, 30.0, 10.0], [math.nan] * 4, None, None
    spelled = [(leg.code, dict(leg.numbers)) for leg in legs]
    code, numbers = spelled[place]

    def flown(name, value):
        changed = [*spelled[:place], (code, {**numbers, name: value}), *spelled[place + 1 :]]
        try:
            return _native.fly_legs(changed, conditions, 5.0)
        except lubberline.NavigationError as refused:
            return str(refused)

    for name, (one, other) in WORDS.items():
        differs = flown(name, one) != flown(name, other)
        side = {"to_right": True} if code in SIDED and name != "to_right" else {}
        assert not isinstance(flown(name, one), str), "it can be flown"
        assert is_made(code, **side, **{name: one}) is differs, (code, name)


@pytest.mark.parametrize("code", SIDED)
def test_an_arc_and_a_procedure_turn_say_to_which_side(code):
    with pytest.raises(TypeError, match=f"^{code}: to_right is missing; allowed: True, False$"):
        fix(code, 60.0, -10.0)
    assert fix(code, 60.0, -10.0, to_right=False).numbers["to_right"] is False


def test_a_racetrack_is_to_the_right_if_nothing_is_said():
    assert hold() == hold(to_right=True) != hold(to_right=False)


def test_what_a_leg_has_no_use_for_is_named():
    with pytest.raises(TypeError, match="^TF has no use for course_deg; allowed: fix_latitude_deg, fix_longitude_deg, fly_over$"):
        fix("TF", 60.0, -10.0, course_deg=4)
    with pytest.raises(TypeError, match="^HM has no use for distance_nm; allowed: .*outbound_time_s, timed, or in place of outbound_time_s hold_dme_nm or hold_distance_nm$"):
        fix("HM", 60.0, -10.0, course_deg=4.0, distance_nm=8.0)
    for two in ({"hold_dme_nm": 9.0, "hold_distance_nm": 5.0}, {"hold_distance_nm": 5.0, "outbound_time_s": 60.0}):
        with pytest.raises(TypeError, match=f"has no use for {list(two)[1]}"):
            Leg("HF", **two)
    with pytest.raises(TypeError, match="HF has no use for timed"):
        Leg("HF", hold_dme_nm=9.0, timed="inbound")
    with pytest.raises(TypeError, match="PI has no use for off_time_s"):
        fix("PI", 60.0, -10.0, course_deg=4.0, distance_nm=8.0, to_right=True, reversal="80_260", off_time_s=75.0)
    # NaN is as if it were left out.
    assert Leg("VM", course_deg=4.0, distance_nm=math.nan, hold_dme_nm=math.nan).code == "VM"


def test_a_code_that_is_none_is_refused_when_the_leg_is_made():
    with pytest.raises(lubberline.NavigationError, match="code is 'XX'; allowed: 'IF', 'TF'"):
        Leg("XX")


def test_legs_and_paths_are_values():
    leg, path = CORNER[1], lubberline.fly_legs(CORNER, **FLOWN)
    assert pickle.loads(pickle.dumps(leg)) == leg == fix("TF", 60.5, -10)
    assert pickle.loads(pickle.dumps(path)) == path
    assert len({leg, fix("TF", 60.5, -10.0)}) == len({path, lubberline.fly_legs(CORNER, **FLOWN)}) == 1
    assert leg != CORNER[2] and path != lubberline.fly_legs(CORNER, **FLOWN, bank_limit_deg=20.0)
    with pytest.raises(AttributeError, match="does not change"):
        leg.code = "CF"
    with pytest.raises(TypeError):
        leg.numbers["course_deg"] = 3.0
    with pytest.raises(TypeError, match="fix_latitude_deg"):
        Leg("TF", fix_latitude_deg="60")
    with pytest.raises(TypeError, match="climb_fpm"):
        lubberline.fly_legs(CORNER, **FLOWN, climb_fpm=None)


def test_all_the_legs_of_an_arc_at_once():
    arc = (350.0, 50.0, 12.0, "clockwise", "inside", 0.25)
    number = int(lubberline.arc_chords(*arc).legs)
    legs = lubberline.arc_chord_leg(*arc, np.arange(1, number + 1), 150.0, 310.0, 30.0)
    assert number == 3 and legs.course_deg == pytest.approx([90.0, 110.0, 130.0])
    assert legs.from_radial_deg[1:] == pytest.approx(legs.to_radial_deg[:-1])
    for place in range(number):
        alone = lubberline.arc_chord_leg(*arc, float(place + 1), 150.0, 310.0, 30.0)
        assert alone.heading_deg == pytest.approx(legs.heading_deg[place])


def test_a_path_is_a_geojson_geometry_cut_at_the_antimeridian():
    path = lubberline.fly_legs(CORNER, **FLOWN)
    line = path.__geo_interface__
    assert line["type"] == "LineString" and len(line["coordinates"]) == path.latitude_deg.size
    assert line["coordinates"][0] == pytest.approx((-10.0, 60.0))
    over = lubberline.fly_legs([fix("IF", 60.0, 179.5), fix("TF", 60.5, -179.5)], **FLOWN).__geo_interface__
    assert over["type"] == "MultiLineString"
    west, east = over["coordinates"]
    assert west[-1][0] == 180.0 and east[0][0] == -180.0 and west[-1][1] == east[0][1]
    assert 60.2 < west[-1][1] < 60.3


def test_with_an_upper_wind_each_leg_has_the_wind_where_it_begins():
    climb = {**FLOWN, "climb_fpm": 1000.0, "altitude_ft": 4000.0}
    still = {**climb, "wind_speed_kt": 0.0}
    levels = {"wind_altitude_ft": 4000.0, "upper_wind_altitude_ft": 24_000.0, "upper_wind_from_deg": 280.0, "upper_wind_speed_kt": 80.0}
    path = lubberline.fly_legs(CORNER, **still, **levels)
    first, last = path.segments[0], path.segments[-1]
    assert first.start_groundspeed_kt == pytest.approx(250.0, abs=0.5) and last.start_groundspeed_kt > 260.0
    same = {**levels, "upper_wind_speed_kt": 30.0}
    assert lubberline.fly_legs(CORNER, **climb, **same).length_nm == pytest.approx(lubberline.fly_legs(CORNER, **climb).length_nm)
    with pytest.raises(lubberline.NavigationError, match="upper_wind_speed_kt"):
        lubberline.fly_legs(CORNER, **climb, **{**levels, "upper_wind_speed_kt": None})
    with pytest.raises(lubberline.NavigationError, match="levels that ascend"):
        lubberline.fly_legs(CORNER, **climb, **{**levels, "wind_altitude_ft": 30_000.0})


CLIMB = {"true_airspeed_kt": 250.0, "altitude_ft": 4000.0, "climb_fpm": 1000.0}
LEVELS = [(4000.0, 280.0, 0.0), (9000.0, 250.0, 20.0), (16_000.0, 280.0, 50.0)]


def test_winds_at_many_levels():
    climbing = [*CORNER[:2], Leg("CA", course_deg=90.0, altitude_ft=16_000.0), Leg("CA", course_deg=90.0, altitude_ft=20_000.0)]
    path = lubberline.fly_legs(climbing, **CLIMB, wind_levels=LEVELS)
    before_ft = 4000.0
    for leg in (1, 2, 3):
        flown = [segment for segment in path.segments if segment.leg == leg]
        level = next(index for index in (1, 2, 3) if index == 3 or before_ft < LEVELS[index][0])
        # The altitude of a leg is above the sea, a level's that of the standard atmosphere: a few feet apart.
        if level < 3:
            between = lubberline.wind_between_levels(before_ft, *LEVELS[level - 1], *LEVELS[level])
            wind = (between.wind_from_deg, between.wind_speed_kt)
        else:
            wind = LEVELS[2][1:]
        straight = next(segment for segment in flown if segment.kind == "straight")
        held = lubberline.wind_triangle(straight.start_course_deg, 250.0, *wind)
        assert straight.start_groundspeed_kt == pytest.approx(held.groundspeed_kt, abs=0.1)
        before_ft = flown[-1].end_altitude_ft
    assert before_ft == pytest.approx(20_000.0)


@pytest.mark.parametrize(
    "levels",
    [
        tuple(lubberline.WindLevel(*level) for level in LEVELS),
        np.array(LEVELS),
        np.array(LEVELS, dtype=np.float32),
        np.asfortranarray(LEVELS),
        np.array([tuple(level) for level in LEVELS], dtype=[("ft", float), ("deg", float), ("kt", float)]),
        (level for level in LEVELS),
        [np.array(level) for level in LEVELS],
        [[4000, 280, 0], [9000, 250, 20], [16_000, 280, 50]],
    ],
    ids=["objects", "array", "singles", "columns", "records", "generator", "rows", "whole"],
)
def test_winds_by_level_come_as_any_sequence(levels):
    assert lubberline.fly_legs(CORNER, **CLIMB, wind_levels=levels) == lubberline.fly_legs(CORNER, **CLIMB, wind_levels=LEVELS)


def test_two_levels_are_the_wind_and_the_upper_wind_and_one_is_one_wind():
    two = {"wind_from_deg": 280.0, "wind_speed_kt": 10.0, "wind_altitude_ft": 4000.0}
    two |= {"upper_wind_altitude_ft": 24_000.0, "upper_wind_from_deg": 300.0, "upper_wind_speed_kt": 80.0}
    levels = [(4000.0, 280.0, 10.0), (24_000.0, 300.0, 80.0)]
    assert lubberline.fly_legs(CORNER, **CLIMB, **two) == lubberline.fly_legs(CORNER, **CLIMB, wind_levels=levels)
    steady = lubberline.fly_legs(CORNER, **CLIMB, wind_from_deg=280.0, wind_speed_kt=30.0)
    assert lubberline.fly_legs(CORNER, **CLIMB, wind_levels=[(9000.0, 280.0, 30.0)]) == steady


@pytest.mark.parametrize(
    ("levels", "message", "parameter"),
    [
        ([], "^wind_levels has 0 levels; allowed: from 1.0 to 1000.0$", "wind_levels"),
        (np.column_stack([np.arange(1001.0), np.zeros((1001, 2))]), "^wind_levels has 1001 levels; allowed: ", "wind_levels"),
        ([LEVELS[0], (4000.0, 1.0, 2.0)], "wind level 2 is at 4000 ft; allowed: above the level before it, at 4000 ft", None),
        ([*LEVELS, (3000.0, 1.0, 2.0)], "wind level 4 is at 3000 ft; allowed: above the level before it, at 16000 ft", None),
        ([LEVELS[0], (9000.0, math.nan, 2.0)], "wind level 2: wind_from_deg is NaN", "wind_from_deg"),
        ([(9000.0, 1.0, -2.0)], "wind level 1: wind_speed_kt is -2 kt; allowed: from 0.0 to 1000.0 kt", "wind_speed_kt"),
        ([*LEVELS, (math.inf, 1.0, 2.0)], "wind level 4: pressure_altitude_ft is inf ft", "pressure_altitude_ft"),
    ],
)
def test_the_level_that_is_wrong_is_named(levels, message, parameter):
    with pytest.raises(lubberline.NavigationError, match=message) as refused:
        lubberline.fly_legs(CORNER, **CLIMB, wind_levels=levels)
    assert refused.value.parameter == parameter


@pytest.mark.parametrize(
    ("levels", "message"),
    [
        ([LEVELS[0], (9000.0, 1.0)], "wind level 2 must be three numbers: pressure_altitude_ft, wind_from_deg, wind_speed_kt"),
        ([4000.0], "wind level 1 must be three numbers"),
        (["abc"], "wind level 1 must be three numbers"),
        ([LEVELS[0], (9000.0, "270", 1.0)], "wind level 2: wind_from_deg must be a real number, not str"),
        ([(9000.0, None, 1.0)], "wind level 1: wind_from_deg must be a real number"),
        (np.float64(3.0), "not iterable"),
        (np.array(3.0), "not one number"),
        (np.zeros((2, 4)), "wind level 1 must be three numbers"),
    ],
)
def test_what_is_no_level_is_a_type_error(levels, message):
    with pytest.raises(TypeError, match=message):
        lubberline.fly_legs(CORNER, **CLIMB, wind_levels=levels)


@pytest.mark.parametrize("other", ["wind_from_deg", "wind_speed_kt", "wind_altitude_ft", "upper_wind_altitude_ft", "upper_wind_speed_kt"])
def test_winds_by_level_are_the_only_ones(other):
    with pytest.raises(TypeError, match="allowed: one of them"):
        lubberline.fly_legs(CORNER, **CLIMB, wind_levels=LEVELS, **{other: 10.0})
