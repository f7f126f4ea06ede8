"""Charges of any composition, what follows from readings, and units, in every kind of container."""

import coldloop
import numpy as np
import pandas as pd
import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

BLEND = coldloop.Charge({"R-407C": 1.0})


def test_a_blend_alone_has_its_listed_lines():
    listed = coldloop.Refrigerant("R-407C")
    for line in ("bubble_pressure", "dew_pressure"):
        found = getattr(BLEND, line)([263.15, 298.15])
        assert np.allclose(found, getattr(listed, line)([263.15, 298.15]), rtol=1e-9, atol=0.0)
    assert BLEND.composition == pytest.approx(listed.facts.composition, abs=1e-12)


def test_any_unit_of_mass_and_any_spelling_is_the_same_charge():
    grams = coldloop.Charge({"r134a": 900, coldloop.Refrigerant("R-22"): 100, "air": 0})
    shares = coldloop.Charge({"R-134a": 0.9, "R-22": 0.1})
    assert grams.composition == pytest.approx(shares.composition)
    assert grams.dew_pressure(280.0) == pytest.approx(shares.dew_pressure(280.0), rel=1e-12)


def test_a_leak_is_an_array_and_its_end_a_charge():
    left = BLEND.leaked(298.15, 300.0, pd.Series([0.1, 0.5, 0.99], index=["a", "b", "c"]))
    assert list(left.composition["R-32"].index) == ["a", "b", "c"]
    assert list(left.has_liquid) == [True, True, False]
    assert left.composition["R-32"].is_monotonic_decreasing
    again = coldloop.Charge({name: share["b"] for name, share in left.composition.items()})
    assert again.bubble_pressure(298.15) > left.pressure_pa_abs["b"] > again.dew_pressure(298.15)


def test_a_phase_split_closes():
    charge = coldloop.Charge({"R-407C": 0.9, "R-22": 0.08, "air": 0.02})
    p_pa = 0.5 * (charge.bubble_pressure(298.15) + charge.dew_pressure(298.15))
    phase_split = charge.split(298.15, [p_pa, 1e4])
    for name, share in charge.composition.items():
        mixed = (1 - phase_split.quality) * phase_split.liquid[name] + phase_split.quality * phase_split.vapour[name]
        assert mixed[0] == pytest.approx(share, abs=1e-9)
        assert np.isnan(mixed[1])
    assert np.isnan(phase_split.quality[1]) and phase_split.density_kg_m3[1] < 1.0


def test_what_is_no_charge_is_refused():
    with pytest.raises(coldloop.MissingError):
        coldloop.Charge({"air": 1.0})
    with pytest.raises(coldloop.UnknownNameError, match='"R-9999" is not known here; write one of R-134a'):
        coldloop.Charge({"R-9999": 1.0})
    with pytest.raises(coldloop.UnknownNameError, match="did you mean R-134a"):
        coldloop.Charge({"R-134": 1.0})
    for wrong in ("R-134a", {"R-134a": "1"}, {"R-134a": pint.UnitRegistry().Quantity(1.0, "kg")}):
        with pytest.raises(TypeError):
            coldloop.Charge(wrong)
    with pytest.raises(coldloop.NotFiniteError):
        coldloop.Charge({"R-134a": float("nan")})
    with pytest.raises(coldloop.OutOfRangeError):
        coldloop.Charge({"R-438A": 1.0, "R-22": 1.0, "air": 0.1})
    with pytest.raises(coldloop.UnknownNameError):
        BLEND.leaked(298.15, 300.0, 0.5, leak_phase="sideways")
    assert np.isnan(BLEND.dew_pressure(470.0, errors="nan"))
    with pytest.raises(TypeError):
        BLEND.dew_pressure(pint.UnitRegistry().Quantity(3.0, "bar"))


def test_a_pressure_at_rest_over_an_array():
    pressures = np.array([500e3, 665.8e3, 800e3])
    found = coldloop.at_rest(
        "R-134a", 298.15, temperature_uncertainty_k=0.3, pressure_pa_abs=pressures, pressure_uncertainty_pa=3e3
    )
    assert list(found.pressure_match) == ["too-low", "agrees", "too-high"]
    assert found.gas_share[1] == 0.0 and found.gas_share[2] == pytest.approx(0.168, abs=1e-3)
    with pytest.raises(TypeError):
        coldloop.at_rest("R-134a", 298.15, temperature_uncertainty_k=0.3, pressure_pa_gauge=500e3, pressure_uncertainty_pa=3e3)


def test_derived_figures_carry_their_uncertainty():
    found = coldloop.derive("R-407C", low_side_pa=(500e3, 5e3), high_side_pa=2e6, suction_line_k=(285.15, 0.5), ambient_k=300.0)
    dew_k, uncertainty_k = found.low_dew_k
    assert dew_k == coldloop.Refrigerant("R-407C").dew_temperature(500e3) and uncertainty_k > 0.2
    assert found.superheat_k[0] == coldloop.superheat("R-407C", 285.15, pressure_pa_abs=500e3)
    assert found.pressure_ratio[0] == 4.0 and found.subcooling_k is None
    with pytest.raises(coldloop.OutOfRangeError):
        coldloop.derive("R-134a", low_side_pa=(500e3, -1.0))


def test_units_are_those_of_their_exact_definitions():
    assert coldloop.psi_to_pa(1.0) == pytest.approx(6894.757293168361, rel=1e-15)  # NIST SP 811, B.8
    assert coldloop.inhg_to_pa(1.0) == pytest.approx(3386.388640341, rel=1e-12)
    pairs = [("psi", "pa"), ("bar", "pa"), ("inhg", "pa"), ("microns", "pa"), ("celsius", "kelvin"), ("fahrenheit", "kelvin")]
    for unit, si in pairs:
        there, back = getattr(coldloop, f"{unit}_to_{si}"), getattr(coldloop, f"{si}_to_{unit}")
        assert np.allclose(back(there([12.5, 400.0])), [12.5, 400.0], rtol=1e-13, atol=0.0)


def test_the_mean_of_the_evaporating_range_is_told_only_by_its_name():
    blend = coldloop.Refrigerant("R-407C")
    mean = blend.evaporating_mean(500e3, quality=[0.0, 0.3, 1.0])
    assert mean[2] == pytest.approx(blend.dew_temperature(500e3)) and mean[0] < mean[1] < mean[2]
    assert coldloop.superheat(blend, 285.15, pressure_pa_abs=500e3) == 285.15 - blend.dew_temperature(500e3)
    with pytest.raises(TypeError):
        blend.evaporating_mean(500e3)


@given(
    st.dictionaries(st.sampled_from(coldloop.refrigerants()), st.floats(0.0, 1.0), min_size=1, max_size=3),
    st.floats(150.0, 480.0),
    st.floats(1e3, 5e6),
)
def test_any_charge_is_answered_or_refused(parts, t_k, p_pa):
    try:
        charge = coldloop.Charge(parts)
        shares = [sum(charge.composition.values())]
        phase_split = charge.split(t_k, p_pa)
    except coldloop.ColdloopError:
        return
    if not np.isnan(phase_split.quality):
        shares += [sum(phase_split.liquid.values()), sum(phase_split.vapour.values())]
    assert shares == pytest.approx([1.0] * len(shares)) and phase_split.density_kg_m3 > 0.0
