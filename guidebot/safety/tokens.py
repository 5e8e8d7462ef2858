"""Words with their places, sentences and clauses; spelling repaired towards the lexicon."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from guidebot.text import plain

_TOKEN = re.compile(r"[^\W_]+(?:'[^\W_]+)*|[.!?\u2026]+|\n|[,;:()\u2013\u2014-]")
_STRETCH = re.compile(r"(.)\1{2,}")
_ALPHABET = "abcdefghijklmnopqrstuvwxyz"

SENTENCE_GAP = 3
"""Steps a sentence end adds between two words; a comma adds one."""
MOST_REPAIRS = 1_500
"""Unknown words that are repaired in one message; a message of more is no message."""


@dataclass(slots=True)
class Words:
    """The words of a message, one array a property.

    Attributes:
        forms: each word, lower case, without apostrophes.
        starts, ends: character offsets in the text.
        steps: distance scale: place of the word, plus gaps for punctuation before it.
        sentences, clauses: number of the sentence and of the clause each word stands in.
        breaks: the punctuation right before each word, "" if none.
        capitals: words that begin with a capital and go on in small letters.
        asks: is there a question mark?
    """

    forms: list[str]
    starts: list[int]
    ends: list[int]
    steps: list[int]
    sentences: list[int]
    clauses: list[int]
    breaks: list[str]
    capitals: list[int]
    asks: bool = False


def split(text: str) -> Words:
    """Split a cleaned text into words; offsets are true for the text as given."""
    words = Words([], [], [], [], [], [], [], [])
    step = sentence = clause = 0
    broken = ""
    for found in _TOKEN.finditer(plain(text)):
        token = found.group()
        first = token[0]
        if first in ".!?\u2026\n":
            if words.forms and not broken.endswith((".", "!", "?", "\n")):
                step += SENTENCE_GAP
                sentence += 1
                clause += 1
            broken += token[-1]
            words.asks = words.asks or "?" in token
        elif first in ",;:()\u2013\u2014-":
            if words.forms and not broken:
                step += 1
                clause += 1
            broken += token
        else:
            raw = text[found.start() : found.end()]
            if raw[0].isupper() and raw[1:].islower():
                words.capitals.append(len(words.forms))
            words.forms.append(token.replace("'", ""))
            words.starts.append(found.start())
            words.ends.append(found.end())
            words.steps.append(step)
            words.sentences.append(sentence)
            words.clauses.append(clause)
            words.breaks.append(broken)
            step += 1
            broken = ""
    return words


def _edits(word: str) -> set[str]:
    """Every string one edit away: a letter less, more, other, or two neighbours swapped."""
    size = len(word)
    out = {word[:i] + word[i + 1 :] for i in range(size)}
    out.update(word[:i] + word[i + 1] + word[i] + word[i + 2 :] for i in range(size - 1))
    for letter in _ALPHABET:
        out.update(word[:i] + letter + word[i + 1 :] for i in range(size))
        out.update(word[:i] + letter + word[i:] for i in range(size + 1))
    return out


def skeleton(word: str) -> str:
    """First letter and consonants, doubles and `h` dropped: `diahrrea` as `diarrhea`."""
    out = word[0]
    for letter in word[1:]:
        if letter not in "aeiouyh" and letter != out[-1]:
            out += letter
    return out


def distance_at_most_two(one: str, two: str) -> bool:
    """Optimal string alignment distance (a swap counts one), cut off above two."""
    if abs(len(one) - len(two)) > 2:
        return False
    before: list[int] = []
    row = list(range(len(two) + 1))
    for i, a in enumerate(one, 1):
        older, before, row = before, row, [i]
        for j, b in enumerate(two, 1):
            cost = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (a != b))
            if i > 1 and j > 1 and a == two[j - 2] and b == one[i - 2]:
                cost = min(cost, older[j - 2] + 1)
            row.append(cost)
        if min(row) > 2:
            return False
    return row[-1] <= 2


def repair(
    word: str,
    known: Mapping[str, tuple[str, ...]],
    common: Callable[[str], bool],
    skeletons: Mapping[str, tuple[str, ...]],
) -> tuple[str, ...]:
    """Lexicon words that `word` may stand for: stretched, misspelt or run together.

    Args:
        word: a word the lexicon does not know.
        known: form to lexicon words.
        common: is this an ordinary English word, to be left alone?
        skeletons: forms of eight letters and more by `skeleton`.

    Returns:
        Lexicon words, one after another for words run together; empty if nothing fits.
    """
    if not word.isascii() or not word.isalpha() or len(word) > 24:
        return ()
    if (short := _STRETCH.sub(r"\1\1", word)) != word:
        for candidate in (short, _STRETCH.sub(r"\1", word)):
            if candidate in known:
                return known[candidate]
            if common(candidate):
                return ()
        word = _STRETCH.sub(r"\1", word)
    if common(word) or len(word) < 4:
        return ()
    size = len(word)
    if size == 4:  # a swap, or a letter lost: one letter of four changed is another word
        near = {word[:i] + word[i + 1] + word[i] + word[i + 2 :] for i in range(3)}
        near |= {word[:i] + a + word[i:] for i in range(1, 5) for a in _ALPHABET}
        near &= known.keys()
    else:
        edits = _edits(word) & known.keys()
        near = {c for c in edits if len(c) > 3 and c[0] == word[0]} or {
            c for c in edits if len(c) > 4
        }
    if not near and size >= 8:
        near = {c for c in skeletons.get(skeleton(word), ()) if distance_at_most_two(word, c)}
    if near:
        return tuple(dict.fromkeys(base for form in sorted(near) for base in known[form]))
    return ()
