"""Hostile input at the doors in Python, measured, as rows of the table in docs/security.md.

    python tests/attack/attack.py [INPUTS]

Every call runs in a thread with little stack, which ends the program where it does not suffice. Whatever comes back is an answer, a
ColdloopError, or a TypeError or ValueError that says what is wrong with the argument; anything else ends the run with its number.
"""

import random
import resource
import sys
import tempfile
import threading
import time
import tomllib
from pathlib import Path

import coldloop
import numpy as np

# Some numbers that are drawn overflow half precision.
np.seterr(over="ignore")

ROOT = Path(__file__).parents[2]
TEXTS = [
    (ROOT / "examples/readings" / name).read_text(encoding="utf-8")
    for name in ("repaired-van.toml", "low-charge.toml", "bus-slow-leak.toml")
]
LOGS = [(ROOT / "tests/fuzz/corpus/logs" / name).read_text(encoding="utf-8") for name in ("cycling.csv", "steady.csv")]
WORDS = ["1e308", "nan", "inf", "-0.0", "9" * 400, '""', '"\\u0000"', '"-1 psig"', "true", "[[]]", "{}", "[[undo]]\n", "'''", "\\", "\ud800"]
# Bytes of stack: about the least with which the interpreter runs, and much less than any system gives.
STACK = 256 * 1024


def hostile_text(draw, sound):
    """A sound text that was cut, doubled, overwritten and mixed."""
    text = draw.choice(sound)
    for _ in range(draw.randrange(1 + draw.randrange(1, 8))):
        start = draw.randrange(len(text) + 1)
        end = min(len(text), start + draw.randrange(200))
        other = draw.choice(sound)
        put = draw.choice(["", text[start:end] * 2, draw.choice(WORDS), chr(draw.randrange(0x110000)), other[start : start + 99]])
        text = text[:start] + put + text[end:]
    return text


def hostile_value(draw, depth=0):
    """A value of any Python type."""
    recursive = []
    recursive.append(recursive)
    values = [
        None, True, -1, 0, 10**400, float("nan"), float("inf"), 5e-324, 1e308, "", "37 psig", "\ud800", "x" * 10_000, b"37 psig", 3 + 4j,
        object(), {}, [], (), {1: 2}, {"value": "37 psig", "gauge": "digital"}, recursive, np.float32(3), np.array([1.0]), np.datetime64("now"), range(3),
    ]
    if depth < 3 and draw.random() < 0.3:
        return {str(draw.choice(list(range(9)))): hostile_value(draw, depth + 1) for _ in range(3)}
    return draw.choice(values)


def hostile_mapping(draw):
    mapping = tomllib.loads(draw.choice(TEXTS))
    for _ in range(draw.randrange(5)):
        table = mapping[draw.choice(list(mapping))]
        if isinstance(table, dict) and table:
            table[draw.choice([*table, "x"])] = hostile_value(draw)
        else:
            mapping[draw.choice([*mapping, "x"])] = hostile_value(draw)
    return mapping


def hostile_table(draw):
    rows = draw.choice([0, 1, 3, 50])
    numbers = [0.0, -1.0, 1e308, float("nan"), float("inf"), 24.0, 70.0, 125.0, 5e-324]
    words = ["R-134a", "R-744", "txv", "fixed-clutch", "", "nan", "\ud800", None]
    names = ["refrigerant", "expansion", "compressor", "ambient_c", "altitude_m", "low_side_psig", "high_side_psig", "vent_f", "clutch_engaged", "low_side_kpa", "x", ""]
    table = {"refrigerant": ["R-134a"] * rows, "expansion": ["txv"] * rows, "compressor": ["fixed-clutch"] * rows}
    table |= {"ambient_c": [24.0] * rows, "altitude_m": [1600.0] * rows, "low_side_psig": [draw.choice(numbers) for _ in range(rows)]}
    for name in draw.sample(names, draw.randrange(4)):
        kind = draw.randrange(4)
        length = rows if draw.random() < 0.9 else rows + 1
        if kind == 0:
            table[name] = [draw.choice(words) for _ in range(length)]
        elif kind == 1:
            table[name] = np.array([draw.choice(numbers) for _ in range(length)], dtype=draw.choice(["f8", "f4", "f2", "complex128"]))
        elif kind == 2:
            table[name] = np.zeros((length, 2))
        else:
            table[name] = [hostile_value(draw) for _ in range(length)]
    return table


def log_file(draw, path):
    path.write_bytes(hostile_text(draw, LOGS).encode("utf-8", "surrogatepass" if draw.random() < 0.1 else "replace"))
    return path


def session_told(text):
    session = coldloop.Session.from_toml(text)
    session.answer()
    session.undo()
    return session.to_toml()


def doors(folder):
    """Name, what draws an input, what takes it, and the cost of an input relative to the cheapest one."""
    path = Path(folder) / "log.csv"
    return [
        ("Python, a text: `diagnose`", lambda draw: hostile_text(draw, TEXTS), lambda text: coldloop.diagnose(text).to_dict(), 1),
        ("Python, a mapping of any values: `diagnose`", hostile_mapping, lambda mapping: coldloop.diagnose(mapping).to_dict(), 1),
        ("Python, a table: `diagnose_table`", hostile_table, lambda table: coldloop.diagnose_table(table, errors="nan", threads=1), 1),
        ("Python, a session file", lambda draw: hostile_text(draw, TEXTS), session_told, 1),
        ("Python, a log as a CSV file", lambda draw: log_file(draw, path), lambda log: coldloop.Log(log).summary, 1),
    ]


def attacked(name, draws, takes, count):
    refused, slowest = 0, (0.0, 0)
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    for number in range(count):
        given = draws(random.Random(number))
        began = time.thread_time()
        try:
            takes(given)
        except (coldloop.ColdloopError, TypeError, ValueError) as error:
            refused += 1
            if not str(error):
                raise RuntimeError(f"{name}, input {number}: a refusal without a message") from error
        except BaseException as error:
            raise RuntimeError(f"{name}, input {number}") from error
        slowest = max(slowest, (time.thread_time() - began, number))
    grown = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before
    return f"| {name} | {count} | {100 * refused / count:.0f} % | {1e3 * slowest[0]:.1f} ms (no. {slowest[1]}) | < {STACK // 1024} kB | {grown} kB | |"


def main():
    count = int(next(iter(sys.argv[1:]), 2_000))
    told = []

    def run(folder):
        for name, draws, takes, dear in doors(folder):
            told.append(attacked(name, draws, takes, count // dear))
            print(told[-1], flush=True)

    threading.stack_size(STACK)
    with tempfile.TemporaryDirectory() as folder:
        thread = threading.Thread(target=run, args=(folder,))
        thread.start()
        thread.join()
        if len(told) < len(doors(folder)):
            sys.exit(1)


if __name__ == "__main__":
    main()
