"""Writes tests/data/mixture_points.csv: bubble and dew points of CoolProp 8.0.0 with the same pair parameters.

One pair differs there from its publication (see tables/pairs/bell-2022.toml) and is set right first. Compositions in
mole fractions, so that no molar mass enters. Points that the program does not find are left out, and counted on the
console.
"""

import csv
import pathlib

import CoolProp.CoolProp as cp
from CoolProp import AbstractState

NAMES = {"R-32": "R32", "R-125": "R125", "R-134a": "R134a", "R-143a": "R143a", "R-1234yf": "R1234yf",
         "R-1234ze(E)": "R1234ze(E)", "R-744": "CarbonDioxide", "R-22": "R22", "R-290": "n-Propane",
         "R-600": "n-Butane", "R-600a": "IsoButane", "R-12": "R12", "R-227ea": "R227EA", "R-728": "Nitrogen",
         "R-13I1": "R13I1", "R-1132(E)": "R1132(E)", "R-115": "R115"}
MIXTURES = [
    {"R-125": 0.357817, "R-143a": 0.603919, "R-134a": 0.038264},
    {"R-32": 0.381109, "R-125": 0.179559, "R-134a": 0.439332},
    {"R-32": 0.697615, "R-125": 0.302385},
    {"R-1234yf": 0.532426, "R-134a": 0.467574},
    {"R-134a": 0.447322, "R-1234ze(E)": 0.552678},
    {"R-32": 0.431218, "R-125": 0.186914, "R-1234yf": 0.151319, "R-134a": 0.177587, "R-1234ze(E)": 0.052962},
    {"R-744": 0.059613, "R-32": 0.361416, "R-1234yf": 0.578971},
    {"R-134a": 0.9, "R-22": 0.1},
    {"R-134a": 0.8, "R-290": 0.2},
    {"R-134a": 0.5, "R-600a": 0.5},
    {"R-12": 0.3, "R-134a": 0.7},
    {"R-1132(E)": 0.347244, "R-1234yf": 0.652756},
    {"R-22": 0.629994, "R-115": 0.370006},
    {"R-290": 0.4, "R-600": 0.3, "R-600a": 0.3},
    {"R-32": 0.759997, "R-125": 0.077314, "R-13I1": 0.162689},
]
HERE = pathlib.Path(__file__).parent


def main():
    yf, ze = (cp.get_fluid_param_string(name, "CAS") for name in ("R1234yf", "R1234ze(E)"))
    cp.set_mixture_binary_pair_data(ze, yf, "gammaT", 0.993309)
    missing = 0
    with open(HERE.parent / "data" / "mixture_points.csv", "w", newline="", encoding="utf-8") as file:
        file.write("# Bubble (quality 0) and dew (quality 1) points of CoolProp 8.0.0. "
                   "Written by tests/python/mixture_grid.py.\n")
        out = csv.writer(file, lineterminator="\n")
        out.writerow(["fluids", "mole_fractions", "quality", "t_k", "p_pa", "liquid_rho_mol_m3", "vapour_rho_mol_m3"])
        for mixture in MIXTURES:
            state = AbstractState("HEOS", "&".join(NAMES[fluid] for fluid in mixture))
            state.set_mole_fractions(list(mixture.values()))
            for quality in (0, 1):
                for t_k in (230.0, 260.0, 290.0, 315.0):
                    try:
                        state.update(cp.QT_INPUTS, quality, t_k)
                    except ValueError:
                        missing += 1
                        continue
                    out.writerow([" ".join(mixture), " ".join(map(repr, mixture.values())), quality, t_k,
                                  repr(state.p()), repr(state.saturated_liquid_keyed_output(cp.iDmolar)),
                                  repr(state.saturated_vapor_keyed_output(cp.iDmolar))])
    print(missing, "points not found")


if __name__ == "__main__":
    main()
