"""The committed table of circuit figures is what CoolProp gives."""

import pytest

CoolProp = pytest.importorskip("CoolProp")

import circuit_grid  # noqa: E402, needs CoolProp


def test_table_is_what_coolprop_gives():
    def numbers(text):
        return [float(value) for line in text.splitlines()[2:] for value in line.split(",")[1:]]

    committed = numbers(circuit_grid.TABLE.read_text())
    assert committed == pytest.approx(numbers(circuit_grid.text()), rel=1e-9, abs=1e-9)
