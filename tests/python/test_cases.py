"""Every row of tests/cases/functions.csv through the Python door; the Rust and C doors run the same file."""

import csv
import struct
from collections import defaultdict
from pathlib import Path

import coldloop
import numpy as np

FILE = Path(__file__).parents[1] / "cases/functions.csv"

FUNCTIONS = {
    "standard_pressure": lambda refrigerant, x, y, **how: coldloop.standard_pressure(x, **how),
    "absolute_pressure": lambda refrigerant, x, y, **how: coldloop.absolute_pressure(x, y, **how),
    "bubble_pressure": lambda refrigerant, x, y, **how: refrigerant.bubble_pressure(x, **how),
    "dew_pressure": lambda refrigerant, x, y, **how: refrigerant.dew_pressure(x, **how),
    "bubble_temperature": lambda refrigerant, x, y, **how: refrigerant.bubble_temperature(x, **how),
    "dew_temperature": lambda refrigerant, x, y, **how: refrigerant.dew_temperature(x, **how),
    "superheat": lambda refrigerant, x, y, **how: coldloop.superheat(refrigerant, x, pressure_pa_abs=y, **how),
    "subcooling": lambda refrigerant, x, y, **how: coldloop.subcooling(refrigerant, x, pressure_pa_abs=y, **how),
}


def rows():
    with FILE.open() as file:
        for row in csv.DictReader(file):
            x, y = float(row["x"]), float(row["y"] or "nan")
            yield row["function"], row["refrigerant"], x, y, int(row["status"]), row["bits"]


def bits(value):
    return struct.pack(">d", value).hex()


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
