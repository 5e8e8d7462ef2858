"""One passage as plain text."""

from __future__ import annotations

from collections.abc import Iterator

from guidebot.domain.passage import Passage
from guidebot.render.text import body_lines, fill


def lines(passage: Passage, caution: str) -> Iterator[str]:
    """Title, short answer, text, source and caution, as labelled lines."""
    yield passage.title
    yield ""
    yield fill(passage.short)
    yield ""
    yield from body_lines(passage.body)
    yield ""
    yield f"Source: {passage.path}; basis: {passage.basis}"
    yield f"Reviewed: {passage.reviewed.on.isoformat()} by {passage.reviewed.role}"
    if passage.see:
        yield f"See also: {', '.join(passage.see)}"
    yield fill(f"Caution: {caution}")
