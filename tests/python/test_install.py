"""An installation from source on a machine that cannot compile it says so in one line."""

import os
import re
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
DOOR = ROOT / "bindings/python"
LEAST = tomllib.loads((ROOT / "Cargo.toml").read_text())["workspace"]["package"]["rust-version"]


def built_with(path, *command):
    """What a command prints where PATH is one folder."""
    environment = {**os.environ, "PATH": str(path), "PYTHONPATH": str(DOOR / "backend")}
    return subprocess.run([sys.executable, *command], env=environment, capture_output=True, text=True)


def test_pip_shows_one_line_where_there_is_no_cargo(tmp_path):
    pip = ("-m", "pip", "install", "--no-build-isolation", "--no-deps", "--no-cache-dir", str(DOOR))
    run = built_with(tmp_path, *pip)
    assert run.returncode != 0
    shown = run.stdout + run.stderr
    assert "[1 lines of output]" in shown
    (line,) = re.findall(r"^ *(coldloop is built .*)$", shown, re.MULTILINE)
    assert line.startswith(f"coldloop is built from source here and needs Rust {LEAST} or newer, but there is no cargo")


@pytest.mark.parametrize(
    ("cargo", "status", "told"),
    [
        ("echo 'cargo 1.63.0 (fd9c4297c 2022-07-01)'", 1, "but cargo is 1.63: install"),
        ("echo 'no default toolchain' >&2; exit 1", 1, "but cargo does not run (no default toolchain): install"),
        (f"echo 'cargo {LEAST}.0'", 0, ""),
        ("echo 'cargo 2.0.0'", 0, ""),
    ],
)
@pytest.mark.skipif(os.name == "nt", reason="the cargo of this test is a shell script")
def test_a_cargo_that_is_too_old_or_broken_is_told_and_one_that_is_new_enough_is_not(tmp_path, cargo, status, told):
    stub = tmp_path / "cargo"
    stub.write_text(f"#!/bin/sh\n{cargo}\n")
    stub.chmod(0o755)
    run = built_with(tmp_path, "-c", "import coldloop_build; print(coldloop_build.build_wheel.__module__)")
    assert run.returncode == status
    assert told in run.stderr
    assert len(run.stderr.splitlines()) == (1 if told else 0)
    assert run.stdout == ("" if told else "maturin\n")
