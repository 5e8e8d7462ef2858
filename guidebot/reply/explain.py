"""Why a passage won: for writers, never for owners."""

from __future__ import annotations

from collections.abc import Iterator

from guidebot.reply.pipeline import Assistant
from guidebot.search.decide import MEASURES
from guidebot.search.passages import Situation
from guidebot.text import clean


def lines(assistant: Assistant, text: str | bytes, needs: int = 3) -> Iterator[str]:
    """The words that were ranked, the first needs with what spoke for them, and the decision.

    Args:
        assistant: the open guide.
        text: the message.
        needs: how many needs to explain.
    """
    engine = assistant.engine
    found = engine.search(clean(text).text, Situation())
    query = found.query
    yield ""
    yield f"Why: ranked words: {' '.join(query.tokens) or '(none)'}"
    for typed, meant in query.repaired:
        yield f"  repaired: {typed} -> {meant}"
    for name, total in found.scores.ranked[:needs]:
        linear, pooled = found.scores.linear[name], found.scores.pooled[name]
        yield f"  {name}: {total:.2f} (linear {linear:.2f}, BM25 {pooled:.2f})"
        spoke = engine.needs.linear.contributions(query.tokens, query.stems, name)
        yield "    linear: " + ", ".join(f"{what.strip()!r} {much:+.2f}" for what, much in spoke)
        words = engine.needs.pooled_words(query, name)
        yield "    BM25: " + ", ".join(f"{what} {much:.2f}" for what, much in words)
    measured = ", ".join(
        f"{name} {value:.2f}" for name, value in zip(MEASURES, found.measures, strict=True)
    )
    yield f"  measures: {measured}"
    yield (
        f"  decision: first need right {found.decision.right:.2f}, "
        f"guide answers it {found.decision.answerable:.2f}"
    )
    for hit in found.hits:
        yield f"  passage {hit.passage.id} for {hit.need}: {hit.score:.2f}"
