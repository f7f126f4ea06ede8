"""The table of units, compared with pint, which has definitions of its own."""

import csv
import pathlib

import pytest

pint = pytest.importorskip("pint")

TABLE = pathlib.Path(__file__).parent.parent / "data" / "units.csv"


def rows():
    lines = [line for line in TABLE.read_text().splitlines() if not line.startswith("#")]
    return list(csv.DictReader(lines))


@pytest.mark.parametrize("row", rows(), ids=lambda row: row["name"])
def test_unit_is_that_of_pint(row):
    theirs = pint.UnitRegistry().parse_expression(row["pint"]).to_base_units().magnitude
    # pint's own arithmetic rounds a few times
    assert float(row["si"]) == pytest.approx(theirs, rel=1e-15)
