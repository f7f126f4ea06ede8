"""Figures for a report: quiet, labelled with units, and readable when printed in black and white.

It needs matplotlib (``pip install "coldloop[plot]"``) and is imported by itself: ``import coldloop.plot``. Every
function draws into the axes that it is given, or into new ones, and gives them back.
"""

from typing import Any

import matplotlib.pyplot as plt
import numpy as np
from matplotlib.axes import Axes
from matplotlib.ticker import NullFormatter, ScalarFormatter

from coldloop import _circuit_points as circuit
from coldloop import _diagnosis as diagnosis
from coldloop._errors import ColdloopError
from coldloop._readings import Readings
from coldloop._refrigerant import Refrigerant

__all__ = ["odds", "pressure_bands", "pressure_enthalpy"]

INK, GREY, PALE = "#111111", "#777777", "#bbbbbb"
ZERO_C = 273.15


def pressure_enthalpy(readings: Readings, *, ax: Axes | None = None) -> Axes:
    """The circuit of a readings file in the pressure-enthalpy diagram of its refrigerant.

    Points that were measured are full; a point whose line temperature was not taken is hollow and is that of an
    ideal circuit with these pressures. Enthalpy counts from the IIR reference, pressure from vacuum. Both
    pressures are needed. ``readings`` are those of ``diagnose``. Raises as ``diagnose``, and ``MissingError`` where a pressure is missing.

    >>> ax = pressure_enthalpy({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "29 °C", "altitude": "1600 m"},
    ...     "readings": {"low_side": "200 kPa gauge", "high_side": "1300 kPa gauge", "suction_line": "12 °C"},
    ... })
    >>> ax.get_xlabel()
    'specific enthalpy, kJ/kg'
    """
    points = circuit.points(circuit.written(readings))
    refrigerant = points.refrigerant
    ax = ax or plt.subplots(figsize=(7.2, 4.8), layout="constrained")[1]
    _dome(ax, refrigerant)
    loop = [*points.states, points.states[0]]
    h, p = (np.array([getattr(point, name) for point in loop]) for name in ("enthalpy_j_kg", "pressure_pa_abs"))
    for start in range(4):
        assumed = not (loop[start].measured and loop[start + 1].measured)
        ends = slice(start, start + 2)
        ax.plot(h[ends] / 1e3, p[ends] / 1e3, color=INK, lw=1.8, ls="--" if assumed else "-", zorder=3)
    for number, (point, (dx, dy)) in enumerate(
        zip(points.states, ((8, -14), (8, 4), (-8, 8), (-8, -16)), strict=True), 1
    ):
        at = (point.enthalpy_j_kg / 1e3, point.pressure_pa_abs / 1e3)
        ax.plot(*at, "o", ms=6, mfc=INK if point.measured else "white", mec=INK, zorder=4)
        text = f"{number} {point.name}, {point.temperature_k - ZERO_C:.0f} °C"
        side = "left" if dx > 0 else "right"
        ax.annotate(
            text, at, (dx, dy), textcoords="offset points", ha=side, fontsize=8, color=INK, zorder=5, bbox=_PAPER
        )
    low, high = p.min() / 1e3, p.max() / 1e3
    critical = refrigerant.facts.critical_pressure_pa_abs / 1e3
    ax.set_ylim(low / 2.2, max(high * 1.9, min(critical * 1.25, high * 4)))
    span = h.max() - h.min()
    ax.set_xlim((h.min() - 0.45 * span) / 1e3, (h.max() + 0.45 * span) / 1e3)
    ax.set_yscale("log")
    ticks = [t for t in (20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000) if ax.get_ylim()[0] <= t <= ax.get_ylim()[1]]
    ax.set_yticks(ticks)
    ax.yaxis.set_major_formatter(ScalarFormatter())
    ax.yaxis.set_minor_formatter(NullFormatter())
    return _finish(
        ax,
        "specific enthalpy, kJ/kg",
        "pressure, kPa absolute",
        f"{refrigerant.name}: the circuit; full points measured, hollow ones of an ideal circuit",
    )


def pressure_bands(readings: Readings, *, side: str = "low_side", ax: Axes | None = None) -> Axes:
    """What the low or high side of sound systems like this one shows over ambient temperature, and what this one shows.

    The dark band holds 80 % of sound systems, the light one 95 %; the bar through the reading is its standard
    uncertainty taken twice. All conditions but the ambient are those of the readings, which are those of ``diagnose``. Raises as
    ``diagnose``.

    >>> ax = pressure_bands({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "29 °C", "altitude": "1600 m"}, "readings": {"high_side": "1300 kPa gauge"},
    ... }, side="high_side")
    >>> ax.get_ylabel()
    'high side, kPa gauge'
    """
    if side not in ("low_side", "high_side"):
        raise ValueError(f'side is "low_side" or "high_side", not {side!r}')
    file = circuit.written(readings)
    ax = ax or plt.subplots(figsize=(5.6, 4.0), layout="constrained")[1]
    ambient, bands = _bands(file, f"{side}_pa_gauge")
    kpa = {name: np.array([band[name] for band in bands]) / 1e3 for name in bands[0]}
    ax.fill_between(ambient, kpa["low_95"], kpa["high_95"], color="#e8e8e8", lw=0, zorder=1)
    ax.fill_between(ambient, kpa["low_80"], kpa["high_80"], color="#c8c8c8", lw=0, zorder=1)
    for limit in ("low_95", "high_95"):
        ax.plot(ambient, kpa[limit], color=GREY, lw=0.8, ls=":", zorder=2)
    ax.plot(ambient, kpa["median"], color=INK, lw=1.2, zorder=2)
    for limit, text in (("high_95", "95 %"), ("high_80", "80 %"), ("median", "median")):
        ax.annotate(text, (ambient[-1], kpa[limit][-1]), (4, 0), textcoords="offset points", fontsize=8, va="center")
    measured = circuit.gauge_reading(file, side)
    here = circuit.temperature_k(file["conditions"], "ambient")
    if measured is not None and here is not None:
        here -= ZERO_C
        ax.errorbar(
            here, measured.value / 1e3, 2e-3 * measured.uncertainty, fmt="o", color=INK, ms=6, capsize=4, zorder=4
        )
        ax.annotate(
            f"read: {measured.value / 1e3:.0f}",
            (here, measured.value / 1e3),
            (9, 5),
            textcoords="offset points",
            fontsize=9,
        )
    name = side.replace("_", " ")
    ax.set_xlim(ambient[0], ambient[-1] + 0.13 * (ambient[-1] - ambient[0]))
    ax.set_ylim(bottom=min(0.0, ax.get_ylim()[0]))
    ax.set_xticks(range(15, 41, 5))
    ax.spines["bottom"].set_bounds(ambient[0], ambient[-1])
    return _finish(ax, "ambient, °C", f"{name}, kPa gauge", f"{name} of sound systems, and of this one")


def odds(answer: "diagnosis.Diagnosis", *, least: float = 0.01, ax: Axes | None = None) -> Axes:
    """How likely each explanation is, as bars from the likeliest down; those below ``least`` are added up.

    >>> ax = odds(diagnose({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "74 °F", "altitude": "0 m"},
    ...     "readings": {"low_side": "70 psig", "high_side": "125 psig", "vent": "63 °F"},
    ... }))
    >>> ax.get_xlabel()
    'probability, %'
    """
    shares = dict(answer.odds)
    shares["none of these"] = answer.to_dict()["none_of_these"]
    shown = [(name.replace("-", " "), share) for name, share in shares.items() if share >= least]
    shown.sort(key=lambda row: -row[1])
    rest = 1.0 - sum(share for _, share in shown)
    count = len(shares) - len(shown)
    if count and rest >= 0.0005:
        shown.append((f"the other {count}", rest))
    ax = ax or plt.subplots(figsize=(6.2, 0.9 + 0.32 * len(shown)), layout="constrained")[1]
    names, values = zip(*shown, strict=True)
    percent = 100.0 * np.array(values)
    bars = ax.barh(range(len(names)), percent, color="#555555", edgecolor=INK, height=0.62, zorder=2)
    if names[-1].startswith("the other"):
        bars[-1].set(facecolor="white", hatch="////")
    for row, value in enumerate(percent):
        ax.annotate(
            "over 99" if value > 99.0 else f"{value:.0f}" if value >= 1.0 else f"{value:.1f}",
            (value, row),
            (4, 0),
            textcoords="offset points",
            va="center",
            fontsize=9,
        )
    ax.set_yticks(range(len(names)), names)
    ax.invert_yaxis()
    ax.set_xlim(0.0, 112.0)
    ax.set_xticks(range(0, 101, 20))
    ax.spines["bottom"].set_bounds(0.0, 100.0)
    return _finish(ax, "probability, %", "", f"verdict: {answer.verdict.replace('-', ' ')}")


_PAPER = {"facecolor": "white", "edgecolor": "none", "alpha": 0.8, "pad": 0.8}


def _dome(ax: Axes, refrigerant: Refrigerant) -> None:
    """The saturation line, with lines of equal quality and temperature."""
    facts = refrigerant.facts
    coldest = max(facts.lowest_temperature_k, 0.55 * facts.critical_temperature_k)
    # Closer together towards the critical point, where the curve bends.
    t_k = facts.critical_temperature_k - (facts.critical_temperature_k - coldest) * np.linspace(0.0, 1.0, 160) ** 2
    for quality in (0.0, 0.2, 0.4, 0.6, 0.8, 1.0):
        line = refrigerant.state(temperature_k=t_k, quality=quality)
        edge = quality in (0.0, 1.0)
        ax.plot(
            line.enthalpy_j_kg / 1e3,
            line.pressure_pa_abs / 1e3,
            color=GREY if edge else PALE,
            lw=1.3 if edge else 0.6,
            zorder=2,
        )
    for celsius in range(-40, 141, 20):
        _isotherm(ax, refrigerant, celsius)


def _isotherm(ax: Axes, refrigerant: Refrigerant, celsius: int) -> None:
    t_k = celsius + ZERO_C
    facts = refrigerant.facts
    if not facts.lowest_temperature_k < t_k < facts.highest_temperature_k:
        return
    try:
        start = refrigerant.dew_pressure(t_k) * (1.0 - 1e-6)
    except ColdloopError:
        start = facts.critical_pressure_pa_abs
    p = np.geomspace(start, 2e4, 200)
    gas = refrigerant.state(temperature_k=t_k, pressure_pa_abs=p, errors="nan")
    ax.plot(gas.enthalpy_j_kg / 1e3, p / 1e3, color=PALE, lw=0.6, zorder=1)
    ax.annotate(
        f"{celsius} °C",
        (gas.enthalpy_j_kg[0] / 1e3, start / 1e3),
        (2, -2),
        textcoords="offset points",
        fontsize=6.5,
        color=GREY,
        rotation=-60,
        va="top",
        annotation_clip=True,
    )


def _bands(file: dict[str, Any], name: str) -> tuple[Any, list[dict[str, float]]]:
    """The bands of a reading over the ambient temperatures that the sources cover."""
    ambient, bands = [], []
    for celsius in np.arange(5.0, 50.5, 1.0):
        conditions = {**file["conditions"], "ambient": f"{celsius} °C"}
        band = diagnosis.expected({"system": file["system"], "conditions": conditions})[name]
        if band is not None:
            ambient.append(celsius)
            bands.append(band)
    return np.array(ambient), bands


def _finish(ax: Axes, x: str, y: str, title: str) -> Axes:
    ax.set_xlabel(x)
    ax.set_ylabel(y)
    ax.set_title(title, fontsize=10, loc="left")
    ax.spines[["top", "right"]].set_visible(False)
    return ax
