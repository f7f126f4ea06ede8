"""What a vehicle would read."""

import json
from typing import Any

from coldloop import _core
from coldloop._readings import Readings, text


def simulate(vehicle: Readings) -> dict[str, Any]:
    """The steady state of a vehicle's air conditioning, described in the shape of a readings file.

    ``system`` and ``conditions`` are those of a readings file; ``vehicle`` may name a ``class``, and ``faults`` gives
    each fault its severity, a wrong refrigerant its name or also how much of the charge it is:
    ``{"undercharge": "40 %", "wrong-refrigerant": "30 % R-22"}``. The answer is plain SI with unit and datum in the key:
    ``readings``, ``swing``, ``looks``, ``states``, ``figures``, ``solver``. Source: the physical model of
    ``vehicle::simulate``, whose parameters are in ``tables/vehicle``. Raises a ``ColdloopError`` whose ``key`` names
    what cannot be read, ``OutOfRangeError``, ``NotAvailableError`` and ``NoConvergenceError``.

    >>> sound = {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "variable-internal"},
    ...          "conditions": {"ambient": "30 °C", "altitude": "1600 m"}}
    >>> worn = {**sound, "faults": {"worn-compressor": "50 %"}}
    >>> simulate(worn)["readings"]["high_side_pa_gauge"] < simulate(sound)["readings"]["high_side_pa_gauge"]
    True
    """
    answer: dict[str, Any] = json.loads(_core.simulate(text(vehicle)))
    return answer
