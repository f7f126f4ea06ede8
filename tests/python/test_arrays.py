"""Shapes, kinds of array and units are kept; threads run in parallel."""

import math
import os
import pickle
import threading
import time

import astropy.units as astropy
import coldloop
import numpy as np
import pandas as pd
import pint
import polars as pl
import pytest
import xarray as xr
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.extra import numpy as arrays

R134A = coldloop.Refrigerant("R-134a")
UNIT = pint.UnitRegistry()


def cases(count):
    """100,000 cases in all where COLDLOOP_THOROUGH is set, a twentieth of that otherwise."""
    return settings(max_examples=count if os.environ.get("COLDLOOP_THOROUGH") else count // 20, deadline=None)


T_K = 280.0
P_PA = R134A.dew_pressure(T_K)


@pytest.mark.parametrize("dtype", ["f2", "f4", "f8", ">f8", "g", "i4", "u2"])
def test_every_kind_of_number_comes_in_and_float64_comes_out(dtype):
    answer = R134A.dew_pressure(np.full((2, 3), T_K, dtype=dtype))
    assert answer.shape == (2, 3)
    assert answer.dtype == np.float64
    assert (answer == P_PA).all()


def test_a_masked_element_is_no_number():
    answer = R134A.dew_pressure(np.ma.array([T_K, T_K], mask=[False, True]), errors="nan")
    assert answer[0] == P_PA
    assert math.isnan(answer[1])


def test_pandas_keeps_its_labels():
    series = pd.Series([T_K, 281.0], index=["a", "b"], name="t")
    answer = R134A.dew_pressure(series)
    assert isinstance(answer, pd.Series)
    assert list(answer.index) == ["a", "b"]
    assert answer["a"] == P_PA
    frame = pd.DataFrame({"x": [T_K], "y": [281.0]}, index=[7])
    answer = R134A.dew_pressure(frame)
    assert isinstance(answer, pd.DataFrame)
    assert answer.loc[7, "x"] == P_PA
    nullable = pd.Series([T_K, None], dtype="Float64")
    assert R134A.dew_pressure(nullable, errors="nan").isna().tolist() == [False, True]
    state = R134A.state(temperature_k=series, quality=1.0)
    assert state.phase.tolist() == ["two-phase"] * 2
    assert list(state.density_kg_m3.index) == ["a", "b"]
    with pytest.raises(ValueError, match="align"):
        coldloop.superheat("R-134a", series, pressure_pa_abs=series.rename({"a": "c"}) * 1e3)
    with pytest.raises(TypeError):
        R134A.dew_pressure(pd.Series(["280"]))


def test_polars_stays_polars():
    answer = R134A.dew_pressure(pl.Series([T_K, None]), errors="nan")
    assert isinstance(answer, pl.Series)
    assert answer[0] == P_PA
    with pytest.raises(TypeError):
        R134A.dew_pressure(pl.Series(["280"]))


def test_xarray_is_broadcast_by_dimension_and_keeps_its_coordinates():
    line = xr.DataArray([283.15, 285.15], dims="vehicle", coords={"vehicle": ["a", "b"]})
    pressure = xr.DataArray([300e3, 310e3, 320e3], dims="hour")
    answer = coldloop.superheat("R-134a", line, pressure_pa_abs=pressure)
    assert answer.dims == ("vehicle", "hour")
    assert list(answer.vehicle.values) == ["a", "b"]
    assert float(answer[1, 2]) == coldloop.superheat("R-134a", 285.15, pressure_pa_abs=320e3)
    state = R134A.state(temperature_k=line, quality=0.0)
    assert state.density_kg_m3.dims == state.phase.dims == ("vehicle",)


def test_units_in_the_metadata_of_an_array_are_believed():
    kelvin = xr.DataArray([T_K], attrs={"units": "K"})
    assert float(R134A.dew_pressure(kelvin)[0]) == P_PA
    with pytest.raises(TypeError, match="degC"):
        R134A.dew_pressure(xr.DataArray([7.0], attrs={"units": "degC"}))


def test_pint_quantities_are_converted():
    celsius = UNIT.Quantity(T_K - 273.15, "degC")
    assert R134A.dew_pressure(celsius) == pytest.approx(P_PA, rel=1e-14)
    many = UNIT.Quantity(np.array([T_K, T_K]), "kelvin")
    assert (R134A.dew_pressure(many) == P_PA).all()
    answer = coldloop.absolute_pressure(UNIT.Quantity(35.0, "psi"), UNIT.Quantity(101.325, "kPa"))
    assert answer == pytest.approx(coldloop.quantity("gauge pressure", "35 psig") + 101_325.0, rel=1e-14)
    assert R134A.state(temperature_k=celsius, quality=UNIT.Quantity(50.0, "percent")).quality == 0.5
    labelled = xr.DataArray(many, dims="x")
    assert float(R134A.dew_pressure(labelled)[0]) == P_PA


def test_astropy_quantities_are_converted():
    assert R134A.dew_pressure((T_K - 273.15) * astropy.deg_C) == pytest.approx(P_PA, rel=1e-14)
    assert (R134A.dew_pressure([T_K, T_K] * astropy.K) == P_PA).all()
    assert R134A.dew_temperature(300.0 * astropy.kPa) == R134A.dew_temperature(300e3)
    latent = R134A.state(pressure_pa_abs=3.0 * astropy.bar, enthalpy_j_kg=250.0 * astropy.kJ / astropy.kg)
    assert latent.quality == pytest.approx(0.248, abs=1e-3)


@pytest.mark.parametrize(
    "wrong",
    [
        UNIT.Quantity(1.0, "metre"),
        UNIT.Quantity([1.0, 2.0], "kPa"),
        1.0 * astropy.m,
        [UNIT.Quantity(280.0, "kelvin")],
        [[280.0 * astropy.K]],
        UNIT.Quantity(5.0, ""),
    ],
    ids=str,
)
def test_a_quantity_of_something_else_is_refused_and_never_stripped(wrong):
    with pytest.raises(TypeError):
        R134A.dew_pressure(wrong)


def test_every_pair_gives_the_same_state():
    suction = R134A.state(temperature_k=283.15, pressure_pa_abs=300e3)
    for pair in (
        ("temperature_k", "density_kg_m3"),
        ("pressure_pa_abs", "enthalpy_j_kg"),
        ("pressure_pa_abs", "entropy_j_kg_k"),
        ("enthalpy_j_kg", "entropy_j_kg_k"),
    ):
        again = R134A.state(**{name: getattr(suction, name) for name in pair})
        assert again.phase == "vapour"
        assert again.temperature_k == pytest.approx(283.15, rel=1e-9)
        assert again.pressure_pa_abs == pytest.approx(300e3, rel=1e-8)
    boiling = R134A.state(temperature_k=T_K, quality=[0.0, 1.0])
    assert boiling.density_kg_m3[0] == pytest.approx(R134A.liquid_density(T_K), rel=1e-12)
    assert boiling.density_kg_m3[1] == pytest.approx(R134A.vapour_density(T_K), rel=1e-12)
    assert np.diff(boiling.enthalpy_j_kg)[0] == pytest.approx(R134A.latent_heat(T_K), rel=1e-12)
    assert np.isfinite(boiling.cp_j_kg_k).all()
    with pytest.raises(TypeError, match="pair"):
        R134A.state(temperature_k=T_K)
    with pytest.raises(TypeError, match="pair"):
        R134A.state(density_kg_m3=10.0, quality=0.5)
    with pytest.raises(coldloop.TwoPhaseError):
        R134A.state(temperature_k=T_K, pressure_pa_abs=P_PA)


def test_facts_are_told_and_what_is_unknown_is_none():
    facts = R134A.facts
    assert (facts.safety_group, facts.ozone_depletion, facts.composition) == ("A1", 0.0, {"R-134a": 1.0})
    assert facts.flammability_limit_volume is None
    assert facts.gwp == {"AR4": 1430.0, "AR5": 1300.0, "AR6": 1530.0}
    assert "AR6" in facts.sources["gwp AR6"]
    assert R134A.dew_pressure(facts.critical_temperature_k) == pytest.approx(facts.critical_pressure_pa_abs, rel=1e-9)
    for name in coldloop.refrigerants():
        other = coldloop.Refrigerant(name).facts
        assert other.designation == name
        assert sum(other.composition.values()) == pytest.approx(1.0, rel=1e-15 * len(other.composition))


def test_moist_air_and_the_standard_atmosphere():
    air = coldloop.moist_air(298.15, 83_500.0, relative_humidity=[0.2, 0.4])
    for humidity in ("humidity_ratio", "dew_point_k", "wet_bulb_k"):
        again = coldloop.moist_air(298.15, 83_500.0, **{humidity: getattr(air, humidity)})
        assert again.relative_humidity == pytest.approx([0.2, 0.4], rel=1e-9)
    with pytest.raises(TypeError, match="one of"):
        coldloop.moist_air(298.15, 83_500.0)
    assert coldloop.standard_altitude(coldloop.standard_pressure(1600.0)) == pytest.approx(1600.0, abs=1e-6)
    # ISO 2533:1975, table 1, at 1,600 m: 277.75 K and 1.04764 kg/m3
    assert coldloop.standard_temperature(1600.0) == pytest.approx(277.75, abs=5e-3)
    assert coldloop.standard_density(1600.0) == pytest.approx(1.0476, abs=1e-4)


def test_the_interpreter_runs_on_while_arrays_are_worked_on():
    ticks, stop = [], threading.Event()

    def tick():
        while not stop.is_set():
            ticks.append(time.perf_counter())
            time.sleep(0.001)

    thread = threading.Thread(target=tick)
    thread.start()
    began = time.perf_counter()
    R134A.state(temperature_k=np.full(100_000, 283.15), pressure_pa_abs=300e3)
    ended = time.perf_counter()
    stop.set()
    thread.join()
    during = [t for t in ticks if began < t < ended]
    assert ended - began < 0.03 or len(during) >= 3


def test_a_saturated_side_has_all_figures_and_both_together_have_none():
    boiling = R134A.state(temperature_k=273.15, quality=0.0)
    assert boiling.cp_j_kg_k == pytest.approx(1341.0, abs=3.0) and boiling.speed_of_sound_m_s > 400.0
    wet, gas = R134A.state(temperature_k=273.15, quality=0.5), R134A.state(temperature_k=300.0, pressure_pa_abs=1e5)
    assert wet.cp_j_kg_k is None and wet.cv_j_kg_k is None and gas.quality is None


def test_a_pickled_state_equals_itself():
    several = R134A.state(temperature_k=[273.15, 280.0], quality=[0.0, 0.5])
    for state in (R134A.state(temperature_k=273.15, quality=0.5), several):
        assert pickle.loads(pickle.dumps(state)) == state and state != boiling_at(250.0)
    assert hash(boiling_at(250.0)) == hash(boiling_at(250.0))


def boiling_at(t_k):
    return R134A.state(temperature_k=t_k, quality=0.0)


numbers = st.floats(allow_nan=True, allow_infinity=True)
temperatures = st.one_of(numbers, st.floats(150.0, 500.0))
pressures = st.one_of(numbers, st.floats(1e2, 1e8))


@cases(40_000)
@given(st.sampled_from(coldloop.refrigerants()), temperatures, pressures)
def test_any_numbers_give_a_physical_state_or_a_typed_error(name, t_k, p_pa):
    refrigerant = coldloop.Refrigerant(name)
    try:
        state = refrigerant.state(temperature_k=t_k, pressure_pa_abs=p_pa)
    except coldloop.ColdloopError as error:
        assert error.quantity
        return
    assert state.density_kg_m3 > 0.0
    if state.phase == "two-phase":
        # A blend has two phases over a span of pressures; what is derived of one phase is undefined there.
        assert refrigerant.glide(p_pa) > 0.0 and 0.0 <= state.quality <= 1.0
        assert state.cp_j_kg_k is None and state.speed_of_sound_m_s is None
        return
    assert state.cp_j_kg_k > 0.0
    assert state.speed_of_sound_m_s > 0.0


@cases(30_000)
@given(st.sampled_from(coldloop.refrigerants()), temperatures)
def test_any_temperature_goes_to_pressure_and_back_or_is_refused(name, t_k):
    refrigerant = coldloop.Refrigerant(name)
    try:
        p_pa = refrigerant.dew_pressure(t_k)
    except (coldloop.OutOfRangeError, coldloop.NotFiniteError) as error:
        assert error.quantity == "temperature"
        assert math.isnan(refrigerant.dew_pressure(t_k, errors="nan"))
        return
    assert refrigerant.dew_temperature(p_pa) == pytest.approx(t_k, rel=1e-12)


@cases(20_000)
@given(numbers, numbers, numbers)
def test_any_numbers_give_moist_air_or_a_typed_error(t_k, p_pa, humidity):
    air = coldloop.moist_air(t_k, p_pa, relative_humidity=humidity, errors="nan")
    assert math.isnan(air.humidity_ratio) or 0.0 <= air.humidity_ratio


@cases(10_000)
@given(arrays.arrays(st.sampled_from(["f2", "f4", "f8"]), arrays.array_shapes(max_dims=3, max_side=4)))
def test_any_array_keeps_its_shape_and_agrees_with_single_numbers(t_k):
    answer = R134A.dew_pressure(t_k, errors="nan")
    assert answer.shape == t_k.shape
    singles = [R134A.dew_pressure(float(t), errors="nan") for t in t_k.flat]
    assert np.array_equal(answer.reshape(-1), singles, equal_nan=True)
