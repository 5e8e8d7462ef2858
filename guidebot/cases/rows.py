"""Between rows of the store and values of the domain; what cannot be is refused here."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from datetime import date
from typing import Any

from guidebot.domain.case import Case, DiaryEntry, Gait, Restriction, Sex, Side, Skin
from guidebot.errors import InputError, StoreError
from guidebot.text import clean

_SKIN = (None, *Skin)  # from fine to sore, as the enumeration lists them
_GAIT = (None, Gait.BETTER, Gait.USUAL, Gait.WORSE)


def case_row(case: Case) -> dict[str, Any]:
    """The row of a case, without its diary."""
    return {
        "id": case.id,
        "dog": case.dog,
        "sex": case.sex.value,
        "side": case.side.value if case.side else None,
        "sleeve": case.sleeve,
        "parts": " ".join(sorted(case.parts)),
        "fitted": case.fitted.isoformat() if case.fitted else None,
        "target_hours": case.target_hours,
    }


def restriction_row(restriction: Restriction) -> dict[str, Any]:
    """The row of a restriction."""
    return {
        "activity": clean(restriction.activity).text,
        "starts": restriction.starts.isoformat(),
        "ends": restriction.ends.isoformat() if restriction.ends else None,
        "max_hours": restriction.max_hours,
        "note": clean(restriction.note).text,
    }


def diary_row(entry: DiaryEntry) -> dict[str, Any]:
    """The row of a day."""
    return {
        "day": entry.on.isoformat(),
        "worn_hours": entry.worn_hours,
        "skin": entry.skin.value if entry.skin else None,
        "gait": entry.gait.value if entry.gait else None,
        "powder": entry.powder,
        "cleared": entry.cleared,
        "note": entry.note,
    }


def read_case(
    row: Mapping[Any, Any],
    restrictions: Iterable[Mapping[Any, Any]],
    diary: Iterable[Mapping[Any, Any]],
) -> Case:
    """A case from its rows.

    Raises:
        StoreError: a row holds what no version of this program wrote.
    """
    try:
        return Case(
            id=row["id"],
            dog=row["dog"],
            sex=Sex(row["sex"]),
            side=Side(row["side"]) if row["side"] else None,
            sleeve=row["sleeve"],
            parts=frozenset(row["parts"].split()),
            fitted=_day(row["fitted"]),
            target_hours=row["target_hours"],
            restrictions=tuple(
                Restriction(
                    r["activity"],
                    date.fromisoformat(r["starts"]),
                    _day(r["ends"]),
                    r["max_hours"],
                    r["note"],
                )
                for r in restrictions
            ),
            diary=tuple(read_entry(r) for r in diary),
        )
    except (ValueError, TypeError, AttributeError) as error:
        raise StoreError(
            f"the entry of the dog {row['id']!r} cannot be read ({error})",
            remedy="Put back a backup, or remove the dog and add it again",
        ) from error


def read_entry(row: Mapping[Any, Any]) -> DiaryEntry:
    """A day from its row."""
    return DiaryEntry(
        on=date.fromisoformat(row["day"]),
        worn_hours=row["worn_hours"],
        skin=Skin(row["skin"]) if row["skin"] else None,
        gait=Gait(row["gait"]) if row["gait"] else None,
        powder=None if row["powder"] is None else bool(row["powder"]),
        cleared=bool(row["cleared"]),
        note=row["note"],
    )


def merge(old: DiaryEntry, new: DiaryEntry) -> DiaryEntry:
    """A day noted twice: the newer hours, the graver finding, both notes."""
    notes = [n for n in (old.note, new.note) if n]
    return DiaryEntry(
        on=old.on,
        worn_hours=old.worn_hours if new.worn_hours is None else new.worn_hours,
        skin=max(old.skin, new.skin, key=_SKIN.index),
        gait=max(old.gait, new.gait, key=_GAIT.index),
        powder=old.powder if new.powder is None else new.powder,
        cleared=old.cleared or new.cleared,
        note="\n".join(dict.fromkeys(notes)),
    )


def check_entry(entry: DiaryEntry) -> None:
    """Raises InputError for hours that cannot be."""
    _check_hours(entry.worn_hours, "the hours worn")


def check_target(hours: float | None) -> None:
    """Raises InputError for a target that cannot be."""
    _check_hours(hours, "the target")


def check_restriction(restriction: Restriction) -> None:
    """Raises InputError for hours or dates that cannot be."""
    _check_hours(restriction.max_hours, "the restriction's hours")
    if restriction.ends is not None and restriction.ends < restriction.starts:
        raise InputError(
            f"the restriction ends ({restriction.ends.isoformat()}) before it starts "
            f"({restriction.starts.isoformat()})",
            remedy="Swap the dates",
        )


def _check_hours(hours: float | None, what: str) -> None:
    if hours is not None and not (math.isfinite(hours) and 0 <= hours <= 24):
        raise InputError(f"{what} must be from 0 to 24, not {hours:g}")


def _day(text: str | None) -> date | None:
    return date.fromisoformat(text) if text else None
