"""A random forest on the cases of `cargo run --release --example evaluate_diagnosis -- 600 FOLDER`.

`python examples/evaluate_diagnosis/classifier.py FOLDER` learns from `learn.csv` and judges `own.csv` and `shifted.csv`: the first
name, the first three, log loss and expected calibration error in the even mix, with all, some and no line temperatures. After
`-- limit 2000 FOLDER` it also judges those significant faults of the usual mix, with all lines, having learnt from an eighth, a
quarter, a half and all of the vehicles. Needs NumPy and scikit-learn. What was not read enters as a number far below all others.
"""

import sys
from pathlib import Path

import numpy as np
from sklearn.ensemble import RandomForestClassifier

KIND, REFRIGERANT, FAULT, SIGNIFICANT, LINES = range(5)
AMBIENT, LOW, HIGH, VENT, SUCTION, LIQUID, OUTLET, DISCHARGE = 5, 13, 14, 15, 16, 17, 18, 19


def read(path: Path) -> np.ndarray:
    """The rows of a file, an empty field as NaN."""
    return np.genfromtxt(path, delimiter=",", skip_header=1)


def features(rows: np.ndarray) -> np.ndarray:
    """All that was read, and the differences that a technician would calculate."""

    # Saturation temperature to within a kelvin or two for R-134a: the forest needs only its order.
    def saturation(pa: np.ndarray) -> np.ndarray:
        return 1.0 / (1 / 247.1 - np.log(pa / 101325) / 2600)

    low, high = saturation(rows[:, LOW]), saturation(rows[:, HIGH])
    differences = [
        high - rows[:, AMBIENT],
        rows[:, SUCTION] - low,
        high - rows[:, LIQUID],
        rows[:, DISCHARGE] - high,
        rows[:, OUTLET] - rows[:, LIQUID],
        rows[:, VENT] - low,
        rows[:, VENT] - rows[:, AMBIENT],
    ]
    known = np.delete(rows, [FAULT, SIGNIFICANT, LINES], axis=1)
    return np.nan_to_num(np.column_stack([known, low, high, *differences]), nan=-999.0)


def forest(rows: np.ndarray) -> RandomForestClassifier:
    """What is learnt from vehicles."""
    trees = RandomForestClassifier(60, min_samples_leaf=2, max_features=8, max_samples=0.4, n_jobs=2, random_state=1)
    return trees.fit(features(rows), rows[:, FAULT])


def judge(name: str, rows: np.ndarray, trees: RandomForestClassifier) -> None:
    """Prints one line per stratum."""
    said = trees.predict_proba(features(rows))
    for lines, words in enumerate(["all", "some", "no"]):
        here = rows[:, LINES] == lines
        p, truth = said[here], rows[here, FAULT]
        order = trees.classes_[np.argsort(-p, axis=1)]
        significant = (rows[here, SIGNIFICANT] == 1) & (truth != 0)
        first = order[:, 0] == truth
        three = (order[:, :3] == truth[:, None]).any(axis=1)
        given = p[np.arange(len(p)), np.searchsorted(trees.classes_, truth)]
        sure = p.max(axis=1)
        bins = np.minimum((10 * sure).astype(int), 9)
        error = sum(abs(np.sum(first[bins == b]) - np.sum(sure[bins == b])) for b in range(10)) / len(p)
        print(
            f"{name:8} {words:4} lines: first {100 * first[significant].mean():5.1f} %, three "
            f"{100 * three[significant].mean():5.1f} %, log loss {-np.log(np.maximum(given, 1e-6)).mean():.3f}, ECE {error:.3f}"
        )


def limit(rows: np.ndarray, learn: np.ndarray, priors: np.ndarray) -> None:
    """Prints how often the first name and the first three are right in the usual mix, with standard errors."""
    rows = rows[rows[:, LINES] == 0]
    for part in [8, 4, 2, 1]:
        some = learn[learn[:, LINES] == 0][::part]
        trees = forest(some)
        said = trees.predict_proba(features(rows))
        usual = dict(priors)
        for kind in np.unique(rows[:, KIND]):
            here = some[some[:, KIND] == kind]
            counts = np.array([np.sum(here[:, FAULT] == fault) for fault in trees.classes_])
            weight = np.array([usual[fault] for fault in trees.classes_]) / np.maximum(counts, 1)
            said[rows[:, KIND] == kind] *= weight
        order = trees.classes_[np.argsort(-said, axis=1)]
        right = [(order[:, :few] == rows[:, FAULT][:, None]).any(axis=1) for few in (1, 3)]
        first, three = ((100 * r.mean(), 100 * r.std() / np.sqrt(len(r))) for r in right)
        print(
            f"limit, {len(some):6} learnt: first {first[0]:.1f} +- {first[1]:.1f} %, three {three[0]:.1f} +- {three[1]:.1f} %"
        )


def main() -> None:
    """Learns and judges."""
    folder = Path(sys.argv[1])
    learn = read(folder / "learn.csv")
    if (folder / "limit.csv").exists():
        limit(read(folder / "limit.csv"), learn, np.loadtxt(folder / "priors.csv", delimiter=","))
    trees = forest(learn)
    for name in ["own", "shifted"]:
        if (folder / f"{name}.csv").exists():
            judge(name, read(folder / f"{name}.csv"), trees)


if __name__ == "__main__":
    main()
