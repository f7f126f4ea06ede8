"""States in all phases after CoolProp 8.0.0, for tests/states.rs.

    python tests/python/states.py > tests/data/states.csv

Only refrigerants whose equation CoolProp ships as printed, or rounded by less than 1e-9. Enthalpy and entropy count from
the IIR reference state.
"""

import CoolProp
import CoolProp.CoolProp as CP

NAMES = {"R-134a": "R134a", "R-1234yf": "R1234yf", "R-12": "R12", "R-22": "R22", "R-143a": "R143a",
         "R-600a": "IsoButane", "R-227ea": "R227EA", "R-1336mzz(E)": "R1336mzz(E)"}


def places(critical_t, critical_p):
    """(label, inputs, first, second)."""
    for t, p in ((0.75, 0.5), (0.8, 1.5), (0.9, 0.8), (0.97, 2.0)):
        yield "liquid", CoolProp.PT_INPUTS, p * critical_p, t * critical_t
    for p in (0.02, 0.1, 0.4, 0.8):
        for quality in (0.1, 0.5, 0.9):
            yield "two-phase", CoolProp.PQ_INPUTS, p * critical_p, quality
    for t, p in ((0.8, 0.02), (0.9, 0.1), (0.95, 0.4), (0.99, 0.7)):
        yield "vapour", CoolProp.PT_INPUTS, p * critical_p, t * critical_t
    for t, p in ((1.05, 0.3), (1.1, 1.5), (1.15, 5.0), (1.02, 4.0)):
        yield "supercritical", CoolProp.PT_INPUTS, p * critical_p, t * critical_t


def main():
    print(f"# CoolProp {CoolProp.__version__}, tests/python/states.py; enthalpy and entropy from the IIR reference state")
    print("refrigerant,phase,t_k,p_pa,rho_mol_m3,h_j_kg,s_j_kg_k,quality")
    for designation, name in NAMES.items():
        CP.set_reference_state(name, "IIR")
        state = CoolProp.AbstractState("HEOS", name)
        for phase, inputs, first, second in places(state.T_critical(), state.p_critical()):
            state.update(inputs, first, second)
            t, rho, quality = state.T(), state.rhomolar(), ""
            if t > 0.99 * state.Tmax():
                continue
            if phase == "two-phase":
                quality = repr(second)
            else:
                # Its figures at a temperature and density are those of the equation; its solver leaves 1e-9 or so.
                state.update(CoolProp.DmolarT_INPUTS, rho, t)
            print(designation, phase, *map(repr, (t, state.p(), rho, state.hmass(), state.smass())), quality, sep=",")


if __name__ == "__main__":
    main()
