"""Vapour-liquid equilibria of the equations in 50 digits, for tests/saturation.rs.

    python tests/python/equilibria.py tests/data/equilibria.csv

An independent implementation with mpmath: it shares with the library only the digits of tables/refrigerants and the critical
temperatures in the head of the generated curves. The printed constants are taken as doubles, as every
program has them: with their decimals the pressures of R-22, in which large terms cancel, would be 7e-14 off, those of
the others up to 7e-15, and all densities next to the critical point up to 3e-17 / (1 - T / Tc) of themselves. CoolProp 8.0.0 gives the densities from which the
search begins; where it fails near the critical point, the search begins from those of the last equilibrium, moved closer together.
"""

import pathlib
import re
import sys
import tomllib

import CoolProp
from mpmath import mp, mpf

ROOT = pathlib.Path(__file__).parents[2]
NAMES = {"R-744": "CO2", "R-290": "Propane", "R-600a": "IsoButane", "R-600": "n-Butane", "R-601a": "Isopentane",
         "R-601": "n-Pentane"}
# 1 - T / Tc; each temperature is rounded to a double, which is then exact.
BELOW = (0.5, 0.4, 0.3, 0.2, 0.1, 0.05, 0.02, 0.01, 5e-3, 2e-3, 1e-3, 5e-4, 2e-4, 1e-4, 5e-5, 2e-5, 1e-5, 5e-6, 2e-6, 1e-6, 5e-7, 2e-7, 1e-7,
         5e-8, 2e-8, 1e-8, 1e-9, 1e-10, 1e-11, 1e-12)
mp.dps = 50


class Equation:
    """p / (rho R T) and the residual Helmholtz energy of a fluid."""

    def __init__(self, table):
        equation = table["equation"]
        molar_mass = float(table["molar_mass_g_mol"]) / 1000
        self.gas = mpf(float(equation["gas_constant_j_mol_k"]))
        self.t = mpf(float(equation["reducing_temperature_k"]))
        for unit, in_mol_m3 in (("kg_m3", lambda x: x / molar_mass), ("mol_dm3", lambda x: x * 1000), ("mol_m3", lambda x: x)):
            if "reducing_density_" + unit in equation:
                self.rho = mpf(in_mol_m3(float(equation["reducing_density_" + unit])))
        self.groups = [
            (group["form"], [{key: mpf(float(x)) for key, x in zip(group["columns"], row, strict=True)} for row in group["rows"]])
            for group in equation["residual"]
        ]

    def residual(self, t, rho):
        """alpha and delta alpha_delta."""
        tau, delta = self.t / t, rho / self.rho
        a = d = mpf(0)
        for form, rows in self.groups:
            for row in rows:
                value, slope = getattr(self, form.replace("-", "_"))(row, tau, delta)
                a += value
                d += slope
        return a, d

    @staticmethod
    def power(row, tau, delta):
        damping = delta ** row["l"] if row["l"] else mpf(0)
        value = row["n"] * tau ** row["t"] * delta ** row["d"] * mp.exp(-damping)
        return value, value * (row["d"] - row["l"] * damping)

    @staticmethod
    def double_exponential(row, tau, delta):
        value, slope = Equation.power(row, tau, delta)
        factor = mp.exp(-(tau ** row["m"])) if row["m"] else mpf(1)
        return value * factor, slope * factor

    @staticmethod
    def gaussian(row, tau, delta):
        off = delta - row["epsilon"]
        bell = mp.exp(-row["eta"] * off**2 - row["beta"] * (tau - row["gamma"]) ** 2)
        value = row["n"] * tau ** row["t"] * delta ** row["d"] * bell
        return value, value * (row["d"] - 2 * row["eta"] * off * delta)

    @staticmethod
    def non_analytic(row, tau, delta):
        square = (delta - 1) ** 2
        theta = 1 - tau + row["A"] * square ** (1 / (2 * row["beta"]))
        big = theta**2 + row["B"] * square ** row["a"]
        psi = mp.exp(-row["C"] * square - row["D"] * (tau - 1) ** 2)
        # square^k by delta is 2 k square^k / (delta - 1)
        over = 2 / (delta - 1)
        theta_d = row["A"] / (2 * row["beta"]) * square ** (1 / (2 * row["beta"])) * over
        big_d = 2 * theta * theta_d + row["B"] * row["a"] * square ** row["a"] * over
        value = row["n"] * big ** row["b"] * delta * psi
        return value, value * (1 + delta * (row["b"] * big_d / big - 2 * row["C"] * (delta - 1)))

    def equilibrium(self, t, liquid, vapour):
        """Pressure and both densities, from guesses of the densities."""

        def both(x, y):
            (a1, d1), (a2, d2) = self.residual(t, x), self.residual(t, y)
            return [(x * (1 + d1) - y * (1 + d2)) / self.rho, mp.log(x / y) + a1 - a2 + d1 - d2]

        x, y = mp.findroot(both, (liquid, vapour), tol=mpf(10) ** -70, maxsteps=60)
        if not x - y > mpf(10) ** -9 * x:
            raise ValueError(f"one density at {t} K")
        return y * self.gas * t * (1 + self.residual(t, y)[1]), x, y


def critical_t_k(table):
    module = re.sub(r"[-()]", "", table["designation"]).lower()
    text = (ROOT / f"src/saturation/tables/{module}.rs").read_text()
    return float(re.search(r"critical_t_k: ([\d.]+),", text)[1])


def main(path):
    rows = []
    for file in sorted((ROOT / "tables/refrigerants").glob("*.toml")):
        table = tomllib.loads(file.read_text())
        name = table["designation"]
        if name in ("R-728", "R-732", "R-740"):
            continue
        equation, critical = Equation(table), critical_t_k(table)
        lowest = float(table["equation"]["limits"]["t_min_k"])
        state = CoolProp.AbstractState("HEOS", NAMES.get(name, name.replace("-", "", 1)))
        last = None
        for below in BELOW:
            t = critical * (1 - below)
            if t < lowest:
                continue
            try:
                if below < 2e-4:
                    raise ValueError("too near the critical point for a start by CoolProp")
                state.update(CoolProp.QT_INPUTS, 0, t)
                start = [state.saturated_liquid_keyed_output(CoolProp.iDmolar), state.saturated_vapor_keyed_output(CoolProp.iDmolar)]
            except ValueError:
                # Both densities go as a power of the distance, near 1/2 or, where there are non-analytic terms, 1/3.
                (below_last, x, y), middle = last, (last[1] + last[2]) / 2
                power = mpf("0.325") if any(form == "non-analytic" for form, _ in equation.groups) else mpf("0.5")
                shrunk = (mpf(below) / below_last) ** power
                start = [middle + (x - middle) * shrunk, middle + (y - middle) * shrunk]
            try:
                p, x, y = equation.equilibrium(mpf(t), *map(mpf, start))
            except (ValueError, ZeroDivisionError) as error:
                print(f"note: {name} at {t} K: {error}")
                continue
            last = (mpf(below), x, y)
            rows.append(f"{name},{t!r},{mp.nstr(p, 20)},{mp.nstr(x, 20)},{mp.nstr(y, 20)}\n")
    head = "# Pressure (Pa) and densities (mol/m3) of liquid and vapour, 20 of 50 digits; written by tests/python/equilibria.py\n"
    pathlib.Path(path).write_text(head + "refrigerant,t_k,p_pa,liquid_mol_m3,vapour_mol_m3\n" + "".join(rows))


if __name__ == "__main__":
    main(sys.argv[1])
