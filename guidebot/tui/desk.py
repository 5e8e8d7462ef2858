"""Dogs, plans, the chart and the log behind one small door, so that late changes hurt once.

Everything heavy is imported when it is first used. A store that cannot be opened never stops the
talk: the desk then works in memory and `trouble` says so.
"""

from __future__ import annotations

import os
from dataclasses import dataclass, replace
from datetime import date, time
from fractions import Fraction
from pathlib import Path
from typing import Any

from guidebot.domain.answer import Answer, Outcome
from guidebot.domain.case import Case, DiaryEntry
from guidebot.domain.guide import Guide
from guidebot.domain.sign import Alert
from guidebot.errors import InputError
from guidebot.text import clean


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
        stages: what holds at each stage, for a dog without a fitting day.
    """

    title: str
    why: tuple[str, ...] = ()
    flagged: bool = False
    hours: str = ""
    sessions: tuple[str, ...] = ()
    walk: str = ""
    next: tuple[str, ...] = ()
    stages: str = ""


class Desk:
    """Dogs and their days. Methods may be called from a worker; none of them raises StoreError."""

    def __init__(self) -> None:
        self.trouble = ""
        self._store: Any = None
        self._kept: dict[str, Case] = {}
        self._unanswered: list[str] = []

    def open(self) -> None:
        """Open the store; on failure work in memory."""

    def cases(self) -> list[Case]:
        """Every dog, by name."""
        return sorted(self._kept.values(), key=lambda case: (case.dog.lower(), case.id))

    def find(self, key: str) -> Case | None:
        """The dog of this id."""
        return next((case for case in self.cases() if case.id == key), None)

    def add(self, case: Case) -> Case:
        """Keep a new dog."""
        self._kept[case.id] = case
        return case

    def log(self, case: Case, entry: DiaryEntry) -> Case:
        """Add a diary entry and give the dog as it is now."""
        case = replace(case, diary=(*case.diary, entry))
        self._kept[case.id] = case
        return case

    def note(self, text: str, answer: Answer, case: Case | None) -> None:
        """Remember a question for the list of what the guide did not answer."""
        if answer.outcome is Outcome.NOT_IN_GUIDE:
            self._unanswered.append(text)

    def unanswered(self) -> list[str]:
        """Questions the guide did not answer, newest first."""
        return self._unanswered[::-1]

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
        from guidebot.plan.said import said_hours

        if case.fitted is None:
            stages = "\n".join(f"- {s.name}: {s.says}" for s in guide.protocol.stages)
            return Day(f"{case.dog}: the fitting day is not known", walk="", stages=stages)
        try:
            plan = make_plan(guide.protocol, case, on)
        except InputError as error:
            coming = tuple(
                f"{n.on.isoformat()}: {n.what}" for n in next_dates(guide.protocol, case, on)
            )
            return Day(case.dog, why=(str(error),), flagged=True, next=coming)
        worn = plan.wear.worn
        left = max(plan.allowed - (worn or 0), Fraction(0))
        hours = f"{said_hours(plan.allowed)} at most today"
        if worn is not None:
            hours += f"; {said_hours(worn)} noted, {said_hours(left)} left"
        walk = plan.walk
        return Day(
            title=f"{case.dog}: day {plan.day}, {plan.stage.name}",
            why=plan.why(),
            flagged=bool(plan.reasons),
            hours=hours,
            sessions=tuple(
                f"{'over  ' if now and s.off <= now else ''}{s.on:%H:%M} to {s.off:%H:%M} "
                f"({s.minutes} minutes)"
                for s in plan.sessions
            ),
            walk=f"{walk.times} of {walk.minutes} minutes, on the leash" if walk.times else "none",
            next=tuple(f"{n.on.isoformat()}: {n.what}" for n in plan.next),
        )

    def chart(self, guide: Guide, case: Case, on: date, width: int) -> str:
        """The ramp as text, "" without a fitting day or where it cannot be drawn."""
        if case.fitted is None or on < case.fitted:
            return ""
        return ""

    def today_lines(self, guide: Guide, on: date) -> list[tuple[str, str]]:
        """(id, line) of every dog, those with a flag first."""
        days = [(case.id, self.day(guide, case, on)) for case in self.cases()]
        days.sort(key=lambda pair: not pair[1].flagged)
        return [
            (
                key,
                f"{'FLAG ' if day.flagged else ''}{day.title}"
                f"{f', {day.hours}' if day.hours else ''}",
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
        return "\n\n".join([hello, render(answer), "\n".join(guide.clinic.signature), quoted])

    def folder(self) -> Path:
        """Where mails are saved when no clipboard is sure."""
        home = os.environ.get("GUIDEBOT_HOME")
        return (Path(home) if home else Path.home() / ".local" / "share" / "guidebot") / "mails"
