"""Readings and settings as the core takes them: the text of a file, or JSON of what Python holds."""

import json
from collections.abc import Mapping
from math import isfinite
from os import PathLike
from typing import Any, TypeAlias

import numpy as np

from coldloop._files import content
from coldloop._learning import Counts

Readings: TypeAlias = Mapping[str, Any] | str | PathLike[str]
"""A mapping in the shape of a readings file, the text of such a file, TOML or JSON, or a ``pathlib.Path`` to one."""

DEEPEST = 32
"""More tables within each other than any readings file has; a mapping that holds itself ends here."""


def text(readings: Readings) -> str:
    """The readings as a text."""
    if isinstance(readings, str):
        if readings.strip().endswith((".toml", ".json")) and "\n" not in readings.strip():
            raise TypeError(f"{readings!r} is the name of a file: give pathlib.Path({readings.strip()!r}), or its text")
        return readings
    if isinstance(readings, PathLike):
        return content(readings)
    if isinstance(readings, Mapping):
        return json.dumps(_plain(readings, ()))
    raise TypeError(f"readings are a mapping, the text of a readings file or a Path to one, not {readings!r:.80} ({type(readings).__name__})")


def options(settings: Mapping[str, Any]) -> str | None:
    """The settings as JSON; ``None`` where there are none."""
    return json.dumps(_plain(settings, ())) if settings else None


def _plain(value: object, place: tuple[str | int, ...]) -> object:
    """A value as JSON can hold it; any other is refused with its place."""
    if len(place) > DEEPEST:
        raise ValueError(f"{_path(place[:3])} holds more than {DEEPEST} tables within each other")
    if isinstance(value, (str, bool)):
        return value
    if isinstance(value, Counts):
        return str(value)
    if isinstance(value, Mapping):
        for key in value:
            if not isinstance(key, str):
                raise TypeError(f"{_path(place) or 'a table'} has the key {key!r}: a key is text")
        return {key: _plain(item, (*place, key)) for key, item in value.items()}
    if isinstance(value, (list, tuple)):
        return [_plain(item, (*place, row)) for row, item in enumerate(value)]
    if value is None:
        raise TypeError(f"{_path(place)} is None: leave out what was not measured and what is not set")
    if hasattr(value, "units") or hasattr(value, "to_value"):
        raise TypeError(
            f"{_path(place)} is a quantity of a units library, {value}: write text with a unit, such as "
            '"74 °F" or "650 g", and a pressure with its datum, "35 psig" or "101.3 kPa abs"'
        )
    if isinstance(value, (np.ndarray, np.number, np.bool_)):
        return _plain(value.tolist(), place)
    if isinstance(value, int):
        return value
    if isinstance(value, float):
        return value if isfinite(value) else None  # the core then names the entry that has no number
    raise TypeError(f"{_path(place)} is {value!r:.80}, of {type(value).__name__}: write text, a number, true or false")


def _path(place: tuple[str | int, ...]) -> str:
    """The dotted path, as in the refusals of the core: rows of a list are counted from 1."""
    steps = (f"[{step + 1}]" if isinstance(step, int) else f".{step}" for step in place)
    return "".join(steps).removeprefix(".")
