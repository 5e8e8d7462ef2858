"""The command as a real process, started from the checkout."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import pytest

from guidebot.reply.compiled import Compiled
from guidebot.reply.pipeline import Assistant

ROOT = Path(__file__).resolve().parent.parent.parent
SECOND = ROOT / "tests" / "fixtures" / "second_guide"
SECONDS = 240
"""Far more than a compile takes on a busy machine; a hang must end."""


@dataclass(frozen=True)
class Ran:
    """How a process ended."""

    code: int
    out: str
    err: str


Run = Callable[..., Ran]


def start(*arguments: str | bytes, stdin: bytes = b"", **environment: str | None) -> Ran:
    """Run the command and check what holds for every run: no traceback, no control characters."""
    ended = subprocess.run(
        [sys.executable, "-m", "guidebot", *arguments],
        input=stdin,
        capture_output=True,
        cwd=ROOT,
        env=changed(environment),
        timeout=SECONDS,
        check=False,
    )
    ran = Ran(ended.returncode, ended.stdout.decode("utf-8"), ended.stderr.decode("utf-8"))
    for text in (ran.out, ran.err):
        assert "Traceback" not in text
        assert "internal error" not in text
        assert not {c for c in text if (ord(c) < 32 and c != "\n") or 0x7F <= ord(c) < 0xA0}, text
    return ran


def changed(environment: dict[str, str | None]) -> dict[str, str]:
    """The environment with these variables set, or taken out where None."""
    whole = {**os.environ, **{k: v for k, v in environment.items() if v is not None}}
    return {key: value for key, value in whole.items() if environment.get(key, "") is not None}


@pytest.fixture
def run(compiled: Compiled) -> Run:
    """Runs the command over the demo guide, which is in the cache already."""
    return start


@pytest.fixture
def run_second(second: Assistant) -> Run:
    """Runs the command over the small guide, which compiles in a moment."""

    def go(*arguments: str | bytes, **more: object) -> Ran:
        return start("--content", str(SECOND), *arguments, **more)  # type: ignore[arg-type]

    return go


@pytest.fixture
def copied(tmp_path: Path) -> Path:
    """A copy of the small guide that a test may break."""
    return Path(shutil.copytree(SECOND, tmp_path / "guide"))
