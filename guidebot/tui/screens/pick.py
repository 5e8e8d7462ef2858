"""Choose a dog."""

from __future__ import annotations

from typing import ClassVar

from textual import events, on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.screen import ModalScreen
from textual.widgets import OptionList

from guidebot.domain.case import Case
from guidebot.tui.widgets.answer import Rows
from guidebot.tui.widgets.words import Line


class PickDog(ModalScreen[str | None]):
    """Gives the id of a dog, `ADD`, `NONE`, or None if the person leaves."""

    ADD = "+add"
    NONE = "-none"
    BINDINGS: ClassVar[list[BindingType]] = [Binding("escape,f9", "leave", "Leave")]

    def __init__(self, cases: list[Case]) -> None:
        super().__init__()
        self._rows = [
            *(
                (case.id, case.dog + (f", fitted {case.fitted}" if case.fitted else ""))
                for case in cases
            ),
            (self.ADD, "Add a dog"),
            (self.NONE, "Go on without a dog"),
        ]

    def compose(self) -> ComposeResult:
        """Title, dogs, hint."""
        with Vertical(classes="card"):
            yield Line("Which dog?", classes="card-title")
            yield Rows(id="pick-rows")
            yield Line("Arrows and Enter, or the number. Escape leaves.", classes="hint")

    def on_mount(self) -> None:
        """Show the dogs."""
        rows = self.query_one_optional(Rows)
        if rows is None:  # closed before it was built
            return
        rows.fill(self._rows)
        rows.highlighted = 0
        rows.focus()

    def on_key(self, event: events.Key) -> None:
        """A digit picks."""
        if event.character and event.character.isdecimal():
            event.stop()
            if key := self.query_one(Rows).key_of(int(event.character)):
                self._give(key)

    @on(OptionList.OptionSelected)
    def picked(self, message: OptionList.OptionSelected) -> None:
        """Enter or a click."""
        message.stop()
        self._give(message.option_id)

    def action_leave(self) -> None:
        """Leave."""
        self._give(None)

    def _give(self, key: str | None) -> None:
        if self.is_active:  # else: a second key, after the choice
            self.dismiss(key)
