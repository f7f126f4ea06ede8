"""The readings of a readings file as numbers, and the circuit that they describe."""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from coldloop import _air, _core
from coldloop._errors import MissingError, UnknownUnitError
from coldloop._readings import Readings, text
from coldloop._refrigerant import Refrigerant


@dataclass(frozen=True)
class Point:
    """A state of the circuit; not ``measured`` where its temperature is that of an ideal circuit."""

    name: str
    pressure_pa_abs: float
    enthalpy_j_kg: float
    temperature_k: float
    measured: bool


@dataclass(frozen=True)
class Points:
    """The four corners of a circuit: suction, discharge, liquid, after the expansion."""

    refrigerant: Refrigerant
    states: tuple[Point, Point, Point, Point]


@dataclass(frozen=True)
class Measured:
    """A reading with its standard uncertainty, in SI."""

    value: float
    uncertainty: float


def written(readings: Readings) -> dict[str, Any]:
    """Readings as the library writes them: SI units, a barometer for the altitude. Raises as ``diagnose``."""
    file: dict[str, Any] = {"readings": {}, **json.loads(_core.Session(text(readings)).to_json())}
    return file


def points(file: Mapping[str, Any]) -> Points:
    """The corners that follow from the readings; without a line's temperature, those of an ideal circuit."""
    refrigerant = Refrigerant(file["system"]["refrigerant"])
    corners = []
    for side in ("low_side", "high_side"):
        pressure = pressure_pa_abs(file, side)
        if pressure is None:
            raise MissingError(f"{side}: a circuit needs both pressures, and this one was not read", "pressure", key=side)
        corners.append(pressure)
    low, high = corners
    lines = file["readings"]
    suction = _corner(refrigerant, "suction", low, temperature_k(lines, "suction_line"), quality=1.0)
    entropy = refrigerant.state(pressure_pa_abs=low, enthalpy_j_kg=suction.enthalpy_j_kg).entropy_j_kg_k
    discharge = _corner(refrigerant, "discharge", high, temperature_k(lines, "discharge_line"), entropy_j_kg_k=entropy)
    outlet = "liquid_line" if "liquid_line" in lines else "condenser_outlet"
    liquid = _corner(refrigerant, "liquid", high, temperature_k(lines, outlet), quality=0.0)
    expanded = _corner(refrigerant, "expanded", low, None, enthalpy_j_kg=liquid.enthalpy_j_kg)
    # The expansion keeps the enthalpy: this corner is measured if the liquid line is.
    expanded = Point(expanded.name, low, expanded.enthalpy_j_kg, expanded.temperature_k, liquid.measured)
    return Points(refrigerant, (suction, discharge, liquid, expanded))


def _corner(refrigerant: Refrigerant, name: str, p_pa: float, t_k: float | None, **ideal: Any) -> Point:
    if t_k is not None:
        state = refrigerant.state(temperature_k=t_k, pressure_pa_abs=p_pa)
    else:
        state = refrigerant.state(pressure_pa_abs=p_pa, **ideal)
    return Point(name, p_pa, state.enthalpy_j_kg, state.temperature_k, t_k is not None)


def _value(entry: Any) -> str | None:
    """The text of an entry, which may be a table with its uncertainty."""
    value: str | None = entry["value"] if isinstance(entry, Mapping) else entry
    return value


def temperature_k(lines: Mapping[str, Any], name: str) -> float | None:
    """A temperature that was read."""
    value = _value(lines.get(name))
    return None if value is None else _core.quantity("temperature", value)


def pressure_pa_abs(file: Mapping[str, Any], side: str) -> float | None:
    """A pressure that was read, above vacuum; a gauge counts from where it was zeroed."""
    value = _value(file["readings"].get(side))
    if value is None:
        return None
    zero = _value(file["readings"].get("gauge_zero_barometer"))
    try:
        air = _air_pa(file) if zero is None else _core.quantity("absolute pressure", zero)
        return float(_air.absolute_pressure(_core.quantity("gauge pressure", value), air))
    except UnknownUnitError:
        return _core.quantity("absolute pressure", value)


def gauge_reading(file: Mapping[str, Any], side: str) -> Measured | None:
    """A pressure above the air of the place, with the uncertainty of its gauge."""
    absolute = pressure_pa_abs(file, side)
    if absolute is None:
        return None
    uncertainty = _core.quantity("absolute pressure", f"{file['readings'][side]['uncertainty']} abs")  # written in Pa
    return Measured(absolute - _air_pa(file), uncertainty)


def _air_pa(file: Mapping[str, Any]) -> float:
    """Pressure of the surrounding air."""
    return _core.quantity("absolute pressure", _value(file["conditions"]["barometer"]) or "")
