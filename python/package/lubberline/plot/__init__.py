"""Pictures of course changes, flights, routes, holds and rules of thumb, drawn with matplotlib (`pip install 'lubberline[plot]'`).

Every function draws one thing into the axes it is given, or into new ones, and gives the axes back, so that pictures can be put together:
`course_change(change, ax=ax)` and then `track(station, latitudes, longitudes, ax=ax)` show a plan and what was flown in one picture. Plans have
north up and one scale both ways; every axis names its unit. What must be told apart differs in its line as well as in its colour, and the colours
(`COLORS`) are ones that the colour-blind can tell apart.

>>> import lubberline
>>> import lubberline.plot
>>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=300.0, height_above_station_ft=9_000.0)
>>> ax = lubberline.plot.course_change(change)
>>> ax.get_xlabel()
'east of the station (NM)'
"""

from ._needs import need_matplotlib

need_matplotlib()

from ._course_change import course_change
from ._hold import hold
from ._look import COLORS
from ._profile import profile
from ._readings import bank, dme, needle, to_from
from ._route import route
from ._rule_error import rule_error
from ._sureness import error_sources, overshoot
from ._track import track

__all__ = [
    "COLORS",
    "bank",
    "course_change",
    "dme",
    "error_sources",
    "hold",
    "needle",
    "overshoot",
    "profile",
    "route",
    "rule_error",
    "to_from",
    "track",
]
