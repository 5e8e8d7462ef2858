"""Talk: a question box, the answer above it, a reading pane beside or below."""

from __future__ import annotations

from typing import ClassVar

from textual import events, on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Container
from textual.widgets import OptionList

from guidebot.domain.answer import Outcome
from guidebot.tui.screens.area import Area, state_line
from guidebot.tui.session import Turn
from guidebot.tui.widgets.answer import AnswerView, Rows
from guidebot.tui.widgets.question import QuestionBox
from guidebot.tui.widgets.reading import ReadingPane

WELCOME = (
    "Ask about the device in your own words: wearing it, skin, walks, fit, cleaning. "
    "Nothing you write leaves this machine.\nFor example:"
)
EXAMPLES = [
    "can she do stairs yet",
    "how many hours on day 4",
    "the sock part keeps sliding down",
]
EMERGENCY_FIRST = "If your dog is in danger now, do not write: call an emergency vet clinic."


class TalkScreen(Area):
    """Questions and answers."""

    NAME = "Talk"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding(
            "f6",
            "read_next",
            "Source",
            key_display="F6",
            tooltip="Open the sources one after the other",
        ),
        Binding("f7", "app.mail", "Mail", key_display="F7"),
        Binding("ctrl+up", "look(-1)", "Earlier answer", show=False),
        Binding("ctrl+down", "look(1)", "Later answer", show=False),
        Binding("escape", "back", "Back to the question", show=False),
    ]

    def __init__(self) -> None:
        super().__init__()
        self._shown: Turn | None = None

    def body(self) -> ComposeResult:
        """Answer, reading pane, question box."""
        with Container(id="pair"):
            yield AnswerView(id="answer")
            yield ReadingPane(id="reading")
        yield QuestionBox(id="question")

    def on_mount(self) -> None:
        """The person can write at once."""
        super().on_mount()
        self.query_one(QuestionBox).focus()

    def on_screen_resume(self) -> None:
        """Back from another area: the person can write at once."""
        super().on_screen_resume()
        if not self.query_one(ReadingPane).display:
            self.query_one(QuestionBox).focus()

    def sync(self) -> None:
        """Show the turn, or what is going on."""
        super().sync()
        view = self.query_one(AnswerView)
        session = self.session
        waiting = session.waiting[0] if session.waiting else None
        turn = session.shown
        if waiting and session.broken == "":
            view.show(Turn(waiting.text), session.guide)
            if not session.guide:
                view.say("lead", f"Your question waits: {state_line(session)}.")
                view.say("caution", EMERGENCY_FIRST)
            self._shown = None
        elif turn is None and session.broken:
            view.clear()
            view.say("verdict", "The guide could not be opened.")
            view.say("lead", session.broken)
            view.say("caution", EMERGENCY_FIRST)
        elif turn is None:
            view.welcome(WELCOME, EXAMPLES)
            view.say("caution", EMERGENCY_FIRST)
            self._shown = None
        elif turn is not self._shown:
            self._shown = turn
            self.query_one(ReadingPane).close()
            view.show(turn, session.guide)

    @on(QuestionBox.Sent)
    def send(self, message: QuestionBox.Sent) -> None:
        """Answer, or pick the title a bare number names."""
        turn = self.session.shown
        answer = turn.answer if turn else None
        if answer and answer.outcome is Outcome.UNSURE and message.text.strip().isdigit():
            key = self.query_one(Rows).key_of(int(message.text.strip()[:3]))
            if key:
                self.open_passage(key)
                return
        self.base.ask(message.text)

    @on(QuestionBox.Scroll)
    def scroll(self, message: QuestionBox.Scroll) -> None:
        """Page the answer while the person stays in the question box."""
        view = self.query_one(AnswerView)
        if message.by > 0:
            view.scroll_page_down(animate=False)
        else:
            view.scroll_page_up(animate=False)

    @on(OptionList.OptionSelected)
    def pick(self, message: OptionList.OptionSelected) -> None:
        """Open the passage of a row."""
        if message.option_id:
            self.open_passage(message.option_id)

    def on_key(self, event: events.Key) -> None:
        """Outside the question box a digit opens its row; what else is typed goes to the box."""
        char = event.character
        box = self.query_one(QuestionBox)
        if not char or not char.isprintable() or (char.isspace() and not box.text):
            return
        begun = bool(box.text)
        key = self.query_one(Rows).key_of(int(char)) if char.isdecimal() and not begun else None
        event.stop()
        if key:
            self.open_passage(key)
            return
        # Keys typed faster than the focus moves come here too: no space of theirs may be lost.
        self.set_focus(box)
        box.insert(char)

    def open_passage(self, key: str) -> None:
        """Open a passage in the reading pane."""
        guide = self.session.guide
        if guide and self.query_one(ReadingPane).open(key, guide):
            self.query_one(ReadingPane).focus()

    def action_read_next(self) -> None:
        """Open the first source, then the next one, then close the pane."""
        rows, pane = self.query_one(Rows), self.query_one(ReadingPane)
        keys = [option.id for option in rows.options if option.id]
        at = keys.index(pane.open_key) + 1 if pane.open_key in keys else 0
        if pane.open_key and (at == len(keys) or pane.open_key not in keys):
            self.action_back()
        elif at < len(keys):
            self.open_passage(keys[at])
        else:
            self.base.tell("There is no source to open yet. Ask something first.")

    def action_back(self) -> None:
        """Close the reading pane and go back to writing."""
        self.query_one(ReadingPane).close()
        self.query_one(QuestionBox).focus()

    def action_look(self, by: int) -> None:
        """Look at an earlier or later answer."""
        self.session.look_back(by)
        self.sync()
