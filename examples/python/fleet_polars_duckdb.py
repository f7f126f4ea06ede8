"""A fleet's readings judged from polars and from DuckDB: a table goes in, a table of the same kind comes out."""

import coldloop
import duckdb
import polars as pl

fleet = pl.DataFrame(
    {
        "vehicle": ["sweeper-3", "van-12", "van-17", "bus-2"],
        "refrigerant": ["R-134a", "R-134a", "R-1234yf", "R-134a"],
        "expansion": ["txv", "orifice-tube", "txv", "txv"],
        "compressor": ["fixed-clutch", "fixed-clutch", "variable-external", "fixed-clutch"],
        "ambient_c": [29.0, 31.5, 30.0, 27.0],
        "altitude_m": [1600.0] * 4,
        "low_side_kpa_gauge": [105.0, 240.0, 270.0, 480.0],
        "high_side_kpa_gauge": [1010.0, 1500.0, 1480.0, 900.0],
        "vent_c": [17.0, 7.5, 8.0, 19.0],
        "suction_line_c": [21.0, 12.0, None, 16.0],
    }
)
verdicts = coldloop.diagnose_table(fleet, keep=["vehicle"])
print(verdicts.select("vehicle", "verdict", "named", pl.col("superheat_k").round(1)))

# DuckDB passes the result of a query in parts and reads an Arrow table by its name in a query, so that files may be of any size.
readings = duckdb.sql("select * from fleet where altitude_m > 1000").to_arrow_table()
answers = coldloop.diagnose_table(readings, keep=["vehicle"])
worst = "select vehicle, named, round(100 * odds_undercharge) as undercharge_percent from answers order by 3 desc"
print(duckdb.sql(worst))
