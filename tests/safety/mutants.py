"""Own mutants of the rules, killed or not by the frozen texts and the plain cases.

Drops each cue, each rule, each blocker, and makes each window one step wider and narrower:
`python tests/safety/mutants.py [share]`, share of the mutants to make (default all). Prints the
survivors and `killed / made`. A dropped cue whose text another cue still carries changes nothing
an owner could notice; it counts as equal, not as made.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).parent))

from safety_common import HERE

from guidebot.safety import compiled
from guidebot.safety.lexicon import CONCEPTS, END, GAP, NOT, NOT_FORMS, TALK, Lexicon, entries
from guidebot.safety.match import Rule, live, run
from guidebot.safety.scope import scopes
from guidebot.safety.spans import find
from guidebot.safety.tokens import split


def read(name: str) -> list[list[str]]:
    lines = (HERE / "frozen" / f"{name}.tsv").read_text(encoding="utf-8").splitlines()
    return [line.split("\t") for line in lines]


def _path(name: str, entry: tuple[str, ...]) -> tuple[str, ...]:
    """The keys of a phrase in the tree, as `lexicon.build` makes them."""
    if name in TALK:
        return tuple(w if w == GAP else f"={w.lstrip('=')}" for w in entry)
    return tuple(NOT if w in NOT_FORMS else w if w == GAP else w.lstrip("=") for w in entry)


def drop(lexicon: Lexicon, name: str, entry: tuple[str, ...]) -> tuple[Any, str, tuple[str, ...]]:
    """Take one cue out; returns what is needed to put it back."""
    if len(entry) == 1:
        word = f"={entry[0].lstrip('=')}" if name in TALK else entry[0]
        before = lexicon.singles[word]
        lexicon.singles[word] = tuple(n for n in before if n != name)
        return lexicon.singles, word, before
    node = lexicon.tree
    for key in _path(name, entry):
        node = node[key]
    before = node[END]
    node[END] = tuple(n for n in before if n != name)
    return node, END, before


def cue_mutants(share: float) -> Iterator[tuple[str, bool | None]]:
    """Name and fate of each dropped cue: killed, alive, or None when another cue carries it."""
    lexicon = compiled.current().lexicon
    texts = {(name, cue): text for name, cue, text in read("cues")}
    step = max(1, round(1 / share))
    all_cues = [(n, e) for n in CONCEPTS for e in dict.fromkeys(entries(n))]
    for name, entry in all_cues[::step]:
        text = texts.get((name, " ".join(entry)))
        if text is None:
            yield f"cue {name}: {' '.join(entry)}", False
            continue
        where, key, before = drop(lexicon, name, entry)
        try:
            still = name in find(split(text), lexicon).spans
        finally:
            where[key] = before
        yield f"cue {name}: {' '.join(entry)}", None if still else True


def _fires(rules: tuple[Rule, ...], key: str, text: str) -> bool:
    found = find(split(text), compiled.current().lexicon)
    return any(hit.rule.id == key for hit in run(rules, found, live(found, scopes(found))))


def rule_mutants() -> Iterator[tuple[str, bool | None]]:
    """Each rule dropped, its window moved, its blockers dropped."""
    texts: dict[str, list[tuple[bool, str]]] = {}
    for name in ("windows", "blockers"):
        for key, does, text in read(name):
            texts.setdefault(key.split()[0], []).append((does == "fires", text))

    def killed(rule: Rule, mutant: tuple[Rule, ...]) -> bool:
        return any(_fires(mutant, rule.id, text) != fires for fires, text in texts.get(rule.id, []))

    for rule in compiled.current().rules:
        yield f"rule {rule.id} dropped", killed(rule, ())
        if len(rule.groups) > 1:  # a window of one group reaches nothing
            yield f"{rule.id} wider", killed(rule, (replace(rule, window=rule.window + 1),))
            yield f"{rule.id} narrower", killed(rule, (replace(rule, window=rule.window - 1),))
        for name in rule.unless:
            kept = tuple(other for other in rule.unless if other != name)
            yield f"{rule.id} without !{name}", killed(rule, (replace(rule, unless=kept),))


def main(share: float = 1.0) -> tuple[int, int, int]:
    """Make the mutants; killed, made, equal."""
    killed = made = equal = 0
    for mutants in (cue_mutants(share), rule_mutants()):
        for name, fate in mutants:
            if fate is None:
                equal += 1
                continue
            made += 1
            killed += fate
            if not fate:
                print(f"alive: {name}")  # noqa: T201 - a script tells
    print(f"{killed} / {made} killed, {equal} equal")  # noqa: T201 - a script tells
    return killed, made, equal


if __name__ == "__main__":
    main(float(sys.argv[1]) if len(sys.argv) > 1 else 1.0)
