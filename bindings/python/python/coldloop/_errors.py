"""What the library raises, one class for each kind of error.

Generated from tables/names.toml by tables/names; edit the table, not this file.
"""

from math import nan
from typing import ClassVar


class ColdloopError(Exception):
    """Any refusal of the library.

    ``quantity`` names what it concerns; ``value``, ``low`` and ``high`` are in SI, NaN where they do not apply; ``key``
    is the entry of the readings that was refused, empty elsewhere.
    """

    code: ClassVar[int] = 0

    def __init__(
        self,
        message: str,
        quantity: str = "",
        value: float = nan,
        low: float = nan,
        high: float = nan,
        key: str = "",
    ):
        super().__init__(message, quantity, value, low, high, key)
        self.quantity = quantity
        self.value = value
        self.low = low
        self.high = high
        self.key = key

    def __str__(self) -> str:
        return str(self.args[0])


class OutOfRangeError(ColdloopError, ValueError):
    """The value lies outside the range in which an answer would be physical."""

    code = 1


class NotFiniteError(ColdloopError, ValueError):
    """The value is NaN or infinite."""

    code = 2


class MissingUnitError(ColdloopError, ValueError):
    """A quantity was written without its unit."""

    code = 3


class MissingDatumError(ColdloopError, ValueError):
    """A pressure was written without saying gauge, absolute or vacuum."""

    code = 4


class UnknownUnitError(ColdloopError, ValueError):
    """The unit is not one that this quantity can have."""

    code = 5


class DecimalCommaError(ColdloopError, ValueError):
    """A comma was used as the decimal mark."""

    code = 6


class NotANumberError(ColdloopError, ValueError):
    """The text does not start with a number."""

    code = 7


class UnknownNameError(ColdloopError, ValueError):
    """The name is not in the vocabulary."""

    code = 8


class NoConvergenceError(ColdloopError, ArithmeticError):
    """A solver stopped before it reached its tolerance."""

    code = 9


class TwoPhaseError(ColdloopError, ValueError):
    """Pressure and temperature lie on the saturation line and do not fix the state."""

    code = 10


class MissingError(ColdloopError, ValueError):
    """A value that the answer needs was not given."""

    code = 11


class InconsistentError(ColdloopError, ValueError):
    """Two given values contradict each other."""

    code = 12


class NotAvailableError(ColdloopError, LookupError):
    """No published data support an answer here."""

    code = 13


class FormatError(ColdloopError, ValueError):
    """The text is not a readings file."""

    code = 14


BY_CODE: dict[int, type[ColdloopError]] = {
    1: OutOfRangeError,
    2: NotFiniteError,
    3: MissingUnitError,
    4: MissingDatumError,
    5: UnknownUnitError,
    6: DecimalCommaError,
    7: NotANumberError,
    8: UnknownNameError,
    9: NoConvergenceError,
    10: TwoPhaseError,
    11: MissingError,
    12: InconsistentError,
    13: NotAvailableError,
    14: FormatError,
}

__all__ = [
    "ColdloopError",
    "OutOfRangeError",
    "NotFiniteError",
    "MissingUnitError",
    "MissingDatumError",
    "UnknownUnitError",
    "DecimalCommaError",
    "NotANumberError",
    "UnknownNameError",
    "NoConvergenceError",
    "TwoPhaseError",
    "MissingError",
    "InconsistentError",
    "NotAvailableError",
    "FormatError",
]
