"""The NumPy functions behave as NumPy's own do."""

import pickle
import threading

import numpy as np
import pytest

import lubberline
from lubberline import ufunc

GROUND = np.array([1.0, 10.0, 100.0])


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
    np.testing.assert_array_equal(out[[0, 2]], expected(GROUND[[0, 2]], 30_000))
    values = GROUND.copy()
    ufunc.slant_range_nm(values, 30_000.0, out=values)
    np.testing.assert_array_equal(values, expected(GROUND, 30_000))


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
    np.testing.assert_array_equal(ufunc.slant_range_nm(array, 30_000.0), expected(array, 30_000))


def test_masked_arrays_keep_their_mask():
    masked = np.ma.masked_array(GROUND, mask=[False, True, False])
    assert ufunc.slant_range_nm(masked, 30_000.0).mask.tolist() == [False, True, False]


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


@pytest.mark.parametrize("name", ufunc.__all__)
def test_bad_numbers_never_escape(name):
    function = getattr(ufunc, name)
    bad = np.array([np.inf, -np.inf, 1e308, -1e308, 5e-324, -5e-324, 0.0, -0.0, 1e9, -1e9, 91.0])
    for argument in range(function.nin):
        given = [np.full(bad.shape, 7.0)] * function.nin
        given[argument] = bad
        with np.errstate(all="ignore"):
            assert function(*given).shape == bad.shape


def test_pickling():
    assert pickle.loads(pickle.dumps(ufunc.slant_range_nm)) is ufunc.slant_range_nm


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


def test_pandas():
    pandas = pytest.importorskip("pandas")
    series = pandas.Series(GROUND, index=["a", "b", "c"])
    answer = lubberline.slant_range_nm(series, 30_000.0)
    assert list(answer.index) == ["a", "b", "c"]
    np.testing.assert_array_equal(answer, expected(GROUND, 30_000))
    several = lubberline.geodesic_inverse(series / 2.0, 0.0, 1.0, 1.0)
    assert list(several.distance_nm.index) == ["a", "b", "c"]


def test_polars():
    polars = pytest.importorskip("polars")
    series = polars.Series("ground", GROUND)
    np.testing.assert_array_equal(lubberline.slant_range_nm(series, 30_000.0).to_numpy(), expected(GROUND, 30_000))
    several = lubberline.geodesic_inverse(series / 2.0, 0.0, 1.0, 1.0)
    assert len(several.distance_nm) == 3


def test_dask_and_xarray():
    dask_array = pytest.importorskip("dask.array")
    xarray = pytest.importorskip("xarray")
    lazy = dask_array.from_array(GROUND, chunks=2)
    np.testing.assert_array_equal(lubberline.slant_range_nm(lazy, 30_000.0).compute(), expected(GROUND, 30_000))
    assert lubberline.geodesic_inverse(lazy / 2.0, 0.0, 1.0, 1.0).distance_nm.compute().shape == (3,)
    labelled = xarray.DataArray(GROUND, dims="fix")
    assert lubberline.slant_range_nm(labelled, 30_000.0).dims == ("fix",)
