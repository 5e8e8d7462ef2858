"""Rules read from tables of lines; version and hash over everything that decides."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from guidebot.errors import ContentError, Where
from guidebot.safety.lexicon import CONCEPTS
from guidebot.safety.match import Rule
from guidebot.safety.rules_clinic import CLINIC
from guidebot.safety.rules_emergency import EMERGENCY
from guidebot.safety.rules_vet import VET_TODAY
from guidebot.safety.signs import BY_KEY

VERSION = "1"
TABLES = (EMERGENCY, VET_TODAY, CLINIC)
DEFAULT_WINDOW = 8


def read(tables: Sequence[str] = TABLES) -> tuple[Rule, ...]:
    """Read rule tables.

    A line is `sign: concept|concept & concept @window !concept !concept`; `sign:` may be left
    out after the first line of a sign; `#` begins a remark. The window is in steps.

    Raises:
        ContentError: a line that cannot be read, or names an unknown sign or concept.
    """
    return tuple(rule for table in tables for rule in _lines(table))


def _lines(table: str) -> Iterator[Rule]:
    sign = ""
    number = 0
    for line, raw in enumerate(table.splitlines(), 1):
        text = raw.split("#")[0].strip()
        if not text:
            continue
        where = Where("safety rules", line, key=sign)
        if ":" in text:
            sign, text = (part.strip() for part in text.split(":", 1))
            number = 0
            if sign not in BY_KEY:
                raise ContentError(f"unknown sign {sign!r}", where=where, remedy="see signs.py")
            if not text:
                continue
        number += 1
        window, unless, body = DEFAULT_WINDOW, [], []
        for word in text.split():
            if word.startswith("@"):
                window = int(word[1:])
            elif word.startswith("!"):
                unless.append(word[1:])
            else:
                body.append(word)
        groups = tuple(tuple(g.strip().split("|")) for g in " ".join(body).split("&"))
        for name in [*unless, *(name for group in groups for name in group)]:
            if name not in CONCEPTS:
                raise ContentError(
                    f"unknown concept {name!r}", where=where, remedy="see lexicon_*.py"
                )
        yield Rule(f"{sign}/{number}", sign, groups, window, tuple(unless))
