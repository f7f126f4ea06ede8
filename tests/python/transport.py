"""Viscosity, thermal conductivity and surface tension after CoolProp 8.0.0, for tests/transport.rs.

    python tests/python/transport.py > tests/data/transport.csv

Of some fluids CoolProp holds two models of the viscosity and uses the first. Where the second is the published correlation that
stands in tables/transport, the fluid is entered anew with that one (R-152a, R-22, R-32); where neither is (R-1234yf,
R-1234ze(E)), the rows show how far two models of one fluid lie apart.
"""

import json

import CoolProp
import CoolProp.CoolProp as CP

NAMES = {"R-134a": "R134a", "R-1234yf": "R1234yf", "R-744": "CO2", "R-152a": "R152A", "R-32": "R32", "R-290": "n-Propane",
         "R-600a": "IsoButane", "R-125": "R125", "R-1234ze(E)": "R1234ze(E)", "R-22": "R22", "R-12": "R12"}
SECOND = ("R-152a", "R-22", "R-32")


def with_second_model(name):
    """The name of the same fluid whose viscosity follows the second model that CoolProp holds."""
    fluid = json.loads(CP.get_fluid_param_string(name, "JSON"))[0]
    fluid["TRANSPORT"]["viscosity"] = fluid["TRANSPORT"]["viscosity"][1]
    new = f"{name}-second"
    fluid["INFO"].update(NAME=new, CAS=f"{fluid['INFO']['CAS']}-2", ALIASES=[])
    CP.add_fluids_as_JSON("HEOS", json.dumps([fluid]))
    return new


def places(critical_t, critical_p, lowest_t):
    """(inputs, first, second)."""
    for t in (0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.94, 0.97):
        if t * critical_t > lowest_t:
            yield CoolProp.QT_INPUTS, 0.0, t * critical_t
            yield CoolProp.QT_INPUTS, 1.0, t * critical_t
    for t in (0.74, 0.82, 0.92):
        for p in (1.2, 3.0):
            yield CoolProp.PT_INPUTS, p * critical_p, t * critical_t
    for t, p in ((0.8, 0.01), (0.9, 0.1), (0.95, 0.4), (1.0, 0.01), (1.0, 0.5)):
        yield CoolProp.PT_INPUTS, p * critical_p, t * critical_t
    for t in (1.03, 1.07, 1.12):
        for p in (0.02, 0.5, 1.0, 1.5, 3.0):
            yield CoolProp.PT_INPUTS, p * critical_p, t * critical_t


def main():
    print(f"# CoolProp {CoolProp.__version__}, tests/python/transport.py")
    print("refrigerant,property,t_k,rho_mol_m3,value")
    failed = {}
    for designation, name in NAMES.items():
        if designation in SECOND:
            name = with_second_model(name)
        state = CoolProp.AbstractState("HEOS", name)
        critical_t = state.T_critical()
        for inputs, first, second in places(critical_t, state.p_critical(), state.Tmin() + 1.0):
            state.update(inputs, first, second)
            where = f"{state.T()!r},{state.rhomolar()!r}"
            for label, figure in (("viscosity", state.viscosity), ("conductivity", state.conductivity)):
                try:
                    print(f"{designation},{label},{where},{figure():.9g}")
                except ValueError:  # its search for the conformal state failed
                    failed[designation] = failed.get(designation, 0) + 1
        for t in (0.6, 0.7, 0.8, 0.9, 0.97, 0.995):
            if t * critical_t > state.Tmin() + 1.0:
                state.update(CoolProp.QT_INPUTS, 0.0, t * critical_t)
                print(f"{designation},surface tension,{state.T()!r},,{state.surface_tension():.9g}")
    for designation, count in failed.items():
        print(f"# {designation}: {count} figures were not found")


main()
