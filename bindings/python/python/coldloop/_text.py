"""Quantities as text with their unit."""

from coldloop import _core


def quantities() -> list[str]:
    """The quantities that ``quantity`` reads.

    >>> "gauge pressure" in quantities()
    True
    """
    return _core.quantities()


def quantity(kind: str, text: str) -> float:
    """The value in SI of a quantity written with its unit, as in a readings file.

    A unit is required, a pressure says its datum, a decimal comma is refused; case, spaces and degree signs do not
    matter. Raises ``MissingUnitError``, ``MissingDatumError``, ``UnknownUnitError``, ``DecimalCommaError``,
    ``NotANumberError``, ``NotFiniteError``, ``OutOfRangeError``, and ``UnknownNameError`` for a kind that is none of
    ``quantities()``.

    >>> quantity("gauge pressure", "2.4 bar gauge"), quantity("altitude", "5250 ft")
    (240000.0, 1600.2)
    """
    if not isinstance(text, str):
        raise TypeError(f'a quantity is text with its unit, as in "35 psig", not {text!r:.80}')
    return _core.quantity(kind, text)
