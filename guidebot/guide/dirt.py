"""What `text.clean` would take out of a text: in a guide that is a fault, never a silent repair."""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass

from guidebot.text import clean


@dataclass(frozen=True, slots=True)
class Dirt:
    """The first character that may not stay: its offset in the text and a name for it."""

    offset: int
    name: str


def dirt(text: str) -> Dirt | None:
    """Find what the cleaning of foreign text would remove.

    Args:
        text: any text; tabs, line feeds and kinds of spaces do not count as dirt.

    Returns:
        The first offending character, None for a clean text.
    """
    if text.replace("\n", "").isprintable():  # everything that is removed is unprintable
        return None
    for offset, char in enumerate(text):
        if not char.isprintable() and _vanishes(char):
            return Dirt(offset, _name(char))
    return None


def _vanishes(char: str) -> bool:
    return clean(f"a{char}b").text not in {f"a{char}b", "a b"}


def _name(char: str) -> str:
    return f"the character U+{ord(char):04X} ({unicodedata.name(char, 'a control character')})"
