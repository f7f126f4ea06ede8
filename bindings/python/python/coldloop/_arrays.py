"""Shapes: whatever comes in as floats or arrays goes through the compiled core and comes back in the same shape."""

from collections.abc import Callable
from typing import Any, Literal, TypeAlias

import numpy as np
import numpy.typing as npt

Errors: TypeAlias = Literal["raise", "nan"]
Numbers: TypeAlias = npt.ArrayLike
Answer: TypeAlias = Any
"""A float for floats, an array of the broadcast shape otherwise."""


def apply(function: Callable[..., Any], *arguments: Numbers, errors: Errors = "raise", code: int | None = None) -> Answer:
    """Calls ``function`` with the arguments broadcast against each other, then whether to raise, then the code if any.

    With ``errors="raise"`` the first element without an answer is raised; with ``errors="nan"`` it becomes NaN.
    """
    if errors not in ("raise", "nan"):
        raise ValueError(f'errors is "raise" or "nan", not {errors!r}')
    rest = (errors == "raise",) if code is None else (errors == "raise", code)
    if all(type(argument) in (float, int) for argument in arguments):
        return function(*arguments, *rest)
    arrays = np.broadcast_arrays(*(plain(argument) for argument in arguments))
    shape = arrays[0].shape
    if shape == ():
        return function(*(float(array) for array in arrays), *rest)
    return function(*(np.ascontiguousarray(array).reshape(-1) for array in arrays), *rest).reshape(shape)


def plain(argument: Numbers) -> npt.NDArray[np.float64]:
    """The argument as an array of floats; a quantity that carries a unit is refused, never stripped of it."""
    for attribute in ("magnitude", "unit"):
        if hasattr(argument, attribute):
            name = type(argument).__name__
            raise TypeError(f"a {name} carries its own unit: convert it to SI and pass the bare number")
    array = np.asarray(argument)
    if array.dtype.kind not in "fiu":
        raise TypeError(f"numbers are needed here, not {array.dtype}")
    return array.astype(np.float64, copy=False)
