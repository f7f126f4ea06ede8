"""States of a refrigerant."""

from dataclasses import dataclass, fields

import numpy as np

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, plain

PHASES = np.array(_core.phases())


@dataclass(frozen=True, slots=True)
class State:
    """A state in SI: floats (and a ``str`` phase) for floats, arrays of the broadcast shape otherwise.

    Enthalpy and entropy count from the reference state asked for. ``quality`` is NaN outside the two phases,
    ``cp_j_kg_k`` and ``speed_of_sound_m_s`` are NaN within them.
    """

    phase: Answer
    """``liquid``, ``vapour``, ``two-phase`` or ``supercritical``; empty where there is no state."""
    quality: Answer
    temperature_k: Answer
    pressure_pa_abs: Answer
    density_kg_m3: Answer
    enthalpy_j_kg: Answer
    entropy_j_kg_k: Answer
    cp_j_kg_k: Answer
    speed_of_sound_m_s: Answer


def state(code: int, given: dict[str, Numbers | None], errors: Errors, reference: str) -> State:
    """The state at the two figures of ``given`` that are not ``None``."""
    if errors not in ("raise", "nan"):
        raise ValueError(f'errors is "raise" or "nan", not {errors!r}')
    pair = {name: value for name, value in given.items() if value is not None}
    if len(pair) != 2:
        raise TypeError(f"two of {', '.join(given)} fix a state, not {len(pair)}")
    first, second = np.broadcast_arrays(*(plain(value) for value in pair.values()))
    columns = _core.state(
        "".join(name[0] for name in pair),
        np.ascontiguousarray(first).reshape(-1),
        np.ascontiguousarray(second).reshape(-1),
        errors == "raise",
        code,
        reference,
    )
    figures = [PHASES[columns[0].astype(int)], *columns[1:]]
    shaped = [figure.reshape(first.shape)[()] for figure in figures]
    if first.shape == ():
        shaped = [str(shaped[0]), *(float(figure) for figure in shaped[1:])]
    return State(**dict(zip((field.name for field in fields(State)), shaped, strict=True)))
