"""Numbers in guide text: each comes from the protocol, none is written twice."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from fractions import Fraction

from guidebot.domain.protocol import Protocol, Quantity
from guidebot.errors import Where
from guidebot.guide.faults import Faults, nearest
from guidebot.guide.fields import Form
from guidebot.guide.marked import Scalar

Find = Callable[[str], Where]
"""Gives the place of a piece of the text in its file."""

_SHOW: dict[str, Callable[[Quantity], str]] = {
    "": Quantity.text,
    "n": Quantity.number,
    "adj": Quantity.adjective,
}
_PLACEHOLDER = re.compile(r"\{([^{}\n]{0,80})\}")
_BRACE = re.compile(r"[{}]")

_UNITS = {
    "h": "hours?|hrs?",
    "min": "minutes?|mins?",
    "day": "days?",
    "week": "weeks?|wks?",
    "month": "months?",
    "in": r"inch(?:es)?|in\b(?! (?:a|an|the|your|and|at|case|all|total)\b)",
    "finger": r"fingers?(?:[- ]widths?)?",
    "count": "times",
}
_OTHER_UNITS = (
    r"seconds?|secs?|years?|yrs?|mm|millimet(?:re|er)s?|cm|centimet(?:re|er)s?|h|degrees?"
)
_ANY_UNIT = "|".join([*_UNITS.values(), _OTHER_UNITS])
_NUMERAL = r"(?<![\w.,/-])\d+(?:[.,/]\d+)?(?: \d+/\d+)?"
_RAW = re.compile(
    rf"{_NUMERAL}(?:\s*(?:-|–|to|or|and)\s*\d+(?:[./]\d+)?)?[\s-]*(?:{_ANY_UNIT})\b"  # noqa: RUF001
    r"|\b(?:hour|day|week|month|year)s?\s+(?!1\b)\d+\b",
    re.IGNORECASE,
)
_COUNTED = {
    word: Fraction(number)
    for number, word in enumerate(
        [
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
        ],
        1,
    )
} | {"fifteen": Fraction(15), "twenty": Fraction(20), "thirty": Fraction(30)}
_WORDED = {
    unit: re.compile(rf"\b({'|'.join(_COUNTED)})[\s-](?:more |full |whole )?(?:{names})\b", re.I)
    for unit, names in _UNITS.items()
    if unit not in {"count", "in"}
}
_HALF_HOUR = re.compile(r"\bhalf an hour\b", re.IGNORECASE)


class Filler:
    """Fills the placeholders of guide text from the protocol.

    Args:
        protocol: the numbers; None if they could not be read (then nothing is judged).
        faults: receives unknown placeholders and numbers written out by hand.
    """

    def __init__(self, protocol: Protocol | None, faults: Faults) -> None:
        self._protocol = protocol
        self._faults = faults
        self._worded = {
            (quantity.unit, quantity.value): quantity.key
            for quantity in (protocol.numbers.values() if protocol else ())
        }

    def text(self, form: Form, key: str, *, required: bool = True) -> str:
        """The filled text under a key of a table; "" if there is none."""
        text = form.text(key, required=required)
        node = form.table.entries.get(key)
        return self.fill(text, node.find) if text and isinstance(node, Scalar) else text

    def fill(self, text: str, find: Find) -> str:
        """Put the numbers in.

        Args:
            text: the text with placeholders `{key}`, `{key:n}`, `{key:adj}`.
            find: tells where a piece of the text is in its file.

        Returns:
            The text as it is shown. Faults are noted, nothing is raised.
        """
        for piece, what, remedy in self._raw(_PLACEHOLDER.sub("…", text)):
            self._faults.add(find(piece), what, remedy)
        stray = _BRACE.search(_PLACEHOLDER.sub(lambda match: " " * len(match.group()), text))
        if stray:
            self._faults.add(
                find(text[stray.start() : stray.start() + 24].split("\n")[0]),
                "a brace is not closed or not opened",
                "Braces are for placeholders only",
            )
        return _PLACEHOLDER.sub(lambda match: self._show(match, find), text)

    def _show(self, match: re.Match[str], find: Find) -> str:
        key, colon, form = match.group(1).partition(":")
        if self._protocol is None:
            return match.group()
        quantity = self._protocol.numbers.get(key)
        if quantity is None:
            self._faults.add(
                find(match.group()),
                f"the protocol has no number `{key}`",
                nearest(key, self._protocol.numbers) or "Add it to protocol.yaml",
            )
            return match.group()
        show = _SHOW.get(form) if form or not colon else None
        if show is None:
            self._faults.add(
                find(match.group()),
                f"`{form}` is no way to show a number",
                "Write {key}, {key:n} or {key:adj}",
            )
            return match.group()
        return show(quantity)

    def _raw(self, text: str) -> Iterator[tuple[str, str, str]]:
        """Numbers written out by hand: the piece, what is wrong, what to do."""
        for match in _RAW.finditer(text):
            yield (
                match.group(),
                f"the number in `{' '.join(match.group().split())}` is written by hand",
                "Use a placeholder from protocol.yaml, or say it without a number",
            )
        for unit, pattern in _WORDED.items():
            for match in pattern.finditer(text):
                key = self._worded.get((unit, _COUNTED[match.group(1).lower()]))
                if key:
                    yield self._spelled(match, key)
        half = _HALF_HOUR.search(text)
        key = self._worded.get(("min", Fraction(30)))
        if half and key:
            yield self._spelled(half, key)

    def _spelled(self, match: re.Match[str], key: str) -> tuple[str, str, str]:
        piece = " ".join(match.group().split())
        return match.group(), f"`{piece}` is a number of the protocol", f"Write {{{key}}}"
