"""A day's plan as plain text."""

from __future__ import annotations

from guidebot.plan.plan import DayPlan
from guidebot.plan.said import capital, said_date, said_hours, said_minutes
from guidebot.plan.wear import Held


def as_text(plan: DayPlan, dog: str = "") -> str:
    """Day, hours, timetable, walks, reasons and dates, one thing a line."""
    name = f"{dog}: " if dog else ""
    lines = [
        f"{name}day {plan.day}, {said_date(plan.on)}, {plan.stage.name} stage",
        f"Hours of wear: {said_hours(plan.allowed) + ' at most' if plan.allowed else 'none'}",
    ]
    lines += [f"  {why}" for why in plan.why()]
    if plan.sessions:
        if any(reason.held is Held.REDNESS for reason in plan.reasons):
            lines.append("Only once the skin is calm again, and not before:")
        lines.append("Sessions (after each: device off, skin check, rest):")
        lines += [
            f"  {s.on:%H:%M} to {s.off:%H:%M} ({said_minutes(s.minutes)})" for s in plan.sessions
        ]
    walk = plan.walk
    if walk.times:
        times = f"{walk.times} time{'' if walk.times == 1 else 's'}"
        lines.append(
            f"Walks: {times}, about {said_minutes(walk.minutes)} each, "
            f"{said_minutes(walk.most)} at most, slowly and on a leash"
        )
    else:
        lines.append("Walks: none planned. Ask your veterinarian about toilet trips")
    if plan.next:
        lines.append("Next:")
        lines += [f"  {said_date(n.on)}: {capital(n.what)}" for n in plan.next]
    return "\n".join(lines)
