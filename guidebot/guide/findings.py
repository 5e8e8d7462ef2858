"""What `check` found, as faults and warnings with a place and a remedy."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from guidebot.domain.guide import Guide
from guidebot.domain.passage import Passage
from guidebot.errors import Fault, Where
from guidebot.guide.copies import Alike, Copy

PASSAGE_GRADE = 8.0
TOPIC_GRADE = 6.0
"""Highest Flesch-Kincaid grade of one passage and of a topic on average (the usual advice for
handouts is sixth grade: M. Baxter, S. Viera, Issues Sci Technol Librariansh 2020;94)."""

FEWEST_WORDINGS = 80
"""Wordings a need should have; with fewer, questions are often misread."""

_SHOWN = 60


def gap_faults(missing: Mapping[str, str]) -> list[Fault]:
    """Needs that some dog finds no answer to."""
    return [
        Fault(
            Where("needs.yaml", key=need),
            f"`{need}` is not answered for every dog: {gap}",
            "Write a passage, or one without `applies`",
        )
        for need, gap in missing.items()
    ]


def grade_faults(
    guide: Guide, grades: Mapping[str, float], topics: Mapping[str, float]
) -> list[Fault]:
    """Passages and topics that are too hard to read."""
    remedy = "Use shorter sentences and shorter words"
    faults = [
        Fault(
            Where(guide.passages[key].path),
            f"reads at school grade {grade:.1f}, more than {PASSAGE_GRADE:g}",
            remedy,
        )
        for key, grade in grades.items()
        if grade > PASSAGE_GRADE
    ]
    return faults + [
        Fault(
            Where(f"passages/{topic}"),
            f"its passages read at school grade {grade:.1f} on average, more than {TOPIC_GRADE:g}",
            remedy,
        )
        for topic, grade in topics.items()
        if grade > TOPIC_GRADE
    ]


def wording_warnings(lines: Mapping[str, tuple[str, ...]]) -> list[Fault]:
    """Needs with few wordings."""
    return [
        Fault(
            _file(need),
            f"has {len(entries)} wordings, fewer than {FEWEST_WORDINGS}",
            "Add how owners ask it, from many hands",
        )
        for need, entries in lines.items()
        if len(entries) < FEWEST_WORDINGS
    ]


def copy_warnings(copies: list[Copy]) -> list[Fault]:
    """Wordings that are nearly one."""
    faults = []
    for copy in copies:
        own, line = copy.second
        what = f"`{line[:_SHOWN]}` is nearly `{copy.first[1][:_SHOWN]}`"
        if copy.across:
            what += f" in wordings/{copy.first[0]}.txt, so it points to both"
        faults.append(Fault(_file(own), what, "Keep one of them"))
    return faults


def alike_warnings(alike: list[Alike]) -> list[Fault]:
    """Needs whose wordings come from one mould."""
    return [
        Fault(
            _file(each.need),
            f"its {each.count} wordings are much alike: two of them share {each.overlap:.0%} of "
            f"their words, and they begin with {each.openings} different words",
            "Let somebody else write some",
        )
        for each in alike
    ]


def age_warnings(guide: Guide, stale: list[Passage], today: date, review_days: int) -> list[Fault]:
    """Passages reviewed too long ago, or on a day to come."""
    faults = [
        Fault(
            Where(p.path),
            f"was reviewed on {p.reviewed.on}, more than {review_days} days ago",
            "Read it again and set the date",
        )
        for p in stale
    ]
    return faults + [
        Fault(Where(p.path), f"says it was reviewed on {p.reviewed.on}, which is still to come")
        for p in guide.passages.values()
        if p.reviewed.on > today
    ]


def _file(need: str) -> Where:
    return Where(f"wordings/{need}.txt")
