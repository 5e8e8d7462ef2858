"""A question with its kind of reply; the application and the plain loop ask the same ones."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any


def as_text(text: str) -> str:
    """The reader for free text."""
    return text


@dataclass(frozen=True, slots=True)
class Field:
    """One question.

    Attributes:
        key: under which the reply is kept.
        ask: the question.
        options: (value, label) to choose from; () for a written reply.
        read: turns a written reply into a value; raises InputError.
        hint: how to write it.
        needed: it cannot be left out.
    """

    key: str
    ask: str
    options: tuple[tuple[Any, str], ...] = ()
    read: Callable[[str], Any] = as_text
    hint: str = "Write and press Enter. Enter alone leaves it out."
    needed: bool = False
