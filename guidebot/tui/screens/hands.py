"""Hands on: putting on, taking off and the fit check, large and one step at a time."""

from __future__ import annotations

from typing import ClassVar

from textual import events, on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical, VerticalScroll
from textual.widgets import Digits, OptionList

from guidebot.domain.guide import HandsOnStep
from guidebot.tui.prose import plain_block, spaced
from guidebot.tui.screens.area import Area, state_line
from guidebot.tui.session import NOT_NOW
from guidebot.tui.steps import FitCheck, only_if, steps_for
from guidebot.tui.widgets.answer import Rows
from guidebot.tui.widgets.reading import passage_text
from guidebot.tui.widgets.words import Line, Prose

MENU = [
    ("putting_on", "Put the device on"),
    ("taking_off", "Take the device off"),
    ("fit", "Check the fit"),
]
TITLES = dict(MENU)
NEW_TALK = "begin a new talk: Ctrl+P, new talk"


class HandsScreen(Area):
    """A menu, then one step or question at a time."""

    NAME = "Hands on"
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("space,right,n", "next", "Next"),
        Binding("backspace,left,b", "previous", "Back"),
        Binding("escape,m", "menu", "Menu"),
    ]

    def __init__(self) -> None:
        super().__init__()
        self._keys: list[str] = []
        self._what = ""
        self._sleeve: str | None = None
        self._steps: list[HandsOnStep] = []
        self._at = 0
        self._fit: FitCheck | None = None

    def body(self) -> ComposeResult:
        """Where we are, the big text, the check, choices, keys."""
        with VerticalScroll(id="hands"), Vertical(id="hands-column"):
            yield Line(id="hands-where")
            yield Digits("", id="hands-number")
            yield Line(id="hands-title")
            yield Prose(id="hands-do")
            yield Prose(id="hands-check")
            yield Rows(id="hands-rows")
            yield Line(id="hands-keys", classes="hint")

    def sync(self) -> None:
        """Show the menu, the step, or the question."""
        super().sync()
        guide = self.session.guide
        if guide is None:
            self._say("", "Hands on", state_line(self.session) or "", "", [], "")
            return
        if self._fit and self._fit.case is not self.session.case:
            self._fit.case = self.session.case
        if self._fit:
            self._show_fit(self._fit)
        elif self._barred:
            self._say(
                "",
                "Not now",
                plain_block(self.session.told, NOT_NOW.format(how=NEW_TALK)),
                "",
                [],
                "m: menu.",
            )
        elif self._what and self._sleeve is None and any(s.sleeve for s in self._all()):
            rows = [(s.key, s.name) for s in guide.device.sleeves]
            self._say(
                "",
                TITLES[self._what],
                "Which sleeve does the device have? The sheet your fitter gave you names it.",
                "",
                rows,
                "Press the number. Escape: back to the menu.",
            )
        elif self._what:
            self._show_step()
        else:
            self._say(
                "",
                "Hands on",
                "One step at a time. What do you want to do?",
                "",
                MENU,
                "Press the number.",
            )

    def start(self, what: str) -> None:
        """Begin putting on, taking off, or the fit check."""
        guide = self.session.guide
        if guide is None:
            return
        self._what, self._at, self._fit = what, 0, None
        case = self.session.case
        self._sleeve = case.sleeve if case else None
        if what == "fit":
            self._fit = FitCheck(guide, case)
        self._prepare()
        self.sync()

    def _all(self) -> tuple[HandsOnStep, ...]:
        guide = self.session.guide
        if guide is None or self._what not in ("putting_on", "taking_off"):
            return ()
        return guide.putting_on if self._what == "putting_on" else guide.taking_off

    def _parts(self) -> frozenset[str] | None:
        return self.session.case.parts if self.session.case else None

    def _prepare(self) -> None:
        self._steps = steps_for(self._all(), self._sleeve, self._parts())

    @property
    def _barred(self) -> bool:
        return self._what == "putting_on" and self.session.bars_wear

    def _show_step(self) -> None:
        guide = self.session.guide
        title = TITLES[self._what]
        if self._at >= len(self._steps) or guide is None:
            self._say(
                title,
                "Done",
                "All steps are done.",
                "",
                [("fit", "Check the fit now"), ("", "Back to the menu")],
                "Press the number. Left or b: one step back.",
            )
            return
        step = self._steps[self._at]
        check = f"Check: {step.check}" if step.check else ""
        told = self.session.told if self._what == "putting_on" else ""
        self._say(
            f"{title} · step {self._at + 1} of {len(self._steps)}",
            step.title,
            plain_block(told, only_if(step, guide, self._parts()), spaced(step.do)),
            check,
            [],
            "Space or right: done, next step. Left or b: back. m: menu.",
        )

    def _show_fit(self, fit: FitCheck) -> None:
        step = fit.guide.fit_check[fit.at]
        where = f"Fit check · question {fit.at + 1} of {len(fit.guide.fit_check)}"
        if fit.alert:
            self._say(
                where,
                "The check stops here",
                "\n".join([fit.alert.headline, *fit.alert.do]),
                "",
                [],
                "Read the alert above. Left or b: back to the question. m: menu.",
            )
        elif fit.done:
            self._say(
                "Fit check",
                "Done",
                "The check is done, and nothing in it needs the clinic beyond what you were shown.",
                "",
                [],
                "m: menu. Left or b: back.",
            )
        elif fit.passage:
            clinic = fit.guide.clinic
            send = f"Send these pictures to {clinic.name}: {clinic.email}" if fit.pictures else ""
            self._say(
                where,
                fit.passage.title,
                plain_block(send, passage_text(fit.passage, fit.guide)),
                "",
                [],
                "Space or right: go on with the check. Left or b: back. m: menu.",
            )
        else:
            rows = [(str(n), label) for n, (label, _) in enumerate(step.options, start=1)]
            self._say(where, step.ask, "", "", rows, "Press the number. Left or b: back. m: menu.")

    def _say(
        self, where: str, title: str, do: str, check: str, rows: list[tuple[str, str]], keys: str
    ) -> None:
        self.query_one("#hands-where", Line).say(where)
        number = self.query_one("#hands-number", Digits)
        number.update(self._number())
        number.display = bool(number.value)
        self.query_one("#hands-title", Line).say(title)
        self.query_one("#hands-do", Prose).say(do)
        self.query_one("#hands-check", Prose).say(check)
        picks = self.query_one("#hands-rows", Rows)
        picks.fill([(f"{n}", text) for n, (_, text) in enumerate(rows, start=1)])
        self._keys = [key for key, _ in rows]
        self.query_one("#hands-keys", Line).say(keys)
        self.refresh_bindings()
        if rows:
            picks.highlighted = 0
            picks.focus()
        else:
            self.query_one("#hands").focus()
        self.query_one("#hands", VerticalScroll).scroll_home(animate=False)

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        """No `Next` in the footer while something is to be chosen."""
        return not (action == "next" and self._keys)

    def _number(self) -> str:
        """The number of the step or question, large."""
        if self._fit:
            return "" if self._fit.ended else str(self._fit.at + 1)
        return str(self._at + 1) if self._what and self._at < len(self._steps) else ""

    def on_key(self, event: events.Key) -> None:
        """A digit takes the choice of that number."""
        if event.character and event.character.isdecimal():
            event.stop()
            self._take(int(event.character))

    @on(OptionList.OptionSelected)
    def chosen(self, message: OptionList.OptionSelected) -> None:
        """Enter or a click takes a choice."""
        self._take(message.option_index + 1)

    def _take(self, number: int) -> None:
        if not 1 <= number <= len(self._keys) or self.session.guide is None:
            return
        key = self._keys[number - 1]
        if self._fit:
            if self._fit.choose(number) and self._fit.alert:
                self.base.warn(self._fit.alert)
            self.sync()
        elif not self._what or key == "fit":
            self.start(key)
        elif not key:
            self.action_menu()
        else:
            self._sleeve = key
            self._prepare()
            self.sync()

    def action_next(self) -> None:
        """The next step, or on from a passage."""
        if self._fit:
            if self._fit.passage:
                self._fit.go_on()
        elif self._what and self._steps and not self._keys and not self._barred:
            self._at += 1
        self.sync()

    def action_previous(self) -> None:
        """The step or question before; from the first one to the menu."""
        if self._fit and (self._fit.trail or self._fit.passage or self._fit.ended):
            self._fit.back()
        elif self._at:
            self._at -= 1
        else:
            self._what, self._fit = "", None
        self.sync()

    def action_menu(self) -> None:
        """What do you want to do?"""
        self._what, self._fit, self._at = "", None, 0
        self.sync()
