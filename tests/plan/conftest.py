"""The guide's own protocol and table, read once."""

from __future__ import annotations

from pathlib import Path

import pytest

from guidebot.domain.activity import Activity
from guidebot.domain.protocol import Protocol
from guidebot.guide.read import read_guide
from guidebot.plan.ask import AskReader

CONTENT = Path(__file__).parents[2] / "content"


@pytest.fixture(scope="session")
def guide_parts() -> tuple[Protocol, dict[str, Activity]]:
    guide = read_guide(CONTENT)
    return guide.protocol, dict(guide.activities)


@pytest.fixture(scope="session")
def protocol(guide_parts: tuple[Protocol, dict[str, Activity]]) -> Protocol:
    return guide_parts[0]


@pytest.fixture(scope="session")
def activities(guide_parts: tuple[Protocol, dict[str, Activity]]) -> dict[str, Activity]:
    return guide_parts[1]


@pytest.fixture(scope="session")
def reader(activities: dict[str, Activity]) -> AskReader:
    return AskReader(activities)
