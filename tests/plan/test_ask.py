"""Questions of permission and amount: which activity, which verdict (written for this test)."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

import pytest

from guidebot.domain.activity import Activity
from guidebot.domain.case import Case
from guidebot.domain.protocol import Protocol
from guidebot.plan.ask import AskReader
from guidebot.plan.verdict import decide
from guidebot.plan.when import read_when

ON = date(2026, 11, 25)
ROWS = [
    line.split("\t")
    for line in Path(__file__).with_name("asks.tsv").read_text("utf-8").splitlines()
]


def test_there_are_at_least_120_questions() -> None:
    assert len(ROWS) >= 120


@pytest.mark.parametrize(("activity", "say", "day", "text"), ROWS, ids=[r[3][:50] for r in ROWS])
def test_verdict(
    reader: AskReader,
    protocol: Protocol,
    activities: dict[str, Activity],
    activity: str,
    say: str,
    day: str,
    text: str,
) -> None:
    ask = reader.read(text, read_when(text, ON))
    if activity == "-":
        assert ask is None
        return
    assert ask is not None
    case = Case("", "", fitted=ON - timedelta(days=int(day) - 1))
    verdict = decide(protocol, activities, ask, case, ON).verdict
    assert (ask.activity, verdict.say.value) == (activity, say)
    assert verdict.text
    assert verdict.cites
