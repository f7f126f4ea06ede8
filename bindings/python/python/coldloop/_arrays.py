"""Shapes, kinds and units: an argument goes through the compiled core and comes back in the same shape and kind.

The last part of an argument's name is its unit. A pint or astropy quantity is converted to it, or refused where it
measures something else. The same rule holds for an object that says its unit in another way (an xarray object, a pandas or
polars column of quantities). No unit is ever dropped silently.
"""

import sys
from collections.abc import Callable
from typing import Any, Literal, TypeAlias

import numpy as np
import numpy.typing as npt

Errors: TypeAlias = Literal["raise", "nan"]
Numbers: TypeAlias = Any
"""A float, a list, an array of any float or integer dtype, a pandas or polars column, an xarray object, or a pint or
astropy quantity of these."""
Answer: TypeAlias = Any
"""A float for floats, otherwise what came in, in the broadcast shape; arrays are of ``float64``."""

UNITS = {"_j_kg_k": "J/(kg K)", "_j_kg": "J/kg", "_kg_m3": "kg/m3", "_k": "K", "_pa": "Pa", "_m": "m"}
"""The unit by the end of an argument's name, the longest end first; a pure number has none."""

SPELLINGS = {
    "K": ("k", "kelvin"),
    "Pa": ("pa", "pascal"),
    "m": ("m", "metre", "meter", "metres", "meters"),
    "J/kg": ("j/kg", "j kg-1", "j kg**-1"),
    "J/(kg K)": ("j/(kg k)", "j/kg/k", "j kg-1 k-1"),
    "kg/m3": ("kg/m3", "kg m-3", "kg/m**3", "kg/m^3"),
    "": ("", "1", "dimensionless"),
}
"""How the metadata of an array may write the unit."""


def apply(core: Callable[..., Any], errors: Errors, code: int | None = None, **arguments: Numbers) -> Answer:
    """The result of ``core`` for the numbers of the arguments, whether to raise, and the code if there is one."""
    rest = (strict(errors),) if code is None else (strict(errors), code)
    if all(type(argument) in (float, int) for argument in arguments.values()):
        return core(*arguments.values(), *rest)
    return shaped(lambda *numbers: core(*numbers, *rest), arguments)


def strict(errors: str) -> bool:
    """Whether the first element without an answer is raised; otherwise it becomes NaN."""
    if errors not in ("raise", "nan"):
        raise ValueError(f'errors is "raise" or "nan", not {errors!r}')
    return errors == "raise"


def shaped(core: Callable[..., Any], arguments: dict[str, Numbers]) -> Answer:
    """The one answer of ``core``, in the shape and the kind of the arguments."""
    return several(lambda *numbers: [core(*numbers)], arguments, 1)[0]


def several(core: Callable[..., list[Any]], arguments: dict[str, Numbers], count: int) -> list[Answer]:
    """The ``count`` answers of ``core``, which takes floats or contiguous arrays of one dimension."""
    if any(_is(argument, "xarray", "DataArray", "Variable", "Dataset") for argument in arguments.values()):
        return _labelled(core, arguments, count)
    dress = _dress(arguments)
    numbers = [plain(name, argument) for name, argument in arguments.items()]
    try:
        arrays = np.broadcast_arrays(*numbers)
    except ValueError as error:
        shapes = (f"{name} of {array.shape}" for name, array in zip(arguments, numbers, strict=True))
        raise ValueError(f"the shapes do not broadcast: {', '.join(shapes)}") from error
    shape = arrays[0].shape
    if shape == ():
        return core(*(float(array) for array in arrays))
    answers = core(*(np.ascontiguousarray(array).reshape(-1) for array in arrays))
    return [dress(np.asarray(answer).reshape(shape)) for answer in answers]


def plain(name: str, argument: Numbers) -> npt.NDArray[np.float64]:
    """The numbers of an argument in the unit of its name."""
    unit = unit_of(name)
    if hasattr(argument, "to_value"):
        return plain_array(name, _astropy(name, argument, unit))
    if hasattr(argument, "magnitude") and hasattr(argument, "units"):
        return plain_array(name, _pint(name, argument, unit))
    if isinstance(argument, (list, tuple)):
        _refuse_quantities(name, argument)
    elif isinstance(argument, np.ma.MaskedArray):
        argument = np.ma.filled(argument.astype(np.float64), np.nan)
    elif _is(argument, "pandas", "Series", "Index", "DataFrame") or _is(argument, "polars", "Series"):
        argument = _column(name, argument)
    return plain_array(name, argument)


def unit_of(name: str) -> str:
    """The unit of an argument; none for a pure number."""
    bare = name.removesuffix("_abs").removesuffix("_gauge")
    return next((unit for end, unit in UNITS.items() if bare.endswith(end)), "")


def plain_array(name: str, argument: Numbers) -> npt.NDArray[np.float64]:
    """An argument without a unit as an array of floats."""
    if argument is None or isinstance(argument, (bool, str)):
        raise TypeError(f"{name} takes numbers, not {argument!r:.80}")
    array = np.asarray(argument)
    if array.dtype.kind not in "fiu" and array.size > 0:
        raise TypeError(f"{name} takes numbers, not {type(argument).__name__} of {array.dtype}")
    return array.astype(np.float64, copy=False)


def _is(argument: object, module: str, *classes: str) -> bool:
    """Whether an object is of a class of a library, without importing the library."""
    library = sys.modules.get(module)
    return library is not None and isinstance(argument, tuple(getattr(library, name) for name in classes))


def _pint(name: str, quantity: Any, unit: str) -> Any:
    try:
        return quantity.to(unit.replace("m3", "m**3") or "dimensionless").magnitude
    except Exception as error:
        raise TypeError(f"{name} takes {unit or 'a pure number'}, not {quantity.units}") from error


def _astropy(name: str, quantity: Any, unit: str) -> Any:
    try:
        if unit == "K":
            return quantity.to_value("K", equivalencies=sys.modules["astropy.units"].temperature())
        return quantity.to_value(unit)
    except Exception as error:
        raise TypeError(f"{name} takes {unit or 'a pure number'}, not {quantity.unit}") from error


def _refuse_quantities(name: str, items: list[Any] | tuple[Any, ...]) -> None:
    for item in items:
        if isinstance(item, (list, tuple)):
            _refuse_quantities(name, item)
        elif hasattr(item, "units") or hasattr(item, "unit"):
            raise TypeError(f"{name} takes a quantity of a list, not a list of quantities")


def _column(name: str, column: Any) -> Any:
    """The numbers of a pandas or polars column; missing ones are NaN, and one of quantities is refused."""
    if _is(column, "polars", "Series"):
        if not column.dtype.is_numeric():
            raise TypeError(f"{name} takes numbers, not a column of {column.dtype}")
        return column.cast(sys.modules["polars"].Float64).to_numpy()
    kinds = column.dtypes if hasattr(column, "columns") else [column.dtype]
    if any(getattr(kind, "kind", "O") not in "fiu" for kind in kinds):
        raise TypeError(f"{name} takes numbers, not a column of {', '.join(map(str, kinds))}")
    return column.to_numpy(dtype=np.float64, na_value=np.nan)


def _dress(arguments: dict[str, Numbers]) -> Callable[[npt.NDArray[Any]], Answer]:
    """The function that turns an array into the kind of the arguments: a pandas or polars column, or the array itself."""
    pandas = [x for x in arguments.values() if _is(x, "pandas", "Series", "DataFrame")]
    if pandas:
        first = pandas[0]
        if any(not _same_labels(first, other) for other in pandas[1:]):
            raise ValueError("the pandas objects have different labels: align them first, as pandas.DataFrame.align does")
        return lambda array: _as_pandas(first, array)
    if any(_is(x, "polars", "Series") for x in arguments.values()):
        return lambda array: sys.modules["polars"].Series(array) if array.ndim == 1 else array
    return lambda array: array


def _same_labels(first: Any, other: Any) -> bool:
    return type(first) is type(other) and all(a.equals(b) for a, b in zip(first.axes, other.axes, strict=True))


def _as_pandas(model: Any, array: npt.NDArray[Any]) -> Any:
    if array.shape != model.shape:
        return array
    library = sys.modules["pandas"]
    if model.ndim == 1:
        return library.Series(array, index=model.index)
    return library.DataFrame(array, index=model.index, columns=model.columns)


def _labelled(core: Callable[..., list[Any]], arguments: dict[str, Numbers], count: int) -> list[Answer]:
    """Over xarray objects, which are broadcast by the names of their dimensions."""
    for name, argument in arguments.items():
        unit = unit_of(name)
        said = getattr(argument, "attrs", {}).get("units")
        if said is not None and str(said).strip().lower() not in SPELLINGS[unit]:
            raise TypeError(f"{name} takes {unit or 'a pure number'}, and this array is in {said}")

    def bare(*arrays: Any) -> Any:
        answers = several(core, dict(zip(arguments, arrays, strict=True)), count)
        return tuple(np.asarray(answer) for answer in answers) if count > 1 else np.asarray(answers[0])

    xarray = sys.modules["xarray"]
    answers = xarray.apply_ufunc(bare, *arguments.values(), output_core_dims=[[]] * count)
    return list(answers) if count > 1 else [answers]


def named(codes: Answer, names: npt.NDArray[np.str_]) -> Answer:
    """The ids of codes in the shape and kind of the codes; NaN is the first of them."""
    if isinstance(codes, float):
        return str(names[int(np.nan_to_num(codes))])
    found = names[np.nan_to_num(np.asarray(codes)).astype(int)]
    if hasattr(codes, "copy") and hasattr(codes, "dims"):
        return codes.copy(data=found)
    if hasattr(codes, "index") and hasattr(codes, "dtypes"):
        rest = {"columns": codes.columns} if found.ndim == 2 else {}
        return type(codes)(found, index=codes.index, **rest)
    return found if isinstance(codes, np.ndarray) else type(codes)(found)
