"""Vehicle refrigerant properties and vehicle air-conditioning diagnosis.

Every quantity is plain SI and its name says the unit: ``temperature_k``, ``pressure_pa_abs`` (above vacuum),
``pressure_pa_gauge`` (above the surrounding air). Functions take floats, lists or arrays, broadcast them, and give a
float for floats and an array of the same shape otherwise.
"""

# `x as x` says that a name is exported; the list of errors grows with the vocabulary, and `*` with it.
from coldloop._air import absolute_pressure as absolute_pressure
from coldloop._air import standard_pressure as standard_pressure
from coldloop._circuit import subcooling as subcooling
from coldloop._circuit import superheat as superheat
from coldloop._core import __version__ as __version__
from coldloop._diagnosis import Diagnosis as Diagnosis
from coldloop._diagnosis import diagnose as diagnose
from coldloop._errors import *  # noqa: F403
from coldloop._refrigerant import Refrigerant as Refrigerant
from coldloop._refrigerant import refrigerants as refrigerants
from coldloop._state import State as State
