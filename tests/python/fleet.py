"""Tables of invented vehicles of an invented garage at 1,600 m, for tests and benches."""

from functools import cache

import coldloop
import numpy as np

SYSTEMS = [
    (refrigerant, expansion, compressor)
    for refrigerant in ("R-134a", "R-1234yf")
    for expansion in ("txv", "orifice-tube")
    for compressor in ("fixed-clutch", "variable-internal", "variable-external", "electric")
]
AMBIENT_C = np.linspace(15.0, 42.0, 28)
READINGS = {
    "low_side_pa_gauge": ("low_side_kpa_gauge", 1e-3, 0.0, 1.0),
    "high_side_pa_gauge": ("high_side_kpa_gauge", 1e-3, 0.0, 10.0),
    "vent_k": ("vent_c", 1.0, -273.15, 0.5),
}
"""Column, scale, shift, and the step to which it is read."""


@cache
def bands(system):
    """Median and spread of the readings of sound vehicles over ambient temperature, and of their line temperatures."""
    names = dict(zip(("refrigerant", "expansion", "compressor"), system, strict=True))
    all_bands = [
        coldloop.expected({"system": names, "conditions": {"ambient": f"{c} °C", "altitude": "1600 m"}})
        for c in AMBIENT_C
    ]
    return {
        name: (
            np.array([band[name]["median"] for band in all_bands]),
            np.array([(band[name]["high_95"] - band[name]["low_95"]) / 3.92 for band in all_bands]),
        )
        for name in (*READINGS, "superheat_k", "subcooling_k", "discharge_superheat_k")
    }


def fleet(rows, seed=0, missing=0.3, ailing=0.2):
    """A table of vehicles: most sound, some low on charge or with a worn compressor, some lines not measured."""
    rng = np.random.default_rng(seed)
    kind = rng.integers(len(SYSTEMS), size=rows)
    ambient_c = rng.uniform(15.0, 42.0, rows).round(1)
    low, worn = rng.random((2, rows)) * (rng.random((2, rows)) < ailing / 2)
    table = {
        "vehicle": np.char.add("van-", np.arange(rows).astype(str)),
        **{
            name: np.array(SYSTEMS)[kind, place]
            for place, name in enumerate(("refrigerant", "expansion", "compressor"))
        },
        "ambient_c": ambient_c,
        "altitude_m": np.full(rows, 1_600.0),
        "humidity_percent": rng.uniform(10.0, 70.0, rows).round(),
        "engine_speed_rpm": np.full(rows, 1_500.0),
    }
    drawn = {name: np.empty(rows) for name in bands(SYSTEMS[0])}
    for place, system in enumerate(SYSTEMS):
        of = kind == place
        for name, (median, spread) in bands(system).items():
            at = np.interp(ambient_c[of], AMBIENT_C, median)
            # Some bands are as wide as the pressure itself: what no gauge can show is not drawn.
            normal = np.clip(rng.normal(size=of.sum()), -2.0, 2.0)
            drawn[name][of] = at + 0.7 * normal * np.interp(ambient_c[of], AMBIENT_C, spread)
    drawn["low_side_pa_gauge"] *= 1.0 - 0.6 * low + 0.7 * worn
    drawn["high_side_pa_gauge"] *= 1.0 - 0.35 * low - 0.35 * worn
    drawn["vent_k"] += 10.0 * (low + worn)
    drawn["superheat_k"] += 25.0 * low
    drawn["subcooling_k"] -= 6.0 * low
    for name, (column, scale, shift, step) in READINGS.items():
        table[column] = np.round((drawn[name] * scale + shift) / step) * step
    low_k, high_k = saturation_k(table)
    lines = {
        "suction_line_c": low_k + drawn["superheat_k"],
        "liquid_line_c": high_k - drawn["subcooling_k"],
        "discharge_line_c": high_k + drawn["discharge_superheat_k"],
    }
    for name, t_k in lines.items():
        table[name] = np.where(rng.random(rows) < missing, np.nan, np.round(2.0 * (t_k - 273.15)) / 2.0)
    table["condenser_fan_running"] = rng.choice([1.0, 0.0, np.nan], rows, p=[0.5, 0.02, 0.48])
    return table


def saturation_k(table):
    """The saturation temperatures of both sides."""
    air = coldloop.standard_pressure(1_600.0)
    both = []
    for column in ("low_side_kpa_gauge", "high_side_kpa_gauge"):
        t_k = np.empty(len(table[column]))
        for name in ("R-134a", "R-1234yf"):
            of = table["refrigerant"] == name
            t_k[of] = coldloop.Refrigerant(name).dew_temperature(1e3 * table[column][of] + air)
        both.append(t_k)
    return both
