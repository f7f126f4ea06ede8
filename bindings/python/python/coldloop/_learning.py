"""What a shop's confirmed repairs teach."""

import json
from collections.abc import Mapping
from os import PathLike
from typing import Any

from coldloop import _core
from coldloop._cases import Cases, lines
from coldloop._files import content


class Counts:
    """Confirmed cases of a shop, counted: how common each fault is there, and what is seen with it.

    ``str()`` is the text of the file in which the shop keeps them, and ``Counts(text)`` or ``Counts(path)``, with a
    ``pathlib.Path``, reads it; without a text there are none. ``diagnose(readings, counts=counts)`` judges with them. Count every vehicle whose cause was confirmed, the
    sound ones too. Source: means of Dirichlet and Beta distributions that start from the tables of the library. Raises a
    ``ColdloopError`` whose ``key`` names what cannot be read.

    >>> counts = Counts()
    >>> counts.record("undercharge", {"oil_traces": True})
    >>> counts.cases("undercharge"), counts.cases("no-fault")
    (1, 0)
    >>> Counts(str(counts)) == counts
    True
    """

    __slots__ = ("_text",)

    def __init__(self, text: str | PathLike[str] = ""):
        if not isinstance(text, (str, PathLike)):
            raise TypeError(f"counts are the text of their file or a Path to it, not {text!r:.80}")
        self._text = _core.counts(text if isinstance(text, str) else content(text))

    def record(self, cause: str | None, observations: Mapping[str, bool] | None = None) -> None:
        """Counts one case: the cause that its repair confirmed, ``None`` for one that is none of the list, and what was
        seen before the repair. The system is not told: the case counts against every fault. Raises ``UnknownNameError``.
        """
        case: dict[str, Any] = {**_ANY, "observations": dict(observations or {})}
        self._text = _core.record(self._text, json.dumps(case), cause)

    def learn(self, cases: Cases) -> None:
        """Counts the confirmed cases of a file, as ``evaluate`` takes them; a case with several causes is skipped. A fault is
        counted among the vehicles that can have it.

        Raises a ``ColdloopError`` that names the line and the key of what cannot be read, and counts nothing then.
        """
        self._text = _core.learn(self._text, lines(cases))

    def cases(self, cause: str | None) -> int:
        """Cases of a cause; ``None`` for a cause that is none of the list. Raises ``UnknownNameError``."""
        return _core.cases(self._text, cause)

    def __str__(self) -> str:
        return self._text

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Counts) and self._text == other._text

    __hash__ = None  # type: ignore[assignment] # it changes


_ANY = {
    "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    "conditions": {"ambient": "25 °C", "altitude": "0 m"},
}
"""A case of which only the observations count."""
