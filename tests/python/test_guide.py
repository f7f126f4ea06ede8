"""Every block of code of the guide, run."""

import doctest
import re
import shutil
import subprocess
from pathlib import Path

import coldloop
import pytest

ROOT = Path(__file__).parent.parent.parent
PAGES = sorted((ROOT / "docs").glob("*.md"))
BLOCK = re.compile(r"^```(\w+)\n(.*?)^```$", re.MULTILINE | re.DOTALL)


def blocks(page: Path, language: str) -> list[str]:
    return [code for name, code in BLOCK.findall(page.read_text(encoding="utf-8")) if name == language]


def pages_with(language: str) -> list[Path]:
    found = [page for page in PAGES if blocks(page, language)]
    assert found, language
    return found


def test_no_block_is_left_out() -> None:
    languages = {name for page in PAGES for name, _ in BLOCK.findall(page.read_text(encoding="utf-8"))}
    # Rust is run by the tests of its documentation, and JavaScript by those of its package; text is not code, and shell commands are
    # those of tests/run.
    assert languages <= {"pycon", "toml", "c", "rust", "js", "text", "sh"}


@pytest.mark.parametrize("page", pages_with("pycon"), ids=lambda page: page.stem)
def test_python(page: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(ROOT)
    flags = doctest.ELLIPSIS | doctest.NORMALIZE_WHITESPACE
    # The page is one conversation: its blocks follow each other.
    text = "\n".join(blocks(page, "pycon"))
    test = doctest.DocTestParser().get_doctest(text, {}, page.stem, str(page), 0)
    told: list[str] = []
    failed, _ = doctest.DocTestRunner(optionflags=flags).run(test, out=told.append)
    assert failed == 0, "".join(told)


@pytest.mark.parametrize("page", pages_with("toml"), ids=lambda page: page.stem)
def test_readings(page: Path) -> None:
    for text in blocks(page, "toml"):
        assert coldloop.diagnose(text).verdict


@pytest.mark.parametrize("page", pages_with("c"), ids=lambda page: page.stem)
def test_c(page: Path, tmp_path: Path) -> None:
    compiler = shutil.which("cc")
    assert compiler is not None
    for code in blocks(page, "c"):
        source, program = tmp_path / "block.c", tmp_path / "block"
        source.write_text(code, encoding="utf-8")
        library = ROOT / "target" / "release" / "libcoldloop_c.a"
        links = [str(library), "-lm", "-lpthread", "-ldl"]
        command = [compiler, "-std=c99", "-Wall", "-Werror", f"-I{ROOT / 'bindings' / 'c'}", str(source), *links, "-o", str(program)]
        subprocess.run(command, check=True)
        assert subprocess.run([program], check=True, capture_output=True).stdout
