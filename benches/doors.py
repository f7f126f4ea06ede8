"""One diagnosis through the doors, from a text of readings to the whole answer; writes its table in README.md.

    cargo build --release -p coldloop-c && pip install ./bindings/python
    python benches/doors.py [PASSES]

The text is examples/readings/low-charge.toml, that of the core's figure in the table of speed. Each figure is the least of
PASSES passes (300 without it): a busy machine disturbs the least of them least.
"""

import ctypes
import datetime
import sys
import time
import tomllib
from pathlib import Path

import coldloop
from compare import machine, replaced

ROOT = Path(__file__).parents[1]
READINGS = ROOT / "examples/readings/low-charge.toml"
LIBRARY = ROOT / "target/release/libcoldloop_c.so"


def least(call, passes):
    """The shortest of the passes, in microseconds."""
    best = float("inf")
    for _ in range(passes):
        began = time.perf_counter_ns()
        call()
        best = min(best, time.perf_counter_ns() - began)
    return best / 1e3


def main():
    passes = int(next(iter(sys.argv[1:]), 300))
    text = READINGS.read_text()
    mapping = tomllib.loads(text)
    library = ctypes.CDLL(str(LIBRARY))
    given, buffer = text.encode(), ctypes.create_string_buffer(1 << 20)

    def through_c(function):
        status = function(given, buffer, ctypes.c_size_t(len(buffer)), None, None)
        assert status == 0, status

    rows = {
        "C, `coldloop_diagnose`: TOML in, JSON out": lambda: through_c(library.coldloop_diagnose),
        "C, `coldloop_report`: TOML in, the report out": lambda: through_c(library.coldloop_report),
        "Python, `diagnose(text)`: TOML in, the answer as dictionaries": lambda: coldloop.diagnose(text).to_dict(),
        "Python, `diagnose(mapping)`: the same of a mapping": lambda: coldloop.diagnose(mapping).to_dict(),
    }
    table = "| one diagnosis | µs |\n|---|---|\n"
    table += "".join(f"| {what} | {least(call, passes):.0f} |\n" for what, call in rows.items())
    replaced(ROOT / "README.md", f"{machine().rpartition(', CoolProp')[0]}\n\n{table}", "doors")
    print(datetime.date.today().isoformat(), table, sep="\n")


if __name__ == "__main__":
    main()
