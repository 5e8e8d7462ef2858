"""Take out what could name a person before a question is kept."""

from __future__ import annotations

import re

_RULES = tuple(
    (re.compile(pattern, re.IGNORECASE), instead)
    for pattern, instead in (
        (r"[\w.+%-]+@[\w-]+(?:\.[\w-]+)+", "[e-mail]"),
        (r"\b(?:https?://|www\.)\S+", "[link]"),
        (r"\b(?:[\w-]+\.)+(?:com|org|net|io|co\.uk|de|fr|example)(?:/\S*)?\b", "[link]"),
        # A phone number: at least seven digits, spaced or dotted or dashed, maybe bracketed.
        (
            r"(?<![\w-])(?!(?:19|20)\d\d-\d\d-\d\d\b)\+?\(?\d(?:[\s().-]{0,2}\d){6,14}(?![\w-])",
            "[phone]",
        ),
        (r"\b\d{3}[-.\s]\d{4}\b", "[phone]"),
        (
            r"\b\d{1,5}[a-z]? (?=(?:[\w']+ ){1,3}(?:street|st|road|rd|avenue|ave|lane|ln|drive|"
            r"close|court|ct|way|place|pl|square|crescent|terrace|boulevard|blvd)\b)",
            "[number] ",
        ),
        (r"\b(my name is|this is|i am called|i'm called) (?-i:[A-Z][\w'-]+)", r"\1 [name]"),
    )
)


def redact(text: str) -> str:
    """The text without e-mail addresses, links, phone numbers, house numbers and given names."""
    for pattern, instead in _RULES:
        text = pattern.sub(instead, text)
    return text
