"""From a message to the words that are searched for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from guidebot.linear.features import stem, words

STOP_WORDS = frozenset(
    """a an the of to in on at for and or but is are was were be been am do does did have has had
    i im ive id we were you he hes she shes it its they theyre me my our ours your yours his her
    hers their them this that these those with as so if then than there theres here can could
    would will shall not just very really also any some all from by about into over again us him
    please hi hello thanks thank dear know think want need get got one thing bit lot""".split()
)
"""Words that say nothing about the need. Question words stay: how, when, why tell needs apart."""


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
