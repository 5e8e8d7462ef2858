"""How long and how often the dog walks on a day.

In the first stage walks keep the usual length. In the second they grow: one step of the protocol
after each full interval that went well; more limping after a walk takes one step back and starts
the interval anew. From the third stage on the plan adds nothing more by itself.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from fractions import Fraction

from guidebot.domain.case import Case
from guidebot.domain.protocol import Protocol
from guidebot.plan.days import stage_start
from guidebot.plan.wear import Held, flag_of

_DAYS = {"day": 1, "week": 7}
WALK_KEYS = frozenset({"walk", "all"})
"""Restrictions of these stop the planned walks."""


@dataclass(frozen=True, slots=True)
class Walk:
    """Walks of one day.

    Attributes:
        minutes: planned length of one walk; 0 means no planned walks.
        times: how many.
        most: the longest one walk may be, in minutes.
    """

    minutes: int
    times: int
    most: int


def walk_on(protocol: Protocol, case: Case, on: date) -> Walk:
    """The walks of a date for a case with a fitting date (sums of wear are not looked at)."""
    usual, times = protocol.value("walk.usual"), int(protocol.value("walk.times"))
    longest = protocol.value("walk.longest")
    if any(r.activity in WALK_KEYS and r.holds(on) for r in case.restrictions):
        return Walk(0, 0, 0)
    minutes = usual
    if case.fitted is not None and len(protocol.stages) > 1:
        start = stage_start(protocol.stages[1], case.fitted)
        stop = stage_start(protocol.stages[2], case.fitted) if len(protocol.stages) > 2 else on
        minutes = _grown(protocol, case, start, min(on, stop))
    return Walk(int(minutes), times, int(max(minutes, longest)))


def _grown(protocol: Protocol, case: Case, start: date, until: date) -> Fraction:
    usual, build = protocol.value("walk.usual"), protocol.value("walk.build")
    every = protocol.numbers["walk.build_every"]
    interval = int(every.value * _DAYS.get(every.unit, 1))
    bad = {e.on for e in case.diary if flag_of(e) is not None}
    bad_leg = {e.on for e in case.diary if flag_of(e) is Held.LIMPING}
    minutes, well = usual, 0
    for offset in range(1, (until - start).days + 1):
        yesterday = start + timedelta(days=offset - 1)
        if yesterday in bad:
            well = 0
            if yesterday in bad_leg:
                minutes = max(usual, minutes - build)
            continue
        well += 1
        if well >= interval:
            minutes, well = minutes + build, 0
    return minutes
