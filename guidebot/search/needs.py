"""Rank the needs for a question: pooled BM25 and a linear scorer, summed as z-scores.

Each need has one document, all its wordings pooled; the linear scorer is fitted on the single
wordings. The two make different mistakes; their z-scores (Fox & Shaw 1994, CombSUM) are added.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace

from guidebot.linear.fit import FitSettings, fit, tokenise
from guidebot.linear.weights import Weights
from guidebot.search.bm25 import Bm25
from guidebot.search.flat import FlatPostings, dump_postings
from guidebot.search.words import Query

POOLED_K1 = 2.0
POOLED_B = 0.3
SETTINGS = FitSettings(ridge=1.0, stem_share=0.7, keep=2000, least_lines=1)
ASIDE = ("courtesy", "none", "off-topic")
"""Classes of wordings that are no needs."""


@dataclass(frozen=True, slots=True)
class NeedScores:
    """How well each need fits a question.

    Attributes:
        ranked: (need, summed z-score), best first, without the classes of `ASIDE`.
        linear, pooled: raw scores of the two scorers by class, `ASIDE` included.
    """

    ranked: tuple[tuple[str, float], ...]
    linear: Mapping[str, float]
    pooled: Mapping[str, float]

    def led_by(self, need: str) -> NeedScores:
        """The same with `need` first, at the score of the one that was."""
        rest = (pair for pair in self.ranked if pair[0] != need)
        return replace(self, ranked=((need, self.ranked[0][1]), *rest))


@dataclass(frozen=True, slots=True)
class NeedIndex:
    """The two scorers over the same classes."""

    classes: tuple[str, ...]
    pooled: Bm25
    linear: Weights

    @classmethod
    def build(
        cls,
        wordings: Mapping[str, Sequence[str]],
        say: Callable[[str], None] = lambda _: None,
    ) -> NeedIndex:
        """Index and fit; minutes of one core for tens of thousands of lines.

        Args:
            wordings: lines by class: need keys and those of `ASIDE`.
            say: told what is being done.
        """
        classes = tuple(sorted(wordings))
        lines = [(name, tokenise(line)) for name in classes for line in wordings[name]]
        documents: dict[str, list[str]] = {name: [] for name in classes}
        for name, (_, stems) in lines:
            documents[name].extend(stems)
        pooled = Bm25.build([documents[name] for name in classes], k1=POOLED_K1, b=POOLED_B)
        linear = fit(
            [text for _, text in lines],
            [name for name, _ in lines],
            SETTINGS,
            classes=classes,
            say=say,
        )
        return cls(classes, pooled, linear)

    def dump(self, name: str = "need") -> dict[str, bytes]:
        """Sections for the compiled guide, their names beginning with `name`."""
        return {
            f"{name}-pooled": dump_postings(self.pooled.size, self.pooled.postings),
            f"{name}-linear": self.linear.dump(),
        }

    @classmethod
    def load(cls, sections: Mapping[str, bytes | memoryview], name: str = "need") -> NeedIndex:
        """Open what `dump` wrote, without copying.

        Raises:
            KeyError, ValueError: the sections are not those of an index.
        """
        postings = FlatPostings(sections[f"{name}-pooled"])
        linear = Weights.load(sections[f"{name}-linear"])
        return cls(linear.classes, Bm25(postings.size, postings), linear)

    def holds(self, number: int, word: str) -> bool:
        """Does any wording of class `number` hold this stem?"""
        entry = self.pooled.postings.get(word)
        return entry is not None and number in entry[0]

    def pooled_words(self, query: Query, name: str, most: int = 8) -> list[tuple[str, float]]:
        """What each word of the query adds to the BM25 score of class `name`, most first."""
        number = self.classes.index(name)
        found: dict[str, float] = {}
        for word in query.stems:
            docs, weights = self.pooled.postings.get(word, ((), ()))
            for doc, weight in zip(docs, weights, strict=True):
                if doc == number:
                    found[word] = found.get(word, 0.0) + weight
        return sorted(found.items(), key=lambda pair: (-pair[1], pair[0]))[:most]

    def scores(self, query: Query) -> NeedScores:
        """Score every class and rank the needs; ties in order of their keys."""
        linear = self.linear.scores(query.tokens, query.stems)
        found = self.pooled.scores(query.stems)
        pooled = [found.get(i, 0.0) for i in range(len(self.classes))]
        needs = [i for i, name in enumerate(self.classes) if name not in ASIDE]
        first = standard([linear[i] for i in needs])
        second = standard([pooled[i] for i in needs])
        summed = [(self.classes[i], a + b) for i, a, b in zip(needs, first, second, strict=True)]
        summed.sort(key=lambda pair: (-pair[1], pair[0]))
        return NeedScores(
            tuple(summed),
            dict(zip(self.classes, linear, strict=True)),
            dict(zip(self.classes, pooled, strict=True)),
        )


def standard(values: Sequence[float]) -> list[float]:
    """Values as z-scores: less their mean, in units of their standard deviation."""
    mean = sum(values) / len(values)
    spread = math.sqrt(sum((v - mean) ** 2 for v in values) / len(values)) or 1.0
    return [(v - mean) / spread for v in values]
