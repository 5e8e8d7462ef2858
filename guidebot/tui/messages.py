"""What the workers tell the application; posting a message is safe from any thread."""

from __future__ import annotations

from textual.message import Message

from guidebot.tui.session import Turn


class Opening(Message):
    """The guide is being opened; `step` says what is being done, in the guide's own words."""

    def __init__(self, step: str) -> None:
        self.step = step
        super().__init__()


class Opened(Message):
    """The guide is open, or it could not be opened (`session.broken` says why)."""


class Answered(Message):
    """A question has its answer."""

    def __init__(self, turn: Turn) -> None:
        self.turn = turn
        super().__init__()


class Told(Message):
    """Something a worker has to say in one line, for example where a mail was saved."""

    def __init__(self, text: str) -> None:
        self.text = text
        super().__init__()
