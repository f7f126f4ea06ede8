"""The notebook tells its story to the end, on this machine, with what is installed."""

from pathlib import Path

import nbformat
from nbclient import NotebookClient

FOLDER = Path(__file__).parents[2] / "examples/python"


def test_the_story_of_one_repair_runs_to_its_end():
    notebook = nbformat.read(FOLDER / "one_repair.ipynb", as_version=4)
    nbformat.validate(notebook)
    assert not any(cell.get("outputs") for cell in notebook.cells)  # it is committed without them
    NotebookClient(notebook, timeout=300, resources={"metadata": {"path": str(FOLDER)}}).execute()
    outputs = [output for cell in notebook.cells for output in cell.get("outputs", [])]
    kinds = [kind for output in outputs for kind in output.get("data", {})]
    assert kinds.count("image/png") >= 4
    assert kinds.count("text/html") == 3
    printed = "".join(output.text for output in outputs if output.output_type == "stream")
    assert "named-fault    undercharge" in printed
    assert "healthy" in printed
