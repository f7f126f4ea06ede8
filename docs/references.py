"""Writes two pages from the sources: the C functions, from their header, and readings files, from the module that reads them."""

import re
from pathlib import Path

ROOT = Path(__file__).parent.parent
HEADER = ROOT / "bindings" / "c" / "coldloop.h"
READINGS = ROOT / "src" / "intake" / "mod.rs"
CHAPTER = re.compile(r"/\* -{20,}\n \* (?P<title>.*)\n(?P<text>(?: \*.*\n)*?) \*/\n")
FUNCTION = re.compile(r"(?P<comment>(?:^//.*\n)+)(?P<declaration>^[a-z][^\n]*\bcoldloop_\w+\([^;]*;)", re.MULTILINE)
NAME = re.compile(r"\b(coldloop_\w+)\(")


def page(header: str) -> str:
    """A section for each chapter of the header and, in it, one for each function."""
    out = ["# C reference", "", "The contents of `coldloop.h`, chapter by chapter.", ""]
    found = list(CHAPTER.finditer(header))
    for number, chapter in enumerate(found):
        end = found[number + 1].start() if number + 1 < len(found) else len(header)
        out += [f"## {chapter['title']}", "", *_prose(chapter["text"].splitlines(), " *"), ""]
        for function in FUNCTION.finditer(header, chapter.end(), end):
            name = NAME.search(function["declaration"])
            assert name is not None
            out += [f"### `{name[1]}`", "", "```c", function["declaration"], "```", ""]
            out += [*_prose(function["comment"].splitlines(), "//"), ""]
    return "\n".join(out)


def _prose(lines: list[str], mark: str) -> list[str]:
    """Comment lines without their mark; what is indented by four more is a block of code."""
    text = [re.sub(f"^{re.escape(mark)} ?", "", line) for line in lines]
    prose: list[str] = []
    for line in text:
        inside = line.startswith("    ")
        if inside != (bool(prose) and prose[-1].startswith("    ")) and prose and prose[-1]:
            prose.append("")
        prose.append(line if inside else _escaped(line.strip()))
    return prose


def _escaped(line: str) -> str:
    """A line in which Markdown does not change names and numbers; "Errors:" becomes bold."""
    line = re.sub(r"(?<!`)\b(coldloop_\w+|COLDLOOP_\w+|[A-Z]+(?:_[A-Z]+)+|\w+_(?:k|pa_abs|pa_gauge|json))\b(?!`)", r"`\1`", line)
    return line.replace("Errors:", "**Errors:**") if line.startswith("Errors:") else line


def readings(module: str) -> str:
    """The module's documentation of readings files, without the links of its items."""
    lines = [re.sub("^//! ?", "", line) for line in module.splitlines() if line.startswith("//!")]
    text = re.sub(r"\[(`[\w:]+`)\]", r"\1", "\n".join(lines[1:]))
    return f"# Readings files\n{text}\n"


def write(folder: Path) -> None:
    """Writes the pages into the folder."""
    (folder / "c.md").write_text(page(HEADER.read_text(encoding="utf-8")), encoding="utf-8")
    (folder / "readings.md").write_text(readings(READINGS.read_text(encoding="utf-8")), encoding="utf-8")
