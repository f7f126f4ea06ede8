"""The pictures of the guide, drawn by the library itself."""

import shutil
import tomllib
from pathlib import Path
from typing import Any

import coldloop
import matplotlib

matplotlib.use("svg")

import coldloop.plot  # noqa: E402
import matplotlib.pyplot as plt  # noqa: E402
import numpy as np  # noqa: E402

INK, GREY = "#111111", "#777777"
DASHES = ["-", "--", "-.", ":", (0, (1, 1)), (0, (5, 1)), (0, (3, 1, 1, 1))]
ROOT = Path(__file__).parent.parent
READINGS = ROOT / "examples" / "readings"
# Drawn by `cargo run --release --example fault_atlas`.
ATLAS = ROOT / "target" / "fault_atlas"


def _readings(name: str) -> dict[str, Any]:
    return tomllib.loads((READINGS / f"{name}.toml").read_text(encoding="utf-8"))


def draw(folder: Path) -> None:
    """Draws every picture into the folder, as SVG without a date so that equal input gives equal files."""
    plt.rcParams.update({"svg.hashsalt": "coldloop", "font.size": 9, "axes.spines.top": False, "axes.spines.right": False})
    for name, figure in {
        "saturation": saturation(),
        "glide": glide(),
        "altitude": altitude(),
        "circuit": circuit(),
        "bands": bands(),
        "odds": odds(),
    }.items():
        figure.savefig(folder / f"{name}.svg", metadata={"Date": None})
        plt.close(figure)
    atlas(folder)


def atlas(folder: Path) -> None:
    """The drawn pages of the atlas, and a page that shows all of them."""
    drawn = sorted(ATLAS.glob("*.svg"))
    if not drawn:
        raise SystemExit(f"nothing in {ATLAS}: cargo run --release --example fault_atlas")
    page = ["# All pages of the atlas", ""]
    for picture in drawn:
        shutil.copy(picture, folder / picture.name)
        page += [f"## {picture.stem}", "", f"![{picture.stem}]({picture.name})", ""]
    (folder / "atlas.md").write_text("\n".join(page), encoding="utf-8")


def _axes():
    figure, axes = plt.subplots(figsize=(7.2, 4.2), layout="constrained")
    return figure, axes


def saturation():
    """Dew pressure over temperature of the refrigerants that vehicles have."""
    figure, axes = _axes()
    for name, dashes in zip(["R-744", "R-290", "R-134a", "R-1234yf", "R-152a"], DASHES, strict=False):
        refrigerant = coldloop.Refrigerant(name)
        top = min(refrigerant.facts.critical_temperature_k, 373.15)
        kelvin = np.linspace(243.15, top - 0.01, 200)
        axes.plot(kelvin - 273.15, refrigerant.dew_pressure(kelvin) / 1e5, color=INK, ls=dashes, lw=1.4, label=name)
    axes.set(xlabel="temperature, °C", ylabel="saturation pressure, bar absolute", yscale="log")
    axes.legend(frameon=False)
    return figure


def glide():
    """Bubble and dew of a blend with glide."""
    figure, axes = _axes()
    blend = coldloop.Refrigerant("R-407C")
    pressure = np.linspace(2e5, 25e5, 200)
    axes.plot(blend.dew_temperature(pressure) - 273.15, pressure / 1e5, color=INK, label="dew: superheat counts from here")
    axes.plot(
        blend.bubble_temperature(pressure) - 273.15, pressure / 1e5, color=INK, ls="--", label="bubble: subcooling counts from here"
    )
    axes.set(xlabel="temperature, °C", ylabel="pressure, bar absolute", title="R-407C")
    axes.legend(frameon=False)
    return figure


def altitude():
    """Error of the evaporating temperature when gauge pressure + 101.3 kPa is taken for absolute."""
    figure, axes = _axes()
    metres = np.linspace(0.0, 3000.0, 61)
    refrigerant = coldloop.Refrigerant("R-134a")
    sea = coldloop.standard_pressure(0.0)
    for gauge_kpa, dashes in zip([100.0, 200.0, 300.0], DASHES, strict=False):
        right = refrigerant.dew_temperature(gauge_kpa * 1e3 + coldloop.standard_pressure(metres))
        wrong = refrigerant.dew_temperature(gauge_kpa * 1e3 + sea)
        axes.plot(metres, wrong - right, color=INK, ls=dashes, label=f"{gauge_kpa:.0f} kPa gauge")
    axes.set(xlabel="altitude, m", ylabel="error of the evaporating temperature, K", title="R-134a")
    axes.legend(frameon=False)
    return figure


def circuit():
    """The circuit of an example in the pressure-enthalpy diagram."""
    figure, axes = _axes()
    coldloop.plot.pressure_enthalpy(_readings("healthy-mild"), ax=axes)
    return figure


def bands():
    """The high side of sound systems over ambient."""
    figure, axes = _axes()
    coldloop.plot.pressure_bands(_readings("blocked-condenser"), side="high_side", ax=axes)
    return figure


def odds():
    """The odds of an example."""
    figure, axes = _axes()
    coldloop.plot.odds(coldloop.diagnose(_readings("worn-compressor")), ax=axes)
    return figure
