"""Which rules alert alone, and which only give the wide net a hint.

Measured, not felt: a rule is sure if hardly any of the authored messages it fires on is harmless.
`data/sure.txt` is written by `guidebot.safety.refit` from the reports, the look-alikes and the
guide's wordings.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from functools import lru_cache
from importlib.resources import files

MARK = "i:"
"""How the features name a rule that fired."""
LEAST_SHARE = 0.95
"""Least share of reports among the messages a sure rule fires on."""
LEAST_FIRED = 8
"""A rule that fired on fewer reports has not shown enough."""


@lru_cache(maxsize=1)
def rules() -> frozenset[str]:
    """Ids of the rules that alert alone."""
    path = files("guidebot.safety") / "data" / "sure.txt"
    return frozenset(path.read_text(encoding="utf-8").split())


def measure(rows: Iterable[tuple[bool, Sequence[str]]]) -> list[str]:
    """Ids of the rules that earn it, sorted.

    Args:
        rows: for each authored message whether it is a report, and its features (`features`).
    """
    fired: Counter[str] = Counter()
    wrong: Counter[str] = Counter()
    for report, marks in rows:
        for mark in {mark for mark in marks if mark.startswith(MARK)}:
            fired[mark] += report
            wrong[mark] += not report
    return sorted(
        mark.removeprefix(MARK)
        for mark, times in fired.items()
        if times >= LEAST_FIRED and times / (times + wrong[mark]) >= LEAST_SHARE
    )
