"""Tables of invented vehicles in an invented garage at 1,600 m, for tests, benches and examples."""

import numpy as np

COLUMNS = {
    "low_side_kpa_gauge": (230.0, 90.0, 1.0),
    "high_side_kpa_gauge": (1_350.0, 260.0, 10.0),
    "vent_c": (9.0, 4.0, 0.5),
    "suction_line_c": (12.0, 5.0, 0.5),
    "liquid_line_c": (42.0, 5.0, 0.5),
    "discharge_line_c": (75.0, 8.0, 0.5),
}
"""Mean, standard deviation and the step to which it is read."""


def fleet(rows, seed=0, missing=0.3):
    """A table of vehicles: most figures around those of sound ones, some lines not measured."""
    rng = np.random.default_rng(seed)
    table = {
        "vehicle": np.char.add("van-", np.arange(rows).astype(str)),
        "refrigerant": rng.choice(["R-134a", "R-1234yf"], rows),
        "expansion": rng.choice(["txv", "orifice-tube"], rows, p=[0.8, 0.2]),
        "compressor": rng.choice(["fixed-clutch", "variable-internal", "variable-external", "electric"], rows),
        "ambient_c": rng.uniform(15.0, 42.0, rows).round(1),
        "altitude_m": np.full(rows, 1_600.0),
        "humidity_percent": rng.uniform(10.0, 70.0, rows).round(),
        "engine_speed_rpm": np.full(rows, 1_500.0),
    }
    for name, (mean, spread, step) in COLUMNS.items():
        values = np.round(rng.normal(mean, spread, rows) / step) * step
        if name.endswith("line_c"):
            values[rng.random(rows) < missing] = np.nan
        table[name] = np.maximum(values, -50.0)
    table["condenser_fan_running"] = rng.choice([1.0, 0.0, np.nan], rows, p=[0.5, 0.02, 0.48])
    return table
