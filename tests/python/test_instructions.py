"""The loops over arrays give the same bits whether the processor runs four or eight numbers at once."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

ANSWERS = """
import hashlib
import numpy as np
import lubberline

draw = np.random.default_rng(5)
count = 4001
latitude, longitude = draw.uniform(-90.0, 90.0, (2, count)), draw.uniform(-180.0, 180.0, (2, count))
course, other, height = draw.uniform(0.0, 360.0, count), draw.uniform(0.0, 360.0, count), draw.uniform(0.0, 45_000.0, count)
answers = [
    *lubberline.observe(latitude[0], longitude[0], 300.0, -6.0, latitude[1], longitude[1], height),
    *lubberline.geodesic_inverse(latitude[0], longitude[0], latitude[1], longitude[1]),
    *lubberline.geodesic_direct(latitude[0], longitude[0], course, height / 100.0),
    *lubberline.wind_triangle(course, 430.0, other, height / 1000.0),
    *lubberline.standard_atmosphere(height),
    np.asarray(lubberline.tas_from_cas_kt(250.0, height)),
    np.asarray(lubberline.lead_nm(course, (course + 70.0) % 360.0, 430.0, other, 40.0)),
]
assert all(np.isfinite(answer).sum() > count // 2 for answer in answers)
print(hashlib.sha256(b"".join(np.ascontiguousarray(answer).tobytes() for answer in answers)).hexdigest())
"""


def bits(instructions):
    """By what instructions it runs is decided once in a process."""
    asked = {"LUBBERLINE_INSTRUCTIONS": instructions} if instructions else {}
    ran = subprocess.run([sys.executable, "-c", ANSWERS], env=os.environ | asked, capture_output=True, text=True, check=True)
    return ran.stdout


def test_four_and_eight_numbers_at_once_give_the_same_bits():
    assert bits(None) == bits("avx2")


def test_the_variable_is_heeded():
    # Without fused multiplication some last digits differ, where the processor has it.
    processor = Path("/proc/cpuinfo")
    if not processor.exists():
        pytest.skip("what the processor can do is not told here")
    words = processor.read_text().split()
    assert (bits("baseline") != bits("avx2")) is ("fma" in words and "avx2" in words)
