"""Fixed pieces of wording for computed values: hours, minutes, dates, verdicts."""

from __future__ import annotations

from datetime import date
from fractions import Fraction

from guidebot.domain.activity import Say
from guidebot.domain.protocol import Protocol, Stage

SAYS = {
    Say.YES: "yes",
    Say.YES_WITH_LIMITS: "yes, with limits",
    Say.ASK_FIRST: "ask first",
    Say.NOT_YET: "not yet",
    Say.NO: "no",
}
ASK_FITTED = "When was the fitting day?"
_MONTHS = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
]


def said_date(on: date) -> str:
    """`20 February 2027`, the same in every locale."""
    return f"{on.day} {_MONTHS[on.month - 1]} {on.year}"


def said_number(value: Fraction) -> str:
    """`6`, `2.5`, `0.25`."""
    return f"{float(value):.2f}".rstrip("0").rstrip(".")


def said_hours(hours: Fraction) -> str:
    """`6 hours`, `1 hour`, `30 minutes`."""
    if 0 < hours < 1:
        return said_minutes(hours * 60)
    return f"{said_number(hours)} hour{'' if hours == 1 else 's'}"


def said_minutes(minutes: Fraction | int) -> str:
    """`10 minutes`, `1 minute`."""
    return f"{said_number(Fraction(minutes))} minute{'' if minutes == 1 else 's'}"


def said_start(stage: Stage) -> str:
    """When a stage starts, without a date: `from day 11`, `3 months after the fitting day`."""
    if stage.from_month is not None:
        return f"from {stage.from_month} month{'' if stage.from_month == 1 else 's'} after fitting"
    return f"from day {stage.from_day or 1}"


def cite(protocol: Protocol, *keys: str) -> tuple[str, ...]:
    """`protocol.yaml:LINE` of each number, in order."""
    found = (protocol.numbers.get(key) for key in keys)
    return tuple(dict.fromkeys(f"protocol.yaml:{q.line}" for q in found if q is not None))


def capital(text: str) -> str:
    """The first letter in upper case, the rest as it is."""
    return text[:1].upper() + text[1:]
