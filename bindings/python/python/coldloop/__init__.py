"""Vehicle refrigerant properties and vehicle air-conditioning diagnosis.

Every quantity is plain SI and its name says the unit: ``temperature_k``, ``pressure_pa_abs`` (above vacuum),
``pressure_pa_gauge`` (above the surrounding air). Functions take floats, lists, arrays of any float or integer dtype,
pandas and polars columns, xarray objects, and pint and astropy quantities, which they convert; they broadcast them and
give a float for floats and otherwise the kind that came in. With ``errors="nan"`` an element without an answer is NaN instead of
an exception. The interpreter is released while they work: the answer to an array that another thread changes meanwhile is
undefined, so hand over a copy of it.

``diagnose`` judges one vehicle, ``diagnose_table`` many; ``plan`` says what to do next, ``prove`` whether it helped, and
``Counts`` keeps what a shop has learned; ``evaluate`` tells how good the answers to confirmed cases are; ``simulate`` says what a vehicle would read;
``Log`` takes readings over time, and ``Session`` guides a visit step by step; ``coldloop.plot`` draws (it needs matplotlib and is imported by itself).
"""

from coldloop._air import (
    MoistAir,
    absolute_pressure,
    air_of_enthalpy,
    enhancement_factor,
    gauge_pressure,
    moist_air,
    standard_altitude,
    standard_density,
    standard_pressure,
    standard_temperature,
    water_boiling_point,
    water_saturation_pressure,
)
from coldloop._charge import Charge, PhaseSplit, Remainder
from coldloop._circuit import (
    AtRest,
    Derived,
    at_rest,
    derive,
    gauge_uncertainty,
    subcooling,
    superheat,
    thermometer_uncertainty,
)
from coldloop._core import __version__ as __version__
from coldloop._diagnosis import Diagnosis, catalogue, diagnose, expected, plan, prove
from coldloop._errors import (
    ColdloopError,
    DecimalCommaError,
    FormatError,
    InconsistentError,
    MissingDatumError,
    MissingError,
    MissingUnitError,
    NoConvergenceError,
    NotANumberError,
    NotAvailableError,
    NotFiniteError,
    OutOfRangeError,
    TwoPhaseError,
    UnknownNameError,
    UnknownUnitError,
)
from coldloop._evaluation import Evaluation, Score, evaluate
from coldloop._facts import Facts
from coldloop._learning import Counts
from coldloop._log import Log
from coldloop._refrigerant import Refrigerant, refrigerants
from coldloop._session import Session
from coldloop._simulation import simulate
from coldloop._state import State
from coldloop._table import column_names, diagnose_table
from coldloop._text import quantities, quantity
from coldloop._units import (
    pa_to_bar,
    kelvin_to_celsius,
    kelvin_to_fahrenheit,
    pa_to_inhg,
    celsius_to_kelvin,
    fahrenheit_to_kelvin,
    pa_to_microns,
    bar_to_pa,
    inhg_to_pa,
    microns_to_pa,
    psi_to_pa,
    pa_to_psi,
)

__all__ = [
    "AtRest",
    "Charge",
    "ColdloopError",
    "Counts",
    "DecimalCommaError",
    "Derived",
    "Diagnosis",
    "Evaluation",
    "Facts",
    "FormatError",
    "InconsistentError",
    "Log",
    "MissingDatumError",
    "MissingError",
    "MissingUnitError",
    "MoistAir",
    "NoConvergenceError",
    "NotANumberError",
    "NotAvailableError",
    "NotFiniteError",
    "OutOfRangeError",
    "PhaseSplit",
    "Refrigerant",
    "Remainder",
    "Score",
    "Session",
    "State",
    "TwoPhaseError",
    "UnknownNameError",
    "UnknownUnitError",
    "absolute_pressure",
    "air_of_enthalpy",
    "at_rest",
    "pa_to_bar",
    "catalogue",
    "kelvin_to_celsius",
    "column_names",
    "derive",
    "diagnose",
    "diagnose_table",
    "evaluate",
    "enhancement_factor",
    "expected",
    "kelvin_to_fahrenheit",
    "gauge_pressure",
    "gauge_uncertainty",
    "pa_to_inhg",
    "celsius_to_kelvin",
    "fahrenheit_to_kelvin",
    "pa_to_microns",
    "moist_air",
    "bar_to_pa",
    "inhg_to_pa",
    "microns_to_pa",
    "psi_to_pa",
    "plan",
    "prove",
    "pa_to_psi",
    "quantities",
    "quantity",
    "refrigerants",
    "simulate",
    "standard_altitude",
    "standard_density",
    "standard_pressure",
    "standard_temperature",
    "subcooling",
    "superheat",
    "thermometer_uncertainty",
    "water_boiling_point",
    "water_saturation_pressure",
]
