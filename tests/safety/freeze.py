"""Freeze what every cue, rule, window and blocker does today into `frozen/*.tsv`.

Run after a deliberate change of the rules, and read the difference before committing it:
`python tests/safety/freeze.py`. The tests and `mutants.py` hold the rules to these files, so that
no cue can be dropped and no window moved unnoticed.
"""

from __future__ import annotations

import random
import sys
from collections.abc import Iterator
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

from safety_common import HERE, look

from guidebot.safety import rules
from guidebot.safety.lexicon import CONCEPTS, GAP, entries
from guidebot.safety.match import Rule

FROZEN = HERE / "frozen"
FILLER = "zzq"


def cue_text(entry: tuple[str, ...]) -> str:
    """The cue as an owner would write it, a filler word in each gap."""
    return " ".join(FILLER if word == GAP else word.lstrip("=") for word in entry)


def cues() -> Iterator[tuple[str, str, str]]:
    """Concept, cue, text that carries the concept by this cue."""
    for name in CONCEPTS:
        for entry in dict.fromkeys(entries(name)):
            yield name, " ".join(entry), cue_text(entry)


def _words(rule: Rule) -> list[list[str]]:
    """A few cues for each group of a rule, shortest first."""
    out = []
    for group in rule.groups:
        found = [cue_text(entry) for name in group for entry in entries(name) if GAP not in entry]
        out.append(sorted(found, key=lambda cue: (len(cue.split()), len(cue)))[:40])
    return out


def _fires(rule: Rule, text: str) -> bool:
    return any(hit.rule.id == rule.id for hit in look(text)[0])


def windows() -> Iterator[tuple[str, str, str]]:
    """Rule, `fires` or `quiet`, text: as far apart as the rule allows, and one word further."""
    for rule in rules.read():
        choices = _words(rule)
        done = False
        chance = random.Random(rule.id)
        for _ in range(600):
            parts = [chance.choice(words) for words in choices]
            if len(parts) == 1:
                if _fires(rule, parts[0]):
                    yield rule.id, "fires", parts[0]
                    done = True
                    break
                continue
            chance.shuffle(parts)
            edge = next(
                (
                    far
                    for far in range(rule.window + 2)
                    if _fires(rule, _at(parts, far)) and not _fires(rule, _at(parts, far + 1))
                ),
                None,
            )
            if edge is not None:
                yield rule.id, "fires", _at(parts, edge)
                yield rule.id, "quiet", _at(parts, edge + 1)
                done = True
                break
        if not done:
            yield rule.id, "none", ""


def _at(parts: list[str], fillers: int) -> str:
    """The last part with fillers before it, the others side by side."""
    return " ".join([*parts[:-1], *[FILLER] * fillers, parts[-1]])


def blockers() -> Iterator[tuple[str, str, str]]:
    """Rule and blocker, `quiet`, text that fires but for the blocker."""
    for rule in rules.read():
        for name in rule.unless:
            for turn in range(40):
                parts = [words[min(turn, len(words) - 1)] for words in _words(rule)]
                text = " ".join(parts)
                blocked = next(
                    (
                        f"{text} {cue}"
                        for entry in entries(name)
                        if not _fires(rule, f"{text} {(cue := cue_text(entry))}")
                    ),
                    None,
                )
                if _fires(rule, text) and blocked:
                    yield f"{rule.id} !{name}", "fires", text
                    yield f"{rule.id} !{name}", "quiet", blocked
                    break


def main() -> None:
    FROZEN.mkdir(exist_ok=True)
    lost = 0
    with (FROZEN / "cues.tsv").open("w", encoding="utf-8") as out:
        for name, cue, text in cues():
            found = look(text)[1]
            if name in found.spans:
                out.write(f"{name}\t{cue}\t{text}\n")
            else:
                lost += 1
                print(f"cue carries nothing: {name}: {cue}")  # noqa: T201 - a script tells
    for kind, lines in (("windows", windows()), ("blockers", blockers())):
        with (FROZEN / f"{kind}.tsv").open("w", encoding="utf-8") as out:
            for key, does, text in lines:
                if does == "none":
                    lost += 1
                    print(f"no text found for {key}")  # noqa: T201 - a script tells
                else:
                    out.write(f"{key}\t{does}\t{text}\n")
    print(f"{lost} without a text")  # noqa: T201 - a script tells


if __name__ == "__main__":
    main()
