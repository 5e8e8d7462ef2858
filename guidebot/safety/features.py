"""What the wide net sees of a message: its words, stems, and the concepts the lexicon finds."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from guidebot.linear.features import ALONE, stem
from guidebot.safety.lexicon import CONTEXT
from guidebot.safety.match import Hit
from guidebot.safety.scope import Meant
from guidebot.safety.spans import Found, is_talk

REACH = 4
"""Words after a word that are paired with it."""
EDGE = 2
"""Words at the beginning and at the end that count once more as such: how it is asked or told."""
_ELSEWHERE = Meant.SUPPOSED | Meant.PAST | Meant.OTHERS


def features(
    found: Found, meant: Sequence[int], hits: Sequence[Hit]
) -> tuple[list[str], list[str]]:
    """Words and stems for `linear`, the stems followed by marks for what the rules see.

    Marks: `c:name` a concept (`c:~name` when denied, supposed, past or another's), `r:sign` and
    `i:rule` for rules that fired. They let the scorer weigh whole vocabularies where it has seen
    few of their words. Then, paired with nothing (`ALONE`): stems that are denied or meant
    otherwise, the stems at both ends, a question mark, pairs of stems up to `REACH` apart and runs
    of three.
    """
    tokens = found.words.forms
    concepts: dict[str, int] = {}
    for name, spans in found.spans.items():
        talk = is_talk(name)
        against = _ELSEWHERE if name in CONTEXT else _ELSEWHERE | Meant.DENIED
        for first, _ in spans:
            stands = talk or not meant[first] & against
            concepts.setdefault(f"c:{name}" if stands else f"c:~{name}", first)
    marks = sorted(concepts, key=lambda mark: (concepts[mark], mark))
    marks += [f"r:{hit.rule.sign}" for hit in hits] + [f"i:{hit.rule.id}" for hit in hits]
    stems = [stem(token) for token in tokens]
    alone = [ALONE + mark for mark in _alone(stems, meant)]
    if found.words.asks:
        alone.append(f"{ALONE}?")
    return list(tokens), [*stems, *marks, *alone]


def _alone(stems: Sequence[str], meant: Sequence[int]) -> Iterator[str]:
    for word, why in zip(stems, meant, strict=True):
        if why:
            yield f"{'n' if why & Meant.DENIED else 'o'}:{word}"
    yield from (f"^{word}" for word in stems[:EDGE])
    yield from (f"${word}" for word in stems[-EDGE:])
    for at, word in enumerate(stems):
        yield from (f"k:{word}~{other}" for other in stems[at + 2 : at + 1 + REACH])
    for at in range(len(stems) - 2):
        yield f"t:{stems[at]}~{stems[at + 1]}~{stems[at + 2]}"
