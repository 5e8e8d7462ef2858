"""Today: what this dog may do on this day, what is to tick, what comes next."""

from __future__ import annotations

import asyncio
from datetime import date, timedelta
from typing import Any, ClassVar

from textual import events, work
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical, VerticalScroll

from guidebot.domain.case import Case
from guidebot.tui.desk import Day
from guidebot.tui.forms import SKIN_FIELD, diary_fields, entry_from
from guidebot.tui.prose import plain_block
from guidebot.tui.screens.area import Area, state_line
from guidebot.tui.screens.card import Form
from guidebot.tui.steps import alerts_in
from guidebot.tui.widgets.words import Line, Prose

NO_DOG = (
    "No dog is chosen, so no day can be counted.\n\n"
    "F9 chooses a dog or adds one. In Talk you can also just write the day into your question."
)


def day_text(day: Day, ticks: str) -> str:
    """Everything but the title and the reasons."""
    return plain_block(
        f"Hours: {day.hours}" if day.hours else "",
        "\n".join(["Wear, with a skin check after each:", *(f"- {s}" for s in day.sessions)])
        if day.sessions
        else "",
        day.stages,
        f"Walks: {day.walk}" if day.walk else "",
        ticks,
        "\n".join(["Next:", *(f"- {line}" for line in day.next)]) if day.next else "",
    )


def ticks_of(case: Case, on: date) -> str:
    """What is done and what is still to do, in words and boxes."""
    noted = [entry for entry in case.diary if entry.on == on]
    powder = any(entry.powder for entry in noted)
    skin = any(entry.skin for entry in noted)
    hours = [entry.worn_hours for entry in noted if entry.worn_hours is not None]
    return "\n".join(
        [
            f"[{'x' if powder else ' '}] powder used{'' if powder else '  (p)'}",
            f"[{'x' if skin else ' '}] skin looked at{'' if skin else '  (s)'}",
            f"[{'x' if hours else ' '}] hours noted{f': {hours[-1]:g}' if hours else '  (d)'}",
        ]
    )


class TodayScreen(Area):
    """The day of the dog that is chosen."""

    NAME = "Today"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("d", "diary(0)", "Diary"),
        Binding("y", "diary(1)", "Yesterday", show=False),
        Binding("p", "powder", "Powder"),
        Binding("s", "skin", "Skin"),
    ]

    def body(self) -> ComposeResult:
        """The day, with the chart beside or below it."""
        with VerticalScroll(id="day-pair"):
            with Vertical(id="day"):
                yield Line(id="day-title")
                yield Line(id="day-why")
                yield Prose(id="day-text")
                yield Line(
                    "d: diary for today · y: for yesterday · p: powder · s: skin · F9: dog",
                    classes="hint",
                )
            with Vertical(id="chart-box"):
                yield Line(id="chart")

    def on_mount(self) -> None:
        """The arrow keys scroll."""
        super().on_mount()
        self.query_one("#day-pair").focus()

    def sync(self) -> None:
        """Count the day anew."""
        super().sync()
        session = self.session
        guide, case, on = session.guide, session.case, session.today()
        if guide is None or case is None:
            self._say("Today", (), state_line(session) or NO_DOG, "")
            return
        day = session.desk.day(guide, case, on, session.now().time())
        # Beside the day the chart gets two thirds of the screen, below it the whole.
        width = self.size.width * 2 // 3 - 4 if self.has_class("-wide") else self.size.width - 4
        chart = session.desk.chart(guide, case, on, width)
        why = (session.told, *day.why) if session.told else day.why
        self._say(day.title, why, day_text(day, ticks_of(case, on)), chart, day.flagged)

    def on_resize(self, event: events.Resize) -> None:
        """The chart is as wide as the screen lets it."""
        self.sync()

    def _say(
        self, title: str, why: tuple[str, ...], text: str, chart: str, flagged: bool = False
    ) -> None:
        self.query_one("#day-title", Line).say(title)
        lead = "CHANGED PLAN: " if flagged else ""
        self.query_one("#day-why", Line).say(lead + " ".join(why) if why else "")
        self.query_one("#day-text", Prose).say(text)
        self.query_one("#chart", Line).say(chart)
        self.query_one("#chart-box").display = bool(chart)

    @work(group="form", exit_on_error=False)
    async def action_powder(self) -> None:
        """Tick the powder."""
        if self._case():
            await self._note({"powder": True}, 0)

    @work(group="form", exit_on_error=False)
    async def action_skin(self) -> None:
        """Note the skin check."""
        if self._case():
            form = Form("Skin check", [SKIN_FIELD])
            await self._note(await self.app.push_screen_wait(form), 0)

    @work(group="form", exit_on_error=False)
    async def action_diary(self, back: int) -> None:
        """Note a day of wear."""
        if case := self._case():
            on = self.session.today() - timedelta(days=back)
            form = Form(f"Diary of {case.dog}, {on.isoformat()}", diary_fields())
            await self._note(await self.app.push_screen_wait(form), back)

    def _case(self) -> Case | None:
        if self.session.case is None:
            self.base.tell("Choose a dog first: F9.")
        return self.session.case

    async def _note(self, replies: dict[str, Any] | None, back: int) -> None:
        """Keep an entry; what it reports is shown before anything else."""
        session = self.session
        case, desk = session.case, session.desk
        if case is None or not replies or all(value is None for value in replies.values()):
            return
        entry = entry_from(replies, session.today() - timedelta(days=back))
        if case.fitted and entry.on < case.fitted:
            self.base.tell("That day is before the fitting day; nothing was noted.")
            return
        case = desk.with_entry(case, entry)
        self.base.choose_case(case)
        for alert in alerts_in(session, entry):
            self.base.warn(alert)
        written = await asyncio.to_thread(desk.log, case, entry)
        if session.case is case:
            self.base.choose_case(written)
        self.base.tell(desk.trouble or f"Noted for {entry.on.isoformat()}.")
