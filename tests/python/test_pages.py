"""The calls in Python on the pages of docs, each beside what it is said to give."""

import re

import pytest
from conftest import ROOT

import lubberline

CALLS = [
    (page.name, call, gives)
    for page in sorted((ROOT / "docs").glob("*.md"))
    for call, gives in re.findall(r"^\| [^|]+ \| `(lubberline\.[^`]+)` \| `lubber_.*\| (-?[\d.]+) \|$", page.read_text(), re.MULTILINE)
]


def test_there_are_calls():
    assert len(CALLS) >= 25


@pytest.mark.parametrize(("page", "call", "gives"), CALLS)
def test_a_call(page, call, gives):
    digits = len(gives.partition(".")[2])
    assert f"{eval(call, {'lubberline': lubberline}):.{digits}f}" == gives, page
