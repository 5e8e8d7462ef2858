"""Everything the rules need, built once: from the tables, or from a dump of them."""

from __future__ import annotations

import hashlib
import marshal
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files

from guidebot.domain.answer import Stamp
from guidebot.safety import lexicon, rules
from guidebot.safety.lexicon import CONTEXT, Lexicon
from guidebot.safety.match import GIVING, Rule

_FORMAT = 1


@dataclass(frozen=True, slots=True)
class Compiled:
    """Lexicon and rules, ready to run, and the stamp of what they were built from."""

    lexicon: Lexicon
    rules: tuple[Rule, ...]
    stamp: Stamp


@lru_cache(maxsize=1)
def stamp() -> Stamp:
    """Version of the rules and the first 16 hex digits of SHA-256 over everything that decides."""
    digest = hashlib.sha256()
    for part in (*rules.TABLES, *(f"{k}={v}" for k, v in lexicon.CONCEPTS.items()),
                 " ".join(sorted(lexicon.NOT_FORMS)), " ".join(sorted(lexicon.FILLERS)),
                 " ".join(sorted(CONTEXT)), " ".join(sorted(GIVING))):  # fmt: skip
        digest.update(part.encode("utf-8") + b"\0")
    return Stamp(rules.VERSION, digest.hexdigest()[:16])


def _common() -> frozenset[str]:
    path = files("guidebot.safety") / "data" / "common.txt"
    return frozenset(path.read_text(encoding="utf-8").split())


def build(
    tables: Sequence[str] = rules.TABLES, concepts: Mapping[str, str] = lexicon.CONCEPTS
) -> Compiled:
    """Build from the tables in the code.

    Raises:
        ContentError: a rule cannot be read.
    """
    return Compiled(lexicon.build(_common(), concepts), rules.read(tables), stamp())


def dump(compiled: Compiled) -> bytes:
    """Bytes for a cache that `load` reads; good for this version of Python only."""
    words = compiled.lexicon
    return marshal.dumps(
        (
            _FORMAT,
            (compiled.stamp.version, compiled.stamp.hash),
            (words.forms, words.singles, words.tree, words.skeletons, words.common),
            tuple((r.id, r.sign, r.groups, r.window, r.unless) for r in compiled.rules),
        )
    )


def load(raw: bytes | memoryview) -> Compiled:
    """Read what `dump` wrote.

    Raises:
        ValueError: the bytes are no such dump, or of other rules than those in the code.
    """
    try:
        version, mark, words, table = marshal.loads(raw)  # noqa: S302 - our own cache file
        found = Compiled(Lexicon(*words), tuple(Rule(*row) for row in table), Stamp(*mark))
    except (EOFError, TypeError, ValueError) as error:
        raise ValueError("no dump of the rules") from error
    if version != _FORMAT or found.stamp != stamp():
        raise ValueError("a dump of other rules")
    return found


_current: list[Compiled] = []


def current() -> Compiled:
    """What the process uses: what `use` set, else built on first call."""
    if not _current:
        _current.append(build())
    return _current[0]


def use(compiled: Compiled) -> None:
    """Let the process use this (from a cache) in place of building."""
    _current[:] = [compiled]
