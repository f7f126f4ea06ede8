"""The shapes of the answers, for type checkers: those of ``docs/schema/answer.json``, and those of logs, sessions and plans.

Ids of the vocabulary are plain ``str`` here; the schema lists them.
"""

from typing import Any, TypedDict


class Severity(TypedDict):
    """How bad a fault is: the range of its measure."""

    measure: str
    low: float
    high: float


class Repair(TypedDict):
    """What setting a fault right takes."""

    says: str
    minutes: float
    parts_in_minutes: float
    recovers_charge: bool
    cautions: list[str]


class Reason(TypedDict):
    """One piece of evidence for a fault, against its rival."""

    evidence: str
    seen: str | None
    standing: str | None
    strength: str
    log_odds: float
    says: str


class RankedFault(TypedDict):
    """A fault that was considered, with its odds."""

    fault: str
    probability: float
    severity: Severity | None
    repair: Repair
    against: str
    because: list[Reason]


class EntryError(TypedDict):
    """A mistake in the readings that explains them better than the vehicle does."""

    kind: str
    probability: float
    says: str


class TwoFaults(TypedDict):
    """The likeliest pair of faults at once."""

    faults: list[str]
    probability: float
    any_pair_probability: float


class Stop(TypedDict):
    """Why the compressor must not run."""

    reason: str
    says: str
    high_side_pa_gauge: float | None
    limit_pa_gauge: float | None
    limit_of_vehicle: bool | None


class Step(TypedDict):
    """What to do next: a check or a repair; neither where the work is handed over."""

    check: str | None
    repair: str | None
    says: str
    fills: list[str]


class Outcome(TypedDict):
    """What a result of a check would mean."""

    result: str
    outcome: str
    seen: str
    of: str | None
    probability: float
    then: str
    then_probability: float


class Check(TypedDict):
    """A check that is worth its cost."""

    check: str
    says: str
    fills: list[str]
    minutes: float
    parts_in_minutes: float
    saving_minutes: float | None
    cautions: list[str]
    outcomes: list[Outcome]


class CautionSaid(TypedDict):
    """Something to be careful of."""

    caution: str
    says: str


class NoteSaid(TypedDict):
    """What limits the answer."""

    note: str
    says: str


class _Answer(TypedDict):
    verdict: str
    named: list[str]
    rival: str | None
    faults: list[RankedFault]
    none_of_these: float
    entry_error: EntryError | None
    two_faults: TwoFaults | None
    out_of_line: str | None
    expected: dict[str, dict[str, Any]]
    expected_basis: str | None
    derived: dict[str, dict[str, float | None] | None]
    rest: str | None
    resting: dict[str, Any] | None
    stop: Stop | None
    next_step: Step | None
    next_checks: list[Check]
    cautions: list[CautionSaid]
    quality: list[NoteSaid]
    coldloop: str
    format: int


class Answer(_Answer, total=False):
    """The whole answer to a vehicle's readings; with ``proof`` where something was done to the vehicle since."""

    proof: dict[str, Any]


class NextStep(TypedDict):
    """What to do next: a check or a repair, neither where the work is handed over.

    ``fills`` is the entry that the result belongs to, such as ``readings.vent``; ``None`` for a repair and for handing over.
    """

    check: str | None
    repair: str | None
    fills: str | None
    says: str
    minutes: float
    cautions: list[str]


class Mean(TypedDict):
    """A mean over a state of a log with its standard uncertainty; ``drift`` is the last part of the state less that mean."""

    value: float
    standard_uncertainty: float
    drift: float


class CyclesRate(TypedDict):
    """Cycles per second with their standard uncertainty."""

    value: float
    standard_uncertainty: float


class Swing(TypedDict):
    """The swing of a low side whose compressor is switched; pressures in Pa from the datum of the log."""

    cycles: int
    cycles_hz: CyclesRate
    on_share: float
    cut_out_pa: float
    cut_in_pa: float
    high_low_pa: float | None
    high_high_pa: float | None
    repeats: bool


class LogState(TypedDict):
    """A stretch of a log at one speed and load; ``judged`` where it settled or lasted long enough to count."""

    began_s: float
    seconds: float
    judged: bool
    means: dict[str, Mean]
    swing: Swing | None


class Fall(TypedDict):
    """How a temperature came down after the start."""

    from_k: float
    to_k: float
    half_s: float
    falls: bool


class LogSummary(TypedDict):
    """The present state of a log; ``notes`` counts what was refused, ignored or doubted."""

    phase: str
    says: str
    elapsed_s: float
    wait_s: float
    vent: Fall | None
    cabin: Fall | None
    equal_after_s: float | None
    recoveries: int
    notes: dict[str, int]
