"""Sentences of a message, as far as owners write any."""

from __future__ import annotations

import re

_ENDS = re.compile(r"(?<=[.?!])\s+|\n+")


def sentences(text: str) -> list[str]:
    """The parts of a message that ask or tell one thing, in order, without empty ones."""
    return [part for part in (piece.strip() for piece in _ENDS.split(text)) if part]
