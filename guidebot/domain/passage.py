"""An authored text and the needs it answers."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date


@dataclass(frozen=True, slots=True)
class Need:
    """An information need: one thing an owner needs to know.

    Attributes:
        key: `topic.name`.
        asks: what is asked, in a few words.
    """

    key: str
    asks: str

    @property
    def topic(self) -> str:
        """The part before the dot."""
        return self.key.partition(".")[0]


@dataclass(frozen=True, slots=True)
class Applies:
    """For which device and when a passage holds; empty means always.

    Attributes:
        sleeve: a key of the device's sleeves.
        part: a key of an optional part that the device must have.
        stages: keys of stages.
        days: first and last day number, inclusive; None in second place means open.
    """

    sleeve: str | None = None
    part: str | None = None
    stages: tuple[str, ...] = ()
    days: tuple[int, int | None] | None = None


@dataclass(frozen=True, slots=True)
class Reviewed:
    """Who looked at the passage last, by role, and when."""

    on: date
    role: str


@dataclass(frozen=True, slots=True)
class Passage:
    """One authored text; numbers are already filled in from the protocol.

    Attributes:
        id: file name without ending.
        topic: folder name.
        answers: 1 to 3 need keys, each answered fully.
        short: the one or two sentences that answer it.
        body: the text in CommonMark.
        see: ids of related passages.
        path: file below the content folder.
    """

    id: str
    topic: str
    title: str
    answers: tuple[str, ...]
    short: str
    body: str
    basis: str
    reviewed: Reviewed
    applies: Applies = field(default_factory=Applies)
    see: tuple[str, ...] = ()
    path: str = ""
