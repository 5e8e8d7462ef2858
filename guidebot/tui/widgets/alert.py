"""The block that says stop: pinned above everything, kept until it is acknowledged."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.containers import VerticalScroll

from guidebot.domain.sign import Alert, Tier
from guidebot.tui.prose import plain_block
from guidebot.tui.steps import sign_name
from guidebot.tui.widgets.words import Line, Prose

KEY = "F8"


def headword(alert: Alert) -> str:
    """EMERGENCY or ALERT."""
    return "EMERGENCY" if alert.tier is Tier.EMERGENCY else "ALERT"


class AlertBlock(VerticalScroll):
    """Heavy border with words in it, so that it stands out without colour.

    The border holds the word and the key and never scrolls; on a very low terminal only the lines
    inside it do.
    """

    def compose(self) -> ComposeResult:
        """What it is, the owner's words, what to do, what else was noticed."""
        yield Line(id="alert-headline")
        yield Line(id="alert-quote")
        yield Prose(id="alert-do")
        yield Line(id="alert-more")

    def show(self, pending: list[Alert]) -> None:
        """Show the first of the alerts not yet acknowledged; nothing if there is none."""
        self.display = bool(pending)
        if not pending:
            return
        alert = pending[0]
        more = f" (1 of {len(pending)})" if len(pending) > 1 else ""
        self.border_title = f"!! {headword(alert)}{more} !!"
        self.border_subtitle = f"{KEY}: I have read this"
        self.query_one("#alert-headline", Line).say(alert.headline)
        self.query_one("#alert-quote", Line).say(
            f'You wrote: "{alert.quote}"' if alert.quote else ""
        )
        steps = "\n".join(f"{n}. {line}" for n, line in enumerate(alert.do, start=1))
        self.query_one("#alert-do", Prose).say(steps)
        asks = f"Please tell us: {alert.asks}" if alert.asks else ""
        also = f"Also noticed: {'; '.join(map(sign_name, alert.also))}" if alert.also else ""
        self.query_one("#alert-more", Line).say(plain_block(asks, also))
        self.scroll_home(animate=False)


class AlertMemory(Line):
    """One line that keeps an acknowledged alert in mind for the rest of the talk."""

    def show(self, seen: Alert | None, pending: list[Alert]) -> None:
        """Say which alert was read; nothing while another one stands above."""
        read = f"! Alert read; {KEY} shows it again: {seen.headline}" if seen else ""
        self.say("" if pending else read)
