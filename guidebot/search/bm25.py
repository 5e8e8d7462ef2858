"""BM25 over postings, with the scores of rank-bm25's `BM25Okapi` to the last digits.

score(q, d) = sum over query words of idf(w) * f (k1 + 1) / (f + k1 (1 - b + b len/avglen)), with
idf(w) = ln((N - n + 0.5) / (n + 0.5)); where that is negative, epsilon times the mean idf of all
words (Robertson & Zaragoza 2009; the floor is that of rank-bm25 0.2.2, the reference).
"""

from __future__ import annotations

import math
from array import array
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence

Postings = Mapping[str, tuple[Sequence[int], Sequence[float]]]


class Bm25:
    """Scores every document that shares a word with the query.

    Attributes:
        size: number of documents.
        postings: for each word the document numbers (uint32) and what one occurrence of the
            word in the query adds to their scores (float64).
    """

    __slots__ = ("postings", "size")

    def __init__(self, size: int, postings: Postings) -> None:
        self.size = size
        self.postings = postings

    @classmethod
    def build(
        cls,
        documents: Sequence[Sequence[str]],
        *,
        k1: float = 1.5,
        b: float = 0.75,
        epsilon: float = 0.25,
    ) -> Bm25:
        """Index token lists.

        Args:
            documents: tokens of each document; empty documents are allowed.
            k1: saturation of term counts (the defaults are rank-bm25's).
            b: normalisation by length, 0 to 1.
            epsilon: share of the mean idf that stands in for a negative one.
        """
        counted = [Counter(document) for document in documents]
        lengths = [len(document) for document in documents]
        total = sum(lengths)
        if not total:
            return cls(len(documents), {})
        mean_length = total / len(documents)
        found: dict[str, list[tuple[int, int]]] = {}
        for number, counts in enumerate(counted):
            for word, times in counts.items():
                found.setdefault(word, []).append((number, times))
        idf = _idf({word: len(places) for word, places in found.items()}, len(documents), epsilon)
        base = [k1 * (1 - b + b * length / mean_length) for length in lengths]
        postings = {
            word: (
                array("I", [number for number, _ in places]),
                array(
                    "d",
                    [idf[word] * (f * (k1 + 1) / (f + base[number])) for number, f in places],
                ),
            )
            for word, places in found.items()
        }
        return cls(len(documents), postings)

    def scores(self, query: Iterable[str]) -> dict[int, float]:
        """Score of each document that shares a word with the query; a repeated word counts twice.

        Documents that are not in the result score 0.
        """
        totals: dict[int, float] = {}
        get = totals.get
        for word in query:
            entry = self.postings.get(word)
            if entry is not None:
                for number, weight in zip(entry[0], entry[1], strict=True):
                    totals[number] = get(number, 0.0) + weight
        return totals

    def top(self, query: Iterable[str], most: int) -> list[tuple[int, float]]:
        """The best documents, equal scores in order of their numbers on every machine."""
        ranked = sorted(self.scores(query).items(), key=lambda pair: (-pair[1], pair[0]))
        return ranked[:most]


def _idf(found_in: Mapping[str, int], size: int, epsilon: float) -> dict[str, float]:
    idf = {w: math.log(size - n + 0.5) - math.log(n + 0.5) for w, n in found_in.items()}
    floor = epsilon * (sum(idf.values()) / len(idf))
    return {word: value if value >= 0 else floor for word, value in idf.items()}
