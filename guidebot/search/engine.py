"""The search engine: built once from the guide, loaded as sections, asked with a message."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from guidebot.domain.guide import Guide
from guidebot.domain.passage import Passage
from guidebot.linear.features import prime, stem, words
from guidebot.search.needs import ASIDE, NeedIndex, NeedScores
from guidebot.search.passages import Hit, PassageIndex, Situation
from guidebot.search.repair import repair
from guidebot.search.words import STOP_WORDS, Query

LONGEST = 2_500
"""Characters of one message that are ranked; what is said beyond them rarely asks."""


@dataclass(frozen=True, slots=True)
class Found:
    """What the search found.

    Attributes:
        query: the message as it was ranked.
        scores: of every need.
        hits: passages, best first.
        known_share: share of content words that the guide's wordings know, 0 to 1.
    """

    query: Query
    scores: NeedScores
    hits: tuple[Hit, ...]
    known_share: float


class SearchEngine:
    """Needs first, then passages."""

    __slots__ = ("_known", "_ordinary", "needs", "passages")

    def __init__(
        self,
        needs: NeedIndex,
        passages: PassageIndex,
        known: Mapping[str, int],
        ordinary: frozenset[str],
    ) -> None:
        self.needs = needs
        self.passages = passages
        self._known = known
        self._ordinary = ordinary

    @staticmethod
    def compile(guide: Guide, say: Callable[[str], None] = lambda _: None) -> dict[str, bytes]:
        """Sections for the compiled guide; takes seconds and needs numpy."""
        known: Counter[str] = Counter()
        ordinary: set[str] = set()
        for name, lines in guide.wordings.items():
            for line in lines:
                if name in ASIDE:
                    ordinary.update(words(line))
                else:
                    known.update(words(line))
        for passage in guide.passages.values():
            known.update(words(f"{passage.title} {passage.short} {passage.body}"))
        for owners, guides in guide.vocabulary.items():
            known.update(words(f"{owners} {guides}"))
        index = NeedIndex.build(guide.wordings, say)
        say("indexing passages")
        table = {
            "known": known,
            "ordinary": sorted(ordinary - known.keys()),
            "stems": {w: stem(w) for w in sorted({*known, *ordinary})},
        }
        return {
            **index.dump(),
            "passages": PassageIndex.build(guide.passages).dump(),
            "words": json.dumps(table).encode("utf-8"),
        }

    @classmethod
    def load(
        cls, passages: Mapping[str, Passage], sections: Mapping[str, memoryview]
    ) -> SearchEngine:
        """Open what `compile` wrote.

        Raises:
            KeyError, ValueError: the sections are not those of an engine.
        """
        table = json.loads(bytes(sections["words"]))
        prime(table["stems"])
        return cls(
            NeedIndex.load(sections),
            PassageIndex.load(passages, sections["passages"]),
            table["known"],
            frozenset(table["ordinary"]),
        )

    def read(self, text: str) -> Query:
        """The message as it is ranked: its words, typing slips repaired, and their stems."""
        tokens, changed = repair(words(text[:LONGEST]), self._known, self._ordinary)
        return Query(tuple(tokens), tuple(stem(token) for token in tokens), tuple(changed))

    def known_share(self, query: Query) -> float:
        """Share of content words that occur in the guide or its wordings; 0 without any."""
        content = [t for t in query.tokens if t not in STOP_WORDS]
        return sum(t in self._known for t in content) / len(content) if content else 0.0

    def search(self, text: str, situation: Situation) -> Found:
        """Rank needs and passages for one message."""
        query = self.read(text)
        scores = self.needs.scores(query)
        hits = self.passages.choose(scores.ranked[:8], query, situation)
        return Found(query, scores, tuple(hits), self.known_share(query))
