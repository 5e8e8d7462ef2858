"""Talk: asking, answering, alerts, choices, sources, pastes."""

from __future__ import annotations

import threading

from textual import events
from textual.pilot import Pilot
from textual.widgets import OptionList
from tui_fakes import FakeAssistant, Setup, answer, ask, screen_text, settle

from guidebot.domain.answer import Answer
from guidebot.errors import ContentError, ExitCode
from guidebot.text import MAX_CHARS
from guidebot.tui.app import GuidebotApp
from guidebot.tui.steps import alert_of
from guidebot.tui.widgets.alert import AlertBlock
from guidebot.tui.widgets.question import QuestionBox, cleaned_paste
from guidebot.tui.widgets.reading import ReadingPane


async def test_an_answer_is_shown_in_order(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await ask(pilot, "can she do stairs")
        text = screen_text(setup.app)
        order = [
            "You asked: can she do stairs",
            "Verdict: Not yet.",
            "Carry the dog.",
            "2. Do the second [b]thing[/b].",
            "1. Source: Stairs [and/or] doors",
            "Caution:",
        ]
        assert sorted(order, key=text.index) == order


async def test_a_follow_up_shows_how_it_was_read(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await ask(pilot, "can she do stairs")
        await ask(pilot, "and in the evening?")
        assert "Read as: stairs: and in the evening?" in screen_text(setup.app)
        await pilot.press("ctrl+up")
        assert "You asked: can she do stairs" in screen_text(setup.app)
        await pilot.press("ctrl+down")
        assert "You asked: and in the evening?" in screen_text(setup.app)


async def test_an_alert_stands_above_the_answer_until_it_is_acknowledged(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await ask(pilot, "there is blood, and can we do stairs")
        text = screen_text(setup.app)
        assert "EMERGENCY" in text
        assert text.index("Press a clean cloth") < text.index("You asked:")
        for key in ("enter", "escape", "space", "pagedown", "pagedown", "f6", "ctrl+down"):
            await pilot.press(key)
        assert "Press a clean cloth" in screen_text(setup.app)
        for key, place in (("f3", "Today"), ("f4", "Hands on"), ("f5", "Staff"), ("f2", "Talk")):
            await pilot.press(key)
            await settle(pilot)
            assert f"guidebot · {place}" in screen_text(setup.app)
            assert "1. Press a clean cloth on the spot." in screen_text(setup.app)
        await ask(pilot, "thanks")
        assert "1. Press a clean cloth on the spot." in screen_text(setup.app)
        await pilot.press("f8")
        text = screen_text(setup.app)
        assert "Press a clean cloth" not in text
        assert "Alert read; F8 shows it again: Emergency: heavy bleeding" in text
        await pilot.press("f8")
        assert "1. Press a clean cloth on the spot." in screen_text(setup.app)


async def test_an_alert_closes_the_windows_above_it(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await pilot.press("f1")
        assert setup.app.screen.is_modal
        setup.app.ask("there is blood")
        await settle(pilot)
        assert not setup.app.screen.is_modal
        assert "Press a clean cloth" in screen_text(setup.app)


async def test_an_alert_keeps_its_border_words_on_the_lowest_screen(setup: Setup) -> None:
    async with setup.app.run_test(size=(40, 12)) as pilot:
        await settle(pilot)
        await ask(pilot, "blood")
        block = setup.app.screen.query_one(AlertBlock)
        block.focus()
        await pilot.press("end", "pagedown")
        await settle(pilot)
        text = screen_text(setup.app)
        assert "EMERGENCY" in text
        assert "F8: I have read this" in text


async def test_unsure_offers_titles_to_pick(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await ask(pilot, "maybe this or that")
        text = screen_text(setup.app)
        assert "1. Stairs [and/or] doors" in text
        assert "2. Washing it" in text
        await pilot.press("2", "enter")
        await pilot.pause(0.1)
        await settle(pilot)
        assert setup.app.screen.query_one(ReadingPane).open_key == "wash-it"
        assert len(setup.talk.heard) == 1


async def test_a_number_is_a_message_when_nothing_is_offered(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await ask(pilot, "can she do stairs")
        await ask(pilot, "2")
        assert setup.talk.heard[-1] == "2"


async def test_the_reading_pane_walks_through_the_sources(setup: Setup) -> None:
    async with setup.app.run_test(size=(160, 40)) as pilot:
        await settle(pilot)
        await pilot.press("f6")
        assert "There is no source to open yet" in screen_text(setup.app)
        await ask(pilot, "can she do stairs")
        pane = setup.app.screen.query_one(ReadingPane)
        await pilot.press("f6")
        await settle(pilot)
        assert pane.open_key == "lift-door"
        assert "From: passages/x/lift-door.md" in screen_text(setup.app)
        assert pane.region.x > 60, "beside the answer on a wide screen"
        await pilot.press("f6")
        assert pane.open_key == "wash-it"
        await pilot.press("f6")
        assert not pane.display
        assert isinstance(setup.app.focused, QuestionBox)


async def test_the_reading_pane_goes_below_on_a_narrow_screen(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await ask(pilot, "can she do stairs")
        await pilot.press("f6")
        await settle(pilot)
        pane = setup.app.screen.query_one(ReadingPane)
        assert pane.region.x == 0
        assert pane.region.height >= 6


async def test_a_row_opens_with_the_keyboard_alone(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await ask(pilot, "can she do stairs")
        setup.app.screen.query_one("#rows", OptionList).focus()
        await pilot.press("2")
        assert setup.app.screen.query_one(ReadingPane).open_key == "wash-it"


async def test_letters_go_to_the_question_box_from_anywhere(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 40)) as pilot:
        await settle(pilot)
        await ask(pilot, "can she do stairs")
        await pilot.press("f6", "w", "h", "y")
        assert setup.app.screen.query_one(QuestionBox).text == "why"


async def paste(pilot: Pilot[int], text: str) -> None:
    """As the driver does it: one event with the whole text."""
    pilot.app.post_message(events.Paste(text))
    await settle(pilot)


async def test_a_paste_of_300_lines_keeps_every_line_and_no_escape(setup: Setup) -> None:
    lines = [f"line {n} [/b] [red]\x1b[31mx\x1b]0;title\x07 \u202eabc\x9b2J" for n in range(300)]
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await paste(pilot, "\r\n".join(lines))
        box = setup.app.screen.query_one(QuestionBox)
        assert box.text.count("\n") == 299
        assert box.text.splitlines()[299] == "line 299 [/b] [red]x abc"
        await pilot.press("enter")
        await pilot.pause(0.1)
        await settle(pilot)
        assert setup.talk.heard[0].count("\n") == 299
        assert "You asked: line 0 [/b] [red]x abc" in screen_text(setup.app)
        assert not any(ord(char) < 32 and char != "\n" for char in screen_text(setup.app))


async def test_a_paste_typed_by_a_plain_terminal_is_one_message(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        for key in ("a", "enter", "b", "enter"):  # no pause between: as bytes of one read
            setup.app.post_message(events.Key(key, key if len(key) == 1 else "\r"))
        await pilot.pause(0.15)
        await settle(pilot)
        assert setup.talk.heard == ["a\nb"]


async def test_ctrl_j_begins_a_new_line(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await pilot.press("a", "ctrl+j", "b")
        assert setup.app.screen.query_one(QuestionBox).text == "a\nb"


def test_a_paste_over_the_limit_stays_over_it() -> None:
    assert len(cleaned_paste("word \x1b[31m" * MAX_CHARS)) > MAX_CHARS
    assert cleaned_paste("a\x00b") == "ab"


async def test_a_failure_ends_in_stop_and_call(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await ask(pilot, "boom")
        text = screen_text(setup.app)
        assert "Stop and call" in text
        assert "call the clinic" in text
        await ask(pilot, "can she do stairs")
        assert "Carry the dog." in screen_text(setup.app)


async def test_a_broken_guide_is_told_and_gives_its_exit_code() -> None:
    def opener(content: object, say: object) -> FakeAssistant:
        raise ContentError("the guide [/is] missing", remedy="Name another folder")

    app = GuidebotApp(opener=opener)
    async with app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        assert "the guide [/is] missing. Name another folder" in screen_text(app)
        await ask(pilot, "there is blood")
        assert "Stop and call" in screen_text(app)
    assert app.session.code is ExitCode.GUIDE_INVALID


async def test_the_person_can_type_and_ask_while_the_guide_opens() -> None:
    gate = threading.Event()
    setup = Setup()

    def opener(content: object, say: object) -> FakeAssistant:
        say("counting [words]")  # type: ignore[operator]
        gate.wait(10)
        return FakeAssistant()

    app = GuidebotApp(opener=opener, starter=lambda assistant, case: setup.talk, desk=setup.desk)
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause(0.1)
        assert "opening the guide: counting [words]" in screen_text(app)
        await pilot.press("h", "i", "enter")
        await pilot.pause(0.1)
        assert "Your question waits" in screen_text(app)
        await pilot.press("y", "o")
        assert app.screen.query_one(QuestionBox).text == "yo"
        gate.set()
        await settle(pilot)
        assert setup.talk.heard == ["hi"]
        assert app.screen.query_one(QuestionBox).text == "yo"


async def test_typing_goes_on_while_an_answer_is_looked_for(setup: Setup) -> None:
    gate = threading.Event()

    def slow(text: str) -> Answer:
        gate.wait(10)
        return answer()

    setup.talk.say = slow  # type: ignore[method-assign]
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await pilot.press("a", "enter")
        await pilot.pause(0.1)
        await pilot.press("b", "c")
        assert setup.app.screen.query_one(QuestionBox).text == "bc"
        gate.set()
        await settle(pilot)
        assert "Carry the dog." in screen_text(setup.app)


async def test_words_typed_in_the_reading_pane_reach_the_box_whole(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await ask(pilot, "can she do stairs")
        await pilot.press("f6")
        # As fast as a terminal hands them over, without a pause between.
        for key in "her toes are blue":
            setup.app.post_message(events.Key("space" if key == " " else key, key))
        await settle(pilot)
        assert setup.app.screen.query_one(QuestionBox).text == "her toes are blue"


def test_a_milder_alert_does_not_take_the_place_of_an_emergency(setup: Setup) -> None:
    session = setup.app.session
    emergency, milder = alert_of("bleeding-heavy"), alert_of("redness-stays")
    session.warn(emergency)
    session.acknowledge()
    session.warn(milder)
    assert session.gravest is emergency
    assert session.bars_wear
    session.acknowledge()
    assert session.seen is emergency
    session.forget()
    assert not session.bars_wear
