"""The lexicon compiled: word forms, phrases as a tree, concepts by number."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import product
from typing import Any

from guidebot.safety.lexicon_action import ACTION
from guidebot.safety.lexicon_body import BODY, DEVICE, FLUID, SUBSTANCE
from guidebot.safety.lexicon_do import DO
from guidebot.safety.lexicon_hurt import HURT
from guidebot.safety.lexicon_look import LOOK
from guidebot.safety.lexicon_more import MORE
from guidebot.safety.lexicon_talk import TALK
from guidebot.safety.tokens import skeleton

CONCEPTS: dict[str, str] = {
    **BODY, **FLUID, **DEVICE, **SUBSTANCE, **LOOK, **DO, **HURT, **ACTION, **MORE, **TALK,
}  # fmt: skip
"""Every concept: name to entries, in the notation told in `lexicon_body`."""

NOT = "<not>"
"""Stands for every denying or failing helper: `won't`, `can't`, `isn't`, `not`, `refuses`."""
NOT_FORMS = frozenset(
    "not nt wont cant cannot couldnt wouldnt doesnt dont didnt isnt arent wasnt werent hasnt "
    "havent hadnt aint never refuses refused refusing unable stopped".split()
)
FILLERS = frozenset(
    "the his her a an my its so really just very all completely still even right totally quite "
    "to able be been being want wants any some of is are was were has have and kind sort like "
    "him seem seems properly literally own proper did do does getting got keeps that this".split()
)
"""Words that may stand between the words of a phrase without parting it."""
CONTEXT = frozenset(
    (
        "allover amount ankle back backlegs baldwhere barefold belly bellyword birth body "
        "breathe brokeword bum chest cloth daysstill device devicecue dogend dryout emmany "
        "eye eyespot face faceword foot footword fur groin gums handto head heard heatcause "
        "heatword height human itchcause jointword knee labourword leg licklong limbpart "
        "longday longtime lowerleg many missingpart mouth nonstop nose notblood nothingout "
        "nothingup nowstart once oneside opword otherleg otherpet own part partany partless "
        "passnot passwater pawpads pee poo popwhere pregword refuselong refusewhen shell "
        "sincelong skin skinwhere slideagain spot staysmark staytime stiffwith sting stitches "
        "strapword suddenday toes toeword touch vehicle waternot waterword withoutdev "
    ).split()
)
"""Concepts a denial does not touch: they say where and when, or are denials themselves."""
GAP = "~"
END = ""


@dataclass(slots=True)
class Lexicon:
    """The compiled lexicon, plain data only, so that it can be dumped.

    Attributes:
        forms: each form to the lexicon words it may be.
        singles: lexicon word to the names of the concepts it stands for alone.
        tree: phrases: word to subtree; under `END` the names of the concepts that end here.
        skeletons: long forms by their consonants.
        common: ordinary words that are never repaired.
    """

    forms: dict[str, tuple[str, ...]]
    singles: dict[str, tuple[str, ...]]
    tree: dict[str, Any]
    skeletons: dict[str, tuple[str, ...]]
    common: frozenset[str]


def regular_forms(word: str) -> Iterator[str]:
    """The regular forms of a word, right or clumsy: plural, past, -ing."""
    yield word
    if len(word) < 3 or not word.isalpha():
        return
    yield word + "s"
    if word.endswith("e"):
        yield word + "d"
        yield word[:-1] + "ing"
        yield word + "ing"
    elif word.endswith("y") and word[-2] not in "aeiou":
        yield word[:-1] + "ies"
        yield word[:-1] + "ied"
        yield word + "ing"
    else:
        if word.endswith(("s", "x", "z", "ch", "sh", "o")):
            yield word + "es"
        yield word + "ed"
        yield word + "ing"
        if word[-1] not in "aeiouwxy" and word[-2] in "aeiou":
            yield word + word[-1] + "ed"
            yield word + word[-1] + "ing"


def entries(name: str, concepts: Mapping[str, str] = CONCEPTS) -> Iterator[tuple[str, ...]]:
    """The phrases of a concept, each as its words; other concepts it names are included."""
    for raw in concepts[name].split(","):
        entry = raw.strip()
        if entry.startswith("@"):
            yield from entries(entry[1:], concepts)
        elif entry:
            yield from product(*(part.split("/") for part in entry.split()))


def build(common: frozenset[str], concepts: Mapping[str, str] = CONCEPTS) -> Lexicon:
    """Compile concepts; `common` are ordinary words that are never taken for misspelt ones."""
    forms: dict[str, dict[str, None]] = {}
    singles: dict[str, dict[str, None]] = {}
    tree: dict[str, Any] = {}
    for name in concepts:
        for raw in entries(name, concepts):
            # Talk is meant word by word: `say he` is no `says he`, `not sure` no `can't sure`.
            exact = name in TALK
            entry = tuple(f"={w.lstrip('=')}" if exact and w != GAP else w for w in raw)
            words = [_learn(word, forms) for word in entry if word != GAP]
            if len(entry) == 1:
                singles.setdefault(words[0], {})[name] = None
                continue
            node = tree
            for word in entry:
                denies = word in NOT_FORMS
                key = word if exact or word == GAP else NOT if denies else word.lstrip("=")
                node = node.setdefault(key, {})
            node.setdefault(END, {})[name] = None
    for form in NOT_FORMS:
        forms.setdefault(form, {form: None})[NOT] = None
    _freeze(tree)
    skeletons: dict[str, list[str]] = {}
    for form in forms:
        if len(form) >= 7:
            skeletons.setdefault(skeleton(form), []).append(form)
    return Lexicon(
        {form: tuple(words) for form, words in forms.items()},
        {word: tuple(names) for word, names in singles.items()},
        tree,
        {bone: tuple(words) for bone, words in skeletons.items()},
        common,
    )


def _learn(word: str, forms: dict[str, dict[str, None]]) -> str:
    if word.startswith("="):
        forms.setdefault(word[1:], {})[word] = None
        forms[word[1:]].setdefault(word[1:])  # inside phrases it is the plain word
        return word
    for form in regular_forms(word):
        forms.setdefault(form, {})[word] = None
    return word


def _freeze(node: dict[str, Any]) -> None:
    for key, below in node.items():
        if key == END:
            node[key] = tuple(below)
        else:
            _freeze(below)
