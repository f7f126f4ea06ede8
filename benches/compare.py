"""The hot paths beside CoolProp 8.0.0 in one run; writes benches/README.md and the speed table of README.md.

    cargo bench --bench speed   builds what this runs; then, in the environment of tests/python/requirements.txt:
    python benches/compare.py [ROUNDS [blends]]

Both sides run on one thread over the same kind of inputs, in turn for ROUNDS rounds (3 without it), and each figure is the
least of all its passes: other work on the machine affects both sides alike, and the least pass the least. The peer is called through its
low-level interface, its fastest from Python; a call that does nothing costs about 25 ns, which its figures include. Its fastest way
over arrays are its superancillary equations. Of a blend it has no answer at some of the inputs; its time
is that of those it answers. With `blends` only their table is measured and written.
"""

import datetime
import functools
import json
import platform
import subprocess
import sys
import timeit
import tomllib
from pathlib import Path

import CoolProp
import numpy as np
from CoolProp import AbstractState, HmassP_INPUTS, HmassSmass_INPUTS, PQ_INPUTS, PSmass_INPUTS, PT_INPUTS, QT_INPUTS
from CoolProp import CoolProp as functions

ROOT = Path(__file__).parents[1]
NAMES = {"R-744": "CO2", "R-290": "Propane", "R-600a": "IsoButane", "R-600": "n-Butane", "R-601a": "Isopentane"}
SHOWN = ("R-134a", "R-1234yf", "R-744")
# Measured without a peer.
OWN = {
    "diagnosis": "one diagnosis, the core alone: from values to odds, reasons and next checks",
    "diagnosis with instruments in doubt": "the same, instruments in doubt",
    "sound model": "sound model of a weather",
    "its bands": "its bands, all readings",
}
BLEND_PATHS = ("bubble p(T)", "bubble T(p)", "dew p(T)", "dew T(p)")
COUNT = 200
# The peer's slow calls are timed over few inputs, so that some passes are free of other work on the machine.
FEW = 10
ARRAY = 1_000


def ours(*arguments):
    out = subprocess.run(
        ["cargo", "bench", "-q", "--bench", "speed", "--", *arguments],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    return {tuple(line.split("|")[:2]): float(line.split("|")[2]) for line in out.splitlines() if line.count("|") == 2}


def states(state, points):
    """(p, h, s) of each (T, p)."""
    for t, p in points:
        state.update(PT_INPUTS, p, t)
        yield p, state.hmass(), state.smass()


def peer(name):
    state = AbstractState("HEOS", name)
    temperatures = [250.0 + 50.0 * ((k * 0.6180339887498949) % 1.0) for k in range(COUNT)]
    pressures = []
    for t in temperatures:
        state.update(QT_INPUTS, 1.0, t)
        pressures.append(state.p())
    points = list(zip(temperatures, pressures, strict=True))
    superheated = [(t + 15.0, 0.9 * p) for t, p in points]
    subcooled = [(t - 8.0, 1.1 * p) for t, p in points]
    wet = []
    for k, t in enumerate(temperatures):
        state.update(QT_INPUTS, (7 * k * 0.6180339887498949) % 1.0, t)
        wet.append((state.p(), state.hmass(), state.smass()))
    warm, cold = list(states(state, superheated)), list(states(state, subcooled))

    def updates(pair, inputs, *answers):
        def call(few):
            for first, second in few:
                state.update(pair, first, second)
                for answer in answers:
                    answer()

        return [functools.partial(call, inputs[k : k + FEW]) for k in range(0, COUNT, FEW)]

    calls = {
        "psat(T)": (updates(QT_INPUTS, [(1.0, t) for t in temperatures], state.p), COUNT),
        "Tsat(p)": (updates(PQ_INPUTS, [(p, 1.0) for p in pressures], state.T), COUNT),
        "saturated liquid: rho, h, s": (
            updates(QT_INPUTS, [(0.0, t) for t in temperatures], state.rhomass, state.hmass, state.smass),
            COUNT,
        ),
        "h(T, p) superheated": (updates(PT_INPUTS, [(p, t) for t, p in superheated], state.hmass), COUNT),
        "h(T, p) subcooled": (updates(PT_INPUTS, [(p, t) for t, p in subcooled], state.hmass), COUNT),
    }
    for kind, found in (("superheated", warm), ("subcooled", cold), ("two-phase", wet)):
        calls[f"T(p, h) {kind}"] = (updates(HmassP_INPUTS, [(h, p) for p, h, _ in found], state.T), COUNT)
        calls[f"T(p, s) {kind}"] = (updates(PSmass_INPUTS, [(p, s) for p, _, s in found], state.T), COUNT)
    for kind, found in (("superheated", warm), ("two-phase", wet)):
        calls[f"T(h, s) {kind}"] = (updates(HmassSmass_INPUTS, [(h, s) for _, h, s in found], state.T), COUNT)
    curves = json.loads(functions.get_fluid_param_string(name, "JSON"))[0]["EOS"][0].get("SUPERANCILLARY")
    if curves:
        curve = functions.SuperAncillary(json.dumps(curves))
        many = np.resize(np.array(temperatures), ARRAY)
        out = np.empty(ARRAY)
        calls["psat(T), array"] = ([lambda: curve.eval_sat_many(many, "P", 1, out)], ARRAY)
    times = {}
    for what, (parts, count) in calls.items():
        try:
            times[what] = sum(min(timeit.repeat(part, number=1, repeat=10)) for part in parts) / count * 1e9
        except ValueError as error:
            print(f"note: {name}, {what}: {error}")
    return times


def blend_of_peer(designation):
    """{what: ns}, and {what: how many of COUNT inputs have no answer}."""
    table = tomllib.loads((ROOT / f"tables/blends/{designation}.toml").read_text())
    fluids, percents = zip(*table["mass_percent"], strict=True)
    state = AbstractState("HEOS", "&".join(NAMES.get(fluid, fluid.replace("-", "", 1)) for fluid in fluids))
    state.set_mass_fractions([float(percent) / 100.0 for percent in percents])
    temperatures = [250.0 + 85.0 * ((k * 0.6180339887498949) % 1.0) for k in range(COUNT)]
    times, missing = {}, {}

    def answered(pair, inputs):
        found = {}
        for given in inputs:
            try:
                state.update(pair, *given)
            except ValueError:
                continue
            found[given] = state.p()
        return found

    def timed(pair, given, answer):
        def call():
            state.update(pair, *given)
            answer()

        return min(timeit.repeat(call, number=1, repeat=10))

    for side, quality in (("bubble", 0.0), ("dew", 1.0)):
        by_t = answered(QT_INPUTS, [(quality, t) for t in temperatures])
        # Where the peer has no pressure, one interpolated from its others is used.
        known = sorted((t, np.log(p)) for (_, t), p in by_t.items())
        pressures = np.exp(np.interp(temperatures, *zip(*known, strict=True))).tolist()
        by_p = answered(PQ_INPUTS, [(p, quality) for p in pressures])
        for what, pair, found, answer in (("p(T)", QT_INPUTS, by_t, state.p), ("T(p)", PQ_INPUTS, by_p, state.T)):
            missing[f"{side} {what}"] = COUNT - len(found)
            times[f"{side} {what}"] = sum(timed(pair, given, answer) for given in found) / len(found) * 1e9
    return times, missing


def blend_row(what, blend, mine, theirs, missing):
    return f"| {what} | {blend} | {mine:.0f} | {theirs:.0f} | {theirs / mine:.0f} | {missing} |\n"


def write_blends(mine, theirs, missing):
    rows = "".join(blend_row(*key, mine[key], theirs[key], missing[key]) for key in mine if key[0] in BLEND_PATHS)
    head = "| what | blend | coldloop, ns | CoolProp, ns | ratio | no answer there |\n|---|---|---|---|---|---|\n"
    where = f"{machine()}; {COUNT} points from 250 to 335 K\n\n"
    replaced(ROOT / "benches/README.md", where + head + rows, "blends")


def machine():
    model = platform.processor() or platform.machine()
    for line in Path("/proc/cpuinfo").read_text().splitlines():
        if line.startswith("model name"):
            model = line.split(":", 1)[1].strip()
            break
    return f"{model}, one thread, {datetime.date.today().isoformat()}, CoolProp {CoolProp.__version__}"


def replaced(path, text, name="speed"):
    page = path.read_text()
    begin, end = f"<!-- {name}:begin -->\n", f"<!-- {name}:end -->"
    before, rest = page.split(begin)
    path.write_text(before + begin + text + end + rest.split(end)[1])


def least(tables):
    keys = dict.fromkeys(key for table in tables for key in table)
    return {key: min(table[key] for table in tables if key in table) for key in keys}


# The rows that README.md shows.
IN_README = tuple(
    f"| {what}"
    for what in (
        "psat(T) |",
        "psat(T), array",
        "Tsat(p) |",
        "h(T, p) superheated",
        "T(p, h) superheated",
        "T(h, s) superheated",
        "one diagnosis",
        "sound model",
    )
)


def row(what, refrigerant, mine, theirs):
    beside = f"{theirs:.0f} | {theirs / mine:.0f}" if theirs else "- | -"
    return f"| {what} | {refrigerant} | {mine:.0f} | {beside} |\n"


def main():
    rounds = int(next(iter(sys.argv[1:]), 3))
    only = sys.argv[2:]
    mine, theirs, blends, missing = [], [], [], {}
    for _ in range(rounds):
        mine.append(ours(*only))
        order = [key for key in mine[0] if key[0] not in BLEND_PATHS]
        round_of_blends = {}
        for name in dict.fromkeys(name for what, name in mine[0] if what in BLEND_PATHS):
            times, unanswered = blend_of_peer(name)
            round_of_blends |= {(what, name): time for what, time in times.items()}
            missing |= {(what, name): count for what, count in unanswered.items()}
        blends.append(round_of_blends)
        refrigerants = list(dict.fromkeys(refrigerant for _, refrigerant in order))
        round_of_peer = {}
        for refrigerant in refrigerants:
            for what, time in peer(NAMES.get(refrigerant, refrigerant.replace("-", "", 1))).items():
                round_of_peer[what, refrigerant] = time
        theirs.append(round_of_peer)
    write_blends(least(mine), least(blends), missing)
    if only:
        return
    mine, theirs = least(mine), least(theirs)
    head = f"{machine()}\n\n"
    columns = "| what | refrigerant | coldloop, ns | CoolProp, ns | ratio |\n|---|---|---|---|---|\n"
    shown = {
        refrigerant: "".join(
            row(what, name, mine[what, name], theirs.get((what, name)))
            for what, name in order
            if name == refrigerant and what not in OWN
        )
        for refrigerant in SHOWN
    }
    own = "".join(row(label, "R-134a", mine[what, "R-134a"], None) for what, label in OWN.items())
    replaced(ROOT / "benches/README.md", head + columns + "".join(shown.values()) + own)
    short = [line for line in (shown["R-134a"] + own).splitlines(keepends=True) if line.startswith(IN_README)]
    replaced(ROOT / "README.md", head + columns + "".join(short))
    paths = {
        "psat(T)": "psat",
        "psat(T), array": "psat array",
        "Tsat(p)": "Tsat",
        "h(T, p) superheated": "h(T, p) gas",
        "h(T, p) subcooled": "h(T, p) liquid",
        "T(p, h) superheated": "T(p, h)",
        "T(p, s) superheated": "T(p, s)",
        "T(h, s) superheated": "T(h, s)",
    }
    text = "| refrigerant | " + " | ".join(paths.values()) + " |\n|---" * 1 + "|---" * len(paths) + "|\n"
    for refrigerant in refrigerants:
        cells = []
        for what in paths:
            time, other = mine[what, refrigerant], theirs.get((what, refrigerant))
            cells.append(f"{time:.0f} ({other / time:.0f})" if other else f"{time:.0f}")
        text += f"| {refrigerant} | " + " | ".join(cells) + " |\n"
    replaced(ROOT / "benches/README.md", text, "refrigerants")


if __name__ == "__main__":
    main()
