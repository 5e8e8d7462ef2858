"""Made-up answers, one of each kind; run this file to write the golden texts anew."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from guidebot.domain.activity import Say
from guidebot.domain.answer import Answer, Cited, Outcome, Stamp, Verdict
from guidebot.domain.sign import Alert, Tier

GOLDEN = Path(__file__).resolve().parent / "golden"

FIRST = Cited(
    "cuff-wash",
    "Washing the cuff",
    ("upkeep.wash",),
    "Wash the cuff by hand in cool water.",
    "Use a **mild** soap and rinse it well, for what stays in the cloth makes the skin itch.\n\n"
    "1. Close the fasteners first, so that they pick up no hair and do not tear the cloth in the"
    " wash.\n"
    "2. Dry it flat.\n"
    "\n"
    "- Never on a heater.\n"
    "- Never in a dryer.",
    3.25,
    "passages/upkeep/cuff-wash.md",
)
SECOND = Cited(
    "cuff-swap",
    "Swapping cuffs",
    ("upkeep.swap",),
    "Swap the cuff daily.",
    "",
    1.5,
    "passages/b.md",
)
THIRD = Cited(
    "cuff-order", "Ordering a cuff", ("parts.cuff",), "Order by code.", "", 0.5, "passages/c.md"
)
COMMON = {
    "caution": "This is general guidance. Your own veterinarian's advice comes first.",
    "guide": Stamp("1.2", "0123456789ab"),
    "rules": Stamp("7", "fedcba9876543210"),
}


def alert(tier: Tier, **more: object) -> Alert:
    return Alert(
        tier=tier,
        sign="made-up",
        headline=f"Made-up headline of tier {tier.key}",
        quote="the made-up words that were noticed in a message that is long enough to be wrapped",
        do=(
            "Do the first thing, which takes so many words to say that the line has to be wrapped.",
            "Do the second thing.",
        ),
        **more,  # type: ignore[arg-type]
    )


ANSWERED = Answer(
    Outcome.ANSWERED, FIRST.quote, (FIRST, SECOND, THIRD), text="how do i wash it", **COMMON
)
VERDICT = Verdict(
    Say.YES_WITH_LIMITS,
    "Paddling: yes, with limits. Day 40 is in the guarded stage. Keep it short.",
    40,
    "guarded",
    "paddling",
    date(2027, 2, 28),
    ("activities.yaml:12", "protocol.yaml:4"),
)
MADE: dict[str, Answer] = {
    "answered": ANSWERED,
    "unsure": Answer(
        Outcome.UNSURE,
        "Which of these is it?",
        (FIRST, SECOND, THIRD),
        choices=("cuff-wash", "cuff-swap", "cuff-order"),
        **COMMON,
    ),
    "not-in-guide": Answer(
        Outcome.NOT_IN_GUIDE, "The guide does not answer this. Please ask the clinic.", (), **COMMON
    ),
    "courtesy": Answer(Outcome.COURTESY, "You are welcome.", (), **COMMON),
    "emergency": Answer(
        Outcome.ANSWERED,
        FIRST.quote,
        (FIRST,),
        alert=alert(Tier.EMERGENCY, also=("skin-open", "other")),
        **COMMON,
    ),
    "vet-today": Answer(
        Outcome.NOT_IN_GUIDE,
        "The guide does not answer this.",
        (),
        alert=alert(Tier.VET_TODAY, asks="Does it do that when it stands still as well?"),
        **COMMON,
    ),
    "clinic": Answer(
        Outcome.UNSURE,
        "Which of these is it?",
        (FIRST, SECOND),
        choices=("cuff-wash", "cuff-swap"),
        alert=alert(Tier.CLINIC),
        **COMMON,
    ),
    "verdict": Answer(
        Outcome.ANSWERED,
        FIRST.quote,
        (FIRST,),
        verdict=VERDICT,
        read_as="Is paddling allowed?",
        asks_back="When was the fitting day?",
        **COMMON,
    ),
    "verdict-alone": Answer(Outcome.NOT_IN_GUIDE, "", (), verdict=VERDICT, **COMMON),
    "notes": Answer(
        Outcome.ANSWERED,
        FIRST.quote,
        (FIRST,),
        notes=(
            'Searched for "cuff" in place of "cuf".',
            "You also asked about this: Swapping cuffs [cuff-swap]: Swap the cuff daily, and let"
            " the other one dry.",
        ),
        **COMMON,
    ),
    "everything": Answer(
        Outcome.ANSWERED,
        FIRST.quote,
        (FIRST, SECOND),
        alert=alert(Tier.EMERGENCY, asks="Is it still so?"),
        verdict=VERDICT,
        read_as="Is paddling allowed?",
        asks_back="Which cuff?",
        notes=("A note.",),
        **COMMON,
    ),
}

if __name__ == "__main__":
    from guidebot.render.text import render

    for name, answer in MADE.items():
        (GOLDEN / f"{name}.txt").write_text(render(answer) + "\n", encoding="utf-8")
