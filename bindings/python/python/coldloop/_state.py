"""States of a refrigerant."""

from dataclasses import dataclass, fields
from typing import Any

import numpy as np

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, named, several, strict

PHASES = np.array(_core.phases())

PAIRS = (
    ("temperature_k", "pressure_pa_abs"),
    ("temperature_k", "quality"),
    ("temperature_k", "density_kg_m3"),
    ("pressure_pa_abs", "quality"),
    ("pressure_pa_abs", "enthalpy_j_kg"),
    ("pressure_pa_abs", "entropy_j_kg_k"),
    ("enthalpy_j_kg", "entropy_j_kg_k"),
)
"""The figures that fix a state, two by two."""


@dataclass(frozen=True, slots=True)
class State:
    """A state in SI: floats (and a ``str`` phase) for floats, otherwise what came in, in the broadcast shape.

    Enthalpy, entropy and internal energy count from the reference state asked for. ``quality`` is NaN outside the two
    phases; from ``cp_j_kg_k`` on all is NaN within them, where there are no such figures.

    >>> State.__match_args__[:3]
    ('phase', 'quality', 'temperature_k')
    """

    phase: Answer
    """``liquid``, ``vapour``, ``two-phase`` or ``supercritical``; empty where there is no state."""
    quality: Answer
    """Mass fraction of vapour, 0 to 1."""
    temperature_k: Answer
    pressure_pa_abs: Answer
    density_kg_m3: Answer
    enthalpy_j_kg: Answer
    entropy_j_kg_k: Answer
    internal_energy_j_kg: Answer
    cp_j_kg_k: Answer
    cv_j_kg_k: Answer
    speed_of_sound_m_s: Answer
    joule_thomson_k_pa: Answer
    """(dT/dp) at constant enthalpy."""
    pressure_slope_pa_k: Answer
    """(dp/dT) at constant density."""
    isothermal_compressibility_1_pa: Answer
    isobaric_expansion_1_k: Answer


def state(code: int, given: dict[str, Numbers | None], errors: Errors, reference: str) -> State:
    """The state at the two figures of ``given`` that are not ``None``."""
    pair = {name: value for name, value in given.items() if value is not None}
    if tuple(pair) not in PAIRS:
        pairs = "; ".join(" and ".join(names) for names in PAIRS)
        raise TypeError(f"a state takes two figures, one pair of: {pairs}")
    return solved(" ".join(pair), code, pair, errors, reference)


def solved(how: str, code: int, pair: dict[str, Numbers], errors: Errors, reference: str) -> State:
    """The state at two figures, found in the way that the core calls ``how``."""
    raising = strict(errors)

    def columns(first: Any, second: Any) -> list[Any]:
        return _core.state(how, first, second, raising, code, reference)

    figures = several(columns, pair, len(fields(State)))
    return State(named(figures[0], PHASES), *figures[1:])
