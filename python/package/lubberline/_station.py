"""A ground station and what an aircraft makes of it."""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from typing import Any, overload

import numpy as np
from numpy.typing import ArrayLike, NDArray

from . import _native
from ._call import Number, number
from ._functions import Observation, observe
from ._table import html_table, shown


@dataclass(frozen=True, repr=False)
class Station:
    """A VOR/DME station: where its antenna is, and which way its north points.

    Parameters
    ----------
    latitude_deg, longitude_deg : float
        Position on WGS-84, latitude -90 to 90, longitude any finite number.
    elevation_ft : float
        Elevation of the antenna above mean sea level, which is taken for the ellipsoid.
    declination_deg : float
        Angle from true north to the station's north, as it was set up, positive east.
    ident : str
        Its identification.

    Raises
    ------
    NavigationError
        A value outside its range.

    Examples
    --------
    >>> import lubberline
    >>> station = lubberline.Station(61.25, -11.5, elevation_ft=420.0, declination_deg=-6.0, ident="OST")
    >>> seen = station.observe(61.5, -11.0, 31_000.0)
    >>> f"{seen.radial_deg:.1f} radial, {seen.dme_nm:.1f} DME"
    '49.6 radial, 21.5 DME'
    """

    latitude_deg: float
    longitude_deg: float
    elevation_ft: float = field(default=0.0, kw_only=True)
    declination_deg: float = field(default=0.0, kw_only=True)
    ident: str = field(default="", kw_only=True)

    def __post_init__(self) -> None:
        for one in ("latitude_deg", "longitude_deg", "elevation_ft", "declination_deg"):
            object.__setattr__(self, one, number(one, getattr(self, one)))
        if not isinstance(self.ident, str):
            raise TypeError(f"ident must be a text, not {type(self.ident).__name__}")
        _native.check_station(self.latitude_deg, self.longitude_deg, self.elevation_ft, self.declination_deg)

    @overload
    def observe(  # type: ignore[overload-overlap, unused-ignore]
        self, latitude_deg: Number, longitude_deg: Number, altitude_ft: Number
    ) -> Observation[float]: ...
    @overload
    def observe(
        self, latitude_deg: ArrayLike, longitude_deg: ArrayLike, altitude_ft: ArrayLike, **kwargs: Any
    ) -> Observation[NDArray[np.float64]]: ...
    def observe(self, latitude_deg: Any, longitude_deg: Any, altitude_ft: Any, **kwargs: Any) -> Any:
        """Radial, DME, ground distance and elevation angle of an aircraft, or of arrays of them.

        Parameters
        ----------
        latitude_deg, longitude_deg : array_like
            Where the aircraft is on WGS-84.
        altitude_ft : array_like
            Its altitude above mean sea level.
        **kwargs
            `out`, `where` and the other options of a NumPy function.

        Returns
        -------
        Observation
            `radial_deg` (from the station's north; NaN exactly overhead), `dme_nm`, `ground_distance_nm`, `elevation_angle_deg`.
        """
        return observe(
            self.latitude_deg,
            self.longitude_deg,
            self.elevation_ft,
            self.declination_deg,
            latitude_deg,
            longitude_deg,
            altitude_ft,
            **kwargs,
        )

    def _rows(self) -> dict[str, Any]:
        return {one.name: getattr(self, one.name) for one in fields(self)}

    def __repr__(self) -> str:
        return f"Station({', '.join(f'{name}={value!r}' for name, value in self._rows().items())})"

    def _repr_html_(self) -> str:
        return html_table(f"Station {self.ident}".strip(), {name: shown(value) for name, value in self._rows().items()})
