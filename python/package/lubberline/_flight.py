"""A flight through the wind with a receiver on board, and how sure a course change is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from . import _native
from ._call import number, one_chosen, whole_wind
from ._course_change import CourseChange
from ._wind_levels import WindLevels, each_level


class FlightState(NamedTuple):
    """Where a flight is and what its receiver shows."""

    time_s: float
    """Time since the start."""
    latitude_deg: float
    longitude_deg: float
    altitude_ft: float
    true_heading_deg: float
    """Heading, from the true north of the place."""
    bank_deg: float
    """Bank, right positive."""
    true_track_deg: float
    """Track over the ground, from the true north of the place."""
    groundspeed_kt: float
    radial_deg: float
    """The radial, from the station's north; NaN overhead."""
    dme_nm: float
    deviation_deg: float
    """How far the selected course lies to the right, in degrees of the radial, -90 to 90; NaN where the needle is not to be used."""
    to_from: float
    """1 to the station, 2 from it, 0 neither."""
    flag: float
    """0 if both are shown; 1 abeam (the needle is good), 2 in the cone, 3 below the horizon, 4 out of range."""
    in_cone: float
    """1 in the cone of confusion, else 0."""
    least_altitude_ft: float
    """The least altitude at which the station is received here, over a smooth earth at its elevation; infinite if none."""
    done: float
    """1 when the turn is turned or the course captured, else 0."""


_TABLE = np.dtype([(name, np.float64) for name in FlightState._fields])
_SENSES = {"clockwise": 1.0, "counterclockwise": -1.0}
_SIDES = {"right": 1, "left": -1}
_ENTRIES = {"parallel": 1, "offset": 2, "direct": 3}
_MOST_STEPS = 10_000_000


class Flight:
    """A point mass in coordinated flight over the ellipsoid, with a receiver tuned to a station.

    It holds its heading until it is steered otherwise. What it steers by believes in the wind there is when it is steered. Directions
    given to it are counted from the station's true north, carried parallel along the path, unless they are named otherwise.

    Parameters
    ----------
    latitude_deg, longitude_deg, altitude_ft : float
        Where it begins.
    heading_deg : float
        Heading at first, from the station's true north carried to the start.
    true_airspeed_kt : float
        True airspeed.
    station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg : float
        The station.
    course_deg : float
        The course selected on the receiver, from the station's north.
    wind_from_deg, wind_speed_kt : float, optional
        Where the wind blows from, from the carried north, and its speed; calm air if both are left out.
    bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s : float
        Limits of the turns.
    reaction_s : float
        How long after an indication the crew acts on it.
    cone_half_angle_deg : float
        Half-angle of the cone of confusion from the vertical.

    Raises
    ------
    NavigationError
        A value outside its range; NaN is none of any.

    Examples
    --------
    Ten miles south of a station, northbound; turn onto the course 070, and look where it rolls out.

    >>> import lubberline
    >>> start = lubberline.geodesic_direct(60.0, -20.0, 180.0, 10.0)
    >>> flight = lubberline.Flight(
    ...     start.latitude_deg, start.longitude_deg, 5_000.0, heading_deg=0.0, true_airspeed_kt=300.0,
    ...     station_latitude_deg=60.0, station_longitude_deg=-20.0, course_deg=70.0,
    ... )
    >>> flight.turn_at_station(0.0, 70.0)
    >>> table = flight.run(600.0, step_s=0.5, until_done=True)
    >>> bool(abs(table["deviation_deg"][-1]) < 0.1)
    True
    """

    __slots__ = ("_flight",)

    def __init__(
        self,
        latitude_deg: float,
        longitude_deg: float,
        altitude_ft: float,
        *,
        heading_deg: float,
        true_airspeed_kt: float,
        station_latitude_deg: float,
        station_longitude_deg: float,
        station_elevation_ft: float = 0.0,
        station_declination_deg: float = 0.0,
        course_deg: float = 0.0,
        wind_from_deg: float | None = None,
        wind_speed_kt: float | None = None,
        bank_limit_deg: float = 25.0,
        turn_rate_limit_deg_per_s: float = 3.0,
        roll_rate_deg_per_s: float = 5.0,
        reaction_s: float = 0.0,
        cone_half_angle_deg: float = 50.0,
    ) -> None:
        self._flight = _native.Flight(
            (
                number("latitude_deg", latitude_deg),
                number("longitude_deg", longitude_deg),
                number("altitude_ft", altitude_ft),
                number("heading_deg", heading_deg),
                number("true_airspeed_kt", true_airspeed_kt),
                *whole_wind(wind_from_deg, wind_speed_kt),
                number("bank_limit_deg", bank_limit_deg),
                number("turn_rate_limit_deg_per_s", turn_rate_limit_deg_per_s),
                number("roll_rate_deg_per_s", roll_rate_deg_per_s),
                number("reaction_s", reaction_s),
                number("station_latitude_deg", station_latitude_deg),
                number("station_longitude_deg", station_longitude_deg),
                number("station_elevation_ft", station_elevation_ft),
                number("station_declination_deg", station_declination_deg),
                number("course_deg", course_deg),
                number("cone_half_angle_deg", cone_half_angle_deg),
            )
        )

    def __copy__(self) -> Flight:
        return self.copy()

    def copy(self) -> Flight:
        """The same flight once more, to be flown otherwise from here."""
        other = object.__new__(Flight)
        other._flight = self._flight.copy()
        return other

    @property
    def state(self) -> FlightState:
        """Where it is and what its receiver shows."""
        return FlightState(*self._flight.state())

    def step(self, time_s: float) -> FlightState:
        """Fly on for a time, and look. Zero and less, more than 1 000 000 s and NaN do nothing."""
        self._flight.step(number("time_s", time_s))
        return self.state

    def run(self, duration_s: float, *, step_s: float = 1.0, until_done: bool = False) -> NDArray[Any]:
        """Fly on in steps and give a table of the states, the present one first.

        The table is a structured array: `table["dme_nm"]` is a column, and `pandas.DataFrame(table)` takes it as it is. With
        `until_done` it ends where the turn is turned or the course captured, if that is earlier.
        """
        step, duration = number("step_s", step_s), number("duration_s", duration_s)
        steps = duration / step if step > 0.0 else np.nan
        if not 0.0 <= steps <= _MOST_STEPS:
            raise ValueError(f"{duration} s in steps of {step} s; allowed: up to {_MOST_STEPS} steps of more than 0 s")
        return np.frombuffer(self._flight.run(round(steps), step, until_done), dtype=_TABLE).copy()

    def tune(
        self,
        station_latitude_deg: float,
        station_longitude_deg: float,
        *,
        station_elevation_ft: float = 0.0,
        station_declination_deg: float = 0.0,
        course_deg: float = 0.0,
    ) -> None:
        """Tune the receiver to another station and select a course, from its north.

        Its true north is the north that is carried from now on: the flight holds its heading, and the wind stays what it is in space. Steer anew.
        """
        station = (
            number("station_latitude_deg", station_latitude_deg),
            number("station_longitude_deg", station_longitude_deg),
            number("station_elevation_ft", station_elevation_ft),
            number("station_declination_deg", station_declination_deg),
        )
        self._flight.tune(station, number("course_deg", course_deg))

    def hold_heading(self, heading_deg: float) -> None:
        """Hold a heading."""
        self._flight.hold_heading(number("heading_deg", heading_deg))

    def turn_at_station(self, inbound_course_deg: float, outbound_course_deg: float) -> None:
        """Hold the heading to the DME reading of the lead, then turn onto the outbound course without looking at an instrument.

        The reading is that of the height and the wind of this moment: ask again after a climb or in another wind.
        """
        self._flight.turn_at_station(
            number("inbound_course_deg", inbound_course_deg), number("outbound_course_deg", outbound_course_deg)
        )

    def track(self, course_deg: float, *, gain: float = 4.0) -> None:
        """Track a course, from the station's north, by the needle: `gain` degrees of heading for each degree of it."""
        self._flight.track(number("course_deg", course_deg), number("gain", gain))

    def intercept(self, course_deg: float, *, intercept_angle_deg: float = 30.0, gain: float = 4.0) -> None:
        """Intercept a course, from the station's north, at an angle, turn onto it with the right lead, and track it."""
        self._flight.intercept(
            number("course_deg", course_deg), number("intercept_angle_deg", intercept_angle_deg), number("gain", gain)
        )

    def arc(self, radius_nm: float, sense: str) -> None:
        """Keep a distance from the station, "clockwise" or "counterclockwise"."""
        if sense not in _SENSES:
            raise ValueError(f"sense is {sense!r}; allowed: 'clockwise', 'counterclockwise'")
        self._flight.arc(number("radius_nm", radius_nm), _SENSES[sense])

    def hold(
        self,
        inbound_course_deg: float,
        *,
        outbound_heading_deg: float,
        outbound_time_s: float | None = None,
        outbound_dme_nm: float | None = None,
        side: str = "right",
        entry: str = "direct",
    ) -> None:
        """Enter a racetrack at the station, from over it, and fly it round after round.

        `side` is "right" or "left"; `entry` "direct", "parallel" or "offset", as `holding_entry` gives it. The outbound leg takes a time with the wings level,
        60 s if nothing is said, or ends where the DME reading has risen to `outbound_dme_nm`. `holding_pattern` gives heading and time for a wind.
        """
        if outbound_time_s is not None and outbound_dme_nm is not None:
            raise ValueError("outbound_time_s and outbound_dme_nm are both given; allowed: one of them")
        inbound, heading = number("inbound_course_deg", inbound_course_deg), number("outbound_heading_deg", outbound_heading_deg)
        turns, entered = one_chosen(_SIDES, "side", side), one_chosen(_ENTRIES, "entry", entry)
        if outbound_dme_nm is not None:
            self._flight.hold_by_dme(inbound, turns, entered, heading, number("outbound_dme_nm", outbound_dme_nm))
        else:
            time_s = 60.0 if outbound_time_s is None else number("outbound_time_s", outbound_time_s)
            self._flight.hold(inbound, turns, entered, heading, time_s)

    def climb_to(self, altitude_ft: float, climb_fpm: float) -> None:
        """Climb or descend to an altitude at a rate and level off there."""
        self._flight.climb_to(number("altitude_ft", altitude_ft), number("climb_fpm", climb_fpm))

    def set_wind(self, wind_from_deg: float, wind_speed_kt: float) -> None:
        """Fly through another wind; what is steered goes on believing in the old one."""
        self._flight.set_wind(number("wind_from_deg", wind_from_deg), number("wind_speed_kt", wind_speed_kt))

    def set_wind_levels(
        self,
        *,
        lower_altitude_ft: float,
        lower_from_deg: float,
        lower_speed_kt: float,
        upper_altitude_ft: float,
        upper_from_deg: float,
        upper_speed_kt: float,
    ) -> None:
        """Fly through a wind that changes by components from one altitude to a higher one, and not beyond them.

        What is steered goes on believing in the old wind; what is steered afterwards believes in the wind at the altitude where the flight is then.
        """
        self._flight.set_wind_levels(
            (
                number("lower_altitude_ft", lower_altitude_ft),
                number("lower_from_deg", lower_from_deg),
                number("lower_speed_kt", lower_speed_kt),
            ),
            (
                number("upper_altitude_ft", upper_altitude_ft),
                number("upper_from_deg", upper_from_deg),
                number("upper_speed_kt", upper_speed_kt),
            ),
        )

    def set_winds_aloft(self, wind_levels: WindLevels) -> None:
        """Fly through winds at up to sixteen levels, in ascending order: each a `WindLevel`, or altitude, direction and speed.

        They change by components from one level to the next, and not beyond the lowest and the highest. What is steered goes on believing in the
        old wind, as for `set_wind_levels`.
        """
        self._flight.set_winds_aloft(each_level(wind_levels))

    def set_airspeed(self, true_airspeed_kt: float) -> None:
        """Fly at another true airspeed from now on."""
        self._flight.set_airspeed(number("true_airspeed_kt", true_airspeed_kt))

    def __repr__(self) -> str:
        state = self.state
        return f"Flight(at {state.latitude_deg:.5f}, {state.longitude_deg:.5f} deg, {state.altitude_ft:.0f} ft, {state.time_s:.2f} s)"


@dataclass(frozen=True)
class Sureness:
    """How sure a course change is; made by `course_change_sureness`. Overshoot is cross-track at roll-out on the outer side."""

    mean_nm: float
    """Mean overshoot of the trials."""
    deviation_nm: float
    """Its standard deviation."""
    chance_beyond: float
    """The share of trials that overshot by more than the limit."""
    margin_nm: float
    """What to add to the lead for the confidence; negative if there is room."""
    linear_mean_nm: float
    """The overshoot without any error but the mean delay."""
    linear_deviation_nm: float
    """The standard deviation by linear propagation."""
    linear_chance_beyond: float
    """The chance by it."""
    linear_margin_nm: float
    """The margin by it."""
    by_source_nm: dict[str, float]
    """What one standard deviation of each source is worth."""
    begin_with_margin_at_dme_nm: float
    """The DME reading at which the turn begins with the margin added to its lead; NaN if there is no turn."""
    begin_with_margin_before_fix_nm: float
    """The lead with the margin added: how far before the station that is, negative past it."""

    @property
    def foremost(self) -> str | None:
        """The source that is worth most; None if no error moves the overshoot."""
        source = max(self.by_source_nm, key=lambda name: abs(self.by_source_nm[name]))
        return source if self.by_source_nm[source] else None


def usual_errors() -> dict[str, float]:
    """The errors that are usual where nothing better is known, as settings of `course_change_sureness`.

    Half a VOR's tolerance en route with flying by the needle, half the total system error of a DME by Annex 10, a crew's reaction of 0 to 6 s by ICAO Doc
    8168, and for wind, airspeed, bank and height common practice.

    Examples
    --------
    >>> import lubberline
    >>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0, height_above_station_ft=33_000.0)
    >>> sure = lubberline.course_change_sureness(change, **lubberline.usual_errors(), limit_nm=1.0)
    >>> f"{sure.margin_nm:.2f}"
    '0.20'
    """
    return _native.usual_errors()


def course_change_sureness(
    change: CourseChange,
    *,
    station_bearing_deg: float = 0.0,
    dme_nm: float = 0.0,
    wind_speed_kt: float = 0.0,
    wind_direction_deg: float = 0.0,
    airspeed_kt: float = 0.0,
    bank_deg: float = 0.0,
    roll_in_delay_s: float = 0.0,
    height_ft: float = 0.0,
    mean_delay_s: float = 0.0,
    limit_nm: float = 0.0,
    confidence: float = 0.95,
    trials: int = 100_000,
    seed: int = 1,
) -> Sureness:
    """How sure a course change is that is begun by its DME reading: by trials, and by linear propagation beside them.

    Parameters
    ----------
    change : CourseChange
        The plan.
    station_bearing_deg, dme_nm, wind_speed_kt, wind_direction_deg, airspeed_kt, bank_deg, roll_in_delay_s, height_ft : float
        Standard deviations, none negative.
    mean_delay_s : float
        By how much the crew is late on the average.
    limit_nm : float
        The overshoot that matters.
    confidence : float
        The chance with which it is to be kept, between 0 and 1.
    trials, seed : int
        How many are flown, up to ten million; the same seed gives the same trials.

    Returns
    -------
    Sureness

    Raises
    ------
    NavigationError
        A negative deviation, a confidence outside 0 to 1, no trials or too many.

    Examples
    --------
    >>> import lubberline
    >>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0, height_above_station_ft=33_000.0)
    >>> sure = lubberline.course_change_sureness(change, wind_speed_kt=15.0, bank_deg=2.0, roll_in_delay_s=2.0, mean_delay_s=2.0)
    >>> sure.foremost
    'bank'
    """
    errors = _deviations(
        station_bearing_deg=station_bearing_deg,
        dme_nm=dme_nm,
        wind_speed_kt=wind_speed_kt,
        wind_direction_deg=wind_direction_deg,
        airspeed_kt=airspeed_kt,
        bank_deg=bank_deg,
        roll_in_delay_s=roll_in_delay_s,
        height_ft=height_ft,
        mean_delay_s=mean_delay_s,
    )
    answer, by_source = _native.sureness(
        change.settings, errors, number("limit_nm", limit_nm), number("confidence", confidence), trials, seed
    )
    return Sureness(**answer, by_source_nm=by_source)


def course_change_overshoots(
    change: CourseChange,
    *,
    station_bearing_deg: float = 0.0,
    dme_nm: float = 0.0,
    wind_speed_kt: float = 0.0,
    wind_direction_deg: float = 0.0,
    airspeed_kt: float = 0.0,
    bank_deg: float = 0.0,
    roll_in_delay_s: float = 0.0,
    height_ft: float = 0.0,
    mean_delay_s: float = 0.0,
    trials: int = 100_000,
    seed: int = 1,
) -> NDArray[np.float64]:
    """The overshoots of the trials that `course_change_sureness` makes its answer of, in nautical miles, one by one.

    Parameters
    ----------
    change : CourseChange
        The plan.
    station_bearing_deg, dme_nm, wind_speed_kt, wind_direction_deg, airspeed_kt, bank_deg, roll_in_delay_s, height_ft : float
        Standard deviations, none negative.
    mean_delay_s : float
        By how much the crew is late on the average.
    trials, seed : int
        How many are flown, up to ten million; the same seed gives the same trials.

    Returns
    -------
    ndarray
        Cross-track at roll-out, positive on the outer side.

    Raises
    ------
    NavigationError
        A negative deviation.
    ValueError
        A negative number of trials, or too many.

    Examples
    --------
    >>> import lubberline
    >>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0)
    >>> each = lubberline.course_change_overshoots(change, roll_in_delay_s=2.0)
    >>> f"{each.std():.2f}"
    '0.22'
    """
    errors = _deviations(
        station_bearing_deg=station_bearing_deg,
        dme_nm=dme_nm,
        wind_speed_kt=wind_speed_kt,
        wind_direction_deg=wind_direction_deg,
        airspeed_kt=airspeed_kt,
        bank_deg=bank_deg,
        roll_in_delay_s=roll_in_delay_s,
        height_ft=height_ft,
        mean_delay_s=mean_delay_s,
    )
    if not 0 <= trials <= _MOST_STEPS:
        raise ValueError(f"trials is {trials}; allowed: 0 to {_MOST_STEPS}")
    each_nm: NDArray[np.float64] = np.frombuffer(_native.overshoots(change.settings, errors, trials, seed)).copy()
    return each_nm


def _deviations(**errors: float) -> tuple[float, ...]:
    """Standard deviations in the order of the native functions, the mean delay at the end."""
    return tuple(number(name, value) for name, value in errors.items())
