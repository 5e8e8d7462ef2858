"""What a message says beside its question: the day, the sleeve, leave asked for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from guidebot.domain.answer import Verdict
from guidebot.domain.case import Case
from guidebot.domain.guide import Guide
from guidebot.errors import InputError
from guidebot.plan.ask import Ask, AskReader
from guidebot.plan.verdict import Decision, Moment, decide, moment
from guidebot.plan.when import When, read_when
from guidebot.search.leave import LeaveScores
from guidebot.search.passages import Situation
from guidebot.text import plain

LEAVE_NEEDS = 3
"""Needs a question of permission may belong to: as many as an answer may be unsure between."""
ASKED_FROM = -0.1
"""Score of the learnt scorer from which leave is asked for; set on held-out authors."""
MAY_ASK_FROM = -0.6
"""Below it the rules need not look: what they take for asking there is hardly ever meant so."""
DAY_WORDS = 6
"""Most words of a message that tells nothing but the fitting day."""
FOLLOW_UP_WORDS = 8
"""Most words of a follow-up that takes what it asks leave for from the turn before."""


@dataclass(frozen=True, slots=True)
class Given:
    """What is known beside the message.

    Attributes:
        case: the dog, None if unknown.
        on: date of the message.
        day: day number where no case says it.
        sleeve: key of the sleeve where no case says it.
    """

    case: Case | None
    on: date
    day: int | None = None
    sleeve: str | None = None


@dataclass(frozen=True, slots=True)
class Reading:
    """A message as it was read.

    Attributes:
        text: the words that are ranked: the message without its words of time.
        situation: what is known of the dog.
        when: the time it gives for this dog.
        ask: the question of permission or amount in it.
        verdict: the answer to that.
        asks_back: what the person should tell so that the answer fits.
        notes: remarks on how it was read.
        only_day: the message is nothing but the fitting day that was asked for.
    """

    text: str
    situation: Situation
    when: When | None = None
    ask: Ask | None = None
    verdict: Verdict | None = None
    asks_back: str | None = None
    notes: tuple[str, ...] = ()
    only_day: bool = False


class Reader:
    """Reads messages against one guide."""

    def __init__(self, guide: Guide, asks: AskReader | None = None) -> None:
        self._guide = guide
        self._asks = asks or AskReader(guide.activities)
        self._sleeves = [
            (f" {word} ", kind.key)
            for kind in guide.device.sleeves
            for word in sorted(kind.words, key=len, reverse=True)
            if " " in word
        ]

    def read(self, text: str, given: Given, *, asked_day: bool = False) -> Reading:
        """Day, sleeve and the words to be ranked; leave asked for is read by `judge_leave`.

        Args:
            text: the cleaned message.
            given: what is known beside it.
            asked_day: the turn before asked for the fitting day, so that a mere time is that.
        """
        when = read_when(text, given.on)
        only_day = False
        if asked_day and len(text.split()) <= DAY_WORDS:
            told = self._told_day(text, given.on)
            only_day, when = told is not None, told or when
        now = self._moment(given, when)
        stage = now.stage(self._guide.protocol)
        situation = Situation(
            sleeve=self._sleeve(text, given),
            parts=given.case.parts if given.case and given.case.id else None,
            stage=stage.key if stage else None,
            day=now.day,
        )
        ranked = text
        if when is not None:
            start, end = when.span
            ranked = f"{text[:start]} {text[end:]}"
            if not ranked.strip(" .,?!"):
                ranked = text
        return Reading(ranked, situation, when, notes=now.notes, only_day=only_day)

    def _told_day(self, text: str, on: date) -> When | None:
        """The fitting day told in answer to a question back: "5 days ago", "last Friday"."""
        for told in (f"she was fitted {text}", f"fitted on {text}", f"{text} since the fitting"):
            when = read_when(told, on)
            if when is not None:
                return replace(when, span=(0, len(text)), quote=text)
        return None

    def judge_leave(
        self,
        reading: Reading,
        text: str,
        given: Given,
        needs: Sequence[tuple[str, float]],
        leave: LeaveScores | None = None,
        again: Ask | None = None,
    ) -> Reading:
        """The reading with its verdict, if the message asks for permission or an amount.

        Args:
            reading: from `read`.
            text: the cleaned message.
            given: what is known beside it.
            needs: the needs the message was ranked to, with their scores, best first.
            leave: what it seems to ask leave for, None if the guide has no such questions.
            again: what the turn before asked leave for: a follow-up may change only the time
                ("and in month four?") or only the activity ("what about the sofa?").
        """
        first = [need for need, _ in needs[:LEAVE_NEEDS]]
        ask = None
        if reading.only_day and again is not None:
            leave, ask = None, replace(again, tomorrow=False)
        elif leave is None or leave.asks >= MAY_ASK_FROM:
            ask = self._asks.read(text, reading.when, first)
        if leave is not None and (ask is not None or leave.asks >= ASKED_FROM):
            ask = self._asks.learnt(text, reading.when, leave.asks, leave.fits(), dict(needs), ask)
        if ask is None and again is not None and len(text.split()) <= FOLLOW_UP_WORDS:
            ask = self._asks.read(f"is it ok, {text.rstrip('?!. ')}?", reading.when, first)
            if ask is not None and not (ask.quote or ask.amount or ask.step):
                ask = None  # only what the message names itself
            if ask is None and reading.when is not None:
                ask = replace(again, tomorrow=False)
        if ask is None:
            return reading
        decision = self._decide(ask, given, reading.when)
        return replace(
            reading,
            ask=ask,
            verdict=decision.verdict,
            asks_back=decision.asks_back,
            notes=decision.notes,
        )

    def _decide(self, ask: Ask, given: Given, when: When | None) -> Decision:
        guide, case = self._guide, given.case
        on = given.on if self._dated(given, when) else None
        try:
            return decide(guide.protocol, guide.activities, ask, case, on, given.day, when)
        except InputError as error:
            # Dates that cannot be, or a fitting still to come: say what holds without a date.
            undated = replace(case, fitted=None) if case is not None else None
            found = decide(guide.protocol, guide.activities, ask, undated)
            return replace(found, notes=(*found.notes, f"{error.what}."))

    def _dated(self, given: Given, when: When | None) -> bool:
        """Is the fitting day known as a date? A bare day number gives no calendar dates."""
        if given.case is not None and given.case.fitted is not None:
            return True
        return bool(given.case and given.case.restrictions)

    def _moment(self, given: Given, when: When | None) -> Moment:
        try:
            on = given.on if self._dated(given, when) else None
            return moment(given.case, on, given.day, when)
        except InputError:
            # A date before the fitting day: the answer itself does not depend on it.
            return moment(None, None, None, when)

    def _sleeve(self, text: str, given: Given) -> str | None:
        folded = f" {' '.join(plain(text).split())} "
        for words, key in self._sleeves:
            if words in folded:
                return key
        if given.case is not None and given.case.sleeve is not None:
            return given.case.sleeve
        return given.sleeve
