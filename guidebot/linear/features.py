"""Features of a short text: stems one and two at a time, and character n-grams inside words."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from functools import lru_cache
from itertools import pairwise

from guidebot.text import plain

_WORD = re.compile(r"[a-z0-9]+(?:'[a-z]+)?", re.ASCII)

Stem = Callable[[str], str]
ALONE = "\x03"
"""First character of a mark among the stems that makes no pair with its neighbours."""


@lru_cache(maxsize=1)
def _stemmer() -> Stem:
    # The pure class: the package's own factory hands over to a compiled one where that is
    # installed, and then the import list depends on the machine.
    from snowballstemmer.english_stemmer import EnglishStemmer

    stemmer = EnglishStemmer()

    def stem(word: str) -> str:
        return str(stemmer.stemWord(word))

    return stem


_PRIMED: dict[str, str] = {}


def prime(stems: Mapping[str, str]) -> None:
    """Make stems known that were computed before, so that the stemmer need not be loaded.

    Args:
        stems: stem of each word whose stem differs from it, and `word: word` for others.
    """
    _PRIMED.update(stems)


@lru_cache(maxsize=65_536)
def stem(word: str) -> str:
    """The Snowball English stem of a lower-case word (M. F. Porter's english algorithm)."""
    return _PRIMED.get(word) or _stemmer()(word)


def words(text: str) -> list[str]:
    """The words of a text in order, lower case, apostrophes dropped: `he's` gives `hes`."""
    return [match.replace("'", "") for match in _WORD.findall(plain(text))]


def char_grams(tokens: Sequence[str], low: int, high: int) -> list[str]:
    """Character n-grams of each word padded with one space, `low` to `high` characters long."""
    grams: list[str] = []
    for token in tokens:
        padded = f" {token} "
        size = len(padded)
        for n in range(low, high + 1):
            if size < n:
                break
            grams.extend(padded[i : i + n] for i in range(size - n + 1))
    return grams


def stem_grams(stems: Sequence[str]) -> list[str]:
    """Stems and pairs of neighbouring stems; the leading mark keeps them apart from characters."""
    running = [s for s in stems if s[0] != ALONE]
    return [f"\x01{s}" for s in stems] + [f"\x02{a} {b}" for a, b in pairwise(running)]


def counts(
    tokens: Sequence[str], stems: Sequence[str], grams: tuple[int, int]
) -> tuple[Counter[str], Counter[str]]:
    """Counts of stem features and of character features of one text, kept apart.

    The two blocks are normalised apart, so that long words do not drown the stems.

    Args:
        tokens: words of the text.
        stems: their stems, and marks if the caller adds any.
        grams: least and most characters of a character n-gram.
    """
    return Counter(stem_grams(stems)), Counter(char_grams(tokens, *grams))
