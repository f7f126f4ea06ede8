"""What has no place in a call is refused with a message that says what to give instead."""

import os
import subprocess
import sys
from decimal import Decimal
from pathlib import Path

import astropy.units as astropy
import coldloop
import numpy as np
import pandas as pd
import pint
import pyarrow as pa
import pytest
from fleet import fleet

ROOT = Path(__file__).parents[2]
UNIT = pint.UnitRegistry()
WORN = {
    "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    "conditions": {"ambient": "74 °F", "altitude": "0 m"},
    "readings": {"low_side": "70 psig", "high_side": "125 psig", "vent": "63 °F"},
}
TABLE = {name: column for name, column in fleet(6, seed=3).items() if name != "vehicle"}


def with_reading(name, value):
    return {**WORN, "readings": {**WORN["readings"], name: value}}


class OwnItem:
    """A quantity whose ``item`` gives itself, as some units libraries have it."""

    units = "psi"

    def item(self):
        return self

    def __str__(self):
        return "35 psi"


@pytest.mark.parametrize(
    "quantity",
    [OwnItem(), UNIT.Quantity(35.0, "psi"), UNIT.Quantity(np.array(35.0), "psi"), 35.0 * astropy.bar],
    ids=["own", "pint", "pint array", "astropy"],
)
def test_a_quantity_in_readings_is_refused_by_its_place_since_it_says_no_datum(quantity):
    for call in (coldloop.diagnose, coldloop.plan, coldloop.prove, coldloop.expected, coldloop.simulate):
        with pytest.raises(TypeError, match=r"^readings\.low_side is a quantity .*35.*psig") as caught:
            call(with_reading("low_side", quantity))
        assert not isinstance(caught.value.__cause__, RecursionError)
    with pytest.raises(TypeError, match=r"^prices\.checks\.read-vent\.minutes is a quantity"):
        coldloop.diagnose(WORN, prices={"checks": {"read-vent": {"minutes": UNIT.Quantity(5.0, "min"), "money": 0}}})


@pytest.mark.parametrize(
    ("value", "told"),
    [
        (None, "readings.vent is None: leave out"),
        (Decimal("3"), "readings.vent is Decimal('3'), of Decimal: write text"),
        ({3: "x"}, "readings.vent has the key 3: a key is text"),
    ],
)
def test_what_no_readings_file_can_hold_is_refused_by_its_place(value, told):
    with pytest.raises(TypeError) as caught:
        coldloop.diagnose(with_reading("vent", value))
    assert str(caught.value).startswith(told)


def test_true_in_the_place_of_a_reading_is_told_so():
    with pytest.raises(coldloop.NotANumberError, match="true and false answer yes-or-no questions only") as caught:
        coldloop.diagnose(with_reading("vent", True))
    assert caught.value.key == "readings.vent"


def test_rows_are_counted_from_one_and_a_mapping_that_holds_itself_ends():
    with pytest.raises(TypeError, match=r"^baseline\[2\]\.readings\.vent is None"):
        coldloop.diagnose({**WORN, "baseline": [WORN, {**WORN, "readings": {"vent": None}}]})
    circle = {}
    circle["settings"] = circle
    with pytest.raises(ValueError, match="tables within each other"):
        coldloop.diagnose(circle)


def test_numbers_of_numpy_come_in():
    priors = {"undercharge": np.float32(0.25), "worn-compressor": np.array(0.5)}
    plain = {"undercharge": 0.25, "worn-compressor": 0.5}
    assert coldloop.diagnose(WORN, priors=priors).odds == coldloop.diagnose(WORN, priors=plain).odds
    assert coldloop.diagnose(WORN, recovered=np.True_).odds == coldloop.diagnose(WORN, recovered=True).odds


@pytest.mark.parametrize("wrong", [None, True, "280"])
def test_what_is_no_number_is_told_as_it_was_written(wrong):
    with pytest.raises(TypeError) as caught:
        coldloop.Refrigerant("R-134a").dew_pressure(wrong)
    assert str(caught.value) == f"temperature_k takes numbers, not {wrong!r}"


@pytest.mark.parametrize("wrong", [None, True, 134])
def test_what_is_no_name_is_told_so(wrong):
    with pytest.raises(TypeError, match=rf"designation, .* not {wrong!r}"):
        coldloop.Refrigerant(wrong)
    with pytest.raises(TypeError, match=rf"text with its unit, .* not {wrong!r}"):
        coldloop.quantity("altitude", wrong)
    with pytest.raises(TypeError, match=rf"counts are the text .* not {wrong!r}"):
        coldloop.Counts(wrong)


@pytest.mark.parametrize(("name", "meant"), [("CO2", "R-744"), ("HFO-1234yf", "R-1234yf"), ("freon 12", "R-12")])
def test_a_common_name_leads_to_the_designation(name, meant):
    for call in (
        lambda: coldloop.Refrigerant(name),
        lambda: coldloop.superheat(name, 280.0, pressure_pa_abs=300e3),
        lambda: coldloop.Charge({name: 1.0}),
        lambda: coldloop.diagnose({**WORN, "system": {**WORN["system"], "refrigerant": name}}),
        lambda: coldloop.diagnose_table({**TABLE, "refrigerant": [name] * 6}),
    ):
        with pytest.raises(coldloop.UnknownNameError, match=f"write {meant}$"):
            call()


def test_a_path_is_taken_wherever_a_file_can_be_meant(tmp_path):
    file = ROOT / "examples/readings/repaired-van.toml"
    for call in (coldloop.expected, coldloop.plan, coldloop.prove, coldloop.catalogue):
        assert call(file) == call(file.read_text())
    assert coldloop.diagnose(file).to_dict() == coldloop.diagnose(file.read_text()).to_dict()
    counts = coldloop.Counts()
    counts.record("undercharge")
    kept = tmp_path / "shop.toml"
    kept.write_text(str(counts))
    assert coldloop.Counts(kept) == counts
    trial = tmp_path / "trial.toml"
    trial.write_text(file.read_text().partition("[readings]")[0])
    with pytest.raises(FileNotFoundError):
        coldloop.diagnose(tmp_path / "none.toml")
    with pytest.raises(TypeError, match=r"is the name of a file: give pathlib.Path\('van.toml'\)"):
        coldloop.diagnose("van.toml")


def test_no_exception_hides_one_of_pythons_own():
    assert not hasattr(coldloop, "SyntaxError")
    with pytest.raises(coldloop.FormatError):
        coldloop.diagnose("[system")
    assert coldloop.FormatError.code == 14


def test_columns_that_occur_twice_are_refused_by_name():
    frame = pd.DataFrame(TABLE)
    twice = pd.concat([frame, frame[["vent_c"]]], axis=1)
    arrow = pa.Table.from_pandas(frame)
    for table in (twice, arrow.append_column("vent_c", arrow["vent_c"])):
        with pytest.raises(coldloop.InconsistentError, match="^vent_c: this column occurs twice in the table$") as caught:
            coldloop.diagnose_table(table)
        assert caught.value.key == "vent_c"
    kept = {**TABLE, "plate": list("abcdef")}
    with pytest.raises(coldloop.InconsistentError, match="^plate: this column occurs twice in keep$"):
        coldloop.diagnose_table(kept, keep=["plate", "plate"])
    with pytest.raises(coldloop.InconsistentError, match="^verdict: the answer has a column of this name"):
        coldloop.diagnose_table({**TABLE, "verdict": list("abcdef")}, keep=["verdict"])
    with pytest.raises(TypeError, match=r"keep=\['plate'\]"):
        coldloop.diagnose_table(kept, keep="plate")
    with pytest.raises(coldloop.UnknownNameError, match="^plates: keep names"):
        coldloop.diagnose_table(kept, keep=["plates"])
    with pytest.raises(TypeError, match="the name of a column is text, not 7"):
        coldloop.diagnose_table(frame.rename(columns={"vent_c": 7}))


def test_columns_that_do_not_belong_together_are_refused_by_name():
    with pytest.raises(coldloop.InconsistentError, match="^vent_c: this column has 5 rows, and .* has 6$") as caught:
        coldloop.diagnose_table({**TABLE, "vent_c": TABLE["vent_c"][:5]})
    assert (caught.value.key, caught.value.value, caught.value.high) == ("vent_c", 5, 6)
    moved = pd.Series(TABLE["vent_c"], index=range(1, 7))
    with pytest.raises(coldloop.InconsistentError, match="^vent_c: this column and ambient_c have different labels"):
        coldloop.diagnose_table({**TABLE, "ambient_c": pd.Series(TABLE["ambient_c"]), "vent_c": moved})
    for wrong in ("R-134a", np.array("R-134a"), np.full((6, 1), "R-134a"), 3.0):
        with pytest.raises(TypeError, match="^column refrigerant takes one value a row"):
            coldloop.diagnose_table({**TABLE, "refrigerant": wrong})
    with pytest.raises(ValueError, match=r"pressure_pa_gauge of \(2,\), air_pa_abs of \(3,\)"):
        coldloop.absolute_pressure(np.zeros(2), np.zeros(3))
    with pytest.raises(ValueError, match="different labels: align them first"):
        coldloop.absolute_pressure(pd.Series([1e5, 2e5]), pd.Series([9e4, 9e4], index=[1, 0]))


def test_with_nan_a_row_with_an_unknown_word_or_half_an_answer_is_refused_and_no_other():
    words = ["R-134a", "R-9999", "R-134a", "CO2", "R-134a", None]
    seen = [1.0, 0.0, 0.5, np.nan, True, 0.0]
    answer = coldloop.diagnose_table({**TABLE, "refrigerant": words, "oil_traces": seen}, errors="nan")
    refused = list(answer["refused"])
    assert refused[1] == refused[3] == "refrigerant: unknown-name"
    assert refused[2] == "oil_traces: unknown-name"
    assert refused[5] == "refrigerant: missing"
    assert refused[0] == refused[4] == ""
    with pytest.raises(coldloop.UnknownNameError, match="R-9999.*write one of R-134a, ") as caught:
        coldloop.diagnose_table({**TABLE, "refrigerant": words})
    assert caught.value.key == "refrigerant = 'R-9999'".replace("'", '"')


THREADLESS = """
import coldloop
from fleet import fleet
table = {name: column for name, column in fleet(600, seed=5).items() if name != "vehicle"}
seen = []
answer = coldloop.diagnose_table(table, threads=4, progress=lambda done, rows: seen.append(done))
print(repr([list(answer["odds_undercharge"]), list(answer["verdict"]), seen[-1]]))
"""


def test_where_no_thread_can_be_started_the_callers_does_the_work():
    def told(**environment):
        outcome = subprocess.run(
            [sys.executable, "-c", THREADLESS],
            cwd=Path(__file__).parent,
            env={**os.environ, **environment},
            capture_output=True,
            text=True,
            check=False,
        )
        assert outcome.returncode == 0, outcome.stderr
        return outcome.stdout

    # A stack larger than any address space: the system refuses every thread.
    assert told(RUST_MIN_STACK=str(2**47)) == told()


def test_a_whole_number_that_no_float_holds_is_refused_by_its_column():
    table = {**TABLE, "ambient_c": [10**400] * len(TABLE["refrigerant"])}
    with pytest.raises(ValueError, match="^column ambient_c holds a whole number that is too large"):
        coldloop.diagnose_table(table)
    with pytest.raises(ValueError, match="^column time_s holds a whole number that is too large"):
        coldloop.Log({"time_s": [0, 10**400], "vent_c": [7.0, 7.0]})
