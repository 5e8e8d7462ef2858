"""Leave as the whole pipeline reads it: what is asked for, and what it really is."""

from __future__ import annotations

from datetime import date

import pytest

from guidebot.domain.answer import Outcome
from guidebot.render.text import render
from guidebot.reply.dialogue import Dialogue
from guidebot.reply.pipeline import Assistant

ON = date(2026, 11, 25)


@pytest.mark.parametrize(
    ("text", "day", "activity", "say"),
    [
        # the device is off, or it is not
        ("is a bath with the brace off ok", 20, "bath-bare", "yes-with-limits"),
        ("is a bath with the brace on ok", 20, "bath", "no"),
        # set by somebody who may, or found somewhere
        ("can we do the exercises the physio gave us", 20, "exercises-set", "yes-with-limits"),
        ("can we do exercises from a video", 20, "exercises", "ask-first"),
        # over a distance, or a little
        ("may he jog a 5k with me", 120, "long-run", "ask-first"),
        ("may he jog beside me for a bit", 120, "jog", "yes-with-limits"),
        # alone in the day is not alone in the night
        ("can he stay in it overnight in his crate", 20, "sleep", "no"),
        # hours in one go
        ("day 1, is an hour in one piece ok", None, "wear", "not-yet"),
        ("day 1, is an hour ok", None, "wear", "yes-with-limits"),
        ("day 30, twelve hours in one go ok?", None, "wear", "yes-with-limits"),
        # a day missed is not made up for
        ("Day 5, yesterday got skipped. Seven hours today?", None, "wear", "not-yet"),
        ("is a walk of 25 minuets ok", 3, "walk", "not-yet"),
        ("may he chew the straps a bit", 5, "chew", "no"),
        # wet, broken, or a sore under it
        ("he swam in it, can I leave it on him while it is wet", 20, "wet-wear", "no"),
        ("the shell is split, can I tape it and cut the edge", 20, "broken-wear", "no"),
        ("a raw open spot this morning, is it alright to go on wearing it", 20, "wear", "no"),
        # the lead, the night, the hour
        ("for the midnight wee, can I skip the lead", 50, "toilet-free", "not-yet"),
        ("may he go up the stairs as often as he wants", 60, "stairs-alone", "not-yet"),
        ("on at breakfast and off at bedtime, is that alright", 36, "wear", "yes-with-limits"),
        ("can he walk for a quarter of an hour", 5, "walk", "yes-with-limits"),
        (
            "limping more after our walk, may we do a slightly longer one",
            16,
            "walk-build",
            "not-yet",
        ),
    ],
)
def test_what_is_asked_for(
    assistant: Assistant, text: str, day: int | None, activity: str, say: str
) -> None:
    verdict = assistant.answer(text, on=ON, day=day).verdict
    assert verdict is not None
    assert (verdict.activity, verdict.say.value) == (activity, say)


@pytest.mark.parametrize(
    "text",
    [
        "how do i wash the soft sleeve",
        "what order do the straps go in",
        "the pad does not touch the shin, is that how it should be made",
        "how many spoons of powder do you put in",
    ],
)
def test_how_gets_no_verdict(assistant: Assistant, text: str) -> None:
    assert assistant.answer(text, on=ON).verdict is None


@pytest.mark.parametrize(
    ("text", "say"),
    [
        ("the vet says no stairs for three weeks, may he climb two steps", "ask-first"),
        ("our vet says he is doing great. may he go for a walk", "yes-with-limits"),
    ],
)
def test_an_order_beats_the_guide_and_praise_does_not(
    assistant: Assistant, text: str, say: str
) -> None:
    verdict = assistant.answer(text, on=ON, day=120).verdict
    assert verdict is not None
    assert verdict.say.value == say


def test_a_fragment_after_a_fragment_keeps_the_thread(assistant: Assistant) -> None:
    talk = Dialogue(assistant, on=ON)
    assert (talk.say("how do i wash the rubbery sleeve").need or "").startswith("care.")
    for text in ("how often?", "and with what?"):
        assert (talk.say(text).need or "").startswith("care.")


@pytest.mark.parametrize("told", ["5 days ago", "last Friday", "on 20 November", "day 6"])
def test_the_fitting_day_told_in_reply_answers_the_question(
    assistant: Assistant, told: str
) -> None:
    talk = Dialogue(assistant, on=ON)
    assert talk.say("may she climb stairs").asks_back == "When was the fitting day?"
    reply = talk.say(told)
    assert reply.verdict is not None
    assert (reply.verdict.activity, reply.verdict.day) == ("stairs", 6)
    assert reply.need == "activity.stairs"
    after = talk.say("and fetch?")
    assert after.verdict is not None
    if told != "day 6":
        assert (after.verdict.activity, after.verdict.day) == ("fetch", 6)


def test_a_question_in_place_of_the_fitting_day_is_answered(assistant: Assistant) -> None:
    talk = Dialogue(assistant, on=ON)
    talk.say("may she climb stairs")
    assert talk.say("how do i wash the sleeve").need == "care.sleeve"


def test_an_activity_named_in_a_follow_up_leads(assistant: Assistant) -> None:
    talk = Dialogue(assistant, on=ON)
    talk.say("does she sleep in it")
    answer = talk.say("and in the car")
    assert answer.verdict is not None
    assert (answer.verdict.activity, answer.need) == ("car", "activity.car")


def test_beside_an_alert_nothing_reads_as_if_all_were_well(assistant: Assistant) -> None:
    answer = assistant.answer("her toes are blue and icy, can she go for a walk", on=ON, day=20)
    assert answer.alert is not None
    assert answer.verdict is not None
    assert answer.verdict.text.startswith("First do what the alert says")
    alone = assistant.answer("her toes are blue and icy", on=ON)
    assert alone.alert is not None
    assert "does not answer" not in alone.lead


def test_a_question_of_how_after_one_of_leave_gets_no_verdict(assistant: Assistant) -> None:
    talk = Dialogue(assistant, on=ON)
    talk.say("may she hop up on the settee, five weeks in")
    assert talk.say("what if i cant get two fingers under the bit at the back").verdict is None


def test_an_urgent_alert_is_not_followed_by_what_is_normal_at_first(assistant: Assistant) -> None:
    text = "since the weekend he carries the leg, the foot will not take any weight at all"
    answer = assistant.answer(text, on=ON)
    assert answer.alert is not None
    assert answer.alert.tier.key == "vet-today"
    assert "common" not in answer.lead
    assert answer.outcome is not Outcome.ANSWERED or not (answer.need or "").startswith("adapt.")


def test_a_verdict_beside_an_alert_says_its_word_once(assistant: Assistant) -> None:
    answer = assistant.answer("theres a wet hole in her heel, can we do stairs", on=ON, day=4)
    assert answer.alert is not None
    shown = " ".join(render(answer).split())
    assert "Verdict: First do what the alert says" in shown
    assert "Verdict: Not yet." not in shown
