"""Two gauges and a thermometer: superheat, and the verdict."""

import coldloop

air_pa_abs = coldloop.standard_pressure(1600.0)
superheat_k = coldloop.superheat("R-134a", 285.15, pressure_pa_gauge=241_316.0, air_pa_abs=air_pa_abs)
print(f"superheat {superheat_k:.1f} K")

print(
    coldloop.diagnose(
        {
            "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
            "conditions": {"ambient": "74 °F", "altitude": "1600 m"},
            "readings": {"low_side": "115 psig", "high_side": "125 psig", "vent": "72 °F"},
        }
    )
)
