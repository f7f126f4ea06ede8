"""Every row of tests/cases through the Python door; the Rust and C doors run the same files."""

import csv
import struct
from collections import defaultdict
from pathlib import Path

import coldloop
import numpy as np

CASES = Path(__file__).parents[1] / "cases"

FUNCTIONS = {
    "standard_pressure": lambda refrigerant, x, y, **how: coldloop.standard_pressure(x, **how),
    "standard_temperature": lambda refrigerant, x, y, **how: coldloop.standard_temperature(x, **how),
    "standard_density": lambda refrigerant, x, y, **how: coldloop.standard_density(x, **how),
    "standard_altitude": lambda refrigerant, x, y, **how: coldloop.standard_altitude(x, **how),
    "water_boiling_point": lambda refrigerant, x, y, **how: coldloop.water_boiling_point(x, **how),
    "water_saturation_pressure": lambda refrigerant, x, y, **how: coldloop.water_saturation_pressure(x, **how),
    "enhancement_factor": lambda refrigerant, x, y, **how: coldloop.enhancement_factor(x, y, **how),
    "saturation_slope": lambda refrigerant, x, y, **how: refrigerant.saturation_slope(x, **how),
    "latent_heat": lambda refrigerant, x, y, **how: refrigerant.latent_heat(x, **how),
    "absolute_pressure": lambda refrigerant, x, y, **how: coldloop.absolute_pressure(x, y, **how),
    "gauge_pressure": lambda refrigerant, x, y, **how: coldloop.gauge_pressure(x, y, **how),
    "bubble_slope": lambda refrigerant, x, y, **how: refrigerant.bubble_slope(x, **how),
    "glide": lambda refrigerant, x, y, **how: refrigerant.glide(x, **how),
    "second_virial": lambda refrigerant, x, y, **how: refrigerant.second_virial(x, **how),
    "third_virial": lambda refrigerant, x, y, **how: refrigerant.third_virial(x, **how),
    "evaporating_mean": lambda refrigerant, x, y, **how: refrigerant.evaporating_mean(x, quality=y, **how),
    "evaporating_mean_ph": lambda refrigerant, x, y, **how: refrigerant.evaporating_mean(x, enthalpy_j_kg=y, **how),
    "viscosity": lambda refrigerant, x, y, **how: refrigerant.viscosity(temperature_k=x, pressure_pa_abs=y, **how),
    "conductivity": lambda refrigerant, x, y, **how: refrigerant.conductivity(temperature_k=x, pressure_pa_abs=y, **how),
    "saturated_viscosity": lambda refrigerant, x, y, **how: refrigerant.viscosity(temperature_k=x, quality=y, **how),
    "saturated_conductivity": lambda refrigerant, x, y, **how: refrigerant.conductivity(temperature_k=x, quality=y, **how),
    "surface_tension": lambda refrigerant, x, y, **how: refrigerant.surface_tension(x, **how),
    "bubble_pressure": lambda refrigerant, x, y, **how: refrigerant.bubble_pressure(x, **how),
    "dew_pressure": lambda refrigerant, x, y, **how: refrigerant.dew_pressure(x, **how),
    "bubble_temperature": lambda refrigerant, x, y, **how: refrigerant.bubble_temperature(x, **how),
    "dew_temperature": lambda refrigerant, x, y, **how: refrigerant.dew_temperature(x, **how),
    "superheat": lambda refrigerant, x, y, **how: coldloop.superheat(refrigerant, x, pressure_pa_abs=y, **how),
    "subcooling": lambda refrigerant, x, y, **how: coldloop.subcooling(refrigerant, x, pressure_pa_abs=y, **how),
}


def rows():
    with (CASES / "functions.csv").open() as file:
        for row in csv.DictReader(file):
            x, y = float(row["x"]), float(row["y"] or "nan")
            yield row["function"], row["refrigerant"], x, y, int(row["status"]), row["bits"]


def table(name):
    with (CASES / name).open() as file:
        return list(csv.DictReader(file))


def bits(value):
    return struct.pack(">d", value).hex()


def figures(answer, names):
    """The figures of an answer as the tables write them: bits, or ``nan`` for one that is missing."""
    found = [getattr(answer, name) for name in names]
    return ["nan" if figure is None or np.isnan(figure) else bits(figure) for figure in found]


def test_every_case_has_its_status_and_bits():
    count = 0
    for function, refrigerant, x, y, status, expected in rows():
        substance = coldloop.Refrigerant(refrigerant) if refrigerant else None
        try:
            found = (0, bits(FUNCTIONS[function](substance, x, y)))
        except coldloop.ColdloopError as error:
            found = (error.code, "")
        assert found == (status, expected), (function, refrigerant, x, y)
        count += 1
    assert count > 100


def test_arrays_give_the_same_bits_as_single_numbers():
    cases = defaultdict(list)
    for function, refrigerant, x, y, _, expected in rows():
        cases[function, refrigerant].append((x, y, expected))
    for (function, refrigerant), group in cases.items():
        substance = coldloop.Refrigerant(refrigerant) if refrigerant else None
        x, y, expected = zip(*group, strict=True)
        answers = FUNCTIONS[function](substance, np.array(x), np.array(y), errors="nan")
        found = ["" if np.isnan(answer) else bits(answer) for answer in answers]
        assert found == list(expected), (function, refrigerant)


PHASES = ["", "liquid", "vapour", "two-phase", "supercritical"]
GIVEN = {
    "tp": ("temperature_k", "pressure_pa_abs"),
    "td": ("temperature_k", "density_kg_m3"),
    "tq": ("temperature_k", "quality"),
    "pq": ("pressure_pa_abs", "quality"),
    "ph": ("pressure_pa_abs", "enthalpy_j_kg"),
    "ps": ("pressure_pa_abs", "entropy_j_kg_k"),
    "hs": ("enthalpy_j_kg", "entropy_j_kg_k"),
}


def test_every_state_has_its_status_and_bits():
    rows = table("states.csv")
    names = list(rows[0])[7:]
    for row in rows:
        refrigerant, figures_given = coldloop.Refrigerant(row["refrigerant"]), (float(row["x"]), float(row["y"]))
        try:
            if row["pair"] in GIVEN:
                given = dict(zip(GIVEN[row["pair"]], figures_given, strict=True))
                state = refrigerant.state(**given, reference=row["reference"])
            else:
                state = getattr(refrigerant, row["pair"])(*figures_given, reference=row["reference"])
            found = ["0", str(PHASES.index(state.phase)), *figures(state, names)]
        except coldloop.ColdloopError as error:
            found = [str(error.code), *[""] * 11]
        assert found == list(row.values())[5:], row
    assert len(rows) > 1000


def test_all_moist_air_has_its_status_and_bits():
    rows = table("moist_air.csv")
    names = list(rows[0])[5:]
    for row in rows:
        place = float(row["temperature_k"]), float(row["pressure_pa_abs"])
        try:
            found = ["0", *figures(coldloop.moist_air(*place, **{row["humidity"]: float(row["x"])}), names)]
        except coldloop.ColdloopError as error:
            found = [str(error.code), *[""] * 8]
        assert found == list(row.values())[4:], row
    assert len(rows) > 500


def charge(text):
    words = text.split(" ")
    return coldloop.Charge({name: float(mass) for name, mass in zip(words[::2], words[1::2], strict=True)})


def charge_figures(call, charge, x, y, z):
    """The eleven figures of a row; NaN for those that the call does not give."""
    if call == "split":
        phase_split = charge.split(x, y)
        first = next(iter(charge.composition))
        sides = phase_split.liquid, phase_split.vapour
        found = [phase_split.density_kg_m3, phase_split.quality, phase_split.liquid_density_kg_m3, phase_split.vapour_density_kg_m3]
        air = np.nan if np.isnan(phase_split.quality) else 0.0
        found += [side[first] for side in sides] + [side.get("air", air) for side in sides]
    elif call.startswith("leaked"):
        left = charge.leaked(x, y, z, leak_phase=call.removeprefix("leaked_"))
        shares = [share for name, share in left.composition.items() if name != "air"]
        shares += [0.0] * (8 - len(shares)) + [left.composition.get("air", 0.0)]
        found = [left.pressure_pa_abs, float(left.has_liquid), *shares]
    else:
        found = [getattr(charge, call)(x)]
    return found + [np.nan] * (11 - len(found))


def told(figures):
    return ["nan" if np.isnan(figure) else bits(figure) for figure in figures]


def test_every_charge_has_its_status_and_bits():
    rows = table("charges.csv")
    for row in rows:
        numbers = [float(row[name] or "nan") for name in "xyz"]
        try:
            found = ["0", *told(charge_figures(row["call"], charge(row["charge"]), *numbers))]
        except coldloop.ColdloopError as error:
            found = [str(error.code), *[""] * 11]
        assert found == list(row.values())[5:], row
    assert len(rows) > 300


def test_every_pressure_at_rest_has_its_status_and_bits():
    rows = table("rest.csv")
    pressure_matches = ["", "agrees", "too-high", "too-low"]
    for row in rows:
        pressure = {"pressure_pa_abs": float(row["pressure_pa"])}
        if row["air_pa_abs"]:
            pressure = {"pressure_pa_gauge": float(row["pressure_pa"]), "air_pa_abs": float(row["air_pa_abs"])}
        names = ("pressure_uncertainty_pa", "temperature_uncertainty_k")
        uncertainties = {name: float(row[name]) for name in names}
        try:
            found = coldloop.at_rest(row["refrigerant"], float(row["temperature_k"]), **pressure, **uncertainties)
            figures_found = [getattr(found, name) for name in list(row)[8:]]
            found = ["0", str(pressure_matches.index(found.pressure_match)), *told(figures_found)]
        except coldloop.ColdloopError as error:
            found = [str(error.code), *[""] * 6]
        assert found == list(row.values())[6:], row
    assert len(rows) > 300
