"""What the Python tests share."""

import csv
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
DATA = ROOT / "tests" / "data"


def published_rows():
    """Every row of the published check values."""
    for path in sorted((DATA / "published").glob("*.csv")):
        with path.open(newline="") as file:
            for row in csv.DictReader(file):
                yield pytest.param(row, id=f"{path.stem}-{row['id']}")
