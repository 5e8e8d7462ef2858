"""The whole plan of a day: stage, hours, timetable, walks, reasons, what comes next."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from fractions import Fraction

from guidebot.domain.case import Case
from guidebot.domain.protocol import Protocol, Stage
from guidebot.errors import InputError
from guidebot.plan.amounts import why_text
from guidebot.plan.days import Next, next_dates, stage_on
from guidebot.plan.said import said_hours
from guidebot.plan.sessions import Session, sessions
from guidebot.plan.walks import Walk, walk_on
from guidebot.plan.wear import Held, Reason, WearDay, allowed_on


@dataclass(frozen=True, slots=True)
class DayPlan:
    """One day of one dog.

    Attributes:
        on: the date.
        day: day number (fitting day = 1).
        stage: the stage in force.
        allowed: most hours of wear.
        sessions: timetable; together never more than `allowed`.
        walk: the walks of the day.
        next: what is still to come, soonest first.
        reasons: why the hours are below the plain ramp.
        wear: the day of the ramp it was made from.
    """

    on: date
    day: int
    stage: Stage
    allowed: Fraction
    sessions: tuple[Session, ...]
    walk: Walk
    next: tuple[Next, ...]
    reasons: tuple[Reason, ...]
    wear: WearDay

    @property
    def flagged(self) -> bool:
        """Should somebody look at this dog? A step that only lags behind is no flag."""
        return any(reason.held in _FLAGS for reason in self.reasons)

    def why(self) -> tuple[str, ...]:
        """The reasons as sentences."""
        return tuple(why_text(reason) for reason in self.reasons)


_FLAGS = frozenset(
    {Held.SORE, Held.CLEARED, Held.REDNESS, Held.LIMPING, Held.WAITING, Held.RESTRICTED}
)


def make_plan(protocol: Protocol, case: Case, on: date) -> DayPlan:
    """Make the plan of a day.

    Args:
        protocol: numbers and stages.
        case: with a fitting day.
        on: the date, on or after the fitting day.

    Raises:
        InputError: no fitting day, a date before it, or hours that cannot be.
    """
    if case.fitted is None:
        raise InputError("the fitting day is not known", remedy="Give it with --fitted")
    wear = allowed_on(protocol, case, on)
    walk = walk_on(protocol, case, on)
    spells = sessions(protocol, wear.allowed)
    if walk.minutes * walk.times > sum(s.minutes for s in spells):
        # Walks are walked in the device: they cannot take longer than it may be worn.
        room = sum(s.minutes for s in spells)
        minutes = room // walk.times if walk.times else 0
        walk = replace(walk, minutes=minutes, most=minutes) if minutes else Walk(0, 0, 0)
    return DayPlan(
        on=on,
        day=wear.day,
        stage=stage_on(protocol, case.fitted, on),
        allowed=wear.allowed,
        sessions=spells,
        walk=walk,
        next=next_dates(protocol, case, on),
        reasons=wear.reasons,
        wear=wear,
    )


def as_number(value: Fraction) -> int | float:
    """A whole number as int, another as float, for JSON."""
    return int(value) if value.denominator == 1 else float(value)


def plan_json(plan: DayPlan) -> dict[str, object]:
    """The plan as plain values for JSON; keys are only ever added."""
    return {
        "day": plan.day,
        "stage": plan.stage.key,
        "hours_allowed": as_number(plan.allowed),
        "sessions": [
            {
                "on": f"{s.on:%H:%M}",
                "off": f"{s.off:%H:%M}",
                "minutes": s.minutes,
            }
            for s in plan.sessions
        ],
        "walk": {
            "minutes": plan.walk.minutes,
            "times": plan.walk.times,
            "most_minutes": plan.walk.most,
        },
        "next": [{"date": n.on.isoformat(), "what": n.what} for n in plan.next],
        "date": plan.on.isoformat(),
        "held": [{"why": r.held.value, "since": r.on.isoformat()} for r in plan.reasons],
        "reasons": list(plan.why()),
    }


def plan_line(plan: DayPlan, dog: str) -> str:
    """One line for the staff's list: day, stage, hours, flags."""
    wear = f"{said_hours(plan.allowed)} of wear" if plan.allowed else "no wear"
    line = f"{dog}: day {plan.day}, {plan.stage.name}, {wear}."
    return " ".join([line, *plan.why()])
