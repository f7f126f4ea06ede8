"""The readings of a readings file as numbers, and the circuit that they describe."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from coldloop import _air, _core
from coldloop._diagnosis import diagnose
from coldloop._errors import UnknownUnitError
from coldloop._refrigerant import Refrigerant


@dataclass(frozen=True)
class Point:
    """A state of the circuit; ``measured`` unless its temperature was taken to be that of an ideal one."""

    name: str
    pressure_pa_abs: float
    enthalpy_j_kg: float
    temperature_k: float
    measured: bool


@dataclass(frozen=True)
class Points:
    """The four corners of a circuit: suction, discharge, liquid, behind the expansion."""

    refrigerant: Refrigerant
    states: tuple[Point, Point, Point, Point]


@dataclass(frozen=True)
class Measured:
    """A reading with its standard uncertainty, in SI."""

    value: float
    uncertainty: float


def points(readings: Mapping[str, Any]) -> Points:
    """The corners that follow from the readings; without a line's temperature, those of an ideal circuit."""
    refrigerant = Refrigerant(readings["system"]["refrigerant"])
    low, high = (pressure_pa_abs(readings, side) for side in ("low_side", "high_side"))
    if low is None or high is None:
        raise ValueError("a circuit needs low_side and high_side")
    lines = readings["readings"]
    suction = _corner(refrigerant, "suction", low, temperature_k(lines, "suction_line"), quality=1.0)
    entropy = refrigerant.state(pressure_pa_abs=low, enthalpy_j_kg=suction.enthalpy_j_kg).entropy_j_kg_k
    discharge = _corner(refrigerant, "discharge", high, temperature_k(lines, "discharge_line"), entropy_j_kg_k=entropy)
    outlet = "liquid_line" if "liquid_line" in lines else "condenser_outlet"
    liquid = _corner(refrigerant, "liquid", high, temperature_k(lines, outlet), quality=0.0)
    expanded = _corner(refrigerant, "expanded", low, None, enthalpy_j_kg=liquid.enthalpy_j_kg)
    # What passes the expansion device keeps its enthalpy: the corner is as good as the liquid line.
    expanded = Point(expanded.name, low, expanded.enthalpy_j_kg, expanded.temperature_k, liquid.measured)
    return Points(refrigerant, (suction, discharge, liquid, expanded))


def _corner(refrigerant: Refrigerant, name: str, p_pa: float, t_k: float | None, **ideal: Any) -> Point:
    if t_k is not None:
        state = refrigerant.state(temperature_k=t_k, pressure_pa_abs=p_pa)
    else:
        state = refrigerant.state(pressure_pa_abs=p_pa, **ideal)
    return Point(name, p_pa, state.enthalpy_j_kg, state.temperature_k, t_k is not None)


def text(entry: Any) -> str | None:
    """The text of an entry, which may be a table with its instrument."""
    written: str | None = entry["value"] if isinstance(entry, Mapping) else entry
    return written


def temperature_k(lines: Mapping[str, Any], name: str) -> float | None:
    """A temperature that was read."""
    written = text(lines.get(name))
    return None if written is None else _core.quantity("temperature", written)


def ambient_k(readings: Mapping[str, Any]) -> float:
    """The air around the vehicle."""
    return _core.quantity("temperature", readings["conditions"]["ambient"])


def pressure_pa_abs(readings: Mapping[str, Any], side: str) -> float | None:
    """A pressure that was read, above vacuum; a gauge counts from where it was zeroed."""
    written = text(readings["readings"].get(side))
    if written is None:
        return None
    zero = _air_pa(readings["readings"], "gauge_zero_altitude", "gauge_zero_barometer")
    air = zero or _air_pa(readings["conditions"], "altitude", "barometer")
    if air is None:
        raise ValueError("a gauge reads against the air around it: altitude or barometer is missing")
    try:
        return float(_air.absolute_pressure(_core.quantity("gauge pressure", written), air))
    except UnknownUnitError:
        return _core.quantity("absolute pressure", written)


def gauge_reading(readings: Mapping[str, Any], side: str) -> Measured | None:
    """A pressure above the air of the place, with the uncertainty of its gauge."""
    absolute = pressure_pa_abs(readings, side)
    air = _air_pa(readings["conditions"], "altitude", "barometer")
    if absolute is None or air is None:
        return None
    return Measured(absolute - air, _uncertainty_pa(readings, side, absolute))


def _uncertainty_pa(readings: Mapping[str, Any], side: str, absolute: float) -> float:
    """That of the pressure: the one of its saturation temperature times the slope of the line."""
    derived = diagnose(readings).to_dict()["derived"][f"{side}_dew"]
    if derived is None:
        return 0.0
    refrigerant = Refrigerant(readings["system"]["refrigerant"])
    slope = refrigerant.saturation_slope(derived["value_k"])
    return float(slope * derived["standard_uncertainty_k"])


def _air_pa(table: Mapping[str, Any], altitude: str, barometer: str) -> float | None:
    if altitude in table:
        return float(_air.standard_pressure(_core.quantity("altitude", table[altitude])))
    return _core.quantity("absolute pressure", table[barometer]) if barometer in table else None
