"""What wraps arrays keeps its form: series, frames, lazy and labelled arrays. Each test runs where its package is installed."""

import numpy as np
import pytest

import lubberline
from lubberline import ufunc

GROUND = np.array([1.0, 10.0, 100.0])
SLANT = ufunc.slant_range_nm(GROUND, 30_000.0)
LATITUDE = np.array([10.0, 20.0, 30.0])
LINES = lubberline.geodesic_inverse(LATITUDE, 0.0, 1.0, 1.0)


def check_several(answer, array):
    """All outputs of a function of several hold the same values as with bare arrays."""
    assert answer._fields == LINES._fields
    for given, expected in zip(answer, LINES, strict=True):
        np.testing.assert_array_equal(array(given), expected)


def test_masked_arrays():
    mask = [False, True, False]
    assert lubberline.slant_range_nm(np.ma.masked_array(GROUND, mask=mask), 30_000.0).mask.tolist() == mask
    answer = lubberline.geodesic_inverse(np.ma.masked_array(LATITUDE, mask=mask), 0.0, 1.0, 1.0)
    for given, expected in zip(answer, LINES, strict=True):
        assert given.mask.tolist() == mask
        np.testing.assert_array_equal(given.compressed(), expected[[0, 2]])


def test_pandas():
    pandas = pytest.importorskip("pandas")
    series = pandas.Series(GROUND, index=["a", "b", "c"])
    answer = lubberline.slant_range_nm(series, 30_000.0)
    assert list(answer.index) == ["a", "b", "c"]
    np.testing.assert_array_equal(answer, SLANT)
    latitude = pandas.Series(LATITUDE, index=["a", "b", "c"])
    several = lubberline.geodesic_inverse(latitude, 0.0, 1.0, 1.0)
    assert list(several.distance_nm.index) == ["a", "b", "c"]
    check_several(several, np.asarray)
    frame = pandas.DataFrame({"near": GROUND, "far": GROUND * 2.0})
    assert list(lubberline.slant_range_nm(frame, 0.0).columns) == ["near", "far"]
    missing = lubberline.slant_range_nm(pandas.Series([1.0, None], dtype="Float64"), 0.0)
    assert missing.isna().tolist() == [False, True]


def test_pandas_with_out():
    pandas = pytest.importorskip("pandas")
    latitude = pandas.Series(LATITUDE)
    out = tuple(np.zeros(3) for _ in LINES)
    lubberline.geodesic_inverse(latitude, 0.0, 1.0, 1.0, out=out)
    check_several(type(LINES)._make(out), np.asarray)
    with pytest.raises(TypeError, match="tuple of 3 arrays"):
        lubberline.geodesic_inverse(latitude, 0.0, 1.0, 1.0, out=np.zeros(3))


def test_polars():
    polars = pytest.importorskip("polars")
    series = polars.Series("ground", GROUND)
    np.testing.assert_array_equal(lubberline.slant_range_nm(series, 30_000.0).to_numpy(), SLANT)
    check_several(lubberline.geodesic_inverse(polars.Series(LATITUDE), 0.0, 1.0, 1.0), lambda given: given.to_numpy())
    column = polars.DataFrame({"ground": GROUND}).select(lubberline.slant_range_nm(polars.col("ground"), 30_000.0))
    np.testing.assert_array_equal(column.to_series().to_numpy(), SLANT)
    missing = lubberline.slant_range_nm(polars.Series([1.0, None]), 0.0)
    assert missing.is_null().to_list() == [False, True]


def test_dask():
    dask_array = pytest.importorskip("dask.array")
    lazy = dask_array.from_array(GROUND, chunks=2)
    np.testing.assert_array_equal(lubberline.slant_range_nm(lazy, 30_000.0).compute(), SLANT)
    latitude = dask_array.from_array(LATITUDE, chunks=2)
    check_several(lubberline.geodesic_inverse(latitude, 0.0, 1.0, 1.0), lambda given: given.compute())


def test_xarray():
    xarray = pytest.importorskip("xarray")
    labelled = xarray.DataArray(GROUND, dims="fix", attrs={"units": "NM"})
    answer = lubberline.slant_range_nm(labelled, 30_000.0)
    assert answer.dims == ("fix",)
    np.testing.assert_array_equal(answer, SLANT)
    check_several(lubberline.geodesic_inverse(xarray.DataArray(LATITUDE, dims="fix"), 0.0, 1.0, 1.0), np.asarray)


def test_quantities_with_units_are_refused():
    pint = pytest.importorskip("pint")
    with pytest.raises(TypeError):
        lubberline.slant_range_nm(pint.UnitRegistry().Quantity(GROUND, "m"), 30_000.0)
