"""Day numbers, stages and months."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st

from guidebot.domain.case import Case
from guidebot.domain.protocol import Protocol
from guidebot.errors import InputError
from guidebot.plan.days import (
    add_months,
    day_number,
    fitted_from,
    next_dates,
    stage_of_day,
    stage_on,
)

DATES = st.dates(date(1990, 1, 1), date(2090, 12, 31))


@given(DATES, st.integers(-400, 400))
def test_months_as_dateutil_counts_them(start: date, months: int) -> None:
    assert add_months(start, months) == start + relativedelta(months=months)


@pytest.mark.parametrize(
    ("start", "months", "end"),
    [
        (date(2026, 11, 30), 3, date(2027, 2, 28)),
        (date(2027, 11, 29), 3, date(2028, 2, 29)),  # a leap day
        (date(2028, 2, 29), 12, date(2029, 2, 28)),
        (date(2026, 8, 31), 6, date(2027, 2, 28)),
    ],
)
def test_month_ends_clamp(start: date, months: int, end: date) -> None:
    assert add_months(start, months) == end


def test_the_fitting_day_is_day_one() -> None:
    assert day_number(date(2026, 11, 20), date(2026, 11, 20)) == 1
    assert day_number(date(2026, 11, 20), date(2026, 11, 25)) == 6
    # Over both changes of the clock in Europe and America: calendar days only.
    assert day_number(date(2026, 10, 20), date(2026, 11, 5)) == 17
    assert day_number(date(2027, 3, 1), date(2027, 4, 1)) == 32


@given(DATES, st.integers(1, 3000))
def test_day_and_fitting_day_turn_back(on: date, day: int) -> None:
    assert day_number(fitted_from(day, on), on) == day


@pytest.mark.parametrize("day", [0, -3, 10_000])
def test_impossible_day_numbers(day: int) -> None:
    with pytest.raises(InputError):
        fitted_from(day, date(2026, 11, 25))


def test_dates_before_the_fitting_and_slips_of_the_century() -> None:
    with pytest.raises(InputError, match="before the fitting day"):
        day_number(date(2026, 11, 20), date(2026, 11, 19))
    with pytest.raises(InputError, match="25 years"):
        day_number(date(1926, 11, 20), date(2026, 11, 19))
    with pytest.raises(InputError):
        add_months(date(9999, 12, 1), 3)


def test_stages_by_date(protocol: Protocol) -> None:
    fitted = date(2026, 11, 30)
    for on, key in [
        (date(2026, 11, 30), "break-in"),
        (date(2026, 12, 9), "break-in"),
        (date(2026, 12, 10), "restricted"),
        (date(2027, 2, 27), "restricted"),
        (date(2027, 2, 28), "return"),  # three months after the 30th, clamped
        (date(2027, 8, 29), "return"),
        (date(2027, 8, 30), "long-term"),
    ]:
        assert stage_on(protocol, fitted, on).key == key


@given(DATES, st.integers(1, 400))
def test_a_bare_day_number_never_opens_a_stage_early(
    protocol: Protocol, fitted: date, day: int
) -> None:
    on = fitted + timedelta(days=day - 1)
    order = [stage.key for stage in protocol.stages]
    bare, dated = stage_of_day(protocol, day), stage_on(protocol, fitted, on)
    assert order.index(bare.key) <= order.index(dated.key)


def test_next_dates(protocol: Protocol) -> None:
    case = Case("", "", fitted=date(2026, 11, 20))
    found = [(n.on.isoformat(), n.what) for n in next_dates(protocol, case, date(2026, 11, 25))]
    assert found == [
        ("2026-11-30", "stage: restricted"),
        ("2026-12-04", "first recheck with the fitter"),
        ("2027-02-20", "stage: gradual return"),
        ("2027-05-20", "6-month mark: recheck"),
        ("2027-08-20", "9-month mark: recheck"),
        ("2027-08-20", "stage: long term"),
    ]
    assert next_dates(protocol, replace(case, fitted=None), date(2026, 11, 25)) == ()
