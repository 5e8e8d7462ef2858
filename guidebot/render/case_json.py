"""A case as plain values and as text."""

from __future__ import annotations

from guidebot.domain.case import Case, DiaryEntry, Restriction
from guidebot.plan.said import said_date


def case_json(case: Case) -> dict[str, object]:
    """Everything of a case as plain values."""
    return {
        "id": case.id,
        "dog": case.dog,
        "sex": case.sex.value,
        "side": case.side.value if case.side else None,
        "sleeve": case.sleeve,
        "parts": sorted(case.parts),
        "fitted": case.fitted.isoformat() if case.fitted else None,
        "target_hours": case.target_hours,
        "restrictions": [
            {
                "activity": r.activity,
                "starts": r.starts.isoformat(),
                "ends": r.ends.isoformat() if r.ends else None,
                "max_hours": r.max_hours,
                "note": r.note,
            }
            for r in case.restrictions
        ],
        "diary": [
            {
                "on": e.on.isoformat(),
                "worn_hours": e.worn_hours,
                "skin": e.skin.value if e.skin else None,
                "gait": e.gait.value if e.gait else None,
                "powder": e.powder,
                "cleared": e.cleared,
                "note": e.note,
            }
            for e in case.diary
        ],
    }


def case_text(case: Case) -> str:
    """A case for people, one thing a line."""
    lines = [
        f"{case.dog} ({case.id})",
        f"  sex: {case.sex.value}",
        f"  leg: {case.side.value if case.side else 'not known'}",
        f"  sleeve: {case.sleeve or 'not known'}",
        f"  optional parts: {', '.join(sorted(case.parts)) or 'none'}",
        f"  fitting day: {said_date(case.fitted) if case.fitted else 'not known'}",
    ]
    if case.target_hours is not None:
        lines.append(f"  hours to work up to: {case.target_hours:g}")
    lines += [f"  {_restriction(r)}" for r in case.restrictions]
    lines += [f"  {_entry(e)}" for e in case.diary]
    return "\n".join(lines)


def _restriction(r: Restriction) -> str:
    until = f" until {said_date(r.ends)}" if r.ends else " until lifted"
    most = f", {r.max_hours:g} hours at most" if r.max_hours is not None else ""
    note = f" ({' '.join(r.note.split())})" if r.note else ""
    return f"restricted: {r.activity} from {said_date(r.starts)}{until}{most}{note}"


def _entry(e: DiaryEntry) -> str:
    said = [
        f"{e.worn_hours:g} h" if e.worn_hours is not None else "",
        f"skin {e.skin.value}" if e.skin else "",
        f"gait {e.gait.value}" if e.gait else "",
        "powder" if e.powder else "",
        "cleared by the veterinarian" if e.cleared else "",
        " ".join(e.note.split()),
    ]
    return f"{e.on.isoformat()}: {', '.join(s for s in said if s)}"
