"""What is published of a refrigerant."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """Published facts of a refrigerant, in SI; what is not known is ``None``.

    They are in ``tables/refrigerants`` and ``tables/blends``, each with its source; ``sources`` has the sources of the figures that are
    not part of the equation of state.

    >>> facts = Refrigerant("R-134a").facts
    >>> facts.safety_group, facts.gwp["AR6"], facts.flammability_limit_volume
    ('A1', 1530.0, None)
    """

    designation: str
    chemical_name: str
    cas_number: str | None
    """``None`` for a blend."""
    composition: dict[str, float]
    """Mass fraction of every component by its designation."""
    molar_mass_kg_mol: float
    safety_group: str | None
    """ANSI/ASHRAE Standard 34: toxicity A or B, flammability 1, 2L, 2 or 3."""
    flammability_limit_volume: float | None
    """Lower flammability limit in air, by volume, 0 to 1."""
    flammability_limit_kg_m3: float | None
    ozone_depletion: float | None
    """Ozone depletion potential, R-11 being 1."""
    gwp: dict[str, float]
    """Warming potential over 100 years by report of the IPCC; empty where none is known."""
    gwp_is_upper_bound: dict[str, bool]
    """Whether the report only says "less than"."""
    critical_temperature_k: float
    critical_pressure_pa_abs: float
    critical_density_kg_m3: float
    lowest_temperature_k: float
    highest_temperature_k: float
    highest_pressure_pa_abs: float
    equation: str
    """The publication of the equation of state."""
    equation_doi: str | None
    equation_uncertainty: str | None
    bubble_uncertainty_k: float | None
    """Standard uncertainty of a bubble temperature of a blend, from its pairs; ``None`` for a pure refrigerant."""
    dew_uncertainty_k: float | None
    """The same of a dew temperature."""
    bubble_is_reliable: bool
    """Whether the bubble line of the mixture model can be relied on."""
    estimated_pairs: list[tuple[str, str]]
    """The pairs of components without published parameters."""
    on_the_road: str | None
    """Where a blend is used: common practice, no source."""
    sources: dict[str, str]
