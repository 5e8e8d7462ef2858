"""What can be found by its name: every action, dog and passage."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from typing import Any

from textual.fuzzy import Matcher

from guidebot.text import one_line
from guidebot.tui.base import Base

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
    ("I have read the alert, or show it again", "acknowledge"),
    ("Help", "help"),
    ("Switch between light and dark", "switch_look"),
    ("Use the colours of the terminal", "plain_look"),
    ("Quit", "quit"),
)
"""What can be done: name and action."""

SHOWN = 12
"""Rows shown at most."""

Entry = tuple[str, Callable[[], Any]]


def entries(app: Base) -> Iterator[Entry]:
    """Names with what they do: actions, dogs, passages."""
    session = app.session
    for name, action in ACTIONS:
        yield name, partial(app.run_action, action)
    for case in session.desk.cases():
        yield one_line(f"Dog: {case.dog}"), partial(app.choose_case, case)
    if session.guide:
        for passage in session.guide.passages.values():
            yield one_line(f"Read: {passage.title}"), partial(app.open_passage, passage.id)


def matching(app: Base, query: str) -> list[Entry]:
    """The entries whose names hold the words of the query; if none does, its letters, best first.

    An empty query gives all actions.
    """
    found = list(entries(app))
    if not query.strip():
        return found[: len(ACTIONS)]
    words = query.casefold().split()
    whole = [entry for entry in found if all(word in entry[0].casefold() for word in words)]
    if whole:
        return whole[:SHOWN]
    matcher = Matcher(query.strip())
    scored = [(matcher.match(entry[0]), entry) for entry in found]
    best = sorted((pair for pair in scored if pair[0] > 0), key=lambda pair: -pair[0])
    return [entry for _, entry in best[:SHOWN]]
