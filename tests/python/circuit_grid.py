"""Writes tests/data/circuit.csv: the figures of a circuit from its readings, by CoolProp 8.0.0 and the definitions.

    python tests/python/circuit_grid.py
"""

import itertools
import pathlib

import CoolProp
from CoolProp.CoolProp import PropsSI

TABLE = pathlib.Path(__file__).parent.parent / "data" / "circuit.csv"
HEADER = """\
# Figures of a circuit by CoolProp 8.0.0 from absolute pressures and line temperatures. Written by tests/python/circuit_grid.py.
refrigerant,low_pa,high_pa,suction_k,discharge_k,liquid_k,superheat_k,subcooling_k,discharge_superheat_k,cooling_j_kg,efficiency
"""
FLUIDS = {"R-134a": "R134a", "R-1234yf": "R1234yf"}


def rows():
    assert CoolProp.__version__ == "8.0.0"
    lows, highs = (180e3, 300e3, 420e3), (0.9e6, 1.4e6, 2.2e6)
    for (name, fluid), low, high in itertools.product(FLUIDS.items(), lows, highs):
        dew, condensing = PropsSI("T", "P", low, "Q", 1, fluid), PropsSI("T", "P", high, "Q", 1, fluid)
        bubble = PropsSI("T", "P", high, "Q", 0, fluid)
        for above, hotter, below in ((3.0, 12.0, 2.0), (10.0, 35.0, 9.0)):
            suction, liquid = round(dew + above, 2), round(bubble - below, 2)
            discharge = round(condensing + hotter, 2)
            h1, h2 = PropsSI("H", "P", low, "T", suction, fluid), PropsSI("H", "P", high, "T", discharge, fluid)
            ideal = PropsSI("H", "P", high, "S", PropsSI("S", "P", low, "T", suction, fluid), fluid)
            yield (
                *(name, low, high, suction, discharge, liquid),
                *(suction - dew, bubble - liquid, discharge - condensing),
                h1 - PropsSI("H", "P", high, "T", liquid, fluid),
                (ideal - h1) / (h2 - h1),
            )


def text():
    return HEADER + "".join(",".join(str(value) for value in row) + "\n" for row in rows())


if __name__ == "__main__":
    TABLE.write_text(text())
