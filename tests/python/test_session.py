"""A visit as it grows: added, undone, stored, resumed; and the shapes of its answers."""

import copy
import json
import pickle
import typing
from pathlib import Path

import coldloop
import numpy as np
import pytest
from coldloop import _answers

ROOT = Path(__file__).parents[2]
VAN = {
    "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch", "nominal_charge": "850 g"},
    "conditions": {"ambient": "24 °C", "altitude": "1600 m"},
}


def van(**entries):
    session = coldloop.Session(VAN)
    session.add(**entries)
    return session


def test_a_session_says_what_the_same_readings_say():
    entries = {"low_side": "62 psig", "high_side": {"value": "118 psig", "gauge": "digital"}, "vent": "60 °F"}
    looks = {"clutch_engaged": True}
    typed = coldloop.diagnose({**VAN, "readings": entries, "observations": looks})
    assert van(**entries, **looks).answer()["faults"] == typed.to_dict()["faults"]


def test_independent_additions_give_the_same_answer_in_any_order():
    one, other = van(vent="60 °F", oil_traces=False), van(oil_traces=False)
    other.add(vent="60 °F")
    assert one.answer() == other.answer()


def test_every_step_can_be_undone_to_the_same_bits():
    session = van(low_side="62 psig", high_side="118 psig")
    stages = []
    for step in (
        lambda: session.add(vent="60 °F"),
        lambda: session.add(vent="58 °F"),
        lambda: session.add(oil_traces=True),
        lambda: session.add(conditions={"engine_speed": "1500 rpm"}),
        lambda: session.add_outcome("turn-hub", "yes", "hub_turns_freely"),
        lambda: session.add_repair("overcharge", helped=False),
        lambda: session.add_repair("worn-compressor"),
        lambda: session.add(low_side="30 psig"),
    ):
        stages.append((session.to_toml(), session.answer()))
        session.next
        step()
    undone = []
    for stored, answer in reversed(stages):
        undone.append(session.undo())
        again = coldloop.Session.from_toml(stored)
        assert session.answer() == answer == again.answer()
    assert undone == [
        ("reading", "low_side"),
        ("repair", "worn-compressor"),
        ("in-vain", "overcharge"),
        ("check", "turn-hub"),
        ("conditions", ""),
        ("observation", "oil_traces"),
        ("reading", "vent"),
        ("reading", "vent"),
    ]
    assert session.done == [("reading", "low_side"), ("reading", "high_side")]


def test_a_stored_session_is_resumed_and_carried_along():
    session = van(low_side="62 psig", vent="60 °F")
    session.set_meta("work order", "117")
    session.next
    for again in (
        coldloop.Session.from_toml(session.to_toml()),
        pickle.loads(pickle.dumps(session)),
        copy.deepcopy(session),
    ):
        assert again == session and again.meta("work order") == "117"
        assert again.answer() == session.answer() and again.done == session.done
    # It is a readings file, too.
    typed = coldloop.diagnose(session.to_toml())
    assert typed.to_dict()["faults"] == session.answer()["faults"]
    again.undo()
    assert again != session


def test_the_held_step_leads_everything():
    session = van(low_side="62 psig", high_side="118 psig")
    step = session.next
    assert step["fills"] == "readings.vent" and step["minutes"] > 0
    answer, plan = session.answer(), session.plan()
    for told in (answer["next_step"], plan["steps"][0]):
        assert (told["check"], told["repair"]) == (step["check"], step["repair"])
    assert step["fills"] in answer["next_step"]["fills"]
    assert set(plan["steps"][0]["cautions"]) == set(step["cautions"])
    assert f'held = {{check = "{step["check"]}"}}' in session.to_toml()


def test_a_repair_is_proven_and_ends_the_visit():
    file = (ROOT / "examples/readings/repaired-van.toml").read_text(encoding="utf-8")
    session = coldloop.Session(file)
    assert session.proof()["repair"]["finding"] == "proven"
    assert session.next is None
    assert "after the repair" in repr(session)
    assert session.html().startswith("<!DOCTYPE html>") and str(session)


def test_what_was_repaired_in_vain_is_not_the_cause():
    session = van(low_side="62 psig", high_side="118 psig", vent="60 °F")
    fault = session.answer()["faults"][0]["fault"]
    session.add_repair(fault, helped=False)
    assert all(ranked["fault"] != fault or ranked["probability"] == 0 for ranked in session.answer()["faults"])


def test_a_refused_addition_changes_nothing():
    session = van(low_side="62 psig")
    before = session.to_toml()
    for entries, error, key in [
        ({"vent": "60 °F", "vnt": "60 °F"}, coldloop.UnknownNameError, "readings.vnt"),
        ({"vent": "60"}, coldloop.MissingUnitError, "readings.vent"),
        ({"vent": "60 °F", "suction_line": "900 °C"}, coldloop.OutOfRangeError, "readings.suction_line"),
        ({"oil_traces": "yes"}, coldloop.UnknownNameError, "observations.oil_traces"),
        ({"gauge_zero_altitude": "0 m"}, coldloop.UnknownNameError, "gauge_zero_altitude"),
        ({"conditions": {"ambient": "24"}}, coldloop.MissingUnitError, "conditions.ambient"),
    ]:
        with pytest.raises(error) as refused:
            session.add(**entries)
        assert refused.value.key == key
    for call, error in [
        (lambda: session.add_outcome("turn-hub", "below"), coldloop.MissingError),
        (lambda: session.add_outcome("turn-hub", "yes"), coldloop.InconsistentError),
        (lambda: session.add_outcome("turn-hub", "perhaps"), coldloop.UnknownNameError),
        (lambda: session.add_outcome("turn", "yes"), coldloop.UnknownNameError),
        (lambda: session.add_repair("no-fault"), coldloop.InconsistentError),
        (lambda: session.add_repair("gremlins"), coldloop.UnknownNameError),
    ]:
        with pytest.raises(error):
            call()
    assert session.to_toml() == before


def test_a_short_log_says_how_long_to_wait():
    session = van(low_side="62 psig")
    before = session.to_toml()
    with pytest.raises(coldloop.MissingError, match=r"log for \d+ s more"):
        session.add(coldloop.Log({"time_s": np.arange(20.0), "vent_c": np.full(20, 7.0)}))
    assert session.to_toml() == before
    session.add(coldloop.Log({"time_s": np.arange(200.0), "vent_c": np.full(200, 7.0), "engine_speed_rpm": np.full(200, 1500)}))
    assert session.done[1:] == [("conditions", ""), ("log", "")]


def test_the_place_is_told_by_one_of_two_entries():
    session = van(vent="60 °F")
    session.add(conditions={"altitude": "0 m"})
    sea = coldloop.Session({**VAN, "conditions": {"ambient": "24 °C", "altitude": "0 m"}, "readings": {"vent": "60 °F"}})
    assert session.answer()["faults"] == sea.answer()["faults"]


def test_old_steps_cannot_be_undone():
    session = coldloop.Session(VAN)
    assert session.undo() is None
    for step in range(20):
        session.add(vent=f"{40 + step} °F")
    while session.done:
        session.undo()
    with pytest.raises(coldloop.NotAvailableError):
        session.undo()


def test_a_session_shows_what_it_knows():
    session = van(low_side="62 psig", high_side="118 psig", oil_traces=False)
    before = session.to_toml()
    assert repr(session).startswith("<Session: R-134a txv fixed-clutch, 2 readings, 1 observations; ")
    assert session.to_toml() == before


def schema():
    return json.loads((ROOT / "docs/schema/answer.json").read_text(encoding="utf-8"))


def agree(shape, node, place):
    """Whether a type says what a schema says, ids as text."""
    if "anyOf" in node or isinstance(node.get("type"), list):
        kinds = node.get("anyOf") or [{"type": kind} for kind in node["type"]]
        inner = [kind for kind in kinds if kind.get("type") != "null"]
        parts = typing.get_args(shape)
        assert type(None) in parts and len(inner) == 1, place
        (shape,) = [part for part in parts if part is not type(None)]
        return agree(shape, inner[0], place)
    if "enum" in node:
        assert shape is str, place
    elif "const" in node:
        assert shape is type(node["const"]), place
    elif node["type"] == "array":
        assert typing.get_origin(shape) is list, place
        agree(typing.get_args(shape)[0], node["items"], f"{place}[]")
    elif node["type"] == "object" and typing.is_typeddict(shape):
        types = typing.get_type_hints(shape)
        assert set(types) == set(node["properties"]), place
        assert shape.__required_keys__ == set(node["required"]), place
        for name, inner in node["properties"].items():
            agree(types[name], inner, f"{place}.{name}")
    elif node["type"] == "object":
        assert "required" not in node, f"{place} has a shape of its own"
        name, value = typing.get_args(shape)
        assert name is str, place
        if value is not typing.Any and "additionalProperties" in node and typing.get_origin(value) is not dict:
            agree(value, node["additionalProperties"], f"{place}.*")
    else:
        assert shape is {"string": str, "number": float, "integer": int, "boolean": bool}[node["type"]], place
    return None


def test_the_types_of_answers_are_those_of_the_schema():
    agree(_answers.Answer, schema(), "answer")


def test_a_type_that_differs_is_found():
    wrong = schema()
    wrong["properties"]["faults"]["items"]["properties"]["odds"] = {"type": "number"}
    with pytest.raises(AssertionError, match="faults"):
        agree(_answers.Answer, wrong, "answer")


@pytest.mark.parametrize(
    ("shape", "value"),
    [
        (_answers.NextStep, lambda: van(low_side="62 psig").next),
        (_answers.LogSummary, lambda: coldloop.Log(ROOT / "examples/logs/cycling-van.csv").summary),
        (_answers.LogState, lambda: coldloop.Log(ROOT / "examples/logs/cycling-van.csv").states[0]),
        (_answers.Swing, lambda: coldloop.Log(ROOT / "examples/logs/cycling-van.csv").states[0]["swing"]),
        (_answers.Fall, lambda: coldloop.Log(ROOT / "examples/logs/bus-pull-down.csv").summary["vent"]),
    ],
)
def test_what_is_told_has_the_keys_of_its_type(shape, value):
    assert set(value()) == set(typing.get_type_hints(shape))
