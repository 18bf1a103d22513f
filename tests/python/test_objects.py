"""Station and course change."""

import inspect
import math
import pickle

import numpy as np
import pytest

import lubberline


def test_a_course_change_in_still_air_with_an_instant_roll():
    change = lubberline.course_change(350.0, 50.0, true_airspeed_kt=430.0, roll_rate_deg_per_s=math.inf)
    assert change.lead_nm == pytest.approx(change.radius_nm * math.tan(math.radians(30.0)), abs=1e-9)
    assert change.past_fix_at_roll_out_nm == pytest.approx(change.lead_nm, abs=1e-9)
    assert change.governed_by == "bank_limit"
    assert change.dme_at_roll_in_nm == pytest.approx(change.lead_nm)
    assert change.heading_change_deg == pytest.approx(60.0)


def test_a_number_that_is_none_leaves_nothing_known():
    for unknown in ({"true_airspeed_kt": math.nan}, {"true_airspeed_kt": 300.0, "cone_half_angle_deg": math.nan}):
        change = lubberline.course_change(10.0, 80.0, height_above_station_ft=20_000, **unknown)
        assert math.isnan(change.lead_nm) and math.isnan(change.fly_over.extra_time_s)
        assert change.governed_by is None and change.enters_cone is None
        assert "governed_by=None" in repr(change) and "None" in change._repr_html_()


def test_it_agrees_with_the_plain_function():
    change = lubberline.course_change(
        10, 80, true_airspeed_kt=300, wind_from_deg=330, wind_speed_kt=70, height_above_station_ft=20_000, bank_limit_deg=20
    )
    assert change.lead_nm == lubberline.lead_nm(10.0, 80.0, 300.0, 330.0, 70.0, 20.0)
    assert change.dme_at_roll_in_nm == lubberline.slant_range_nm(change.lead_nm, 20_000.0)
    assert change.enters_cone == (change.closest_approach_nm < change.cone_radius_nm)
    assert change.fly_over.extra_time_s > 0.0 and change.fly_over.greatest_overshoot_nm > 0.0


def test_left_and_right():
    short = lubberline.course_change(0.0, 90.0, true_airspeed_kt=200.0)
    assert short == lubberline.course_change(0.0, 90.0, true_airspeed_kt=200.0, turn="right").__class__(
        **{**short.__dict__}
    )
    assert short == lubberline.course_change(0, np.float32(90), true_airspeed_kt=np.int64(200), turn="shortest")
    assert short != lubberline.course_change(0.0, 90.0, true_airspeed_kt=201.0)
    long = lubberline.course_change(0.0, 90.0, true_airspeed_kt=200.0, turn="left")
    assert long.heading_change_deg == pytest.approx(-270.0) and long.lead_nm < 0.0
    with pytest.raises(lubberline.NavigationError, match="'shortest', 'left', 'right'"):
        lubberline.course_change(0.0, 90.0, true_airspeed_kt=200.0, turn="up")


def test_the_path_of_the_turn():
    change = lubberline.course_change(20.0, 100.0, true_airspeed_kt=400.0, wind_from_deg=10.0, wind_speed_kt=90.0)
    ends = change.at([0.0, change.duration_s])
    np.testing.assert_allclose(ends.distance_nm, [change.lead_nm, change.past_fix_at_roll_out_nm], atol=1e-9)
    np.testing.assert_allclose(ends.bearing_from_fix_deg, [change.radial_at_roll_in_deg, change.radial_at_roll_out_deg], atol=1e-7)
    times = np.linspace(0.0, change.duration_s, 2001)
    assert change.at(times).distance_nm.min() == pytest.approx(change.closest_approach_nm, abs=1e-5)
    assert change.at(change.duration_s / 2).bank_deg == pytest.approx(change.bank_deg)


def test_the_path_over_the_station():
    change = lubberline.course_change(20.0, 100.0, true_airspeed_kt=400.0, wind_from_deg=10.0, wind_speed_kt=90.0)
    over = change.fly_over
    ends = change.fly_over_at([0.0, over.duration_s])
    np.testing.assert_allclose(ends.distance_nm, [0.0, over.established_past_fix_nm], atol=1e-9)
    np.testing.assert_allclose(ends.heading_deg, [change.heading_before_deg, change.heading_after_deg], atol=1e-9)
    way = change.fly_over_at(np.linspace(0.0, over.duration_s, 2001))
    outside_nm = -way.distance_nm * np.sin(np.radians(way.bearing_from_fix_deg - 100.0))
    assert np.nanmax(outside_nm) == pytest.approx(over.greatest_overshoot_nm, abs=1e-5)


@pytest.mark.parametrize(
    ("keywords", "message"),
    [
        ({"true_airspeed_kt": 0.0}, "true_airspeed_kt is 0 kt"),
        ({"bank_limit_deg": 90.0}, "bank_limit_deg is 90 deg"),
        ({"roll_rate_deg_per_s": 0.0}, "roll_rate_deg_per_s is 0 deg/s"),
        ({"wind_speed_kt": 500.0, "wind_from_deg": 0.0}, "make no way"),
        ({"outbound_course_deg": 190.0}, "reversal"),
        ({"height_above_station_ft": math.inf}, "height_above_station_ft is inf ft"),
    ],
)
def test_what_has_no_answer_says_why(keywords, message):
    given = {"inbound_course_deg": 10.0, "outbound_course_deg": 60.0, "true_airspeed_kt": 300.0, **keywords}
    with pytest.raises(lubberline.NavigationError, match=message):
        lubberline.course_change(given.pop("inbound_course_deg"), given.pop("outbound_course_deg"), **given)


SETTINGS = [
    name
    for name, parameter in inspect.signature(lubberline.course_change).parameters.items()
    if name != "turn"
]
USUAL = {"inbound_course_deg": 10.0, "outbound_course_deg": 60.0, "true_airspeed_kt": 300.0, "wind_from_deg": 0.0, "wind_speed_kt": 0.0}


@pytest.mark.parametrize("setting", SETTINGS)
def test_nan_in_nan_out(setting):
    change = lubberline.course_change(**{**USUAL, setting: math.nan})
    assert math.isnan(change.lead_nm) and math.isnan(change.fly_over.extra_time_s)
    assert math.isnan(change.at(3.0).distance_nm)
    assert math.isnan(lubberline.course_change(**USUAL).at(math.nan).distance_nm)


@pytest.mark.parametrize("setting", SETTINGS)
@pytest.mark.parametrize("bad", [math.inf, -math.inf, 1e308, -1e308, 5e-324, 0.0, -0.0])
def test_bad_numbers_give_an_answer_or_an_error(setting, bad):
    try:
        change = lubberline.course_change(**{**USUAL, setting: bad})
    except lubberline.NavigationError as error:
        assert error.code < 0 and "allowed" in str(error)
    else:
        assert math.isfinite(change.lead_nm) and math.isfinite(change.duration_s)


@pytest.mark.parametrize("setting", [*SETTINGS, "turn"])
@pytest.mark.parametrize("wrong", ["10", None, 1j, [1.0, 2.0], np.array([1.0, 2.0])])
def test_a_setting_that_is_no_number_is_named(setting, wrong):
    with pytest.raises((TypeError, lubberline.NavigationError), match=setting):
        lubberline.course_change(**{**USUAL, setting: wrong})


@pytest.mark.parametrize("parameter", ["latitude_deg", "longitude_deg", "elevation_ft", "declination_deg"])
def test_a_station_s_number_is_one(parameter):
    with pytest.raises(TypeError, match=parameter):
        lubberline.Station(**{"latitude_deg": 1.0, "longitude_deg": 2.0, parameter: "3"})
    with pytest.raises(TypeError, match="ident"):
        lubberline.Station(1.0, 2.0, ident=3)


def test_the_defaults_of_a_course_change():
    parameters = inspect.signature(lubberline.course_change).parameters
    defaults = {name: one.default for name, one in parameters.items() if one.default is not inspect.Parameter.empty}
    assert defaults == {
        "wind_from_deg": None,
        "wind_speed_kt": None,
        "bank_limit_deg": 25.0,
        "turn_rate_limit_deg_per_s": 3.0,
        "roll_rate_deg_per_s": 5.0,
        "height_above_station_ft": 0.0,
        "turn": "shortest",
        "intercept_angle_deg": 30.0,
        "cone_half_angle_deg": 50.0,
    }
    assert [name for name, one in parameters.items() if one.kind is one.POSITIONAL_OR_KEYWORD] == list(USUAL)[:2]


def test_station():
    station = lubberline.Station(61.25, -11.5, elevation_ft=420.0, declination_deg=-6.0, ident="OST")
    seen = station.observe(61.5, -11.0, 31_000.0)
    assert seen._fields == ("radial_deg", "dme_nm", "ground_distance_nm", "elevation_angle_deg")
    line = lubberline.geodesic_inverse(61.25, -11.5, 61.5, -11.0)
    assert seen.radial_deg == pytest.approx(line.initial_bearing_deg + 6.0)
    assert seen.ground_distance_nm == pytest.approx(line.distance_nm, abs=1e-10)
    assert seen.dme_nm == pytest.approx(lubberline.slant_range_nm(line.distance_nm, 30_580.0), abs=1e-3)
    overhead = station.observe(61.25, -11.5, 31_000.0)
    assert math.isnan(overhead.radial_deg) and overhead.elevation_angle_deg == pytest.approx(90.0)
    assert overhead.dme_nm == pytest.approx(30_580 * 0.3048 / 1852)
    with np.errstate(all="raise"):
        assert np.isnan(station.observe([61.5, 61.6], -11.0, math.nan)).all()
    with pytest.warns(RuntimeWarning, match="invalid"):
        refused = station.observe([91.0, 61.5], -11.0, 31_000.0)
    assert np.isnan(refused).all(axis=0).tolist() == [True, False]
    with pytest.raises(lubberline.NavigationError, match="latitude_deg is 91"):
        station.observe(91.0, -11.0, 31_000.0)
    arrays = station.observe(np.array([61.5, 61.6]), -11.0, 31_000.0)
    # Arrays are computed by a vectorised loop, within a micrometre.
    assert arrays.dme_nm.shape == (2,) and arrays.dme_nm[0] == pytest.approx(seen.dme_nm, abs=6e-10)


@pytest.mark.parametrize(
    ("keywords", "parameter"),
    [
        ({"latitude_deg": 91.0}, "latitude_deg"),
        ({"longitude_deg": math.inf}, "longitude_deg"),
        ({"elevation_ft": 1e6}, "elevation_ft"),
        ({"declination_deg": 200.0}, "declination_deg"),
        ({"latitude_deg": math.nan}, "latitude_deg"),
    ],
)
def test_a_station_is_checked_when_it_is_made(keywords, parameter):
    with pytest.raises(lubberline.NavigationError) as caught:
        lubberline.Station(**{"latitude_deg": 10.0, "longitude_deg": 20.0, **keywords})
    assert caught.value.parameter == parameter


@pytest.mark.parametrize(
    "thing",
    [
        lubberline.Station(61.25, -11.5, ident="OST"),
        lubberline.course_change(350.0, 50.0, true_airspeed_kt=430.0),
    ],
    ids=["station", "course change"],
)
def test_objects_are_values(thing):
    copy = pickle.loads(pickle.dumps(thing))
    assert copy == thing and hash(copy) == hash(thing)
    assert type(thing).__name__ in repr(thing)
    assert "<table>" in thing._repr_html_() and "_deg" in thing._repr_html_()
    with pytest.raises(AttributeError):
        thing.lead_nm = 3.0
