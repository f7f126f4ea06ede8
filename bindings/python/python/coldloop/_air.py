"""The surrounding air: what turns a gauge pressure into an absolute one."""

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, apply


def standard_pressure(altitude_m: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pressure of the standard atmosphere in Pa at a geopotential altitude from -500 m to 9,000 m.

    Source: ISO 2533:1975. Raises ``OutOfRangeError`` and ``NotFiniteError``.

    >>> round(standard_pressure(1000.0), 1)
    89874.6
    """
    return apply(_core.standard_pressure, altitude_m, errors=errors)


def absolute_pressure(pressure_pa_gauge: Numbers, air_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pressure above vacuum in Pa of what a gauge shows that was zeroed in air of ``air_pa_abs``.

    The air is between 28,000 Pa and 112,000 Pa. Raises ``OutOfRangeError`` and ``NotFiniteError``.

    >>> round(absolute_pressure(241_316.0, standard_pressure(1600.0)))
    324840
    """
    return apply(_core.absolute_pressure, pressure_pa_gauge, air_pa_abs, errors=errors)
