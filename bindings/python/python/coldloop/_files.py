"""Files that are named by a path."""

from os import PathLike
from pathlib import Path


def content(path: PathLike[str]) -> str:
    """The text of a file, which is UTF-8. Raises ``OSError``, and ``UnicodeDecodeError`` for another encoding."""
    return Path(path).read_text(encoding="utf-8")
