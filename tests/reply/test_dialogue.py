"""Conversations: follow-ups, changes of subject, thanks, and alerts that stay."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

import pytest

from guidebot.domain.answer import Outcome
from guidebot.domain.case import Case
from guidebot.reply import phrases, pipeline
from guidebot.reply.dialogue import Dialogue
from guidebot.reply.pipeline import Assistant
from guidebot.safety.judge import Judgement, judge
from guidebot.search.engine import SearchEngine
from guidebot.text import Cleaned

ON = date(2026, 11, 20)


@pytest.fixture
def talk(assistant: Assistant) -> Dialogue:
    return Dialogue(assistant, on=ON)


def test_three_turns_about_one_thing(talk: Dialogue) -> None:
    first = talk.say("can she do the stairs on day 6")
    assert first.verdict
    assert (first.verdict.activity, first.verdict.day) == ("stairs", 6)
    assert first.read_as is None
    second = talk.say("and in month four?")
    assert second.verdict
    assert second.verdict.activity == "stairs"
    assert second.verdict.day
    assert second.verdict.day > 90
    assert second.verdict.say is not first.verdict.say
    third = talk.say("what about day 30?")
    assert third.verdict
    assert (third.verdict.activity, third.verdict.day) == ("stairs", 30)


def test_a_fragment_is_read_in_the_light_of_the_turn_before(
    talk: Dialogue, assistant: Assistant
) -> None:
    topic = talk.say("how do i wash the sleeve").need
    assert topic
    follow = talk.say("how often?")
    assert follow.need
    assert follow.need.split(".")[0] == topic.split(".")[0]
    assert follow.read_as
    assert assistant.answer("how often?").read_as is None


def test_a_change_of_subject_starts_anew(talk: Dialogue, assistant: Assistant) -> None:
    talk.say("can she do the stairs on day 6")
    other = talk.say("how do i wash the sleeve suspension when it is dirty?")
    alone = assistant.answer("how do i wash the sleeve suspension when it is dirty?", on=ON)
    assert other.verdict is None
    assert other.need == alone.need
    assert other.lead == alone.lead
    follow = talk.say("how often?")
    assert follow.need
    assert follow.need.split(".")[0] == other.need.split(".")[0]  # type: ignore[union-attr]


@pytest.mark.parametrize("between", ["thank you", "ok thanks!", "great"])
def test_thanks_in_the_middle_keep_the_context(talk: Dialogue, between: str) -> None:
    talk.say("can she do the stairs on day 6")
    assert talk.say(between).outcome is Outcome.COURTESY
    follow = talk.say("and in month four?")
    assert follow.verdict
    assert follow.verdict.activity == "stairs"


@pytest.mark.parametrize("between", ["", "   ", "\u200b"])
def test_an_empty_message_keeps_the_context(talk: Dialogue, between: str) -> None:
    talk.say("can she do the stairs on day 6")
    assert "no question" in talk.say(between).lead
    assert talk.say("and in month four?").verdict


def test_the_first_message_has_nothing_before_it(talk: Dialogue, assistant: Assistant) -> None:
    question = "and in month four?"
    assert talk.say(question) == assistant.answer(question, on=ON)


def test_an_alert_stays_and_only_rises(talk: Dialogue) -> None:
    assert talk.alert is None
    talk.say("how do i wash the sleeve")
    assert talk.alert is None
    low = talk.say("the skin under the strap is raw and wet").alert
    assert low
    assert talk.alert == low
    talk.say("how do i wash the sleeve")
    assert talk.alert == low
    high = talk.say("now blood is pouring from his leg").alert
    assert high
    assert high.tier > low.tier
    assert talk.alert == high
    talk.say("the skin under the strap is raw and wet")
    assert talk.alert
    assert talk.alert.tier == high.tier


def test_an_alert_in_a_later_turn_is_never_swallowed_by_the_subject(talk: Dialogue) -> None:
    talk.say("can she do the stairs on day 6")
    answer = talk.say("and in month four? blood is pouring from her leg")
    assert answer.alert
    assert answer.alert.tier.key == "emergency"


def test_conversations_do_not_know_of_each_other(assistant: Assistant) -> None:
    one, other = Dialogue(assistant, on=ON), Dialogue(assistant, on=ON)
    one.say("blood is pouring from his leg")
    one.say("can she do the stairs on day 6")
    assert other.alert is None
    assert other.say("and in month four?") == assistant.answer("and in month four?", on=ON)


def test_the_rules_see_the_messages_before(talk: Dialogue, monkeypatch: pytest.MonkeyPatch) -> None:
    seen: list[tuple[str, ...]] = []

    def note(text: Cleaned, net: object, remembered: Sequence[str] = ()) -> Judgement:
        seen.append(tuple(remembered))
        return judge(text, net, remembered)  # type: ignore[arg-type]

    monkeypatch.setattr(pipeline, "judge", note)
    for number in range(9):
        talk.say(f"message {number}")
    assert seen[0] == ()
    assert seen[2] == ("message 0", "message 1")
    assert seen[8] == tuple(f"message {number}" for number in range(2, 8))


def test_the_dog_may_change_between_turns(talk: Dialogue) -> None:
    young = Case(id="a", dog="A", fitted=date(2026, 11, 18))
    old = Case(id="b", dog="B", fitted=date(2025, 11, 18))
    talk.case = young
    first = talk.say("may he do the stairs")
    talk.case = old
    second = talk.say("may he do the stairs")
    assert first.verdict
    assert second.verdict
    assert (first.verdict.day, second.verdict.stage != first.verdict.stage) == (3, True)


def test_a_fault_in_one_turn_does_not_end_the_conversation(
    talk: Dialogue, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*_: object, **__: object) -> None:
        raise RuntimeError("injected")

    talk.say("can she do the stairs on day 6")
    with monkeypatch.context() as patch:
        patch.setattr(SearchEngine, "search", fail)
        broken = talk.say("blood is pouring from his leg")
    assert broken.alert
    assert talk.alert == broken.alert
    assert talk.say("how do i wash the sleeve").outcome is Outcome.ANSWERED


def test_a_long_conversation_stays_itself(talk: Dialogue, assistant: Assistant) -> None:
    question = "how do i wash the sleeve suspension when it is dirty?"
    alone = assistant.answer(question, on=ON)
    for _ in range(20):
        answer = talk.say(question)
        assert (answer.outcome, answer.need, answer.alert) == (alone.outcome, alone.need, None)


@pytest.mark.parametrize(
    ("said", "noted"),
    [
        ("my vet said no walks this week, may we still go out", True),
        ("the surgeon told us to keep him in a crate, how many hours today", True),
        ("when do I see the vet", False),
    ],
)
def test_what_the_veterinarian_ordered_comes_first(
    said: str, noted: bool, assistant: Assistant
) -> None:
    assert (phrases.VET_FIRST in assistant.answer(said).notes) is noted


def test_hours_of_a_later_day_do_not_come_with_those_of_the_first(assistant: Assistant) -> None:
    answer = assistant.answer("how many hours today", day=6)
    assert answer.verdict
    assert answer.verdict.day == 6
    assert answer.passages[0].id not in ("first-day-hours", "first-day-step-by-step")


@pytest.mark.parametrize(
    "text", ["is it ok to do the top one before the ankle", "put on brace", "which strap first"]
)
def test_no_verdict_on_something_else(assistant: Assistant, text: str) -> None:
    assert assistant.answer(text).verdict is None
