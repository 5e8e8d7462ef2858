"""Shared fixtures: the demo guide is compiled once for the whole run."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from pathlib import Path

import pytest

from guidebot.reply.compiled import Compiled, open_compiled
from guidebot.reply.pipeline import Assistant

ROOT = Path(__file__).resolve().parent.parent
CONTENT = ROOT / "content"
SECOND = ROOT / "tests" / "fixtures" / "second_guide"


@pytest.fixture(scope="session", autouse=True)
def _own_home(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """No test sees or touches the developer's own store and cache."""
    home = tmp_path_factory.mktemp("home")
    # A run in the background inherits an ignored interrupt and would hand it on to the commands
    # under test.
    signal.signal(signal.SIGINT, signal.default_int_handler)
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("GUIDEBOT_HOME", str(home / "data"))
        patch.setenv("GUIDEBOT_CACHE", str(home / "cache"))
        patch.delenv("GUIDEBOT_CONTENT", raising=False)
        patch.delenv("GUIDEBOT_DEBUG", raising=False)
        yield


@pytest.fixture(scope="session")
def compiled(_own_home: None) -> Compiled:
    """The demo guide."""
    return open_compiled(CONTENT)


@pytest.fixture(scope="session")
def assistant(compiled: Compiled) -> Assistant:
    """The assistant over the demo guide."""
    return Assistant(compiled)


@pytest.fixture(scope="session")
def second(_own_home: None) -> Assistant:
    """The assistant over the small second guide, which knows no knee."""
    return Assistant.open(SECOND)
