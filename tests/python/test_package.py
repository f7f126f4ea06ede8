"""The Python door: names, shapes, exceptions, units refused, stubs that tell the truth."""

import builtins
import doctest
import importlib
import inspect
import pickle
import pkgutil
import re
import subprocess
import sys
import tomllib
from pathlib import Path

import coldloop
import numpy as np
import pandas as pd
import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

ROOT = Path(__file__).parents[2]


def test_the_version_is_that_of_the_workspace():
    workspace = tomllib.loads((ROOT / "Cargo.toml").read_text())
    assert coldloop.__version__ == workspace["workspace"]["package"]["version"]


def test_every_error_kind_of_the_vocabulary_has_its_exception():
    names = tomllib.loads((ROOT / "tables/names.toml").read_text())
    kinds = next(table for table in names["enum"] if table["name"] == "ErrorKind")["entries"]
    for kind in kinds:
        error = getattr(coldloop, kind.get("python", kind["variant"]) + "Error")
        assert issubclass(error, coldloop.ColdloopError)
        assert error.code == kind["code"]
        assert error.__doc__ == kind["doc"]
        assert error.__name__ in coldloop.__all__


def test_importing_everything_brings_all_public_names_and_hides_none_of_pythons_own():
    brought = {}
    exec("from coldloop import *", brought)
    public = {name for name, value in vars(coldloop).items() if not name.startswith("_") and not inspect.ismodule(value)}
    assert public == set(coldloop.__all__)
    assert not set(coldloop.__all__) & set(vars(builtins))


def test_every_refrigerant_of_the_vocabulary_is_known_by_every_spelling():
    names = tomllib.loads((ROOT / "tables/names.toml").read_text())
    entries = next(table for table in names["enum"] if table["name"] == "Refrigerant")["entries"]
    assert coldloop.refrigerants() == [entry["id"] for entry in entries]
    for entry in entries:
        for spelling in [entry["id"], *entry.get("also", [])]:
            assert coldloop.Refrigerant(spelling).name == entry["id"]
        for called in entry.get("called", []):
            with pytest.raises(coldloop.UnknownNameError, match=f"write {re.escape(entry['id'])}$"):
                coldloop.Refrigerant(called)
    with pytest.raises(coldloop.UnknownNameError):
        coldloop.Refrigerant("R-9999")


def test_an_exception_tells_quantity_value_and_bounds_and_survives_pickling():
    with pytest.raises(coldloop.OutOfRangeError) as caught:
        coldloop.standard_pressure(20_000.0)
    for error in (caught.value, pickle.loads(pickle.dumps(caught.value))):
        assert isinstance(error, ValueError)
        assert (error.quantity, error.value, error.low, error.high) == ("altitude", 20_000.0, -500.0, 9_000.0)
        assert str(error) == "altitude 20000 m is outside -500 m to 9000 m"


def test_the_same_shape_comes_out():
    one = coldloop.standard_pressure(1600.0)
    assert type(one) is float
    assert type(coldloop.standard_pressure(np.float64(1600.0))) is float
    assert coldloop.standard_pressure([]).shape == (0,)
    grid = np.full((2, 3), 1600.0)
    for given_shape in (grid, grid.T, grid[:, ::2], grid.astype(np.float32), grid.astype(int), grid.tolist()):
        answer = coldloop.standard_pressure(given_shape)
        assert answer.shape == np.shape(given_shape)
        assert answer.dtype == np.float64
        assert (answer == one).all()
    assert (coldloop.standard_pressure(pd.Series([1600.0, 1600.0])) == one).all()


def test_arguments_are_broadcast():
    gauges = np.array([[1e5], [2e5]])
    air = np.array([84e3, 101325.0, 90e3])
    answer = coldloop.absolute_pressure(gauges, air)
    assert answer.shape == (2, 3)
    assert (answer == gauges + air).all()
    assert (coldloop.absolute_pressure(1e5, air) == 1e5 + air).all()
    with pytest.raises(ValueError, match="broadcast"):
        coldloop.absolute_pressure(np.zeros(2), np.zeros(3))


def test_failures_are_raised_or_become_nan():
    with pytest.raises(coldloop.NotFiniteError):
        coldloop.standard_pressure([0.0, np.nan])
    answer = coldloop.standard_pressure([0.0, np.nan, 1e6], errors="nan")
    assert answer[0] == 101_325.0
    assert np.isnan(answer[1:]).all()
    assert np.isnan(coldloop.standard_pressure(np.inf, errors="nan"))
    with pytest.raises(ValueError, match="errors"):
        coldloop.standard_pressure(0.0, errors="ignore")


@pytest.mark.parametrize("wrong", ["35 psig", None, 1j, [True], pint.UnitRegistry().Quantity(1600.0, "kPa"), {}])
def test_what_is_not_a_bare_number_is_refused(wrong):
    with pytest.raises(TypeError):
        coldloop.standard_pressure(wrong)


@given(st.floats(allow_nan=True, allow_infinity=True))
def test_any_float_has_an_answer_or_a_typed_error(altitude_m):
    try:
        assert 28e3 < coldloop.standard_pressure(altitude_m) < 112e3
    except coldloop.ColdloopError as error:
        assert error.quantity == "altitude"


def test_every_example_in_the_docstrings_holds():
    modules = [coldloop]
    modules += [importlib.import_module(m.name) for m in pkgutil.iter_modules(coldloop.__path__, "coldloop.")]
    results = [doctest.testmod(module, extraglobs=vars(coldloop)) for module in modules]
    assert sum(result.attempted for result in results) > 0
    assert sum(result.failed for result in results) == 0


def test_every_public_name_has_a_docstring():
    public = [name for name in vars(coldloop) if not name.startswith("_")]
    assert {"Refrigerant", "standard_pressure", "OutOfRangeError"} <= set(public)
    for name in public:
        assert getattr(coldloop, name).__doc__, name


def test_stubs_and_annotations_tell_the_truth():
    folder = ROOT / "bindings/python"
    stubtest = ["stubtest", "coldloop", "--mypy-config-file", folder / "mypy.ini"]
    run_mypy(*stubtest, "--allowlist", folder / "stubtest-allowed.txt")
    run_mypy("mypy", "--config-file", folder / "mypy.ini", "-p", "coldloop")


def run_mypy(program, *arguments):
    module = "mypy" if program == "mypy" else f"mypy.{program}"
    outcome = subprocess.run([sys.executable, "-m", module, *arguments], capture_output=True, text=True, check=False)
    assert outcome.returncode == 0, outcome.stdout + outcome.stderr
