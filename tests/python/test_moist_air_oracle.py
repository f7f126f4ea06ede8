"""The committed table of moist air is what psychrolib gives."""

import pytest

psychrolib = pytest.importorskip("psychrolib")

import moist_air_grid  # noqa: E402, needs psychrolib


def test_table_is_what_psychrolib_gives():
    def numbers(text):
        return [float(value) for line in text.splitlines()[2:] for value in line.split(",")]

    committed = numbers(moist_air_grid.TABLE.read_text())
    # the last bits of exp and log differ between C libraries
    assert committed == pytest.approx(numbers(moist_air_grid.text()), rel=1e-9, abs=1e-9)
