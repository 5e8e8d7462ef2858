"""Follow-ups: how a short message is read in the light of the turn before."""

from __future__ import annotations

from collections.abc import Sequence

from guidebot.search.words import Query

JOINED = 0.5
"""Share of the ranking of both turns together, against the message alone."""
SAME_NEED = 0.5
SAME_TOPIC = 1.5
"""What the need and the topic of the turn before add, in z-scores."""
FEW_WORDS = 2
"""With at most so many content words the message leans twice as much on the turn before."""


def joined(before: Query, query: Query) -> Query:
    """Both turns as one query."""
    return Query(before.tokens + query.tokens, before.stems + query.stems, query.repaired)


def lean(query: Query) -> float:
    """How much the message leans on the turn before: 2 for a bare fragment, else 1."""
    return 2.0 if len(query.content) <= FEW_WORDS else 1.0


def blend(
    alone: Sequence[tuple[str, float]],
    together: Sequence[tuple[str, float]],
    need: str | None,
    weight: float,
) -> tuple[tuple[str, float], ...]:
    """Rank the needs of a follow-up, best first.

    Args:
        alone: (need, summed z-score) of the message.
        together: the same of both turns joined.
        need: the need the turn before was read as.
        weight: from `lean`.
    """
    both = dict(together)
    topic = need.partition(".")[0] if need else None
    scored = []
    for name, score in alone:
        total = score + JOINED * weight * both[name]
        if name == need:
            total += SAME_NEED * weight
        elif topic is not None and name.partition(".")[0] == topic:
            total += SAME_TOPIC * weight
        scored.append((name, total))
    scored.sort(key=lambda pair: (-pair[1], pair[0]))
    return tuple(scored)
