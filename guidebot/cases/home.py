"""Where the store lives."""

from __future__ import annotations

import os
import sys
from pathlib import Path


def data_home() -> Path:
    """`GUIDEBOT_HOME`, else the platform's folder for a user's data."""
    named = os.environ.get("GUIDEBOT_HOME")
    if named:
        return Path(named).expanduser()
    if sys.platform == "win32":
        base = os.environ.get("LOCALAPPDATA")
        return (Path(base) if base else Path.home() / "AppData" / "Local") / "guidebot"
    if sys.platform == "darwin":
        return Path.home() / "Library" / "Application Support" / "guidebot"
    base = os.environ.get("XDG_DATA_HOME")
    # The XDG base directory specification: a relative path is invalid and must be ignored.
    known = base and Path(base).is_absolute()
    return (Path(base) if known else Path.home() / ".local" / "share") / "guidebot"  # type: ignore[arg-type]


def store_path() -> Path:
    """The file of the store."""
    return data_home() / "cases.db"


def demo_path() -> Path:
    """The file of the demo's store, apart from the real one."""
    return data_home() / "demo.db"
