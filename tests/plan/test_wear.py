"""Hours of wear: the ramp (common practice, no source) and every promise about setbacks."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from guidebot.domain.activity import STRICTNESS, Activity
from guidebot.domain.case import Case, DiaryEntry, Gait, Restriction, Skin
from guidebot.domain.protocol import Protocol
from guidebot.errors import InputError
from guidebot.plan.plan import make_plan, plan_json
from guidebot.plan.sessions import sessions
from guidebot.plan.verdict import activity_on
from guidebot.plan.wear import Held, allowed_on, flag_of, ramp, target

F = date(2026, 11, 20)


def on(day: int) -> date:
    return F + timedelta(days=day - 1)


def entry(day: int, hours: float | None = None, **more: Any) -> DiaryEntry:
    return DiaryEntry(on(day), hours, **more)


def hours(protocol: Protocol, day: int, *diary: DiaryEntry, **more: Any) -> Fraction:
    return allowed_on(protocol, Case("", "", fitted=F, diary=diary, **more), on(day)).allowed


def test_the_undisturbed_ramp(protocol: Protocol) -> None:
    assert [hours(protocol, day) for day in range(1, 13)] == [
        3,
        4,
        5,
        6,
        7,
        8,
        9,
        10,
        11,
        12,
        12,
        12,
    ]


@pytest.mark.parametrize(
    ("day", "want", "diary"),
    [
        (6, 6, [entry(5, 5)]),  # wore 5 of 7: one more than that
        (6, 8, [entry(5, 9)]),  # wore more than allowed: no credit
        (6, 6, [entry(5, 7, skin=Skin.STAYED)]),  # back to day 4, the last good one
        (7, 6, [entry(5, 7, skin=Skin.STAYED)]),  # and held until a good day is noted
        (7, 7, [entry(5, 7, skin=Skin.STAYED), entry(6, 6, skin=Skin.FINE)]),
        (6, 6, [entry(5, 7, gait=Gait.WORSE)]),
        (6, 0, [entry(5, 7, skin=Skin.SORE)]),
        (20, 0, [entry(5, 7, skin=Skin.SORE)]),
        (20, 3, [entry(5, 7, skin=Skin.SORE), entry(20, cleared=True)]),
        (21, 4, [entry(5, 7, skin=Skin.SORE), entry(20, cleared=True)]),
        (6, 0, [entry(5, 7, skin=Skin.SORE, cleared=True)]),  # the same day does not clear
        (6, 6, [entry(5, 0)]),  # one day off: the last good day
        (7, 6, [entry(5, 0), entry(6, 0)]),
        (8, 7, [entry(5, 0), entry(6, 0), entry(7, 6)]),
        (8, 3, [entry(5, 0), entry(6, 0), entry(7, 0)]),  # longer: start low
        (9, 4, [entry(5, 0), entry(6, 0), entry(7, 0)]),
        (2, 3, [entry(1, 3, skin=Skin.STAYED)]),
        (4, 1, [entry(day, 2 - day // 3, skin=Skin.STAYED) for day in (1, 2, 3)]),
    ],
)  # fmt: skip
def test_setbacks(protocol: Protocol, day: int, want: int, diary: list[DiaryEntry]) -> None:
    assert hours(protocol, day, *diary) == want


def test_the_veterinarian_limits(protocol: Protocol) -> None:
    four = Restriction("wear", on(3), on(8), 4.0)
    assert hours(protocol, 2, restrictions=(four,)) == 4
    assert hours(protocol, 8, restrictions=(four,)) == 4
    assert hours(protocol, 9, restrictions=(four,)) == 5  # goes on from what was worn
    none = Restriction("wear", on(3), on(8), None)
    assert hours(protocol, 5, restrictions=(four, none)) == 0
    assert hours(protocol, 9, restrictions=(none,)) == 3


@pytest.mark.parametrize("bad", [-1.0, 25.0, float("nan")])
def test_impossible_hours(protocol: Protocol, bad: float) -> None:
    with pytest.raises(InputError):
        hours(protocol, 5, entry(2, bad))
    with pytest.raises(InputError):
        hours(protocol, 5, target_hours=bad)


def test_before_the_fitting(protocol: Protocol) -> None:
    with pytest.raises(InputError, match="before the fitting day"):
        make_plan(protocol, Case("", "", fitted=F), on(0))
    with pytest.raises(InputError, match="not known"):
        make_plan(protocol, Case("", ""), F)


ENTRIES = st.builds(
    DiaryEntry,
    on=st.integers(1, 40).map(on),
    worn_hours=st.one_of(st.none(), st.just(0.0), st.integers(0, 96).map(lambda q: q / 4)),
    skin=st.one_of(st.none(), st.sampled_from(Skin)),
    gait=st.one_of(st.none(), st.sampled_from(Gait)),
    cleared=st.booleans(),
)
RESTRICTIONS = st.builds(
    lambda start, length, most: Restriction("wear", on(start), on(start + length), most),
    st.integers(1, 40),
    st.integers(0, 15),
    st.one_of(st.none(), st.integers(0, 12).map(float)),
)
CASES = st.builds(
    lambda diary, limits, goal: Case(
        "", "", fitted=F, diary=tuple(diary), restrictions=tuple(limits), target_hours=goal
    ),
    st.lists(ENTRIES, max_size=14, unique_by=lambda e: e.on),
    st.lists(RESTRICTIONS, max_size=2),
    st.one_of(st.none(), st.integers(1, 20).map(float)),
)


@settings(max_examples=300, deadline=None)
@given(CASES)
def test_promises_of_the_ramp(protocol: Protocol, case: Case) -> None:
    days = ramp(protocol, case, on(45))
    most, step = target(protocol, case), protocol.value("wear.daily_step")
    notes = {e.on: e for e in case.diary}
    good = min(protocol.value("wear.first_day"), most)  # what the first day may start from
    for before, day in zip((None, *days), days, strict=False):
        assert 0 <= day.allowed <= most
        if before is not None:
            noted = notes.get(before.on, DiaryEntry(before.on))
            used = before.allowed if before.worn is None else min(before.worn, before.allowed)
            if flag_of(noted) is None and used > 0:
                good = used
            # Never more than one step above the last good day, and only after a good day.
            assert day.allowed <= good + step
            cleared = notes.get(day.on, DiaryEntry(day.on)).cleared
            barred = any(r.held is Held.RESTRICTED for r in before.reasons)
            if flag_of(noted) is not None and not cleared and not (barred and not before.allowed):
                assert day.allowed <= before.allowed  # no growth the day after a flag
            if before.worn is not None and before.worn > 0 and not cleared:
                assert day.allowed <= before.worn + step
    assert days == ramp(protocol, case, on(45))


@settings(max_examples=200, deadline=None)
@given(CASES, st.integers(1, 45))
def test_sessions_stay_within_the_hours(protocol: Protocol, case: Case, day: int) -> None:
    plan = make_plan(protocol, case, on(day))
    total = sum(s.minutes for s in plan.sessions)
    assert total <= plan.allowed * 60
    assert plan.walk.minutes * plan.walk.times <= total
    rest = protocol.value("wear.rest")
    for one, two in zip(plan.sessions, plan.sessions[1:], strict=False):
        gap = (two.on.hour * 60 + two.on.minute) - (one.off.hour * 60 + one.off.minute)
        assert gap >= rest
    if plan.sessions:
        first, last = plan.sessions[0], plan.sessions[-1]
        assert first.on.hour * 60 + first.on.minute >= protocol.value("wear.earliest") * 60
        assert last.off.hour * 60 + last.off.minute <= protocol.value("wear.latest") * 60
        assert all(s.minutes > 0 for s in plan.sessions)
    assert plan_json(plan) == plan_json(make_plan(protocol, case, on(day)))


@given(st.integers(1, 96).map(lambda q: Fraction(q, 4)))
def test_sessions_for_any_hours(protocol: Protocol, allowed: Fraction) -> None:
    spells = sessions(protocol, allowed)
    assert 0 < sum(s.minutes for s in spells) <= allowed * 60


def test_the_first_day_is_short_spells(protocol: Protocol) -> None:
    spells = sessions(protocol, Fraction(3))
    assert spells[0].minutes == 10
    assert {s.minutes for s in spells[1:]} == {15}


@settings(max_examples=150, deadline=None)
@given(CASES, RESTRICTIONS, st.integers(1, 45))
def test_a_restriction_never_adds_hours(
    protocol: Protocol, case: Case, limit: Restriction, day: int
) -> None:
    free = allowed_on(protocol, replace(case, restrictions=()), on(day)).allowed
    held = allowed_on(protocol, replace(case, restrictions=(limit,)), on(day)).allowed
    assert held <= free


@settings(deadline=None)
@given(st.data(), st.integers(1, 320), st.integers(0, 100), st.integers(0, 400))
def test_a_restriction_never_loosens_a_verdict(
    protocol: Protocol,
    activities: dict[str, Activity],
    data: st.DataObject,
    day: int,
    start: int,
    length: int,
) -> None:
    activity = activities[data.draw(st.sampled_from(sorted(activities)))]
    named = data.draw(st.sampled_from([activity.key, "all", "stairs"]))
    bar = Restriction(named, on(start), on(start + length))
    free = activity_on(protocol, activity, Case("", "", fitted=F), on(day))
    held = activity_on(protocol, activity, Case("", "", fitted=F, restrictions=(bar,)), on(day))
    assert STRICTNESS[held.say] >= STRICTNESS[free.say]


def test_reasons_name_the_day(protocol: Protocol) -> None:
    case = Case("", "", fitted=F, diary=(entry(5, 7, skin=Skin.STAYED),))
    plan = make_plan(protocol, case, on(6))
    assert [(r.held, r.on) for r in plan.reasons] == [(Held.REDNESS, on(5))]
    assert plan.flagged
    assert "24 November 2026" in plan.why()[0]


def test_what_was_worn_against_an_order_is_the_last_good_day(protocol: Protocol) -> None:
    diary = (
        DiaryEntry(on=on(15), worn_hours=0.25),
        DiaryEntry(on=on(16), gait=Gait.WORSE),
    )
    free = Case("", "", fitted=F, diary=diary)
    none = Restriction(activity="wear", starts=on(1), ends=on(15))
    held = replace(free, restrictions=(none,))
    assert allowed_on(protocol, held, on(17)).allowed <= allowed_on(protocol, free, on(17)).allowed
