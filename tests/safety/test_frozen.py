"""Every cue still carries its concept, every rule its window, every blocker its silence."""

from __future__ import annotations

from safety_common import HERE, look

from guidebot.safety import rules
from guidebot.safety.lexicon import CONCEPTS, entries


def _read(name: str) -> list[list[str]]:
    lines = (HERE / "frozen" / f"{name}.tsv").read_text(encoding="utf-8").splitlines()
    return [line.split("\t") for line in lines]


def test_every_cue_carries_its_concept() -> None:
    lost = [
        f"{name}: {cue}" for name, cue, text in _read("cues") if name not in look(text)[1].spans
    ]
    assert not lost, lost[:20]


def test_no_cue_is_without_a_frozen_text() -> None:
    frozen = {(name, cue) for name, cue, _ in _read("cues")}
    cues = {(name, " ".join(entry)) for name in CONCEPTS for entry in entries(name)}
    assert cues == frozen, "run tests/safety/freeze.py and read what changed"


def test_windows_and_blockers_stand() -> None:
    wrong = []
    for name in ("windows", "blockers"):
        for key, does, text in _read(name):
            fires = any(hit.rule.id == key.split()[0] for hit in look(text)[0])
            if fires != (does == "fires"):
                wrong.append(f"{key} {does}: {text}")
    assert not wrong, wrong[:20]


def test_every_rule_has_a_frozen_text() -> None:
    frozen = {key for key, _, _ in _read("windows")}
    assert {rule.id for rule in rules.read()} == frozen
