"""Repair of typing slips, only toward words the guide knows, and only for ranking."""

from __future__ import annotations

import re
from collections.abc import Container, Iterable, Iterator, Mapping

_LETTERS = "abcdefghijklmnopqrstuvwxyz"
_STRETCHED = re.compile(r"(.)\1{2,}")
LEAST_LETTERS = 4
INFORMAL = dict(
    pair.split("=")
    for pair in (
        "nite=night nites=nights tonite=tonight 2nite=tonight 2day=today 2moro=tomorrow "
        "2morrow=tomorrow tmrw=tomorrow tmoro=tomorrow tomoz=tomorrow thru=through "
        "b4=before wk=week wks=weeks mth=month mths=months yr=year hr=hour hrs=hours "
        "tite=tight titer=tighter lite=light rite=right alrite=alright nuff=enough "
        "enuf=enough ruff=rough shud=should cud=could wud=would wot=what wat=what "
        "wen=when wich=which coz=because cuz=because cos=because bcos=because thy=thigh "
        "kneck=neck walkies=walks wlk=walk vette=vet dawg=dog hubby=husband wkend=weekend "
        "allways=always"
    ).split()
)
"""Spellings of messages and of the ear that lie more than a slip away from the word, or nearer to
another."""


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
    if word in INFORMAL and word not in known:
        return INFORMAL[word]
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
