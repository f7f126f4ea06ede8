"""The same verdict through every door: the Rust example, the C library called with strings, the Python package."""

import ctypes
import json
import pickle
import subprocess
import tomllib
import xml.etree.ElementTree
from pathlib import Path

import coldloop
import pytest

ROOT = Path(__file__).parents[2]
EXAMPLE = ROOT / "target/release/examples/diagnose"
LIBRARY = ROOT / "target/release/libcoldloop_c.so"
FILES = sorted((ROOT / "examples/readings").glob("*.toml"))
GOOD = [file for file in FILES if not file.name.startswith("bad")]

WORN = {
    "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    "conditions": {"ambient": "74 °F", "altitude": "0 m"},
    "readings": {"low_side": "70 psig", "high_side": "125 psig", "vent": "63 °F"},
}


def through_c(readings, function="coldloop_diagnose"):
    """What a language does that passes only strings: ask for the length, then for the answer."""
    diagnose = getattr(ctypes.CDLL(str(LIBRARY)), function)
    text = (readings if isinstance(readings, str) else json.dumps(readings)).encode()
    length = ctypes.c_size_t()
    diagnose(text, None, ctypes.c_size_t(0), ctypes.byref(length), None)
    answer = ctypes.create_string_buffer(length.value + 1)
    status = diagnose(text, answer, ctypes.c_size_t(len(answer)), ctypes.byref(length), None)
    return status, answer.value.decode()


def test_there_are_readings_to_compare():
    assert len(GOOD) >= 10


@pytest.mark.parametrize("file", GOOD, ids=lambda file: file.stem)
def test_every_door_gives_the_same_answer(file):
    readings = tomllib.loads(file.read_text())
    example = subprocess.run([EXAMPLE, "--json", file], capture_output=True, text=True, check=True).stdout
    status, from_c = through_c(readings)
    assert status == 0
    assert from_c == example.strip()
    assert coldloop.diagnose(readings).to_dict() == json.loads(example)
    assert through_c(file.read_text()) == (0, from_c)
    assert coldloop.diagnose(file.read_text()).to_dict() == json.loads(example)
    report = subprocess.run([EXAMPLE, file], capture_output=True, text=True, check=True).stdout
    assert through_c(file.read_text(), "coldloop_report") == (0, report.rstrip() + "\n")
    assert str(coldloop.diagnose(file.read_text())).rstrip() == report.rstrip()


@pytest.mark.parametrize("name", ["repaired-van", "worn-compressor"])
def test_plan_and_proof_are_those_of_every_door(name):
    text = (ROOT / f"examples/readings/{name}.toml").read_text()
    readings = tomllib.loads(text)
    for function in ("plan", "prove"):
        status, from_c = through_c(text, f"coldloop_{function}")
        assert status == 0
        assert getattr(coldloop, function)(readings) == getattr(coldloop, function)(text) == json.loads(from_c)
    steps = coldloop.plan(text)["steps"]
    repair = coldloop.prove(text)["repair"]
    if name == "repaired-van":
        assert repair["finding"] == "proven"
        assert steps == []  # nothing is left to do
    else:
        assert repair is None
        assert len(steps) > 1


SHOP = {
    "named": 0.123456789012345678,
    "recovered": True,
    "priors": {"worn-compressor": 0.0, "undercharge": 0.1 + 0.2},
    "prices": {"per_minute": 1.5, "repairs": {"undercharge": {"minutes": 60, "money": 30}}},
    "looks": {"undercharge": {"oil_traces": 0.61}},
    "counts": {"cases": {"undercharge": 14}},
}


def test_settings_are_those_of_every_door():
    inside = {**WORN, "settings": SHOP}
    for function in ("diagnose", "plan"):
        status, from_c = through_c(inside, f"coldloop_{function}")
        assert status == 0
        answers = [getattr(coldloop, function)(inside), getattr(coldloop, function)(WORN, **SHOP)]
        answers = [answer.to_dict() if function == "diagnose" else answer for answer in answers]
        assert answers == [json.loads(from_c)] * 2
    assert coldloop.diagnose(inside).odds["worn-compressor"] == 0.0
    with pytest.raises(coldloop.OutOfRangeError) as caught:
        coldloop.diagnose(WORN, named=70)
    assert caught.value.key == "named"
    with pytest.raises(coldloop.UnknownNameError) as caught:
        coldloop.diagnose(WORN, priors={"gremlins": 1.0})
    assert caught.value.key == "priors.gremlins"


def test_a_shop_learns_from_its_confirmed_cases():
    counts = coldloop.Counts()
    assert counts == coldloop.Counts("")
    for _ in range(20):
        counts.record("compressor-control-fault", {"hub_turns_freely": False})
    counts.record(None)
    assert (counts.cases("compressor-control-fault"), counts.cases(None), counts.cases("overcharge")) == (20, 1, 0)
    assert coldloop.Counts(str(counts)) == counts
    before, after = coldloop.diagnose(WORN), coldloop.diagnose(WORN, counts=counts)
    assert after.odds["compressor-control-fault"] > before.odds["compressor-control-fault"]
    inside = {**WORN, "settings": {"counts": str(counts)}}
    assert json.loads(through_c(inside)[1]) == after.to_dict()
    with pytest.raises(coldloop.UnknownNameError):
        counts.record("gremlins")
    with pytest.raises(coldloop.UnknownNameError) as caught:
        counts.record("overcharge", {"gremlins": True})
    assert caught.value.key == "observations.gremlins"
    assert counts.cases("overcharge") == 0


def test_a_diagnosis_reads_well():
    answer = coldloop.diagnose(WORN)
    assert next(iter(answer.odds)) == "worn-compressor"
    assert 0.99 < sum(answer.odds.values()) + answer.to_dict().get("none_of_these", 0.0) < 1.01
    assert answer.verdict in repr(answer)
    assert "WORN COMPRESSOR" in str(answer)
    page = answer._repr_html_()
    assert "kPa gauge" in page or "psig" in page
    xml.etree.ElementTree.fromstring(page.partition("</style>")[2])  # well formed
    spanish = str(coldloop.diagnose(WORN, language="es", details=True))
    assert "COMPRESOR DESGASTADO" in spanish
    assert len(spanish.splitlines()) > len(str(answer).splitlines())


@pytest.mark.parametrize("file", GOOD, ids=lambda file: file.stem)
def test_the_page_is_the_same_through_every_door(file, tmp_path):
    page = tmp_path / "page.html"
    subprocess.run([EXAMPLE, "--html", page, file], capture_output=True, check=True)
    answer = coldloop.diagnose(file.read_text())
    assert answer.html() == page.read_text()
    assert through_c(file.read_text(), "coldloop_page_html") == (0, answer.html())
    xml.etree.ElementTree.fromstring(answer.html())
    for picture in ("readings", "odds", "plan", "cycle", "pull-down", "hold", "pressure-test"):
        svg = answer.svg(picture)
        assert svg is None or svg in answer.html()


def test_a_page_speaks_the_language_that_it_is_asked_for():
    assert "lado de baja" in coldloop.diagnose(WORN, language="es").html()
    with pytest.raises(coldloop.UnknownNameError):
        coldloop.diagnose(WORN).svg("painting")


def test_the_answer_cannot_be_changed_from_outside():
    answer = coldloop.diagnose(WORN)
    answer.to_dict()["verdict"] = "healthy"
    assert answer.to_dict()["verdict"] == answer.verdict


def test_an_answer_can_be_sent_to_another_process():
    answer = coldloop.diagnose(WORN, named=0.9)
    sent = pickle.loads(pickle.dumps(answer))
    assert sent.to_dict() == answer.to_dict() and str(sent) == str(answer)


def test_a_refused_entry_is_named_with_what_to_write():
    wrong = {**WORN, "readings": {"low_side": "35 psi"}}
    with pytest.raises(coldloop.MissingDatumError, match="psig") as caught:
        coldloop.diagnose(wrong)
    assert caught.value.key == "readings.low_side"
    status, answer = through_c(wrong)
    assert status == coldloop.MissingDatumError.code
    assert json.loads(answer)["refused"]["key"] == "readings.low_side"
    assert json.loads(answer)["refused"]["message"] == str(caught.value)


@pytest.mark.parametrize(
    ("part", "entry", "value", "error", "key"),
    [
        ("readings", "low_side", "nan psig", coldloop.NotANumberError, "readings.low_side"),
        ("readings", "low_side", float("nan"), coldloop.NotANumberError, "readings.low_side"),
        ("readings", "low_side", 200, coldloop.MissingUnitError, "readings.low_side"),
        ("readings", "low_side", "9000 psig", coldloop.OutOfRangeError, "readings.low_side"),
        ("conditions", "ambient", "-20 °C", coldloop.OutOfRangeError, "conditions.ambient"),
        ("system", "refrigerant", "R-13", coldloop.UnknownNameError, "system.refrigerant"),
        ("system", "refrigerant", "R-12", coldloop.NotAvailableError, "system.refrigerant"),
    ],
)
def test_an_awkward_entry_is_named(part, entry, value, error, key):
    with pytest.raises(error) as caught:
        coldloop.diagnose({**WORN, part: {**WORN[part], entry: value}})
    assert caught.value.key == key


def test_swapped_hoses_and_mistaken_units_are_called_so():
    for low, high, kind in [
        ("1300 kPa gauge", "200 kPa gauge", "swapped-hoses"),
        ("200 psig", "1300 psig", "kpa-typed-as-psi"),
        ("30 kPa gauge", "190 kPa gauge", "psi-typed-as-kpa"),
    ]:
        answer = coldloop.diagnose({**WORN, "readings": {"low_side": low, "high_side": high, "vent": "46 °F"}})
        assert answer.named == ["gauge-error"]
        assert answer.to_dict()["entry_error"]["kind"] == kind


@pytest.mark.parametrize("wrong", [{}, "text", {"system": 3}, {**WORN, "readngs": {}}])
def test_what_is_no_readings_is_refused(wrong):
    with pytest.raises(coldloop.ColdloopError):
        coldloop.diagnose(wrong)


@pytest.mark.parametrize("wrong", [[], None, 3])
def test_what_is_neither_mapping_nor_text_is_refused_by_its_type(wrong):
    with pytest.raises(TypeError, match=type(wrong).__name__):
        coldloop.diagnose(wrong)


def test_a_simulation_is_that_of_every_door():
    trial = {**WORN, "faults": {"undercharge": "40 %"}, "vehicle": {"class": "van"}}
    del trial["readings"]
    answer = coldloop.simulate(trial)
    sound = coldloop.simulate({**trial, "faults": {}})
    assert answer["figures"]["charge_kg"] == pytest.approx(0.6 * sound["figures"]["charge_kg"], rel=0.02)
    # The valve makes up for less than three quarters at the vent.
    nearly_empty = coldloop.simulate({**trial, "faults": {"undercharge": "75 %"}})
    assert nearly_empty["readings"]["vent_k"] > sound["readings"]["vent_k"]
    with pytest.raises(coldloop.UnknownNameError) as caught:
        coldloop.simulate({**trial, "faults": {"gremlins": "40 %"}})
    assert caught.value.key == "faults.gremlins"


EARLIER = {
    "conditions": {"ambient": "82 °F", "altitude": "0 m"},
    "readings": {"low_side": "31 psig", "high_side": "200 psig", "vent": "47 °F"},
}
OWN_TABLE = {
    "altitude": "0 m",
    "rows": [
        {"ambient": "70 °F", "low_side": ["30 psig", "40 psig"], "high_side": ["150 psig", "190 psig"]},
        {"ambient": "90 °F", "low_side": ["32 psig", "45 psig"], "high_side": ["200 psig", "250 psig"]},
    ]
}


@pytest.mark.parametrize(
    "readings",
    [WORN, {**WORN, "baseline": [EARLIER, EARLIER]}, {**WORN, "pressure_table": OWN_TABLE}],
    ids=["kind", "earlier visits", "own table"],
)
def test_the_expected_bands_are_those_of_the_answer(readings):
    bands = coldloop.expected(readings)
    answer = coldloop.diagnose(readings).to_dict()["expected"]
    for name, unit in (("low_side", "pa_gauge"), ("high_side", "pa_gauge"), ("vent", "k"), ("superheat", "k")):
        band = bands[f"{name}_{unit}"]
        assert (band["low_95"], band["median"], band["high_95"]) == tuple(
            answer[name][f"{end}_{unit}"] for end in ("low", "median", "high")
        )
        assert list(band.values()) == sorted(band.values())
