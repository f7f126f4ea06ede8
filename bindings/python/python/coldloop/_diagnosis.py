"""From readings to a verdict."""

import html
import json
from collections.abc import Mapping
from copy import deepcopy
from typing import Any

from coldloop import _core


class Diagnosis:
    """The answer to a vehicle's readings. ``str()`` gives the report for people, ``to_dict()`` all of it."""

    __slots__ = ("_answer", "_text")

    def __init__(self, answer: dict[str, Any], text: str):
        self._answer = answer
        self._text = text

    @property
    def verdict(self) -> str:
        """What the readings allow one to say: ``healthy``, ``named-fault``, ``cannot-tell``, ..."""
        return str(self._answer["verdict"])

    @property
    def odds(self) -> dict[str, float]:
        """The probability of every fault that was considered, the most likely first."""
        return {fault["fault"]: fault["probability"] for fault in self._answer["faults"]}

    def to_dict(self) -> dict[str, Any]:
        """The whole answer, equal to its JSON: plain SI numbers with unit and datum in the key."""
        return deepcopy(self._answer)

    def __str__(self) -> str:
        return self._text

    def __repr__(self) -> str:
        return f"<Diagnosis: {self.verdict}>"

    def _repr_html_(self) -> str:
        return f"<pre>{html.escape(self._text)}</pre>"


def diagnose(readings: Mapping[str, Any]) -> Diagnosis:
    """Judges a vehicle from its readings, given in the shape of a readings file.

    A quantity is text with its unit, and a pressure says its datum. What cannot be read raises a ``ColdloopError``
    whose ``key`` names the entry and whose text says what to write instead.

    >>> answer = diagnose({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "74 °F", "altitude": "0 m"},
    ...     "readings": {"low_side": "70 psig", "high_side": "125 psig", "vent": "63 °F"},
    ... })
    >>> next(iter(answer.odds))
    'worn-compressor'
    """
    answer, text = _core.diagnose(json.dumps(readings, allow_nan=False))
    return Diagnosis(json.loads(answer), text)
