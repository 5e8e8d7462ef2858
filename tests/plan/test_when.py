"""Words of time in a question (lines written for this test; `-` means no time for this dog)."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebot.plan.when import read_when, without

ON = date(2026, 11, 25)  # a Wednesday
ROWS = [
    line.split("\t")
    for line in Path(__file__).with_name("times.tsv").read_text("utf-8").splitlines()
]


@pytest.mark.parametrize(("want", "text"), ROWS, ids=[r[1][:50] for r in ROWS])
def test_day(want: str, text: str) -> None:
    when = read_when(text, ON)
    assert (str(when.day) if when else "-") == want
    if when is not None:
        start, end = when.span
        assert text[start:end] == when.quote
        assert (ON - when.fitted).days + 1 == when.day  # type: ignore[operator]


def test_weekday_needs_the_date() -> None:
    assert read_when("since Sunday, stairs?") is None
    assert not read_when("since Sunday, stairs?", ON).from_fitting  # type: ignore[union-attr]


def test_months_without_a_date_are_never_short() -> None:
    when = read_when("three months in, may he run")
    assert when is not None
    assert when.day >= 92


def test_words_of_time_are_taken_out_for_ranking() -> None:
    text = "may he run after a frisbee, it's been nineteen days"
    assert without(text, read_when(text, ON)) == "may he run after a frisbee"
    assert without("day 6", read_when("day 6", ON)) == "day 6"


@given(st.text(alphabet="day week month 1234 ½ since got it in on for two,'.", max_size=60))
def test_any_text_is_read_without_an_error(text: str) -> None:
    when = read_when(text, ON)
    if when is not None:
        assert when.day >= 1


@given(st.integers(1, 400))
def test_every_day_number_is_read(day: int) -> None:
    when = read_when(f"how long may she wear it, day {day}", ON)
    assert when is not None
    assert when.day == day
