"""The application as its screens know it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, cast

from textual.app import App
from textual.widget import Widget

if TYPE_CHECKING:
    from guidebot.domain.case import Case
    from guidebot.domain.sign import Alert
    from guidebot.tui.session import Session


class Base(App[int]):
    """What a screen may ask of the application."""

    session: Session

    def ask(self, text: str) -> None:
        """Answer a message in a worker."""
        raise NotImplementedError

    def warn(self, alert: Alert) -> None:
        """Show an alert on every screen until it is acknowledged."""
        raise NotImplementedError

    def choose_case(self, case: Case | None) -> None:
        """Go on with this dog."""
        raise NotImplementedError

    async def open_passage(self, key: str) -> None:
        """Show a passage in Talk."""
        raise NotImplementedError

    def renew(self) -> None:
        """Show on the current screen what the session holds now."""
        raise NotImplementedError

    def tell(self, text: str) -> None:
        """One line of news, without markup."""
        raise NotImplementedError


def home(widget: Widget) -> Base:
    """The application a widget or screen belongs to."""
    return cast("Base", cast("Any", widget.app))
