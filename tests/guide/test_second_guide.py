"""A guide for another joint: the reader knows no body part and no number."""

from __future__ import annotations

import re
import subprocess
import sys
from datetime import date
from fractions import Fraction
from pathlib import Path

import pytest

from guidebot.domain.activity import Say
from guidebot.domain.guide import Guide
from guidebot.domain.passage import Applies
from guidebot.guide import files
from guidebot.guide.read import read_guide, survey

ROOT = Path(__file__).parent.parent.parent
SECOND = ROOT / "tests" / "fixtures" / "second_guide"
KNEE = re.compile(r"knee|stifle|achilles|shin\b|thigh|tibia|cruciate", re.IGNORECASE)


@pytest.fixture(scope="module")
def guide() -> Guide:
    return read_guide(SECOND)


def test_it_is_read_without_a_warning(guide: Guide) -> None:
    assert survey(SECOND).warnings == ()
    assert (len(guide.needs), len(guide.passages)) == (8, 12)


def test_no_knee_word_is_in_it_nor_in_the_reader() -> None:
    reader = [p for p in (ROOT / "guidebot" / "guide").glob("*.py") if p.stem != "readability"]
    for path in [*reader, *files.files_of(SECOND).values()]:
        assert not KNEE.search(path.read_text("utf-8")), path


def test_numbers_come_from_its_protocol(guide: Guide) -> None:
    first = guide.passages["first-hours"]
    assert first.short == "On the first day the support stays on for 1 hour in all."
    assert "a spell of 5 minutes to 8 minutes" in first.body
    assert guide.passages["adding-time"].short.startswith("Add 1/2 hour a day")
    assert guide.protocol.stages[0].says.startswith(
        "While the dog settles, it wears the support 1 h"
    )
    assert guide.putting_on[1].check == "2 fingers fit under it."
    assert guide.fit_check[1].ask == "Is the gap at the plate about 1/8 in (about 3 mm)?"
    assert guide.activities["garden"].stages["guarded"].now.startswith("Stay 7 minutes at most")


def test_an_inch_is_exact(guide: Guide) -> None:
    # The international inch is 25.4 mm by definition (ISO 80000-3), so 1/8 in is 3.175 mm.
    assert guide.protocol.numbers["plate.gap"].millimetres() == Fraction(3175, 1000)


def test_values(guide: Guide) -> None:
    assert list(guide.topics) == ["hours", "moving", "fastening", "upkeep"]
    assert [stage.key for stage in guide.protocol.stages] == ["settling", "guarded", "easy"]
    assert [s.key for s in guide.device.sleeves if s.usual] == ["mesh"]
    late = guide.passages["cuff-winter-late"]
    assert late.applies == Applies(sleeve="winter", days=(11, None))
    assert late.path == "passages/fastening/cuff-winter-late.md"
    assert late.reviewed.on == date(2026, 11, 1)
    digging = guide.activities["digging"]
    assert {rule.say for rule in digging.stages.values()} == {Say.NO}
    assert set(digging.stages) == {"settling", "guarded", "easy"}
    assert guide.vocabulary["thumb nail"] == "dewclaw"
    assert len(guide.wordings["off-topic"]) == 12


def test_cited_lines_are_those_of_the_file(guide: Guide) -> None:
    protocol = (SECOND / "protocol.yaml").read_text("utf-8").splitlines()
    for key, number in guide.protocol.numbers.items():
        assert protocol[number.line - 1].strip().startswith(f"{key}:")
    activities = (SECOND / "activities.yaml").read_text("utf-8").splitlines()
    rule = guide.activities["garden"].stages["easy"]
    assert activities[rule.line - 1].strip().startswith("easy:")


def test_yaml_is_loaded_only_to_read() -> None:
    code = (
        "import sys; from guidebot.guide.read import content_hash, find_content; "
        "import guidebot.guide.check; from pathlib import Path; "
        f"content_hash(Path({str(SECOND)!r})); "
        "print([m for m in ('yaml', 'numpy', 'nltk', 'sqlalchemy', 'textual') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True)
    assert done.stdout.strip() == "[]", done.stderr
