"""YAML with a place for every value, and without YAML's surprises.

PyYAML reads `no` as False, `12:30` as 750 and lets a repeated key win silently. Here the parser
only builds its tree of nodes; what a value means is decided by whoever reads it (`fields.py`).
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

from guidebot.errors import Where
from guidebot.guide.dirt import dirt
from guidebot.guide.faults import Faults
from guidebot.text import MAX_CHARS, clean

MAX_DEPTH = 12
"""No file of a guide nests deeper; more is a mistake or an attack."""

_TAG = "tag:yaml.org,2002:"
_KINDS = frozenset({"str", "bool", "int", "float", "null", "timestamp"})
_PLAIN_NUMBER = re.compile(r"[-+]?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?")


@dataclass(frozen=True, slots=True)
class Scalar:
    """One value as written.

    Attributes:
        text: the cleaned text.
        kind: `str`, `bool`, `int`, `float`, `null`, `timestamp`, or `bad` once a fault is noted.
        where: place of its first character.
        last_line: 1-based line on which it ends.
        lines: the lines of the whole file, to find a piece of the value again.
    """

    text: str
    kind: str
    where: Where
    last_line: int = 0
    lines: Sequence[str] = field(default=(), repr=False, compare=False)

    def find(self, piece: str) -> Where:
        """The place of a piece of this value in its file; the start of the value if unsure."""
        first = self.where.line or 1
        for number in range(first, min(self.last_line, len(self.lines)) + 1):
            start = (self.where.column or 1) - 1 if number == first else 0
            column = self.lines[number - 1].find(piece, start)
            if column >= 0:
                return Where(self.where.path, number, column + 1, self.where.key)
        return self.where


@dataclass(frozen=True, slots=True)
class Items:
    """A list."""

    entries: tuple[Node, ...]
    where: Where


@dataclass(frozen=True, slots=True)
class Table:
    """A map with text keys, in the order of the file; `keys` are the keys as written."""

    entries: dict[str, Node]
    keys: dict[str, Scalar]
    where: Where


Node = Scalar | Items | Table


def parse(
    text: str, path: str, faults: Faults, *, lines: Sequence[str] = (), skipped: int = 0
) -> Node | None:
    """Read one YAML document.

    Args:
        text: the document.
        path: the file as it is named to people.
        faults: receives every fault found; nothing is raised.
        lines: lines of the whole file if `text` is only a part of it.
        skipped: lines of the file before `text`.

    Returns:
        The tree, or None if there is none or it is not YAML.
    """
    import yaml

    loader = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
    try:
        root = yaml.compose(text, Loader=loader)
    except yaml.MarkedYAMLError as error:
        mark = error.problem_mark or error.context_mark
        where = Where(path, mark.line + 1 + skipped, mark.column + 1) if mark else Where(path)
        problem = " ".join(str(error.problem or error.context).split())
        faults.add(where, f"this is not YAML: {problem}", "Check quotes, colons and indents")
        return None
    except (yaml.YAMLError, ValueError, RecursionError) as error:
        reason = " ".join(str(error).split())[:120]
        faults.add(Where(path, 1 + skipped, 1), f"this is not YAML: {reason}")
        return None
    if root is None:
        faults.add(Where(path, 1 + skipped, 1), "nothing is written here")
        return None
    return _Builder(path, faults, lines or text.split("\n"), skipped).build(root, "", 0)


class _Builder:
    """Turns parser nodes into marked nodes."""

    def __init__(self, path: str, faults: Faults, lines: Sequence[str], skipped: int) -> None:
        self.path = path
        self.faults = faults
        self.lines = lines
        self.skipped = skipped
        self.seen: set[int] = set()

    def build(self, node: Any, key: str, depth: int) -> Node:
        mark = node.start_mark
        where = Where(self.path, mark.line + 1 + self.skipped, mark.column + 1, key or None)
        if id(node) in self.seen:
            self.faults.add(where, "a value is repeated with `*`", "Write it out")
            return Scalar("", "bad", where)
        self.seen.add(id(node))
        if depth > MAX_DEPTH:
            self.faults.add(where, f"nested deeper than {MAX_DEPTH} levels")
            return Scalar("", "bad", where)
        kind = node.tag.removeprefix(_TAG)
        if kind == "map":
            return self.table(node, where, key, depth)
        if kind == "seq":
            entries = [
                self.build(entry, f"{key}[{number}]", depth + 1)
                for number, entry in enumerate(node.value)
            ]
            return Items(tuple(entries), where)
        if kind not in _KINDS or not isinstance(node.value, str):
            self.faults.add(where, f"the tag or sign `{kind}` has no meaning in a guide")
            return Scalar("", "bad", where)
        return self.scalar(node, kind, where)

    def table(self, node: Any, where: Where, key: str, depth: int) -> Table:
        table = Table({}, {}, where)
        for key_node, value_node in node.value:
            name = self.build(key_node, key, depth + 1)
            inner = f"{key}.{name.text}" if key and isinstance(name, Scalar) else ""
            if isinstance(name, Scalar) and not key:
                inner = name.text
            value = self.build(value_node, inner, depth + 1)
            if not isinstance(name, Scalar):
                self.faults.add(name.where, "a key has to be a word")
            elif name.kind == "bad":
                continue
            elif name.kind != "str" or not name.text:
                self.faults.add(
                    name.where, f"the key `{name.text}` is not text", "Put it in quotes"
                )
            elif name.text in table.entries:
                first = table.keys[name.text].where.line
                self.faults.add(
                    name.where,
                    f"the key `{name.text}` is here twice, first in line {first}",
                    "Keep one of them",
                )
            else:
                table.entries[name.text] = value
                table.keys[name.text] = name
        return table

    def scalar(self, node: Any, kind: str, where: Where) -> Scalar:
        written: str = node.value
        bad = self._surprise(written, kind, where)
        found = dirt(written)
        if found is not None:
            self.faults.add(where, f"holds {found.name}, which is not shown", "Remove it")
            bad = True
        if len(written) > MAX_CHARS:
            self.faults.add(where, f"is longer than {MAX_CHARS} characters")
            bad = True
        last = node.end_mark.line + 1 + self.skipped
        text = clean(written).text
        return Scalar(text, "bad" if bad else kind, where, last, self.lines)

    def _surprise(self, written: str, kind: str, where: Where) -> bool:
        """Note a plain value that YAML reads as something else than it says."""
        if kind == "bool" and written.lower() not in {"true", "false"}:
            read = "true" if written.lower() in {"yes", "on"} else "false"
        elif kind in {"int", "float"} and ":" in written:
            read = "a number of seconds or minutes"
        elif kind in {"int", "float"} and not _PLAIN_NUMBER.fullmatch(written):
            read = "another number"
        else:
            return False
        self.faults.add(
            where, f"`{written}` without quotes is read as {read}", f'Write "{written}" in quotes'
        )
        return True
