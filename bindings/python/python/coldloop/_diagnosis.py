"""From readings to a verdict."""

import json
from collections.abc import Mapping
from copy import deepcopy
from typing import Any

from coldloop import _core


class Diagnosis:
    """The answer to a vehicle's readings. ``str()`` gives the report for people, ``to_dict()`` all of it.

    >>> readings = {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...             "conditions": {"ambient": "74 °F", "altitude": "0 m"}, "readings": {"vent": "42 °F"}}
    >>> diagnose(readings).verdict
    'not-enough-evidence'
    """

    __slots__ = ("_answer", "_text")

    def __init__(self, answer: dict[str, Any], text: str):
        self._answer = answer
        self._text = text

    @property
    def verdict(self) -> str:
        """What the readings allow one to say: ``healthy``, ``named-fault``, ``cannot-tell``, ..."""
        return str(self._answer["verdict"])

    @property
    def named(self) -> list[str]:
        """The fault that is named, or the short list; empty when the system is sound or nothing can be said."""
        return list(self._answer["named"])

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
        return f"<Diagnosis: {' '.join([self.verdict, *self.named])}>"

    def _repr_html_(self) -> str:
        from coldloop._page import page

        return page(self._answer)


def diagnose(readings: Mapping[str, Any], **settings: Any) -> Diagnosis:
    """Judges a vehicle from its readings, given in the shape of a readings file.

    A quantity is text with its unit, and a pressure says its datum. ``settings`` say how to judge: ``priors`` (a
    mapping from faults to how common they are), ``none_of_these``, ``two_faults``, ``healthy``, ``named``,
    ``nothing_fits``, ``short_list``, ``least_information``, ``per_minute``, ``recovered``. What cannot be read raises
    a ``ColdloopError`` whose ``key`` names the entry and whose text says what to write instead.

    >>> answer = diagnose({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "74 °F", "altitude": "0 m"},
    ...     "readings": {"low_side": "70 psig", "high_side": "125 psig", "vent": "63 °F"},
    ... })
    >>> next(iter(answer.odds))
    'worn-compressor'
    """
    answer, text = _core.diagnose(json.dumps(readings, allow_nan=False), settings)
    return Diagnosis(json.loads(answer), text)


def expected(readings: Mapping[str, Any]) -> dict[str, dict[str, float] | None]:
    """What a sound system shows in the conditions of a readings file: the bands of every reading.

    Each band has ``low_95``, ``low_80``, ``median``, ``high_80`` and ``high_95``, the ends of the middle 95 % and 80 %
    of sound vehicles, in the unit of its key; ``None`` where the system has no such reading. Source: published charts
    and trade facts, in ``tables/bands``. Raises ``OutOfRangeError`` and ``NotAvailableError`` where none speaks.

    >>> bands = expected({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "30 °C", "altitude": "1600 m"},
    ... })
    >>> bands["vent_k"]["low_95"] < bands["vent_k"]["median"] < bands["vent_k"]["high_95"]
    True
    """
    bands = _core.expected(json.dumps(readings, allow_nan=False))
    limits = ("low_95", "low_80", "median", "high_80", "high_95")
    return {name: None if band is None else dict(zip(limits, band, strict=True)) for name, band in bands.items()}
