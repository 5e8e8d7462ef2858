"""A day's timetable of wear: short spells at first, longer as the hours grow, rests between.

On the first day no spell is longer than the protocol's first spells. Each daily step above the
first day's hours lengthens the longest spell by as much again. Times are clock times of a waking
day; a date does not enter, so daylight saving cannot.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import time
from fractions import Fraction

from guidebot.domain.protocol import Protocol

_GRAIN = 5  # minutes: nobody keeps a timetable to the minute


@dataclass(frozen=True, slots=True)
class Session:
    """One spell of wear. After it: the device off, a skin check, and a rest."""

    on: time
    off: time
    minutes: int


def sessions(protocol: Protocol, allowed: Fraction) -> tuple[Session, ...]:
    """The spells of a day.

    Args:
        protocol: first spells, rest, first day's hours, daily step, the waking day.
        allowed: hours of wear of the day.

    Returns:
        Spells in order; together never more than `allowed`, with at least the protocol's rest
        between, all within the waking day.
    """
    starts = int(protocol.value("wear.earliest") * 60)
    room = int(protocol.value("wear.latest") * 60) - starts
    total = min(int(allowed * 60), room)
    rest = int(protocol.value("wear.rest"))
    if total <= 0:
        return ()
    lengths = _lengths(protocol, allowed, total, rest, room)
    found, clock = [], starts
    for minutes in lengths:
        found.append(Session(_clock(clock), _clock(clock + minutes), minutes))
        clock += minutes + rest
    return tuple(found)


def _lengths(protocol: Protocol, allowed: Fraction, total: int, rest: int, room: int) -> list[int]:
    first, longest = int(protocol.value("wear.session_first")), longest_spell(protocol, allowed)
    count = max(1, min(-(-total // longest), (room - total) // rest + 1 if rest else total))
    grain = _GRAIN if total >= count * _GRAIN else 1
    even = total // count // grain * grain
    lengths = [even] * count
    spare = (total - even * count) // grain
    for i in range(spare):  # the later spells are the longer ones
        lengths[-1 - i % count] += grain
    if (
        len(lengths) > 1
        and lengths[0] > first
        and longest <= protocol.value("wear.session_first_max")
    ):
        lengths[0] = first
    return lengths


def longest_spell(protocol: Protocol, allowed: Fraction) -> int:
    """Longest spell of wear, in minutes, on a day of `allowed` hours."""
    most = protocol.value("wear.session_first_max")
    steps = (allowed - protocol.value("wear.first_day")) / protocol.value("wear.daily_step")
    return int(most * (1 + max(0, int(steps))))


def _clock(minute: int) -> time:
    return time(minute // 60, minute % 60)
