"""From readings to superheat, subcooling and what else follows."""

from collections.abc import Callable
from dataclasses import dataclass, fields
from typing import Any, TypeAlias

import numpy as np

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, apply, named, plain, several, shaped, strict
from coldloop._refrigerant import Refrigerant

PRESSURE_MATCHES = np.array(_core.pressure_matches())

Estimate: TypeAlias = tuple[float, float]
"""A value with its standard uncertainty."""
Reading: TypeAlias = float | Estimate
"""What an instrument shows, with or without its standard uncertainty."""


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


@dataclass(frozen=True, slots=True)
class AtRest:
    """A pressure at rest beside the lines of one refrigerant; floats for floats, otherwise what came in.

    >>> AtRest.__match_args__[:2]
    ('pressure_match', 'excess_pa')
    """

    pressure_match: Answer
    """``agrees``, ``too-high`` or ``too-low``; empty where there is no answer."""
    excess_pa: Answer
    """The pressure above that of the bubble line; where it is too high, the partial pressure of the gas, if it is gas."""
    excess_uncertainty_pa: Answer
    """Its standard uncertainty."""
    above_dew_pa: Answer
    """The pressure above that of the dew line; of a pure refrigerant the same."""
    above_dew_uncertainty_pa: Answer
    gas_share: Answer
    """The mole share of gas in the vapour space, if it is gas; 0 unless the pressure is too high."""


def at_rest(
    refrigerant: Refrigerant | str,
    temperature_k: Numbers,
    *,
    temperature_uncertainty_k: Numbers,
    pressure_pa_abs: Numbers | None = None,
    pressure_pa_gauge: Numbers | None = None,
    air_pa_abs: Numbers | None = None,
    pressure_uncertainty_pa: Numbers,
    errors: Errors = "raise",
) -> AtRest:
    """Whether a circuit or cylinder at rest, with liquid in it and at one temperature throughout, can hold this refrigerant,
    and how much non-condensable gas with it.

    Call it for every refrigerant to see which ones a pressure agrees with. Often several do; a second reading some 15 K warmer
    or colder tells more than the first, and an analyser more than both. The pressure is given as for ``superheat``, both
    readings with their standard uncertainties. Source: Dalton's law; the method is common practice, no source. Raises
    ``OutOfRangeError`` and ``NotFiniteError``.

    >>> found = at_rest("R-134a", 298.15, temperature_uncertainty_k=0.3, pressure_pa_abs=800e3, pressure_uncertainty_pa=3e3)
    >>> found.pressure_match, round(found.excess_pa, -2), round(found.gas_share, 2)
    ('too-high', 134600.0, 0.17)
    """
    if not isinstance(refrigerant, Refrigerant):
        refrigerant = Refrigerant(refrigerant)
    code, raising = refrigerant._code, strict(errors)
    datum = _datum(pressure_pa_abs, pressure_pa_gauge, air_pa_abs)

    def columns(t: Any, t_uncertainty: Any, p: Any, p_uncertainty: Any, air: Any = None) -> list[Any]:
        return _core.at_rest((t, t_uncertainty), (p, p_uncertainty), air, raising, code)

    pressure, *air = datum.items()
    arguments = {"temperature_k": temperature_k, "temperature_uncertainty_k": temperature_uncertainty_k}
    arguments |= dict([pressure]) | {"pressure_uncertainty_pa": pressure_uncertainty_pa} | dict(air)
    pressure_match, *figures = several(columns, arguments, len(fields(AtRest)))
    return AtRest(named(pressure_match, PRESSURE_MATCHES), *figures)


@dataclass(frozen=True, slots=True)
class Derived:
    """What follows from readings: value and standard uncertainty of each figure, in SI; ``None`` for what does not follow.

    >>> Derived.__match_args__[:2]
    ('low_side_pa_abs', 'high_side_pa_abs')
    """

    low_side_pa_abs: Estimate | None
    high_side_pa_abs: Estimate | None
    pressure_ratio: Estimate | None
    low_dew_k: Estimate | None
    """Where evaporation ends."""
    low_bubble_k: Estimate | None
    high_dew_k: Estimate | None
    """Where condensation begins."""
    high_bubble_k: Estimate | None
    superheat_k: Estimate | None
    subcooling_k: Estimate | None
    discharge_superheat_k: Estimate | None
    condensing_above_ambient_k: Estimate | None
    vent_above_evaporating_k: Estimate | None
    cooling_j_kg: Estimate | None
    """Heat taken up by each kilogram between liquid line and suction line."""
    isentropic_efficiency: Estimate | None
    """Work of a loss-free compressor over the work done, 0 to 1."""


def derive(
    refrigerant: Refrigerant | str,
    *,
    low_side_pa: Reading | None = None,
    high_side_pa: Reading | None = None,
    air_pa_abs: float | None = None,
    ambient_k: Reading | None = None,
    vent_k: Reading | None = None,
    suction_line_k: Reading | None = None,
    discharge_line_k: Reading | None = None,
    liquid_line_k: Reading | None = None,
) -> Derived:
    """All that follows from readings, each figure with its uncertainty.

    A reading is a number, or a number with its standard uncertainty. Both pressures count from the air of ``air_pa_abs`` in
    which the gauges were zeroed, and from vacuum where that is left out. Source: JCGM 100:2008. Raises
    ``OutOfRangeError`` and ``NotFiniteError``; a figure for which a reading is missing is ``None``.

    >>> air_pa_abs = standard_pressure(1600.0)
    >>> found = derive("R-134a", low_side_pa=(241e3, 10e3), air_pa_abs=air_pa_abs, suction_line_k=(285.15, 0.5))
    >>> [round(figure, 1) for figure in found.superheat_k], found.subcooling_k
    ([9.1, 1.0], None)
    """
    if not isinstance(refrigerant, Refrigerant):
        refrigerant = Refrigerant(refrigerant)
    pressures = [_reading("low_side_pa", low_side_pa), _reading("high_side_pa", high_side_pa)]
    lines = {
        "ambient_k": ambient_k,
        "vent_k": vent_k,
        "suction_line_k": suction_line_k,
        "discharge_line_k": discharge_line_k,
        "liquid_line_k": liquid_line_k,
    }
    air = None if air_pa_abs is None else float(plain("air_pa_abs", air_pa_abs))
    temperatures = [_reading(name, reading) for name, reading in lines.items()]
    return Derived(**dict(_core.derive(refrigerant._code, pressures, temperatures, air)))


def gauge_uncertainty(
    gauge_class: str,
    low_pa_gauge: Numbers,
    high_pa_gauge: Numbers,
    shown_pa_gauge: Numbers,
    *,
    errors: Errors = "raise",
) -> Answer:
    """Standard uncertainty in Pa of a gauge of a class (``class-1.6``, ``grade-B``, ``digital``, ...) whose scale runs from
    ``low_pa_gauge`` to ``high_pa_gauge``, where it shows ``shown_pa_gauge``.

    Source: EN 837-1:1996, ASME B40.100; electronic gauges: common practice. Raises ``UnknownNameError``,
    ``NotFiniteError`` and ``OutOfRangeError``.

    >>> round(gauge_uncertainty("class-1.6", -100e3, 1e6, 241e3))
    10161
    """
    raising = strict(errors)
    scale = {"low_pa_gauge": low_pa_gauge, "high_pa_gauge": high_pa_gauge, "shown_pa_gauge": shown_pa_gauge}
    return shaped(lambda low, high, shown: _core.gauge_uncertainty((low, high), shown, raising, gauge_class), scale)


def thermometer_uncertainty(thermometer: str, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
    """Standard uncertainty in K of a thermometer (``clamp-thermocouple``, ``pocket-digital``, ...) where it shows
    ``temperature_k``.

    Source: IEC 60584-1:2013 for thermocouples, common practice for the others. Errors as ``gauge_uncertainty``.

    >>> round(thermometer_uncertainty("clamp-thermocouple", 285.15), 2)
    1.44
    """
    raising = strict(errors)
    shown = {"temperature_k": temperature_k}
    return shaped(lambda x: _core.thermometer_uncertainty(x, raising, thermometer), shown)


def _reading(name: str, reading: Reading | None) -> Estimate | None:
    """A reading as value and standard uncertainty."""
    if reading is None:
        return None
    value, uncertainty = reading if isinstance(reading, tuple) else (reading, 0.0)
    return float(plain(name, value)), float(plain(name, uncertainty))


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
