"""A small guide, a fake talk, and the screen as text."""

from __future__ import annotations

from contextlib import suppress
from datetime import date, datetime
from fractions import Fraction
from pathlib import Path
from typing import Any

from textual.worker import WorkerCancelled

from guidebot.domain.activity import Say
from guidebot.domain.answer import Answer, Cited, Outcome, Stamp, Verdict
from guidebot.domain.case import Case
from guidebot.domain.device import Device, Part, SleeveKind
from guidebot.domain.guide import Clinic, FitStep, Guide, HandsOnStep
from guidebot.domain.passage import Need, Passage, Reviewed
from guidebot.domain.protocol import Protocol, Quantity, Stage
from guidebot.domain.sign import Alert, Tier
from guidebot.safety.judge import Judgement
from guidebot.text import Cleaned, clean
from guidebot.tui.app import GuidebotApp
from guidebot.tui.desk import Desk

TODAY = date(2026, 11, 25)
CAUTION = "General guidance. Your veterinarian comes first."


def passage(key: str, title: str, need: str, see: tuple[str, ...] = ()) -> Passage:
    return Passage(
        id=key,
        topic=need.partition(".")[0],
        title=title,
        answers=(need,),
        short=f"Short answer of {key}.",
        body=f"First line of {key}.\n\n1. Do the first thing, with care and enough time so that "
        "the line is long.\n2. Do the second [b]thing[/b].",
        basis="common practice",
        reviewed=Reviewed(date(2026, 1, 2), "fitter"),
        see=see,
        path=f"passages/x/{key}.md",
    )


def small_guide() -> Guide:
    """An invented guide about an elbow."""
    passages = [
        passage("lift-door", "Stairs [and/or] doors", "go.stairs", ("wash-it",)),
        passage("wash-it", "Washing it", "care.wash"),
        passage("gap-look", "Looking at gaps", "fit.gaps"),
        passage("send-pics", "Pictures that help", "help.pictures"),
    ]
    numbers = {
        key: Quantity(key, Fraction(value), unit, "common practice", 3)
        for key, value, unit in [
            ("wear.first_day", 2, "h"),
            ("wear.daily_step", 1, "h"),
            ("wear.target", 8, "h"),
            ("wear.restart", 2, "h"),
            ("wear.session_first", 30, "min"),
            ("wear.session_first_max", 60, "min"),
            ("wear.rest", 30, "min"),
            ("wear.earliest", 7, "h"),
            ("wear.latest", 21, "h"),
            ("wear.short_break", 2, "day"),
            ("walk.usual", 10, "min"),
            ("walk.times", 3, "count"),
            ("walk.longest", 20, "min"),
            ("walk.build", 5, "min"),
            ("walk.build_every", 1, "week"),
        ]
    }
    return Guide(
        needs={p.answers[0]: Need(p.answers[0], p.title) for p in passages},
        passages={p.id: p for p in passages},
        wordings={},
        vocabulary={},
        protocol=Protocol(
            numbers,
            (
                Stage("early", "early weeks", 1, None, "Little."),
                Stage("late", "later", 29, None, "More."),
            ),
        ),
        activities={},
        device=Device(
            "elbow shell",
            ("shell",),
            (Part("wing", "wing strap", ("wing",), True),),
            (
                SleeveKind("short", "short sleeve", ("short",), True),
                SleeveKind("long", "long sleeve", ("long",)),
            ),
            ("the armpit",),
        ),
        clinic=Clinic(
            "Ashmoor",
            "555-0100",
            "a@ashmoor.example",
            "8 to 5",
            "nearest",
            ("Bye", "Ashmoor"),
            CAUTION,
        ),
        fit_check=(
            FitStep(
                "toes",
                "How are the toes?",
                (("Warm", "next"), ("Blue", "alert:foot-no-blood"), ("Skip to gaps", "step:gaps")),
            ),
            FitStep("slip", "Does it slip?", (("No", "next"), ("Yes", "pictures:help.pictures"))),
            FitStep("gaps", "Are there gaps?", (("No", "next"), ("Yes", "need:fit.gaps"))),
        ),
        putting_on=(
            HandsOnStep("Get ready", "Lay it out.", "All straps are open."),
            HandsOnStep("Close short sleeve", "Close it.", "One finger fits.", sleeve="short"),
            HandsOnStep("Close long sleeve", "Close it by the sheet.", "Two.", sleeve="long"),
            HandsOnStep("Close the wing", "Lead it round.", "", part="wing"),
            HandsOnStep("Look", "Look from the front.", "Straight."),
        ),
        taking_off=(HandsOnStep("Open", "Open all."),),
        stamp=Stamp("7", "abcd"),
    )


ALERT = Alert(
    Tier.EMERGENCY,
    "bleeding-heavy",
    "Emergency: heavy bleeding",
    "there is blood",
    ("Press a clean cloth on the spot.", "Go to an emergency vet clinic now."),
    also=("skin-open",),
)


def answer(outcome: Outcome = Outcome.ANSWERED, guide: Guide | None = None, **more: Any) -> Answer:
    guide = guide or small_guide()
    cited = tuple(
        Cited(p.id, p.title, p.answers, p.short, p.body, 1.0, p.path)
        for p in guide.passages.values()
    )
    return Answer(
        **{
            "outcome": outcome,
            "lead": "Carry the dog.",
            "passages": cited[:2],
            "caution": CAUTION,
            "guide": Stamp("7", "abcd"),
            "rules": Stamp("1", "ef01"),
            **more,
        }
    )


class FakeAssistant:
    def __init__(self) -> None:
        self.guide = small_guide()

    def judge(self, text: Cleaned) -> Judgement:
        alert = ALERT if "blood" in text.text else None
        return Judgement(alert, (), Stamp("1", "ef01"))


class FakeTalk:
    """Answers by words: blood alerts, maybe is unsure, boom fails, nope is not in the guide."""

    def __init__(self, case: Case | None = None) -> None:
        self.case = case
        self.heard: list[str] = []

    def say(self, text: str) -> Answer:
        self.heard.append(text)
        if "boom" in text:
            raise RuntimeError("[/broken] \x1b[31m")
        more: dict[str, Any] = {}
        if len(self.heard) > 1:
            more["read_as"] = f"stairs: {clean(text).text.partition(chr(10))[0][:40]}"
        if "blood" in text:
            more["alert"] = ALERT
        if "stairs" in text:
            more["verdict"] = Verdict(Say.NOT_YET, "Not on day 6.", 6, "early", "stairs")
        if "maybe" in text:
            return answer(
                Outcome.UNSURE,
                lead="Which of these is it?",
                choices=("lift-door", "wash-it"),
                **more,
            )
        if "nope" in text:
            return answer(Outcome.NOT_IN_GUIDE, lead="Not in the guide.", passages=(), **more)
        return answer(**more)


class Setup:
    """An application around fakes."""

    def __init__(self, store: Path | None = None) -> None:
        self.talk = FakeTalk()
        self.desk = Desk(store)
        self.app = GuidebotApp(
            desk=self.desk,
            opener=lambda content, say: FakeAssistant(),
            starter=lambda assistant, case: self.talk,
            now=lambda: datetime(2026, 11, 25, 9, 30),
        )


def screen_text(app: GuidebotApp) -> str:
    """The screen as text. The one place that reaches into textual's private names (pinned)."""
    strips = app.screen._compositor.render_strips()
    return "\n".join("".join(s.text for s in strip).rstrip() for strip in strips)


async def settle(pilot: Any) -> None:
    """Until no worker runs and nothing is left to paint; a form waits for a person."""
    for _ in range(3):
        running = [w for w in pilot.app.workers if w.group != "form" and not w.is_finished]
        if running:
            with suppress(WorkerCancelled):  # an exclusive one gave way to its successor
                await pilot.app.workers.wait_for_complete(running)
        await pilot.pause()


async def ask(pilot: Any, text: str) -> None:
    """Write a message in the box and send it."""
    from guidebot.tui.widgets.question import QuestionBox

    box = pilot.app.screen.query_one(QuestionBox)
    before = len(pilot.app.session.turns)
    box.focus()
    box.text = text
    await pilot.press("enter")
    for _ in range(100):
        await settle(pilot)
        if len(pilot.app.session.turns) > before:
            return
        await pilot.pause(0.02)
    raise AssertionError("no answer")
