"""Wordings that say the same thing in the same words: they look like many and teach like one."""

from __future__ import annotations

import re
from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from math import ceil

from guidebot.text import plain

LEAST = 0.85
"""Jaccard likeness of word sets from which two wordings count as near copies."""

_WORD = re.compile(r"[^\W_]+(?:'[^\W_]+)*")
_SAMPLE = 100
_ENOUGH = 10


@dataclass(frozen=True, slots=True)
class Copy:
    """Two wordings that are nearly one.

    Attributes:
        first, second: the need and the line of each, in the order of the files.
        likeness: shared words over all words of both, 0.85 to 1.
    """

    first: tuple[str, str]
    second: tuple[str, str]
    likeness: float

    @property
    def across(self) -> bool:
        """Do they belong to different needs?"""
        return self.first[0] != self.second[0]


@dataclass(frozen=True, slots=True)
class Alike:
    """A need whose wordings are all alike.

    Attributes:
        need: its key.
        overlap: mean Jaccard likeness of two of its wordings.
        openings: number of different first words.
        count: number of its wordings.
    """

    need: str
    overlap: float
    openings: int
    count: int


def near_copies(wordings: Mapping[str, Sequence[str]], least: float = LEAST) -> list[Copy]:
    """Find near copies inside a need and across needs.

    Two sets can only be so alike if they share one of their rarest words (prefix filtering;
    S. Chaudhuri, V. Ganti, R. Kaushik, A primitive operator for similarity joins, ICDE 2006), so
    that few pairs are compared: 15,000 lines take well under a second.

    Args:
        wordings: lines by need.
        least: least likeness, above 0.

    Returns:
        One entry for each later line that is like an earlier one, with the most alike.
    """
    lines = [(need, line) for need, entries in wordings.items() for line in entries]
    bags = [frozenset(_WORD.findall(plain(line))) for _, line in lines]
    often = Counter(word for bag in bags for word in bag)
    holders: dict[str, list[int]] = defaultdict(list)
    first_of: dict[frozenset[str], int] = {}
    found = []
    for number, bag in enumerate(bags):
        if not bag:
            continue
        same = first_of.setdefault(bag, number)
        if same != number:
            found.append(Copy(lines[same], lines[number], 1.0))
            continue
        prefix = sorted(bag, key=lambda word: (often[word], word))
        prefix = prefix[: len(bag) - ceil(least * len(bag)) + 1]
        best, likeness = -1, 0.0
        for candidate in sorted({other for word in prefix for other in holders[word]}):
            alike = _jaccard(bag, bags[candidate])
            if alike >= least and alike > likeness:
                best, likeness = candidate, alike
        if best >= 0:
            found.append(Copy(lines[best], lines[number], likeness))
        for word in prefix:
            holders[word].append(number)
    return found


def all_alike(
    wordings: Mapping[str, Sequence[str]], *, overlap: float = 0.2, openings: int = 8
) -> list[Alike]:
    """Find needs whose wordings were made from one mould.

    Args:
        wordings: lines by need; a need with fewer than 10 is not judged.
        overlap: mean likeness of two wordings from which they are too alike (lines from several
            hands stay below 0.12 in the demo guide).
        openings: fewest different first words of a need (of one with few wordings: a quarter).

    Returns:
        The needs that miss either, in their order. Of a long list 100 lines spread evenly over
        it are compared.
    """
    found = []
    for need, entries in wordings.items():
        if len(entries) < _ENOUGH:
            continue
        words = [_WORD.findall(plain(line)) for line in entries]
        words = [each for each in words if each]
        firsts = len({each[0] for each in words})
        mean = _mean_likeness([frozenset(each) for each in _spread(words)])
        if mean >= overlap or firsts < min(openings, ceil(len(words) / 4)):
            found.append(Alike(need, mean, firsts, len(words)))
    return found


def _spread(words: list[list[str]]) -> list[list[str]]:
    if len(words) <= _SAMPLE:
        return words
    return [words[i * len(words) // _SAMPLE] for i in range(_SAMPLE)]


def _mean_likeness(bags: Sequence[frozenset[str]]) -> float:
    pairs = len(bags) * (len(bags) - 1) // 2
    return sum(_jaccard(a, b) for a, b in combinations(bags, 2)) / pairs if pairs else 0.0


def _jaccard(a: Iterable[str], b: Iterable[str]) -> float:
    """Shared over all elements of two sets; 0 for two empty ones."""
    left, right = frozenset(a), frozenset(b)
    shared = len(left & right)
    total = len(left) + len(right) - shared
    return shared / total if total else 0.0
