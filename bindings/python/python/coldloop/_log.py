"""Readings over time."""

import csv
import json
from collections.abc import Mapping
from os import PathLike
from pathlib import Path
from typing import Any

from coldloop import _core
from coldloop._answers import Answer, LogState, LogSummary
from coldloop._errors import FormatError
from coldloop._readings import Readings, options, text


class Log:
    """A log of one vehicle's readings, and its settled states, cycles, readings with their uncertainty, and observations.

    ``source`` is a pandas or polars DataFrame, an Arrow table, a mapping from names to arrays, or a ``pathlib.Path`` to a CSV
    file. A column is named after a channel with its unit behind it, as for ``diagnose_table``: ``time_s``, ``low_side_psig``,
    ``vent_c``, ``engine_speed_rpm``; or as ``low side [kPa gauge]``. ``clutch`` is 1 or 0 and has no unit, and ``time`` may hold dates with
    times. Other columns are left out and listed in ``ignored``. Missing values were not logged.

    ``instruments`` says what it was read with: ``low_side``, ``high_side`` and ``high_side_transducer`` (a gauge class), ``air``
    and ``lines`` (a thermometer); an electronic manifold, a pocket thermometer and thermocouples by default.

    A sample may come up to 30 s late; gaps, spikes, sensors that stick and clocks that jump are counted in ``summary["notes"]``. The
    memory that a log takes does not grow: ``extend`` goes on for as long as there are samples. Raises a ``ColdloopError`` whose
    ``key`` names row and column of what cannot be read, and takes nothing of that source then.

    >>> seconds = range(240)
    >>> log = Log({"time_s": seconds, "low_side_psig": [31.0] * 240, "high_side_psig": [165.0] * 240})
    >>> log.summary["phase"], len(log.states)
    ('settled', 1)
    """

    __slots__ = ("_core", "ignored")

    def __init__(self, source: Any, *, instruments: Mapping[str, str] | None = None):
        self._core = _core.Recorder(list((instruments or {}).items()))
        self.ignored: list[str] = []
        self.extend(source)

    def extend(self, source: Any) -> None:
        """Takes later samples, from any source that a log begins with; their pressures count from the same datum."""
        if isinstance(source, PathLike):
            self._extend_from_file(source)
            return
        if isinstance(source, str):
            raise TypeError(f"a log is a table, or the path of a CSV file: pathlib.Path({source!r:.80})")
        from coldloop._frames import frame  # late, as in _table.py

        table = frame(source)
        dated = "time" in table.names
        names = [name for name in table.names if name != "time"]
        cells = _core.log_header(names)
        header, columns = (["time [s]"], [table.seconds("time")]) if dated else ([], [])
        for name, cell in zip(names, cells, strict=True):
            if cell is not None:
                header.append(cell)
                columns.append(table.numbers(name))
        self._core.extend(header, columns)
        self.ignored = [name for name, cell in zip(names, cells, strict=True) if cell is None]

    def _extend_from_file(self, path: PathLike[str]) -> None:
        with Path(path).open(encoding="utf-8-sig", newline="") as file:
            rows = list(csv.reader(file))
        if not rows:
            raise FormatError(f"{path}: an empty file: the first line of a log names its columns", key=str(path))
        names, cells = rows[0], _core.log_header(rows[0])
        # A column that is no channel stays in place, with an empty header.
        self._core.extend_cells([cell or "" for cell in cells], [row for row in rows[1:] if row])
        self.ignored = [name for name, cell in zip(names, cells, strict=True) if cell is None]

    @property
    def summary(self) -> LogSummary:
        """The present state of the log: ``phase`` (``settling``, ``settled``, ``cycling``, ``irregular``, ``at-rest``), how much longer the present state should
        last (``wait_s``), how vent and cabin came down, and how often something was refused, ignored or doubted.
        """
        summary: LogSummary = self._core.summary()
        return summary

    @property
    def states(self) -> list[LogState]:
        """The stretches at one speed and load in the order of time, four at most; the present one last.

        ``means`` has the channels with their units, each with its standard uncertainty from the scatter of the samples.
        """
        states: list[LogState] = self._core.states()
        return states

    def readings(self) -> dict[str, Any]:
        """The readings of the state that is known best, in the shape of a readings file, each with its standard uncertainty, from
        the instrument and from the scatter of the samples. Empty where no state has lasted long enough.

        >>> log = Log({"time_s": range(240), "vent_k": [280.14] * 240})
        >>> log.readings()["vent"]["value"][:6]
        '280.14'
        """
        readings = self._core.readings()
        told: dict[str, Any] = json.loads(readings) if readings else {}
        return told

    @property
    def observations(self) -> dict[str, bool]:
        """The observations that follow from the log, by the entries of ``observations`` of a readings file."""
        return dict(self._core.observations())

    def judge(self, readings: Readings, **settings: Any) -> Answer | None:
        """The answer to all states of the log together; ``None`` where none has lasted long enough.

        ``readings`` has the ``system`` and ``conditions`` in the shape of a readings file, and what was read or seen besides; ``settings``
        are those of ``diagnose``. Raises as ``diagnose``.

        >>> log = Log({"time_s": range(240), "low_side_psig": [70.0] * 240, "high_side_psig": [125.0] * 240})
        >>> answer = log.judge({
        ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
        ...     "conditions": {"ambient": "74 °F", "altitude": "0 m"},
        ... })
        >>> answer["faults"][0]["fault"]
        'worn-compressor'
        """
        told = self._core.judge(text(readings), options(settings))
        answer: Answer | None = json.loads(told) if told else None
        return answer

    def __repr__(self) -> str:
        summary, states = self.summary, self.states
        judged = sum(state["judged"] for state in states)
        return f"<Log: {summary['elapsed_s']:.0f} s, {summary['phase']}, {judged} of {len(states)} states judged>"
