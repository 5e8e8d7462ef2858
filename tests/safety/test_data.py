"""The authored reports and look-alikes: whole, labelled, without a dose, never said twice."""

from __future__ import annotations

import re
from collections import Counter

from guidebot.safety import wide
from guidebot.safety.signs import BY_KEY


def test_reports_cover_every_sign_by_several_hands() -> None:
    lines = list(wide.read("reports"))
    assert len(lines) >= 4_000
    hands = {key: set() for key in BY_KEY}  # type: ignore[var-annotated]
    for hand, sign, text in lines:
        assert text.strip()
        hands[sign].add(hand)
    assert min(len(names) for names in hands.values()) >= 4


def test_lookalikes_are_many() -> None:
    kinds = Counter(kind for _, kind, _ in wide.read("lookalikes"))
    assert sum(kinds.values()) >= 3_000
    assert len(kinds) == 9


def test_no_line_is_both_report_and_harmless() -> None:
    reports = {text.lower() for *_, text in wide.read("reports")}
    assert not reports & {text.lower() for *_, text in wide.read("lookalikes")}


def test_no_dose_in_the_harmless_lines() -> None:
    dose = re.compile(r"\b\d+\s?(?:mg|ml)\b", re.I)
    assert not [text for *_, text in wide.read("lookalikes") if dose.search(text)]
