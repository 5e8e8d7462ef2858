"""Owners' words for activities, found in a sentence: longest first, inflections and one typo."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from guidebot.domain.activity import Activity
from guidebot.linear.features import stem
from guidebot.text import plain

_WORD = re.compile(r"[a-z0-9]+(?:'[a-z]+)?")
_LIGHT = frozenset(
    "a an the his her my our its their your some any that this these those little wee quick bit "
    "of just very really short small".split()
)
_IRREGULAR = {
    "ran": "run", "swam": "swim", "swum": "swim", "slept": "sleep", "ate": "eat", "eaten": "eat",
    "leapt": "leap", "stair": "stairs", "stairway": "stairs",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Hit:
    """Words of an activity in a sentence: offsets in it, and how many words matched."""

    key: str
    start: int
    end: int
    size: int
    quote: str


class ActivityWords:
    """The words of all activities, ready to be looked for."""

    def __init__(self, activities: Mapping[str, Activity], known: frozenset[str]):
        self._phrases: dict[str, list[tuple[tuple[str, ...], str]]] = {}
        self._typo: dict[str, str] = {}
        self._known = known
        for key, activity in activities.items():
            for word in activity.words:
                stems = tuple(s for _, _, _, s in _tokens(word))
                if not stems:
                    continue
                self._phrases.setdefault(stems[0], []).append((stems, key))
                for token, _, _, stemmed in _tokens(word):
                    if len(token) >= 5:
                        self._typo[token] = stemmed

    def find(self, sentence: str) -> list[Hit]:
        """Every activity named, in order; overlapping words go to the longest."""
        tokens = _tokens(sentence)
        hits = self._match(sentence, tokens)
        if hits:
            return hits
        repaired = [(t, a, b, self._repair(t, s)) for t, a, b, s in tokens]
        return self._match(sentence, repaired) if repaired != tokens else []

    def _match(self, sentence: str, tokens: Sequence[tuple[str, int, int, str]]) -> list[Hit]:
        found: list[tuple[int, int, Hit]] = []
        for i, (_, start, _, first) in enumerate(tokens):
            for stems, key in self._phrases.get(first, ()):
                last = i + len(stems)
                if tuple(s for _, _, _, s in tokens[i:last]) == stems:
                    end = tokens[last - 1][2]
                    found.append((i, last, Hit(key, start, end, len(stems), sentence[start:end])))
        found.sort(key=lambda f: (-f[2].size, f[0]))
        taken: set[int] = set()
        kept: list[Hit] = []
        for i, last, hit in found:
            if taken.isdisjoint(range(i, last)):
                taken.update(range(i, last))
                kept.append(hit)
        return sorted(kept, key=lambda h: h.start)

    def _repair(self, token: str, stemmed: str) -> str:
        if len(token) < 5 or token in self._known or token in self._typo:
            return stemmed
        for word, right in self._typo.items():
            if abs(len(word) - len(token)) <= 1 and word[0] == token[0] and _one_edit(token, word):
                return right
        return stemmed


def _tokens(text: str) -> list[tuple[str, int, int, str]]:
    """Word, start, end and stem of each word that carries meaning."""
    found = []
    for match in _WORD.finditer(plain(text)):
        word = match.group()
        if word not in _LIGHT:
            base = _IRREGULAR.get(word, word)
            found.append((word, match.start(), match.end(), stem(base.replace("'", ""))))
    return found


def _one_edit(a: str, b: str) -> bool:
    """One letter more, less, other, or two neighbours swapped; equal words are no edit."""
    if a == b:
        return False
    if len(a) == len(b):
        wrong = [i for i in range(len(a)) if a[i] != b[i]]
        if len(wrong) == 1:
            # A changed last letter is an inflection or another word ("walk", "wall").
            return wrong[0] != len(a) - 1
        i = wrong[0]
        return wrong == [i, i + 1] and a[i] == b[i + 1] and a[i + 1] == b[i]
    short, long = sorted((a, b), key=len)
    i = next((i for i, c in enumerate(short) if c != long[i]), len(short))
    return short[i:] == long[i + 1 :]
