"""Keys and sizes at random, looks, and what is on the screen to the letter."""

from __future__ import annotations

import asyncio
import random
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from textual import events
from tui_fakes import Setup, ask, screen_text, settle

from guidebot.domain.case import Case
from guidebot.tui.commands import ACTIONS, matching
from guidebot.tui.widgets.alert import AlertBlock

GOLDEN = Path(__file__).parent / "golden"
KEYS = (
    "f1 f2 f3 f4 f5 f6 f7 f8 f9 enter escape tab shift+tab up down left right pageup pagedown home "
    "end backspace delete space ctrl+j ctrl+p ctrl+up ctrl+down ctrl+a ctrl+z ctrl+y ctrl+k ctrl+b "
    "a b c d m n p q s y z 0 1 2 3 9 left_square_bracket slash full_stop"
).split()
CHARS = {"left_square_bracket": "[", "slash": "/", "full_stop": ".", "space": " ", "enter": "\r"}


@settings(
    max_examples=10,
    deadline=None,
    phases=[Phase.explicit, Phase.reuse, Phase.generate],  # a run takes seconds: no shrinking
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(keys=st.lists(st.sampled_from(KEYS), min_size=200, max_size=200))
async def test_two_thousand_keys_do_not_crash_it(
    keys: list[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """10 runs of 200 keys."""
    monkeypatch.setenv("GUIDEBOT_HOME", str(tmp_path))
    monkeypatch.setattr("guidebot.tui.clipboard.system_tool", lambda: None)
    setup = Setup()
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        setup.app.ask("blood, maybe stairs")
        for at, key in enumerate(keys):
            # As the driver does it; Pilot's own press waits 65 ms for each key.
            char = CHARS.get(key, key if len(key) == 1 else None)
            setup.app.post_message(events.Key(key, char))
            await asyncio.sleep(0)
            if at % 10 == 0:
                await pilot.pause()
        await settle(pilot)
        assert setup.app.is_running
        assert "guidebot" in screen_text(setup.app) or setup.app.screen.is_modal


async def test_a_resize_storm_keeps_alert_and_answer(setup: Setup) -> None:
    sizes = random.Random(7)
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await ask(pilot, "blood, can she do stairs")
        await pilot.press("f6")
        for turn in range(40):
            await pilot.resize_terminal(sizes.randint(1, 200), sizes.randint(1, 60))
            if turn % 8 == 0:
                await pilot.press(f"f{2 + turn // 8 % 4}")
        await pilot.press("f2")
        await pilot.resize_terminal(80, 24)
        await settle(pilot)
        assert setup.app.screen.query_one(AlertBlock).display
        text = screen_text(setup.app)
        assert "Press a clean cloth on the spot." in text
        await pilot.resize_terminal(200, 60)
        await settle(pilot)
        assert "Verdict: Not yet." in screen_text(setup.app)


@pytest.mark.parametrize("look", ["lamp", "paper", "ansi-dark", "ansi-light"])
async def test_every_look_shows_the_alert_in_words(
    look: str, setup: Setup, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("GUIDEBOT_LOOK", look)
    async with setup.app.run_test(size=(80, 24)) as pilot:
        setup.app.theme = look
        await settle(pilot)
        await ask(pilot, "blood")
        assert "EMERGENCY" in screen_text(setup.app)


async def test_no_colour_is_respected(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("NO_COLOR", "1")
    setup = Setup()
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await ask(pilot, "blood")
        assert setup.app.no_color
        text = screen_text(setup.app)
        assert "!! EMERGENCY !!" in text
        assert "\u250f" in text or "\u2501" in text, "the border is there without colour"


async def test_the_palette_reaches_passages_dogs_and_actions(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 30)) as pilot:
        await settle(pilot)
        setup.desk.add(Case("rex", "Rex [/b]"))
        assert [name for name, _ in matching(setup.app, "")] == [name for name, _ in ACTIONS]
        for query, name in (
            ("washing", "Read: Washing it"),
            ("rex", "Dog: Rex [/b]"),
            ("take off", "Take the device off, step by step"),
        ):
            assert matching(setup.app, query)[0][0] == name
        await pilot.press("ctrl+p", *"rex")
        await settle(pilot)
        assert "1. Dog: Rex [/b]" in screen_text(setup.app)
        await pilot.press("enter")
        await settle(pilot)
        assert setup.app.session.case is not None
        await pilot.press("ctrl+p", *"washing", "down", "up", "enter")
        await settle(pilot)
        assert "Short answer of wash-it." in screen_text(setup.app)


@pytest.mark.parametrize("action", [action for _, action in ACTIONS])
async def test_every_action_of_the_palette_runs(action: str, setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 30)) as pilot:
        await settle(pilot)
        await setup.app.run_action(action)
        await settle(pilot)


async def golden(setup: Setup, name: str, size: tuple[int, int], keys: list[str]) -> None:
    """Compare a screen to its file; the file is written when it is missing."""
    async with setup.app.run_test(size=size) as pilot:
        await settle(pilot)
        await ask(pilot, "blood" if name == "alert" else "can she do stairs")
        await pilot.press(*keys)
        await settle(pilot)
        text = screen_text(setup.app) + "\n"
    path = GOLDEN / f"{name}.txt"
    if not path.exists():
        path.parent.mkdir(exist_ok=True)
        path.write_text(text, encoding="utf-8")
        pytest.fail(f"{path.name} was written: look at it and run again")
    assert text == path.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("name", "size", "keys"),
    [
        ("answer", (80, 24), []),
        ("alert", (80, 24), []),
        ("reading-wide", (120, 30), ["f6"]),
        ("reading-narrow", (80, 24), ["f6"]),
        ("hands", (80, 24), ["f4", "1", "1", "space"]),
        ("help", (80, 44), ["f1"]),
    ],
)
async def test_screens_to_the_letter(
    setup: Setup, name: str, size: tuple[int, int], keys: list[str]
) -> None:
    await golden(setup, name, size, keys)


async def test_taking_back_many_lines_does_not_crash_it(setup: Setup) -> None:
    async with setup.app.run_test(size=(80, 24)) as pilot:
        await settle(pilot)
        await pilot.press(*["a", "ctrl+j"] * 12, "ctrl+a", "backspace")
        await pilot.press(*["ctrl+z", "ctrl+y", "down"] * 12, *["ctrl+z"] * 30)
        assert setup.app.is_running
