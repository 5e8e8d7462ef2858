"""Answered, unsure or not in the guide: one fitted decision over a few plain measures."""

from __future__ import annotations

import math
from dataclasses import dataclass

from guidebot.search.needs import NeedScores

MEASURES = ("top", "lead", "agree", "aside", "aside_pooled", "known", "bias")


@dataclass(frozen=True, slots=True)
class Decision:
    """How sure the search is.

    Attributes:
        right: estimated chance that the first need is what was asked, 0 to 1.
        answerable: estimated chance that the guide answers the question at all, 0 to 1.
    """

    right: float
    answerable: float


def measures(scores: NeedScores, known_share: float) -> tuple[float, ...]:
    """What the decision is made from, in the order of `MEASURES`.

    Args:
        scores: of every class, from `NeedIndex.scores`.
        known_share: share of the message's content words that the guide's wordings know, 0 to 1.

    Returns:
        Linear score of the first need; its lead over the second in summed z-scores; whether both
        scorers put it first; linear and pooled score of off-topic less that of the first need
        (the pooled one per its size); `known_share`; 1.
    """
    first, best = scores.ranked[0]
    second = scores.ranked[1][1] if len(scores.ranked) > 1 else best - 4.0
    needs = [name for name, _ in scores.ranked]
    linear, pooled = scores.linear, scores.pooled
    agree = first == max(needs, key=lambda n: linear[n]) == max(needs, key=lambda n: pooled[n])
    top_pooled = pooled[first]
    aside = linear.get("off-topic", -1.0) - linear[first]
    aside_pooled = (pooled.get("off-topic", 0.0) - top_pooled) / (top_pooled + 5.0)
    return (linear[first], best - second, float(agree), aside, aside_pooled, known_share, 1.0)


def chance(weights: tuple[float, ...], values: tuple[float, ...]) -> float:
    """Logistic function of the weighted sum."""
    total = sum(w * v for w, v in zip(weights, values, strict=True))
    return 1.0 / (1.0 + math.exp(-max(-30.0, min(30.0, total))))
