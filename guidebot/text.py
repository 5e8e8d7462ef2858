"""The only door for foreign text: what owners, mails and files hold is cleaned here first."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass

MAX_CHARS = 200_000
"""Longest text that is read at all; beyond it nobody can promise that no sign was passed over."""

# Terminal sequences whole (CSI, OSC/DCS/APC/PM/SOS with their end, two-byte escapes), so that
# their printable tails do not stay behind as litter. A string without its end takes no word with
# it, and a lone C1 byte is no sequence: in a mail read in the wrong encoding it is the rest of a
# quotation mark, and what follows may be the bleeding.
_ESCAPES = re.compile(
    r"\x1b\[[0-?]*[ -/]*[@-~]"
    r"|\x9b[0-?]+[ -/]*[@-~]"
    r"|\x1b[\]PX^_][^\x07\x1b\x90\x98\x9c-\x9f\n]{0,4096}(?:\x07|\x1b\\|\x9c)"
    r"|[\x90\x98\x9d\x9e\x9f][^\x07\x1b\x90\x98\x9c-\x9f\n]{0,4096}(?:\x07|\x1b\\)"
    r"|\x1b[ -/]*[0-~]?"
)
_LINE_ENDS = re.compile("\r\n?|[\x0b\x0c\x85\u2028\u2029]")
# Controls but tab and line feed; bidi controls; zero-width and other invisible characters.
_INVISIBLE = re.compile(
    "[\x00-\x08\x0e-\x1f\x7f-\x9f\u00ad\u034f\u061c\u115f\u1160\u17b4\u17b5\u180b-\u180f"
    "\u200b-\u200f\u202a-\u202e\u2060-\u206f\u3164\ufe00-\ufe0f\ufeff\uffa0\ufff9-\ufffb"
    "\ud800-\udfff\U000e0000-\U000e0fff]"
)
_SPACES = re.compile(r"[^\S\n]")
_QUOTES = str.maketrans(
    {
        "\u2018": "'",
        "\u2019": "'",
        "\u201b": "'",
        "\u02bc": "'",
        "`": "'",
        "\u00b4": "'",
        "\u201c": '"',
        "\u201d": '"',
        "\u201e": '"',
    }
)


@dataclass(frozen=True, slots=True)
class Cleaned:
    """Text that may be shown, searched and judged.

    Attributes:
        text: the cleaned text, at most `MAX_CHARS` characters.
        too_long: the original was longer and was cut.
    """

    text: str
    too_long: bool = False


def clean(raw: str | bytes) -> Cleaned:
    """Remove what could harm a terminal, a page or a sheet; keep every readable word.

    Args:
        raw: text or bytes (read as UTF-8; broken bytes become U+FFFD).

    Returns:
        The text in Unicode form NFC, lines ended by line feeds, spaces plain, without terminal
        sequences, control, bidirectional or invisible characters.
    """
    text = raw.decode("utf-8", "replace") if isinstance(raw, bytes) else raw
    too_long = len(text) > MAX_CHARS
    text = text[:MAX_CHARS]
    text = _LINE_ENDS.sub("\n", text)
    text = _ESCAPES.sub("", text)
    text = _INVISIBLE.sub("", text)
    text = unicodedata.normalize("NFC", text)
    text = _SPACES.sub(" ", text)
    return Cleaned(text.strip(), too_long)


def plain(text: str) -> str:
    """Straighten quotes and fold case: the form in which words are compared, same length."""
    lowered = text.translate(_QUOTES).lower()
    # A few capitals grow in lower case; offsets into the text must stay true.
    return (
        lowered
        if len(lowered) == len(text)
        else "".join(
            low if len(low := char.lower()) == 1 else char for char in text.translate(_QUOTES)
        )
    )


def one_line(text: str, limit: int = 160) -> str:
    """Fold white space and cut to `limit` characters, for a quote inside a line."""
    folded = " ".join(text.split())
    return folded if len(folded) <= limit else folded[: limit - 1].rstrip() + "…"
