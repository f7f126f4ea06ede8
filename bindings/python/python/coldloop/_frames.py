"""The kinds of table: pandas, polars, Arrow, or a mapping from names to arrays.

None of the libraries is imported here before one of its tables comes in, except Arrow's for tables of others that
offer themselves through its interface.
"""

import sys
from abc import ABC, abstractmethod
from collections.abc import Mapping, Sized
from typing import Any

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
    module = type(table).__module__.partition(".")[0]
    if module == "pandas":
        return Pandas(table)
    if module == "polars":
        return Polars(table)
    if module == "pyarrow" or hasattr(table, "__arrow_c_stream__"):
        return Arrow(table)
    if isinstance(table, Mapping):
        return Arrays(table)
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


def _texts(names: Any) -> list[str]:
    """The names of columns, which have to be text."""
    for name in names:
        if not isinstance(name, str):
            raise TypeError(f"the name of a column is text, not {name!r}")
    return list(names)


class Pandas(Frame):
    """A DataFrame of pandas."""

    @property
    def names(self) -> list[str]:
        return _texts(self.table.columns)

    @property
    def rows(self) -> int:
        return len(self.table)

    def numbers(self, name: str) -> npt.NDArray[np.float64]:
        column = self.table[name]
        if getattr(column.dtype, "kind", "O") in "fiub":
            return np.ascontiguousarray(column.to_numpy(dtype=np.float64, na_value=np.nan))
        return floats(name, column.astype(object).where(column.notna(), None).to_numpy())

    def seconds(self, name: str) -> npt.NDArray[np.float64]:
        column = self.table[name]
        zoned = getattr(column.dtype, "tz", None) is not None
        return clock(name, column.to_numpy(dtype="datetime64[ns]") if zoned else column.to_numpy())

    def words(self, name: str) -> tuple[npt.NDArray[np.int64], list[str]]:
        import pandas as pd

        codes, uniques = pd.factorize(self.table[name])
        return codes, [str(word) for word in uniques]

    def answer(self, kept: list[str], columns: dict[str, Any], labels: Labels, order: list[str]) -> Any:
        import pandas as pd

        def column(name: str) -> Any:
            if name in labels:
                return pd.Categorical.from_codes(columns[name] - 1, categories=labels[name])
            return columns[name]

        answer = pd.DataFrame({name: column(name) for name in order}, index=self.table.index)
        return pd.concat([self.table[kept], answer], axis=1) if kept else answer


class Arrow(Frame):
    """A table or record batch of Arrow, or of whoever offers its stream."""

    def __init__(self, table: Any):
        import pyarrow as pa

        super().__init__(table if isinstance(table, (pa.Table, pa.RecordBatch)) else pa.table(table))

    @property
    def names(self) -> list[str]:
        return list(self.table.schema.names)

    @property
    def rows(self) -> int:
        return int(self.table.num_rows)

    def column(self, name: str) -> Any:
        """A column in one piece."""
        column = self.table.column(name)
        return column.combine_chunks() if hasattr(column, "combine_chunks") else column

    def numbers(self, name: str) -> npt.NDArray[np.float64]:
        import pyarrow as pa

        column = self.column(name)
        kind = column.type
        if pa.types.is_null(kind):
            return np.full(self.rows, np.nan)
        if pa.types.is_boolean(kind):
            column = column.cast(pa.uint8())
        elif not (pa.types.is_floating(kind) or pa.types.is_integer(kind)):
            raise TypeError(f"column {name} takes numbers or true and false, not {kind}")
        return np.ascontiguousarray(column.cast(pa.float64()).to_numpy(zero_copy_only=False))

    def seconds(self, name: str) -> npt.NDArray[np.float64]:
        return clock(name, self.column(name).to_numpy(zero_copy_only=False))

    def words(self, name: str) -> tuple[npt.NDArray[np.int64], list[str]]:
        import pyarrow as pa

        column = self.column(name)
        if not pa.types.is_dictionary(column.type):
            column = column.dictionary_encode()
        codes = column.indices.fill_null(-1).cast(pa.int64()).to_numpy(zero_copy_only=False)
        return codes, [str(word) for word in column.dictionary.to_pylist()]

    def answer(self, kept: list[str], columns: dict[str, Any], labels: Labels, order: list[str]) -> Any:
        import pyarrow as pa

        arrays = {name: self.column(name) for name in kept} | {
            name: arrow_column(columns[name], labels.get(name)) for name in order
        }
        return type(self.table).from_pydict(arrays) if isinstance(self.table, pa.RecordBatch) else pa.table(arrays)


def arrow_column(column: Any, labels: list[str] | None) -> Any:
    """A column of Arrow: numbers with nulls for NaN, or words by their codes with null for 0."""
    import pyarrow as pa

    if labels is None:
        return pa.array(column, from_pandas=True)
    return pa.DictionaryArray.from_arrays(pa.array(column - 1, mask=column == 0), pa.array(labels, pa.string()))


class Polars(Frame):
    """A DataFrame of polars."""

    @property
    def names(self) -> list[str]:
        return list(self.table.columns)

    @property
    def rows(self) -> int:
        return int(self.table.height)

    def numbers(self, name: str) -> npt.NDArray[np.float64]:
        import polars as pl

        column = self.table[name]
        if not (column.dtype.is_numeric() or column.dtype in (pl.Boolean, pl.Null)):
            raise TypeError(f"column {name} takes numbers or true and false, not {column.dtype}")
        return np.ascontiguousarray(column.cast(pl.Float64).to_numpy())

    def seconds(self, name: str) -> npt.NDArray[np.float64]:
        return clock(name, self.table[name].to_numpy())

    def words(self, name: str) -> tuple[npt.NDArray[np.int64], list[str]]:
        import polars as pl

        column = self.table[name].cast(pl.String)
        uniques = column.drop_nulls().unique(maintain_order=True)
        places = column.cast(pl.Enum(uniques)).to_physical().cast(pl.Int64).fill_null(-1)
        return places.to_numpy(), uniques.to_list()

    def answer(self, kept: list[str], columns: dict[str, Any], labels: Labels, order: list[str]) -> Any:
        import polars as pl

        def column(name: str) -> Any:
            if name not in labels:
                return pl.Series(name, columns[name], nan_to_null=True)
            words = pl.Series([None, *labels[name]], dtype=pl.String)
            return words.gather(pl.Series(columns[name])).cast(pl.Enum(labels[name])).alias(name)

        return self.table.select(kept).hstack([column(name) for name in order])


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
