"""From readings to a verdict, a plan and a proof."""

import json
from typing import Any

from coldloop import _core
from coldloop._answers import Answer
from coldloop._readings import Readings, options, text


class Diagnosis:
    """The answer to a vehicle's readings.

    ``str()`` gives the page for people in the units of the readings, ``html()`` the same with drawings, ``to_dict()`` all of
    it. The settings ``language`` (``en`` or ``es``) and ``details`` (all figures, limits and cautions in full) choose the page.

    >>> readings = {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...             "conditions": {"ambient": "74 °F", "altitude": "0 m"}, "readings": {"vent": "42 °F"}}
    >>> diagnose(readings).verdict
    'not-enough-evidence'
    """

    __slots__ = ("_asked", "_read", "_told")

    def __init__(self, readings: str, settings: str | None):
        self._asked = readings, settings
        self._told = _core.diagnose(readings, settings)
        self._read: Answer | None = None

    @property
    def _answer(self) -> Answer:
        # Read on demand: not every caller needs it.
        if self._read is None:
            self._read = self.to_dict()
        return self._read

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

    def to_dict(self) -> Answer:
        """The whole answer, equal to its JSON: plain SI numbers with unit and datum in the key."""
        answer: Answer = self._told.to_dict()
        return answer

    def __reduce__(self) -> tuple[type["Diagnosis"], tuple[str, str | None]]:
        # The same readings give the same answer, to the bit.
        return Diagnosis, self._asked

    def __str__(self) -> str:
        return _core.report_text(*self._asked)

    def __repr__(self) -> str:
        return f"<Diagnosis: {' '.join([self.verdict, *self.named])}>"

    def html(self) -> str:
        """The page as one self-contained HTML document with its drawings: no script, readable on a phone, on one sheet when
        printed, in the units of the readings.

        >>> readings = {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
        ...             "conditions": {"ambient": "74 °F", "altitude": "0 m"}, "readings": {"vent": "42 °F"}}
        >>> diagnose(readings).html().startswith("<!DOCTYPE html>")
        True
        """
        return _core.page_html(*self._asked)

    def svg(self, picture: str) -> str | None:
        """One drawing of the page as an SVG element: ``readings``, ``odds``, ``plan``, ``cycle``, ``pull-down``, ``hold`` or
        ``pressure-test``; ``None`` where there is nothing to draw. Raises ``UnknownNameError`` for another name.

        >>> readings = {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
        ...             "conditions": {"ambient": "74 °F", "altitude": "0 m"}, "readings": {"vent": "42 °F"}}
        >>> diagnose(readings).svg("odds")[:4]
        '<svg'
        >>> diagnose(readings).svg("hold") is None  # no vacuum was held
        True
        """
        readings, settings = self._asked
        return _core.picture_svg(readings, picture, settings)

    def _repr_html_(self) -> str:
        return _core.page_html(*self._asked, part=True)


def catalogue(readings: Readings) -> dict[str, Any]:
    """What a program has to know to ask the right questions about a system. ``readings`` has the shape of a readings file, of which
    only ``system`` is used.

    ``faults`` that it can have (what each ``says``, the ``measure`` of its severity, its ``prior``, its ``repair`` with cost and
    cautions), ``checks`` that exist for it (with cost, cautions and the ``questions`` that they answer) and
    ``observations``, the entries of that table of a readings file. Source: common practice, no source, in
    ``tables/faults`` and ``tables/checks``. Raises a ``ColdloopError`` whose ``key`` names what cannot be read.

    >>> system = {"refrigerant": "R-134a", "expansion": "orifice-tube", "compressor": "fixed-clutch"}
    >>> "orifice-restricted" in [fault["fault"] for fault in catalogue({"system": system})["faults"]]
    True
    """
    answer: dict[str, Any] = json.loads(_core.catalogue(text(readings)))
    return answer


def diagnose(readings: Readings, **settings: Any) -> Diagnosis:
    """Judges a vehicle from its readings, given in the shape of a readings file, as the text of one, or as a
    ``pathlib.Path`` to one.

    A quantity is text with its unit, and a pressure says its datum. ``settings`` say how to judge, and replace the
    ``settings`` of the readings: ``priors`` (a mapping from faults to how common they are),
    ``none_of_these``, ``two_faults``, ``language``, ``details``, ``healthy``, ``named``, ``nothing_fits``, ``short_list``, ``least_information``,
    ``stakes`` (``look``, ``sound_part``, ``missed_fault``, ``wrong_list`` and ``needless_repeat``: what wrong answers cost
    in minutes, from which the thresholds follow that are not given), ``recovered``, ``next_checks``, ``prices``
    (``per_minute``, ``recovery``, ``verify``, ``unknown``, and ``checks`` and ``repairs`` by id, each with ``minutes``
    and ``money``), ``looks`` (the chance of "yes" by fault and question) and ``counts`` (a ``Counts``).

    What cannot be read raises a ``ColdloopError`` whose ``key`` names the entry and whose text says what to write instead; an object that has no place in a readings file (``None``, a quantity of a units
    library, which says no datum) raises ``TypeError`` with the entry.

    >>> answer = diagnose({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "74 °F", "altitude": "0 m"},
    ...     "readings": {"low_side": "70 psig", "high_side": "125 psig", "vent": "63 °F"},
    ... })
    >>> next(iter(answer.odds))
    'worn-compressor'
    """
    return Diagnosis(text(readings), options(settings))


def plan(readings: Readings, **settings: Any) -> dict[str, Any]:
    """What to do next, three steps deep: the checks worth their cost and the repairs they lead to.

    ``readings`` and ``settings`` are those of ``diagnose``. The answer has ``expected_minutes`` of work until the vehicle
    is repaired, ``without_checks_minutes``, and ``steps``, the first one first; each has a ``check`` or a ``repair``
    (neither where the work is handed over to a specialist), what that ``says``, its ``cautions`` and ``minutes``, and ``branches``, one for every result, whose ``next`` is the
    place of the step that follows. Source: Heckerman, Breese & Rommelse 1995; the usual prices stand in
    ``tables/checks``. Raises as ``diagnose``.

    >>> steps = plan({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "74 °F", "altitude": "0 m"},
    ...     "readings": {"low_side": "70 psig", "high_side": "125 psig"},
    ... })["steps"]
    >>> steps[0]["repair"] is None  # two pressures do not justify a new compressor
    True
    """
    answer: dict[str, Any] = json.loads(_core.plan(text(readings), options(settings)))
    return answer


def prove(readings: Readings, **settings: Any) -> dict[str, Any]:
    """Judges what was done to a vehicle: whether it was dry, tight and rightly charged, and whether it cools now.

    ``readings`` may hold ``pressure_test``, ``evacuation``, ``hold``, ``charge``, ``pull_down``, and ``after``: the
    conditions and readings after the repair. The answer has these keys and ``repair``, before against after; each has
    its ``finding``, what that ``says`` and its figures in plain SI, and is ``None`` where nothing was done or it cannot be
    judged. ``closing`` is the judgement from all of them together, with the ``weakest`` of them. ``refused`` tells what cannot be
    judged, and why: a bad entry refuses only its own table, and raises as in ``diagnose`` where nothing is left to judge.

    >>> prove({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "20 °C", "altitude": "1600 m"},
    ...     "evacuation": {"reached": "420 micron", "coldest": "18 °C"},
    ... })["evacuation"]["finding"]
    'deep'
    """
    answer: dict[str, Any] = json.loads(_core.prove(text(readings), options(settings)))
    return answer


def expected(readings: Readings) -> dict[str, dict[str, float] | None]:
    """What a sound system shows in the conditions of a readings file: the bands of every reading.

    Each band has ``low_95``, ``low_80``, ``median``, ``high_80`` and ``high_95``, the ends of the middle 95 % and 80 %
    of sound vehicles, in the unit of its key; ``None`` where the system has no such reading. The vehicle's own pressure table and
    its earlier healthy visits count, where the file has them. Source: the vehicle model,
    an independent simulator and published charts, in ``tables/atlas``. Raises ``OutOfRangeError`` and ``NotAvailableError``
    where none of them covers the conditions or the system.

    >>> bands = expected({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "30 °C", "altitude": "1600 m"},
    ... })
    >>> bands["vent_k"]["low_95"] < bands["vent_k"]["median"] < bands["vent_k"]["high_95"]
    True
    """
    bands = _core.expected(text(readings))
    limits = ("low_95", "low_80", "median", "high_80", "high_95")
    return {name: None if band is None else dict(zip(limits, band, strict=True)) for name, band in bands.items()}
