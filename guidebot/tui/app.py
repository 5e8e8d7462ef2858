"""The application: modes, keys, looks and workers. No answering in here."""

from __future__ import annotations

import sys
import threading
from collections.abc import Callable
from datetime import datetime
from pathlib import Path, PurePath
from typing import Any, ClassVar

from textual import on, work
from textual.await_complete import AwaitComplete
from textual.binding import Binding, BindingType
from textual.screen import Screen

from guidebot.domain.case import Case
from guidebot.domain.sign import Alert
from guidebot.errors import ExitCode, GuidebotError
from guidebot.text import clean
from guidebot.tui import look
from guidebot.tui.actions import Actions
from guidebot.tui.desk import Desk
from guidebot.tui.messages import Answered, Opened, Opening, Told
from guidebot.tui.screens.area import Area
from guidebot.tui.screens.hands import HandsScreen
from guidebot.tui.screens.staff import StaffScreen
from guidebot.tui.screens.talk import TalkScreen
from guidebot.tui.screens.today import TodayScreen
from guidebot.tui.session import (
    Opener,
    Session,
    Starter,
    Turn,
    answer_next,
    open_guide,
    start_talk,
)
from guidebot.tui.steps import alert_of

STOPPED = "stop-and-call"
NEWS_SECONDS = 12.0
SWITCH_SECONDS = 0.0005


class GuidebotApp(Actions):
    """Talk, Today, Hands on, Staff.

    Args:
        content: folder of the guide, None for the one that comes along.
        case_id: the dog to start with.
        desk, opener, starter, now: other parts, for tests.
    """

    TITLE = "guidebot"
    CSS_PATH: ClassVar[list[str | PurePath]] = ["app.tcss", "areas.tcss"]
    MODES: ClassVar[dict[str, str | Callable[[], Screen[Any]]]] = {
        "talk": TalkScreen,
        "today": TodayScreen,
        "hands": HandsScreen,
        "staff": StaffScreen,
    }
    DEFAULT_MODE = "talk"
    ENABLE_COMMAND_PALETTE = False  # ours finds dogs and passages too, and closes safely
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("ctrl+q", "quit", "Quit", show=False, priority=True),
    ]

    def __init__(
        self,
        content: Path | None = None,
        case_id: str | None = None,
        *,
        desk: Desk | None = None,
        opener: Opener = open_guide,
        starter: Starter = start_talk,
        now: Callable[[], datetime] = datetime.now,
    ) -> None:
        super().__init__()
        self.session = Session(content, desk or Desk(), now)
        self._case_id = case_id
        self._opener = opener
        self._starter = starter
        self._one_at_a_time = threading.Lock()

    def on_mount(self) -> None:
        """Paint first, open the guide afterwards in a worker."""
        for theme in look.LOOKS:
            self.register_theme(theme)
        self.theme = look.first_look()
        # A key passes three threads (reader, loop, writer); each may wait this long for a search
        # that holds the interpreter. The default of 5 ms is felt as 15 ms.
        sys.setswitchinterval(SWITCH_SECONDS)
        self.call_after_refresh(self._open)

    def on_unmount(self) -> None:
        """Let go of the store."""
        self.session.desk.close()

    @work(thread=True, group="open", exit_on_error=False)
    def _open(self) -> None:
        session = self.session
        try:
            session.desk.open()
            if self._case_id:
                session.case = session.desk.find(self._case_id)
                if session.case is None:
                    self.post_message(Told(f"There is no dog {clean(self._case_id).text}."))
            session.assistant = self._opener(session.content, self._say_step)
        except GuidebotError as error:
            session.broken, session.code = str(error), error.exit_code
        except Exception as error:
            session.broken = f"internal error ({type(error).__name__}: {error})"
            session.code = ExitCode.INTERNAL
        self.post_message(Opened())

    def _say_step(self, step: str) -> None:
        self.post_message(Opening(step))

    @on(Opening)
    def _tell_step(self, message: Opening) -> None:
        self.session.opening = clean(message.step).text
        self.renew()

    @on(Opened)
    def _go(self) -> None:
        self.session.opening = ""
        self.renew()
        self._answer()

    def ask(self, text: str) -> None:
        """Answer a message in a worker; the person can go on typing."""
        self.session.waiting.append(Turn(text, self.session.case))
        self.renew()
        self._answer()

    @work(thread=True, group="ask", exit_on_error=False)
    def _answer(self) -> None:
        # One question after the other: a follow-up is read in the light of the turn before.
        with self._one_at_a_time:
            while turn := answer_next(self.session, self._starter):
                self.post_message(Answered(turn))

    @on(Answered)
    def _show(self, message: Answered) -> None:
        turn = message.turn
        self.session.add(turn)
        if turn.failed:
            self.warn(alert_of(STOPPED))
        elif turn.answer and turn.answer.alert:
            self.to_front()
        self.renew()

    def warn(self, alert: Alert) -> None:
        """Show an alert on every screen until it is acknowledged."""
        self.session.warn(alert)
        self.to_front()
        self.renew()

    def pop_screen(self) -> AwaitComplete:
        """Close the window on top; a second Enter in the palette finds it closed already."""
        return super().pop_screen() if len(self.screen_stack) > 1 else AwaitComplete()

    def renew(self) -> None:
        """Show on the current screen what the session holds now."""
        for screen in self.screen_stack:
            if isinstance(screen, Area) and screen.is_mounted:
                screen.sync()

    def tell(self, text: str) -> None:
        """One line of news above the keys, for a while; a toast would cover what is written."""
        news = self.session.news = clean(text).text

        def over() -> None:
            if self.session.news == news:
                self.session.news = ""
                self.renew()

        self.set_timer(NEWS_SECONDS, over)
        self.renew()

    @on(Told)
    def _told(self, message: Told) -> None:
        self.tell(message.text)

    def choose_case(self, case: Case | None) -> None:
        """Go on with this dog; the talk knows it from the next question on."""
        self.session.case = case
        self.renew()


def run(content: Path | None, case_id: str | None) -> int:
    """Open the application; gives the exit code of the process."""
    app = GuidebotApp(content, case_id)
    app.run()
    return int(app.return_code or app.session.code)
