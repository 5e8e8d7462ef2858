"""Things asked step by step, in lines: what is asked now, and whether a line answers it."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Protocol

from guidebot.domain.case import Case
from guidebot.domain.guide import Guide
from guidebot.domain.sign import Alert
from guidebot.errors import InputError
from guidebot.tui.field import Field
from guidebot.tui.steps import FitCheck, only_if, steps_for

NEXT = ("", "next", "done", "ok", "n")
BACK = ("back", "b")
LEAVE = ("stop", "leave")


class Walk(Protocol):
    """What the plain loop needs of each of them."""

    @property
    def alert(self) -> Alert | None:
        """A reply reported an injury sign: the walk ends."""

    @property
    def left(self) -> bool:
        """The person left."""

    @property
    def over(self) -> bool:
        """Nothing more is asked."""

    def ask(self) -> list[str]:
        """What is asked now."""

    def takes(self, line: str) -> bool:
        """Is the line a reply to it?"""

    def take(self, line: str) -> list[str]:
        """Take a reply; gives what is to be said before the next question."""


@dataclass(slots=True)
class StepWalk:
    """Putting on or taking off."""

    guide: Guide
    what: str
    case: Case | None
    at: int = 0
    sleeve: str | None = None
    alert: Alert | None = None
    left: bool = False

    def __post_init__(self) -> None:
        """The sleeve of the dog, if it is known."""
        self.sleeve = self.case.sleeve if self.case else None

    @property
    def _parts(self) -> frozenset[str] | None:
        return self.case.parts if self.case else None

    @property
    def _asks_sleeve(self) -> bool:
        steps = self.guide.putting_on if self.what == "putting_on" else self.guide.taking_off
        return self.sleeve is None and any(step.sleeve for step in steps)

    @property
    def over(self) -> bool:
        """All steps are done."""
        return not self._asks_sleeve and self.at >= len(self._steps())

    def _steps(self) -> list[Any]:
        steps = self.guide.putting_on if self.what == "putting_on" else self.guide.taking_off
        return steps_for(steps, self.sleeve, self._parts)

    def ask(self) -> list[str]:
        """The step, its check and the keys."""
        if self._asks_sleeve:
            sleeves = self.guide.device.sleeves
            return [
                "Which sleeve does the device have? Write the number.",
                *(f"{n}. {sleeve.name}" for n, sleeve in enumerate(sleeves, start=1)),
            ]
        steps = self._steps()
        step = steps[self.at]
        out = [f"Step {self.at + 1} of {len(steps)}: {step.title}"]
        if only := only_if(step, self.guide, self._parts):
            out.append(only)
        out.append(f"Do: {step.do}")
        if step.check:
            out.append(f"Check: {step.check}")
        return [*out, "Enter: done, next step. back: the step before. stop: leave."]

    def takes(self, line: str) -> bool:
        """Enter, back, stop, or the number of a sleeve."""
        low = line.casefold()
        return low in (*NEXT, *BACK, *LEAVE) or (self._asks_sleeve and low.isdecimal())

    def take(self, line: str) -> list[str]:
        """Go on, back, or out."""
        low = line.casefold()
        if low in LEAVE:
            self.left = True
            return ["Left."]
        if self._asks_sleeve:
            sleeves = self.guide.device.sleeves
            if low.isdecimal() and 1 <= int(low[:3]) <= len(sleeves):
                self.sleeve = sleeves[int(low[:3]) - 1].key
            return []
        self.at = max(0, self.at - 1) if low in BACK else self.at + 1
        return ["All steps are done. :fit checks the fit."] if self.over else []


@dataclass(slots=True)
class FitWalk:
    """The fit check."""

    guide: Guide
    case: Case | None
    left: bool = False
    check: FitCheck = field(init=False)

    def __post_init__(self) -> None:
        """Begin."""
        self.check = FitCheck(self.guide, self.case)

    @property
    def alert(self) -> Alert | None:
        """The injury sign a choice reported."""
        return self.check.alert

    @property
    def over(self) -> bool:
        """Done."""
        return self.check.ended

    def ask(self) -> list[str]:
        """The question, or the passage a choice led to."""
        check = self.check
        if check.passage:
            clinic = self.guide.clinic
            send = f"Send these pictures to {clinic.name}: {clinic.email}"
            return [
                *([send] if check.pictures else []),
                f"Answer: {check.passage.short}",
                check.passage.body,
                f"Source: {check.passage.title} [{check.passage.id}]",
                "Enter: go on with the check. back: the question before. stop: leave.",
            ]
        step = self.guide.fit_check[check.at]
        return [
            f"Question {check.at + 1} of {len(self.guide.fit_check)}: {step.ask}",
            *(f"{n}. {label}" for n, (label, _) in enumerate(step.options, start=1)),
            "Write the number. back: the question before. stop: leave.",
        ]

    def takes(self, line: str) -> bool:
        """A number, Enter, back or stop."""
        low = line.casefold()
        return low in (*NEXT, *BACK, *LEAVE) or low.isdecimal()

    def take(self, line: str) -> list[str]:
        """Choose, go on, back, or out."""
        low = line.casefold()
        if low in LEAVE:
            self.left = True
            return ["Left."]
        if low in BACK:
            self.check.back()
        elif self.check.passage:
            self.check.go_on()
        elif low.isdecimal():
            self.check.choose(int(low[:3]))
        return ["The check is done."] if self.check.done else []


@dataclass(slots=True)
class FormWalk:
    """The questions for a new dog or a diary entry."""

    fields: list[Field]
    at: int = 0
    replies: dict[str, Any] = field(default_factory=dict)
    alert: Alert | None = None
    left: bool = False

    @property
    def over(self) -> bool:
        """Every question was answered or left out."""
        return self.at >= len(self.fields)

    def ask(self) -> list[str]:
        """The question with its choices."""
        asked = self.fields[self.at]
        out = [
            f"{asked.ask} ({self.at + 1} of {len(self.fields)})",
            *(f"{n}. {label}" for n, (_, label) in enumerate(asked.options, start=1)),
        ]
        skip = "" if asked.needed else " Enter alone leaves it out."
        how = f"Write the number.{skip}" if asked.options else asked.hint
        return [*out, f"{how} back: the question before. stop: leave."]

    def takes(self, line: str) -> bool:
        """Anything that can be read as a reply to the question asked."""
        low = line.casefold()
        if low in (*BACK, *LEAVE, ""):
            return True
        asked = self.fields[self.at]
        if asked.options:
            return low.isdecimal()
        try:
            asked.read(line)
        except InputError:
            # A few words are a slip of the pen and are told so; more may be a message.
            return len(line.split()) < 3
        return True

    def take(self, line: str) -> list[str]:
        """Keep the reply and go on."""
        low, asked = line.casefold(), self.fields[self.at]
        if low in LEAVE:
            self.left = True
            return ["Left. Nothing was kept."]
        if low in BACK:
            self.at = max(0, self.at - 1)
            return []
        value: Any = None
        if asked.options and line:
            number = int(line[:3]) if line.isdecimal() else 0
            if not 1 <= number <= len(asked.options):
                return ["That is none of the numbers."]
            value = asked.options[number - 1][0]
        elif line:
            try:
                value = asked.read(line)
            except InputError as error:
                return [str(error)]
        if value is None and asked.needed:
            return ["This one is needed."]
        self.replies[asked.key] = value
        self.at += 1
        return []
