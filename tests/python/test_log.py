"""Readings over time: every kind of table says the same, and what cannot be read is refused by its place."""

import csv
import runpy
import tomllib
from pathlib import Path

import coldloop
import numpy as np
import pandas as pd
import polars as pl
import pyarrow as pa
import pytest

ROOT = Path(__file__).parents[2]
LOGS = ROOT / "examples/logs"
NAMES = {
    "time [s]": "time_s",
    "low side [kPa gauge]": "low_side_kpa_gauge",
    "high side [kPa gauge]": "high_side_kpa_gauge",
    "vent [°C]": "vent_c",
    "cabin [°C]": "cabin_c",
    "suction line [°C]": "suction_line_c",
    "liquid line [°C]": "liquid_line_c",
    "engine speed [rpm]": "engine_speed_rpm",
    "clutch": "clutch",
}


def vehicle(name):
    case = tomllib.loads((LOGS / f"{name}.toml").read_text(encoding="utf-8"))
    del case["log"]
    return case


def columns(name):
    with (LOGS / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        header, *rows = csv.reader(file)
    cells = np.array([[float(cell) if cell else np.nan for cell in row] for row in rows])
    return {NAMES[cell]: cells[:, at] for at, cell in enumerate(header)}


@pytest.mark.parametrize("kind", [dict, pd.DataFrame, pl.DataFrame, pa.table], ids=["arrays", "pandas", "polars", "arrow"])
def test_every_kind_of_table_says_what_the_file_says(kind):
    table, file = coldloop.Log(kind(columns("cycling-van"))), coldloop.Log(LOGS / "cycling-van.csv")
    assert table.states == file.states and table.summary == file.summary
    assert table.summary["phase"] == "cycling"
    swing = table.states[-1]["swing"]
    assert swing["repeats"] and swing["cut_out_pa"] < table.states[-1]["means"]["low_side_pa_gauge"]["value"] < swing["cut_in_pa"]


@pytest.mark.parametrize("kind", [dict, pd.DataFrame, pl.DataFrame, pa.table], ids=["arrays", "pandas", "polars", "arrow"])
def test_dates_with_times_count_as_seconds(kind):
    seconds = columns("cycling-van")
    start = np.datetime64("2026-06-01T08:00:00", "ms")
    dated = {"time": start + (1000 * seconds["time_s"]).astype("timedelta64[ms]")}
    dated |= {name: column for name, column in seconds.items() if name != "time_s"}
    assert coldloop.Log(kind(dated)).states == coldloop.Log(seconds).states
    zoned = pd.DataFrame(dated).assign(time=lambda table: table["time"].dt.tz_localize("America/Denver"))
    assert coldloop.Log(zoned).states == coldloop.Log(seconds).states
    with pytest.raises(TypeError, match="time_s"):
        coldloop.Log({"time": [0.0], "vent_c": [7.0]})


def test_a_log_in_parts_is_the_same_log():
    whole = columns("worn-compressor")
    parts = coldloop.Log({name: column[:150] for name, column in whole.items()})
    parts.extend({name: column[150:] for name, column in whole.items()})
    assert parts.states == coldloop.Log(whole).states
    assert [state["judged"] for state in parts.states] == [True, True]


def test_units_are_those_of_the_column():
    si = coldloop.Log({"time_s": np.arange(120.0), "vent_k": np.full(120, 283.15), "engine_speed_hz": np.full(120, 25.0)})
    shop = coldloop.Log({"time_min": np.arange(120.0) / 60, "vent_f": np.full(120, 50.0), "engine_speed_rpm": np.full(120, 1500)})
    for channel in ("vent_k", "engine_speed_hz"):
        expected = si.states[0]["means"][channel]["value"]
        assert shop.states[0]["means"][channel]["value"] == pytest.approx(expected, rel=1e-12)
    absolute = coldloop.Log({"time_s": np.arange(120.0), "low_side_kpa_abs": np.full(120, 300.0)})
    assert list(absolute.states[0]["means"]) == ["low_side_pa_abs"]
    assert absolute.readings()["low_side"]["value"].endswith(" Pa abs")


def test_other_columns_are_left_out_and_told():
    log = coldloop.Log(pd.DataFrame({"time_s": [0.0, 1.0], "vent_c": [7.0, 7.0], "driver": ["day", "night"]}))
    assert log.ignored == ["driver"]


@pytest.mark.parametrize(
    ("columns", "error", "key"),
    [
        ({"vent_c": [7.0]}, coldloop.MissingError, "time"),
        ({"time_s": [0.0]}, coldloop.MissingError, ""),
        ({"time_s": [0.0], "vent": [7.0]}, coldloop.MissingUnitError, "vent"),
        ({"time_s": [0.0], "vent_psig": [7.0]}, coldloop.UnknownUnitError, "vent_psig"),
        ({"time_s": [0.0], "low_side_kpa": [200.0]}, coldloop.MissingDatumError, "low_side_kpa"),
        ({"time_s": [0.0], "vent_c": [7.0], "vent_f": [45.0]}, coldloop.InconsistentError, "vent [f]"),
        ({"time_s": [0.0, np.nan], "vent_c": [7.0, 7.0]}, coldloop.MissingError, "row 1, column time"),
        ({"time_s": [0.0, 1.0], "vent_c": [7.0]}, coldloop.InconsistentError, "vent_c"),
    ],
)
def test_what_is_no_log_is_refused_by_its_place(columns, error, key):
    with pytest.raises(error) as refused:
        coldloop.Log(columns)
    assert refused.value.key == key


def test_a_file_is_refused_by_row_and_column(tmp_path):
    file = tmp_path / "log.csv"
    file.write_text("time_s,vent_c\n0,7.0\n1,7;1\n", encoding="utf-8")
    with pytest.raises(coldloop.NotANumberError) as refused:
        coldloop.Log(file)
    assert refused.value.key == "row 1, column vent"
    file.write_text("", encoding="utf-8")
    with pytest.raises(coldloop.FormatError):
        coldloop.Log(file)
    with pytest.raises(TypeError, match="Path"):
        coldloop.Log(str(file))


def test_a_refused_part_takes_nothing():
    log = coldloop.Log({"time_s": np.arange(120.0), "low_side_kpa_gauge": np.full(120, 200.0)})
    before = log.summary
    with pytest.raises(coldloop.InconsistentError):
        log.extend({"time_s": [120.0], "low_side_kpa_abs": [300.0]})
    with pytest.raises(coldloop.MissingError):
        log.extend({"time_s": [120.0, np.nan], "low_side_kpa_gauge": [200.0, 200.0]})
    assert log.summary == before


def test_instruments_say_how_far_a_reading_may_be_off():
    source = {"time_s": np.arange(120.0), "low_side_psig": np.full(120, 31.0)}
    digital, dial = coldloop.Log(source), coldloop.Log(source, instruments={"low_side": "class-2.5"})
    off = [float(log.readings()["low_side"]["uncertainty"].split()[0]) for log in (digital, dial)]
    assert off[0] < off[1]
    with pytest.raises(coldloop.UnknownNameError):
        coldloop.Log(source, instruments={"low_side": "glass"})
    with pytest.raises(coldloop.UnknownNameError):
        coldloop.Log(source, instruments={"low": "digital"})


def test_what_a_log_says_is_what_its_readings_say():
    log, case = coldloop.Log(LOGS / "cycling-van.csv"), vehicle("cycling-van")
    answer = log.judge(case)
    assert next(iter(answer["faults"]))["fault"] == "no-fault"
    case["conditions"]["engine_speed"] = f"{log.states[0]['means']['engine_speed_hz']['value']!r} Hz"
    typed = coldloop.diagnose({**case, "readings": log.readings(), "observations": log.observations})
    told = {fault["fault"]: fault["probability"] for fault in answer["faults"]}
    assert typed.odds == pytest.approx(told, rel=1e-9)


def test_two_states_say_more_than_one():
    case = vehicle("worn-compressor")
    both = columns("worn-compressor")
    idle = {name: column[:300] for name, column in both.items()}
    odds = []
    for source in (idle, both):
        faults = coldloop.Log(source).judge(case)["faults"]
        odds.append({fault["fault"]: fault["probability"] for fault in faults}["worn-compressor"])
    assert odds[1] > odds[0]


def test_the_windows_of_a_database_end_with_what_the_whole_log_says():
    changes = runpy.run_path(str(ROOT / "examples/python/fleet_logs_duckdb.py"))["main"]()
    last = {name: (verdict, first, probability) for name, _, _, verdict, first, probability in changes}
    assert set(last) == {"van-5", "street-sweeper", "van-6"}
    for name, log in {"van-5": "cycling-van", "street-sweeper": "worn-compressor"}.items():
        answer = coldloop.Log(LOGS / f"{log}.csv").judge(vehicle(log))
        assert last[name][:2] == (answer["verdict"], answer["faults"][0]["fault"])
        # Both logs last ten minutes, and their verdict changes once: from nothing to this one.
        assert sum(change[0] == name for change in changes) == 1


def test_nothing_is_judged_before_a_state_has_lasted():
    log = coldloop.Log({"time_s": np.arange(20.0), "low_side_psig": np.full(20, 31.0)})
    assert log.judge(vehicle("cycling-van")) is None and log.readings() == {}
    assert log.summary["wait_s"] > 100
    assert repr(log) == "<Log: 19 s, settling, 0 of 1 states judged>"
