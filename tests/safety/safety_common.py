"""What the safety tests ask of the rules."""

from __future__ import annotations

from pathlib import Path

from guidebot.safety import compiled
from guidebot.safety.match import Hit, live, run
from guidebot.safety.scope import scopes
from guidebot.safety.spans import Found, find
from guidebot.safety.tokens import split

HERE = Path(__file__).parent


def plain_cases() -> list[list[str]]:
    """Sign, a plain report, the same denied, the same of somebody else."""
    lines = (HERE / "plain.tsv").read_text(encoding="utf-8").splitlines()
    return [line.split("\t") for line in lines]


def look(text: str) -> tuple[list[Hit], Found]:
    tables = compiled.current()
    found = find(split(text), tables.lexicon)
    return run(tables.rules, found, live(found, scopes(found))), found


def signs(text: str) -> set[str]:
    """Keys of the signs the rules find."""
    return {hit.rule.sign for hit in look(text)[0]}
