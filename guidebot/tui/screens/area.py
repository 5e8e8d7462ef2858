"""What the four main screens share: the line on top, the alert below it, the keys at the foot."""

from __future__ import annotations

from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.screen import Screen
from textual.widgets import Footer

from guidebot.tui.base import Base, home
from guidebot.tui.session import Session
from guidebot.tui.widgets.alert import AlertBlock, AlertMemory
from guidebot.tui.widgets.words import Line


class Area(Screen[None]):
    """A main screen. `body` says what is on it, `sync` brings it up to date."""

    NAME: ClassVar[str] = ""
    AUTO_FOCUS = ""
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("f1", "app.help", "Help", key_display="F1"),
        Binding("f2", "app.area('talk')", "Talk", key_display="F2"),
        Binding("f3", "app.area('today')", "Today", key_display="F3"),
        Binding("f4", "app.area('hands')", "Hands on", key_display="F4"),
        Binding("f5", "app.area('staff')", "Staff", key_display="F5"),
        Binding("ctrl+p", "app.find", "Find", show=False),
        Binding("f8", "app.acknowledge", "Alert", show=False, priority=True),
        Binding("f9", "app.pick_dog", "Dog", key_display="F9"),
    ]
    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (104, "-wide")]  # noqa: RUF012 - declared so upstream
    VERTICAL_BREAKPOINTS = [(0, "-low"), (30, "-high")]  # noqa: RUF012

    def compose(self) -> ComposeResult:
        """Line, alert, body, footer."""
        yield Line("guidebot", id="top")
        yield AlertBlock(id="alert")
        yield AlertMemory(id="alert-memory")
        yield from self.body()
        yield Line(id="news")
        yield Footer(compact=True)

    def body(self) -> ComposeResult:
        """The widgets of this screen."""
        yield from ()

    @property
    def base(self) -> Base:
        """The application."""
        return home(self)

    @property
    def session(self) -> Session:
        """The session."""
        return self.base.session

    def on_mount(self) -> None:
        """Show what is known so far."""
        self.sync()

    def on_screen_resume(self) -> None:
        """Show what has changed meanwhile."""
        self.sync()

    def sync(self) -> None:
        """Bring everything up to date with the session."""
        session = self.session
        dog = dog_line(session)
        self.query_one("#top", Line).say(
            f"guidebot · {self.NAME} · {dog}"
            + (f" · {state_line(session)}" if not session.guide else "")
        )
        self.query_one("#news", Line).say(session.news)
        self.query_one(AlertBlock).show(session.pending)
        self.query_one(AlertMemory).show(session.seen, session.pending)


def dog_line(session: Session) -> str:
    """Whose dog this is about, and the day."""
    case = session.case
    if case is None:
        return "no dog chosen (F9)"
    if case.fitted is None:
        return f"{case.dog}, fitting day not known"
    day = (session.today() - case.fitted).days + 1
    return f"{case.dog}, day {day}" if day > 0 else f"{case.dog}, fitted on {case.fitted}"


def state_line(session: Session) -> str:
    """What is going on with the guide, "" when it is open."""
    if session.broken:
        return "the guide could not be opened"
    return f"opening the guide: {session.opening}" if not session.guide else ""
