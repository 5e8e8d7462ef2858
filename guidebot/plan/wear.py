"""Hours of wear allowed on a date: the ramp, and what the diary and the veterinarian do to it.

One pass over the days from the fitting day. Each day starts with the hours allowed; what the diary
notes for the day decides the hours of the next. All rules only ever lower the hours, but one: a
good or unnoted day adds at most the protocol's daily step to what was really worn.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from fractions import Fraction

from guidebot.domain.case import Case, DiaryEntry, Gait, Skin
from guidebot.domain.protocol import Protocol
from guidebot.errors import InputError
from guidebot.plan.days import day_number

_QUARTER = Fraction(1, 4)


class Held(StrEnum):
    """Why the hours are not what the plain ramp gives."""

    SORE = "sore"  # no wear until the veterinarian has cleared it
    CLEARED = "cleared"  # restarted low after a sore
    REDNESS = "redness"  # redness stayed: back to the last good day
    LIMPING = "limping"  # more limping: back to the last good day
    WAITING = "waiting"  # held until a good day is noted
    MISSED = "missed"  # one or two days off: last good day
    BREAK = "break"  # longer off: restart low
    SHORT = "short"  # wore less than allowed: one step more than that
    AGAIN = "again"  # over: growing again from where the setback left the hours
    RESTRICTED = "restricted"  # the veterinarian's limit


@dataclass(frozen=True, slots=True)
class Reason:
    """One reason and the day that gave it."""

    held: Held
    on: date


@dataclass(frozen=True, slots=True)
class WearDay:
    """One day of the ramp.

    Attributes:
        on: the date.
        day: day number.
        allowed: most hours of wear.
        plain: hours of the undisturbed ramp on this day number, for the chart.
        worn: hours noted in the diary, None if none were.
        flag: the setback noted on this day, None if none was.
        reasons: why `allowed` is below the plain ramp, () if it is not.
    """

    on: date
    day: int
    allowed: Fraction
    plain: Fraction
    worn: Fraction | None
    flag: Held | None
    reasons: tuple[Reason, ...]


def target(protocol: Protocol, case: Case) -> Fraction:
    """Hours a day to work up to: the case's own, else the protocol's.

    Raises:
        InputError: the case's target is not between 0 and 24 hours.
    """
    if case.target_hours is None:
        return protocol.value("wear.target")
    return hours(case.target_hours, "the target")


def hours(value: float, what: str = "the hours") -> Fraction:
    """Exact hours of a number a person gave.

    Raises:
        InputError: not a number from 0 to 24.
    """
    if not 0 <= value <= 24:  # also catches a value that is not a number
        raise InputError(f"{what} must be from 0 to 24, not {value:g}")
    return Fraction(str(value))


def plain_hours(protocol: Protocol, day: int, most: Fraction | None = None) -> Fraction:
    """Hours of the undisturbed ramp: first day, plus one step a day, up to the target."""
    top = protocol.value("wear.target") if most is None else most
    grown = protocol.value("wear.first_day") + (day - 1) * protocol.value("wear.daily_step")
    return min(grown, top)


def day_reaching(protocol: Protocol, amount: Fraction) -> int | None:
    """First day number on which the plain ramp allows `amount` hours; None if it never does."""
    if amount > protocol.value("wear.target"):
        return None
    rest = amount - protocol.value("wear.first_day")
    return max(1, 1 + -(-rest // protocol.value("wear.daily_step")))


def flag_of(entry: DiaryEntry) -> Held | None:
    """The setback a diary entry reports, the gravest first."""
    if entry.skin is Skin.SORE:
        return Held.SORE
    if entry.skin is Skin.STAYED:
        return Held.REDNESS
    if entry.gait is Gait.WORSE:
        return Held.LIMPING
    return None


def wear_cap(case: Case, on: date) -> Fraction | None:
    """The veterinarian's limit for wear on a date in hours; None if there is none."""
    caps = [
        Fraction(0) if r.max_hours is None else hours(r.max_hours, "the restriction's hours")
        for r in case.restrictions
        if r.activity in ("wear", "all") and r.holds(on)
    ]
    return min(caps) if caps else None


def ramp(protocol: Protocol, case: Case, until: date) -> tuple[WearDay, ...]:
    """Every day from the fitting day to `until`.

    Args:
        protocol: first day, step, target, restart, short break.
        case: with a fitting date; diary entries before it or after `until` do not count. Two
            entries for one day are read together, the graver finding wins.
        until: last day wanted.

    Raises:
        InputError: no fitting date, `until` before it, or hours that cannot be.
    """
    if case.fitted is None:
        raise InputError("the fitting day is not known", remedy="Give it with --fitted")
    day_number(case.fitted, until)
    return tuple(_days(protocol, case, case.fitted, until))


def allowed_on(protocol: Protocol, case: Case, on: date) -> WearDay:
    """The last day of `ramp`: what is allowed on this date and why."""
    return ramp(protocol, case, on)[-1]


@dataclass(slots=True)
class _State:
    level: Fraction
    good: Fraction  # hours of the last good day
    missed: int = 0
    sore: date | None = None
    waiting: bool = False
    why: tuple[Reason, ...] = ()


def _days(protocol: Protocol, case: Case, fitted: date, until: date) -> Iterator[WearDay]:
    most = target(protocol, case)
    first = min(protocol.value("wear.first_day"), most)
    restart = min(protocol.value("wear.restart"), most)
    step = protocol.value("wear.daily_step")
    short = protocol.value("wear.short_break")
    diary = _by_day(case.diary)
    state = _State(level=first, good=first)
    for offset in range((until - fitted).days + 1):
        on = fitted + timedelta(days=offset)
        entry = diary.get(on, DiaryEntry(on))
        flag = flag_of(entry)
        if state.sore and entry.cleared and flag is not Held.SORE:
            # Only a clearing after the day of the sore counts: the wound was seen, then healed.
            low = min(restart, state.good, state.level)
            state = _State(low, low, why=(Reason(Held.CLEARED, on),))
        allowed, reasons = min(state.level, most), state.why
        if state.sore:
            allowed, reasons = Fraction(0), (Reason(Held.SORE, state.sore),)
        if flag is Held.SORE:
            allowed, reasons = Fraction(0), (Reason(Held.SORE, on),)
        cap = wear_cap(case, on)
        if cap is not None and cap < allowed:
            allowed, reasons = cap, (*reasons, Reason(Held.RESTRICTED, on))
        worn = None if entry.worn_hours is None else hours(entry.worn_hours, "the hours worn")
        if flag in (Held.REDNESS, Held.LIMPING):
            # A setback ends the day's wear: what was worn by then is all there is.
            allowed = min(allowed, worn) if worn else allowed
            reasons = (*reasons, Reason(flag, on))
        yield WearDay(
            on=on,
            day=offset + 1,
            allowed=allowed // _QUARTER * _QUARTER,
            plain=(plain := plain_hours(protocol, offset + 1, most)),
            worn=worn,
            flag=flag,
            reasons=reasons if allowed < plain or flag is not None else (),
        )
        _night(state, on, entry, flag, allowed, worn, (most, restart, step, short))


def _night(
    state: _State,
    on: date,
    entry: DiaryEntry,
    flag: Held | None,
    allowed: Fraction,
    worn: Fraction | None,
    numbers: tuple[Fraction, Fraction, Fraction, Fraction],
) -> None:
    """Turn today's notes into tomorrow's hours."""
    most, restart, step, short = numbers
    if flag is Held.SORE:
        state.sore = on
    if state.sore:
        return
    used = allowed if worn is None else min(allowed, worn)
    state.missed = state.missed + 1 if used == 0 else 0
    if flag is not None:
        base = used or min(worn or state.level, state.level)
        if state.waiting and base <= state.good:
            # The day that went well goes well no longer: one step lower.
            state.good = max(base - step, min(base, step))
        state.level = min(state.level, state.good, base)
        state.waiting = True
        state.why = (Reason(flag, on),)
        return
    if used == 0:
        long = state.missed > short
        state.level = min(state.level, state.good, restart if long else state.good)
        if worn:  # worn in spite of the veterinarian's "none"
            state.good = min(state.good, worn)
            state.level = min(state.level, worn + step)
        state.why = (Reason(Held.BREAK if long else Held.MISSED, on),)
        return
    noted = worn is not None or entry.skin is not None or entry.gait is not None
    if state.waiting and not noted:
        state.level = min(state.level, allowed)
        state.why = (*state.why[:1], Reason(Held.WAITING, on))
        return
    state.waiting = False
    behind = worn is not None and worn < allowed
    state.good = used
    state.level = min(used + step, most)
    if behind:
        state.why = (Reason(Held.SHORT, on),)
    elif state.level >= most:
        state.why = ()
    elif state.why:
        state.why = (Reason(Held.AGAIN, state.why[0].on),)


def _by_day(diary: tuple[DiaryEntry, ...]) -> dict[date, DiaryEntry]:
    """One entry a day; several are read together, the graver finding of each kind wins."""
    days: dict[date, DiaryEntry] = {}
    for entry in diary:
        if entry.worn_hours is not None:
            hours(entry.worn_hours, "the hours worn")
        old = days.get(entry.on)
        days[entry.on] = entry if old is None else _together(old, entry)
    return days


_SKIN = (None, Skin.FINE, Skin.FADED, Skin.STAYED, Skin.SORE)
_GAIT = (None, Gait.BETTER, Gait.USUAL, Gait.WORSE)


def _together(one: DiaryEntry, two: DiaryEntry) -> DiaryEntry:
    worn = [h for h in (one.worn_hours, two.worn_hours) if h is not None]
    return DiaryEntry(
        on=one.on,
        worn_hours=min(worn) if worn else None,
        skin=max(one.skin, two.skin, key=_SKIN.index),
        gait=max(one.gait, two.gait, key=_GAIT.index),
        powder=one.powder if two.powder is None else two.powder,
        cleared=one.cleared or two.cleared,
        note=" ".join(n for n in (one.note, two.note) if n),
    )
