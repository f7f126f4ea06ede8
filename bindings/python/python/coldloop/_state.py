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


@dataclass(frozen=True, slots=True, eq=False)
class State:
    """A state in SI: floats (and a ``str`` phase) for floats, otherwise what came in, in the broadcast shape.

    Enthalpy, entropy and internal energy count from the reference state asked for. A figure that a state does not have is
    ``None``: ``quality`` outside the two-phase region, and all from ``cp_j_kg_k`` on for liquid and vapour together. A saturated liquid or
    vapour (a quality of exactly 0 or 1) has them. An element of an array that has no such figure is NaN, as missing numbers
    are in arrays; the phase and the quality of the element show whether the figure is absent or the element failed. A state equals another with the same figures.

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

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, State):
            return NotImplemented
        return all(_same(getattr(self, field.name), getattr(other, field.name)) for field in fields(State))

    def __hash__(self) -> int:
        return hash(tuple(getattr(self, field.name) for field in fields(State)))


def _same(one: Any, other: Any) -> bool:
    """Whether two figures are the same, missing ones included; arrays element by element."""
    if one is None or other is None:
        return one is other
    one, other = np.asarray(one), np.asarray(other)
    return one.shape == other.shape and bool(np.all((one == other) | ((one != one) & (other != other))))


def state(code: int, given: dict[str, Numbers | None], errors: Errors, reference: str) -> State:
    """The state at the two figures of ``given`` that are not ``None``."""
    pair = two(given, PAIRS)
    return solved(" ".join(pair), code, pair, errors, reference)


def two(given: dict[str, Numbers | None], pairs: tuple[tuple[str, str], ...]) -> dict[str, Numbers]:
    """The two figures of ``given`` that are not ``None``, if they are one of these pairs."""
    pair = {name: value for name, value in given.items() if value is not None}
    if tuple(pair) not in pairs:
        listed = "; ".join(" and ".join(names) for names in pairs)
        raise TypeError(f"a state takes two figures, one pair of: {listed}")
    return pair


def solved(how: str, code: int, pair: dict[str, Numbers], errors: Errors, reference: str) -> State:
    """The state at two figures; ``how`` is the name of the pair in the core."""
    raising = strict(errors)

    def columns(first: Any, second: Any) -> list[Any]:
        return _core.state(how, first, second, raising, code, reference)

    figures = several(columns, pair, len(fields(State)))
    phase = named(figures[0], PHASES)
    if isinstance(phase, str) and phase:
        return State(phase, *(None if figure != figure else figure for figure in figures[1:]))
    return State(phase, *figures[1:])
