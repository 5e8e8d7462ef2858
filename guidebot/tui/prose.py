"""Guide text in lines of a given width, lists hanging; the same for every face."""

from __future__ import annotations

import re
import textwrap

_ITEM = re.compile(r"([-*]|\d{1,2}[.)]) +")


def wrapped(text: str, width: int) -> list[str]:
    """Break text into lines.

    Args:
        text: CommonMark as the guide writes it: paragraphs, lists; shown as it is, not rendered.
        width: columns, at least 10 are used.

    Returns:
        Lines; the second and later lines of a list item hang below its words.
    """
    out: list[str] = []
    for line in text.split("\n"):
        item = _ITEM.match(line)
        out += textwrap.wrap(
            line.replace("**", ""),
            max(10, width),
            subsequent_indent=" " * len(item.group()) if item else "",
            break_on_hyphens=False,
        ) or [""]
    return out


def plain_block(*parts: str) -> str:
    """Parts with an empty line between them, empty parts left out."""
    return "\n\n".join(part for part in parts if part)


def spaced(text: str) -> str:
    """Each sentence a paragraph of its own: easier to find again with the hands on a dog."""
    return re.sub(r"(?<=[.!?]) (?=[A-Z])", "\n\n", text)
