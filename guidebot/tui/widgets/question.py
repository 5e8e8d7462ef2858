"""The box a person writes in: Enter sends, a paste keeps every line."""

from __future__ import annotations

from typing import ClassVar

from textual import events
from textual.binding import Binding, BindingType
from textual.message import Message
from textual.timer import Timer
from textual.widgets import TextArea
from textual.widgets.text_area import Selection

from guidebot.text import MAX_CHARS, clean

BURST = 0.04
"""Seconds: a terminal that knows no bracketed paste sends a pasted line end as Enter and goes on
typing at once. An Enter followed by more text within this time is a line of a paste."""


def cleaned_paste(raw: str) -> str:
    """Clean a paste of any length; one character over `MAX_CHARS` stays over it.

    The pipeline refuses a message longer than that with the stop-and-call text; a paste that was
    silently cut would pass for a whole one.
    """
    parts: list[str] = []
    length = 0
    for start in range(0, len(raw), MAX_CHARS):
        part = clean(raw[start : start + MAX_CHARS]).text
        parts.append(part)
        length += len(part)
        if length > MAX_CHARS:
            break
    return "\n".join(parts)[: MAX_CHARS + 2]


TAKEN = {"f6", "f7"}
"""Keys of the text area that mean something else here."""


class QuestionBox(TextArea, inherit_bindings=False):
    """A text area that sends."""

    BINDINGS: ClassVar[list[BindingType]] = [
        *(b for b in TextArea.BINDINGS if isinstance(b, Binding) and b.key not in TAKEN),
        Binding("ctrl+j", "new_line", "New line", show=False),
    ]

    class Sent(Message):
        """The person sent this text."""

        def __init__(self, text: str) -> None:
            self.text = text
            super().__init__()

    class Scroll(Message):
        """The person wants to read on (1) or back (-1) without leaving the box."""

        def __init__(self, by: int) -> None:
            self.by = by
            super().__init__()

    def __init__(
        self,
        placeholder: str = "Write your question here. Enter sends it.",
        *,
        empty: bool = False,
        id: str | None = None,
    ) -> None:
        super().__init__(
            id=id,
            soft_wrap=True,
            show_line_numbers=False,
            tab_behavior="focus",
            placeholder=placeholder,
        )
        self.cursor_blink = False
        self._empty = empty
        self._sending: Timer | None = None

    def action_new_line(self) -> None:
        """Go to a new line without sending."""
        self._replace_via_keyboard("\n", *self.selection)

    def undo(self) -> None:
        """Take back the last edits; the cursor first goes where any text has a place for it.

        The widget looks for the cursor before it has put it back, which fails where it stood
        below the last line of the shorter text.
        """
        self.selection = Selection.cursor((0, 0))
        super().undo()

    def redo(self) -> None:
        """Bring back what was taken back; see `undo`."""
        self.selection = Selection.cursor((0, 0))
        super().redo()

    async def _on_key(self, event: events.Key) -> None:
        if event.key in ("pageup", "pagedown"):
            event.stop()
            event.prevent_default()
            self.post_message(self.Scroll(1 if event.key == "pagedown" else -1))
            return
        if self._sending is not None and (event.is_printable or event.key == "enter"):
            self._sending.stop()
            self._sending = None
            self.action_new_line()
        if event.key == "enter":
            event.stop()
            event.prevent_default()
            self._sending = self.set_timer(BURST, self._send)
            return
        await super()._on_key(event)

    async def _on_paste(self, event: events.Paste) -> None:
        event.stop()
        event.prevent_default()
        if result := self._replace_via_keyboard(cleaned_paste(event.text), *self.selection):
            self.move_cursor(result.end_location)

    def _send(self) -> None:
        self._sending = None
        text = self.text
        if text.strip() or self._empty:
            self.text = ""
            self.post_message(self.Sent(text))
