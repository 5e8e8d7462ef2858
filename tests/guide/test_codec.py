"""The guide as JSON and back."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest

from guidebot.guide.codec import from_plain, to_plain
from guidebot.guide.read import read_guide

ROOT = Path(__file__).parent.parent.parent


@pytest.mark.parametrize("folder", ["content", "tests/fixtures/second_guide"])
def test_a_guide_comes_back_as_it_was(folder: str) -> None:
    guide = replace(
        read_guide(ROOT / folder), leave={}, follow_ups=()
    )  # like the wordings, for the compiler only
    assert from_plain(json.loads(json.dumps(to_plain(guide))), guide.wordings) == guide
