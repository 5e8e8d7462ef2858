"""The numbers of the care protocol: each with its unit and its basis, and the stages."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

UNITS = ("h", "min", "day", "week", "month", "in", "count", "finger")
"""hours, minutes, days, weeks, calendar months, inches, plain counts, finger widths."""

MM_PER_INCH = Fraction(254, 10)
"""Exact by definition: the international inch, 25.4 mm (ISO 80000-3)."""

_WORDS = {
    "h": ("hour", "hours"),
    "min": ("minute", "minutes"),
    "day": ("day", "days"),
    "week": ("week", "weeks"),
    "month": ("month", "months"),
    "in": ("in", "in"),
    "count": ("time", "times"),
    "finger": ("finger", "fingers"),
}


@dataclass(frozen=True, slots=True)
class Quantity:
    """One number of the protocol.

    Attributes:
        key: dotted name, for example `wear.first_day`.
        value: exact value in `unit`.
        unit: one of `UNITS`.
        basis: `common practice` or a citation.
        line: 1-based line in `protocol.yaml`, for the citation of a computed sentence.
    """

    key: str
    value: Fraction
    unit: str
    basis: str
    line: int = 0

    def millimetres(self) -> Fraction:
        """The exact length in millimetres; only for lengths."""
        if self.unit != "in":
            raise ValueError(f"{self.key} is not a length")
        return self.value * MM_PER_INCH

    def number(self) -> str:
        """The bare number as people read it: `3`, `1/8`, `1 1/2`."""
        whole, rest = divmod(self.value, 1)
        if rest == 0:
            return str(whole)
        return f"{whole} {rest}" if whole else str(rest)

    def text(self) -> str:
        """Number and unit: `3 hours`, `1/4 in (about 6 mm)`."""
        singular, plural = _WORDS[self.unit]
        said = f"{self.number()} {singular if self.value <= 1 else plural}"
        if self.unit == "in":
            said += f" (about {round(self.millimetres())} mm)"
        return said

    def adjective(self) -> str:
        """Before a noun: `10-minute`."""
        return f"{self.number()}-{_WORDS[self.unit][0]}"


@dataclass(frozen=True, slots=True)
class Stage:
    """A stretch of the course; it ends where the next one starts.

    Attributes:
        key: for example `break-in`.
        name: as said to people.
        from_day: first day number, for a stage that starts on a day; else None.
        from_month: calendar months after the fitting day on which the stage starts; else None.
        says: what holds in this stage, one sentence, for an answer without a date.
    """

    key: str
    name: str
    from_day: int | None
    from_month: int | None
    says: str


@dataclass(frozen=True, slots=True)
class Protocol:
    """All numbers by key, and the stages in order (the first starts on day 1)."""

    numbers: Mapping[str, Quantity]
    stages: tuple[Stage, ...]

    def __post_init__(self) -> None:
        """Freeze the table."""
        object.__setattr__(self, "numbers", MappingProxyType(dict(self.numbers)))

    def value(self, key: str) -> Fraction:
        """The exact value under `key`; KeyError if the guide lacks it."""
        return self.numbers[key].value

    def stage(self, key: str) -> Stage:
        """The stage of this key; KeyError if there is none."""
        for stage in self.stages:
            if stage.key == key:
                return stage
        raise KeyError(key)
