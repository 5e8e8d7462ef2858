"""Features of a short text: stems one and two at a time, and character n-grams inside words."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations, pairwise
from math import sqrt

from guidebot.text import plain

_WORD = re.compile(r"[a-z0-9]+(?:'[a-z]+)?", re.ASCII)

Stem = Callable[[str], str]
ALONE = "\x03"
"""First character of a mark among the stems that makes no pair with its neighbours."""
STOP_WORDS = frozenset(
    """a an the of to in on at for and or but is are was were be been am do does did have has had
    i im ive id we were you he hes she shes it its they theyre me my our ours your yours his her
    hers their them this that these those with as so if then than there theres here can could
    would will shall not just very really also any some all from by about into over again us him
    please hi hello thanks thank dear know think want need get got one thing bit lot""".split()
)
"""Words that say nothing about the matter. Question words stay: how, when, why tell needs apart."""
MOST_TOGETHER = 25
"""Content words of a text that are paired, the first ones."""


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


def together(tokens: Sequence[str], stems: Sequence[str]) -> list[str]:
    """Every two content words of a text, wherever they stand: what they say only together."""
    said = dict.fromkeys(
        s for token, s in zip(tokens, stems, strict=False) if token not in STOP_WORDS and len(s) > 1
    )
    return [f"\x04{a}~{b}" for a, b in combinations(sorted([*said][:MOST_TOGETHER]), 2)]


@dataclass(frozen=True, slots=True)
class Blocks:
    """Which features a scorer sees, and what each kind counts.

    The blocks are normalised apart, so that long words do not drown the stems.

    Attributes:
        stems, chars, together: weights of the stems, of the character n-grams and of the pairs of
            content words; 0 leaves a block out.
        grams: least and most characters of a character n-gram.
    """

    stems: float
    chars: float
    together: float = 0.0
    grams: tuple[int, int] = (3, 4)

    def of(self, tokens: Sequence[str], stems: Sequence[str]) -> list[tuple[Counter[str], float]]:
        """The features of one text, counted: each block with the root of its weight.

        Args:
            tokens: words of the text.
            stems: their stems in the same order, then marks if the caller adds any.
        """
        found = [(Counter(stem_grams(stems)), sqrt(self.stems))]
        found.append((Counter(char_grams(tokens, *self.grams)), sqrt(self.chars)))
        if self.together:
            found.append((Counter(together(tokens, stems)), sqrt(self.together)))
        return found
