"""Builds the package with maturin, after a check that there is a Rust compiler and that it is new enough.

Without this check maturin downloads a compiler without asking, and an old compiler fails with many lines, none of
which says what to do. pip shows the one line that is printed here.
"""

import re
import subprocess
import sys

LEAST = (1, 88)
"""The oldest Rust that the library compiles with: `rust-version` in Cargo.toml."""


def _missing() -> str | None:
    """What the machine lacks, as one line."""
    wanted = "coldloop is built from source here and needs Rust {}.{} or newer".format(*LEAST)
    advice = "install it from https://rustup.rs, or take a wheel that was built elsewhere"
    try:
        told = subprocess.run(["cargo", "--version"], capture_output=True, text=True, check=True).stdout
    except FileNotFoundError:
        return f"{wanted}, but there is no cargo on the PATH: {advice}"
    except subprocess.CalledProcessError as error:
        return f"{wanted}, but cargo does not run ({' '.join(error.stderr.split())}): {advice}"
    found = re.search(r"(\d+)\.(\d+)", told)
    if found and (int(found[1]), int(found[2])) < LEAST:
        return f"{wanted}, but cargo is {found[0]}: {advice}"
    return None


if missing := _missing():
    sys.exit(missing)

from maturin import *  # noqa: E402, F403 -- the functions that pip calls (PEP 517)
