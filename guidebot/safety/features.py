"""What the wide net sees of a message: its words, stems, and the concepts the lexicon finds."""

from __future__ import annotations

from collections.abc import Sequence

from guidebot.linear.features import stem
from guidebot.safety.lexicon import CONTEXT
from guidebot.safety.match import Hit
from guidebot.safety.scope import Meant
from guidebot.safety.spans import Found, is_talk

MOST_PAIRED = 14
"""Concepts of one sentence that are paired; a sentence of more is no clearer for its pairs."""
_ELSEWHERE = Meant.SUPPOSED | Meant.PAST | Meant.OTHERS


def features(
    found: Found, meant: Sequence[int], hits: Sequence[Hit]
) -> tuple[list[str], list[str]]:
    """Words and stems for `linear`, the stems followed by marks for what the rules see.

    Marks: `c:name` a concept (`c:~name` when denied, supposed, past or another's), `p:a+b` two
    concepts meant as facts in one sentence, `r:sign` and `i:rule` for rules that fired. They let
    the scorer weigh whole vocabularies where it has seen few of their words.
    """
    tokens = found.words.forms
    concepts: dict[str, int] = {}
    sentences: dict[int, set[str]] = {}
    for name, spans in found.spans.items():
        talk = is_talk(name)
        against = _ELSEWHERE if name in CONTEXT else _ELSEWHERE | Meant.DENIED
        for first, _ in spans:
            stands = not meant[first] & against
            concepts.setdefault(f"c:{name}" if talk or stands else f"c:~{name}", first)
            if stands and not talk:
                sentences.setdefault(found.words.sentences[first], set()).add(name)
    pairs: set[str] = set()
    for names in sentences.values():
        if len(names) <= MOST_PAIRED:
            ordered = sorted(names)
            pairs.update(
                f"p:{a}+{b}" for place, a in enumerate(ordered) for b in ordered[place + 1 :]
            )
    marks = sorted(concepts, key=lambda mark: (concepts[mark], mark))
    marks += sorted(pairs)
    marks += [f"r:{hit.rule.sign}" for hit in hits] + [f"i:{hit.rule.id}" for hit in hits]
    return list(tokens), [stem(token) for token in tokens] + marks
