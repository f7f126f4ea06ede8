"""States beside CoolProp 8.0.0, an independent implementation of the same published equations of state.

10,000 states per refrigerant over its whole range: liquid, vapour and supercritical. Left out is the neighbourhood of
the critical point (5 % in temperature and half to twice the density), where the properties depend strongly on the last digit of the arguments.

The oracle's density at a temperature and pressure is only as good as its solver, about 1e-8; its figures at a
temperature and density are those of the equation. So the density is compared for its root alone, and the figures at
that of coldloop, whose pressure has to be the one that was asked for.
"""

import coldloop
import numpy as np
import pytest
from CoolProp import AbstractState, DmassT_INPUTS, PT_INPUTS
from CoolProp.CoolProp import PropsSI

# Designation -> the oracle's name.
FLUIDS = {
    "R-134a": "R134a",
    "R-1234yf": "R1234yf",
    "R-744": "CO2",
    "R-152a": "R152A",
    "R-12": "R12",
    "R-22": "R22",
    "R-1234ze(E)": "R1234ze(E)",
    "R-32": "R32",
    "R-125": "R125",
    "R-143a": "R143a",
    "R-290": "n-Propane",
    "R-600a": "IsoButane",
    "R-600": "n-Butane",
    "R-124": "R124",
    "R-142b": "R142b",
    "R-115": "R115",
    "R-218": "R218",
    "R-227ea": "R227EA",
    "R-13I1": "R13I1",
    "R-601a": "Isopentane",
    "R-1336mzz(E)": "R1336mzz(E)",
}

# Constants that the oracle carries converted or rounded; the papers' check rows (tests/papers) decide for ours.
ROUNDED = {
    # Reducing density of 508 kg/m3 over the molar mass, rounded to eleven digits there.
    "R-134a": dict(p=1e-9),
    # Reducing densities rounded there to the sixth decimal of mol/dm3 and the like.
    "R-744": dict(p=1e-7, h=1e-8, s=1e-8, cp=5e-8, w=5e-8),
    "R-32": dict(p=5e-7, h=1e-8, s=1e-8, cp=5e-8, w=5e-8),
    # The printed modified Benedict-Webb-Rubin equation converted there in rounded coefficients.
    "R-152a": dict(root=1e-5, p=1e-5, h=1e-6, s=1e-6, cp=1e-5, w=1e-5),
    # Another gas constant.
    "R-1234ze(E)": dict(root=1e-5, p=1e-5, h=1e-6, s=1e-6, cp=1e-5, w=1e-5),
    # Another molar mass, and a reducing density converted with it.
    "R-124": dict(root=1e-4, p=1e-5, h=1e-5, s=1e-5, cp=1e-5, w=1e-5),
    # Ideal gas coefficients rounded there.
    "R-125": dict(h=1e-6, s=1e-6, cp=1e-6, w=1e-6),
    "R-290": dict(h=1e-7, s=1e-7, cp=1e-7, w=1e-7),
}


def oracle(name, inputs, firsts, seconds):
    """Density, pressure, enthalpy, entropy, cp and speed of sound, NaN where the oracle has no answer."""
    state = AbstractState("HEOS", name)
    rows = []
    for first, second in zip(firsts, seconds, strict=True):
        try:
            state.update(inputs, first, second)
            row = (state.rhomass(), state.p(), state.hmass(), state.smass(), state.cpmass(), state.speed_sound())
        except ValueError:
            row = (np.nan,) * 6
        rows.append(row)
    return np.array(rows).T


def errors(designation):
    """The greatest relative error of every figure, and how many states were compared."""
    name = FLUIDS[designation]
    low, high = PropsSI("Tmin", name) + 1.0, PropsSI("Tmax", name) - 1.0
    critical_t, critical_rho = PropsSI("Tcrit", name), PropsSI("rhomass_critical", name)
    random = np.random.default_rng(2026)
    temperatures = random.uniform(low, min(high, 700.0), 10_000)
    pressures = np.exp(random.uniform(np.log(1e4), np.log(0.9 * PropsSI("pmax", name)), 10_000))
    ours = coldloop.Refrigerant(designation).state(
        temperature_k=temperatures, pressure_pa_abs=pressures, errors="nan"
    )
    density = ours.density_kg_m3
    rough = oracle(name, PT_INPUTS, pressures, temperatures)[0]
    near = (abs(temperatures / critical_t - 1) < 0.05) & (abs(np.log(density / critical_rho)) < np.log(2))
    both = ~near & ~np.isnan(rough) & (ours.phase != "")
    right = oracle(name, DmassT_INPUTS, density[both], temperatures[both])
    span = {k: np.ptp(right[k]) for k in (2, 3)}
    found = {
        "root": np.max(abs(density[both] / rough[both] - 1)),
        # The last digit of its density moves the pressure of a liquid by its stiffness.
        "p": np.max(abs(right[1] / pressures[both] - 1) * np.minimum(1.0, pressures[both] / 1e8)),
    }
    for label, figure, k in (("h", ours.enthalpy_j_kg, 2), ("s", ours.entropy_j_kg_k, 3)):
        difference = figure[both] - right[k]
        # Differences, since the two count from different states; relative to the span over the grid.
        found[label] = np.max(abs(difference - np.median(difference))) / span[k]
    for label, figure, k in (("cp", ours.cp_j_kg_k, 4), ("w", ours.speed_of_sound_m_s, 5)):
        found[label] = np.max(abs(figure[both] / right[k] - 1))
    return found, both.sum(), set(ours.phase[both])


@pytest.mark.parametrize("designation", FLUIDS)
def test_states_are_those_of_the_equation(designation):
    found, compared, phases = errors(designation)
    assert compared > 5_000
    assert {"liquid", "vapour", "supercritical"} <= phases
    allowed = {"root": 1e-7, "p": 1e-10, "h": 1e-10, "s": 1e-10, "cp": 1e-10, "w": 1e-10}
    allowed.update(ROUNDED.get(designation, {}))
    assert {k: v for k, v in found.items() if not v <= allowed[k]} == {}
