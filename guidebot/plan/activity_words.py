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
    [
        "a",
        "an",
        "the",
        "his",
        "her",
        "my",
        "our",
        "its",
        "their",
        "your",
        "some",
        "any",
        "that",
        "this",
        "these",
        "those",
    ]
)
_NO_TYPO = frozenset(
    [
        "waking",
        "working",
        "talking",
        "walls",
        "stare",
        "staring",
        "stars",
        "start",
        "starts",
        "started",
        "seeping",
        "sweeping",
        "string",
        "spring",
        "times",
        "files",
        "smiles",
        "title",
        "towel",
        "trail",
        "train",
        "brain",
        "drain",
        "crate",
        "create",
        "plays",
        "place",
        "plane",
        "bench",
        "batch",
        "watch",
        "match",
        "teach",
        "peach",
        "reach",
        "shake",
        "snake",
        "smoke",
        "broke",
        "brake",
        "stick",
        "stuck",
        "stock",
        "socks",
        "ridge",
        "bridge",
        "sleeve",
        "sleeves",
        "slept",
        "steps",
        "stops",
        "swing",
        "swims",
        "bones",
        "tires",
        "tired",
        "lakes",
        "looks",
        "learn",
        "leash",
        "lease",
        "least",
        "lower",
        "floor",
        "flour",
        "fight",
        "light",
        "right",
        "night",
        "might",
        "weeks",
        "wears",
        "years",
        "boast",
        "roast",
        "later",
        "front",
        "still",
        "heading",
        "easing",
        "lines",
        "liner",
        "pulls",
        "easier",
        "older",
        "other",
        "cover",
        "clear",
        "clean",
        "tight",
        "second",
        "third",
        "stage",
        "state",
        "stairwell",
        "water",
        "wider",
        "winter",
        "tests",
        "rests",
        "sweet",
        "sheet",
        "sweat",
        "heart",
        "heard",
        "board",
        "stand",
        "sound",
        "round",
        "house",
        "horse",
        "horns",
        "beach",
        "bleach",
    ]
)
# Turns of phrase that hold a word of an activity but name none.
_IDIOMS = """
next step, skip a step, skip steps, take a step, take steps, single step, step by step, step
back, step up in, one step, baby step, every step, first step, ramp up, each step, step of,
steps of, run my hand, run out, run a finger, run over, run through, in the long run, run low,
play up, play safe, stick to, stick with, stick at, jump to, jump from, jump him, jump her, jump
straight, jump ahead, jump by, jump in hours, too loose, loose strap, loose screw, loose enough,
loose end, loose hair, come loose, gone loose, it loose, strap loose, walk away, walk me
through, stretch it, stretch strap, stretch the time, stretch out, stretch the hours, elastic
stretch, it sits, device sits, brace sits, thing sits, sits higher, sits lower, sits low, should
it sit, sit right, sit on the ankle, sit over, sit higher, leave it alone, leave the straps
alone, leaves it alone, leave alone, drives me, drive me, give it a rest, long hair, hair clip,
video clip, clips of, film clip, in the field, chair leg, field trip, ramp is done, speed up the
ramp, ramp up increment, hot spot, cold toes, wear out, worn out, go to bed, going to bed, in
training, how many hours can i walk, hours of the night, walk normally, walks normally, walk as
usual, walks like, walk like, walks funny, walk funny, walks well, walk well, walks fine, walk
fine, walks better, walking funny, walking fine, walking well, walking normally, walk properly,
made to walk, video of him walking, walking video, film him walking, walking towards, walk by,
kennel nurse, kennel manager, sitter here
""".replace("\n", " ").split(", ")
_IRREGULAR = {
    "ran": "run", "swam": "swim", "swum": "swim", "slept": "sleep", "ate": "eat", "eaten": "eat",
    "leapt": "leap",
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
        for idiom in _IDIOMS:
            stems = tuple(s for _, _, _, s in _tokens(idiom))
            if len(stems) > 1:
                self._phrases.setdefault(stems[0], []).append((stems, ""))
        for key, activity in activities.items():
            for word in activity.words:
                stems = tuple(s for _, _, _, s in _tokens(word))
                if not stems:
                    continue
                self._phrases.setdefault(stems[0], []).append((stems, key))
                for token, _, _, stemmed in _tokens(word) if len(stems) == 1 else ():
                    if len(token) >= 5:
                        self._typo[token] = stemmed

    def find(self, sentence: str) -> list[Hit]:
        """Every activity named, in order; overlapping words go to the longest."""
        tokens = _tokens(sentence)
        hits = self._match(sentence, tokens)
        # Where something was named already, only a long word is worth repairing.
        least = 6 if hits else 5
        repaired = [(t, a, b, self._repair(t, s, least)) for t, a, b, s in tokens]
        return hits if repaired == tokens else self._match(sentence, repaired)

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
        return sorted((h for h in kept if h.key), key=lambda h: h.start)

    def _repair(self, token: str, stemmed: str, least: int) -> str:
        if len(token) < least or token in self._known or token in _NO_TYPO or token in self._typo:
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
