"""What a guide that can be read still lacks: gaps, copies, hard words, age."""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from statistics import mean, median

from guidebot.domain.guide import Guide
from guidebot.domain.passage import Passage
from guidebot.errors import Fault
from guidebot.guide.copies import Alike, Copy, all_alike, near_copies
from guidebot.guide.coverage import uncovered
from guidebot.guide.faults import in_order
from guidebot.guide.findings import (
    age_warnings,
    alike_warnings,
    copy_warnings,
    gap_faults,
    grade_faults,
    wording_warnings,
)
from guidebot.guide.read import survey
from guidebot.guide.readability import count
from guidebot.guide.wordings import CLASSES

REVIEW_DAYS = 365
"""Days after which a passage should be looked at again."""


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

    def as_plain(self) -> dict[str, object]:
        """The counts as JSON values."""
        return {
            "needs": self.needs,
            "answered": self.answered,
            "unanswered": dict(self.unanswered),
            "passages": self.passages,
            "wordings": dict(self.wordings),
            "wordings_min": self.wordings_min,
            "wordings_median": self.wordings_median,
            "near_copies": len(self.copies),
            "near_copies_across": sum(copy.across for copy in self.copies),
            "alike": [each.need for each in self.alike],
            "topic_grades": {key: round(value, 2) for key, value in self.topic_grades.items()},
            "stale": list(self.stale),
        }


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
        faults=in_order([*gap_faults(missing), *grade_faults(guide, grades, topics)]),
        warnings=in_order(
            [
                *wording_warnings(lines),
                *copy_warnings(copies),
                *alike_warnings(alike),
                *age_warnings(guide, stale, today, review_days),
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


@dataclass(frozen=True, slots=True)
class FolderReport:
    """Everything known about one content folder.

    Attributes:
        folder: the folder.
        guide: the guide, None if it could not be read.
        counts: what `check` counted, None without a guide.
        faults, warnings: from reading and from counting together, by path and line.
    """

    folder: Path
    guide: Guide | None
    counts: CheckReport | None
    faults: tuple[Fault, ...]
    warnings: tuple[Fault, ...]

    def lines(self) -> list[str]:
        """The counts and the warnings for a person, one a line (faults are shown apart)."""
        shown = [f"warning: {warning}" for warning in self.warnings]
        if self.counts is None or self.guide is None:
            return [f"The guide in {self.folder} cannot be used.", *shown]
        found = [f"{len(self.faults)} faults, {len(self.warnings)} warnings"]
        return [*table(self.guide, self.counts), *found, *shown]

    def as_json(self) -> str:
        """The same for a program: one JSON object with `counts`, `faults` and `warnings`."""
        return json.dumps(
            {
                "schema": 1,
                "guide": None
                if self.guide is None
                else {"version": self.guide.stamp.version, "hash": self.guide.stamp.hash},
                "counts": None if self.counts is None else self.counts.as_plain(),
                "faults": [_plain_fault(fault) for fault in self.faults],
                "warnings": [_plain_fault(fault) for fault in self.warnings],
            },
            ensure_ascii=False,
            indent=2,
        )


def check_folder(
    folder: Path, *, on: date | None = None, signs: Collection[str] | None = None
) -> FolderReport:
    """Read a content folder and count what it has and lacks; raises nothing about its content.

    Args:
        folder: the content folder.
        on: the day from which ages are counted; None for today.
        signs: keys of the injury signs; given, the fit check's `alert:` targets are checked.
    """
    read = survey(folder, signs=signs)
    if read.guide is None:
        return FolderReport(folder, None, None, read.faults, read.warnings)
    counts = check(read.guide, on=on)
    return FolderReport(
        folder, read.guide, counts, counts.faults, in_order([*read.warnings, *counts.warnings])
    )


def table(guide: Guide, counts: CheckReport) -> list[str]:
    """The counts as lines of a name and a value."""
    across = sum(copy.across for copy in counts.copies)
    oldest = min((p.reviewed.on for p in guide.passages.values()), default=None)
    rows = [
        ("guide", f"version {guide.stamp.version}, hash {guide.stamp.hash}"),
        ("needs answered", f"{counts.answered} of {counts.needs}"),
        ("passages", f"{counts.passages}"),
        (
            "wordings a need",
            f"{counts.wordings_min} at least, {counts.wordings_median:g} in the middle, "
            f"{sum(counts.wordings.values())} in all",
        ),
        *((f"{name} lines", f"{len(guide.wordings.get(name, ()))}") for name in CLASSES),
        ("near copies", f"{len(counts.copies)}, {across} of them across needs"),
        ("needs said alike", f"{len(counts.alike)}"),
        ("school grade", _grades(counts)),
        ("oldest review", f"{oldest}, {len(counts.stale)} passages too old"),
    ]
    width = max(len(name) for name, _ in rows)
    return [f"{name:<{width}}  {value}" for name, value in rows]


def _grades(counts: CheckReport) -> str:
    if not counts.passage_grades:
        return "no passage"
    topic, highest = max(counts.topic_grades.items(), key=lambda item: item[1])
    hardest, grade = max(counts.passage_grades.items(), key=lambda item: item[1])
    average = mean(counts.passage_grades.values())
    return (
        f"{average:.1f} on average; hardest topic {topic} ({highest:.1f}), "
        f"hardest passage {hardest} ({grade:.1f})"
    )


def _plain_fault(fault: Fault) -> dict[str, object]:
    where = fault.where
    return {
        "path": where.path,
        "line": where.line,
        "column": where.column,
        "key": where.key,
        "what": fault.what,
        "remedy": fault.remedy,
    }
