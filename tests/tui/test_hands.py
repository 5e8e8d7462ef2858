"""Hands on: steps, sleeves, parts, the fit check."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tui_fakes import Setup, ask, screen_text, settle, small_guide

from guidebot.domain.case import Case
from guidebot.tui.steps import FitCheck, alert_of, passage_for, steps_for

SHORT = Case("rex", "Rex", sleeve="short", parts=frozenset({"wing"}))


async def test_putting_on_goes_one_step_at_a_time_with_its_check(setup: Setup) -> None:
    setup.app.session.case = SHORT
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await pilot.press("f4", "1")
        await settle(pilot)
        assert "step 1 of 4" in screen_text(setup.app)
        assert "Check: All straps are open." in screen_text(setup.app)
        await pilot.press("space")
        text = screen_text(setup.app)
        assert "step 2 of 4" in text
        assert "Close short sleeve" in text
        assert "One finger fits." in text
        assert "long sleeve" not in text
        await pilot.press("space", "b", "space", "n", "right")
        assert "All steps are done." in screen_text(setup.app)
        await pilot.press("left")
        assert "step 4 of 4" in screen_text(setup.app)
        await pilot.press("m")
        assert "What do you want to do?" in screen_text(setup.app)


async def test_an_unknown_sleeve_is_asked_and_an_unknown_part_is_said(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await pilot.press("f4", "1")
        await settle(pilot)
        assert "Which sleeve does the device have?" in screen_text(setup.app)
        await pilot.press("2", "space")
        assert "Close long sleeve" in screen_text(setup.app)
        await pilot.press("space")
        assert "Only if your device has this part: wing strap" in screen_text(setup.app)


async def test_the_fit_check_ends_in_pictures_a_passage_or_an_alert(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await pilot.press("f4", "3")
        await settle(pilot)
        await pilot.press("1", "2")
        text = screen_text(setup.app)
        assert "Send these pictures to Ashmoor: a@ashmoor.example" in text
        assert "Pictures that help" in text
        await pilot.press("space", "2")
        assert "Looking at gaps" in screen_text(setup.app)
        await pilot.press("space")
        assert "The check is done" in screen_text(setup.app)
        await pilot.press("m", "3", "2")
        await settle(pilot)
        text = screen_text(setup.app)
        assert "EMERGENCY" in text
        assert "F8: I have read this" in text
        assert "The check stops here" in text


def test_the_walk_follows_every_kind_of_target() -> None:
    check = FitCheck(small_guide())
    assert not check.choose(9)
    assert check.choose(3)
    assert check.at == 2, "step:gaps skips the question between"
    check.back()
    assert check.at == 0
    check.choose(1)
    check.choose(1)
    check.choose(1)
    assert check.done
    assert not check.choose(1), "nothing more is asked"
    check.back()
    assert not check.done
    check = FitCheck(small_guide())
    check.choose(2)
    assert check.alert is not None
    assert check.alert.sign == "foot-no-blood"


def test_an_unknown_sign_still_stops() -> None:
    assert alert_of("no-such-sign").sign == "stop-and-call"


@pytest.mark.parametrize(
    ("sleeve", "parts", "titles"),
    [
        ("short", frozenset(), ["Get ready", "Close short sleeve", "Look"]),
        ("long", frozenset({"wing"}), ["Get ready", "Close long sleeve", "Close the wing", "Look"]),
        (None, None, ["Get ready", "Close the wing", "Look"]),
    ],
)
def test_steps_are_those_of_the_device(
    sleeve: str | None, parts: frozenset[str] | None, titles: list[str]
) -> None:
    assert [s.title for s in steps_for(small_guide().putting_on, sleeve, parts)] == titles


def test_the_passage_of_this_sleeve_comes_first() -> None:
    guide = small_guide()
    plain = guide.passages["wash-it"]
    long = replace(plain, id="a-long", applies=replace(plain.applies, sleeve="long"))
    guide = replace(guide, passages={**guide.passages, "a-long": long})
    assert passage_for(guide, "care.wash", SHORT) == plain
    assert passage_for(guide, "care.wash", replace(SHORT, sleeve="long")) in (plain, long)
    assert passage_for(guide, "no.need", None) is None


async def test_putting_on_says_stop_after_an_alert(setup: Setup) -> None:
    """What an alert told must not be forgotten one screen later, read or not."""
    async with setup.app.run_test(size=(100, 40)) as pilot:
        await settle(pilot)
        await ask(pilot, "blood")
        await pilot.press("f8", "f4", "1", "1")
        await settle(pilot)
        assert "Stop." in screen_text(setup.app)


async def test_no_steps_for_putting_it_on_while_a_veterinarian_is_due(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await ask(pilot, "there is blood, and can we do stairs")
        await pilot.press("f8", "f4", "1")
        await settle(pilot)
        text = screen_text(setup.app)
        assert "Not now" in text
        assert "step 1 of" not in text
        await pilot.press("space")
        assert "Not now" in screen_text(setup.app)
