"""The search engine: built once from the guide, loaded as sections, asked with a message."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace

from guidebot import blob
from guidebot.domain.guide import Guide
from guidebot.domain.passage import Passage
from guidebot.linear.features import prime, stem, words
from guidebot.search.decide import Decision, decide, measures
from guidebot.search.follow import FollowUps, blend, joined, last_words, lean
from guidebot.search.needs import ASIDE, NeedIndex, NeedScores
from guidebot.search.passages import Hit, PassageIndex, Situation
from guidebot.search.repair import repair
from guidebot.search.said import Said
from guidebot.search.split import sentences
from guidebot.search.words import Query

SURE = 0.8
"""Chance of being right from which a part of a message stands for itself."""
SAID, NEAR = 0.95, 5
"""Chance of being right where the message is an authored wording of one of the `NEAR` first."""
PARTS = 12
"""Sentences of one message that are looked at for further questions."""
LONGEST = 2_500
"""Characters of one message that are ranked; what is said beyond them rarely asks."""


@dataclass(frozen=True, slots=True)
class Found:
    """What the search found.

    Attributes:
        query: the message as it was ranked.
        scores: of every need.
        hits: passages, best first.
        measures: what the decision was made from, in the order of `decide.MEASURES`.
        decision: how sure the search is.
        follows: the message was read in the light of the turn before.
        also: passages for further questions in the same message.
        thread: in the light of which words the next turn is read: of this message, and if it
            follows another turn of the last words before it, so that "how often?" does not lose
            what the talk is about.
    """

    query: Query
    scores: NeedScores
    hits: tuple[Hit, ...]
    measures: tuple[float, ...]
    decision: Decision
    follows: bool = False
    also: tuple[Hit, ...] = ()
    thread: Query | None = None


class SearchEngine:
    """Needs first, then passages."""

    __slots__ = (
        "_follow_ups",
        "_known",
        "_lines",
        "_ordinary",
        "_said",
        "_total",
        "needs",
        "passages",
    )

    def __init__(
        self,
        needs: NeedIndex,
        passages: PassageIndex,
        known: Mapping[str, int],
        ordinary: frozenset[str],
        lines: Mapping[str, int],
        total: int,
        said: Said,
        follow_ups: FollowUps | None = None,
    ) -> None:
        self.needs = needs
        self.passages = passages
        self._known = known
        self._ordinary = ordinary
        self._lines = lines
        self._total = total
        self._said = said
        self._follow_ups = follow_ups

    @classmethod
    def build_from(
        cls,
        wordings: Mapping[str, Sequence[str]],
        guide: Guide,
        say: Callable[[str], None] = lambda _: None,
    ) -> SearchEngine:
        """Build from these wordings and the guide's passages; takes seconds and needs numpy."""
        known: Counter[str] = Counter()
        lines_with: Counter[str] = Counter()
        total = 0
        ordinary: set[str] = set()
        for name, lines in wordings.items():
            for line in lines:
                tokens = words(line)
                if name in ASIDE:
                    ordinary.update(tokens)
                    continue
                known.update(tokens)
                lines_with.update({stem(token) for token in tokens})
                total += 1
        for passage in guide.passages.values():
            known.update(words(f"{passage.title} {passage.short} {passage.body}"))
        for owners, guides in guide.vocabulary.items():
            known.update(words(f"{owners} {guides}"))
        index = NeedIndex.build(wordings, say)
        say("indexing passages")
        passages = PassageIndex.build(guide.passages)
        unusual = frozenset(ordinary - known.keys())
        said = Said.build(wordings)
        follow_ups = None
        if guide.follow_ups:
            say("follow-ups")
            follow_ups = FollowUps.build(guide.follow_ups, tuple(guide.needs))
        return cls(index, passages, known, unusual, lines_with, total, said, follow_ups)

    def dump(self) -> dict[str, bytes]:
        """Sections for the compiled guide."""
        table = {
            "known": self._known,
            "ordinary": sorted(self._ordinary),
            "lines": self._lines,
            "total": self._total,
            "stems": {w: stem(w) for w in sorted({*self._known, *self._ordinary})},
        }
        more = {"follow-ups": self._follow_ups.dump()} if self._follow_ups else {}
        return {
            **self.needs.dump(),
            **more,
            "passages": self.passages.dump(),
            "said": self._said.dump(),
            "words": blob.pack_values(table),
        }

    @classmethod
    def load(
        cls, passages: Mapping[str, Passage], sections: Mapping[str, memoryview]
    ) -> SearchEngine:
        """Open what `dump` wrote.

        Raises:
            KeyError, ValueError: the sections are not those of an engine.
        """
        table = blob.unpack_values(sections["words"])
        prime(table["stems"])
        return cls(
            NeedIndex.load(sections),
            PassageIndex.load(passages, sections["passages"]),
            table["known"],
            frozenset(table["ordinary"]),
            table["lines"],
            table["total"],
            Said.load(sections["said"]),
            FollowUps.load(sections["follow-ups"]) if "follow-ups" in sections else None,
        )

    def read(self, text: str) -> Query:
        """The message as it is ranked: its words, typing slips repaired, and their stems."""
        tokens, changed = repair(words(text[:LONGEST]), self._known, self._ordinary)
        return Query(tuple(tokens), tuple(stem(token) for token in tokens), tuple(changed))

    def measure(self, query: Query, scores: NeedScores) -> tuple[float, ...]:
        """The measures the decision is made from (`decide.measures`)."""
        content = set(query.content)
        rarity = {s: math.log((self._total + 1) / (self._lines.get(s, 0) + 0.5)) for s in content}
        whole = sum(rarity.values())
        number = self.needs.classes.index(scores.ranked[0][0])
        held = sum(rarity[s] for s in content if self.needs.holds(number, s))
        return measures(scores, held / whole if whole else 0.0, len(content))

    def search(
        self,
        text: str,
        situation: Situation,
        before: Query | None = None,
        need: str | None = None,
    ) -> Found:
        """Rank needs and passages for one message.

        Args:
            text: the cleaned message, words of time taken out.
            situation: what is known of the dog.
            before: query of the turn before, for a follow-up.
            need: what that turn was read as.
        """
        query = self.read(text)
        scores = self.needs.scores(query)
        values = self.measure(query, scores)
        decision = decide(values)
        known = self._said.need(query.stems) if before is None else None
        if known is not None and known in dict(scores.ranked[:NEAR]):
            scores, decision = scores.led_by(known), Decision(SAID, SAID)
        follows = False
        if before is not None and query.tokens:
            scores, decision, follows = self._follow(query, scores, decision, before, need)
            values = self.measure(query, scores)
        hits = self.passages.choose(scores.ranked[:8], query, situation)
        also = () if follows else self._also(text, situation, hits)
        thread = last_words(joined(before, query)) if follows and before else query
        return Found(query, scores, tuple(hits), values, decision, follows, also, thread)

    def led_by(self, found: Found, need: str, situation: Situation) -> Found:
        """What was found, but with `need` first: something beside the words names it."""
        scores = found.scores.led_by(need)
        hits = self.passages.choose(scores.ranked[:8], found.query, situation)
        return replace(found, scores=scores, hits=tuple(hits))

    def _follow(
        self,
        query: Query,
        alone: NeedScores,
        decision: Decision,
        before: Query,
        need: str | None,
    ) -> tuple[NeedScores, Decision, bool]:
        """The ranking of a follow-up; a message sure of itself is a change of subject."""
        both = joined(before, query)
        together = self.needs.scores(both)
        learnt = self._follow_ups.scores(query, need) if self._follow_ups and need else {}
        ranked = blend(alone, together, need, query, learnt)
        scores = replace(alone, ranked=ranked)
        changed = ranked[0][0] != alone.ranked[0][0]
        if not changed and decision.right >= SURE:
            return alone, decision, False
        mixed = decide(self.measure(both, replace(together, ranked=ranked)))
        # A follow-up stands on the turn before, which was answered: lean on it for the outcome.
        right = max(decision.right, mixed.right, 0.5 * (lean(query) + 0.5) * 0.6)
        return scores, Decision(right, max(decision.answerable, mixed.answerable)), True

    def _also(self, text: str, situation: Situation, hits: Sequence[Hit]) -> tuple[Hit, ...]:
        """A second question in the same message: its passage, if one part surely asks for it."""
        if text.count("?") < 2 or not hits:
            return ()
        parts = [part for part in sentences(text) if part.endswith("?")]
        found: list[Hit] = []
        seen = {need for hit in hits[:1] for need in hit.passage.answers}
        for part in parts[:PARTS]:
            query = self.read(part)
            if len(query.content) < 2:
                continue
            scores = self.needs.scores(query)
            need = scores.ranked[0][0]
            if need in seen or decide(self.measure(query, scores)).right < SURE:
                continue
            hit = self.passages.choose(scores.ranked[:1], query, situation, most=1)
            if hit:
                found.append(hit[0])
                seen.update(hit[0].passage.answers)
        return tuple(found[:2])
