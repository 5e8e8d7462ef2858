"""From a message to the words that are searched for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from guidebot.linear.features import STOP_WORDS, stem, words


@dataclass(frozen=True, slots=True)
class Query:
    """A message made ready for ranking.

    Attributes:
        tokens: its words, after repair of typing slips.
        stems: the stem of each token.
        repaired: (typed, taken for) pairs, for the note "Searched for ...".
    """

    tokens: tuple[str, ...]
    stems: tuple[str, ...]
    repaired: tuple[tuple[str, str], ...] = ()

    @property
    def content(self) -> list[str]:
        """Stems without stop words, in order; what BM25 is asked."""
        return content_stems(self.tokens, self.stems)


def content_stems(tokens: Sequence[str], stems: Sequence[str]) -> list[str]:
    """The stems of all tokens that are no stop words."""
    return [s for token, s in zip(tokens, stems, strict=True) if token not in STOP_WORDS]


def query_of(text: str) -> Query:
    """Words and stems of a text as they stand, nothing repaired."""
    tokens = words(text)
    return Query(tuple(tokens), tuple(stem(token) for token in tokens))
