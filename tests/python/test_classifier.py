"""The random forest beside the diagnosis, on few vehicles: that it can be asked, not how good it is."""

import re
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]
# Built by the step `examples` of tests/run.
EXAMPLE = ROOT / "target/release/examples/evaluate_diagnosis"


def test_the_forest_learns_the_cases_that_the_evaluation_writes(tmp_path):
    subprocess.run([EXAMPLE, "10", tmp_path], check=True, capture_output=True)
    classifier = ROOT / "examples/evaluate_diagnosis/classifier.py"
    told = subprocess.run([sys.executable, classifier, tmp_path], check=True, capture_output=True, text=True).stdout
    lines = re.findall(r"^(own|shifted) +(all|some|no) +lines: first +([\d.]+) %, three +([\d.]+) %", told, re.M)
    assert [line[:2] for line in lines] == [(world, line) for world in ("own", "shifted") for line in ("all", "some", "no")]
    # One in twenty by chance; 1,600 vehicles teach it far more, where the lines were read.
    assert all(float(first) > 20.0 for _, line, first, _ in lines if line == "all"), told
    assert all(float(three) >= float(first) for *_, first, three in lines), told
