"""The palette: every passage, dog and action by its name."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from textual.command import DiscoveryHit, Hit, Hits, Provider
from textual.types import IgnoreReturnCallbackType

from guidebot.text import clean, one_line
from guidebot.tui.base import home
from guidebot.tui.widgets.words import shown

ACTIONS = (
    ("Talk: ask a question", "area('talk')"),
    ("Today: the day of this dog", "area('today')"),
    ("Hands on: menu", "area('hands')"),
    ("Put the device on, step by step", "hands('putting_on')"),
    ("Take the device off, step by step", "hands('taking_off')"),
    ("Check the fit", "hands('fit')"),
    ("Staff: today's dogs", "area('staff')"),
    ("Write in the diary", "diary"),
    ("Choose a dog", "pick_dog"),
    ("Add a dog", "add_dog"),
    ("Copy the answer as a mail", "mail"),
    ("Begin a new talk", "new_talk"),
    ("Help", "help"),
    ("Switch between light and dark", "switch_look"),
    ("Quit", "quit"),
)
"""What can be done: name and action."""

Entry = tuple[str, IgnoreReturnCallbackType]


class Everything(Provider):
    """Actions, dogs and passages."""

    def entries(self, kinds: str = "adp") -> Iterator[Entry]:
        """Names with what they do: actions, dogs, passages."""
        app = home(self.screen)
        session = app.session
        if "a" in kinds:
            for name, action in ACTIONS:
                yield name, partial(app.run_action, action)
        if "d" in kinds:
            for case in session.desk.cases():
                yield one_line(f"Dog: {clean(case.dog).text}"), partial(app.choose_case, case)
        if "p" in kinds and session.guide:
            for passage in session.guide.passages.values():
                yield (
                    one_line(f"Read: {passage.title}"),
                    partial(app.open_passage, passage.id),
                )

    async def discover(self) -> Hits:
        """Before anything is written: the actions."""
        for name, command in self.entries("a"):
            yield DiscoveryHit(shown(name), command, text=name)

    async def search(self, query: str) -> Hits:
        """Everything whose name holds the letters of the query."""
        matcher = self.matcher(query)
        for name, command in self.entries():
            score = matcher.match(name)
            if score > 0:
                yield Hit(score, shown(name), command, text=name)
