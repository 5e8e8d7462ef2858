"""The demo guide: complete, readable, and its signs are those of the code."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from guidebot.domain.guide import Guide
from guidebot.guide.check import FolderReport, check_folder
from guidebot.safety.signs import BY_KEY

CONTENT = Path(__file__).parent.parent.parent / "content"


@pytest.fixture(scope="module")
def report() -> FolderReport:
    return check_folder(CONTENT, signs=set(BY_KEY))


@pytest.fixture(scope="module")
def guide(report: FolderReport) -> Guide:
    assert report.guide is not None, [str(fault) for fault in report.faults]
    return report.guide


def test_no_fault_and_every_need_answered(report: FolderReport) -> None:
    assert [str(fault) for fault in report.faults] == []
    assert report.counts is not None
    assert report.counts.answered == report.counts.needs == 86
    assert report.counts.wordings_min >= 60
    assert report.counts.alike == ()


def test_the_counts_are_told_to_people_and_programs(report: FolderReport) -> None:
    assert "needs answered    86 of 86" in report.lines()
    told = json.loads(report.as_json())
    assert (told["counts"]["answered"], told["faults"]) == (86, [])
    assert len(told["warnings"]) == len(report.warnings)


def test_a_guide_that_cannot_be_read_is_told_too(tmp_path: Path) -> None:
    report = check_folder(tmp_path)
    assert report.lines() == [f"The guide in {tmp_path} cannot be used."]
    told = json.loads(report.as_json())
    assert told["counts"] is None
    assert "protocol.yaml" in {fault["path"] for fault in told["faults"]}


def test_steps_for_each_device_follow_the_order_of_the_trade(guide: Guide) -> None:
    for sleeve in ("standard", "extended"):
        on = [s.title for s in guide.putting_on if s.sleeve in {None, sleeve}]
        # suspension sleeve, Achilles strap, elastic behind the knee, front strap, top strap last
        wanted = ["ankle sleeve", "Achilles", "behind the knee", "front shin", "top strap"]
        places = [next(i for i, title in enumerate(on) if part in title) for part in wanted]
        assert places == sorted(places)
        off = [s.title for s in guide.taking_off if s.sleeve in {None, sleeve}]
        wanted = ["top strap", "behind the knee", "Achilles", "front shin", "ankle sleeve"]
        places = [next(i for i, title in enumerate(off) if part in title) for part in wanted]
        assert places == sorted(places)
    [elastic] = [s for s in guide.putting_on if "behind the knee" in s.title]
    assert elastic.part == "knee-elastic"


def test_each_closed_strap_has_its_tension(guide: Guide) -> None:
    checks = {s.title: s.check for s in guide.putting_on}
    for title in ("Close the ankle sleeve", "Close the Achilles strap", "Close the top strap last"):
        assert "1 finger fits" in checks[title]


def test_the_fit_check_asks_what_it_has_to(guide: Guide) -> None:
    goes = {target for step in guide.fit_check for _, target in step.options}
    wanted = {
        "fit.gaps",
        "fit.gaps-front",
        "fit.slips-down",
        "fit.twists",
        "fit.pad-contact",
        "adapt.knuckling",
        "fit.marks",
        "skin.redness",
    }
    assert wanted <= {target.partition(":")[2] for target in goes}
    assert {"alert:foot-no-blood", "alert:skin-open", "alert:no-weight"} <= goes


def test_the_vocabulary_is_wide_and_leads_to_words_of_the_guide(guide: Guide) -> None:
    assert len(guide.vocabulary) >= 250
    for owners, guides in {"couch": "sofa", "velcro": "hook and loop", "tummy": "belly"}.items():
        assert guide.vocabulary[owners] == guides
    said = " ".join(f"{p.title} {p.short} {p.body}" for p in guide.passages.values())
    said += " ".join(line for lines in guide.wordings.values() for line in lines)
    known = set(re.findall(r"[a-z]+", said.lower()))
    lost = {word for word in guide.vocabulary.values() if not set(word.split()) <= known}
    assert lost == set()
