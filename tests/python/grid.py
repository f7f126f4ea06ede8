"""States of every refrigerant after CoolProp 8.0.0, for tests/papers/accuracy.rs.

    python tests/python/grid.py OUT.csv

CoolProp is given the equations of tables/refrigerants, so that it differs from coldloop only in the implementation:
100 isotherms over the whole range of temperature, 100 densities on each, from thin gas through both phases to the
highest pressure. With the same states, its own equations as shipped are compared; the largest difference in pressure
and in cp goes into the lines that begin with `shipped`, and after them the number of states without a finite answer there.
"""

import json
import math
import pathlib
import sys
import tomllib

import CoolProp
import CoolProp.CoolProp as CP

TABLES = pathlib.Path(__file__).parent.parent.parent / "tables" / "refrigerants"
NAMES = {"R-744": "CO2", "R-290": "Propane", "R-600a": "IsoButane", "R-600": "n-Butane", "R-601a": "Isopentane", "R-601": "n-Pentane",
         "R-728": "Nitrogen", "R-732": "Oxygen", "R-740": "Argon"}
# CoolProp has another equation of these: its lines of saturation are not ours.
ANOTHER = {"R-601"}
PER_LINE = 100


def numbers(rows):
    return [[float(value) for value in row] for row in rows]


def ideal(table, reducing_t):
    power = numbers(table.get("power", []))
    power += [[-c / (k * (k + 1)), -k] for c, k in numbers(table.get("cp0_power", []))]
    power += [[-c * reducing_t**k / (k * (k + 1)), -k] for c, k in numbers(table.get("cp0_power_k", []))]
    einstein = numbers(table.get("planck_einstein", []))
    einstein += [[n, theta / reducing_t] for n, theta in numbers(table.get("planck_einstein_k", []))]
    lead = table.get("lead", [0, 0])
    log_tau = float(table["log_tau"]) if "log_tau" in table else float(table["cp0_constant"]) - 1
    terms = [{"type": "IdealGasHelmholtzLead", "a1": float(lead[0]), "a2": float(lead[1])},
             {"type": "IdealGasHelmholtzLogTau", "a": log_tau}]
    for kind, rows in (("IdealGasHelmholtzPower", power), ("IdealGasHelmholtzPlanckEinstein", einstein)):
        if rows:
            n, t = zip(*rows)
            terms.append({"type": kind, "n": n, "t": t})
    return terms


def residual(groups):
    kinds = {"power": "Power", "gaussian": "Gaussian", "double-exponential": "Lemmon2005", "non-analytic": "NonAnalytic"}
    terms = []
    for group in groups:
        columns = zip(*numbers(group["rows"]))
        terms.append({"type": "ResidualHelmholtz" + kinds[group["form"]], **dict(zip(group["columns"], columns))})
    return terms


def reduced_density(equation, molar_mass):
    for key, factor in (("kg_m3", 1 / molar_mass), ("mol_dm3", 1e3), ("mol_m3", 1.0)):
        if "reducing_density_" + key in equation:
            return float(equation["reducing_density_" + key]) * factor
    raise KeyError("reducing density")


def register(table):
    """CoolProp's file of the fluid with our equation in it, under a name of its own."""
    shipped = NAMES.get(table["designation"], table["designation"].replace("-", "", 1))
    fluid = json.loads(CP.get_fluid_param_string(shipped, "JSON"))
    fluid = fluid[0] if isinstance(fluid, list) else fluid
    name = "printed " + table["designation"]
    fluid["INFO"].update(NAME=name, CAS=name, ALIASES=[], REFPROP_NAME="N/A")
    equation, own = table["equation"], fluid["EOS"][0]
    reducing_t = float(equation["reducing_temperature_k"])
    own["molar_mass"] = float(table["molar_mass_g_mol"]) / 1e3
    own["gas_constant"] = float(equation["gas_constant_j_mol_k"])
    own["STATES"]["reducing"]["T"] = reducing_t
    own["STATES"]["reducing"]["rhomolar"] = reduced_density(equation, own["molar_mass"])
    own["alpha0"] = ideal(equation["ideal"], reducing_t)
    own["alphar"] = residual(equation["residual"])
    if table["designation"] in ANOTHER:
        own.pop("SUPERANCILLARY")
    CP.add_fluids_as_JSON("HEOS", json.dumps([fluid]))
    return name, shipped


def spread(low, high, count):
    return [low * (high / low) ** (k / (count - 1)) for k in range(count)]


def states(table, shipped):
    """(T, rho, phase) all over the range; the shipped equation is near enough to say where the phases end."""
    state = CoolProp.AbstractState("HEOS", shipped)
    limits = table["equation"]["limits"]
    low, high = float(limits["t_min_k"]), float(limits["t_max_k"])
    critical_t, critical_rho = state.T_critical(), state.rhomolar_critical()
    p_max = float(limits["p_max_mpa"]) * 1e6
    for k in range(PER_LINE):
        t = low + (high - low) * (k + 0.5) / PER_LINE
        state.unspecify_phase()
        if t < critical_t:
            state.update(CoolProp.QT_INPUTS, 0.0, t)
            liquid = state.saturated_liquid_keyed_output(CoolProp.iDmolar)
            vapour = state.saturated_vapor_keyed_output(CoolProp.iDmolar)
            densest = top(state, t, p_max, CoolProp.iphase_liquid, liquid * 1.15)
            regions = [(vapour * 1e-5, vapour * 0.999, CoolProp.iphase_gas), (liquid * 1.001, max(densest, liquid * 1.01), CoolProp.iphase_liquid)]
        else:
            densest = top(state, t, p_max, CoolProp.iphase_supercritical_liquid, critical_rho * 2)
            regions = [(critical_rho * 1e-6, densest, CoolProp.iphase_supercritical)]
        for first, last, phase in regions:
            for rho in spread(first, last, PER_LINE // len(regions)):
                yield t, rho, phase


def top(state, t, p_max, phase, otherwise):
    state.specify_phase(phase)
    try:
        state.update(CoolProp.PT_INPUTS, p_max, t)
        return state.rhomolar()
    except ValueError:
        return otherwise
    finally:
        state.unspecify_phase()


def figures(state, t, rho, phase):
    state.specify_phase(phase)
    state.update(CoolProp.DmolarT_INPUTS, rho, t)
    return state.p(), state.hmass(), state.smass(), state.cpmass(), state.speed_sound()


def main(path):
    with open(path, "w") as out:
        for file in sorted(TABLES.glob("*.toml")):
            table = tomllib.loads(file.read_text())
            name, shipped = register(table)
            ours, theirs = (CoolProp.AbstractState("HEOS", fluid) for fluid in (name, shipped))
            worst_p = worst_cp = 0.0
            unanswered = 0
            for t, rho, phase in states(table, name if table["designation"] in ANOTHER else shipped):
                row = figures(ours, t, rho, phase)
                if not all(map(math.isfinite, row)):
                    unanswered += 1
                    continue
                other = figures(theirs, t, rho, phase)
                worst_p = max(worst_p, abs(other[0] / row[0] - 1)) if phase != CoolProp.iphase_liquid else worst_p
                worst_cp = max(worst_cp, abs(other[3] / row[3] - 1)) if phase == CoolProp.iphase_gas else worst_cp
                out.write(f"{table['designation']},{t!r},{rho!r}," + ",".join(map(repr, row)) + "\n")
            out.write(f"shipped,{table['designation']},{worst_p!r},{worst_cp!r},{unanswered},0,0,0\n")


if __name__ == "__main__":
    main(sys.argv[1])
