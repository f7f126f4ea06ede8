"""Refrigerants."""

from collections.abc import Callable
from typing import Any

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, apply, shaped, strict
from coldloop._facts import Facts
from coldloop._state import PAIRS, State, solved, state, two


def refrigerants() -> list[str]:
    """The ANSI/ASHRAE Standard 34 designation of every refrigerant that the library knows.

    >>> "R-134a" in refrigerants()
    True
    """
    return _core.refrigerants()


class Refrigerant:
    """A refrigerant by its designation, which may be written R-134a, R134a, r134a or 134a.

    Raises ``UnknownNameError``, which says what to write for a common name such as CO2.

    >>> Refrigerant("r134a")
    Refrigerant('R-134a')
    """

    __slots__ = ("_code", "name")

    name: str
    """The designation."""

    def __init__(self, name: str):
        if not isinstance(name, str):
            raise TypeError(f'a refrigerant is named by its designation, as in Refrigerant("R-134a"), not {name!r:.80}')
        self.name, self._code = _core.refrigerant(name)

    @property
    def facts(self) -> Facts:
        """What is published: safety group, warming potential, composition, critical point, limits, with sources.

        >>> Refrigerant("R-1234yf").facts.safety_group
        'A2L'
        """
        return Facts(**_core.facts(self._code))

    def bubble_pressure(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Pressure in Pa, absolute, at which the liquid begins to boil. Subcooling is counted from here.

        From the lowest temperature of the equation of state to the critical point. Source: equilibria of the equation
        of state, see ``facts``. Raises ``OutOfRangeError`` and ``NotFiniteError``.

        >>> round(Refrigerant("R-134a").bubble_pressure(273.15))
        292803
        """
        return apply(_core.bubble_pressure, errors, self._code, temperature_k=temperature_k)

    def dew_pressure(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Pressure in Pa, absolute, at which the vapour begins to condense. Superheat is counted from here.

        Range, source and errors as ``bubble_pressure``.

        >>> Refrigerant("R-1234yf").dew_pressure([263.15, 273.15]).round()
        array([221785., 315880.])
        """
        return apply(_core.dew_pressure, errors, self._code, temperature_k=temperature_k)

    def bubble_temperature(self, pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
        """Temperature in K at which the liquid begins to boil, up to the critical pressure.

        Source as ``bubble_pressure``. Raises ``OutOfRangeError`` and ``NotFiniteError``.

        >>> round(Refrigerant("R-134a").bubble_temperature(101_325.0), 2)
        247.08
        """
        return apply(_core.bubble_temperature, errors, self._code, pressure_pa_abs=pressure_pa_abs)

    def dew_temperature(self, pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
        """Temperature in K at which the vapour begins to condense. Range, source and errors as ``bubble_temperature``.

        >>> round(Refrigerant("R-1234yf").dew_temperature(101_325.0), 2)
        243.69
        """
        return apply(_core.dew_temperature, errors, self._code, pressure_pa_abs=pressure_pa_abs)

    def glide(self, pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
        """How much warmer in K the dew point is than the bubble point; 0 for a pure refrigerant.

        Range, source and errors as ``bubble_temperature``.

        >>> round(Refrigerant("R-407C").glide(500e3), 1)
        6.2
        """
        return apply(_core.glide, errors, self._code, pressure_pa_abs=pressure_pa_abs)

    def saturation_slope(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Slope dp/dT of the saturation line, of a blend of its dew line, in Pa/K. Range, source and errors as ``bubble_pressure``.

        >>> round(Refrigerant("R-134a").saturation_slope(273.15))
        10609
        """
        return apply(_core.saturation_slope, errors, self._code, temperature_k=temperature_k)

    def bubble_slope(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Slope dp/dT of the bubble line in Pa/K. Range, source and errors as ``bubble_pressure``.

        >>> round(Refrigerant("R-407C").bubble_slope(273.15))
        18468
        """
        return apply(_core.bubble_slope, errors, self._code, temperature_k=temperature_k)

    def evaporating_mean(
        self,
        pressure_pa_abs: Numbers,
        *,
        quality: Numbers | None = None,
        enthalpy_j_kg: Numbers | None = None,
        reference: str = "IIR",
        errors: Errors = "raise",
    ) -> Answer:
        """The mean of the evaporating range in K: half way between the temperature of the inlet and the dew point.

        The inlet is given by its ``quality`` (mass fraction of vapour) or by the ``enthalpy_j_kg`` of the liquid line, counted
        from ``reference``; where liquid comes in below its bubble point, the range begins at the bubble point. Of a pure
        refrigerant the mean is the saturation temperature. Superheat does not count from here but from
        ``dew_temperature``. Source: EN 12900 and AHRI Standard 540, from memory. Raises as ``state``;
        ``OutOfRangeError`` also for an inlet above the dew point.

        >>> r407c = Refrigerant("R-407C")
        >>> round(r407c.dew_temperature(500e3) - r407c.evaporating_mean(500e3, quality=0.25), 2)
        2.35
        """
        if (quality is None) == (enthalpy_j_kg is None):
            raise TypeError("give quality or enthalpy_j_kg")
        raising = strict(errors)
        inlet = {"quality": quality} if enthalpy_j_kg is None else {"enthalpy_j_kg": enthalpy_j_kg}
        origin = None if enthalpy_j_kg is None else reference
        return shaped(
            lambda p_pa, x: _core.evaporating_mean(p_pa, x, raising, self._code, origin),
            {"pressure_pa_abs": pressure_pa_abs, **inlet},
        )

    def latent_heat(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Heat in J/kg that boils the liquid into vapour, of a blend over its glide. Range, source and errors as ``bubble_pressure``.

        >>> round(Refrigerant("R-134a").latent_heat(273.15))
        198603
        """
        return apply(_core.latent_heat, errors, self._code, temperature_k=temperature_k)

    def liquid_density(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Density in kg/m3 of the liquid that begins to boil. Range, source and errors as ``bubble_pressure``.

        >>> round(Refrigerant("R-134a").liquid_density(273.15), 1)
        1294.8
        """
        return apply(_core.liquid_density, errors, self._code, temperature_k=temperature_k)

    def vapour_density(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Density in kg/m3 of the vapour that begins to condense. Range, source and errors as ``bubble_pressure``.

        >>> round(Refrigerant("R-134a").vapour_density(273.15), 2)
        14.43
        """
        return apply(_core.vapour_density, errors, self._code, temperature_k=temperature_k)

    def state(
        self,
        *,
        temperature_k: Numbers | None = None,
        pressure_pa_abs: Numbers | None = None,
        density_kg_m3: Numbers | None = None,
        enthalpy_j_kg: Numbers | None = None,
        entropy_j_kg_k: Numbers | None = None,
        quality: Numbers | None = None,
        reference: str = "IIR",
        errors: Errors = "raise",
    ) -> State:
        """The state at two figures: temperature and pressure, temperature or pressure and quality (0 liquid, 1 vapour),
        temperature and density, pressure and enthalpy or entropy, or enthalpy and entropy.

        ``reference`` is the state from which enthalpy and entropy count: ``IIR``, ``ASHRAE`` or ``NBP``. Source: the
        equation of state, see ``facts``. Raises ``OutOfRangeError`` (a density as molar density, mol/m3),
        ``NotFiniteError``, ``TwoPhaseError`` for a temperature and pressure on the saturation line,
        ``NotAvailableError`` where the refrigerant has no such reference, ``NoConvergenceError``.

        >>> suction = Refrigerant("R-134a").state(temperature_k=283.15, pressure_pa_abs=300e3)
        >>> suction.phase, round(suction.density_kg_m3, 2)
        ('vapour', 14.1)
        >>> inlet = Refrigerant("R-134a").state(pressure_pa_abs=300e3, enthalpy_j_kg=250e3)
        >>> inlet.phase, round(inlet.quality, 3)
        ('two-phase', 0.248)
        """
        given = {
            "temperature_k": temperature_k,
            "pressure_pa_abs": pressure_pa_abs,
            "density_kg_m3": density_kg_m3,
            "enthalpy_j_kg": enthalpy_j_kg,
            "entropy_j_kg_k": entropy_j_kg_k,
            "quality": quality,
        }
        return state(self._code, given, errors, reference)

    def superheated_liquid(
        self,
        temperature_k: Numbers,
        pressure_pa_abs: Numbers,
        *,
        reference: str = "IIR",
        errors: Errors = "raise",
    ) -> State:
        """The liquid below its saturation pressure, which has not boiled yet: metastable, up to the spinodal.

        Source: the equation of state extrapolated from the stable liquid. Raises as ``state``; ``OutOfRangeError`` has
        the spinodal and the saturation line as bounds.

        >>> Refrigerant("R-134a").superheated_liquid(300.0, 650e3).phase
        'liquid'
        """
        return self._held("superheated liquid", temperature_k, pressure_pa_abs, reference, errors)

    def subcooled_vapour(
        self,
        temperature_k: Numbers,
        pressure_pa_abs: Numbers,
        *,
        reference: str = "IIR",
        errors: Errors = "raise",
    ) -> State:
        """The vapour above its saturation pressure, which has not condensed yet. Source and errors as
        ``superheated_liquid``.

        >>> Refrigerant("R-134a").subcooled_vapour(300.0, 720e3).phase
        'vapour'
        """
        return self._held("subcooled vapour", temperature_k, pressure_pa_abs, reference, errors)

    def _held(self, how: str, temperature_k: Numbers, pressure_pa_abs: Numbers, reference: str, errors: Errors) -> State:
        pair = {"temperature_k": temperature_k, "pressure_pa_abs": pressure_pa_abs}
        return solved(how, self._code, pair, errors, reference)

    def viscosity(
        self,
        *,
        temperature_k: Numbers | None = None,
        pressure_pa_abs: Numbers | None = None,
        density_kg_m3: Numbers | None = None,
        quality: Numbers | None = None,
        errors: Errors = "raise",
    ) -> Answer:
        """Dynamic viscosity in Pa s of one phase, at temperature and pressure, at temperature and density, or of the saturated
        liquid (a quality of 0) or vapour (1) at temperature or pressure.

        Source: a published correlation, for R-134a, R-1234yf, R-744, R-152a, R-32, R-290, R-600a, R-125, R-1234ze(E), R-22 and
        R-12. Raises as ``state``; ``NotAvailableError`` for all others, for blends, and for liquid and vapour together;
        ``OutOfRangeError`` beyond the temperatures and pressures of the correlation.

        >>> r134a = Refrigerant("R-134a")
        >>> round(r134a.viscosity(temperature_k=283.15, pressure_pa_abs=300e3) * 1e6, 1)
        11.1
        >>> (r134a.viscosity(temperature_k=[273.15, 298.15], quality=0.0) * 1e6).round()
        array([267., 195.])
        """
        return self._transport(_core.viscosity, temperature_k, pressure_pa_abs, density_kg_m3, quality, errors)

    def conductivity(
        self,
        *,
        temperature_k: Numbers | None = None,
        pressure_pa_abs: Numbers | None = None,
        density_kg_m3: Numbers | None = None,
        quality: Numbers | None = None,
        errors: Errors = "raise",
    ) -> Answer:
        """Thermal conductivity in W/(m K) of one phase, with the enhancement about the critical point. Given, source and errors
        as ``viscosity``; ``NotAvailableError`` also at the critical point.

        >>> round(Refrigerant("R-1234yf").conductivity(temperature_k=298.15, quality=0.0) * 1e3)
        64
        """
        return self._transport(_core.conductivity, temperature_k, pressure_pa_abs, density_kg_m3, quality, errors)

    def surface_tension(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Surface tension in N/m between saturated liquid and vapour.

        From the lowest temperature of the equation of state to the critical one. Source: a published correlation, of the
        refrigerants of ``viscosity``. Raises ``OutOfRangeError``, ``NotFiniteError`` and ``NotAvailableError``.

        >>> round(Refrigerant("R-134a").surface_tension(298.15) * 1e3, 1)
        8.0
        """
        return apply(_core.surface_tension, errors, self._code, temperature_k=temperature_k)

    def _transport(
        self,
        core: Callable[..., Any],
        temperature_k: Numbers | None,
        pressure_pa_abs: Numbers | None,
        density_kg_m3: Numbers | None,
        quality: Numbers | None,
        errors: Errors,
    ) -> Answer:
        given = {
            "temperature_k": temperature_k,
            "pressure_pa_abs": pressure_pa_abs,
            "density_kg_m3": density_kg_m3,
            "quality": quality,
        }
        pair = two(given, PAIRS[:4])
        raising, names = strict(errors), " ".join(pair)
        return shaped(lambda first, second: core(first, second, raising, self._code, names), pair)

    def second_virial(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Second virial coefficient in m3/mol, over the temperatures of the equation of state, see ``facts``.

        Raises ``OutOfRangeError`` and ``NotFiniteError``.

        >>> round(Refrigerant("R-134a").second_virial(300.0) * 1e6)
        -485
        """
        return apply(_core.second_virial, errors, self._code, temperature_k=temperature_k)

    def third_virial(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Third virial coefficient in m6/mol2. Range, source and errors as ``second_virial``.

        >>> round(Refrigerant("R-134a").third_virial(300.0) * 1e12)
        44573
        """
        return apply(_core.third_virial, errors, self._code, temperature_k=temperature_k)

    def __repr__(self) -> str:
        return f"Refrigerant({self.name!r})"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Refrigerant) and self._code == other._code

    def __hash__(self) -> int:
        return hash((Refrigerant, self._code))
