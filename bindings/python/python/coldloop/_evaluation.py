"""How good the answers to confirmed cases are."""

import json
from collections.abc import Mapping
from copy import deepcopy
from typing import Any, NamedTuple

from coldloop import _core
from coldloop._cases import Cases, lines
from coldloop._readings import options


class Score(NamedTuple):
    """A share (0 to 1) or a mean over some of the cases, with its 95 % interval."""

    value: float | None
    """``None`` where there is no such case."""
    low: float | None
    """Lower end of the interval; ``None`` for fewer than two groups."""
    high: float | None
    """Upper end."""
    cases: int
    """The cases over which it is taken."""


class Evaluation:
    """How good the answers to confirmed cases were. ``str()`` gives a table for people, ``to_dict()`` all of it.

    The *leader* is the likeliest cause of an answer. Each figure is a ``Score``: a named tuple of ``value``, ``low``, ``high``
    (a 95 % interval from a bootstrap over groups, or over cases where there are none) and ``cases``.
    """

    __slots__ = ("_answer", "_text")

    def __init__(self, answer: str, text: str):
        self._answer, self._text = json.loads(answer), text

    def _score(self, name: str) -> Score:
        return Score(**self._answer[name])

    @property
    def cases(self) -> int:
        """Cases that were judged."""
        return int(self._answer["cases"])

    @property
    def refused(self) -> int:
        """Lines that could not be read or judged."""
        return int(self._answer["refused"])

    @property
    def refusals(self) -> list[dict[str, Any]]:
        """The first dozen of these, each with ``line``, ``id``, ``key``, ``value`` and ``message``."""
        return deepcopy(list(self._answer["refusals"]))

    @property
    def groups(self) -> int:
        """Groups that the cases name."""
        return int(self._answer["groups"])

    @property
    def first_right(self) -> Score:
        """Of all cases: the leader is what was found."""
        return self._score("first_right")

    @property
    def in_first_three(self) -> Score:
        """Of all cases: what was found is among the first three."""
        return self._score("in_first_three")

    @property
    def sound_led(self) -> Score:
        """Of sound vehicles: a fault leads."""
        return self._score("sound_led")

    @property
    def sound_named(self) -> Score:
        """Of sound vehicles: a fault is named."""
        return self._score("sound_named")

    @property
    def named_right(self) -> Score:
        """Of significant faults: the right one is named."""
        return self._score("named_right")

    @property
    def named_wrong(self) -> Score:
        """Of significant faults: another one is named."""
        return self._score("named_wrong")

    @property
    def missed(self) -> Score:
        """Of significant faults: the vehicle is called sound."""
        return self._score("missed")

    @property
    def not_told(self) -> Score:
        """Of significant faults: nothing is named and the vehicle is not called sound."""
        return self._score("not_told")

    @property
    def list_holds(self) -> Score:
        """Of the significant faults of which nothing is told: the list holds what was found."""
        return self._score("list_holds")

    @property
    def sure_right(self) -> Score:
        """Of all cases whose leader has a probability of 0.8 or more: it is right."""
        return self._score("sure_right")

    @property
    def log_loss(self) -> Score:
        """Mean of -ln(probability of what was found), no probability counted as less than 1e-6; nats."""
        return self._score("log_loss")

    @property
    def calibration_error(self) -> Score:
        """Expected calibration error over ten bins. Its interval lies higher than the error itself where cases are few."""
        return self._score("calibration_error")

    @property
    def reliability(self) -> list[dict[str, Any]]:
        """The ten bins of the leader's probability: ``low``, ``high``, ``cases``, mean ``probability``, share ``right``."""
        return deepcopy(list(self._answer["reliability"]))

    def to_dict(self) -> dict[str, Any]:
        """The whole answer, equal to its JSON."""
        return deepcopy(self._answer)

    def __str__(self) -> str:
        return self._text

    def __repr__(self) -> str:
        return f"<Evaluation: {self.cases} cases, {self.refused} refused>"


def evaluate(
    cases: Cases, settings: Mapping[str, Any] | None = None, priors: Mapping[str, float] | str | None = None
) -> Evaluation:
    """Judges confirmed cases and tells how often the answers were right: a shop's own cases, or those of a simulator.

    ``cases`` is a ``pathlib.Path`` to a file with a JSON object on each line, the text of one, or an iterable of such
    lines or of mappings. Each has ``case`` (a readings file), ``truth`` (what was found:
    ``[{"fault": "undercharge", "severity": 0.3}]``, the severity where it is known; ``no-fault`` for a sound vehicle,
    ``none-of-these`` for a cause that is not in the list) and, where wanted, ``id``, ``significant`` (false for a fault that
    nobody would have noticed) and ``group`` (make, shop, mechanic: cases that are alike).

    ``settings`` are those of ``diagnose`` and replace those in the cases. ``priors`` is a mapping from
    faults to how common they are, or ``"told"``: as common as they are in the cases. Settings with ``counts`` that were
    learned from the same cases make the answers look better than they are.

    A line that cannot be read or judged is counted in ``refused`` and described in ``refusals``. Raises a ``ColdloopError`` for
    invalid settings, ``MissingError`` for the priors ``"told"`` where no case can be read, and ``TypeError``.
    Source of the intervals: Efron & Tibshirani 1993, percentiles of 1,000 resamples.

    >>> case = {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...         "conditions": {"ambient": "74 °F", "altitude": "1600 m"},
    ...         "readings": {"low_side": "70 psig", "high_side": "125 psig", "vent": "63 °F"}}
    >>> answers = evaluate([{"case": case, "truth": [{"fault": "worn-compressor"}]}])
    >>> answers.cases, answers.first_right.value
    (1, 1.0)
    """
    if isinstance(priors, str) and priors != "told":
        raise ValueError(f'priors are a mapping or "told", not {priors!r}')
    told = isinstance(priors, str)
    judged = {**(settings or {})} if told or priors is None else {**(settings or {}), "priors": priors}
    return Evaluation(*_core.evaluate(lines(cases), options(judged), told))
