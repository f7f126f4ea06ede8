"""A visit as it grows."""

import json
from typing import Any

from coldloop import _core
from coldloop._answers import Answer, NextStep
from coldloop._errors import ColdloopError, UnknownNameError
from coldloop._log import Log
from coldloop._readings import Readings, text


class Session:
    """A visit: readings, logs, looks and repairs are added one by one, each can be undone, and it says what to do next.

    ``readings`` are those of ``diagnose``, with ``settings`` among them; a stored session is one of them, too. The next step
    is held, because the technician may already be on the way to do it: it changes only when another one saves clearly more. Sessions are equal when their files are, and can be
    pickled. Raises a ``ColdloopError`` whose ``key`` names what cannot be read; the session is then as before.

    >>> session = Session({
    ...     "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    ...     "conditions": {"ambient": "74 °F", "altitude": "1600 m"},
    ... })
    >>> session.add(low_side="62 psig", high_side="118 psig")
    >>> session.next["fills"]
    'readings.vent'
    >>> session.add(vent="62 °F")
    >>> session.undo()
    ('reading', 'vent')
    """

    __slots__ = ("_core",)

    def __init__(self, readings: Readings):
        self._core = _core.Session(text(readings))

    def add(self, log: Log | None = None, /, **entries: Any) -> None:
        """Adds readings and observations by the names that they have in a readings file, each as a step of its own, or a log.

        A reading is text with its unit, or a mapping with ``value`` and instrument, an observation ``True`` or ``False``; it takes the place of an
        earlier one. ``conditions`` is a mapping with what has changed. A log adds the state of it that is known best, and before it, as a step of its own, the speeds that were logged in that state; where none has
        lasted long enough ``MissingError`` says how much longer to log.
        """
        if log is not None:
            self._core.add_log(log._core)
        if not entries:
            return
        known = json.loads(self._core.to_json())
        told: dict[str, Any] = {"system": known["system"], "readings": {}, "observations": {}}
        told["conditions"] = known.get("after", known)["conditions"]
        changed = entries.pop("conditions", {})
        for one, other in (("altitude", "barometer"), ("barometer", "altitude")):
            if one in changed and other not in changed:
                told["conditions"].pop(other, None)
        told["conditions"].update(changed)
        observations = _core.entries()[2]
        for name, value in entries.items():
            if name.startswith("gauge_zero"):
                raise UnknownNameError(f"{name}: give it with the readings that the session begins with", "name", key=name)
            told["observations" if name in observations else "readings"][name] = value
        self._core.add(text(told), bool(changed))

    def add_outcome(self, check: str, result: str, question: str | None = None) -> None:
        """Adds how a check came out: ``yes`` or ``no``, and of a check with two questions to which one the yes belongs.

        A figure is added by ``add``. Raises ``UnknownNameError``, ``InconsistentError`` and, for a figure, ``MissingError``.
        """
        self._core.add_outcome(check, result, question)

    def add_repair(self, fault: str, *, helped: bool = True) -> None:
        """Notes a repair that is done: what is added from now on describes the vehicle after the repair. With
        ``helped=False`` the repair did not help: its fault is ruled out, and all readings still hold. Raises ``UnknownNameError`` and ``InconsistentError``.
        """
        self._core.add_repair(fault, helped)

    def undo(self) -> tuple[str, str] | None:
        """Takes the last step back, and tells which: its kind (``reading``, ``log``, ``observation``, ``check``, ``conditions``, ``repair``, ``in-vain``) and its
        id. ``None`` where nothing was added yet; ``NotAvailableError`` where the steps are too old.
        """
        return self._core.undo()

    @property
    def done(self) -> list[tuple[str, str]]:
        """The steps that can be undone, the oldest first, as ``undo`` tells them."""
        return self._core.done()

    @property
    def next(self) -> NextStep | None:
        """What to do next, with its cautions and the entry that it fills; ``None`` where nothing is left to do. It is held from here on."""
        step: NextStep | None = self._core.next()
        return step

    def answer(self) -> Answer:
        """The whole answer, as ``diagnose`` gives it; its next step is held from here on."""
        answer: Answer = json.loads(self._core.answer())
        return answer

    def plan(self) -> dict[str, Any]:
        """The steps ahead, as ``coldloop.plan`` gives them, the held one first."""
        plan: dict[str, Any] = json.loads(self._core.plan())
        return plan

    def proof(self) -> dict[str, Any]:
        """The judgement of what was done, as ``prove`` gives it."""
        proof: dict[str, Any] = json.loads(self._core.proof())
        return proof

    def html(self) -> str:
        """The page as one self-contained HTML document, in metric units."""
        return self._core.html()

    def meta(self, key: str) -> str | None:
        """What the file keeps under a key of ``meta``, such as a work order; it is never judged."""
        return self._core.meta(key)

    def set_meta(self, key: str, value: str) -> None:
        """Puts a text into ``meta``, replacing an earlier one of this key."""
        self._core.set_meta(key, value)

    def to_toml(self) -> str:
        """The session as a readings file, from which it is resumed to the same bits, its steps to undo included."""
        return self._core.to_toml()

    @classmethod
    def from_toml(cls, stored: Readings) -> "Session":
        """The session that a text or a file holds: one that was stored, or the start of one from any readings file."""
        return cls(stored)

    def __str__(self) -> str:
        return self._core.text()

    def __repr__(self) -> str:
        known = json.loads(self._core.to_json())
        now = known.get("after", known)
        counts = [f"{len(now.get(name, {}))} {name}" for name in ("readings", "observations")]
        after = ["after the repair"] if "after" in known else []
        try:
            verdict, named = self._core.verdict()
            told = " ".join([verdict, *named])
        except ColdloopError as error:
            told = f"cannot be judged: {error}"
        vehicle = " ".join(known["system"][name] for name in ("refrigerant", "expansion", "compressor"))
        return f"<Session: {', '.join([vehicle, *after, *counts])}; {told}>"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Session) and self.to_toml() == other.to_toml()

    __hash__ = None  # type: ignore[assignment] # it changes

    def __reduce__(self) -> tuple[type["Session"], tuple[str]]:
        return Session, (self.to_toml(),)
