"""Talk: asking, answering, alerts, choices, sources."""

from __future__ import annotations

from tui_fakes import Setup, ask, screen_text, settle


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
