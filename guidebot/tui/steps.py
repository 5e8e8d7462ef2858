"""Putting on, taking off and the fit check as walks through the guide; no textual in here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from guidebot.domain.case import Case, DiaryEntry
from guidebot.domain.guide import Guide, HandsOnStep
from guidebot.domain.passage import Passage
from guidebot.domain.sign import Alert
from guidebot.tui.forms import signs_in
from guidebot.tui.session import Session


def steps_for(
    steps: Sequence[HandsOnStep], sleeve: str | None, parts: frozenset[str] | None
) -> list[HandsOnStep]:
    """The steps for this device.

    Args:
        steps: all authored steps, in order.
        sleeve: key of the sleeve; None leaves only the steps for every sleeve.
        parts: optional parts the device has; None if not known, then their steps stay in.
    """
    return [
        step
        for step in steps
        if (step.sleeve is None or step.sleeve == sleeve)
        and (step.part is None or parts is None or step.part in parts)
    ]


def only_if(step: HandsOnStep, guide: Guide, parts: frozenset[str] | None) -> str:
    """For whom a step is, when it is not known whether the device has the part; else ""."""
    if step.part is None or parts is not None:
        return ""
    name = next((part.name for part in guide.device.parts if part.key == step.part), step.part)
    return f"Only if your device has this part: {name}. Otherwise go on."


def passage_for(guide: Guide, need: str, case: Case | None) -> Passage | None:
    """The passage that answers a need for this device; one for every device first if unknown."""
    sleeve = case.sleeve if case else None
    found = [passage for passage in guide.passages.values() if need in passage.answers]

    def rank(passage: Passage) -> tuple[bool, bool, bool, int, str]:
        applies = passage.applies
        return (
            applies.sleeve is not None and applies.sleeve != sleeve,
            applies.part is not None and (case is None or applies.part not in case.parts),
            bool(applies.stages or applies.days),
            passage.answers.index(need),
            passage.id,
        )

    return min(found, key=rank, default=None)


def alert_of(sign: str) -> Alert:
    """The alert for a sign that a choice names; for an unknown one the fixed stop-and-call."""
    from guidebot.safety.signs import BY_KEY, HEADLINE, STOP_AND_CALL

    found = BY_KEY.get(sign)
    if found is None:
        return STOP_AND_CALL
    return Alert(found.tier, found.key, f"{HEADLINE[found.tier]}: {found.name}", "", found.do)


def sign_name(key: str) -> str:
    """What a sign is, in a few words; its key if it is not known."""
    from guidebot.safety.signs import BY_KEY

    return BY_KEY[key].name if key in BY_KEY else key


def alerts_in(session: Session, entry: DiaryEntry) -> list[Alert]:
    """What a diary entry reports: by its choices, and by its note, judged like a message."""
    found = [alert_of(sign) for sign in signs_in(entry)]
    if entry.note and (alert := session.desk.judge(session.assistant, entry.note)):
        found.append(alert)
    return found


@dataclass(slots=True)
class FitCheck:
    """Where somebody is in the fit check.

    Attributes:
        at: index of the step asked now.
        trail: indexes of the steps before, for going back.
        passage: what the last choice led to, shown before going on.
        pictures: the passage says which pictures to send.
        alert: the choice reported an injury sign: the check ends.
        done: the last question was answered.
    """

    guide: Guide
    case: Case | None = None
    at: int = 0
    trail: list[int] = field(default_factory=list)
    passage: Passage | None = None
    pictures: bool = False
    alert: Alert | None = None
    done: bool = False

    @property
    def ended(self) -> bool:
        """No further question is asked."""
        return self.done or self.alert is not None

    def choose(self, number: int) -> bool:
        """Take the option with this number (from 1); False if there is none."""
        options = self.guide.fit_check[self.at].options
        if self.ended or self.passage or not 1 <= number <= len(options):
            return False
        kind, _, name = options[number - 1][1].partition(":")
        if kind == "alert":
            self.alert = alert_of(name)
        elif kind in ("need", "pictures"):
            self.passage = passage_for(self.guide, name, self.case)
            self.pictures = kind == "pictures"
            if self.passage is None:
                self.go_on()
        elif kind == "step":
            self._to(
                next(
                    (i for i, step in enumerate(self.guide.fit_check) if step.key == name),
                    self.at + 1,
                )
            )
        else:
            self.go_on()
        return True

    def go_on(self) -> None:
        """From a passage, or a plain answer, to the next question."""
        self.passage = None
        self.pictures = False
        if not self.ended:
            self._to(self.at + 1)

    def back(self) -> None:
        """To the question before; out of a passage to its question."""
        if self.passage or self.ended:
            self.passage, self.alert, self.pictures = None, None, False
            if self.done:
                self.done = False
            return
        if self.trail:
            self.at = self.trail.pop()

    def _to(self, at: int) -> None:
        if at >= len(self.guide.fit_check):
            self.done = True
            return
        self.trail.append(self.at)
        self.at = at
