"""The questions asked for a new dog and a diary entry, and how their replies are read."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection
from datetime import date, timedelta
from typing import Any

from guidebot.domain.case import Case, DiaryEntry, Gait, Sex, Skin
from guidebot.domain.guide import Guide
from guidebot.errors import InputError
from guidebot.tui.field import Field

SKIN = (
    (Skin.FINE, "As always"),
    (Skin.FADED, "Pink, and it faded"),
    (Skin.STAYED, "Red, and it stayed"),
    (Skin.SORE, "Open, wet or blistered"),
)
GAIT = (
    (Gait.USUAL, "As on other days"),
    (Gait.BETTER, "Better"),
    (Gait.WORSE, "More limping"),
)

SIGN_OF = {Skin.SORE: "skin-open", Skin.STAYED: "redness-stays", Gait.WORSE: "lameness-worse"}
"""The injury sign a diary entry reports; it is shown like one found in a message."""


def read_hours(text: str) -> float:
    """Hours of wear: `5`, `5.5`, `5,5`, `5 h`.

    Raises:
        InputError: no number from 0 to 24.
    """
    found = re.fullmatch(r"(\d{1,2}(?:[.,]\d{1,2})?) *(?:h|hrs?|hours?)?", text.strip().lower())
    hours = float(found.group(1).replace(",", ".")) if found else -1.0
    if not 0 <= hours <= 24:
        raise InputError("hours are a number from 0 to 24", remedy="Write for example 5 or 5.5")
    return hours


def date_reader(today: date) -> Callable[[str], date]:
    """A reader for a fitting day: a date, `today`, `yesterday`, `5 days ago` or the day number."""

    def read(text: str) -> date:
        low = text.strip().lower()
        if low in ("today", "yesterday"):
            return today - timedelta(days=low == "yesterday")
        if found := re.fullmatch(r"(?:day *)?(\d{1,4})", low):
            from guidebot.plan.days import fitted_from

            return fitted_from(int(found.group(1)), today)
        if found := re.fullmatch(r"(\d{1,4}) days? ago", low):
            return today - timedelta(days=int(found.group(1)))
        try:
            fitted = date.fromisoformat(low)
        except ValueError:
            raise InputError(
                "this is no date", remedy="Write it like 2026-11-20 or 5 days ago"
            ) from None
        if fitted > today + timedelta(days=366):
            raise InputError("that is more than a year ahead", remedy="Check the year")
        return fitted

    return read


def dog_fields(guide: Guide, today: date) -> list[Field]:
    """What is asked for a new dog."""
    return [
        Field("dog", "What is the dog's name?", needed=True, hint="Write it and press Enter."),
        Field("sex", "Is the dog", ((Sex.FEMALE, "female"), (Sex.MALE, "male"))),
        Field(
            "fitted",
            "On which day was the device fitted?",
            read=date_reader(today),
            hint=f"Write a date like {today.isoformat()}, or how long ago: 5 days ago. "
            "Enter alone leaves it out.",
        ),
        Field(
            "sleeve",
            "Which sleeve does the device have?",
            tuple((sleeve.key, sleeve.name) for sleeve in guide.device.sleeves),
        ),
        *(
            Field(
                f"part:{part.key}", f"Does it have the {part.name}?", ((True, "yes"), (False, "no"))
            )
            for part in guide.device.parts
            if part.optional
        ),
    ]


def case_from(replies: dict[str, Any], taken: Collection[str]) -> Case:
    """The dog the replies describe, with an id that is not taken."""
    stem = re.sub(r"[^a-z0-9]+", "-", replies["dog"].lower()).strip("-")[:24] or "dog"
    key, number = stem, 2
    while key in taken:
        key, number = f"{stem}-{number}", number + 1
    return Case(
        id=key,
        dog=" ".join(replies["dog"].split())[:60],
        sex=replies.get("sex") or Sex.UNKNOWN,
        sleeve=replies.get("sleeve"),
        parts=frozenset(
            name.partition(":")[2]
            for name, has in replies.items()
            if name.startswith("part:") and has
        ),
        fitted=replies.get("fitted"),
    )


SKIN_FIELD = Field("skin", "How was the skin when the device came off?", SKIN)


def diary_fields() -> list[Field]:
    """What is asked for a day of wear."""
    return [
        Field("worn_hours", "How many hours was the device worn?", read=read_hours),
        SKIN_FIELD,
        Field("gait", "How did the dog walk?", GAIT),
        Field("powder", "Was powder used?", ((True, "yes"), (False, "no"))),
        Field("note", "Anything else? It is read for signs of injury like a message."),
    ]


def entry_from(replies: dict[str, Any], on: date) -> DiaryEntry:
    """The diary entry the replies describe."""
    known = {key: value for key, value in replies.items() if value is not None}
    return DiaryEntry(on=on, **known)


def signs_in(entry: DiaryEntry) -> list[str]:
    """Keys of the injury signs an entry reports by its choices."""
    return [SIGN_OF[found] for found in (entry.skin, entry.gait) if found in SIGN_OF]
