"""The NumPy functions behave as NumPy's own do."""

import itertools
import pickle
import re
import threading

import numpy as np
import pytest

import lubberline
from lubberline import _native, ufunc

GROUND = np.array([1.0, 10.0, 100.0])


def assert_same(answer, wanted):
    """To what its documentation says of arrays and single calls."""
    np.testing.assert_allclose(answer, wanted, rtol=1e-15)


def expected(ground, height):
    return [lubberline.slant_range_nm(float(one), float(height)) for one in ground]


def test_they_are_ufuncs_of_one_output():
    for name in ufunc.__all__:
        assert isinstance(getattr(ufunc, name), np.ufunc)
        assert getattr(ufunc, name).nout == 1


def test_broadcasting_and_scalars():
    grid = ufunc.slant_range_nm(GROUND[:, None], np.array([0.0, 10_000.0, 40_000.0, 3.0]))
    assert grid.shape == (3, 4)
    assert isinstance(ufunc.slant_range_nm(1.0, 2.0), np.float64)
    assert ufunc.slant_range_nm([], []).shape == (0,)
    assert ufunc.slant_range_nm(np.array(10.0), 30_000.0) == lubberline.slant_range_nm(10.0, 30_000.0)


def test_out_and_where():
    out = np.full(3, -1.0)
    answer = ufunc.slant_range_nm(GROUND, 30_000.0, out=out, where=np.array([True, False, True]))
    assert answer is out and out[1] == -1.0
    assert_same(out[[0, 2]], expected(GROUND[[0, 2]], 30_000))
    values = GROUND.copy()
    ufunc.slant_range_nm(values, 30_000.0, out=values)
    assert_same(values, expected(GROUND, 30_000))


@pytest.mark.parametrize(
    "array",
    [
        GROUND[::-1],
        np.repeat(GROUND, 3)[::3],
        GROUND.astype(">f8"),
        np.frombuffer(b"x" + GROUND.tobytes(), dtype=np.uint8)[1:].view(np.float64),
        GROUND.astype(np.float32),
        GROUND.astype(int),
        np.asfortranarray(np.tile(GROUND, (3, 1)))[1],
    ],
    ids=["backwards", "strided", "byteswapped", "unaligned", "float32", "int", "column"],
)
def test_any_layout(array):
    assert_same(ufunc.slant_range_nm(array, 30_000.0), expected(array, 30_000))


def test_errstate_decides_about_refused_values():
    with pytest.warns(RuntimeWarning, match="invalid"):
        answer = ufunc.slant_range_nm([1.0, -1.0], 0.0)
    assert np.isnan(answer[1]) and abs(answer[0] - 1.0) < 1e-6
    with np.errstate(invalid="ignore"):
        assert np.isnan(ufunc.slant_range_nm(-1.0, 0.0))
    with np.errstate(invalid="raise"), pytest.raises(FloatingPointError):
        ufunc.slant_range_nm([1.0, -1.0], 0.0)


@pytest.mark.parametrize("name", ufunc.__all__)
def test_a_nan_comes_back_in_silence(name):
    function = getattr(ufunc, name)
    for argument in range(function.nin):
        given = [np.full(3, 1.0)] * function.nin
        given[argument] = np.full(3, np.nan)
        with np.errstate(all="raise"):
            assert np.isnan(function(*given)).all()


@pytest.mark.parametrize("bad", [0, 1, 9000, 29_999])
def test_the_warning_survives_the_parts_of_an_array(bad):
    """NumPy hands a converted array over in parts, and looks at the flags after the last."""
    ground = np.ones(30_000, dtype=np.float32)
    ground[bad] = -1.0
    with pytest.warns(RuntimeWarning, match="invalid value"):
        answer = ufunc.slant_range_nm(ground, 0.0)
    assert np.flatnonzero(np.isnan(answer)).tolist() == [bad]
    grid = np.ones((7, 3))
    grid[bad % 7, 1] = -1.0
    with pytest.warns(RuntimeWarning, match="invalid value"):
        ufunc.slant_range_nm(grid[:, :2], np.zeros((7, 2)))


def test_an_overflow_of_the_conversion_is_told():
    """Flags that NumPy's own conversion of `out` raised are left as they are."""
    out = np.zeros(30_000, dtype=np.float16)
    with pytest.warns(RuntimeWarning, match="overflow"):
        ufunc.geopotential_altitude_ft(np.r_[100_000.0, np.ones(29_999)], out=out, casting="same_kind")


def test_out_may_overlap_an_input():
    values = np.arange(1.0, 9.0)
    expected_values = ufunc.slant_range_nm(values[:-1].copy(), 9000.0)
    ufunc.slant_range_nm(values[:-1], 9000.0, out=values[1:])
    np.testing.assert_array_equal(values[1:], expected_values)
    turned = np.arange(1.0, 9.0)
    ufunc.slant_range_nm(turned[::-1], 9000.0, out=turned)
    np.testing.assert_array_equal(turned, ufunc.slant_range_nm(np.arange(8.0, 0.0, -1.0), 9000.0))


def test_nothing_and_one_thing():
    assert ufunc.slant_range_nm(np.empty((0, 3)), np.empty((1, 3))).shape == (0, 3)
    assert lubberline.geodesic_inverse(np.empty(0), 0.0, 1.0, 1.0).distance_nm.shape == (0,)
    assert isinstance(lubberline.slant_range_nm(np.array(10.0), 30_000.0), np.float64)


@pytest.mark.parametrize("wrong", [np.array([1j]), np.array(["10"]), np.array([None]), np.array(["2020-01-01"], dtype="M8[D]")])
def test_arrays_of_other_things_are_type_errors(wrong):
    with pytest.raises(TypeError):
        ufunc.slant_range_nm(wrong, 0.0)


@pytest.mark.parametrize("name", ufunc.__all__)
def test_each_is_pickled_by_its_name(name):
    function = getattr(ufunc, name)
    assert function.__name__ == name and pickle.loads(pickle.dumps(function)) is function


def test_threads_keep_their_own_flags():
    """One thread's refused values are not another's."""
    good, bad = np.full(100_000, 3.0), np.full(100_000, -3.0)
    seen = []

    def work(ground):
        with np.errstate(invalid="call", call=lambda *_: seen.append(ground[0])):
            for _ in range(20):
                ufunc.slant_range_nm(ground, 0.0)

    threads = [threading.Thread(target=work, args=(ground,)) for ground in (good, bad, good, bad)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert seen == [-3.0] * 40


def test_threads():
    ground = np.linspace(0.0, 300.0, 200_001)
    whole = ufunc.slant_range_nm(ground, 30_000.0)
    parts = [None] * 4

    def work(index):
        parts[index] = ufunc.slant_range_nm(ground[index::4], 30_000.0)

    threads = [threading.Thread(target=work, args=(index,)) for index in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    for index, part in enumerate(parts):
        np.testing.assert_array_equal(part, whole[index::4])


def test_some_outputs_are_those_of_all():
    arguments = (61.25, -11.5, 420.0, -6.0, np.linspace(55.0, 65.0, 300), -11.0, 31_000.0)
    every = lubberline.observe(*arguments)
    some = ufunc.some("observe", "dme_nm", "radial_deg")
    assert some is ufunc.some("observe", "dme_nm", "radial_deg") and some.nout == 2
    dme, radial = some(*arguments)
    np.testing.assert_array_equal(radial, every.radial_deg)
    np.testing.assert_array_equal(dme, every.dme_nm)
    with pytest.raises(ValueError, match="no output .bearing.; it has radial_deg"):
        ufunc.some("observe", "bearing")
    with pytest.raises(ValueError, match="no function"):
        ufunc.some("observed", "radial_deg")
    with pytest.raises(ValueError, match="no output is named"):
        ufunc.some("observe")
    with pytest.raises(ValueError, match="\"dme_nm\" is named twice"):
        ufunc.some("observe", "dme_nm", "radial_deg", "dme_nm")


def test_outputs_come_in_the_order_they_are_named_in():
    arguments = (61.25, -11.5, 420.0, -6.0, np.linspace(55.0, 65.0, 300), -11.0, 31_000.0)
    every = lubberline.observe(*arguments)
    for names in itertools.permutations(every._fields, 3):
        places = tuple(np.empty(300) for _ in names)
        answers = ufunc.some("observe", *names)(*arguments, out=places)
        for name, answer, place in zip(names, answers, places, strict=True):
            assert answer is place
            np.testing.assert_array_equal(answer, getattr(every, name))


@pytest.mark.parametrize("name", _native.many)
def test_what_gives_several_outputs_says_how_it_is_named(name):
    with pytest.raises(AttributeError, match=f"^'{name}' gives {_native.many[name].nout} outputs") as refused:
        getattr(ufunc, name)
    one, first = re.search(r"name it (\w+) and so on, or use some\('\w+', '(\w+)', ...\)", str(refused.value)).groups()
    assert one in ufunc.__all__ and ufunc.some(name, first).nout == 1


def test_what_there_is_not_is_no_attribute():
    with pytest.raises(AttributeError, match="no attribute 'observed'"):
        ufunc.observed


@pytest.mark.parametrize("out", [np.empty(2), (np.empty(2),), [np.empty(2)] * 4])
def test_out_is_a_tuple_of_all_outputs(out):
    with pytest.raises(TypeError, match="out must be a tuple of 4 arrays, for radial_deg, dme_nm"):
        lubberline.observe(61.25, -11.5, 420.0, -6.0, np.array([61.5, 61.6]), -11.0, 31_000.0, out=out)


EDGES = np.array([0.0, -0.0, 45.0, -45.0, 90.0, -90.0, 180.0, 315.0, -360.0, 361.0, 1e300, -16_500.0, 400_000.0, 400_001.0,
                  np.nan, -np.nan, np.inf, -np.inf])


def drawn(random, count, low, high):
    """Numbers of a range, one in twenty at or beyond an edge."""
    values = random.uniform(low, high, count)
    edges = random.random(count) < 0.05
    values[edges] = random.choice(EDGES, edges.sum())
    return values


@pytest.mark.parametrize("count", [1, 8, 129, 600, 2051])
@pytest.mark.parametrize("arrangement", ["one station", "one altitude", "many stations", "many elevations"])
def test_observe_is_the_same_bits_however_its_points_stand(count, arrangement):
    random = np.random.default_rng(count)
    outputs = ["radial_deg", "dme_nm", "ground_distance_nm", "elevation_angle_deg"]
    observe = ufunc.some("observe", *outputs)
    for reach_deg, station_longitude_deg in [(0.001, -12.0), (4.0, 179.0), (60.0, 350.0)]:
        station = [random.uniform(-85.0, 85.0), station_longitude_deg, 420.0, -8.0]
        latitude = np.clip(station[0] + drawn(random, count, -reach_deg, reach_deg), -90.0, 90.0)
        longitude = station[1] + drawn(random, count, -reach_deg, reach_deg)
        altitude = drawn(random, count, -2_000.0, 60_000.0)
        if arrangement == "one altitude":
            altitude = 31_000.0
        elif arrangement == "many stations":
            station[0] = np.repeat(random.uniform(-85.0, 85.0, count // 100 + 1), 100)[:count]
        elif arrangement == "many elevations":
            station[2] = drawn(random, count, 0.0, 9_000.0)
        with np.errstate(invalid="ignore"):
            found = observe(*station, latitude, longitude, altitude)
            points = zip(*(column.tolist() for column in np.broadcast_arrays(*station, latitude, longitude, altitude)))
            wanted = np.array([observe(*point) for point in points]).T
            spread = np.zeros((count, 3))
            spread[:, 1] = latitude
            places = tuple(np.empty(count + 3)[shift:shift + count] for shift in range(4))
            elsewhere = observe(*station, spread[:, 1], longitude, altitude, out=places)
            in_place = observe(*station, over := latitude.copy(), longitude, altitude, out=(None, over, None, None))
            two = ufunc.some("observe", "dme_nm", "elevation_angle_deg")(*station, latitude, longitude, altitude)
        for answers in (found, elsewhere, in_place):
            np.testing.assert_array_equal(np.array(answers), wanted)
        np.testing.assert_array_equal(np.array(two), wanted[[1, 3]])
        assert count < 100 or np.isfinite(wanted).mean() > 0.5
