"""The named functions: keywords, defaults, numbers, errors."""

import contextlib
import inspect
import pickle
import sys

import numpy as np
import pytest

import lubberline

FUNCTIONS = [name for name in lubberline._functions.__all__ if inspect.isfunction(getattr(lubberline, name))]


def test_keywords_and_defaults():
    by_position = lubberline.tas_from_cas_kt(280.0, 35_000.0, 10.0)
    by_name = lubberline.tas_from_cas_kt(cas_kt=280.0, isa_deviation_k=10.0, pressure_altitude_ft=35_000.0)
    assert by_position == by_name
    assert lubberline.tas_from_cas_kt(280.0, 35_000.0) == lubberline.tas_from_cas_kt(280.0, 35_000.0, 0.0)
    with pytest.raises(TypeError):
        lubberline.tas_from_cas_kt(280.0, 35_000.0, isa_deviation=3.0)


@pytest.mark.parametrize("number", [10, 10.0, np.float64(10), np.int64(10), np.float32(10), True + 9])
def test_every_kind_of_number_is_one(number):
    answer = lubberline.slant_range_nm(number, 30_000)
    assert type(answer) is float and answer == lubberline.slant_range_nm(10.0, 30_000.0)
    with pytest.raises(lubberline.NavigationError):
        lubberline.slant_range_nm(-number, 30_000)


def test_an_error_names_the_parameter_the_value_and_what_is_allowed():
    with pytest.raises(ValueError, match=r"bank_deg is 95 deg; allowed: above 0.0 below 90.0 deg") as caught:
        lubberline.turn_radius_nm(450.0, 95.0)
    assert caught.value.parameter == "bank_deg" and caught.value.code < 0
    with pytest.raises(lubberline.NavigationError, match="'inbound', 'outbound'"):
        lubberline.arc_exit(10.0, "sideways", 12.0, "clockwise", 200.0)


@pytest.mark.parametrize("wrong", ["ten", "10", None, object(), 1j, np.complex128(10), np.str_("10"), np.timedelta64(1, "s")])
def test_what_is_no_number_is_a_type_error(wrong):
    with pytest.raises(TypeError):
        lubberline.slant_range_nm(wrong, 30_000.0)


@pytest.mark.parametrize("truth", [True, False, np.True_])
def test_a_truth_value_is_no_number(truth):
    for arguments in ((truth, 30_000.0), (truth, [1.0, 2.0])):
        with pytest.raises(TypeError, match="^ground_distance_nm must be a real number, not bool$"):
            lubberline.slant_range_nm(*arguments)
    for other in (10.0, [10.0, 20.0], np.array(10.0)):
        with pytest.raises(TypeError, match="^height_ft must be a real number, not bool$"):
            lubberline.slant_range_nm(other, truth)
    with pytest.raises(TypeError, match="^lon1_deg must be a real number, not bool$"):
        lubberline.geodesic_inverse(61.0, truth, 62.0, -11.0)


def test_a_truth_value_is_no_choice():
    with pytest.raises(TypeError, match="^flown must be one of 'inbound', 'outbound', not bool$"):
        lubberline.arc_entry(300.0, True, 12.0, "clockwise", 210.0)
    with pytest.raises(TypeError, match="^turn must be one of 'shortest', 'left', 'right', not bool$"):
        lubberline.course_change(40.0, 110.0, true_airspeed_kt=300.0, turn=True)


def test_several_outputs_come_as_a_named_tuple():
    answer = lubberline.geodesic_inverse(61.0, -12.0, 62.0, -11.0)
    assert answer._fields == ("distance_nm", "initial_bearing_deg", "final_bearing_deg")
    distance_nm, bearing_deg, _ = answer
    back = lubberline.geodesic_direct(61.0, -12.0, bearing_deg, distance_nm)
    assert back.latitude_deg == pytest.approx(62.0, abs=1e-12)
    arrays = lubberline.geodesic_inverse([61.0, 61.0], -12.0, 62.0, -11.0)
    # Arrays have a loop of their own: a tenth of a micrometre.
    np.testing.assert_allclose(arrays.distance_nm, [distance_nm, distance_nm], rtol=0.0, atol=1e-7 / 1852.0)


def test_words_and_codes_choose_alike():
    word = lubberline.arc_entry(300.0, "inbound", 12.0, "clockwise", 210.0)
    code = lubberline.arc_entry(300.0, 0, 12.0, 1, 210.0)
    assert word == code
    with pytest.raises(lubberline.NavigationError, match="sense is 7") as by_code:
        lubberline.arc_entry(300.0, 0, 12.0, 7, 210.0)
    with pytest.raises(lubberline.NavigationError, match="sense is 'up'") as by_word:
        lubberline.arc_entry(300.0, 0, 12.0, "up", 210.0)
    assert (by_code.value.code, by_code.value.parameter) == (by_word.value.code, by_word.value.parameter)
    words = lubberline.arc_entry(300.0, ["inbound", "outbound"], 12.0, "clockwise", 210.0)
    codes = lubberline.arc_entry(300.0, np.array([0, 1]), 12.0, np.array([1, 1]), 210.0)
    np.testing.assert_array_equal(words, codes)
    assert words.distance_at_roll_in_nm[0] == word.distance_at_roll_in_nm
    with pytest.raises(lubberline.NavigationError, match="flown is 'sideways'"):
        lubberline.arc_entry(300.0, ["inbound", "sideways"], 12.0, "clockwise", 210.0)


def test_options_are_those_of_a_numpy_function():
    out = tuple(np.zeros(2) for _ in range(3))
    answer = lubberline.geodesic_inverse([61.0, 62.0], -12.0, 62.0, -11.0, out=out)
    assert all(given is array for given, array in zip(answer, out, strict=True))
    kept = np.full(2, 7.0)
    lubberline.slant_range_nm([10.0, 20.0], 0.0, out=kept, where=[True, False])
    assert kept[0] != 7.0 and kept[1] == 7.0
    with pytest.raises(TypeError, match="height"):
        lubberline.slant_range_nm(10.0, height=3.0)


def test_an_error_may_be_sent_to_another_process():
    with pytest.raises(lubberline.NavigationError) as caught:
        lubberline.slant_range_nm(-1.0, 0.0)
    copy = pickle.loads(pickle.dumps(caught.value))
    assert (str(copy), copy.code, copy.parameter) == (str(caught.value), caught.value.code, "ground_distance_nm")
    assert (lubberline.NavigationError("other").code, lubberline.NavigationError("other").parameter) == (0, None)


def test_named_tuples_are_values():
    answer = lubberline.geodesic_inverse(61.0, -12.0, 62.0, -11.0)
    assert pickle.loads(pickle.dumps(answer)) == answer and hash(answer) == hash(tuple(answer))
    assert repr(answer).startswith("GeodesicInverse(distance_nm=")


@pytest.mark.parametrize("name", FUNCTIONS)
def test_the_parameters_are_those_of_the_numpy_function(name):
    several = lubberline._native.many.get(name)
    function = several or getattr(lubberline.ufunc, name)
    names = list(inspect.signature(getattr(lubberline, name)).parameters)
    assert f"{name}({', '.join(names[:-1])}, /)" in function.__doc__
    assert names[-1] == "kwargs" and function.nin == len(names) - 1


@pytest.mark.parametrize("name", FUNCTIONS)
def test_every_parameter_is_a_keyword(name):
    function = getattr(lubberline, name)
    given = {parameter: float("nan") for parameter in inspect.signature(function).parameters if parameter != "kwargs"}
    answer = function(**given)
    assert np.isnan(answer).all()
    assert isinstance(answer, float | tuple)
    arrays = function(**{parameter: [value] * 2 for parameter, value in given.items()})
    assert np.isnan(arrays).all() and np.shape(arrays)[-1] == 2


@pytest.mark.parametrize("name", FUNCTIONS)
def test_every_function_is_documented(name):
    text = getattr(lubberline, name).__doc__
    for heading in ("Parameters", "Returns", "Raises", "Notes", "Examples", "Source:"):
        assert heading in text


def test_the_names_that_programs_rely_on():
    relied_on = {
        "geodesic_inverse": "lat1_deg lon1_deg lat2_deg lon2_deg -> distance_nm initial_bearing_deg final_bearing_deg",
        "geodesic_direct": "lat_deg lon_deg bearing_deg distance_nm -> latitude_deg longitude_deg final_bearing_deg",
        "slant_range_nm": "ground_distance_nm height_ft",
        "tas_from_cas_kt": "cas_kt pressure_altitude_ft isa_deviation_k",
        "cas_from_tas_kt": "tas_kt pressure_altitude_ft isa_deviation_k",
        "mach_from_cas": "cas_kt pressure_altitude_ft",
        "wind_triangle": "course_deg true_airspeed_kt wind_from_deg wind_speed_kt -> heading_deg groundspeed_kt",
        "turn_radius_nm": "true_airspeed_kt bank_deg",
        "turn_rate_deg_per_s": "true_airspeed_kt bank_deg",
        "bank_for_rate_deg": "true_airspeed_kt turn_rate_deg_per_s",
    }
    for name, form in relied_on.items():
        inputs, _, outputs = form.partition(" -> ")
        function = getattr(lubberline, name)
        assert list(inspect.signature(function).parameters) == [*inputs.split(), "kwargs"]
        if outputs:
            nan = [float("nan")] * len(inputs.split())
            assert function(*nan)._fields == tuple(outputs.split())


def test_a_call_keeps_nothing():
    """References come back: to the arguments, to None and to the error."""
    number, text = 10.125e3, object()
    before = sys.getrefcount(number), sys.getrefcount(text), sys.getrefcount(lubberline.NavigationError)
    for _ in range(1000):
        lubberline.slant_range_nm(0.0, number)
        lubberline._native.scalars["slant_range_nm"](text, number)
        with contextlib.suppress(lubberline.NavigationError):
            lubberline.slant_range_nm(-1.0, number)
    after = sys.getrefcount(number), sys.getrefcount(text), sys.getrefcount(lubberline.NavigationError)
    assert after == before
