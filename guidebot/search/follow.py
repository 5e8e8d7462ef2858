"""Follow-ups: how a short message is read in the light of the turn before."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from guidebot.linear.features import ALONE
from guidebot.linear.fit import FitSettings, fit, tokenise
from guidebot.linear.weights import Weights
from guidebot.search.needs import NeedScores, standard
from guidebot.search.words import Query

JOINED = 1.25
"""Weight of the ranking of both turns together, against the message alone."""
SAME_NEED = 4.0
SAME_TOPIC = 0.5
"""What the need and the topic of the turn before add, in z-scores."""
ASKS_MORE = 2.0
"""What the need of the turn before adds beside that to a message of nothing but `BARE` words."""
BARE = frozenset(
    """how often long much many far why when where what which who then exactly but and so too now
    ok okay""".split()
)
"""Words that ask for more of the same, whatever it was."""
LEARNT = 2.0
"""What the scorer fitted on authored follow-ups adds, in z-scores. All set on the dev chats."""
REMEMBERED = 30
"""Words of the turns before that a follow-up is read in the light of."""
FEW_WORDS = 2
"""With at most so many content words the message leans twice as much on the turn before."""
_SETTINGS = FitSettings(ridge=0.5, stem_share=0.85, keep=4000, least_lines=1)


def joined(before: Query, query: Query) -> Query:
    """Both turns as one query."""
    return Query(before.tokens + query.tokens, before.stems + query.stems, query.repaired)


def last_words(query: Query) -> Query:
    """The end of a long query, as much as the next turn may be read in the light of."""
    return Query(query.tokens[-REMEMBERED:], query.stems[-REMEMBERED:])


def lean(query: Query) -> float:
    """How much the message leans on the turn before: 2 for a bare fragment, else 1."""
    return 2.0 if len(query.content) <= FEW_WORDS else 1.0


class FollowUps:
    """A linear scorer of follow-ups: their words alone and crossed with the turn before."""

    __slots__ = ("_weights",)

    def __init__(self, weights: Weights) -> None:
        self._weights = weights

    @classmethod
    def build(cls, lines: Iterable[tuple[str, str, str]], needs: Sequence[str]) -> FollowUps:
        """Fit; takes seconds and needs numpy.

        Args:
            lines: need of the turn before, need of the follow-up, the follow-up.
            needs: every need.
        """
        rows, labels = [], []
        for before, need, text in lines:
            tokens, stems = tokenise(text)
            rows.append((tokens, [*stems, *_crossed(stems, before)]))
            labels.append(need)
        return cls(fit(rows, labels, _SETTINGS, classes=tuple(needs)))

    def scores(self, query: Query, before: str) -> dict[str, float]:
        """How well each need fits a follow-up after a turn about `before`, in z-scores."""
        found = self._weights.scores(query.tokens, [*query.stems, *_crossed(query.stems, before)])
        return dict(zip(self._weights.classes, standard(found), strict=True))

    def dump(self) -> bytes:
        """Bytes that `load` reads."""
        return self._weights.dump()

    @classmethod
    def load(cls, raw: bytes | memoryview) -> FollowUps:
        """Read what `dump` wrote; ValueError if it is not that."""
        return cls(Weights.load(raw))


def _crossed(stems: Sequence[str], need: str) -> list[str]:
    topic = need.partition(".")[0]
    marks = [f"t={topic}", f"n={need}"]
    marks += [f"{mark}~{word}" for mark in tuple(marks) for word in stems]
    return [ALONE + mark for mark in marks]


def blend(
    alone: NeedScores,
    together: NeedScores,
    need: str | None,
    query: Query,
    learnt: dict[str, float],
) -> tuple[tuple[str, float], ...]:
    """Rank the needs of a follow-up, best first.

    Args:
        alone: scores of the message.
        together: the same of both turns joined.
        need: the need the turn before was read as.
        query: the message; the more it leans, the less it is taken by itself.
        learnt: from `FollowUps.scores`; empty without such a scorer.
    """
    both = dict(together.ranked)
    topic = need.partition(".")[0] if need else None
    weight = lean(query)
    same = SAME_NEED + (ASKS_MORE if BARE.issuperset(query.tokens) else 0.0)
    scored = []
    for name, score in alone.ranked:
        total = score / weight + weight * (JOINED * both[name] + LEARNT * learnt.get(name, 0.0))
        if name == need:
            total += same * weight
        elif topic is not None and name.partition(".")[0] == topic:
            total += SAME_TOPIC * weight
        scored.append((name, total))
    scored.sort(key=lambda pair: (-pair[1], pair[0]))
    return tuple(scored)
