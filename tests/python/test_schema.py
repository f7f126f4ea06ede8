"""The committed JSON Schemas, checked by an independent validator: every readings file of the examples, every answer, a stored session."""

import json
import subprocess
import tomllib
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator, ValidationError

ROOT = Path(__file__).parents[2]
EXAMPLE = ROOT / "target/release/examples/diagnose"
GOOD = [file for file in sorted((ROOT / "examples/readings").glob("*.toml")) if not file.name.startswith("bad")]


def validator(name):
    schema = json.loads((ROOT / f"docs/schema/{name}.json").read_text())
    Draft202012Validator.check_schema(schema)
    return Draft202012Validator(schema)


@pytest.mark.parametrize("file", GOOD, ids=lambda file: file.stem)
def test_every_readings_file_and_its_answer_fit(file):
    validator("readings").validate(tomllib.loads(file.read_text()))
    answer = json.loads(subprocess.run([EXAMPLE, "--json", file], check=True, capture_output=True).stdout)
    validator("answer").validate(answer)
    assert answer["format"] == 1


def test_what_no_file_is_does_not_fit():
    readings = validator("readings")
    case = tomllib.loads(GOOD[0].read_text())
    for table, key, value in [
        ("system", "refrigerant", "R-0"),
        ("conditions", "ambiant", "74 °F"),
        ("readings", "vent", 7),
        ("readings", "vent", {"thermometer": "pocket-dial"}),
        ("observations", "oil_traces", "yes"),
    ]:
        with pytest.raises(ValidationError):
            readings.validate(case | {table: case.get(table, {}) | {key: value}})
    with pytest.raises(ValidationError):
        readings.validate(case | {"format": 2})


def test_a_stored_session_says_its_format():
    case = tomllib.loads(GOOD[0].read_text())
    with pytest.raises(ValidationError):
        validator("session").validate(case)
    undo = [{"step": {"reading": "vent"}, "conditions": case["conditions"], "held": {"check": "read-vent"}}]
    validator("session").validate(case | {"format": 1, "meta": {"any": ["thing"]}, "undo": undo})
