"""A fleet's logs in a database: the verdict on each vehicle's last ten minutes, in DuckDB's own windows.

    python examples/python/fleet_logs_duckdb.py

reads the invented logs of the garage (examples/logs) into one table of samples, asks for a verdict every two minutes, and
prints every change. The engine orders the samples, keeps a window of each vehicle and compares each verdict with the one
before; a function that it calls makes a coldloop.Log of a window and judges all states in it together.
"""

import datetime
import tomllib
from pathlib import Path

import coldloop
import duckdb

LOGS = Path(__file__).parent.parent / "logs"
VEHICLES = {"van-5": "cycling-van", "street-sweeper": "worn-compressor", "van-6": "sensor-drops-out"}
START = datetime.datetime(2026, 7, 1, 8)

# Every sample that still counts when a vehicle is judged, and how often that is.
WINDOW, EVERY = "10 minutes", "2 minutes"

TABLE = """
    create table samples (
        vehicle varchar, time timestamp,
        low_kpa double, high_kpa double, vent_c double, speed_rpm double, clutch double
    )
"""
SAMPLES = """
    insert into samples
    select ?, ?::timestamp + to_seconds("time [s]"), "low side [kPa gauge]", "high side [kPa gauge]",
        "vent [°C]", "engine speed [rpm]", clutch
    from read_csv(?)
"""

# The last sample of each two minutes is judged with those of the ten minutes before it.
CHANGES = f"""
    with windows as (
        select vehicle, time,
            list(epoch(time)) over recent as seconds, list(low_kpa) over recent as low, list(high_kpa) over recent as high,
            list(vent_c) over recent as vent, list(speed_rpm) over recent as speed, list(clutch) over recent as clutch
        from samples
        window recent as (partition by vehicle order by time range between interval {WINDOW} preceding and current row)
        qualify row_number() over (partition by vehicle, time_bucket(interval {EVERY}, time) order by time desc) = 1
    ),
    judged as (
        select vehicle, time, unnest(judge(vehicle, seconds, low, high, vent, speed, clutch)) from windows
    )
    select vehicle, time, phase, verdict, first, probability
    from judged
    where verdict is not null
    qualify verdict is distinct from lag(verdict) over (partition by vehicle order by time)
    order by time, vehicle
"""


def known(vehicle):
    """System and conditions of a vehicle, as a fleet's register would have them."""
    file = tomllib.loads((LOGS / f"{VEHICLES[vehicle]}.toml").read_text(encoding="utf-8"))
    return {"system": file["system"], "conditions": file["conditions"]}


def judge(vehicle, seconds, low, high, vent, speed, clutch):
    """The function that DuckDB calls for a window; missing values are samples without that channel."""
    columns = {
        "low_side_kpa_gauge": low,
        "high_side_kpa_gauge": high,
        "vent_c": vent,
        "engine_speed_rpm": speed,
        "clutch": clutch,
    }
    log = coldloop.Log({"time_s": seconds, **columns})
    answer = log.judge(known(vehicle))
    phase = log.summary["phase"]
    if answer is None:
        return {"phase": phase, "verdict": None, "first": None, "probability": None}
    first = answer["faults"][0]
    return {"phase": phase, "verdict": answer["verdict"], "first": first["fault"], "probability": first["probability"]}


def main():
    with duckdb.connect() as database:
        database.sql(TABLE)
        for vehicle, log in VEHICLES.items():
            database.execute(SAMPLES, [vehicle, START, str(LOGS / f"{log}.csv")])
        told = "struct(phase varchar, verdict varchar, first varchar, probability double)"
        database.create_function("judge", judge, ["varchar", *6 * ["double[]"]], told, null_handling="special")
        changes = database.sql(CHANGES).fetchall()
    for vehicle, time, phase, verdict, first, probability in changes:
        print(f"{time:%H:%M:%S}  {vehicle:<15} {phase:<10} {verdict:<15} {first} {probability:.0%}")
    return changes


if __name__ == "__main__":
    main()
