"""Day numbers, stages and the dates that come next: calendar arithmetic only.

Days are calendar dates without a clock, so daylight saving cannot move anything. The fitting day
is day 1. Months are calendar months; a day the month does not have becomes its last day, as in
`dateutil.relativedelta`.
"""

from __future__ import annotations

import calendar
from dataclasses import dataclass
from datetime import date, timedelta

from guidebot.domain.case import Case
from guidebot.domain.protocol import Protocol, Stage
from guidebot.errors import InputError

LONGEST_DAYS = 9_500
"""26 years of days: longer than a dog lives, so a longer course is a slip of the pen."""

MONTH_DAYS_MOST = 31
"""Longest month in days; used when only a day number is known."""


@dataclass(frozen=True, slots=True)
class Next:
    """A date to come and what it brings."""

    on: date
    what: str
    cite: str = ""


def add_months(start: date, months: int) -> date:
    """The same day of the month, `months` later (or earlier), clamped at the month's end.

    Args:
        start: any date.
        months: calendar months, may be negative.

    Raises:
        InputError: the result lies outside the years 1 to 9999.
    """
    count = start.year * 12 + start.month - 1 + months
    year, month = divmod(count, 12)
    if not 1 <= year <= 9999:
        raise InputError("the date is too far away", remedy="Check the year")
    last = calendar.monthrange(year, month + 1)[1]
    return date(year, month + 1, min(start.day, last))


def add_days(start: date, days: int) -> date:
    """`days` later; InputError outside the years 1 to 9999."""
    try:
        return start + timedelta(days=days)
    except OverflowError as error:
        raise InputError("the date is too far away", remedy="Check the year") from error


def day_number(fitted: date, on: date) -> int:
    """Day of the course: the fitting day is 1.

    Raises:
        InputError: `on` lies before the fitting day or implausibly long after it.
    """
    days = (on - fitted).days
    if days < 0:
        raise InputError(
            f"{on.isoformat()} is before the fitting day {fitted.isoformat()}",
            remedy="Give a date on or after the fitting day, or correct the fitting day",
        )
    if days > LONGEST_DAYS:
        raise InputError(
            f"the fitting day {fitted.isoformat()} is more than 25 years before {on.isoformat()}",
            remedy="Check the year of the fitting day",
        )
    return days + 1


def fitted_from(day: int, on: date) -> date:
    """The fitting day, if `on` is day number `day`.

    Raises:
        InputError: the day number is below 1 or implausibly high.
    """
    if day < 1:
        raise InputError(f"day {day} does not exist", remedy="The fitting day is day 1")
    if day > LONGEST_DAYS + 1:
        raise InputError(f"day {day} is more than 25 years of wear", remedy="Check the day number")
    return add_days(on, 1 - day)


def stage_start(stage: Stage, fitted: date) -> date:
    """First date of a stage for a dog fitted on `fitted`."""
    if stage.from_month is not None:
        return add_months(fitted, stage.from_month)
    return add_days(fitted, (stage.from_day or 1) - 1)


def stage_on(protocol: Protocol, fitted: date, on: date) -> Stage:
    """The stage in force on a date."""
    day_number(fitted, on)
    current = protocol.stages[0]
    for stage in protocol.stages:
        if stage_start(stage, fitted) <= on:
            current = stage
    return current


def stage_of_day(protocol: Protocol, day: int) -> Stage:
    """The stage of a day number when no calendar date is known.

    A month counts 31 days here: a stage that opens something must not start early.

    Raises:
        InputError: the day number is below 1 or implausibly high.
    """
    fitted_from(day, date(2000, 1, 1))
    current = protocol.stages[0]
    for stage in protocol.stages:
        first = (
            stage.from_month * MONTH_DAYS_MOST + 1
            if stage.from_month is not None
            else (stage.from_day or 1)
        )
        if first <= day:
            current = stage
    return current


def next_dates(protocol: Protocol, case: Case, on: date) -> tuple[Next, ...]:
    """What is still to come after `on`, soonest first: stages, recheck, marks, restrictions.

    Args:
        protocol: numbers and stages.
        case: must have a fitting date, otherwise nothing is known and () is returned.
        on: the day asked about; what falls on this very day is listed too.
    """
    fitted = case.fitted
    if fitted is None:
        return ()
    found: list[Next] = []
    for stage in protocol.stages[1:]:
        found.append(Next(stage_start(stage, fitted), f"stage: {stage.name}", f"stage {stage.key}"))
    for key, what in _MARKS:
        quantity = protocol.numbers.get(key)
        if quantity is None:
            continue
        if quantity.unit == "month":
            when = add_months(fitted, int(quantity.value))
        else:
            when = add_days(fitted, int(quantity.value * (7 if quantity.unit == "week" else 1)))
        said = what.format(text=quantity.text(), adj=quantity.adjective())
        found.append(Next(when, said, f"protocol.yaml:{quantity.line}"))
    for restriction in case.restrictions:
        if restriction.ends is not None:
            found.append(
                Next(
                    add_days(restriction.ends, 1),
                    f"veterinarian's restriction ends: {restriction.activity}",
                )
            )
    return tuple(sorted((n for n in found if n.on >= on), key=lambda n: (n.on, n.what)))


_MARKS = (
    ("recheck.first", "first recheck with the fitter"),
    ("course.shortest", "{adj} mark: recheck"),
    ("course.longest", "{adj} mark: recheck"),
)
