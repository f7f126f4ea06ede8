"""A table of vehicles gives what each vehicle alone gives, in every kind of table."""

import math

import coldloop
import numpy as np
import pandas as pd
import polars as pl
import pyarrow as pa
import pytest
from fleet import fleet

TABLE = fleet(400, seed=7)
UNITS = {
    "ambient_c": "°C",
    "altitude_m": "m",
    "humidity_percent": "%",
    "engine_speed_rpm": "rpm",
    "low_side_kpa_gauge": "kPa gauge",
    "high_side_kpa_gauge": "kPa gauge",
    "vent_c": "°C",
    "suction_line_c": "°C",
    "liquid_line_c": "°C",
    "discharge_line_c": "°C",
}
SECTIONS = {"ambient": "conditions", "altitude": "conditions", "humidity": "conditions", "engine_speed": "conditions"}


def readings(row):
    """A row in the shape of a readings file."""
    file = {
        "system": {name: str(TABLE[name][row]) for name in ("refrigerant", "expansion", "compressor")},
        "conditions": {},
        "readings": {},
        "observations": {},
    }
    for name, unit in UNITS.items():
        entry = next(
            known for known in sorted(coldloop.column_names(), key=len, reverse=True) if name.startswith(known)
        )
        if not math.isnan(TABLE[name][row]):
            file[SECTIONS.get(entry, "readings")][entry] = f"{TABLE[name][row]!s} {unit}"
    fan = TABLE["condenser_fan_running"][row]
    if not math.isnan(fan):
        file["observations"]["condenser_fan_running"] = bool(fan)
    return file


@pytest.fixture(scope="module")
def answer():
    return coldloop.diagnose_table(pd.DataFrame(TABLE), keep=["vehicle"])


def test_every_row_is_the_answer_to_that_vehicle_alone_to_the_bit(answer):
    assert list(answer.vehicle) == list(TABLE["vehicle"])
    for row in range(len(answer)):
        alone = coldloop.diagnose(readings(row)).to_dict()
        many = answer.iloc[row]
        assert many["verdict"] == alone["verdict"]
        assert (many["named"] if alone["named"] else "") == " ".join(alone["named"])
        for column, key in (("rival", "rival"), ("rest", "rest")):
            assert (None if pd.isna(many[column]) else many[column]) == alone[key]
        odds = {fault["fault"]: fault["probability"] for fault in alone["faults"]}
        for name in answer.columns:
            fault = name.removeprefix("odds_").replace("_", "-")
            if name == "odds_none_of_these":
                assert many[name] == alone["none_of_these"]
            elif name.startswith("odds_"):
                assert (None if math.isnan(many[name]) else many[name]) == odds.get(fault)
        for name, figure in alone["derived"].items():
            unit = "_k" if figure is None or "value_k" in figure else "_j_kg" if "value_j_kg" in figure else ""
            column = next(c for c in answer.columns if c in (name, f"{name}_k", f"{name}_j_kg"))
            found = many[column]
            if figure is None:
                assert math.isnan(found)
            elif name != "condensing_above_ambient":  # its uncertainty includes that of the ambient, which is stated in two places
                assert found == figure[f"value{unit}"]
                assert many[column.replace(name, f"{name}_uncertainty")] == figure[f"standard_uncertainty{unit}"]
    assert answer["refused"].isna().all()
    assert len(set(answer["verdict"])) >= 3


def test_every_kind_of_table_gives_its_own_kind(answer):
    arrow = pa.table({name: pa.array(column, from_pandas=True) for name, column in TABLE.items()})
    as_arrow = coldloop.diagnose_table(arrow, keep=["vehicle"])
    assert isinstance(as_arrow, pa.Table)
    batch = arrow.to_batches()[0]
    assert isinstance(coldloop.diagnose_table(batch, keep=["vehicle"]), pa.RecordBatch)
    as_polars = coldloop.diagnose_table(pl.from_arrow(arrow), keep=["vehicle"])
    assert isinstance(as_polars, pl.DataFrame)
    as_arrays = coldloop.diagnose_table(TABLE, keep=["vehicle"])
    assert list(as_arrow.column_names) == list(as_polars.columns) == list(as_arrays) == list(answer.columns)
    for name in answer.columns:
        column = [None if pd.isna(x) else x for x in answer[name]]
        assert as_arrow[name].to_pylist() == column
        assert as_polars[name].to_list() == column
        plain = as_arrays[name].tolist()
        assert [None if x == "" or x != x else x for x in plain] == column


def test_missing_values_and_truth_come_in_every_spelling(answer):
    fan = [None if math.isnan(x) else bool(x) for x in TABLE["condenser_fan_running"]]
    for column in (
        pd.Series(fan, dtype=object),
        pd.Series(fan, dtype="boolean"),
        pd.Series(TABLE["condenser_fan_running"]),
    ):
        again = coldloop.diagnose_table(pd.DataFrame({**TABLE, "condenser_fan_running": column}), keep=["vehicle"])
        pd.testing.assert_frame_equal(again, answer)
    again = coldloop.diagnose_table(pl.DataFrame({**TABLE, "condenser_fan_running": fan}), keep=["vehicle"])
    assert again["odds_condenser_airflow_loss"].to_list() == list(answer["odds_condenser_airflow_loss"])


def test_the_index_the_threads_and_the_blocks_do_not_matter(answer):
    frame = pd.DataFrame(TABLE, index=np.arange(400) * 3)
    for threads in (1, 3):
        again = coldloop.diagnose_table(frame, keep=["vehicle"], threads=threads)
        assert list(again.index) == list(frame.index)
        pd.testing.assert_frame_equal(again.reset_index(drop=True), answer)
    large = coldloop.diagnose_table(pd.DataFrame(fleet(3_000, seed=1)), keep=["vehicle"])
    small = coldloop.diagnose_table(pd.DataFrame(fleet(3_000, seed=1)).iloc[1_000:1_010], keep=["vehicle"])
    assert large["odds_undercharge"].iloc[1_000:1_010].tolist() == small["odds_undercharge"].tolist()
    assert len(coldloop.diagnose_table(frame.iloc[:0], keep=["vehicle"])) == 0


@pytest.mark.parametrize(
    ("name", "error"),
    [
        ("colour", coldloop.UnknownNameError),
        ("low_side_kpa", coldloop.MissingDatumError),
        ("low_side", coldloop.MissingUnitError),
        ("vent_kpa_gauge", coldloop.UnknownUnitError),
        ("ambient_furlongs", coldloop.UnknownUnitError),
        ("low_side_psig", coldloop.InconsistentError),
    ],
)
def test_a_column_that_says_nothing_is_refused_by_name(name, error):
    table = {**TABLE, name: np.zeros(400)}
    with pytest.raises(error) as caught:
        coldloop.diagnose_table(table, keep=["vehicle"])
    assert caught.value.key == name
    with pytest.raises(coldloop.UnknownNameError):
        coldloop.diagnose_table(TABLE)  # "vehicle" says nothing either, and is not kept


def test_words_and_numbers_in_the_wrong_place_are_refused():
    with pytest.raises(coldloop.UnknownNameError, match="R-9999"):
        coldloop.diagnose_table({**TABLE, "refrigerant": ["R-9999"] * 400}, keep=["vehicle"])
    with pytest.raises(TypeError, match="vent_c"):
        coldloop.diagnose_table(pd.DataFrame({**TABLE, "vent_c": ["cold"] * 400}), keep=["vehicle"])
    with pytest.raises(TypeError, match="table"):
        coldloop.diagnose_table([1, 2, 3])


def test_a_row_that_cannot_be_judged_is_raised_or_told():
    table = {**TABLE, "ambient_c": TABLE["ambient_c"].copy(), "low_side_kpa_gauge": TABLE["low_side_kpa_gauge"].copy()}
    table["ambient_c"][3] = 300.0
    table["low_side_kpa_gauge"][5] = -500.0
    table["altitude_m"] = TABLE["altitude_m"].copy()
    table["altitude_m"][9] = np.nan
    with pytest.raises(coldloop.OutOfRangeError) as caught:
        coldloop.diagnose_table(table, keep=["vehicle"])
    assert caught.value.key == "row 3, column ambient_c" or caught.value.quantity == "temperature"
    answer = coldloop.diagnose_table(pd.DataFrame(table), keep=["vehicle"], errors="nan")
    assert answer["refused"].notna().sum() == 3
    assert "out-of-range" in answer["refused"][3]
    assert answer["refused"][5] == "low_side_kpa_gauge: out-of-range"
    assert answer["refused"][9] == "altitude: missing"
    assert answer["verdict"].isna().sum() == 3
    assert math.isnan(answer["odds_undercharge"][5])


def test_settings_reach_every_row():
    certain = coldloop.diagnose_table(TABLE, keep=["vehicle"], priors={"undercharge": 0.0})
    assert (certain["odds_undercharge"] == 0.0).all()
    with pytest.raises(coldloop.UnknownNameError):
        coldloop.diagnose_table(TABLE, keep=["vehicle"], optimism=1.0)
    with pytest.raises(coldloop.OutOfRangeError):
        coldloop.diagnose(readings(0), named=2.0)


def test_progress_is_told_and_an_interrupt_stops_the_work(capsys):
    seen = []
    coldloop.diagnose_table(fleet(3_000), keep=["vehicle"], progress=lambda done, rows: seen.append((done, rows)))
    assert seen[-1] == (3_000, 3_000)
    assert seen == sorted(seen)
    coldloop.diagnose_table(TABLE, keep=["vehicle"], progress=True)
    assert "400 of 400 vehicles" in capsys.readouterr().err

    def stop(done, rows):
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        coldloop.diagnose_table(fleet(20_000), keep=["vehicle"], progress=stop)


def test_instruments_are_used():
    base = {name: TABLE[name] for name in TABLE if name != "vehicle"}
    digital = coldloop.diagnose_table({**base, "low_side_instrument": ["digital"] * 400})
    dial = coldloop.diagnose_table(base)
    assert (digital["low_side_dew_uncertainty_k"] < dial["low_side_dew_uncertainty_k"]).all()
    file = readings(0)
    file["readings"]["low_side"] = {"value": file["readings"]["low_side"], "gauge": "digital"}
    alone = coldloop.diagnose(file).to_dict()["derived"]["low_side_dew"]
    assert digital["low_side_dew_uncertainty_k"][0] == alone["standard_uncertainty_k"]


def test_entries_of_labels_and_scan_tools_are_used():
    told = {
        "refrigerant": ["R-1234yf"] * 3,
        "expansion": ["txv"] * 3,
        "compressor": ["electric"] * 3,
        "ambient_c": [30.0] * 3,
        "altitude_m": [1600.0] * 3,
        "engine_speed_rpm": [0.0] * 3,
        "compressor_running": ["yes", "no", None],
        "compressor_speed_rpm": [3500.0, math.nan, math.nan],
        "fan_command_percent": [60.0] * 3,
        "sight_glass": ["no"] * 3,
        "low_port": ["compressor"] * 3,
        "high_port": ["liquid-line"] * 3,
        "high_cut_out_bar_gauge": [27.0] * 3,
        "low_side_kpa_gauge": [235.0, 600.0, 235.0],
        "high_side_transducer_kpa_gauge": [1330.0, 600.0, 1330.0],
        "evaporator_sensor_c": [5.0] * 3,
        "vent_c": [7.0] * 3,
    }
    answer = coldloop.diagnose_table(told)
    assert (answer["rest"][0], answer["rest"][2]) == ("", "") and answer["rest"][1] != ""
    alone = coldloop.diagnose(
        {
            "system": {
                "refrigerant": "R-1234yf",
                "expansion": "txv",
                "compressor": "electric",
                "sight_glass": False,
                "low_port": "compressor",
                "high_port": "liquid-line",
                "high_cut_out": "27 bar gauge",
            },
            "conditions": {
                "ambient": "30 °C",
                "altitude": "1600 m",
                "engine_speed": "0 rpm",
                "compressor_running": True,
                "compressor_speed": "3500 rpm",
                "fan_command": "60 %",
            },
            "readings": {
                "low_side": "235 kPa gauge",
                "high_side_transducer": "1330 kPa gauge",
                "evaporator_sensor": "5 °C",
                "vent": "7 °C",
            },
        }
    ).to_dict()
    assert answer["high_side_dew_uncertainty_k"][0] == alone["derived"]["high_side_dew"]["standard_uncertainty_k"]
    assert answer["odds_worn_compressor"][0] == next(
        fault["probability"] for fault in alone["faults"] if fault["fault"] == "worn-compressor"
    )
    notes = [note["note"] if isinstance(note, dict) else note for note in alone["quality"]]
    assert "transducer-stands-in" in notes and "at-rest" not in notes


MAKERS = [pd.DataFrame, pl.DataFrame, pa.table, pa.RecordBatch.from_pydict]


@pytest.mark.parametrize("make", MAKERS)
@pytest.mark.parametrize("rows", [0, 3])
@pytest.mark.parametrize("keep", [[], ["vehicle"]])
def test_a_table_may_be_empty_have_columns_without_a_value_and_keep_nothing(make, rows, keep):
    columns = {name: column[:rows].tolist() for name, column in TABLE.items() if name in keep or name != "vehicle"}
    table = make({**columns, "sight_glass": [None] * rows, "discharge_line_c": [None] * rows})
    answer = coldloop.diagnose_table(table, keep=keep)
    assert type(answer) is type(table)
    assert answer.shape[0] == rows
    names = list(answer.columns) if make in MAKERS[:2] else answer.schema.names
    assert names[: len(keep) + 1] == [*keep, "verdict"]


@pytest.mark.parametrize("table", [pl.LazyFrame(TABLE), pd.Series([1.0]), pl.Series([1.0])])
def test_what_is_no_table_is_refused_by_its_kind(table):
    with pytest.raises(TypeError, match=f"a table is of pandas, polars or Arrow, .* not {type(table).__name__}$"):
        coldloop.diagnose_table(table)
