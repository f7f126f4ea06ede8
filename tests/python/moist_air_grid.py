"""Writes tests/data/moist_air.csv: moist air after psychrolib 2.5.0, an independent writing of the same ASHRAE
equations (without enhancement factor), its solvers set to converge fully.

    python tests/python/moist_air_grid.py
"""

import pathlib

import psychrolib

TABLE = pathlib.Path(__file__).parent.parent / "data" / "moist_air.csv"
HEADER = """\
# Moist air after psychrolib 2.5.0, without enhancement factor. Written by tests/python/moist_air_grid.py.
t_c,p_pa,relative_humidity,saturation_pa,humidity_ratio,dew_point_c,wet_bulb_c,enthalpy_j_kg,volume_m3_kg
"""


def rows():
    psychrolib.SetUnitSystem(psychrolib.SI)
    psychrolib.PSYCHROLIB_TOLERANCE = 1e-12
    for t_c in range(-40, 65, 4):
        for p_pa in (101325.0, 83523.0, 61640.0):
            for humidity in (0.02, 0.1, 0.25, 0.4, 0.6, 0.8, 0.95, 1.0):
                ratio = psychrolib.GetHumRatioFromRelHum(t_c, humidity, p_pa)
                yield (
                    t_c,
                    p_pa,
                    humidity,
                    psychrolib.GetSatVapPres(t_c),
                    ratio,
                    psychrolib.GetTDewPointFromHumRatio(t_c, ratio, p_pa),
                    psychrolib.GetTWetBulbFromHumRatio(t_c, ratio, p_pa),
                    psychrolib.GetMoistAirEnthalpy(t_c, ratio),
                    psychrolib.GetMoistAirVolume(t_c, ratio, p_pa),
                )


def text():
    return HEADER + "".join(",".join(repr(value) for value in row) + "\n" for row in rows())


if __name__ == "__main__":
    TABLE.write_text(text())
