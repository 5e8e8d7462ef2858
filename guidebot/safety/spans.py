"""Find the lexicon's concepts in the words of a message, in time linear in its length."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from guidebot.safety.lexicon import CONTEXT, END, FILLERS, GAP, Lexicon
from guidebot.safety.tokens import MOST_REPAIRS, Words, repair

WIDEST_GAP = 3
"""Words that `~` may stand for."""
MOST_FILLERS = 2
"""Fillers that may stand between two neighbouring words of a phrase."""


@dataclass(slots=True)
class Found:
    """What the lexicon sees.

    Attributes:
        words: the words.
        bases: lexicon words each word may be; the word itself if the lexicon does not know it.
        spans: concept name to places (first word, word after the last), in order.
        phrase_end: words inside a phrase of a finding, with the end of the longest such phrase;
            such words deny nothing beyond it.
        deniers: denied words, with the word that denies them; filled in by `scope`.
        repaired: word number to what it was read as.
    """

    words: Words
    bases: list[tuple[str, ...]]
    spans: dict[str, list[tuple[int, int]]] = field(default_factory=dict)
    phrase_end: dict[int, int] = field(default_factory=dict)
    deniers: dict[int, int] = field(default_factory=dict)
    repaired: dict[int, str] = field(default_factory=dict)


class TooManyUnknown(Exception):
    """More unknown words than any message of a person holds."""


def find(words: Words, lexicon: Lexicon) -> Found:
    """Find every concept.

    Raises:
        TooManyUnknown: over `MOST_REPAIRS` different words that no dictionary knows.
    """
    bases, repaired = _bases(words.forms, lexicon)
    found = Found(words, bases, repaired=repaired)
    spans = found.spans
    singles, tree = lexicon.singles, lexicon.tree
    for at, options in enumerate(bases):
        for base in options:
            for name in singles.get(base, ()):
                places = spans.setdefault(name, [])
                if not places or places[-1] != (at, at + 1):
                    places.append((at, at + 1))
            node = tree.get(base)
            if node is not None:
                ends: dict[str, set[int]] = {}
                _walk(node, at + 1, bases, words, ends, 0)
                for name, stops in ends.items():
                    for stop in stops:
                        spans.setdefault(name, []).append((at, stop))
                        if name not in _TALK_ONLY and name not in CONTEXT:
                            for inside in range(at, stop):
                                if found.phrase_end.get(inside, 0) < stop:
                                    found.phrase_end[inside] = stop
    for places in spans.values():
        places.sort()
    return found


_TALK_ONLY = frozenset(
    "negword negfake butword restart ifword hypoword pastword nowword othersubj selfsubj dogword"
    " denyword fixed idiom easyday spot touch devicecue daysstill".split()
)


def is_talk(name: str) -> bool:
    """Is this a concept of how something is said rather than of what was seen?"""
    return name in _TALK_ONLY


def _bases(forms: Sequence[str], lexicon: Lexicon) -> tuple[list[tuple[str, ...]], dict[int, str]]:
    known, common = lexicon.forms, lexicon.common
    memo: dict[str, tuple[str, ...]] = {}
    repaired: dict[int, str] = {}
    bases: list[tuple[str, ...]] = []
    repairs = 0
    for at, form in enumerate(forms):
        options = known.get(form) or memo.get(form)
        if options is None:
            options = ()
            if form not in common and len(form) > 3:
                repairs += 1
                if repairs > MOST_REPAIRS:
                    raise TooManyUnknown
                options = repair(form, known, common.__contains__, lexicon.skeletons)
                if options:
                    repaired[at] = options[0]
            options = (form, *options) if form not in options else options
            memo[form] = options
        bases.append(options)
    return bases, repaired


def _walk(
    node: Mapping[str, Any],
    at: int,
    bases: Sequence[tuple[str, ...]],
    words: Words,
    ends: dict[str, set[int]],
    depth: int,
) -> None:
    """Follow the phrase tree from word `at`; sentence ends are never crossed."""
    for name in node.get(END, ()):
        ends.setdefault(name, set()).add(at)
    gap = node.get(GAP)
    if gap is not None:
        for skipped in range(WIDEST_GAP + 1):
            if _blocked(words, at + skipped):
                break
            _step(gap, at + skipped, bases, words, ends, depth)
    if len(node) > 1 or END not in node:
        _step(node, at, bases, words, ends, depth)
        skipped = 0
        while skipped < MOST_FILLERS and at < len(bases) and words.forms[at] in FILLERS:
            if _blocked(words, at):
                return
            at += 1
            skipped += 1
            _step(node, at, bases, words, ends, depth)


def _blocked(words: Words, at: int) -> bool:
    """Is there no word `at`, or does it begin a new sentence?"""
    return at >= len(words.forms) or words.sentences[at] != words.sentences[at - 1]


def _step(
    node: Mapping[str, Any],
    at: int,
    bases: Sequence[tuple[str, ...]],
    words: Words,
    ends: dict[str, set[int]],
    depth: int,
) -> None:
    if _blocked(words, at):
        return
    for base in bases[at]:
        below = node.get(base)
        if below is not None and base not in (END, GAP):
            _walk(below, at + 1, bases, words, ends, depth + 1)
