from typing import Any

import numpy as np

__all__ = [
    "NavigationError",
    "UNKNOWN_CHOICE",
    "__version__",
    "check_station",
    "course_change",
    "course_change_at",
    "fly_legs",
    "many",
    "scalars",
    "ufuncs",
]

__version__: str
UNKNOWN_CHOICE: int
ufuncs: dict[str, np.ufunc]
many: dict[str, np.ufunc]
scalars: dict[str, Any]

class NavigationError(ValueError):
    code: int
    parameter: str | None

def course_change(settings: tuple[Any, ...]) -> tuple[dict[str, Any], dict[str, float]]: ...
def course_change_at(settings: tuple[Any, ...], time_s: float) -> tuple[float, float, float, float]: ...
def check_station(latitude_deg: float, longitude_deg: float, elevation_ft: float, declination_deg: float) -> None: ...
def fly_legs(
    legs: list[tuple[str, dict[str, Any]]], given: tuple[float, ...], spacing_nm: float
) -> tuple[list[Any], list[tuple[float, float]]]: ...
