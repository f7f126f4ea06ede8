"""The kinds of table: pandas, polars, Arrow, or a mapping from names to arrays.

None of these libraries is imported before one of its tables comes in; Arrow's is also imported for tables of other
libraries that offer its interface.
"""

import sys
from abc import ABC, abstractmethod
from collections.abc import Iterable, Mapping, Sized
from typing import Any

import narwhals as nw
import numpy as np
import numpy.typing as npt

from coldloop._errors import InconsistentError

Labels = dict[str, list[str]]


class Frame(ABC):
    """A table of one kind: what is read from it, and an answer in the same kind."""

    def __init__(self, table: Any):
        self.table = table

    @property
    @abstractmethod
    def names(self) -> list[str]:
        """The names of the columns."""

    @property
    @abstractmethod
    def rows(self) -> int:
        """The number of rows."""

    @abstractmethod
    def numbers(self, name: str) -> npt.NDArray[np.float64]:
        """A column of numbers, or of true and false; NaN where there is none."""

    @abstractmethod
    def seconds(self, name: str) -> npt.NDArray[np.float64]:
        """A column of dates with times as seconds of one clock; NaN where there is none."""

    @abstractmethod
    def words(self, name: str) -> tuple[npt.NDArray[np.int64], list[str]]:
        """A column of words: the place of each in a list of those that occur, -1 where there is none."""

    @abstractmethod
    def answer(self, kept: list[str], columns: dict[str, Any], labels: Labels, order: list[str]) -> Any:
        """A table of the columns, in this order, after those of this one that are kept; one of codes has labels."""


def frame(table: Any) -> Frame:
    """The kind of a table."""
    if isinstance(table, Mapping):
        return Arrays(table)
    if nw.dependencies.is_into_dataframe(table):
        return Table(table)
    if hasattr(table, "__arrow_c_stream__") and not nw.dependencies.is_into_series(table):
        return Stream(table)
    raise TypeError(
        f"a table is of pandas, polars or Arrow, or a mapping from names to arrays, not {type(table).__name__}"
    )


def floats(name: str, column: Any) -> npt.NDArray[np.float64]:
    """An array of numbers, of true and false, or of those and None, as floats."""
    array = np.asarray(column)
    if array.ndim != 1:
        raise TypeError(f"column {name} takes one value a row, not an array of {array.shape}")
    if array.dtype.kind == "O":
        wrong = [x for x in array if x is not None and not isinstance(x, (bool, int, float, np.number, np.bool_))]
        if wrong:
            raise TypeError(f"column {name} takes numbers or true and false, not {wrong[0]!r}")
    elif array.dtype.kind not in "fiub":
        raise TypeError(f"column {name} takes numbers or true and false, not {array.dtype}")
    try:
        return np.ascontiguousarray(array, dtype=np.float64)
    except OverflowError as error:
        raise ValueError(f"column {name} holds a whole number that is too large for a float") from error


def clock(name: str, column: Any) -> npt.NDArray[np.float64]:
    """An array of dates with times as seconds."""
    times = np.asarray(column)
    if times.dtype.kind != "M":
        raise TypeError(f"column {name} takes dates with times, not {times.dtype}: name one of numbers with its unit, {name}_s")
    seconds = times.astype("datetime64[ns]").astype(np.int64) / 1e9
    return np.where(np.isnat(times), np.nan, seconds)


def once(names: Iterable[Any], where: str) -> None:
    """Refuses a list of names in which one occurs twice."""
    known = set()
    for name in names:
        if name in known:
            raise InconsistentError(f"{name}: this column occurs twice in {where}", "name", key=str(name))
        known.add(name)


def _texts(names: Any) -> list[str]:
    """The names of columns, which have to be text."""
    for name in names:
        if not isinstance(name, str):
            raise TypeError(f"the name of a column is text, not {name!r}")
    return list(names)


class Table(Frame):
    """A table of pandas, polars or Arrow, through narwhals."""

    def __init__(self, table: Any):
        try:
            super().__init__(nw.from_native(table, eager_only=True))
        except nw.exceptions.DuplicateError:
            once(getattr(table, "column_names", table.columns), "the table")
            raise

    @property
    def names(self) -> list[str]:
        return _texts(self.table.columns)

    @property
    def rows(self) -> int:
        return len(self.table)

    def numbers(self, name: str) -> npt.NDArray[np.float64]:
        column = self.table[name]
        if column.dtype.is_numeric() or column.dtype == nw.Boolean:
            return np.ascontiguousarray(column.cast(nw.Float64).to_numpy())
        return floats(name, np.where(column.is_null().to_numpy(), None, column.to_numpy()))

    def seconds(self, name: str) -> npt.NDArray[np.float64]:
        column = self.table[name]
        zoned = isinstance(column.dtype, nw.Datetime) and column.dtype.time_zone is not None
        return clock(name, (column.dt.convert_time_zone("UTC").dt.replace_time_zone(None) if zoned else column).to_numpy())

    def words(self, name: str) -> tuple[npt.NDArray[np.int64], list[str]]:
        column = self.table[name]
        words = column.drop_nulls().unique(maintain_order=True).to_list()
        if not words:
            return np.full(self.rows, -1), []
        codes = column.replace_strict(words, list(range(len(words))), default=-1, return_dtype=nw.Int64)
        return codes.to_numpy(), [str(word) for word in words]

    def answer(self, kept: list[str], columns: dict[str, Any], labels: Labels, order: list[str]) -> Any:
        backend = self.table.implementation

        def column(name: str) -> Any:
            if name not in labels:
                numbers = nw.new_series(name, columns[name], backend=backend)
                return numbers if backend.is_pandas_like() else numbers.fill_nan(None)  # pandas treats NaN and null alike
            kind = nw.Categorical() if backend.is_pyarrow() else nw.Enum(labels[name])
            return nw.new_series(name, [None, *labels[name]], kind, backend=backend)[columns[name]]

        return self.table.with_columns(*map(column, order)).select(*kept, *order).to_native()


class Stream(Table):
    """A record batch of Arrow, or a table of any library that offers an Arrow stream."""

    def __init__(self, table: Any):
        import pyarrow as pa

        super().__init__(pa.table(table))
        self.given, self.batch = table, isinstance(table, pa.RecordBatch)

    def answer(self, kept: list[str], columns: dict[str, Any], labels: Labels, order: list[str]) -> Any:
        table = super().answer(kept, columns, labels, order)
        if not self.batch:
            return table
        return type(self.given).from_arrays([column.combine_chunks() for column in table.columns], table.column_names)


class Arrays(Frame):
    """A mapping from names to arrays or lists, all of one length; pandas columns among them have the same labels."""

    def __init__(self, table: Mapping[str, Any]):
        super().__init__(table)
        labelled: tuple[str, Any] | None = None
        for name, column in table.items():
            if isinstance(column, (str, bytes)) or not isinstance(column, Sized) or getattr(column, "ndim", 1) != 1:
                raise TypeError(f"column {name} takes one value a row, in a list or an array, not {column!r:.80}")
            if len(column) != self.rows:
                text = f"{name}: this column has {len(column)} rows, and {next(iter(table))} has {self.rows}"
                raise InconsistentError(text, "number of rows", len(column), self.rows, self.rows, name)
            if "pandas" in sys.modules and isinstance(column, sys.modules["pandas"].Series):
                if labelled and not labelled[1].equals(column.index):
                    text = f"{name}: this column and {labelled[0]} have different labels: align them first"
                    raise InconsistentError(text, "number of rows", key=name)
                labelled = labelled or (name, column.index)

    @property
    def names(self) -> list[str]:
        return _texts(self.table)

    @property
    def rows(self) -> int:
        return next((len(column) for column in self.table.values()), 0)

    def numbers(self, name: str) -> npt.NDArray[np.float64]:
        return floats(name, self.table[name])

    def seconds(self, name: str) -> npt.NDArray[np.float64]:
        return clock(name, self.table[name])

    def words(self, name: str) -> tuple[npt.NDArray[np.int64], list[str]]:
        places: dict[str, int] = {}
        codes = [
            -1 if word is None else places.setdefault(str(word), len(places))
            for word in np.asarray(self.table[name], object)
        ]
        return np.asarray(codes, dtype=np.int64), list(places)

    def answer(self, kept: list[str], columns: dict[str, Any], labels: Labels, order: list[str]) -> Any:
        def column(name: str) -> Any:
            return np.asarray(["", *labels[name]])[columns[name]] if name in labels else columns[name]

        return {name: self.table[name] for name in kept} | {name: column(name) for name in order}
