"""Dogs, plans, the chart and the log behind one small door, so that late changes hurt once.

Everything heavy is imported when it is first used. A store that cannot be opened never stops the
talk: the desk then works in memory and `trouble` says so.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, time
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING, Any

from guidebot.domain.answer import Answer, Outcome
from guidebot.domain.case import Case, DiaryEntry
from guidebot.domain.guide import Guide
from guidebot.domain.sign import Alert
from guidebot.errors import GuidebotError, InputError
from guidebot.text import clean

if TYPE_CHECKING:
    from guidebot.cases.store import Store

CHART_WORDS = 58
"""Columns the words of a chart's line take beside its bar."""
DUE_DAYS = 7
"""A date this many days ahead is called due."""
BUSY_MS = 3000
"""How long to wait for another writer of the store, in milliseconds."""


@dataclass(frozen=True, slots=True)
class Day:
    """One day of one dog, in words.

    Attributes:
        title: dog, day number and stage.
        why: why the hours are not those of the plain ramp, () if they are.
        flagged: a setback or a restriction changes the plan.
        hours: the hours allowed, in words.
        sessions: the timetable, one line each.
        walk: walks, in words, "" if none are known.
        next: dates to come, one line each.
        due: those of the dates that are near.
        stages: what holds at each stage, for a dog without a fitting day.
    """

    title: str
    why: tuple[str, ...] = ()
    flagged: bool = False
    hours: str = ""
    sessions: tuple[str, ...] = ()
    walk: str = ""
    next: tuple[str, ...] = ()
    due: tuple[str, ...] = ()
    stages: str = ""


class Desk:
    """Dogs and their days.

    What is shown comes from memory and is quick; `open`, `refresh`, `add`, `log` and `note` touch
    the store and belong into a worker. None of them raises: without a store the desk works in
    memory for this sitting, and `trouble` says so.

    Args:
        path: the file of the store; None takes the one in the data folder.
    """

    def __init__(self, path: Path | None = None) -> None:
        self.trouble = ""
        self._path = path
        self._store: Store | None = None
        self._cases: dict[str, Case] = {}
        self._asked: list[str] = []

    def open(self) -> None:
        """Open the store and read what it holds."""
        from guidebot.cases.store import open_store

        try:
            self._store = open_store(self._path, busy_ms=BUSY_MS)
        except GuidebotError as error:
            self._fail(error)
        self.refresh()

    def close(self) -> None:
        """Let go of the store."""
        if self._store is not None:
            self._store.close()

    def refresh(self) -> None:
        """Read dogs and unanswered questions anew."""
        if self._store is None:
            return
        try:
            self._cases = {case.id: case for case in self._store.cases()}
            self._asked = [
                str(row["text"])
                for row in self._store.questions()
                if row["outcome"] == Outcome.NOT_IN_GUIDE.value
            ]
        except GuidebotError as error:
            self._fail(error)

    def cases(self) -> list[Case]:
        """Every dog, by name."""
        return sorted(self._cases.values(), key=lambda case: (case.dog.lower(), case.id))

    def find(self, key: str) -> Case | None:
        """The dog of this id, or of this name if only one has it."""
        if key in self._cases:
            return self._cases[key]
        named = [case for case in self.cases() if case.dog.casefold() == key.strip().casefold()]
        return named[0] if len(named) == 1 else None

    def add(self, case: Case) -> Case:
        """Keep a new dog; gives it with the id it got."""
        if self._store is not None:
            try:
                case = self._store.add(case)
            except GuidebotError as error:
                self._fail(error)
        self._cases[case.id] = case
        return case

    def with_entry(self, case: Case, entry: DiaryEntry) -> Case:
        """The dog with a diary entry, in memory only: the plan can be counted at once."""
        case = replace(case, diary=(*case.diary, entry))
        self._cases[case.id] = case
        return case

    def log(self, case: Case, entry: DiaryEntry) -> Case:
        """Write an entry that `with_entry` added; gives the dog as the store has it."""
        if self._store is not None:
            try:
                case = self._store.note(case.id, entry)
            except GuidebotError as error:
                self._fail(error)
        self._cases[case.id] = case
        return case

    def note(self, text: str, answer: Answer, case: Case | None, on: date) -> None:
        """Keep a question, if questions are kept."""
        kept = clean(text).text
        if answer.outcome is Outcome.NOT_IN_GUIDE and answer.alert is None:
            self._asked.append(kept)
        if self._store is None:
            return
        from guidebot.cases.asked import keep

        try:
            keep(self._store, on, replace(answer, text=kept), case.id if case else None)
        except GuidebotError as error:
            self._fail(error)

    def unanswered(self) -> list[str]:
        """Questions the guide did not answer, newest first."""
        return self._asked[::-1]

    def _fail(self, error: GuidebotError) -> None:
        self.trouble = f"{error}. What you write now is kept for this sitting only."

    def day(self, guide: Guide, case: Case, on: date, now: time | None = None) -> Day:
        """What this dog may do on this day.

        Args:
            guide: its protocol counts the day.
            case: the dog.
            on: the day.
            now: the time of day, to say which spells of wear are over; None says nothing of it.
        """
        from guidebot.plan.days import next_dates
        from guidebot.plan.plan import make_plan
        from guidebot.plan.said import capital, said_date, said_hours, said_minutes

        if case.fitted is None:
            stages = "\n".join(f"- {s.name}: {s.says}" for s in guide.protocol.stages)
            return Day(f"{case.dog}: the fitting day is not known", walk="", stages=stages)
        try:
            plan = make_plan(guide.protocol, case, on)
        except InputError as error:
            coming = tuple(
                f"{said_date(n.on)}: {capital(n.what)}"
                for n in next_dates(guide.protocol, case, on)
            )
            return Day(case.dog, why=(str(error),), flagged=True, next=coming)
        worn = plan.wear.worn
        left = max(plan.allowed - (worn or 0), Fraction(0))
        hours = f"{said_hours(plan.allowed)} at most today" if plan.allowed else "none today"
        if worn is not None:
            hours += f"; {said_hours(worn)} noted, {said_hours(left) if left else 'nothing'} left"
        walk = plan.walk
        # After a setback today, or with the hours used up, a timetable would only mislead.
        spells = plan.sessions if left and plan.wear.flag is None else ()
        return Day(
            title=f"{case.dog}: day {plan.day}, {plan.stage.name} stage",
            why=plan.why(),
            flagged=bool(plan.reasons),
            hours=hours,
            sessions=tuple(
                f"{s.on:%H:%M} to {s.off:%H:%M} ({said_minutes(s.minutes)})"
                f"{', over' if now and s.off <= now else ''}"
                for s in spells
            ),
            walk=f"{walk.times} a day, about {said_minutes(walk.minutes)} each"
            if walk.times
            else "none planned",
            next=tuple(f"{said_date(n.on)}: {capital(n.what)}" for n in plan.next),
            due=tuple(
                f"{said_date(n.on)}: {n.what}" for n in plan.next if (n.on - on).days <= DUE_DAYS
            ),
        )

    def chart(self, guide: Guide, case: Case, on: date, width: int, *, unicode: bool = True) -> str:
        """The ramp as text, "" without a fitting day or where it cannot be drawn.

        Args:
            guide: its protocol counts the days.
            case: the dog.
            on: the last day drawn.
            width: columns there are.
            unicode: block signs; False keeps to ASCII.
        """
        from guidebot.plan.wear import ramp
        from guidebot.render.ramp import as_text

        if case.fitted is None or on < case.fitted:
            return ""
        try:
            days = ramp(guide.protocol, case, on)
        except InputError:
            return ""
        return as_text(days, unicode=unicode, width=max(6, min(30, width - CHART_WORDS)))

    def today_lines(self, guide: Guide, on: date) -> list[tuple[str, str]]:
        """(id, line) of every dog, those with a flag first."""
        days = [(case.id, self.day(guide, case, on)) for case in self.cases()]
        days.sort(key=lambda pair: not pair[1].flagged)
        return [
            (
                key,
                f"{'FLAG ' if day.flagged else ''}{day.title}"
                f"{f', {day.hours}' if day.hours else ''}"
                f"{f'. Due {day.due[0]}' if day.due else ''}"
                f"{f'. {day.why[0]}' if day.why else ''}",
            )
            for key, day in days
        ]

    def judge(self, assistant: Any, text: str) -> Alert | None:
        """Signs of injury in a diary note: the same judgement as for a message."""
        from guidebot.safety.signs import STOP_AND_CALL

        try:
            alert: Alert | None = assistant.judge(clean(text)).alert
        except Exception:
            return STOP_AND_CALL
        return alert

    def mail(self, text: str, answer: Answer, guide: Guide, case: Case | None) -> str:
        """An answer as a mail to the owner."""
        from guidebot.render.text import render

        hello = f"Hello, this is about {case.dog}." if case else "Hello,"
        quoted = "\n".join(f"> {line}" for line in clean(text).text.splitlines())
        return "\n\n".join(
            [hello, render(answer, owner=True), "\n".join(guide.clinic.signature), quoted]
        )

    def folder(self) -> Path:
        """Where mails are saved when no clipboard is sure."""
        from guidebot.cases.home import data_home

        return data_home() / "mails"
