"""What a readable guide still lacks."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebot.domain.guide import Guide
from guidebot.domain.passage import Applies, Reviewed
from guidebot.guide import copies
from guidebot.guide.check import check
from guidebot.guide.copies import all_alike, near_copies
from guidebot.guide.coverage import uncovered
from guidebot.guide.read import read_guide

SECOND = Path(__file__).parent.parent / "fixtures" / "second_guide"
ON = date(2026, 11, 20)


@pytest.fixture(scope="module")
def guide() -> Guide:
    return read_guide(SECOND)


def with_applies(guide: Guide, applies: Mapping[str, Applies]) -> Guide:
    """The guide in which only the named passages answer `fastening.cuff`."""
    cuffs = iter([p for p in guide.passages.values() if p.answers == ("fastening.cuff",)])
    kept = {p.id: p for p in guide.passages.values() if p.answers != ("fastening.cuff",)}
    for each in applies.values():
        passage = next(cuffs)
        kept[passage.id] = replace(passage, applies=each)
    return replace(guide, passages=kept)


ALWAYS, MESH, PADDED, WINTER = (
    Applies(),
    Applies(sleeve="mesh"),
    Applies(sleeve="padded"),
    Applies(sleeve="winter"),
)


@pytest.mark.parametrize(
    ("applies", "covered"),
    [
        ([ALWAYS], True),
        ([], False),
        ([MESH], False),
        ([MESH, PADDED, WINTER], True),
        ([MESH, PADDED], False),
        ([Applies(stages=("settling", "guarded")), Applies(stages=("easy",))], True),
        ([Applies(stages=("settling", "easy"))], False),
        # Month 2 starts on day 57 to 63: day 60 may still be guarded, and may be easy.
        ([Applies(days=(1, 10)), Applies(days=(11, None))], True),
        ([Applies(days=(1, 10)), Applies(days=(12, None))], False),
        ([Applies(days=(1, 60)), Applies(stages=("easy",))], False),
        ([Applies(days=(1, 62)), Applies(stages=("easy",))], True),
        ([Applies(days=(1, None))], True),
        ([Applies(stages=("settling", "guarded")), Applies(days=(57, None))], True),
        ([Applies(stages=("settling", "guarded")), Applies(days=(58, None))], False),
        ([Applies(days=(2, None))], False),
        ([MESH, PADDED, Applies(sleeve="winter", stages=("settling", "guarded"))], False),
        # A need that is only about an optional part; a part beside passages for everybody.
        ([Applies(part="dewclaw-guard")], True),
        ([Applies(part="dewclaw-guard"), MESH], False),
        ([Applies(part="dewclaw-guard"), Applies(part="other")], False),
    ],
)
def test_coverage(guide: Guide, applies: list[Applies], covered: bool) -> None:
    changed = with_applies(guide, {str(i): each for i, each in enumerate(applies)})
    assert ("fastening.cuff" not in uncovered(changed)) is covered
    assert set(uncovered(changed)) <= {"fastening.cuff"}


def test_a_gap_says_for_whom(guide: Guide) -> None:
    changed = with_applies(guide, {"a": MESH, "b": PADDED})
    said = uncovered(changed)["fastening.cuff"]
    assert said == "nothing for the sleeve `winter` in the stage `settling` on day 1"
    report = check(changed, on=ON)
    assert (report.needs, report.answered) == (8, 7)
    assert any("fastening.cuff" in fault.what for fault in report.faults)


def test_the_second_guide_passes(guide: Guide) -> None:
    report = check(guide, on=ON)
    assert (report.answered, report.needs, report.passages) == (8, 8, 12)
    assert (report.wordings_min, report.wordings_median) == (12, 12)
    assert report.faults == ()
    assert report.copies == ()
    assert {w.what for w in report.warnings} == {"has 12 wordings, fewer than 80"}
    assert len(report.warnings) == 8


def test_hard_words_are_faults(guide: Guide) -> None:
    hard = "Immediate veterinary consultation is unconditionally recommended notwithstanding." * 9
    passages = {
        key: replace(p, body=hard) if p.topic == "upkeep" else p
        for key, p in guide.passages.items()
    }
    report = check(replace(guide, passages=passages), on=ON)
    assert [f.where.path for f in report.faults] == [
        "passages/upkeep",
        "passages/upkeep/washing.md",
    ]


def test_age_is_counted_from_the_day_given(guide: Guide) -> None:
    reviewed = guide.passages["nights"].reviewed.on
    at_limit = check(guide, on=reviewed + timedelta(days=365))
    beyond = check(guide, on=reviewed + timedelta(days=366))
    assert (at_limit.stale, len(beyond.stale)) == ((), 12)
    ahead = replace(guide.passages["nights"], reviewed=Reviewed(ON + timedelta(days=1), "fitter"))
    report = check(replace(guide, passages={"nights": ahead}), on=ON)
    assert any("still to come" in w.what for w in report.warnings)


WORDS = st.lists(st.sampled_from("abcdefghij"), min_size=1, max_size=9).map(" ".join)


@given(st.dictionaries(st.sampled_from(["x", "y", "z"]), st.lists(WORDS, max_size=12)))
def test_near_copies_are_those_of_every_pair_compared(wordings: dict[str, list[str]]) -> None:
    lines = [(need, line) for need, entries in wordings.items() for line in entries]
    bags = [set(line.split()) for _, line in lines]
    slow = [
        line
        for number, line in enumerate(lines)
        if any(len(bags[number] & b) / len(bags[number] | b) >= 0.85 for b in bags[:number])
    ]
    assert [copy.second for copy in near_copies(wordings)] == slow


def test_near_copies_compare_few_pairs(monkeypatch: pytest.MonkeyPatch) -> None:
    compared = 0
    real = copies._jaccard

    def counting(a: frozenset[str], b: frozenset[str]) -> float:
        nonlocal compared
        compared += 1
        return real(a, b)

    monkeypatch.setattr(copies, "_jaccard", counting)
    common = ["how", "do", "i", "the", "it", "on", "my", "dog"]
    lines = [
        f"{common[i % 8]} {common[i // 8 % 8]} w{i * 7 % 911} w{i * 13 % 2003} strap"
        for i in range(15_000)
    ]
    near_copies({"a": lines[:9000], "b": lines[9000:]})
    assert compared < 20 * len(lines)  # all pairs would be 112 million


def test_copies_across_needs_name_both(guide: Guide) -> None:
    wordings = {**guide.wordings, "moving.digging": ("Can I wash it?", "dig")}
    report = check(replace(guide, wordings=wordings), on=ON)
    assert [copy.across for copy in report.copies] == [True]
    assert any("wordings/moving.digging.txt" in w.what for w in report.warnings)


def test_wordings_from_one_mould_are_seen(guide: Guide) -> None:
    mould = [f"how do i best clean the cuff when it is {x} please" for x in "abcdefghjklm"]
    assert [a.need for a in all_alike({"m": mould, "few": mould[:9]})] == ["m"]
    [alike] = all_alike({"m": mould})
    # two of them share 11 of 13 different words
    assert (alike.openings, round(alike.overlap, 3)) == (1, round(11 / 13, 3))
    shuffled = [" ".join([f"z{i}", *line.split()]) for i, line in enumerate(mould)]
    assert all_alike({"m": shuffled}) != []  # many openings, one mould
    same_start = [f"how a{i} b{i} c{i} d{i} e{i} f{i}" for i in range(12)]
    assert all_alike({"m": same_start}) != []  # different words, one opening
    assert all_alike(guide.wordings) == []
