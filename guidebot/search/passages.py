"""From ranked needs to passages that hold for this sleeve, part and stage."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from guidebot.domain.passage import Applies, Passage
from guidebot.linear.features import stem, words
from guidebot.search.bm25 import Bm25
from guidebot.search.flat import FlatPostings, dump_postings
from guidebot.search.words import Query, content_stems

LINKED = 0.5
"""What a link from another passage adds: writers point to the main one of two."""


@dataclass(frozen=True, slots=True)
class Situation:
    """What is known of the dog that asks; None means not known.

    Attributes:
        sleeve: key of the sleeve.
        parts: keys of the optional parts the device has.
        stage: key of the stage.
        day: day number, fitting day = 1.
    """

    sleeve: str | None = None
    parts: frozenset[str] | None = None
    stage: str | None = None
    day: int | None = None


def fits(applies: Applies, situation: Situation) -> bool:
    """May a passage be shown in this situation? What is not known does not exclude it."""
    if applies.sleeve and situation.sleeve and applies.sleeve != situation.sleeve:
        return False
    if applies.part and situation.parts is not None and applies.part not in situation.parts:
        return False
    if applies.stages and situation.stage and situation.stage not in applies.stages:
        return False
    if applies.days and situation.day is not None:
        first, last = applies.days
        return first <= situation.day and (last is None or situation.day <= last)
    return True


def _aptness(applies: Applies, situation: Situation) -> int:
    """Passages written for just this dog come first, general ones next, guesses last."""
    known = 0
    for wanted, is_known in (
        (applies.sleeve, situation.sleeve),
        (applies.part, situation.parts),
        (applies.stages, situation.stage),
        (applies.days, situation.day),
    ):
        if wanted:
            known += 1 if is_known is not None else -1
    return known


@dataclass(frozen=True, slots=True)
class Hit:
    """A passage found, with the need it was found for and its score (higher is better)."""

    passage: Passage
    need: str
    score: float


class PassageIndex:
    """Chooses among passages: BM25 over their own text settles what the need leaves open."""

    __slots__ = ("_bm25", "_by_need", "_links", "_numbers", "passages")

    def __init__(self, passages: Mapping[str, Passage], bm25: Bm25) -> None:
        self.passages = passages
        self._bm25 = bm25
        self._numbers = {key: number for number, key in enumerate(sorted(passages))}
        self._links = Counter(key for passage in passages.values() for key in passage.see)
        self._by_need: dict[str, list[str]] = {}
        for key in sorted(passages):
            for need in passages[key].answers:
                self._by_need.setdefault(need, []).append(key)

    @classmethod
    def build(cls, passages: Mapping[str, Passage]) -> PassageIndex:
        """Index title, short answer and body of every passage."""
        return cls(passages, Bm25.build([_stems(passages[key]) for key in sorted(passages)]))

    def dump(self) -> bytes:
        """Postings for the compiled guide."""
        return dump_postings(self._bm25.size, self._bm25.postings)

    @classmethod
    def load(cls, passages: Mapping[str, Passage], raw: bytes | memoryview) -> PassageIndex:
        """Open what `dump` wrote; ValueError if it is something else."""
        postings = FlatPostings(raw)
        return cls(passages, Bm25(postings.size, postings))

    def for_need(self, need: str, situation: Situation, text: Mapping[int, float]) -> list[Passage]:
        """Passages that answer `need` here, best first."""
        found = [self.passages[key] for key in self._by_need.get(need, ())]
        found = [p for p in found if fits(p.applies, situation)]

        def order(passage: Passage) -> tuple[float, ...]:
            return (
                -_aptness(passage.applies, situation),
                passage.answers.index(need),
                -text.get(self._numbers[passage.id], 0.0) - LINKED * self._links[passage.id],
            )

        return sorted(found, key=lambda p: (order(p), p.id))

    def text_scores(self, query: Query) -> dict[int, float]:
        """BM25 of the passages' own text, by passage number."""
        return self._bm25.scores(query.content)

    def choose(
        self,
        ranked: Sequence[tuple[str, float]],
        query: Query,
        situation: Situation,
        *,
        needs: int = 3,
        most: int = 6,
    ) -> list[Hit]:
        """The best passage of each of the first needs, then further ones of the first need.

        A passage is listed once, under the first need that brings it.
        """
        text = self.text_scores(query)
        hits: list[Hit] = []
        seen: set[str] = set()

        def add(passages: Iterable[Passage], need: str, score: float) -> bool:
            for passage in passages:
                if passage.id not in seen:
                    seen.add(passage.id)
                    hits.append(Hit(passage, need, score))
                    return True
            return False

        for need, score in ranked:
            if len(hits) >= needs:
                break
            add(self.for_need(need, situation, text)[:1], need, score)
        if ranked:
            first, score = ranked[0]
            others = self.for_need(first, situation, text)
            while len(hits) < most and add(others, first, score):
                score -= 1e-6
        return hits


def _stems(passage: Passage) -> list[str]:
    tokens = words(f"{passage.title} {passage.title} {passage.short} {passage.body}")
    return content_stems(tokens, [stem(token) for token in tokens])
