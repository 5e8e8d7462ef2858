"""Permission asked in other voices, at every stage, and what must get no verdict at all."""

from __future__ import annotations

from collections import Counter
from datetime import date, timedelta
from pathlib import Path

import pytest

from guidebot.domain.activity import Activity, Say
from guidebot.domain.case import Case
from guidebot.domain.protocol import Protocol
from guidebot.plan.ask import AskReader
from guidebot.plan.verdict import decide
from guidebot.plan.when import read_when

ON = date(2026, 11, 25)
ROWS = [
    line.split("\t")
    for line in Path(__file__).with_name("asked_anew.tsv").read_text("utf-8").splitlines()
]


def test_there_are_enough_of_each_kind() -> None:
    kinds = Counter("none" if row[0] == "-" else "leave" for row in ROWS)
    assert kinds["leave"] >= 80
    assert kinds["none"] >= 12


@pytest.mark.parametrize(("activity", "say", "day", "text"), ROWS, ids=[r[3][:60] for r in ROWS])
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
    if day == "-":
        found = decide(protocol, activities, ask)
        assert found.asks_back or len({r.say for r in activities[activity].stages.values()}) == 1
    else:
        case = Case("", "", fitted=ON - timedelta(days=int(day) - 1))
        found = decide(protocol, activities, ask, case, ON)
    assert (ask.activity, found.verdict.say.value) == (activity, say)


@pytest.mark.parametrize("key", ["sofa", "bed", "jump", "car-jump", "stairs-game", "sleep", "bath"])
def test_never(activities: dict[str, Activity], key: str) -> None:
    assert {rule.say for rule in activities[key].stages.values()} == {Say.NO}


def test_swimming_is_asked_first_in_every_stage(activities: dict[str, Activity]) -> None:
    assert {rule.say for rule in activities["swim"].stages.values()} == {Say.ASK_FIRST}


@pytest.mark.parametrize("key", ["run", "fetch", "dog-play", "off-leash", "toilet-free"])
def test_opens_after_the_restricted_months(activities: dict[str, Activity], key: str) -> None:
    says = [activities[key].stages[s].say for s in ("break-in", "restricted", "return")]
    assert says == [Say.NOT_YET, Say.NOT_YET, Say.YES_WITH_LIMITS]


def test_no_medicine_is_ever_allowed(activities: dict[str, Activity]) -> None:
    for key in ("medicine-self", "human-medicine"):
        assert {r.say for r in activities[key].stages.values()} <= {Say.NO, Say.ASK_FIRST}


@pytest.mark.parametrize(
    "text",
    ["no limp at all, may he have seven hours?", "skin never red; is another hour in it ok?"],
)
def test_denied_trouble_is_no_trouble(reader: AskReader, text: str) -> None:
    ask = reader.read(text)
    assert ask is not None
    assert ask.trouble is None


@pytest.mark.parametrize(
    ("text", "say"),
    [
        ("he limped after breakfast, may he run on the grass?", Say.ASK_FIRST),
        ("there is an open sore on his ankle. can he go for his walk", Say.ASK_FIRST),
        ("no limp at all. may he run on the grass?", Say.YES_WITH_LIMITS),
        ("he limped a little, can we do a short walk", Say.YES_WITH_LIMITS),
    ],
)
def test_trouble_told_in_the_question_makes_it_stricter(
    reader: AskReader,
    protocol: Protocol,
    activities: dict[str, Activity],
    text: str,
    say: Say,
) -> None:
    ask = reader.read(text)
    assert ask is not None
    case = Case("", "", fitted=ON - timedelta(days=150))
    assert decide(protocol, activities, ask, case, ON).verdict.say is say
