"""Measures of ranking and of decisions; each with its source and a worked example in the tests.

A question that was skipped counts as 0: silence can never raise a mean.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

Gains = Sequence[int]
"""Relevance of the ranked results, best first; 0 is not relevant."""


def success_at(gains: Gains, k: int) -> float:
    """1 if any of the first k results is relevant, else 0 (TREC's `success_k`)."""
    return float(any(gain > 0 for gain in gains[:k]))


def reciprocal_rank(gains: Gains, k: int = 10) -> float:
    """1 / rank of the first relevant result among the first k, else 0 (Voorhees, TREC-8 1999)."""
    for rank, gain in enumerate(gains[:k], start=1):
        if gain > 0:
            return 1.0 / rank
    return 0.0


def dcg(gains: Gains, k: int = 10) -> float:
    """Sum of gain / log2(rank + 1) over the first k (Burges et al. 2005, linear gains)."""
    return sum(gain / math.log2(rank + 1) for rank, gain in enumerate(gains[:k], start=1))


def dcg_2002(gains: Gains, base: int = 2) -> list[float]:
    """DCG at every rank as first defined: no discount below rank `base` (Jarvelin & Kekalainen,
    ACM TOIS 2002;20(4):422-446).
    """
    total, at = 0.0, []
    for rank, gain in enumerate(gains, start=1):
        total += gain if rank < base else gain / math.log(rank, base)
        at.append(total)
    return at


def ndcg(gains: Gains, relevant: Sequence[int], k: int = 10) -> float:
    """DCG over that of the ideal order of all `relevant` grades; 0 if nothing is relevant."""
    ideal = dcg(sorted(relevant, reverse=True), k)
    return dcg(gains, k) / ideal if ideal else 0.0


@dataclass(frozen=True, slots=True)
class Share:
    """A share of n with its 95 % Wilson interval (Wilson, JASA 1927; Newcombe, Stat Med 1998).

    Attributes:
        hits, n: counts; the share is their quotient.
    """

    hits: float
    n: int

    @property
    def value(self) -> float:
        """The share; 0 when there is nothing to count."""
        return self.hits / self.n if self.n else 0.0

    @property
    def interval(self) -> tuple[float, float]:
        """Lower and upper bound; (0, 1) when there is nothing to count."""
        return wilson(self.hits, self.n)

    def __str__(self) -> str:
        """`.823 [.76-.87] n=240`."""
        low, high = self.interval
        return f"{self.value:.3f} [{low:.2f}-{high:.2f}] n={self.n}"


def wilson(hits: float, n: int, z: float = 1.959963984540054) -> tuple[float, float]:
    """The Wilson score interval of hits out of n, without continuity correction."""
    if not n:
        return 0.0, 1.0
    share = hits / n
    centre = share + z * z / (2 * n)
    half = z * math.sqrt(share * (1 - share) / n + z * z / (4 * n * n))
    scale = 1 + z * z / n
    return max(0.0, (centre - half) / scale), min(1.0, (centre + half) / scale)


RANKING: Mapping[str, Callable[[Gains, Sequence[int]], float]] = {
    "success@1": lambda gains, _: success_at(gains, 1),
    "success@3": lambda gains, _: success_at(gains, 3),
    "MRR@10": lambda gains, _: reciprocal_rank(gains, 10),
    "nDCG@10": lambda gains, relevant: ndcg(gains, relevant, 10),
}
"""The ranking measures of `guidebot eval`, by name."""
