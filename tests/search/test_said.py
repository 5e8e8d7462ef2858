"""Messages that are an authored wording but for small words."""

from __future__ import annotations

import pytest

from guidebot.linear.fit import tokenise
from guidebot.search.said import Said

LINES = {
    "put-on.order": ("how do i put the brace on", "which strap first"),
    "take-off.order": ("how do I take it off?", "which strap first"),
    "off-topic": ("what is the price",),
}


@pytest.fixture(scope="module")
def said() -> Said:
    return Said.load(Said.build(LINES).dump())


@pytest.mark.parametrize(
    ("text", "need"),
    [
        ("How do you put his boot on, please?", "put-on.order"),
        ("how do we take the device off", "take-off.order"),
        ("which strap first", None),  # it stands for two needs
        ("what is the price", None),  # off the topic
        ("how do i put the sleeve on", None),
        ("the brace", None),
    ],
)
def test_what_was_said_before(said: Said, text: str, need: str | None) -> None:
    assert said.need(tokenise(text)[1]) == need


def test_a_damaged_index_is_refused() -> None:
    raw = Said.build(LINES).dump()
    for bad in (b"", b"XXXX" + raw[4:], raw[:-1]):
        with pytest.raises(ValueError, match="index of wordings"):
            Said.load(bad)
