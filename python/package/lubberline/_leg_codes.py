"""What a leg takes, by its two letters."""

from __future__ import annotations

import math
from collections.abc import Mapping

_FIX = ("fix_latitude_deg", "fix_longitude_deg")
_END = (*_FIX, "fly_over")
_CENTER = ("center_latitude_deg", "center_longitude_deg")
# A station is given as one, whether its elevation (of a reading) or its declination (of a radial) counts or not.
_STATION = (*_CENTER, "center_elevation_ft", "center_declination_deg")
_DME = ("course_deg", "distance_nm", *_STATION)
_RADIAL = ("course_deg", "radial_deg", *_STATION)
_ALTITUDE = ("course_deg", "altitude_ft")
_HOLD = (*_FIX, "course_deg", "to_right")

#: All that a leg of each code takes, but for the length of a racetrack.
_TAKES: dict[str, tuple[str, ...]] = {
    # There is no turn at the first fix, flown by or over.
    "IF": _FIX,
    "TF": _END,
    "CF": (*_END, "course_deg"),
    "DF": _END,
    "AF": (*_END, *_STATION, "to_right"),
    "RF": (*_END, *_CENTER, "to_right"),
    "FA": (*_FIX, *_ALTITUDE),
    "FC": (*_FIX, "course_deg", "distance_nm"),
    "FD": (*_FIX, *_DME),
    "FM": (*_FIX, "course_deg"),
    "CA": _ALTITUDE,
    "CD": _DME,
    "CI": ("course_deg",),
    "CR": _RADIAL,
    "VA": _ALTITUDE,
    "VD": _DME,
    "VI": ("course_deg",),
    "VM": ("course_deg",),
    "VR": _RADIAL,
    "HA": (*_HOLD, "altitude_ft"),
    "HF": _HOLD,
    "HM": _HOLD,
    "PI": (*_FIX, "course_deg", "distance_nm", "to_right", "reversal", "off_time_s"),
}

#: What a racetrack of a length takes besides, by the number that gives the length: the first that is there.
_LENGTHS = {
    "hold_dme_nm": ("hold_dme_nm", *_STATION),
    "hold_distance_nm": ("hold_distance_nm", "timed"),
    "outbound_time_s": ("outbound_time_s", "timed"),
}

#: What goes round to a side, of which none is the usual one; a racetrack is standard to the right.
_TO_A_SIDE = ("AF", "RF", "PI")


def no_more_than_it_takes(code: str, given: Mapping[str, float | bool | str]) -> None:
    """Refuses what a leg has no use for, as a slip; NaN is not given."""
    there = [name for name, value in given.items() if not (isinstance(value, float) and math.isnan(value))]
    takes = _TAKES[code]
    also = ""
    if code in ("HA", "HF", "HM"):
        length = next((name for name in _LENGTHS if name in there), "outbound_time_s")
        others = [name for name in _LENGTHS if name != length]
        takes = (*takes, *_LENGTHS[length])
        also = f", or in place of {length} {' or '.join(others)}"
    if code == "PI" and given.get("reversal") == "80_260":
        takes = tuple(name for name in takes if name != "off_time_s")
    for name in there:
        if name not in takes:
            raise TypeError(f"{code} has no use for {name}; allowed: {', '.join(takes)}{also}")


def with_its_side(code: str, given: Mapping[str, float | bool | str]) -> None:
    """Refuses an arc or a procedure turn that does not say to which side it goes."""
    if code in _TO_A_SIDE and "to_right" not in given:
        raise TypeError(f"{code}: to_right is missing; allowed: True, False")
