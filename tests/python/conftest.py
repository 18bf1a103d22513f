"""What the Python tests share."""

import csv
import os
import sys
from pathlib import Path

import pytest

# Pictures are drawn into files, here and in what is run from here.
os.environ["MPLBACKEND"] = "Agg"

ROOT = Path(__file__).resolve().parents[2]
DATA = ROOT / "tests" / "data"


@pytest.fixture(autouse=True)
def _no_figure_is_left():
    yield
    if "matplotlib.pyplot" in sys.modules:
        sys.modules["matplotlib.pyplot"].close("all")


def published_rows():
    """Every row of the published check values."""
    for path in sorted((DATA / "published").glob("*.csv")):
        with path.open(newline="") as file:
            for row in csv.DictReader(file):
                yield pytest.param(row, id=f"{path.stem}-{row['id']}")
