"""Answered, unsure or not in the guide: two fitted chances over a few plain measures.

A threshold on a score or a margin alone lets far too much through; how much of the message the
words of the first need cover says most (by ablation, see DEVELOPERS.md). The weights are fitted by
logistic regression on held-out wordings and off-topic lines (`guidebot eval --calibrate`).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from guidebot.search.decision_weights import ANSWERABLE, CENTRE, RIGHT, SPREAD
from guidebot.search.needs import NeedScores

MEASURES = ("top", "lead", "agree", "aside", "aside_pooled", "covered", "pooled_per_word", "length")


@dataclass(frozen=True, slots=True)
class Decision:
    """How sure the search is.

    Attributes:
        right: estimated chance that the first need is what was asked, 0 to 1.
        answerable: estimated chance that the guide answers the question at all, 0 to 1.
    """

    right: float
    answerable: float


def measures(scores: NeedScores, covered: float, words: int) -> tuple[float, ...]:
    """What the decision is made from, in the order of `MEASURES`.

    Args:
        scores: of every class, from `NeedIndex.scores`.
        covered: share of the message, weighed by rarity, that the first need's wordings hold, 0-1.
        words: number of different content words in the message.

    Returns:
        Linear score of the first need; its lead over the second in summed z-scores; whether both
        scorers put it first; linear, then pooled score of off-topic less that of the first need;
        `covered`; the pooled score for each word; the logarithm of the number of words.
    """
    first, best = scores.ranked[0]
    second = scores.ranked[1][1] if len(scores.ranked) > 1 else best - 4.0
    linear, pooled = scores.linear, scores.pooled
    needs = [name for name, _ in scores.ranked]
    agree = first == max(needs, key=lambda n: linear[n]) == max(needs, key=lambda n: pooled[n])
    aside = linear.get("off-topic", -1.0) - linear[first]
    aside_pooled = (pooled.get("off-topic", 0.0) - pooled[first]) / (pooled[first] + 5.0)
    return (
        linear[first],
        min(best - second, 8.0),
        float(agree),
        aside,
        max(-1.0, min(2.0, aside_pooled)),
        covered,
        pooled[first] / (words + 1),
        math.log(1 + words),
    )


def spread_out(values: Sequence[float]) -> list[float]:
    """Standardised measures, their products two by two, and 1: what the weights multiply."""
    z = [(v - c) / s for v, c, s in zip(values, CENTRE, SPREAD, strict=True)]
    size = len(z)
    return [*z, *(z[i] * z[j] for i in range(size) for j in range(i, size)), 1.0]


def _chance(weights: Sequence[float], values: Sequence[float]) -> float:
    total = sum(w * v for w, v in zip(weights, values, strict=True))
    return 1.0 / (1.0 + math.exp(-max(-30.0, min(30.0, total))))


def decide(values: Sequence[float]) -> Decision:
    """Both chances for one message, from its `measures`."""
    expanded = spread_out(values)
    return Decision(_chance(RIGHT, expanded), _chance(ANSWERABLE, expanded))
