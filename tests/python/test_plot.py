"""The figures take readings in every form that `diagnose` takes, and show what was read."""

import tomllib
from pathlib import Path

import coldloop
import matplotlib
import numpy as np
import pytest

matplotlib.use("agg")
import coldloop.plot  # noqa: E402

READINGS = Path(__file__).parents[2] / "examples/readings"


def _high_side(readings, ax=None):
    return coldloop.plot.pressure_bands(readings, side="high_side", ax=ax)


@pytest.mark.parametrize("draw", [coldloop.plot.pressure_enthalpy, coldloop.plot.pressure_bands, _high_side])
@pytest.mark.parametrize("name", ["altitude-trap", "repaired-van"])
def test_a_path_a_text_and_a_mapping_draw_the_same(draw, name):
    path = READINGS / f"{name}.toml"
    text = path.read_text(encoding="utf-8")
    drawn = []
    for readings in (path, text, tomllib.loads(text)):
        ax = matplotlib.figure.Figure().subplots()
        draw(readings, ax=ax)
        drawn.append([np.asarray(line.get_xydata()) for line in ax.lines])
    assert len(drawn[0]) > 3
    for other in drawn[1:]:
        assert len(other) == len(drawn[0])
        for one, same in zip(drawn[0], other, strict=True):
            np.testing.assert_array_equal(one, same)


def test_a_transcritical_high_side_stands_where_it_was_read():
    ax = matplotlib.figure.Figure().subplots()
    _high_side(READINGS / "carbon-dioxide-van.toml", ax=ax)
    (told,) = (text.get_text() for text in ax.texts if text.get_text().startswith("read"))
    assert told == "read: 9200"


def test_what_cannot_be_drawn_is_refused_as_diagnose_refuses_it():
    with pytest.raises(coldloop.MissingDatumError):
        coldloop.plot.pressure_bands(READINGS / "bad-missing-datum.toml")
    with pytest.raises(coldloop.MissingError, match="low_side") as caught:
        coldloop.plot.pressure_enthalpy(READINGS / "evacuation-with-leak.toml")
    assert caught.value.key == "low_side"
