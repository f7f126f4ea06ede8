"""Confirmed cases: a JSON object on each line of a file."""

import json
from collections.abc import Iterable, Mapping
from os import PathLike
from typing import Any, TypeAlias

from coldloop._files import content

Cases: TypeAlias = str | PathLike[str] | Iterable[Mapping[str, Any] | str]
"""The lines of a file of confirmed cases as one text, a ``pathlib.Path`` to such a file, or its cases one by one, each a
mapping or a line."""


def lines(cases: Cases) -> str:
    """The cases as one text."""
    if isinstance(cases, str):
        if cases.strip().endswith((".jsonl", ".json")) and "\n" not in cases.strip():
            raise TypeError(f"{cases!r} is the name of a file: give pathlib.Path({cases.strip()!r}), or its text")
        return cases
    if isinstance(cases, PathLike):
        return content(cases)
    if isinstance(cases, Mapping) or not isinstance(cases, Iterable):
        raise TypeError(f"cases are a Path to a file, its text, or an iterable of cases, not {cases!r:.80} ({type(cases).__name__})")
    return "\n".join(_line(case, number) for number, case in enumerate(cases, 1))


def _line(case: object, number: int) -> str:
    if isinstance(case, str):
        # A line break within a case would split it into two.
        return " ".join(case.splitlines())
    if isinstance(case, Mapping):
        return json.dumps(case, default=_refused)
    raise TypeError(f"case {number} is {case!r:.80}, of {type(case).__name__}: give a mapping or a line of JSON")


def _refused(value: object) -> object:
    if isinstance(value, Mapping):
        return dict(value)
    if hasattr(value, "tolist"):
        return value.tolist()
    raise TypeError(f"{value!r:.80}, of {type(value).__name__}, has no place in a case: write text, a number, true or false")
