"""Pictures: they show what the library computes, name their units, keep their labels apart, and can be told apart by anyone."""

import itertools
import re
import subprocess
import sys

import numpy as np
import pytest
from matplotlib import colors, pyplot
from matplotlib.contour import QuadContourSet
from matplotlib.patches import Circle, Wedge
from matplotlib.text import Annotation

import lubberline
from lubberline import plot
from lubberline.plot import _look

CHANGE = {"true_airspeed_kt": 320.0, "wind_from_deg": 270.0, "wind_speed_kt": 45.0, "height_above_station_ft": 9_000.0}
HOLD = {"true_airspeed_kt": 180.0, "wind_from_deg": 350.0, "wind_speed_kt": 30.0}
STATION = lubberline.Station(61.25, -11.5, elevation_ft=420.0, declination_deg=-6.0, ident="OST")


def flown():
    start = lubberline.geodesic_direct(61.25, -11.5, 220.0, 10.0)
    place = {"station_latitude_deg": 61.25, "station_longitude_deg": -11.5, "course_deg": 110.0}
    flight = lubberline.Flight(start.latitude_deg, start.longitude_deg, 9_000.0, heading_deg=40.0, true_airspeed_kt=320.0, **place)
    flight.turn_at_station(40.0, 110.0)
    return flight.run(180.0)


def path():
    fixes = [("IF", 60.5, -12.5), ("TF", 61.25, -11.5), ("TF", 61.3, -10.0)]
    legs = [lubberline.Leg(code, fix_latitude_deg=latitude, fix_longitude_deg=longitude) for code, latitude, longitude in fixes]
    return lubberline.fly_legs(legs, true_airspeed_kt=420.0, altitude_ft=31_000.0)


def drawn():
    """Each picture as it is drawn into given axes."""
    change = lubberline.course_change(40.0, 110.0, **CHANGE)
    errors = {"bank_deg": 2.0, "roll_in_delay_s": 2.0, "mean_delay_s": 2.0}
    sure = lubberline.course_change_sureness(change, trials=1_000, **errors)
    return {
        "course_change": lambda ax: plot.course_change(change, ident="OST", ax=ax),
        "track": lambda ax: plot.track(STATION, [61.1, 61.2], [-11.6, -11.5], ax=ax),
        "needle": lambda ax: plot.needle(flown(), ax=ax),
        "to_from": lambda ax: plot.to_from(flown(), ax=ax),
        "dme": lambda ax: plot.dme(flown(), ax=ax),
        "bank": lambda ax: plot.bank(flown(), ax=ax),
        "overshoot": lambda ax: plot.overshoot(change, limit_nm=0.5, trials=4_000, ax=ax, **errors),
        "error_sources": lambda ax: plot.error_sources(sure, ax=ax),
        "rule_error": lambda ax: plot.rule_error(ax=ax),
        "route": lambda ax: plot.route(path(), stations=[STATION], ax=ax),
        "hold": lambda ax: plot.hold(270.0, ident="OST", ax=ax, **HOLD),
        "profile": lambda ax: plot.profile(33_000.0, ident="OST", ax=ax),
    }


def program(text):
    return subprocess.run([sys.executable, "-c", text], capture_output=True, text=True, check=False)


def test_the_package_draws_nothing_and_needs_nothing_until_it_is_asked():
    assert program("import sys, lubberline; assert 'matplotlib' not in sys.modules").returncode == 0
    without = program("import sys; sys.modules['matplotlib'] = None; import lubberline; import lubberline.plot")
    assert without.returncode != 0 and "pip install 'lubberline[plot]'" in without.stderr


def test_every_picture_is_here():
    assert set(drawn()) == set(plot.__all__) - {"COLORS"}


@pytest.mark.parametrize("name", sorted(drawn()))
def test_a_picture_is_drawn_into_the_axes_given_and_its_axes_name_their_units(name):
    figure, (ax, other) = pyplot.subplots(1, 2)
    assert drawn()[name](ax) is ax
    assert ax.has_data() and not other.has_data() and pyplot.get_fignums() == [figure.number]
    if name not in ("track", "error_sources", "to_from"):
        for text in (ax.get_xlabel(), ax.get_ylabel()):
            assert re.search(r"\((NM|s|degrees|kt|%|1000 ft)\)$", text), text
    new = drawn()[name](None)
    assert new is not ax and new.get_xlabel().endswith(")")


@pytest.mark.parametrize("name", ["course_change", "hold", "route", "track"])
def test_a_plan_has_north_up_and_one_scale(name):
    ax = drawn()[name](None)
    assert ax.get_aspect() == 1.0
    assert ax.get_xlabel().startswith("east of") and ax.get_ylabel().startswith("north of")
    assert ax.get_ylim()[0] < ax.get_ylim()[1] and ax.get_xlim()[0] < ax.get_xlim()[1]


def line(ax, label):
    return np.column_stack(next(one for one in ax.get_lines() if one.get_label() == label).get_data())


def along(course_deg, points):
    """Distance along a course through the middle and to its right."""
    turn = np.radians(course_deg)
    return points @ [np.sin(turn), np.cos(turn)], points @ [np.cos(turn), -np.sin(turn)]


@pytest.mark.parametrize(("inbound_deg", "outbound_deg"), [(40.0, 110.0), (350.0, 290.0), (200.0, 320.0)])
def test_the_course_change_is_drawn_where_it_is_flown(inbound_deg, outbound_deg):
    change = lubberline.course_change(inbound_deg, outbound_deg, **CHANGE)
    side = np.sign(change.heading_change_deg)
    ax = plot.course_change(change)
    planned = line(ax, "turn as planned")
    before, right = along(inbound_deg, planned)
    assert right[np.argmin(before)] == pytest.approx(0.0, abs=1e-9)
    assert (right * side > -1e-9).all(), "the turn leaves the inbound course to its own side"
    assert np.hypot(*planned.T).min() == pytest.approx(change.closest_approach_nm, abs=0.01)
    past, right = along(outbound_deg, planned)
    assert right[np.argmax(past)] == pytest.approx(0.0, abs=1e-9)
    past, right = along(outbound_deg, line(ax, "flown over first"))
    assert (-right * side).max() == pytest.approx(change.fly_over.greatest_overshoot_nm, abs=0.01)
    assert past[-1] == pytest.approx(change.fly_over.established_past_fix_nm, abs=1e-6)
    cone = next(one for one in ax.patches if isinstance(one, Circle))
    assert cone.get_radius() == pytest.approx(change.cone_radius_nm)

    ruled = line(ax, "begun by the rule of thumb")
    reading_nm = lubberline.rule_reading_nm(change.groundspeed_before_kt, outbound_deg - inbound_deg, 9_000.0)
    assert -along(inbound_deg, ruled)[0][0] == pytest.approx(lubberline.ground_distance_nm(reading_nm, 9_000.0), abs=0.05)
    texts = " ".join(text.get_text() for text in ax.texts)
    assert f"{change.dme_at_roll_in_nm:.1f} DME" in texts and f"{reading_nm:.1f} DME" in texts


def test_the_north_of_a_plan_is_named_where_it_is_known():
    assert drawn()["route"](None).get_ylabel() == "north of OST, true north (NM)"
    assert drawn()["track"](None).get_ylabel() == "north of OST, the station's north (NM)"
    ax = drawn()["course_change"](None)
    assert ax.get_ylabel() == "north of OST (NM)"
    for _ in range(2):
        plot.track(STATION, [61.1, 61.2], [-11.6, -11.5], ax=ax)
        assert ax.get_ylabel() == "north of OST, the station's north (NM)"


def test_a_route_shows_the_wind_it_is_told():
    texts = [text.get_text() for text in plot.route(path(), stations=[STATION], wind_from_deg=250.0, wind_speed_kt=70.0).texts]
    assert "wind 250\N{DEGREE SIGN}/70 kt" in texts and "N" in texts
    assert "N" not in [text.get_text() for text in drawn()["route"](None).texts]


@pytest.mark.parametrize("name", ["course_change", "route", "hold", "profile"])
def test_labels_keep_off_one_another_and_stay_in_the_picture(name):
    ax = drawn()[name](None)
    apart(ax)


@pytest.mark.parametrize("inbound_deg", range(0, 360, 60))
@pytest.mark.parametrize("change_deg", [-100.0, 35.0, 120.0])
def test_labels_find_a_place_for_any_turn(inbound_deg, change_deg):
    change = lubberline.course_change(inbound_deg, inbound_deg + change_deg, **CHANGE)
    apart(plot.course_change(change, ident="OST"))


def apart(ax):
    figure = ax.get_figure()
    figure.draw_without_rendering()
    boxes = {text.get_text(): text.get_window_extent() for text in ax.texts if isinstance(text, Annotation) and text.get_text()}
    for (one, first), (other, second) in itertools.combinations(boxes.items(), 2):
        width = min(first.x1, second.x1) - max(first.x0, second.x0)
        height = min(first.y1, second.y1) - max(first.y0, second.y0)
        assert width < 2.0 or height < 2.0, f"{one!r} lies over {other!r}"
    for text, box in boxes.items():
        assert box.x0 > -2.0 and box.y0 > -2.0 and box.x1 < figure.bbox.x1 + 2.0 and box.y1 < figure.bbox.y1 + 2.0, text


def test_a_track_lies_where_its_radials_and_distances_are():
    ax = plot.track(STATION, [61.1, 61.2], [-11.6, -11.4], label="flown")
    points = line(ax, "flown")
    seen = STATION.observe([61.1, 61.2], [-11.6, -11.4], 420.0)
    np.testing.assert_allclose(np.hypot(*points.T), seen.ground_distance_nm)
    np.testing.assert_allclose(np.degrees(np.arctan2(*points.T)) % 360.0, seen.radial_deg)


def test_the_readings_are_those_of_the_flight_and_the_needle_stops_at_full_scale():
    table = flown()
    shown = np.asarray(plot.needle(table).get_lines()[-1].get_ydata())
    given = table["deviation_deg"]
    assert np.nanmin(given) < -10.0 and np.nanmin(shown) == -10.0
    assert np.array_equal(np.isnan(shown), np.isnan(given)) and np.isnan(shown).any()
    within = np.abs(given) < 10.0
    assert np.array_equal(shown[within], given[within])
    ax = plot.dme(table)
    assert np.array_equal(ax.get_lines()[-1].get_ydata(), table["dme_nm"])
    assert ax.get_ylim()[0] == 0.0
    cone_s = table["time_s"][table["in_cone"] > 0.0]
    shaded = ax.patches[0].get_extents().transformed(ax.transData.inverted())
    assert shaded.x0 == pytest.approx(cone_s[0]) and cone_s[-1] <= shaded.x1 <= cone_s[-1] + 1.0 + 1e-9


def test_to_from_and_flag_are_shown_when_the_receiver_shows_them():
    table = flown()
    ax = plot.to_from(table)
    for bars, on in zip(ax.collections, (table["to_from"] == 1.0, table["to_from"] == 2.0, table["flag"] != 0.0), strict=True):
        (bar,) = bars.get_paths()
        first_s, after_s = bar.vertices[:, 0].min(), bar.vertices[:, 0].max()
        assert on.any() and first_s == table["time_s"][on][0] and table["time_s"][on][-1] <= after_s <= table["time_s"][on][-1] + 1.0


def test_the_margin_leaves_what_it_promises_beyond_the_limit():
    ax = drawn()["overshoot"](None)
    plain, safer = (float(re.search(r": (\d+) %", text.get_text()).group(1)) for text in ax.get_legend().get_texts())
    assert plain > 10.0 and 4.0 <= safer <= 6.0


@pytest.mark.parametrize("side", ["right", "left"])
def test_a_hold_closes_and_its_sectors_are_those_of_its_entries(side):
    ax = plot.hold(310.0, side=side, **HOLD)
    pattern = lubberline.holding_pattern(310.0, side, "inbound", 60.0, 180.0, 350.0, 30.0)
    points = line(ax, "pattern in the wind")
    np.testing.assert_allclose(points[[0, -1]], 0.0, atol=1e-6)
    before, right = along(310.0, points)
    assert np.ptp(right) == pytest.approx(pattern.width_nm, abs=0.01) and np.ptp(before) == pytest.approx(pattern.length_nm, abs=0.01)
    assert (right * (1.0 if side == "right" else -1.0)).max() > 1.0

    wedges = [one for one in ax.patches if isinstance(one, Wedge)]
    names = ("direct", "parallel", "offset")
    for heading_deg in np.arange(5.0, 360.0, 10.0):
        from_deg = 90.0 - (heading_deg + 180.0)
        inside = [name for name, one in zip(names, wedges, strict=True) if (from_deg - one.theta1) % 360.0 < (one.theta2 - one.theta1) % 360.0]
        sector = lubberline.holding_entry(heading_deg, 310.0, side).entry
        assert inside == [{1: "parallel", 2: "offset", 3: "direct"}[int(sector)]], heading_deg


def points_of(ax, levels):
    """Speeds and heights on the first contours of these levels."""
    lines = next(one for one in ax.collections if isinstance(one, QuadContourSet) and not one.filled and list(one.levels) == levels)
    vertices = np.vstack([path.vertices for path in lines.get_paths()])
    assert len(vertices) > 50
    return vertices[:, 0], vertices[:, 1] * 1000.0


@pytest.mark.parametrize("change_deg", [60.0, 90.0, 120.0])
def test_the_turn_begun_by_rule_rolls_out_on_the_course_on_the_bold_line_and_is_as_far_off_as_allowed_on_the_edges(change_deg):
    ax = plot.rule_error(change_deg, allowed_beyond_nm=0.4, allowed_short_nm=0.8)
    on_course = lubberline.rule_lead_flown(0.0, change_deg, *points_of(ax, [0.0])).overshoot_nm
    assert np.abs(on_course).max() < 0.02
    edges = lubberline.rule_lead_flown(0.0, change_deg, *points_of(ax, [-0.8, 0.4])).overshoot_nm
    assert np.minimum(np.abs(edges + 0.8), np.abs(edges - 0.4)).max() < 0.02


def test_what_is_hatched_is_what_the_verdict_calls_safe():
    ax = plot.rule_error(90.0)
    (hatched,) = (one for one in ax.collections if isinstance(one, QuadContourSet) and one.hatches == ["///"])
    (region,) = hatched.get_paths()
    speeds_kt, heights_ft = (one.ravel() for one in np.meshgrid(np.arange(95.0, 600.0, 20.0), np.arange(500.0, 45_000.0, 2_500.0)))
    flown = lubberline.rule_lead_flown(0.0, 90.0, speeds_kt, heights_ft)
    # Away from the edges, which are drawn between the points of a grid.
    clear = (np.abs(flown.overshoot_nm + 1.0) > 0.03) & (np.abs(flown.overshoot_nm - 0.5) > 0.03)
    inside = region.contains_points(np.column_stack([speeds_kt, heights_ft / 1000.0]))
    assert np.array_equal(inside[clear], flown.verdict[clear] == 0.0)
    assert 0.1 < inside.mean() < 0.5


def test_a_route_names_the_reading_at_which_its_turn_begins():
    flown_path = path()
    ax = plot.route(flown_path, stations=[STATION])
    turn = next(one for one in flown_path.segments if one.kind == "turn")
    seen = STATION.observe(turn.start_latitude_deg, turn.start_longitude_deg, 31_000.0)
    assert f"OST {seen.dme_nm:.1f} DME\nradial {seen.radial_deg:03.0f}\N{DEGREE SIGN}" in [text.get_text() for text in ax.texts]
    points = line(ax, "path over the ground")
    east_nm = lubberline.geodesic_inverse(61.25, -11.5, 61.3, -10.0)
    bearing = np.radians(east_nm.initial_bearing_deg)
    np.testing.assert_allclose(points[-1], east_nm.distance_nm * np.array([np.sin(bearing), np.cos(bearing)]), atol=1e-6)


#: What is left of a colour (linear RGB) without one kind of cone: Machado, Oliveira and Fernandes 2009, severity 1 (from memory).
EYES = {
    "every cone": np.eye(3),
    "no red": [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
    "no green": [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
    "no blue": [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]],
    "no colour": [[0.2126, 0.7152, 0.0722]] * 3,
}


def lab(color, eye):
    """CIE L*a*b* of a colour under D65, as an eye sees it."""
    red_green_blue = np.array(colors.to_rgb(color))
    linear = np.where(red_green_blue <= 0.04045, red_green_blue / 12.92, ((red_green_blue + 0.055) / 1.055) ** 2.4)
    linear = np.clip(np.asarray(eye) @ linear, 0.0, 1.0)
    xyz = np.array([[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]]) @ linear / [0.9505, 1.0, 1.089]
    x, y, z = np.where(xyz > 0.008856, np.cbrt(xyz), 7.787 * xyz + 16.0 / 116.0)
    return np.array([116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)])


@pytest.mark.parametrize("eye", EYES)
def test_lines_are_told_apart_by_every_eye(eye):
    for one, other in itertools.combinations(("path", "over", "rule"), 2):
        apart = np.linalg.norm(lab(plot.COLORS[one], EYES[eye]) - lab(plot.COLORS[other], EYES[eye]))
        # In shades of grey two of them come near; their dashes differ.
        assert apart > (20.0 if eye != "no colour" else 0.0), f"{one} and {other}: {apart:.0f}"
    for early, late in (("early", "late"),):
        assert np.linalg.norm(lab(plot.COLORS[early], EYES[eye]) - lab(plot.COLORS[late], EYES[eye])) > (20.0 if eye != "no colour" else 0.0)
    for name in ("path", "over", "rule", "course", "ink"):
        assert lab("white", EYES[eye])[0] - lab(plot.COLORS[name], EYES[eye])[0] > 35.0, f"{name} on white"


def test_no_two_lines_have_the_same_dashes():
    styles = [repr(style["linestyle"]) for style in _look.LINES.values()]
    assert len(set(styles)) == len(styles)


def test_what_is_hardly_there_is_drawn_as_well():
    straight_on = lubberline.course_change(40.0, 40.0, true_airspeed_kt=300.0)
    assert plot.course_change(straight_on).has_data()
    assert plot.overshoot(straight_on, limit_nm=0.5, trials=100, bank_deg=1.0).has_data()
    assert plot.error_sources(lubberline.course_change_sureness(straight_on, bank_deg=1.0, trials=10)).get_xlim()[0] == 0.0
    assert plot.needle(flown()[:1]).has_data()
    assert plot.track(STATION, [], []).get_xlabel() == "east of OST (NM)"
    against = lubberline.course_change(0.0, 90.0, true_airspeed_kt=100.0, wind_from_deg=45.0, wind_speed_kt=98.0)
    assert plot.course_change(against).has_data()


def test_what_cannot_be_drawn_says_so():
    with pytest.raises(ValueError, match="nothing to draw"):
        plot.course_change(lubberline.course_change(np.nan, 40.0, true_airspeed_kt=300.0))
    with pytest.raises(ValueError, match="height_ft is 0 ft"):
        plot.profile(0.0)
    with pytest.raises(ValueError, match="course_change_deg is 180 deg"):
        plot.rule_error(180.0)
    with pytest.raises(ValueError, match="allowed_short_nm is 0 NM"):
        plot.rule_error(90.0, allowed_short_nm=0.0)
    with pytest.raises(lubberline.NavigationError, match="wind of 120 kt"):
        plot.hold(90.0, true_airspeed_kt=90.0, wind_from_deg=90.0, wind_speed_kt=120.0)
    assert not pyplot.get_fignums(), "nothing is begun that is not drawn"
