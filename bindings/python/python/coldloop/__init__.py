"""Vehicle refrigerant properties and vehicle air-conditioning diagnosis.

Every quantity is plain SI and its name says the unit: ``temperature_k``, ``pressure_pa_abs`` (above vacuum),
``pressure_pa_gauge`` (above the surrounding air). Functions take floats, lists, arrays of any float or integer dtype,
pandas and polars columns, xarray objects, and pint and astropy quantities, which they convert; they broadcast them and
give a float for floats and otherwise what came in. With ``errors="nan"`` an element without an answer is NaN instead of
an exception. The interpreter is released while they work.

``diagnose`` judges one vehicle, ``diagnose_table`` many; ``plan`` says what to do next, ``prove`` whether it helped, and
``Counts`` keeps what a shop has learned; ``simulate`` says what a vehicle would read;
``coldloop.plot`` draws (it needs matplotlib and is imported by itself).
"""

# `x as x` says that a name is exported; the list of errors grows with the vocabulary, and `*` with it.
from coldloop._air import MoistAir as MoistAir
from coldloop._air import absolute_pressure as absolute_pressure
from coldloop._air import enhancement_factor as enhancement_factor
from coldloop._air import moist_air as moist_air
from coldloop._air import standard_altitude as standard_altitude
from coldloop._air import standard_density as standard_density
from coldloop._air import standard_pressure as standard_pressure
from coldloop._air import standard_temperature as standard_temperature
from coldloop._air import water_boiling_point as water_boiling_point
from coldloop._air import water_saturation_pressure as water_saturation_pressure
from coldloop._circuit import subcooling as subcooling
from coldloop._circuit import superheat as superheat
from coldloop._core import __version__ as __version__
from coldloop._diagnosis import Diagnosis as Diagnosis
from coldloop._diagnosis import diagnose as diagnose
from coldloop._diagnosis import expected as expected
from coldloop._diagnosis import plan as plan
from coldloop._diagnosis import prove as prove
from coldloop._errors import *  # noqa: F403
from coldloop._facts import Facts as Facts
from coldloop._learning import Counts as Counts
from coldloop._refrigerant import Refrigerant as Refrigerant
from coldloop._refrigerant import refrigerants as refrigerants
from coldloop._simulation import simulate as simulate
from coldloop._state import State as State
from coldloop._table import column_names as column_names
from coldloop._table import diagnose_table as diagnose_table
from coldloop._text import quantities as quantities
from coldloop._text import quantity as quantity
