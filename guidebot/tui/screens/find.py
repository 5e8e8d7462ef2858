"""Find anything by its name: an action, a dog, a passage."""

from __future__ import annotations

from typing import ClassVar

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.screen import ModalScreen
from textual.widgets import Input, OptionList

from guidebot.tui.base import home
from guidebot.tui.commands import Entry, matching
from guidebot.tui.widgets.answer import Rows
from guidebot.tui.widgets.words import Line


class Find(ModalScreen["Entry | None"]):
    """Gives the entry that was chosen, or None."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+p", "leave", "Leave"),
        Binding("down", "move(1)", "Next", priority=True),
        Binding("up", "move(-1)", "Previous", priority=True),
    ]

    def __init__(self) -> None:
        super().__init__()
        self._found: list[Entry] = []

    def compose(self) -> ComposeResult:
        """Title, a line to write in, what fits, hint."""
        with Vertical(classes="card"):
            yield Line("Find an action, a dog or a passage", classes="card-title")
            yield Input(placeholder="Write a few letters", id="find-box")
            yield Rows(id="find-rows")
            yield Line("Arrows and Enter. Escape leaves.", classes="hint")

    def on_mount(self) -> None:
        """Show the actions."""
        box = self.query_one_optional(Input)
        if box is not None:
            box.cursor_blink = False
            box.focus()
            self._show("")

    @on(Input.Changed)
    def changed(self, message: Input.Changed) -> None:
        """Show what fits."""
        self._show(message.value)

    def _show(self, query: str) -> None:
        rows = self.query_one_optional(Rows)
        if rows is None:  # closed before it was built
            return
        self._found = matching(home(self), query)
        rows.fill([(str(n), name) for n, (name, _) in enumerate(self._found)])
        rows.highlighted = 0 if self._found else None

    def action_move(self, by: int) -> None:
        """To the next or the previous row, while the person goes on writing."""
        rows = self.query_one_optional(Rows)
        if rows is not None and self._found:
            rows.highlighted = ((rows.highlighted or 0) + by) % len(self._found)

    @on(Input.Submitted)
    def chosen(self) -> None:
        """Enter."""
        rows = self.query_one(Rows)
        if rows.highlighted is not None:
            self._give(rows.highlighted)

    @on(OptionList.OptionSelected)
    def clicked(self, message: OptionList.OptionSelected) -> None:
        """A click."""
        message.stop()
        self._give(message.option_index)

    def _give(self, at: int) -> None:
        if self.is_active and at < len(self._found):
            self.dismiss(self._found[at])

    def action_leave(self) -> None:
        """Leave."""
        if self.is_active:
            self.dismiss(None)
