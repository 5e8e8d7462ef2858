"""What a verdict says, from when to when, and on whose word."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

import pytest

from guidebot.domain.activity import Activity, Say
from guidebot.domain.case import Case, DiaryEntry, Gait, Restriction, Skin
from guidebot.domain.protocol import Protocol
from guidebot.errors import InputError
from guidebot.plan.ask import AskReader
from guidebot.plan.verdict import Decision, decide
from guidebot.plan.when import read_when

ON = date(2026, 11, 25)
Decide = Callable[..., Decision]


@pytest.fixture
def say(protocol: Protocol, activities: dict[str, Activity], reader: AskReader) -> Decide:
    def answer(
        text: str, case: Case | None = None, on: date | None = ON, day: int | None = None
    ) -> Decision:
        when = read_when(text, on)
        ask = reader.read(text, when)
        assert ask is not None
        return decide(protocol, activities, ask, case, on, day, when)

    return answer


def dog(day: int, **more: object) -> Case:
    return Case("", "", fitted=ON - timedelta(days=day - 1), **more)  # type: ignore[arg-type]


def test_the_date_of_the_change(say: Decide) -> None:
    found = say("may he run after a frisbee", dog(20)).verdict
    assert (found.say, found.day, found.stage) == (Say.NOT_YET, 20, "restricted")
    assert found.changes_on == date(2027, 2, 6)
    assert "On 6 February 2027 the gradual return stage starts" in found.text
    assert all(c.startswith("activities.yaml:") for c in found.cites)


def test_without_a_day_all_stages_and_a_question_back(say: Decide) -> None:
    found = say("can she do stairs")
    assert found.verdict.say is Say.NOT_YET
    assert found.verdict.day is None
    assert found.asks_back == "When was the fitting day?"
    for stage in ("break-in", "restricted", "gradual return", "long term"):
        assert stage in found.verdict.text


def test_where_all_stages_agree_nothing_is_asked_back(say: Decide) -> None:
    found = say("may she sleep in it")
    assert (found.verdict.say, found.asks_back) == (Say.NO, None)
    assert "By stage" not in found.verdict.text


def test_the_words_beat_the_case_and_say_so(say: Decide) -> None:
    found = say("it's been four months, can he play fetch", dog(20))
    assert found.verdict.stage == "return"
    (note,) = found.notes
    assert "day 20" in note
    assert "four months" in note


def test_words_that_fit_the_case_leave_its_dates(say: Decide) -> None:
    found = say("it's been about three weeks, can he play fetch", dog(20))
    assert (found.verdict.day, found.notes) == (20, ())


def test_a_restriction_wins_and_names_its_end(say: Decide) -> None:
    bar = Restriction("stairs", ON - timedelta(days=3), date(2026, 12, 6))
    found = say("can she do the stairs", dog(40, restrictions=(bar,))).verdict
    assert found.say is Say.NO
    assert "6 December 2026" in found.text
    assert found.changes_on == date(2026, 12, 7)


def test_hours_follow_the_diary(say: Decide) -> None:
    case = dog(6, diary=(DiaryEntry(ON - timedelta(days=1), 5.0),))
    assert "up to 6 hours" in say("how many hours today", case).verdict.text
    found = say("can he wear it 8 hours today", case).verdict
    assert (found.say, found.changes_on) == (Say.NOT_YET, ON + timedelta(days=2))


def test_after_a_sore_neither_hours_nor_games(say: Decide) -> None:
    case = dog(131, diary=(DiaryEntry(ON - timedelta(days=1), 10.0, Skin.SORE),))
    assert say("how many hours today", case).verdict.say is Say.NO
    assert say("can he play fetch", case).verdict.say is Say.ASK_FIRST
    lame = dog(131, diary=(DiaryEntry(ON - timedelta(days=1), 10.0, gait=Gait.WORSE),))
    assert say("can he play fetch", lame).verdict.say is Say.ASK_FIRST


@pytest.mark.parametrize(
    ("text", "want"),
    [
        ("she has an open sore, how many hours today", Say.NO),
        ("there was redness, can we do 8 hours today", Say.NOT_YET),
        ("we missed a week, can he wear it 8 hours today", Say.YES_WITH_LIMITS),
    ],
)
def test_a_setback_told_in_the_question_beats_the_ramp(say: Decide, text: str, want: Say) -> None:
    found = say(text, dog(9)).verdict
    assert found.say is want
    assert "11 hours" not in found.text


def test_tomorrow_is_the_next_day(say: Decide) -> None:
    assert "up to 7 hours on day 5" in say("how many hours tomorrow", dog(4)).verdict.text


def test_a_bare_day_number_gives_no_dates(say: Decide) -> None:
    found = say("can he run", on=None, day=20).verdict
    assert (found.day, found.changes_on) == (20, None)
    assert "3 months after fitting" in found.text


def test_impossible_days(say: Decide) -> None:
    with pytest.raises(InputError):
        say("can he run", on=None, day=0)
    with pytest.raises(InputError):
        say("can he run", dog(-3))
