"""What a guide that can be read still lacks: gaps, copies, hard words, age."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from statistics import mean, median

from guidebot.domain.guide import Guide
from guidebot.domain.passage import Passage
from guidebot.errors import Fault, Where
from guidebot.guide.copies import Alike, Copy, all_alike, near_copies
from guidebot.guide.coverage import uncovered
from guidebot.guide.faults import in_order
from guidebot.guide.readability import count

PASSAGE_GRADE = 8.0
TOPIC_GRADE = 6.0
"""Highest Flesch-Kincaid grade of one passage and of a topic on average (the usual advice for
handouts is sixth grade: M. Baxter, S. Viera, Issues Sci Technol Librariansh 2020;94)."""

REVIEW_DAYS = 365
"""Days after which a passage should be looked at again."""

FEWEST_WORDINGS = 80
"""Wordings a need should have; with fewer, questions are often misread."""

_SHOWN = 60


@dataclass(frozen=True, slots=True)
class CheckReport:
    """What `check` counted.

    Attributes:
        needs: number of needs.
        unanswered: for each need that is not answered for every dog, for whom it is not.
        passages: number of passages.
        wordings: number of wordings by need.
        copies: near copies among the wordings.
        alike: needs whose wordings are all alike.
        topic_grades: mean Flesch-Kincaid grade of the passages of each topic.
        passage_grades: grade by passage id.
        stale: ids of passages reviewed too long ago, oldest first.
        faults: what has to be changed.
        warnings: what should be looked at.
    """

    needs: int
    unanswered: Mapping[str, str]
    passages: int
    wordings: Mapping[str, int]
    copies: tuple[Copy, ...]
    alike: tuple[Alike, ...]
    topic_grades: Mapping[str, float]
    passage_grades: Mapping[str, float]
    stale: tuple[str, ...]
    faults: tuple[Fault, ...]
    warnings: tuple[Fault, ...]

    @property
    def answered(self) -> int:
        """Number of needs that are answered for every dog."""
        return self.needs - len(self.unanswered)

    @property
    def wordings_min(self) -> int:
        """Fewest wordings of a need."""
        return min(self.wordings.values(), default=0)

    @property
    def wordings_median(self) -> float:
        """Median number of wordings of a need."""
        return median(self.wordings.values()) if self.wordings else 0.0


def check(guide: Guide, *, on: date | None = None, review_days: int = REVIEW_DAYS) -> CheckReport:
    """Count what a guide has and what it lacks.

    Args:
        guide: a guide that could be read.
        on: the day from which the age of a review is counted; None for today.
        review_days: days after which a review is too old.
    """
    today = on or date.today()
    missing = uncovered(guide)
    lines = {need: guide.wordings.get(need, ()) for need in guide.needs}
    copies = near_copies(guide.wordings)
    alike = all_alike(lines)
    grades = {p.id: passage_grade(p) for p in guide.passages.values()}
    topics = _topic_grades(guide, grades)
    stale = sorted(
        (p for p in guide.passages.values() if (today - p.reviewed.on).days > review_days),
        key=lambda p: (p.reviewed.on, p.id),
    )
    return CheckReport(
        needs=len(guide.needs),
        unanswered=missing,
        passages=len(guide.passages),
        wordings={need: len(entries) for need, entries in lines.items()},
        copies=tuple(copies),
        alike=tuple(alike),
        topic_grades=topics,
        passage_grades=grades,
        stale=tuple(p.id for p in stale),
        faults=in_order([*_gap_faults(missing), *_grade_faults(guide, grades, topics)]),
        warnings=in_order(
            [
                *_wording_warnings(lines),
                *_copy_warnings(copies),
                *_alike_warnings(alike),
                *_age_warnings(guide, stale, today, review_days),
            ]
        ),
    )


def passage_grade(passage: Passage) -> float:
    """The Flesch-Kincaid grade of a passage: its short answer and its text together."""
    return count(f"{passage.short}\n\n{passage.body}").grade()


def _topic_grades(guide: Guide, grades: Mapping[str, float]) -> dict[str, float]:
    by_topic: dict[str, list[float]] = defaultdict(list)
    for passage in guide.passages.values():
        by_topic[passage.topic].append(grades[passage.id])
    return {topic: mean(values) for topic, values in sorted(by_topic.items())}


def _gap_faults(missing: Mapping[str, str]) -> list[Fault]:
    return [
        Fault(
            Where("needs.yaml", key=need),
            f"`{need}` is not answered for every dog: {gap}",
            "Write a passage, or one without `applies`",
        )
        for need, gap in missing.items()
    ]


def _grade_faults(
    guide: Guide, grades: Mapping[str, float], topics: Mapping[str, float]
) -> list[Fault]:
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


def _wording_warnings(lines: Mapping[str, tuple[str, ...]]) -> list[Fault]:
    return [
        Fault(
            _file(need),
            f"has {len(entries)} wordings, fewer than {FEWEST_WORDINGS}",
            "Add how owners ask it, from many hands",
        )
        for need, entries in lines.items()
        if len(entries) < FEWEST_WORDINGS
    ]


def _copy_warnings(copies: list[Copy]) -> list[Fault]:
    faults = []
    for copy in copies:
        own, line = copy.second
        what = f"`{line[:_SHOWN]}` is nearly `{copy.first[1][:_SHOWN]}`"
        if copy.across:
            what += f" in wordings/{copy.first[0]}.txt, so it points to both"
        faults.append(Fault(_file(own), what, "Keep one of them"))
    return faults


def _alike_warnings(alike: list[Alike]) -> list[Fault]:
    return [
        Fault(
            _file(each.need),
            f"its {each.count} wordings are much alike: two of them share {each.overlap:.0%} of "
            f"their words, and they begin with {each.openings} different words",
            "Let somebody else write some",
        )
        for each in alike
    ]


def _age_warnings(guide: Guide, stale: list[Passage], today: date, review_days: int) -> list[Fault]:
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
