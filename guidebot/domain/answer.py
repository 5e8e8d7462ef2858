"""What goes out: one answer, whatever face shows it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from guidebot.domain.activity import Say
from guidebot.domain.sign import Alert


class Outcome(StrEnum):
    """How the search ended."""

    ANSWERED = "answered"
    UNSURE = "unsure"
    NOT_IN_GUIDE = "not-in-guide"
    COURTESY = "courtesy"


@dataclass(frozen=True, slots=True)
class Stamp:
    """Version and hash of the guide or of the rules, printed in every answer."""

    version: str
    hash: str


@dataclass(frozen=True, slots=True)
class Verdict:
    """A computed yes or no.

    Attributes:
        say: the verdict.
        text: the sentences shown: verdict, reason, date of change, how to do it safely now.
        day: day number (fitting day = 1), None if not known.
        stage: key of the stage, None if not known.
        activity: key in `activities.yaml`, or `wear`, `walk`.
        changes_on: the date on which the verdict changes, None if it does not or is not known.
        cites: `file:line` of each line of the guide the text was filled from.
    """

    say: Say
    text: str
    day: int | None
    stage: str | None
    activity: str = ""
    changes_on: date | None = None
    cites: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Cited:
    """A passage in an answer: verbatim guide text with where it comes from.

    Attributes:
        id, title, needs: the passage and the needs it answers.
        quote: its short answer, verbatim.
        body: its full text, verbatim.
        score: rank score, comparable inside one answer only.
        path: file below the content folder.
    """

    id: str
    title: str
    needs: tuple[str, ...]
    quote: str
    body: str
    score: float
    path: str


@dataclass(frozen=True, slots=True)
class Answer:
    """One answer. Every sentence is guide text with its citation or a filled fixed template.

    Attributes:
        read_as: how a follow-up was read in the light of the turn before, None if as typed.
        alert: shown first in every format.
        verdict: for questions of permission or amount.
        lead: the sentence that answers, "" if none.
        passages: best first.
        choices: for `unsure`, ids of passages to pick from (at most three).
        asks_back: what the person should tell so that the answer fits, or None.
        caution: the standing caution, never empty.
        need: the need the question was read as, None if none.
        text: the message that is answered, cleaned.
        notes: remarks on how the question was read ("Searched for ...", day in text against case).
    """

    outcome: Outcome
    lead: str
    passages: tuple[Cited, ...]
    caution: str
    guide: Stamp
    rules: Stamp
    alert: Alert | None = None
    verdict: Verdict | None = None
    read_as: str | None = None
    asks_back: str | None = None
    choices: tuple[str, ...] = ()
    need: str | None = None
    notes: tuple[str, ...] = ()
    text: str = ""
