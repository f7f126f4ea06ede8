"""A fleet's readings judged on a cluster: `diagnose_table` over Parquet, in Spark.

    python examples/python/fleet_spark.py [ROWS] [FOLDER]

writes ROWS invented vehicles (default 20,000) as Parquet into FOLDER (default: a temporary one), judges them with
`mapInArrow` in Spark's local mode, and prints how many there are of each verdict. It needs pyspark and Java. On a
cluster only the master's address and the two paths change; fleets.md beside this file says how it scales.
"""

import sys
import tempfile
import time
from pathlib import Path

import coldloop
import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq
from pyspark.sql import SparkSession

FILES = 8


def write(folder, rows):
    """Invented vans of a garage at 1,600 m, in files of one size."""
    rng = np.random.default_rng(1600)
    for part in range(FILES):
        count = rows // FILES + (part < rows % FILES)
        table = pa.table(
            {
                "vehicle": [f"van-{part}-{k}" for k in range(count)],
                "refrigerant": rng.choice(["R-134a", "R-1234yf"], count),
                "expansion": ["txv"] * count,
                "compressor": rng.choice(["fixed-clutch", "variable-external"], count),
                "ambient_c": rng.uniform(18.0, 38.0, count),
                "altitude_m": np.full(count, 1600.0),
                "engine_speed_rpm": np.full(count, 1500.0),
                "low_side_kpa_gauge": rng.normal(250.0, 80.0, count).clip(0.0),
                "high_side_kpa_gauge": rng.normal(1350.0, 250.0, count).clip(300.0),
                "vent_c": rng.normal(9.0, 4.0, count),
                "suction_line_c": rng.normal(12.0, 6.0, count),
                "liquid_line_c": rng.normal(42.0, 6.0, count),
            }
        )
        pq.write_table(table, Path(folder) / f"part-{part}.parquet")


def judge(batches):
    """The function that runs in each of Spark's Python workers; Spark keeps the cores busy, so that one thread is enough here."""
    for batch in batches:
        yield coldloop.diagnose_table(batch, keep=["vehicle"], errors="nan", threads=1)


def schema():
    """The columns of an answer, as Spark writes them: found on an empty table."""
    empty = pa.table({"vehicle": pa.array([], pa.string())})
    arrow = coldloop.diagnose_table(empty, keep=["vehicle"]).schema
    return ", ".join(f"{field.name} {'double' if pa.types.is_floating(field.type) else 'string'}" for field in arrow)


def plain(batches):
    """Arrow's dictionaries as plain strings, which is what Spark's schema names."""
    for answer in judge(batches):
        columns = [c.cast(pa.string()) if pa.types.is_dictionary(c.type) else c for c in answer.columns]
        yield pa.RecordBatch.from_arrays(columns, names=answer.schema.names)


def main(rows=20_000, folder=None):
    with tempfile.TemporaryDirectory() as temporary:
        place = Path(folder or temporary)
        fleet, verdicts = place / "fleet", place / "verdicts"
        fleet.mkdir(parents=True, exist_ok=True)
        write(fleet, rows)
        spark = (
            SparkSession.builder.master("local[*]")
            .appName("fleet")
            .config("spark.ui.enabled", "false")
            .config("spark.ui.showConsoleProgress", "false")
            .config("spark.sql.execution.arrow.maxRecordsPerBatch", "20000")
            .getOrCreate()
        )
        spark.sparkContext.setLogLevel("ERROR")
        began = time.perf_counter()
        answers = spark.read.parquet(str(fleet)).mapInArrow(plain, schema())
        answers.write.mode("overwrite").parquet(str(verdicts))
        seconds = time.perf_counter() - began
        counts = spark.read.parquet(str(verdicts)).groupBy("verdict").count().orderBy("verdict").collect()
        spark.stop()
    for row in counts:
        print(f"{row['verdict'] or 'refused':<20} {row['count']:>9,}")
    total = sum(row["count"] for row in counts)
    print(f"{total:,} vehicles in {seconds:.1f} s, {total / seconds:,.0f} a second")
    return total


if __name__ == "__main__":
    main(*(int(argument) if place == 0 else argument for place, argument in enumerate(sys.argv[1:])))
