"""Bubble and dew beside an independent implementation of the same published equations of state.

CoolProp 8.0.0 solves the equilibrium by iteration on the equation; here it comes from fitted curves. The last
thousandth below the critical temperature is left out: there the oracle's own error grows.
"""

import coldloop
import numpy as np
import pytest
from CoolProp.CoolProp import PropsSI

# Designation -> the oracle's name.
FLUIDS = {"R-134a": "R134a", "R-1234yf": "R1234yf"}


@pytest.mark.parametrize("designation", FLUIDS)
def test_pressures_are_those_of_the_equation_of_state(designation):
    name = FLUIDS[designation]
    low, critical = PropsSI("Tmin", name), PropsSI("Tcrit", name)
    temperatures = np.linspace(low + 1.0, 0.999 * critical, 300)
    refrigerant = coldloop.Refrigerant(designation)
    for curve, quality in ((refrigerant.bubble_pressure, 0), (refrigerant.dew_pressure, 1)):
        oracle = PropsSI("P", "T", temperatures, "Q", quality, name)
        # 1e-10, and 1e-7 Pa: near the triple point the oracle takes a difference of large pressures, whose rounding
        # is a constant 5e-8 Pa or so. Equilibria in extended precision are the judge there: tests/saturation.rs.
        np.testing.assert_allclose(curve(temperatures), oracle, rtol=1e-10, atol=1e-7)


@pytest.mark.parametrize("designation", FLUIDS)
def test_temperatures_are_those_of_the_equation_of_state(designation):
    name = FLUIDS[designation]
    refrigerant = coldloop.Refrigerant(designation)
    pressures = np.geomspace(5e3, 0.99 * PropsSI("pcrit", name), 300)
    for curve, quality in ((refrigerant.bubble_temperature, 0), (refrigerant.dew_temperature, 1)):
        oracle = PropsSI("T", "P", pressures, "Q", quality, name)
        # 1e-10: the oracle solves for temperature to about 1e-11.
        np.testing.assert_allclose(curve(pressures), oracle, rtol=1e-10)


@pytest.mark.parametrize("designation", coldloop.refrigerants())
def test_there_and_back_is_the_same_temperature(designation):
    refrigerant = coldloop.Refrigerant(designation)
    temperatures = np.linspace(230.0, 330.0, 1001)
    for pressure, temperature in (
        (refrigerant.bubble_pressure, refrigerant.bubble_temperature),
        (refrigerant.dew_pressure, refrigerant.dew_temperature),
    ):
        back = temperature(pressure(temperatures, errors="nan"), errors="nan")
        # Two curves, each fitted to about 1e-14, or 1e-13 for a blend.
        bound = 5e-14 if len(refrigerant.facts.composition) == 1 else 1e-12
        answered = ~np.isnan(back)
        assert answered.any()
        np.testing.assert_allclose(back[answered], temperatures[answered], rtol=bound)
