"""A conversation: each message is read in the light of the turn before it.

The application, the plain loop and batches with a `conversation` use this and nothing else.
"""

from __future__ import annotations

from datetime import date

from guidebot.domain.answer import Answer
from guidebot.domain.case import Case
from guidebot.domain.sign import Alert
from guidebot.reply.pipeline import Assistant, Before


class Dialogue:
    """One conversation about one dog.

    Attributes:
        case: the dog it is about; may be changed between turns.
        alert: the most urgent alert of the conversation so far, None if there was none.
    """

    def __init__(
        self, assistant: Assistant, case: Case | None = None, on: date | None = None
    ) -> None:
        self.case = case
        self.alert: Alert | None = None
        self._assistant = assistant
        self._on = on
        self._before = Before()

    def say(
        self, text: str | bytes, *, day: int | None = None, sleeve: str | None = None
    ) -> Answer:
        """The answer to the next message; arguments as for `Assistant.answer`."""
        turn = self._assistant.turn(
            text, self.case, self._on, day=day, sleeve=sleeve, before=self._before
        )
        self._before = turn.before
        alert = turn.answer.alert
        if alert is not None and (self.alert is None or alert.tier >= self.alert.tier):
            self.alert = alert
        return turn.answer
