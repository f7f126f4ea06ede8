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
from coldloop._air import air_of_enthalpy as air_of_enthalpy
from coldloop._air import enhancement_factor as enhancement_factor
from coldloop._air import gauge_pressure as gauge_pressure
from coldloop._air import moist_air as moist_air
from coldloop._air import standard_altitude as standard_altitude
from coldloop._air import standard_density as standard_density
from coldloop._air import standard_pressure as standard_pressure
from coldloop._air import standard_temperature as standard_temperature
from coldloop._air import water_boiling_point as water_boiling_point
from coldloop._air import water_saturation_pressure as water_saturation_pressure
from coldloop._charge import Charge as Charge
from coldloop._charge import Parting as Parting
from coldloop._charge import Remainder as Remainder
from coldloop._circuit import AtRest as AtRest
from coldloop._circuit import Derived as Derived
from coldloop._circuit import at_rest as at_rest
from coldloop._circuit import derive as derive
from coldloop._circuit import gauge_uncertainty as gauge_uncertainty
from coldloop._circuit import subcooling as subcooling
from coldloop._circuit import superheat as superheat
from coldloop._circuit import thermometer_uncertainty as thermometer_uncertainty
from coldloop._core import __version__ as __version__
from coldloop._diagnosis import Diagnosis as Diagnosis
from coldloop._diagnosis import catalogue as catalogue
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
from coldloop._units import bar_of_pa as bar_of_pa
from coldloop._units import celsius_of_kelvin as celsius_of_kelvin
from coldloop._units import fahrenheit_of_kelvin as fahrenheit_of_kelvin
from coldloop._units import inhg_of_pa as inhg_of_pa
from coldloop._units import kelvin_of_celsius as kelvin_of_celsius
from coldloop._units import kelvin_of_fahrenheit as kelvin_of_fahrenheit
from coldloop._units import microns_of_pa as microns_of_pa
from coldloop._units import pa_of_bar as pa_of_bar
from coldloop._units import pa_of_inhg as pa_of_inhg
from coldloop._units import pa_of_microns as pa_of_microns
from coldloop._units import pa_of_psi as pa_of_psi
from coldloop._units import psi_of_pa as psi_of_pa
