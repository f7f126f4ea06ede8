"""Charges of any composition: leaked, mixed, contaminated."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, plain, several, shaped, strict
from coldloop._refrigerant import Refrigerant

AIR = "air"
MOST_COMPONENTS = 8


@dataclass(frozen=True, slots=True)
class PhaseSplit:
    """A charge at a temperature and pressure: floats for floats, otherwise what came in, in the broadcast shape.

    All but the density is NaN where there is one phase.

    >>> PhaseSplit.__match_args__[:2]
    ('density_kg_m3', 'quality')
    """

    density_kg_m3: Answer
    """Density of the whole charge."""
    quality: Answer
    """Mass fraction of vapour, 0 to 1."""
    liquid_density_kg_m3: Answer
    vapour_density_kg_m3: Answer
    liquid: dict[str, Answer]
    """Mass fractions in the denser phase, by designation; ``air`` where the charge holds air."""
    vapour: dict[str, Answer]
    """The same of the other phase."""


@dataclass(frozen=True, slots=True)
class Remainder:
    """What a leak has left; floats for floats, otherwise what came in, in the broadcast shape.

    >>> Remainder.__match_args__
    ('pressure_pa_abs', 'has_liquid', 'composition')
    """

    pressure_pa_abs: Answer
    """At rest."""
    has_liquid: Answer
    """Whether liquid is left."""
    composition: dict[str, Answer]
    """Mass fractions by designation; ``air`` where the charge holds air. It may be the parts of a ``Charge``."""


class Charge:
    """A charge of masses of refrigerants, pure or blends, in any unit that they share: kilograms, fractions, percent.

    ``air`` among the parts is dry air. A blend is replaced by its components, and equal components are added up. The
    saturation lines of a listed refrigerant alone are precomputed, see ``Refrigerant``; here bubble and dew points are solved
    with the mixture model, which takes about a tenth of a millisecond. Raises ``UnknownNameError``, ``OutOfRangeError`` for a mass below zero or above 1000 and
    for more than eight components (three of them of air), ``NotFiniteError``, and ``MissingError`` without a refrigerant.

    >>> topped_up = Charge({"R-407C": 4.0, "R-134a": 1.0})
    >>> {name: round(share, 3) for name, share in topped_up.composition.items()}
    {'R-32': 0.184, 'R-125': 0.2, 'R-134a': 0.616}
    """

    __slots__ = ("_given", "composition")

    composition: dict[str, float]
    """Mass fractions by designation; ``air`` where there is air."""

    def __init__(self, parts: Mapping[str | Refrigerant, float]):
        if not isinstance(parts, Mapping):
            raise TypeError(f'a charge is a mapping from refrigerants to masses, as {{"R-134a": 1.0}}, not {type(parts).__name__}')
        codes = []
        air = 0.0
        for part, amount in parts.items():
            mass = float(plain(f"the mass of {part}", amount))
            if part == AIR:
                air = mass
                continue
            refrigerant = part if isinstance(part, Refrigerant) else Refrigerant(part)
            codes.append((refrigerant._code, mass))
        self._given = (codes, air)
        shares, air = _core.charge_shares(self._given)
        self.composition = dict(shares) | ({AIR: air} if air > 0.0 else {})

    def bubble_pressure(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Pressure in Pa, absolute, at which the liquid begins to boil; air dissolved in it counts.

        From 193.15 K to 473.15 K or the critical point of the charge. Source: the mixture model, see ``mixture`` of the
        Rust crate. Raises ``OutOfRangeError``, ``NotFiniteError`` and ``NoConvergenceError``.

        >>> round(Charge({"R-134a": 0.9, "R-22": 0.1}).bubble_pressure(273.15), -2)
        322900.0
        """
        return self._point("bubble_pressure", errors, temperature_k=temperature_k)

    def dew_pressure(self, temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
        """Pressure in Pa, absolute, at which the vapour begins to condense. Range, source and errors as
        ``bubble_pressure``.

        >>> round(Charge({"R-134a": 0.9, "R-22": 0.1}).dew_pressure(273.15), -2)
        310800.0
        """
        return self._point("dew_pressure", errors, temperature_k=temperature_k)

    def bubble_temperature(self, pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
        """Temperature in K at which the liquid begins to boil. Source and errors as ``bubble_pressure``.

        >>> round(Charge({"R-134a": 0.9, "R-22": 0.1}).bubble_temperature(300e3), 2)
        271.08
        """
        return self._point("bubble_temperature", errors, pressure_pa_abs=pressure_pa_abs)

    def dew_temperature(self, pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> Answer:
        """Temperature in K at which the vapour begins to condense. Source and errors as ``bubble_pressure``.

        >>> round(Charge({"R-134a": 0.9, "R-22": 0.1}).dew_temperature(300e3), 2)
        272.17
        """
        return self._point("dew_temperature", errors, pressure_pa_abs=pressure_pa_abs)

    def split(self, temperature_k: Numbers, pressure_pa_abs: Numbers, *, errors: Errors = "raise") -> PhaseSplit:
        """The charge at a temperature and pressure: one phase, or liquid and vapour with what each is made of.

        Source and errors as ``bubble_pressure``.

        >>> phase_split = Charge({"R-407C": 1.0}).split(298.15, 1.15e6)
        >>> round(phase_split.quality, 2), round(phase_split.vapour["R-32"], 2)
        (0.23, 0.3)
        """
        raising = strict(errors)

        def columns(t_k: Any, p_pa: Any) -> list[Any]:
            return _core.charge_split(t_k, p_pa, raising, self._given)

        arguments = {"temperature_k": temperature_k, "pressure_pa_abs": pressure_pa_abs}
        found = several(columns, arguments, 4 + 2 * (MOST_COMPONENTS + 1))
        density, quality, liquid, vapour, *shares = found
        sides = self._by_name(shares), self._by_name(shares[MOST_COMPONENTS + 1 :])
        return PhaseSplit(density, quality, liquid, vapour, *sides)

    def leaked(
        self,
        temperature_k: Numbers,
        density_kg_m3: Numbers,
        lost: Numbers,
        *,
        leak_phase: str = "vapour",
        errors: Errors = "raise",
    ) -> Remainder:
        """What is left in a circuit at rest when the share ``lost`` (0 to 0.99) of the mass has escaped as ``leak_phase``:
        ``vapour`` or ``liquid``.

        ``density_kg_m3`` is the charge before the leak over the inner volume of the circuit. A leak while the system runs lies
        between the two phases. Source: Rayleigh's distillation, Phil. Mag. 4 (1902) 521,
        with the mixture model. Raises as ``bubble_pressure``; ``OutOfRangeError`` also for a density at which the charge is
        not liquid and vapour; ``UnknownNameError`` for another phase.

        >>> left = Charge({"R-407C": 1.0}).leaked(298.15, 300.0, [0.0, 0.5])
        >>> left.composition["R-134a"].round(3), left.has_liquid
        (array([0.52 , 0.613]), array([ True,  True]))
        """
        raising = strict(errors)

        def columns(t_k: Any, rho: Any, lost: Any) -> list[Any]:
            return _core.charge_leaked(t_k, rho, lost, raising, self._given, leak_phase)

        arguments = {"temperature_k": temperature_k, "density_kg_m3": density_kg_m3, "lost": lost}
        found = several(columns, arguments, 3 + MOST_COMPONENTS)
        return Remainder(found[0], found[1] == 1.0, self._by_name(found[2:]))

    def _point(self, what: str, errors: Errors, **argument: Numbers) -> Answer:
        raising = strict(errors)
        return shaped(lambda x: _core.charge_point(x, raising, self._given, what), argument)

    def _by_name(self, figures: list[Answer]) -> dict[str, Answer]:
        refrigerants = [name for name in self.composition if name != AIR]
        named = dict(zip(refrigerants, figures, strict=False))
        return named | ({AIR: figures[MOST_COMPONENTS]} if AIR in self.composition else {})

    def __repr__(self) -> str:
        return f"Charge({self.composition!r})"
