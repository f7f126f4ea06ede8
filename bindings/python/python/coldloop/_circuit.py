"""From readings to superheat and subcooling."""

from collections.abc import Callable
from typing import Any

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, apply
from coldloop._refrigerant import Refrigerant


def superheat(
    refrigerant: Refrigerant | str,
    suction_line_k: Numbers,
    *,
    pressure_pa_abs: Numbers | None = None,
    pressure_pa_gauge: Numbers | None = None,
    air_pa_abs: Numbers | None = None,
    errors: Errors = "raise",
) -> Answer:
    """How far in K the suction line is above the dew point of the low-side pressure.

    The pressure is given with its datum: ``pressure_pa_abs`` alone, or ``pressure_pa_gauge`` with the air in which
    the gauge was zeroed. Negative when the line reads colder than vapour of that pressure can be. Raises
    ``OutOfRangeError`` and ``NotFiniteError``.

    >>> air_pa_abs = standard_pressure(1600.0)
    >>> round(superheat("R-134a", 285.15, pressure_pa_gauge=241_316.0, air_pa_abs=air_pa_abs), 1)
    9.1
    """
    datum = _datum(pressure_pa_abs, pressure_pa_gauge, air_pa_abs)
    return _difference(_core.superheat, refrigerant, {"suction_line_k": suction_line_k}, datum, errors)


def subcooling(
    refrigerant: Refrigerant | str,
    liquid_line_k: Numbers,
    *,
    pressure_pa_abs: Numbers | None = None,
    pressure_pa_gauge: Numbers | None = None,
    air_pa_abs: Numbers | None = None,
    errors: Errors = "raise",
) -> Answer:
    """How far in K the liquid line is below the bubble point of the high-side pressure; otherwise as ``superheat``.

    >>> round(subcooling("R-134a", 313.15, pressure_pa_abs=1.3e6), 1)
    9.5
    """
    datum = _datum(pressure_pa_abs, pressure_pa_gauge, air_pa_abs)
    return _difference(_core.subcooling, refrigerant, {"liquid_line_k": liquid_line_k}, datum, errors)


def _datum(absolute: Numbers | None, gauge: Numbers | None, air: Numbers | None) -> dict[str, Numbers]:
    """The pressure and the air it counts from; no air for an absolute one."""
    if absolute is not None and gauge is None and air is None:
        return {"pressure_pa_abs": absolute}
    if gauge is not None and air is not None and absolute is None:
        return {"pressure_pa_gauge": gauge, "air_pa_abs": air}
    raise TypeError("give pressure_pa_abs alone, or pressure_pa_gauge together with air_pa_abs")


def _difference(
    function: Callable[..., Any],
    refrigerant: Refrigerant | str,
    line: dict[str, Numbers],
    datum: dict[str, Numbers],
    errors: Errors,
) -> Answer:
    if not isinstance(refrigerant, Refrigerant):
        refrigerant = Refrigerant(refrigerant)
    if len(datum) == 2:
        return apply(function, errors, refrigerant._code, **line, **datum)

    def from_vacuum(line: object, pressure: object, *rest: object) -> Answer:
        return function(line, pressure, None, *rest)

    return apply(from_vacuum, errors, refrigerant._code, **line, **datum)
