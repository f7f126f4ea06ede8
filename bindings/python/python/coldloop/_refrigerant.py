"""Refrigerants."""

from coldloop import _core


def refrigerants() -> list[str]:
    """The ANSI/ASHRAE Standard 34 designation of every refrigerant that the library knows.

    >>> "R-134a" in refrigerants()
    True
    """
    return _core.refrigerants()


class Refrigerant:
    """A refrigerant by its designation, which may be written R-134a, R134a, r134a or 134a.

    Raises ``UnknownNameError``.

    >>> Refrigerant("r134a")
    Refrigerant('R-134a')
    """

    __slots__ = ("_code", "name")

    name: str
    """The designation."""

    def __init__(self, name: str):
        self.name, self._code = _core.refrigerant(name)

    def __repr__(self) -> str:
        return f"Refrigerant({self.name!r})"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Refrigerant) and self._code == other._code

    def __hash__(self) -> int:
        return hash((Refrigerant, self._code))
