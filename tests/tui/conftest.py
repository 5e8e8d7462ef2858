"""The application around fakes; see `tui_fakes`."""

from __future__ import annotations

from pathlib import Path

import pytest
from tui_fakes import Setup


@pytest.fixture
def setup(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Setup:
    """An application in a clean home, without clipboard programs or looks of the environment."""
    monkeypatch.setenv("GUIDEBOT_HOME", str(tmp_path))
    for name in ("COLORFGBG", "GUIDEBOT_LOOK", "NO_COLOR", "DISPLAY", "WAYLAND_DISPLAY"):
        monkeypatch.delenv(name, raising=False)
    return Setup()
