"""Small windows above a screen: one question at a time, answered with a key."""

from __future__ import annotations

from typing import Any, ClassVar

from textual import events, on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical, VerticalScroll
from textual.screen import ModalScreen
from textual.widgets import OptionList

from guidebot.errors import InputError
from guidebot.text import clean
from guidebot.tui.base import home
from guidebot.tui.field import Field
from guidebot.tui.widgets.answer import Rows
from guidebot.tui.widgets.question import QuestionBox
from guidebot.tui.widgets.words import Line, Prose

MESSAGE_WORDS = 3
"""A written reply of this many words is judged for signs of injury like a message."""


class Form(ModalScreen["dict[str, Any] | None"]):
    """Asks its fields one after the other; gives the replies, or None if the person leaves."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape", "leave", "Leave"),
        Binding("ctrl+b", "back", "Back"),
    ]

    def __init__(self, title: str, fields: list[Field]) -> None:
        super().__init__()
        self._title = title
        self._fields = fields
        self._at = 0
        self._replies: dict[str, Any] = {}

    def compose(self) -> ComposeResult:
        """Title, question, choices or a box, hint."""
        with Vertical(classes="card"):
            yield Line(self._title, classes="card-title")
            yield Line(id="card-ask")
            yield Rows(id="card-rows")
            yield QuestionBox("", empty=True, id="card-box")
            yield Line(id="card-fault")
            yield Line(id="card-hint", classes="hint")

    def on_mount(self) -> None:
        """Ask the first."""
        self._show()

    def _show(self, fault: str = "") -> None:
        if not self.query(Rows):  # closed before it was built
            return
        field = self._fields[self._at]
        count = f"({self._at + 1} of {len(self._fields)}) " if len(self._fields) > 1 else ""
        self.query_one("#card-ask", Line).say(count + field.ask)
        self.query_one("#card-fault", Line).say(fault)
        rows, box = self.query_one(Rows), self.query_one(QuestionBox)
        rows.fill([(str(n), label) for n, (_, label) in enumerate(field.options)])
        box.display = not field.options
        if not fault:  # what was written stays, to be mended
            box.text = ""
        leave = "Ctrl+B: the question before. Escape leaves." if self._at else "Escape leaves."
        if field.options:
            skip = "" if field.needed else " 0 leaves it out."
            self.query_one("#card-hint", Line).say(f"Press the number.{skip} {leave}")
            rows.focus()
            rows.highlighted = None  # Enter pressed in haste must not note the first answer
        else:
            self.query_one("#card-hint", Line).say(f"{field.hint} {leave}")
            box.focus()

    def on_key(self, event: events.Key) -> None:
        """A digit answers a question with choices."""
        field = self._fields[self._at]
        digit = event.character
        if not field.options or not digit or digit not in "0123456789":
            return
        event.stop()
        if digit == "0" and not field.needed:
            self._take(None)
        elif 1 <= int(digit) <= len(field.options):
            self._take(field.options[int(digit) - 1][0])

    @on(OptionList.OptionSelected)
    def chosen(self, message: OptionList.OptionSelected) -> None:
        """Enter or a click on a choice."""
        message.stop()
        self._take(self._fields[self._at].options[message.option_index][0])

    @on(QuestionBox.Sent)
    def written(self, message: QuestionBox.Sent) -> None:
        """A written reply."""
        message.stop()
        field = self._fields[self._at]
        text = clean(message.text).text
        if field.options:
            return
        if not text:
            if field.needed:
                self._show("This one is needed.")
            else:
                self._take(None)
            return
        if len(text.split()) >= MESSAGE_WORDS and field.key != "note":
            # No name or number is that long: it may be a report in the wrong place.
            session = home(self).session
            if alert := session.desk.judge(session.assistant, text):
                home(self).warn(alert)
                return
        try:
            self._take(field.read(text))
        except InputError as error:
            self._show(str(error))

    def _take(self, value: Any) -> None:
        if not self.is_active:  # a second key, after the last reply
            return
        self._replies[self._fields[self._at].key] = value
        if self._at + 1 < len(self._fields):
            self._at += 1
            self._show()
        else:
            self.dismiss(self._replies)

    def action_back(self) -> None:
        """To the question before."""
        if self._at:
            self._at -= 1
            self._show()

    def action_leave(self) -> None:
        """Leave without keeping anything."""
        if self.is_active:
            self.dismiss(None)


class Note(ModalScreen[None]):
    """A text to read and close with any key that closes."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,enter,q,f1", "close", "Close"),
    ]

    def __init__(self, title: str, text: str) -> None:
        super().__init__()
        self._title = title
        self._text = text

    def compose(self) -> ComposeResult:
        """Title, text, hint."""
        with VerticalScroll(classes="card tall"):
            yield Line(self._title, classes="card-title")
            yield Prose(self._text)
            yield Line("Enter or Escape closes this page.", classes="hint")

    def action_close(self) -> None:
        """Close."""
        if self.is_active:
            self.dismiss(None)
