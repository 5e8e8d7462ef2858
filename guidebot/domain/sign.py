"""An injury sign, how urgent it is, and what was noticed in a message."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum


class Tier(IntEnum):
    """How urgent; higher is more urgent, the highest found wins."""

    CLINIC = 1
    VET_TODAY = 2
    EMERGENCY = 3

    @property
    def key(self) -> str:
        """As written in JSON: `clinic`, `vet-today`, `emergency`."""
        return self.name.lower().replace("_", "-")


@dataclass(frozen=True, slots=True)
class Sign:
    """One injury sign.

    Attributes:
        key: for example `skin-open`.
        tier: how urgent.
        name: what it is, a few words.
        source: a published source, or `common practice, no source`.
        said: how owners say it, two or three examples for the practitioner's review.
        do: two to four short lines: what to do now.
        settles: the one question that settles it, asked when only the wide net noticed it.
    """

    key: str
    tier: Tier
    name: str
    source: str
    said: tuple[str, ...]
    do: tuple[str, ...]
    settles: str


@dataclass(frozen=True, slots=True)
class Finding:
    """A sign noticed in a message.

    Attributes:
        sign: which one.
        quote: the owner's words, cut from the cleaned message.
        span: character offsets (start, end) of the quote in the cleaned message.
        net: `rules` or `wide`.
        why: which rule and cues fired, for a reviewer.
    """

    sign: Sign
    quote: str
    span: tuple[int, int]
    net: str
    why: str


@dataclass(frozen=True, slots=True)
class Alert:
    """What is said first when a sign was noticed.

    Attributes:
        tier: the highest found.
        sign: key of the sign shown, or `stop-and-call` when the rules could not be run.
        headline: one line: what this is and whom to call.
        quote: the owner's words that were noticed ("" for stop-and-call).
        do: what to do now, short lines in order.
        asks: the question that settles it, or "" when a rule was sure.
        also: keys of further signs noticed.
    """

    tier: Tier
    sign: str
    headline: str
    quote: str
    do: tuple[str, ...]
    asks: str = ""
    also: tuple[str, ...] = ()
