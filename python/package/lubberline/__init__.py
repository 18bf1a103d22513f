"""lubberline: radio-navigation mathematics; above all, where to begin the turn at a station.

Functions take numbers or arrays, and their names end in units: `_deg` degree, `_nm` nautical mile (1852 m), `_ft` foot, `_kt` knot,
`_fpm` foot per minute, `_s` second, `_deg_per_s` degree per second, `_hpa` hectopascal, `_degc` degree Celsius, `_k` kelvin (a
difference), `_kg_per_m3` kilogram per cubic metre; none for a ratio. Right, east and north are positive; a wind is named by where it
blows from. A NaN given comes back as NaN. A number refused raises `NavigationError`; in an array it becomes NaN with NumPy's `invalid`
warning. `lubberline.ufunc` holds the NumPy functions themselves.

CAUTION. This is arithmetic, not certified avionics. Follow charts, clearances, the flight manual and the local authority; leave
decisions to licensed crews; do not use it for real navigation unless your own approval process covers it.

>>> import lubberline
>>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0, height_above_station_ft=33_000.0)
>>> f"begin the turn at {change.dme_at_roll_in_nm:.1f} DME"
'begin the turn at 7.0 DME'
"""

from . import _functions, ufunc
from ._course_change import CourseChange, FlyOver, TurnPoint, course_change
from ._functions import *  # noqa: F403
from ._native import NavigationError, __version__
from ._station import Station

__all__ = [  # noqa: PLE0604
    "CourseChange",
    "FlyOver",
    "NavigationError",
    "Station",
    "TurnPoint",
    "__version__",
    "course_change",
    "ufunc",
    *_functions.__all__,
]
