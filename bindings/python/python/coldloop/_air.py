"""The surrounding air: its pressure, gauge and absolute pressures, moist air, and water under vacuum."""

from dataclasses import dataclass, fields
from typing import Any

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, apply, several, strict


def standard_pressure(altitude_m: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pressure of the standard atmosphere in Pa at a geopotential altitude from -500 m to 9,000 m.

    Source: ISO 2533:1975. Raises ``OutOfRangeError`` and ``NotFiniteError``.

    >>> round(standard_pressure(1000.0), 1)
    89874.6
    """
    return apply(_core.standard_pressure, errors, altitude_m=altitude_m)


def standard_temperature(altitude_m: Numbers, *, errors: Errors = "raise") -> Answer:
    """Temperature of the standard atmosphere in K. Range, source and errors as ``standard_pressure``.

    >>> standard_temperature(1000.0)
    281.65
    """
    return apply(_core.standard_temperature, errors, altitude_m=altitude_m)


def standard_density(altitude_m: Numbers, *, errors: Errors = "raise") -> Answer:
    """Density of the standard atmosphere in kg/m3. Range, source and errors as ``standard_pressure``.

    >>> round(standard_density(0.0), 3)
    1.225
    """
    return apply(_core.standard_density, errors, altitude_m=altitude_m)


def standard_altitude(air_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
    """Altitude in m at which the standard atmosphere has this pressure: the inverse of ``standard_pressure``.

    Source: ISO 2533:1975. Raises ``OutOfRangeError`` and ``NotFiniteError``.

    >>> round(standard_altitude(83_500.0))
    1602
    """
    return apply(_core.standard_altitude, errors, air_pa_abs=air_pa_abs)


def absolute_pressure(pressure_pa_gauge: Numbers, air_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pressure above vacuum in Pa of what a gauge shows that was zeroed in air of ``air_pa_abs``.

    The air is between 28,000 Pa and 112,000 Pa. Raises ``OutOfRangeError`` and ``NotFiniteError``.

    >>> round(absolute_pressure(241_316.0, standard_pressure(1600.0)))
    324840
    """
    return apply(_core.absolute_pressure, errors, pressure_pa_gauge=pressure_pa_gauge, air_pa_abs=air_pa_abs)


def gauge_pressure(pressure_pa_abs: Numbers, air_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
    """What a gauge in Pa shows of a pressure above vacuum when it was zeroed in air of ``air_pa_abs``.

    Range and errors as ``absolute_pressure``.

    >>> gauge_pressure(334e3, 84e3)
    250000.0
    """
    return apply(_core.gauge_pressure, errors, pressure_pa_abs=pressure_pa_abs, air_pa_abs=air_pa_abs)


def water_saturation_pressure(temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pressure in Pa at which water boils, or below 273.16 K ice sublimes, from 173.15 K to 473.15 K.

    Source: Hyland & Wexler (1983). Raises ``OutOfRangeError`` and ``NotFiniteError``.

    >>> round(water_saturation_pressure(298.15), 1)
    3169.2
    """
    return apply(_core.water_saturation_pressure, errors, temperature_k=temperature_k)


def water_boiling_point(pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
    """Temperature in K at which water boils or ice sublimes: what an evacuation has to reach.

    Source: Hyland & Wexler (1983). Raises ``OutOfRangeError`` and ``NotFiniteError``.

    >>> round(water_boiling_point(2_400.0) - 273.15, 1)
    20.4
    """
    return apply(_core.water_boiling_point, errors, pressure_pa_abs=pressure_pa_abs)


def enhancement_factor(temperature_k: Numbers, pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
    """How much more water vapour saturated air holds than the same space without air, as a factor.

    Source: Greenspan (1976), doi:10.6028/jres.080A.007. Raises ``OutOfRangeError`` and ``NotFiniteError``.

    >>> round(enhancement_factor(293.15, 101_325.0), 4)
    1.004
    """
    return apply(_core.enhancement_factor, errors, temperature_k=temperature_k, pressure_pa_abs=pressure_pa_abs)


@dataclass(frozen=True, slots=True)
class MoistAir:
    """A state of moist air in SI; enthalpy and volume count per kg of dry air, from dry air and water at 0 °C.

    >>> MoistAir.__match_args__[:2]
    ('temperature_k', 'pressure_pa_abs')
    """

    temperature_k: Answer
    pressure_pa_abs: Answer
    relative_humidity: Answer
    """0 to 1."""
    humidity_ratio: Answer
    """Mass of water per mass of dry air."""
    dew_point_k: Answer
    """Frost point below 273.15 K; NaN for air so dry that it lies below 173.15 K."""
    wet_bulb_k: Answer
    vapour_pressure_pa: Answer
    enthalpy_j_kg: Answer
    volume_m3_kg: Answer
    density_kg_m3: Answer


def moist_air(
    temperature_k: Numbers,
    pressure_pa_abs: Numbers,
    *,
    relative_humidity: Numbers | None = None,
    humidity_ratio: Numbers | None = None,
    dew_point_k: Numbers | None = None,
    wet_bulb_k: Numbers | None = None,
    errors: Errors = "raise",
) -> MoistAir:
    """Moist air at a temperature, a pressure and one of its humidities, from -70 to 100 °C.

    Source: ASHRAE Handbook - Fundamentals (2017), ch. 1, with the enhancement factor. Raises ``OutOfRangeError`` and
    ``NotFiniteError``; ``OutOfRangeError`` also for more water than saturates the air.

    >>> air = moist_air(298.15, 101_325.0, wet_bulb_k=288.15)
    >>> round(air.relative_humidity, 3), round(air.humidity_ratio, 5)
    (0.332, 0.00656)
    """
    humidities = {
        "relative_humidity": relative_humidity,
        "humidity_ratio": humidity_ratio,
        "dew_point_k": dew_point_k,
        "wet_bulb_k": wet_bulb_k,
    }
    given = {name: value for name, value in humidities.items() if value is not None}
    if len(given) != 1:
        raise TypeError(f"give one of {', '.join(humidities)}")
    raising = strict(errors)

    def columns(t_k: Any, p_pa: Any, humidity: Any) -> list[Any]:
        return _core.moist_air(next(iter(given)), t_k, p_pa, humidity, raising)

    arguments = {"temperature_k": temperature_k, "pressure_pa_abs": pressure_pa_abs, **given}
    return MoistAir(*several(columns, arguments, len(fields(MoistAir))))


def air_of_enthalpy(
    enthalpy_j_kg: Numbers,
    pressure_pa_abs: Numbers,
    humidity_ratio: Numbers,
    *,
    errors: Errors = "raise",
) -> MoistAir:
    """Moist air of a specific enthalpy in J per kg of dry air, a pressure and a humidity ratio: what leaves a coil.

    Range, source and errors as ``moist_air``.

    >>> round(air_of_enthalpy(41_800.0, 101_325.0, 0.00653).temperature_k, 1)
    298.2
    """
    raising = strict(errors)

    def columns(h_j_kg: Any, p_pa: Any, ratio: Any) -> list[Any]:
        return _core.moist_air("enthalpy_j_kg", h_j_kg, p_pa, ratio, raising)

    arguments = {"enthalpy_j_kg": enthalpy_j_kg, "pressure_pa_abs": pressure_pa_abs, "humidity_ratio": humidity_ratio}
    return MoistAir(*several(columns, arguments, len(fields(MoistAir))))
