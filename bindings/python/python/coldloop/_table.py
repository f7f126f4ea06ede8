"""Many vehicles at once: a table in, a table out."""

import os
import sys
from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING, Any, TypeAlias

import numpy as np
import numpy.typing as npt

from coldloop import _core
from coldloop._arrays import Errors, strict
from coldloop._errors import InconsistentError, UnknownNameError
from coldloop._readings import options

if TYPE_CHECKING:
    from coldloop._frames import Frame

Progress: TypeAlias = bool | Callable[[int, int], object]


def diagnose_table(
    table: Any,
    *,
    keep: Iterable[str] = (),
    errors: Errors = "raise",
    threads: int | None = None,
    progress: Progress = False,
    **settings: Any,
) -> Any:
    """Judges a table with one row a vehicle, in parallel, and gives a table of the same kind and length.

    ``table`` is a pandas or polars DataFrame, an Arrow table or record batch, or a mapping from names to arrays. A
    column of numbers is named after an entry of a readings file with its unit behind it, and a pressure with its
    datum: ``ambient_c``, ``altitude_m``, ``low_side_kpa_gauge``, ``high_side_psig``, ``engine_speed_rpm``,
    ``vehicle_speed_km_h``, ``humidity_percent``; any unit that a readings file may have. ``refrigerant``,
    ``expansion``, ``compressor``, ``air_source``, ports and instruments (``low_side_instrument``) are words, as are
    ``compressor_running`` and ``sight_glass`` (``yes`` or ``no``); observations
    (``clutch_engaged``) are true or false, 1 or 0. Missing values were not measured. Other columns are refused, unless
    ``keep`` names them: those are handed through. No column occurs twice, and all columns have the same length; do not
    change them from another thread meanwhile.

    The answer holds ``verdict``, ``named`` (the fault, or a short list with spaces between), ``rival``,
    ``entry_error`` and ``entry_error_probability``, ``rest``, one ``odds_...`` for each fault (missing
    where the system cannot have it) and ``odds_none_of_these``, the derived figures with their standard
    uncertainties (``superheat_k``, ``superheat_uncertainty_k``, ...), and ``refused``. Further checks are not
    ranked: ask ``diagnose`` for those of one vehicle. With ``errors="raise"`` the first row that cannot be judged
    is raised, with row and column in ``key``; with ``errors="nan"`` its answer is missing and ``refused`` says why.
    ``threads`` is the number of processors by default; if the system starts fewer, fewer judge, and if it starts none, the
    thread of the caller does. ``progress`` is ``True`` for a bar on standard error, or is
    called with the rows done and the rows in all. ``settings`` are those of ``diagnose``.

    >>> answer = diagnose_table({
    ...     "refrigerant": ["R-134a", "R-134a"], "expansion": ["txv", "txv"], "compressor": ["fixed-clutch"] * 2,
    ...     "ambient_f": [74.0, 74.0], "altitude_m": [0.0, 0.0],
    ...     "low_side_psig": [70.0, 37.0], "high_side_psig": [125.0, 172.0], "vent_f": [63.0, 40.0],
    ... })
    >>> [str(names).split(" ")[0] for names in answer["named"]]  # the likeliest of each row
    ['worn-compressor', '']
    """
    from coldloop._frames import frame  # imports narwhals, which takes longer than the rest of the package

    source = frame(table)
    kept = _kept(source.names, keep)
    raising = strict(errors)
    numbers: list[tuple[str, npt.NDArray[np.float64]]] = []
    words: list[tuple[str, npt.NDArray[np.uint32]]] = []
    for name in source.names:
        if name in kept:
            continue
        if _core.column(name) == "word":
            words.append((name, _codes(source, name, raising)))
        else:
            numbers.append((name, source.numbers(name)))
    told: Callable[[int, int], object] | None = None
    if progress:
        told = progress if callable(progress) else _Bar()
    columns, labels = _core.diagnose_table(
        source.rows,
        numbers,
        words,
        raising,
        threads or os.cpu_count() or 1,
        options(settings) or "{}",
        told,
    )
    for name in kept:
        if name in columns:
            raise InconsistentError(f"{name}: the answer has a column of this name: rename the one that is kept", key=name)
    return source.answer(kept, columns, labels, [*FIRST, *(name for name in columns if name not in FIRST)])


FIRST = ("verdict", "named", "rival", "entry_error", "entry_error_probability", "rest", "refused")


def column_names() -> list[str]:
    """The entries after which a column of a table can be named; those of numbers need their unit behind them.

    >>> "low_side" in column_names(), "clutch_engaged" in column_names()
    (True, True)
    """
    numbers, words, answers = _core.entries()
    return [*numbers, *words, *answers]


def _kept(names: list[str], keep: Iterable[str]) -> list[str]:
    """The columns to hand through; each has to be in the table and to be named once."""
    from coldloop._frames import once

    if isinstance(keep, str):
        raise TypeError(f"keep takes a list of names, as in keep=[{keep!r}]")
    kept = list(keep)
    for name in kept:
        if name not in names:
            raise UnknownNameError(f"{name}: keep names this column, and the table has none of this name", "name", key=name)
    once(kept, "keep")
    return kept


NO_WORD = 2**32 - 1
"""A code of no word in any column: its rows are refused."""


def _codes(source: "Frame", name: str, raising: bool) -> npt.NDArray[np.uint32]:
    """The codes of a column of words; each word is looked up once."""
    codes, uniques = source.words(name)
    known = [0, *(_code(name, word, raising) for word in uniques)]
    return np.asarray(known, dtype=np.uint32)[codes + 1]


def _code(column: str, word: str, raising: bool) -> int:
    try:
        return _core.word(column, word)
    except UnknownNameError:
        if raising:
            raise
        return NO_WORD


class _Bar:
    """A bar on standard error."""

    WIDTH = 40

    def __call__(self, done: int, rows: int) -> None:
        full = self.WIDTH * done // max(rows, 1)
        end = "\n" if done == rows else ""
        line = f"\r[{'#' * full}{'.' * (self.WIDTH - full)}] {done:,} of {rows:,} vehicles{end}"
        print(line, end="", file=sys.stderr, flush=True)
