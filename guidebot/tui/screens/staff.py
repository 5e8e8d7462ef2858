"""Staff: today's dogs, the last answer as a mail, what the guide did not answer."""

from __future__ import annotations

import asyncio
from typing import ClassVar

from textual import on, work
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Container, VerticalScroll
from textual.widgets import OptionList

from guidebot.text import one_line
from guidebot.tui.screens.area import Area, state_line
from guidebot.tui.widgets.answer import Rows
from guidebot.tui.widgets.words import Line, Prose

MOST_UNANSWERED = 30


class StaffScreen(Area):
    """A list of dogs to pick from, and what goes out to their owners."""

    NAME = "Staff"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("c,f7", "app.mail", "Copy mail", key_display="c"),
        Binding("a", "app.add_dog", "Add dog"),
    ]

    def body(self) -> ComposeResult:
        """Dogs; beside them the mail and the unanswered questions."""
        with Container(id="staff-pair"):
            with VerticalScroll(id="dogs"):
                yield Line("Today's dogs", classes="head")
                yield Line(id="dogs-note")
                yield Rows(id="dogs-rows")
            with VerticalScroll(id="out"):
                yield Line("The last answer as a mail (c copies it)", classes="head")
                yield Prose(id="mail")
                yield Line("Questions without an answer", classes="head")
                yield Prose(id="unanswered")

    def on_mount(self) -> None:
        """The dogs can be picked at once."""
        super().on_mount()
        self.query_one("#dogs-rows").focus()

    def on_screen_resume(self) -> None:
        """Another process may have added dogs."""
        super().on_screen_resume()
        self._refresh()

    @work(group="store", exclusive=True, exit_on_error=False)
    async def _refresh(self) -> None:
        await asyncio.to_thread(self.session.desk.refresh)
        self.sync()

    def sync(self) -> None:
        """Read dogs and questions anew."""
        super().sync()
        session = self.session
        rows = self.query_one("#dogs-rows", Rows)
        at = rows.highlighted
        lines = session.desk.today_lines(session.guide, session.today()) if session.guide else []
        rows.fill(lines)
        if lines:
            rows.highlighted = min(at or 0, len(lines) - 1)
        note = state_line(session) or session.desk.trouble
        self.query_one("#dogs-note", Line).say(
            note or ("Enter picks a dog." if lines else "No dog is kept yet. a adds one.")
        )
        self.query_one("#mail", Prose).say(self.mail() or "Nothing yet: ask a question in Talk.")
        unanswered = session.desk.unanswered()[:MOST_UNANSWERED]
        self.query_one("#unanswered", Prose).say(
            "\n".join(f"- {one_line(text, 200)}" for text in unanswered) or "None."
        )

    def mail(self) -> str:
        """The last answer as a mail, "" if there is none."""
        turn, guide = self.session.shown, self.session.guide
        if turn is None or turn.answer is None or guide is None:
            return ""
        return self.session.desk.mail(turn.text, turn.answer, guide, turn.case)

    @on(OptionList.OptionSelected)
    def picked(self, message: OptionList.OptionSelected) -> None:
        """Go on with this dog."""
        case = self.session.desk.find(message.option_id or "")
        if case:
            self.base.choose_case(case)
            self.base.tell(f"The talk is about {case.dog} now. F2 asks, F3 shows the day.")
