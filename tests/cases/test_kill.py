"""A few rounds of the kill test in `eval/kill`; the full forty are run from there."""

from __future__ import annotations

import importlib.util
import os
import sys
from pathlib import Path

import pytest

KILL = Path(__file__).parents[2] / "eval" / "kill" / "kill.py"


@pytest.mark.skipif(os.name == "nt", reason="no SIGKILL")
def test_no_acknowledged_write_is_lost(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PYTHONPATH", str(KILL.parents[2]))
    spec = importlib.util.spec_from_file_location("kill", KILL)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    monkeypatch.setitem(sys.modules, "kill", module)
    spec.loader.exec_module(module)
    kills, written, faults = module.run(3, folder=tmp_path)
    assert faults == []
    assert kills == 6
    assert written >= 6
