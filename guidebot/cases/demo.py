"""Five invented dogs at different days and devices, relative to a date."""

from __future__ import annotations

from datetime import date, timedelta

from guidebot.domain.case import Case, DiaryEntry, Gait, Restriction, Sex, Side, Skin


def demo_cases(on: date) -> tuple[Case, ...]:
    """The dogs of the demo as they are on `on`; the diaries lead up to the day before."""

    def ago(days: int) -> date:
        return on - timedelta(days=days)

    return (
        Case(
            id="",
            dog="Pepper",
            sex=Sex.FEMALE,
            side=Side.LEFT,
            sleeve="standard",
            fitted=ago(3),
            diary=(
                DiaryEntry(ago(3), 3.0, Skin.FINE, Gait.USUAL, True, note="hopped a little"),
                DiaryEntry(ago(2), 4.0, Skin.FADED, Gait.USUAL, True),
                DiaryEntry(ago(1), 5.0, Skin.FINE, Gait.USUAL, True),
            ),
        ),
        Case(
            id="",
            dog="Otis",
            sex=Sex.MALE,
            side=Side.RIGHT,
            sleeve="extended",
            fitted=ago(8),
            diary=(
                DiaryEntry(ago(3), 8.0, Skin.FINE, Gait.USUAL, True),
                DiaryEntry(ago(2), 9.0, Skin.STAYED, Gait.USUAL, False, note="red at the ankle"),
                DiaryEntry(ago(1), 8.0, Skin.FADED, Gait.USUAL, True),
            ),
        ),
        Case(
            id="",
            dog="Clover",
            sex=Sex.FEMALE,
            side=Side.RIGHT,
            sleeve="standard",
            parts=frozenset({"knee-elastic"}),
            fitted=ago(41),
            restrictions=(
                Restriction("stairs", ago(10), on + timedelta(days=11), None, "carry her"),
            ),
        ),
        Case(
            id="",
            dog="Bramble",
            sex=Sex.MALE,
            side=Side.LEFT,
            sleeve="standard",
            fitted=ago(130),
            target_hours=10.0,
            diary=(
                DiaryEntry(ago(2), 10.0, Skin.FINE, Gait.USUAL, True),
                DiaryEntry(ago(1), 10.0, Skin.SORE, Gait.USUAL, True, note="raw spot, heel"),
            ),
        ),
        Case(
            id="",
            dog="Juno",
            sex=Sex.FEMALE,
            side=Side.LEFT,
            sleeve="extended",
            fitted=ago(300),
        ),
    )
