"""lubberline: radio-navigation mathematics; above all, where to begin the turn at a station.

>>> import lubberline
>>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0, height_above_station_ft=33_000.0)
>>> f"begin the turn at {change.dme_at_roll_in_nm:.1f} DME"
'begin the turn at 7.0 DME'

CAUTION. This is arithmetic, not certified avionics. Follow charts, clearances, the flight manual and the local authority; leave
decisions to licensed crews; do not use it for real navigation unless your own approval process covers it. Published limits name
their edition, since they change.

Numbers and their units
-----------------------
A name ends in its unit, and each kind of quantity has one unit:

==============  ======================================  ===============================================
suffix          unit                                    of
==============  ======================================  ===============================================
``_deg``        degree                                  latitude, longitude, bearing, bank, any angle
``_nm``         nautical mile (1852 m)                  horizontal distance, slant range
``_ft``         foot (0.3048 m)                         altitude, height, elevation
``_kt``         knot                                    speed
``_fpm``        foot per minute                         vertical speed
``_s``          second                                  time
``_deg_per_s``  degree per second                       rate of turn, rate of roll
``_hpa``        hectopascal                             pressure
``_degc``       degree Celsius                          temperature
``_k``          kelvin                                  difference of temperatures, ISA deviation
``_kg_per_m3``  kilogram per cubic metre                density
``_nt``         nanotesla                               magnetic field
none            1                                       Mach number, load factor, ratio; the code of a choice
==============  ======================================  ===============================================

Right, right of course, east and north are positive; a wind is named by where it blows from; a lead is positive before the fix.
Directions in one call share one north.

Numbers and arrays
------------------
A function given plain numbers gives a float (or a named tuple of floats) and raises `NavigationError` for a value it refuses.
Given anything else that NumPy knows (an array, a list, a masked array, a series, a lazy or labelled array) it gives what a NumPy
function gives of it, and takes `out` and `where`; a value refused is then NaN with NumPy's `invalid` warning, as `numpy.errstate`
asks. A NaN given comes back as NaN in silence, and a missing value stays missing. `lubberline.ufunc` holds the NumPy functions.

Arrays that carry a unit are not understood: one that knows its unit is refused, not stripped of it, and an xarray `units` attribute
is copied to the answer as it is, though the answer may have another unit.
"""

from . import _functions, ufunc
from ._course_change import CourseChange, FlyOver, TurnPoint, course_change
from ._flight import Flight, FlightState, Sureness, course_change_overshoots, course_change_sureness, usual_errors
from ._functions import *  # noqa: F403
from ._legs import GroundPath, Leg, PathSegment, fly_legs
from ._native import NavigationError, __version__
from ._path import PathBrief, PathCheck, PathConditions, PathLeg, PathPoint, PathTurn, StationReading, brief_path
from ._route import RouteBrief, RouteConditions, RouteFix, RouteLeg, RouteTurn, RuleOfThumb, brief_route
from ._station import Station
from ._wind_levels import WindLevel

__all__ = [
    "CourseChange",
    "Flight",
    "FlightState",
    "FlyOver",
    "GroundPath",
    "Leg",
    "NavigationError",
    "PathBrief",
    "PathCheck",
    "PathConditions",
    "PathLeg",
    "PathPoint",
    "PathSegment",
    "PathTurn",
    "RouteBrief",
    "RouteConditions",
    "RouteFix",
    "RouteLeg",
    "RouteTurn",
    "RuleOfThumb",
    "Station",
    "StationReading",
    "Sureness",
    "TurnPoint",
    "WindLevel",
    "__version__",
    "brief_path",
    "brief_route",
    "course_change",
    "course_change_overshoots",
    "course_change_sureness",
    "fly_legs",
    "ufunc",
    "usual_errors",
]
__all__ += _functions.__all__
