"""Refrigerants."""

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, apply
from coldloop._state import State, state


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

    def bubble_pressure(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Pressure in Pa, absolute, at which the liquid begins to boil.

        From the lowest temperature of the equation of state to the critical point. Raises ``OutOfRangeError`` and
        ``NotFiniteError``.

        >>> round(Refrigerant("R-134a").bubble_pressure(273.15))
        292803
        """
        return apply(_core.bubble_pressure, temperature_k, errors=errors, code=self._code)

    def dew_pressure(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Pressure in Pa, absolute, at which the vapour begins to condense. Range and errors as ``bubble_pressure``.

        >>> Refrigerant("R-1234yf").dew_pressure([263.15, 273.15]).round()
        array([221785., 315880.])
        """
        return apply(_core.dew_pressure, temperature_k, errors=errors, code=self._code)

    def bubble_temperature(self, pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
        """Temperature in K at which the liquid begins to boil, up to the critical pressure.

        Raises ``OutOfRangeError`` and ``NotFiniteError``.

        >>> round(Refrigerant("R-134a").bubble_temperature(101_325.0), 2)
        247.08
        """
        return apply(_core.bubble_temperature, pressure_pa_abs, errors=errors, code=self._code)

    def dew_temperature(self, pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
        """Temperature in K at which the vapour begins to condense. Range and errors as ``bubble_temperature``.

        >>> round(Refrigerant("R-1234yf").dew_temperature(101_325.0), 2)
        243.69
        """
        return apply(_core.dew_temperature, pressure_pa_abs, errors=errors, code=self._code)

    def state(
        self,
        *,
        temperature_k: Numbers | None = None,
        pressure_pa_abs: Numbers | None = None,
        quality: Numbers | None = None,
        reference: str = "IIR",
        errors: Errors = "raise",
    ) -> State:
        """The state at two of temperature in K, absolute pressure in Pa and quality (0 liquid, 1 vapour).

        ``reference`` is ``IIR``, ``ASHRAE`` or ``NBP``. Raises ``OutOfRangeError``, ``NotFiniteError``, and
        ``TwoPhaseError`` for a temperature and pressure on the saturation line.

        >>> suction = Refrigerant("R-134a").state(temperature_k=283.15, pressure_pa_abs=300e3)
        >>> suction.phase, round(suction.density_kg_m3, 2)
        ('vapour', 14.1)
        """
        given = {"temperature_k": temperature_k, "pressure_pa_abs": pressure_pa_abs, "quality": quality}
        return state(self._code, given, errors, reference)

    def __repr__(self) -> str:
        return f"Refrigerant({self.name!r})"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Refrigerant) and self._code == other._code

    def __hash__(self) -> int:
        return hash((Refrigerant, self._code))
