"""Spellings of messages, which lie more than one slip away."""

from __future__ import annotations

import pytest

from guidebot.search.repair import repair_word


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("nite", "night"),
        ("thru", "through"),
        ("2day", "today"),
        ("tite", "tight"),
        ("b4", "before"),
        ("hubby", "husband"),
        ("wkend", "weekend"),
    ],
)
def test_spellings_of_messages(typed: str, meant: str) -> None:
    assert repair_word(typed, {"note": 9, "tile": 9, "today": 3}, frozenset()) == meant
    assert repair_word(typed, {typed: 1}, frozenset()) == typed
