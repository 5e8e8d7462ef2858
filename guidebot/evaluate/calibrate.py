"""Fit the decision of `search.decide` on wordings and off-topic lines held out by hand.

Every wording file says in comment lines (`# hand 03`) whose lines follow. Each fold leaves out some
hands, builds the need index from the others and measures the lines left out, so the decision is
fitted on questions as unseen as a stranger's.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from guidebot.errors import EvaluationError
from guidebot.guide.read import read_guide
from guidebot.search import decide
from guidebot.search.engine import SearchEngine
from guidebot.search.needs import ASIDE

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

FOLDS = 4
OFF_TOPIC_WEIGHT = 5.0
"""How much a line off the topic counts against a wording: being wrong there is worse."""


@dataclass(frozen=True, slots=True)
class Measured:
    """One held-out line: its measures, whether the guide answers it, whether the need was right."""

    values: tuple[float, ...]
    answerable: bool
    right: bool


def hands(path: Path) -> dict[str, list[str]]:
    """The lines of one wording file by the hand that wrote them; EvaluationError if unmarked."""
    found: dict[str, list[str]] = {}
    hand = ""
    for line in path.read_text(encoding="utf-8").splitlines():
        if line.startswith("# hand "):
            hand = line.removeprefix("# hand ").strip()
        elif line.strip() and not line.startswith("#"):
            if not hand:
                raise EvaluationError(
                    f"{path.name} does not say whose lines these are",
                    remedy="Put a line `# hand NAME` before the lines of each author",
                )
            found.setdefault(hand, []).append(line.strip())
    return found


def measure(content: Path, say: Callable[[str], None] = lambda _: None) -> list[Measured]:
    """Measure every wording and off-topic line while its hand is left out; takes minutes."""
    guide = read_guide(content)
    lines = {path.stem: hands(path) for path in sorted((content / "wordings").glob("*.txt"))}
    names = sorted({hand for name, by in lines.items() if name not in ASIDE for hand in by})
    found: list[Measured] = []
    for fold in range(FOLDS):
        say(f"fold {fold + 1} of {FOLDS}")
        out = set(names[fold::FOLDS])
        kept: dict[str, tuple[str, ...]] = {}
        held: list[tuple[str, str]] = []
        for name, by in lines.items():
            if name in ASIDE:  # few hands: every fourth line instead
                flat = [line for group in by.values() for line in group]
                kept[name] = tuple(x for i, x in enumerate(flat) if i % FOLDS != fold)
                if name == "off-topic":
                    held += [(name, line) for line in flat[fold::FOLDS]]
            else:
                kept[name] = tuple(
                    x for hand, group in by.items() if hand not in out for x in group
                )
                held += [(name, x) for hand, group in by.items() if hand in out for x in group]
        engine = SearchEngine.build_from(kept, guide)
        for name, line in held:
            query = engine.read(line)
            scores = engine.needs.scores(query)
            first = scores.ranked[0][0]
            values = engine.measure(query, scores)
            found.append(Measured(values, name != "off-topic", first == name))
    return found


def calibrate(found: Sequence[Measured]) -> dict[str, Any]:
    """Centre, spread and the weights of both chances, by logistic regression (Newton's method)."""
    import numpy as np

    values = np.array([line.values for line in found])
    centre = values.mean(axis=0)
    spread = values.std(axis=0) + 1e-9
    z = (values - centre) / spread
    size = z.shape[1]
    expanded = np.hstack(
        [z]
        + [(z[:, i] * z[:, j])[:, None] for i in range(size) for j in range(i, size)]
        + [np.ones((len(z), 1))]
    )
    answerable = np.array([line.answerable for line in found])
    right = np.array([line.right for line in found])
    weight = np.where(answerable, 1.0, OFF_TOPIC_WEIGHT)
    return {
        "CENTRE": centre,
        "SPREAD": spread,
        "RIGHT": _logistic(expanded, right, weight),
        "ANSWERABLE": _logistic(expanded, answerable, weight),
    }


def _logistic(x: Floats, y: NDArray[np.bool_], weight: Floats, ridge: float = 5.0) -> Floats:
    import numpy as np

    beta = np.zeros(x.shape[1])
    for _ in range(40):
        p = 1.0 / (1.0 + np.exp(-np.clip(x @ beta, -30, 30)))
        slope = x.T @ (weight * (p - y)) + ridge * beta
        curve = (x.T * (weight * p * (1 - p))) @ x + ridge * np.eye(x.shape[1])
        step = np.linalg.solve(curve, slope)
        beta -= step
        if math.sqrt(float(step @ step)) < 1e-8:
            break
    return beta


def as_module(weights: dict[str, Any]) -> str:
    """The text of `search/decision_weights.py`."""
    lines = ['"""Written by `guidebot eval --calibrate`; do not edit by hand."""', "", "# fmt: off"]
    for name, numbers in weights.items():
        said = ", ".join(f"{float(n):.5g}" for n in numbers)
        lines.append(f"{name}: tuple[float, ...] = ({said})")
    return "\n".join([*lines, "# fmt: on", ""])


def write(weights: dict[str, Any]) -> Path:
    """Put the weights in their place; OSError if the package cannot be written."""
    target = Path(decide.__file__).with_name("decision_weights.py")
    target.write_text(as_module(weights), encoding="utf-8")
    return target
