"""Repair of typing slips, only toward words the guide knows, and only for ranking."""

from __future__ import annotations

import re
from collections.abc import Container, Iterable, Iterator, Mapping

_LETTERS = "abcdefghijklmnopqrstuvwxyz"
_STRETCHED = re.compile(r"(.)\1{2,}")
LEAST_LETTERS = 4


def _one_edit(word: str) -> Iterator[str]:
    """All words one slip away: a letter left out, swapped with its neighbour, wrong, or extra."""
    size = len(word)
    for i in range(size - 1):
        yield word[:i] + word[i + 1] + word[i] + word[i + 2 :]
    for i in range(size):
        yield word[:i] + word[i + 1 :]
    for i in range(size + 1):
        head, tail = word[:i], word[i:]
        for letter in _LETTERS:
            yield head + letter + tail
    for i in range(size):
        head, tail = word[:i], word[i + 1 :]
        for letter in _LETTERS:
            yield head + letter + tail


def repair_word(word: str, known: Mapping[str, int], ordinary: Container[str]) -> str:
    """The known word meant by `word`, or `word` itself.

    Args:
        word: lower-case word.
        known: the guide's words with how often each occurs.
        ordinary: words that are right as they are although the guide lacks them.
    """
    if len(word) < LEAST_LETTERS or word in known or word in ordinary or not word.isalpha():
        return word
    squeezed = _STRETCHED.sub(r"\1\1", word)
    for candidate in (squeezed, _STRETCHED.sub(r"\1", word)):
        if candidate != word and candidate in known:
            return candidate
    best = max(
        (c for c in _one_edit(squeezed) if c in known and len(c) >= LEAST_LETTERS - 1),
        key=lambda c: (c[0] == word[0], known[c], c),
        default="",
    )
    if best:
        return best
    halves = [
        (word[:i], word[i:])
        for i in range(3, len(word) - 2)
        if known.get(word[:i], 0) > 2 and known.get(word[i:], 0) > 2
    ]
    return " ".join(halves[0]) if len(halves) == 1 else word


def repair(
    tokens: Iterable[str], known: Mapping[str, int], ordinary: Container[str]
) -> tuple[list[str], list[tuple[str, str]]]:
    """Repair each word.

    Returns:
        The words, and (typed, taken for) for each that was changed.
    """
    words: list[str] = []
    changed: list[tuple[str, str]] = []
    for token in tokens:
        meant = repair_word(token, known, ordinary)
        words.extend(meant.split())
        if meant != token:
            changed.append((token, meant))
    return words, changed
