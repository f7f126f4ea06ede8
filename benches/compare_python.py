"""The Python package beside CoolProp in one run: arrays, tables of vehicles, import and wheel.

Run it in the environment of tests/python/requirements.txt with the package installed, from anywhere:
`target/venv/bin/python benches/compare_python.py`. It writes its table into benches/README.md. Times are those of the
processor, so that what else runs on the machine disturbs them less; each is the least of several passes, ours and the
peer's by turns.
"""

import json
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import coldloop
import numpy as np
import pandas as pd
from compare import machine, replaced
from CoolProp import CoolProp as peer

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT / "tests/python"))

from fleet import fleet  # noqa: E402, lies with the tests

COUNT = 1_000_000
T_K = np.linspace(230.0, 350.0, COUNT)[np.random.default_rng(1).permutation(COUNT)]


def least(calls, passes=7):
    """The least processor time of each call in seconds; the calls take turns."""
    found = dict.fromkeys(calls, float("inf"))
    for _ in range(passes):
        for name, call in calls.items():
            began = time.process_time()
            call()
            found[name] = min(found[name], time.process_time() - began)
    return found


def dew_pressure():
    """ns for each of a million dew pressures: ours, the peer's fastest array path, and its ordinary call of a tenth.

    `AbstractState.fast_evaluate` of every backend refuses the saturation line, so that the curves of the peer, which it
    gives away as `SuperAncillary`, are its fastest.
    """
    r134a = coldloop.Refrigerant("R-134a")
    curves = json.loads(peer.get_fluid_param_string("R134a", "JSON"))[0]["EOS"][0]["SUPERANCILLARY"]
    curve = peer.SuperAncillary(json.dumps(curves))
    out, few = np.empty(COUNT), T_K[: COUNT // 10]
    arrays = {
        "ours": lambda: r134a.dew_pressure(T_K),
        "theirs": lambda: curve.eval_sat_many(T_K, "P", 1, out),
    }
    found = least(arrays, passes=15)
    assert np.allclose(out, r134a.dew_pressure(T_K), rtol=1e-8)
    ordinary = least({"PropsSI": lambda: peer.PropsSI("P", "T", few, "Q", 1, "R134a")}, passes=5)["PropsSI"]
    return found["ours"] / COUNT * 1e9, found["theirs"] / COUNT * 1e9, ordinary / len(few) * 1e9


def transport(count=2_000):
    """ns for viscosity and conductivity of the subcooled liquid of R-134a by temperature and density: ours over an array, and the
    peer's low-level interface, its fastest for these. Both follow the same published correlations.
    """
    r134a = coldloop.Refrigerant("R-134a")
    t_k = T_K[T_K < 340.0][:count]
    rho = r134a.state(temperature_k=t_k, pressure_pa_abs=3e6).density_kg_m3
    state = peer.AbstractState("HEOS", "R134a")
    pairs = list(zip(rho.tolist(), t_k.tolist(), strict=True))

    def ours():
        place = {"temperature_k": t_k, "density_kg_m3": rho}
        return r134a.viscosity(**place), r134a.conductivity(**place)

    def theirs():
        for pair in pairs:
            state.update(peer.DmassT_INPUTS, *pair)
            yield state.viscosity(), state.conductivity()

    assert np.allclose(ours(), np.array(list(theirs())).T, rtol=3e-5)
    found = least({"ours": ours, "theirs": lambda: list(theirs())}, passes=25)
    return found["ours"] / count * 1e9, found["theirs"] / count * 1e9


def rows_per_second(rows=20_000):
    """Rows that one core judges in a second, from a pandas table."""
    table = pd.DataFrame(fleet(rows)).drop(columns="vehicle")
    return rows / least({"table": lambda: coldloop.diagnose_table(table, threads=1)}, passes=5)["table"]


def import_ms():
    """The time of `import coldloop` when NumPy is already imported, ms."""
    program = "import numpy, time; t = time.process_time(); import coldloop; print(time.process_time() - t)"
    run = [sys.executable, "-c", program]
    return min(float(subprocess.run(run, capture_output=True, check=True).stdout) for _ in range(15)) * 1e3


def wheel_mb():
    """The size of the wheel, MB."""
    with tempfile.TemporaryDirectory() as folder:
        build = [
            "-m",
            "pip",
            "wheel",
            "-q",
            "--no-deps",
            "--no-build-isolation",
            "-w",
            folder,
            str(ROOT / "bindings/python"),
        ]
        subprocess.run([sys.executable, *build], check=True)
        return next(Path(folder).glob("*.whl")).stat().st_size / 1e6


def main():
    ours, fastest, ordinary = dew_pressure()
    both, low_level = transport()
    rows = [
        (
            "dew pressure over 1e6, beside the peer's fastest array path",
            f"{ours:.1f} ns; SuperAncillary.eval_sat_many {fastest:.1f} ns",
            f"{fastest / ours:.1f}",
            ">= 4",
        ),
        (
            "the same beside the peer's ordinary vector call",
            f"{ours:.1f} ns; PropsSI {ordinary:.0f} ns",
            f"{ordinary / ours:.0f}",
            ">= 50",
        ),
        (
            "viscosity and conductivity of R-134a, liquid by temperature and density",
            f"{both:.0f} ns; AbstractState {low_level:.0f} ns",
            f"{low_level / both:.1f}",
            "",
        ),
        ("`diagnose_table`, rows a second and core", f"{rows_per_second():,.0f}", "", ">= 50,000"),
        ("import beyond NumPy's own", f"{import_ms():.0f} ms", "", "<= 50 ms"),
        ("wheel", f"{wheel_mb():.1f} MB", "", "<= 3 MB"),
    ]
    head = f"{machine()}\n\n| what | found | ratio | target |\n|---|---|---|---|\n"
    replaced(ROOT / "benches/README.md", head + "".join("| " + " | ".join(row) + " |\n" for row in rows), "python")


if __name__ == "__main__":
    main()
