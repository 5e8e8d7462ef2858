"""Typed reading of a marked table: wrong types, missing and unknown keys become faults."""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import date
from fractions import Fraction

from guidebot.errors import Where
from guidebot.guide.faults import Faults, nearest
from guidebot.guide.marked import Items, Node, Scalar, Table

KEY = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")
"""Names of stages, parts, sleeves, passages, activities."""

_NUMBER = re.compile(r"(?:(\d{1,6}) )?(\d{1,6})/(\d{1,6})|\d{1,6}(?:\.\d{1,6})?")
_DATE = re.compile(r"\d{4}-\d{2}-\d{2}")
_CALLED = {
    "bool": "true or false",
    "int": "a number",
    "float": "a number",
    "timestamp": "a date",
    "null": "empty",
}


def called(node: Node) -> str:
    """What a node is, in words for a fault."""
    if isinstance(node, Items):
        return "a list"
    if isinstance(node, Table):
        return "a map of keys"
    return _CALLED.get(node.kind, "text")


def as_text(node: Node, faults: Faults, what: str) -> str:
    """The text of a scalar on one line; "" once a fault is noted."""
    if isinstance(node, Scalar):
        if node.kind == "str":
            if node.text:
                return " ".join(node.text.split())
            faults.add(node.where, f"{what} is empty", "Write it, or leave the key out")
            return ""
        if node.kind == "bad":
            return ""
        if node.kind == "null":
            faults.add(node.where, f"{what} is empty", "Write it, or leave the key out")
            return ""
        remedy = f'Write "{node.text}" in quotes'
    else:
        remedy = ""
    faults.add(node.where, f"{what} is {called(node)}, but has to be text", remedy)
    return ""


def as_key(node: Node, faults: Faults, what: str) -> str:
    """A name in small letters, digits and hyphens; "" once a fault is noted."""
    text = as_text(node, faults, what)
    if text and not KEY.fullmatch(text):
        faults.add(node.where, f"{what} `{text}` is not in small letters, digits and hyphens")
        return ""
    return text


def as_integer(node: Node, faults: Faults, what: str, least: int) -> int | None:
    """A whole number of at least `least`; None once a fault is noted."""
    if isinstance(node, Scalar):
        if node.kind == "bad":
            return None
        if node.kind == "int" and len(node.text) <= 6:
            number = int(node.text)
            if number >= least:
                return number
            faults.add(node.where, f"{what} is {number}, but has to be at least {least}")
            return None
    faults.add(node.where, f"{what} is {called(node)}, but has to be a whole number")
    return None


def as_number(node: Node, faults: Faults, what: str) -> Fraction | None:
    """An exact number above 0, also `1/8` or `1 1/2`; None once a fault is noted."""
    if isinstance(node, Scalar):
        if node.kind == "bad":
            return None
        match = _NUMBER.fullmatch(node.text)
        if match and node.kind in {"int", "float", "str"}:
            whole, over, under = match.groups()
            if under is None:
                number = Fraction(node.text)
            elif int(under) == 0:
                faults.add(node.where, f"{what} `{node.text}` divides by zero")
                return None
            else:
                number = int(whole or 0) + Fraction(int(over), int(under))
            if number > 0:
                return number
            faults.add(node.where, f"{what} is {node.text}, but has to be more than 0")
            return None
    said = called(node)
    if isinstance(node, Scalar) and node.kind != "null":
        said = f"`{node.text[:40]}`"
    faults.add(node.where, f"{what} is {said}, but has to be a number", 'Write 3, 0.5 or "1/8"')
    return None


def as_date(node: Node, faults: Faults, what: str) -> date | None:
    """A day written year-month-day; None once a fault is noted."""
    if isinstance(node, Scalar):
        if node.kind == "bad":
            return None
        if node.kind in {"str", "timestamp"} and _DATE.fullmatch(node.text):
            try:
                return date.fromisoformat(node.text)
            except ValueError:
                faults.add(node.where, f"{what} `{node.text}` is not in the calendar")
                return None
    said = f"`{node.text[:40]}`" if isinstance(node, Scalar) else called(node)
    faults.add(node.where, f"{what} is {said}, but has to be a date", 'Write "2026-03-31"')
    return None


def as_table(node: Node | None, faults: Faults, what: str) -> Table | None:
    """A table; None once a fault is noted (and for None, which has its fault already)."""
    if node is None or isinstance(node, Table):
        return node
    if not (isinstance(node, Scalar) and node.kind == "bad"):
        faults.add(node.where, f"{what} is {called(node)}, but has to be a map of keys")
    return None


def as_items(node: Node | None, faults: Faults, what: str) -> tuple[Node, ...]:
    """The entries of a list; none once a fault is noted."""
    if isinstance(node, Items):
        return node.entries
    if node is not None and not (isinstance(node, Scalar) and node.kind == "bad"):
        faults.add(node.where, f"{what} is {called(node)}, but has to be a list")
    return ()


class Form:
    """A table read key by key; `close` reports the keys that nobody asked for.

    Args:
        table: the table.
        faults: receives what is wrong.
    """

    def __init__(self, table: Table, faults: Faults) -> None:
        self.table = table
        self.faults = faults
        self._asked: list[str] = []

    def has(self, key: str) -> bool:
        """Is the key written?"""
        return key in self.table.entries

    def where(self, key: str) -> Where:
        """The place of the key, or of the table if it is not there."""
        name = self.table.keys.get(key)
        return name.where if name else self.table.where

    def node(self, key: str, *, required: bool = True) -> Node | None:
        """The value under a key; a required one that is missing is a fault."""
        self._asked.append(key)
        node = self.table.entries.get(key)
        if node is None and required:
            self.faults.add(self.table.where, f"the key `{key}` is missing")
        return node

    def text(self, key: str, *, required: bool = True) -> str:
        """The text under a key, on one line; "" if there is none."""
        node = self.node(key, required=required)
        return "" if node is None else as_text(node, self.faults, f"`{key}`")

    def key(self, key: str, *, required: bool = True) -> str:
        """A name under a key; "" if there is none."""
        node = self.node(key, required=required)
        return "" if node is None else as_key(node, self.faults, f"`{key}`")

    def one_of(self, key: str, known: Iterable[str], *, required: bool = True) -> str:
        """A text under a key that has to be one of `known`; "" if there is none."""
        node = self.node(key, required=required)
        text = "" if node is None else as_text(node, self.faults, f"`{key}`")
        choice = tuple(known)
        if node is not None and text and text not in choice:
            self.faults.add(
                node.where, f"`{key}` is `{text}`, which is not known", nearest(text, choice)
            )
            return ""
        return text

    def texts(self, key: str, *, required: bool = True) -> tuple[str, ...]:
        """A list of different texts under a key, not empty."""
        node = self.node(key, required=required)
        return () if node is None else texts(node, self.faults, f"`{key}`")

    def flag(self, key: str) -> bool:
        """True or false under a key; False if there is none."""
        node = self.node(key, required=False)
        if node is None or (isinstance(node, Scalar) and node.kind == "bad"):
            return False
        if isinstance(node, Scalar) and node.kind == "bool":
            return node.text.lower() == "true"
        self.faults.add(node.where, f"`{key}` is {called(node)}, but has to be true or false")
        return False

    def close(self) -> None:
        """Report every key that was not asked for."""
        for key, name in self.table.keys.items():
            if key not in self._asked:
                self.faults.add(
                    name.where, f"the key `{key}` is not known here", nearest(key, self._asked)
                )


def texts(node: Node, faults: Faults, what: str) -> tuple[str, ...]:
    """A list of different texts, not empty; what cannot be used is left out with a fault."""
    entries = as_items(node, faults, what)
    if isinstance(node, Items) and not entries:
        faults.add(node.where, f"{what} is an empty list")
    found: dict[str, None] = {}
    for entry in entries:
        text = as_text(entry, faults, f"an entry of {what}")
        if text in found:
            faults.add(entry.where, f"`{text}` is in {what} twice", "Keep one of them")
        elif text:
            found[text] = None
    return tuple(found)
