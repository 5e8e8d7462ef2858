"""Text that is never markup and wraps with hanging lists."""

from __future__ import annotations

from textual.content import Content
from textual.geometry import Size
from textual.widget import Widget
from textual.widgets import Static

from guidebot.text import clean
from guidebot.tui.prose import wrapped


def shown(text: str) -> Content:
    """Text of anybody as content: cleaned, markup-free."""
    return Content(clean(text).text)


class Line(Static):
    """One short text; hidden while it has nothing to say."""

    def __init__(self, text: str = "", *, id: str | None = None, classes: str = "") -> None:
        super().__init__(shown(text), id=id, classes=classes, markup=False)
        self.said = text
        self.display = bool(text)

    def say(self, text: str) -> None:
        """Show another text."""
        if text != self.said:
            self.said = text
            self.update(shown(text))
            self.display = bool(text)


class Prose(Widget):
    """Guide text, wrapped to the width it gets."""

    DEFAULT_CSS = "Prose { height: auto; width: 1fr; }"

    def __init__(self, text: str = "", *, id: str | None = None, classes: str = "") -> None:
        super().__init__(id=id, classes=classes, markup=False)
        self.said = clean(text).text
        self.display = bool(text)

    def say(self, text: str) -> None:
        """Show another text."""
        self.said = clean(text).text
        self.display = bool(text)
        self.refresh(layout=True)

    def get_content_height(self, container: Size, viewport: Size, width: int) -> int:
        """Rows the text takes at this width."""
        return len(wrapped(self.said, width))

    def render(self) -> Content:
        """The text in lines."""
        return Content("\n".join(wrapped(self.said, self.content_size.width or 60)))
