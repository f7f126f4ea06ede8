"""The hot paths beside CoolProp 8.0.0 in one run; writes benches/README.md and the speed table of README.md.

    cargo bench --bench speed   builds what this runs; then, in the environment of tests/python/requirements.txt:
    python benches/compare.py

Both sides run on one thread over the same kind of inputs; each figure is the least of several passes. The peer is called
through its low-level interface, its fastest from Python; a call that does nothing costs about 25 ns of its figures.
"""

import datetime
import platform
import subprocess
import timeit
from pathlib import Path

import CoolProp
from CoolProp import AbstractState, HmassP_INPUTS, PQ_INPUTS, PSmass_INPUTS, PT_INPUTS, QT_INPUTS

ROOT = Path(__file__).parents[1]
NAMES = {"R-134a": "R134a", "R-1234yf": "R1234yf", "R-744": "CO2"}
COUNT = 200


def ours():
    out = subprocess.run(
        ["cargo", "bench", "-q", "--bench", "speed"], cwd=ROOT, capture_output=True, text=True, check=True
    ).stdout
    return {tuple(line.split("|")[:2]): float(line.split("|")[2]) for line in out.splitlines() if line.count("|") == 2}


def peer(name):
    state = AbstractState("HEOS", name)
    temperatures = [250.0 + 50.0 * ((k * 0.6180339887498949) % 1.0) for k in range(COUNT)]
    pressures = []
    for t in temperatures:
        state.update(QT_INPUTS, 1.0, t)
        pressures.append(state.p())
    points = list(zip(temperatures, pressures, strict=True))

    def psat():
        for t in temperatures:
            state.update(QT_INPUTS, 1.0, t)
            state.p()

    def tsat():
        for p in pressures:
            state.update(PQ_INPUTS, p, 1.0)
            state.T()

    def liquid():
        for t in temperatures:
            state.update(QT_INPUTS, 0.0, t)
            state.rhomass(), state.hmass(), state.smass()

    def superheated():
        for t, p in points:
            state.update(PT_INPUTS, 0.9 * p, t + 15.0)
            state.hmass()

    def subcooled():
        for t, p in points:
            state.update(PT_INPUTS, 1.1 * p, t - 8.0)
            state.hmass()

    energies = []
    for t, p in points:
        state.update(PT_INPUTS, 0.9 * p, t + 15.0)
        energies.append((0.9 * p, state.hmass(), state.smass()))

    def from_enthalpy():
        for p, h, _ in energies:
            state.update(HmassP_INPUTS, h, p)
            state.T()

    def from_entropy():
        for p, _, s in energies:
            state.update(PSmass_INPUTS, p, s)
            state.T()

    calls = {
        "psat(T)": psat,
        "Tsat(p)": tsat,
        "saturated liquid: rho, h, s": liquid,
        "h(T, p) superheated": superheated,
        "h(T, p) subcooled": subcooled,
        "T(p, h) superheated": from_enthalpy,
        "T(p, s) superheated": from_entropy,
    }
    return {what: min(timeit.repeat(call, number=1, repeat=15)) / COUNT * 1e9 for what, call in calls.items()}


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


def main():
    found = ours()
    header = f"{machine()}\n\n| what | refrigerant | coldloop, ns | CoolProp, ns | ratio |\n|---|---|---|---|---|\n"
    rows = []
    for refrigerant, name in NAMES.items():
        for what, theirs in peer(name).items():
            mine = found[what, refrigerant]
            rows.append(f"| {what} | {refrigerant} | {mine:.0f} | {theirs:.0f} | {theirs / mine:.0f} |\n")
    mine = found["diagnosis", "R-134a"]
    rows.append(f"| one diagnosis, all of it | R-134a | {mine:.0f} | - | - |\n")
    mine = found["bands of a fleet", "R-134a"]
    rows.append(f"| bands of a sound vehicle in a weather | R-134a | {mine:.0f} | - | - |\n")
    replaced(ROOT / "benches/README.md", header + "".join(rows))
    short = [row for row in rows if "R-134a" in row]
    replaced(ROOT / "README.md", header + "".join(short))


if __name__ == "__main__":
    main()
