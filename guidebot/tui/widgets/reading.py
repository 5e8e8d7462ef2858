"""The reading pane: one passage, whole, with where it comes from."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.containers import VerticalScroll

from guidebot.domain.guide import Guide
from guidebot.domain.passage import Passage
from guidebot.tui.prose import plain_block
from guidebot.tui.widgets.words import Line, Prose


def passage_text(passage: Passage, guide: Guide) -> str:
    """Short answer, text, origin and related titles of a passage."""
    related = [guide.passages[key].title for key in passage.see if key in guide.passages]
    return plain_block(
        passage.short,
        passage.body,
        "\n".join(
            [
                f"From: {passage.path or passage.id}",
                f"Basis: {passage.basis}",
                f"Reviewed: {passage.reviewed.on.isoformat()} by {passage.reviewed.role}",
                *(f"Related: {title}" for title in related),
            ]
        ),
    )


class ReadingPane(VerticalScroll):
    """Hidden until something is opened in it; arrow keys scroll it while it has the focus."""

    open_key: str | None = None

    def compose(self) -> ComposeResult:
        """Title and text."""
        yield Line(id="reading-title")
        yield Prose(id="reading-text")

    def open(self, key: str, guide: Guide) -> bool:
        """Show a passage; False if the guide has none of this id."""
        passage = guide.passages.get(key)
        if passage is None:
            return False
        self.open_key = key
        self.display = True
        self.query_one("#reading-title", Line).say(passage.title)
        self.query_one("#reading-text", Prose).say(passage_text(passage, guide))
        self.scroll_home(animate=False)
        return True

    def close(self) -> None:
        """Hide."""
        self.open_key = None
        self.display = False
