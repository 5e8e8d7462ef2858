"""Owners' words for activities, found in a sentence: longest first, inflections and one typo."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from guidebot.domain.activity import Activity
from guidebot.linear.features import stem
from guidebot.plan.spare_words import IDIOMS, IRREGULAR, LIGHT, NO_TYPO
from guidebot.text import plain

_WORD = re.compile(r"[a-z0-9]+(?:'[a-z]+)?")
_LONG = 8
"""Letters of a word in which one wrong letter is a slip, not another word."""
_GAP = " ... "
_GAP_MOST = 6
"""Most words that may stand in a gap ("jump ... car": "jump all by himself into the car")."""
_PLACED = frozenset(
    "in on at along by near down across over through around round inside into from off".split()
)

REMEMBERED = 20_000
"""Words whose repair is kept; a long run must not grow without end."""


@dataclass(frozen=True, slots=True)
class Hit:
    """Words of an activity in a sentence: offsets in it, and how many words matched.

    `place` is true if they name where something is done ("along the beach", "in the rain").
    """

    key: str
    start: int
    end: int
    size: int
    quote: str
    place: bool = False


WordTables = tuple[dict[str, list[tuple[list[str], str]]], dict[str, str]]
"""Phrases by their first stem, each its stems and the key of its activity; and the stem of each
word that is worth repairing. Plain values, so that they can be kept with a compiled guide."""


def word_tables(activities: Mapping[str, Activity]) -> WordTables:
    """The tables `ActivityWords` works with; stemming thousands of words takes a while."""
    phrases: dict[str, list[tuple[list[str], str]]] = {}
    typo: dict[str, str] = {}
    for idiom in IDIOMS:
        stems = [s for _, _, _, s in _tokens(idiom)]
        if len(stems) > 1:
            phrases.setdefault(stems[0], []).append((stems, ""))
    for key, activity in activities.items():
        for word in activity.words:
            stems = list(_pattern(word))
            if not stems:
                continue
            phrases.setdefault(stems[0], []).append((stems, key))
            for token, _, _, stemmed in _tokens(word) if len(stems) == 1 else ():
                if len(token) >= 5:
                    typo[token] = stemmed
    return phrases, typo


_REMEMBERED = 16


class ActivityWords:
    """The words of all activities, ready to be looked for."""

    def __init__(self, tables: WordTables, known: frozenset[str]):
        self._phrases, self._typo = tables
        self._known = known
        self._repaired: dict[str, str] = {}
        self._found: dict[str, list[Hit]] = {}
        self._shelves: dict[tuple[str, int], list[str]] = {}
        for word in self._typo:
            self._shelves.setdefault((word[0], len(word)), []).append(word)

    def find(self, sentence: str) -> list[Hit]:
        """Every activity named, in order; overlapping words go to the longest."""
        if sentence not in self._found:  # the same text is asked for twice in a message
            if len(self._found) >= _REMEMBERED:
                self._found.clear()
            self._found[sentence] = self._search(sentence)
        return list(self._found[sentence])

    def _search(self, sentence: str) -> list[Hit]:
        tokens = _tokens(sentence)
        hits = self._match(sentence, tokens)
        # Where something was named already, only a long word is worth repairing.
        least = 6 if hits else 5
        repaired = [(t, a, b, self._repair(t, s, least)) for t, a, b, s in tokens]
        return hits if repaired == tokens else self._match(sentence, repaired)

    def _match(self, sentence: str, tokens: Sequence[tuple[str, int, int, str]]) -> list[Hit]:
        found: list[tuple[tuple[int, ...], Hit]] = []
        stems = [s for _, _, _, s in tokens]
        for i, first in enumerate(stems):
            for pattern, key in self._phrases.get(first, ()):
                at = _matched(pattern, stems, i)
                if at is None:
                    continue
                start, end = tokens[i][1], tokens[at[-1]][2]
                place = bool(_PLACED & {t for t, *_ in tokens[max(0, i - 2) : i + 1]})
                found.append((at, Hit(key, start, end, len(at), sentence[start:end], place)))
        # Of two that are as long, the wider one tells what is done there: "chase ... stairs".
        found.sort(key=lambda f: (-f[1].size, f[0][0] - f[0][-1], f[0][0]))
        taken: set[int] = set()
        kept: list[Hit] = []
        for at, hit in found:
            if taken.isdisjoint(at):
                taken.update(at)
                kept.append(hit)
        return sorted((h for h in kept if h.key), key=lambda h: h.start)

    def _repair(self, token: str, stemmed: str, least: int) -> str:
        if len(token) < least or token in self._known or token in NO_TYPO or token in self._typo:
            return stemmed
        return self._meant(token) or stemmed

    def _meant(self, token: str) -> str:
        """The stem of the activity word one slip away, "" if there is none; remembered."""
        found = self._repaired.get(token)
        if found is None:
            near = (
                word
                for size in (len(token) - 1, len(token), len(token) + 1)
                for word in self._shelves.get((token[0], size), ())
            )
            found = next((self._typo[word] for word in near if _one_edit(token, word)), "")
            if len(self._repaired) < REMEMBERED:
                self._repaired[token] = found
        return found


def _tokens(text: str) -> list[tuple[str, int, int, str]]:
    """Word, start, end and stem of each word that carries meaning."""
    found = []
    for match in _WORD.finditer(plain(text)):
        word = match.group()
        if word not in LIGHT:
            base = IRREGULAR.get(word, word)
            found.append((word, match.start(), match.end(), stem(base.replace("'", ""))))
    return found


def _pattern(word: str) -> tuple[str, ...]:
    """Stems of a word of the table, "" for a gap."""
    found: list[str] = []
    for part in word.split(_GAP):
        found += [*([""] if found else []), *(s for _, _, _, s in _tokens(part))]
    return tuple(found)


def _matched(pattern: Sequence[str], stems: Sequence[str], i: int) -> tuple[int, ...] | None:
    """Where the stems of a pattern stand if it begins at `i`; the shortest gaps are taken."""
    at: list[int] = []
    gap = False
    for wanted in pattern:
        if not wanted:
            gap = True
            continue
        most = min(i + (_GAP_MOST if gap else 0) + 1, len(stems))
        here = next((j for j in range(i, most) if stems[j] == wanted), None)
        if here is None:
            return None
        at.append(here)
        i, gap = here + 1, False
    return tuple(at)


def _one_edit(a: str, b: str) -> bool:
    """One letter more, less, other, or two neighbours swapped; equal words are no edit."""
    if a == b:
        return False
    if len(a) == len(b):
        wrong = [i for i in range(len(a)) if a[i] != b[i]]
        if len(wrong) == 1:
            # One letter for another is mostly another word ("wearing", "weaning").
            return len(a) >= _LONG and wrong[0] != len(a) - 1
        i = wrong[0]
        return wrong == [i, i + 1] and a[i] == b[i + 1] and a[i + 1] == b[i]
    short, long = sorted((a, b), key=len)
    i = next((i for i, c in enumerate(short) if c != long[i]), len(short))
    return short[i:] == long[i + 1 :]
