"""Which needs are answered for every dog: whatever its sleeve, its stage, its day."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import product

from guidebot.domain.guide import Guide
from guidebot.domain.passage import Applies, Passage
from guidebot.domain.protocol import Stage

Cell = tuple[str, str, int]
"""A kind of dog: sleeve, stage and a day on which it may be in that stage."""

_OPEN = 10**9


def uncovered(guide: Guide) -> dict[str, str]:
    """The needs that no passage answers for some dog.

    Args:
        guide: the guide.

    Returns:
        By need in the order of the guide, in words, for whom nothing is there. A passage that
        holds for one part only counts if all passages of the need are about that part.
    """
    by_need: dict[str, list[Passage]] = {need: [] for need in guide.needs}
    for passage in guide.passages.values():
        for need in passage.answers:
            by_need[need].append(passage)
    missing = {}
    for need, passages in by_need.items():
        gap = _gap(guide, [passage.applies for passage in passages])
        if gap:
            missing[need] = gap
    return missing


def _gap(guide: Guide, applies: list[Applies]) -> str:
    """For whom none of these holds, in words; "" if one holds for everybody."""
    if not applies:
        return "no passage"
    parts = {each.part for each in applies}
    about_part = len(parts) == 1
    counted = [each for each in applies if about_part or each.part is None]
    if not counted:
        return "only for dogs with an optional part"
    if any(each.sleeve is None and not each.stages and each.days is None for each in counted):
        return ""
    sleeves = [sleeve.key for sleeve in guide.device.sleeves]
    open_cells = [
        cell
        for cell in _cells(sleeves, guide.protocol.stages, counted)
        if not any(_holds(each, cell) for each in counted)
    ]
    if not open_cells:
        return ""
    sleeve, stage, day = open_cells[0]
    return f"nothing for the sleeve `{sleeve}` in the stage `{stage}` on day {day}"


def _cells(
    sleeves: Iterable[str], stages: tuple[Stage, ...], used: list[Applies]
) -> Iterator[Cell]:
    """Every sleeve with every stage, on each day from which another passage may hold."""
    edges = {1}
    for each in used:
        if each.days:
            edges.add(each.days[0])
            if each.days[1] is not None:
                edges.add(each.days[1] + 1)
    spans = _spans(stages)
    for sleeve, (stage, (first, last)) in product(sleeves, spans.items()):
        days = {day for day in edges if first < day <= last} | {first}
        for day in sorted(days):
            yield sleeve, stage, day


def _spans(stages: tuple[Stage, ...]) -> dict[str, tuple[int, int]]:
    """First and last day on which a dog may be in each stage (months have 28 to 31 days)."""
    starts = [
        (s.from_day, s.from_day)
        if s.from_day is not None
        else (28 * (s.from_month or 0) + 1, 31 * (s.from_month or 0) + 1)
        for s in stages
    ]
    ends = [latest - 1 for _, latest in starts[1:]] + [_OPEN]
    return {
        stage.key: (earliest, end)
        for stage, (earliest, _), end in zip(stages, starts, ends, strict=True)
    }


def _holds(applies: Applies, cell: Cell) -> bool:
    sleeve, stage, day = cell
    first, last = applies.days or (1, None)
    return (
        applies.sleeve in {None, sleeve}
        and (not applies.stages or stage in applies.stages)
        and first <= day
        and (last is None or day <= last)
    )
