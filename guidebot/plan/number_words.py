"""Numbers as people write them: `19`, `nineteen`, `a`, `half a`, `five and a half`, `4th`."""

from __future__ import annotations

import re

_ONES = {
    w: n
    for n, w in enumerate(
        [
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen",
        ]
    )
}
_TENS = {
    w: 10 * n for n, w in enumerate(["twenty", "thirty", "forty", "fifty", "sixty", "seventy"], 2)
}
_ORDINALS = {
    w: n
    for n, w in enumerate(
        [
            "first",
            "second",
            "third",
            "fourth",
            "fifth",
            "sixth",
            "seventh",
            "eighth",
            "ninth",
            "tenth",
            "eleventh",
            "twelfth",
            "thirteenth",
            "fourteenth",
            "fifteenth",
            "sixteenth",
            "seventeenth",
            "eighteenth",
            "nineteenth",
            "twentieth",
        ],
        1,
    )
}
_ORDINALS |= {"thirtieth": 30, "fortieth": 40}
_ORDINALS |= {
    f"{tens}-{one}": value + _ORDINALS[one]
    for tens, value in _TENS.items()
    for one in list(_ORDINALS)[:9]
}
_LOOSE = {
    "a": 1.0,
    "an": 1.0,
    "a couple of": 2.0,
    "couple of": 2.0,
    "a few": 3.0,
    "half a": 0.5,
    "half an": 0.5,
    "a quarter of a": 0.25,
    "a quarter of an": 0.25,
    "quarter of an": 0.25,
    "three quarters of a": 0.75,
    "three quarters of an": 0.75,
    "a half": 0.5,
    "a dozen": 12.0,
    "couple": 2.0,
    "one and a half": 1.5,
    "a month and a half": 1.5,
}

_HUNDREDS = {"a hundred": 100, "one hundred": 100, "two hundred": 200, "three hundred": 300}

_word = "|".join(sorted((*_ONES, *_TENS), key=len, reverse=True))
_cardinal = rf"(?:(?:{'|'.join(_TENS)})[ -](?:{'|'.join(list(_ONES)[1:10])})|{_word})"
_loose = "|".join(re.escape(w) for w in sorted(_LOOSE, key=len, reverse=True))
NUMBER = (
    rf"(?:(?:{'|'.join(_HUNDREDS)})(?:(?: and)? {_cardinal})?|"
    rf"\d{{1,4}}(?:[.,]\d{{1,2}})?(?: ?½| 1/2)?|½|{_cardinal}|{_loose})"
    r"(?: and (?:a half|half|a bit))?"
)
"""Pattern of a number; no groups; a following word boundary is the caller's."""
ORDINAL = (
    rf"(?:\d{{1,3}}(?:st|nd|rd|th)|{'|'.join(sorted(_ORDINALS, key=len, reverse=True))}|"
    rf"(?:{'|'.join(_TENS)}) (?:{'|'.join(list(_ORDINALS)[:9])}))"
)
"""Pattern of an ordinal; no groups."""


def read_number(said: str) -> float | None:
    """The value of words matched by `NUMBER`; None if it is none."""
    text = said.strip().replace(",", ".")
    half = 0.0
    for tail, more in (
        (" and a half", 0.5),
        (" and half", 0.5),
        (" and a bit", 0.0),
        (" 1/2", 0.5),
        ("½", 0.5),
    ):
        if text.endswith(tail):
            text, half = text[: -len(tail)].strip(), more
            break
    if text in ("", "half"):
        return half or None
    if text in _LOOSE:
        return _LOOSE[text] + half
    try:
        return float(text) + half
    except ValueError:
        pass
    total = next((n for words, n in _HUNDREDS.items() if text.startswith(words)), 0)
    if total:
        text = re.sub(r"^\w+ hundred(?: and)? ?", "", text)
    for part in re.split(r"[ -]", text) if text else ():
        if part not in _ONES and part not in _TENS:
            return None
        total += _ONES.get(part, 0) + _TENS.get(part, 0)
    return total + half


def read_ordinal(said: str) -> float | None:
    """The value of words matched by `ORDINAL`; None if it is none."""
    text = said.strip()
    digits = re.match(r"(\d{1,3})(?:st|nd|rd|th)$", text)
    if digits:
        return float(digits[1])
    value = _ORDINALS.get(text, _ORDINALS.get(text.replace(" ", "-")))
    return None if value is None else float(value)
