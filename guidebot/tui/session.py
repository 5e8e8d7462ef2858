"""What one sitting holds: the guide, the talk so far, the dog, the alerts not yet read.

No textual in here: the plain loop and the application share it.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, datetime
from pathlib import Path
from typing import Protocol

from guidebot.domain.answer import Answer
from guidebot.domain.case import Case
from guidebot.domain.guide import Guide
from guidebot.domain.sign import Alert, Tier
from guidebot.errors import ExitCode
from guidebot.tui.desk import Desk

NOT_NOW = (
    "The steps for putting it on come back when the veterinarian has seen your dog. "
    "Was it not about your dog today? Then {how}."
)
"""Said in place of the steps while `Session.bars_wear`; `how` is how a new talk is begun here."""
KEPT_TURNS = 50
"""Turns a sitting remembers for looking back."""


class Talker(Protocol):
    """What a face needs of `guidebot.reply.dialogue.Dialogue`."""

    case: Case | None

    def say(self, text: str) -> Answer:
        """Answer the next message of the talk."""


class Assistant(Protocol):
    """What a face needs of `guidebot.reply.pipeline.Assistant`."""

    @property
    def guide(self) -> Guide:
        """The guide it answers from."""


Opener = Callable[[Path | None, Callable[[str], None]], Assistant]
"""Opens a guide; may raise ContentError."""

Starter = Callable[[Assistant, Case | None], Talker]
"""Starts a talk."""


@dataclass(slots=True)
class Turn:
    """A question and its answer; `answer` is None while it is looked for, or if that failed."""

    text: str
    case: Case | None = None
    answer: Answer | None = None
    failed: bool = False


@dataclass(slots=True)
class Session:
    """The state all screens show.

    Attributes:
        content: folder of the guide, None for the one that comes along.
        desk: dogs, plans and the log.
        now: the clock, as a function so that tests can set it.
        opening: what is being done while the guide opens, "" when that is over.
        broken: why the guide could not be opened, "" if it could.
        code: exit code of the process.
        waiting: questions asked and not yet answered, oldest first.
        turns: questions and answers, oldest first.
        at: index in `turns` of the one shown, -1 before the first.
        pending: alerts not yet acknowledged, most urgent first.
        seen: the most urgent alert that was acknowledged; stays in mind for the talk.
        news: one line about what was just done, "" if there is none.
    """

    content: Path | None
    desk: Desk
    now: Callable[[], datetime] = datetime.now
    assistant: Assistant | None = None
    talker: Talker | None = None
    case: Case | None = None
    opening: str = "starting"
    broken: str = ""
    code: ExitCode = ExitCode.OK
    waiting: deque[Turn] = field(default_factory=deque)
    turns: list[Turn] = field(default_factory=list)
    at: int = -1
    pending: list[Alert] = field(default_factory=list)
    seen: Alert | None = None
    news: str = ""

    def today(self) -> date:
        """The day it is."""
        return self.now().date()

    @property
    def guide(self) -> Guide | None:
        """The guide, None until it is open."""
        return self.assistant.guide if self.assistant else None

    @property
    def shown(self) -> Turn | None:
        """The turn on the screen."""
        return self.turns[self.at] if 0 <= self.at < len(self.turns) else None

    def add(self, turn: Turn) -> None:
        """Keep an answered turn and show it."""
        self.news = ""
        self.turns.append(turn)
        del self.turns[:-KEPT_TURNS]
        self.at = len(self.turns) - 1
        if turn.answer and turn.answer.alert:
            self.warn(turn.answer.alert)

    def look_back(self, by: int) -> None:
        """Show an earlier (-1) or a later (+1) turn."""
        if self.turns:
            self.at = max(0, min(len(self.turns) - 1, self.at + by))

    def warn(self, alert: Alert) -> None:
        """Put an alert before everything until it is acknowledged."""
        others = [kept for kept in self.pending if kept.sign != alert.sign]
        # sorted is stable: of two equally urgent alerts the new one stands first.
        self.pending = sorted([alert, *others], key=lambda a: -a.tier)

    @property
    def told(self) -> str:
        """What the alert of this talk told to do first, read or not; "" if there was none.

        The hands-on steps and the day's hours must not read as if it had never been said.
        """
        alert = self.gravest
        return f"Stop. {alert.headline}. {' '.join(alert.do)}" if alert else ""

    @property
    def gravest(self) -> Alert | None:
        """The most urgent alert of this talk, read or not; None if there was none."""
        told = [*self.pending[:1], *([self.seen] if self.seen else [])]
        return max(told, key=lambda alert: alert.tier, default=None)

    @property
    def bars_wear(self) -> bool:
        """An alert of this talk needs a veterinarian before the device goes on again."""
        alert = self.gravest
        return alert is not None and alert.tier >= Tier.VET_TODAY

    def acknowledge(self) -> None:
        """The person has read the alert on top."""
        if self.pending:
            read = self.pending.pop(0)
            if self.seen is None or read.tier >= self.seen.tier:
                self.seen = read  # a milder one does not take the place of an emergency

    def forget(self) -> None:
        """A new talk: nothing said before counts any more; unread alerts stay."""
        self.turns.clear()
        self.at = -1
        self.seen = None
        self.talker = None


def open_guide(content: Path | None, say: Callable[[str], None]) -> Assistant:
    """The real opener."""
    from guidebot.reply.pipeline import Assistant as Real

    return Real.open(content, say=say)


def answer_next(session: Session, start: Starter) -> Turn | None:
    """Answer the oldest waiting question; never raises.

    A failure ends in a turn marked `failed` and the fixed stop-and-call alert, never in silence.

    Args:
        session: its `waiting` is popped, its `talker` is started if there is none.
        start: starts a talk.

    Returns:
        The turn, None if nothing waits or the guide is still being opened.
    """
    if session.assistant is None and not session.broken:
        return None
    try:
        turn = session.waiting.popleft()
    except IndexError:
        return None
    try:
        if session.assistant is None:
            turn.failed = True
            return turn
        talker = session.talker
        if talker is None:
            talker = session.talker = start(session.assistant, turn.case)
        talker.case = turn.case
        turn.answer = talker.say(turn.text)
    except Exception:
        turn.failed = True
    if turn.answer is not None:
        session.desk.note(turn.text, turn.answer, turn.case, session.today())
    return turn


def start_talk(assistant: Assistant, case: Case | None) -> Talker:
    """The real starter."""
    from guidebot.reply.dialogue import Dialogue
    from guidebot.reply.pipeline import Assistant as Real

    if not isinstance(assistant, Real):
        raise TypeError("a talk needs the assistant it was opened with")
    talker: Talker = Dialogue(assistant, case=case)
    return talker
